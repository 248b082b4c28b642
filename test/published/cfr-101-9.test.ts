import { test } from 'vitest';
import { volumeMl } from '#core/units.ts';
import { near } from './near.ts';

// 21 CFR 101.9(b)(5)(viii), read as quoted by the UCUM maintainers. For label sums only.
test.each([
  { row: 'a-fda-cup', unit: 'label cup', published: 240, within: 0, witness: 'read' },
  { row: 'a-fda-tbsp', unit: 'label tbsp', published: 15, within: 0, witness: 'read' },
  { row: 'a-fda-tsp', unit: 'label tsp', published: 5, within: 0, witness: 'read' },
  { row: 'a-fda-fl_oz', unit: 'label fl oz', published: 30, within: 0, witness: 'read' },
])('$row: a label $unit is $published ml', ({ unit, ...row }) => {
  near(volumeMl(unit), row);
});

test('a label cup is larger than a U.S. cup', () => {
  near(volumeMl('label cup') / volumeMl('cup'), {
    row: 'a-fda-vs-us-cup',
    published: 1.0144,
    within: 0.0001,
    witness: 'read, worked',
  });
});
