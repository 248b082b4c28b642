import type { HeldPouch, Slot, SlotMeal, Trip } from '#core/records.ts';
import { Refusal } from '#core/refusal.ts';
import { sayCode, sayList } from '#words/say.ts';
import { nameKey } from './figures.ts';
import type { House } from './house.ts';
import { type HeldWithPouch, heldFor } from './packing.ts';
import { sayDayOf, saySlot } from './trips.ts';

/** One side of an exchange: a day, or one meal of it. */
export interface DaySide {
  readonly onDay: string;
  readonly meal: SlotMeal | undefined;
}

/** Two meals of a trip whose pouches changed places. */
export interface Exchanged {
  readonly one: Slot;
  readonly other: Slot;
  readonly moved: readonly HeldWithPouch[];
}

/**
 * Pairs of meals that change places: of two days each meal with its like, of two meals just those.
 * @throws Refusal 'no-such-slot', 'same-slot', 'half-named'
 */
function pairsOf(trip: Trip, [a, b]: readonly [DaySide, DaySide]): [Slot, Slot][] {
  if ((a.meal === undefined) !== (b.meal === undefined))
    throw new Refusal(
      'half-named',
      'Two days, or two meals with their days: saturday dinner and sunday dinner.',
    );
  const find = ({ onDay, meal }: DaySide): Slot[] => {
    const found = trip.slots.filter(
      (slot) => slot.onDay === onDay && (meal === undefined || slot.meal === meal),
    );
    if (found.length > 0) return found;
    throw new Refusal('no-such-slot', `${trip.place} has no ${meal ?? 'meal'} on ${sayDayOf(onDay)}.`);
  };
  const [ours, theirs] = [find(a), find(b)];
  if (a.onDay === b.onDay && a.meal === b.meal)
    throw new Refusal('same-slot', `${sayDayOf(a.onDay)} is named twice: I need two days or two meals.`);
  if (a.meal !== undefined) return [[ours[0]!, theirs[0]!]];
  const pairs = ours.flatMap((one): [Slot, Slot][] => {
    const like = theirs.find(({ meal }) => meal === one.meal);
    return like ? [[one, like]] : [];
  });
  if (pairs.length > 0) return pairs;
  throw new Refusal('no-such-slot', `${sayDayOf(a.onDay)} and ${sayDayOf(b.onDay)} have no meal in common.`);
}

/**
 * Lets the kept pouches of two days or two meals change places.
 * @throws Refusal 'nothing-there'; 'not-there' for eaters who are not at the other meal, 'too-late' for a pouch that keeps
 * less long, 'kept-away' for a meal that is to be kept away from there; then nothing moves
 */
export function exchange(house: House, trip: Trip, sides: readonly [DaySide, DaySide]): Exchanged[] {
  const held = heldFor(house, trip);
  const at = (slot: Slot) => held.filter((one) => one.held.slot === slot.id);
  const pairs = pairsOf(trip, sides);
  if (pairs.every(([one, other]) => at(one).length + at(other).length === 0))
    throw new Refusal('nothing-there', 'Nothing is kept for those meals.');
  const moves = pairs.flatMap(([one, other]) => [
    ...at(one).map((kept) => ({ kept, to: other })),
    ...at(other).map((kept) => ({ kept, to: one })),
  ]);
  for (const { kept, to } of moves) mayMove(house, trip, kept, to);
  const pinned = new Set(house.slotRules.pins(trip.id).map(({ pouch }) => pouch));
  for (const { kept, to } of moves) {
    house.trips.moveHeld(kept.held.id, to.id);
    if (pinned.has(kept.pouch.id)) house.slotRules.pin(to.id, kept.pouch.id);
  }
  return pairs.map(([one, other]) => ({ one, other, moved: [...at(one), ...at(other)] }));
}

function mayMove(house: House, trip: Trip, { held, pouch }: HeldWithPouch, to: Slot): void {
  const code = `${sayCode(pouch)} (${pouch.meal})`;
  const absent = held.eaters.filter((id) => !to.eaters.includes(id));
  const name = (id: number) => house.eaters.all().find((eater) => eater.id === id)?.name ?? '?';
  if (absent.length > 0)
    throw new Refusal(
      'not-there',
      `${code} is for ${sayList(held.eaters.map(name))}, and ${sayList(absent.map(name))} ${absent.length > 1 ? 'are' : 'is'} not at ${saySlot(to)}. Nothing is moved.`,
    );
  if (pouch.bestByOn !== null && pouch.bestByOn < to.onDay)
    throw new Refusal(
      'too-late',
      `${code} is best by ${sayDayOf(pouch.bestByOn)}, before ${saySlot(to)}. Nothing is moved.`,
    );
  const isBanned = house.slotRules
    .bans(trip.id)
    .some((ban) => ban.slot === to.id && ban.mealKey === nameKey(pouch.meal));
  if (isBanned)
    throw new Refusal('kept-away', `${pouch.meal} is to be kept away from ${saySlot(to)}. Nothing is moved.`);
}

/** Wishes for one of these meals that a move leaves without what was wished. */
export function wishesLeft(house: House, trip: Trip, exchanged: readonly Exchanged[]): string[] {
  const held: readonly HeldPouch[] = house.trips.held(trip.id);
  const meals = new Map(house.pouches.inStock().map((pouch) => [pouch.id, nameKey(pouch.meal)]));
  const slots = exchanged.flatMap(({ one, other }) => [one, other]);
  return house.trips.wishes(trip.id).flatMap(({ slot: id, mealKey, eater }) => {
    const slot = slots.find((one) => one.id === id);
    const isMet = held.some((one) => one.slot === id && meals.get(one.pouch) === mealKey);
    if (!slot || isMet) return [];
    const who = house.eaters.all().find((one) => one.id === eater)?.name ?? '?';
    const name = house.recipes.find(mealKey)?.name ?? mealKey;
    return [`${who} wished for ${name} at ${saySlot(slot)}.`];
  });
}
