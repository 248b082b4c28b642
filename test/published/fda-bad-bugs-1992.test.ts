import { expect, test } from 'vitest';
import { dampJarPercent, dryJarPercent, gradeOfJar } from '#core/dry-verdict.ts';

// U.S. FDA, Bad Bug Book (1992), least water activity for growth as printed: C. botulinum A and B more than 0.93,
// B. cereus 0.95, S. aureus 0.86. At rest, relative humidity over the food is the water activity times 100.
test.each([
  ['C. botulinum A and B', 0.93],
  ['B. cereus', 0.95],
  ['S. aureus', 0.86],
])('%s cannot grow in a jar that is not graded damp', (_, leastActivity) => {
  expect(gradeOfJar(leastActivity * 100)).toBe('damp');
  expect(dampJarPercent / 100).toBeLessThan(leastActivity);
});

test.each([
  [0, 'dry'],
  [dryJarPercent, 'dry'],
  [30.1, 'between'],
  [60, 'between'],
  [60.1, 'damp'],
  [100, 'damp'],
])('%f %% is %s', (percent, grade) => expect(gradeOfJar(percent)).toBe(grade));

test.each([-0.1, 100.1, NaN])('%f %% is refused', (percent) => {
  expect(() => gradeOfJar(percent)).toThrow(expect.objectContaining({ code: 'impossible-humidity' }));
});
