import { pouchFacts } from '#core/meal.ts';
import {
  batchNumbered,
  driedFacts,
  factsOfRecipe,
  freeStock,
  pouchCoded,
  mealNamed,
} from '#house/figures.ts';
import { flag } from '#words/parts.ts';
import { sayCode, sayList, sayNumber } from '#words/say.ts';
import type { House } from '#house/house.ts';
import { type About, aboutParts, mealAbout } from './about.ts';
import { question } from './question.ts';

/** Sodium in table salt, mg in a gram: 22.98976928 / (22.98976928 + 35.45). @source iupac-weights */
const sodiumMgPerSaltG = 393.4;

export const nutrition = question({
  name: 'nutrition',
  about: 'salt and energy',
  asked: ['how much salt is in the soup?', 'how many calories has B2-1?'],
  takes: {
    sodium: flag('sodium'),
    energy: flag('energy'),
    all: flag('all'),
    each: flag('each'),
    ...aboutParts,
  },
  answer: ({ codes, ...asked }, house) =>
    (codes ?? [undefined]).map((code) => nutrientsOf(house, { ...asked, codes: code && [code] })).join('\n'),
});

interface Asked extends About {
  readonly sodium: true | undefined;
  readonly energy: true | undefined;
  readonly all: true | undefined;
  readonly each: true | undefined;
}

/** What a pouch, or a serving of a meal, holds of what is asked for. */
function nutrientsOf(house: House, { sodium, energy, all, each, ...asked }: Asked): string {
  const name = mealAbout(house, asked);
  const [code] = asked.codes ?? [];
  // 'In one chili pouch': the pouch of it that would be taken first.
  const pouch = code ? pouchCoded(house, code) : each ? freeStock(house, name)[0] : undefined;
  const recipe = pouch ? batchNumbered(house, pouch.batch).recipe : mealNamed(house, name);
  const facts = factsOfRecipe(house, recipe);
  const { eaten: totals } = facts;
  const open = [...facts.uncounted, ...facts.unresolved].map((line) => line.typed);
  const least = open.length > 0 || totals.unknown.length > 0 ? 'at least ' : '';
  const own = pouch && pouchFacts(pouch.dryG, driedFacts(house, batchNumbered(house, pouch.batch)));
  const what = pouch ? `${sayCode(pouch)}, ${name}` : `${name}, a serving`;
  const lines: string[] = [];
  if (sodium || all) {
    const mg = own?.sodiumMg ?? totals.sodiumMg / recipe.servings;
    lines.push(
      `${what}: ${facts.isSodiumLeast ? 'at least ' : ''}${Math.round(mg)} mg sodium, as in ${sayNumber(Math.round((mg / sodiumMgPerSaltG) * 10) / 10)} g of salt.`,
    );
  }
  if (energy || all)
    lines.push(`${what}: ${least}${Math.round(own?.kcal ?? totals.kcal / recipe.servings)} kcal.`);
  if (all) {
    const g = (value: number) => `${Math.round(value / recipe.servings)} g`;
    lines.push(
      `A serving: ${g(totals.proteinG)} protein, ${g(totals.fatG)} fat, ${g(totals.carbohydrateG)} carbohydrate.`,
    );
  }
  if (open.length > 0) lines.push(`Not counted: ${sayList(open.map((line) => `"${line}"`))}.`);
  return lines.join('\n');
}
