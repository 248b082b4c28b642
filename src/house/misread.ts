import type { Recipe, RecipeLine } from '#core/records.ts';
import type { Choice } from '#core/talk.ts';
import { Refusal } from '#core/refusal.ts';
import { otherFoods } from '#foods/line.ts';
import { Ambiguous } from '#words/reading.ts';
import { recipeNamed } from './figures.ts';
import type { House } from './house.ts';
import { isChild, selfOf } from './lifting.ts';
import { type Changed, lineAt, takeLineOut } from './recipe-changes.ts';
import { learntBy } from './recipe-text.ts';

/** A phone shows no more buttons without scrolling. Chosen. */
const mostShown = 12;

const readAs = ({ state, called, typed }: RecipeLine): string =>
  state === 'asked' ? `"${typed}" is not understood` : `"${typed}" is read as ${called}`;

export const misreadButton = ({ name }: Recipe): Choice => ({
  label: 'A line is read wrongly',
  request: `/recipe ${name} line is wrong`,
});

/** Which line is read wrongly; of one line, what else it may be: a button each. Nothing is changed by asking. */
export function misreadLine(house: House, recipe: Recipe, position: number | null): Ambiguous {
  const { name, lines } = recipe;
  if (position === null)
    return new Ambiguous(
      `Which line of ${name} is read wrongly?`,
      lines.slice(0, mostShown).map(({ called, typed, state }, i) => ({
        label: `${i + 1}: ${state === 'asked' ? typed : called}`,
        request: `${name} line ${i + 1} is wrong`,
      })),
    );
  const line = lineAt(recipe, position);
  const others = otherFoods(line.typed, line.called, house.foods, learntBy(house));
  return new Ambiguous(
    `Line ${position} of ${name}, ${readAs(line)}. What is it? Type it anew if none of these: /recipe ${name} line ${position}: 200 g of the food`,
    [
      ...others.map(({ label, typed }) => ({ label, request: `${name} line ${position}: ${typed}` })),
      { label: 'No food at all', request: `${name} line ${position} is no food` },
    ],
  );
}

/** Whether something is certainly in a line, though its food is asked for. */
const isCertain = ({ contents, named }: RecipeLine): boolean =>
  [contents, ...named.map((one) => one.contents)].some(
    (one) => one !== null && one.contains.length + one.kinds.length > 0,
  );

/**
 * A line that was no ingredient goes to the method. What nobody understood goes from batches too, by a grown-up's tap; what
 * was counted as a food, or names one, stays with the batches cooked from it.
 * @throws Refusal for a child, 'last-line'; Ambiguous with the button where nothing was tapped yet
 */
export function noFood(
  house: House,
  before: Recipe,
  position: number,
): Changed & { readonly heading: string } {
  const { name, lines } = before;
  const line = lineAt(before, position);
  const self = selfOf(house);
  if (self !== undefined && isChild(self))
    throw new Refusal(
      'for-a-grown-up',
      `A grown-up has to say what is no food: ${self.name} is recorded as a child. Nothing was recorded.`,
    );
  if (!house.tapped)
    throw new Ambiguous(
      `Line ${position} of ${name}, ${readAs(line)}. Is it no food? Nothing is changed yet.`,
      [{ label: 'No food at all', request: `${name} line ${position} is no food` }],
    );
  const heading = `Line ${position} of ${name}, "${line.typed}": no food, so it stands with the method now.`;
  const method = [before.method, line.typed].filter((text) => text !== '').join('\n');
  if (line.state !== 'asked' || lines.length === 1 || isCertain(line)) {
    const now = takeLineOut(house, before, position);
    house.recipes.describe(now.after.id, method);
    return { ...now, after: recipeNamed(house, name), heading };
  }
  house.recipes.takeOut(before.id, lines.toSpliced(position - 1, 1));
  house.recipes.describe(before.id, method);
  return { before, after: recipeNamed(house, name), remarks: [], heading };
}
