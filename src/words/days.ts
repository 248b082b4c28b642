import { DateTime } from 'luxon';
import { Refusal } from '#core/refusal.ts';
import { between, type Mention, mentions } from './mentions.ts';
import { type Names, part, quantities } from './part.ts';
import type { Reading } from './reading.ts';

function takeMention(reading: Reading, { from, to }: Mention): void {
  for (let i = from; i <= to; i++) reading.take(i);
}

export interface Days {
  readonly startsOn: string;
  readonly endsOn: string;
}

/** The longest trip that is believed. Chosen. */
const mostDays = 60;

/**
 * The days of a trip: '12-14 June', 'fri to sun', '2026-06-12 to 2026-06-14', 'June 12 for 3 days', 'this weekend'.
 * Without a year the next such days are meant.
 * @throws Ambiguous for 12/6 and 'next Friday'; Refusal for days past, ends before starts, or over 60 days
 */
export const tripDays = part<Days>('the days, such as 12-14 June', (reading, names) => {
  const found = mentions(reading, names);
  const first = found[0];
  if (!first) return undefined;
  const today = DateTime.fromMillis(names.nowMs, { zone: names.zone }).startOf('day');
  const start = first.onOrAfter(today);
  if (!start) throw new Refusal('no-such-day', 'I found no such day in the years ahead.');
  let end = found[1]?.onOrAfter(start) ?? start;
  takeMention(reading, first);
  if (found[1]) {
    takeMention(reading, found[1]);
    for (let i = first.to + 1; i < found[1].from; i++)
      if (between.has(reading.at(i)?.plain ?? '')) reading.take(i);
  } else {
    const days = lengthDays(reading);
    if (days !== undefined) end = start.plus({ days: days - 1 });
  }
  if (end < today) throw new Refusal('past-days', `${end.toISODate()} is past.`);
  if (end < start)
    throw new Refusal(
      'bad-days',
      `The trip would end on ${end.toISODate()}, before it starts on ${start.toISODate()}.`,
    );
  if (end.diff(start, 'days').days >= mostDays)
    throw new Refusal(
      'long-trip',
      `From ${start.toISODate()} to ${end.toISODate()} is longer than the ${mostDays} days that I plan.`,
    );
  return { startsOn: start.toISODate()!, endsOn: end.toISODate()! };
});

/** 'for 3 days', '2 nights', '1 week'. */
function lengthDays(reading: Reading): number | undefined {
  for (const index of reading.left()) {
    const token = reading.all[index]!;
    const word = reading.at(index + 1);
    if (token.is !== 'number' || word?.is !== 'word') continue;
    const days = /^days?$/.test(word.plain)
      ? token.value
      : /^nights?$/.test(word.plain)
        ? token.value + 1
        : /^weeks?$/.test(word.plain)
          ? token.value * 7
          : undefined;
    if (days === undefined || !Number.isInteger(days) || days < 1) continue;
    reading.take(index, index + 1);
    return days;
  }
  const long = quantities(reading, 'time')[0];
  if (!long || long.value % 86_400 !== 0) return undefined;
  reading.take(long.index);
  return long.value / 86_400;
}

/** One day: 'saturday', '13 June', 'tomorrow'; the first such day on or after a given one. */
export function oneDay(from: (names: Names) => string) {
  return part<string>('a day, such as saturday', (reading, names) => {
    const first = mentions(reading, names)[0];
    if (!first) return undefined;
    const day = first.onOrAfter(DateTime.fromISO(from(names), { zone: names.zone }));
    if (!day) throw new Refusal('no-such-day', 'I found no such day in the years ahead.');
    takeMention(reading, first);
    return day.toISODate()!;
  });
}
