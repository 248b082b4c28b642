import { DateTime } from 'luxon';
import { Refusal } from '#core/refusal.ts';
import { Ambiguous } from './ambiguous.ts';
import { figures, type Mention, ordinalDay, weekendOfMonth, withMonth } from './mentions.ts';
import type { Names } from './part.ts';
import type { Reading } from './reading.ts';
import type { Token } from './tokens.ts';
import { weekdayNamed } from './weekday.ts';

const ahead = (weekday: number, day: DateTime) => day.plus({ days: (weekday - (day.weekday - 1) + 7) % 7 });
const saturday = 5;

/** Asks which of some days is meant; a weekend is two days. */
function askWhich(
  reading: Reading,
  [from, to]: readonly [number, number],
  starts: readonly DateTime[],
  isWeekend: boolean,
): Ambiguous {
  const place = { from: reading.all[from]!.from, to: reading.all[to]!.to };
  const said = (day: DateTime) => day.setLocale('en-GB').toFormat('ccc d LLL');
  return new Ambiguous(
    `"${reading.text.slice(place.from, place.to)}" can be read two ways. Which is meant?`,
    starts.map((day) => ({
      label: isWeekend ? `${said(day)} and ${said(day.plus({ days: 1 }))}` : said(day),
      request: reading.rewritten([
        {
          ...place,
          into: isWeekend ? `${day.toISODate()} to ${day.plus({ days: 1 }).toISODate()}` : day.toISODate()!,
        },
      ]),
    })),
  );
}

/** 'The weekend', 'this weekend', 'the weekend after', 'the weekend after next': from Saturday to Sunday. */
function weekend(reading: Reading, index: number, today: DateTime): Mention[] {
  const near = ahead(saturday, today.plus({ days: 1 }));
  const plain = (i: number) => reading.at(i)?.plain ?? '';
  if (plain(index - 1) === 'next')
    throw askWhich(reading, [index - 1, index], [near, near.plus({ days: 7 })], true);
  if (plain(index + 1) === 'after' && plain(index + 2) === 'next')
    throw askWhich(reading, [index, index + 2], [near.plus({ days: 7 }), near.plus({ days: 14 })], true);
  const isAfter = plain(index + 1) === 'after';
  const isCounted = isAfter && /^(?:this|that)$/.test(plain(index + 2));
  const from = /^(?:this|the|coming)$/.test(plain(index - 1)) ? index - 1 : index;
  const to = index + Number(isAfter) + Number(isCounted);
  return [5, 6].map((weekday) => ({
    from,
    to,
    onOrAfter: (day) => ahead(weekday, isAfter ? near.plus({ days: 7 }) : day),
  }));
}

/** How many days a length is: 'three days', 'a week', 'two weeks', 'a fortnight'; where it ends. */
export function lengthAt(reading: Reading, index: number): { days: number; to: number } | undefined {
  const token = reading.at(index);
  if (token?.is === 'quantity')
    return token.unit.kind === 'time' && (token.value * token.unit.factor) % 86_400 === 0
      ? { days: (token.value * token.unit.factor) / 86_400, to: index }
      : undefined;
  const isOne = token?.plain === 'a' || token?.plain === 'an';
  const count = token?.is === 'number' ? token.value : isOne ? 1 : undefined;
  const word = reading.at(index + 1)?.plain ?? '';
  if (count === undefined || !Number.isInteger(count) || count < 1) return undefined;
  const days = /^days?$/.test(word)
    ? count
    : /^weeks?$/.test(word)
      ? count * 7
      : word === 'fortnight'
        ? count * 14
        : undefined;
  return days === undefined ? undefined : { days, to: index + 1 };
}

/** 'In two weeks', 'in 10 days', 'two weeks from now', 'tomorrow', 'the day after tomorrow'. */
function counted(reading: Reading, index: number, today: DateTime): Mention[] {
  const plain = (i: number) => reading.at(i)?.plain ?? '';
  const fixed = (day: DateTime, to = index): Mention[] => [{ from: index, to, onOrAfter: () => day }];
  if (plain(index) === 'today') return fixed(today);
  if (plain(index) === 'tomorrow') return fixed(today.plus({ days: 1 }));
  if (plain(index) === 'day' && plain(index + 1) === 'after' && plain(index + 2) === 'tomorrow')
    return fixed(today.plus({ days: 2 }), index + 2);
  const isAhead = plain(index) === 'in';
  const length = lengthAt(reading, isAhead ? index + 1 : index);
  if (!length) return [];
  if (isAhead) return fixed(today.plus({ days: length.days }), length.to);
  const isFromNow = plain(length.to + 1) === 'from' && /^(?:now|today)$/.test(plain(length.to + 2));
  return isFromNow ? fixed(today.plus({ days: length.days }), length.to + 2) : [];
}

/** 'Friday', 'next Friday', 'Monday week', 'a week on Monday'. */
function weekdays(reading: Reading, index: number, today: DateTime): Mention[] {
  const token = reading.at(index);
  const weekday = token?.is === 'word' ? weekdayNamed(token.plain) : -1;
  if (weekday < 0) return [];
  const plain = (i: number) => reading.at(i)?.plain ?? '';
  const near = ahead(weekday, today.plus({ days: 1 }));
  if (plain(index - 1) === 'next')
    throw askWhich(reading, [index - 1, index], [near, near.plus({ days: 7 })], false);
  const inAWeek = ahead(weekday, today).plus({ days: 7 });
  if (plain(index + 1) === 'week') return [{ from: index, to: index + 1, onOrAfter: () => inAWeek }];
  const isAWeekOn = /^(?:on|from|this)$/.test(plain(index - 1)) && plain(index - 2) === 'week';
  if (isAWeekOn)
    return [{ from: plain(index - 3) === 'a' ? index - 3 : index - 2, to: index, onOrAfter: () => inAWeek }];
  return [{ from: index, to: index, onOrAfter: (day) => ahead(weekday, day) }];
}

function inIso(reading: Reading, index: number, zone: string): Mention[] {
  const token = reading.at(index);
  if (token?.is !== 'date' || token.iso.length !== 10) return [];
  const day = DateTime.fromISO(token.iso, { zone });
  if (!day.isValid) throw new Refusal('no-such-day', `${token.typed} is no day of the calendar.`);
  return [{ from: index, to: index, onOrAfter: () => day }];
}

const isTitled = (token: Token | undefined): boolean => token?.is === 'word' && /^\p{Lu}/u.test(token.typed);

/** 'Friday Harbor' and 'Saturday hike' are places: a day's name before another word of a name, where days are told besides. */
function isOfAName(reading: Reading, { from, to }: Mention): boolean {
  const [day, next] = [reading.at(from), reading.at(to + 1)];
  return (
    from === to &&
    isTitled(day) &&
    next?.is === 'word' &&
    weekdayNamed(next.plain) < 0 &&
    (isTitled(next) || /^(?:hike|trip|tour|walk|camp)$/.test(next.plain))
  );
}

interface Found extends Mention {
  readonly kind: 'calendar' | 'counted' | 'weekday' | 'weekend';
}

function mentionedAt(reading: Reading, index: number, names: Names, today: DateTime): Found[] {
  const token = reading.at(index);
  const monthly = weekendOfMonth(reading, index);
  if (monthly.length > 0) return monthly.map((one) => ({ ...one, kind: 'weekend' }));
  const calendar = [withMonth(reading, index), inIso(reading, index, names.zone), figures(reading, index)];
  const first = calendar.find(({ length }) => length > 0);
  if (first) return first.map((one) => ({ ...one, kind: 'calendar' }));
  if (token?.plain === 'weekend')
    return weekend(reading, index, today).map((one) => ({ ...one, kind: 'weekend' }));
  const ahead = counted(reading, index, today);
  if (ahead.length > 0) return ahead.map((one) => ({ ...one, kind: 'counted' }));
  const days = weekdays(reading, index, today);
  if (days.length > 0) return days.map((one) => ({ ...one, kind: 'weekday' }));
  return ordinal(reading, index).map((one) => ({ ...one, kind: 'calendar' }));
}

/** 'On the 13th': the first such day of a month on or after a given one. */
function ordinal(reading: Reading, index: number): Mention[] {
  const found = ordinalDay(reading, index);
  if (!found) return [];
  const from = reading.at(index - 1)?.plain === 'the' ? index - 1 : index;
  const onOrAfter = (day: DateTime) =>
    Array.from({ length: 4 }, (_, n) => day.startOf('month').plus({ months: n }))
      .filter((month) => found.day <= (month.daysInMonth ?? 28))
      .map((month) => month.set({ day: found.day }))
      .find((one) => one >= day);
  return [{ from, to: found.to, onOrAfter }];
}

/** A weekday beside a date names that date's day: it is taken with it, and has to agree. */
function besideDates(reading: Reading, found: readonly Found[], today: DateTime): Found[] {
  const dates = found.filter(({ kind }) => kind === 'calendar');
  if (dates.length === 0) return aroundWeekend(reading, found);
  const joined = dates.map((date) => {
    const own = found.find(
      ({ kind, from, to }) =>
        kind === 'weekday' &&
        ((date.from - to >= 1 && date.from - to <= 3 && isBridge(reading, to + 1, date.from - 1)) ||
          (from - date.to >= 1 && from - date.to <= 2 && reading.at(from - 1)?.plain === '(')),
    );
    if (!own) return date;
    const day = date.onOrAfter(today);
    if (day && own.onOrAfter(day)?.toISODate() !== day.toISODate())
      throw new Refusal(
        'no-such-day',
        `${day.setLocale('en-GB').toFormat('d LLLL yyyy')} is a ${day.setLocale('en-GB').toFormat('cccc')}. Which day is meant?`,
      );
    return { ...date, from: Math.min(date.from, own.from), to: Math.max(date.to, own.to) };
  });
  // 'Saturday hike … 15 May': the day's name only says again what the date says.
  const days = dates.map((date) => date.onOrAfter(today)?.toISODate() ?? '');
  const isSaidAgain = (one: Found) =>
    one.kind === 'weekday' &&
    // 'Rosa from Saturday' is Rosa's own day.
    !/^(?:from|to|until|till|leaves|leaving|comes|joins|arrives|since|only|just|on)$/.test(
      reading.at(one.from - 1)?.plain ?? '',
    ) &&
    joined.every(({ from, to }) => one.from < from || one.to > to) &&
    days.includes(one.onOrAfter(dates[0]!.onOrAfter(today) ?? today)?.toISODate() ?? '');
  for (const one of found)
    if (one.kind === 'weekend' || isSaidAgain(one)) for (let i = one.from; i <= one.to; i++) reading.take(i);
  return joined;
}

/** 'First weekend of July, Friday dinner to Sunday': days of the week around that weekend, from Thursday to Tuesday. */
function aroundWeekend(reading: Reading, found: readonly Found[]): Found[] {
  const weekend = found.filter(({ kind }) => kind === 'weekend');
  const days = found.filter(({ kind }) => kind === 'weekday');
  if (weekend.length !== 2 || days.length === 0) return [...found];
  for (const one of weekend) for (let i = one.from; i <= one.to; i++) reading.take(i);
  return days.map((one) => ({
    ...one,
    onOrAfter: (day) => {
      const saturday = weekend[0]!.onOrAfter(day);
      return saturday && one.onOrAfter(saturday.minus({ days: 2 }));
    },
  }));
}

const isBridge = (reading: Reading, from: number, to: number): boolean => {
  for (let i = from; i <= to; i++) if (!/^(?:,|the|\.)$/.test(reading.at(i)?.plain ?? '')) return false;
  return true;
};

/** Every day that a message mentions, in its order. A weekday that is part of a name is none. */
export function mentions(reading: Reading, names: Names): Mention[] {
  const today = DateTime.fromMillis(names.nowMs, { zone: names.zone }).startOf('day');
  const found: Found[] = [];
  for (let i = 0; i < reading.all.length; i++) {
    if (!reading.at(i)) continue;
    const here = mentionedAt(reading, i, names, today);
    if (here.length === 0) continue;
    found.push(...here);
    i = here.at(-1)!.to;
  }
  const others = found.filter((one) => one.kind !== 'weekday' || !isOfAName(reading, one));
  return besideDates(reading, others.length > 0 ? others : found, today);
}
