import { batchCard } from '#cards/batch-card.ts';
import { command } from '#chat/command.ts';
import type { Pouch } from '#core/records.ts';
import type { Choice } from '#core/talk.ts';
import { correctionFor } from '#house/corrections.ts';
import { batchNumbered, driedFacts, pouchCoded } from '#house/figures.ts';
import {
  boilingPhrase,
  containsLines,
  containsWhy,
  eatenDryPhrase,
  foundWetCaution,
  rawCaution,
  uncheckedCaution,
} from '#words/phrases.ts';
import { pouchQuestions } from '#house/packet-questions.ts';
import { mealOfBatch } from '#house/verdicts.ts';
import { vouchedOf } from '#house/dryness.ts';
import { foundLines } from '#words/found-words.ts';
import { vouchedPhrase } from '#words/dry-phrases.ts';
import { pouchFacts } from '#core/meal.ts';
import { percentDailyValue } from '#core/nutrition.ts';
import { Refusal } from '#core/refusal.ts';
import { batchNamed, optional, type PouchCode, pouchCodes } from '#words/parts.ts';
import type { House } from '#house/house.ts';
import { sayCode, sayDay, sayG, sayMonth, sayPacks, sayPour, sayServingsExactly } from '#words/say.ts';
import { addAtCamp } from '#words/camp-words.ts';
import { mixHolds } from '#words/mixed-words.ts';
import { howBatchEaten } from '#house/eating.ts';
import { soakOf, whereNow } from '#house/soaking.ts';

export default command({
  name: 'pouch',
  alsoCalled: ['card'],
  usage: '/pouch <pouch> · /pouch <batch>',
  summary: 'the whole card of a pouch, or of a batch',
  examples: ['/pouch B4-2', '/pouch B4'],
  offers: { of: 'pouches' },
  takes: { codes: optional(pouchCodes), batch: optional(batchNamed('any')) },
  run: ({ codes = [], batch: batchNo }, house) => {
    if (codes.length === 0 && batchNo !== undefined)
      return { ...batchCard(house, batchNo), meal: mealOfBatch(house, batchNo) };
    if (codes.length === 0)
      throw new Refusal('one-pouch', 'I still need a pouch code such as B4-2, or a batch code such as B4.');
    if (codes.length > mostCards)
      throw new Refusal('one-pouch', `At most ${mostCards} cards at a time: name fewer pouches.`);
    return codes.map((code) => cardOf(house, code));
  },
  say: (cards) => {
    if ('lines' in cards)
      return {
        group: cards.lines.join('\n'),
        why: cards.why,
        meals: [cards.meal],
        notesTell: 'verdicts',
      };
    const said = cards.map(cardLines);
    const [only, another] = cards;
    const buttons = only && !another ? [...nextSteps(only.pouch), ...only.asks] : [];
    return {
      group: said.map(({ lines }) => lines.join('\n')).join('\n\n'),
      why: said.flatMap(({ why }) => why),
      meals: cards.map(({ meal }) => meal),
      notesTell: 'verdicts',
      ...(buttons.length === 0 ? {} : { buttons, buttonsForAll: true }),
    };
  },
});

/** More than these do not fit on a phone. Chosen. */
const mostCards = 3;

function cardOf(house: House, code: PouchCode) {
  const pouch = pouchCoded(house, code);
  const batch = batchNumbered(house, pouch.batch);
  const facts = driedFacts(house, batch);
  const learnt = correctionFor(house, batch);
  return {
    pouch,
    batch,
    facts,
    figures: pouchFacts(pouch.dryG, facts, learnt.correction),
    isRated: learnt.ratings > 0 || batch.isRaw,
    soak: soakOf(house, batch),
    where: whereNow(house),
    eaten: howBatchEaten(house, batch),
    vouched: pouch.shownDry ? vouchedOf(house, batch, facts) : null,
    settings: house.settings,
    meal: mealOfBatch(house, pouch.batch),
    asks: pouch.state === 'stock' ? pouchQuestions(house, [batch.recipe]) : [],
  };
}

function cardLines({
  pouch,
  batch,
  facts,
  figures,
  isRated,
  soak,
  where,
  eaten,
  vouched,
  settings,
}: ReturnType<typeof cardOf>): { readonly lines: string[]; readonly why: string[] } {
  const { zone } = settings;
  const absorber = pouch.absorbers.length === 0 ? '' : `, absorber ${sayPacks(pouch.absorbers)}`;
  const unsure = facts.recipe.unresolved.length > 0 ? 'at least ' : '';
  const unsalted = facts.recipe.isSodiumLeast ? 'at least ' : '';
  const state =
    pouch.state === 'stock'
      ? 'In stock.'
      : `${pouch.state === 'used' ? 'Used' : 'Discarded'} ${sayDay(pouch.goneAtMs!, zone)}${pouch.goneWhy ? `: ${pouch.goneWhy}` : ''}.`;
  const best =
    pouch.checked && pouch.bestByOn !== null
      ? `Best by ${sayMonth(pouch.bestByOn)}. `
      : batch.mix?.bought
        ? 'No best-by date was told. '
        : '';
  return {
    lines: [
      `${sayCode(pouch)}: ${pouch.meal}`,
      ...(batch.isRaw ? [rawCaution] : []),
      ...(batch.mix && !batch.mix.bought ? [`Filled from ${mixHolds(batch.mix, settings.units)}.`] : []),
      `${sayG(pouch.dryG, settings.units)}${batch.mix?.bought ? '' : ' dry'}. ${best}${state}`,
      eaten.isDry
        ? eatenDryPhrase(eaten)
        : `Water: ${sayPour(figures.waterMl, isRated, settings)}.${batch.isRaw ? ' It need not boil: soak, then cook in a pot.' : ''}`,
      ...addAtCamp(figures.camp, settings.units),
      ...containsLines(facts.recipe),
      ...(pouch.foundWet ? [foundWetCaution] : pouch.shownDry ? [] : [uncheckedCaution]),
      ...foundLines(pouch, zone),
      ...(vouched ? [vouchedPhrase(vouched, settings)] : []),
    ],
    why: [
      `${sayCode(pouch)}: ${sayServingsExactly(figures.servings)}, ${unsure}${Math.round(figures.kcal)} kcal, ${unsalted}${Math.round(figures.sodiumMg)} mg sodium (${Math.round(percentDailyValue('sodiumMg', figures.sodiumMg))} % of the label's daily value).`,
      `${batch.mix?.bought ? 'Bought' : batch.mix ? 'Sealed' : `${batch.isRaw ? 'Loaded raw' : 'Cooked and loaded'} ${sayDay(batch.loadedAtMs, zone)}, sealed`} ${sayDay(pouch.sealedAtMs, zone)}${absorber}.`,
      ...containsWhy(facts.recipe),
      ...(pouch.checked && !batch.mix?.bought ? ['Best by is a planning date.'] : []),
      ...(eaten.isDry
        ? []
        : [
            `Exactly ${figures.waterMl.toFixed(1)} ml.${batch.isRaw ? '' : ` ${boilingPhrase(where.altitudeM, soak, where.place)}`}`,
          ]),
    ],
  };
}

/** What one does next with a pouch. */
const nextSteps = (pouch: Pouch): Choice[] =>
  pouch.state === 'stock'
    ? [
        { label: 'Eaten', request: `/use ${sayCode(pouch)}` },
        { label: 'Water', request: `/water ${sayCode(pouch)}` },
      ]
    : [];
