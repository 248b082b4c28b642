import { command } from '#chat/command.ts';
import type { House } from '#house/house.ts';
import { brokenPromises } from '#house/broken.ts';
import { mealNames, nameKey } from '#house/figures.ts';
import { missingOf } from '#house/missing.ts';
import { overNow, tripBoard } from '#cards/trip-board.ts';
import {
  altitudeOf,
  effortLines,
  headingOf,
  slotLines,
  tripMeant,
  tripsAhead,
  whoComes,
} from '#house/trips.ts';
import { everyone, moveTrip, settle, tellEfforts, wantedSlots, withChange } from '#house/trip-slots.ts';
import type { Trip } from '#core/records.ts';
import { Refusal } from '#core/refusal.ts';
import type { Choice, Reply } from '#core/talk.ts';
import { boilingPointC } from '#core/boiling.ts';
import type { NewTrip } from '#store/trips.ts';
import { altitudeM, flag, optional, part } from '#words/parts.ts';
import { sayNumber } from '#words/say.ts';
import { startWater } from '#words/trip-parts.ts';
import { newName, tripTold } from '#words/trip-told.ts';

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
    'The same place again changes that trip. "/trip Heron Lake cancelled" gives its pouches back to stock; "over" ends it.',
  ],
  records: true,
  takes: {
    pin: optional(pinWord),
    newName,
    cancelled: flag('cancelled', 'canceled', 'cancel', 'over'),
    altitude: optional(altitudeM),
    water: startWater,
    place: optional(tripTold),
  },
  run: ({ pin, newName: fresh, cancelled, altitude, water, place: told }, house) => {
    if (fresh !== undefined) return renamed(house, told?.name, fresh);
    if (pin) return board(house, tripMeant(house, told?.name), pin);
    if (!told) return { lines: list(tripsAhead(house)), why: [], did: undefined, buttons: [] };
    const trip = told.isKnown
      ? house.trips.all().findLast((t) => !t.isOver && nameKey(t.place) === nameKey(told.name))
      : undefined;
    if (cancelled) return end(house, trip, told.name);
    const changes =
      told.days ??
      told.meals ??
      told.slot ??
      told.efforts[0] ??
      altitude ??
      water ??
      (told.company.everybody || told.company.coming.length > 0 || told.company.notComing.length > 0
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
  const { isShort, ...told } = card(house, trip, remarks);
  return { ...told, did, buttons: wishButtons(house, trip, isShort) };
}

/** What may come next, and wishes already made, for others to join. */
function wishButtons(house: House, trip: Trip, isShort: boolean): Choice[] {
  const byKey = new Map(mealNames(house).map((name) => [nameKey(name), name]));
  const wished = [...new Set(house.trips.wishes(trip.id).map((wish) => wish.mealKey))];
  return [
    ...wished.slice(0, 5).map((key) => ({
      label: `I want ${byKey.get(key) ?? key} too`,
      request: `/want "${byKey.get(key) ?? key}" "${trip.place}" for me`,
    })),
    ...(isShort ? [{ label: 'What to cook', request: `/cook "${trip.place}"` }] : []),
    { label: 'Plan the meals', request: `/pick "${trip.place}"` },
  ];
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

function list(trips: readonly Trip[]): string[] {
  if (trips.length > 0) return trips.map(headingOf);
  return ['No trip is planned.', 'For example: /trip Heron Lake 12-14 June dinner breakfast for all'];
}

/** What somebody must know of a trip now; its days, who is there and where it lies are folded. */
function card(house: House, trip: Trip, remarks: readonly string[]) {
  const metres = altitudeOf(trip, house);
  const told = trip.altitudeM === null ? "Altitude not told, so home's is taken: " : '';
  const water = trip.fromSnow ? 'water from snow' : `water starts at ${sayNumber(trip.startWaterC)} °C`;
  const eaters = house.eaters.all();
  const missing = missingOf(house, trip);
  return {
    isShort: missing.isShort,
    lines: [
      headingOf(trip),
      whoComes(trip, eaters),
      ...effortLines(trip),
      ...remarks,
      ...missing.lines,
      ...brokenPromises(house, trip),
    ],
    why: [
      ...missing.why,
      ...slotLines(trip.slots, eaters),
      `${told}${Math.round(metres)} m, water boils at ${boilingPointC(metres).toFixed(1)} °C; ${water}.`,
    ],
  };
}

function end(house: House, trip: Trip | undefined, name: string) {
  if (!trip) throw new Refusal('no-trip', `There is no trip called ${name}.`);
  const held = house.trips.held(trip.id).filter((h) => h.came === null);
  for (const one of held) house.trips.came(one.id, 'returned');
  house.trips.end(trip.id, true);
  const back = held.length === 0 ? '' : ` ${held.length} pouches are stock again.`;
  return {
    lines: [`${trip.place} is off the list.${back}`],
    why: [],
    did: `ended the trip ${trip.place}`,
    buttons: [],
  };
}
