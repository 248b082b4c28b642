import { command } from '#chat/command.ts';
import { askHowCooked } from '#house/cooked-as-now.ts';
import type { House } from '#house/house.ts';
import { factsOfRecipe, mealNamed, nameKey, recipeNamed } from '#house/figures.ts';
import { recipeCard, servingLines } from '#cards/recipe-card.ts';
import { type RecipeText, asRecord, readRecipeText, resolver } from '#house/recipe-text.ts';
import { withPackets } from '#house/packets.ts';
import { changeBrings, changeHeading, servingsChanged } from '#cards/change-card.ts';
import { carryOut, type ChangeMeant, changeMeant } from '#house/change-meant.ts';
import { type Changed, serveOthers } from '#house/recipe-changes.ts';
import { refuseWhileThere } from '#house/recipe-names.ts';
import { misreadButton, misreadLine, noFood } from '#house/misread.ts';
import { atItsLine } from '#house/food-lines.ts';
import { howManyServings } from '#house/servings-asked.ts';
import { keepPot } from '#house/pot.ts';
import {
  campQuestion,
  mealTyped,
  mentionLines,
  openQuestions,
  settleMention,
} from '#house/recipe-questions.ts';
import { cautionLines } from '#house/caution-lines.ts';
import { garlicCaution } from '#words/cautions.ts';
import { tellUses, usesLine } from '#cards/uses-card.ts';
import { mealOfRecipe } from '#house/verdicts.ts';
import type { Recipe } from '#core/records.ts';
import { Refusal } from '#core/refusal.ts';
import type { Choice } from '#core/talk.ts';
import { untold } from '#foods/untold.ts';
import { type Names, optional, part, takeMeal } from '#words/parts.ts';
import { Ambiguous, Reading } from '#words/reading.ts';
import { sayG, sayList, sayNumber } from '#words/say.ts';

/** All of it: a recipe is read line by line, not word by word. */
const wholeText = part<{ text: string; names: Names }>(
  'a name, servings and ingredient lines',
  (reading, names) => {
    reading.take(...reading.left());
    return reading.text.trim() === '' ? undefined : { text: reading.text, names };
  },
);

const mentionSettled = /^(.+?):\s*(.+?)\s+is\s+(?:not in (?:it|there)|in line (\d{1,2}))$/isu;

const example = '/recipe Barley soup, 6 servings: 300 g pearl barley; 4 carrots; 1 l vegetable stock';

export default command({
  name: 'recipe',
  usage:
    '/recipe <name>, <servings> servings, then a line for each ingredient · /recipe <name> · /recipe <name> pot 3.9 kg',
  summary: 'record or show a recipe: each line in grams, a serving in figures',
  examples: [
    example,
    '/recipe barley soup',
    '/recipe barley soup pot 3.9 kg',
    '/recipe barley soup line 2: 350 g carrots',
    '/recipe barley soup add 2 bay leaves',
    '/recipe barley soup delete line 4',
    '/recipe barley soup move line 3 to 1',
    '/recipe barley soup add 20 g butter at camp',
    '/recipe barley soup is called Pearl soup',
    '/recipe barley soup eaten dry',
    '/recipe barley soup is for breakfast too',
  ],
  help: [
    '"eaten dry" is for fruit, crisps and their like: no water, nothing to boil, no fuel. What is all fruit is taken so and said; "soaked" changes it.',
    'Send name and servings on the first line and an ingredient on each line below; a pasted method is kept, not counted.',
    '"pot" tells what the finished pot weighed, so that water boiled away in the kitchen is in the sums.',
    '"line 2: …" puts one line right, also for batches cooked from it, unless something that went into them would be lost; "add …" puts a line behind the last.',
    '"remove the carrots" and "replace carrots with 300 g pumpkin" find the line by its food. A renamed recipe still answers to its old name.',
    'A line or a heading "at camp" stays out of the pot and counts in what is eaten: "at camp: 20 g butter each". Headings: "rename heading For the sauce to For the dip", "delete heading …", "move heading … to line 3".',
    '"delete line 4" and "serves 8" hold for later batches, as does sending the whole recipe anew. "delete recipe barley soup" takes a tap, and waits until nothing of it is left.',
  ],
  records: true,
  offers: { of: 'meals' },
  takes: { all: optional(wholeText) },
  run: ({ all }, house) => {
    if (!all) return { names: house.recipes.names() };
    const settled = mentionSettled.exec(all.text.trim());
    if (settled && !all.text.trim().includes('\n'))
      return settle(house, settled[1]!, all.names, settled[2]!, settled[3] ? Number(settled[3]) : null);
    const change = changeMeant(all.text, all.names);
    if (change) return changed(house, change);
    const read = readRecipeText(all.text, all.names);
    return read.lines.length > 0 ? record(house, read) : existing(house, all.names, read);
  },
  say: (told) => {
    if ('names' in told)
      return {
        group:
          told.names.length === 0
            ? `No recipe is recorded yet.\nFor example: ${example}`
            : `Recipes: ${sayList(told.names)}.`,
      };
    const { lines, why, meal, did, buttons } = told;
    return {
      group: lines.join('\n'),
      why,
      ...(did === undefined ? {} : { did }),
      ...(buttons.length === 0 ? {} : { buttons }),
      ...(meal === undefined ? {} : { meals: [meal], notesTell: 'verdicts' }),
    };
  },
});

/** The answer about one recipe: the whole card, or only a serving in figures where the lines did not change. */
function shown(
  house: House,
  recipe: Recipe,
  heading: string,
  more: { did?: string; buttons?: Choice[]; remarks?: string[]; short?: boolean } = {},
) {
  const facts = factsOfRecipe(house, recipe);
  const card = more.short
    ? servingLines(recipe, facts, house.settings)
    : recipeCard(recipe, facts, house.foods, house.settings);
  const uses = usesLine(house, recipe);
  return {
    lines: [heading, ...card.needs, ...uses.needs, ...(more.remarks ?? [])],
    why: [
      ...uses.why,
      ...card.why,
      ...(recipe.method === '' || more.short ? [] : ['The method is kept with it and was not counted.']),
    ],
    meal: mealOfRecipe(recipe, facts),
    did: more.did,
    buttons: [...openQuestions(house, recipe), ...(more.buttons ?? [])],
  };
}

/** Keeps a new recipe, or a new wording of an old one. */
function record(house: House, read: RecipeText) {
  if (read.name === '')
    throw new Refusal(
      'no-name',
      `I read ${read.lines.length} ingredient lines, but no name on the first line.`,
    );
  const before = house.recipes.find(nameKey(read.name));
  const servings = read.servings ?? before?.servings;
  if (servings === undefined && read.makes) throw howManyServings(read, read.makes);
  if (servings === undefined) {
    throw new Refusal(
      'no-servings',
      `I read "${read.name}" with ${read.lines.length} ingredient line${read.lines.length === 1 ? '' : 's'}, but not how many servings it makes. Say so behind the name: ${read.name}, 6 servings`,
    );
  }
  const resolve = resolver(house);
  const results = read.lines.map(({ typed }) => resolve(typed));
  const lines = results
    .map((result, i) => asRecord(result, { ...read.lines[i]!, servings }))
    .map(withPackets(house));
  const negative = lines.find((line) => line.grams !== null && !(line.grams >= 0 && line.grams <= 200_000));
  if (negative)
    throw new Refusal('absurd-line', `"${negative.typed}" cannot be: I read ${sayG(negative.grams!)}.`);
  const name = before?.name ?? read.name;
  const mentions = untold([...read.headings, read.method], results);
  house.recipes.keep(
    nameKey(name),
    {
      name,
      servings,
      potG: read.potG ?? null,
      method: read.method,
      eaten: read.eaten ?? before?.eaten ?? null,
      lines,
      mentions,
    },
    house.nowMs,
  );
  const recipe = recipeNamed(house, name);
  const remarks: string[] = [];
  if (before) remarks.push('It replaces the recipe of that name; batches cooked from the older one keep it.');
  else remarks.push(...garlicCaution(cautionLines(recipe, house.foods)));
  remarks.push(...read.remarks.map((remark) => `(${remark})`));
  remarks.push(...mentionLines(recipe));
  return shown(house, recipe, `Recorded: ${name}, ${sayNumber(servings)} servings.`, {
    did: `recorded the recipe ${name}`,
    buttons: [...campQuestion(recipe), misreadButton(recipe)],
    remarks,
  });
}

/** Shows a recipe, or tells it what its pot weighed or how many it feeds. */
function existing(house: House, names: Names, read: RecipeText) {
  const reading = new Reading(read.name);
  const name = takeMeal(reading, names.meals, names.otherNames);
  if (name === undefined || reading.leftovers().length > 0) {
    const known = house.recipes.names();
    const there = known.length > 0 ? `Known are ${sayList(known.slice(0, 8))}.` : 'None is recorded yet.';
    throw new Refusal(
      'no-such-recipe',
      `I know no recipe "${read.name}". ${there} To record it, put its ingredients on the lines below its name, or behind a colon.`,
    );
  }
  const recipe = recipeNamed(house, name);
  if (read.potG === undefined && read.servings === undefined) {
    if (read.makes) throw howManyServings(read, read.makes);
    return shown(house, recipe, `${recipe.name}, ${sayNumber(recipe.servings)} servings.`, {
      buttons: [misreadButton(recipe)],
      remarks: reading.remarks.map((remark) => `(${remark})`),
    });
  }
  if (read.servings !== undefined) {
    const now = serveOthers(house, recipe, read.servings, read.potG);
    const remarks = [...now.remarks, ...[...read.remarks, ...reading.remarks].map((remark) => `(${remark})`)];
    return afterChange(house, { ...now, remarks }, servingsChanged(now));
  }
  return weighPot(house, recipe, read.potG!);
}

/** The pot was weighed. */
function weighPot(house: House, recipe: Recipe, potG: number) {
  const batches = keepPot(house, recipe, potG);
  const remarks = batches.length > 0 ? [`It holds for ${sayList(batches.map((no) => `B${no}`))} too.`] : [];
  return shown(
    house,
    recipeNamed(house, recipe.name),
    `Noted: the finished pot of ${recipe.name} weighs ${sayG(potG, house.settings.units)}.`,
    {
      short: true,
      did: `weighed the pot of ${recipe.name}: ${sayG(potG)}`,
      remarks,
    },
  );
}

/** Says where a food of the method is. */
function settle(house: House, nameTyped: string, names: Names, food: string, line: number | null) {
  const { name } = mealTyped(nameTyped, names);
  const noted = settleMention(house, recipeNamed(house, name), food, line);
  const recipe = recipeNamed(house, name);
  return shown(house, recipe, `Noted: ${noted}.`, {
    short: true,
    did: `noted of ${name}: ${noted}`,
    remarks: mentionLines(recipe),
  });
}

/** Carries one change out, and shows what was and what is; a recipe goes by a tap alone. */
function changed(house: House, { change: typed, name, remarks }: ChangeMeant) {
  const before = typed.is === 'use' ? mealNamed(house, name) : recipeNamed(house, name);
  const change = typed.is === 'food' || typed.is === 'goes' ? atItsLine(before, typed) : typed;
  if (change.is === 'gone') return retired(house, before, change.sure);
  if (change.is === 'use')
    return { ...tellUses(house, before, change), why: [], meal: undefined, buttons: [] };
  if (change.is === 'misread') throw misreadLine(house, before, change.position);
  if (change.is === 'nofood') {
    const { heading, ...now } = noFood(house, before, change.position);
    return afterChange(house, now, heading);
  }
  const now = carryOut(house, before, change);
  const heading = changeHeading(house, now, change);
  return afterChange(house, { ...now, remarks: [...now.remarks, ...remarks] }, heading);
}

/** Before and after, what the change brings, and the card behind a button. */
function afterChange(house: House, now: Changed, heading: string) {
  const { after } = now;
  const isNewAtCamp = after.lines.some(
    ({ camp }, i) => camp === 'all' && now.before.lines[i]?.camp !== 'all',
  );
  return {
    lines: [heading, ...changeBrings(house, now), ...now.remarks],
    why: [],
    meal: mealOfRecipe(after, factsOfRecipe(house, after)),
    did: heading.replaceAll('\n', ' ').replace(/\.$/, ''),
    buttons: [
      ...openQuestions(house, after),
      ...(isNewAtCamp ? campQuestion(after) : []),
      ...askHowCooked(house, now),
      { label: 'Show the recipe', request: `/recipe ${after.name}` },
    ],
  };
}

function retired(house: House, recipe: Recipe, isSure: boolean) {
  refuseWhileThere(house, recipe);
  if (!house.tapped || !isSure)
    throw new Ambiguous(
      `Delete the recipe ${recipe.name}, ${recipe.lines.length} lines? Nothing is changed yet; what was cooked from it stays on record.`,
      [{ label: `Delete ${recipe.name}`, request: `delete recipe ${recipe.name} sure` }],
    );
  house.recipes.retire(nameKey(recipe.name));
  return {
    lines: [`Deleted: the recipe ${recipe.name}. /undo brings it back.`],
    why: [],
    meal: undefined,
    did: `deleted the recipe ${recipe.name}`,
    buttons: [],
  };
}
