import type { LabelGrid, Paper } from '#core/label-grid.ts';

/** What a pouch's label says; every figure already in words. */
export interface LabelFacts {
  readonly code: string;
  readonly meal: string;
  /** null: eaten dry. */
  readonly water: string | null;
  readonly soak: string;
  readonly dry: string;
  readonly servings: string;
  readonly sealed: string;
  readonly bestBy: string | null;
  /** Short, loud: 'UNCHECKED …', 'RAW …'. */
  readonly cautions: readonly string[];
  /** Added when it is eaten; null: nothing. */
  readonly camp: string | null;
  readonly contents: readonly string[];
  readonly notFor: readonly string[];
  /** Text of the two-dimensional code. */
  readonly scan: string;
  /** To be read in the dusk: what is done with it at camp, large, and little else. */
  readonly isForCamp?: true;
}

export interface LabelSheet {
  readonly grid: LabelGrid;
  /** The first free label of a part-used sheet, counted from 1 along the rows. */
  readonly from: number;
  readonly labels: readonly LabelFacts[];
}

export interface PaperRow {
  readonly code: string;
  readonly meal: string;
  readonly figures: string;
  readonly eaters: string;
  readonly isPacked: boolean;
}

/** A trip's sheet for the cupboard door. */
export interface TripPaper {
  readonly paper: Paper;
  readonly title: string;
  readonly subtitle: string;
  readonly days: readonly {
    readonly day: string;
    readonly slots: readonly {
      readonly meal: string;
      readonly about: string;
      readonly rows: readonly PaperRow[];
    }[];
  }[];
  readonly people: readonly { readonly who: string; readonly text: string }[];
  readonly totals: readonly string[];
  readonly cautions: readonly string[];
  readonly foot: string;
}

/** Weighings of one tray, or of the whole batch. */
export interface DryingSeries {
  readonly called: string;
  /** Hours since loading and g; the first is the wet weight. */
  readonly points: readonly { readonly hours: number; readonly g: number }[];
  /** The largest change that still counts as none, g. */
  readonly thresholdG: number;
  readonly expectedG: number | null;
}

export interface DryingFacts {
  readonly is: 'drying';
  readonly title: string;
  readonly caption: readonly string[];
  readonly series: readonly DryingSeries[];
  /** When it should be dry, h since loading; null when it is, or when nothing can be said. */
  readonly ahead: {
    readonly readyHours: number;
    readonly earliestHours: number;
    readonly latestHours: number;
  } | null;
}

export interface StockFacts {
  readonly is: 'stock';
  readonly title: string;
  readonly caption: readonly string[];
  /** Best-by months, ISO 'yyyy-MM', in order; null for pouches that have none. */
  readonly cells: readonly {
    readonly meal: string;
    readonly month: string | null;
    readonly pouches: number;
  }[];
  readonly nowMonth: string;
}

export interface TripFacts {
  readonly is: 'trip';
  readonly title: string;
  readonly caption: readonly string[];
  readonly rows: readonly {
    readonly who: string;
    readonly day: string;
    readonly sodiumMg: number;
    readonly kcal: number;
    readonly sodiumLimitMg: number | null;
    readonly kcalNeed: number | null;
  }[];
}

export interface SeasonFacts {
  readonly is: 'season';
  readonly title: string;
  readonly caption: readonly string[];
  /** In pouches. */
  readonly rows: readonly {
    readonly meal: string;
    readonly sealed: number;
    readonly eaten: number;
    readonly left: number;
    readonly wasted: number;
  }[];
}

export type ChartFacts = DryingFacts | StockFacts | TripFacts | SeasonFacts;
