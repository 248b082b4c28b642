import type { Contents } from '#core/allergens.ts';
import type { Camp } from '#core/records.ts';
import type { Named } from './account.ts';
import type { Choice } from './choices.ts';
import type { Food } from './food.ts';

export interface LineResult {
  readonly typed: string;
  /** 'uncounted': no amount, counted as zero and named. 'asked': a person must settle something first. */
  readonly is: 'weighed' | 'uncounted' | 'asked' | 'heading';
  readonly food: Food | null;
  /** Short kitchen name: 'red lentils, dry'. */
  readonly called: string;
  readonly grams: number | null;
  /** Of all that the line names, with whatever a word may bring that was not understood; null: nothing is known. */
  readonly contents: Contents | null;
  /** The same of the counted food alone, what is named left out. */
  readonly own: Contents | null;
  /** Foods that the line names beside the one it counts: their contents are in, their grams are not. */
  readonly named: readonly Named[];
  /** Words that are no food and no manner that is known here: they may bring anything. */
  readonly unknown: readonly string[];
  readonly remarks: readonly string[];
  readonly question: string | null;
  readonly choices: readonly Choice[];
  /** 0 … 1, how much of the typed words the food accounts for. */
  readonly confidence: number;
  /** 'word': the line is counted, but a word of it was not understood. */
  readonly wanted: 'food' | 'amount' | 'number' | 'word' | null;
  /** Where the line says it is added; null where it does not say. */
  readonly camp: Camp | 'pot' | null;
}

/** A result about which nothing is known yet. */
export const blank = {
  food: null,
  called: '',
  grams: null,
  contents: null,
  own: null,
  named: [],
  unknown: [],
  remarks: [],
  question: null,
  choices: [],
  confidence: 0,
  wanted: null,
  camp: null,
} as const;
