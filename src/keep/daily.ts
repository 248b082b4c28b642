import { backUpDaily } from '#store/backups.ts';
import type { Db } from '#store/db.ts';

const lookEveryMs = 15 * 60_000;

/**
 * Makes the copy of the day while the program runs, by the machine's own clock. A copy that fails is reported and
 * tried again; the chat goes on.
 */
export function openDaily(db: Db, database: string, log: (line: string) => void) {
  let alarm: NodeJS.Timeout | undefined;
  let running: Promise<void> | undefined;
  let lastFailure: string | undefined;

  const look = (): Promise<void> =>
    (running ??= backUpDaily(db, database, Date.now())
      .then(() => {
        lastFailure = undefined;
      })
      .catch((error: unknown) => {
        const why = error instanceof Error ? error.message : 'no error';
        // Once for each cause: a full disk would fill the log as well.
        if (why !== lastFailure) log(`The backup of the day failed: ${why}`);
        lastFailure = why;
      })
      .finally(() => {
        running = undefined;
      }));

  return {
    look,
    start(): void {
      void look();
      alarm = setInterval(() => void look(), lookEveryMs);
      alarm.unref();
    },
    async stop(): Promise<void> {
      clearInterval(alarm);
      await running;
    },
  };
}
