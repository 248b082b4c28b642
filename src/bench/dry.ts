/**
 * How often a load is called dry that is not: simulated loads under the rules of core/dryness.ts and
 * core/dry-verdict.ts.
 */
import { type CheckWeight, type Steadiness, steadiness } from '#core/dryness.ts';
import { dryVerdict } from '#core/dry-verdict.ts';
import { chance, told } from './chance.ts';
import {
  type Kinetics,
  type SimulatedLoad,
  drawLoad,
  slow,
  solidsOf,
  stopped,
  usual,
  waterOf,
} from './simulated-loads.ts';

export interface Rule {
  readonly scaleG: number;
  /** Whether the balance has its say too. */
  readonly balance: boolean;
  readonly trayByTray: boolean;
  /** How long people wait from weighing to weighing, h; never less than the rule asks. */
  readonly everyHours?: number;
}

export interface Run {
  /** True moisture when it was called dry, wet basis. */
  readonly moistures: readonly number[];
  /** The same of those of which a doubt was told, and opened pieces asked for. */
  readonly doubted: readonly number[];
  /** Loads that were never called dry in four days. */
  readonly never: number;
  readonly weighings: number;
}

/** Weighs each load from late in the run on, as often as the rule says, until it is called dry. */
export function simulate(loads: number, kinetics: Kinetics, rule: Rule, seed: number): Run {
  const draw = chance(seed);
  const moistures: number[] = [];
  const doubted: number[] = [];
  let never = 0;
  let weighings = 0;
  for (let load = 0; load < loads; load++) {
    const drawn = drawLoad(draw, kinetics);
    let hours = drawn.iceHours * (0.7 + 0.6 * draw());
    const checks: CheckWeight[] = [];
    let moisture: number | undefined;
    while (hours < 96 && moisture === undefined) {
      // Placing a tray moves what a scale shows by about a quarter of a step, and it shows whole steps.
      const shown = drawn.trays.map((tray) =>
        Math.max(
          rule.scaleG,
          Math.round((tray.solidsG + tray.waterG(hours)) / rule.scaleG + (draw() - 0.5) / 2) * rule.scaleG,
        ),
      );
      checks.push({
        atMs: hours * 3_600_000,
        trays: rule.trayByTray ? shown : shown.reduce((sum, g) => sum + g, 0),
      });
      weighings += 1;
      const steady = steadiness(checks, { scaleResolutionG: rule.scaleG, minGapHours: 2 });
      const dryG = shown.reduce((sum, g) => sum + g, 0);
      const called = calledDry(steady, drawn, dryG, rule);
      if (called.isDry) {
        const waterG = waterOf(drawn, hours);
        moisture = waterG / (waterG + solidsOf(drawn));
        if (called.isDoubted) doubted.push(moisture);
      }
      const asked = steady.is !== 'steady' && 'neededGapHours' in steady ? steady.neededGapHours : 2;
      hours += Math.max(asked, rule.everyHours ?? 2);
    }
    if (moisture === undefined) never += 1;
    else moistures.push(moisture);
  }
  return { moistures: moistures.toSorted((a, b) => a - b), doubted, never, weighings };
}

function calledDry(
  steady: Steadiness,
  load: SimulatedLoad,
  dryG: number,
  rule: Rule,
): { isDry: boolean; isDoubted: boolean } {
  if (!rule.balance) return { isDry: steady.is === 'steady', isDoubted: false };
  // A fifth of the solids taken as fat.
  const balance = { wetG: load.wetG, dryG, solidsG: load.toldSolidsG, fatG: load.toldSolidsG / 5 };
  const verdict = dryVerdict(steady, balance);
  return { isDry: verdict.is === 'dry', isDoubted: verdict.is === 'dry' && verdict.doubtedFraction !== null };
}

export const falseDryFraction = 0.08;

const above = (moistures: readonly number[]): number =>
  moistures.filter((moisture) => moisture > falseDryFraction).length;

/** Share of all loads that were called dry above 8 % moisture. */
export const falseDryRate = ({ moistures, never }: Run): number =>
  above(moistures) / (moistures.length + never);

/** The same without a word of doubt. */
export const unsaidRate = ({ moistures, doubted, never }: Run): number =>
  (above(moistures) - above(doubted)) / (moistures.length + never);

function print(loads: number, seed: number): void {
  const percent = (fraction: number | undefined) =>
    (fraction === undefined ? 'none' : `${(fraction * 100).toFixed(1)} %`).padStart(7);
  console.log(`${loads} loads of four trays each, seed ${seed}; moisture on the wet basis when called dry`);
  for (const kinetics of [usual, slow, stopped]) {
    console.log(
      `\n${kinetics.name}\nscale weighed       balance  median     99th  above 8 %  unsaid  doubted   never  weighings`,
    );
    for (const scaleG of [1, 2, 5])
      for (const trayByTray of [true, false])
        for (const balance of [false, true]) {
          const run = simulate(loads, kinetics, { scaleG, balance, trayByTray }, seed);
          const at = (share: number) =>
            percent(run.moistures[Math.floor(share * (run.moistures.length - 1))]);
          console.log(
            `${scaleG} g   ${trayByTray ? 'by tray      ' : 'all together '} ${balance ? 'with   ' : 'without'} ${at(0.5)}  ${at(0.99)}    ${percent(falseDryRate(run))} ${percent(unsaidRate(run))} ${percent(run.doubted.length / loads)} ${percent(run.never / loads)} ${(run.weighings / loads).toFixed(1).padStart(6)}`,
          );
        }
  }
}

if (process.argv[1]?.endsWith('dry.ts')) print(told('loads', 2000), told('seed', 11));
