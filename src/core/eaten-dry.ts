import type { CautionLine } from './cautions.ts';

/** The table's groups. @source usda-sr28 */
const fruitGroup = 'Fruits and Fruit Juices';
const besideFruit: ReadonlySet<string> = new Set(['Spices and Herbs', 'Sweets']);
/** Fruit by the table that nobody eats as a dry snack, by the first word of its name. @source usda-sr28 */
const noSnack: ReadonlySet<string> = new Set(['olives', 'avocados', 'lemon', 'lime']);
/** Sugar and spice on fruit leave it fruit up to this share of the weight. Chosen. */
const leastFruitFraction = 0.9;

/**
 * Whether a recipe is fruit and nothing but sugar and spice with it, every line of it understood and weighed: such food
 * is mostly eaten as it is. Common practice, no source.
 */
export function isAllFruit(lines: readonly CautionLine[]): boolean {
  const isFruit = ({ group, tableName }: CautionLine) =>
    group === fruitGroup && !noSnack.has((tableName ?? '').toLowerCase().split(/[^\p{L}]+/u)[0]!);
  if (!lines.every((line) => isFruit(line) || (line.group !== null && besideFruit.has(line.group))))
    return false;
  const sum = (some: readonly CautionLine[]) => some.reduce((all, { grams }) => all + (grams ?? 0), 0);
  const fruitG = sum(lines.filter(isFruit));
  return fruitG > 0 && fruitG >= leastFruitFraction * sum(lines);
}
