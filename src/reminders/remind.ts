import { type Reminder, type Watched, againKey, remindersOf } from '#core/reminders.ts';
import type { Message } from '#core/talk.ts';
import { localDays } from '#words/local-days.ts';
import { type Answerer, standing } from '#chat/answerer.ts';
import type { House } from '#house/house.ts';
import { dryOf } from '#house/dryness.ts';
import { usualLoadHours } from '#core/load-hours.ts';
import { cookingPlan } from '#house/cooking.ts';
import { dryingAhead, isHourKnown, loadsKnown } from '#house/forecast.ts';
import { factsOfBatch } from '#house/figures.ts';
import { tripProblem } from '#house/trip-problem.ts';
import { type ShortTrip, sayReminders } from './said.ts';

const dayMs = 24 * 3_600_000;
/** Trips are held against stock once a day, and those alone that start within this many days. Chosen. */
const tripAheadDays = 30;
/** Whoever planned a trip just now knows what is missing. */
const freshTripMs = dayMs / 2;

/**
 * Looks at one household: what is due is claimed and put in the outbox in one transaction, in one message, and the
 * next moment to look is kept. At night nothing is posted.
 * @returns whether something waits to be sent
 */
export async function remind(
  answerer: Answerer,
  household: number,
  door: Message['door'],
  nowMs: number,
): Promise<boolean> {
  const { stores } = answerer;
  const own = stores.reminders.of(household);
  const looked = standing(answerer, household, nowMs);
  const days = localDays(looked.settings.zone);
  const today = days.dayOf(nowMs);
  const isNight = days.awake(nowMs) > nowMs;
  const lookAtTrips = looked.settings.remindTrip && !isNight && own.tripsLookedOn() !== today;
  const short = lookAtTrips ? await shortTrips(answerer, looked, today) : [];
  const plan = () => {
    const house = standing(answerer, household, nowMs);
    const { watched, trips } = watch(house, answerer, short);
    const all = remindersOf(watched, house.settings, days, nowMs, own.remindedAtMs);
    // What can wait comes once a day at most, together; what is due now comes when it is due.
    const gatheredMs = own.gatheredAtMs();
    const wasToday = gatheredMs !== null && days.dayOf(gatheredMs) === today;
    const tomorrowMs = days.morningOf(days.plusDays(today, 1));
    const timed = all.map((one) =>
      one.kind !== 'weigh' && wasToday ? { ...one, dueAtMs: Math.max(one.dueAtMs, tomorrowMs) } : one,
    );
    const due = isNight ? [] : timed.filter(({ dueAtMs }) => dueAtMs <= nowMs);
    const later = Math.min(...nextLooks(house, answerer, timed, today, nowMs));
    return { house, due, trips, later: isNight ? days.awake(nowMs) : later };
  };
  // Most looks find nothing.
  const { due: first, later: rest } = plan();
  if (first.length === 0) {
    own.rest(rest, lookAtTrips ? today : null);
    return false;
  }
  return stores.together(() => {
    const post = own.post(door);
    const { house, due, trips } = plan();
    if (!post || due.length === 0) return false;
    if (lookAtTrips) own.lookedAtTrips(today);
    for (const { about, isAgain } of due) own.reminded(isAgain ? againKey(about) : about, nowMs);
    // Looked at again at once: a claim may bring the next one of its kind, such as next month's best-by.
    own.lookAgainAt(nowMs + 1);
    const reply = sayReminders(house, due, trips, nowMs);
    stores.messages.put({ ...post, person: { key: '', name: '' } }, null, reply, nowMs);
    return true;
  });
}

function watch(house: House, { stores }: Answerer, short: readonly ShortTrip[]) {
  const own = stores.reminders.of(house.household);
  const trips = short.filter(({ trip }) =>
    house.trips.all().some((t) => t.id === trip.id && !t.isOver && t.startsOn === trip.startsOn),
  );
  const drying = own.drying(house.nowMs);
  const known = drying.length === 0 ? undefined : loadsKnown(house);
  const watched: Watched = {
    drying: drying.map((no) => {
      const batch = house.batches.find(no)!;
      const ahead = dryingAhead(house, batch, factsOfBatch(house, batch), known);
      return {
        id: batch.id,
        loadedAtMs: batch.loadedAtMs,
        lastWeighedAtMs: batch.weighings.at(-1)?.atMs ?? null,
        // A load that stands still is looked at again as soon as a weighing shows something.
        readyAtMs: isHourKnown(ahead)
          ? ahead.readyMs
          : batch.loadedAtMs + (ahead === 'stalled' ? 0 : usualLoadHours) * 3_600_000,
        isDry: batch.weighings.length > 0 && dryOf(house, batch).is === 'dry',
      };
    }),
    sealed: own.sealed(house.nowMs),
    firstBestByOn: firstBestByOn(house, own.firstBestByOn()),
    shortTrips: trips.map(({ trip, plan }) => ({
      id: trip.id,
      startsOn: trip.startsOn,
      latestStartOn: plan.latestStart,
    })),
  };
  return { watched, trips };
}

/** The earliest best-by of what still counts as dry; nothing is looked at where no date is recorded at all. */
function firstBestByOn(house: House, recorded: string | null): string | null {
  if (recorded === null) return null;
  return house.pouches.inStock().find(({ bestByOn }) => bestByOn !== null)?.bestByOn ?? null;
}

/** Trips that start soon and that stock does not feed; the sums run beside the chat. */
async function shortTrips(answerer: Answerer, house: House, today: string): Promise<ShortTrip[]> {
  const days = localDays(house.settings.zone);
  const ids = answerer.stores.reminders
    .of(house.household)
    .tripsBetween(today, days.plusDays(today, tripAheadDays), house.nowMs - freshTripMs);
  const found: ShortTrip[] = [];
  for (const trip of ids.length === 0 ? [] : house.trips.all().filter(({ id }) => ids.includes(id))) {
    const question = tripProblem(house, trip);
    if (question.problem.slots.length === 0) continue;
    const plan = cookingPlan(
      house,
      question,
      await answerer.workers.picks.solvePicks(question.problem, { household: house.household }),
    );
    const short = [...plan.cook, ...plan.nobodyCan].flatMap(({ slots }) => slots);
    if (short.length === 0) continue;
    found.push({ trip, plan, shortMeals: new Set(short).size });
  }
  return found;
}

function nextLooks(
  house: House,
  { stores }: Answerer,
  all: readonly Reminder[],
  today: string,
  nowMs: number,
): number[] {
  const days = localDays(house.settings.zone);
  const own = stores.reminders.of(house.household);
  const ahead = own.tripsBetween(today, '9999-12-31', nowMs + 1);
  const starts = house.settings.remindTrip && ahead.length > 0 ? house.trips.all() : [];
  const tomorrow = days.plusDays(today, 1);
  const tripLooks = starts
    .filter(({ id }) => ahead.includes(id))
    .map(({ startsOn }) => days.plusDays(startsOn, -tripAheadDays))
    .map((from) => days.morningOf(from > tomorrow ? from : tomorrow));
  return [...all.map(({ dueAtMs }) => dueAtMs), ...tripLooks, nowMs + 30 * dayMs].filter((ms) => ms > nowMs);
}
