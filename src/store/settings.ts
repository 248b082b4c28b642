import { z } from 'zod';
import { ranges } from '#core/ranges.ts';
import { defaultSettings, type Settings } from '#core/settings.ts';
import type { Db } from './db.ts';

const ranged = (name: keyof typeof ranges) => z.number().min(ranges[name].least).max(ranges[name].most);
const above = z.number().positive();
const notBelow = z.number().min(0);
const Shape: z.ZodType<Settings> = z.object({
  altitudeM: ranged('altitudeM'),
  zone: z.string(),
  units: z.enum(['grams', 'ounces']),
  cupMl: ranged('cupMl'),
  dryer: z.object({ trays: above, widthMm: above.nullable(), lengthMm: above.nullable() }).nullable(),
  loadLimitG: ranged('loadLimitG').nullable(),
  trayTaresG: z.array(ranged('trayTareG')),
  storageC: ranged('storageC'),
  absorbersMl: z.array(ranged('absorberMl')),
  absorberSafety: ranged('absorberSafety'),
  pouch: z.object({ volumeMl: above, told: z.string() }).nullable(),
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
  return (household: number) => ({
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
