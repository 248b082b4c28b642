import { type Grid, notBefore } from './grid.ts';
import { dayExcess, granted, unfed, type State } from './measure.ts';
import type { SlotTable } from './table.ts';

/** What one eater's seat costs, one key for each group of levels; see `Digits`. */
export interface Cost {
  first: number;
  second: number;
  third: number;
}

/**
 * Sizes of the digits within a key: each is above anything the lower levels of one slot can add up to. The first key
 * holds (energy short, wishes, dislikes, moved), the second (waste, expiring, variety, changes), the third (sodium and
 * energy, exact waste), the fourth (months, dry weight).
 */
export interface Digits {
  readonly short: number;
  readonly wish: number;
  readonly dislike: number;
  readonly waste: number;
  readonly expiring: number;
  readonly variety: number;
  readonly figures: number;
  readonly month: number;
}

export function digits(grid: Grid, tables: readonly SlotTable[]): Digits {
  const people = Math.max(1, ...grid.slotEaters.map((eaters) => eaters.length));
  const maxSize = Math.max(1, ...grid.classes.map((c) => c.size));
  const maxDry = Math.max(1, ...grid.classes.map((c) => c.dryTenths));
  const slotsADay = Math.max(
    1,
    ...grid.slotDayPlace.map((d) => grid.slotDayPlace.filter((x) => x === d).length),
  );
  const mostLow = Math.max(
    1,
    ...grid.slotEaters.map((eaters, s) =>
      eaters.reduce((sum, e) => sum + Math.max(0, ...grid.low[s]![e]!), 0),
    ),
  );
  const parties = Math.max(1, ...tables.map((t) => t.parties.length));
  const opened = mostLow + parties * maxSize + 1;
  const dislike = people + 1;
  const wish = dislike * (people + 1);
  const variety = people + 1;
  const expiring = variety * (1 + people * (slotsADay + 5) + parties);
  return {
    dislike,
    wish,
    short: wish * (grid.wishTotal + 1),
    variety,
    expiring,
    waste: expiring * 2 * opened,
    figures: opened,
    month: 1 + 64 * maxDry,
  };
}

/** What an eater has at the other slots, as far as a seat at slot s hangs on it; worked out once a slot and eater. */
export interface Elsewhere {
  readonly times: Int16Array;
  readonly sodium: number;
  readonly energy: number;
  readonly hard: number;
  readonly missed: number;
}

export function elsewhere(grid: Grid, { eat }: State, s: number, e: number): Elsewhere {
  const eaters = grid.eaterKeys.length;
  const day = grid.slotDayPlace[s]!;
  const times = new Int16Array(grid.mealKeys.length);
  let [sodium, energy, hard, missed] = [0, 0, 0, 0];
  for (let i = 0; i < grid.slotKeys.length; i += 1) {
    if (i === s) continue;
    const m = eat[i * eaters + e]!;
    if (m === unfed) missed += 1;
    if (m < 0) continue;
    times[m]! += 1;
    if (grid.slotDayPlace[i] !== day) continue;
    sodium += grid.sodium[i]![e]![m]!;
    energy += grid.energy[i]![e]![m]!;
    hard += grid.hardMg[i]![e]![m]!;
  }
  return { times, sodium, energy, hard, missed };
}

/** Adds what it costs that this eater has meal m at slot s, or nothing with m = −1, at the levels that add up by eater. */
export function addSeat(
  grid: Grid,
  sizes: Digits,
  state: State,
  s: number,
  e: number,
  m: number,
  grain: number,
  other: Elsewhere,
  into: Cost,
): void {
  const { eat } = state;
  const day = grid.slotDayPlace[s]!;
  if (m >= 0 && other.hard + grid.hardMg[s]![e]![m]! > grid.hardLimitMg[e]!) {
    into.first = Infinity;
    return;
  }
  let wish = 0;
  for (const w of grid.wishesOf[e]!) {
    const { slot, meal, weight } = grid.wishes[w]!;
    if ((slot === s || slot === -1) && meal !== m && !granted(grid, eat, w, s)) wish += weight;
  }
  const before = grid.before[s]![e]!;
  const changed = before !== notBefore && before !== m ? 1 : 0;
  into.first +=
    Math.floor((m < 0 ? grid.nothing[s]![e]! : grid.thin[s]![e]![m]!) / grain) * sizes.short +
    wish * sizes.wish +
    (m >= 0 && grid.dislike[e]![m] ? sizes.dislike : 0) +
    (grid.beforeKept ? changed : 0);
  into.second += repeatsWith(grid, eat, s, e, m, other) * sizes.variety + (grid.beforeKept ? 0 : changed);
  const sodium = other.sodium + (m < 0 ? 0 : grid.sodium[s]![e]![m]!);
  const energy = other.energy + (m < 0 ? 0 : grid.energy[s]![e]![m]!);
  into.third += dayExcess(grid, e, day, sodium, energy) * sizes.figures;
}

/** How many repeats more there are when the eater has meal m here. */
function repeatsWith(
  grid: Grid,
  eat: Int16Array,
  s: number,
  e: number,
  m: number,
  { times }: Elsewhere,
): number {
  if (m < 0) return 0;
  const eaters = grid.eaterKeys.length;
  let repeats = times[m]! + 1 > grid.often ? 1 : 0;
  if (times[m] === 0) return repeats;
  if (anyHas(eat, eaters, e, m, grid.earlier[s]![e]!, -1)) repeats += 1;
  for (const next of [grid.earlier[s]![e]!.at(-1), grid.later[s]![e]![0]])
    if (next !== undefined && eat[next * eaters + e] === m) repeats += 1;
  for (const j of grid.later[s]![e]!) {
    const again = eat[j * eaters + e] === m;
    if (again && !anyHas(eat, eaters, e, m, grid.earlier[j]![e]!, s)) repeats += 1;
  }
  return repeats;
}

/** Whether the eater has the meal at one of these slots, `except` left out. */
function anyHas(
  eat: Int16Array,
  eaters: number,
  e: number,
  m: number,
  slots: readonly number[],
  except: number,
): boolean {
  for (const i of slots) if (i !== except && eat[i * eaters + e] === m) return true;
  return false;
}
