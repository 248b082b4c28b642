// Witness: what is asked of reminders (each once, none at night, best-by monthly at most) is this project's promise,
// no source; days and clock changes are counted by hand from the calendar of the zone.
import { expect, test } from 'vitest';
import { type Watched, remindersOf, weighDueMs } from '#core/reminders.ts';
import { defaultSettings, type Settings } from '#core/settings.ts';
import { localDays } from '#words/local-days.ts';

const hourMs = 3_600_000;
const at = (iso: string) => Date.parse(iso);
const none: Watched = { drying: [], sealed: [], firstBestByOn: null, shortTrips: [] };

function due(
  watched: Partial<Watched>,
  now: string,
  settings: Partial<Settings> = {},
  was: readonly string[] = [],
) {
  const all = { ...defaultSettings, zone: 'Europe/Berlin', ...settings };
  return remindersOf({ ...none, ...watched }, all, localDays(all.zone), at(now), (about) =>
    was.includes(about) ? 0 : undefined,
  ).map(({ kind, dueAtMs }) => `${kind} ${new Date(dueAtMs).toISOString()}`);
}

const loaded = {
  id: 3,
  loadedAtMs: at('2027-05-03T10:00:00Z'),
  readyAtMs: at('2027-05-04T06:00:00Z'),
  lastWeighedAtMs: null,
  isDry: false,
} as const;

test('a load is to be weighed when it should be ready, and after a weighing that came too early', () => {
  expect(weighDueMs(loaded, 2)).toBe(loaded.loadedAtMs + 20 * hourMs);
  const weighed = (hours: number) => ({ ...loaded, lastWeighedAtMs: loaded.loadedAtMs + hours * hourMs });
  expect(weighDueMs(weighed(5), 2)).toBe(loaded.loadedAtMs + 20 * hourMs);
  expect(weighDueMs(weighed(21), 2)).toBe(loaded.loadedAtMs + 23 * hourMs);
  expect(weighDueMs({ ...weighed(21), isDry: true }, 2)).toBeUndefined();
});

test('a seal is checked 48 hours after sealing, and no more when two weeks have passed', () => {
  const sealed = [{ batch: 3, atMs: at('2027-05-03T10:00:00Z') }];
  expect(due({ sealed }, '2027-05-03T12:00:00Z')).toEqual(['seal 2027-05-05T10:00:00.000Z']);
  expect(due({ sealed }, '2027-05-18T10:00:00Z')).toHaveLength(1);
  expect(due({ sealed }, '2027-05-20T10:00:00Z')).toEqual([]);
});

test.each([
  // 21:30 in Berlin's summer is night; eight in the morning there is 06:00 UTC.
  ['2027-05-01T19:30:00Z', '2027-05-04T06:00:00.000Z'],
  ['2027-05-01T18:59:00Z', '2027-05-03T18:59:00.000Z'],
  ['2027-05-01T03:00:00Z', '2027-05-03T06:00:00.000Z'],
  // The clock went forward in the night to 28 March and back in the night to 31 October 2027.
  ['2027-03-25T23:30:00Z', '2027-03-28T06:00:00.000Z'],
  ['2027-10-28T22:30:00Z', '2027-10-31T07:00:00.000Z'],
])('sealed at %s, it comes by day: %s', (sealed, comes) => {
  expect(due({ sealed: [{ batch: 3, atMs: at(sealed) }] }, sealed)).toEqual([`seal ${comes}`]);
});

test('best-by comes once a calendar month from the horizon on', () => {
  const firstBestByOn = '2027-09-20';
  const now = '2027-05-10T12:00:00Z';
  // 60 days before 20 September is 22 July.
  expect(due({ firstBestByOn }, now)).toEqual(['best-by 2027-07-22T06:00:00.000Z']);
  expect(due({ firstBestByOn }, now, { horizonDays: 30 })).toEqual(['best-by 2027-08-21T06:00:00.000Z']);
  const july = '2027-07-25T12:00:00Z';
  expect(due({ firstBestByOn }, july)).toEqual(['best-by 2027-07-22T06:00:00.000Z']);
  expect(due({ firstBestByOn }, july, {}, ['best-by 2027-07'])).toEqual(['best-by 2027-08-01T06:00:00.000Z']);
  expect(due({ firstBestByOn }, '2027-12-24T12:00:00Z', {}, ['best-by 2027-12'])).toEqual([
    'best-by 2028-01-01T07:00:00.000Z',
  ]);
});

test('a short trip is named two days before cooking must start', () => {
  const shortTrips = [{ id: 2, startsOn: '2027-06-12', latestStartOn: '2027-06-08' }];
  expect(due({ shortTrips }, '2027-06-01T12:00:00Z')).toEqual(['trip 2027-06-06T06:00:00.000Z']);
});

test('each kind can be switched off, and nothing comes twice', () => {
  const watched: Watched = {
    drying: [loaded],
    sealed: [{ batch: 2, atMs: at('2027-05-02T10:00:00Z') }],
    firstBestByOn: '2027-05-20',
    shortTrips: [{ id: 1, startsOn: '2027-05-08', latestStartOn: '2027-05-06' }],
  };
  const now = '2027-05-04T12:00:00Z';
  const kinds = (settings: Partial<Settings>) => due(watched, now, settings).map((one) => one.split(' ')[0]);
  expect(new Set(kinds({}))).toEqual(new Set(['best-by', 'seal', 'trip', 'weigh']));
  expect(kinds({ remindWeigh: false })).not.toContain('weigh');
  expect(kinds({ remindSeal: false })).not.toContain('seal');
  expect(kinds({ remindBestBy: false })).not.toContain('best-by');
  expect(kinds({ remindTrip: false })).not.toContain('trip');
  const was = [
    `weigh 3 after ${loaded.loadedAtMs}`,
    `seal 2 at ${at('2027-05-02T10:00:00Z')}`,
    'trip 1 on 2027-05-08',
  ];
  expect(due(watched, now, {}, was)).toEqual(['best-by 2027-03-21T07:00:00.000Z']);
});

// That steady lasts an hour is common practice, no source; in Berlin's summer nine in the evening is 19:00 UTC.
test.each([
  ['2027-05-03T10:00:00Z', '2027-05-03T11:00:00.000Z'],
  ['2027-05-03T17:59:00Z', '2027-05-03T18:59:00.000Z'],
  ['2027-05-03T18:20:00Z', '2027-05-03T18:50:00.000Z'],
  ['2027-05-03T18:40:00Z', '2027-05-03T18:55:00.000Z'],
  ['2027-05-03T18:50:00Z', '2027-05-04T06:00:00.000Z'],
  ['2027-05-03T23:00:00Z', '2027-05-04T06:00:00.000Z'],
])('dry at %s and not sealed, it is said the same day: %s', (weighed, comes) => {
  const drying = [{ ...loaded, isDry: true, lastWeighedAtMs: at(weighed) }];
  expect(due({ drying }, weighed)).toEqual([`weigh ${comes}`]);
  expect(due({ drying }, weighed, {}, [`dry 3 at ${at(weighed)}`])).toEqual([]);
  expect(due({ drying }, weighed, { remindWeigh: false })).toEqual([]);
});

test('a week after it was dry nobody is told any more', () => {
  const drying = [{ ...loaded, isDry: true, lastWeighedAtMs: at('2027-05-03T10:00:00Z') }];
  expect(due({ drying }, '2027-05-10T10:59:00Z')).toHaveLength(1);
  expect(due({ drying }, '2027-05-10T11:00:00Z')).toEqual([]);
});
