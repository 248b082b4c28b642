import type { Per100 } from './solids.ts';

/** So much of one row of the food table and the rest of another: '23562*0.6+23567*0.4'. */
export interface Blend {
  readonly of: readonly [string, string];
  /** Share of the second, 0 … 1. */
  readonly share: number;
}

const looks = /^(\d{5})\*(\d(?:\.\d+)?)\+(\d{5})\*(\d(?:\.\d+)?)$/;

/** The number under which a blend is recorded, as a row's number is. */
export const blendNumber = ({ of: [first, second], share }: Blend): string =>
  `${first}*${(1 - share).toFixed(2)}+${second}*${share.toFixed(2)}`;

/** The blend that a number stands for; undefined for the number of a row. */
export function blendOf(ndb: string): Blend | undefined {
  const [, first, , second, share] = looks.exec(ndb) ?? [];
  return first === undefined || second === undefined
    ? undefined
    : { of: [first, second], share: Number(share) };
}

/** What 100 g of a blend hold; what one of the rows does not tell, the blend does not either. */
export function blendedPer100(first: Per100, second: Per100, share: number): Per100 {
  const mixed = (a: number | null, b: number | null) =>
    a === null || b === null ? null : a + (b - a) * share;
  return {
    waterG: mixed(first.waterG, second.waterG),
    kcal: mixed(first.kcal, second.kcal),
    proteinG: mixed(first.proteinG, second.proteinG),
    fatG: mixed(first.fatG, second.fatG),
    carbohydrateG: mixed(first.carbohydrateG, second.carbohydrateG),
    fibreG: mixed(first.fibreG, second.fibreG),
    ashG: mixed(first.ashG, second.ashG),
    sodiumMg: mixed(first.sodiumMg, second.sodiumMg),
  };
}
