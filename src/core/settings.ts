import { commonGrids, type LabelGrid } from './label-grid.ts';
import type { PackCounted } from './absorber-packs.ts';
import type { NamedPouchKind, PouchKind } from './pouch-kind.ts';
import { usualSafetyFactor } from './oxygen.ts';
import { usCupMl } from './units.ts';

/** What a household has told about itself, one value at a time; defaults until then. */
export interface Settings {
  /** Where pouches are sealed and, unless a trip says otherwise, where water is boiled; m. */
  readonly altitudeM: number;
  /** IANA name of the household's time zone. */
  readonly zone: string;
  /** Weights in answers: grams, or ounces beside them. */
  readonly units: 'grams' | 'ounces';
  readonly cupMl: number;
  /** The dryer's trays; null until told. */
  readonly dryer: {
    readonly trays: number;
    readonly widthMm: number | null;
    readonly lengthMm: number | null;
  } | null;
  /** Most wet food the dryer takes in a load, g; null until told. */
  readonly loadLimitG: number | null;
  /** Power the dryer takes by its plate, W; null until told. */
  readonly dryerWatts: number | null;
  /** Empty trays, g, in their order; one value holds for all. */
  readonly trayTaresG: readonly number[];
  /** Where pouches are kept, °C. */
  readonly storageC: number;
  /** Absorber sizes at hand, ml of oxygen. */
  readonly absorbersMl: readonly number[];
  /** What was counted of them, and when their bags were opened. */
  readonly absorberPacks: readonly PackCounted[];
  readonly absorberSafety: number;
  /** The usual pouch. */
  readonly pouch: PouchKind | null;
  /** Others, by their names. */
  readonly pouchKinds: readonly NamedPouchKind[];
  /** The scale's smallest step, g. */
  readonly scaleG: number;
  /** Weighings closer than this do not show that drying has stopped, h. */
  readonly steadyGapHours: number;
  /** Water expected to remain in dry food, share of its weight. */
  readonly residualMoisture: number;
  /** The sheets of labels at hand. */
  readonly labels: LabelGrid;
  /** Where the first label of a sheet starts as this household's printer feeds it; null: as the sheet says. */
  readonly labelMargins: { readonly leftMm: number; readonly topMm: number } | null;
  /** Which reminders the bot posts. */
  readonly remindWeigh: boolean;
  readonly remindSeal: boolean;
  readonly remindBestBy: boolean;
  readonly remindTrip: boolean;
  /** How long before its best-by a pouch is named in the monthly reminder, days. */
  readonly horizonDays: number;
}

export const defaultSettings: Settings = {
  altitudeM: 0,
  zone: 'UTC',
  units: 'grams',
  cupMl: usCupMl,
  dryer: null,
  loadLimitG: null,
  dryerWatts: null,
  trayTaresG: [],
  storageC: 20,
  absorbersMl: [],
  absorberPacks: [],
  absorberSafety: usualSafetyFactor,
  pouch: null,
  pouchKinds: [],
  scaleG: 1,
  steadyGapHours: 2,
  // Published freeze-dried entries stand at 2 g per 100 g (SR28); 3 % leaves room for a home dryer. Chosen.
  residualMoisture: 0.03,
  remindWeigh: true,
  remindSeal: true,
  remindBestBy: true,
  remindTrip: true,
  horizonDays: 60,
  labels: commonGrids[0]!,
  labelMargins: null,
};
