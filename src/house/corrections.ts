import { learntCorrection } from '#core/balance.ts';
import type { House } from './house.ts';
import { nameKey } from './figures.ts';

/** What the household's ratings make of a meal's water, and from how many. */
export function correctionOf(house: Pick<House, 'ratings'>, meal: string) {
  const ratings = house.ratings
    .ofMeal(nameKey(meal))
    .flatMap(({ balanceMl, pouredMl, moreMl }) =>
      balanceMl === null || pouredMl === null || moreMl === null ? [] : [{ balanceMl, pouredMl, moreMl }],
    );
  return learntCorrection(ratings);
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
