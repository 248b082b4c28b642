import { type Ingredient, verdictFor } from '#core/verdict.ts';
import { ingredientsOf } from '#core/meal.ts';
import { nameKey, mealNamed } from '#house/figures.ts';
import { linesWith } from '#house/food-lines.ts';
import type { House } from '#house/house.ts';
import { avoidancesOf, becauseWords } from '#house/verdicts.ts';
import { restOfText } from '#words/parts.ts';
import { sayList, sayNumber } from '#words/say.ts';
import { aboutParts, mealAbout } from './about.ts';
import { question } from './question.ts';

/** A request longer than this is no button. Chosen. */
const longestRequest = 1500;

export const without = question({
  name: 'without',
  about: 'made without',
  asked: ['could we make the soup without celery?'],
  takes: { ...aboutParts, food: restOfText('a food') },
  answer: ({ food: typed, ...asked }, house) => {
    const food = typed.replace(/^(?:any|the|some|without|no)\s+/giu, '');
    const recipe = mealNamed(house, mealAbout(house, asked));
    const found = linesWith(recipe, food);
    const rest = recipe.lines.filter((_, i) => !found.includes(i + 1));
    const left = stillIn(house, food, rest.flatMap(ingredientsOf));
    if (found.length === 0) return `No line of ${recipe.name} names "${food}". ${left}`;
    const lines = found.map((at) => `line ${at}, ${recipe.lines[at - 1]!.typed}`);
    const name = `${recipe.name} without ${food}`;
    const anew = `/recipe ${name}, ${sayNumber(recipe.servings)} servings:\n${rest.map((line) => line.typed).join('\n')}`;
    const isNew = house.recipes.find(nameKey(name)) === undefined && anew.length < longestRequest;
    return {
      group: [
        `${recipe.name} has it in ${sayList(lines)}. ${left}`,
        'Batches cooked with it keep it. Nothing is changed yet.',
      ].join('\n'),
      buttons: [
        ...(rest.length > 0 && isNew ? [{ label: `A recipe of its own: ${name}`, request: anew }] : []),
        ...(found.length === 1 && rest.length > 0
          ? [
              {
                label: `Take line ${found[0]!} out of ${recipe.name}`,
                request: `/recipe ${recipe.name} delete line ${found[0]!}`,
              },
            ]
          : []),
      ],
    };
  },
});

/** Whether what is left still holds the food, by the recorded ingredients. */
function stillIn(house: House, food: string, left: readonly Ingredient[]): string {
  const isKnown = house.foods.search(food, 1).length > 0;
  const verdict = verdictFor(left, avoidancesOf([food]));
  if (verdict.is === 'blocked') return `The rest still holds it: ${becauseWords(verdict.by)}.`;
  if (verdict.is === 'unknown')
    return `Whether the rest holds it is unknown: ${becauseWords(verdict.because)}.`;
  return isKnown ? `The rest holds no ${food} by its recorded ingredients, traces apart.` : '';
}
