import type { PicksProblem } from './problem.ts';

/**
 * The order in which eaters and meals are gone through, made from what they are and not from what they are
 * called: names decide only between those whom nothing else tells apart. Without it, a count that runs out
 * would leave a renamed question with another answer.
 */
export interface Order {
  readonly eaters: readonly string[];
  readonly meals: readonly string[];
}

/** Compares by code units: the same on every machine, whatever its language. */
export const byText = (a: string, b: string): number => (a < b ? -1 : a > b ? 1 : 0);

/** Places of the slots in the trip, by key. */
function slotPlaces(problem: PicksProblem): Map<string, number> {
  const sorted = [...problem.slots].sort(
    (a, b) => a.day - b.day || a.order - b.order || byText(a.key, b.key),
  );
  return new Map(sorted.map((slot, place) => [slot.key, place]));
}

/** Replaces each signature by its place among the different ones. */
function ranks(signatures: ReadonlyMap<string, string>): Map<string, number> {
  const different = [...new Set(signatures.values())].sort(byText);
  const place = new Map(different.map((signature, i) => [signature, i]));
  return new Map([...signatures].map(([key, signature]) => [key, place.get(signature)!]));
}

/**
 * Sorts by own figures, then again and again by the ranks of those they have to do with, three times over.
 * @returns keys of the eaters and the meals, each once
 */
export function settleOrder(problem: PicksProblem): Order {
  const place = slotPlaces(problem);
  const lotText = (l: PicksProblem['lots'][number]): string =>
    JSON.stringify([
      l.servingsTwentieths,
      l.dryG,
      l.waterMl,
      l.sodiumMgPerServing,
      l.kcalPerServing,
      l.bestBy,
      l.steady,
      l.pouches.length,
    ]);
  const meals = [...new Set(problem.lots.map((lot) => lot.meal))];
  const ownMeal = new Map(
    meals.map((meal) => [
      meal,
      problem.lots
        .filter((l) => l.meal === meal)
        .map(lotText)
        .sort(byText)
        .join('|'),
    ]),
  );
  const ownEater = new Map(
    problem.eaters.map((e) => [
      e.key,
      JSON.stringify([e.portionTwentieths, e.sodiumLimitMg, e.sodiumHard === true, e.energyKcal]) +
        problem.slots
          .filter((s) => s.eaters.includes(e.key))
          .map((s) => place.get(s.key)!)
          .sort((a, b) => a - b)
          .join(','),
    ]),
  );
  const ties: { eater: string; meal: string; tie: string }[] = [
    ...problem.safe.map((p) => ({ eater: p.eater, meal: p.meal, tie: 's' })),
    ...problem.dislikes.map((p) => ({ eater: p.eater, meal: p.meal, tie: 'd' })),
    ...problem.wishes.map((w) => ({
      eater: w.eater,
      meal: w.meal,
      tie: `w${w.rank}@${w.slot === null ? 'any' : (place.get(w.slot) ?? 'none')}`,
    })),
  ].filter((t) => ownEater.has(t.eater) && ownMeal.has(t.meal));

  let eaterRank = ranks(ownEater);
  let mealRank = ranks(ownMeal);
  for (let round = 0; round < 3; round += 1) {
    const eaterTies = new Map<string, string[]>(problem.eaters.map((e) => [e.key, []]));
    const mealTies = new Map<string, string[]>(meals.map((m) => [m, []]));
    for (const t of ties) {
      eaterTies.get(t.eater)!.push(`${t.tie}:${mealRank.get(t.meal)!}`);
      mealTies.get(t.meal)!.push(`${t.tie}:${eaterRank.get(t.eater)!}`);
    }
    const pad = (rank: number): string => String(rank).padStart(6, '0');
    const next = (old: Map<string, number>, tied: Map<string, string[]>): Map<string, number> =>
      ranks(
        new Map(
          [...tied].map(([key, list]) => [key, `${pad(old.get(key)!)};${list.sort(byText).join(';')}`]),
        ),
      );
    [eaterRank, mealRank] = [next(eaterRank, eaterTies), next(mealRank, mealTies)];
  }
  const sorted = (rank: Map<string, number>): string[] =>
    [...rank.keys()].sort((a, b) => rank.get(a)! - rank.get(b)! || byText(a, b));
  return { eaters: sorted(eaterRank), meals: sorted(mealRank) };
}
