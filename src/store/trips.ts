import { z } from 'zod';
import type { Code, Effort, HeldPouch, Slot, SlotMark, SlotMeal, Trip, Wish } from '#core/records.ts';
import type { PicksResult, Seat } from '#core/picks/problem.ts';
import type { Db } from './db.ts';

type TripRow = Omit<Trip, 'slots' | 'efforts' | 'fromSnow' | 'isOver'> & { fromSnow: 0 | 1; isOver: 0 | 1 };
export type NewTrip = Omit<Trip, 'id' | 'slots' | 'isOver' | 'efforts'>;
export type NewSlot = Omit<Slot, 'id' | 'marks'>;

const Ids = z.array(z.number().int());

/** As much of a plan that was shown as says who eats what. */
const Shown = z.object({
  slots: z.array(
    z.object({
      slot: z.string(),
      dishes: z.array(z.object({ meal: z.string(), eaters: z.array(z.string()) })),
      unfed: z.array(z.object({ eater: z.string() })),
    }),
  ),
});

/** A plan with the print of the question it answers. */
const Answered = z.object({ asked: z.string(), result: z.custom<PicksResult>() });

const seatsOf = ({ slots }: z.infer<typeof Shown>): Seat[] =>
  slots.flatMap(({ slot, dishes, unfed }) => [
    ...dishes.flatMap(({ meal, eaters }) => eaters.map((eater) => ({ slot, eater, meal }))),
    ...unfed.map(({ eater }) => ({ slot, eater, meal: null })),
  ]);

/** Trips with their slots, the wishes for them and the pouches held for them. */
export function tripStore(db: Db) {
  const columns = `id, place, starts_on AS startsOn, ends_on AS endsOn, altitude_m AS altitudeM,
    start_water_c AS startWaterC, from_snow AS fromSnow, is_over AS isOver`;
  const all = db.prepare(`SELECT ${columns} FROM trip WHERE household = ? ORDER BY starts_on, id`);
  const insert = db.prepare(
    `INSERT INTO trip (household, place, folded_place, starts_on, ends_on, altitude_m, start_water_c, from_snow, made_at_ms)
     VALUES (:household, :place, :folded, :startsOn, :endsOn, :altitudeM, :startWaterC, :fromSnow, :atMs)`,
  );
  const update = db.prepare(
    `UPDATE trip SET starts_on = :startsOn, ends_on = :endsOn, altitude_m = :altitudeM, start_water_c = :startWaterC,
       from_snow = :fromSnow WHERE household = :household AND id = :id`,
  );
  const rename = db.prepare('UPDATE trip SET place = ?, folded_place = ? WHERE household = ? AND id = ?');
  const over = db.prepare('UPDATE trip SET is_over = ? WHERE household = ? AND id = ?');
  const slots = db.prepare(
    `SELECT id, on_day AS onDay, meal FROM slot WHERE trip = ?
     ORDER BY on_day, CASE meal WHEN 'breakfast' THEN 0 WHEN 'lunch' THEN 1 ELSE 2 END`,
  );
  const slotMarks = db.prepare('SELECT mark FROM slot_mark WHERE slot = ? ORDER BY mark').pluck();
  const slotEaters = db.prepare('SELECT eater FROM slot_eater WHERE slot = ? ORDER BY eater').pluck();
  const addSlot = db.prepare('INSERT INTO slot (household, trip, on_day, meal) VALUES (?, ?, ?, ?)');
  const dropSlot = db.prepare('DELETE FROM slot WHERE household = ? AND id = ?');
  const addEater = db.prepare('INSERT INTO slot_eater (household, slot, eater) VALUES (?, ?, ?)');
  const dropRules = ['slot_ban', 'slot_pin', 'slot_mark'].map((table) =>
    db.prepare(`DELETE FROM ${table} WHERE household = ? AND slot = ?`),
  );
  const dropEater = db.prepare('DELETE FROM slot_eater WHERE household = ? AND slot = ? AND eater = ?');
  const efforts = db.prepare('SELECT on_day AS onDay, effort FROM trip_day WHERE trip = ? ORDER BY on_day');
  const putEffort = db.prepare(
    `INSERT INTO trip_day (household, trip, on_day, effort) VALUES (?, ?, ?, ?)
     ON CONFLICT (trip, on_day) DO UPDATE SET effort = excluded.effort`,
  );
  const dropEffort = db.prepare('DELETE FROM trip_day WHERE household = ? AND trip = ? AND on_day = ?');
  const wishes = db.prepare(
    `SELECT id, eater, meal_key AS mealKey, slot, by_member AS byMember FROM wish WHERE trip = ? ORDER BY made_at_ms, id`,
  );
  const addWish = db.prepare(
    `INSERT INTO wish (household, trip, eater, meal_key, slot, by_member, made_at_ms)
     VALUES (:household, :trip, :eater, :mealKey, :slot, :byMember, :atMs)`,
  );
  const dropWish = db.prepare('DELETE FROM wish WHERE household = ? AND id = ?');
  const openWish = db.prepare('UPDATE OR IGNORE wish SET slot = NULL WHERE household = ? AND id = ?');
  const moveSlot = db.prepare('UPDATE slot SET on_day = ? WHERE household = ? AND id = ?');
  const held = db.prepare(
    `SELECT id, trip, slot, pouch, eaters_json AS eatersJson, packed, came FROM promise WHERE household = :household
       AND (trip = :trip OR :trip IS NULL) AND (came IS NULL OR :trip IS NOT NULL) ORDER BY slot, pouch`,
  );
  const heldCodes = db.prepare(
    `SELECT promise.trip, batch.no AS batch, is_mixed AS isMixed, is_bought AS isBought, pouch.no FROM promise JOIN pouch ON pouch.id = promise.pouch
       JOIN batch ON batch.id = pouch.batch WHERE promise.household = ? AND came IS NULL ORDER BY batch.no, pouch.no`,
  );
  const hold = db.prepare(
    `INSERT INTO promise (household, trip, slot, pouch, eaters_json) VALUES (?, ?, ?, ?, ?)`,
  );
  const release = db.prepare(
    'DELETE FROM promise WHERE household = ? AND trip = ? AND packed = 0 AND came IS NULL',
  );
  const releaseOne = db.prepare('DELETE FROM promise WHERE household = ? AND id = ?');
  const moveHeld = db.prepare('UPDATE promise SET slot = ? WHERE household = ? AND id = ?');
  const pack = db.prepare('UPDATE promise SET packed = ? WHERE household = ? AND id = ?');
  const come = db.prepare('UPDATE promise SET came = ? WHERE household = ? AND id = ?');
  const show = db.prepare(
    `INSERT INTO shown_picks (trip, household, made_at_ms, picks_json) VALUES (:trip, :household, :atMs, :picksJson)
     ON CONFLICT (trip) DO UPDATE SET made_at_ms = :atMs, picks_json = :picksJson`,
  );
  const shown = db.prepare('SELECT picks_json FROM shown_picks WHERE household = ? AND trip = ?').pluck();

  const whole = (row: TripRow): Trip => ({
    ...row,
    fromSnow: row.fromSnow === 1,
    isOver: row.isOver === 1,
    efforts: new Map(
      (efforts.all(row.id) as { onDay: string; effort: Effort }[]).map(({ onDay, effort }) => [
        onDay,
        effort,
      ]),
    ),
    slots: (slots.all(row.id) as { id: number; onDay: string; meal: SlotMeal }[]).map((slot) => ({
      ...slot,
      eaters: slotEaters.all(slot.id) as number[],
      marks: slotMarks.all(slot.id) as SlotMark[],
    })),
  });
  const heldPouch = ({
    eatersJson,
    packed,
    ...row
  }: Omit<HeldPouch, 'eaters' | 'packed'> & { eatersJson: string; packed: 0 | 1 }): HeldPouch => ({
    ...row,
    packed: packed === 1,
    eaters: Ids.parse(JSON.parse(eatersJson)),
  });

  return (household: number) => ({
    /** Every trip, the earliest first. */
    all: (): Trip[] => (all.all(household) as TripRow[]).map(whole),
    add: (folded: string, trip: NewTrip, atMs: number): number =>
      Number(
        insert.run({ household, folded, atMs, ...trip, fromSnow: trip.fromSnow ? 1 : 0 }).lastInsertRowid,
      ),
    change: (id: number, { startsOn, endsOn, altitudeM, startWaterC, fromSnow }: NewTrip): void =>
      void update.run({
        household,
        id,
        startsOn,
        endsOn,
        altitudeM,
        startWaterC,
        fromSnow: fromSnow ? 1 : 0,
      }),
    rename: (id: number, place: string, folded: string): void =>
      void rename.run(place, folded, household, id),
    end: (id: number, isOver: boolean): void => void over.run(isOver ? 1 : 0, household, id),
    addSlot: (trip: number, { onDay, meal, eaters }: NewSlot): number => {
      const id = Number(addSlot.run(household, trip, onDay, meal).lastInsertRowid);
      for (const eater of eaters) addEater.run(household, id, eater);
      return id;
    },
    /** Drops a slot with its eaters; wishes and held pouches must be gone from it. */
    dropSlot: ({ id, eaters }: Slot): void => {
      for (const eater of eaters) dropEater.run(household, id, eater);
      for (const rules of dropRules) rules.run(household, id);
      dropSlot.run(household, id);
    },
    /** How hard a day is; null: it is walked, as any day nobody spoke of. */
    effort: (trip: number, onDay: string, effort: Effort | null): void =>
      void (effort === null
        ? dropEffort.run(household, trip, onDay)
        : putEffort.run(household, trip, onDay, effort)),
    seat: (slot: number, eater: number): void => void addEater.run(household, slot, eater),
    unseat: (slot: number, eater: number): void => void dropEater.run(household, slot, eater),
    wishes: (trip: number): Wish[] => wishes.all(trip) as Wish[],
    wish: (trip: number, wish: Omit<Wish, 'id'>, atMs: number): void =>
      void addWish.run({ household, trip, atMs, ...wish }),
    /** A wish for a slot becomes one for any time; where there is one already, it is the same. */
    openWish: (wish: number): void => {
      if (openWish.run(household, wish).changes === 0) dropWish.run(household, wish);
    },
    /** Moves every slot and what is told of days; nobody's seat, wish or pouch changes. */
    move: (trip: Trip, to: (onDay: string) => string): void => {
      const [first] = trip.slots;
      // One day of a trip must be free before another moves there.
      const isLater = first !== undefined && to(first.onDay) > first.onDay;
      for (const { id, onDay } of isLater ? trip.slots.toReversed() : trip.slots)
        moveSlot.run(to(onDay), household, id);
      for (const onDay of trip.efforts.keys()) dropEffort.run(household, trip.id, onDay);
      for (const [onDay, effort] of trip.efforts) putEffort.run(household, trip.id, to(onDay), effort);
    },
    dropWish: (id: number): void => void dropWish.run(household, id),
    /** Pouches held for one trip, whatever became of them; without a trip, all that are still held. */
    held: (trip: number | null): HeldPouch[] =>
      (held.all({ household, trip }) as Parameters<typeof heldPouch>[0][]).map(heldPouch),
    /** The codes of all that is held, with the trip that holds each. */
    heldCodes: (): (Code & { readonly trip: number })[] =>
      (
        heldCodes.all(household) as (Omit<Code, 'isMixed' | 'isBought'> & {
          trip: number;
          isMixed: 0 | 1;
          isBought: 0 | 1;
        })[]
      ).map((row) => ({
        ...row,
        isMixed: row.isMixed === 1,
        isBought: row.isBought === 1,
      })),
    hold: (trip: number, slot: number, pouch: number, eaters: readonly number[]): void =>
      void hold.run(household, trip, slot, pouch, JSON.stringify(eaters)),
    /** Gives back what is held and not yet packed. */
    release: (trip: number): void => void release.run(household, trip),
    releaseOne: (id: number): void => void releaseOne.run(household, id),
    /** Another meal of the trip gets it. */
    moveHeld: (id: number, slot: number): void => void moveHeld.run(slot, household, id),
    pack: (id: number, packed: boolean): void => void pack.run(packed ? 1 : 0, household, id),
    came: (id: number, what: HeldPouch['came']): void => void come.run(what, household, id),
    /** Keeps the picks that people were shown, with the print of the question they answer. */
    show: (trip: number, asked: string, result: PicksResult, atMs: number): void =>
      void show.run({
        trip,
        household,
        picksJson: JSON.stringify({ slots: result.slots, asked, result }),
        atMs,
      }),
    /** Who was to eat what in the picks last shown; undefined when none were. */
    seatsShown: (trip: number): Seat[] | undefined => {
      const json = shown.get(household, trip) as string | undefined;
      const plan = json === undefined ? undefined : Shown.safeParse(JSON.parse(json));
      return plan?.success ? seatsOf(plan.data) : undefined;
    },
    /** The picks last shown, and the print of their question. */
    shown: (trip: number): z.infer<typeof Answered> | undefined => {
      const json = shown.get(household, trip) as string | undefined;
      const answered = json === undefined ? undefined : Answered.safeParse(JSON.parse(json));
      return answered?.success ? answered.data : undefined;
    },
  });
}

export type TripStore = ReturnType<ReturnType<typeof tripStore>>;
