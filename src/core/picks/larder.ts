import type { Grid } from './grid.ts';

/** What may be opened of one meal at one slot; totals are counted in steps, the sizes' common divisor. */
export interface Larder {
  readonly step: number;
  /** Size of the largest pouch. */
  readonly largest: number;
  readonly classes: readonly { readonly c: number; readonly steps: number; readonly good: number }[];
  /** For each class: how many of it the cheapest way to each total opens. */
  readonly taken: readonly Int16Array[];
  readonly price: Float64Array;
  readonly before: Float64Array;
}

export function makeLarder(grid: Grid, slot: number, m: number, most: number): Larder {
  const classes = grid.mealClasses[m]!.map((c) => {
    const { groups, size } = grid.classes[c]!;
    const good = groups.filter((g) => g.bestBy >= grid.slotDay[slot]!).reduce((sum, g) => sum + g.count, 0);
    return { c, size, good };
  }).filter(({ good }) => good > 0);
  const divisor = (a: number, b: number): number => (b === 0 ? a : divisor(b, a % b));
  const step = classes.reduce((d, { size }) => divisor(size, d), 0) || 1;
  const length = Math.floor(most / step) + 1;
  return {
    step,
    largest: Math.max(0, ...classes.map(({ size }) => size)),
    classes: classes.map(({ c, size, good }) => ({ c, steps: size / step, good })),
    taken: classes.map(() => new Int16Array(length)),
    price: new Float64Array(length),
    before: new Float64Array(length),
  };
}

/** The cheapest price of each total, Infinity where it cannot be reached. */
export function priceTotals(larder: Larder, pouch: (c: number) => number): Float64Array {
  const { price, before } = larder;
  price.fill(Infinity);
  price[0] = 0;
  larder.classes.forEach(({ c, steps, good }, k) => {
    before.set(price);
    const taken = larder.taken[k]!.fill(0);
    const each = pouch(c);
    for (let total = steps; total < price.length; total += 1) {
      for (let n = 1; n <= good && n * steps <= total; n += 1) {
        const way = before[total - n * steps]! + n * each;
        if (way < price[total]!) {
          price[total] = way;
          taken[total] = n;
        }
      }
    }
  });
  return price;
}

export function takeTotal(larder: Larder, total: number, take: (c: number, n: number) => void): void {
  let left = total;
  for (let k = larder.classes.length - 1; k >= 0; k -= 1) {
    const n = larder.taken[k]![left]!;
    if (n > 0) take(larder.classes[k]!.c, n);
    left -= n * larder.classes[k]!.steps;
  }
}
