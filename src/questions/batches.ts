import { restG } from '#core/rest.ts';
import { partlySealed } from '#house/dryness.ts';
import { factsOfBatch, loadedBatch } from '#house/figures.ts';
import { massG, optional } from '#words/parts.ts';
import { sayCodes, sayCount, sayG } from '#words/say.ts';
import { aboutParts, batchAbout } from './about.ts';
import { question } from './question.ts';

export const unsealed = question({
  name: 'unsealed',
  asked: ['how much of B4 is not sealed yet?'],
  takes: { each: optional(massG('a weight')), ...aboutParts },
  answer: ({ each, ...asked }, house) => {
    const batch = loadedBatch(house, batchAbout(house, asked));
    const { dryG } = factsOfBatch(house, batch);
    const head = `B${batch.no}, ${batch.recipe.name}:`;
    if (dryG === null) return `${head} not weighed since it was loaded, so nothing can be sealed yet.`;
    const g = (value: number) => sayG(value, house.settings.units);
    const sealed = house.pouches.ofBatch(batch.no);
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
