import type { BesidePick, DishPick, Lot, PicksPlan, PicksProblem, Slot } from './problem.ts';

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
  const barred = new Set(
    [...(problem.barred ?? []), ...(problem.banned ?? [])].map((b) => JSON.stringify([b.slot, b.meal])),
  );
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
    for (const dish of picked.beside ?? [])
      faults.push(...besideFaults(problem, slot, dish, lotOf, openedOnce));
    const meals = picked.dishes.map((d) => d.meal);
    if (new Set(meals).size !== meals.length) faults.push(`slot ${slot.key}: a dish is there twice`);
    for (const dish of picked.dishes) {
      const where = `slot ${slot.key}, ${dish.meal}`;
      if (barred.has(JSON.stringify([slot.key, dish.meal]))) faults.push(`${where}: not to be at this slot`);
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
        if (!isFor(problem, slot, key, dish.meal)) faults.push(`${where}: is not for such a meal`);
        if (!clear.has(JSON.stringify([key, dish.meal]))) faults.push(`${where}: not clear for ${key}`);
        const eater = eaterOf.get(key)!;
        if (eater.sodiumHard !== true || eater.sodiumLimitMg === null) continue;
        const perServing = saltiest(problem.lots, dish.meal);
        if (perServing === null) faults.push(`${where}: sodium not known, ${key} has a hard limit`);
        const day = JSON.stringify([key, slot.day]);
        salt.set(
          day,
          (salt.get(day) ?? 0) + ((perServing ?? 0) * onThePlate(problem, slot, key, dish.meal)) / 20,
        );
        if (salt.get(day)! > eater.sodiumLimitMg + 1e-6)
          faults.push(`${where}: over the sodium limit of ${key}`);
      }
      faults.push(
        ...portionFaults(
          where,
          dish,
          lotOf,
          dish.eaters.map((k) => onThePlate(problem, slot, k, dish.meal)),
        ),
      );
    }
  }
  return faults;
}

function besideFaults(
  problem: PicksProblem,
  slot: Slot,
  dish: BesidePick,
  lotOf: ReadonlyMap<string, Lot>,
  openedOnce: Set<string>,
): string[] {
  const where = `slot ${slot.key}, ${dish.meal} beside`;
  const faults: string[] = [];
  const is = problem.uses?.find((u) => u.meal === dish.meal)?.is ?? [];
  if (!is.some((use) => slot.beside?.includes(use))) faults.push(`${where}: goes beside no such meal`);
  if ((problem.barred ?? []).some((b) => b.slot === slot.key && b.meal === dish.meal))
    faults.push(`${where}: not to be at this slot`);
  let opened = 0;
  for (const code of dish.pouches) {
    const lot = lotOf.get(code);
    if (openedOnce.has(code)) faults.push(`${where}: ${code} is opened twice`);
    openedOnce.add(code);
    opened += lot?.servingsTwentieths ?? 0;
    if (!lot || lot.meal !== dish.meal) faults.push(`${where}: ${code} is none of it`);
    else if (!lot.steady) faults.push(`${where}: ${code} is of a batch that is not steady`);
    else if (lot.bestBy !== null && lot.bestBy < slot.day)
      faults.push(`${where}: ${code} is past its best-by`);
  }
  if (opened !== dish.openedTwentieths || dish.pouches.length === 0)
    faults.push(`${where}: opened is another figure`);
  for (const eater of dish.eaters) {
    if (!slot.eaters.includes(eater)) faults.push(`${where}: ${eater} is not there`);
    if (!problem.safe.some((p) => p.eater === eater && p.meal === dish.meal))
      faults.push(`${where}: not clear for ${eater}`);
  }
  return faults;
}

/** Whether the meal carries such a meal of the day, this eater wished for it just there, or it is fixed. */
function isFor(problem: PicksProblem, slot: Slot, eater: string, meal: string): boolean {
  const stays = (problem.fixed ?? []).find((seat) => seat.slot === slot.key && seat.eater === eater);
  if (stays) return stays.meal === meal;
  const use = problem.uses?.find((u) => u.meal === meal);
  if (!use || !slot.carriedBy || use.is.some((one) => slot.carriedBy!.includes(one))) return true;
  const wished = problem.wishes.some((w) => w.slot === slot.key && w.eater === eater && w.meal === meal);
  return wished && (use.is.includes('main') || use.is.includes('breakfast'));
}

/** Twentieths of a serving that are meant for this eater: more than the portion where that gives too little. */
function onThePlate(problem: PicksProblem, slot: Slot, eater: string, meal: string): number {
  const { portionTwentieths: portion } = problem.eaters.find((e) => e.key === eater)!;
  const floor = slot.floors?.find((f) => f.eater === eater)?.kcal;
  const known = problem.lots
    .filter((l) => l.meal === meal && l.steady && l.pouches.length > 0)
    .flatMap((l) => (l.kcalPerServing === null ? [] : [l.kcalPerServing]));
  if (floor === undefined || known.length === 0) return portion;
  const kcal = known.reduce((a, b) => a + b, 0) / known.length;
  for (let n = portion; n < 2 * portion; n += 1) if (n * kcal >= 20 * floor - 1e-6) return n;
  return 2 * portion;
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
  helpings: readonly number[],
): string[] {
  const faults: string[] = [];
  const opened = dish.pouches.reduce((sum, code) => sum + (lotOf.get(code)?.servingsTwentieths ?? 0), 0);
  // Nine and eleven tenths, rounded inwards to whole twentieths, in whole numbers.
  const least = helpings.reduce((sum, p) => sum + Math.floor((p * 9 + 9) / 10), 0);
  const most = helpings.reduce((sum, p) => sum + Math.floor((p * 11) / 10), 0);
  const short = Math.max(0, least - opened);
  if (dish.eaters.length === 0) faults.push(`${where}: opened for nobody`);
  if (opened !== dish.openedTwentieths)
    faults.push(`${where}: ${opened} opened, not ${dish.openedTwentieths}`);
  if (short !== dish.shortTwentieths) faults.push(`${where}: ${short} short, not ${dish.shortTwentieths}`);
  if (2 * short > least) faults.push(`${where}: less than half of what its eaters need`);
  if (Math.max(0, opened - most) !== dish.wasteTwentieths) faults.push(`${where}: waste is another figure`);
  return faults;
}
