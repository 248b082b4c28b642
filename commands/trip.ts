import { command, type House } from '#chat/command.ts';
import { brokenPromises } from '#chat/broken.ts';
import { nameKey } from '#chat/figures.ts';
import { missingLines } from '#chat/missing.ts';
import { altitudeOf, sayDayOf, slotLines, tripsAhead } from '#chat/trips.ts';
import type { Eater, Slot, Trip } from '#core/records.ts';
import { Refusal } from '#core/refusal.ts';
import type { Choice } from '#core/talk.ts';
import { boilingPointC } from '#core/boiling.ts';
import type { NewEater } from '#store/eaters.ts';
import type { NewSlot, NewTrip } from '#store/trips.ts';
import { tripDays, type Days } from '#words/days.ts';
import { altitudeM, flag, optional, part } from '#words/parts.ts';
import { takeName } from '#words/reading.ts';
import { sayList, sayNumber } from '#words/say.ts';
import {
  type Company,
  type MealsOfTrip,
  isThere,
  mealsOfTrip,
  readCompany,
  slotsOf,
  startWater,
} from '#words/trip-parts.ts';

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
    '/trip',
  ],
  help: [
    'Days: 12-14 June, fri to sun, 2027-06-12 to 2027-06-14. Meals: "from dinner" on the first day, "to breakfast" on the last; all three a day if none is named.',
    'The same place again changes that trip. "/trip Heron Lake cancelled" gives its pouches back to stock; "over" ends it.',
  ],
  records: true,
  takes: {
    cancelled: flag('cancelled', 'canceled', 'cancel', 'over'),
    altitude: optional(altitudeM),
    water: startWater,
    place: optional(
      part<Place & { meals: MealsOfTrip | undefined }>('a place', (reading, names) => {
        if ([...reading.left()].length === 0) return undefined;
        const named = takeName(reading, names.trips, 'trip', true);
        // Days of a trip that is known may be somebody's own, so people are read first; of a new one they are the trip's.
        const fresh = named === undefined ? tripDays.read(reading, names) : undefined;
        const known = named ?? (fresh === undefined ? takeName(reading, names.trips, 'trip') : undefined);
        const within = fresh ?? (known === undefined ? undefined : names.tripDays(known));
        const company = readCompany(reading, names, within?.startsOn ?? '', within?.endsOn ?? '9999-12-31');
        const days = fresh ?? tripDays.read(reading, names);
        const meals = mealsOfTrip.read(reading, names);
        if (known !== undefined) return { name: known, isKnown: true, days, company, meals };
        const name = nameLeft(reading.rest());
        return name === '' ? undefined : { name, isKnown: false, days, company, meals };
      }),
    ),
  },
  run: ({ cancelled, altitude, water, place: told }, house) => {
    if (!told) return { lines: list(tripsAhead(house)), did: undefined, buttons: [] };
    const trip = told.isKnown
      ? house.trips.all().findLast((t) => !t.isOver && nameKey(t.place) === nameKey(told.name))
      : undefined;
    if (cancelled) return end(house, trip, told.name);
    const changes =
      told.days ??
      told.meals ??
      altitude ??
      water ??
      (told.company.everybody || told.company.coming.length > 0 || told.company.notComing.length > 0
        ? told.company
        : undefined);
    if (trip && changes === undefined)
      return { lines: card(house, trip, []), did: undefined, buttons: wishButtons(house, trip) };
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
    const remarks: string[] = [];
    const eaters = everyone(house, told.company, remarks);
    const head: NewTrip = {
      place: trip?.place ?? told.name,
      startsOn: told.days?.startsOn ?? trip!.startsOn,
      endsOn: told.days?.endsOn ?? trip!.endsOn,
      altitudeM: altitude ?? trip?.altitudeM ?? null,
      startWaterC: water?.startC ?? trip?.startWaterC ?? 10,
      fromSnow: water?.fromSnow ?? trip?.fromSnow ?? false,
    };
    const slots = wantedSlots(head, told, trip, eaters);
    const id = trip?.id ?? house.trips.add(nameKey(head.place), head, house.nowMs);
    if (trip) house.trips.change(id, head);
    remarks.push(...settle(house, id, trip?.slots ?? [], slots));
    const now = house.trips.all().find((t) => t.id === id)!;
    return {
      lines: card(house, now, remarks),
      did: `${trip ? 'changed' : 'planned'} the trip ${now.place}, ${now.startsOn} to ${now.endsOn}`,
      buttons: wishButtons(house, now),
    };
  },
  say: ({ lines, did, buttons }) => ({
    group: lines.join('\n'),
    ...(did === undefined ? {} : { did }),
    ...(buttons.length === 0 ? {} : { buttons, buttonsForAll: true, buttonsStay: true }),
  }),
});

/** Wishes already made, for others to join. */
function wishButtons(house: House, trip: Trip): Choice[] {
  const byKey = new Map(house.recipes.names().map((name) => [nameKey(name), name]));
  const wished = [...new Set(house.trips.wishes(trip.id).map((wish) => wish.mealKey))];
  return wished.slice(0, 6).map((key) => ({
    label: `I want ${byKey.get(key) ?? key} too`,
    request: `/want "${byKey.get(key) ?? key}" "${trip.place}" for me`,
  }));
}

function list(trips: readonly Trip[]): string[] {
  if (trips.length > 0) return trips.map(heading);
  return ['No trip is planned.', 'For example: /trip Heron Lake 12-14 June dinner breakfast for all'];
}

function card(house: House, trip: Trip, remarks: readonly string[]): string[] {
  const metres = altitudeOf(trip, house);
  const told = trip.altitudeM === null ? "Altitude not told, so home's is taken: " : '';
  const water = trip.fromSnow ? 'water from snow' : `water starts at ${sayNumber(trip.startWaterC)} °C`;
  return [
    heading(trip),
    ...slotLines(trip.slots, house.eaters.all()),
    `${told}${Math.round(metres)} m, water boils at ${boilingPointC(metres).toFixed(1)} °C; ${water}.`,
    ...remarks,
    ...missingLines(house, trip),
    ...brokenPromises(house, trip),
  ];
}

function nameLeft(text: string): string {
  let name = text.replace(/^(?:to|at|in|trip)\s+/i, '').trim();
  for (let before = ''; before !== name;) {
    before = name;
    name = name.replace(/[\s,]+(?:for|with|at|from|to|on|and|the|this|coming|over)$/i, '').trim();
  }
  return name;
}

function heading(trip: Trip): string {
  const days =
    trip.startsOn === trip.endsOn
      ? sayDayOf(trip.startsOn)
      : `${sayDayOf(trip.startsOn)} to ${sayDayOf(trip.endsOn)} ${trip.endsOn.slice(0, 4)}`;
  return `${trip.place}, ${days}: ${trip.slots.length === 1 ? '1 meal' : `${trip.slots.length} meals`}.`;
}

/** Everyone who eats here. Members who were never recorded as eaters are taken in, with nothing kept from them. */
function everyone(house: House, company: Company, remarks: string[]): Eater[] {
  const eaters = house.eaters.here();
  if (company.everybody || eaters.length === 0) {
    const fresh = house
      .members()
      .filter(
        (m) => !house.eaters.all().some((e) => e.member === m.id || nameKey(e.name) === nameKey(m.name)),
      );
    for (const member of fresh) {
      const eater: NewEater = {
        name: member.name,
        kind: 'adult',
        member: member.id,
        ageYears: null,
        sex: null,
        activity: null,
        portion: 1,
        sodiumMg: null,
        energyKcal: null,
        never: [],
        dislikes: [],
      };
      house.eaters.add(nameKey(member.name), eater);
    }
    if (fresh.length > 0)
      remarks.push(
        `Taken in as ${fresh.length === 1 ? 'an eater' : 'eaters'} with nothing kept away: ${sayList(fresh.map((m) => m.name))}. Change it with /eater.`,
      );
  }
  return house.eaters.here();
}

function wantedSlots(
  head: NewTrip,
  told: { company: Company; meals: MealsOfTrip | undefined; days: Days | undefined },
  before: Trip | undefined,
  eaters: readonly Eater[],
): NewSlot[] {
  const { company, meals } = told;
  const id = (name: string) => eaters.find((e) => nameKey(e.name) === nameKey(name))!.id;
  const everybody = company.everybody || (!before && company.coming.length === 0);
  const base =
    before && !meals && !told.days
      ? before.slots.map(({ onDay, meal }) => ({ onDay, meal }))
      : slotsOf(
          head.startsOn,
          head.endsOn,
          meals ??
            mealsBefore(before) ?? {
              each: ['breakfast', 'lunch', 'dinner'],
              first: 'breakfast',
              last: 'dinner',
            },
        );
  if (base.length === 0) throw new Refusal('no-slots', 'These days and meals leave no meal to plan.');
  return base.map((slot) => {
    const had =
      before?.slots.find((s) => s.onDay === slot.onDay && s.meal === slot.meal)?.eaters ??
      (before ? usual(before) : undefined);
    const seated = new Set<number>(everybody ? eaters.map((e) => e.id) : (had ?? []));
    for (const one of company.coming) {
      if (isThere(one, slot)) seated.add(id(one.eater));
      else seated.delete(id(one.eater));
    }
    for (const name of company.notComing) seated.delete(id(name));
    return { ...slot, eaters: [...seated].sort((a, b) => a - b) };
  });
}

/** Who ate at most slots: a slot that is new gets the same company. */
function usual(trip: Trip): readonly number[] {
  return trip.slots.toSorted((a, b) => b.eaters.length - a.eaters.length)[0]?.eaters ?? [];
}

function mealsBefore(trip: Trip | undefined): MealsOfTrip | undefined {
  if (!trip || trip.slots.length === 0) return undefined;
  const each = (['breakfast', 'lunch', 'dinner'] as const).filter((meal) =>
    trip.slots.some((slot) => slot.meal === meal),
  );
  return { each, first: trip.slots[0]!.meal, last: trip.slots.at(-1)!.meal };
}

/** Makes the slots as wanted; what falls away gives its pouches and wishes back, and that is said. */
function settle(house: House, trip: number, before: readonly Slot[], wanted: readonly NewSlot[]): string[] {
  const remarks: string[] = [];
  const same = (a: NewSlot, b: NewSlot) => a.onDay === b.onDay && a.meal === b.meal;
  let freed = 0;
  for (const slot of before.filter((old) => !wanted.some((w) => same(w, old)))) {
    for (const held of house.trips.held(trip).filter((h) => h.slot === slot.id)) {
      if (held.packed)
        throw new Refusal(
          'packed',
          'A pouch for a meal that would fall away is packed already. Take it out with /pack first.',
        );
      house.trips.releaseOne(held.id);
      freed += 1;
    }
    for (const wish of house.trips.wishes(trip).filter((w) => w.slot === slot.id))
      house.trips.dropWish(wish.id);
    house.trips.dropSlot(slot);
  }
  for (const slot of wanted) {
    const old = before.find((b) => same(b, slot));
    if (!old) {
      house.trips.addSlot(trip, slot);
      continue;
    }
    for (const eater of old.eaters) if (!slot.eaters.includes(eater)) house.trips.unseat(old.id, eater);
    for (const eater of slot.eaters) if (!old.eaters.includes(eater)) house.trips.seat(old.id, eater);
  }
  if (freed > 0) remarks.push(`${freed} kept pouches are free again.`);
  return remarks;
}

function end(house: House, trip: Trip | undefined, name: string) {
  if (!trip) throw new Refusal('no-trip', `There is no trip called ${name}.`);
  const held = house.trips.held(trip.id).filter((h) => h.came === null);
  for (const one of held) house.trips.came(one.id, 'returned');
  house.trips.end(trip.id, true);
  const back = held.length === 0 ? '' : ` ${held.length} pouches are stock again.`;
  return {
    lines: [`${trip.place} is off the list.${back}`],
    did: `ended the trip ${trip.place}`,
    buttons: [],
  };
}
