import { isRigid } from './pouch-kind.ts';
import type { Material } from './barrier.ts';
import { bestByDay, type Kept, keepsMonths } from './bestby.ts';
import { pressurePa, seaLevelPa } from './boiling.ts';
import {
  type AbsorberChoice,
  chooseAbsorber,
  freeAirMl,
  isTooFull,
  oxygenMl,
  particleDensityGPerMl,
  pressedVolumeMl,
} from './oxygen.ts';
import type { Totals } from './solids.ts';

/** What goes into one pouch beside the food, and how long it is planned to keep. */
export interface SealingPlan {
  /** The room around the food whose oxygen is taken up, ml: pressed flat, measured, or a jar's own. */
  readonly volumeMl: number;
  /** Oxygen in the free air, ml. */
  readonly oxygenMl: number;
  /** Where the room comes from. */
  readonly room: 'pressed' | 'measured' | 'rigid';
  /** Food and water leave no room to stir. */
  readonly isTooFull: boolean;
  readonly absorber: AbsorberChoice | null;
  /** The household seals without one. */
  readonly noAbsorber: boolean;
  /** ISO day; null for food that was not shown to be dry, which gets none. */
  readonly bestByOn: string | null;
  /** What the date rests on. */
  readonly kept: Kept;
  readonly storageC: number;
}

/** How a pouch is sealed and kept. */
export interface SealingTold {
  /** The pouch's or jar's greatest volume, ml; null when nobody said. */
  readonly pouchMl: number | null;
  /** The sealed pouch measured in water, ml. */
  readonly measuredMl: number | null;
  /** What it is made of; null when nobody said. Nothing is pressed out of a jar or a tin. */
  readonly material: Material | null;
  /** Both sides together, cm²; null when its size is not known. */
  readonly areaCm2: number | null;
  /** A hygrometer in a jar with the food showed it dry. */
  readonly isMeasuredDry: boolean;
  /** To be poured on it, ml. */
  readonly waterMl: number;
  readonly withAbsorber: boolean;
  /** Shown to be dry: anything else gets neither absorber nor date. */
  readonly isDry: boolean;
  /** Absorber sizes at hand, ml of oxygen. */
  readonly absorbersMl: readonly number[];
  readonly absorberSafety: number;
  readonly altitudeM: number;
  readonly storageC: number;
  /** Fat of the dry matter of what keeps least in a mixture, 0 to 1; null: of the whole. */
  readonly fatFraction: number | null;
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
 * A pouch of a batch: the air in it, the absorber for its oxygen, how long it is planned to keep, and whether its water fits.
 * @param foodG dry food in the pouch, g
 * @param batch as it came off: g, and what lay on the trays
 * @throws Refusal 'food-does-not-fit' when the food is larger than the pouch
 * @source choi-okos-1986
 */
export function sealingPlan(
  foodG: number,
  batch: { readonly wetG: number; readonly dryG: number; readonly totals: Totals },
  told: SealingTold,
): SealingPlan {
  const { pouchMl, isDry } = told;
  // Without a figure for fat the least keeping row of the policy holds.
  const fatFraction = told.fatFraction ?? fatOfSolids(batch.totals) ?? 1;
  const density = densityGPerMl(batch);
  // Refuses food that is larger than the pouch, pressed or not.
  if (pouchMl !== null) freeAirMl(pouchMl, foodG, density);
  const { volumeMl, room } = roomAround(foodG, batch, told);
  const airMl = freeAirMl(volumeMl, foodG, density);
  const oxygen = oxygenMl(airMl, pressurePa(told.altitudeM) / seaLevelPa);
  const mayChoose = isDry && told.withAbsorber && told.absorbersMl.length > 0;
  const absorber = mayChoose ? chooseAbsorber(oxygen, told.absorbersMl, told.absorberSafety) : null;
  const kept: Kept = {
    material: told.material,
    areaCm2: told.areaCm2,
    isMeasuredDry: told.isMeasuredDry,
    fatFraction,
    absorber: told.withAbsorber,
    spareMl: absorber === null ? null : Math.max(0, absorber.capacityMl - oxygen),
  };
  return {
    volumeMl,
    room,
    isTooFull:
      pouchMl !== null &&
      !isRigid(told.material) &&
      isTooFull(pressedOf(foodG, batch), told.waterMl, pouchMl),
    oxygenMl: oxygen,
    absorber,
    noAbsorber: !told.withAbsorber,
    bestByOn: isDry ? bestByDay(told.sealedOn, keepsMonths(kept, told.storageC)) : null,
    kept,
    storageC: told.storageC,
  };
}

const pressedOf = (foodG: number, { wetG, dryG }: { readonly wetG: number; readonly dryG: number }) =>
  pressedVolumeMl((foodG * wetG) / dryG);

/** The room whose oxygen counts: as measured, else a jar's own, else the food's, never more than the pouch can hold. */
function roomAround(
  foodG: number,
  batch: { readonly wetG: number; readonly dryG: number },
  { measuredMl, material, pouchMl }: SealingTold,
): Pick<SealingPlan, 'volumeMl' | 'room'> {
  if (measuredMl !== null) return { volumeMl: measuredMl, room: 'measured' };
  if (isRigid(material) && pouchMl !== null) return { volumeMl: pouchMl, room: 'rigid' };
  return { volumeMl: Math.min(pressedOf(foodG, batch), pouchMl ?? Infinity), room: 'pressed' };
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
