import { steadinessOf } from '#core/meal.ts';
import { dryOf, isSealedFrom, pouchesFrom } from '#house/dryness.ts';
import { batchNumbered, factsOfBatch, loadedBatch } from '#house/figures.ts';
import { dryingAhead, loadsKnown } from '#house/forecast.ts';
import { aheadLines } from '#house/forecast-said.ts';
import { flag, massG, optional } from '#words/parts.ts';
import {
  sayBatch,
  sayCode,
  sayCodes,
  sayCount,
  sayDay,
  sayG,
  sayList,
  sayMoment,
  sayNumber,
  sayPacks,
} from '#words/say.ts';
import { entryOf } from '#house/entries.ts';
import { takenAlong } from '#house/packing.ts';
import { aboutParts, batchAbout, pouchesAbout } from './about.ts';
import { question } from './question.ts';
import type { House } from '#house/house.ts';
import type { Pouch } from '#core/records.ts';
import { packLines } from '#house/packs.ts';
import { doubtPhrase } from '#words/dry-phrases.ts';

const deeds = {
  sealed: 'sealed',
  loaded: 'loaded',
  weighed: 'weighed',
  used: 'used',
  discarded: 'discarded',
} as const;
const did = (word: keyof typeof deeds) => flag(word);

const stateLine = (house: House, pouch: Pouch): string => {
  const code = sayCode(pouch);
  if (pouch.state !== 'stock') {
    const by = entryOf(house, [code], pouch.state);
    return `${code}, ${pouch.meal}: ${pouch.state} ${sayDay(pouch.goneAtMs!, house.settings.zone)}${pouch.goneWhy ? `, ${pouch.goneWhy}` : ''}${by ? `, recorded by ${by.by}` : ''}.`;
  }
  const held = house.trips.held(null).find((one) => one.pouch === pouch.id);
  const trip = held && house.trips.all().find((one) => one.id === held.trip);
  return `${code}, ${pouch.meal}: ${trip ? `kept for ${trip.place}${held.packed ? ', packed' : ', not packed yet'}` : 'in stock'}, not used.`;
};

export const whatOf = question({
  name: 'whatof',
  about: 'what happened to it',
  asked: ['what happened to B3-2?', 'did we eat B1-3?', 'who sealed B3?', 'when was B1 loaded?'],
  takes: {
    who: flag('who'),
    when: flag('when'),
    sealed: did('sealed'),
    loaded: did('loaded'),
    weighed: did('weighed'),
    used: did('used'),
    discarded: did('discarded'),
    ...aboutParts,
  },
  answer: ({ who, when, ...asked }, house) => {
    const verb = (Object.keys(deeds) as (keyof typeof deeds)[]).find((word) => asked[word]);
    const pouches = asked.codes ? pouchesAbout(house, asked) : [];
    const isOfBatch = pouches.length === 0 || verb === 'loaded' || verb === 'weighed';
    if (asked.meal !== undefined && pouches.length === 0 && (verb === 'used' || verb === 'discarded')) {
      const gone = pouchesAbout(house, asked)
        .filter((pouch) => pouch.state === verb)
        .toSorted((a, b) => b.goneAtMs! - a.goneAtMs!);
      const along =
        verb === 'used'
          ? pouchesAbout(house, asked).filter(
              ({ id, state }) => state === 'stock' && takenAlong(house).has(id),
            )
          : [];
      if (gone.length === 0 && along.length > 0)
        return {
          group: `No pouch of ${asked.meal} is recorded as eaten. ${sayCodes(along)} went on the trip, and nobody said what became of it.`,
          buttons: [
            { label: `Record ${sayCodes(along)} as eaten`, request: `/back ${sayCodes(along)} eaten` },
          ],
        };
      return gone.length === 0
        ? `No pouch of ${asked.meal} was ${verb} yet.`
        : gone
            .slice(0, 5)
            .map((pouch) => stateLine(house, pouch))
            .join('\n');
    }
    const codes = isOfBatch ? [`B${batchAbout(house, asked)}`] : pouches.map((pouch) => sayCode(pouch));
    if (pouches.length > 0 && !who && !when) {
      const missing =
        verb === undefined || (verb !== 'used' && verb !== 'discarded')
          ? []
          : pouches.filter((pouch) => pouch.state === 'stock');
      return {
        group: pouches.map((pouch) => stateLine(house, pouch)).join('\n'),
        buttons: [
          ...(missing.length > 0 && missing.length === pouches.length
            ? [
                {
                  label:
                    verb === 'used'
                      ? `Record ${sayCodes(missing)} as eaten`
                      : `Record ${sayCodes(missing)} as thrown away`,
                  request: `/${verb === 'used' ? 'use' : 'discard'} ${sayCodes(missing)}`,
                },
              ]
            : []),
          { label: 'The whole card', request: `/pouch ${codes[0]}` },
        ],
      };
    }
    const entry = entryOf(house, codes, verb);
    const { zone } = house.settings;
    const batch = batchNumbered(house, batchAbout(house, asked));
    if (entry)
      return {
        group: `${entry.by}, ${sayMoment(entry.atMs, zone)}: ${entry.did}.`,
        buttons: [{ label: 'The whole card', request: `/pouch ${codes[0]}` }],
      };
    if (isOfBatch && !who) {
      const sealed = pouchesFrom(house, batch.no)[0];
      const gone = house.pouches.ofBatch(batch.no).filter((pouch) => pouch.state !== 'stock');
      if (verb === 'used' || verb === 'discarded')
        return gone.length === 0
          ? `No pouch of ${sayBatch(batch)} was ${verb} yet.`
          : gone.map((pouch) => stateLine(house, pouch)).join('\n');
      return `${sayBatch(batch)}, ${batch.recipe.name}: ${batch.mix ? 'filled' : 'loaded'} ${sayMoment(batch.loadedAtMs, zone)}${batch.mix ? '' : sealed ? `, sealed ${sayMoment(sealed.sealedAtMs, zone)}` : ', nothing sealed yet'}.`;
    }
    const [first] = pouches;
    return first
      ? stateLine(house, first)
      : `Nothing is recorded of that for ${sayList(codes)}. /log shows what was.`;
  },
});

export const howHeavy = question({
  name: 'howheavy',
  about: 'how heavy it is',
  asked: ['how heavy is B3-4?', 'how much does B5 weigh?'],
  takes: {
    heaviest: flag('heaviest'),
    lightest: flag('lightest'),
    asLoaded: flag('asloaded'),
    ...aboutParts,
  },
  answer: ({ heaviest, lightest, asLoaded, ...asked }, house) => {
    const g = (value: number) => sayG(value, house.settings.units);
    if (heaviest ?? lightest) {
      const ranked = house.pouches
        .inStock()
        .toSorted((a, b) => (heaviest ? b.dryG - a.dryG : a.dryG - b.dryG));
      const alike = ranked.filter(({ dryG }) => dryG === ranked[0]!.dryG);
      return ranked.length === 0
        ? 'Nothing is in stock.'
        : `${sayCodes(alike)}: ${g(ranked[0]!.dryG)} dry ${[...new Set(alike.map(({ meal }) => meal))].join(', ')}.`;
    }
    if (asLoaded) {
      const of = batchNumbered(house, batchAbout(house, asked));
      return `${sayBatch(of)}, ${of.recipe.name}: ${g(factsOfBatch(house, of).wetG)} on ${sayCount(of.trays.length, 'tray')}, loaded ${sayMoment(of.loadedAtMs, house.settings.zone)}.`;
    }
    if (asked.codes) {
      const pouches = pouchesAbout(house, asked);
      const sum = pouches.reduce((all, pouch) => all + pouch.dryG, 0);
      const gone = pouches.filter((pouch) => pouch.state !== 'stock');
      return `${pouches.map((pouch) => `${sayCode(pouch)}: ${g(pouch.dryG)} dry ${pouch.meal}`).join('; ')}${pouches.length > 1 ? `; together ${g(sum)}` : ''}. The pouch itself is not in it.${gone.length > 0 ? ` ${sayCodes(gone)} left the stock.` : ''}`;
    }
    if (asked.batch === undefined && asked.meal !== undefined) {
      const stock = house.pouches.inStockOf(asked.meal);
      if (stock.length > 0)
        return `${asked.meal}: ${[...new Set(stock.map((pouch) => g(pouch.dryG)))].join(', ')} dry a pouch; ${g(stock.reduce((sum, pouch) => sum + pouch.dryG, 0))} in ${sayCount(stock.length, 'pouch', 'pouches')}.`;
    }
    if (asked.batch === undefined && asked.meal === undefined) {
      const stock = house.pouches.inStock();
      return `${g(stock.reduce((sum, pouch) => sum + pouch.dryG, 0))} of dry food in ${sayCount(stock.length, 'pouch', 'pouches')}. The pouches themselves are not in it.`;
    }
    const batch = loadedBatch(house, batchAbout(house, asked));
    const facts = factsOfBatch(house, batch);
    return facts.dryG === null
      ? `B${batch.no}, ${batch.recipe.name}: ${g(facts.wetG)} as loaded, not weighed since.${facts.expectedDryG === null ? '' : ` Expected dry: about ${g(facts.expectedDryG)}.`}`
      : `B${batch.no}, ${batch.recipe.name}: ${g(facts.dryG)} at ${sayMoment(facts.lastWeighedAtMs!, house.settings.zone)}; ${g(facts.wetG)} as loaded, so ${g(facts.wetG - facts.dryG)} of water gone.`;
  },
});

export const isDry = question({
  name: 'isdry',
  about: 'how dry it is',
  asked: ['is B6 dry?', 'can I seal B5?', 'when will it be ready?'],
  takes: aboutParts,
  answer: (asked, house) => {
    const drying = house.batches.latest(50).filter((one) => !isSealedFrom(house, one.no));
    const named = asked.codes ?? asked.batch ?? asked.meal;
    const meant =
      named === undefined
        ? drying
        : drying.filter(
            (one) =>
              (asked.batch === undefined || one.no === asked.batch) &&
              (asked.meal === undefined || one.recipe.name === asked.meal),
          );
    const batches = meant.length > 0 ? meant.slice(0, 4) : [batchNumbered(house, batchAbout(house, asked))];
    const lines: string[] = [];
    const buttons: { label: string; request: string }[] = [];
    const known = loadsKnown(house);
    for (const batch of batches) {
      const facts = factsOfBatch(house, batch);
      const verdict = dryOf(house, batch, facts);
      const steady = steadinessOf(batch, house.settings);
      const g = (value: number) => sayG(value, house.settings.units);
      const hours = sayNumber(Math.round((house.nowMs - batch.loadedAtMs) / 3_600_000));
      const head = `${sayBatch(batch)}, ${batch.recipe.name}:`;
      const weight =
        facts.dryG === null
          ? 'not weighed since loading'
          : `${g(facts.dryG)}${facts.expectedDryG === null ? '' : `, about ${g(facts.expectedDryG)} expected when dry`}`;
      const sealed = pouchesFrom(house, batch.no);
      if (sealed.length > 0) lines.push(`${head} sealed already, ${sayCodes(sealed)}.`);
      else if (verdict.is === 'dry') {
        lines.push(
          verdict.doubtedFraction === null
            ? `${head} yes, steady: ${weight}. Open the thickest piece before sealing; weigh again if hours have passed since.`
            : `${head} steady, but not sure: ${weight}. ${doubtPhrase(verdict.doubtedFraction)}`,
        );
        buttons.push({ label: `Card of B${batch.no}`, request: `/pouch B${batch.no}` });
      } else {
        const why =
          verdict.because === 'wet by balance'
            ? 'by the recipe too much of it is still water'
            : verdict.because === 'damp jar'
              ? 'the jar was too damp'
              : verdict.because === 'cold inside'
                ? 'a piece was cold inside'
                : steady.is === 'not yet' && steady.why === 'one weighing'
                  ? 'it takes two weighings that agree'
                  : 'its weight is not steady';
        lines.push(
          `${head} not shown to be dry, ${why}; ${weight}. In the dryer for ${hours} h.`,
          ...aheadLines(house, dryingAhead(house, batch, facts, known)),
        );
      }
    }
    return { group: lines.join('\n'), ...(buttons.length === 0 ? {} : { buttons }) };
  },
});

export const absorber = question({
  name: 'absorber',
  about: 'which absorber',
  asked: ['which absorber does B5-1 have?', 'what absorber for 60 g?'],
  takes: { g: optional(massG('a weight')), ...aboutParts },
  answer: ({ g, ...asked }, house) => {
    const [pouch] = asked.codes ? pouchesAbout(house, asked) : [];
    if (pouch)
      return pouch.absorbers.length === 0
        ? `${sayCode(pouch)} has no absorber on record.`
        : `${sayCode(pouch)}: ${sayPacks(pouch.absorbers)}.`;
    const { absorbersMl, pouch: size } = house.settings;
    const own =
      absorbersMl.length === 0
        ? 'You have not told me your absorbers: /house absorbers 100 300 500 ml'
        : `You have absorbers of ${sayList(absorbersMl.map(sayNumber))} ml.${packLines(house)
            .map((line) => ` ${line}`)
            .join('')}`;
    return `${own} ${size === null ? 'The pouch is not told yet: /house pouch 20 x 30 cm.' : `For ${g === undefined ? 'a pouch' : sayG(g)} the size is reckoned when you seal, from the food's bulk and the pouch: /seal says it.`}`;
  },
});
