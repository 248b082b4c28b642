import { DateTime } from 'luxon';
import { Refusal } from '#core/refusal.ts';
import { optional, part, quantities } from './parts.ts';
import { wasDayBefore } from './hour-of-day.ts';
import { calendarMentions, monthMention, ordinalDay } from './mentions.ts';
import type { Reading } from './reading.ts';
import { sayMoment } from './say.ts';
import { weekdayNamed } from './weekday.ts';

/** 'This morning', 'last night', 'yesterday evening', 'tonight' beside a time on the clock: the day, by the words that say it. */
function partOfDayNamed(reading: Reading, now: DateTime): DateTime | undefined {
  const clock = reading.all.find((token) => token.is === 'clock');
  if (clock?.is !== 'clock') return undefined;
  for (const index of reading.left()) {
    const part = reading.all[index]!.plain;
    if (!/^(?:morning|afternoon|evening|night|tonight)$/.test(part)) continue;
    const lead = reading.at(index - 1)?.plain;
    const isLed = /^(?:this|the|last|yesterday)$/.test(lead ?? '') && part !== 'tonight';
    if (!isLed && part !== 'tonight') continue;
    reading.take(index, ...(isLed ? [index - 1] : []));
    if (lead === 'the') reading.takeWords('in');
    return (wasDayBefore(lead, clock.hour) ? now.minus({ days: 1 }) : now).startOf('day');
  }
  return undefined;
}

function dayNamed(reading: Reading, now: DateTime): DateTime | undefined {
  const byPart = partOfDayNamed(reading, now);
  if (byPart) return byPart;
  for (const index of reading.left()) {
    const token = reading.all[index]!;
    let day: DateTime | undefined;
    if (token.is === 'date' && token.iso.length === 10) day = DateTime.fromISO(token.iso, { zone: now.zone });
    else if (token.is === 'word' && token.plain === 'yesterday') day = now.minus({ days: 1 }).startOf('day');
    else if (token.is === 'word' && token.plain === 'today') day = now.startOf('day');
    else if (token.is === 'word' && weekdayNamed(token.plain) >= 0) {
      const back = (now.weekday - 1 - weekdayNamed(token.plain) + 7) % 7;
      day = now.minus({ days: back }).startOf('day');
    }
    if (!day) continue;
    if (!day.isValid) throw new Refusal('no-such-day', `${token.typed} is no day of the calendar.`);
    reading.take(index);
    return day;
  }
  const written = calendarMentions(reading)[0];
  if (!written) return undefined;
  for (let i = written.from; i <= written.to; i++) reading.take(i);
  return written.onOrBefore(now);
}

/** Days that have been, from the first's beginning to the last's end. */
export interface PastDays {
  readonly fromMs: number;
  readonly toMs: number;
}

const pastWeekend = (now: DateTime): DateTime => now.minus({ days: now.weekday === 7 ? 1 : now.weekday + 1 });

/** 'Last week', 'this month', 'the weekend': the first and the last day; the words that say it, by their indexes. */
function spanNamed(reading: Reading, now: DateTime): { from: DateTime; to: DateTime } | undefined {
  for (const index of reading.left()) {
    const unit = /^(week|month|weekend|year)$/.exec(reading.all[index]!.plain)?.[1];
    if (unit === undefined) continue;
    const lead = reading.at(index - 1)?.plain;
    if (lead !== 'last' && lead !== 'this' && lead !== 'the' && lead !== 'past') continue;
    reading.take(index, index - 1);
    if (unit === 'weekend') {
      const saturday = pastWeekend(now).startOf('day');
      return { from: saturday, to: saturday.plus({ days: 1 }) };
    }
    const back = lead === 'last' ? 1 : 0;
    const within = now.minus({ [`${unit}s`]: back });
    return {
      from: within.startOf(unit as 'week' | 'month' | 'year'),
      to: back === 0 ? now : within.endOf(unit as 'week' | 'month' | 'year'),
    };
  }
  return undefined;
}

/** 'Sunday', 'the 20th of April', 'since Friday', 'last week': days that have been. @throws Refusal 'no-such-day' */
export const pastDays = optional(
  part<PastDays>('a day such as sunday or 20 April', (reading, { nowMs, zone }) => {
    const now = DateTime.fromMillis(nowMs, { zone });
    const span = spanNamed(reading, now);
    const isSince = reading.keyword('since') !== undefined;
    const day = span ? undefined : (dayNamed(reading, now) ?? ordinalNamed(reading, now));
    if (!span && !day) return undefined;
    reading.takeWords('on', 'the', 'last', 'from', 'of');
    const from = span?.from ?? day!;
    const to = isSince ? now : (span?.to ?? day!);
    return { fromMs: from.startOf('day').toMillis(), toMs: to.endOf('day').toMillis() };
  }),
);

/** 'The 20th': the last such day that has been. */
function ordinalNamed(reading: Reading, now: DateTime): DateTime | undefined {
  for (const index of reading.left()) {
    const found = ordinalDay(reading, index);
    if (!found) continue;
    for (let i = index; i <= found.to; i++) reading.take(i);
    return [0, 1, 2, 3]
      .map((n) => now.startOf('month').minus({ months: n }))
      .filter((month) => found.day <= (month.daysInMonth ?? 28))
      .map((month) => month.set({ day: found.day }))
      .find((one) => one <= now);
  }
  return undefined;
}

/** A clock time without a day that lies further back than this is not taken for yesterday's, h. Chosen. */
const longestBackHours = 12;

/**
 * A moment that has passed: 'at 14:30', 'yesterday 18:00', '2 h ago', '2026-05-03 09:00'. A clock time without a
 * day that would still come is yesterday's, when that is less than half a day ago.
 * @throws Refusal 'in-the-future' and 'no-such-day'
 */
export const pastMoment = optional(
  part<number>('a time such as yesterday 18:00', (reading, { nowMs, zone }) => {
    const now = DateTime.fromMillis(nowMs, { zone });
    const ago = reading.all.findIndex((t, i) => t.plain === 'ago' && reading.at(i) !== undefined);
    if (ago > 0) {
      const span = quantities(reading, 'time').find((q) => q.index === ago - 1);
      if (span) {
        reading.take(ago, span.index);
        return nowMs - span.value * 1000;
      }
    }
    const day = dayNamed(reading, now);
    const clockIndex = [...reading.left()].find((i) => reading.all[i]!.is === 'clock');
    if (!day && clockIndex === undefined) return undefined;
    // 'Today' alone is now, not midnight.
    if (day && clockIndex === undefined && day.hasSame(now, 'day')) return nowMs;
    let at = day ?? now;
    if (clockIndex !== undefined) {
      const clock = reading.all[clockIndex]!;
      if (clock.is === 'clock')
        at = at.set({ hour: clock.hour, minute: clock.minute, second: 0, millisecond: 0 });
      reading.take(clockIndex);
      // Late last night is past; an hour that is still to come today asks for its day.
      if (!day && at > now) {
        const yesterday = at.minus({ days: 1 });
        if (now.diff(yesterday, 'hours').hours > longestBackHours)
          throw new Refusal(
            'in-the-future',
            `${at.toFormat('HH:mm')} is still to come today. If yesterday is meant, say so: yesterday ${at.toFormat('HH:mm')}.`,
          );
        at = yesterday;
      }
    }
    if (at.toMillis() > nowMs) {
      throw new Refusal('in-the-future', `${sayMoment(at.toMillis(), zone)} has not come yet.`);
    }
    return at.toMillis();
  }),
);

const befores = ['before', 'until', 'by', 'till'];

/** The day that 'before' speaks of: '2027-03', '15 March', 'March 2027', 'next' of its kind where no year stands. */
function dayAfter(reading: Reading, today: DateTime): DateTime | undefined {
  const index = [...reading.left()].find((i) => reading.all[i]!.is === 'date');
  const token = index === undefined ? undefined : reading.all[index]!;
  if (index !== undefined && token?.is === 'date') {
    const day = DateTime.fromISO(token.iso, { zone: today.zone });
    if (!day.isValid) throw new Refusal('no-such-day', `${token.typed} is no day or month of the calendar.`);
    reading.take(index);
    if (reading.wordBefore(index, ...befores)) reading.take(index - 1);
    return day;
  }
  const year = [...reading.left()].find((i) => {
    const token = reading.all[i]!;
    return token.is === 'number' && /^20\d\d$/.test(token.typed) && reading.wordBefore(i, ...befores);
  });
  if (year !== undefined) {
    const first = DateTime.fromObject({ year: Number(reading.all[year]!.typed) }, { zone: today.zone });
    reading.take(year, year - 1);
    return first;
  }
  const written =
    calendarMentions(reading)[0] ??
    [...reading.left()]
      .filter((i) => reading.wordBefore(i, ...befores))
      .flatMap((i) => monthMention(reading, i) ?? [])[0];
  if (!written) return undefined;
  for (let i = written.from; i <= written.to; i++) reading.take(i);
  if (reading.wordBefore(written.from, ...befores)) reading.take(written.from - 1);
  return written.onOrAfter(today);
}

/** The last day named by 'before 2027-03' or 'before March' (the end of the month before) or 'before 15 March', as ISO. */
export const beforeDay = optional(
  part<string>('a month such as before 2027-03', (reading, { nowMs, zone }) => {
    const day = dayAfter(reading, DateTime.fromMillis(nowMs, { zone }).startOf('day'));
    if (day) return day.minus({ days: 1 }).toISODate()!;
    const index = [...reading.left()].find((i) => reading.all[i]!.plain === 'before');
    const what = index === undefined ? undefined : reading.all[index + 1];
    if (what)
      throw new Refusal(
        'no-such-day',
        `I could not place "before ${what.typed}": a month or a day such as 2027-03 is needed.`,
      );
    return undefined;
  }),
);
