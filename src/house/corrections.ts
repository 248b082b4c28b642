import { learntCorrection } from '#core/balance.ts';
import type { Batch } from '#core/records.ts';
import type { House } from './house.ts';
import { nameKey } from './figures.ts';
import { howBatchEaten } from './eating.ts';
import { byEvening, meanOf } from '#core/evenings.ts';

/** What the household's ratings make of a meal's water, and from how many evenings. */
export function correctionOf(house: Pick<House, 'ratings'>, meal: string) {
  const ratings = house.ratings
    .ofMeal(nameKey(meal))
    .flatMap(({ atMs, balanceMl, pouredMl, moreMl }) =>
      balanceMl === null || pouredMl === null || moreMl === null
        ? []
        : [{ atMs, poured: pouredMl / balanceMl, more: moreMl / balanceMl }],
    );
  // One evening counts once, however many said something of it.
  const evenings = byEvening(ratings).map((said) => ({
    balanceMl: 1,
    pouredMl: meanOf(said.map(({ poured }) => poured)),
    moreMl: meanOf(said.map(({ more }) => more)),
  }));
  return learntCorrection(evenings);
}

/** The same for what is poured on a batch: a mixture that nobody rated takes the mean of its parts, by their
 * water; what is eaten dry takes none, so its factor is 0. */
export function correctionFor(house: House, batch: Batch): ReturnType<typeof correctionOf> {
  const { recipe, mix } = batch;
  if (howBatchEaten(house, batch).isDry) return { correction: 0, ratings: 0, held: false };
  const own = correctionOf(house, recipe.name);
  if (!mix || own.ratings > 0) return own;
  const parts = mix.parts.map(({ meal, wetG, eachG }) => ({
    waterG: wetG - eachG,
    learnt: correctionOf(house, meal),
  }));
  const waterG = parts.reduce((sum, part) => sum + part.waterG, 0);
  return {
    correction:
      waterG > 0
        ? parts.reduce((sum, part) => sum + part.waterG * part.learnt.correction, 0) / waterG
        : own.correction,
    ratings: parts.reduce((sum, { learnt }) => sum + learnt.ratings, 0),
    held: parts.some(({ learnt }) => learnt.held),
  };
}

/** 'Learnt: 8 % more than by weight, from 3 meals.'; nothing until a meal was rated. */
export function learntWords({ correction, ratings, held }: ReturnType<typeof correctionOf>): string[] {
  if (ratings === 0) return [];
  const percent = Math.round(Math.abs(correction - 1) * 100);
  const how =
    percent === 0 ? 'as by weight' : `${percent} % ${correction > 1 ? 'more' : 'less'} than by weight`;
  return [
    `Learnt from ${ratings} ${ratings === 1 ? 'rated meal' : 'rated meals'}: ${how}${held ? ', which is as far as I go' : ''}.`,
  ];
}
