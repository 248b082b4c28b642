import { type Vouched, heard } from '#core/dry-verdict.ts';
import type { DryVerdict } from '#core/dry-verdict.ts';
import { type BatchFacts, balanceOf, dryVerdictOf, isRefusedNow } from '#core/meal.ts';
import { isDryGood } from '#core/mixed.ts';
import type { Batch, Pouch, RecipeLine } from '#core/records.ts';
import type { PartlySealed } from '#core/rest.ts';
import type { PouchStore } from '#store/pouches.ts';
import { batchNumbered, composerOf, factsOfBatch } from './figures.ts';
import type { House } from './house.ts';

/** Whether a batch may be sealed for the shelf, by all its witnesses. */
export function dryOf(
  house: House,
  batch: Batch,
  facts: BatchFacts = factsOfBatch(house, batch),
): DryVerdict {
  return dryVerdictOf(batch, facts, house.settings);
}

/** The jar and the word on which a batch counts as dry against its recipe's balance; shown wherever it is shown. */
export function vouchedFor(batch: Batch, facts: BatchFacts): Vouched | null {
  const balance = balanceOf(facts);
  if (balance === undefined) return null;
  const said = heard(balance, batch.witnesses, batch.weighings.at(-1)?.atMs ?? null);
  return said.is === 'dry' ? said.vouched : null;
}

/** The same of whatever a pouch can be of: a mixture counts as its parts do. */
export function vouchedOf(house: House, batch: Batch, facts: BatchFacts): Vouched | null {
  if (!batch.mix) return vouchedFor(batch, facts);
  const all = batch.mix.parts.map(({ batch: no }) => {
    const part = batchNumbered(house, no);
    return vouchedFor(part, factsOfBatch(house, part));
  });
  return all.find((vouched) => vouched !== null) ?? null;
}

/** What went into pouches of a batch, mixed ones too, eaten or not. */
export function sealedOf(house: House, no: number): PartlySealed['sealed'] {
  return [
    ...house.pouches.ofBatch(no).map(({ sealedG, sealedAtMs }) => ({ dryG: sealedG, sealedAtMs })),
    ...house.batches.mixedFrom(no),
  ];
}

/** The pouches that hold something of a batch, mixed ones too. */
export const pouchesFrom = (house: House, no: number): Pouch[] => [
  ...house.pouches.ofBatch(no),
  ...house.batches.mixesOf(no).flatMap((mix) => house.pouches.ofBatch(mix)),
];

/** Whether something of a batch lies in a pouch, or did. */
export const isSealedFrom = (house: House, no: number): boolean => sealedOf(house, no).length > 0;

/** A batch with what is sealed of it, for the sums about its rest. */
export function partlySealed(house: House, batch: Batch, dryG: number): PartlySealed {
  return { dryG, sealed: sealedOf(house, batch.no), rest: batch.rest };
}

/** Whether all that comes from the cupboard is known to be dry enough to lie without oxygen. */
export function areDryGoods(house: House, goods: readonly RecipeLine[]): boolean {
  const composer = composerOf(house);
  return goods.every(
    ({ ndb, state, question }) =>
      state === 'weighed' && question === null && ndb !== null && isDryGood(composer(ndb)),
  );
}

/**
 * The pouches as they are to be seen: one that was sealed as dry and whose batch the balance refuses as it stands now
 * (a line or a pot weight was put right, or a rule became stricter) is unchecked for everything that looks, with
 * neither date nor absorber. What was recorded stays recorded: put right again, it counts again.
 */
export function pouchesShownDry(house: House, changes: () => number): PouchStore {
  const { pouches } = house;
  let asOf = -1;
  let stockAsOf = -1;
  const known = new Map<number, boolean>();
  const isRefused = (no: number): boolean => {
    if (asOf !== changes()) known.clear();
    asOf = changes();
    return known.get(no) ?? look(batchNumbered(house, no));
  };
  const look = (batch: Batch): boolean => {
    const refused = batch.mix
      ? !batch.mix.bought &&
        (batch.mix.parts.some((part) => isRefused(part.batch)) || !areDryGoods(house, batch.mix.goods))
      : isRefusedNow(batch, factsOfBatch(house, batch));
    known.set(batch.no, refused);
    return refused;
  };
  /** Batch by batch takes a dozen questions of the file each. */
  const lookAtStock = (): void => {
    if (stockAsOf === changes()) return;
    stockAsOf = changes();
    if (asOf !== stockAsOf) known.clear();
    asOf = stockAsOf;
    for (const batch of house.batches.inStock()) look(batch);
  };
  const seen = (pouch: Pouch): Pouch => {
    if (pouch.shownDry && isRefused(pouch.batch))
      return {
        ...pouch,
        checked: false,
        shownDry: false,
        foundWet: true,
        absorbers: [],
        bestByOn: null,
      };
    return pouch.checked ? pouch : { ...pouch, bestByOn: null };
  };
  // Unchecked pouches come before all, as they do where they are read.
  const uncheckedFirst = <T extends { readonly checked: boolean }>(all: readonly T[]): T[] => [
    ...all.filter((one) => !one.checked),
    ...all.filter((one) => one.checked),
  ];
  return {
    ...pouches,
    find: (batch, no) => {
      const pouch = pouches.find(batch, no);
      return pouch && seen(pouch);
    },
    ofBatch: (batch) => pouches.ofBatch(batch).map(seen),
    inStock: () => {
      lookAtStock();
      return uncheckedFirst(pouches.inStock().map(seen));
    },
    inStockOf: (meal) => uncheckedFirst(pouches.inStockOf(meal).map(seen)),
    shelves: () => {
      lookAtStock();
      return uncheckedFirst(
        pouches.shelves().map((shelf) => {
          if (shelf.shownDry && isRefused(shelf.batch))
            return { ...shelf, checked: false, shownDry: false, bestByOn: null };
          return shelf.checked ? shelf : { ...shelf, bestByOn: null };
        }),
      );
    },
  };
}
