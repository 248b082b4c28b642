/** One, two or three pieces each; of one or two pieces what a cake or a loaf is cut into. Common practice, no source. */
export function servingsFromPieces(pieces: number): number[] {
  if (pieces <= 2) return [4, 6, 8];
  return [1, 2, 3].map((each) => pieces / each).filter((count) => Number.isInteger(count) && count >= 1);
}

/** A bowl of food as it leaves the pot, ml: large, usual, small. Common practice, no source. */
const bowlsMl = [500, 350, 250] as const;

/** Whole servings of a large, a usual and a small bowl. @param ml what the recipe gives, ml */
export const servingsFromMl = (ml: number): number[] => [
  ...new Set(bowlsMl.map((bowlMl) => Math.max(1, Math.round(ml / bowlMl)))),
];
