import { whereItBroke } from '#core/fault.ts';
import type { Message } from '#core/talk.ts';
import type { Answerer } from './answerer.ts';
import { type Carried, open, record, refused } from './carry-out.ts';
import type { Command, Planned } from './command.ts';
import type { Reacted } from './handled.ts';
import { workersFor } from './taking-turns.ts';
import { storeTrouble } from './trouble.ts';

/** The first step of a planned request: what it needs is read now; the rest is done when its sums are. */
export function begin(
  house: Answerer,
  message: Message,
  household: number,
  command: Command,
  planned: Planned,
  words: string,
  finish: (carried: Carried, error?: unknown) => Reacted,
): Reacted {
  const { stores } = house;
  const first = stores.together(() => {
    const opened = open(house, message, household, command, words);
    if (planned.waits(opened.asked)) return { looked: planned.look(opened.asked, opened.house) };
    const atOnce = () => command.answer(opened.asked, opened.house);
    return { carried: record(house, message, command, opened, atOnce) };
  });
  if ('carried' in first) return finish(first.carried);
  const unfinished = stores.messages.begin(message);
  const later = async (): Promise<string | undefined> => {
    let worked: unknown;
    let failed: { error: unknown } | undefined;
    try {
      worked = await planned.work(first.looked, workersFor(house.workers, household));
    } catch (error) {
      failed = { error };
    }
    try {
      stores.together(keep);
    } catch (error) {
      house.log(`an answer could not be stored: ${whereItBroke(error)}`);
      return storeTrouble(error) ?? 'Something broke on my side; nothing was recorded.';
    }
    return undefined;

    function keep(): void {
      stores.messages.finish(unfinished);
      try {
        if (failed) throw failed.error;
        finish(
          stores.together(() => {
            const opened = open(house, message, household, command, words);
            return record(house, message, command, opened, () =>
              planned.keep(worked, opened.asked, opened.house),
            );
          }),
        );
      } catch (error) {
        if (storeTrouble(error) !== undefined) throw error;
        finish(refused(house, household, command, words, message, error), error);
      }
    }
  };
  return { handled: {}, later };
}
