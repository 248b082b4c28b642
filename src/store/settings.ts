import { z } from 'zod';
import { defaultSettings, type Settings } from '#core/settings.ts';
import type { Db } from './db.ts';

const above = z.number().positive();
const notBelow = z.number().min(0);
const Shape: z.ZodType<Settings> = z.object({
  altitudeM: z.number(),
  zone: z.string(),
  units: z.enum(['grams', 'ounces']),
  cupMl: above,
  dryer: z.object({ trays: above, widthMm: above.nullable(), lengthMm: above.nullable() }).nullable(),
  loadLimitG: above.nullable(),
  trayTaresG: z.array(above),
  storageC: z.number(),
  absorbersMl: z.array(above),
  absorberSafety: z.number().min(1),
  pouch: z.object({ volumeMl: above, told: z.string() }).nullable(),
  scaleG: above,
  steadyGapHours: z.number().min(0),
  residualMoisture: z.number().min(0).max(0.2),
  remindWeigh: z.boolean(),
  remindSeal: z.boolean(),
  remindBestBy: z.boolean(),
  remindTrip: z.boolean(),
  horizonDays: z.number().min(0),
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
