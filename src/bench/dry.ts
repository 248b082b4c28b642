/**
 * How often a load is called dry that is not: simulated loads under the rules of core/dryness.ts and
 * core/dry-verdict.ts. The kinetics are assumed, not measured: ice leaves so that the root of what is left falls as a
 * straight line (Pilsworth, Natick AD0769592, 1972), bound water behind it by exponential desorption; trays differ.
 */
import { type CheckWeight, type Steadiness, steadiness } from '#core/dryness.ts';
import { dryVerdict } from '#core/dry-verdict.ts';
import { chance, told } from './chance.ts';

export interface Kinetics {
  readonly name: string;
  /** Time constant of desorption, h, from and to. */
  readonly desorptionHours: readonly [number, number];
  /** The pump stops at a share of the drying time, drawn from 0 to 1; from then on nothing leaves. */
  readonly stops?: boolean;
}

export const usual: Kinetics = { name: 'usual desorption (2 to 6 h)', desorptionHours: [2, 6] };
export const slow: Kinetics = { name: 'slow desorption (8 to 20 h)', desorptionHours: [8, 20] };
export const stopped: Kinetics = { name: 'the pump stops', desorptionHours: [2, 6], stops: true };

interface SimulatedTray {
  readonly solidsG: number;
  readonly waterG: (hours: number) => number;
}

export interface SimulatedLoad {
  readonly trays: readonly SimulatedTray[];
  readonly wetG: number;
  /** What the recipe says the solids are, g: up to 5 % off. */
  readonly toldSolidsG: number;
  readonly iceHours: number;
}

/** Moisture of the air in the dryer, which nothing goes below, g per g of solids. */
const restFraction = 0.012;

export function drawLoad(draw: () => number, kinetics: Kinetics): SimulatedLoad {
  const between = (low: number, high: number) => low + (high - low) * draw();
  const iceHours = between(14, 34);
  const solidsFraction = between(0.15, 0.35);
  const boundFraction = between(0.1, 0.2);
  const tau = between(...kinetics.desorptionHours);
  const stopHours = kinetics.stops ? between(0, 1) * iceHours * 1.3 : Infinity;
  const trays = Array.from({ length: 4 }, (): SimulatedTray => {
    const wetG = between(600, 950);
    const solidsG = wetG * solidsFraction;
    const ownHours = iceHours * between(0.85, 1.15);
    const iceG = wetG - solidsG * (1 + boundFraction);
    const dries = ownHours * 0.7;
    return {
      solidsG,
      waterG: (hours) => {
        const t = Math.min(hours, stopHours);
        const ice = t >= ownHours ? 0 : iceG * (1 - t / ownHours) ** 2;
        const bound = boundFraction * Math.exp(-Math.max(0, t - dries) / tau);
        return ice + solidsG * Math.max(restFraction, bound);
      },
    };
  });
  const solidsG = trays.reduce((sum, tray) => sum + tray.solidsG, 0);
  const wetG = trays.reduce((sum, tray) => sum + tray.solidsG + tray.waterG(0), 0);
  return { trays, wetG, toldSolidsG: solidsG * between(0.95, 1.05), iceHours };
}

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
  /** Loads that were never called dry in four days. */
  readonly never: number;
  readonly weighings: number;
}

/** Weighs each load from late in the run on, as often as the rule says, until it is called dry. */
export function simulate(loads: number, kinetics: Kinetics, rule: Rule, seed: number): Run {
  const draw = chance(seed);
  const moistures: number[] = [];
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
      if (isCalledDry(steady, drawn, dryG, rule)) {
        const waterG = drawn.trays.reduce((sum, tray) => sum + tray.waterG(hours), 0);
        const solidsG = drawn.trays.reduce((sum, tray) => sum + tray.solidsG, 0);
        moisture = waterG / (waterG + solidsG);
      }
      const asked = steady.is !== 'steady' && 'neededGapHours' in steady ? steady.neededGapHours : 2;
      hours += Math.max(asked, rule.everyHours ?? 2);
    }
    if (moisture === undefined) never += 1;
    else moistures.push(moisture);
  }
  return { moistures: moistures.toSorted((a, b) => a - b), never, weighings };
}

function isCalledDry(steady: Steadiness, load: SimulatedLoad, dryG: number, rule: Rule): boolean {
  if (!rule.balance) return steady.is === 'steady';
  // A fifth of the solids taken as fat.
  const balance = { wetG: load.wetG, dryG, solidsG: load.toldSolidsG, fatG: load.toldSolidsG / 5 };
  return dryVerdict(steady, balance).is === 'dry';
}

export const falseDryFraction = 0.08;

/** Share of all loads that were called dry above 8 % moisture. */
export function falseDryRate({ moistures, never }: Run): number {
  return moistures.filter((moisture) => moisture > falseDryFraction).length / (moistures.length + never);
}

function print(loads: number, seed: number): void {
  const percent = (fraction: number | undefined) =>
    (fraction === undefined ? 'none' : `${(fraction * 100).toFixed(1)} %`).padStart(7);
  console.log(`${loads} loads of four trays each, seed ${seed}; moisture on the wet basis when called dry`);
  for (const kinetics of [usual, slow, stopped]) {
    console.log(
      `\n${kinetics.name}\nscale weighed       balance  median     99th  above 8 %  never  weighings`,
    );
    for (const scaleG of [1, 2, 5])
      for (const trayByTray of [true, false])
        for (const balance of [false, true]) {
          const run = simulate(loads, kinetics, { scaleG, balance, trayByTray }, seed);
          const at = (share: number) =>
            percent(run.moistures[Math.floor(share * (run.moistures.length - 1))]);
          console.log(
            `${scaleG} g   ${trayByTray ? 'by tray      ' : 'all together '} ${balance ? 'with   ' : 'without'} ${at(0.5)}  ${at(0.99)}    ${percent(falseDryRate(run))} ${percent(run.never / loads)} ${(run.weighings / loads).toFixed(1).padStart(6)}`,
          );
        }
  }
}

if (process.argv[1]?.endsWith('dry.ts')) print(told('loads', 2000), told('seed', 11));
