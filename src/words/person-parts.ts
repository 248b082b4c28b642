import type { Eater, EaterKind } from '#core/records.ts';
import { Refusal } from '#core/refusal.ts';
import { optional, part, quantities } from './part.ts';
import type { Reading } from './reading.ts';

/** 'Pip, 7' and 'Pip (7)': the one figure of a message that no other part took. */
function isBare(reading: Reading, index: number): boolean {
  const figures = [...reading.left()].filter((i) => reading.all[i]!.is === 'number');
  const before = reading.all[index - 1];
  return figures.length === 1 && figures[0] === index && before?.is === 'mark' && /[,(]/.test(before.mark);
}

/** 'child 7', 'age 12', '7 years', '7 y'. */
export const ageYears = optional(
  part<number>('an age, such as age 7', (reading) => {
    const long = quantities(reading, 'time').find((q) => /y(?:ea)?rs?|y$/i.test(q.typed));
    let index = long?.index;
    let value: number | undefined;
    if (long) value = Number.parseFloat(long.typed.replace(',', '.'));
    for (const i of reading.left()) {
      if (index !== undefined) break;
      const token = reading.all[i]!;
      const before = reading.all[i - 1]?.plain ?? '';
      const after = reading.at(i + 1)?.plain ?? '';
      if (token.is !== 'number' || !Number.isFinite(token.value)) continue;
      if (
        ['child', 'kid', 'age', 'aged', 'boy', 'girl', 'is', 'turned'].includes(before) ||
        ['years', 'year', 'yrs', 'yr', 'yo', 'y'].includes(after) ||
        isBare(reading, i)
      ) {
        index = i;
        value = token.value;
        if (['age', 'aged', 'is'].includes(before)) reading.take(i - 1);
        if (after.startsWith('y')) reading.take(i + 1);
      }
    }
    if (index === undefined || value === undefined) return undefined;
    reading.take(index);
    reading.keyword('old');
    if (!(value >= 0 && value < 120)) throw new Refusal('bad-age', `An age of ${value} cannot be.`);
    return value;
  }),
);

export const kind = optional(
  part<EaterKind>('child, guest or adult', (reading) => {
    if (reading.keyword('guest', 'visitor') !== undefined) return 'guest';
    if (reading.keyword('child', 'kid', 'baby', 'toddler') !== undefined) return 'child';
    return reading.keyword('adult', 'grown-up') === undefined ? undefined : 'adult';
  }),
);

export const sex = optional(
  part<'male' | 'female'>('male or female, for the energy table', (reading) => {
    if (reading.keyword('female', 'woman', 'girl') !== undefined) return 'female';
    return reading.keyword('male', 'man', 'boy') === undefined ? undefined : 'male';
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
