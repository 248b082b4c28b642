import { DateTime } from 'luxon';
import { type SlotMeal } from '#core/records.ts';
import { heldFor, type HeldWithPouch } from '#house/packing.ts';
import { altitudeOf, sayDayOf, saySlot, tripMeant } from '#house/trips.ts';
import { campOfTrip, sumLines, tripSums } from '#house/trip-sums.ts';
import type { House } from '#house/house.ts';
import { goodsG } from '#core/camp.ts';
import type { Trip } from '#core/records.ts';
import { optional, part } from '#words/parts.ts';
import { oneDay } from '#words/days.ts';
import { takeName } from '#words/names.ts';
import { slotMealNamed } from '#words/trip-parts.ts';
import { sayGoods } from '#words/camp-words.ts';
import { sayCode, sayCodes, sayCount, sayG, sayList, sayNumber } from '#words/say.ts';
import { question } from './question.ts';

const place = optional(
  part<string>('a trip by its place', (reading, names) => takeName(reading, names.trips, 'trip')),
);
const meal = optional(
  part<SlotMeal>('a meal of the day', (reading) => {
    const index = [...reading.left()].find((i) => slotMealNamed(reading.all[i]!.plain) !== undefined);
    if (index === undefined) return undefined;
    reading.take(index);
    return slotMealNamed(reading.all[index]!.plain);
  }),
);
/** 'saturday' is the trip's Saturday; 'first day' its first. */
const day = optional(
  part<string>('a day of the trip', (reading, names) => {
    const trip = names.trips[0];
    const days = trip === undefined ? undefined : names.tripDays(trip);
    if (days === undefined) return undefined;
    const edge =
      reading.keyword('first') !== undefined
        ? days.startsOn
        : reading.keyword('last') !== undefined
          ? days.endsOn
          : undefined;
    if (edge !== undefined) {
      reading.takeWords('day');
      return edge;
    }
    return oneDay(() => days.startsOn).read(reading, names);
  }),
);

const who = (house: House, ids: readonly number[]): string =>
  sayList(
    house.eaters
      .all()
      .filter((eater) => ids.includes(eater.id))
      .map((eater) => eater.name),
  );

function slotLine(
  house: House,
  trip: Trip,
  slot: Trip['slots'][number],
  held: readonly HeldWithPouch[],
): string {
  const here = held.filter((one) => one.held.slot === slot.id);
  if (here.length === 0) return `${saySlot(slot)}: nothing chosen yet, for ${who(house, slot.eaters)}.`;
  const byMeal = new Map<string, HeldWithPouch[]>();
  for (const one of here) byMeal.set(one.pouch.meal, [...(byMeal.get(one.pouch.meal) ?? []), one]);
  const dishes = [...byMeal].map(
    ([name, ones]) =>
      `${name} (${sayCodes(ones.map((one) => one.pouch))}) for ${who(house, [...new Set(ones.flatMap((one) => one.held.eaters))])}`,
  );
  const camp = tripSums(house, served(here, trip)).campOfSlot.get(slot.id) ?? [];
  const add = camp.length === 0 ? '' : ` At camp add ${sayGoods(camp, house.settings.units)}.`;
  return `${saySlot(slot)}: ${dishes.join('; ')}.${add}`;
}

export const dinner = question({
  name: 'dinner',
  about: 'what is planned to eat',
  asked: ["what's for dinner on Saturday?", 'who eats what on Sunday?'],
  takes: { place, meal, day },
  answer: ({ place: named, meal: wanted, day: onDay }, house) => {
    const trip = tripMeant(house, named);
    const held = heldFor(house, trip);
    const slots = trip.slots.filter(
      (slot) =>
        (wanted === undefined || slot.meal === wanted) && (onDay === undefined || slot.onDay === onDay),
    );
    if (slots.length === 0)
      return `${trip.place} has no such meal: it goes from ${sayDayOf(trip.startsOn)} to ${sayDayOf(trip.endsOn)}.`;
    if (held.length === 0)
      return {
        group: `Nothing is chosen for ${trip.place} yet.`,
        buttons: [{ label: `Choose for ${trip.place}`, request: `/pick "${trip.place}"` }],
      };
    return slots
      .slice(0, 9)
      .map((slot) => slotLine(house, trip, slot, held))
      .join('\n');
  },
});

export const packed = question({
  name: 'packedyet',
  about: 'what is packed',
  asked: ['is everything packed?', 'what is still to pack?'],
  takes: { place },
  answer: ({ place: named }, house) => {
    const trip = tripMeant(house, named);
    const held = heldFor(house, trip);
    if (held.length === 0) return `Nothing is kept for ${trip.place} yet: /pick, then /pick keep.`;
    const open = held.filter((one) => !one.held.packed).map((one) => one.pouch);
    return {
      group:
        open.length === 0
          ? `Yes, all ${sayCount(held.length, 'pouch', 'pouches')} for ${trip.place} are packed.`
          : `No: ${open.length} of ${held.length} for ${trip.place} are still to pack, ${sayCodes(open)}.`,
      buttons: [{ label: 'Packing list', request: `/pack "${trip.place}"` }],
    };
  },
});

const served = (held: readonly HeldWithPouch[], trip: Trip) =>
  trip.slots.map((slot) => {
    const here = held.filter((one) => one.held.slot === slot.id);
    return {
      slot,
      codes: here.map((one) => sayCode(one.pouch)),
      eaters: [...new Set(here.flatMap((one) => one.held.eaters))],
    };
  });

export const packWeight = question({
  name: 'packweight',
  about: 'how heavy the pack is',
  asked: ['how heavy is the pack?'],
  takes: { place },
  answer: ({ place: named }, house) => {
    const trip = tripMeant(house, named);
    const held = heldFor(house, trip);
    if (held.length === 0) return `Nothing is kept for ${trip.place} yet: /pick, then /pick keep.`;
    const sums = tripSums(house, served(held, trip));
    const camp = goodsG(campOfTrip(sums));
    const added = camp > 0 ? `, and ${sayG(camp, house.settings.units)} to add at camp` : '';
    return `${sayG(sums.dryG, house.settings.units)} of dry food in ${sayCount(held.length, 'pouch', 'pouches')}${added} for ${trip.place}, without pouches, gas and water.`;
  },
});

export const fuelNeed = question({
  name: 'fuelneed',
  about: 'how much gas',
  asked: ['how much gas do we need?'],
  takes: { place },
  answer: ({ place: named }, house) => {
    const trip = tripMeant(house, named);
    const held = heldFor(house, trip);
    if (held.length === 0) return `Nothing is kept for ${trip.place} yet, so I cannot say: /pick tells it.`;
    return sumLines(house, trip, tripSums(house, served(held, trip))).join('\n');
  },
});

export const tripWater = question({
  name: 'tripwater',
  about: 'how much water on the trip',
  asked: ['how much water do we boil on the trip?'],
  takes: { place },
  answer: ({ place: named }, house) => {
    const trip = tripMeant(house, named);
    const held = heldFor(house, trip);
    const { waterOfDay } = tripSums(house, served(held, trip));
    const litres = (ml: number) => `${sayNumber(Math.round(ml / 10) / 100)} l`;
    const all = [...waterOfDay.values()].reduce((sum, ml) => sum + ml, 0);
    const days = [...waterOfDay].map(([onDay, ml]) => `${sayDayOf(onDay)} ${litres(ml)}`);
    return `${trip.place}: about ${litres(all)} to boil for the food in all; ${sayList(days)}. Drinks and washing up are not in it.`;
  },
});

/** How far ahead a day is, in words. */
function aheadWords(house: House, onDay: string): string {
  const today = DateTime.fromMillis(house.nowMs, { zone: house.settings.zone }).startOf('day');
  const days = Math.round(DateTime.fromISO(onDay, { zone: house.settings.zone }).diff(today, 'days').days);
  return days > 1 ? `, in ${days} days` : days === 1 ? ', tomorrow' : days === 0 ? ', today' : '';
}

export const tripOf = question({
  name: 'tripof',
  about: 'the trip',
  asked: ['who comes to Heron Lake?', 'when is Heron Lake?'],
  takes: { place },
  answer: ({ place: named }, house) => {
    const trip = tripMeant(house, named);
    const coming = house.eaters
      .all()
      .filter((eater) => trip.slots.some((slot) => slot.eaters.includes(eater.id)));
    const absent = house.eaters.here().filter((eater) => coming.every(({ id }) => id !== eater.id));
    const missing = absent.length === 0 ? '' : ` Not coming: ${sayList(absent.map((eater) => eater.name))}.`;
    return {
      group: `${trip.place}: ${sayDayOf(trip.startsOn)} to ${sayDayOf(trip.endsOn)} ${DateTime.fromISO(trip.endsOn).year}${aheadWords(house, trip.startsOn)}, ${sayCount(trip.slots.length, 'meal', 'meals')}, at ${Math.round(altitudeOf(trip, house))} m${trip.altitudeM === null ? ' (as at home)' : ''}. ${coming.length > 0 ? `${sayList(coming.map((eater) => eater.name))} ${coming.length === 1 ? 'comes' : 'come'}.` : 'Nobody comes yet.'}${missing}`,
      buttons: [{ label: 'All its meals', request: `/trip "${trip.place}"` }],
    };
  },
});
