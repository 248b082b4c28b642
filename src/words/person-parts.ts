import type { Eater, EaterKind } from '#core/records.ts';
import { Refusal } from '#core/refusal.ts';
import { fold } from './near.ts';
import { optional, part } from './part.ts';
import type { Reading } from './reading.ts';
import type { Token } from './tokens.ts';

const kinds = {
  guest: ['guest', 'visitor'],
  child: ['child', 'kid', 'baby', 'toddler'],
  adult: ['adult', 'grown-up'],
} as const;
const sexes = { female: ['female', 'woman', 'girl'], male: ['male', 'man', 'boy'] } as const;

const personWords: readonly string[] = [...Object.values(kinds), ...Object.values(sexes)].flat();
const meWords = ['me', 'myself'];
const ageWords = ['age', 'aged', 'is', 'turned'];
const oldest = 120;

/** 'age 12', 'is 12', '12 years', '12 yo': the index of the figure; the words about it are taken. */
function saidAge(reading: Reading): number | undefined {
  for (const i of reading.left()) {
    if (reading.all[i]!.is !== 'number') continue;
    const isYears = ['years', 'year', 'yrs', 'yr', 'yo', 'y'].includes(reading.at(i + 1)?.plain ?? '');
    // "Is" and the like may belong to a name's note, and then they are taken already.
    const isBefore = ageWords.includes(reading.all[i - 1]?.plain ?? '');
    if (!isYears && !isBefore) continue;
    if (isBefore) reading.take(i - 1);
    if (isYears) reading.take(i + 1);
    return i;
  }
  return undefined;
}

/** 'woman 41', 'Oma 74 woman', 'me 15 girl', 'Pip, 7', 'Pip (7)', 'Pip 7': a bare figure beside a word for a person. */
function besidePerson(reading: Reading, eaters: readonly string[]): number | undefined {
  const figures = [...reading.left()].filter((i) => reading.all[i]!.is === 'number');
  const names = eaters.flatMap((name) => fold(name).split(' '));
  const isPerson = (token: Token | undefined) =>
    token !== undefined &&
    (personWords.includes(token.plain) || meWords.includes(token.plain) || names.includes(fold(token.plain)));
  const beside = figures.find((i) => isPerson(reading.all[i - 1]) || isPerson(reading.all[i + 1]));
  if (beside !== undefined) return beside;
  const [only, another] = figures;
  if (only === undefined || another !== undefined) return undefined;
  const before = reading.all[only - 1];
  const isSetOff = before?.is === 'mark' && /[,(]/.test(before.mark);
  const isBehindFirst = only === 1 && (before?.is === 'quoted' || /^\p{Lu}/u.test(before?.typed ?? ''));
  return isSetOff || isBehindFirst ? only : undefined;
}

/** An age in years. Beside a word for a person a bare figure from 1 to 120 is one. */
export const ageYears = optional(
  part<number>('an age, such as age 7', (reading, { eaters }) => {
    const said = saidAge(reading);
    if (said !== undefined) {
      const token = reading.all[said]!;
      const value = token.is === 'number' ? token.value : NaN;
      reading.take(said);
      reading.keyword('old');
      if (!(value >= 0 && value <= oldest)) throw new Refusal('bad-age', `An age of ${value} cannot be.`);
      return value;
    }
    const bare = besidePerson(reading, eaters);
    const figure = bare === undefined ? undefined : reading.all[bare]!;
    if (figure?.is !== 'number' || !(figure.value >= 1 && figure.value <= oldest)) return undefined;
    reading.take(bare!);
    return figure.value;
  }),
);

export const kind = optional(
  part<EaterKind>('child, guest or adult', (reading) => {
    if (reading.keyword(...kinds.guest) !== undefined) return 'guest';
    if (reading.keyword(...kinds.child) !== undefined) return 'child';
    return reading.keyword(...kinds.adult) === undefined ? undefined : 'adult';
  }),
);

export const sex = optional(
  part<'male' | 'female'>('male or female, for the energy table', (reading) => {
    if (reading.keyword(...sexes.female) !== undefined) return 'female';
    return reading.keyword(...sexes.male) === undefined ? undefined : 'male';
  }),
);

export const activity = optional(
  part<NonNullable<Eater['activity']>>('sedentary, moderately active or active', (reading) => {
    if (reading.keyword('sedentary') !== undefined) return 'sedentary';
    if (reading.keyword('moderately', 'moderate') !== undefined) {
      reading.keyword('active');
      return 'moderately active';
    }
    return reading.keyword('active') === undefined ? undefined : 'active';
  }),
);
