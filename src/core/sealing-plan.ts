import { bestBy, bestByDay } from './bestby.ts';
import { pressurePa, seaLevelPa } from './boiling.ts';
import { type AbsorberChoice, chooseAbsorber, freeAirMl, oxygenMl, particleDensityGPerMl } from './oxygen.ts';
import type { Totals } from './solids.ts';

/** What goes into one pouch beside the food, and how long it is planned to keep. */
export interface SealingPlan {
  readonly volumeMl: number | null;
  /** Oxygen in the free air, ml; null while the pouch's size is unknown. */
  readonly oxygenMl: number | null;
  readonly absorber: AbsorberChoice | null;
  /** The household seals without one. */
  readonly noAbsorber: boolean;
  /** ISO day; null for food that was not shown to be dry, which gets none. */
  readonly bestByOn: string | null;
  readonly fatFraction: number;
  readonly storageC: number;
}

/** How a pouch is sealed and kept. */
export interface SealingTold {
  readonly volumeMl: number | null;
  readonly withAbsorber: boolean;
  /** Shown to be dry: anything else gets neither absorber nor date. */
  readonly isDry: boolean;
  /** Absorber sizes at hand, ml of oxygen. */
  readonly absorbersMl: readonly number[];
  readonly absorberSafety: number;
  readonly altitudeM: number;
  readonly storageC: number;
  /** ISO day. */
  readonly sealedOn: string;
}

/** Of dry food whose composition nobody knows, g/ml: between starch and protein. Chosen. */
const unknownDensityGPerMl = 1.45;

/** Fat of the dry matter, 0 to 1; decides the best-by policy. Undefined when no solids are known. */
export function fatOfSolids(totals: Pick<Totals, 'fatG' | 'solidsG'>): number | undefined {
  return totals.solidsG > 0 ? Math.min(1, totals.fatG / totals.solidsG) : undefined;
}

/**
 * @param foodG dry food in the pouch, g
 * @param batch as it came off: g, and what lay on the trays
 * @throws Refusal 'food-does-not-fit' when the food is larger than the pouch
 * @source choi-okos-1986
 */
export function sealingPlan(
  foodG: number,
  batch: { readonly dryG: number; readonly totals: Totals },
  told: SealingTold,
): SealingPlan {
  const { volumeMl, isDry } = told;
  // Without a figure for fat the least keeping row of the policy holds.
  const fatFraction = fatOfSolids(batch.totals) ?? 1;
  const airMl = volumeMl === null ? null : freeAirMl(volumeMl, foodG, densityGPerMl(batch));
  const oxygen = airMl === null ? null : oxygenMl(airMl, pressurePa(told.altitudeM) / seaLevelPa);
  const mayChoose = isDry && told.withAbsorber && oxygen !== null && told.absorbersMl.length > 0;
  return {
    volumeMl,
    oxygenMl: oxygen,
    absorber: mayChoose ? chooseAbsorber(oxygen, told.absorbersMl, told.absorberSafety) : null,
    noAbsorber: !told.withAbsorber,
    bestByOn: isDry
      ? bestByDay(told.sealedOn, bestBy(fatFraction, told.storageC, told.withAbsorber).months)
      : null,
    fatFraction,
    storageC: told.storageC,
  };
}

function densityGPerMl({ dryG, totals }: { readonly dryG: number; readonly totals: Totals }): number {
  const { waterG, proteinG, fatG, carbohydrateG, fibreG, ashG, solidsG } = totals;
  if (!(solidsG > 0 && waterG >= 0)) return unknownDensityGPerMl;
  return particleDensityGPerMl({
    waterG: Math.max(0, dryG - solidsG),
    proteinG,
    fatG,
    carbohydrateG,
    fibreG,
    ashG,
  });
}
