import { restG } from '#core/rest.ts';
import { partlySealed, pouchesFrom } from '#house/dryness.ts';
import { factsOfBatch, loadedBatch } from '#house/figures.ts';
import type { House } from '#house/house.ts';
import { massG, optional } from '#words/parts.ts';
import { sayCodes, sayCount, sayG } from '#words/say.ts';
import { aboutParts, batchAbout } from './about.ts';
import { question } from './question.ts';

/** Every batch of which something is still to be sealed. */
function everyRest(house: House): string {
  const lines = house.batches.latest(30).flatMap((batch) => {
    if (batch.mix) return [];
    const { dryG } = factsOfBatch(house, batch);
    const left = dryG === null ? null : restG(partlySealed(house, batch, dryG));
    if (left !== null && left < crumbsG) return [];
    const rest = left === null ? 'not weighed yet' : `${sayG(left, house.settings.units)} unsealed`;
    return [`B${batch.no}, ${batch.recipe.name}: ${rest}.`];
  });
  return lines.length === 0 ? 'Everything that was dried is sealed.' : lines.slice(0, 8).join('\n');
}

/** Less than this is crumbs, g. Chosen. */
const crumbsG = 5;

export const unsealed = question({
  name: 'unsealed',
  about: 'what is not sealed yet',
  asked: ['how much of B4 is not sealed yet?'],
  takes: { each: optional(massG('a weight')), ...aboutParts },
  answer: ({ each, ...asked }, house) => {
    if ((asked.codes ?? asked.batch ?? asked.meal) === undefined && each === undefined)
      return everyRest(house);
    const batch = loadedBatch(house, batchAbout(house, asked));
    const { dryG } = factsOfBatch(house, batch);
    const head = `B${batch.no}, ${batch.recipe.name}:`;
    if (dryG === null) return `${head} not weighed since it was loaded, so nothing can be sealed yet.`;
    const g = (value: number) => sayG(value, house.settings.units);
    const sealed = pouchesFrom(house, batch.no);
    const left = restG(partlySealed(house, batch, dryG));
    const inPouches = sealed.length === 0 ? 'nothing sealed yet' : `${sayCodes(sealed)} sealed`;
    const count = each === undefined || each <= 0 ? 0 : Math.floor((left + 0.5) / each);
    const fills =
      each === undefined
        ? ''
        : ` That fills ${sayCount(count, 'pouch', 'pouches')} of ${g(each)}${left - count * each > 0.5 ? `, ${g(left - count * each)} over` : ''}.`;
    return `${head} ${g(left)} of ${g(dryG)} are not sealed; ${inPouches}.${fills}`;
  },
});
