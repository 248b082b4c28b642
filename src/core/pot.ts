/** A load as it is held against another of the same meal. */
export interface PotLoad {
  readonly wetG: number;
  readonly potG: number | null;
  readonly factor: number;
  readonly loadedAtMs: number;
}

/** Cooked food does not wait longer for its dryer. Chosen. */
const restWaitsHours = 72;
/** A load of so much of what the recipe makes was the whole pot. Chosen. */
const wholePotFraction = 0.85;
/** Water that no line names makes a pot heavier than its lines by so much, at most. Chosen. */
const mostPotFraction = 1.15;

/** Whether a load came from the same kind of cooking shortly before: as much of the recipe, and the pot not dried whole. */
export function isLoadBefore(earlier: PotLoad, later: PotLoad): boolean {
  const hours = (later.loadedAtMs - earlier.loadedAtMs) / 3_600_000;
  return hours >= 0 && hours <= restWaitsHours && earlier.factor === later.factor;
}

/**
 * Whether a second load of a meal may be the rest of the pot that the first came from, where nobody weighed the pot: the
 * first was not all of it, and both together are no more than the recipe makes.
 * @param madeG what the recipe makes with its factor, g, above 0
 */
export function mayBeRest(earlier: PotLoad, later: PotLoad, madeG: number): boolean {
  return (
    isLoadBefore(earlier, later) &&
    earlier.potG === null &&
    later.potG === null &&
    earlier.wetG < wholePotFraction * madeG &&
    earlier.wetG + later.wetG <= mostPotFraction * madeG
  );
}

/** Pot weights that are the sum of loads differ from it by rounding alone, g. */
const hairG = 0.5;

/**
 * What the pot weighed that several loads came from: as it was weighed, else all of them together.
 * @param before the loads before, the latest last
 * @returns g
 */
export function sharedPotG(before: readonly PotLoad[], wetG: number): number {
  const loadedG = before.reduce((sum, one) => sum + one.wetG, 0);
  const known = before.at(-1)?.potG ?? null;
  return known === null || Math.abs(known - loadedG) <= hairG ? loadedG + wetG : known;
}
