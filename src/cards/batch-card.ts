import { type BatchFacts, steadinessOf } from '#core/meal.ts';
import type { Batch, Mix } from '#core/records.ts';
import { sayBatch, sayCodes, sayCount, sayDay, sayG, sayMoment, sayNumber } from '#words/say.ts';
import type { House } from '#house/house.ts';
import { batchNumbered, factsOfBatch } from '#house/figures.ts';
import { dryingAhead } from '#house/forecast.ts';
import { aheadLines } from '#house/forecast-said.ts';
import { containsLines, rawCaution } from '#words/phrases.ts';
import { dryPhrase } from '#words/dry-phrases.ts';
import { dryingEnergy } from '#house/costs.ts';
import { dryOf, pouchesFrom, sealedOf } from '#house/dryness.ts';
import { dryAbout } from '#house/weighing.ts';
import { restG } from '#core/rest.ts';
import { mixHolds } from '#words/mixed-words.ts';

/** A batch from the trays to what is left of it. */
export function batchCard(
  house: House,
  no: number,
): { readonly lines: readonly string[]; readonly why: readonly string[] } {
  const batch = batchNumbered(house, no);
  const facts = factsOfBatch(house, batch);
  const { settings } = house;
  if (batch.mix) return { lines: mixCard(house, batch, batch.mix, facts), why: [] };
  const g = (value: number) => sayG(value, settings.units);
  const pouches = pouchesFrom(house, no);
  const sealedG = sealedOf(house, no).reduce((sum, one) => sum + one.dryG, 0);
  const dry =
    facts.dryG === null
      ? `not weighed dry yet${facts.expectedDryG === null ? '' : `, expected about ${g(facts.expectedDryG)}`}`
      : `${g(facts.dryG)} dry at ${sayMoment(facts.lastWeighedAtMs!, settings.zone)}`;
  const verdict = dryOf(house, batch, facts);
  const isDrying = pouches.length === 0 && verdict.is === 'not dry' && verdict.because === 'not steady';
  const stands = dryPhrase(verdict, steadinessOf(batch, settings), dryAbout(batch), settings);
  // How it was shown to be dry is a reason; that it was not is read first.
  const isShown = verdict.is === 'dry' && stands.length > 0;
  const lines = [
    `B${no}: ${batch.recipe.name}${batch.factor === 1 ? '' : ` x${sayNumber(batch.factor)}`}, loaded ${sayDay(batch.loadedAtMs, settings.zone)}`,
    `${g(facts.wetG)} wet on ${sayCount(batch.trays.length, 'tray')}, ${dry}.`,
    ...(isShown ? ['Steady.', ...stands.slice(1)] : stands),
    ...(isDrying ? aheadLines(house, dryingAhead(house, batch, facts)) : []),
    ...(pouches.length === 0
      ? ['Nothing of it is sealed yet.']
      : [
          `Sealed: ${sayCodes(pouches)}, ${g(sealedG)}${pouches.some(({ isMixed }) => isMixed) ? ' of it' : ''}.`,
        ]),
    ...(sealedG > 0 && facts.dryG !== null
      ? [`Unsealed: ${g(restG({ dryG: facts.dryG, sealed: sealedOf(house, no), rest: batch.rest }))}.`]
      : []),
    ...containsLines(facts.recipe),
    ...(batch.isRaw ? [rawCaution] : []),
  ];
  return { lines, why: [...(isShown ? [stands[0]!] : []), ...energyLine(house, batch)] };
}

/** What drying took, once it is dry and the meter or the dryer's power is known. */
function energyLine(house: House, batch: Batch): string[] {
  if (dryOf(house, batch).is !== 'dry') return [];
  const energy = dryingEnergy(house, batch);
  if (energy === undefined) return [];
  return [
    energy.by === 'meter'
      ? `Drying took ${sayNumber(energy.kwh)} kWh by the meter.`
      : `Drying took at most ${sayNumber(energy.kwh)} kWh, by the dryer's power and its hours.`,
  ];
}

/** A mixture: what each of its pouches holds. */
function mixCard(house: House, batch: Batch, mix: Mix, facts: BatchFacts): string[] {
  const { settings } = house;
  const stock = house.pouches.ofBatch(batch.no).filter(({ state }) => state === 'stock');
  return [
    `${sayBatch(batch)}: ${batch.recipe.name}, filled ${sayDay(batch.loadedAtMs, settings.zone)}`,
    `Each pouch holds ${mixHolds(mix, settings.units)}.`,
    stock.length === 0 ? 'None is in stock any more.' : `In stock: ${sayCodes(stock)}.`,
    ...containsLines(facts.recipe),
    ...(batch.isRaw ? [rawCaution] : []),
  ];
}
