import type { Slot } from '#core/records.ts';
import type { House } from './house.ts';

/** A meal that is kept away from the whole trip is kept away from what comes to it, too. */
export function keepAway(house: House, trip: number, before: readonly Slot[], fresh: number): void {
  const bans = house.slotRules.bans(trip);
  for (const mealKey of new Set(bans.map((ban) => ban.mealKey)))
    if (
      before.length > 0 &&
      before.every(({ id }) => bans.some((b) => b.slot === id && b.mealKey === mealKey))
    )
      house.slotRules.ban(fresh, mealKey);
}
