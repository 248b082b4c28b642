import { isSaltUnweighed, type RecipeFacts } from '#core/meal.ts';
import { expectedDryG } from '#core/balance.ts';
import type { Recipe, RecipeLine } from '#core/records.ts';
import type { Settings } from '#core/settings.ts';
import type { FoodTable } from '#foods/food.ts';
import { sayG, sayList } from '#words/say.ts';
import { campLines } from '#words/camp-words.ts';
import { cautionLines } from '#house/caution-lines.ts';
import { dryingCautions } from '#words/cautions.ts';
import { containsLines, containsWhy } from '#words/phrases.ts';

/** One line: what was typed, the food found, grams and water, and what was assumed. */
function lineCard(line: RecipeLine, position: number, foods: FoodTable, settings: Settings): string {
  const composer = (ndb: string) => foods.byNdb(ndb)?.per100;
  if (line.state === 'asked')
    return `${position}. ${line.typed} → ? ${line.question ?? 'I do not know this one.'}`;
  const remarks = `${line.remarks.length > 0 ? ` (${line.remarks.join('; ')})` : ''}${line.question === null ? '' : ` ? ${line.question}`}`;
  if (line.state === 'uncounted' || line.grams === null)
    return `${position}. ${line.typed} → ${line.called}, no amount: counted as 0${isSaltUnweighed(line, composer) ? '; weigh it for the sodium' : ''}${remarks}`;
  const water = line.ndb === null ? undefined : foods.byNdb(line.ndb)?.per100.waterG;
  const wet =
    water === undefined || water === null
      ? 'water unknown'
      : `${sayG((line.grams * water) / 100, settings.units)} of it water`;
  const where = line.camp === null ? '' : ` at camp`;
  return `${position}. ${line.typed} → ${line.called}, ${sayG(line.grams, settings.units)}${where}, ${wet}${remarks}`;
}

/** What is read first of a card, and what is folded away. */
export interface Folded {
  readonly needs: readonly string[];
  readonly why: readonly string[];
}

/** Lines that somebody should look at: not understood, in doubt, or of unknown weight. */
const wantsEyes = (line: RecipeLine): boolean =>
  line.state === 'asked' || line.question !== null || (line.state === 'weighed' && line.grams === null);

/** The recipe as it was understood: a serving, its allergens, cautions and every line that wants eyes; the rest folded. */
export function recipeCard(recipe: Recipe, facts: RecipeFacts, foods: FoodTable, settings: Settings): Folded {
  const lines = recipe.lines.flatMap((line, i) => {
    const said = { said: lineCard(line, i + 1, foods, settings), wantsEyes: wantsEyes(line) };
    const { section } = line;
    const isNew = section !== null && section !== recipe.lines[i - 1]?.section;
    return isNew ? [{ said: `— ${section}`, wantsEyes: false }, said] : [said];
  });
  const serving = servingLines(recipe, facts, settings);
  return {
    needs: [
      ...lines.flatMap(({ said, wantsEyes: open }) => (open ? [said] : [])),
      ...serving.needs,
      ...campLines(recipe, settings.units),
      ...containsLines(facts),
      ...dryingCautions(cautionLines(recipe, foods), facts.totals),
    ],
    why: [
      ...lines.flatMap(({ said, wantsEyes: open }) => (open ? [] : [said])),
      ...serving.why,
      ...containsWhy(facts),
    ],
  };
}

/** 'A serving: 518 g wet, 721 mg sodium.' What is behind an unweighed line is said to be at least so much. */
export function servingInShort(recipe: Recipe, facts: RecipeFacts, settings: Settings): string {
  const { totals, eaten, finishedG } = facts;
  if (!(totals.massG > 0)) return 'No line could be weighed yet, so there are no figures.';
  const each = Math.round(eaten.sodiumMg / recipe.servings);
  return `A serving: ${sayG(finishedG / recipe.servings, settings.units)} wet, ${atLeast(facts)}${each} mg sodium.`;
}

const atLeast = ({ isSodiumLeast }: RecipeFacts): string => (isSodiumLeast ? 'at least ' : '');

/** A serving in figures. */
export function servingLines(recipe: Recipe, facts: RecipeFacts, settings: Settings): Folded {
  const { totals, eaten, finishedG, boiledAwayG } = facts;
  if (!(totals.massG > 0))
    return { needs: ['No line could be weighed yet, so there are no figures.'], why: [] };
  const g = (value: number) => sayG(value, settings.units);
  const dryG = totals.solidsG > 0 ? expectedDryG(totals.solidsG, settings.residualMoisture) : 0;
  const each = (value: number) => Math.round(value / recipe.servings);
  const needs = [`A serving: about ${g(dryG / recipe.servings)} dry, ${each(eaten.kcal)} kcal.`];
  const why = [
    `The pot: ${g(totals.massG)} of ingredients${recipe.potG === null ? '' : `, ${g(recipe.potG)} when finished`}; solids ${g(totals.solidsG)}, so about ${g(dryG)} dry.`,
    `A serving: ${g(finishedG / recipe.servings)} wet, about ${g(dryG / recipe.servings)} dry, ${each(eaten.kcal)} kcal, ${atLeast(facts)}${each(eaten.sodiumMg)} mg sodium.`,
  ];
  if (recipe.potG !== null) {
    why.push(
      boiledAwayG >= 0
        ? `${g(boiledAwayG)} of water boiled away in the kitchen.`
        : `The pot weighs ${g(-boiledAwayG)} more than its lines: water that no line names.`,
    );
  }
  const missing = [...new Set(eaten.unknown.filter((u) => u.nutrient === 'sodiumMg').map((u) => u.food))];
  if (missing.length > 0) why.push(`The food table has no sodium for ${sayList(missing)}.`);
  return { needs, why };
}
