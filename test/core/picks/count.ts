import {
  levelNames,
  type LevelName,
  type PicksPlan,
  type PicksProblem,
  type Wish,
} from '#core/picks/problem.ts';

type Slot = PicksProblem['slots'][number];

/** Lots of a meal that count for its figures. */
const lotsOf = (problem: PicksProblem, meal: string) =>
  problem.lots.filter((l) => l.meal === meal && l.steady && l.pouches.length > 0 && l.servingsTwentieths > 0);

/** Mean kcal of a serving of a meal, as far as known; null when no lot tells. */
export function kcalOf(problem: PicksProblem, meal: string): number | null {
  const known = lotsOf(problem, meal).flatMap((l) => (l.kcalPerServing === null ? [] : [l.kcalPerServing]));
  return known.length === 0 ? null : known.reduce((a, b) => a + b, 0) / known.length;
}

export const floorOf = (slot: Slot, eater: string): number | null =>
  slot.floors?.find((f) => f.eater === eater)?.kcal ?? null;

/** Twentieths on the plate, counted up one by one from the portion until the floor is reached, twice at most. */
export function plateOf(problem: PicksProblem, slot: Slot, eater: string, meal: string): number {
  const portion = problem.eaters.find((e) => e.key === eater)!.portionTwentieths;
  const [floor, kcal] = [floorOf(slot, eater), kcalOf(problem, meal)];
  let plate = portion;
  while (floor !== null && kcal !== null && plate < 2 * portion && plate * kcal < floor * 20 - 1e-6)
    plate += 1;
  return plate;
}

export const leastOf = (plate: number): number => Math.floor((plate * 9 + 9) / 10);

/** What an eater misses who has nothing, and who has all of a thin dish; kcal. */
export function missesAll(problem: PicksProblem, slot: Slot, eater: string): number {
  const portion = problem.eaters.find((e) => e.key === eater)!.portionTwentieths;
  return Math.ceil(((floorOf(slot, eater) ?? portion * 25) * 9) / 10 - 1e-9);
}
export function missesWith(problem: PicksProblem, slot: Slot, eater: string, meal: string): number {
  const [floor, kcal] = [floorOf(slot, eater), kcalOf(problem, meal)];
  if (floor === null || kcal === null) return 0;
  const eaten = (leastOf(plateOf(problem, slot, eater, meal)) * kcal) / 20;
  const missing = floor * 0.9 - eaten;
  return missing <= 1e-9 ? 0 : Math.ceil(missing - 1e-9);
}
/** What a dish counts that holds less than its eaters need, kcal; what lacks beyond a quarter of it counts twice. */
export function lacks(problem: PicksProblem, meal: string, low: number, opened: number): number {
  if (opened >= low) return 0;
  const [short, quarter] = [low - opened, low / 4];
  return (short + (short > quarter ? Math.floor(short - quarter) : 0)) * worthOf(problem, meal);
}

export function worthOf(problem: PicksProblem, meal: string): number {
  const kcal = kcalOf(problem, meal);
  return kcal === null ? 25 : Math.max(1, Math.min(25, Math.round(kcal / 20)));
}

/** Whether a meal may carry a slot for an eater. */
export function carries(problem: PicksProblem, slot: Slot, eater: string, meal: string): boolean {
  if (!problem.safe.some((p) => p.eater === eater && p.meal === meal)) return false;
  const kept = [...(problem.barred ?? []), ...(problem.banned ?? [])];
  if (kept.some((b) => b.slot === slot.key && b.meal === meal)) return false;
  const limit = problem.eaters.find((e) => e.key === eater)!;
  const unknownSalt = lotsOf(problem, meal).some((l) => l.sodiumMgPerServing === null);
  if (limit.sodiumHard === true && limit.sodiumLimitMg !== null && unknownSalt) return false;
  const is = problem.uses?.find((u) => u.meal === meal)?.is;
  if (is === undefined || slot.carriedBy === undefined) return true;
  const wished = problem.wishes.some((w) => w.eater === eater && w.meal === meal && w.slot === slot.key);
  return is.some((one) => slot.carriedBy!.includes(one) || (wished && ['main', 'breakfast'].includes(one)));
}

/** Wishes that could come true somewhere, each with its rank among its eater's. */
function ranked(problem: PicksProblem): { wish: Wish; rank: number }[] {
  const open = problem.wishes.filter((w) =>
    problem.slots.some(
      (s) =>
        (w.slot === null || w.slot === s.key) &&
        s.eaters.includes(w.eater) &&
        carries(problem, s, w.eater, w.meal) &&
        lotsOf(problem, w.meal).some((l) => l.bestBy === null || l.bestBy >= s.day),
    ),
  );
  return open.map((wish) => {
    const ranks = [...new Set(open.filter((w) => w.eater === wish.eater).map((w) => w.rank))].sort(
      (a, b) => a - b,
    );
    return { wish, rank: Math.min(3, ranks.indexOf(wish.rank) + 1) };
  });
}

/**
 * The levels of a plan, counted once more from the question and the words of the model alone: maps and loops,
 * nothing shared with the sums under test. Witness: our own definition of each level, `levelNames`.
 */
export function countLevels(problem: PicksProblem, plan: PicksPlan): number[] {
  const slots = [...problem.slots].sort((a, b) => a.day - b.day || a.order - b.order);
  const lastDay = slots.at(-1)!.day;
  const days = [...new Set(slots.map((s) => s.day))];
  const portion = new Map(problem.eaters.map((e) => [e.key, e.portionTwentieths]));
  const lotOf = new Map(problem.lots.flatMap((l) => l.pouches.map((p) => [p, l] as const)));
  const ate = new Map<string, string>(); // "slot/eater" → meal
  const missed = new Map<string, number>();
  let [short, unfed, dislikes, waste, saved, variety, excess, months, dry] = [0, 0, 0, 0, 0, 0, 0, 0, 0];
  const soon = (lot: PicksProblem['lots'][number]): boolean =>
    lot.bestBy !== null && lot.bestBy - lastDay <= 60;
  for (const pick of plan.slots) {
    const slot = slots.find((s) => s.key === pick.slot)!;
    for (const { eater } of pick.unfed) {
      short += missesAll(problem, slot, eater);
      unfed += 1;
      missed.set(eater, (missed.get(eater) ?? 0) + 1);
    }
    variety += Math.max(0, pick.dishes.length - 1);
    for (const dish of pick.dishes) {
      let [opened, low, high] = [0, 0, 0];
      for (const code of dish.pouches) {
        const lot = lotOf.get(code)!;
        opened += lot.servingsTwentieths;
        dry += Math.round(lot.dryG * 10);
        const left = lot.bestBy === null ? 36500 : Math.max(0, lot.bestBy - lastDay);
        if (soon(lot)) saved += lot.servingsTwentieths;
        months += lot.servingsTwentieths * Math.floor(left / 30);
      }
      for (const eater of dish.eaters) {
        const plate = plateOf(problem, slot, eater, dish.meal);
        low += leastOf(plate);
        high += Math.floor((plate * 11) / 10);
        short += missesWith(problem, slot, eater, dish.meal);
        ate.set(`${pick.slot}/${eater}`, dish.meal);
        if (problem.dislikes.some((d) => d.eater === eater && d.meal === dish.meal)) dislikes += 1;
      }
      short += lacks(problem, dish.meal, low, opened);
      waste += Math.max(0, opened - high);
    }
  }
  // What is past its date before the first day is in no stock.
  const expiring = problem.lots
    .filter((l) => l.steady && l.servingsTwentieths > 0 && soon(l) && l.bestBy! >= slots[0]!.day)
    .reduce((sum, l) => sum + l.pouches.length * l.servingsTwentieths, 0);
  const portions = slots.flatMap((s) => s.eaters.map((e) => portion.get(e)!)).reduce((a, b) => a + b, 0);
  const beyond = Math.max(0, Math.ceil((waste - Math.max(20, Math.floor(portions / 20))) / 20));
  const floors = slots.flatMap((s) => (s.floors ?? []).map((f) => f.kcal)).reduce((a, b) => a + b, 0);
  const step = Math.max(100, Math.floor(floors / 50));
  const known = new Set(problem.lots.map((l) => l.meal));
  const changed = (problem.before?.seats ?? []).filter(({ slot, eater, meal }) => {
    if (!slots.some((s) => s.key === slot && s.eaters.includes(eater))) return false;
    return (meal === null || known.has(meal)) && (ate.get(`${slot}/${eater}`) ?? null) !== meal;
  }).length;

  const wished = ranked(problem);
  const perRank = [1, 2, 3].map((r) => wished.filter(({ rank }) => rank === r).length);
  const n = Math.max(...perRank);
  const weight = [(n + 1) * (n + 1), n + 1, 1];
  let wishes = 0;
  for (const { wish: w, rank } of wished) {
    const where = w.slot === null ? slots.map((s) => s.key) : [w.slot];
    if (where.some((s) => ate.get(`${s}/${w.eater}`) === w.meal)) wishes -= weight[rank - 1]!;
  }

  const third = Math.max(1, Math.floor(days.length / 3));
  for (const eater of problem.eaters) {
    const own = slots.filter((s) => s.eaters.includes(eater.key));
    own.forEach((slot, j) => {
      const meal = ate.get(`${slot.key}/${eater.key}`);
      if (meal === undefined) return;
      const before = own.slice(0, j).filter((s) => ate.get(`${s.key}/${eater.key}`) === meal);
      if (before.some((s) => slot.day === s.day || (slot.day === s.day + 1 && slot.order <= s.order)))
        variety += 1;
      const last = own[j - 1];
      const isNear =
        last && (slot.day === last.day || (slot.day === last.day + 1 && slot.order <= last.order));
      if (isNear && ate.get(`${last.key}/${eater.key}`) === meal) variety += 1;
      if (before.length >= third) variety += 1;
    });
    for (const day of days) {
      const today = own.filter((s) => s.day === day);
      const meals = today.flatMap((s) => {
        const m = ate.get(`${s.key}/${eater.key}`);
        return m === undefined ? [] : [{ m, plate: plateOf(problem, s, eater.key, m) }];
      });
      const share = (plate: number, per: number, whole: number): number =>
        Math.min(9999, Math.round((plate * per * 50) / whole));
      if (eater.sodiumLimitMg) {
        const sodium = meals.map(({ m, plate }) => {
          const all = lotsOf(problem, m).map((l) => l.sodiumMgPerServing);
          return all.includes(null) ? 0 : share(plate, Math.max(...(all as number[])), eater.sodiumLimitMg!);
        });
        excess += Math.max(0, sodium.reduce((a, b) => a + b, 0) - 1000);
      }
      if (eater.energyKcal) {
        const energy = meals.map(({ m, plate }) => {
          const kcal = kcalOf(problem, m);
          return kcal === null ? 333 : share(plate, kcal, eater.energyKcal!);
        });
        const sum = energy.reduce((a, b) => a + b, 0);
        const part = Math.min(1, today.length / 3);
        excess += Math.max(0, Math.round(850 * part) - sum, sum - Math.round(1250 * part));
      }
    }
  }
  const kept = problem.before?.was === 'kept';
  const level: Record<LevelName, number> = {
    'energy short': Math.floor(short / step),
    unfed,
    'worst off': Math.max(0, ...missed.values()),
    wishes,
    dislikes,
    moved: kept ? changed : 0,
    waste: beyond,
    expiring: expiring - saved,
    variety,
    changes: kept ? 0 : changed,
    'sodium and energy': excess,
    'exact waste': waste,
    'oldest month first': months,
    'dry weight': dry,
  };
  return levelNames.map((name) => level[name]);
}

export function isLess(a: readonly number[], b: readonly number[]): boolean {
  for (let i = 0; i < a.length; i += 1) if (a[i] !== b[i]) return a[i]! < b[i]!;
  return false;
}
