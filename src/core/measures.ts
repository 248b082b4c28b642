import { usCupMl, volumeMl } from './units.ts';
import { above, between } from './within.ts';

export type MeasureName = 'cup' | 'tbsp' | 'tsp';

/** A measure a cook can take from the drawer: so many whole ones and one of the fractions sold. */
export interface KitchenMeasure {
  readonly whole: number;
  /** 0, or the fraction as a number. */
  readonly fraction: number;
  /** '⅔', or '' for none. */
  readonly fractionText: string;
  readonly of: MeasureName;
  /** What the measure holds, ml. */
  readonly ml: number;
  /** Measure less what was asked: above 0 is too much, below 0 too little; ml. */
  readonly costMl: number;
  /** The same over what was asked. */
  readonly costFraction: number;
}

const cupFractions = [
  [0, ''],
  [1 / 8, '⅛'],
  [1 / 4, '¼'],
  [1 / 3, '⅓'],
  [1 / 2, '½'],
  [2 / 3, '⅔'],
  [3 / 4, '¾'],
] as const;
const tbspFractions = [
  [0, ''],
  [1 / 2, '½'],
] as const;
const tspFractions = [
  [0, ''],
  [1 / 8, '⅛'],
  [1 / 4, '¼'],
  [1 / 2, '½'],
  [3 / 4, '¾'], // the half and the quarter
] as const;

/** The cup is the household's own. Largest first, so that of two equal measures the one with less spooning is kept. `most` is in its own unit. */
const drawer = [
  { of: 'cup', ml: undefined, most: Infinity, fractions: cupFractions },
  { of: 'tbsp', ml: volumeMl('tbsp'), most: 10, fractions: tbspFractions },
  { of: 'tsp', ml: volumeMl('tsp'), most: 6, fractions: tspFractions },
] as const;

/**
 * The nearest measure a cook owns, with what rounding to it costs: at most a fifth from ½ teaspoon up. U.S. spoons.
 * @param askedMl ml, 0 or more
 * @param cupMl what the cup holds, ml, above 0; a U.S. one unless told. Spoons are the same whatever the cup
 * @returns undefined when it is under half of ⅛ teaspoon: then only a scale will do
 * @throws Refusal 'impossible-volume' or 'impossible-measure'
 * @source us-customary
 */
export function kitchenMeasureMl(askedMl: number, cupMl = usCupMl): KitchenMeasure | undefined {
  between('impossible-volume', 'The volume', askedMl, 0, 1e9, 'ml');
  above('impossible-measure', 'The cup', cupMl, 0, 'ml');
  let best: KitchenMeasure | undefined;
  for (const { of, ml = cupMl, most, fractions } of drawer) {
    const below = Math.floor(askedMl / ml);
    for (const whole of [below, below + 1]) {
      for (const [fraction, fractionText] of fractions) {
        const count = whole + fraction;
        // Nobody spoons out an eighth on top of several teaspoons.
        if (count === 0 || count > most || (of === 'tsp' && whole > 1 && fraction === 1 / 8)) continue;
        const costMl = count * ml - askedMl;
        if (best !== undefined && Math.abs(costMl) >= Math.abs(best.costMl) - 1e-9) continue;
        best = { whole, fraction, fractionText, of, ml: count * ml, costMl, costFraction: costMl / askedMl };
      }
    }
  }
  return askedMl < volumeMl('tsp') / 16 ? undefined : best;
}
