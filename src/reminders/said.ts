import { groupBy } from '#core/groups.ts';
import { laterRequest, type Reminder } from '#core/reminders.ts';
import type { Pouch, Trip } from '#core/records.ts';
import type { Choice, Reply } from '#core/talk.ts';
import type { CookingPlan } from '#house/cooking.ts';
import { dryingAhead } from '#house/forecast.ts';
import { aheadLines } from '#house/forecast-said.ts';
import { factsOfBatch } from '#house/figures.ts';
import type { House } from '#house/house.ts';
import { todayOf } from '#house/today.ts';
import { sayDayOf } from '#house/trips.ts';
import { localDays } from '#words/local-days.ts';
import { sayCodes, sayCount, sayMoment, sayMonth, sayNumber } from '#words/say.ts';

/** Later than this a reminder says that it comes late. */
const lateMs = 12 * 3_600_000;
const mostBestByLines = 6;

/** A trip that stock does not feed. */
export interface ShortTrip {
  readonly trip: Trip;
  readonly plan: CookingPlan;
  readonly shortMeals: number;
}

/** What is due, in one message, with what can be done about it a tap away. */
export function sayReminders(
  house: House,
  due: readonly Reminder[],
  trips: readonly ShortTrip[],
  nowMs: number,
): Reply {
  const lines: string[] = [];
  const buttons: Choice[] = [];
  for (const { kind, about } of due) {
    if (kind === 'weigh') {
      lines.push(...(about.startsWith('dry ') ? sayUnsealed(house, about) : sayWeigh(house, about, nowMs)));
      buttons.push(...weighButtons(house, about, due.length === 1));
    }
    if (kind === 'seal') {
      const pouches = toCheck(house, about);
      lines.push(...saySealCheck(house, pouches));
      buttons.push(...sealButtons(pouches));
    }
    if (kind === 'best-by') lines.push(...sayBestBy(house));
    const short =
      kind === 'trip' && trips.find(({ trip }) => about === `trip ${trip.id} on ${trip.startsOn}`);
    if (!short) continue;
    lines.push(sayTrip(house, short));
    buttons.push({ label: `Cook for ${short.trip.place}`, request: `/cook ${short.trip.place}` });
  }
  const isLate = due.some(({ kind, dueAtMs }) => kind !== 'best-by' && nowMs - dueAtMs > lateMs);
  const isAgain = due.every((one) => one.isAgain);
  const one = due.length === 1 ? 'A reminder' : 'Reminders';
  const head = isLate ? 'While I was away this came due:' : isAgain ? `${one}, once more:` : `${one}:`;
  return {
    group: [head, ...lines].join('\n'),
    ...(buttons.length === 0 ? {} : { buttons, buttonsForAll: true, buttonsStay: true }),
    // Sound for what somebody must do now, none for the rest.
    ...(due.some(({ kind }) => kind === 'weigh' || kind === 'trip') ? { sounds: true } : {}),
  };
}

/** To weigh it, or to be told again. */
function weighButtons(house: House, about: string, isOnly: boolean): Choice[] {
  const batch = batchOfRow(house, Number(about.split(' ')[1]));
  if (!batch) return [];
  const code = `B${batch.no}`;
  return [
    { label: `Weigh ${code}`, request: `/weigh ${code}` },
    { label: isOnly ? 'Later' : `${code} later`, request: laterRequest(about) },
  ];
}

function sayWeigh(house: House, about: string, nowMs: number): string[] {
  const id = Number(about.split(' ')[1]);
  const batch = batchOfRow(house, id);
  if (!batch) return [];
  const hours = sayNumber(Math.round((nowMs - batch.loadedAtMs) / 3_600_000));
  const weighed = batch.weighings.length > 0 ? ', and its last weighing did not show it dry' : '';
  const ahead = dryingAhead(house, batch, factsOfBatch(house, batch));
  return [
    `B${batch.no}, ${batch.recipe.name}: time to weigh. In the dryer for ${hours} h${weighed}. /weigh B${batch.no} and ${sayCount(batch.trays.length, 'weight')}.`,
    ...(ahead === 'stalled' ? aheadLines(house, ahead) : []),
  ];
}

const batchOfRow = (house: House, id: number) => house.batches.latest(1000).find((one) => one.id === id);

/** Dry, and nobody sealed it. */
function sayUnsealed(house: House, about: string): string[] {
  const [, id, , atMs] = about.split(' ').map(Number);
  const batch = batchOfRow(house, id!);
  if (!batch) return [];
  return [
    `B${batch.no}, ${batch.recipe.name}: dry at ${sayMoment(atMs!, house.settings.zone)}, not sealed. Dry food takes up moisture from the air within the hour: dry it on for about an hour, weigh it again and seal it. /weigh B${batch.no} and ${sayCount(batch.trays.length, 'weight')}.`,
  ];
}

/** Whose seals are to be looked at; empty when nobody need look any more. */
function toCheck(house: House, about: string): Pouch[] {
  const [, batchId, , atMs] = about.split(' ').map(Number);
  return house.pouches
    .inStock()
    .filter(
      ({ batch, sealedAtMs, found, foundAtMs }) =>
        (found === null ? sealedAtMs === atMs : found === 'resealed' && foundAtMs === atMs) &&
        house.batches.find(batch)?.id === batchId,
    );
}

function saySealCheck(house: House, pouches: readonly Pouch[]): string[] {
  const first = pouches[0];
  if (!first) return [];
  const hours = Math.round((house.nowMs - (first.foundAtMs ?? first.sealedAtMs)) / 3_600_000);
  return [
    `${sayCodes(pouches)}, ${first.meal}: check the seals, ${hours} h after sealing. A pouch that lost its air stays drawn in; one that is loose again leaks (common practice).`,
  ];
}

function sealButtons(pouches: readonly Pouch[]): Choice[] {
  if (pouches.length === 0) return [];
  const codes = sayCodes(pouches);
  return [
    { label: `${codes}: all drawn in`, request: `/found ${codes} tight` },
    pouches.length === 1
      ? { label: `${codes} is loose`, request: `/found ${codes} loose` }
      : { label: `${codes}: some are loose`, request: `/found ${codes} some loose` },
  ];
}

function sayBestBy(house: House): string[] {
  const days = localDays(house.settings.zone);
  const today = days.dayOf(house.nowMs);
  const until = days.plusDays(today, house.settings.horizonDays);
  const near = house.pouches.inStock().filter(({ bestByOn }) => bestByOn !== null && bestByOn <= until);
  const lines = [...groupBy(near, (pouch) => `${pouch.batch} ${pouch.bestByOn}`).values()].map((pouches) => {
    const { meal, bestByOn } = pouches[0]!;
    const past = bestByOn! < today ? ', past' : '';
    return `${sayCodes(pouches)} ${meal}, best by ${sayMonth(bestByOn!)}${past}`;
  });
  const more = lines.length - mostBestByLines;
  return [
    `${sayCount(near.length, 'pouch', 'pouches')} near best-by (within ${house.settings.horizonDays} days; a planning date):`,
    ...lines.slice(0, mostBestByLines),
    ...(more > 0 ? [`and ${more} more; /stock shows them all`] : []),
  ];
}

function sayTrip(house: House, { trip, plan, shortMeals }: ShortTrip): string {
  const today = todayOf(house);
  const late = plan.latestStart < today ? ', which is past' : '';
  return `${trip.place} starts ${sayDayOf(trip.startsOn)}, and stock leaves ${sayCount(shortMeals, 'meal')} of it short. Start drying by ${sayDayOf(plan.latestStart)} at the latest${late}. /cook ${trip.place} says what.`;
}
