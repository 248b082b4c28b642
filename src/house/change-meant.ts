import type { Recipe } from '#core/records.ts';
import { Refusal } from '#core/refusal.ts';
import { type Names, takeMeal } from '#words/parts.ts';
import { Ambiguous, Reading } from '#words/reading.ts';
import { changesTyped, type RecipeChange } from '#words/recipe-changes.ts';
import { nameKey } from './figures.ts';
import type { House } from './house.ts';
import {
  addEach,
  addLines,
  type Changed,
  changeLine,
  eatOtherwise,
  moveLine,
  takeLineOut,
} from './recipe-changes.ts';
import { changeHeadings } from './recipe-sections.ts';
import { renameRecipe } from './recipe-names.ts';

export interface ChangeMeant {
  readonly change: RecipeChange;
  /** The recipe's name as recorded. */
  readonly name: string;
  readonly remarks: readonly string[];
}

/**
 * The change of a recipe that a text asks for, with the recipe that every word of the name accounts for.
 * @returns undefined where the text is no change
 * @throws Refusal 'no-such-recipe', 'which-recipe'; Ambiguous where two recipes can be meant
 */
export function changeMeant(text: string, names: Names): ChangeMeant | undefined {
  // A recipe may be called 'Drop scones'.
  if (names.meals.some((meal) => nameKey(meal) === nameKey(text))) return undefined;
  const readings = changesTyped(text);
  for (const change of readings) {
    const reading = new Reading(change.name);
    const name = chosenFor(text, change.name, () => takeMeal(reading, names.meals, names.otherNames));
    if (name !== undefined && reading.leftovers().length === 0)
      return { change, name, remarks: reading.remarks.map((remark) => `(${remark})`) };
  }
  const [first] = readings;
  if (first === undefined) return undefined;
  if (first.name === '') throw new Refusal('which-recipe', 'Say of which recipe, by its name.');
  const hint =
    first.is === 'gone' && / (?:from|out of) /iu.test(first.name)
      ? ' A line goes by its food or its number: /recipe barley soup delete line 2'
      : '';
  throw new Refusal('no-such-recipe', `I know no recipe "${first.name}".${hint}`);
}

/** A choice between two names keeps the rest of the request. */
function chosenFor<T>(text: string, name: string, read: () => T): T {
  try {
    return read();
  } catch (error) {
    const at = text.indexOf(name);
    if (!(error instanceof Ambiguous) || at < 0) throw error;
    throw new Ambiguous(
      error.question,
      error.options.map(({ label, request }) => ({
        label,
        request: text.slice(0, at) + request + text.slice(at + name.length),
      })),
    );
  }
}

/** '2 onions and 1 leek', '2 onions; a leek': each line begins with its amount. */
const piecesOf = (typed: string): string[] =>
  typed.split(
    /\s*;\s*|(?:\s*,\s*(?:and\s+)?|\s+(?:and|&|plus)\s+)(?=(?:[\d½¼¾⅓⅔]|an?\s|one\s|two\s|three\s|half\s|some\s|a pinch))/iu,
  );

/** Carries a change out. */
export function carryOut(
  house: House,
  before: Recipe,
  change: Exclude<RecipeChange, { is: 'gone' | 'use' | 'food' | 'goes' | 'misread' | 'nofood' }>,
): Changed {
  switch (change.is) {
    case 'line':
      return changeLine(house, before, change.position, change.typed);
    case 'more':
      return addLines(house, before, piecesOf(change.typed));
    case 'without':
      return takeLineOut(house, before, change.position);
    case 'move':
      return moveLine(house, before, change.position, change.to);
    case 'heading':
      return changeHeadings(house, before, change);
    case 'camp':
      return addEach(house, before, change.camp);
    case 'eaten':
      return eatOtherwise(house, before, change.how);
    case 'name':
      return renameRecipe(house, before, change.newName);
  }
}
