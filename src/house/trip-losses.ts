import type { Slot, Trip } from '#core/records.ts';
import { Doubt } from '#core/refusal.ts';
import type { NewSlot } from '#store/trips.ts';
import { sayCodes, sayList } from '#words/say.ts';
import { mealNames, nameKey } from './figures.ts';
import type { House } from './house.ts';
import { saySlot } from './trips.ts';

/**
 * Lists what hangs on meals that would fall away, before they do: pouches kept for them, wishes for just then, meals kept
 * away, meals that were to stay as they are.
 * @throws Doubt 'losing' when there is anything
 */
export function doubtLosses(house: House, trip: Trip | undefined, wanted: readonly NewSlot[]): void {
  if (!trip) return;
  const gone = trip.slots.filter(
    (slot) => !wanted.some(({ onDay, meal }) => onDay === slot.onDay && meal === slot.meal),
  );
  const lost = gone.flatMap((slot) => lossesOf(house, trip, slot));
  if (lost.length > 0) throw new Doubt('losing', `This would fall away:\n${lost.join('\n')}`);
}

function lossesOf(house: House, trip: Trip, slot: Slot): string[] {
  const names = new Map(mealNames(house).map((name) => [nameKey(name), name]));
  const name = (key: string) => names.get(key) ?? key;
  const stock = house.pouches.inStock();
  const held = house.trips.held(trip.id).filter((h) => h.slot === slot.id && h.came === null);
  const pouches = stock.filter(({ id }) => held.some(({ pouch }) => pouch === id));
  const wishes = house.trips.wishes(trip.id).filter((wish) => wish.slot === slot.id);
  // What is kept away from the whole trip is lost with none of its meals.
  const all = house.slotRules.bans(trip.id);
  const bans = all.filter(
    (ban) => ban.slot === slot.id && all.filter(({ mealKey }) => mealKey === ban.mealKey).length === 1,
  );
  const parts = [
    ...(pouches.length > 0 ? [`${sayCodes(pouches)} kept for it`] : []),
    ...(wishes.length > 0
      ? [`the wish for ${sayList([...new Set(wishes.map(({ mealKey }) => name(mealKey)))])} there`]
      : []),
    ...(bans.length > 0 ? [`no ${sayList(bans.map(({ mealKey }) => name(mealKey)))} there`] : []),
  ];
  return parts.length === 0 ? [] : [`${saySlot(slot)}: ${sayList(parts)}.`];
}
