import { DateTime } from 'luxon';
import { Refusal } from '#core/refusal.ts';
import { type Names, part, quantities } from './parts.ts';
import { Ambiguous, type Reading } from './reading.ts';
import { weekdayNamed } from './when.ts';

/** A day as it was mentioned: a calendar day, or one whose year or month is still to be found. */
interface Mention {
  readonly from: number;
  readonly to: number;
  /** The first such day that is not before a given one. */
  readonly onOrAfter: (day: DateTime) => DateTime | undefined;
}

const months = ['jan', 'feb', 'mar', 'apr', 'may', 'jun', 'jul', 'aug', 'sep', 'oct', 'nov', 'dec'];
const fullMonths =
  'january february march april may june july august september october november december'.split(' ');
const ordinals = new Set(['st', 'nd', 'rd', 'th']);
const between = new Set(['to', '-', 'until', 'till', 'through', 'thru', 'and', 'bis']);

function monthNamed(word: string): number {
  const full = fullMonths.indexOf(word);
  return full >= 0 ? full + 1 : months.indexOf(word === 'sept' ? 'sep' : word) + 1;
}

function dayOfMonth(reading: Reading, index: number): { day: number; to: number } | undefined {
  const token = reading.at(index);
  if (token?.is !== 'number' || !/^\d{1,2}$/.test(token.typed.trim()) || token.value < 1 || token.value > 31)
    return undefined;
  const suffix = reading.at(index + 1);
  const to = suffix?.is === 'word' && ordinals.has(suffix.plain) ? index + 1 : index;
  return { day: token.value, to };
}

function yearAt(reading: Reading, index: number): { year: number; to: number } | undefined {
  const skip = reading.at(index)?.plain === ',' ? index + 1 : index;
  const token = reading.at(skip);
  if (token?.is !== 'number' || !/^20\d\d$/.test(token.typed)) return undefined;
  return { year: token.value, to: skip };
}

/** A day and month, with or without its year. A day that month does not have is refused, not moved. */
function calendarDay(
  day: number,
  month: number,
  year: number | undefined,
  typed: string,
): Mention['onOrAfter'] {
  const leap = DateTime.utc(2024, month, day);
  if (!leap.isValid) throw new Refusal('no-such-day', `${typed} is no day of the calendar.`);
  return (earliest) => {
    const years = year === undefined ? [0, 1, 2, 3, 4].map((n) => earliest.year + n) : [year];
    return years
      .map((y) => DateTime.fromObject({ year: y, month, day }, { zone: earliest.zone }))
      .find((date) => date.isValid && (year !== undefined || date >= earliest));
  };
}

/** '12 June', '12-14 June', 'June 12-14', '12 June 2027': the mentions that start at an index. */
function withMonth(reading: Reading, index: number): Mention[] {
  const typed = (a: number, b: number) => reading.text.slice(reading.all[a]!.from, reading.all[b]!.to);
  const first = dayOfMonth(reading, index);
  if (first) {
    let at = first.to + 1;
    let second: { day: number; to: number } | undefined;
    if (between.has(reading.at(at)?.plain ?? '')) {
      second = dayOfMonth(reading, at + 1);
      if (second) at = second.to + 1;
    }
    if (reading.at(at)?.plain === 'of') at += 1;
    const monthToken = reading.at(at);
    const month = monthToken?.is === 'word' ? monthNamed(monthToken.plain) : 0;
    if (month === 0) return [];
    const year = yearAt(reading, at + 1);
    const to = year?.to ?? at;
    const words = typed(index, to);
    return [first.day, ...(second ? [second.day] : [])].map((day) => ({
      from: index,
      to,
      onOrAfter: calendarDay(day, month, year?.year, words),
    }));
  }
  const token = reading.at(index);
  const month = token?.is === 'word' ? monthNamed(token.plain) : 0;
  const day = month === 0 ? undefined : dayOfMonth(reading, index + 1);
  if (!day) return [];
  let to = day.to;
  let second: { day: number; to: number } | undefined;
  if (between.has(reading.at(to + 1)?.plain ?? '')) {
    second = dayOfMonth(reading, to + 2);
    if (second) to = second.to;
  }
  const year = yearAt(reading, to + 1);
  to = year?.to ?? to;
  const words = typed(index, to);
  return [day.day, ...(second ? [second.day] : [])].map((d) => ({
    from: index,
    to,
    onOrAfter: calendarDay(d, month, year?.year, words),
  }));
}

/** '12/6', '12/06/2026', '12.6.': which of the two is the month is asked unless only one way makes a date. */
function figures(reading: Reading, index: number): Mention[] {
  const token = reading.at(index);
  if (token?.is !== 'number') return [];
  const m = /^(\d{1,2})([/.])(\d{1,2})(?:\2(\d{4}|\d{2})|\2(?!\d))?(?![\d/])/.exec(
    reading.text.slice(token.from),
  );
  if (!m || (m[2] === '.' && !m[0].endsWith('.') && m[4] === undefined)) return [];
  const [a, b] = [Number(m[1]), Number(m[3])];
  const year = m[4] === undefined ? undefined : m[4].length === 2 ? 2000 + Number(m[4]) : Number(m[4]);
  const end = token.from + m[0].length;
  let to = index;
  while (reading.all[to + 1] && reading.all[to + 1]!.from < end) to += 1;
  const readings = [
    ...(b >= 1 && b <= 12 && a <= 31 ? [{ day: a, month: b }] : []),
    ...(m[2] === '/' && a >= 1 && a <= 12 && b <= 31 && a !== b ? [{ day: b, month: a }] : []),
  ];
  if (readings.length === 0) throw new Refusal('no-such-day', `${m[0]} is no day of the calendar.`);
  if (readings.length === 2) {
    const written = readings.map(
      ({ day, month }) =>
        `${day} ${fullMonths[month - 1]![0]!.toUpperCase()}${fullMonths[month - 1]!.slice(1)}${year ? ` ${year}` : ''}`,
    );
    throw new Ambiguous(`${m[0]} can be read two ways. Which is meant?`, rewrittenAlike(reading, written));
  }
  const { day, month } = readings[0]!;
  return [{ from: index, to, onOrAfter: calendarDay(day, month, year, m[0]) }];
}

/** Both readings of every slashed date of the message, each written out in one way throughout. */
function rewrittenAlike(reading: Reading, written: readonly string[]) {
  return written.map((label, way) => {
    const request = reading.text.replace(
      /\b(\d{1,2})\/(\d{1,2})(?:\/(\d{4}|\d{2}))?\b/g,
      (whole, a: string, b: string, y?: string) => {
        const [day, month] = way === 0 ? [Number(a), Number(b)] : [Number(b), Number(a)];
        const name = fullMonths[month - 1];
        return name && day <= 31 ? `${day} ${name}${y ? ` ${y.length === 2 ? `20${y}` : y}` : ''}` : whole;
      },
    );
    return { label, request };
  });
}

function named(reading: Reading, index: number, names: Names): Mention[] {
  const token = reading.at(index);
  if (token?.is === 'date' && token.iso.length === 10) {
    const day = DateTime.fromISO(token.iso, { zone: names.zone });
    if (!day.isValid) throw new Refusal('no-such-day', `${token.typed} is no day of the calendar.`);
    return [{ from: index, to: index, onOrAfter: () => day }];
  }
  if (token?.is !== 'word') return [];
  const today = DateTime.fromMillis(names.nowMs, { zone: names.zone }).startOf('day');
  const fixed =
    token.plain === 'today' ? today : token.plain === 'tomorrow' ? today.plus({ days: 1 }) : undefined;
  if (fixed) return [{ from: index, to: index, onOrAfter: () => fixed }];
  const ahead = (weekday: number, day: DateTime) => day.plus({ days: (weekday - (day.weekday - 1) + 7) % 7 });
  if (token.plain === 'weekend') {
    return [5, 6].map((weekday) => ({ from: index, to: index, onOrAfter: (day) => ahead(weekday, day) }));
  }
  const weekday = weekdayNamed(token.plain);
  if (weekday < 0) return [];
  if (reading.at(index - 1)?.plain === 'next') {
    const near = ahead(weekday, today.plus({ days: 1 }));
    throw new Ambiguous(
      `"next ${token.typed}" can be read two ways. Which is meant?`,
      [near, near.plus({ days: 7 })].map((day) => ({
        label: day.setLocale('en-GB').toFormat('ccc d LLL'),
        request: reading.rewritten([
          { from: reading.all[index - 1]!.from, to: token.to, into: day.toISODate()! },
        ]),
      })),
    );
  }
  return [{ from: index, to: index, onOrAfter: (day) => ahead(weekday, day) }];
}

function mentions(reading: Reading, names: Names): Mention[] {
  const found: Mention[] = [];
  for (let i = 0; i < reading.all.length; i++) {
    if (!reading.at(i)) continue;
    const here = [withMonth, figures, named].reduce<Mention[]>(
      (got, read) => (got.length > 0 ? got : read(reading, i, names)),
      [],
    );
    if (here.length === 0) continue;
    found.push(...here);
    i = here.at(-1)!.to;
  }
  return found;
}

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
