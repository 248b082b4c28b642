import type { Witness } from '#core/dry-verdict.ts';
import { groupBy } from '#core/groups.ts';
import type { RestEvent } from '#core/rest.ts';
import type { DryerEvent } from '#core/running.ts';
import { mixture } from '#core/mixed.ts';
import type { Batch, Bought, Recipe, Tray, Weighing } from '#core/records.ts';
import type { Db } from './db.ts';

interface BatchRow {
  id: number;
  no: number;
  recipe: number;
  factor: number;
  potG: number | null;
  loadedAtMs: number;
  isRaw: 0 | 1;
  isMixed: 0 | 1;
  isBought: 0 | 1;
}

interface WitnessRow {
  batch: number;
  atMs: number;
  by: string;
  humidityPercent: number | null;
  words: string | null;
  isCold: 0 | 1 | null;
}

const asWitness = ({ atMs, by, humidityPercent, words, isCold }: WitnessRow): Witness =>
  isCold !== null
    ? { atMs, by, isCold: isCold === 1 }
    : humidityPercent === null
      ? { atMs, by, words: words! }
      : { atMs, by, humidityPercent };

const inTime = (rows: readonly WitnessRow[]): Witness[] =>
  rows.toSorted((a, b) => a.atMs - b.atMs).map(asWitness);

/** Batches with their trays and every weighing. */
export function batchStore(db: Db) {
  const columns =
    'id, no, recipe, factor, pot_g AS potG, loaded_at_ms AS loadedAtMs, is_raw AS isRaw, is_mixed AS isMixed, is_bought AS isBought';
  const byNo = db.prepare(`SELECT ${columns} FROM batch WHERE household = ? AND no = ?`);
  const ofRecipe = db.prepare(
    `SELECT ${columns} FROM batch WHERE household = :household AND is_mixed = 0 AND recipe IN
       (SELECT id FROM recipe WHERE household = :household AND folded_name =
         (SELECT folded_name FROM recipe WHERE id = :recipe)) ORDER BY no DESC`,
  );
  const latest = db.prepare(
    `SELECT ${columns} FROM batch WHERE household = ? AND is_mixed = 0 ORDER BY no DESC LIMIT ?`,
  );
  const nextNo = db.prepare('SELECT coalesce(max(no), 0) + 1 FROM batch WHERE household = ?').pluck();
  const trays = db.prepare('SELECT no, tare_g AS tareG, wet_g AS wetG FROM tray WHERE batch = ? ORDER BY no');
  const weighings = db.prepare(
    'SELECT tray_no AS trayNo, at_ms AS atMs, net_g AS netG FROM weighing WHERE batch = ? ORDER BY at_ms, id',
  );
  const inStock = `SELECT DISTINCT batch FROM pouch WHERE household = ? AND state = 'stock'`;
  const stocked = db.prepare(`SELECT ${columns} FROM batch WHERE id IN (${inStock}) ORDER BY no`);
  const stockedTrays = db.prepare(
    `SELECT batch, no, tare_g AS tareG, wet_g AS wetG FROM tray WHERE batch IN (${inStock}) ORDER BY batch, no`,
  );
  const stockedWeighings = db.prepare(
    `SELECT batch, tray_no AS trayNo, at_ms AS atMs, net_g AS netG FROM weighing WHERE batch IN (${inStock})
     ORDER BY batch, at_ms, id`,
  );
  const witnessOf = `SELECT batch, at_ms AS atMs, member.name AS by, humidity_percent AS humidityPercent, words, NULL AS isCold
    FROM witness JOIN member ON member.id = witness.member`;
  const piecesOf = `SELECT batch, at_ms AS atMs, member.name AS by, NULL AS humidityPercent, NULL AS words, is_cold AS isCold
    FROM opened_pieces JOIN member ON member.id = opened_pieces.member`;
  const witnesses = db.prepare(`${witnessOf} WHERE batch = ? ORDER BY at_ms, witness.id`);
  const pieces = db.prepare(`${piecesOf} WHERE batch = ? ORDER BY at_ms, opened_pieces.id`);
  const stockedWitnesses = db.prepare(
    `${witnessOf} WHERE batch IN (${inStock}) ORDER BY batch, at_ms, witness.id`,
  );
  const stockedPieces = db.prepare(
    `${piecesOf} WHERE batch IN (${inStock}) ORDER BY batch, at_ms, opened_pieces.id`,
  );
  const insertPieces = db.prepare(
    'INSERT INTO opened_pieces (household, batch, at_ms, member, is_cold) VALUES (:household, :batch, :atMs, :member, :isCold)',
  );
  const insertWitness = db.prepare(
    `INSERT INTO witness (household, batch, at_ms, member, humidity_percent, words)
     VALUES (:household, :batch, :atMs, :member, :humidityPercent, :words)`,
  );
  const eventsOf = 'SELECT batch, at_ms AS atMs, what, note FROM dryer_event';
  const events = db.prepare(`${eventsOf} WHERE batch = ? ORDER BY at_ms, id`);
  const stockedEvents = db.prepare(`${eventsOf} WHERE batch IN (${inStock}) ORDER BY batch, at_ms, id`);
  const insertEvent = db.prepare(
    'INSERT INTO dryer_event (household, batch, at_ms, what, note) VALUES (:household, :batch, :atMs, :what, :note)',
  );
  const restOf = 'SELECT batch, at_ms AS atMs, what, net_g AS netG FROM rest';
  const rest = db.prepare(`${restOf} WHERE batch = ? ORDER BY at_ms, id`);
  const stockedRest = db.prepare(`${restOf} WHERE batch IN (${inStock}) ORDER BY batch, at_ms, id`);
  const insertRest = db.prepare(
    `INSERT INTO rest (household, batch, at_ms, what, net_g, why) VALUES (:household, :batch, :atMs, :what, :netG, :why)`,
  );
  const insert = db.prepare(
    `INSERT INTO batch (household, no, recipe, factor, pot_g, loaded_at_ms, is_raw)
     VALUES (:household, :no, :recipe, :factor, :potG, :loadedAtMs, :isRaw)`,
  );
  const insertMix = db.prepare(
    `INSERT INTO batch (household, no, recipe, factor, loaded_at_ms, is_raw, is_mixed, is_bought)
     VALUES (:household, :no, :recipe, 1, :atMs, :isRaw, 1, :isBought)`,
  );
  const insertPart = db.prepare(
    `INSERT INTO mix_part (household, mix, batch, each_g, weighing)
     VALUES (:household, :mix, :batch, :eachG, (SELECT max(id) FROM weighing WHERE batch = :batch))`,
  );
  const boughtOf = db.prepare('SELECT water_ml AS waterMl FROM bought WHERE batch = ?');
  const partsOf = db.prepare(
    `SELECT batch.no, each_g AS eachG FROM mix_part JOIN batch ON batch.id = mix_part.batch WHERE mix = ? ORDER BY mix_part.id`,
  );
  const takenOf = db.prepare(
    `SELECT each_g AS dryG, sealed_at_ms AS sealedAtMs FROM mix_part JOIN pouch ON pouch.batch = mix_part.mix
     WHERE mix_part.batch = (SELECT id FROM batch WHERE household = ? AND no = ?)
     ORDER BY sealed_at_ms, pouch.id`,
  );
  const mixesOf = db
    .prepare(
      `SELECT mix.no FROM mix_part JOIN batch AS mix ON mix.id = mix_part.mix 
       WHERE mix_part.batch = (SELECT id FROM batch WHERE household = ? AND no = ?) ORDER BY mix.no`,
    )
    .pluck();
  const insertTray = db.prepare(
    'INSERT INTO tray (household, batch, no, tare_g, wet_g) VALUES (:household, :batch, :no, :tareG, :wetG)',
  );
  const insertWeighing = db.prepare(
    `INSERT INTO weighing (household, batch, tray_no, at_ms, net_g) VALUES (:household, :batch, :trayNo, :atMs, :netG)`,
  );
  const mendWeighing = db.prepare(
    'UPDATE weighing SET net_g = :netG WHERE household = :household AND batch = :batch AND tray_no = :trayNo AND at_ms = :atMs',
  );
  const mendTray = db.prepare(
    'UPDATE tray SET wet_g = :wetG WHERE household = :household AND batch = :batch AND no = :no',
  );
  const setRecipe = db.prepare('UPDATE batch SET recipe = ? WHERE household = ? AND id = ?');
  const setPot = db.prepare('UPDATE batch SET pot_g = ? WHERE household = ? AND id = ?');

  return (household: number, recipeOf: (id: number) => Recipe) => {
    /** A batch that was loaded, with what lies in other tables of it. */
    const loaded = (
      row: BatchRow,
      has: Pick<Batch, 'trays' | 'weighings' | 'events' | 'rest'> & { readonly witnesses: WitnessRow[] },
    ): Batch => ({
      id: row.id,
      no: row.no,
      factor: row.factor,
      potG: row.potG,
      loadedAtMs: row.loadedAtMs,
      isRaw: row.isRaw === 1,
      recipe: recipeOf(row.recipe),
      trays: has.trays,
      weighings: has.weighings,
      witnesses: inTime(has.witnesses),
      events: has.events,
      rest: has.rest,
      mix: null,
    });
    const dried = (row: BatchRow): Batch =>
      loaded(row, {
        trays: trays.all(row.id) as Tray[],
        weighings: weighings.all(row.id) as Weighing[],
        witnesses: [...witnesses.all(row.id), ...pieces.all(row.id)] as WitnessRow[],
        events: events.all(row.id) as DryerEvent[],
        rest: rest.all(row.id) as RestEvent[],
      });
    const whole = (row: BatchRow): Batch => {
      if (row.isMixed === 0) return dried(row);
      const parts = (partsOf.all(row.id) as { no: number; eachG: number }[]).map(({ no, eachG }) => ({
        batch: dried(byNo.get(household, no) as BatchRow),
        eachG,
      }));
      const bought = row.isBought === 1 ? (boughtOf.get(row.id) as Bought) : null;
      return { ...dried(row), ...mixture(recipeOf(row.recipe), parts, bought) };
    };
    return {
      find: (no: number): Batch | undefined => {
        const row = byNo.get(household, no) as BatchRow | undefined;
        return row && whole(row);
      },
      /** All batches of a meal, newest first, whichever wording of the recipe they were cooked from. */
      ofMeal: (recipe: number): Batch[] => (ofRecipe.all({ household, recipe }) as BatchRow[]).map(whole),
      /** Every batch of which a pouch is in stock, read together. */
      inStock: (): Batch[] => {
        const traysOf = groupBy(
          stockedTrays.all(household) as (Tray & { batch: number })[],
          (row) => row.batch,
        );
        const weighingsOf = groupBy(
          stockedWeighings.all(household) as (Weighing & { batch: number })[],
          (row) => row.batch,
        );
        const witnessesOf = groupBy(
          [...stockedWitnesses.all(household), ...stockedPieces.all(household)] as WitnessRow[],
          (row) => row.batch,
        );
        const restOfBatch = groupBy(
          stockedRest.all(household) as (RestEvent & { batch: number })[],
          (row) => row.batch,
        );
        const eventsOfBatch = groupBy(
          stockedEvents.all(household) as (DryerEvent & { batch: number })[],
          (row) => row.batch,
        );
        return (stocked.all(household) as BatchRow[]).map((row) =>
          row.isMixed === 1
            ? whole(row)
            : loaded(row, {
                trays: traysOf.get(row.id) ?? [],
                weighings: weighingsOf.get(row.id) ?? [],
                witnesses: witnessesOf.get(row.id) ?? [],
                events: eventsOfBatch.get(row.id) ?? [],
                rest: restOfBatch.get(row.id) ?? [],
              }),
        );
      },
      /** Puts the weight of one tray at one weighing right; the journal keeps what it was. */
      mendWeighing: (
        batch: number,
        { trayNo, atMs }: Pick<Weighing, 'trayNo' | 'atMs'>,
        netG: number,
      ): void => void mendWeighing.run({ household, batch, trayNo, atMs, netG }),
      /** Puts the loaded weight of one tray right. */
      mendTray: (batch: number, no: number, wetG: number): void =>
        void mendTray.run({ household, batch, no, wetG }),
      latest: (count: number): Batch[] => (latest.all(household, count) as BatchRow[]).map(whole),
      /** @returns the number of the new batch: the next after the highest there is */
      load: (
        batch: Omit<Batch, 'id' | 'no' | 'recipe' | 'weighings' | 'witnesses' | 'events' | 'rest' | 'mix'> & {
          recipe: number;
        },
      ): number => {
        const no = nextNo.get(household) as number;
        const { trays: filled, ...head } = batch;
        const id = Number(insert.run({ household, no, ...head, isRaw: head.isRaw ? 1 : 0 }).lastInsertRowid);
        for (const tray of filled) insertTray.run({ household, batch: id, ...tray });
        return no;
      },
      /**
       * A mixture to be filled into pouches.
       * @param recipe the row that has what came from the cupboard
       * @returns its row and its number: the next after the highest of all batches
       */
      mix: (
        recipe: number,
        parts: readonly { readonly batch: Batch; readonly eachG: number }[],
        atMs: number,
      ): { id: number; no: number } => {
        const no = nextNo.get(household) as number;
        const isRaw = parts.some(({ batch }) => batch.isRaw) ? 1 : 0;
        const id = Number(insertMix.run({ household, no, recipe, atMs, isRaw, isBought: 0 }).lastInsertRowid);
        for (const { batch, eachG } of parts) insertPart.run({ household, mix: id, batch: batch.id, eachG });
        return { id, no };
      },
      /** Food that was bought: a batch of no parts. @returns its row and its number */
      buy: (recipe: number, atMs: number): { id: number; no: number } => {
        const no = nextNo.get(household) as number;
        const id = Number(
          insertMix.run({ household, no, recipe, atMs, isRaw: 0, isBought: 1 }).lastInsertRowid,
        );
        return { id, no };
      },
      /** The mixtures that hold something of a batch, by number. @param no its number */
      mixesOf: (no: number): number[] => mixesOf.all(household, no) as number[],
      /** What went of a batch into pouches of mixtures, pouch by pouch; whatever became of them. @param no its number */
      mixedFrom: (no: number): { dryG: number; sealedAtMs: number }[] =>
        takenOf.all(household, no) as { dryG: number; sealedAtMs: number }[],
      weigh: (batch: number, weighed: readonly Weighing[]): void => {
        for (const one of weighed) insertWeighing.run({ household, batch, ...one });
      },
      witness: (
        batch: number,
        member: number,
        atMs: number,
        said: { humidityPercent: number } | { words: string },
      ): void =>
        void insertWitness.run({
          household,
          batch,
          member,
          atMs,
          humidityPercent: 'humidityPercent' in said ? said.humidityPercent : null,
          words: 'words' in said ? said.words : null,
        }),
      /** Notes what opened pieces were like. */
      pieces: (batch: number, member: number, atMs: number, isCold: boolean): void =>
        void insertPieces.run({ household, batch, member, atMs, isCold: isCold ? 1 : 0 }),
      /** Notes what happened to it in the dryer. */
      dryer: (batch: number, event: DryerEvent): void => void insertEvent.run({ household, batch, ...event }),
      /** Notes what happened to the part that is not sealed. */
      rest: (batch: number, event: RestEvent, why: string | null = null): void =>
        void insertRest.run({ household, batch, why, ...event }),
      /** It was cooked by another wording of its recipe. */
      cookedBy: (batch: number, recipe: number): void => void setRecipe.run(recipe, household, batch),
      weighPot: (batch: number, potG: number): void => void setPot.run(potG, household, batch),
    };
  };
}

export type BatchStore = ReturnType<ReturnType<typeof batchStore>>;
