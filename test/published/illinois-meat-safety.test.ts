import { expect, test } from 'vitest';
import { mostHoursWarm } from '#core/cautions.ts';

// University of Illinois Extension, Meat Safety: holding (row d-two-hour, read): at most two hours unrefrigerated.
test('cooked food stands warm for two hours at most', () => expect(mostHoursWarm).toBe(2));
