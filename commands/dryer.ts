import { command } from '#chat/command.ts';
import { mostHoursWarm } from '#core/cautions.ts';
import type { Batch } from '#core/records.ts';
import { Refusal } from '#core/refusal.ts';
import { type DryerEvent, stopsOf } from '#core/running.ts';
import { dryOf, isSealedFrom } from '#house/dryness.ts';
import { factsOfBatch, loadedBatch } from '#house/figures.ts';
import { type LoadsKnown, dryingAhead, loadsKnown } from '#house/forecast.ts';
import { aheadLines } from '#house/forecast-said.ts';
import type { House } from '#house/house.ts';
import type { MeterReading } from '#core/costs.ts';
import { dryerEvent, meterShown } from '#words/dryer-parts.ts';
import { batchCode, optional, restOfText } from '#words/parts.ts';
import { sayList, sayMoment, sayNumber } from '#words/say.ts';
import { pastMoment } from '#words/when.ts';

const hourMs = 3_600_000;

interface Noted {
  readonly batches: readonly Batch[];
  readonly events: readonly DryerEvent[];
  readonly lines: readonly string[];
  readonly zone: string;
}

export default command({
  name: 'dryer',
  usage:
    '/dryer [B4] stopped [14:00 to 16:30] · /dryer runs again · /dryer B4 moved to the cellar · /dryer meter 4521.3',
  summary: 'what happened in the dryer: stopped, runs again, a load moved to another one; its meter',
  examples: [
    '/dryer stopped at 14:00',
    '/dryer B2 stopped 2 h ago',
    '/dryer B2 moved to the small one',
    '/dryer meter 4521.3 kWh',
  ],
  help: [
    'Without a batch it is said of everything that dries. Hours in which nothing ran count for nothing: neither for the forecast nor for two weights that agree.',
    'Its trays and limit: /house dryer 4 trays 20 x 45 cm.',
    'The meter, read about the start and the end of a load, tells what drying took: /pouch B4 shows it.',
  ],
  records: true,
  doubtRepeats: true,
  takes: {
    batch: optional(batchCode),
    from: pastMoment,
    to: pastMoment,
    meterKwh: optional(meterShown),
    what: dryerEvent,
    where: optional(restOfText('where to, such as the small one')),
  },
  run: ({ batch: no, from, to, meterKwh, what, where }, house) => {
    if (meterKwh !== undefined) {
      if (no !== undefined || what !== undefined || to !== undefined || where !== undefined)
        throw new Refusal('left-over', 'A meter reading stands alone: /dryer meter 4521.3 at 18:00');
      return meterRead(house, from ?? house.nowMs, meterKwh);
    }
    if (what === undefined)
      throw new Refusal('dryer-what', 'What happened to the dryer: stopped, runs again, or a load moved?', [
        house.batches.latest(20).some((batch) => standsSince(batch) !== undefined)
          ? { label: 'It runs again', add: 'runs again' }
          : { label: 'It stopped just now', add: 'stopped' },
      ]);
    if (where !== undefined && what !== 'moved')
      throw new Refusal(
        'left-over',
        `I read "${what === 'stopped' ? 'stopped' : 'runs'}", but not "${where}".`,
      );
    const events = eventsOf(what, from, to, where ?? null, house.nowMs);
    const batches = no === undefined ? allDrying(house) : [stillOpen(house, no)];
    for (const batch of batches) {
      for (const event of events) {
        const refused = cannotBe(batch, event, house);
        if (refused) throw refused;
        house.batches.dryer(batch.id, event);
      }
    }
    const known = loadsKnown(house);
    return {
      batches,
      events,
      lines: batches.flatMap((batch) => standing(house, batch.no, known)),
      zone: house.settings.zone,
    };
  },
  say: (noted: Noted | MeterRead) => {
    if ('kwh' in noted) return meterTold(noted);
    const { batches, events, lines, zone } = noted;
    const codes = sayList(batches.map(({ no }) => `B${no}`));
    const said = events.map((event) => phraseOf(event, zone)).join(', ');
    return { group: [`${codes}: ${said}.`, ...lines].join('\n'), did: `dryer of ${codes}: ${said}` };
  },
});

/** As a meter shows it, to a tenth. */
const sayKwh = (kwh: number): string => `${Math.round(kwh * 10) / 10} kWh`;

interface MeterRead {
  readonly kwh: number;
  readonly atMs: number;
  readonly before: MeterReading | undefined;
  readonly zone: string;
}

/** @throws Refusal 'runs-backwards' for less than it showed before, or more than it shows later */
function meterRead(house: House, atMs: number, kwh: number): MeterRead {
  const readings = house.prices.readings();
  const before = readings.findLast((one) => one.atMs <= atMs);
  const after = readings.find((one) => one.atMs > atMs);
  const { zone } = house.settings;
  for (const [other, isWrong] of [
    [before, before !== undefined && kwh < before.kwh],
    [after, after !== undefined && kwh > after.kwh],
  ] as const)
    if (other && isWrong)
      throw new Refusal(
        'runs-backwards',
        `The meter showed ${sayKwh(other.kwh)} at ${sayMoment(other.atMs, zone)}; it does not run backwards.`,
      );
  house.prices.read(atMs, kwh);
  return { kwh, atMs, before, zone };
}

function meterTold({ kwh, atMs, before, zone }: MeterRead) {
  const since =
    before === undefined ? '' : ` ${sayKwh(kwh - before.kwh)} since ${sayMoment(before.atMs, zone)}.`;
  return {
    group: `The meter shows ${sayKwh(kwh)}.${since}`,
    did: `read the meter: ${sayKwh(kwh)} at ${sayMoment(atMs, zone)}`,
  };
}

function eventsOf(
  what: DryerEvent['what'],
  from: number | undefined,
  to: number | undefined,
  note: string | null,
  nowMs: number,
): DryerEvent[] {
  if (to === undefined) return [{ what, atMs: from ?? nowMs, note }];
  if (what !== 'stopped')
    throw new Refusal(
      'two-times',
      'Two times tell from when to when it stood still: /dryer stopped 14:00 to 16:30.',
    );
  if (to <= from!)
    throw new Refusal('backwards', 'It ran again before it stopped? The first time is the earlier one.');
  return [
    { what: 'stopped', atMs: from!, note: null },
    { what: 'resumed', atMs: to, note: null },
  ];
}

/** Everything of which nothing is sealed and that was not shown to be dry. */
function allDrying(house: House): Batch[] {
  const open = house.batches
    .latest(20)
    .filter((batch) => !isSealedFrom(house, batch.no) && dryOf(house, batch).is === 'not dry');
  if (open.length > 0) return open;
  throw new Refusal(
    'nothing-dries',
    'Nothing is drying now. Of a load in particular: /dryer B4 stopped at 14:00.',
  );
}

function stillOpen(house: House, no: number): Batch {
  const batch = loadedBatch(house, no);
  if (!isSealedFrom(house, no)) return batch;
  throw new Refusal('sealed-already', `Pouches of B${no} are sealed: it is no longer in the dryer.`);
}

/** Since when a load stands still, ms; undefined for one that runs. */
function standsSince({ events }: Pick<Batch, 'events'>): number | undefined {
  const stop = stopsOf(events).at(-1);
  return stop && stop.toMs === null ? stop.fromMs : undefined;
}

/** Why an event cannot be; undefined where it can. */
function cannotBe(batch: Batch, event: DryerEvent, house: House): Refusal | undefined {
  const { zone } = house.settings;
  const events = loadedBatch(house, batch.no).events;
  const standsMs = standsSince({ events });
  const last = events.at(-1);
  if (event.atMs < batch.loadedAtMs)
    return new Refusal(
      'before-loading',
      `B${batch.no} was loaded after that, ${sayMoment(batch.loadedAtMs, zone)}.`,
    );
  if (last && event.atMs < last.atMs)
    return new Refusal(
      'out-of-order',
      `Of B${batch.no} something later is on record: ${phraseOf(last, zone)}. /undo takes it back.`,
    );
  if (event.what === 'stopped' && standsMs !== undefined)
    return new Refusal(
      'stands-already',
      `B${batch.no} stands still already, since ${sayMoment(standsMs, zone)}.`,
    );
  if (event.what === 'resumed' && standsMs === undefined)
    return new Refusal(
      'runs-already',
      `B${batch.no} runs, as far as I know. When did it stop? /dryer B${batch.no} stopped 14:00 to 16:30`,
    );
  return undefined;
}

function phraseOf({ what, atMs, note }: DryerEvent, zone: string): string {
  const at = sayMoment(atMs, zone);
  if (what === 'moved')
    return `moved${note === null ? '' : ` ${/^to\b/.test(note) ? note : `to ${note}`}`}, ${at}`;
  return what === 'stopped' ? `stands still since ${at}` : `runs again since ${at}`;
}

/** How it goes on, and what long warm hours do to food that is not dry. */
function standing(house: House, no: number, known: LoadsKnown): string[] {
  const batch = loadedBatch(house, no);
  const stop = stopsOf(batch.events).at(-1);
  const hours = stop === undefined ? 0 : ((stop.toMs ?? house.nowMs) - stop.fromMs) / hourMs;
  const ahead = dryingAhead(house, batch, factsOfBatch(house, batch), known);
  return [
    ...aheadLines(house, ahead).map((line) => `B${no}: ${line}`),
    ...(stop !== undefined && (stop.toMs === null || hours > mostHoursWarm)
      ? [
          `Did it thaw${hours >= 1 ? ` in these ${sayNumber(Math.round(hours))} h` : ''}? Wet food that was not cold for more than ${mostHoursWarm} h is thrown away, not dried on.`,
        ]
      : []),
  ];
}
