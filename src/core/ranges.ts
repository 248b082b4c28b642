import { between } from './within.ts';

/** What a figure may be, both ends allowed. */
export interface Range {
  /** The figure's name as a person says it. */
  readonly what: string;
  readonly least: number;
  readonly most: number;
  readonly unit: string;
  /** People say this figure so many times as large, in the unit given. */
  readonly saidTimes?: number;
}

/**
 * What a household may tell about itself, in the units the records keep; core, words, settings and store all hold to
 * these. Chosen: wide enough for any household, narrow enough to catch a slipped comma.
 */
export const ranges = {
  /** From below the lowest shore (about −430 m) to the highest lasting settlements and base camps. */
  altitudeM: { what: 'The altitude', least: -500, most: 5500, unit: 'm' },
  absorberSafety: { what: 'The safety factor', least: 1, most: 5, unit: '' },
  absorberMl: { what: 'An absorber', least: 10, most: 5000, unit: 'ml' },
  pouchMl: { what: 'What a pouch holds', least: 50, most: 20_000, unit: 'ml' },
  cupMl: { what: 'A cup', least: 100, most: 500, unit: 'ml' },
  trayTareG: { what: 'The empty tray', least: 1, most: 4000, unit: 'g' },
  traySideMm: { what: "A tray's longer side", least: 30, most: 2000, unit: 'mm' },
  loadLimitG: { what: "The dryer's load", least: 100, most: 200_000, unit: 'g' },
  dryerWatts: { what: "The dryer's power", least: 50, most: 10_000, unit: 'W' },
  storageC: { what: 'The storage temperature', least: -40, most: 50, unit: '°C' },
  coldWaterC: { what: 'Cold water', least: 0, most: 60, unit: '°C' },
  scaleG: { what: "The scale's step", least: 0.01, most: 100, unit: 'g' },
  steadyGapHours: { what: 'The gap between weighings', least: 0.25, most: 48, unit: 'h' },
  residualMoisture: { what: 'The moisture left in dry food', least: 0, most: 0.1, unit: '%', saidTimes: 100 },
  horizonDays: { what: 'The horizon', least: 1, most: 730, unit: 'days' },
} as const satisfies Record<string, Range>;

/**
 * Refuses what no household can have told.
 * @returns the value, unchanged
 * @throws Refusal with the given code
 */
export function inRange(code: string, name: keyof typeof ranges, value: number): number {
  const { what, least, most, unit, saidTimes = 1 }: Range = ranges[name];
  between(code, what, value * saidTimes, least * saidTimes, most * saidTimes, unit);
  return value;
}
