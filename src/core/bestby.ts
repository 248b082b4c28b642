import { barrierMonths, type Material } from './barrier.ts';
import { inRange } from './ranges.ts';
import { between, above } from './within.ts';

/**
 * Chosen, and cautious: the longest plan at 20 °C with an absorber, months. No published study stands behind more for
 * home freeze-dried meals; many packed meals do not hold beyond two years. Clear bags let oxygen and moisture in.
 * @source nasa-2014
 */
const longestMonths = { tightMeasured: 36, tight: 24, clear: 12 } as const;

/**
 * Chosen: what fat leaves of the longest plan, on straight lines between these shares of the dry matter. Fat is what
 * turns first where no oxygen comes in.
 */
const shareAtFat: readonly (readonly [fatFraction: number, share: number])[] = [
  [0.05, 1],
  [0.15, 0.5],
  [0.275, 0.25],
  [0.5, 1 / 9],
];

function shareByFat(fatFraction: number): number {
  const next = shareAtFat.findIndex(([fat]) => fatFraction <= fat);
  if (next === 0) return shareAtFat[0]![1];
  if (next < 0) return shareAtFat.at(-1)![1];
  const [[fromFat, from], [toFat, to]] = [shareAtFat[next - 1]!, shareAtFat[next]!];
  return from + ((fatFraction - fromFat) / (toFat - fromFat)) * (to - from);
}

const referenceC = 20;
/** Chosen in the low part of the band for dried food. */
export const planningQ10 = 2;
/** Above this food ages faster still, °C. Chosen: between the two temperatures that were published. */
const hotC = 30;
/** @source dla-rations-2016 */
export const hotQ10 = 5;
const mostMonths = 60;
const coolerAtMost = 2;
/** Chosen. */
const withoutAbsorber = { share: 1 / 4, mostMonths: 6 };

/** All that a planning date rests on, as a pouch was sealed. */
export interface Kept {
  /** null: nobody said; counted as a clear bag. */
  readonly material: Material | null;
  /** Both sides of the pouch, cm²; null where its size is not known. */
  readonly areaCm2: number | null;
  /** A hygrometer in a jar with the food showed it dry before it was sealed. */
  readonly isMeasuredDry: boolean;
  /** Fat of the dry matter, 0 to 1; of what keeps least in a mixture. */
  readonly fatFraction: number;
  readonly absorber: boolean;
  /** What the absorber can take up beyond the pouch's own oxygen, ml; null where that is not known. */
  readonly spareMl: number | null;
}

const isTight = (material: Material | null): boolean => material !== null && material !== 'clear';

/** The longest plan for how it is packed, before fat and temperature, months. */
function packedMonths({ material, isMeasuredDry }: Kept): number {
  if (!isTight(material)) return longestMonths.clear;
  return isMeasuredDry ? longestMonths.tightMeasured : longestMonths.tight;
}

/** Longest that the wall allows, months. */
function wallMonths(kept: Kept, storageC: number): number {
  const { material, areaCm2, spareMl } = kept;
  if (isTight(material)) return mostMonths;
  if (spareMl === null || areaCm2 === null) return longestMonths.clear;
  // Once the absorber is spent the pouch is as one without.
  const spent = keepsMonths({ ...kept, absorber: false }, storageC);
  return Math.min(longestMonths.clear, Math.max(spent, barrierMonths(spareMl, 'clear', areaCm2)));
}

/**
 * How long a sealed pouch of a steady batch is planned to keep at one temperature: by the wall and how dry it was
 * measured, then by fat, then by storage temperature. It is a planning figure: it knows nothing of food that was never
 * dry or of a torn pouch. The caller refuses it to a batch that is not steady.
 * @param storageC where it is kept, °C, −40 to 50
 * @returns months, at most 60, in clear bags at most 12, without absorber at most 6; cooler storage at most doubles the
 * figure at 20 °C
 * @throws Refusal 'impossible-fat' or 'impossible-temperature'
 * @source labuza-q10
 */
export function keepsMonths(kept: Kept, storageC: number): number {
  between('impossible-fat', 'The share of fat', kept.fatFraction, 0, 1, '');
  inRange('impossible-temperature', 'storageC', storageC);
  const share = kept.absorber ? 1 : withoutAbsorber.share;
  const at20Months = packedMonths(kept) * shareByFat(kept.fatFraction) * share;
  const cap = kept.absorber ? wallMonths(kept, storageC) : withoutAbsorber.mostMonths;
  return Math.min(cap, coolerAtMost * at20Months, atStorage(at20Months, storageC));
}

/** At storage temperature: by Q10 up to 30 °C, by the steeper one beyond. */
function atStorage(at20Months: number, storageC: number): number {
  if (storageC <= hotC) return shelfMonths(at20Months, referenceC, storageC);
  return shelfMonths(shelfMonths(at20Months, referenceC, hotC), hotC, storageC, hotQ10);
}

/** A stretch of storage. */
export interface StorageSpell {
  readonly months: number;
  readonly tempC: number;
}

/**
 * Months from sealing until the life of a pouch is used up, where it was kept at one temperature after the other: each
 * stretch uses its time over the life at its temperature.
 * @param past stretches in their order, months 0 or more
 * @param nowC where it is kept from then on, °C
 * @param lifeAt life at a temperature, months
 * @throws Refusal 'impossible-time' for a time below 0
 * @source labuza-q10
 */
export function monthsUntilUsed(
  past: readonly StorageSpell[],
  nowC: number,
  lifeAt: (tempC: number) => number,
): number {
  let left = 1;
  let gone = 0;
  for (const { months, tempC } of past) {
    between('impossible-time', 'The time stored', months, 0, Infinity, 'months');
    const life = lifeAt(tempC);
    if (months >= left * life) return gone + left * life;
    left -= months / life;
    gone += months;
  }
  return gone + left * lifeAt(nowC);
}

/** Cooler than this lengthens a date no more than it is worth saying, °C. Chosen. */
const coolC = 12;

/** What would lengthen a planning date. */
export type Lengthens =
  'tell the pouch' | 'foil' | 'a larger absorber' | 'an absorber' | 'a dry jar' | 'less fat' | 'cooler';

/** What would lengthen a planning date, what does most first. */
export function whatLengthens(kept: Kept, storageC: number): Lengthens[] {
  const { material, absorber, isMeasuredDry, fatFraction } = kept;
  const isSpent =
    absorber &&
    !isTight(material) &&
    wallMonths(kept, storageC) < keepsMonths({ ...kept, spareMl: null }, storageC);
  return [
    ...(material === null ? (['tell the pouch'] as const) : material === 'clear' ? (['foil'] as const) : []),
    ...(absorber ? [] : (['an absorber'] as const)),
    ...(isSpent && material !== null ? (['a larger absorber'] as const) : []),
    ...(isTight(material) && !isMeasuredDry && absorber ? (['a dry jar'] as const) : []),
    ...(fatFraction > shareAtFat[0]![0] ? (['less fat'] as const) : []),
    ...(storageC > coolC ? (['cooler'] as const) : []),
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
export const gasConstant = 8.31446261815324;

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
