/** How often the hour a load is dry is foreseen within three hours, from which check weights; and how often a stop is seen. */
import { type LoadWeight, forecastByWeights, hasStalled } from '#core/forecast.ts';
import { expectedDryG } from '#core/balance.ts';
import { chance, told } from './chance.ts';
import { type SimulatedLoad, drawLoad, solidsOf, usual, waterOf } from './simulated-loads.ts';

const dryMoisture = 0.03;
const hitHours = 3;

/** The hour at which a load holds no more water than dry food may, h. */
function dryHour(load: SimulatedLoad): number {
  let [low, high] = [0, 200];
  while (high - low > 0.01) {
    const hours = (low + high) / 2;
    const waterG = waterOf(load, hours);
    if (waterG / (waterG + solidsOf(load)) <= dryMoisture) high = hours;
    else low = hours;
  }
  return high;
}

export interface Schedule {
  /** When it is weighed, as shares of the time its ice takes. */
  readonly at: readonly number[];
  /** Frozen in the dryer first, h, from 0 to this. */
  readonly frozenHours: number;
}

export interface Hits {
  readonly loads: number;
  /** Share of loads foreseen within three hours. */
  readonly hitFraction: number;
  /** Share of loads dry within the band that was said. */
  readonly inBandFraction: number;
  readonly bandHours: number;
}

/** Weighs each load as the schedule says and holds what is foreseen against what comes. */
export function hits(loads: number, { at, frozenHours }: Schedule, seed: number): Hits {
  const draw = chance(seed);
  const found = { loads: 0, hit: 0, inBand: 0, band: 0 };
  for (let i = 0; i < loads; i++) {
    const load = drawLoad(draw, usual);
    const frozen = frozenHours * draw();
    const ready = frozen + dryHour(load);
    const weights = [0, ...at].map((share): LoadWeight => {
      const ran = load.iceHours * share * (share === 0 ? 1 : 0.95 + 0.1 * draw());
      const massG = Math.round(solidsOf(load) + waterOf(load, ran) + draw() - 0.5);
      return { hours: share === 0 ? 0 : frozen + ran, massG };
    });
    const forecast = forecastByWeights(weights, expectedDryG(load.toldSolidsG, dryMoisture));
    // Whoever weighs dry food needs no forecast.
    if (weights.at(-1)!.hours >= ready || forecast === undefined) continue;
    found.loads += 1;
    if (Math.abs(forecast.readyHours - ready) <= hitHours) found.hit += 1;
    if (ready >= forecast.earliestHours && ready <= forecast.latestHours) found.inBand += 1;
    found.band += forecast.latestHours - forecast.earliestHours;
  }
  return {
    loads: found.loads,
    hitFraction: found.hit / found.loads,
    inBandFraction: found.inBand / found.loads,
    bandHours: found.band / found.loads,
  };
}

/** Shares of loads weighed twice, the pump stopped right after the first weighing or running on, that are called stalled. */
export function stallsSeen(
  loads: number,
  at: number,
  seed: number,
): { readonly stopped: number; readonly running: number } {
  const draw = chance(seed);
  const seen = { stopped: 0, running: 0 };
  for (let i = 0; i < loads; i++) {
    const load = drawLoad(draw, usual);
    const first = load.iceHours * at;
    const weight = (hours: number, ran: number): LoadWeight => ({
      hours,
      massG: Math.round(solidsOf(load) + waterOf(load, ran) + draw() - 0.5),
    });
    const dryG = expectedDryG(load.toldSolidsG, dryMoisture);
    const before = [weight(0, 0), weight(first, first)];
    if (hasStalled([...before, weight(first + 3, first)], dryG)) seen.stopped += 1;
    if (hasStalled([...before, weight(first + 3, first + 3)], dryG)) seen.running += 1;
  }
  return { stopped: seen.stopped / loads, running: seen.running / loads };
}

export const schedules: readonly Schedule[] = [0, 4, 8].flatMap((frozenHours) =>
  [
    [0.3],
    [0.5],
    [0.7],
    [0.9],
    [0.2, 0.4],
    [0.3, 0.5],
    [0.4, 0.6],
    [0.5, 0.8],
    [0.6, 0.8],
    [0.4, 0.6, 0.8],
  ].map((at) => ({ at, frozenHours })),
);

function print(loads: number, seed: number): void {
  const percent = (fraction: number) => `${(fraction * 100).toFixed(0)} %`.padStart(6);
  console.log(`${loads} loads, seed ${seed}: the hour they are dry, foreseen from check weights\n`);
  console.log('frozen first  weighed at (of ice time)  within 3 h  in band  band');
  for (const schedule of schedules) {
    const { hitFraction, inBandFraction, bandHours } = hits(loads, schedule, seed);
    console.log(
      `0 to ${schedule.frozenHours} h      ${schedule.at.join(', ').padEnd(24)}  ${percent(hitFraction)}      ${percent(inBandFraction)}   ${bandHours.toFixed(1)} h`,
    );
  }
  console.log('\nweighed at  pump stopped then, called so 3 h later  running, called stopped');
  for (const at of [0.3, 0.5, 0.7]) {
    const seen = stallsSeen(loads, at, seed);
    console.log(
      `${String(at).padEnd(10)}  ${percent(seen.stopped)}                                ${percent(seen.running)}`,
    );
  }
}

if (process.argv[1]?.endsWith('forecast.ts')) print(told('loads', 2000), told('seed', 7));
