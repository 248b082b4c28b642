import { command } from '#chat/command.ts';
import type { House } from '#house/house.ts';
import { factsOfRecipe, nameKey, recipeNamed } from '#house/figures.ts';
import { recipeCard, servingLines } from '#cards/recipe-card.ts';
import { type RecipeText, asRecord, readRecipeText, resolver } from '#house/recipe-text.ts';
import { packetQuestions } from '#house/packet-questions.ts';
import { withPackets } from '#house/packets.ts';
import { keepPot } from '#house/pot.ts';
import {
  mealTyped,
  mentionLines,
  nextQuestion,
  rememberAnswer,
  settleMention,
  settleTold,
} from '#house/recipe-questions.ts';
import { cautionLines } from '#house/caution-lines.ts';
import { garlicCaution } from '#words/cautions.ts';
import { mealOfRecipe } from '#house/verdicts.ts';
import type { Recipe, RecipeLine } from '#core/records.ts';
import { Refusal } from '#core/refusal.ts';
import type { Choice } from '#core/talk.ts';
import { untold } from '#foods/untold.ts';
import { type Names, optional, part, takeMeal } from '#words/parts.ts';
import { Reading } from '#words/reading.ts';
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
const mendLine = /^(.*?)\bline\s+(\d{1,2})\s*(?::|=|\bis\b)\s*(.+)$/isu;

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
  ],
  help: [
    'Send name and servings on the first line and an ingredient on each line below; a pasted method is kept, not counted.',
    '"pot" tells what the finished pot weighed, so that water boiled away in the kitchen is in the sums.',
    '"line 2: …" puts one line right, also for batches cooked from it. Sending the whole recipe anew replaces it for later batches.',
  ],
  records: true,
  takes: { all: optional(wholeText) },
  run: ({ all }, house) => {
    if (!all) return { names: house.recipes.names() };
    const settled = mentionSettled.exec(all.text.trim());
    if (settled && !all.text.trim().includes('\n'))
      return settle(house, settled[1]!, all.names, settled[2]!, settled[3] ? Number(settled[3]) : null);
    const mended = mendLine.exec(all.text);
    if (mended && !all.text.trim().includes('\n'))
      return mend(house, all.names, mended[1]!, Number(mended[2]), mended[3]!);
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
    const { lines, meal, did, buttons } = told;
    return {
      group: lines.join('\n'),
      ...(did === undefined ? {} : { did }),
      ...(buttons.length === 0 ? {} : { buttons }),
      meals: [meal],
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
  return {
    lines: [heading, ...card, ...(more.remarks ?? [])],
    meal: mealOfRecipe(recipe, facts),
    did: more.did,
    buttons: more.buttons?.length ? more.buttons : packetQuestions(recipe, house.eaters.here()),
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
  if (servings === undefined) {
    throw new Refusal(
      'no-servings',
      `I read "${read.name}" with ${read.lines.length} ingredient line${read.lines.length === 1 ? '' : 's'}, but not how many servings it makes. Say so behind the name: ${read.name}, 6 servings`,
    );
  }
  const resolve = resolver(house);
  const results = read.lines.map(resolve);
  const lines = results.map(asRecord).map(withPackets(house));
  const negative = lines.find((line) => line.grams !== null && !(line.grams >= 0 && line.grams <= 200_000));
  if (negative)
    throw new Refusal('absurd-line', `"${negative.typed}" cannot be: I read ${sayG(negative.grams!)}.`);
  const name = before?.name ?? read.name;
  const mentions = untold([...read.headings, read.method], results);
  house.recipes.keep(
    nameKey(name),
    { name, servings, potG: read.potG ?? null, method: read.method, lines, mentions },
    house.nowMs,
  );
  const recipe = recipeNamed(house, name);
  const buttons = nextQuestion(recipe, results);
  const remarks: string[] = [];
  if (before) remarks.push('It replaces the recipe of that name; batches cooked from the older one keep it.');
  else remarks.push(...garlicCaution(cautionLines(recipe, house.foods)));
  remarks.push(...read.remarks.map((remark) => `(${remark})`));
  if (read.method !== '') remarks.push('The method is kept with it and was not counted.');
  remarks.push(...mentionLines(recipe));
  return shown(house, recipe, `Recorded: ${name}, ${sayNumber(servings)} servings.`, {
    did: `recorded the recipe ${name}`,
    buttons,
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
    return shown(house, recipe, `${recipe.name}, ${sayNumber(recipe.servings)} servings.`, {
      remarks: reading.remarks.map((remark) => `(${remark})`),
    });
  }
  if (read.servings !== undefined) {
    const { id: _, ...rest } = recipe;
    house.recipes.keep(
      nameKey(name),
      { ...rest, servings: read.servings, potG: read.potG ?? recipe.potG },
      house.nowMs,
    );
    return shown(
      house,
      recipeNamed(house, name),
      `Noted: ${name} makes ${sayNumber(read.servings)} servings.`,
      {
        short: true,
        did: `set ${name} to ${sayNumber(read.servings)} servings`,
        remarks: [...read.remarks, ...reading.remarks].map((remark) => `(${remark})`),
      },
    );
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
    buttons: nextQuestion(recipe, []),
    remarks: mentionLines(recipe),
  });
}

/** Puts one line right. */
function mend(house: House, names: Names, nameTyped: string, position: number, typed: string) {
  const { name, reading } = mealTyped(nameTyped, names);
  const recipe = recipeNamed(house, name);
  const old: RecipeLine | undefined = recipe.lines[position - 1];
  const isNew = position === recipe.lines.length + 1;
  if (!old && !isNew)
    throw new Refusal(
      'no-such-line',
      `${name} has ${recipe.lines.length} lines; there is no line ${position}.`,
    );
  const result = resolver(house)(typed);
  if (result.is === 'heading')
    throw new Refusal('no-ingredient', `"${typed}" is no ingredient that I can read.`);
  const line = withPackets(house)(asRecord(result));
  if (old) house.recipes.mendLine(recipe.id, position, line);
  else house.recipes.addLine(recipe.id, position, line);
  settleTold(house, recipe, result);
  const remembered = old && rememberAnswer(house, old, result);
  const mended = recipeNamed(house, name);
  const again = mended.lines.map((l) =>
    l.question === null ? { question: null, choices: [] } : resolver(house)(l.typed),
  );
  const batches = house.batches.ofMeal(recipe.id).filter((batch) => batch.recipe.id === recipe.id);
  const remarks = [
    ...reading.remarks.map((remark) => `(${remark})`),
    ...(batches.length > 0
      ? [`${sayList(batches.map((b) => `B${b.no}`))}, cooked from it, count with it too.`]
      : []),
  ];
  return shown(house, mended, `Line ${position} of ${name} is now: ${line.typed}.`, {
    did: old
      ? `changed line ${position} of ${name} from "${old.typed}" to "${line.typed}"`
      : `added line ${position} to ${name}: "${line.typed}"`,
    buttons: nextQuestion(mended, again),
    remarks: remembered === undefined ? remarks : [...remarks, remembered],
  });
}
