import { DateTime } from 'luxon';
import { Refusal } from '#core/refusal.ts';
import { lengthAt, mentions } from './day-mentions.ts';
import { between, type Mention } from './mentions.ts';
import { type Names, part } from './part.ts';
import type { Reading } from './reading.ts';

export function takeMention(reading: Reading, { from, to }: Mention): void {
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

/** 'for 3 days', '2 nights', '1 week', 'overnight'. */
function lengthDays(reading: Reading): number | undefined {
  for (const index of reading.left()) {
    const token = reading.all[index]!;
    if (token.plain === 'overnight') {
      reading.take(index);
      return 2;
    }
    const length = lengthAt(reading, index);
    const count = token.is === 'number' ? token.value : /^an?$/.test(token.plain) ? 1 : 0;
    const isNights =
      /^nights?$/.test(reading.at(index + 1)?.plain ?? '') && Number.isInteger(count) && count > 0;
    if (!length && !isNights) continue;
    for (let i = index; i <= (length?.to ?? index + 1); i++) reading.take(i);
    if (reading.wordBefore(index, 'for')) reading.take(index - 1);
    return length?.days ?? count + 1;
  }
  return undefined;
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
