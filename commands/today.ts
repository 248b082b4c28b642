import { command } from '#chat/command.ts';
import { dayOfTrip, eatenButtons } from '#cards/today-card.ts';
import { heldFor } from '#house/packing.ts';
import { todayOf } from '#house/today.ts';
import { tripNow } from '#house/trip-now.ts';
import { sayDayOf } from '#house/trips.ts';
import { Refusal } from '#core/refusal.ts';
import { optional } from '#words/parts.ts';
import { dayOfTrip as dayMeant, wholeTripFlag } from '#words/today-parts.ts';

export default command({
  name: 'today',
  alsoCalled: ['tonight'],
  usage: '/today [trip] [tomorrow | sunday | whole trip]',
  summary: 'on a trip: what is opened at each meal, for whom, the water, how long it stands',
  examples: ['/today', '/today tomorrow', '/today whole trip'],
  help: [
    'Before a trip it shows the first day, and any day of it by name. "whole trip" writes every day down, to be read without a network; /pack paper prints it.',
  ],
  takes: { whole: wholeTripFlag, when: optional(dayMeant) },
  run: ({ whole, when }, house) => {
    const trip = tripNow(house, when?.trip, (place) => `/today "${place}"`);
    const today = todayOf(house);
    const days = [...new Set(trip.slots.map(({ onDay }) => onDay))].toSorted();
    const ever = house.trips.held(trip.id);
    if (ever.length === 0)
      return {
        chosen: null,
        place: trip.place,
        ahead: today < trip.startsOn ? sayDayOf(trip.startsOn) : null,
      };
    const kept = { open: ever.some(({ came }) => came === null) ? heldFor(house, trip) : [], ever };
    const isRunning = trip.startsOn <= today && today <= trip.endsOn;
    const asked = when?.day ?? (isRunning ? today : today < trip.startsOn ? days[0] : days.at(-1));
    if (asked === undefined || asked < trip.startsOn || asked > trip.endsOn)
      throw new Refusal(
        'not-on-trip',
        `${trip.place} goes from ${sayDayOf(trip.startsOn)} to ${sayDayOf(trip.endsOn)}.`,
      );
    const all = days.includes(asked) ? days : [...days, asked].toSorted();
    const chosen = {
      pages: all.map((onDay) => dayOfTrip(house, trip, onDay, kept)),
      at: all.indexOf(asked),
      whole: whole === true,
      eaten: asked <= today ? eatenButtons(trip, asked, kept) : [],
      isLast: asked === trip.endsOn && asked <= today,
    };
    return { chosen, place: trip.place, ahead: null };
  },
  say: ({ chosen, place, ahead }) => {
    if (chosen === null)
      return {
        group: `${ahead === null ? '' : `No trip today; ${place} begins ${ahead}. `}Nothing is chosen for ${place} yet.`,
        buttons: [{ label: `Choose for ${place}`, request: `/pick "${place}"` }],
        buttonsForAll: true,
      };
    const { pages, at, whole, eaten, isLast } = chosen;
    if (whole)
      return {
        group: pages.map(({ group }) => group).join('\n'),
        why: [...pages.flatMap(({ why }) => why), ...pages[0]!.common],
      };
    const buttons = [...eaten, ...(isLast ? [{ label: 'Home again', request: `/back "${place}"` }] : [])];
    return {
      group: pages[at]!.group,
      why: [...pages[at]!.why, ...pages[at]!.common],
      ...(pages.length > 1
        ? {
            pages: pages.map(({ label, group, why, common }) => ({ label, group, why: [...why, ...common] })),
            page: at,
          }
        : {}),
      ...(buttons.length > 0 ? { buttons, buttonsForAll: true, buttonsStay: true } : {}),
    };
  },
});
