import { type CampGood, goodsOf } from './camp.ts';
import { perhaps } from './contents.ts';
import type { Recipe, RecipeLine } from './records.ts';
import { type Per100, type Totals, totalsOf } from './solids.ts';
import type { Ingredient } from './verdict.ts';

/** The composition of a food by its number; undefined when the table has none. */
export type Composer = (ndb: string) => Per100 | undefined;

/** A recipe in figures: what is in the whole pot. */
export interface RecipeFacts {
  /** Of all weighed lines that go into the pot. */
  readonly totals: Totals;
  /** What is eaten: the pot, and what is added at camp. */
  readonly eaten: Totals;
  /** Added at camp, to all of it. */
  readonly camp: readonly CampGood[];
  /** Sodium of each line, mg, in the recipe's order; 0 where it is not known. */
  readonly sodiumOf: readonly number[];
  /** Lines not understood: counted as zero, so every figure is too low and allergens are unknown. */
  readonly unresolved: readonly RecipeLine[];
  /** Lines without an amount: counted as zero and named. */
  readonly uncounted: readonly RecipeLine[];
  /** Sodium is at least what the sums say: it stands on a line of salty or unknown food that was not weighed. */
  readonly isSodiumLeast: boolean;
  readonly contents: readonly Ingredient[];
  /** The pot as weighed, else the sum of the lines; g. */
  readonly finishedG: number;
  /** Water boiled away in the kitchen, g; below zero: taken up beyond the lines. 0 until the pot is weighed. */
  readonly boiledAwayG: number;
}

/** A line as its verdicts see it: the food it counts, then what it only names. */
export const ingredientsOf = ({ called, contents, ndb, named }: RecipeLine): Ingredient[] => [
  { ingredient: called, contents, ndb },
  ...named.map((one) => ({ ingredient: one.called, contents: one.contents })),
];

/** All that verdicts on a recipe rest on; what only headings and method name may be in it. */
export const recipeIngredients = ({ lines, mentions }: Pick<Recipe, 'lines' | 'mentions'>): Ingredient[] => [
  ...lines.flatMap(ingredientsOf),
  ...mentions.map(({ called, contents }) => ({
    ingredient: `${called} in the method`,
    contents: perhaps(contents),
  })),
];

/** A food with no more sodium than this, mg in 100 g, changes little, however much of it is in. Chosen: parsley has 56, salted butter 643. */
const unsaltyMg = 60;

/** Whether a line may bring sodium that is not in the sums. */
export function isSaltUnweighed({ state, ndb }: RecipeLine, composer: Composer): boolean {
  if (state === 'weighed') return false;
  const sodiumMg = state === 'asked' || ndb === null ? undefined : composer(ndb)?.sodiumMg;
  return sodiumMg == null || sodiumMg > unsaltyMg;
}

export function recipeFacts(recipe: Recipe, composer: Composer): RecipeFacts {
  const parts = recipe.lines.flatMap((line) => {
    const per100 = line.ndb === null ? undefined : composer(line.ndb);
    return line.state === 'weighed' && line.grams !== null && per100
      ? [{ grams: line.grams, food: line.called, per100, camp: line.camp }]
      : [];
  });
  const totals = totalsOf(parts.filter(({ camp }) => camp === null));
  const eaten = parts.some(({ camp }) => camp !== null) ? totalsOf(parts) : totals;
  const sodiumOf = recipe.lines.map((line) => {
    const per100 = line.ndb === null ? undefined : composer(line.ndb);
    return ((per100?.sodiumMg ?? 0) * (line.grams ?? 0)) / 100;
  });
  return {
    totals,
    eaten,
    camp: goodsOf(recipe.lines),
    sodiumOf,
    unresolved: recipe.lines.filter((line) => line.state === 'asked'),
    uncounted: recipe.lines.filter((line) => line.state === 'uncounted'),
    isSodiumLeast:
      eaten.unknown.some(({ nutrient }) => nutrient === 'sodiumMg') ||
      recipe.lines.some((line) => isSaltUnweighed(line, composer)),
    contents: recipeIngredients(recipe),
    finishedG: recipe.potG ?? totals.massG,
    boiledAwayG: recipe.potG === null ? 0 : totals.massG - recipe.potG,
  };
}
