import ical, { ICalCalendarMethod } from 'ical-generator';

/** Something of a day, or of an hour. */
export interface CalendarEntry {
  /** The same for the same thing whenever it is written, so that a second import changes it. */
  readonly id: string;
  readonly says: string;
  readonly more: string;
  readonly when:
    | { readonly is: 'days'; readonly fromDay: string; readonly toDay: string }
    | { readonly is: 'moment'; readonly atMs: number };
}

/** How long a thing of a moment stands in a calendar, ms. Chosen. */
const momentLengthMs = 15 * 60_000;
/** Minutes are counted from here, so that they fit the number of an entry's changes. */
const countsFromMs = Date.UTC(2026, 0, 1);

/**
 * A household's calendar as a file of the open standard (RFC 5545). Days stay days in any zone; moments are in UTC.
 * @param nowMs when it is written: the later file wins where an entry is there already
 */
export function calendarText(name: string, entries: readonly CalendarEntry[], nowMs: number): string {
  const calendar = ical({
    name,
    prodId: { company: 'tray-to-trail', product: 'household', language: 'EN' },
    method: ICalCalendarMethod.PUBLISH,
  });
  for (const { id, says, more, when } of entries) {
    const utc = (day: string, plusDays = 0) =>
      new Date(Date.parse(`${day}T00:00:00Z`) + plusDays * 86_400_000);
    calendar.createEvent({
      id: `${id}@tray-to-trail`,
      sequence: Math.max(0, Math.floor((nowMs - countsFromMs) / 60_000)),
      stamp: new Date(nowMs),
      summary: says,
      description: more,
      ...(when.is === 'days'
        ? // The end of a day is the morning after it.
          { allDay: true, start: utc(when.fromDay), end: utc(when.toDay, 1) }
        : { start: new Date(when.atMs), end: new Date(when.atMs + momentLengthMs) }),
    });
  }
  return calendar.toString();
}
