import { table } from './table.ts';
import { DateTime } from 'luxon';
import type { Effort } from '#core/records.ts';
import { mentions } from './day-mentions.ts';
import type { Names } from './part.ts';
import type { Reading } from './reading.ts';

/** How hard a day is. */
export interface DayEffort {
  /** The day meant, on or after the trip's first; null: every day of the trip. */
  readonly onDay: (startsOn: string) => string | null;
  readonly effort: Effort;
}

const words = table<Effort>({
  rest: 'rest', resting: 'rest', lazy: 'rest', easy: 'rest',
  walk: 'walk', walking: 'walk', normal: 'walk',
  hard: 'hard', tough: 'hard', steep: 'hard', strenuous: 'hard', climb: 'hard', summit: 'hard',
}); // prettier-ignore
const company = new Set([
  'day',
  'days',
  'climb',
  'hike',
  'walk',
  'is',
  'are',
  'a',
  'an',
  'the',
  'on',
  'only',
  'one',
  ',',
  'and',
  'all',
]);

/**
 * How hard days are: 'saturday hard climb', 'rest on sunday', 'hard days'. A word counts only beside a day of the trip
 * or before 'day', so that places may be called Rest Lake.
 */
export function dayEfforts(reading: Reading, names: Names): DayEffort[] {
  const found: DayEffort[] = [];
  const plain = (i: number): string => reading.at(i)?.plain ?? '';
  const all = [...reading.left()];
  for (const index of all) {
    const effort = words[plain(index)];
    if (effort === undefined) continue;
    const [from, to] = stretch(plain, index);
    // Only the days next to it are looked at: the trip's own may name the same day.
    const near = reading.without([...reading.left()].filter((i) => i < from - 3 || i > to + 3));
    const beside = mentions(near, names).find((m) => m.to === from - 1 || m.from === to + 1);
    const isEvery = /^days?$/.test(plain(to)) && plain(index - 1) !== 'a';
    if (!beside && !isEvery) continue;
    for (let i = Math.min(from, beside?.from ?? from); i <= Math.max(to, beside?.to ?? to); i += 1)
      reading.take(i);
    found.push({
      onDay: (startsOn) =>
        beside?.onOrAfter(DateTime.fromISO(startsOn, { zone: names.zone }))?.toISODate() ?? null,
      effort,
    });
  }
  return found;
}

/** The words around one that only go with it: 'is a hard climb'. */
function stretch(plain: (i: number) => string, index: number): [number, number] {
  const goesWith = (i: number): boolean => company.has(plain(i)) || words[plain(i)] !== undefined;
  let [from, to] = [index, index];
  while (goesWith(from - 1)) from -= 1;
  while (goesWith(to + 1)) to += 1;
  return [from, to];
}
