import { expect, test } from 'vitest';
import { keepsMonths } from '#core/bestby.ts';

// Cooper & Douglas, NASA NTRS 20140012829 (read): many packed menu items do not hold beyond two years. What nobody
// measured dry is planned for no longer than that at 20 °C, however it is packed.
test('no plan beyond two years at 20 °C for food whose dryness was not measured', () => {
  for (const material of ['foil', 'glass', 'tin', 'clear', null] as const)
    expect(
      keepsMonths(
        { material, areaCm2: 1200, isMeasuredDry: false, fatFraction: 0, absorber: true, spareMl: 300 },
        20,
      ),
    ).toBeLessThanOrEqual(24);
});
