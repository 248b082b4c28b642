import { defaultSettings } from '#core/settings.ts';
import { openStores } from '#store/house.ts';
import { openDatabase } from '#store/open.ts';

/** The chat of the n-th household, counted from 0. */
export const chatOf = (n: number): number => -1_002_000_000_000 - n;

const foods = [
  { name: 'Barley soup', called: 'barley, dry', ndb: '20005' },
  { name: 'Lentil pot', called: 'red lentils, dry', ndb: '16144' },
  { name: 'Rice and beans', called: 'rice, dry', ndb: '20044' },
  { name: 'Onion stew', called: 'onion', ndb: '11282' },
  { name: 'Carrot mash', called: 'carrot', ndb: '11124' },
] as const;
const contents = JSON.stringify({ contains: [], check: [], kinds: [], checkKinds: [] });
export const pouchesPerBatch = 10;

/**
 * Fills a new database with households of one shape each: five recipes, batches of ten pouches, trays and weighings
 * behind every batch. Straight into the tables; typing it would take days.
 * @returns the batches of each household
 */
export function fillHouseholds(path: string, households: number, pouches: number): number {
  const db = openDatabase(path);
  const stores = openStores(db, defaultSettings);
  const batches = Math.max(1, Math.round(pouches / households / pouchesPerBatch));
  db.pragma('synchronous = OFF');
  const recipe = db.prepare(
    `INSERT INTO recipe (household, name, folded_name, servings, pot_g, made_at_ms) VALUES (?, ?, ?, 6, 1800, 0)`,
  );
  const line = db.prepare(
    `INSERT INTO recipe_line (household, recipe, position, typed, state, called, ndb, grams, contents_json)
     VALUES (?, ?, ?, ?, 'weighed', ?, ?, ?, ?)`,
  );
  const batch = db.prepare(
    'INSERT INTO batch (household, no, recipe, factor, pot_g, loaded_at_ms) VALUES (?, ?, ?, 1, 1800, ?)',
  );
  const tray = db.prepare('INSERT INTO tray (household, batch, no, wet_g) VALUES (?, ?, ?, 900)');
  const weighing = db.prepare(
    'INSERT INTO weighing (household, batch, tray_no, at_ms, net_g) VALUES (?, ?, ?, ?, 250)',
  );
  const pouch = db.prepare(
    `INSERT INTO pouch (household, batch, no, dry_g, sealed_at_ms, checked, absorber_ml, absorber_count, best_by_on, weighing)
     VALUES (?, ?, ?, 50, ?, 1, 300, 1, ?, ?)`,
  );
  const hourMs = 3_600_000;
  const startMs = Date.now() - 300 * 24 * hourMs;

  const one = (n: number) => {
    const message = {
      door: 'telegram',
      chatKey: String(chatOf(n)),
      chatTitle: `Kitchen ${n}`,
      isPrivate: false,
      person: { key: String(5_000_000_000 + n), name: 'Ana' },
      sentAtMs: startMs,
    };
    const household = stores.households.admit(message as never);
    stores.households.member(household, message as never);
    const recipes = foods.map(({ name, called, ndb }) => {
      const id = recipe.run(household, name, name.toLowerCase()).lastInsertRowid;
      line.run(household, id, 1, `600 g ${called}`, called, ndb, 600, contents);
      line.run(household, id, 2, '1.2 l water', 'water', '14411', 1200, contents);
      line.run(household, id, 3, '6 g salt', 'salt', '02047', 6, contents);
      return id;
    });
    for (let b = 1; b <= batches; b += 1) {
      const loadedMs = startMs + b * 48 * hourMs;
      const id = batch.run(household, b, recipes[b % recipes.length], loadedMs).lastInsertRowid;
      let last: number | bigint = 0;
      for (const no of [1, 2]) tray.run(household, id, no);
      for (const hours of [20, 23])
        for (const no of [1, 2])
          last = weighing.run(household, id, no, loadedMs + hours * hourMs).lastInsertRowid;
      for (let no = 1; no <= pouchesPerBatch; no += 1)
        pouch.run(household, id, no, loadedMs + 24 * hourMs, '2029-06-01', last);
    }
  };
  for (let n = 0; n < households; n += 500)
    db.transaction(() => {
      for (let i = n; i < Math.min(n + 500, households); i += 1) one(i);
    })();
  db.pragma('synchronous = FULL');
  db.pragma('wal_checkpoint(TRUNCATE)');
  db.close();
  return batches;
}
