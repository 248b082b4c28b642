import type { Pack } from './absorber-packs.ts';
import type { Contents } from './allergens.ts';
import type { Witness } from './dry-verdict.ts';
import type { DryerEvent } from './running.ts';
import type { Finding } from './seal-check.ts';
import type { RestEvent } from './rest.ts';

/** A food that words name without counting it: behind 'with' in a line, in a heading, in the method. */
export interface NamedFood {
  readonly called: string;
  readonly contents: Contents;
}

/** Added to a portion when it is eaten: told for the whole recipe, or for each serving. */
export type Camp = 'all' | 'each';

/** One ingredient line of a recipe as it was understood. */
export interface RecipeLine {
  readonly typed: string;
  /** 'uncounted': no amount was given, counted as zero. 'asked': not understood, counted as zero, makes allergens unknown. */
  readonly state: 'weighed' | 'uncounted' | 'asked';
  readonly called: string;
  readonly ndb: string | null;
  readonly grams: number | null;
  /** Of the counted food; with what a word may bring that was not understood. */
  readonly contents: Contents | null;
  /** What else the line names: in the verdicts, not in the figures. */
  readonly named: readonly NamedFood[];
  readonly remarks: readonly string[];
  /** Open for a person: which food, how much, or what a word means; a weighed line may have one too. */
  readonly question: string | null;
  /** The heading it stands under, as typed; null under none. */
  readonly section: string | null;
  /** Never in the pot, but added to a portion when it is eaten; its grams are of the whole recipe all the same. */
  readonly camp: Camp | null;
}

export interface Recipe {
  readonly id: number;
  readonly name: string;
  readonly servings: number;
  /** Weight of the finished pot, g; null until weighed. */
  readonly potG: number | null;
  readonly method: string;
  /** How it is eaten, where somebody said so: as it is, or with water; null: nobody did. */
  readonly eaten: 'dry' | 'soaked' | null;
  /** Foods that headings and method name and no line accounts for; until a person settles them they may be in it. */
  readonly mentions: readonly NamedFood[];
  readonly lines: readonly RecipeLine[];
}

export interface Tray {
  readonly no: number;
  readonly tareG: number;
  readonly wetG: number;
}

/** One tray, or with tray 0 the whole batch, weighed during drying. */
export interface Weighing {
  readonly trayNo: number;
  readonly atMs: number;
  readonly netG: number;
}

export interface Batch {
  readonly id: number;
  readonly no: number;
  readonly recipe: Recipe;
  /** How often the recipe was cooked at once. */
  readonly factor: number;
  readonly potG: number | null;
  readonly loadedAtMs: number;
  /** Dried uncooked: to be cooked before eating. */
  readonly isRaw: boolean;
  readonly trays: readonly Tray[];
  readonly weighings: readonly Weighing[];
  /** Readings of a hygrometer and people's words, in order of time. */
  readonly witnesses: readonly Witness[];
  /** What happened to it in the dryer, in order of time. */
  readonly events: readonly DryerEvent[];
  /** What happened to the part that is not sealed, in order of time. */
  readonly rest: readonly RestEvent[];
  /** What its pouches are filled from; null for what was dried. The recipe of a mixture is of one pouch. */
  readonly mix: Mix | null;
}

/** What one pouch of a mixture holds. */
export interface Mix {
  readonly parts: readonly MixPart[];
  /** From the cupboard, as read: the recipe's first lines. */
  readonly goods: readonly RecipeLine[];
  /** Of what was bought and not filled here. */
  readonly bought: Bought | null;
}

/** Of one batch, in each pouch of a mixture. */
export interface MixPart {
  /** The batch's number. */
  readonly batch: number;
  readonly meal: string;
  readonly eachG: number;
  /** What so much weighed before it was dried, g. */
  readonly wetG: number;
}

/** Food that was bought ready: a piece is a pouch of it. */
export interface Bought {
  /** To be poured on a piece, ml; 0: eaten as it is. */
  readonly waterMl: number;
}

/** A pouch as it is named: 'B4-2', 'M5-1' where it is filled from several things, 'S6-1' for a piece that was bought. */
export interface Code {
  readonly batch: number;
  readonly no: number;
  readonly isMixed?: boolean;
  readonly isBought?: boolean;
}

export interface Pouch extends Code {
  readonly id: number;
  readonly isMixed: boolean;
  readonly isBought: boolean;
  readonly meal: string;
  /** In it now, g: what was eaten of an opened pouch is taken off. */
  readonly dryG: number;
  /** What went into it, g. */
  readonly sealedG: number;
  readonly sealedAtMs: number;
  /** Fit for shelf and trips: shown to be dry, and sound by what was found last. */
  readonly checked: boolean;
  /** Shown to be dry when it was sealed, and nothing known now contradicts it. */
  readonly shownDry: boolean;
  /** Sealed as dry, perhaps with an absorber, and contradicted since. */
  readonly foundWet: boolean;
  /** What it was found to be last; null while nobody looked. */
  readonly found: Finding | null;
  readonly foundAtMs: number | null;
  readonly volumeMl: number | null;
  /** Sealed in; empty: none. */
  readonly absorbers: readonly Pack[];
  /** ISO day; null for an unchecked pouch, which gets none. */
  readonly bestByOn: string | null;
  readonly state: 'stock' | 'used' | 'discarded';
  readonly goneAtMs: number | null;
  readonly goneWhy: string | null;
}

export type EaterKind = 'adult' | 'child' | 'guest';

/** Anyone who eats. */
export interface Eater {
  readonly id: number;
  readonly name: string;
  readonly kind: EaterKind;
  /** The member who this is in the chat; null for children and guests who do not write. */
  readonly member: number | null;
  readonly ageYears: number | null;
  readonly sex: 'male' | 'female' | null;
  readonly activity: 'sedentary' | 'moderately active' | 'active' | null;
  /** Servings this eater takes of one; learnt changes are in it. */
  readonly portion: number;
  /** The eater's own limits; null where the published figure for the age holds. */
  readonly sodiumMg: number | null;
  readonly energyKcal: number | null;
  readonly isGone: boolean;
  readonly never: readonly string[];
  /** Of those, what nobody at the same meal eats either. */
  readonly apart: readonly string[];
  /** Of those, the food alone though it stands for more: butter and no other milk. */
  readonly exact: readonly string[];
  readonly dislikes: readonly string[];
}

export type SlotMeal = 'breakfast' | 'lunch' | 'dinner';

export const slotMeals = ['breakfast', 'lunch', 'dinner'] as const satisfies readonly SlotMeal[];

/** 'kept': stays as it is planned; 'spare': taken along for a day more than planned. */
export type SlotMark = 'kept' | 'spare';

/** One meal of one day of a trip. */
export interface Slot {
  readonly id: number;
  readonly onDay: string;
  readonly meal: SlotMeal;
  /** Eaters' ids. */
  readonly eaters: readonly number[];
  readonly marks: readonly SlotMark[];
}

/** How hard a day of a trip is. */
export type Effort = 'rest' | 'walk' | 'hard';

export interface Trip {
  readonly id: number;
  readonly place: string;
  readonly startsOn: string;
  readonly endsOn: string;
  readonly altitudeM: number | null;
  readonly startWaterC: number;
  readonly fromSnow: boolean;
  readonly isOver: boolean;
  /** By day; days nobody spoke of are walked. */
  readonly efforts: ReadonlyMap<string, Effort>;
  /** By day, then breakfast, lunch, dinner. */
  readonly slots: readonly Slot[];
}

export interface Wish {
  readonly id: number;
  readonly eater: number;
  readonly mealKey: string;
  /** null: any time on the trip. */
  readonly slot: number | null;
  readonly byMember: number;
}

/** A pouch held for a slot of a trip, and what became of it. */
export interface HeldPouch {
  readonly id: number;
  readonly trip: number;
  readonly slot: number;
  readonly pouch: number;
  readonly eaters: readonly number[];
  readonly packed: boolean;
  readonly came: 'eaten' | 'returned' | 'lost' | null;
}
