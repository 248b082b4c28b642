import { Refusal } from './refusal.ts';
import { above, between, figure } from './within.ts';

/** Specific heat of water between 0 and 100 °C, kJ/(kg K). @source water-heat */
export const waterHeatKJPerKgK = 4.19;
/** Heat that melts ice at 0 °C, kJ/kg. @source water-heat */
export const fusionKJPerKg = 333.6;
/** Specific heat of ice near 0 °C, kJ/(kg K); from memory. */
const iceHeatKJPerKgK = 2.1;

/**
 * Lower heating values, MJ/kg: a pot does not condense the steam, so the gross values some pages print are too high.
 * The canister mix is chosen as the lowest of its parts, isobutane.
 * @source lower-heating-values
 */
export const LHV = {
  'canister gas': 45.6,
  propane: 46.36,
  butane: 45.72,
  isobutane: 45.6,
  'white gas': 44.43,
  alcohol: 26.945,
  methanol: 19.92,
} as const;

export type Fuel = keyof typeof LHV;

/**
 * Share of the fuel's heat that reaches the water on a small camping stove, until a canister was weighed.
 * Common practice, no source: 0.30 without a heat exchanger, 0.65 with one and sheltered. Plans use the low middle.
 */
export const usualEfficiency = { low: 0.3, planned: 0.4, high: 0.65 } as const;

/**
 * Heat that brings water to the boil.
 * @param waterMl ml, 0 or more (1 ml taken as 1 g)
 * @param startC °C, 0 to boilC
 * @param boilC °C, at most 110
 * @returns kJ
 * @throws Refusal 'impossible-water' or 'impossible-temperature'
 * @source water-heat
 */
export function heatToBoilKJ(waterMl: number, startC: number, boilC: number): number {
  between('impossible-water', 'The water', waterMl, 0, Infinity, 'ml');
  between('impossible-temperature', 'The boiling point', boilC, 0, 110, '°C');
  between('impossible-temperature', "The water's temperature", startC, 0, boilC, '°C');
  return (waterMl / 1000) * waterHeatKJPerKgK * (boilC - startC);
}

/**
 * Heat that melts snow and brings it to the boil.
 * @param snowG g of snow or ice, which gives as many ml of water
 * @param boilC °C
 * @param snowC the snow's temperature, °C, −60 to 0
 * @returns kJ
 * @throws Refusal 'impossible-water' or 'impossible-temperature'
 * @source water-heat
 */
export function heatFromSnowKJ(snowG: number, boilC: number, snowC = 0): number {
  between('impossible-temperature', "The snow's temperature", snowC, -60, 0, '°C');
  const meltKJ = (snowG / 1000) * (fusionKJPerKg - iceHeatKJPerKgK * snowC);
  return meltKJ + heatToBoilKJ(snowG, 0, boilC);
}

/** How long food dried raw is kept at a simmer, min, and what that takes, kW into the pot. Chosen, no source. */
export const simmerMinutes = 10;
const simmerKW = 0.3;

/**
 * Heat besides the water's for a dish that was dried raw and is cooked in a pot: the food itself to the boil, counted
 * as if it were water, which is more than it takes, and a simmer.
 * @param foodG dry food, g, 0 or more
 * @param startC °C, 0 to boilC
 * @param boilC °C, at most 110
 * @returns kJ
 * @throws Refusal 'impossible-water' or 'impossible-temperature'
 * @source water-heat
 */
export function heatToCookKJ(foodG: number, startC: number, boilC: number): number {
  return heatToBoilKJ(foodG, startC, boilC) + simmerKW * simmerMinutes * 60;
}

/**
 * Fuel that gives so much heat to the water.
 * @param heatKJ kJ, 0 or more
 * @param efficiencyFraction share of the heat that reaches the water, above 0 to 1
 * @param lhvMJPerKg MJ/kg, above 0 (kJ over MJ/kg is g)
 * @param margin 1 or more; 1.2 carries a fifth besides
 * @returns g
 * @throws Refusal 'impossible-heat', 'impossible-efficiency', 'impossible-fuel' or 'impossible-margin'
 * @source lower-heating-values
 */
export function fuelG(heatKJ: number, efficiencyFraction: number, lhvMJPerKg: number, margin = 1): number {
  between('impossible-heat', 'The heat', heatKJ, 0, Infinity, 'kJ');
  above('impossible-efficiency', "The stove's efficiency", efficiencyFraction, 0, '');
  between('impossible-efficiency', "The stove's efficiency", efficiencyFraction, 0, 1, '');
  above('impossible-fuel', 'The heating value', lhvMJPerKg, 0, 'MJ/kg');
  between('impossible-margin', 'The margin', margin, 1, 10, '');
  return (heatKJ / (efficiencyFraction * lhvMJPerKg)) * margin;
}

/**
 * Lower heating value from a gross molar one: less the heat of the water that leaves as steam.
 * @param grossKJPerMol enthalpy of combustion, kJ/mol
 * @param waterMol mol of water per mol of fuel
 * @param molarMassG g/mol
 * @returns MJ/kg
 * @throws Refusal 'impossible-fuel'
 * @source lower-heating-values
 */
export function lowerHeatingValue(grossKJPerMol: number, waterMol: number, molarMassG: number): number {
  above('impossible-fuel', 'The molar mass', molarMassG, 0, 'g/mol');
  return (grossKJPerMol - waterMol * 44.004) / molarMassG;
}

/** One canister or bottle weighed before and after boiling a known amount of water. */
export interface StoveWeighing {
  readonly beforeG: number;
  readonly afterG: number;
  readonly waterMl: number;
  readonly startC: number;
  readonly boilC: number;
  readonly lhvMJPerKg: number;
}

/**
 * The stove's efficiency as the household measured it: all heat given over all heat burnt.
 * @returns the fraction and from how many weighings; with none, the planned figure and the range in use
 * @throws Refusal 'impossible-canister' when nothing was burnt or more heat arrived than the fuel holds
 * @source lower-heating-values
 */
export function learntEfficiency(weighings: readonly StoveWeighing[]): {
  fraction: number;
  weighings: number;
  lowFraction: number;
  highFraction: number;
} {
  if (weighings.length === 0) {
    const { low, planned, high } = usualEfficiency;
    return { fraction: planned, weighings: 0, lowFraction: low, highFraction: high };
  }
  let givenKJ = 0;
  let burntKJ = 0;
  const each: number[] = [];
  for (const { beforeG, afterG, waterMl, startC, boilC, lhvMJPerKg } of weighings) {
    const burnt = above('impossible-canister', 'The fuel burnt', beforeG - afterG, 0, 'g') * lhvMJPerKg;
    const given = heatToBoilKJ(waterMl, startC, boilC);
    if (!(given > 0 && given <= burnt)) {
      throw new Refusal(
        'impossible-canister',
        `${figure(beforeG - afterG)} g of fuel give ${figure(burnt)} kJ; the water took ${figure(given)} kJ.`,
      );
    }
    givenKJ += given;
    burntKJ += burnt;
    each.push(given / burnt);
  }
  return {
    fraction: givenKJ / burntKJ,
    weighings: weighings.length,
    lowFraction: Math.min(...each),
    highFraction: Math.max(...each),
  };
}
