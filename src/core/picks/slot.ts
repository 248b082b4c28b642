import type { Grid } from './grid.ts';
import { dayExcess, granted, unfed, type State } from './measure.ts';
import { type KeptBack, makeOffer, type Offer, takeOption } from './offer.ts';
import type { SlotTable } from './table.ts';

/**
 * Solves one slot exactly, everything else held: the best of all ways to share its eaters among the dishes and to
 * open pouches from what is left, by dynamic programming over sets of eaters. Three whole-number keys stand for
 * the levels: (short, wishes, dislikes), (waste, oldest first, variety, day figures), (months, weight). Who stays
 * unfed is chosen last, because the worst-off eater is a maximum and does not add up.
 */
export interface SlotSolver {
  /**
   * Fills slot s of the state, which must be cleared there.
   * @param back what to keep back this time, so that other slots may have it
   */
  fill(state: State, s: number, back?: KeptBack): void;
  clear(state: State, s: number): void;
}

const never = Infinity;

export function makeSlotSolver(grid: Grid, tables: readonly SlotTable[]): SlotSolver {
  const eaterCount = grid.eaterKeys.length;
  const classCount = grid.classes.length;
  const widest = Math.max(1, ...tables.map((t) => t.full + 1));
  const [f1, f2, f3] = [new Float64Array(widest), new Float64Array(widest), new Float64Array(widest)];
  const [g1, g2, g3] = [new Float64Array(widest), new Float64Array(widest), new Float64Array(widest)];
  const maxSize = Math.max(1, ...grid.classes.map((c) => c.size));
  const maxDry = Math.max(1, ...grid.classes.map((c) => c.dryTenths));
  const slotsADay = Math.max(
    1,
    ...grid.slotDayPlace.map((d) => grid.slotDayPlace.filter((x) => x === d).length),
  );

  // Sizes of the digits within a key: each is above anything the lower levels of one slot can add up to.
  const perDislike = 1;
  const perWish = eaterCount + 1;
  const perShort = (grid.wishTotal + 1) * perWish;
  const perDay = 1;
  const perVariety = 1 + eaterCount * (2 * 9999 * slotsADay + 1250);
  const perBucket = perVariety * (1 + eaterCount * (slotsADay + 3));
  const perWaste =
    perBucket * (1 + 3 * (Math.max(1, ...tables.map((t) => t.lowOf[t.full]!)) + eaterCount * maxSize));
  const perMonth = 1 + 64 * maxDry;
  const restOf = (month: number, dry: number): number => month * perMonth + dry;

  const clear = (state: State, s: number): void => {
    for (const e of grid.slotEaters[s]!) state.eat[s * eaterCount + e] = unfed;
    state.open.fill(0, s * classCount, (s + 1) * classCount);
  };

  /** What it costs this eater to have meal m here (or nothing, m = −1), at the levels that add up by eater. */
  const eaterCost = (state: State, s: number, e: number, m: number, into: Cost): void => {
    const { eat } = state;
    let wish = 0;
    for (const w of grid.wishesOf[e]!) {
      const { slot, meal, weight } = grid.wishes[w]!;
      if ((slot === s || slot === -1) && meal !== m && !granted(grid, eat, w, s)) wish += weight;
    }
    let [sodium, energy] = m < 0 ? [0, 0] : [grid.sodium[e]![m]!, grid.energy[e]![m]!];
    const day = grid.slotDayPlace[s]!;
    let hard = m < 0 ? 0 : grid.hardMg[e]![m]!;
    let [times, repeats] = [0, 0];
    for (let i = 0; i < grid.slotKeys.length; i += 1) {
      const other = eat[i * eaterCount + e]!;
      if (i === s || other < 0) continue;
      if (grid.slotDayPlace[i] === day) {
        sodium += grid.sodium[e]![other]!;
        energy += grid.energy[e]![other]!;
        hard += grid.hardMg[e]![other]!;
      }
      if (other === m) times += 1;
    }
    if (m >= 0) {
      if (times > 0) {
        if (anyHas(eat, eaterCount, e, m, grid.earlier[s]![e]!, -1)) repeats += 1;
        for (const j of grid.later[s]![e]!) {
          const again = eat[j * eaterCount + e] === m;
          if (again && !anyHas(eat, eaterCount, e, m, grid.earlier[j]![e]!, s)) repeats += 1;
        }
      }
      if (times + 1 > grid.often) repeats += 1;
    }
    const tooSalty = m >= 0 && hard > grid.hardLimitMg[e]!;
    into.k1 = tooSalty ? never : wish * perWish + (m >= 0 && grid.dislike[e]![m] ? perDislike : 0);
    into.k2 = repeats * perVariety + dayExcess(grid, e, day, sodium, energy) * perDay;
  };

  const fill = (state: State, s: number, back?: KeptBack): void => {
    const table = tables[s]!;
    const { eaters, full, pair } = table;
    const size = full + 1;
    const cost: Cost = { k1: 0, k2: 0 };
    f1.fill(never, 0, size);
    f1[0] = f2[0] = f3[0] = 0;
    const choices: (Int32Array | undefined)[] = [];
    const offers: (Offer | undefined)[] = [];

    table.meals.forEach((m, place) => {
      const mask = table.allowed[place]! & ~(back?.from[place] ?? 0);
      const offer = mask === 0 ? undefined : makeOffer(grid, state, s, table, place, back, restOf);
      offers.push(offer);
      if (!offer) {
        choices.push(undefined);
        return;
      }
      const choice = new Int32Array(size);
      choices.push(choice);
      // Cost of this dish for each set of eaters.
      const [a1, a2]: [number[], number[]] = [[], []];
      eaters.forEach((e, i) => {
        if (mask & (1 << i)) eaterCost(state, s, e, m, cost);
        else cost.k1 = never;
        a1.push(cost.k1);
        a2.push(cost.k2);
      });
      g1[0] = g2[0] = 0;
      for (let sub = 1; sub < size; sub += 1) {
        const lowest = 31 - Math.clz32(sub & -sub);
        const rest = sub & (sub - 1);
        g1[sub] = g1[rest]! + a1[lowest]!;
        g2[sub] = g2[rest]! + a2[lowest]!;
      }
      const best = offer.best;
      for (let sub = 1; sub < size; sub += 1) {
        if (g1[sub] === never) continue;
        const option = best[pair[sub]!]!;
        if (option < 0) {
          g1[sub] = never;
          continue;
        }
        const id = pair[sub]!;
        const total = offer.totals[option]!;
        g1[sub]! += Math.max(0, table.pairLow[id]! - total) * perShort;
        g2[sub]! += Math.max(0, total - table.pairHigh[id]!) * perWaste + offer.bucket[option]! * perBucket;
        g3[sub] = offer.rest[option]!;
      }
      shareOut(f1, f2, f3, g1, g2, g3, full, mask, choice);
    });

    let left = bestFed(grid, state, s, table);
    for (let place = table.meals.length - 1; place >= 0 && left > 0; place -= 1) {
      const sub = choices[place]?.[left] ?? 0;
      if (sub === 0) continue;
      const offer = offers[place]!;
      eaters.forEach((e, i) => {
        if (sub & (1 << i)) state.eat[s * eaterCount + e] = table.meals[place]!;
      });
      takeOption(offer, offer.best[pair[sub]!]!, state.open, s * classCount);
      left ^= sub;
    }
  };

  /** The set of eaters to feed: compares every choice of unfed ones, level by level. */
  const bestFed = (gridOf: Grid, state: State, s: number, table: SlotTable): number => {
    const { eaters, full } = table;
    const missed = gridOf.eaterKeys.map((_, e) => {
      let n = 0;
      for (let i = 0; i < gridOf.slotKeys.length; i += 1)
        if (i !== s && state.eat[i * eaterCount + e] === unfed) n += 1;
      return n;
    });
    const base = Math.max(0, ...missed);
    const without = eaters.map((e): Cost => {
      const cost: Cost = { k1: 0, k2: 0 };
      eaterCost(state, s, e, -1, cost);
      return cost;
    });
    let best: number[] | undefined;
    let fed = 0;
    for (let out = 0; out <= full; out += 1) {
      const inside = full ^ out;
      if (f1[inside] === never) continue;
      const shortHere = Math.floor(f1[inside]! / perShort);
      const short = shortHere + table.lowOf[out]!;
      if (best && short > best[0]!) continue;
      let [worst, k1, k2] = [base, f1[inside]! - shortHere * perShort, f2[inside]!];
      eaters.forEach((e, i) => {
        if (!(out & (1 << i))) return;
        worst = Math.max(worst, missed[e]! + 1);
        k1 += without[i]!.k1;
        k2 += without[i]!.k2;
      });
      const keys = [short, table.bits[out]!, worst, k1, k2, f3[inside]!];
      if (best && !less(keys, best)) continue;
      best = keys;
      fed = inside;
    }
    return fed;
  };

  return { fill, clear };
}

/**
 * Lets one more dish join in: for every set of eaters the best split into those at this dish (costs g) and those
 * at the dishes before (costs f, overwritten). Sets are gone through from the largest, so that f still holds the
 * costs before at every smaller one.
 */
function shareOut(
  f1: Float64Array,
  f2: Float64Array,
  f3: Float64Array,
  g1: Float64Array,
  g2: Float64Array,
  g3: Float64Array,
  full: number,
  allowed: number,
  choice: Int32Array,
): void {
  for (let mask = full; mask > 0; mask -= 1) {
    const reach = mask & allowed;
    let b1 = f1[mask]!;
    let b2 = f2[mask]!;
    let b3 = f3[mask]!;
    let chosen = 0;
    for (let sub = reach; sub > 0; sub = (sub - 1) & reach) {
      const rest = mask ^ sub;
      const k1 = f1[rest]! + g1[sub]!;
      if (k1 > b1 || k1 === never) continue;
      const k2 = f2[rest]! + g2[sub]!;
      if (k1 === b1) {
        if (k2 > b2) continue;
        const k3 = f3[rest]! + g3[sub]!;
        if (k2 === b2 && k3 >= b3) continue;
      }
      b1 = k1;
      b2 = k2;
      b3 = f3[rest]! + g3[sub]!;
      chosen = sub;
    }
    f1[mask] = b1;
    f2[mask] = b2;
    f3[mask] = b3;
    choice[mask] = chosen;
  }
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

interface Cost {
  k1: number;
  k2: number;
}

function less(a: readonly number[], b: readonly number[]): boolean {
  for (let i = 0; i < a.length; i += 1) if (a[i] !== b[i]) return a[i]! < b[i]!;
  return false;
}
