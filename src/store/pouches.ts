import { z } from 'zod';
import type { PackUsed } from '#core/absorber-packs.ts';
import { materials } from '#core/barrier.ts';
import type { Kept } from '#core/bestby.ts';
import type { Code, Pouch } from '#core/records.ts';
import { type Finding, unsound } from '#core/seal-check.ts';
import { type AbsorberColumns, packColumns, packsIn } from './absorber-columns.ts';
import type { Db } from './db.ts';

type PouchRow = Omit<Pouch, 'absorbers' | 'checked' | 'shownDry' | 'foundWet' | 'isMixed' | 'isBought'> &
  AbsorberColumns & {
    checked: 0 | 1;
    isMixed: 0 | 1;
    isBought: 0 | 1;
  };

export type NewPouch = Pick<
  Pouch,
  'dryG' | 'sealedAtMs' | 'checked' | 'volumeMl' | 'absorbers' | 'bestByOn'
> & { readonly kept: KeptPouch | null };

/** What a planning date rests on, and whether the pouch was the household's usual one, whatever that is made of. */
export type KeptPouch = Kept & {
  readonly isUsual: boolean;
  /** Room of the sealed pouch as measured in water, ml for each g of dry food; null: reckoned. */
  readonly measuredMlPerG: number | null;
};

const KeptShape: z.ZodType<KeptPouch> = z.object({
  material: z.enum(materials).nullable(),
  areaCm2: z.number().nullable(),
  isMeasuredDry: z.boolean(),
  fatFraction: z.number(),
  absorber: z.boolean(),
  spareMl: z.number().nullable(),
  isUsual: z.boolean(),
  measuredMlPerG: z.number().nullable().default(null),
});

/** A pouch in stock that has a planning date. */
export interface DatedPouch extends Code {
  readonly id: number;
  readonly sealedAtMs: number;
  readonly bestByOn: string;
  readonly kept: KeptPouch | null;
}

/** Pouches of one batch with one best-by that are in stock and held for no trip. */
export interface Shelf {
  readonly batch: number;
  readonly isMixed: boolean;
  readonly isBought: boolean;
  readonly meal: string;
  readonly bestByOn: string | null;
  readonly checked: boolean;
  readonly shownDry: boolean;
  readonly found: Finding | null;
  /** Pouch numbers, in order. */
  readonly numbers: readonly number[];
  readonly dryG: number;
  readonly leastG: number;
  readonly mostG: number;
}

/** Sealed pouches: in stock, eaten or discarded; none is ever deleted. */
export function pouchStore(db: Db) {
  const eatenG = `coalesce((SELECT sum(net_g) FROM finding WHERE finding.pouch = pouch.id AND what = 'opened'), 0)`;
  const last = (column: string) =>
    `(SELECT ${column} FROM finding WHERE finding.pouch = pouch.id ORDER BY at_ms DESC, finding.id DESC LIMIT 1)`;
  const lastUnsound = `nullif(nullif(${last('what')}, 'tight'), 'resealed')`;
  const select = `SELECT pouch.id, batch.no AS batch, is_mixed AS isMixed, is_bought AS isBought, pouch.no, recipe.name AS meal, dry_g - ${eatenG} AS dryG, dry_g AS sealedG,
      ${last('what')} AS found, ${last('at_ms')} AS foundAtMs, sealed_at_ms AS sealedAtMs,
      checked, volume_ml AS volumeMl, absorber_ml AS absorberMl, absorber_count AS absorberCount, absorbers_json AS absorbersJson,
      best_by_on AS bestByOn, state, gone_at_ms AS goneAtMs, gone_why AS goneWhy
    FROM pouch JOIN batch ON batch.id = pouch.batch JOIN recipe ON recipe.id = batch.recipe`;
  const byCode = db.prepare(`${select} WHERE batch.household = ? AND batch.no = ? AND pouch.no = ?`);
  const ofBatch = db.prepare(`${select} WHERE batch.household = ? AND batch.no = ? ORDER BY pouch.no`);
  const inStock = db.prepare(
    `${select} WHERE pouch.household = ? AND state = 'stock'
     ORDER BY best_by_on IS NOT NULL, best_by_on, batch.no, pouch.no`,
  );
  const ever = db.prepare(`${select} WHERE batch.household = ? ORDER BY batch.no, pouch.no`);
  const inStockOf = db.prepare(
    `${select} WHERE pouch.household = ? AND state = 'stock' AND recipe.name = ?
     ORDER BY best_by_on IS NOT NULL, best_by_on, batch.no, pouch.no`,
  );
  const shelves = db.prepare(
    `SELECT batch.no AS batch, is_mixed AS isMixed, is_bought AS isBought, recipe.name AS meal, best_by_on AS bestByOn, checked, group_concat(pouch.no) AS numbers,
       ${lastUnsound} AS found, sum(dry_g - ${eatenG}) AS dryG, min(dry_g - ${eatenG}) AS leastG,
       max(dry_g - ${eatenG}) AS mostG
     FROM pouch JOIN batch ON batch.id = pouch.batch JOIN recipe ON recipe.id = batch.recipe
     WHERE pouch.household = :household AND state = 'stock'
       AND NOT EXISTS (SELECT 1 FROM promise WHERE promise.pouch = pouch.id AND came IS NULL)
     GROUP BY pouch.batch, best_by_on, checked, ${lastUnsound} ORDER BY best_by_on IS NOT NULL, best_by_on, batch.no`,
  );
  const haveAbsorber = db
    .prepare(
      `SELECT EXISTS (SELECT 1 FROM pouch WHERE household = ? AND state = 'stock' AND absorber_ml IS NOT NULL)`,
    )
    .pluck();
  const recipesInStock = db
    .prepare(
      `SELECT DISTINCT batch.recipe FROM pouch JOIN batch ON batch.id = pouch.batch
       WHERE pouch.household = ? AND state = 'stock' AND is_mixed = 0 ORDER BY 1`,
    )
    .pluck();
  const mixesInStock = db
    .prepare(
      `SELECT DISTINCT batch.no FROM pouch JOIN batch ON batch.id = pouch.batch
       WHERE pouch.household = ? AND state = 'stock' AND is_mixed = 1 ORDER BY 1`,
    )
    .pluck();
  const boughtNames = db
    .prepare(
      `SELECT DISTINCT recipe.name FROM pouch JOIN batch ON batch.id = pouch.batch JOIN recipe ON recipe.id = batch.recipe
       WHERE pouch.household = ? AND state = 'stock' AND is_bought = 1 ORDER BY 1`,
    )
    .pluck();
  const nextNo = db.prepare('SELECT coalesce(max(no), 0) + 1 FROM pouch WHERE batch = ?').pluck();
  const insert = db.prepare(
    `INSERT INTO pouch (household, batch, no, dry_g, sealed_at_ms, checked, volume_ml, absorber_ml, absorber_count, absorbers_json, best_by_on, kept_json, weighing)
     VALUES (:household, :batch, :no, :dryG, :sealedAtMs, :checked, :volumeMl, :absorberMl, :absorberCount, :absorbersJson, :bestByOn, :keptJson,
       (SELECT max(id) FROM weighing
        WHERE batch = :batch OR batch IN (SELECT mix_part.batch FROM mix_part WHERE mix = :batch)))`,
  );
  const dated = db.prepare(
    `SELECT pouch.id, batch.no AS batch, is_mixed AS isMixed, pouch.no, sealed_at_ms AS sealedAtMs, best_by_on AS bestByOn,
       kept_json AS keptJson
     FROM pouch JOIN batch ON batch.id = pouch.batch
     WHERE pouch.household = ? AND state = 'stock' AND best_by_on IS NOT NULL AND is_bought = 0 ORDER BY batch.no, pouch.no`,
  );
  const redate = db.prepare(
    'UPDATE pouch SET best_by_on = :bestByOn, kept_json = :keptJson WHERE household = :household AND id = :id',
  );
  const measured = db.prepare(
    `SELECT batch.no AS batch, pouch.no, json_extract(kept_json, '$.measuredMlPerG') AS mlPerG
     FROM pouch JOIN batch ON batch.id = pouch.batch JOIN recipe ON recipe.id = batch.recipe
     WHERE pouch.household = ? AND recipe.name = ?
       AND json_extract(kept_json, '$.measuredMlPerG') IS NOT NULL ORDER BY pouch.id DESC LIMIT 1`,
  );
  const packed = `SELECT absorber_ml AS absorberMl, absorber_count AS absorberCount, absorbers_json AS absorbersJson`;
  const packsUsed = db.prepare(
    `${packed}, sealed_at_ms AS atMs FROM pouch WHERE household = :household AND absorber_ml IS NOT NULL AND sealed_at_ms >= :sinceMs
     UNION ALL ${packed}, at_ms FROM finding JOIN pouch ON pouch.id = finding.pouch
       WHERE finding.household = :household AND what = 'resealed' AND absorber_ml IS NOT NULL AND at_ms >= :sinceMs`,
  );
  const note = db.prepare(
    `INSERT INTO finding (household, pouch, at_ms, what, net_g) VALUES (:household, :id, :atMs, :what, :netG)`,
  );
  const leave = db.prepare(
    `UPDATE pouch SET state = :state, gone_at_ms = :atMs, gone_why = :why WHERE household = :household AND id = :id`,
  );
  const restock = db.prepare(
    `UPDATE pouch SET state = 'stock', gone_at_ms = NULL, gone_why = NULL WHERE household = ? AND id = ?`,
  );
  // Field by field: taking a row apart with a rest and putting it together again takes longer than reading it.
  const asPouch = (row: PouchRow): Pouch => ({
    id: row.id,
    batch: row.batch,
    isMixed: row.isMixed === 1,
    isBought: row.isBought === 1,
    no: row.no,
    meal: row.meal,
    dryG: row.dryG,
    sealedG: row.sealedG,
    found: row.found,
    foundAtMs: row.foundAtMs,
    sealedAtMs: row.sealedAtMs,
    volumeMl: row.volumeMl,
    absorbers: packsIn(row),
    bestByOn: row.bestByOn,
    state: row.state,
    goneAtMs: row.goneAtMs,
    goneWhy: row.goneWhy,
    checked: row.checked === 1 && unsound(row.found) === null,
    shownDry: row.checked === 1,
    foundWet: false,
  });

  return (household: number) => ({
    find: (batch: number, no: number): Pouch | undefined => {
      const row = byCode.get(household, batch, no) as PouchRow | undefined;
      return row && asPouch(row);
    },
    ofBatch: (batch: number): Pouch[] => (ofBatch.all(household, batch) as PouchRow[]).map(asPouch),
    /** Whether any pouch in stock was closed over an absorber. */
    haveAbsorber: (): boolean => haveAbsorber.get(household) === 1,
    /** Oldest best-by first; unchecked pouches, which have none, before all. */
    inStock: (): Pouch[] => (inStock.all(household) as PouchRow[]).map(asPouch),
    /** The same of one meal, by its name as recorded. */
    inStockOf: (meal: string): Pouch[] => (inStockOf.all(household, meal) as PouchRow[]).map(asPouch),
    /** Every pouch there ever was. */
    ever: (): Pouch[] => (ever.all(household) as PouchRow[]).map(asPouch),
    /** What is free, batch by batch, oldest best-by first; unchecked pouches before all. */
    shelves: (): Shelf[] =>
      (
        shelves.all({ household }) as (Omit<
          Shelf,
          'checked' | 'shownDry' | 'numbers' | 'isMixed' | 'isBought'
        > & {
          checked: 0 | 1;
          isMixed: 0 | 1;
          isBought: 0 | 1;
          numbers: string;
        })[]
      ).map(({ checked, isMixed, isBought, numbers, ...shelf }) => ({
        ...shelf,
        isMixed: isMixed === 1,
        isBought: isBought === 1,
        checked: checked === 1 && unsound(shelf.found) === null,
        shownDry: checked === 1,
        numbers: numbers
          .split(',')
          .map(Number)
          .toSorted((a, b) => a - b),
      })),
    /** What was bought and is in stock, by name. */
    boughtNames: (): string[] => boughtNames.all(household) as string[],
    /** The mixtures, by number, of which a pouch is in stock. */
    mixes: (): number[] => mixesInStock.all(household) as number[],
    /** The recipes, by row, of which a pouch is in stock that is no mixture. */
    recipes: (): number[] => recipesInStock.all(household) as number[],
    /** @param batchId the batch's row, not its number. @returns the numbers given, in order */
    seal: (batchId: number, sealed: readonly NewPouch[]): number[] => {
      const first = nextNo.get(batchId) as number;
      return sealed.map((pouch, i) => {
        const { kept, absorbers, ...row } = pouch;
        const keptJson = kept === null ? null : JSON.stringify(kept);
        insert.run({
          household,
          batch: batchId,
          no: first + i,
          ...row,
          ...packColumns(absorbers),
          keptJson,
          checked: row.checked ? 1 : 0,
        });
        return first + i;
      });
    },
    /** Every pouch in stock with a planning date, and what it rests on. */
    dated: (): DatedPouch[] =>
      (
        dated.all(household) as (Omit<DatedPouch, 'kept' | 'isMixed'> & {
          isMixed: 0 | 1;
          keptJson: string | null;
        })[]
      ).map(({ isMixed, keptJson, ...row }) => ({
        ...row,
        isMixed: isMixed === 1,
        kept: keptJson === null ? null : KeptShape.parse(JSON.parse(keptJson)),
      })),
    /** Room for each g of a meal, as its last measured pouch showed, and that pouch's code; undefined where none was measured. */
    measured: (meal: string): (Code & { readonly mlPerG: number }) | undefined =>
      measured.get(household, meal) as (Code & { mlPerG: number }) | undefined,
    /** The absorbers that went into pouches since a moment, sealed and sealed anew. */
    packsUsed: (sinceMs: number): PackUsed[] =>
      (packsUsed.all({ household, sinceMs }) as (AbsorberColumns & { atMs: number })[]).flatMap((row) =>
        packsIn(row).map((pack) => ({ ...pack, atMs: row.atMs })),
      ),
    /** Gives a pouch another planning date. */
    redate: (id: number, bestByOn: string, kept: KeptPouch | null): void =>
      void redate.run({ household, id, bestByOn, keptJson: kept === null ? null : JSON.stringify(kept) }),
    /** Notes what a pouch was found to be; g weighed when resealed, eaten when opened. */
    note: (id: number, what: Finding, atMs: number, netG: number | null = null): void =>
      void note.run({ household, id, what, atMs, netG }),
    /** A pouch that was recorded as gone and is still there. */
    restock: (id: number): void => void restock.run(household, id),
    leave: (id: number, state: 'used' | 'discarded', why: string | null, atMs: number): void =>
      void leave.run({ household, id, state, why, atMs }),
  });
}

export type PouchStore = ReturnType<ReturnType<typeof pouchStore>>;
