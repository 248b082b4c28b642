import { command } from '#chat/command.ts';
import type { House } from '#house/house.ts';
import { nameKey } from '#house/figures.ts';
import { foodMeant, forget, learntLines, plausible, sayTaught, taughtBy } from '#house/learning.ts';
import { Refusal } from '#core/refusal.ts';
import { foldName } from '#foods/line.ts';
import { Reading } from '#words/reading.ts';
import { takeName } from '#words/names.ts';
import { sayNumber } from '#words/say.ts';
import { type Teaching, teaching } from '#words/teaching.ts';

const longestWords = 40;
const [leastCupMl, mostCupMl] = [100, 500];

export default command({
  name: 'our',
  alsoCalled: ['ours'],
  usage: '/our <measure> is <weight or volume> · by <words> we mean <meal or food> · <what> forget',
  summary: "the household's own measures and words: our tin, our mug, what we call things",
  examples: [
    '/our tin of tomatoes is 390 g',
    '/our mug is 300 ml',
    '/our onion is 120 g',
    '/our by broth we mean barley soup',
    '/our by mince we mean lean ground beef',
    '/our',
  ],
  help: [
    'What was taught is used in recipes from then on and named beside the line. "/our tin of tomatoes forget" takes it back.',
    'In answer to me the slash may be left out: our cup is 250 ml. By soup we mean barley soup.',
  ],
  records: true,
  takes: { told: teaching },
  run: ({ told }, house) => {
    if (told.is === 'list') return { lines: learntLines(house), did: undefined };
    if (told.is === 'forget') {
      const what = forget(house, told.words);
      return { lines: [`Forgotten: ${what}.`], did: `forgot ${what}` };
    }
    return told.is === 'measure' ? learnMeasure(house, told) : learnName(house, told);
  },
  say: ({ lines, did }) => {
    if (did !== undefined) return { group: lines.join('\n'), did };
    return {
      group:
        lines.length === 0
          ? 'Nothing was taught yet.\nFor instance: /our tin of tomatoes is 390 g'
          : ['In this house:', ...lines].join('\n'),
    };
  },
});

function learnMeasure(house: House, told: Extract<Teaching, { is: 'measure' }>) {
  const { grams, ml } = told;
  plausible(grams, ml);
  const taught = taughtBy(house, told.what, ml !== null);
  const amount = grams === null ? `${sayNumber(ml!)} ml` : `${sayNumber(grams)} g`;
  if (taught.unit === 'cup' && taught.food === null && ml !== null) {
    if (ml < leastCupMl || ml > mostCupMl)
      throw new Refusal(
        'out-of-range',
        `A cup holds ${leastCupMl} to ${mostCupMl} ml; for another vessel say our mug.`,
      );
    house.told.set('cupMl', ml);
    return {
      lines: [`Noted: our cup holds ${amount}, for recipes and for water.`],
      did: `our cup is ${amount}`,
    };
  }
  const known =
    taught.food === null
      ? undefined
      : foodMeant(
          house,
          taught.food,
          (called) => `${sayTaught({ ...taught, food: called })} is ${told.typed}`,
        );
  const isMeasure = ['cup', 'tbsp', 'tsp', 'dessertspoon', 'pint', 'quart', 'gallon'].includes(taught.unit);
  if (taught.food === null && grams !== null && isMeasure)
    throw new Refusal(
      'of-what',
      `A ${taught.unit} of what? It weighs differently with each food: our ${taught.unit} of flour is ${amount}.`,
    );
  const same = house.learnt
    .measures()
    .find((one) => one.unit === taught.unit && foldName(one.food ?? '') === foldName(taught.food ?? ''));
  house.learnt.learnMeasure({ ...taught, food: same?.food ?? taught.food, grams, ml });
  const what = sayTaught(taught);
  const of = known ? ` (${known.called})` : '';
  return {
    lines: [`Noted: our ${what} is ${amount}${of}. Recipes recorded from now on count with it.`],
    did: `our ${what} is ${amount}`,
  };
}

function learnName(house: House, { words, means }: Extract<Teaching, { is: 'name' }>) {
  if (words.length > longestWords)
    throw new Refusal(
      'long-name',
      `"${words}" is too long for a name of yours: up to ${longestWords} characters.`,
    );
  const meals = house.recipes.names();
  if (meals.some((meal) => nameKey(meal) === nameKey(words)))
    throw new Refusal('is-a-meal', `"${words}" is a recipe of yours already, so it cannot mean another.`);
  const reading = new Reading(means);
  const meal = takeName(reading, meals, 'meal', true);
  if (meal !== undefined && reading.leftovers().length === 0) {
    house.learnt.learnAlias(words, nameKey(meal));
    return { lines: [`Noted: by ${words} we mean ${meal}.`], did: `by ${words} we mean ${meal}` };
  }
  const food = foodMeant(house, means, (called) => `by ${words} we mean ${called}`);
  house.learnt.learnFood(foldName(words), means.toLowerCase());
  return {
    lines: [
      `Noted: by ${words} we mean ${food.called} (food table: ${food.food!.name}). Recipes recorded from now on count with it.`,
    ],
    did: `by ${words} we mean ${food.called}`,
  };
}
