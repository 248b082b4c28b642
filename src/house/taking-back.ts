import type { Pouch } from '#core/records.ts';
import { Refusal } from '#core/refusal.ts';
import type { Entry } from '#store/journal.ts';
import type { PouchCode } from '#words/parts.ts';
import { Ambiguous } from '#words/reading.ts';
import { sayBatch, sayCode, sayCodes, sayCount, sayList } from '#words/say.ts';
import { entryOf } from './entries.ts';
import { batchNumbered, pouchCoded } from './figures.ts';
import type { House } from './house.ts';
import { barsLost, liftedByTap } from './lifting.ts';

/** What is to be taken back: entries by their number, the last few, or what was done to pouches or a batch. */
export interface Target {
  readonly entries: readonly number[];
  readonly count: number | undefined;
  readonly codes: readonly PouchCode[] | undefined;
  readonly batch: number | undefined;
  /** The deed in the journal's words, such as 'sealed'. */
  readonly deed: string | undefined;
}

/** More than this at once is not taken back; chosen. */
const mostAtOnce = 12;
/** A button under an older record asks before it takes it back; chosen. */
const inMindMs = 24 * 3_600_000;

const seen = (house: House, id: number): Entry | undefined =>
  house.journal.latest(2000).find((entry) => entry.id === id);

/** The last of its kind in this chat. */
const lastDeed = (house: House, deed: string): number[] =>
  house.journal
    .lastHere(200)
    .filter((id) => seen(house, id)?.did.includes(deed))
    .slice(0, 1);

function targetsOf(house: House, { entries, count, codes, batch, deed }: Target): number[] {
  if (entries.length > 0) return [...entries];
  const things = codes
    ? codes.map((code) => pouchCoded(house, code)).map(sayCode)
    : batch === undefined
      ? []
      : [sayBatch(batchNumbered(house, batch))];
  if (things.length > 0) {
    const found = entryOf(house, things, deed);
    if (!found)
      throw new Refusal(
        'nothing-to-undo',
        `Nothing${deed === undefined ? '' : ` about "${deed}"`} is on record of ${sayList(things)} that could be taken back.`,
      );
    return [found.id];
  }
  const last = deed === undefined ? house.journal.lastHere(count ?? 1) : lastDeed(house, deed);
  if (last.length === 0)
    throw new Refusal('nothing-to-undo', 'There is nothing left to take back in this chat.');
  return last;
}

/**
 * Takes changes back with all that stands on them, the newest first. Anything but one's own last change, and what the
 * button under it names, is named and asked about first.
 * @param again the request's own words for the button, where it takes no numbers of entries
 * @returns what was taken back, newest first
 * @throws Ambiguous with the button that does it; Refusal
 */
export function takeBack(house: House, target: Target, isSure: boolean, again?: string): string[] {
  const targets = targetsOf(house, target);
  const isPlain =
    target.deed === undefined &&
    target.codes === undefined &&
    target.batch === undefined &&
    target.entries.length === 0;
  const all = [...new Set(targets.flatMap((id) => [id, ...house.journal.standingOn(id)]))].toSorted(
    (a, b) => b - a,
  );
  if (all.length > mostAtOnce)
    throw new Refusal(
      'too-many',
      `${sayCount(all.length - 1, 'later change stands', 'later changes stand')} on it, more than I take back at once. /log shows them.`,
    );
  const known = all.map((id) => seen(house, id)).filter((entry) => entry !== undefined);
  const ids = all.map((id) => `entry ${id}`).join(' ');
  const before = house.eaters.all();
  const did = all.map((id) => house.journal.undo(id));
  // Asked about after the fact: a question takes back the taking back.
  for (const { name, lost } of barsLost(before, house.eaters.all()))
    liftedByTap(house, name, lost, isSure, again ?? (isPlain ? '' : ids));
  const isOwn = known.every((entry) => entry.member === house.member.id);
  // The button under a record of one's own names it, for as long as somebody still has it in mind.
  const isNamedByTap =
    house.tapped && target.entries.length === 1 && known.every(({ atMs }) => house.nowMs - atMs < inMindMs);
  if (!isSure && !((isPlain || isNamedByTap) && isOwn && all.length === 1))
    throw new Ambiguous(
      [
        `Take back ${all.length === 1 ? 'this' : `these ${all.length}, the newest first`}? Nothing is changed yet.`,
        ...known.map(({ by, did: what }) => `${by}: ${what}`),
        ...(all.length > targets.length ? ['The later ones stand on what you named.'] : []),
      ].join('\n'),
      [
        {
          label: all.length === 1 ? 'Take it back' : `Take back all ${all.length}`,
          request: `${again ?? ids} sure`,
        },
      ],
    );
  return did;
}

/**
 * Puts eaten or discarded pouches back into stock: they are still there. All else stays as it is.
 * @throws Refusal 'in-stock' where none of them is gone
 */
export function stillThere(house: House, codes: readonly PouchCode[]): Pouch[] {
  const pouches = codes.map((code) => pouchCoded(house, code));
  const gone = pouches.filter((pouch) => pouch.state !== 'stock');
  if (gone.length === 0)
    throw new Refusal(
      'in-stock',
      `${sayCodes(pouches)} ${pouches.length === 1 ? 'is' : 'are'} in stock on record, so there is nothing to put right.`,
    );
  for (const pouch of gone) house.pouches.restock(pouch.id);
  return gone;
}
