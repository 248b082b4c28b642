import type { Pack } from './absorber-packs.ts';
import { Refusal } from './refusal.ts';
import { inRange } from './ranges.ts';
import { above, between, figure } from './within.ts';

/** Oxygen in dry air, ml per ml. @source aiche-air */
export const oxygenOfAirFraction = 0.2095;

/** The paper-bag formula may fall short of the true volume by this much (0.19 against at most 0.217). */
const formulaSlack = 1.15;

/**
 * The most a flat pouch sealed all round can hold, by Robin's approximation. For a square it gives 0.191 side³,
 * where the true figure lies between 0.2055 and 0.217: it may be 7 to 12 % low, which a safety factor has to cover.
 * @param flatWidthMm inner width lying flat, mm, 10 to 2000
 * @param flatHeightMm inner height lying flat, mm, 10 to 2000
 * @returns ml
 * @throws Refusal 'impossible-pouch'
 * @source robin-2004
 */
export function pouchVolumeMl(flatWidthMm: number, flatHeightMm: number): number {
  between('impossible-pouch', "The pouch's width", flatWidthMm, 10, 2000, 'mm');
  between('impossible-pouch', "The pouch's height", flatHeightMm, 10, 2000, 'mm');
  const w = Math.min(flatWidthMm, flatHeightMm);
  const h = Math.max(flatWidthMm, flatHeightMm);
  const cubicMm = w ** 3 * (h / (Math.PI * w) - 0.142 * (1 - 10 ** (-h / w)));
  return cubicMm / 1000;
}

/** kg/m³ of each component as a + b·t + c·t², t in °C, −40 to 150 °C. @source choi-okos-1986 */
const densityTerms = {
  water: [997.18, 0.0031439, -0.0037574],
  protein: [1329.9, -0.5184, 0],
  fat: [925.59, -0.41757, 0],
  carbohydrate: [1599.1, -0.31046, 0],
  fibre: [1311.5, -0.36589, 0],
  ash: [2423.8, -0.28063, 0],
} as const;

export type Component = keyof typeof densityTerms;

/**
 * Density of each component of food.
 * @param tempC °C, −40 to 150
 * @returns kg/m³
 * @throws Refusal 'impossible-temperature'
 * @source choi-okos-1986
 */
export function componentDensity(tempC: number): Readonly<Record<Component, number>> {
  between('impossible-temperature', 'The temperature', tempC, -40, 150, '°C');
  const at = (name: Component) => {
    const [a, b, c] = densityTerms[name];
    return a + b * tempC + c * tempC ** 2;
  };
  return {
    water: at('water'),
    protein: at('protein'),
    fat: at('fat'),
    carbohydrate: at('carbohydrate'),
    fibre: at('fibre'),
    ash: at('ash'),
  };
}

/** g of each in the food as sealed, or per 100 g of it; carbohydrate as food tables give it, fibre included. */
export interface Composition {
  readonly waterG: number;
  readonly proteinG: number;
  readonly fatG: number;
  readonly carbohydrateG: number;
  readonly fibreG: number;
  readonly ashG: number;
}

/**
 * Density of the food itself, without the holes drying left and without the gaps between pieces.
 * @param composition g, each 0 or more; the sum need not be the whole
 * @param tempC °C, 20 until known
 * @returns g/ml
 * @throws Refusal 'impossible-composition' below 0 or when nothing is known
 * @source choi-okos-1986
 */
export function particleDensityGPerMl(composition: Composition, tempC = 20): number {
  const density = componentDensity(tempC);
  between('impossible-composition', 'The carbohydrate', composition.carbohydrateG, 0, Infinity, 'g');
  const digestibleG = Math.max(0, composition.carbohydrateG - composition.fibreG);
  const shares: readonly (readonly [Component, number])[] = [
    ['water', composition.waterG],
    ['protein', composition.proteinG],
    ['fat', composition.fatG],
    ['carbohydrate', digestibleG],
    ['fibre', composition.fibreG],
    ['ash', composition.ashG],
  ];
  for (const [name, g] of shares) between('impossible-composition', `The ${name}`, g, 0, Infinity, 'g');
  const massG = shares.reduce((sum, [, g]) => sum + g, 0);
  if (massG === 0)
    throw new Refusal('impossible-composition', 'Nothing is known of what this food is made of.');
  return massG / shares.reduce((sum, [name, g]) => sum + (g * 1000) / density[name], 0);
}

/** Of wet food, g/ml: between water and a thick sauce. Chosen. */
const wetGPerMl = 1.03;
/** How densely loose pieces lie: a poured purée fills all of its room, pieces this share of it. Chosen, the lower end. */
const loosestPacking = 0.6;

/**
 * Room that freeze-dried food takes in a pouch pressed flat around it. It keeps nearly its wet volume, as holes where the
 * ice was; loose pieces leave gaps besides. So the oxygen in a pressed pouch follows from the food, not from the pouch.
 * @param wetG what the food weighed before it was dried, g, above 0
 * @param packing share of the room that the pieces fill, 0.6 to 1
 * @returns ml
 * @throws Refusal 'impossible-weight' or 'impossible-packing'
 * @source krokida-1998
 */
export function pressedVolumeMl(wetG: number, packing = loosestPacking): number {
  above('impossible-weight', 'The wet weight', wetG, 0, 'g');
  between('impossible-packing', 'The packing', packing, loosestPacking, 1, '');
  return wetG / wetGPerMl / packing;
}

/** Beyond this share of its greatest volume a pouch is too full to stir and close. Chosen. */
const mostFullFraction = 0.85;

/**
 * Whether food and its water fit the pouch with room to stir.
 * @param pressedMl room of the dry food, ml
 * @param waterMl to be poured, ml
 * @param pouchMl the pouch's greatest volume, ml
 */
export function isTooFull(pressedMl: number, waterMl: number, pouchMl: number): boolean {
  return pressedMl + waterMl > mostFullFraction * pouchMl;
}

/**
 * Air around and inside the food in a pouch: the pouch's volume less the food's own.
 * @param volumeMl the pouch at its fullest, ml
 * @param foodG g, 0 or more
 * @param densityGPerMl the food's own, g/ml
 * @returns ml, never below 0
 * @throws Refusal 'food-does-not-fit' when the food alone is clearly larger than the pouch
 * @source aiche-air
 */
export function freeAirMl(volumeMl: number, foodG: number, densityGPerMl: number): number {
  above('impossible-pouch', "The pouch's volume", volumeMl, 0, 'ml');
  between('impossible-weight', 'The food in the pouch', foodG, 0, Infinity, 'g');
  above('impossible-density', "The food's density", densityGPerMl, 0, 'g/ml');
  const foodMl = foodG / densityGPerMl;
  if (foodMl > volumeMl * formulaSlack) {
    throw new Refusal(
      'food-does-not-fit',
      `${figure(foodG)} g of food fill ${figure(foodMl)} ml; the pouch holds ${figure(volumeMl)} ml.`,
    );
  }
  return Math.max(0, volumeMl - foodMl);
}

/**
 * Oxygen in that air, as ml at sea-level pressure, which is how absorbers are rated.
 * @param airMl ml, 0 or more
 * @param pressureRatio pressure where it is sealed over 101325 Pa; 1 at sea level
 * @returns ml of oxygen
 * @throws Refusal 'impossible-air' or 'impossible-pressure'
 * @source aiche-air
 */
export function oxygenMl(airMl: number, pressureRatio = 1): number {
  between('impossible-air', 'The free air', airMl, 0, Infinity, 'ml');
  above('impossible-pressure', 'The pressure ratio', pressureRatio, 0, '');
  return oxygenOfAirFraction * airMl * pressureRatio;
}

export interface AbsorberChoice {
  /** The largest first; of one size or two. */
  readonly packs: readonly Pack[];
  /** All of them together, ml of oxygen. */
  readonly capacityMl: number;
  /** What they have to take up: oxygen times the safety factor, ml. */
  readonly neededMl: number;
}

/** Covers a volume formula that may be 12 % low, old absorbers and air dissolved in food; chosen. */
export const usualSafetyFactor = 1.5;

/**
 * The absorbers for a pouch, as people combine them: the fewest that suffice, and of those the least capacity, of one size
 * or of two ('300 + 500'). Never none: the least pouch of air still holds oxygen. Ratings are ml of oxygen, not of air.
 * @param oxygen ml of oxygen, 0 or more
 * @param ownedSizesMl ratings the household owns, ml of oxygen, each above 0
 * @param safetyFactor 1 or more, no unit
 * @throws Refusal 'no-absorbers' when none is owned, 'impossible-absorber', 'impossible-oxygen', 'impossible-safety'
 * @source aiche-air
 */
export function chooseAbsorber(
  oxygen: number,
  ownedSizesMl: readonly number[],
  safetyFactor = usualSafetyFactor,
): AbsorberChoice {
  between('impossible-oxygen', 'The oxygen', oxygen, 0, Infinity, 'ml');
  inRange('impossible-safety', 'absorberSafety', safetyFactor);
  for (const size of ownedSizesMl) above('impossible-absorber', 'An absorber', size, 0, 'ml');
  const sizes = ownedSizesMl.toSorted((a, b) => b - a);
  const [largest] = sizes;
  if (largest === undefined) {
    throw new Refusal('no-absorbers', 'No absorber size is set for this house, so none can be chosen.');
  }
  const neededMl = oxygen * safetyFactor;
  // 0.1 × 3 is a hair above 0.3 in binary; such a hair must not ask for a second absorber.
  const hair = neededMl * 1e-12;
  const fewest = Math.max(1, Math.ceil((neededMl - hair) / largest));
  let best: readonly Pack[] = [{ sizeMl: largest, count: fewest }];
  for (const big of sizes)
    for (const small of sizes.filter((size) => size <= big)) {
      const bigs = mixOf(big, small, fewest, neededMl - hair);
      if (bigs === undefined) continue;
      const packs = packsOf(big, bigs, small, fewest - bigs);
      if (capacityOf(packs) < capacityOf(best)) best = packs;
    }
  return { packs: best, capacityMl: capacityOf(best), neededMl };
}

/** How few of the larger size do, the rest being of the smaller; undefined where so many packs cannot. */
function mixOf(big: number, small: number, count: number, neededMl: number): number | undefined {
  if (big * count < neededMl) return undefined;
  if (big === small) return count;
  return Math.max(0, Math.ceil((neededMl - small * count) / (big - small)));
}

const packsOf = (big: number, bigs: number, small: number, smalls: number): Pack[] =>
  [
    { sizeMl: big, count: bigs },
    { sizeMl: small, count: smalls },
  ].filter(({ count }) => count > 0);

const capacityOf = (packs: readonly Pack[]): number =>
  packs.reduce((sum, { sizeMl, count }) => sum + sizeMl * count, 0);
