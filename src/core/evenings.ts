/** Ratings of one meal within this of each other are of one evening, h. Chosen. */
const eveningHours = 12;

/** Gathers what was said of one meal by the evening it was eaten: several people at one table are one evening. @param all oldest first */
export function byEvening<T extends { readonly atMs: number }>(all: readonly T[]): T[][] {
  const evenings: T[][] = [];
  for (const one of all) {
    const last = evenings.at(-1);
    if (last && one.atMs - last[0]!.atMs <= eveningHours * 3_600_000) last.push(one);
    else evenings.push([one]);
  }
  return evenings;
}

export const meanOf = (figures: readonly number[]): number =>
  figures.reduce((sum, one) => sum + one, 0) / figures.length;
