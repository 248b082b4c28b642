import { z } from 'zod';

const Environment = z.object({
  HOUSEHOLD_DB: z.string().min(1).default('data/household.db'),
  HOUSEHOLD_NOW: z
    .string()
    .refine((text) => !Number.isNaN(Date.parse(text)), 'is no ISO 8601 time, such as 2026-05-03T18:00:00Z')
    .optional(),
  HOUSEHOLD_ADMIT_CODE: z.string().min(4, 'needs at least 4 characters').optional(),
  TELEGRAM_BOT_TOKEN: z.string().min(1).optional(),
  TELEGRAM_API_ROOT: z.url('is no address').optional(),
  TZ: z.string().optional(),
});

export interface Config {
  readonly databasePath: string;
  /** A fixed clock for scripts and tests, ms; null for the real one. */
  readonly fixedNowMs: number | null;
  readonly admitCode: string | null;
  readonly telegramToken: string | null;
  readonly telegramApiRoot: string | null;
}

/**
 * Reads the environment; empty values count as unset.
 * @throws Error naming the variable and what is wrong with it
 */
export function readConfig(environment: Readonly<Record<string, string | undefined>>): Config {
  const set = Object.fromEntries(Object.entries(environment).filter(([, value]) => value !== ''));
  const read = Environment.safeParse(set);
  if (!read.success) {
    const { path, message } = read.error.issues[0]!;
    throw new Error(`${String(path[0])} ${message}.`);
  }
  const { data } = read;
  return {
    databasePath: data.HOUSEHOLD_DB,
    fixedNowMs: data.HOUSEHOLD_NOW === undefined ? null : Date.parse(data.HOUSEHOLD_NOW),
    admitCode: data.HOUSEHOLD_ADMIT_CODE ?? null,
    telegramToken: data.TELEGRAM_BOT_TOKEN ?? null,
    telegramApiRoot: data.TELEGRAM_API_ROOT ?? null,
  };
}
