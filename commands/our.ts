import { command } from '#chat/command.ts';
import type { House } from '#house/house.ts';
import { nameKey } from '#house/figures.ts';
import { foodMeant, forget, learntLines, plausible, sayTaught, taughtBy } from '#house/learning.ts';
import { type Outcome, packetTold, panelTold } from '#house/packet-told.ts';
import { forgetRead, readLines } from '#house/packets.ts';
import { Refusal } from '#core/refusal.ts';
import { packetLarder } from '#foods/packet-things.ts';
import { foldName } from '#foods/line.ts';
import { type PanelAsked, panelAsked } from '#words/panel-parts.ts';
import { type PacketAsked, packetAsked } from '#words/packet-request.ts';
import { part } from '#words/parts.ts';
import { sure } from '#words/sure.ts';
import { Reading } from '#words/reading.ts';
import { takeName } from '#words/names.ts';
import { sayNumber } from '#words/say.ts';
import { type Teaching, teaching } from '#words/teaching.ts';

const packet = packetAsked(packetLarder);
/** A packet first: what speaks of one is never a name for something. */
const told = part<PanelAsked | PacketAsked | Teaching>(
  teaching.like,
  (reading, names) =>
    panelAsked.read(reading, names) ?? packet.read(reading, names) ?? teaching.read(reading, names),
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
    if (asked.is === 'panel') return panelTold(house, asked);
    if (asked.is === 'read' || asked.is === 'applied' || asked.is === 'later' || asked.is === 'none')
      return packetTold(house, asked, isSure === true);
    if (asked.is === 'list')
      return {
        lines: [...learntLines(house), ...readLines(house)],
        did: undefined,
      };
    if (asked.is === 'forget') {
      const read = forgetRead(house, asked.words);
      const what =
        read === undefined ? forget(house, asked.words) : `the packet of ${read}; recipes keep what was read`;
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
        notesTell: 'verdicts',
      };
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
