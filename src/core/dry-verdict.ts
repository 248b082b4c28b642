import {
  oxygenFreeMostMoistureFraction,
  residualMoistureFraction,
  usualSolidsErrorFraction,
} from './balance.ts';
import type { Steadiness } from './dryness.ts';
import { above, between } from './within.ts';

/** What lies on the trays of one batch, as the balance sees it. */
export interface Balance {
  /** As loaded, g, above 0. */
  readonly wetG: number;
  /** As weighed last, g, above 0. */
  readonly dryG: number;
  /** Solids of the lines that could be read, g, 0 or more; a line that could not be read counts as none. */
  readonly solidsG: number;
  /** Fat among the solids, g. */
  readonly fatG: number;
}

/** Water that the balance finds in what is left. */
export interface WaterLeft {
  /** g of water per g of food without its fat, 0 to 1: with the solids' error in its favour, as it is, against it. */
  readonly lowFraction: number;
  readonly fraction: number;
  readonly highFraction: number;
  /** g of water per g of food with its fat, 0 to 1, as the recipe's solids are. */
  readonly wholeFraction: number;
  /** Of the water that was loaded, the share that is still there, 0 to 1. */
  readonly stillThereFraction: number;
}

/**
 * Water left in a batch, of the food without its fat: fat holds no water, so 10 % of a meal that is a third fat is
 * 15 % of the part in which anything grows. What weighs nothing in the recipe, because no one could read its line,
 * counts as water until the line is put right: this witness may be too severe, never too kind.
 * @param solidsErrorFraction how far the solids may be out, 0 to 1
 * @throws Refusal 'impossible-weight' or 'impossible-error'
 * @source oxygen-free-leaflet
 */
export function waterLeft(balance: Balance, solidsErrorFraction = usualSolidsErrorFraction): WaterLeft {
  const { wetG, dryG, solidsG, fatG } = balance;
  above('impossible-weight', 'The loaded weight', wetG, 0, 'g');
  above('impossible-weight', 'The dry weight', dryG, 0, 'g');
  between('impossible-weight', 'The weight of the solids', solidsG, 0, Infinity, 'g');
  between('impossible-error', 'The error of the solids', solidsErrorFraction, 0, 1, '');
  // Never less than a tenth is left of the food: a table that puts more fat than there is food is wrong.
  const leanG = Math.max(dryG - Math.max(0, fatG), dryG / 10);
  const at = (g: number) => Math.min(1, Math.max(0, (dryG - g) / leanG));
  const loadedWaterG = wetG - solidsG;
  return {
    lowFraction: at(solidsG * (1 + solidsErrorFraction)),
    fraction: at(solidsG),
    highFraction: at(solidsG * (1 - solidsErrorFraction)),
    wholeFraction: Math.max(0, residualMoistureFraction(dryG, Math.max(solidsG, Number.MIN_VALUE))),
    stillThereFraction: loadedWaterG > 0 ? Math.min(1, Math.max(0, (dryG - solidsG) / loadedWaterG)) : 0,
  };
}

/** More than this of the loaded water still there: the dryer hardly ran, whatever the scale says. Chosen. */
const mostStillThereFraction = 0.5;

/**
 * Whether the balance refuses a batch: even with the food table's error in its favour more water is left than food
 * without oxygen may hold, or most of the water is still there. Frozen food, a pump that failed and a chamber that
 * stopped do not change their weight either.
 * @source oxygen-free-leaflet
 */
export function isWet({ lowFraction, stillThereFraction }: WaterLeft): boolean {
  return lowFraction > oxygenFreeMostMoistureFraction || stillThereFraction > mostStillThereFraction;
}

/**
 * What else than the scale was said of a batch: a hygrometer in a closed jar with the food, pieces that were broken open,
 * or a person's word.
 */
export type Witness =
  | { readonly atMs: number; readonly by: string; readonly humidityPercent: number }
  | { readonly atMs: number; readonly by: string; readonly isCold: boolean }
  | { readonly atMs: number; readonly by: string; readonly words: string };

/** Up to this a jar is crisp-dry. Common practice, no source. */
export const dryJarPercent = 30;
/** Above this something may grow. @source danao-nebraska */
export const dampJarPercent = 60;

/**
 * What a hygrometer shows in a closed jar with the food: at rest it is the water activity times 100.
 * @param humidityPercent relative humidity, 0 to 100
 * @throws Refusal 'impossible-humidity'
 * @source fda-bad-bugs-1992
 */
export function gradeOfJar(humidityPercent: number): 'dry' | 'between' | 'damp' {
  between('impossible-humidity', 'The humidity', humidityPercent, 0, 100, '%');
  if (humidityPercent <= dryJarPercent) return 'dry';
  return humidityPercent > dampJarPercent ? 'damp' : 'between';
}

/** A dry jar and a person's word after it, which together stand against the balance. */
export interface Vouched {
  readonly humidityPercent: number;
  readonly words: string;
  readonly by: string;
  readonly atMs: number;
}

export type DryVerdict =
  | {
      readonly is: 'dry';
      readonly vouched: Vouched | null;
      /** Water that the recipe still finds in it, 0 to 1, where that is a doubt nobody has looked into; else null. */
      readonly doubtedFraction: number | null;
    }
  | { readonly is: 'not dry'; readonly because: 'not steady'; readonly steadiness: Steadiness }
  | { readonly is: 'not dry'; readonly because: 'damp jar'; readonly humidityPercent: number }
  | { readonly is: 'not dry'; readonly because: 'cold inside'; readonly atMs: number; readonly by: string }
  | {
      readonly is: 'not dry';
      readonly because: 'wet by balance';
      readonly left: WaterLeft;
      /** The way by hygrometer and word is open. */
      readonly mayBeVouched: boolean;
    };

/** A jar and a word stand against the balance only up to this share of the loaded water. Chosen. */
const mostVouchedFraction = 0.15;

/**
 * Above this the recipe as it stands says that more water is in it than a dried load has, though the food table's error
 * may be all there is to it. A pump that stopped late leaves a load so, and neither scale nor recipe can tell which it is:
 * it is said, and pieces are asked to be opened. Chosen by simulation (`npm run bench:dry`): said of one or
 * two in a hundred loads that ran to their end in usual time, and of nine in ten that did not and are called dry all the same.
 */
export const doubtedMoistureFraction = 0.06;

/** Crisp pieces speak for what was weighed so long after them, h: within it a steady weight takes up little. Chosen. */
const crispLastsHours = 12;

/** Whether somebody looked inside: pieces were crisp, or the jar was dry. */
export function isSeenDry(witnesses: readonly Witness[], weighedAtMs: number): boolean {
  const { jar } = since(witnesses, weighedAtMs);
  if (jar && gradeOfJar(jar.humidityPercent) === 'dry') return true;
  const last = witnesses.findLast((one) => 'isCold' in one);
  return (
    last !== undefined &&
    'isCold' in last &&
    !last.isCold &&
    weighedAtMs - last.atMs <= crispLastsHours * 3_600_000
  );
}

/** What is said beside the scale. */
type Heard = Exclude<DryVerdict, { readonly because: 'not steady' }>;

/**
 * What the balance, the jar, opened pieces and people say of a batch whose weight is steady. A damp jar, a cold piece and
 * the balance can each refuse it. Against the balance stand only a recipe line or pot weight put right, which change the balance itself, or
 * both a dry jar and a grown-up's word given after it, and these only where most of the water is gone: a jar with
 * frozen food reads dry. It holds for sealed pouches too: a line mended later can refuse what was sealed.
 * @param witnesses in order of time; those from before the last weighing do not count
 * @param weighedAtMs the last weighing; null when there is none
 */
export function heard(
  balance: Balance,
  witnesses: readonly Witness[] = [],
  weighedAtMs: number | null = null,
): Heard {
  const cold = coldInside(witnesses, weighedAtMs ?? 0);
  if (cold) return { is: 'not dry', because: 'cold inside', atMs: cold.atMs, by: cold.by };
  const { jar, word } = since(witnesses, weighedAtMs ?? 0);
  if (jar && gradeOfJar(jar.humidityPercent) === 'damp')
    return { is: 'not dry', because: 'damp jar', humidityPercent: jar.humidityPercent };
  const left = waterLeft(balance);
  if (!isWet(left)) {
    const isDoubted = left.wholeFraction > doubtedMoistureFraction && !isSeenDry(witnesses, weighedAtMs ?? 0);
    return { is: 'dry', vouched: null, doubtedFraction: isDoubted ? left.wholeFraction : null };
  }
  const mayBeVouched = left.stillThereFraction <= mostVouchedFraction;
  if (mayBeVouched && jar && word && gradeOfJar(jar.humidityPercent) === 'dry')
    return {
      is: 'dry',
      vouched: { ...word, humidityPercent: jar.humidityPercent },
      doubtedFraction: null,
    };
  return { is: 'not dry', because: 'wet by balance', left, mayBeVouched };
}

/**
 * Whether a batch may be sealed for the shelf: the weight has to be steady, and nothing that was heard may refuse it.
 * @param balance undefined while the batch was not weighed whole
 */
export function dryVerdict(
  steadiness: Steadiness,
  balance: Balance | undefined,
  witnesses: readonly Witness[] = [],
  weighedAtMs: number | null = null,
): DryVerdict {
  if (steadiness.is !== 'steady' || balance === undefined)
    return { is: 'not dry', because: 'not steady', steadiness };
  return heard(balance, witnesses, weighedAtMs);
}

/** Ice inside a piece takes at least so much more drying. Common practice, no source. */
export const coldLastsHours = 2;

/**
 * The last that was said of opened pieces, where it was cold: it holds until pieces were crisp, or until a weighing
 * after so much more drying.
 */
function coldInside(witnesses: readonly Witness[], weighedAtMs: number) {
  const last = witnesses.findLast((one) => 'isCold' in one);
  const isOver = last !== undefined && weighedAtMs - last.atMs >= coldLastsHours * 3_600_000;
  return last && 'isCold' in last && last.isCold && !isOver ? last : undefined;
}

/** The last reading since the last weighing, and the last word given with it or after it. */
export function since(witnesses: readonly Witness[], weighedAtMs: number) {
  const fresh = witnesses.filter(({ atMs }) => atMs >= weighedAtMs);
  const at = fresh.findLastIndex((one) => 'humidityPercent' in one);
  const jar = fresh[at];
  const word = fresh.slice(at + 1).findLast((one) => 'words' in one);
  return {
    jar: jar && 'humidityPercent' in jar ? jar : undefined,
    word: at >= 0 && word && 'words' in word ? word : undefined,
  };
}

/** Dry food takes up the kitchen's moisture at once: a steady weight holds for so long. Common practice, no source. */
export const steadyLastsHours = 1;

/**
 * Whether a weight was shown too long ago to seal on it.
 * @param weighedAtMs when the tray that was weighed longest ago was weighed last
 */
export function isStale(weighedAtMs: number, nowMs: number): boolean {
  return nowMs - weighedAtMs > steadyLastsHours * 3_600_000;
}
