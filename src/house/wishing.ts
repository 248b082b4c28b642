import type { Eater, Slot, SlotMeal, Trip, Wish } from '#core/records.ts';
import { Refusal } from '#core/refusal.ts';
import type { Choice } from '#core/talk.ts';
import { sayList } from '#words/say.ts';
import { Ambiguous } from '#words/reading.ts';
import { nameKey } from './figures.ts';
import type { House } from './house.ts';
import { ownEater } from './self.ts';
import { saySlot } from './trips.ts';

/** The eaters meant: those named, everybody who is there, or whoever asks. */
export function eatersMeant(house: House, trip: Trip, named: 'all' | readonly string[] | undefined): Eater[] {
  const eaters = house.eaters.all();
  if (named === 'all') return eaters.filter(({ id }) => trip.slots.some((slot) => slot.eaters.includes(id)));
  if (named === undefined) return [ownOrRefused(house)];
  return named.map((name) => eaters.find((e) => nameKey(e.name) === nameKey(name)) ?? ownOrRefused(house));
}

function ownOrRefused(house: House): Eater {
  const own = ownEater(house);
  if (!own)
    throw new Refusal(
      'no-eater',
      `${house.member.name}, you are not recorded as an eater yet: /eater me. Or say for whom: for Noa.`,
    );
  return own;
}

/** Slots that a day or a meal of the day names; undefined when neither is told. @throws Refusal 'no-such-slot' */
export function slotsNamed(
  trip: Trip,
  day: string | undefined,
  meal: SlotMeal | undefined,
): Slot[] | undefined {
  if (day === undefined && meal === undefined) return undefined;
  const fitting = trip.slots.filter(
    (slot) => (day === undefined || slot.onDay === day) && (meal === undefined || slot.meal === meal),
  );
  if (fitting.length === 0)
    throw new Refusal(
      'no-such-slot',
      `${trip.place} has no such meal: it goes from ${trip.startsOn} to ${trip.endsOn}.`,
    );
  return fitting;
}

/**
 * The slot that is meant for these eaters.
 * @param again the request with this slot in it, for a button
 * @throws Refusal 'not-there'; Ambiguous where several can be meant
 */
export function slotMeant(
  fitting: readonly Slot[],
  eaters: readonly Eater[],
  again: (slot: Slot | undefined) => string,
): Slot {
  const theirs = fitting.filter((slot) => eaters.some(({ id }) => slot.eaters.includes(id)));
  if (theirs.length === 0)
    throw new Refusal(
      'not-there',
      `${sayList(eaters.map(({ name }) => name))} ${eaters.length > 1 ? 'are' : 'is'} not at ${saySlot(fitting[0]!)}.`,
    );
  if (theirs.length === 1) return theirs[0]!;
  throw new Ambiguous('Which meal is meant?', [
    ...theirs.slice(0, 7).map((slot): Choice => ({ label: saySlot(slot), request: again(slot) })),
    { label: 'Any of the trip', request: again(undefined) },
  ]);
}

/** 'Sat 12 Jun dinner', or 'any time'. */
export const sayWhen = (trip: Trip, slot: number | null): string => {
  const found = trip.slots.find(({ id }) => id === slot);
  return found ? saySlot(found) : 'any time';
};

/** Wishes of these eaters for this meal; those for the slots where some are named. */
export const wishesMeant = (
  wishes: readonly Wish[],
  eaters: readonly Eater[],
  mealKey: string,
  slots: readonly Slot[] | undefined,
): Wish[] =>
  wishes.filter(
    (wish) =>
      wish.mealKey === mealKey &&
      eaters.some(({ id }) => id === wish.eater) &&
      (slots === undefined || slots.some(({ id }) => id === wish.slot)),
  );
