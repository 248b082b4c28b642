/**
 * How the parties of a slot share themselves out among its dishes, by dynamic programming over sets of parties (bit
 * masks). Costs are four keys, the first that differs decides; an endless first key is never.
 */
export type Keys = readonly [Float64Array, Float64Array, Float64Array, Float64Array];

export const never = Infinity;

export const makeKeys = (size: number): Keys =>
  [0, 1, 2, 3].map(() => new Float64Array(size)) as unknown as Keys;

/** A set of parties at one dish, by its place in a list of dishes. */
export interface Served {
  readonly sub: number;
  readonly dish: number;
}

/**
 * Notes in `best` what a dish costs (`priced`) for every set of those who may have it, where it is cheaper than the dishes
 * before; `dishOf` says which dish is the cheapest of each set.
 */
export function keepCheaper(
  best: Keys,
  priced: Keys,
  allowed: number,
  dishOf: Int32Array,
  dish: number,
): void {
  const [b1, b2, b3, b4] = best;
  const [g1, g2, g3, g4] = priced;
  for (let sub = allowed; sub > 0; sub = (sub - 1) & allowed) {
    const k1 = g1[sub]!;
    if (k1 === never || k1 > b1[sub]!) continue;
    if (k1 === b1[sub]!) {
      const k2 = g2[sub]!;
      if (k2 > b2[sub]!) continue;
      if (k2 === b2[sub]!) {
        const k3 = g3[sub]!;
        if (k3 > b3[sub]! || (k3 === b3[sub]! && g4[sub]! >= b4[sub]!)) continue;
      }
    }
    b1[sub] = k1;
    b2[sub] = g2[sub]!;
    b3[sub] = g3[sub]!;
    b4[sub] = g4[sub]!;
    dishOf[sub] = dish;
  }
}

/**
 * The cheapest way to split every set of parties into tables, each with its cheapest dish. Whoever is first in a set sits
 * at the table looked for, so that every split is looked at once. Nothing here keeps two tables from having one dish: that
 * hardly ever is cheaper than one table for both, and `tablesOf` tells.
 * @param f filled with the costs
 * @param tableOf filled with the first one's table, for every set
 */
export function splitInTables(f: Keys, best: Keys, full: number, tableOf: Int32Array): void {
  const [f1, f2, f3, f4] = f;
  const [b1, b2, b3, b4] = best;
  for (const key of f) key[0] = 0;
  for (let mask = 1; mask <= full; mask += 1) {
    const first = mask & -mask;
    const others = mask ^ first;
    let [c1, c2, c3, c4, chosen] = [never, 0, 0, 0, 0];
    for (let rest = others; ; rest = (rest - 1) & others) {
      const sub = rest | first;
      const left = mask ^ sub;
      const k1 = f1[left]! + b1[sub]!;
      if (k1 <= c1 && k1 !== never) {
        const k2 = f2[left]! + b2[sub]!;
        if (k1 < c1 || k2 <= c2) {
          const [k3, k4] = [f3[left]! + b3[sub]!, f4[left]! + b4[sub]!];
          if (k1 < c1 || k2 < c2 || k3 < c3 || (k3 === c3 && k4 < c4))
            [c1, c2, c3, c4, chosen] = [k1, k2, k3, k4, sub];
        }
      }
      if (rest === 0) break;
    }
    f1[mask] = c1;
    f2[mask] = c2;
    f3[mask] = c3;
    f4[mask] = c4;
    tableOf[mask] = chosen;
  }
}

/** Who has what when the set is split; undefined when one dish would be served at two tables. */
export function tablesOf(set: number, tableOf: Int32Array, dishOf: Int32Array): Served[] | undefined {
  const served: Served[] = [];
  for (let left = set; left > 0;) {
    const sub = tableOf[left]!;
    if (sub === 0) {
      left &= left - 1;
      continue;
    }
    const dish = dishOf[sub]!;
    if (served.some((other) => other.dish === dish)) return undefined;
    served.push({ sub, dish });
    left ^= sub;
  }
  return served;
}

/**
 * Lets one more dish join in: for every set of parties the best split into those at this dish (costs g) and those
 * at the dishes before (costs f, overwritten). Sets are gone through from the largest, so that f still holds the
 * costs before at every smaller one. Each dish is served at one table only, and it takes as much longer as there are dishes.
 * @returns who is at this dish, for every set
 */
export function joinIn(f: Keys, g: Keys, full: number, allowed: number): Int32Array {
  const [f1, f2, f3, f4] = f;
  const [g1, g2, g3, g4] = g;
  const choice = new Int32Array(full + 1);
  for (let mask = full; mask > 0; mask -= 1) {
    const reach = mask & allowed;
    let [b1, b2, b3, b4] = [f1[mask]!, f2[mask]!, f3[mask]!, f4[mask]!];
    let chosen = 0;
    for (let sub = reach; sub > 0; sub = (sub - 1) & reach) {
      const rest = mask ^ sub;
      const k1 = f1[rest]! + g1[sub]!;
      if (k1 > b1 || k1 === never) continue;
      const k2 = f2[rest]! + g2[sub]!;
      if (k1 === b1) {
        if (k2 > b2) continue;
        if (k2 === b2) {
          const k3 = f3[rest]! + g3[sub]!;
          if (k3 > b3 || (k3 === b3 && f4[rest]! + g4[sub]! >= b4)) continue;
        }
      }
      b1 = k1;
      b2 = k2;
      b3 = f3[rest]! + g3[sub]!;
      b4 = f4[rest]! + g4[sub]!;
      chosen = sub;
    }
    f1[mask] = b1;
    f2[mask] = b2;
    f3[mask] = b3;
    f4[mask] = b4;
    choice[mask] = chosen;
  }
  return choice;
}

/** As `splitInTables`, with one price in place of the keys, and whoever is first in a set may stay unfed: then the table is 0. */
export function splitPriced(
  f: Float64Array,
  best: Float64Array,
  unfed: Float64Array,
  full: number,
  tableOf: Int32Array,
): void {
  f[0] = 0;
  for (let mask = 1; mask <= full; mask += 1) {
    const first = mask & -mask;
    const others = mask ^ first;
    let least = f[others]! + unfed[31 - Math.clz32(first)]!;
    let chosen = 0;
    for (let rest = others; ; rest = (rest - 1) & others) {
      const price = f[others ^ rest]! + best[rest | first]!;
      if (price < least - 1e-12) [least, chosen] = [price, rest | first];
      if (rest === 0) break;
    }
    f[mask] = least;
    tableOf[mask] = chosen;
  }
}

/** As `joinIn`, with one price in place of the keys. */
export function joinPriced(f: Float64Array, g: Float64Array, full: number, allowed: number): Int32Array {
  const choice = new Int32Array(full + 1);
  for (let mask = full; mask > 0; mask -= 1) {
    const reach = mask & allowed;
    let [low, chosen] = [f[mask]!, 0];
    for (let sub = reach; sub > 0; sub = (sub - 1) & reach) {
      const price = f[mask ^ sub]! + g[sub]!;
      if (price < low - 1e-12) [low, chosen] = [price, sub];
    }
    f[mask] = low;
    choice[mask] = chosen;
  }
  return choice;
}
