import { command } from '#chat/command.ts';
import type { House } from '#house/house.ts';
import { factsOfRecipe, recipeNamed } from '#house/figures.ts';
import { resolver } from '#house/recipe-text.ts';
import { saltLines } from '#cards/salt.ts';
import { type ScaledLine, scaledLine } from '#cards/scaled-line.ts';
import { expectedDryG } from '#core/balance.ts';
import type { RecipeFacts } from '#core/meal.ts';
import type { Recipe } from '#core/records.ts';
import { Lacking, Refusal } from '#core/refusal.ts';
import {
  factorFromIngredient,
  factorFromPouches,
  factorFromServings,
  factorFromTrays,
  loads,
} from '#core/scaling.ts';
import type { Settings } from '#core/settings.ts';
import { fold, stem } from '#words/near.ts';
import type { Reading } from '#words/reading.ts';
import { countOf, factor, meal, optional, part, pouchGroups, quantities, servings } from '#words/parts.ts';
import { sayCount, sayG, sayNumber, sayServings } from '#words/say.ts';

/** 'sodium 500 mg', '500 mg sodium': mg a serving. */
const sodiumMg = part<number>('a sodium target such as sodium 500 mg', (reading) => {
  for (const { index, value } of quantities(reading, 'mass')) {
    for (const beside of [index - 1, index + 1, index + 2]) {
      const word = reading.at(beside);
      if (word?.plain !== 'sodium') continue;
      reading.settleNumbers([index]);
      reading.take(index, beside);
      const mg = value * 1000;
      if (!(mg > 0 && mg <= 20_000))
        throw new Refusal(
          'bad-target',
          `${sayNumber(mg)} mg of sodium a serving is no target; 1 to 20000 mg is.`,
        );
      return mg;
    }
  }
  return undefined;
});

/** 'with 1.2 kg lentils': an amount of an ingredient at hand, as an ingredient line. */
const atHand = part<string>('an amount at hand, such as with 1.2 kg lentils', (reading, names) => {
  const start = reading.all.findIndex(
    (t, i) => reading.at(i) !== undefined && ['with', 'from', 'using'].includes(t.plain),
  );
  const amount = reading.at(start + 1);
  if (start < 0 || (amount?.is !== 'quantity' && amount?.is !== 'number')) return undefined;
  const behind = [...reading.left()].filter((i) => i > start);
  const ofMeal = mealBehind(reading, behind, names.meals);
  const indexes = behind.filter((i) => !ofMeal.includes(i));
  reading.settleNumbers([start + 1]);
  reading.take(start, ...indexes);
  return indexes.map((i) => reading.all[i]!.typed).join(' ');
});

/** The words of a meal's full name at the end of a stretch: 'with 1.2 kg lentils lentil curry'. */
function mealBehind(reading: Reading, behind: readonly number[], meals: readonly string[]): number[] {
  const words = behind.map((i) => fold(reading.all[i]!.plain));
  const named = meals
    .map((name) => fold(name).split(' '))
    .filter(
      (name) =>
        name.length < words.length && name.every((word, k) => words[words.length - name.length + k] === word),
    )
    .sort((a, b) => b.length - a.length)[0];
  return named ? behind.slice(-named.length) : [];
}

export default command({
  name: 'scale',
  usage:
    '/scale <meal> to 14 pouches of 90 g · to 10 servings · to 4 trays · x2 · with 1.2 kg lentils · sodium 500 mg',
  summary: 'a recipe made larger or smaller, in grams and in measures a cook owns',
  examples: [
    '/scale barley soup to 10 servings',
    '/scale barley soup to 14 pouches of 90 g',
    '/scale barley soup to 4 trays',
    '/scale barley soup with 500 g pearl barley',
    '/scale barley soup sodium 500 mg',
  ],
  help: [
    'A sodium target tells how much salt may still go in, or which ingredients pass it already. It can stand beside another target.',
  ],
  offers: { of: 'meals' },
  takes: {
    sodiumMg: optional(sodiumMg),
    atHand: optional(atHand),
    pouches: optional(pouchGroups),
    trays: optional(countOf('trays', 'tray')),
    servings: optional(servings),
    factor: optional(factor),
    meal,
  },
  run: (asked, house) => {
    const recipe = recipeNamed(house, asked.meal);
    const facts = factsOfRecipe(house, recipe);
    if (!(facts.totals.massG > 0))
      throw new Refusal(
        'nothing-to-scale',
        `No line of ${recipe.name} is understood yet, so there is nothing to scale. See /recipe ${recipe.name}.`,
      );
    const targets = [asked.pouches, asked.trays, asked.servings, asked.factor, asked.atHand].filter(
      (t) => t !== undefined,
    );
    if (targets.length > 1)
      throw new Refusal(
        'two-targets',
        'I read two targets for the amount; give one of servings, pouches, trays, a factor or an ingredient.',
      );
    if (targets.length === 0 && asked.sodiumMg === undefined) {
      throw new Lacking(
        'no-target',
        `I read ${recipe.name}, but not to what: servings, pouches, trays, an ingredient at hand or a sodium target.`,
      );
    }
    const times = targets.length === 0 ? 1 : factorOf(house, recipe, facts, asked);
    if (!(times >= 0.01 && times <= 100))
      throw new Refusal(
        'bad-factor',
        `That would be ${sayNumber(times)} times the recipe; from 0.01 to 100 times I can reckon.`,
      );
    const lines = recipe.lines.map((line) => scaledLine(line, times, house.settings));
    return {
      recipe,
      facts,
      times,
      lines,
      sodiumMg: asked.sodiumMg,
      settings: house.settings,
      scaled: targets.length > 0,
    };
  },
  say: ({ recipe, facts, times, lines, sodiumMg: target, settings, scaled }) => {
    const said: string[] = [];
    const why: string[] = [];
    if (scaled) {
      const wetG = facts.finishedG * times;
      const inLoads =
        settings.loadLimitG === null
          ? ''
          : `, ${sayG(wetG, settings.units)} wet, ${sayCount(loads(wetG, settings.loadLimitG), 'dryer load')}`;
      said.push(
        `${recipe.name} times ${sayNumber(times)}: ${sayServings(recipe.servings * times)}${inLoads}.`,
      );
      said.push(...lines.map((line) => line.text));
      why.push(...amountLines(facts, times, lines, settings));
    }
    if (target !== undefined) said.push(...saltLines(recipe, facts, times, target, settings));
    return { group: said.join('\n'), why };
  },
});

function factorOf(
  house: House,
  recipe: Recipe,
  facts: RecipeFacts,
  asked: {
    servings: number | undefined;
    factor: number | undefined;
    trays: number | undefined;
    atHand: string | undefined;
    pouches: readonly { count: number; eachDryG: number }[] | undefined;
  },
): number {
  if (asked.servings !== undefined) return factorFromServings(asked.servings, recipe.servings);
  if (asked.factor !== undefined) return asked.factor;
  if (asked.pouches !== undefined) {
    const wantedG = asked.pouches.reduce((sum, { count, eachDryG }) => sum + count * eachDryG, 0);
    return factorFromPouches(1, wantedG, expectedDryG(facts.totals.solidsG, house.settings.residualMoisture));
  }
  if (asked.trays !== undefined) return factorFromTrays(asked.trays, trayWetG(house), facts.finishedG);
  return factorFromLine(house, recipe, asked.atHand!);
}

/** What one tray takes: a share of the dryer's limit, else what was loaded on trays before. */
function trayWetG(house: House): number {
  const { dryer, loadLimitG } = house.settings;
  if (dryer && loadLimitG !== null) return loadLimitG / dryer.trays;
  const loaded = house.batches.latest(10).flatMap((batch) => batch.trays.map((tray) => tray.wetG));
  if (loaded.length > 0) return loaded.reduce((sum, g) => sum + g, 0) / loaded.length;
  throw new Refusal(
    'tray-unknown',
    'I do not know yet how much a tray of yours takes. Tell me the dryer: /house dryer 4 trays 20 x 45 cm 4 kg.',
  );
}

function factorFromLine(house: House, recipe: Recipe, typed: string): number {
  const wanted = resolver(house)(typed);
  const words = new Set(fold(typed).split(' ').map(stem));
  const line =
    recipe.lines.find((l) => l.state === 'weighed' && wanted.food !== null && l.ndb === wanted.food.ndb) ??
    recipe.lines.find(
      (l) =>
        l.state === 'weighed' &&
        fold(`${l.called} ${l.typed}`)
          .split(' ')
          .map(stem)
          .some((w) => w.length > 2 && words.has(w)),
    );
  if (!line?.grams)
    throw new Refusal('no-such-ingredient', `${recipe.name} has no weighed line for "${typed}".`);
  if (wanted.grams === null)
    throw new Refusal(
      'no-amount',
      `I could not turn "${typed}" into grams. Say its weight: with 500 g ${line.called}.`,
    );
  return factorFromIngredient(wanted.grams, line.grams);
}

function amountLines(
  facts: RecipeFacts,
  times: number,
  lines: readonly ScaledLine[],
  settings: Settings,
): string[] {
  const g = (value: number) => sayG(value, settings.units);
  const wetG = facts.finishedG * times;
  const dryG = expectedDryG(facts.totals.solidsG, settings.residualMoisture) * times;
  const said = [`Wet ${g(wetG)}, dry about ${g(dryG)}.`];
  if (settings.loadLimitG === null)
    said.push("Dryer loads: tell me your dryer's limit first, /house dryer 4 trays 20 x 45 cm 4 kg.");
  else said.push(`A dryer load is at most ${g(settings.loadLimitG)}.`);
  const exact = lines.flatMap((line) => line.exact ?? []);
  if (exact.length > 0) said.push(`Exactly: ${exact.join(', ')}.`);
  const costG = lines.reduce((sum, line) => sum + line.costG, 0);
  const worst = lines.toSorted((a, b) => Math.abs(b.costFraction) - Math.abs(a.costFraction))[0];
  if (worst && Math.abs(worst.costFraction) > 0.005) {
    said.push(
      `Rounding to those measures ${costG >= 0 ? 'adds' : 'leaves out'} ${g(Math.abs(costG))} in all, most at ${worst.called}: ${worst.costFraction > 0 ? '+' : '−'}${Math.round(Math.abs(worst.costFraction) * 100)} %.`,
    );
  } else said.push('Rounding to those measures changes next to nothing.');
  return said;
}
