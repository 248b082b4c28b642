import { oxygenOfAirFraction } from './oxygen.ts';
import { above, between } from './within.ts';

/** What a pouch is made of: foil laminate, clear plastic, a glass jar, a tin. */
export const materials = ['foil', 'clear', 'glass', 'tin'] as const;
export type Material = (typeof materials)[number];

/** Oxygen through nylon/LDPE, ml·mil through 100 in² a day at 1 atm: 4 to 5 in print, the middle. @source biosystems-barrier */
export const clearMlMilPer100In2Day = 4.5;
/** A usual clear bag, mil. Chosen. */
const clearMil = 3;
/** Oxygen through PET/foil/LDPE, ml through 1 m² a day, its upper end. @source foil-maker */
const foilMlPerM2Day = 0.006;
const cm2Per100In2 = 645.16;

/**
 * Oxygen that passes a pouch's wall. Glass and tin let none through; their lids are not reckoned.
 * @param material of the wall
 * @param areaCm2 both sides together, cm², above 0
 * @param mil thickness of a clear bag, mil, above 0
 * @returns ml of oxygen a day, from air at sea level
 * @throws Refusal 'impossible-area' or 'impossible-thickness'
 * @source biosystems-barrier
 */
export function oxygenInMlPerDay(material: Material, areaCm2: number, mil = clearMil): number {
  above('impossible-area', "The pouch's area", areaCm2, 0, 'cm²');
  above('impossible-thickness', 'The thickness', mil, 0, 'mil');
  if (material === 'clear')
    return (clearMlMilPer100In2Day / mil) * (areaCm2 / cm2Per100In2) * oxygenOfAirFraction;
  return material === 'foil' ? (foilMlPerM2Day * areaCm2) / 10_000 : 0;
}

const daysAMonth = 365.25 / 12;

/**
 * How long an absorber keeps up with what passes the wall.
 * @param spareMl what it can still take up once the pouch's own oxygen is gone, ml, 0 or more
 * @returns months; Infinity where nothing passes
 * @throws Refusal 'impossible-oxygen' or as `oxygenInMlPerDay`
 */
export function barrierMonths(spareMl: number, material: Material, areaCm2: number): number {
  between('impossible-oxygen', 'What an absorber can still take up', spareMl, 0, Infinity, 'ml');
  return spareMl / oxygenInMlPerDay(material, areaCm2) / daysAMonth;
}

/** Both sides of a pouch of which only the volume is known, cm²: as of a flat one of 20 x 30 cm. Chosen. */
export function areaOfVolumeCm2(volumeMl: number): number {
  return 8 * above('impossible-pouch', "The pouch's volume", volumeMl, 0, 'ml') ** (2 / 3);
}
