import type { Lot, PicksProblem } from '#core/picks/problem.ts';
import { seeded } from '#core/picks/chance.ts';

/** Invented names; the figures are drawn from a seed, so that everybody measures the same trips. */
const names = ['Ondra', 'Mirel', 'Tove', 'Bashir', 'Lune', 'Quill', 'Saoirse', 'Pim', 'Yaro', 'Dagny'];
const dishes = [
  'ember stew', 'harbour rice', 'moss pilaf', 'copper beans', 'lantern dal', 'quarry oats', 'willow soup', 'amber hash',
  'fjord chowder', 'saffron mash', 'barley bowl', 'plum porridge', 'cinder chilli', 'meadow pasta',
]; // prettier-ignore

export interface Shape {
  readonly eaters: number;
  readonly days: number;
  readonly meals: number;
  readonly pouches: number;
  readonly stock: 'ample' | 'short' | 'barely' | 'tight';
}

/** A trip of the given shape; 'short' has four fifths of the portions, 'barely'
 * the nine tenths that count as fed if not a spoon were lost, 'tight' one eater with two safe meals. */
export function makeInstance(shape: Shape, seed: number): PicksProblem {
  const chance = seeded(seed);
  const portions = [20, 30, 12, 20, 12, 20, 30, 20, 12, 20];
  const eaters = names.slice(0, shape.eaters).map((name, i) => ({
    key: `e${i}`,
    name,
    portionTwentieths: portions[i]!,
    sodiumLimitMg: i % 3 === 0 ? 2000 : null,
    energyKcal: i % 2 === 0 ? 2200 : null,
  }));
  const mealCount = Math.min(dishes.length, 6 + Math.floor(shape.pouches / 40));
  const slots = Array.from({ length: shape.days * shape.meals }, (_, i) => ({
    key: `s${i}`,
    day: 100 + Math.floor(i / shape.meals),
    order: i % shape.meals,
    eaters: eaters.filter(() => chance.below(20) > 0).map((e) => e.key),
  }));
  const lots: Lot[] = [];
  let made = 0;
  const need = slots.reduce(
    (sum, s) => sum + s.eaters.reduce((n, k) => n + portions[Number(k.slice(1))]!, 0),
    0,
  );
  let stock = 0;
  for (let batch = 1; made < shape.pouches; batch += 1) {
    const size = [20, 40, 20, 60, 40, 30][chance.below(6)]!;
    const count = Math.min(shape.pouches - made, 4 + chance.below(9));
    made += count;
    const wanted =
      shape.stock === 'short' || shape.stock === 'barely'
        ? Math.max(0, Math.floor(((shape.stock === 'short' ? 0.8 : 0.9) * need - stock) / size))
        : count;
    const kept = Math.min(count, wanted);
    stock += kept * size;
    if (kept === 0) continue;
    const dryG = size * (4 + chance.below(3));
    lots.push({
      code: `B${batch}/${dryG}`,
      meal: dishes[chance.below(mealCount)]!,
      pouches: Array.from({ length: kept }, (_, i) => `B${batch}-${i + 1}`),
      servingsTwentieths: size,
      dryG,
      waterMl: dryG * 3,
      sodiumMgPerServing: 400 + 50 * chance.below(14),
      kcalPerServing: 450 + 25 * chance.below(16),
      bestBy: 102 + chance.below(shape.stock === 'tight' ? 300 : 2500),
      steady: true,
    });
  }
  const meals = [...new Set(lots.map((l) => l.meal))];
  const pairs = eaters.flatMap((e) => meals.map((meal) => ({ eater: e.key, meal })));
  const picky = shape.stock === 'tight' ? 'e2' : '';
  const safe = pairs.filter((p) => (p.eater === picky ? meals.indexOf(p.meal) < 2 : chance.below(8) > 0));
  return {
    lots,
    eaters,
    slots,
    safe,
    dislikes: pairs.filter(() => chance.below(10) === 0),
    wishes: eaters.flatMap((e) =>
      [1, 2, 3].map((rank) => ({
        eater: e.key,
        meal: meals[chance.below(meals.length)]!,
        slot: chance.below(2) === 0 ? null : slots[chance.below(slots.length)]!.key,
        rank,
      })),
    ),
  };
}
