import { inRange } from './ranges.ts';
import { between, above } from './within.ts';

/**
 * Chosen, and cautious: months at 20 °C with an absorber, by fat in the dry matter, on straight lines between these. No
 * government or university figure exists for home freeze-dried meals; fat is what turns first. The points lie in the
 * middle of the steps that were here before: a gram of oil no longer halves a date.
 */
const monthsAtFat: readonly (readonly [fatFraction: number, months: number])[] = [
  [0.05, 36],
  [0.15, 18],
  [0.275, 9],
  [0.5, 4],
];

function monthsByFat(fatFraction: number): number {
  const next = monthsAtFat.findIndex(([fat]) => fatFraction <= fat);
  if (next === 0) return monthsAtFat[0]![1];
  if (next < 0) return monthsAtFat.at(-1)![1];
  const [[fromFat, fromMonths], [toFat, toMonths]] = [monthsAtFat[next - 1]!, monthsAtFat[next]!];
  return fromMonths + ((fatFraction - fromFat) / (toFat - fromFat)) * (toMonths - fromMonths);
}

const referenceC = 20;
/** Chosen in the low part of the band for dried food. */
export const planningQ10 = 2;
/** Above this food ages faster still, °C. Chosen: between the two temperatures that were published. */
const hotC = 30;
/** @source dla-rations-2016 */
export const hotQ10 = 5;
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
  const at20Months = monthsByFat(fatFraction) * (absorber ? 1 : withoutAbsorber.share);
  const cap = absorber ? mostMonths : withoutAbsorber.mostMonths;
  const at = (q: number) => Math.min(cap, coolerAtMost * at20Months, atStorage(at20Months, storageC, q));
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

/** At storage temperature: by Q10 up to 30 °C, by the steeper one beyond. */
function atStorage(at20Months: number, storageC: number, q: number): number {
  if (storageC <= hotC) return shelfMonths(at20Months, referenceC, storageC, q);
  return shelfMonths(shelfMonths(at20Months, referenceC, hotC, q), hotC, storageC, Math.max(q, hotQ10));
}

/** Cooler than this lengthens a date no more than it is worth saying, °C. Chosen. */
const coolC = 12;

/** What would lengthen a planning date. */
export function whatLengthens(fatFraction: number, storageC: number, absorber: boolean): string[] {
  return [
    ...(absorber ? [] : ['an absorber']),
    ...(fatFraction > monthsAtFat[0]![0] ? ['less fat'] : []),
    ...(storageC > coolC ? ['a cooler place'] : []),
  ];
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
