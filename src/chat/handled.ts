/** What the door does at once, beside sending what waits in the outbox. */
export interface Handled {
  /** A word for the presser of a button alone. */
  readonly toast?: string;
  readonly outbox?: number;
  /**
   * Long sums run beside the chat; the answer waits in the outbox when this is done. It never rejects: where the
   * answer could not be stored, it ends with what is to be said instead.
   */
  readonly pending?: Promise<string | undefined>;
}

/** What a message came to within its transaction. */
export interface Reacted {
  readonly handled: Handled;
  /** Started once the transaction is through. */
  readonly later?: () => Promise<string | undefined>;
}
