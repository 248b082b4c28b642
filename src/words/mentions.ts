import { DateTime } from 'luxon';
import { Refusal } from '#core/refusal.ts';
import { Ambiguous } from './ambiguous.ts';
import type { Reading } from './reading.ts';

/** A day as it was mentioned: a calendar day, or one whose year or month is still to be found. */
export interface Mention {
  readonly from: number;
  readonly to: number;
  /** The first such day that is not before a given one. */
  readonly onOrAfter: (day: DateTime) => DateTime | undefined;
}

/** A day written out, which may lie behind as well as ahead. */
export interface Written extends Mention {
  /** The last such day that is not after a given moment. */
  readonly onOrBefore: (moment: DateTime) => DateTime | undefined;
}

const months = ['jan', 'feb', 'mar', 'apr', 'may', 'jun', 'jul', 'aug', 'sep', 'oct', 'nov', 'dec'];
const fullMonths =
  'january february march april may june july august september october november december'.split(' ');
const ordinals = new Set(['st', 'nd', 'rd', 'th']);
export const between = new Set(['to', '-', 'until', 'till', 'through', 'thru', 'and', 'bis']);

function monthNamed(word: string): number {
  const full = fullMonths.indexOf(word);
  return full >= 0 ? full + 1 : months.indexOf(word === 'sept' ? 'sep' : word) + 1;
}

const ordinalWords =
  'first second third fourth fifth sixth seventh eighth ninth tenth eleventh twelfth thirteenth fourteenth fifteenth sixteenth seventeenth eighteenth nineteenth twentieth'.split(
    ' ',
  );

/** 'Nineteenth', 'twenty-first', 'twenty first': a day as it is spoken. */
function spokenDay(reading: Reading, index: number): { day: number; to: number } | undefined {
  const token = reading.at(index);
  if (token?.is === 'word') {
    if (token.plain === 'thirtieth') return { day: 30, to: index };
    const day = ordinalWords.indexOf(token.plain) + 1;
    return day === 0 ? undefined : { day, to: index };
  }
  const behind = reading.at(index + 1)?.plain === '-' ? index + 2 : index + 1;
  const unit = ordinalWords.indexOf(reading.at(behind)?.plain ?? '') + 1;
  const isTens = token?.is === 'number' && token.spelled && (token.value === 20 || token.value === 30);
  return isTens && unit >= 1 && unit <= 9 ? { day: token.value + unit, to: behind } : undefined;
}

/** 'The 13th', 'thirteenth': a day whose month is not said. */
export function ordinalDay(reading: Reading, index: number): { day: number; to: number } | undefined {
  const spoken = spokenDay(reading, index);
  if (spoken && (spoken.day > 3 || reading.at(index - 1)?.plain === 'the')) return spoken;
  const found = spoken ? undefined : dayOfMonth(reading, index);
  return found && found.to > index ? found : undefined;
}

function dayOfMonth(reading: Reading, index: number): { day: number; to: number } | undefined {
  const token = reading.at(index);
  const spoken = spokenDay(reading, index);
  if (spoken && spoken.day <= 31) return spoken;
  if (token?.is !== 'number' || !/^\d{1,2}$/.test(token.typed.trim()) || token.value < 1 || token.value > 31)
    return undefined;
  const suffix = reading.at(index + 1);
  const to = suffix?.is === 'word' && ordinals.has(suffix.plain) ? index + 1 : index;
  return { day: token.value, to };
}

/** Whether a day was written as one: '21st', 'twenty-first'; '21' alone may count something else. */
const isOrdinal = (reading: Reading, { to }: { to: number }): boolean => {
  const last = reading.at(to);
  return last?.is === 'word';
};

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
): Pick<Written, 'onOrAfter' | 'onOrBefore'> {
  const leap = DateTime.utc(2024, month, day);
  if (!leap.isValid) throw new Refusal('no-such-day', `${typed} is no day of the calendar.`);
  const among = (beside: DateTime, steps: readonly number[], fits: (date: DateTime) => boolean) =>
    (year === undefined ? steps.map((n) => beside.year + n) : [year])
      .map((y) => DateTime.fromObject({ year: y, month, day }, { zone: beside.zone }))
      .find((date) => date.isValid && (year !== undefined || fits(date)));
  return {
    onOrAfter: (earliest) => among(earliest, [0, 1, 2, 3, 4], (date) => date >= earliest),
    onOrBefore: (latest) => among(latest, [0, -1, -2, -3, -4], (date) => date <= latest),
  };
}

/** The second day of a row: behind 'to' or 'till', perhaps with 'the' before it. */
function lastDay(reading: Reading, index: number): { day: number; to: number } | undefined {
  if (!between.has(reading.at(index)?.plain ?? '')) return undefined;
  const the = reading.at(index + 1)?.plain === 'the' ? 1 : 0;
  return dayOfMonth(reading, index + 1 + the);
}

/** '12 June', '12-14 June', 'June 12-14', '12 June 2027': the mentions that start at an index. */
export function withMonth(reading: Reading, index: number): Written[] {
  const typed = (a: number, b: number) => reading.text.slice(reading.all[a]!.from, reading.all[b]!.to);
  const first = dayOfMonth(reading, index);
  if (first) {
    let at = first.to + 1;
    let second = lastDay(reading, at);
    if (second) at = second.to + 1;
    if (reading.at(at)?.plain === 'of') at += 1;
    const monthToken = reading.at(at);
    const month = monthToken?.is === 'word' ? monthNamed(monthToken.plain) : 0;
    if (month === 0) return [];
    const year = yearAt(reading, at + 1);
    let to = year?.to ?? at;
    // 'From the 19th of June till the 21st': the month is said once.
    if (!second && !year) {
      const ends = lastDay(reading, to + 1);
      const isOwn =
        ends &&
        monthNamed(reading.at(ends.to + (reading.at(ends.to + 1)?.plain === 'of' ? 2 : 1))?.plain ?? '') > 0;
      if (ends && !isOwn && isOrdinal(reading, ends)) {
        second = ends;
        to = ends.to;
      }
    }
    const words = typed(index, to);
    return [first.day, ...(second ? [second.day] : [])].map((day) => ({
      from: index,
      to,
      ...calendarDay(day, month, year?.year, words),
    }));
  }
  const token = reading.at(index);
  const month = token?.is === 'word' ? monthNamed(token.plain) : 0;
  const day = month === 0 ? undefined : dayOfMonth(reading, index + 1);
  if (!day) return [];
  let to = day.to;
  const second = lastDay(reading, to + 1);
  if (second) to = second.to;
  const year = yearAt(reading, to + 1);
  to = year?.to ?? to;
  const words = typed(index, to);
  return [day.day, ...(second ? [second.day] : [])].map((d) => ({
    from: index,
    to,
    ...calendarDay(d, month, year?.year, words),
  }));
}

/** 'First weekend of July', 'the last weekend in June': its Saturday and Sunday. */
export function weekendOfMonth(reading: Reading, index: number): Written[] {
  const plain = (i: number) => reading.at(i)?.plain ?? '';
  const nth = ['first', 'second', 'third', 'fourth'].indexOf(plain(index)) + 1;
  const isLast = plain(index) === 'last';
  if ((nth === 0 && !isLast) || plain(index + 1) !== 'weekend' || !/^(?:of|in)$/.test(plain(index + 2)))
    return [];
  const month = monthNamed(plain(index + 3));
  if (month === 0) return [];
  const year = yearAt(reading, index + 4);
  const to = year?.to ?? index + 3;
  const from = plain(index - 1) === 'the' ? index - 1 : index;
  const saturdayIn = (y: number, zone: DateTime['zone']) => {
    const first = DateTime.fromObject({ year: y, month, day: 1 }, { zone });
    if (isLast) {
      const last = first.endOf('month').startOf('day');
      // The Sunday has to lie in that month, too.
      const sunday = last.minus({ days: last.weekday % 7 });
      return sunday.minus({ days: 1 });
    }
    return first.plus({ days: ((6 - first.weekday + 7) % 7) + 7 * (nth - 1) });
  };
  return [0, 1].map((more) => {
    const near = (beside: DateTime, steps: readonly number[], fits: (day: DateTime) => boolean) =>
      (year === undefined ? steps.map((n) => beside.year + n) : [year.year])
        .map((y) => saturdayIn(y, beside.zone).plus({ days: more }))
        .find((day) => year !== undefined || fits(day));
    return {
      from,
      to,
      onOrAfter: (earliest: DateTime) => near(earliest, [0, 1], (day) => day >= earliest),
      onOrBefore: (latest: DateTime) => near(latest, [0, -1], (day) => day <= latest),
    };
  });
}

/** '12/6', '12/06/2026', '12.6.': which of the two is the month is asked unless only one way makes a date. */
export function figures(reading: Reading, index: number): Written[] {
  const token = reading.at(index);
  if (token?.is !== 'number') return [];
  // '4.7.-6.7.': the dash joins two days, it is no minus.
  const isDashed = token.typed.startsWith('-');
  const m = /^(\d{1,2})([/.])(\d{1,2})(?:\2(\d{4}|\d{2})|\2(?!\d))?(?![\d/])/.exec(
    reading.text.slice(token.from + (isDashed ? 1 : 0), token.from + 17),
  );
  if (!m || (m[2] === '.' && !m[0].endsWith('.') && m[4] === undefined)) return [];
  const [a, b] = [Number(m[1]), Number(m[3])];
  const year = m[4] === undefined ? undefined : m[4].length === 2 ? 2000 + Number(m[4]) : Number(m[4]);
  const end = token.from + (isDashed ? 1 : 0) + m[0].length;
  let to = index;
  while (reading.all[to + 1] && reading.all[to + 1]!.from < end) to += 1;
  const readings = [
    ...(b >= 1 && b <= 12 && a <= 31 ? [{ day: a, month: b }] : []),
    ...(m[2] === '/' && a >= 1 && a <= 12 && b <= 31 && a !== b ? [{ day: b, month: a }] : []),
  ];
  if (readings.length === 0) throw new Refusal('no-such-day', `${m[0]} is no day of the calendar.`);
  const only = readings.length === 2 ? onlyWay(reading.text) : undefined;
  if (only !== undefined) readings.splice(1 - only, 1);
  if (readings.length === 2) {
    const written = readings.map(
      ({ day, month }) =>
        `${day} ${fullMonths[month - 1]![0]!.toUpperCase()}${fullMonths[month - 1]!.slice(1)}${year ? ` ${year}` : ''}`,
    );
    throw new Ambiguous(`${m[0]} can be read two ways. Which is meant?`, rewrittenAlike(reading, written));
  }
  const { day, month } = readings[0]!;
  return [{ from: index, to, ...calendarDay(day, month, year, m[0]) }];
}

const slashed = /\b(\d{1,2})\/(\d{1,2})(?:\/(\d{4}|\d{2}))?\b/g;

/** 0 when another slashed date of the message can only be day/month, 1 for month/day; one hand writes one way. */
function onlyWay(text: string): 0 | 1 | undefined {
  const ways = new Set<0 | 1>();
  for (const [, a, b] of text.slice(0, 400).matchAll(slashed)) {
    if (Number(a) > 12 && Number(a) <= 31 && Number(b) <= 12) ways.add(0);
    if (Number(b) > 12 && Number(b) <= 31 && Number(a) <= 12) ways.add(1);
  }
  return ways.size === 1 ? [...ways][0] : undefined;
}

/** Both readings of every slashed date of the message, each written out in one way throughout. */
function rewrittenAlike(reading: Reading, written: readonly string[]) {
  return written.map((label, way) => {
    const request = reading.text.replace(slashed, (whole, a: string, b: string, y?: string) => {
      const [day, month] = way === 0 ? [Number(a), Number(b)] : [Number(b), Number(a)];
      const name = fullMonths[month - 1];
      return name && day <= 31 ? `${day} ${name}${y ? ` ${y.length === 2 ? `20${y}` : y}` : ''}` : whole;
    });
    return { label, request };
  });
}

/** Days written with their month, by name or in figures. */
export function calendarMentions(reading: Reading): Written[] {
  for (const index of reading.left()) {
    const here = withMonth(reading, index);
    if (here.length > 0) return here;
    // Without such a word 3/4 is a fraction.
    const inFigures = reading.wordBefore(index, 'on', 'before', 'until', 'till', 'by')
      ? figures(reading, index)
      : [];
    if (inFigures.length > 0) return inFigures;
  }
  return [];
}

/** 'March', 'Dec 2027': the first day of the month. */
export function monthMention(reading: Reading, index: number): Written | undefined {
  const token = reading.at(index);
  const month = token?.is === 'word' ? monthNamed(token.plain) : 0;
  if (month === 0) return undefined;
  const year = yearAt(reading, index + 1);
  const to = year?.to ?? index;
  return { from: index, to, ...calendarDay(1, month, year?.year, token!.typed) };
}
