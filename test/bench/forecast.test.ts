// Witness: none outside; the kinetics are assumed (src/bench/simulated-loads.ts) and the rates are held against the table
// of simulations that the rule was chosen by: within three hours in 85 % of loads with two weights.
import { expect, test } from 'vitest';
import { hits, schedules, stallsSeen } from '../../src/bench/forecast.ts';

test.each(schedules.filter(({ at }) => at.length > 1))(
  'weighed at $at of the ice time, frozen up to $frozenHours h first: within three hours',
  (schedule) => {
    const { hitFraction, inBandFraction, loads } = hits(600, schedule, 3);
    expect(loads).toBeGreaterThan(580);
    expect(hitFraction).toBeGreaterThanOrEqual(0.85);
    expect(inBandFraction).toBeGreaterThanOrEqual(0.85);
  },
);

test('one weight late in the run does as well; an early one says so by its band', () => {
  expect(hits(600, { at: [0.9], frozenHours: 8 }, 3).hitFraction).toBeGreaterThan(0.9);
  const early = hits(600, { at: [0.5], frozenHours: 4 }, 3);
  expect(early.inBandFraction).toBeGreaterThan(0.95);
  expect(early.bandHours).toBeGreaterThan(1.5 * hits(600, { at: [0.5, 0.8], frozenHours: 4 }, 3).bandHours);
});

test('a pump that stops in the first half is seen three hours later, and no running one is called stopped', () => {
  for (const at of [0.3, 0.5]) {
    const { stopped, running } = stallsSeen(300, at, 3);
    expect(stopped).toBeGreaterThan(0.98);
    expect(running).toBe(0);
  }
});
