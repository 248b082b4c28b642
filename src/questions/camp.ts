import { recipeNamed } from '#house/figures.ts';
import { campInShort } from '#words/camp-words.ts';
import { aboutParts, mealAbout } from './about.ts';
import { question } from './question.ts';

export const atCamp = question({
  name: 'atcamp',
  about: 'what is added at camp',
  asked: ['what do we add to the soup at camp?'],
  takes: aboutParts,
  answer: (asked, house) => {
    const recipe = recipeNamed(house, mealAbout(house, asked));
    const said = campInShort(recipe, house.settings.units);
    return said === ''
      ? `Nothing is added to ${recipe.name} at camp, by its recipe.`
      : `${recipe.name}, added at camp to each serving: ${said}.`;
  },
});
