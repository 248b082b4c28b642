import type { Class } from './classes.ts';
import { type Grid, notBefore } from './grid.ts';
import { shortKcal } from './helpings.ts';
import { at, levelNames } from './problem.ts';

/** Not at this slot; at it, but unfed. Any other value in `eat` is a meal. */
export const absent = -2;
export const unfed = -1;

/** A plan in numbers: eat[slot × eaters + eater] and open[slot × classes + class]. */
export interface State {
  readonly eat: Int16Array;
  readonly open: Int16Array;
}

export function emptyState(grid: Grid): State {
  const eat = new Int16Array(grid.slotKeys.length * grid.eaterKeys.length).fill(absent);
  grid.slotEaters.forEach((eaters, s) => eaters.forEach((e) => (eat[s * grid.eaterKeys.length + e] = unfed)));
  return { eat, open: new Int16Array(grid.slotKeys.length * grid.classes.length) };
}

export const copyState = (state: State): State => ({ eat: state.eat.slice(), open: state.open.slice() });

export function overwrite(target: State, source: State): void {
  target.eat.set(source.eat);
  target.open.set(source.open);
}

export interface ClassCost {
  readonly expiring: number;
  readonly month: number;
}

/**
 * What opening costs a class at the levels of dates when pouches are handed out earliest best-by first,
 * slot by slot. That hand-out is always possible when any is, and never dearer than another.
 * @param demand pouches opened at slot s, for each slot
 * @returns undefined when the stock that is still good does not reach
 */
export function classCost(grid: Grid, cls: Class, demand: (slot: number) => number): ClassCost | undefined {
  const slots = grid.slotKeys.length;
  if (!cls.dated) {
    let total = 0;
    for (let s = 0; s < slots; s += 1) total += demand(s);
    if (total > cls.stock) return undefined;
    return { expiring: cls.expiringSums[total]!, month: cls.monthSums[total]! };
  }
  let [group, used, expiring, month] = [0, 0, 0, 0];
  for (let s = 0; s < slots; s += 1) {
    let wanted = demand(s);
    while (wanted > 0) {
      const g = cls.groups[group];
      if (!g) return undefined;
      if (g.bestBy < grid.slotDay[s]! || used === g.count) {
        group += 1;
        used = 0;
        continue;
      }
      const taken = Math.min(wanted, g.count - used);
      expiring += taken * g.expiringCost;
      month += taken * g.monthCost;
      used += taken;
      wanted -= taken;
    }
  }
  return { expiring, month };
}

/** Thousandths of a day by which the eater is over the sodium limit or outside the energy range. */
export function dayExcess(
  grid: Grid,
  eater: number,
  dayPlace: number,
  sodium: number,
  energy: number,
): number {
  const over = grid.limited[eater] ? Math.max(0, sodium - 1000) : 0;
  const low = grid.energyLow[eater]![dayPlace]!;
  const high = grid.energyHigh[eater]![dayPlace]!;
  return over + Math.max(0, low - energy, energy - high);
}

/**
 * The levels of a plan, in the order of `levelNames`. The plan must be possible.
 * @throws Error when some class is opened beyond its stock
 */
export function measure(grid: Grid, state: State): number[] {
  const [slots, classes] = [grid.slotKeys.length, grid.classes.length];
  const { eat, open } = state;
  const vector = levelNames.map(() => 0);
  for (let s = 0; s < slots; s += 1) measureSlot(grid, state, s, vector);
  vector[at.expiring]! += grid.expiring;
  grid.classes.forEach((cls, c) => {
    const cost = classCost(grid, cls, (s) => open[s * classes + c]!);
    if (!cost) throw new Error(`class ${c} is opened beyond its stock`);
    vector[at.expiring]! += cost.expiring;
    vector[at['oldest month first']]! += cost.month;
  });
  vector[at['energy short']] = Math.floor(vector[at['energy short']]! / grid.shortStep);
  vector[at.waste] = servingsBeyond(grid, vector[at['exact waste']]!);
  measureEaters(grid, eat, vector);
  return vector;
}

/** Whole servings left over beyond what is tolerated. */
export const servingsBeyond = (grid: Grid, wasteTwentieths: number): number =>
  Math.max(0, Math.ceil((wasteTwentieths - grid.wasteAllowed) / 20));

/** How much more may be left over when so many servings count already, twentieths. */
export function roomForWaste(grid: Grid, state: State, servings: number): number {
  const waste = grid.slotKeys.reduce((sum, _, s) => sum + wasteAt(grid, state, s), 0);
  return Math.max(0, grid.wasteAllowed + 20 * servings - waste);
}

function wasteAt(grid: Grid, { eat, open }: State, s: number): number {
  const over = new Int32Array(grid.mealKeys.length);
  grid.classes.forEach(({ meal, size }, c) => (over[meal]! += open[s * grid.classes.length + c]! * size));
  for (const e of grid.slotEaters[s]!) {
    const m = eat[s * grid.eaterKeys.length + e]!;
    if (m >= 0) over[m]! -= grid.high[s]![e]![m]!;
  }
  return over.reduce((sum, n) => sum + Math.max(0, n), 0);
}

function measureSlot(grid: Grid, { eat, open }: State, s: number, vector: number[]): void {
  const [eaters, classes] = [grid.eaterKeys.length, grid.classes.length];
  const [lows, highs, opened] = [0, 1, 2].map(() => new Int32Array(grid.mealKeys.length)) as [
    Int32Array,
    Int32Array,
    Int32Array,
  ];
  for (const e of grid.slotEaters[s]!) {
    const m = eat[s * eaters + e]!;
    const before = grid.before[s]![e]!;
    if (before !== notBefore && before !== m) vector[grid.beforeKept ? at.moved : at.changes]! += 1;
    if (m < 0) {
      vector[at['energy short']]! += grid.nothing[s]![e]!;
      vector[at.unfed]! += 1;
    } else {
      lows[m]! += grid.low[s]![e]![m]!;
      highs[m]! += grid.high[s]![e]![m]!;
      vector[at['energy short']]! += grid.thin[s]![e]![m]!;
      if (grid.dislike[e]![m]) vector[at.dislikes]! += 1;
    }
  }
  for (let c = 0; c < classes; c += 1) {
    const n = open[s * classes + c]!;
    if (n === 0) continue;
    const cls = grid.classes[c]!;
    opened[cls.meal]! += n * cls.size;
    vector[at['dry weight']]! += n * cls.dryTenths;
  }
  let dishes = 0;
  for (let m = 0; m < lows.length; m += 1) {
    if (lows[m]! > 0) dishes += 1;
    if (lows[m]! > opened[m]!) vector[at['energy short']]! += shortKcal(lows[m]!, opened[m]!, grid.worth[m]!);
    if (opened[m]! > highs[m]!) vector[at['exact waste']]! += opened[m]! - highs[m]!;
  }
  vector[at.variety]! += Math.max(0, dishes - 1);
}

function measureEaters(grid: Grid, eat: Int16Array, vector: number[]): void {
  const [slots, eaters] = [grid.slotKeys.length, grid.eaterKeys.length];
  const times = new Int32Array(grid.mealKeys.length);
  const [sodium, energy] = [new Float64Array(grid.dayCount), new Float64Array(grid.dayCount)];
  for (let e = 0; e < eaters; e += 1) {
    let missed = 0;
    times.fill(0);
    sodium.fill(0);
    energy.fill(0);
    for (let s = 0; s < slots; s += 1) {
      const m = eat[s * eaters + e]!;
      if (m === unfed) missed += 1;
      if (m < 0) continue;
      times[m]! += 1;
      if (times[m]! > grid.often) vector[at.variety]! += 1;
      const earlier = grid.earlier[s]![e]!;
      for (const i of earlier) {
        if (eat[i * eaters + e] !== m) continue;
        vector[at.variety]! += 1;
        break;
      }
      // Two meals running are worse than the same again tomorrow.
      const last = earlier.at(-1);
      if (last !== undefined && eat[last * eaters + e] === m) vector[at.variety]! += 1;
      sodium[grid.slotDayPlace[s]!]! += grid.sodium[s]![e]![m]!;
      energy[grid.slotDayPlace[s]!]! += grid.energy[s]![e]![m]!;
    }
    vector[at['worst off']] = Math.max(vector[at['worst off']]!, missed);
    for (const w of grid.wishesOf[e]!)
      if (granted(grid, eat, w)) vector[at.wishes]! -= grid.wishes[w]!.weight;
    for (let d = 0; d < grid.dayCount; d += 1)
      vector[at['sodium and energy']]! += dayExcess(grid, e, d, sodium[d]!, energy[d]!);
  }
}

/** Whether wish w comes true in the plan; `except` leaves one slot out. */
export function granted(grid: Grid, eat: Int16Array, w: number, except = -1): boolean {
  const wish = grid.wishes[w]!;
  const eaters = grid.eaterKeys.length;
  if (wish.slot >= 0) return wish.slot !== except && eat[wish.slot * eaters + wish.eater] === wish.meal;
  for (let s = 0; s < grid.slotKeys.length; s += 1) {
    if (s !== except && eat[s * eaters + wish.eater] === wish.meal) return true;
  }
  return false;
}

/** Below 0 when a is the better vector: the first level at which they differ decides. */
export function compareVectors(a: readonly number[], b: readonly number[]): number {
  for (let i = 0; i < a.length; i += 1) if (a[i] !== b[i]) return a[i]! - b[i]!;
  return 0;
}
