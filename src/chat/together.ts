import type { Message, Reply } from '#core/talk.ts';
import type { Chosen } from './chosen.ts';
import type { Answerer } from './answerer.ts';
import { type Carried, open, record, refused } from './carry-out.ts';
import type { Said } from './command.ts';
import { Ambiguous } from '#words/reading.ts';
import { storeTrouble } from './trouble.ts';
import { shortened } from './beside.ts';

/** Several answers as one. */
function joined(replies: readonly Reply[]): Reply {
  const notes = replies.flatMap((reply) => reply.notes ?? []);
  // The way back of each comes first.
  const all = replies.flatMap((reply) => reply.buttons ?? []);
  const undoes = all.filter(({ label }) => label.startsWith('Undo'));
  const buttons = [...undoes, ...all.filter((one) => !undoes.includes(one))].slice(
    0,
    Math.max(3, undoes.length),
  );
  const files = replies.flatMap((reply) => reply.files ?? []);
  const heed = [...new Set(replies.flatMap((reply) => reply.heed ?? []))];
  return {
    // What all of them say alike is said once.
    group: [...new Set(replies.flatMap(({ group }) => group.split('\n')))].join('\n'),
    ...(heed.length === 0 ? {} : { heed }),
    ...(notes.length === 0 ? {} : { notes }),
    ...(buttons.length === 0 ? {} : { buttons }),
    ...(files.length === 0 ? {} : { files }),
  };
}

/** Several ways back are told apart by what they take back. */
const toldApart = (reply: Reply): Reply => ({
  ...reply,
  ...(reply.buttons
    ? {
        buttons: reply.buttons.map((one) =>
          one.label === 'Undo' && reply.did ? { ...one, label: shortened(`Undo: ${reply.did}`) } : one,
        ),
      }
    : {}),
});

/** Requests of one kind that follow each other make one entry, so that one /undo takes them back. */
function inGroups(all: readonly Chosen[]): Chosen[][] {
  return all.reduce<Chosen[][]>((groups, one) => {
    const last = groups.at(-1);
    if (last && last[0]!.command === one.command && one.command.name !== 'undo') last.push(one);
    else groups.push([one]);
    return groups;
  }, []);
}

/**
 * Carries out several requests of one message: all, or none of them.
 * @returns the answer; of what cannot be carried out, why
 */
export function carryTogether(
  answerer: Answerer,
  message: Message,
  household: number,
  all: readonly Chosen[],
): Carried {
  let at = all[0]!;
  try {
    return answerer.stores.together(() => {
      const carried = inGroups(all).map((group) => {
        at = group[0]!;
        const opened = open(answerer, message, household, at.command, at.words);
        return record(answerer, message, at.command, opened, () => {
          const said: Said[] = group.map((one) => {
            at = one;
            const again =
              one === group[0] ? opened : open(answerer, message, household, one.command, one.words);
            return one.command.answer(again.asked, again.house);
          });
          const did = said.flatMap((one) => one.did ?? []);
          return {
            ...joined(said),
            meals: said.flatMap((one) => one.meals ?? []),
            ...(did.length === 0 ? {} : { did: did.join('; ') }),
          };
        });
      });
      return {
        reply: joined(carried.map(({ reply }) => (carried.length > 1 ? toldApart(reply) : reply))),
        outcome: carried.some(({ outcome }) => outcome === 'recorded') ? 'recorded' : 'answered',
        entry: carried.findLast(({ entry }) => entry !== null)?.entry ?? null,
      };
    });
  } catch (error) {
    if (storeTrouble(error) !== undefined) throw error;
    // A choice about one of them keeps the others.
    if (error instanceof Ambiguous) {
      const asTyped = ({ command, words }: Pick<Chosen, 'command' | 'words'>) =>
        `/${command.name} ${words}`.trim();
      const buttons = error.options.slice(0, 3).map(({ label, request }) => ({
        label,
        request: all.map((one) => asTyped(one === at ? { ...one, words: request } : one)).join('\n'),
      }));
      return {
        reply: { asks: true, group: `${error.question} Nothing is recorded yet.`, buttons },
        outcome: 'refused',
        entry: null,
      };
    }
    const failed = refused(answerer, household, at.command, at.words, message, error);
    return all.length < 2
      ? failed
      : {
          ...failed,
          reply: { ...failed.reply, group: `${failed.reply.group}\nNothing of this message is recorded.` },
        };
  }
}
