import { z } from 'zod';
import { materials } from '#core/barrier.ts';
import { ranges } from '#core/ranges.ts';
import { defaultSettings, type Settings } from '#core/settings.ts';
import type { Db } from './db.ts';

const ranged = (name: keyof typeof ranges) => z.number().min(ranges[name].least).max(ranges[name].most);
const above = z.number().positive();
const notBelow = z.number().min(0);
/** Older records do not tell what a pouch is made of. */
const pouchKind = {
  volumeMl: above,
  told: z.string(),
  material: z.enum(materials).nullable().default(null),
  areaCm2: above.nullable().default(null),
};
const Shape: z.ZodType<Settings> = z.object({
  altitudeM: ranged('altitudeM'),
  zone: z.string(),
  units: z.enum(['grams', 'ounces']),
  cupMl: ranged('cupMl'),
  dryer: z.object({ trays: above, widthMm: above.nullable(), lengthMm: above.nullable() }).nullable(),
  loadLimitG: ranged('loadLimitG').nullable(),
  dryerWatts: ranged('dryerWatts').nullable(),
  trayTaresG: z.array(ranged('trayTareG')),
  storageC: ranged('storageC'),
  absorbersMl: z.array(ranged('absorberMl')),
  absorberPacks: z.array(
    z.object({
      sizeMl: ranged('absorberMl'),
      count: notBelow.int().nullable(),
      countedAtMs: z.number(),
      openedOn: z.string().nullable(),
    }),
  ),
  absorberSafety: ranged('absorberSafety'),
  pouch: z.object(pouchKind).nullable(),
  pouchKinds: z.array(z.object({ name: z.string().min(1), ...pouchKind })),
  scaleG: ranged('scaleG'),
  steadyGapHours: ranged('steadyGapHours'),
  residualMoisture: ranged('residualMoisture'),
  remindWeigh: z.boolean(),
  remindSeal: z.boolean(),
  remindBestBy: z.boolean(),
  remindTrip: z.boolean(),
  horizonDays: ranged('horizonDays'),
  labels: z.object({
    paper: z.enum(['a4', 'letter', 'single']),
    columns: above.int(),
    rows: above.int(),
    widthMm: above,
    heightMm: above,
    leftMm: notBelow,
    topMm: notBelow,
    gapXMm: notBelow,
    gapYMm: notBelow,
  }),
  labelMargins: z.object({ leftMm: notBelow, topMm: notBelow }).nullable(),
});

/** What each household told about itself. */
export function settingStore(db: Db, defaults: Settings = defaultSettings) {
  const all = db.prepare('SELECT name, value_json FROM setting WHERE household = ?');
  const put = db.prepare(
    `INSERT INTO setting (household, name, value_json) VALUES (?, ?, ?)
     ON CONFLICT (household, name) DO UPDATE SET value_json = excluded.value_json`,
  );
  const spells = db.prepare(
    'SELECT from_ms AS fromMs, temp_c AS tempC FROM storage_spell WHERE household = ? ORDER BY from_ms, id',
  );
  const moved = db.prepare('INSERT INTO storage_spell (household, from_ms, temp_c) VALUES (?, ?, ?)');
  return (household: number) => ({
    /** Where pouches were kept, from when on; empty while nobody ever changed it. */
    spells: (): { fromMs: number; tempC: number }[] =>
      spells.all(household) as { fromMs: number; tempC: number }[],
    /** Notes where pouches are kept from a moment on. */
    moved: (fromMs: number, tempC: number): void => void moved.run(household, fromMs, tempC),
    all: (): Settings => {
      const told = (all.all(household) as { name: string; value_json: string }[]).map(
        ({ name, value_json }) => [name, JSON.parse(value_json) as unknown],
      );
      return told.length === 0 ? defaults : Shape.parse({ ...defaults, ...Object.fromEntries(told) });
    },
    told: (): string[] => (all.all(household) as { name: string }[]).map(({ name }) => name),
    set: <K extends keyof Settings>(name: K, value: Settings[K]): void =>
      void put.run(household, name, JSON.stringify(value)),
  });
}

export type SettingStore = ReturnType<ReturnType<typeof settingStore>>;
