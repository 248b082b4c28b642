import { inRange } from './ranges.ts';
import { between, above } from './within.ts';

/**
 * Chosen, and cautious: months at 20 °C with an absorber, by fat in the dry matter. No government or university
 * figure exists for home freeze-dried meals; fat is what turns first.
 */
const monthsByFat: readonly { readonly belowFraction: number; readonly months: number }[] = [
  { belowFraction: 0.1, months: 36 },
  { belowFraction: 0.2, months: 18 },
  { belowFraction: 0.35, months: 9 },
  { belowFraction: Infinity, months: 4 },
];

const referenceC = 20;
/** Chosen in the low part of the band for dried food. */
export const planningQ10 = 2;
const lowQ10 = 1.5;
const highQ10 = 3;
const mostMonths = 60;
const coolerAtMost = 2;
const withoutAbsorber = { share: 1 / 4, mostMonths: 6 };

export interface BestBy {
  /** Planning months from sealing. */
  readonly months: number;
  /** What Q10 from 1.5 to 3 would make of it, same limits. */
  readonly lowMonths: number;
  readonly highMonths: number;
  /** The policy's figure at 20 °C, before temperature. */
  readonly at20Months: number;
  /** What decided it, for the answer. */
  readonly fatFraction: number;
  readonly storageC: number;
  readonly absorber: boolean;
}

/**
 * How long a sealed pouch of a steady batch is planned to keep: by fat, corrected for storage temperature. It is a
 * planning figure: it knows nothing of food that was never dry or of a torn pouch. The caller refuses it to a batch
 * that is not steady.
 * @param fatFraction fat of the dry matter, 0 to 1
 * @param storageC where it is kept, °C, −40 to 50
 * @param absorber whether one is sealed in
 * @returns months, at most 60, without absorber at most 6; cooler storage at most doubles the figure at 20 °C
 * @throws Refusal 'impossible-fat' or 'impossible-temperature'
 * @source labuza-q10
 */
export function bestBy(fatFraction: number, storageC: number, absorber: boolean): BestBy {
  between('impossible-fat', 'The share of fat', fatFraction, 0, 1, '');
  inRange('impossible-temperature', 'storageC', storageC);
  const row = monthsByFat.find(({ belowFraction }) => fatFraction < belowFraction);
  const at20Months = (row?.months ?? 4) * (absorber ? 1 : withoutAbsorber.share);
  const cap = absorber ? mostMonths : withoutAbsorber.mostMonths;
  const at = (q: number) =>
    Math.min(cap, coolerAtMost * at20Months, shelfMonths(at20Months, referenceC, storageC, q));
  const ends = [at(lowQ10), at(planningQ10), at(highQ10)];
  return {
    months: at(planningQ10),
    lowMonths: Math.min(...ends),
    highMonths: Math.max(...ends),
    at20Months,
    fatFraction,
    storageC,
    absorber,
  };
}

/**
 * How much faster food ages 10 °C warmer, from its life at two temperatures.
 * @param life at temperature tC, any unit of time, above 0
 * @param otherLife at temperature otherC, same unit, above 0
 * @returns Q10, no unit
 * @throws Refusal 'impossible-life' or 'same-temperature'
 * @source labuza-q10
 */
export function q10(life: number, tC: number, otherLife: number, otherC: number): number {
  above('impossible-life', 'The shelf life', life, 0, '');
  above('impossible-life', 'The other shelf life', otherLife, 0, '');
  above('same-temperature', 'The gap between the temperatures', Math.abs(otherC - tC), 0, '°C');
  return (life / otherLife) ** (10 / (otherC - tC));
}

/** Gas constant, J/(mol K), exact since 2019. */
const gasConstant = 8.31446261815324;

/**
 * Q10 of a reaction with a known activation energy, between tC and tC + 10 °C.
 * @param activationKJPerMol kJ/mol, 0 or more
 * @param tC °C, above absolute zero
 * @returns Q10, no unit
 * @throws Refusal 'impossible-energy' or 'impossible-temperature'
 * @source labuza-q10
 */
export function q10FromArrhenius(activationKJPerMol: number, tC: number): number {
  between('impossible-energy', 'The activation energy', activationKJPerMol, 0, 1000, 'kJ/mol');
  const kelvin = above('impossible-temperature', 'The temperature', tC + 273.15, 0, 'K');
  return Math.exp(((activationKJPerMol * 1000) / gasConstant) * (10 / (kelvin * (kelvin + 10))));
}

/**
 * Shelf life at another temperature.
 * @param months at temperature t0C, above 0
 * @param q Q10, 1 to 20
 * @returns months at temperature tC
 * @throws Refusal 'impossible-life', 'impossible-temperature' or 'impossible-q10'
 * @source labuza-q10
 */
export function shelfMonths(months: number, t0C: number, tC: number, q: number = planningQ10): number {
  above('impossible-life', 'The shelf life', months, 0, 'months');
  between('impossible-temperature', 'The temperature', tC, -100, 100, '°C');
  between('impossible-q10', 'Q10', q, 1, 20, '');
  return months * q ** ((t0C - tC) / 10);
}

const dayMs = 86_400_000;

/**
 * The day that so many months make of a day: a planning date is no finer than a month, so the end of the last whole
 * month within them; where they do not reach the end of a month, the day itself.
 * @param sealedOn ISO day
 * @param months 0 or more; a part of a month counts by 30 days
 * @returns ISO day
 */
export function bestByDay(sealedOn: string, months: number): string {
  const [year, month, day] = sealedOn.split('-').map(Number) as [number, number, number];
  const whole = Math.floor(months);
  const lastOf = (monthsOn: number) => Date.UTC(year, month - 1 + monthsOn + 1, 0);
  // 31 January and a month is the last of February.
  const then = Math.min(Date.UTC(year, month - 1 + whole, day), lastOf(whole));
  const to = then + Math.floor((months - whole) * 30) * dayMs;
  const reached = new Date(to);
  const endOfItsMonth = Date.UTC(reached.getUTCFullYear(), reached.getUTCMonth() + 1, 0);
  const end = endOfItsMonth === to ? to : Date.UTC(reached.getUTCFullYear(), reached.getUTCMonth(), 0);
  const isBefore = end < Date.UTC(year, month - 1, day);
  return new Date(isBefore ? to : end).toISOString().slice(0, 10);
}

/** A stretch of storage. */
export interface StorageSpell {
  readonly months: number;
  readonly tempC: number;
}

/**
 * How much of its life a pouch has used up after uneven storage: Σ time / life at that temperature.
 * @param segments stretches of storage, months 0 or more
 * @param rated life at a stated temperature and Q10
 * @returns fraction; 1 and more is past it
 * @throws Refusal as shelfMonths does, 'impossible-time' for a time below 0
 * @source labuza-q10
 */
export function lifeUsedFraction(
  segments: readonly StorageSpell[],
  rated: { readonly months: number; readonly tempC: number; readonly q10?: number },
): number {
  return segments.reduce((used, { months, tempC }) => {
    between('impossible-time', 'The time stored', months, 0, Infinity, 'months');
    return used + months / shelfMonths(rated.months, rated.tempC, tempC, rated.q10);
  }, 0);
}
