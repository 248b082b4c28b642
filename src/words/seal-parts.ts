import { Refusal } from '#core/refusal.ts';
import { type MixtureTold, mixtureTold } from './mixture.ts';
import { batchNamed } from './named.ts';
import { part } from './part.ts';
import { couldNotPlace } from './reading.ts';
import { type PouchGroup, pouchGroups } from './weights.ts';

/** What goes into the pouches: so many of one batch, or each of several things. */
export type FillTold =
  | { readonly is: 'mixed'; readonly mixture: MixtureTold }
  | { readonly is: 'one'; readonly batch: number; readonly groups: readonly PouchGroup[] }
  /** All that is left of a batch, shared out alike. */
  | { readonly is: 'rest'; readonly batch: number; readonly count: number };

const ofBatch = batchNamed('any');

/**
 * '6 x 95 g B4', or '4 x 76 g B3 + 72 g B4'.
 * @throws Refusal 'missing' where only one of batch and weights was said
 */
export const fillTold = part<FillTold>(`${ofBatch.like} and ${pouchGroups.like}`, (reading, names) => {
  const mixture = mixtureTold.read(reading, names);
  // 'B1 40 g + B1 10 g' is one batch after all.
  const [only, another] = mixture?.parts ?? [];
  if (mixture && only && !another && mixture.goods.length === 0)
    return { is: 'one', batch: only.batch, groups: [{ count: mixture.count, eachDryG: only.eachG }] };
  if (mixture) return { is: 'mixed', mixture };
  const rest = reading.keyword('rest', 'remainder');
  if (rest !== undefined) {
    const of = ofBatch.read(reading, names);
    if (of === undefined)
      throw new Refusal('missing', 'I read "rest", but I still need a batch code such as B4.');
    const index = [...reading.left()].find((i) => reading.all[i]!.is === 'number');
    const token = index === undefined ? undefined : reading.all[index]!;
    if (index !== undefined) reading.take(index);
    reading.takeWords('the', 'of', 'as', 'in', 'into', 'one');
    const count =
      token?.is === 'number' && Number.isInteger(token.value) && token.value > 0 && token.value < 50
        ? token.value
        : 1;
    return { is: 'rest', batch: of, count };
  }
  const batch = ofBatch.read(reading, names);
  const groups = pouchGroups.read(reading, names);
  if (batch !== undefined && groups) return { is: 'one', batch, groups };
  if (batch === undefined && !groups) return undefined;
  const wanted = batch === undefined ? ofBatch : pouchGroups;
  const left = reading.leftovers().filter((words) => !/^(?:pouch|pouches|bags?)$/i.test(words));
  const couldNot = left.length === 0 ? '' : ` ${couldNotPlace(left, names.meals)}`;
  throw new Refusal('missing', `I read ${reading.understood()}, but I still need ${wanted.like}.${couldNot}`);
});

/** 'no absorber'. */
export const withoutAbsorber = part<true>('no absorber', (reading) => {
  const index = reading.all.findIndex((t, i) => /^absorbers?$/.test(t.plain) && reading.at(i) !== undefined);
  if (index < 1 || !reading.wordBefore(index, 'no', 'without')) return undefined;
  reading.take(index, index - 1);
  return true;
});
