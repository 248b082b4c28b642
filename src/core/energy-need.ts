import { between } from './within.ts';

export type Sex = 'male' | 'female';
export type Activity = 'sedentary' | 'moderately active' | 'active';

type Row = readonly [fromYears: number, sedentary: number, moderate: number, active: number];

/**
 * Estimated calorie needs a day, each row from that age to the next. The rows up to 20 years were read, the rows
 * from 21 years are from memory of the same published table (Appendix 2, Table A2-1).
 * @source dietary-guidelines-2015
 */
const table: Readonly<Record<Sex, readonly Row[]>> = {
  male: [
    [2, 1000, 1000, 1000],
    [3, 1000, 1400, 1400],
    [4, 1200, 1400, 1600],
    [6, 1400, 1600, 1800],
    [8, 1400, 1600, 2000],
    [9, 1600, 1800, 2000],
    [10, 1600, 1800, 2200],
    [11, 1800, 2000, 2200],
    [12, 1800, 2200, 2400],
    [13, 2000, 2200, 2600],
    [14, 2000, 2400, 2800],
    [15, 2200, 2600, 3000],
    [16, 2400, 2800, 3200],
    [19, 2600, 2800, 3000],
    [21, 2400, 2800, 3000],
    [26, 2400, 2600, 3000],
    [36, 2400, 2600, 2800],
    [41, 2200, 2600, 2800],
    [46, 2200, 2400, 2800],
    [56, 2200, 2400, 2600],
    [61, 2000, 2400, 2600],
    [66, 2000, 2200, 2600],
    [76, 2000, 2200, 2400],
  ],
  female: [
    [2, 1000, 1000, 1000],
    [3, 1000, 1200, 1400],
    [4, 1200, 1400, 1400],
    [5, 1200, 1400, 1600],
    [7, 1200, 1600, 1800],
    [8, 1400, 1600, 1800],
    [10, 1400, 1800, 2000],
    [11, 1600, 1800, 2000],
    [12, 1600, 2000, 2200],
    [14, 1800, 2000, 2400],
    [19, 2000, 2200, 2400],
    [26, 1800, 2000, 2400],
    [31, 1800, 2000, 2200],
    [51, 1600, 1800, 2200],
    [61, 1600, 1800, 2000],
  ],
};

const column = { sedentary: 1, 'moderately active': 2, active: 3 } as const;

/**
 * Energy a day for a person of average build. General guidance: a day on the trail is above 'active', and a person's
 * own need differs. Nothing is interpolated.
 * @param ageYears completed years, 0 to 130
 * @returns kcal a day; undefined under 2 years, where the table has no row
 * @throws Refusal 'impossible-age'
 * @source dietary-guidelines-2015
 */
export function energyNeedKcal(sex: Sex, ageYears: number, activity: Activity): number | undefined {
  between('impossible-age', 'The age', ageYears, 0, 130, 'years');
  return table[sex].findLast(([from]) => ageYears >= from)?.[column[activity]];
}
