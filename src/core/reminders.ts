import { steadyLastsHours } from './dry-verdict.ts';
import type { Settings } from './settings.ts';

export const reminderKinds = ['weigh', 'seal', 'best-by', 'trip'] as const;
export type ReminderKind = (typeof reminderKinds)[number];

/** The setting that switches each kind. */
export const remindSetting = {
  weigh: 'remindWeigh',
  seal: 'remindSeal',
  'best-by': 'remindBestBy',
  trip: 'remindTrip',
} as const satisfies Record<ReminderKind, keyof Settings>;

export interface Reminder {
  readonly kind: ReminderKind;
  /** What it is about; a household is reminded of each such thing once. */
  readonly about: string;
  readonly dueAtMs: number;
  /** It was told before and nobody acted. */
  readonly isAgain: boolean;
}

/** A reminder that comes again is kept under another name than its first. */
export const againKey = (about: string): string => `again ${about}`;

/** Until when somebody put a reminder off is kept under this name. */
export const laterKey = (about: string): string => `later ${about}`;

/** Put off, a reminder comes again after so many hours. Chosen. */
export const laterHours = 2;

/** What the button that puts a reminder off asks for. */
export const laterRequest = (about: string): string => `later ${about}`;

/** What such a button is about; undefined for every other. */
export const putOffBy = (request: string): string | undefined => /^later (.+)$/su.exec(request)?.[1];

/** Calendar days in a household's zone; days are ISO text. */
export interface LocalDays {
  readonly dayOf: (ms: number) => string;
  /** When people can be spoken to on a day, ms. */
  readonly morningOf: (day: string) => number;
  readonly plusDays: (day: string, days: number) => string;
  /** The moment itself by day; at night, the morning after. */
  readonly awake: (ms: number) => number;
  /** Whether most people sleep at that moment. */
  readonly isAsleep: (ms: number) => boolean;
  /** The end of the evening before a moment of the night, ms. */
  readonly eveningBefore: (ms: number) => number;
}

/** What a household's reminders follow from. */
export interface Watched {
  /** Batches of which nothing is sealed yet. */
  readonly drying: readonly {
    readonly id: number;
    readonly loadedAtMs: number;
    readonly lastWeighedAtMs: number | null;
    /** When it should be dry, ms: by its weights, else by what the house's loads took. */
    readonly readyAtMs: number;
    /** Shown to be dry at its last weighing. */
    readonly isDry: boolean;
  }[];
  /** Pouches in stock, by the moment they were sealed. */
  readonly sealed: readonly { readonly batch: number; readonly atMs: number }[];
  /** The earliest best-by in stock, an ISO day. */
  readonly firstBestByOn: string | null;
  /** Trips found short of meals, with the latest day to start cooking. */
  readonly shortTrips: readonly {
    readonly id: number;
    readonly startsOn: string;
    readonly latestStartOn: string;
  }[];
}

const hourMs = 3_600_000;
/** A seal that leaks has mostly let go by then. Common practice, no source. */
const sealCheckHours = 48;
/** Later than this after its moment a reminder helps nobody. Chosen. */
const staleDays = { weigh: 30, dry: 7, seal: 14 };
/** Hours after which a thing is told once more where nobody acted; best-by and trips are not. Chosen. */
const againHours: Readonly<Partial<Record<ReminderKind, number>>> = { weigh: 4, seal: 24 };
/** Longer after that it is not told any more. Chosen. */
const againStaleHours = 24;
/** Days before the latest day to start cooking, so that somebody can still shop. Chosen. */
const shoppingDays = 2;

/**
 * When a batch should be weighed again: when it should be ready, and after a weighing that was not steady once
 * weighings are far enough apart to prove something.
 * @returns ms; undefined when it is dry
 */
export function weighDueMs(
  { readyAtMs, lastWeighedAtMs, isDry }: Watched['drying'][number],
  steadyGapHours: number,
): number | undefined {
  if (isDry) return undefined;
  return lastWeighedAtMs === null
    ? readyAtMs
    : Math.max(readyAtMs, lastWeighedAtMs + steadyGapHours * hourMs);
}

/**
 * When dry food that nobody sealed is to be spoken of: when its weight no longer holds, sooner where the evening ends
 * before that, so that it comes the same day.
 * @returns ms
 */
function sealDueMs(weighedAtMs: number, days: LocalDays): number {
  const after = [1, 0.5, 0.25].map((share) => weighedAtMs + share * steadyLastsHours * hourMs);
  return after.find((ms) => days.awake(ms) === ms) ?? after[0]!;
}

/**
 * Everything that a household is to be reminded of and was not yet, the earliest first, each at a moment when people
 * are awake. Best-by comes at most once a calendar month.
 * @param remindedAtMs when the household was reminded of a thing; undefined when it was not
 */
export function remindersOf(
  watched: Watched,
  settings: Settings,
  days: LocalDays,
  nowMs: number,
  remindedAtMs: (about: string) => number | undefined,
): Reminder[] {
  const found: Reminder[] = [];
  const add = (kind: ReminderKind, about: string, dueAtMs: number) => {
    if (!settings[remindSetting[kind]]) return;
    const toldMs = remindedAtMs(about);
    // A forecast falls between two milliseconds; the clock and the records know whole ones.
    if (toldMs === undefined)
      found.push({ kind, about, dueAtMs: days.awake(Math.ceil(dueAtMs)), isAgain: false });
    const again = againHours[kind];
    if (toldMs === undefined || again === undefined || remindedAtMs(againKey(about)) !== undefined) return;
    const againMs = days.awake(remindedAtMs(laterKey(about)) ?? toldMs + again * hourMs);
    if (nowMs - againMs < againStaleHours * hourMs)
      found.push({ kind, about, dueAtMs: againMs, isAgain: true });
  };
  for (const batch of watched.drying) {
    const dueMs = weighDueMs(batch, settings.steadyGapHours);
    if (dueMs !== undefined && nowMs - dueMs < staleDays.weigh * 24 * hourMs)
      add('weigh', `weigh ${batch.id} after ${batch.lastWeighedAtMs ?? batch.loadedAtMs}`, dueMs);
  }
  for (const { id, isDry, lastWeighedAtMs } of watched.drying) {
    if (!isDry || lastWeighedAtMs === null) continue;
    const dueMs = sealDueMs(lastWeighedAtMs, days);
    if (nowMs - dueMs < staleDays.dry * 24 * hourMs) add('weigh', `dry ${id} at ${lastWeighedAtMs}`, dueMs);
  }
  for (const { batch, atMs } of watched.sealed) {
    const dueMs = atMs + sealCheckHours * hourMs;
    if (nowMs - dueMs < staleDays.seal * 24 * hourMs) add('seal', `seal ${batch} at ${atMs}`, dueMs);
  }
  if (watched.firstBestByOn !== null) {
    const opens = days.plusDays(watched.firstBestByOn, -settings.horizonDays);
    const today = days.dayOf(nowMs);
    const isOpen = opens <= today;
    const thisMonth = monthOf(isOpen ? today : opens);
    const wasThisMonth = remindedAtMs(`best-by ${thisMonth}`) !== undefined;
    const month = wasThisMonth ? nextMonth(thisMonth) : thisMonth;
    const from = wasThisMonth ? `${month}-01` : opens;
    add('best-by', `best-by ${month}`, days.morningOf(from));
  }
  for (const { id, startsOn, latestStartOn } of watched.shortTrips)
    add('trip', `trip ${id} on ${startsOn}`, days.morningOf(days.plusDays(latestStartOn, -shoppingDays)));
  return found.sort((a, b) => a.dueAtMs - b.dueAtMs);
}

const monthOf = (day: string) => day.slice(0, 7);

function nextMonth(month: string): string {
  const [year, no] = month.split('-').map(Number) as [number, number];
  return no === 12 ? `${year + 1}-01` : `${year}-${String(no + 1).padStart(2, '0')}`;
}
