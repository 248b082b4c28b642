import type { RecipeFacts } from '#core/meal.ts';
import type { Recipe } from '#core/records.ts';
import { saltRoomG } from '#core/scaling.ts';
import type { Settings } from '#core/settings.ts';
import { sayG, sayList, sayNumber } from '#words/say.ts';

/** How much salt may still go in for a sodium target, or which ingredients pass it already. */
export function saltLines(
  recipe: Recipe,
  facts: RecipeFacts,
  times: number,
  targetMg: number,
  settings: Settings,
): string[] {
  const servingsMade = recipe.servings * times;
  const room = saltRoomG(targetMg, servingsMade, facts.eaten.sodiumMg * times);
  const now = facts.eaten.sodiumMg / recipe.servings;
  const said: string[] = [];
  if ('saltG' in room) {
    said.push(
      `Sodium now ${Math.round(now)} mg a serving. Up to ${Math.round(targetMg)} mg: ${sayG(room.saltG, settings.units)} of table salt, ${sayTeaspoons(room.teaspoons)}, may still go into the whole pot of ${sayNumber(servingsMade)} servings.`,
    );
  } else {
    said.push(
      `Already passed: ${Math.round(now)} mg a serving, ${Math.round(now - targetMg)} mg over ${Math.round(targetMg)} mg, ${Math.round(room.over)} mg in the whole pot. No more salt.`,
    );
    said.push(`Most of it comes from ${sayList(mostSodium(recipe, facts))}.`);
  }
  const open = [...facts.uncounted, ...facts.unresolved].map((line) => `"${line.typed}"`);
  if (open.length > 0) said.push(`Not counted: ${sayList(open)}. Any salt in them comes out of this room.`);
  const unknown = [
    ...new Set(facts.eaten.unknown.filter((u) => u.nutrient === 'sodiumMg').map((u) => u.food)),
  ];
  if (unknown.length > 0)
    said.push(`The table has no sodium for ${sayList(unknown)}, so the true figure is higher.`);
  return said;
}

function mostSodium(recipe: Recipe, { sodiumOf }: RecipeFacts): string[] {
  return recipe.lines
    .map((line, i) => ({ line, mg: sodiumOf[i] ?? 0 }))
    .filter(({ mg }) => mg > 0)
    .sort((a, b) => b.mg - a.mg)
    .slice(0, 3)
    .map(({ line, mg }) => `${line.called} (${Math.round(mg / recipe.servings)} mg a serving)`);
}

/** Salt is spooned by quarters of a teaspoon. */
function sayTeaspoons(teaspoons: number): string {
  const quarters = Math.floor(teaspoons * 4);
  if (quarters === 0) return 'less than ¼ teaspoon';
  const words = `${Math.floor(quarters / 4) || ''}${['', '¼', '½', '¾'][quarters % 4]}`;
  return `${words} level teaspoon${quarters > 4 ? 's' : ''}`;
}
