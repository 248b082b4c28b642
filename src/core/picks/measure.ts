import type { Class, Grid } from './grid.ts';

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
  readonly bucket: number;
  readonly month: number;
}

/**
 * What opening costs a class at the oldest-first levels when pouches are handed out earliest best-by first,
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
    return { bucket: cls.bucketSums[total]!, month: cls.monthSums[total]! };
  }
  let [group, used, bucket, month] = [0, 0, 0, 0];
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
      bucket += taken * g.bucketCost;
      month += taken * g.monthCost;
      used += taken;
      wanted -= taken;
    }
  }
  return { bucket, month };
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
  const [slots, eaters, classes] = [grid.slotKeys.length, grid.eaterKeys.length, grid.classes.length];
  const { eat, open } = state;
  const vector = [0, 0, 0, 0, 0, 0, 0, 0, 0, 0, 0];
  const [lows, highs, opened] = [
    new Int32Array(grid.mealKeys.length),
    new Int32Array(grid.mealKeys.length),
    new Int32Array(grid.mealKeys.length),
  ];
  for (let s = 0; s < slots; s += 1) {
    lows.fill(0);
    highs.fill(0);
    opened.fill(0);
    for (const e of grid.slotEaters[s]!) {
      const m = eat[s * eaters + e]!;
      if (m < 0) {
        vector[0]! += grid.low[e]!;
        vector[1]! += 1;
      } else {
        lows[m]! += grid.low[e]!;
        highs[m]! += grid.high[e]!;
        if (grid.dislike[e]![m]) vector[4]! += 1;
      }
    }
    for (let c = 0; c < classes; c += 1) {
      const n = open[s * classes + c]!;
      if (n === 0) continue;
      const cls = grid.classes[c]!;
      opened[cls.meal]! += n * cls.size;
      vector[10]! += n * cls.dryTenths;
    }
    for (let m = 0; m < lows.length; m += 1) {
      if (lows[m]! > opened[m]!) vector[0]! += lows[m]! - opened[m]!;
      if (opened[m]! > highs[m]!) vector[5]! += opened[m]! - highs[m]!;
    }
  }
  grid.classes.forEach((cls, c) => {
    const cost = classCost(grid, cls, (s) => open[s * classes + c]!);
    if (!cost) throw new Error(`class ${c} is opened beyond its stock`);
    vector[6]! += cost.bucket;
    vector[9]! += cost.month;
  });
  measureEaters(grid, eat, vector);
  return vector;
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
      if (times[m]! > grid.often) vector[7]! += 1;
      for (const i of grid.earlier[s]![e]!) {
        if (eat[i * eaters + e] !== m) continue;
        vector[7]! += 1;
        break;
      }
      sodium[grid.slotDayPlace[s]!]! += grid.sodium[e]![m]!;
      energy[grid.slotDayPlace[s]!]! += grid.energy[e]![m]!;
    }
    vector[2] = Math.max(vector[2]!, missed);
    for (const w of grid.wishesOf[e]!) if (granted(grid, eat, w)) vector[3]! -= grid.wishes[w]!.weight;
    for (let d = 0; d < grid.dayCount; d += 1) vector[8]! += dayExcess(grid, e, d, sodium[d]!, energy[d]!);
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
