import { expect, test } from 'vitest';
import { hotQ10, q10 } from '#core/bestby.ts';
import { celsiusFromF } from '#core/units.ts';

// U.S. Defense Logistics Agency (2016), read cut short: group rations, which are not freeze-dried, keep three years at 80
// and six months at about 100 °F. Worked: 6 times in 11.1 °C is a Q10 of 5.0.
test('from 80 to 100 °F rations age with a Q10 near 5', () => {
  const found = q10(36, celsiusFromF(80), 6, celsiusFromF(100));
  expect(found).toBeCloseTo(5.02, 2);
  expect(Math.abs(hotQ10 - found)).toBeLessThan(0.1);
});
