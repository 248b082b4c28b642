import type { Grid } from './grid.ts';
import { shortKcal } from './helpings.ts';
import { makeLarder, priceTotals, takeTotal } from './larder.ts';
import { unfed } from './measure.ts';
import { makeMenu, type Menu, type Prices } from './menus.ts';
import { joinPriced, type Served, splitPriced, tablesOf } from './seating.ts';
import type { SlotTable } from './table.ts';

export interface Pricer {
  /** The cheapest menu of the slot at these prices, and its price. */
  readonly cheapest: (slot: number, prices: Prices) => { readonly price: number; readonly menu: Menu };
}

/** The same dynamic programme as the slot search, with one price in place of the levels. */
export function makePricer(grid: Grid, tables: readonly SlotTable[]): Pricer {
  const widest = Math.max(1, ...tables.map((t) => t.full + 1));
  const [f, g, best] = [new Float64Array(widest), new Float64Array(widest), new Float64Array(widest)];
  const [tableOf, dishOf] = [new Int32Array(widest), new Int32Array(widest)];
  const unfedPrice = new Float64Array(Math.max(1, ...tables.map((t) => t.parties.length)));
  const longest = Math.max(1, ...tables.map((t) => t.meals.length));
  const bests = Array.from({ length: longest }, () => new Int32Array(widest));
  const larders = tables.map((t, s) => t.meals.map((m, place) => makeLarder(grid, s, m, t.most[place]!)));
  const byPair = new Float64Array(widest);

  const priceDish = (s: number, place: number, prices: Prices): void => {
    const table = tables[s]!;
    const { pairLow, pairHigh } = table.needs[place]!;
    const worth = grid.worth[table.meals[place]!]!;
    const larder = larders[s]![place]!;
    const chosenOf = bests[place]!;
    const byTotal = priceTotals(larder, prices.pouch);
    const { step, largest } = larder;
    for (let id = 0; id < pairLow.length; id += 1) {
      const [low, high] = [pairLow[id]!, pairHigh[id]!];
      let [cheapest, chosen] = [Infinity, -1];
      // Less than half is no meal; with a pouch more than enough, one could stay closed, and no price is below nothing.
      const last = Math.min(byTotal.length - 1, Math.ceil((low + largest) / step) - 1);
      for (let i = Math.max(1, Math.ceil(low / 2 / step)); i <= last; i += 1) {
        let price = byTotal[i]!;
        if (price >= cheapest) continue;
        const total = i * step;
        if (total < low) price += shortKcal(low, total, worth) * prices.short;
        else if (total > high) price += (total - high) * prices.waste;
        if (price < cheapest) [cheapest, chosen] = [price, i];
      }
      byPair[id] = cheapest;
      chosenOf[id] = chosen;
    }
  };

  const mayHave = (e: number, m: number, prices: Prices): boolean =>
    !(prices.noDislike && grid.dislike[e]![m]);

  /** What the dish costs for every set of parties that may have it, into g; endless for the others. */
  const priceSets = (s: number, place: number, prices: Prices): void => {
    const { parties, full, allowed, needs, meals } = tables[s]!;
    priceDish(s, place, prices);
    const { pair } = needs[place]!;
    const seated = parties.map((party, i) =>
      allowed[place]! & (1 << i) && party.every((e) => mayHave(e, meals[place]!, prices))
        ? party.reduce((sum, e) => sum + prices.eats(e, meals[place]!), 0)
        : Infinity,
    );
    g[0] = 0;
    for (let sub = 1; sub <= full; sub += 1)
      g[sub] = g[sub & (sub - 1)]! + seated[31 - Math.clz32(sub & -sub)]!;
    for (let sub = 1; sub <= full; sub += 1) g[sub]! += byPair[pair[sub]!]!;
  };

  const menuWith = (s: number, served: readonly Served[]): Menu => {
    const { parties, meals, needs } = tables[s]!;
    const eaten = new Map<number, number>();
    const open: { c: number; n: number }[] = [];
    for (const { sub, dish } of served) {
      parties.forEach((party, i) => {
        if (sub & (1 << i)) for (const e of party) eaten.set(e, meals[dish]!);
      });
      takeTotal(larders[s]![dish]!, bests[dish]![needs[dish]!.pair[sub]!]!, (c, n) => open.push({ c, n }));
    }
    open.sort((a, b) => a.c - b.c);
    return makeMenu(
      grid,
      s,
      grid.slotEaters[s]!.map((e) => eaten.get(e) ?? unfed),
      open,
    );
  };

  const cheapest: Pricer['cheapest'] = (s, prices) => {
    const { parties, full, meals, allowed } = tables[s]!;
    for (let party = 0; party < parties.length; party += 1)
      unfedPrice[party] = prices.noUnfed
        ? Infinity
        : parties[party]!.reduce((sum, e) => sum + prices.unfed[e]!, 0);
    best.fill(Infinity, 0, full + 1);
    meals.forEach((_, place) => {
      priceSets(s, place, prices);
      const mask = allowed[place]!;
      for (let sub = mask; sub > 0; sub = (sub - 1) & mask) {
        if (g[sub]! >= best[sub]! - 1e-12) continue;
        best[sub] = g[sub]!;
        dishOf[sub] = place;
      }
    });
    splitPriced(f, best, unfedPrice, full, tableOf);
    const served = tablesOf(full, tableOf, dishOf) ?? oneTableADish(s, prices);
    return { price: f[full]!, menu: menuWith(s, served) };
  };

  /** The same where each dish joins in once, for the few times that one would be served at two tables. */
  const oneTableADish = (s: number, prices: Prices): Served[] => {
    const { full, meals, allowed } = tables[s]!;
    // Everybody starts unfed; each dish then takes some of them over.
    f[0] = 0;
    for (let mask = 1; mask <= full; mask += 1)
      f[mask] = f[mask & (mask - 1)]! + unfedPrice[31 - Math.clz32(mask & -mask)]!;
    const choices = meals.map((_, place) => {
      priceSets(s, place, prices);
      return joinPriced(f, g, full, allowed[place]!);
    });
    const served: Served[] = [];
    let left = full;
    for (let dish = meals.length - 1; dish >= 0; dish -= 1) {
      const sub = choices[dish]![left]!;
      if (sub > 0) served.push({ sub, dish });
      left ^= sub;
    }
    return served;
  };

  return { cheapest };
}
