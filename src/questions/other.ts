import { boilingPointC } from '#core/boiling.ts';
import { houseSettings } from '#settings/house-settings.ts';
import { tripsAhead } from '#house/trips.ts';
import { batchNumbered, freeStock, nameKey } from '#house/figures.ts';
import { soakMinutes } from '#core/soak.ts';
import { coldLines, eatenDryPhrase, rawCaution } from '#words/phrases.ts';
import { howBatchEaten } from '#house/eating.ts';
import { streamC } from '#words/water-parts.ts';
import { altitudeM, optional, part, restOfText } from '#words/parts.ts';
import { sayCode, sayCodes, sayCount, sayList } from '#words/say.ts';
import type { Choice } from '#core/talk.ts';
import { aboutParts, pouchesAbout } from './about.ts';
import { question } from './question.ts';
import { ingredientsCost, pouchCost, sayMoney, unpricedPhrase } from '#house/costs.ts';
import { isSealedFrom } from '#house/dryness.ts';
import type { House } from '#house/house.ts';
import type { Pouch } from '#core/records.ts';
import { soakOf, whereNow } from '#house/soaking.ts';
import { altitudeOf, tripsOpen } from '#house/trips.ts';
import { takeWhole } from '#words/names.ts';

/** A trip, its place typed in full. */
const wholePlace = optional(
  part<string>('a trip by its place', (reading, names) => takeWhole(reading, names.trips)),
);

export const soak = question({
  name: 'soak',
  about: 'how long it soaks',
  asked: ['how long do I let the curry stand at 3000 m?'],
  takes: { altitude: optional(altitudeM), place: wholePlace, ...aboutParts },
  answer: ({ altitude, place, codes, batch, meal }, house) => {
    const trip = place === undefined ? undefined : tripsOpen(house).find((one) => one.place === place);
    const where =
      altitude !== undefined
        ? { altitudeM: altitude, place: null }
        : trip
          ? { altitudeM: altitudeOf(trip, house), place: trip.place }
          : whereNow(house);
    const metres = where.altitudeM;
    const no =
      codes?.[0]?.batch ?? batch ?? house.batches.latest(100).find((one) => one.recipe.name === meal)?.no;
    const soak =
      no === undefined ? { extraMin: 0, because: 'usual' as const } : soakOf(house, batchNumbered(house, no));
    const isRaw = no !== undefined && batchNumbered(house, no).isRaw;
    const eaten = no === undefined ? null : howBatchEaten(house, batchNumbered(house, no));
    if (eaten?.isDry) return eatenDryPhrase(eaten);
    const boilC = boilingPointC(metres);
    return [
      ...(isRaw ? [rawCaution] : []),
      `${soakMinutes(boilC, soak.extraMin)} min, stirred and closed, at ${Math.round(metres)} m${where.place === null ? '' : ` (${where.place})`}, where water boils at ${boilC.toFixed(1)} °C (${soak.because === 'rated' ? 'as you rated it' : 'common practice; thick pieces take longer'}).`,
    ].join('\n');
  },
});

export const coldWater = question({
  name: 'coldwater',
  about: 'with cold water',
  asked: ['can we use cold water for the soup?'],
  takes: { altitude: optional(altitudeM), ...aboutParts },
  answer: ({ codes, batch, meal }, house) => {
    const no =
      codes?.[0]?.batch ?? batch ?? house.batches.latest(100).find((one) => one.recipe.name === meal)?.no;
    if (no !== undefined && batchNumbered(house, no).isRaw) return `No: it was dried RAW. ${rawCaution}`;
    const of = no === undefined ? undefined : batchNumbered(house, no);
    const eaten = of && howBatchEaten(house, of);
    if (eaten?.isDry) return eatenDryPhrase(eaten);
    return [
      'The same amount of water, and far longer.',
      ...coldLines(streamC, of ? soakOf(house, of).extraMin : 0),
      ...(no === undefined ? [] : [`How much: /water ${codes?.[0] ? sayCode(codes[0]) : `B${no}`} cold`]),
    ].join('\n');
  },
});

export const settingOf = question({
  name: 'settingof',
  about: 'what is set',
  asked: ['what is our altitude?', 'which absorbers do we have?'],
  takes: { name: optional(restOfText('a setting')) },
  answer: ({ name }, house) => {
    const word = name?.toLowerCase() ?? '';
    const found = houseSettings.find(({ words }) =>
      words.some((one) => one === word || one === word.replace(/s$/, '') || `${one}s` === word),
    );
    if (!found) return { group: houseSettings.map((setting) => setting.say(house.settings)).join('\n') };
    return {
      group: `${found.say(house.settings)}.`,
      buttons: [{ label: 'All settings', request: '/house' }],
    };
  },
});

const worryKinds = ['swollen', 'smells', 'stood', 'loose'] as const;
const advice: Record<(typeof worryKinds)[number], readonly string[]> = {
  swollen: [
    'Do not open it and do not taste. Swollen at home: throw it out closed (gas may come from germs; botulism cannot be smelled).',
    'Swollen on a mountain only: air grows on the way up. Judge it again at home height; if it is tight there, throw it out.',
  ],
  smells: [
    'Throw it out, and do not taste to find out. Mould, slime or a wrong smell: the whole pouch goes.',
  ],
  stood: [
    'Rehydrated food is fresh food: eat within 2 hours (1 hour above 32 °C), else throw it out. Boiling it again does not make it safe.',
  ],
  loose: [
    'A pouch that lost its vacuum has drawn air. Dry, crisp and found within days: dry it on, seal it anew with a new absorber, or eat it soon.',
    'Soft, damp or long loose: throw it out.',
  ],
};

export const worry = question({
  name: 'worry',
  about: 'is it safe',
  asked: ['B3-4 is puffy, what do I do?', 'it stood for four hours, can we eat it?'],
  takes: {
    kind: part<(typeof worryKinds)[number]>('what is wrong', (reading) => {
      const index = [...reading.left()].find((i) =>
        worryKinds.some((kind) => kind === reading.all[i]!.plain),
      );
      if (index === undefined) return undefined;
      reading.take(index);
      return worryKinds.find((kind) => kind === reading.all[index]!.plain);
    }),
    ...aboutParts,
  },
  answer: ({ kind, ...asked }, house) => {
    const pouches = asked.codes ? pouchesAbout(house, asked).filter((pouch) => pouch.state === 'stock') : [];
    const codes = sayCodes(pouches);
    const buttons: Choice[] =
      pouches.length === 0
        ? []
        : [
            { label: `Throw out ${codes}`, request: `/discard ${codes} ${kind}` },
            { label: 'Its card', request: `/pouch ${sayCode(pouches[0]!)}` },
          ];
    return {
      group: [...advice[kind], 'Common practice; in doubt, throw it out. Nothing is recorded.'].join('\n'),
      ...(buttons.length === 0 ? {} : { buttons }),
    };
  },
});

export const undoable = question({
  name: 'undoable',
  about: 'what can be taken back',
  asked: ['can I undo?'],
  takes: {},
  answer: (_, house) => {
    const last = house.journal.latest(50).find((entry) => entry.undoneBy === null);
    return last
      ? {
          group: `The last thing recorded is: ${last.did}, by ${last.by}. Nothing is taken back yet.`,
          buttons: [{ label: 'Take it back', request: '/undo' }],
        }
      : 'Nothing is recorded that could be taken back.';
  },
});

const noPrice = 'No price is told yet, so I cannot say. One at a time: /prices red lentils 3.20 EUR per kg';

export const cost = question({
  name: 'cost',
  about: 'what it costs',
  asked: ['what does B4-2 cost?', 'what does a serving of the soup cost?'],
  takes: aboutParts,
  answer: (asked, house) => {
    const [pouch] = asked.codes || asked.batch !== undefined ? pouchesAbout(house, asked) : [];
    if (pouch) return pouchCosts(house, pouch);
    const meals = asked.meal === undefined ? house.recipes.names() : [asked.meal];
    const known = house.prices.all();
    if (known.length === 0) return noPrice;
    const lines = meals.slice(0, 6).map((name) => {
      const recipe = house.recipes.find(nameKey(name))!;
      const { sum, unpriced } = ingredientsCost(house, recipe.lines);
      const each = sayMoney(
        sum / recipe.servings,
        known.find(({ currency }) => currency !== '')?.currency ?? '',
      );
      return sum === 0 && unpriced.length > 0
        ? `${name}: no price of what is in it.`
        : unpriced.length === 0
          ? `${name}: ${each} a serving.`
          : `${name}: at least ${each} a serving, ${unpricedPhrase(unpriced)}.`;
    });
    return lines.join('\n');
  },
});

function pouchCosts(house: House, pouch: Pouch) {
  const found = pouchCost(house, pouch);
  if (!found) return noPrice;
  const { lines, sum, currency, unpriced } = found;
  const isLow = unpriced.length > 0;
  return {
    group: [
      `${sayCode(pouch)}, ${pouch.meal}: ${isLow ? 'at least' : 'about'} ${sayMoney(sum, currency)}.`,
      ...(isLow ? [`There is ${unpricedPhrase(unpriced)}.`] : []),
    ].join('\n'),
    why: lines.map(
      ({ what, sum: one, atMost }) => `${what}: ${atMost ? 'at most ' : ''}${sayMoney(one, currency)}`,
    ),
  };
}

export const firstWords = question({
  name: 'firstwords',
  about: 'what I can do',
  asked: ['what can you do?', 'hi'],
  takes: {},
  answer: (_, house) => {
    const drying = house.batches.latest(20).filter((one) => !isSealedFrom(house, one.no));
    const stock = freeStock(house);
    const [trip] = tripsAhead(house);
    const recipes = house.recipes.names();
    const lines = ['I keep the numbers of your freeze-dried trip meals, from the pot to the last spoon.'];
    const buttons: Choice[] = [];
    if (recipes.length === 0) {
      lines.push(
        'Begin with a recipe: paste it here, its name first, an ingredient a line. Then load the dryer, weigh, seal.',
      );
      buttons.push(
        { label: 'How a recipe is typed', request: '/help recipe' },
        { label: 'Settings of the house', request: '/house' },
      );
    }
    if (drying.length > 0) {
      lines.push(
        `In the dryer: ${sayList(drying.slice(0, 3).map((one) => `B${one.no} ${one.recipe.name}`))}. Tell me its weights, tray by tray.`,
      );
      buttons.push({ label: `How far is B${drying[0]!.no}`, request: `/pouch B${drying[0]!.no}` });
    }
    if (stock.length > 0) {
      const first = stock[0]!;
      lines.push(
        `${sayCount(stock.length, 'pouch is', 'pouches are')} in stock. Ask: how much water for ${sayCode(first)}?`,
      );
      buttons.push(
        { label: 'What is in stock', request: '/stock' },
        { label: `Water for ${sayCode(first)}`, request: `/water ${sayCode(first)}` },
      );
    }
    if (trip) {
      lines.push(`Next trip: ${trip.place}.`);
      buttons.push({ label: `Food for ${trip.place}`, request: `/pick "${trip.place}"` });
    }
    lines.push('Questions change nothing; /undo takes the last thing back; /help lists all.');
    return { group: lines.join('\n'), buttons: buttons.slice(0, 4) };
  },
});
