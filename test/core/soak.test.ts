import { expect, test } from 'vitest';
import { soakMinutes } from '#core/soak.ts';

// Common practice, no source: a quarter of an hour, and a minute for each degree.
test.each([
  [100, 15],
  [101, 15],
  [93.6, 21],
  [86.5, 29],
])('where water boils at %f °C: %i min', (boilC, minutes) => expect(soakMinutes(boilC)).toBe(minutes));
