import { seeded } from '#core/picks/chance.ts';
import type { DishPick, Lot, PicksPlan, PicksProblem, SlotPick } from '#core/picks/problem.ts';
import { carries, countLevels, lacks, isLess, leastOf, missesAll, missesWith, plateOf } from './count.ts';
import type { Occasion } from '#core/occasions.ts';

/** A tiny trip drawn from a seed: at most 3 eaters, 3 slots and 4 lots, with every kind of trouble now and then. */
export function tinyProblem(seed: number): PicksProblem {
  const chance = seeded(seed * 7919 + 17);
  const below = (n: number): number => chance.below(n);
  const shape = [
    [3, 2],
    [2, 3],
    [3, 1],
    [2, 2],
    [1, 3],
  ][below(5)]!;
  const eaters = Array.from({ length: shape[0]! }, (_, i) => ({
    key: `eater ${i}`,
    name: `Eater ${i}`,
    portionTwentieths: [12, 20, 30][below(3)]!,
    sodiumLimitMg: below(3) === 0 ? [900, 1500][below(2)]! : null,
    sodiumHard: below(3) === 0,
    energyKcal: below(2) === 0 ? 1800 : null,
  }));
  const meals = ['ash', 'birch', 'cedar'].slice(0, 2 + below(2));
  const slots = Array.from({ length: shape[1]! }, (_, i) => ({
    key: `slot ${i}`,
    day: 50 + Math.floor(i / (1 + (seed % 2))),
    order: i % (1 + (seed % 2)),
    eaters: eaters.filter(() => below(8) > 0).map((e) => e.key),
  }));
  const lots: Lot[] = Array.from({ length: 2 + below(3) }, (_, i) => ({
    code: `B${i}/80`,
    meal: meals[below(meals.length)]!,
    pouches: Array.from(
      { length: 1 + below(eaters.length * slots.length > 4 ? 2 : 3) },
      (__, k) => `B${i}-${k + 1}`,
    ),
    servingsTwentieths: [20, 30, 40][below(3)]!,
    dryG: 80 + 10 * below(3),
    waterMl: 200,
    sodiumMgPerServing: below(9) === 0 ? null : 300 + 100 * below(8),
    kcalPerServing: below(9) === 0 ? null : 400 + 50 * below(6),
    bestBy: below(8) === 0 ? null : [50, 51, 90, 300, 900, 2000][below(6)]! + below(2),
    steady: below(12) > 0,
  }));
  const pairs = eaters.flatMap((e) => meals.map((meal) => ({ eater: e.key, meal })));
  // Drawn apart, so that the other draws are what they were before there was such a thing.
  const own = seeded(seed * 31 + 5);
  const barred = slots.flatMap(({ key }) =>
    meals.filter(() => own.below(7) === 0).map((meal) => ({ slot: key, meal, near: ['Eater 0'] })),
  );
  const fresh = seeded(seed * 101 + 3);
  const draw = (n: number): number => fresh.below(n);
  const kinds: Occasion[][] = [
    ['main'],
    ['main'],
    ['breakfast'],
    ['breakfast', 'main'],
    ['side'],
    ['sweet', 'snack'],
  ];
  const uses = meals.flatMap((meal) => (draw(3) === 0 ? [] : [{ meal, is: kinds[draw(6)]! }]));
  const shaped = slots.map((slot) => ({
    ...slot,
    ...(draw(3) === 0 ? {} : { carriedBy: [(['main', 'main', 'breakfast'] as const)[draw(3)]!] }),
    floors: slot.eaters.flatMap((eater) => (draw(3) === 0 ? [] : [{ eater, kcal: 200 + 50 * draw(14) }])),
  }));
  const seats = shaped.flatMap((slot) =>
    slot.eaters.map((eater) => ({
      slot: slot.key,
      eater,
      meal: draw(5) === 0 ? null : meals[draw(meals.length)]!,
    })),
  );
  const banned = shaped.flatMap(({ key }) =>
    meals.filter(() => draw(9) === 0).map((meal) => ({ slot: key, meal })),
  );
  return {
    lots,
    eaters,
    banned,
    slots: shaped,
    ...(uses.length > 0 ? { uses } : {}),
    ...(draw(2) === 0 ? { before: { was: draw(2) === 0 ? 'kept' : 'shown', seats } as const } : {}),
    barred,
    safe: pairs.filter(() => below(6) > 0),
    dislikes: pairs.filter(() => below(4) === 0),
    wishes: Array.from({ length: below(5) }, () => ({
      eater: eaters[below(eaters.length)]!.key,
      meal: meals[below(meals.length)]!,
      slot: below(2) === 0 ? null : slots[below(slots.length)]!.key,
      rank: 1 + below(4),
    })),
  };
}

interface Option {
  readonly pick: SlotPick;
  readonly used: ReadonlyMap<string, number>;
  readonly short: number;
}

/**
 * The best vector of levels, by trying everything: who eats what, how many pouches of each lot, which of them on
 * which day. Nothing cuts the search. Nothing is shared with the picks but the records.
 */
export function tryEverything(problem: PicksProblem): number[] {
  const options = [...problem.slots]
    .sort((a, b) => a.day - b.day || a.order - b.order)
    .map((slot) => ({ slot, list: slotOptions(problem, slot.key).sort((a, b) => a.short - b.short) }));
  let best: number[] | undefined;
  const plan: SlotPick[] = [];
  const used = new Map<string, number>();
  const salt = new Map<string, number>();
  const go = (i: number, short: number): void => {
    if (i === options.length) {
      const vector = countLevels(problem, { slots: plan } satisfies PicksPlan);
      if (!best || isLess(vector, best)) best = vector;
      return;
    }
    const { slot, list } = options[i]!;
    for (const option of list) {
      if (
        [...option.used].some(
          ([code, n]) =>
            (used.get(code) ?? 0) + n > problem.lots.find((l) => l.code === code)!.pouches.length,
        )
      )
        continue;
      const eaten = option.pick.dishes.flatMap((d) =>
        d.eaters.map((e) => [e, saltOf(problem, slot, e, d.meal)] as const),
      );
      if (eaten.some(([e, mg]) => (salt.get(`${slot.day}/${e}`) ?? 0) + mg > hardLimit(problem, e) + 1e-9))
        continue;
      for (const [code, n] of option.used) used.set(code, (used.get(code) ?? 0) + n);
      for (const [e, mg] of eaten) salt.set(`${slot.day}/${e}`, (salt.get(`${slot.day}/${e}`) ?? 0) + mg);
      plan.push(option.pick);
      go(i + 1, short + option.short);
      plan.pop();
      for (const [e, mg] of eaten) salt.set(`${slot.day}/${e}`, salt.get(`${slot.day}/${e}`)! - mg);
      for (const [code, n] of option.used) used.set(code, used.get(code)! - n);
    }
  };
  go(0, 0);
  return best!;
}

function hardLimit(problem: PicksProblem, eater: string): number {
  const e = problem.eaters.find((x) => x.key === eater)!;
  return e.sodiumHard === true && e.sodiumLimitMg !== null ? e.sodiumLimitMg : Infinity;
}

function saltOf(
  problem: PicksProblem,
  slot: PicksProblem['slots'][number],
  eater: string,
  meal: string,
): number {
  const all = problem.lots.filter((l) => l.meal === meal && l.steady).map((l) => l.sodiumMgPerServing);
  return all.includes(null)
    ? hardLimit(problem, eater) < Infinity
      ? Infinity
      : 0
    : (Math.max(...(all as number[])) * plateOf(problem, slot, eater, meal)) / 20;
}

/** Every way to serve one slot; a pouch is opened only for a dish somebody eats, and none that leaves nobody hungrier. */
function slotOptions(problem: PicksProblem, key: string): Option[] {
  const slot = problem.slots.find((s) => s.key === key)!;
  const lots = problem.lots.filter((l) => l.steady && (l.bestBy === null || l.bestBy >= slot.day));
  const meals = [...new Set(lots.map((l) => l.meal))];
  const least = (e: string, meal: string): number => leastOf(plateOf(problem, slot, e, meal));
  const options: Option[] = [];
  const seat = (i: number, eat: (string | null)[]): void => {
    if (i < slot.eaters.length) {
      seat(i + 1, [...eat, null]);
      for (const meal of meals) {
        if (carries(problem, slot, slot.eaters[i]!, meal)) seat(i + 1, [...eat, meal]);
      }
      return;
    }
    const unfed = slot.eaters
      .filter((_, k) => eat[k] === null)
      .map((e) => ({
        eater: e,
        shortTwentieths: leastOf(problem.eaters.find((x) => x.key === e)!.portionTwentieths),
      }));
    const missing = slot.eaters
      .map((e, k) => (eat[k] === null ? missesAll(problem, slot, e) : missesWith(problem, slot, e, eat[k]!)))
      .reduce((a, b) => a + b, 0);
    const eaten = meals.filter((m) => eat.includes(m));
    const open = (d: number, dishes: DishPick[], used: Map<string, number>, short: number): void => {
      if (d === eaten.length) return void options.push({ pick: { slot: key, dishes, unfed }, used, short });
      const meal = eaten[d]!;
      const eaters = slot.eaters.filter((_, k) => eat[k] === meal);
      const low = eaters.reduce((sum, e) => sum + least(e, meal), 0);
      const own = lots.filter((l) => l.meal === meal);
      const count = (k: number, counts: number[]): void => {
        if (k < own.length) {
          for (let n = 0; n <= own[k]!.pouches.length; n += 1) count(k + 1, [...counts, n]);
          return;
        }
        const opened = own.reduce((sum, l, j) => sum + l.servingsTwentieths * counts[j]!, 0);
        const miss = Math.max(0, low - opened);
        const spare = own.some((l, j) => counts[j]! > 0 && opened - l.servingsTwentieths >= low);
        if (opened === 0 || 2 * miss > low || spare) return;
        const pouches = own.flatMap((l, j) => l.pouches.slice(0, counts[j]));
        const dish = {
          meal,
          pouches,
          eaters,
          openedTwentieths: opened,
          shortTwentieths: miss,
          wasteTwentieths: 0,
        };
        open(
          d + 1,
          [...dishes, dish],
          new Map([...used, ...own.map((l, j) => [l.code, counts[j]!] as const)]),
          short + lacks(problem, meal, low, opened),
        );
      };
      count(0, []);
    };
    open(0, [], new Map(), missing);
  };
  seat(0, []);
  return options;
}
