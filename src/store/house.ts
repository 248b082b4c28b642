import type { Settings } from '#core/settings.ts';
import { batchStore } from './batches.ts';
import { eaterStore } from './eaters.ts';
import { exportStore } from './export.ts';
import { householdStore } from './households.ts';
import { openJournal } from './journal.ts';
import { learntStore } from './learnt.ts';
import { liveStore } from './live.ts';
import { mealUseStore } from './meal-uses.ts';
import { messageStore } from './messages.ts';
import type { Db } from './db.ts';
import { boughtStore } from './bought.ts';
import { counted, readOnce } from './once.ts';
import { ownFoodStore } from './own-foods.ts';
import { packetStore } from './packets.ts';
import { pouchStore } from './pouches.ts';
import { priceStore } from './prices.ts';
import { ratingStore } from './ratings.ts';
import { recipeStore } from './recipes.ts';
import { reminderStore } from './reminders.ts';
import { settingStore } from './settings.ts';
import { oldLineStore } from './old-lines.ts';
import { shoppingStore } from './shopping.ts';
import { slotRuleStore } from './slot-rules.ts';
import { tripStore } from './trips.ts';

/** Every store of one database; records are reached through `of`, one household at a time. */
export function openStores(file: Db, defaults: Settings) {
  const { db, writes, takenBack, prepareAll } = counted(file);
  const settings = settingStore(db, defaults);
  const recipes = recipeStore(db);
  const batches = batchStore(db);
  const pouches = pouchStore(db);
  const learnt = learntStore(db);
  const mealUses = mealUseStore(db);
  const packets = packetStore(db);
  const ownFoods = ownFoodStore(db);
  const eaters = eaterStore(db);
  const trips = tripStore(db);
  const slotRules = slotRuleStore(db);
  const ratings = ratingStore(db);
  const prices = priceStore(db);
  const bought = boughtStore(db);
  const shopping = shoppingStore(db);
  const exports = exportStore(db);
  const waiting = db.prepare("SELECT count(*) FROM outbox WHERE state = 'waiting'").pluck();
  const givenUp = db.prepare("SELECT count(*) FROM outbox WHERE state = 'dropped'").pluck();
  return {
    households: householdStore(db),
    oldLines: oldLineStore(db),
    messages: messageStore(db),
    live: liveStore(db),
    journal: openJournal(db),
    reminders: reminderStore(db),
    /** How the database is, for whoever runs it. */
    health: () => ({
      waiting: waiting.get() as number,
      givenUp: givenUp.get() as number,
      bytes:
        Number(db.pragma('page_count', { simple: true })) * Number(db.pragma('page_size', { simple: true })),
    }),
    /** How often this program wrote so far: what was worked out at one count holds as long as it stands. */
    changes: writes,
    prepareAll,
    /** Runs work as one transaction; inside another it becomes a part that can fail alone. */
    together: <T>(work: () => T): T => {
      try {
        return file.inTransaction ? file.transaction(work)() : file.transaction(work).immediate();
      } catch (error) {
        takenBack();
        throw error;
      }
    },
    /** One household's records, as one message sees them: each thing is read once. */
    of(household: number) {
      const own = readOnce(recipes(household), writes);
      const once = <S extends object>(store: S): S => readOnce(store, writes);
      return {
        settings: once(settings(household)),
        recipes: own,
        batches: once(batches(household, own.byId)),
        pouches: once(pouches(household)),
        learnt: once(learnt(household)),
        mealUses: once(mealUses(household)),
        packets: once(packets(household)),
        ownFoods: once(ownFoods(household)),
        eaters: once(eaters(household)),
        trips: once(trips(household)),
        slotRules: once(slotRules(household)),
        ratings: once(ratings(household)),
        prices: once(prices(household)),
        bought: once(bought(household)),
        shopping: once(shopping(household)),
        exports: exports(household),
      };
    },
  };
}

export type Stores = ReturnType<typeof openStores>;
export type Records = ReturnType<Stores['of']>;
