import type { Grid } from './grid.ts';
import { at, levelNames } from './problem.ts';

/** One eater at one slot: what may be had there of what is in stock. */
interface Seat {
  readonly s: number;
  readonly e: number;
  readonly meals: readonly number[];
}

/**
 * What no plan can be below, seen without any program: who has nothing in stock to eat somewhere, who gets too little of
 * whatever is there, who likes nothing of it; what the whole stock cannot feed; and no more wishes come true than there are.
 * @param vector of a plan: what is bounded under the values it has at the levels before
 * @returns one bound a level
 */
export function plainBounds(grid: Grid, vector: readonly number[]): number[] {
  const bounds = levelNames.map(() => 0);
  const seats = seatsOf(grid);
  const fed = seats.filter(({ meals }) => meals.length > 0);
  const missed = grid.eaterKeys.map(
    (_, e) => seats.filter((one) => one.e === e && one.meals.length === 0).length,
  );
  const nothing = seats.length - fed.length;
  const disliked = fed.filter(({ e, meals }) => meals.every((m) => grid.dislike[e]![m]!)).length;
  const parts = partsOf(grid, fed);
  bounds[at.unfed] = nothing + parts.reduce((sum, part) => sum + unfedBySupply(grid, part), 0);
  bounds[at['worst off']] = Math.max(
    0,
    ...missed,
    Math.ceil(bounds[at.unfed]! / Math.max(1, grid.eaterKeys.length)),
  );
  const without = seats.reduce(
    (sum, { s, e, meals }) => sum + (meals.length > 0 ? 0 : grid.nothing[s]![e]!),
    0,
  );
  const kcal = parts.reduce(
    (sum, part) => sum + Math.max(thinKcal(grid, part), supplyKcal(grid, part)),
    without,
  );
  bounds[at['energy short']] = Math.floor(kcal / grid.shortStep);
  bounds[at.wishes] = 0 - grid.wishTotal;
  // Whoever could eat and goes without dislikes nothing there.
  bounds[at.dislikes] = Math.max(0, disliked - (vector[at.unfed]! - nothing));
  return bounds;
}

function seatsOf(grid: Grid): Seat[] {
  return grid.slotEaters.flatMap((eaters, s) => {
    const stocked = grid.mealKeys.flatMap((_, m) => (isStocked(grid, s, m) ? [m] : []));
    return eaters.map((e) => ({
      s,
      e,
      meals: stocked.filter((m) => grid.may[s]![e]![m]! && grid.hardMg[s]![e]![m]! <= grid.hardLimitMg[e]!),
    }));
  });
}

const isStocked = (grid: Grid, s: number, m: number): boolean =>
  grid.mealClasses[m]!.some((c) => grid.classes[c]!.groups.at(-1)!.bestBy >= grid.slotDay[s]!);

/** Seats that share no meal, however far round, have stocks of their own: breakfasts, say, and mains. */
function partsOf(grid: Grid, seats: readonly Seat[]): Seat[][] {
  const partOf = grid.mealKeys.map((_, m) => m);
  for (const { meals } of seats) {
    const joined = new Set(meals.map((m) => partOf[m]!));
    if (joined.size > 1)
      partOf.forEach((part, m) => (partOf[m] = joined.has(part) ? partOf[meals[0]!]! : part));
  }
  return [...new Set(partOf)]
    .map((part) => seats.filter(({ meals }) => partOf[meals[0]!] === part))
    .filter((part) => part.length > 0);
}

/** Twentieths in stock of all that a part may eat. */
function supply(grid: Grid, part: readonly Seat[]): number {
  const meals = new Set(part.flatMap((seat) => seat.meals));
  return grid.classes.reduce((sum, { meal, size, stock }) => sum + (meals.has(meal) ? size * stock : 0), 0);
}

/** The least twentieths that count as fed there. */
const leastLow = (grid: Grid, { s, e, meals }: Seat): number =>
  Math.min(...meals.map((m) => grid.low[s]![e]![m]!));

/** A dish falls short by half at most: when even halves do not go round, somebody has nothing. */
function unfedBySupply(grid: Grid, part: readonly Seat[]): number {
  let left = supply(grid, part);
  const halves = part.map((seat) => leastLow(grid, seat) / 2).sort((a, b) => a - b);
  const fed = halves.filter((half) => (left -= half) >= 0).length;
  return part.length - fed;
}

/** What is missing where everybody has the best of the dishes there are, kcal. */
const thinKcal = (grid: Grid, part: readonly Seat[]): number =>
  part.reduce(
    (sum, { s, e, meals }) =>
      sum + Math.min(grid.nothing[s]![e]!, ...meals.map((m) => grid.thin[s]![e]![m]!)),
    0,
  );

/** What is missing because the stock is smaller than what counts as fed, at the least a twentieth of it can count, kcal. */
function supplyKcal(grid: Grid, part: readonly Seat[]): number {
  const missing = part.reduce((sum, seat) => sum + leastLow(grid, seat), 0) - supply(grid, part);
  if (missing <= 0) return 0;
  const least = part.map((seat) =>
    Math.min(grid.nothing[seat.s]![seat.e]! / leastLow(grid, seat), ...seat.meals.map((m) => grid.worth[m]!)),
  );
  return Math.floor(missing * Math.min(...least));
}
