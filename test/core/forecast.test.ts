// The straight line of the root is of Pilsworth (1972), see test/published; pace, spread and the house's own loads are
// chosen by simulation (src/bench/dry.ts). Every figure here is worked by hand from loads made for it.
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { forecastByWeights, hasStalled, ownPace } from '#core/forecast.ts';
import { forecastBeforeLoading, waterForHours } from '#core/load-hours.ts';
import { tries } from '../ring.ts';

const line = { factor: 1, spreadFraction: 0, loads: 0 };
/** 400 g dry, 1600 g of water that is gone after `end` hours, its root falling in a straight line. */
const at = (hours: number, end = 20) => ({ hours, massG: 400 + 1600 * (1 - hours / end) ** 2 });

describe('by weights', () => {
  test('one or two weights on the line give its end', () => {
    expect(forecastByWeights([at(0), at(10)], 400, line)?.readyHours).toBeCloseTo(20, 9);
    expect(forecastByWeights([at(0), at(8), at(14)], 400, line)?.readyHours).toBeCloseTo(20, 9);
  });

  test('a load that was frozen for five hours first is forecast right from two weights', () => {
    const late = (hours: number) => ({ ...at(hours - 5), hours });
    const weights = [{ hours: 0, massG: 2000 }, late(10), late(15)];
    expect(forecastByWeights(weights, 400, line)?.readyHours).toBeCloseTo(25, 9);
  });

  test('with one weight the freezing may have taken four hours: the band begins earlier', () => {
    // From 4 h on: at 12 h half the root is gone, so 8 h more.
    const { readyHours, earliestHours, latestHours } = forecastByWeights(
      [
        { hours: 0, massG: 2000 },
        { hours: 12, massG: 800 },
      ],
      400,
      line,
    )!;
    expect(readyHours).toBeCloseTo(24, 9);
    expect(earliestHours).toBeCloseTo(20, 9);
    expect(latestHours).toBeCloseTo(24, 9);
  });

  test('own loads set the pace and the band', () => {
    const pace = { factor: 1.1, spreadFraction: 0.1, loads: 4 };
    const { readyHours, earliestHours, latestHours } = forecastByWeights([at(0), at(10)], 400, pace)!;
    expect(readyHours).toBeCloseTo(22, 9);
    expect(earliestHours).toBeCloseTo(19.8, 9);
    expect(latestHours).toBeCloseTo(24.2, 9);
  });

  test('before the first weight, and where nothing was lost, nothing is said', () => {
    expect(forecastByWeights([at(0)], 400)).toBeUndefined();
    expect(forecastByWeights([at(0), { ...at(0), hours: 5 }], 400)).toBeUndefined();
    expect(forecastByWeights([at(0), at(5), { ...at(5), hours: 9 }], 400)).toBeUndefined();
  });

  test('whatever was weighed, the end is never before the last weight, and lies in its band', () => {
    fc.assert(
      fc.property(
        fc.array(
          fc.record({
            hours: fc.double({ min: 0.5, max: 60, noNaN: true }),
            massG: fc.double({ min: 1, max: 9000, noNaN: true }),
          }),
          { minLength: 1, maxLength: 5 },
        ),
        fc.double({ min: 1, max: 5000, noNaN: true }),
        (checks, dryG) => {
          const weights = [{ hours: 0, massG: 9000 }, ...checks.toSorted((a, b) => a.hours - b.hours)];
          const forecast = forecastByWeights(weights, dryG);
          if (forecast === undefined) return;
          expect(forecast.readyHours).toBeGreaterThanOrEqual(weights.at(-1)!.hours);
          expect(forecast.earliestHours).toBeLessThanOrEqual(forecast.readyHours);
          expect(forecast.latestHours).toBeGreaterThanOrEqual(forecast.readyHours);
        },
      ),
      { numRuns: tries(500) },
    );
  });
});

describe('a pump that stopped', () => {
  test('is seen when hardly anything left in the last stretch and much is to go', () => {
    expect(hasStalled([at(0), at(8), { ...at(8.5), hours: 12 }], 400)).toBe(true);
    expect(hasStalled([at(0), at(8), at(12)], 400)).toBe(false);
  });

  test('is not thought of near the end, where the pace falls by itself, nor with one weight', () => {
    expect(hasStalled([at(0), at(18), { ...at(18.1), hours: 20 }], 400)).toBe(false);
    expect(hasStalled([at(0), { ...at(0.1), hours: 8 }], 400)).toBe(false);
  });

  test('the share of the pace that counts as running is 35 %', () => {
    // The root falls by 2 g^½ an hour till 8 h (40 at first); 0.7 an hour is the limit.
    const stretch = (pace: number) => ({ hours: 12, massG: 400 + (24 - 4 * pace) ** 2 });
    expect(hasStalled([at(0), at(8), stretch(0.69)], 400)).toBe(true);
    expect(hasStalled([at(0), at(8), stretch(0.71)], 400)).toBe(false);
  });
});

describe("the house's own loads", () => {
  const past = (...pairs: [number, number][]) =>
    pairs.map(([saidHours, tookHours]) => ({ saidHours, tookHours }));
  test.each([
    [past([20, 22], [20, 22]), 0.96, 0.13, 0],
    [past([20, 22], [30, 33], [10, 11]), 1.1, 0.05, 3],
    [past([20, 20], [20, 22], [20, 26]), 1.1, 0.1818, 3],
    [past([20, 20], [20, 22], [20, 44]), 1.1, 0.3, 3],
    [past([10, 10], [10, 11], [10, 12], [10, 13]), 1.15, 0.1304, 4],
  ])('%j: factor %f, beside it %f, from %i', (loads, factor, spread, count) => {
    const pace = ownPace(loads);
    expect(pace.factor).toBeCloseTo(factor, 9);
    expect(pace.spreadFraction).toBeCloseTo(spread, 4);
    expect(pace.loads).toBe(count);
  });
});

describe('before loading', () => {
  const load = (waterG: number, hours: number, depthMm: number | null = null) => ({ waterG, hours, depthMm });

  test('a day is said until three loads are known, with what makers say at home', () => {
    expect(forecastBeforeLoading(1500, null, [load(1000, 15)])).toEqual({
      readyHours: 24,
      earliestHours: 20,
      latestHours: 48,
      loads: 1,
    });
  });

  test('hours by water lie on the straight line of own loads', () => {
    const loads = [load(1000, 18), load(2000, 28), load(3000, 38)];
    const said = forecastBeforeLoading(2500, null, loads);
    expect(said).toMatchObject({ loads: 3 });
    expect(said.readyHours).toBeCloseTo(33, 9);
    expect(said.earliestHours).toBeCloseTo(33 * 0.95, 9);
    expect(said.latestHours).toBeCloseTo(33 * 1.05, 9);
    // And back: what ends after 30 h.
    expect(waterForHours(30, loads)).toBeCloseTo(2200, 6);
    expect(waterForHours(7, loads)).toBeUndefined();
  });

  test('loads all alike say their mean, and nothing of how much more would take', () => {
    const loads = [load(2000, 28), load(2010, 30), load(1990, 32)];
    expect(forecastBeforeLoading(4000, null, loads).readyHours).toBeCloseTo(30, 9);
    expect(waterForHours(24, loads)).toBeUndefined();
  });

  test('more water never takes less time, whatever the loads were', () => {
    const loads = [load(1000, 38), load(2000, 28), load(3000, 18)];
    expect(forecastBeforeLoading(1000, null, loads).readyHours).toBeCloseTo(28, 9);
  });

  test('no load takes less than none for its first gram', () => {
    const loads = [load(2000, 10), load(2200, 20), load(2400, 30)];
    const { readyHours } = forecastBeforeLoading(100, null, loads);
    expect(readyHours).toBeCloseTo((20 / 2200) * 100, 9);
  });

  test('deeper than the loads before, with the square', () => {
    const loads = [load(1000, 18, 15), load(2000, 28, 15), load(3000, 38, 15)];
    expect(forecastBeforeLoading(2500, 15, loads).readyHours).toBeCloseTo(33, 9);
    expect(forecastBeforeLoading(2500, 18, loads).readyHours).toBeCloseTo(33 * 1.44, 9);
    // Up to 12.5 mm the dryer sets the pace: shallower than that changes nothing more.
    expect(forecastBeforeLoading(2500, 6, loads).readyHours).toBeCloseTo(33 * (12.5 / 15) ** 2, 9);
  });

  test.each([
    [0, null, 'impossible-weight'],
    [Number.NaN, null, 'impossible-weight'],
    [100, -1, 'impossible-depth'],
  ])('%f g at %s mm is refused: %s', (waterG, depth, code) => {
    expect(() => forecastBeforeLoading(waterG, depth, [])).toThrow(expect.objectContaining({ code }));
  });
});
