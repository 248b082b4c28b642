import type { DishPick, Lot, PicksPlan, PicksProblem } from './problem.ts';

/**
 * Reads a finished plan against the question, knowing nothing of how it was made: no shared table, no shared
 * sum. What it says is what a careful person with the list of pouches in hand would find.
 * @returns one sentence for each fault; empty for a good plan
 */
export function checkPlan(problem: PicksProblem, plan: PicksPlan): string[] {
  const faults: string[] = [];
  const lotOf = new Map(problem.lots.flatMap((lot) => lot.pouches.map((code) => [code, lot] as const)));
  const eaterOf = new Map(problem.eaters.map((e) => [e.key, e]));
  const clear = new Set(problem.safe.map((p) => JSON.stringify([p.eater, p.meal])));
  const barred = new Set((problem.barred ?? []).map((b) => JSON.stringify([b.slot, b.meal])));
  const openedOnce = new Set<string>();
  const salt = new Map<string, number>();

  const slotKeys = plan.slots.map((s) => s.slot);
  if (new Set(slotKeys).size !== slotKeys.length) faults.push('a slot is planned twice');
  for (const slot of problem.slots) {
    const picked = plan.slots.find((s) => s.slot === slot.key);
    if (!picked) {
      faults.push(`slot ${slot.key} is missing`);
      continue;
    }
    const seated = [...picked.dishes.flatMap((d) => d.eaters), ...picked.unfed.map((u) => u.eater)].sort();
    if (JSON.stringify(seated) !== JSON.stringify([...new Set(slot.eaters)].sort())) {
      faults.push(`slot ${slot.key}: its eaters are not each there once`);
    }
    for (const u of picked.unfed) {
      if (u.shortTwentieths !== Math.ceil(eaterOf.get(u.eater)!.portionTwentieths * 0.9 - 1e-9)) {
        faults.push(`slot ${slot.key}: ${u.eater} misses another figure`);
      }
    }
    const meals = picked.dishes.map((d) => d.meal);
    if (new Set(meals).size !== meals.length) faults.push(`slot ${slot.key}: a dish is there twice`);
    for (const dish of picked.dishes) {
      const where = `slot ${slot.key}, ${dish.meal}`;
      if (barred.has(JSON.stringify([slot.key, dish.meal])))
        faults.push(`${where}: not to be near somebody at this slot`);
      for (const code of dish.pouches) {
        const lot = lotOf.get(code);
        if (!lot) faults.push(`${where}: no pouch ${code} in stock`);
        if (openedOnce.has(code)) faults.push(`${where}: ${code} is opened twice`);
        openedOnce.add(code);
        if (!lot) continue;
        if (lot.meal !== dish.meal) faults.push(`${where}: ${code} is ${lot.meal}`);
        if (!lot.steady) faults.push(`${where}: ${code} is of a batch that is not steady`);
        if (lot.bestBy !== null && lot.bestBy < slot.day)
          faults.push(`${where}: ${code} is past its best-by`);
      }
      for (const key of dish.eaters) {
        if (!clear.has(JSON.stringify([key, dish.meal]))) faults.push(`${where}: not clear for ${key}`);
        const eater = eaterOf.get(key)!;
        if (eater.sodiumHard !== true || eater.sodiumLimitMg === null) continue;
        const perServing = saltiest(problem.lots, dish.meal);
        if (perServing === null) faults.push(`${where}: sodium not known, ${key} has a hard limit`);
        const day = JSON.stringify([key, slot.day]);
        salt.set(day, (salt.get(day) ?? 0) + ((perServing ?? 0) * eater.portionTwentieths) / 20);
        if (salt.get(day)! > eater.sodiumLimitMg + 1e-6)
          faults.push(`${where}: over the sodium limit of ${key}`);
      }
      faults.push(
        ...portionFaults(
          where,
          dish,
          lotOf,
          dish.eaters.map((k) => eaterOf.get(k)!.portionTwentieths),
        ),
      );
    }
  }
  return faults;
}

/** The most sodium a serving of any lot of the meal holds; null when one is not known. */
function saltiest(lots: readonly Lot[], meal: string): number | null {
  let most = 0;
  for (const lot of lots) {
    if (lot.meal !== meal || !lot.steady || lot.pouches.length === 0) continue;
    if (lot.sodiumMgPerServing === null) return null;
    most = Math.max(most, lot.sodiumMgPerServing);
  }
  return most;
}

function portionFaults(
  where: string,
  dish: DishPick,
  lotOf: ReadonlyMap<string, Lot>,
  portions: readonly number[],
): string[] {
  const faults: string[] = [];
  const opened = dish.pouches.reduce((sum, code) => sum + (lotOf.get(code)?.servingsTwentieths ?? 0), 0);
  // Nine and eleven tenths, rounded inwards to whole twentieths, in whole numbers.
  const least = portions.reduce((sum, p) => sum + Math.floor((p * 9 + 9) / 10), 0);
  const most = portions.reduce((sum, p) => sum + Math.floor((p * 11) / 10), 0);
  const short = Math.max(0, least - opened);
  if (dish.eaters.length === 0) faults.push(`${where}: opened for nobody`);
  if (opened !== dish.openedTwentieths)
    faults.push(`${where}: ${opened} opened, not ${dish.openedTwentieths}`);
  if (short !== dish.shortTwentieths) faults.push(`${where}: ${short} short, not ${dish.shortTwentieths}`);
  if (2 * short > least) faults.push(`${where}: less than half of what its eaters need`);
  if (Math.max(0, opened - most) !== dish.wasteTwentieths) faults.push(`${where}: waste is another figure`);
  return faults;
}
