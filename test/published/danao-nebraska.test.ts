import { expect, test } from 'vitest';
import { dampJarPercent } from '#core/dry-verdict.ts';

// M.-G. Danao, University of Nebraska-Lincoln (row d-aw-growth, read in a copy): below a water activity of 0.6 yeast,
// mould and bacteria are not expected to grow.
test('a jar is damp from a water activity of 0.6 on', () => expect(dampJarPercent / 100).toBe(0.6));
