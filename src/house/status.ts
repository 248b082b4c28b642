/** How the program does, without a word of what anybody wrote. */
export interface Status {
  readonly version: string;
  readonly startedAtMs: number;
  /** Answers not delivered yet. */
  readonly waiting: number;
  /** Answers that could never be delivered, such as to a chat that put the bot out. */
  readonly givenUp: number;
  /** The last line of the log; null while there was none. */
  readonly lastFault: { readonly atMs: number; readonly line: string } | null;
  /** Size of the database. */
  readonly bytes: number;
  readonly lastBackupAtMs: number | null;
}
