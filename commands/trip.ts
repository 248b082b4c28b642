import { command } from '#chat/command.ts';
import type { House } from '#house/house.ts';
import { brokenPromises } from '#house/broken.ts';
import { nameKey } from '#house/figures.ts';
import { missingOf } from '#house/missing.ts';
import { altitudeOf, effortLines, sayDayOf, slotLines, tripsAhead } from '#house/trips.ts';
import { everyone, moveTrip, settle, tellEfforts, wantedSlots, withChange } from '#house/trip-slots.ts';
import type { Eater, Trip } from '#core/records.ts';
import { Refusal } from '#core/refusal.ts';
import type { Choice } from '#core/talk.ts';
import { boilingPointC } from '#core/boiling.ts';
import type { NewTrip } from '#store/trips.ts';
import { tripDays, type Days } from '#words/days.ts';
import { altitudeM, flag, optional, part } from '#words/parts.ts';
import { takeName } from '#words/names.ts';
import { placeLeft } from '#words/place-name.ts';
import { sayList, sayNumber } from '#words/say.ts';
import { type DayEffort, dayEfforts } from '#words/trip-efforts.ts';
import { daysChanged, type SlotChange, slotChange } from '#words/trip-change.ts';
import { type Company, type MealsOfTrip, mealsOfTrip, readCompany, startWater } from '#words/trip-parts.ts';

const longestPlace = 50;

interface Place {
  readonly name: string;
  readonly isKnown: boolean;
  readonly days: Days | undefined;
  readonly company: Company;
}

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
    '/trip',
  ],
  help: [
    'Days: 12-14 June, fri to sun, 2027-06-12 to 2027-06-14. Meals: "from dinner" on the first day, "to breakfast" on the last; all three a day if none is named.',
    '"Sunday rest" or "saturday hard climb" tells how hard a day is: what is enough to eat goes by it. A trip moved as a whole keeps its wishes and pouches.',
    'The same place again changes that trip. "/trip Heron Lake cancelled" gives its pouches back to stock; "over" ends it.',
  ],
  records: true,
  takes: {
    cancelled: flag('cancelled', 'canceled', 'cancel', 'over'),
    altitude: optional(altitudeM),
    water: startWater,
    place: optional(
      part<
        Place & {
          meals: MealsOfTrip | undefined;
          slot: SlotChange | undefined;
          efforts: readonly DayEffort[];
        }
      >('a place', (reading, names) => {
        if ([...reading.left()].length === 0) return undefined;
        const named = takeName(reading, names.trips, 'trip', true);
        const efforts = dayEfforts(reading, names);
        // Days of a trip that is known may be somebody's own, so people are read first; of a new one they are the trip's.
        const fresh = named === undefined ? tripDays.read(reading, names) : undefined;
        const known = named ?? (fresh === undefined ? takeName(reading, names.trips, 'trip') : undefined);
        const within = fresh ?? (known === undefined ? undefined : names.tripDays(known));
        const company = readCompany(reading, names, within?.startsOn ?? '', within?.endsOn ?? '9999-12-31');
        const isAlone = company.coming.length + company.notComing.length === 0;
        const slot =
          known !== undefined && within && isAlone ? slotChange(reading, names, within) : undefined;
        const days =
          fresh ??
          (known !== undefined && within ? daysChanged(reading, names, within) : undefined) ??
          tripDays.read(reading, names);
        const meals = mealsOfTrip.read(reading, names);
        if (known !== undefined) return { name: known, isKnown: true, days, company, meals, slot, efforts };
        const name = placeLeft(reading, names.eaters);
        if (name === '' && days !== undefined)
          throw new Refusal('no-place', 'I read the days, but not where the trip goes.');
        return name === '' ? undefined : { name, isKnown: false, days, company, meals, slot, efforts };
      }),
    ),
  },
  run: ({ cancelled, altitude, water, place: told }, house) => {
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
  say: ({ lines, why, did, buttons }) => ({
    group: lines.join('\n'),
    why,
    ...(did === undefined ? {} : { did }),
    ...(buttons.length === 0 ? {} : { buttons, buttonsForAll: true, buttonsStay: true }),
  }),
});

function shown(house: House, trip: Trip, remarks: readonly string[], did: string | undefined) {
  const { isShort, ...told } = card(house, trip, remarks);
  return { ...told, did, buttons: wishButtons(house, trip, isShort) };
}

/** What may come next, and wishes already made, for others to join. */
function wishButtons(house: House, trip: Trip, isShort: boolean): Choice[] {
  const byKey = new Map(house.recipes.names().map((name) => [nameKey(name), name]));
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

function list(trips: readonly Trip[]): string[] {
  if (trips.length > 0) return trips.map(heading);
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
      heading(trip),
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

/** 'For Ana and Ben; Noa not at every meal.' */
function whoComes(trip: Trip, eaters: readonly Eater[]): string {
  const there = eaters.filter(({ id }) => trip.slots.some((slot) => slot.eaters.includes(id)));
  const always = there.filter(({ id }) => trip.slots.every((slot) => slot.eaters.includes(id)));
  const sometimes = there.filter((one) => !always.includes(one));
  const names = (some: readonly Eater[]) => sayList(some.map(({ name }) => name));
  if (there.length === 0) return 'Nobody is on it yet.';
  if (sometimes.length === 0) return `For ${names(always)}.`;
  return `${always.length > 0 ? `For ${names(always)}; ` : ''}${names(sometimes)} not at every meal.`;
}

function heading(trip: Trip): string {
  const days =
    trip.startsOn === trip.endsOn
      ? sayDayOf(trip.startsOn)
      : `${sayDayOf(trip.startsOn)} to ${sayDayOf(trip.endsOn)} ${trip.endsOn.slice(0, 4)}`;
  return `${trip.place}, ${days}: ${trip.slots.length === 1 ? '1 meal' : `${trip.slots.length} meals`}.`;
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
