import type { PicksPlan, PicksProblem } from '#core/picks/problem.ts';

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
  let [short, unfed, dislikes, waste, bucket, variety, excess, months, dry] = [0, 0, 0, 0, 0, 0, 0, 0, 0];
  for (const slot of plan.slots) {
    for (const { eater } of slot.unfed) {
      short += Math.ceil((portion.get(eater)! * 9) / 10);
      unfed += 1;
      missed.set(eater, (missed.get(eater) ?? 0) + 1);
    }
    for (const dish of slot.dishes) {
      let [opened, low, high] = [0, 0, 0];
      for (const code of dish.pouches) {
        const lot = lotOf.get(code)!;
        opened += lot.servingsTwentieths;
        dry += Math.round(lot.dryG * 10);
        const left = lot.bestBy === null ? 36500 : Math.max(0, lot.bestBy - lastDay);
        bucket += lot.servingsTwentieths * [60, 365, 1095].filter((limit) => left > limit).length;
        months += lot.servingsTwentieths * Math.floor(left / 30);
      }
      for (const eater of dish.eaters) {
        low += Math.ceil((portion.get(eater)! * 9) / 10);
        high += Math.floor((portion.get(eater)! * 11) / 10);
        ate.set(`${slot.slot}/${eater}`, dish.meal);
        if (problem.dislikes.some((d) => d.eater === eater && d.meal === dish.meal)) dislikes += 1;
      }
      short += Math.max(0, low - opened);
      waste += Math.max(0, opened - high);
    }
  }

  const perRank = [1, 2, 3].map((r) => problem.wishes.filter((w) => Math.min(3, w.rank) === r).length);
  const n = Math.max(...perRank);
  const weight = [(n + 1) * (n + 1), n + 1, 1];
  let wishes = 0;
  for (const w of problem.wishes) {
    const where = w.slot === null ? slots.map((s) => s.key) : [w.slot];
    if (where.some((s) => ate.get(`${s}/${w.eater}`) === w.meal)) wishes -= weight[Math.min(3, w.rank) - 1]!;
  }

  const third = Math.max(1, Math.floor(days.length / 3));
  const lotsOf = (meal: string) =>
    problem.lots.filter(
      (l) => l.meal === meal && l.steady && l.pouches.length > 0 && l.servingsTwentieths > 0,
    );
  for (const eater of problem.eaters) {
    const own = slots.filter((s) => s.eaters.includes(eater.key));
    own.forEach((slot, j) => {
      const meal = ate.get(`${slot.key}/${eater.key}`);
      if (meal === undefined) return;
      const before = own.slice(0, j).filter((s) => ate.get(`${s.key}/${eater.key}`) === meal);
      if (before.some((s) => slot.day === s.day || (slot.day === s.day + 1 && slot.order <= s.order)))
        variety += 1;
      if (before.length >= third) variety += 1;
    });
    for (const day of days) {
      const today = own.filter((s) => s.day === day);
      const meals = today.map((s) => ate.get(`${s.key}/${eater.key}`)).filter((m) => m !== undefined);
      const share = (per: number, whole: number): number =>
        Math.min(9999, Math.round((eater.portionTwentieths * per * 50) / whole));
      if (eater.sodiumLimitMg) {
        const sodium = meals
          .map((m) => lotsOf(m).map((l) => l.sodiumMgPerServing))
          .map((all) =>
            all.includes(null) ? 0 : share(Math.max(...(all as number[])), eater.sodiumLimitMg!),
          );
        excess += Math.max(0, sodium.reduce((a, b) => a + b, 0) - 1000);
      }
      if (eater.energyKcal) {
        const energy = meals
          .map((m) =>
            lotsOf(m)
              .map((l) => l.kcalPerServing)
              .filter((k) => k !== null),
          )
          .map((all) =>
            all.length === 0 ? 333 : share(all.reduce((a, b) => a + b, 0) / all.length, eater.energyKcal!),
          );
        const sum = energy.reduce((a, b) => a + b, 0);
        const part = Math.min(1, today.length / 3);
        excess += Math.max(0, Math.round(850 * part) - sum, sum - Math.round(1250 * part));
      }
    }
  }
  return [
    short,
    unfed,
    Math.max(0, ...missed.values()),
    wishes,
    dislikes,
    waste,
    bucket,
    variety,
    excess,
    months,
    dry,
  ];
}

export function isLess(a: readonly number[], b: readonly number[]): boolean {
  for (let i = 0; i < a.length; i += 1) if (a[i] !== b[i]) return a[i]! < b[i]!;
  return false;
}
