import { table } from './table.ts';
import { DateTime } from 'luxon';
import type { SlotMeal } from '#core/records.ts';
import { Refusal } from '#core/refusal.ts';
import { Ambiguous } from './ambiguous.ts';
import { lengthAt, mentions } from './day-mentions.ts';
import type { Days } from './days.ts';
import type { Names } from './part.ts';
import type { Reading } from './reading.ts';
import { slotMealNamed } from './trip-parts.ts';

/** One meal of one day, put into a planned trip or taken out of it: 'lunch on sunday', 'no breakfast on monday'. */
export interface SlotChange {
  readonly onDay: string;
  readonly meals: readonly SlotMeal[];
  readonly isGone: boolean;
}

const goneWords = new Set(['no', 'not', 'without', 'drop', 'skip', 'remove', 'cancel', 'minus', 'except']);
const addWords = new Set([
  'add',
  'plus',
  'also',
  'put',
  'in',
  'and',
  'with',
  'as',
  'well',
  'too',
  'on',
  'for',
  'the',
]);
/** Where a meal is had elsewhere: 'we eat out on sunday', 'dinner at the restaurant'. */
const outPlaces = new Set(['restaurant', 'takeaway', 'takeout', 'pub', 'invited', 'inn', 'cafe']);
const outJoins = new Set([
  'eat',
  'eats',
  'eating',
  'dine',
  'dining',
  'are',
  'is',
  'at',
  'the',
  'a',
  'in',
  'we',
  'all',
  'get',
  'have',
]);

/** The words that say so; empty where nobody said it. */
function eatenOut(reading: Reading): number[] {
  const at = [...reading.left()].filter(
    (i) =>
      outPlaces.has(reading.all[i]!.plain) ||
      (reading.all[i]!.plain === 'out' &&
        /^(?:eat|eats|eating|dine|dining)$/.test(reading.at(i - 1)?.plain ?? '')),
  );
  if (at.length === 0) return [];
  return [...at, ...[...reading.left()].filter((i) => outJoins.has(reading.all[i]!.plain))];
}

const untils = new Set(['until', 'till', 'to', 'through']);
const froms = new Set(['from', 'starting', 'starts', 'since']);

/**
 * A meal on one day of the trip itself: not the days of the trip.
 * @throws Refusal 'one-day' for a day within the trip with no meal beside it: it may not move the whole trip
 */
export function slotChange(reading: Reading, names: Names, known: Days): SlotChange | undefined {
  const [one, another] = mentions(reading, names);
  if (!one || another) return undefined;
  const lead = reading.at(one.from - 1)?.plain ?? '';
  const day = one.onOrAfter(DateTime.fromISO(known.startsOn, { zone: names.zone }))?.toISODate();
  if (untils.has(lead) || froms.has(lead) || day === undefined || day === null) return undefined;
  if (day < known.startsOn || day > known.endsOn || known.startsOn === known.endsOn) return undefined;
  const at = [...reading.left()].filter(
    (i) => (i < one.from || i > one.to) && slotMealNamed(reading.all[i]!.plain) !== undefined,
  );
  const out = eatenOut(reading);
  if (at.length === 0 && out.length > 0) throw whichMealOut(reading, day);
  if (at.length === 0)
    throw new Refusal(
      'one-day',
      `That is one day of the trip, which goes from ${known.startsOn} to ${known.endsOn}. For a meal of that day: add lunch on sunday. To move the trip, its first and last day.`,
    );
  // Some of these words were taken with the people who do not come.
  const gone = [
    ...out,
    ...reading.all.flatMap(({ plain }, i) => (goneWords.has(plain) && i < at[0]! ? [i] : [])),
  ];
  const added = [...reading.left()].filter((i) => addWords.has(reading.all[i]!.plain));
  reading.take(...at, ...gone, ...added);
  for (let i = one.from; i <= one.to; i++) reading.take(i);
  return {
    onDay: day,
    meals: at.map((i) => slotMealNamed(reading.all[i]!.plain)!),
    isGone: gone.length > 0,
  };
}

/** Which meals of a day are had elsewhere, where nobody said. */
function whichMealOut(reading: Reading, day: string): Ambiguous {
  const end = reading.text.length;
  return new Ambiguous(
    `Which meals do you have elsewhere on ${day}?`,
    (
      [
        ['Dinner', ' dinner'],
        ['Lunch and dinner', ' lunch and dinner'],
        ['All of that day', ' breakfast lunch and dinner'],
      ] as const
    ).map(([label, into]) => ({ label, request: reading.rewritten([{ from: end, to: end, into }]) })),
  );
}

const shifts = table<readonly [start: number, end: number]>({
  longer: [0, 1],
  more: [0, 1],
  shorter: [0, -1],
  less: [0, -1],
  later: [1, 1],
  earlier: [-1, -1],
});

/** Verbs that say which way a trip moves: 'push it back a week', 'bring it forward by two days'. */
const ways: readonly (readonly [way: 'later' | 'earlier', words: readonly string[]])[] = [
  ['later', ['push', 'pushed', 'back', 'postpone', 'postponed', 'delay', 'delayed', 'off', 'put']],
  ['earlier', ['bring', 'brought', 'forward', 'forwards', 'up', 'advance', 'pull']],
];

/** Which way a verb moves the trip; its words are taken. */
function wayOf(reading: Reading): 'later' | 'earlier' | undefined {
  const sure = [
    'push',
    'pushed',
    'back',
    'postpone',
    'postponed',
    'delay',
    'delayed',
    'forward',
    'forwards',
    'advance',
  ];
  for (const [way, words] of ways) {
    const at = [...reading.left()].filter((i) => words.includes(reading.all[i]!.plain));
    if (!at.some((i) => sure.includes(reading.all[i]!.plain))) continue;
    reading.take(...at);
    reading.takeWords('by');
    return way;
  }
  return undefined;
}

/** A length and nothing else, as in 'move it by a week', does not say which way. */
function askWhichWay(reading: Reading, from: number, to: number): void {
  const isAlone = [...reading.left()].every(
    (i) => (i >= from && i <= to) || ['by', 'move', 'moved', 'shift'].includes(reading.all[i]!.plain),
  );
  if (!isAlone) return;
  const place = { from: reading.all[from]!.from, to: reading.all[to]!.to };
  const length = reading.text.slice(place.from, place.to);
  throw new Ambiguous(
    `Is the trip ${length} later or earlier?`,
    ['later', 'earlier'].map((way) => ({
      label: `${length} ${way}`,
      request: reading.rewritten([{ ...place, into: `${length} ${way}` }]),
    })),
  );
}

/** 'Until 15 June', 'from 11 June', 'a day longer', 'two days later': what is told of one end alone. */
export function daysChanged(reading: Reading, names: Names, known: Days): Days | undefined {
  const day = (iso: string) => DateTime.fromISO(iso, { zone: names.zone });
  let days: Days | undefined;
  for (const index of reading.left()) {
    const length = lengthAt(reading, index);
    const behind = length && shifts[reading.at(length.to + 1)?.plain ?? ''];
    if (!length) continue;
    const way = behind ? undefined : wayOf(reading);
    const shift = behind ?? (way && shifts[way]);
    if (!shift) {
      askWhichWay(reading, index, length.to);
      continue;
    }
    for (let i = index; i <= length.to + (behind ? 1 : 0); i++) reading.take(i);
    days = {
      startsOn: day(known.startsOn)
        .plus({ days: shift[0] * length.days })
        .toISODate()!,
      endsOn: day(known.endsOn)
        .plus({ days: shift[1] * length.days })
        .toISODate()!,
    };
    break;
  }
  const [one, another] = mentions(reading, names);
  if (!one || another) return days;
  const lead = reading.at(one.from - 1)?.plain ?? '';
  const isEnd = untils.has(lead);
  if (!isEnd && !froms.has(lead)) return days;
  const near = one
    .onOrAfter(isEnd ? day(known.startsOn) : day(known.startsOn).minus({ days: 6 }))
    ?.toISODate();
  // A date may lie further before the trip than a weekday can.
  const told =
    near && near > known.endsOn && !isEnd
      ? one.onOrAfter(day(known.startsOn).minus({ days: 60 }))?.toISODate()
      : near;
  if (told === undefined || told === null) return days;
  for (let i = one.from - 1; i <= one.to; i++) reading.take(i);
  const changed = isEnd
    ? { startsOn: known.startsOn, endsOn: told }
    : { startsOn: told, endsOn: known.endsOn };
  if (changed.endsOn < changed.startsOn)
    throw new Refusal(
      'bad-days',
      `The trip would end on ${changed.endsOn}, before it starts on ${changed.startsOn}.`,
    );
  return changed;
}
