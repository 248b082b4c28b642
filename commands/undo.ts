import { table } from '#words/table.ts';
import { command } from '#chat/command.ts';
import { takeBack } from '#house/taking-back.ts';
import { batchCode, flag, optional, part, pouchCodes } from '#words/parts.ts';
import { sayList } from '#words/say.ts';
import { sure } from '#words/sure.ts';
import { takeName } from '#words/names.ts';
import { type PastDays, pastDays } from '#words/when.ts';
import { Refusal } from '#core/refusal.ts';
import { nameKey } from '#house/figures.ts';
import type { House } from '#house/house.ts';

/** 'entry 12': as buttons name what they take back. */
const entries = optional(
  part<number[]>('an entry', (reading) => {
    const found: number[] = [];
    for (const index of reading.left()) {
      const token = reading.all[index]!;
      if (token.is !== 'number' || !reading.wordBefore(index, 'entry')) continue;
      reading.take(index, index - 1);
      found.push(token.value);
    }
    return found.length === 0 ? undefined : found;
  }),
);

/** 'the last two', '2'. */
const lastFew = optional(
  part<number>('how many, such as last two', (reading) => {
    const index = [...reading.left()].find((i) => reading.all[i]!.is === 'number');
    const token = index === undefined ? undefined : reading.all[index]!;
    reading.keyword('last');
    if (index === undefined || token?.is !== 'number' || !(token.value >= 1 && token.value <= 10))
      return undefined;
    reading.take(index);
    reading.takeWords('things', 'entries', 'changes', 'records', 'ones');
    return Math.round(token.value);
  }),
);

const deeds = ['sealed', 'loaded', 'weighed', 'used', 'discarded', 'rated', 'packed', 'found'] as const;
const spoken = table<(typeof deeds)[number]>({
  sealing: 'sealed',
  loading: 'loaded',
  weighing: 'weighed',
  rating: 'rated',
  packing: 'packed',
  eaten: 'used',
});
const deed = optional(
  part<string>('what was done, such as the sealing', (reading) => {
    const index = [...reading.left()].find(
      (i) =>
        deeds.some((word) => word === reading.all[i]!.plain) || Object.hasOwn(spoken, reading.all[i]!.plain),
    );
    if (index === undefined) return undefined;
    const { plain } = reading.all[index]!;
    reading.take(index);
    return spoken[plain] ?? plain;
  }),
);

/** 'Everything from today': all of those days. */
const wholeDays = optional(
  part<PastDays>('all of a day, such as everything from today', (reading, names) => {
    const all = [...reading.left()].find((i) => ['everything', 'all'].includes(reading.all[i]!.plain));
    if (all === undefined) return undefined;
    const days = pastDays.read(reading, names);
    if (days) reading.take(all);
    return days;
  }),
);

/** What was recorded in this chat in those days, and still holds. @throws Refusal 'nothing-to-undo' */
function entriesWithin(house: House, { fromMs, toMs }: PastDays): number[] {
  const here = new Set(house.journal.lastHere(200));
  const found = house.journal
    .latest(200)
    .filter(({ id, atMs }) => here.has(id) && atMs >= fromMs && atMs <= toMs);
  if (found.length === 0) throw new Refusal('nothing-to-undo', 'Nothing was recorded in this chat then.');
  return found.map(({ id }) => id);
}

/** The last thing that somebody recorded. @throws Refusal 'nothing-to-undo' */
function lastOf(house: House, name: string): number[] {
  const here = new Set(house.journal.lastHere(200));
  const last = house.journal.latest(200).find(({ id, by }) => here.has(id) && nameKey(by) === nameKey(name));
  if (!last) throw new Refusal('nothing-to-undo', `Nothing that ${name} recorded here can be taken back.`);
  return [last.id];
}

export default command({
  name: 'undo',
  usage: '/undo [last two] [the sealing of B4] [B4-2] [put back]',
  summary: 'take back the last thing recorded in this chat, or one thing named',
  examples: ['/undo', '/undo last two', '/undo the sealing of B4'],
  help: [
    'What stands on a change is named and goes with it, after a tap. So is what somebody else recorded. /log shows what was recorded.',
    '"/undo redo" puts back what was taken back last.',
    'Where it would let somebody have again what must never be served to them, a grown-up confirms it by a tap.',
  ],
  records: true,
  takes: {
    sure,
    redo: flag('redo'),
    entries,
    codes: optional(pouchCodes),
    batch: optional(batchCode),
    deed,
    whole: wholeDays,
    twice: flag('twice'),
    count: lastFew,
    by: optional(
      part<string>('whose, such as Ben', (reading, names) => takeName(reading, names.eaters, 'eater')),
    ),
  },
  run: (
    { sure: isSure, redo, entries: ids = [], codes, batch, deed: did, count, whole, twice, by },
    house,
  ) => ({
    redone: redo ? house.journal.redo() : undefined,
    undone: redo
      ? []
      : takeBack(
          house,
          {
            entries: ids.length > 0 ? ids : whole ? entriesWithin(house, whole) : by ? lastOf(house, by) : [],
            count: twice ? 2 : count,
            codes,
            batch,
            deed: did,
          },
          isSure === true,
        ),
  }),
  say: ({ redone, undone }) => ({
    inPlace: true,
    group: redone === undefined ? `Taken back: ${sayList(undone)}.` : `Put back: ${redone}.`,
    ...(redone === undefined ? { buttons: [{ label: 'Put back', request: '/undo redo' }] } : {}),
  }),
});
