import { above, between } from './within.ts';

/** A meter of electricity, as somebody read it. */
export interface MeterReading {
  readonly atMs: number;
  readonly kwh: number;
}

/** What a run of the dryer took. */
export interface RunEnergy {
  readonly kwh: number;
  /** By a meter; or by the power on its plate, which is the most it takes. */
  readonly by: 'meter' | 'plate';
}

/** A meter is read when somebody passes it: so far from the start or the end of a run it still speaks of it, h. Chosen. */
const meterSlackHours = 3;
const hourMs = 3_600_000;

/**
 * Energy of a run: by the meter where it was read about its start and its end, else the dryer's power times the hours it
 * ran, which is the most it can have taken. Never a guess.
 * @param run from loading to the weighing that showed it dry; `ranHours` without the time it stood still
 * @param readings in order of time
 * @param watts as the dryer's plate says; null: not told
 * @returns undefined where neither is known
 */
export function runEnergy(
  run: { readonly startMs: number; readonly endMs: number; readonly ranHours: number },
  readings: readonly MeterReading[],
  watts: number | null,
): RunEnergy | undefined {
  const near = (ms: number) =>
    readings
      .filter(({ atMs }) => Math.abs(atMs - ms) <= meterSlackHours * hourMs)
      .toSorted((a, b) => Math.abs(a.atMs - ms) - Math.abs(b.atMs - ms))[0];
  const [first, last] = [near(run.startMs), near(run.endMs)];
  if (first && last && first.atMs < last.atMs) return { kwh: last.kwh - first.kwh, by: 'meter' };
  return watts === null ? undefined : { kwh: (watts / 1000) * run.ranHours, by: 'plate' };
}

/** Something of a recipe and what it costs; null where nobody told a price, or where it was not weighed. */
export interface Priced {
  readonly called: string;
  readonly cost: number | null;
}

/** A sum of what is known, and what is not in it. */
export interface CostSum {
  readonly sum: number;
  readonly unpriced: readonly string[];
}

/** Adds up what is known; what is not is named and never guessed. */
export const costSum = (parts: readonly Priced[]): CostSum => ({
  sum: parts.reduce((sum, { cost }) => sum + (cost ?? 0), 0),
  unpriced: parts.flatMap(({ called, cost }) => (cost === null ? [called] : [])),
});

/**
 * What some weight of a food costs.
 * @param grams 0 or more
 * @param perKg 0 or more, in the household's money
 * @throws Refusal 'impossible-weight', 'impossible-price'
 */
export function costOf(grams: number, perKg: number): number {
  between('impossible-weight', 'The weight', grams, 0, Infinity, 'g');
  between('impossible-price', 'The price', perKg, 0, Infinity, 'a kg');
  return (grams / 1000) * perKg;
}

/**
 * A price for some weight as a price for a kg.
 * @throws Refusal 'impossible-weight', 'impossible-price'
 */
export function pricePerKg(price: number, grams: number): number {
  between('impossible-price', 'The price', price, 0, Infinity, '');
  return price / (above('impossible-weight', 'The weight', grams, 0, 'g') / 1000);
}
