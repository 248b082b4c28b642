import { DateTime } from 'luxon';
import type { LocalDays } from '#core/reminders.ts';

/** Nobody is woken: from nine in the evening to eight in the morning nothing is posted. Chosen. */
const eveningHour = 21;
const morningHour = 8;
/** Nobody gets up to seal pouches: from ten in the evening to six in the morning. Chosen. */
const sleepFromHour = 22;
const sleepToHour = 6;

/** The calendar of a zone, clock changes included. @param zone IANA name */
export function localDays(zone: string): LocalDays {
  const morning = (day: DateTime) =>
    day.set({ hour: morningHour, minute: 0, second: 0, millisecond: 0 }).toMillis();
  const parsed = (day: string) => DateTime.fromISO(day, { zone });
  return {
    dayOf: (ms) => DateTime.fromMillis(ms, { zone }).toISODate()!,
    morningOf: (day) => morning(parsed(day)),
    plusDays: (day, days) => parsed(day).plus({ days }).toISODate()!,
    awake: (ms) => {
      const moment = DateTime.fromMillis(ms, { zone });
      if (moment.hour < morningHour) return morning(moment);
      return moment.hour >= eveningHour ? morning(moment.plus({ days: 1 })) : ms;
    },
    isAsleep: (ms) => {
      const { hour } = DateTime.fromMillis(ms, { zone });
      return hour >= sleepFromHour || hour < sleepToHour;
    },
    eveningBefore: (ms) => {
      const moment = DateTime.fromMillis(ms, { zone });
      const evening = moment.set({ hour: eveningHour, minute: 0, second: 0, millisecond: 0 });
      return (evening <= moment ? evening : evening.minus({ days: 1 })).toMillis();
    },
  };
}
