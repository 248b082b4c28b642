import { Lacking } from '#core/refusal.ts';
import { type MixtureTold, mixtureTold } from './mixture.ts';
import { batchNamed, onlyDrying } from './named.ts';
import { part } from './part.ts';
import { couldNotPlace } from './reading.ts';
import { type PouchGroup, pouchGroups } from './weights.ts';

/** What goes into the pouches: so many of one batch, or each of several things. */
export type FillTold =
  | { readonly is: 'mixed'; readonly mixture: MixtureTold }
  | { readonly is: 'one'; readonly batch: number; readonly groups: readonly PouchGroup[] }
  /** How many, and no weight. */
  | { readonly is: 'count'; readonly batch: number; readonly count: number }
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
      throw new Lacking('missing', 'I read "rest", but I still need a batch code such as B4.');
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
  // Words that are not understood may have named it.
  const unsealed =
    batch === undefined && groups && reading.leftovers().length === 0
      ? onlyDrying(reading, names, {
          can: names.meals.flatMap((meal) => names.batchesOf(meal, true)).toSorted((a, b) => b - a),
          question: 'Several loads are not sealed yet. Which?',
          as: 'the load that is not sealed',
        })
      : undefined;
  if (unsealed !== undefined && groups) return { is: 'one', batch: unsealed, groups };
  if (batch !== undefined && groups) return { is: 'one', batch, groups };
  if (batch === undefined && !groups) return undefined;
  const wanted = batch === undefined ? ofBatch : pouchGroups;
  const counted = [...reading.left()].filter((i) => reading.all[i]!.is === 'number');
  const many = counted.length === 1 ? reading.all[counted[0]!]! : undefined;
  const isCount =
    many?.is === 'number' &&
    Number.isInteger(many.value) &&
    many.value > 0 &&
    many.value < 50 &&
    !/^[x×]$/.test(reading.all[counted[0]! + 1]?.plain ?? '');
  // A weight in a unit that is none is not left out in silence.
  const others = reading
    .without(counted)
    .leftovers()
    .filter((words) => !/^(?:pouch|pouches|bags?|portions?)$/iu.test(words));
  if (batch !== undefined && isCount && others.length === 0) {
    reading.take(counted[0]!);
    reading.takeWords('pouch', 'pouches', 'bag', 'bags', 'portions', 'portion');
    return { is: 'count', batch, count: many.value };
  }
  const left = reading.leftovers().filter((words) => !/^(?:pouch|pouches|bags?)$/i.test(words));
  const couldNot = left.length === 0 ? '' : ` ${couldNotPlace(left, names.meals)}`;
  throw new Lacking('missing', `I read ${reading.understood()}, but I still need ${wanted.like}.${couldNot}`);
});

/** 'no absorber'. */
export const withoutAbsorber = part<true>('no absorber', (reading) => {
  const index = reading.all.findIndex((t, i) => /^absorbers?$/.test(t.plain) && reading.at(i) !== undefined);
  if (index < 1 || !reading.wordBefore(index, 'no', 'without')) return undefined;
  reading.take(index, index - 1);
  return true;
});
