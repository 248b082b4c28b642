import { command } from '#chat/command.ts';
import type { House } from '#house/house.ts';
import { nameKey } from '#house/figures.ts';
import { tripCard, tripList, wishButtons } from '#cards/trip-card.ts';
import { takeSpare } from '#house/spare-meals.ts';
import { endTrip, takeUpAgain } from '#house/trip-ends.ts';
import { doubtLosses } from '#house/trip-losses.ts';
import { sure } from '#words/sure.ts';
import { overNow, tripBoard } from '#cards/trip-board.ts';
import { tripMeant, tripsAhead } from '#house/trips.ts';
import { everyone, moveTrip, settle, tellEfforts, wantedSlots, withChange } from '#house/trip-slots.ts';
import type { Trip } from '#core/records.ts';
import { Refusal } from '#core/refusal.ts';
import type { Choice, Reply } from '#core/talk.ts';
import type { NewTrip } from '#store/trips.ts';
import { altitudeM, flag, optional, part } from '#words/parts.ts';
import { startWater } from '#words/trip-parts.ts';
import { newName, spareMeal, tripTold } from '#words/trip-told.ts';

const longestPlace = 50;

/** 'pin' or 'unpin' as the last word: a place may be called after a pin. */
const pinWord = part<'pin' | 'unpin'>('pin or unpin as the last word', (reading) => {
  const last = reading.all.length - 1;
  const word = reading.at(last)?.plain;
  if (word !== 'pin' && word !== 'unpin') return undefined;
  reading.take(last);
  return word;
});

export default command({
  name: 'trip',
  alsoCalled: ['trips'],
  usage: '/trip <place> <days> [dinner breakfast] [for all] [1900 m] [water 8 C]',
  summary: 'plan a trip: days, meals, who comes, how high',
  examples: [
    '/trip Heron Lake 12-14 June dinner breakfast for all 1900 m',
    '/trip Heron Lake without Ben',
    '/trip Heron Lake Rosa from saturday dinner',
    '/trip Heron Lake sunday hard climb',
    '/trip Heron Lake pin',
    '/trip Heron Lake is called Swan Lake',
    '/trip',
  ],
  help: [
    'Days: 12-14 June, fri to sun, 2027-06-12 to 2027-06-14. Meals: "from dinner" on the first day, "to breakfast" on the last; all three a day if none is named.',
    '"Sunday rest" or "saturday hard climb" tells how hard a day is: what is enough to eat goes by it. A trip moved as a whole keeps its wishes and pouches.',
    '"pin" at the end keeps the trip in one message at the top of the chat that stays true; "unpin" takes it down.',
    'The same place again changes that trip. "/trip Heron Lake cancelled" gives its pouches back to stock; "over" ends it; "again" takes it up again with its wishes.',
    '"A spare dinner" takes one along for a day more than planned; "no spare dinner" leaves it at home.',
  ],
  records: true,
  takes: {
    pin: optional(pinWord),
    newName,
    cancelled: flag('cancelled', 'canceled', 'cancel', 'over'),
    again: flag('again', 'reopen', 'reopened', 'resume'),
    spare: spareMeal,
    sure,
    altitude: optional(altitudeM),
    water: startWater,
    place: optional(tripTold),
  },
  run: (asked, house) => {
    const { pin, newName: fresh, cancelled, again, spare, altitude, water, place: told } = asked;
    if (fresh !== undefined) return renamed(house, told?.name, fresh);
    if (pin) return board(house, tripMeant(house, told?.name), pin);
    if (!told) return { lines: tripList(tripsAhead(house)), why: [], did: undefined, buttons: [] };
    const trip = told.isKnown
      ? house.trips.all().findLast((t) => !t.isOver && nameKey(t.place) === nameKey(told.name))
      : undefined;
    if (again && !trip) {
      const taken = takeUpAgain(house, told.name);
      return shown(house, taken.trip, taken.remarks, `took up the trip ${taken.trip.place} again`);
    }
    if (cancelled) {
      const { line, did } = endTrip(house, trip, told.name);
      return { lines: [line], why: [], did, buttons: [] };
    }
    if (trip && spare) {
      const { line, did } = takeSpare(house, trip, spare);
      return shown(house, tripMeant(house, trip.place), [line], did);
    }
    const changes =
      told.days ??
      told.meals ??
      told.slot ??
      told.efforts[0] ??
      altitude ??
      water ??
      (told.company.everybody ||
      told.company.coming.length > 0 ||
      told.company.notComing.length > 0 ||
      told.company.away !== undefined
        ? told.company
        : undefined);
    if (trip && changes === undefined) return shown(house, trip, [], undefined);
    if (!trip && told.days === undefined) {
      throw new Refusal(
        'no-days',
        `I read the place "${told.name}", but no days. There is no trip of that name yet.`,
      );
    }
    if (told.name.length > longestPlace)
      throw new Refusal(
        'long-name',
        `"${told.name}" is too long for a place; up to ${longestPlace} characters are kept. I may have missed a word of the request.`,
      );
    const remarks: string[] = trip && altitude !== undefined ? [`Now at ${Math.round(altitude)} m.`] : [];
    const eaters = everyone(house, told.company, remarks);
    const head: NewTrip = {
      place: trip?.place ?? told.name,
      startsOn: told.days?.startsOn ?? trip!.startsOn,
      endsOn: told.days?.endsOn ?? trip!.endsOn,
      altitudeM: altitude ?? trip?.altitudeM ?? null,
      startWaterC: water?.startC ?? trip?.startWaterC ?? 10,
      fromSnow: water?.fromSnow ?? trip?.fromSnow ?? false,
    };
    // Moved as a whole, meals keep who is there, what is wished for and what is kept.
    const moved = trip && told.days && moveTrip(house, trip, told.days, told.meals, remarks);
    const slots = withChange(
      wantedSlots(head, moved ? { ...told, days: undefined } : told, moved ?? trip, eaters),
      told.slot,
    );
    if (asked.sure !== true) doubtLosses(house, moved ?? trip, slots);
    const id = trip?.id ?? house.trips.add(nameKey(head.place), head, house.nowMs);
    if (trip) house.trips.change(id, head);
    remarks.push(...settle(house, id, (moved ?? trip)?.slots ?? [], slots));
    tellEfforts(house, id, head, told.efforts);
    const now = house.trips.all().find((t) => t.id === id)!;
    const did = `${trip ? 'changed' : 'planned'} the trip ${now.place}, ${now.startsOn} to ${now.endsOn}`;
    return shown(house, now, remarks, did);
  },
  live: (of, _, house) => {
    const trip = house.trips.all().find(({ id }) => id === of);
    if (!trip) return undefined;
    if (trip.isOver) return overNow(house, trip);
    return { said: tripBoard(house, trip), isOver: false };
  },
  say: (outcome) => ('pinned' in outcome ? outcome.pinned : said(outcome)),
});

const said = ({ lines, why, did, buttons }: Told): Reply => ({
  group: lines.join('\n'),
  why,
  ...(did === undefined ? {} : { did }),
  ...(buttons.length === 0 ? {} : { buttons, buttonsForAll: true, buttonsStay: true }),
});

interface Told {
  readonly lines: readonly string[];
  readonly why: readonly string[];
  readonly did: string | undefined;
  readonly buttons: readonly Choice[];
}

/** The trip in a message that stays true, at the top of the chat or no longer there. */
function board(house: House, trip: Trip, pin: 'pin' | 'unpin'): { readonly pinned: Reply } {
  const isUp = pin === 'pin';
  const receipt = isUp ? `${trip.place} stays at the top of the chat.` : `${trip.place} is taken down.`;
  const live = { kind: 'trip', of: trip.id, page: 1, receipt, pin: isUp };
  return { pinned: isUp ? { ...tripBoard(house, trip), live } : { group: receipt, live } };
}

function shown(house: House, trip: Trip, remarks: readonly string[], did: string | undefined) {
  const { isShort, ...told } = tripCard(house, trip, remarks);
  return { ...told, did, buttons: wishButtons(house, trip, isShort) };
}

/** The trip under another name; wishes, pouches and days stay. */
function renamed(house: House, old: string | undefined, name: string): Told {
  const trip = tripMeant(house, old);
  if (name.length > longestPlace || /\d{5,}/u.test(name))
    throw new Refusal(
      'long-name',
      `"${name}" is no name for a trip; up to ${longestPlace} characters are kept.`,
    );
  const same = tripsAhead(house).find(({ id, place }) => id !== trip.id && nameKey(place) === nameKey(name));
  if (same) throw new Refusal('name-taken', `Another trip is called ${same.place} already.`);
  house.trips.rename(trip.id, name, nameKey(name));
  return {
    lines: [`The trip ${trip.place} is called ${name} now.`],
    why: [],
    did: `called the trip ${trip.place} ${name}`,
    buttons: [],
  };
}
