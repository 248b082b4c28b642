// Witness: none outside; the kinetics are assumed (src/bench/simulated-loads.ts) and held against the table of simulations that the
// limits were chosen by: false dry above 8 % moisture never while the dryer runs, 5.9 % and 30 % before.
import { describe, expect, test } from 'vitest';
import { falseDryRate, simulate, unsaidRate } from '../../src/bench/dry.ts';
import { slow, stopped, usual } from '../../src/bench/simulated-loads.ts';

const rule = (scaleG: number, trayByTray: boolean, balance: boolean) => ({
  scaleG,
  trayByTray,
  balance,
});
const rules = [1, 2, 5].flatMap((scaleG) => [true, false].map((byTray) => [scaleG, byTray] as const));

describe.each([usual, slow])('$name', (kinetics) => {
  test.each(rules)('a scale of %i g, tray by tray %s: none is called dry above 8 %%', (scaleG, byTray) => {
    const run = simulate(300, kinetics, rule(scaleG, byTray, true), 5);
    expect(falseDryRate(run)).toBe(0);
    // And the rule lets dry food be called dry.
    expect(run.never).toBeLessThanOrEqual(30);
    expect(run.moistures.length).toBeGreaterThanOrEqual(270);
  });
});

test('a pump that stops passes two times of three by weight alone, and one in twenty beside the balance', () => {
  expect(falseDryRate(simulate(300, stopped, rule(1, true, false), 5))).toBeGreaterThan(0.6);
  const run = simulate(300, stopped, rule(1, true, true), 5);
  expect(falseDryRate(run)).toBeLessThan(0.06);
  // The table may be 5 % off: what still passes holds less than a sixth of water.
  expect(run.moistures.at(-1)).toBeLessThan(0.16);
});

test('of what still passes nine in ten are doubted aloud, and of loads that ran to their end hardly any', () => {
  const run = simulate(2000, stopped, rule(1, true, true), 5);
  expect(falseDryRate(run)).toBeGreaterThan(0.03);
  expect(unsaidRate(run)).toBeLessThan(falseDryRate(run) / 5);
  const sound = simulate(1000, usual, rule(1, true, true), 5);
  expect(sound.doubted.length).toBeLessThan(40);
});
