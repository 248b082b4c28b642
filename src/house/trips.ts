import { todayOf } from './today.ts';
import { DateTime } from 'luxon';
import { type Eater, type Slot, slotMeals, type Trip } from '#core/records.ts';
import { Refusal } from '#core/refusal.ts';
import { fold } from '#words/near.ts';
import { sayList } from '#words/say.ts';
import type { House } from './house.ts';

/** 'Fri 12 Jun'. */
export function sayDayOf(onDay: string): string {
  return DateTime.fromISO(onDay, { zone: 'UTC' }).setLocale('en-GB').toFormat('ccc d LLL');
}

/** 'Fri 12 Jun dinner'; 'Sun 14 Jun spare dinner'. */
export function saySlot({ onDay, meal, marks }: Pick<Slot, 'onDay' | 'meal'> & Partial<Slot>): string {
  return `${sayDayOf(onDay)} ${marks?.includes('spare') ? 'spare ' : ''}${meal}`;
}

/** Trips that nobody ended, the next to start first; those whose days have passed come last. */
export function tripsOpen(house: Pick<House, 'trips' | 'nowMs' | 'settings'>): Trip[] {
  const today = todayOf(house);
  const open = house.trips.all().filter((trip) => !trip.isOver);
  return [...open.filter((trip) => trip.endsOn >= today), ...open.filter((trip) => trip.endsOn < today)];
}

/** Trips that are not over and whose last day has not passed, the earliest first. */
export function tripsAhead(house: House): Trip[] {
  const today = todayOf(house);
  return tripsOpen(house).filter((trip) => trip.endsOn >= today);
}

/**
 * The trip that is meant: the one named, else the only one ahead, else the next one to start.
 * @throws Refusal 'no-trip' when there is none
 */
export function tripMeant(house: House, place: string | undefined): Trip {
  const open = tripsOpen(house);
  const trip = place === undefined ? open[0] : open.find((one) => fold(one.place) === fold(place));
  if (!trip)
    throw new Refusal(
      'no-trip',
      'No trip is planned. First: /trip Heron Lake 12-14 June dinner breakfast for all',
    );
  return trip;
}

/** The altitude at which water is boiled on a trip, m. */
export function altitudeOf(trip: Trip, house: House): number {
  return trip.altitudeM ?? house.settings.altitudeM;
}

/** Slots as people read them: runs of slots with the same eaters on one line. */
export function slotLines(slots: readonly Slot[], eaters: readonly Eater[]): string[] {
  const name = (id: number) => eaters.find((eater) => eater.id === id)?.name ?? '?';
  const days = [...new Set(slots.map((slot) => slot.onDay))];
  return days.map((onDay) => {
    const ofDay = slots.filter((slot) => slot.onDay === onDay);
    const groups: { meals: string[]; eaters: string }[] = [];
    for (const slot of ofDay.toSorted((a, b) => slotMeals.indexOf(a.meal) - slotMeals.indexOf(b.meal))) {
      const who = slot.eaters.length === 0 ? 'nobody' : sayList(slot.eaters.map(name));
      if (groups.at(-1)?.eaters === who) groups.at(-1)!.meals.push(slot.meal);
      else groups.push({ meals: [slot.meal], eaters: who });
    }
    return `${sayDayOf(onDay)}: ${groups.map((g) => `${sayList(g.meals)} for ${g.eaters}`).join('; ')}`;
  });
}

const effortWords = { rest: 'a day of rest', walk: 'a walk', hard: 'a hard day' } as const;

/** 'Sun 13 Jun is a hard day.' Days nobody spoke of are walked. */
export function effortLines(trip: Trip): string[] {
  const told = [...trip.efforts].map(([onDay, effort]) => `${sayDayOf(onDay)} is ${effortWords[effort]}`);
  return told.length === 0 ? [] : [`${sayList(told)}.`];
}

/** 'For Ana and Ben; Noa not at every meal.' */
export function whoComes(trip: Trip, eaters: readonly Eater[]): string {
  const there = eaters.filter(({ id }) => trip.slots.some((slot) => slot.eaters.includes(id)));
  const always = there.filter(({ id }) => trip.slots.every((slot) => slot.eaters.includes(id)));
  const sometimes = there.filter((one) => !always.includes(one));
  const names = (some: readonly Eater[]) => sayList(some.map(({ name }) => name));
  if (there.length === 0) return 'Nobody is on it yet.';
  if (sometimes.length === 0) return `For ${names(always)}.`;
  return `${always.length > 0 ? `For ${names(always)}; ` : ''}${names(sometimes)} not at every meal.`;
}

/** 'Heron Lake, Sat 12 Jun to Mon 14 Jun 2027: 5 meals.' */
export function headingOf(trip: Trip): string {
  const days =
    trip.startsOn === trip.endsOn
      ? sayDayOf(trip.startsOn)
      : `${sayDayOf(trip.startsOn)} to ${sayDayOf(trip.endsOn)} ${trip.endsOn.slice(0, 4)}`;
  return `${trip.place}, ${days}: ${trip.slots.length === 1 ? '1 meal' : `${trip.slots.length} meals`}.`;
}
