/** A seeded sequence: the same seed gives the same numbers, so that the same question gets the same plan. */
export interface Chance {
  /** A whole number from 0 to below `limit`. */
  below(limit: number): number;
}

/** @param seed any whole number. Steps of a 32-bit mixing generator, chosen for being short. */
export function seeded(seed: number): Chance {
  let state = seed >>> 0;
  return {
    below(limit) {
      state = (state + 0x6d2b79f5) >>> 0;
      let mixed = Math.imul(state ^ (state >>> 15), state | 1);
      mixed ^= mixed + Math.imul(mixed ^ (mixed >>> 7), mixed | 61);
      return Math.floor((((mixed ^ (mixed >>> 14)) >>> 0) / 4294967296) * limit);
    },
  };
}
