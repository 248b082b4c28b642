import { DateTime } from 'luxon';
import { type Eater, type Pouch, type Slot, slotMeals, type Trip } from '#core/records.ts';
import { Refusal } from '#core/refusal.ts';
import type { NewEater } from '#store/eaters.ts';
import type { NewSlot, NewTrip } from '#store/trips.ts';
import type { Days } from '#words/days.ts';
import { sayCodes, sayCount, sayList } from '#words/say.ts';
import type { SlotChange } from '#words/trip-change.ts';
import type { DayEffort } from '#words/trip-efforts.ts';
import { type Company, isThere, type MealsOfTrip, slotsOf } from '#words/trip-parts.ts';
import type { House } from './house.ts';
import { mealNames, nameKey } from './figures.ts';
import { keepAway } from './kept-away.ts';
import { saySlot } from './trips.ts';

/** Everyone who eats here. Members who were never recorded as eaters are taken in, with nothing kept from them. */
export function everyone(house: House, company: Company, remarks: string[]): Eater[] {
  const eaters = house.eaters.here();
  if (company.everybody || eaters.length === 0) {
    const fresh = house
      .members()
      .filter(
        (m) =>
          !house.eaters
            .all()
            .some((e) => e.member === m.id || (e.member === null && nameKey(e.name) === nameKey(m.name))),
      );
    const taken = fresh.map((member) => {
      // Two people of one name are two eaters.
      let { name } = member;
      for (let n = 2; house.eaters.find(nameKey(name)); n += 1) name = `${member.name} ${n}`;
      const eater: NewEater = {
        name,
        kind: 'adult',
        member: member.id,
        ageYears: null,
        sex: null,
        activity: null,
        portion: 1,
        sodiumMg: null,
        energyKcal: null,
        never: [],
        apart: [],
        exact: [],
        dislikes: [],
      };
      house.eaters.add(nameKey(name), eater);
      return name;
    });
    if (fresh.length > 0)
      remarks.push(
        `Taken in as ${fresh.length === 1 ? 'an eater' : 'eaters'} with nothing kept away: ${sayList(taken)}. Change it with /eater.`,
      );
  }
  return house.eaters.here();
}

/** The slots as asked for: who was there stays, save those named. @throws Refusal 'no-slots' */
export function wantedSlots(
  head: NewTrip,
  told: { company: Company; meals: MealsOfTrip | undefined; days: Days | undefined },
  before: Trip | undefined,
  eaters: readonly Eater[],
): NewSlot[] {
  const { company, meals } = told;
  const id = (name: string) => {
    const eater = eaters.find((e) => nameKey(e.name) === nameKey(name));
    if (!eater) throw new Refusal('no-such-eater', `Nobody called ${name} eats here. First: /eater ${name}`);
    return eater.id;
  };
  const everybody = company.everybody || (!before && company.coming.length === 0);
  const base =
    before && !meals && !told.days
      ? before.slots.map(({ onDay, meal }) => ({ onDay, meal }))
      : slotsOf(
          head.startsOn,
          head.endsOn,
          changedMeals(meals, mealsBefore(before)) ?? {
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
    for (const { eater, meal } of company.away ?? []) if (meal === slot.meal) seated.delete(id(eater));
    return { ...slot, eaters: [...seated].sort((a, b) => a - b) };
  });
}

/** The slots with a meal of one day put in or taken out. @throws Refusal 'no-slots' */
export function withChange(slots: readonly NewSlot[], change: SlotChange | undefined): NewSlot[] {
  if (!change) return [...slots];
  const { onDay, meals, isGone } = change;
  const others = slots.filter((slot) => slot.onDay !== onDay || !meals.includes(slot.meal));
  if (isGone && others.length === slots.length)
    throw new Refusal('no-slots', `The trip has no ${meals[0]!} on ${onDay}.`);
  if (others.length === 0 && isGone)
    throw new Refusal('no-slots', 'That is the only meal of the trip; to end it, say that it is cancelled.');
  if (isGone) return others;
  const company = slots.toSorted((a, b) => b.eaters.length - a.eaters.length)[0]?.eaters ?? [];
  const kept = slots.filter((slot) => slot.onDay === onDay && meals.includes(slot.meal));
  const fresh = meals
    .filter((meal) => kept.every((slot) => slot.meal !== meal))
    .map((meal) => ({ onDay, meal, eaters: [...company] }));
  const rank = (slot: NewSlot) => `${slot.onDay} ${slotMeals.indexOf(slot.meal)}`;
  return [...others, ...kept, ...fresh].toSorted((a, b) => (rank(a) < rank(b) ? -1 : 1));
}

/** Who ate at most slots: a slot that is new gets the same company. */
function usual(trip: Trip): readonly number[] {
  return trip.slots.toSorted((a, b) => b.eaters.length - a.eaters.length)[0]?.eaters ?? [];
}

/** What is named instead of the meals that were planned, or beside them, or taken from them. @throws Refusal 'no-slots' */
function changedMeals(
  told: MealsOfTrip | undefined,
  before: MealsOfTrip | undefined,
): MealsOfTrip | undefined {
  if (told?.edges && before) {
    const { first, last } = told.edges;
    const named = [first, last];
    return {
      each: slotMeals.filter((meal) => before.each.includes(meal) || named.includes(meal)),
      first: first ?? before.first,
      last: last ?? before.last,
    };
  }
  if (!told?.change || !before) return told ?? before;
  if (told.change === 'added')
    return {
      ...before,
      each: slotMeals.filter((meal) => before.each.includes(meal) || told.each.includes(meal)),
    };
  const each = before.each.filter((meal) => !told.each.includes(meal));
  if (each.length === 0)
    throw new Refusal('no-slots', 'Those are all meals of the trip; to end it, say that it is cancelled.');
  return { ...before, each };
}

function mealsBefore(trip: Trip | undefined): MealsOfTrip | undefined {
  if (!trip || trip.slots.length === 0) return undefined;
  const each = (['breakfast', 'lunch', 'dinner'] as const).filter((meal) =>
    trip.slots.some((slot) => slot.meal === meal),
  );
  return { each, first: trip.slots[0]!.meal, last: trip.slots.at(-1)!.meal };
}

/**
 * Moves every meal of a trip by as many days as the trip moves, with who is there, what is wished for, kept and told of
 * the day.
 * @returns the trip as it is then; undefined when the days do not move as a whole
 */
export function moveTrip(
  house: House,
  trip: Trip,
  days: Days,
  meals: MealsOfTrip | undefined,
  remarks: string[],
): Trip | undefined {
  const day = (iso: string) => DateTime.fromISO(iso, { zone: 'UTC' });
  const by = day(days.startsOn).diff(day(trip.startsOn), 'days').days;
  if (by === 0 || meals !== undefined || day(days.endsOn).diff(day(trip.endsOn), 'days').days !== by)
    return undefined;
  house.trips.move(trip, (onDay) => day(onDay).plus({ days: by }).toISODate()!);
  const wishes = house.trips.wishes(trip.id).length;
  const held = house.trips.held(trip.id).filter((h) => h.came === null).length;
  const along = [
    ...(wishes > 0 ? [sayCount(wishes, 'wish', 'wishes')] : []),
    ...(held > 0 ? [sayCount(held, 'kept pouch', 'kept pouches')] : []),
  ];
  if (along.length > 0) remarks.push(`Moved along: ${sayList(along)}.`);
  return house.trips.all().find(({ id }) => id === trip.id);
}

/** Records how hard days are; what was told of a day that fell away goes with it. @throws Refusal 'outside-trip' */
export function tellEfforts(house: House, trip: number, days: Days, efforts: readonly DayEffort[]): void {
  const told =
    house.trips
      .all()
      .find(({ id }) => id === trip)
      ?.efforts.keys() ?? [];
  for (const onDay of [...told].filter((one) => one < days.startsOn || one > days.endsOn))
    house.trips.effort(trip, onDay, null);
  for (const { onDay: dayFrom, effort } of efforts) {
    const onDay = dayFrom(days.startsOn);
    if (onDay !== null && (onDay < days.startsOn || onDay > days.endsOn))
      throw new Refusal(
        'outside-trip',
        `${onDay} is not a day of this trip, which goes from ${days.startsOn} to ${days.endsOn}.`,
      );
    const first = DateTime.fromISO(days.startsOn, { zone: 'UTC' });
    const count = DateTime.fromISO(days.endsOn, { zone: 'UTC' }).diff(first, 'days').days + 1;
    const every = Array.from({ length: count }, (_, i) => first.plus({ days: i }).toISODate()!);
    for (const one of onDay === null ? every : [onDay])
      house.trips.effort(trip, one, effort === 'walk' ? null : effort);
  }
}

/** Makes the slots as wanted; what falls away gives its pouches back and leaves its wishes open, and that is said. */
export function settle(
  house: House,
  trip: number,
  before: readonly Slot[],
  wanted: readonly NewSlot[],
): string[] {
  const remarks: string[] = [];
  const same = (a: NewSlot, b: NewSlot) => a.onDay === b.onDay && a.meal === b.meal;
  const stock = house.pouches.inStock();
  for (const slot of before.filter((old) => !wanted.some((w) => same(w, old)))) {
    const lost: Pouch[] = [];
    for (const held of house.trips.held(trip).filter((h) => h.slot === slot.id)) {
      if (held.packed)
        throw new Refusal(
          'packed',
          'A pouch for a meal that would fall away is packed already. Take it out with /pack first.',
        );
      house.trips.releaseOne(held.id);
      lost.push(...stock.filter(({ id }) => id === held.pouch));
    }
    if (lost.length > 0) remarks.push(`Free again: ${sayCodes(lost)}, kept for ${saySlot(slot)}.`);
    const names = new Map(mealNames(house).map((name) => [nameKey(name), name]));
    const opened = house.trips.wishes(trip).filter((w) => w.slot === slot.id);
    for (const wish of opened) house.trips.openWish(wish.id);
    if (opened.length > 0)
      remarks.push(
        `Wished for at ${saySlot(slot)} and now at any meal: ${sayList([...new Set(opened.map((w) => names.get(w.mealKey) ?? w.mealKey))])}.`,
      );
    house.trips.dropSlot(slot);
  }
  for (const slot of wanted) {
    const old = before.find((b) => same(b, slot));
    if (!old) {
      keepAway(house, trip, before, house.trips.addSlot(trip, slot));
      continue;
    }
    for (const eater of old.eaters) if (!slot.eaters.includes(eater)) house.trips.unseat(old.id, eater);
    for (const eater of slot.eaters) if (!old.eaters.includes(eater)) house.trips.seat(old.id, eater);
  }
  return remarks;
}
