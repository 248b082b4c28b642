import { sodiumOfTableSaltMgPerG } from './nutrition.ts';
import { above, between } from './within.ts';

/**
 * How many times a recipe, from servings.
 * @param wanted servings, above 0
 * @param written servings the recipe says, above 0
 * @returns factor, no unit
 * @throws Refusal 'impossible-servings'
 */
export function factorFromServings(wanted: number, written: number): number {
  above('impossible-servings', 'The servings wanted', wanted, 0, '');
  return wanted / above('impossible-servings', 'The servings of the recipe', written, 0, '');
}

/**
 * How many times a recipe, for so many pouches of so much dry food.
 * @param pouches above 0
 * @param eachDryG dry food in each, g, above 0
 * @param recipeDryG what the recipe gives dried once, g, above 0
 * @returns factor, no unit
 * @throws Refusal 'impossible-pouches' or 'impossible-weight'
 */
export function factorFromPouches(pouches: number, eachDryG: number, recipeDryG: number): number {
  above('impossible-pouches', 'The number of pouches', pouches, 0, '');
  above('impossible-weight', 'The food in a pouch', eachDryG, 0, 'g');
  return (
    (pouches * eachDryG) / above('impossible-weight', 'The dry weight of the recipe', recipeDryG, 0, 'g')
  );
}

/**
 * How many times a recipe, to fill so many trays.
 * @param trays above 0
 * @param trayWetG wet food one tray takes, g, above 0
 * @param recipeWetG finished weight of the recipe, g, above 0
 * @returns factor, no unit
 * @throws Refusal 'impossible-trays' or 'impossible-weight'
 */
export function factorFromTrays(trays: number, trayWetG: number, recipeWetG: number): number {
  above('impossible-trays', 'The number of trays', trays, 0, '');
  above('impossible-weight', 'The food on a tray', trayWetG, 0, 'g');
  return (trays * trayWetG) / above('impossible-weight', 'The weight of the recipe', recipeWetG, 0, 'g');
}

/**
 * How many times a recipe, to use up what is at hand of one ingredient.
 * @param atHandG g, above 0
 * @param recipeG what the recipe asks of it, g, above 0
 * @returns factor, no unit
 * @throws Refusal 'impossible-weight'
 */
export function factorFromIngredient(atHandG: number, recipeG: number): number {
  above('impossible-weight', 'What is at hand', atHandG, 0, 'g');
  return atHandG / above('impossible-weight', 'What the recipe asks', recipeG, 0, 'g');
}

/**
 * How often the dryer has to run.
 * @param wetG g, above 0
 * @param limitG wet food the dryer takes at once, g, above 0
 * @returns whole loads; exactly full is one
 * @throws Refusal 'impossible-weight' or 'impossible-limit'
 */
export function loads(wetG: number, limitG: number): number {
  above('impossible-weight', 'The wet weight', wetG, 0, 'g');
  const ratio = wetG / above('impossible-limit', "The dryer's limit", limitG, 0, 'g');
  return Math.max(1, Math.ceil(ratio * (1 - 1e-12)));
}

/**
 * How deep food lies when it is spread level.
 * @param wetG g on the tray, 0 or more
 * @param trayAreaCm2 cm², above 0
 * @param densityGPerMl g/ml of the food as spread; 1 for anything wet until weighed
 * @returns mm
 * @throws Refusal 'impossible-weight', 'impossible-tray' or 'impossible-density'
 */
export function depthMm(wetG: number, trayAreaCm2: number, densityGPerMl = 1): number {
  between('impossible-weight', 'The food on the tray', wetG, 0, Infinity, 'g');
  above('impossible-tray', "The tray's area", trayAreaCm2, 0, 'cm²');
  above('impossible-density', "The food's density", densityGPerMl, 0, 'g/ml');
  return (wetG / densityGPerMl / trayAreaCm2) * 10;
}

/** Table salt in a level teaspoon, g. @source usda-sr28 */
export const saltGPerTeaspoon = 6;

/**
 * Table salt that may still go into a pot before its servings pass a sodium target.
 * @param targetMgPerServing mg, 0 or more
 * @param servings above 0
 * @param sodiumMgWithoutMore sodium of everything already in the pot, mg, 0 or more
 * @returns salt in g and level teaspoons; or by how many mg the whole pot is over
 * @throws Refusal 'impossible-target', 'impossible-servings' or 'impossible-sodium'
 * @source usda-sr28
 */
export function saltRoomG(
  targetMgPerServing: number,
  servings: number,
  sodiumMgWithoutMore: number,
): { saltG: number; teaspoons: number } | { over: number } {
  between('impossible-target', 'The sodium target', targetMgPerServing, 0, Infinity, 'mg');
  above('impossible-servings', 'The servings', servings, 0, '');
  between('impossible-sodium', 'The sodium', sodiumMgWithoutMore, 0, Infinity, 'mg');
  const roomMg = targetMgPerServing * servings - sodiumMgWithoutMore;
  if (roomMg < 0) return { over: -roomMg };
  const saltG = roomMg / sodiumOfTableSaltMgPerG;
  return { saltG, teaspoons: saltG / saltGPerTeaspoon };
}
