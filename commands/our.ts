import { command } from '#chat/command.ts';
import { brokenAnywhere } from '#house/broken.ts';
import type { House } from '#house/house.ts';
import { factsOfRecipe, nameKey, recipeNamed } from '#house/figures.ts';
import { foodMeant, forget, learntLines, plausible, sayTaught, taughtBy } from '#house/learning.ts';
import {
  applyPacket,
  packetLine,
  packetOf,
  packetQuestions,
  readPacketOf,
  recipesFor,
  warnEverywhere,
} from '#house/packets.ts';
import { type MealShown, mealOfRecipe } from '#house/verdicts.ts';
import { Refusal } from '#core/refusal.ts';
import type { Choice } from '#core/talk.ts';
import { packetKey, packetLarder } from '#foods/packet-things.ts';
import { foldName } from '#foods/line.ts';
import { type PacketAsked, packetAsked } from '#words/packet-request.ts';
import { part } from '#words/parts.ts';
import { sure } from '#words/sure.ts';
import { Reading } from '#words/reading.ts';
import { takeName } from '#words/names.ts';
import { sayList, sayNumber } from '#words/say.ts';
import { type Teaching, teaching } from '#words/teaching.ts';

const packet = packetAsked(packetLarder);
/** A packet first: what speaks of one is never a name for something. */
const told = part<PacketAsked | Teaching>(
  teaching.like,
  (reading, names) => packet.read(reading, names) ?? teaching.read(reading, names),
);

const longestWords = 40;
const [leastCupMl, mostCupMl] = [100, 500];

export default command({
  name: 'our',
  alsoCalled: ['ours'],
  usage:
    '/our <measure> is <weight or volume> · by <words> we mean <meal or food> · <food> contains celery, no egg · <what> forget',
  summary: "the household's own measures, words and what its packets say",
  examples: [
    '/our tin of tomatoes is 390 g',
    '/our mug is 300 ml',
    '/our onion is 120 g',
    '/our by broth we mean barley soup',
    '/our by mince we mean lean ground beef',
    '/our vegetable stock contains celery, no milk, no egg',
    '/our',
  ],
  help: [
    'What was taught is used in recipes from then on and named beside the line. "/our tin of tomatoes forget" takes it back.',
    'What you read on a packet settles the small print of that food from then on; "in barley soup" at the end settles it there alone.',
    'In answer to me the slash may be left out: our cup is 250 ml. By soup we mean barley soup.',
  ],
  records: true,
  takes: { sure, told },
  run: ({ told: asked, sure: isSure }, house): Outcome => {
    if (asked.is === 'read' || asked.is === 'applied' || asked.is === 'later')
      return packetTold(house, asked, isSure === true);
    if (asked.is === 'list')
      return {
        lines: [...learntLines(house), ...house.packets.all().map((one) => packetLine(house, one))],
        did: undefined,
      };
    if (asked.is === 'forget') {
      const packetOfIt = house.packets.all().find(({ foodKey }) => foodKey === packetKey(asked.words));
      if (packetOfIt) house.packets.forget(packetOfIt.foodKey);
      const what = packetOfIt
        ? `the packet of ${packetOfIt.called}; recipes keep what was read`
        : forget(house, asked.words);
      return { lines: [`Forgotten: ${what}.`], did: `forgot ${what}` };
    }
    return asked.is === 'measure' ? learnMeasure(house, asked) : learnName(house, asked);
  },
  say: ({ lines, did, buttons = [], meals = [], asks }) => {
    if (did !== undefined || asks)
      return {
        group: lines.join('\n'),
        ...(did === undefined ? {} : { did }),
        ...(buttons.length === 0 ? {} : { buttons }),
        meals,
      };
    return {
      group:
        lines.length === 0
          ? 'Nothing was taught yet.\nFor instance: /our tin of tomatoes is 390 g'
          : ['In this house:', ...lines].join('\n'),
    };
  },
});

interface Outcome {
  readonly lines: readonly string[];
  readonly did?: string | undefined;
  readonly buttons?: Choice[];
  readonly meals?: MealShown[];
  /** Nothing is recorded, and something is said all the same. */
  readonly asks?: boolean;
}

/** What somebody read on a packet, and where it holds. */
function packetTold(house: House, asked: PacketAsked, isSure: boolean): Outcome {
  if (asked.is === 'later')
    return {
      lines: [
        `Then the small print of ${asked.food} stays unknown, and unknown is not served to whom it matters.`,
      ],
      asks: true,
    };
  if (asked.is === 'applied') {
    const packet = packetOf(house, asked.food);
    const recipes = asked.meal === null ? recipesFor(house, packet) : [recipeNamed(house, asked.meal)];
    const changed = recipes.flatMap((recipe) => {
      const at = applyPacket(house, recipe, packet);
      return at.length > 0 ? [`${recipe.name}, line ${at.join(', ')}`] : [];
    });
    if (changed.length === 0)
      throw new Refusal('changes-nothing', `The packet of ${packet.called} changes no line there.`);
    const did = `put the packet of ${packet.called} into ${sayList(recipes.map(({ name }) => name))}`;
    return {
      lines: [`${sayList(changed)}: ${packetLine(house, packet)}.`, ...brokenAnywhere(house)],
      did,
      meals: recipes.map(({ name }) => shownMeal(house, name)),
    };
  }
  const { told, meal, alone, typed } = asked;
  const { packet, idle } = readPacketOf(house, told, isSure, (food) => typed.replace(told.food, food));
  if (!alone) house.packets.keep(packet);
  const warned = alone ? [] : warnEverywhere(house, packet);
  const at = meal === null ? [] : applyPacket(house, recipeNamed(house, meal), packet);
  if (alone && at.length === 0)
    throw new Refusal('changes-nothing', `${meal} has no ${packet.called} whose small print that settles.`);
  const others = alone ? [] : recipesFor(house, packet);
  return {
    lines: [
      `Noted: ${packetLine(house, packet)}.${alone ? ` For ${meal} alone.` : ''}`,
      ...(at.length > 0 ? [`It holds in ${meal}, line ${at.join(', ')}.`] : []),
      ...(idle.length > 0 ? [`"No ${sayList(idle)}" settles nothing: it names a part of an allergen.`] : []),
      ...(warned.length > 0 ? [`What it holds or may hold counts at once in ${sayList(warned)}.`] : []),
      ...(others.length > 0
        ? [`What it clears is not used yet in ${sayList(others.map(({ name }) => name))}, recorded before.`]
        : []),
      ...(at.length + warned.length > 0 ? brokenAnywhere(house) : []),
    ],
    did: `read the packet of ${packet.called}${meal === null ? '' : ` for ${meal}`}`,
    buttons: [
      ...(meal === null ? [] : packetQuestions(house, recipeNamed(house, meal))),
      ...others.slice(0, 3).map(({ name }) => ({
        label: `Use it in ${name}`,
        request: `/our ${packet.called} packet in ${name}`,
      })),
      ...(others.length > 1
        ? [{ label: 'Use it in all', request: `/our ${packet.called} packet in all recipes` }]
        : []),
    ],
    meals: meal === null ? [] : [shownMeal(house, meal)],
  };
}

function shownMeal(house: House, name: string): MealShown {
  const recipe = recipeNamed(house, name);
  return mealOfRecipe(recipe, factsOfRecipe(house, recipe));
}

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
