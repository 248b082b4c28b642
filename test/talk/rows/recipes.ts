import type { TalkRow } from './row.ts';

/** Recipes told and changed in a sentence. */
export const recipeRows: readonly TalkRow[] = [
  ['new recipe pea soup for 4: 400 g split peas, 2 carrots, 1.5 l water', 'recipe', 'does', '4 servings'],
  ['recipe pea soup, 4 servings: 400 g split peas; 1.5 l water', 'recipe', 'does'],
  ['Pea soup\n400 g split peas\n2 carrots\n1.5 l water\nserves 4', 'recipe', 'offers'],
  ['add 1 tsp salt to the lentil pot', 'recipe', 'does'],
  ['put 100 g spinach into the soup recipe', 'recipe', 'does'],
  ['add 2 onions and 1 leek to the barley soup', 'recipe', 'does'],
  ['remove line 2 from the soup', 'recipe', 'does'],
  ['remove the carrots from the soup', 'recipe', 'does'],
  ['take the salt out of the lentil pot', 'recipe', 'does'],
  ['leave out the cream in the lentil pot', 'recipe', 'does'],
  ['replace the carrots in the soup with 300 g pumpkin', 'recipe', 'does', 'pumpkin'],
  ['swap the cream in the lentil pot for 200 ml oat milk', 'recipe', 'does', 'oat'],
  ['make the soup without salt', 'recipe|without', 'offers|answers|nothing'],
  ['could we make the lentil pot without cream?', 'without', 'answers'],
  ['change line 1 of the soup to 350 g pearl barley', 'recipe', 'does'],
  ['the soup serves 8 now', 'recipe', 'does'],
  ['the lentil pot makes 12 servings', 'recipe', 'does'],
  ['rename the soup to winter soup', 'recipe', 'does'],
  ['call the barley soup winter soup', 'recipe|our', 'does'],
  ['maybe add some cream to the soup', 'recipe', 'offers'],
  ["don't add salt to the soup", 'unknown|recipe', 'nothing'],
  ['should I add more salt to the soup?', 'unknown|recipe|nutrition', 'nothing|answers|offers'],
  ['delete the recipe rice and beans', 'recipe', 'answers'],
];
