import { Refusal } from '#core/refusal.ts';
import type { Message, Reply } from '#core/talk.ts';
import { Ambiguous } from '#words/reading.ts';
import type { Answerer } from './answerer.ts';
import { shortened } from './beside.ts';
import { Repeated, takingBack } from './carry-out.ts';
import type { Addressed } from './chosen.ts';
import { rehearse, Rehearsed, type Request } from './propose.ts';
import { carryTogether } from './together.ts';

/** What an entry said, and what stands on it, as the log tells it. */
function taleOf({ stores }: Answerer, household: number, entry: number): { did: string; later: string[] } {
  const all = stores.journal.latest(household, 2000);
  const did = (id: number) => all.find((one) => one.id === id)?.did ?? 'that';
  return { did: did(entry), later: stores.journal.standingOn(household, entry).map(did) };
}

/** What was recorded and what is to take its place, with the one tap that does both. */
export function replacement(
  answerer: Answerer,
  message: Message,
  household: number,
  entry: number,
  { command, words }: Request,
): Reply {
  const { did, later } = taleOf(answerer, household, entry);
  const back: Request = {
    command: answerer.commands.find((one) => one.name === 'undo')!,
    words: `entry ${entry} sure`,
  };
  let now: string | undefined;
  try {
    answerer.stores.together(() => {
      const { reply, outcome } = carryTogether(answerer, message, household, [
        { ...back, holds: null, left: [] },
      ]);
      if (outcome === 'refused') throw new Refusal('cannot', reply.group);
      now = rehearse(answerer, message, household, { command, words });
      throw new Rehearsed('');
    });
  } catch (error) {
    if (error instanceof Ambiguous)
      return {
        asks: true,
        group: `Recorded is: ${did}. Nothing is changed yet. ${error.question}`,
        buttons: error.options.slice(0, 3).map(({ label, request }) => ({
          label: shortened(`Instead: ${label}`),
          request: `/undo entry ${entry} sure\n/${command.name} ${request}`,
        })),
      };
    if (error instanceof Refusal || error instanceof Repeated) return staysAsItIs(did, entry, error.message);
    if (!(error instanceof Rehearsed)) throw error;
  }
  // Where the journal says both alike, the request itself shows what differs; where it sums up, each figure.
  const figures = words.match(/\d+(?:[.,]\d+)?/gu) ?? [];
  const isSum = now !== undefined && figures.length > 2 && figures.some((figure) => !now!.includes(figure));
  const said =
    now === undefined || now === did ? `/${command.name} ${words}` : isSum ? `${now} (${words})` : now;
  const standing = later.length === 0 ? '' : `\nWith it would go what stands on it: ${later.join('; ')}.`;
  return {
    asks: true,
    group: `Recorded is: ${did}. Nothing is changed yet.\nInstead: ${said}?${standing}`,
    buttons: [
      {
        label: shortened(`Instead: ${said}`),
        request: `/undo entry ${entry} sure\n/${command.name} ${words}`.trim(),
      },
      { label: 'Only take it back', request: `/undo entry ${entry} sure` },
    ],
  };
}

/** What a message that was recorded says since it was edited. */
export function editedInto(
  answerer: Answerer,
  message: Message,
  household: number,
  found: Addressed,
  entry: number | null,
): Reply {
  const main = found.is === 'request' || found.is === 'instead' ? found.main : undefined;
  if (entry !== null && main?.command.records && !main.command.planned && main.holds === null)
    return replacement(answerer, message, household, entry, main);
  const { did } = taleOf(answerer, household, entry ?? -1);
  return staysAsItIs(did, entry, 'As it reads now I cannot take it for a change of that.');
}

/** An edit that changes nothing: what is recorded goes on being shown, with the way back. */
const staysAsItIs = (did: string, entry: number | null, because: string): Reply => ({
  group: `Recorded is: ${did}. It stays as it is. ${because}`.trim(),
  ...(entry === null ? {} : { buttons: [takingBack(entry)] }),
});
