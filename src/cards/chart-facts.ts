import { DateTime } from 'luxon';
import { sumThresholdG, trayThresholdG } from '#core/dryness.ts';
import { energyOfDayKcal, sodiumOfDayMg } from '#core/eaters.ts';
import { steadinessOf } from '#core/meal.ts';
import type { Batch, Trip } from '#core/records.ts';
import { Refusal } from '#core/refusal.ts';
import type { DryingFacts, DryingSeries, StockFacts, TripFacts } from '#draw/facts.ts';
import { sayCount, sayG, sayMoment, sayNumber } from '#words/say.ts';
import type { House } from '#house/house.ts';
import { loadedBatch, factsOfBatch } from '#house/figures.ts';
import { dryingAhead, isHourKnown } from '#house/forecast.ts';
import { sayReady } from '#house/forecast-said.ts';
import { heldFor } from '#house/packing.ts';
import { servedOf } from './paper-facts.ts';
import { dryPhrase } from '#words/dry-phrases.ts';
import { dryOf, isSealedFrom } from '#house/dryness.ts';
import { dryAbout } from '#house/weighing.ts';
import { tripSums } from '#house/trip-sums.ts';
import { sayDayOf } from '#house/trips.ts';

/** More lines in one chart cannot be told apart. */
const mostLines = 6;
const hourMs = 3_600_000;

/** The weighings of a batch, tray by tray where they were weighed so. */
export function dryingFacts(house: House, no: number): DryingFacts {
  const { settings } = house;
  const batch = loadedBatch(house, no);
  const facts = factsOfBatch(house, batch);
  const byTray =
    batch.weighings.length > 0 &&
    batch.weighings.every(({ trayNo }) => trayNo > 0) &&
    batch.trays.length > 1 &&
    batch.trays.length <= mostLines;
  const share = facts.expectedDryG === null ? null : facts.expectedDryG / facts.wetG;
  const lines = byTray
    ? batch.trays.map((tray) => ({
        called: `tray ${tray.no}`,
        wetG: tray.wetG,
        points: batch.weighings.filter(({ trayNo }) => trayNo === tray.no),
      }))
    : [{ called: 'batch', wetG: facts.wetG, points: together(batch) }];
  const series = lines.map(({ called, wetG, points }): DryingSeries => {
    const all = [
      { hours: 0, g: wetG },
      ...points.map(({ atMs, netG }) => ({ hours: (atMs - batch.loadedAtMs) / hourMs, g: netG })),
    ];
    return {
      called,
      points: all,
      thresholdG: byTray ? trayThresholdG(all.at(-1)!.g) : sumThresholdG(all.at(-1)!.g),
      expectedG: share === null ? null : wetG * share,
    };
  });
  const expected =
    facts.expectedDryG === null
      ? 'The recipe does not tell what it should weigh dry.'
      : `Expected dry: about ${sayG(facts.expectedDryG, settings.units)} in all, by the recipe with ${sayNumber(settings.residualMoisture * 100)} % moisture left.`;
  const verdict = dryOf(house, batch, facts);
  const ahead =
    verdict.is === 'dry' || isSealedFrom(house, no) ? undefined : dryingAhead(house, batch, facts);
  const hoursAt = (ms: number) => (ms - batch.loadedAtMs) / hourMs;
  return {
    is: 'drying',
    title: `B${no} ${batch.recipe.name}: drying`,
    caption: [
      `${sayG(facts.wetG, settings.units)} wet on ${sayCount(batch.trays.length, 'tray')}, loaded ${sayMoment(batch.loadedAtMs, settings.zone)}. ${expected}`,
      dryPhrase(verdict, steadinessOf(batch, settings), dryAbout(batch), settings)[0]!,
      ...(isHourKnown(ahead) ? [`Dry ${sayReady(ahead, settings.zone)}.`] : []),
    ],
    series,
    ahead: isHourKnown(ahead)
      ? {
          readyHours: hoursAt(ahead.readyMs),
          earliestHours: hoursAt(ahead.earliestMs),
          latestHours: hoursAt(ahead.latestMs),
        }
      : null,
  };
}

/** The batch's whole weight at each weighing; a tray not weighed this time counts as it was last known. */
function together(batch: Batch): { atMs: number; netG: number }[] {
  const latest = new Map(batch.trays.map(({ no, wetG }) => [no, wetG]));
  const byMoment = new Map<number, number>();
  for (const { atMs, trayNo, netG } of batch.weighings) {
    if (trayNo === 0) {
      const before = [...latest.values()].reduce((sum, g) => sum + g, 0);
      for (const [no, g] of latest) latest.set(no, (g / before) * netG);
    } else latest.set(trayNo, netG);
    byMoment.set(
      atMs,
      [...latest.values()].reduce((sum, g) => sum + g, 0),
    );
  }
  return [...byMoment].map(([atMs, netG]) => ({ atMs, netG }));
}

/** What is on the shelf, by meal and best-by month. @throws Refusal 'no-stock' */
export function stockFacts(house: House): StockFacts {
  const pouches = house.pouches.inStock();
  if (pouches.length === 0)
    throw new Refusal('no-stock', 'Nothing is in stock yet, so there is nothing to draw.');
  const held = new Set(house.trips.held(null).map(({ pouch }) => pouch));
  const counts = new Map<string, { meal: string; month: string | null; pouches: number }>();
  for (const { meal, bestByOn } of pouches) {
    const month = bestByOn?.slice(0, 7) ?? null;
    const cell = counts.get(`${month} ${meal}`) ?? { meal, month, pouches: 0 };
    counts.set(`${month} ${meal}`, { ...cell, pouches: cell.pouches + 1 });
  }
  const now = DateTime.fromMillis(house.nowMs, { zone: house.settings.zone });
  const kept = pouches.filter(({ id }) => held.has(id)).length;
  const unchecked = pouches.filter(({ bestByOn }) => bestByOn === null).length;
  return {
    is: 'stock',
    title: 'Pouches by meal and best-by month',
    caption: [
      `${sayCount(pouches.length, 'pouch', 'pouches')} on ${now.setLocale('en-GB').toFormat('d LLL yyyy')}${kept > 0 ? `, ${kept} of them kept for trips` : ''}. Best-by months are planning dates.`,
      ...(unchecked > 0
        ? [`${sayCount(unchecked, 'pouch', 'pouches')} without a best-by: unchecked, not shown to be dry.`]
        : []),
    ],
    cells: [...counts.values()].toSorted(
      (a, b) => (a.month ?? '9').localeCompare(b.month ?? '9') || a.meal.localeCompare(b.meal),
    ),
    nowMonth: now.toFormat('yyyy-MM'),
  };
}

/** What the meals kept for a trip give each eater on each day. @throws Refusal 'nothing-kept' */
export function tripFacts(house: House, trip: Trip): TripFacts {
  const sums = tripSums(house, servedOf(trip, heldFor(house, trip)));
  const eaters = house.eaters.all().filter(({ id }) => trip.slots.some((slot) => slot.eaters.includes(id)));
  const days = [...new Set(trip.slots.map(({ onDay }) => onDay))].toSorted();
  return {
    is: 'trip',
    title: `${trip.place}: sodium and energy a day`,
    caption: [
      'Of the kept meals alone. Upright strokes: the sodium of a day above which less is advised, and the energy a day takes; general guidance, not medical advice.',
    ],
    rows: eaters.flatMap((eater) =>
      days
        .filter((onDay) => trip.slots.some((slot) => slot.onDay === onDay && slot.eaters.includes(eater.id)))
        .map((onDay) => ({
          who: eater.name,
          day: sayDayOf(onDay),
          sodiumMg: sums.sodiumMg.get(eater.id)?.get(onDay) ?? 0,
          kcal: sums.kcal.get(eater.id)?.get(onDay) ?? 0,
          sodiumLimitMg: sodiumOfDayMg(eater)?.value ?? null,
          kcalNeed: energyOfDayKcal(eater)?.value ?? null,
        })),
    ),
  };
}
