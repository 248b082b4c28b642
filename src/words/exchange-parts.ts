import { DateTime } from 'luxon';
import type { SlotMeal } from '#core/records.ts';
import { Refusal } from '#core/refusal.ts';
import { mentions } from './day-mentions.ts';
import { takeMention } from './days.ts';
import { takeName } from './names.ts';
import { part } from './part.ts';
import { slotMealNamed } from './trip-parts.ts';

interface Side {
  readonly onDay: string;
  readonly meal: SlotMeal | undefined;
}

/** Two days of a trip, or two of its meals: 'saturday and sunday', 'saturday dinner with monday lunch'. */
export const exchangeTold = part<{ trip: string | undefined; sides: readonly [Side, Side] }>(
  'two days or two meals of the trip, such as saturday and sunday',
  (reading, names) => {
    const named = names.trips.filter((place) => reading.text.toLowerCase().includes(place.toLowerCase()));
    const trip = named.length > 0 ? takeName(reading, named, 'trip') : undefined;
    const place = trip ?? names.trips[0];
    const days = place === undefined ? undefined : names.tripDays(place);
    const found = mentions(reading, names);
    const [a, b] = found;
    if (!days || !a || !b) return undefined;
    if (found.length > 2) throw new Refusal('three-days', 'Two days change places; I read more.');
    const from = DateTime.fromISO(days.startsOn, { zone: names.zone });
    const onDay = (one: typeof a): string => {
      const day = one.onOrAfter(from)?.toISODate();
      if (day == null || day > days.endsOn)
        throw new Refusal('not-on-trip', `${place!} goes from ${days.startsOn} to ${days.endsOn}.`);
      return day;
    };
    // A meal belongs to the day it stands beside: the first to what comes before the second day.
    const meals = [...reading.left()].filter((i) => slotMealNamed(reading.all[i]!.plain) !== undefined);
    const mealAt = (i: number | undefined) =>
      i === undefined ? undefined : slotMealNamed(reading.all[i]!.plain);
    const first = meals.find((i) => i < b.from);
    const second = meals.find((i) => i > b.to) ?? meals.find((i) => i < b.from && i !== first);
    // 'Saturday and Sunday dinner': one meal said behind both holds for both.
    const both = first === undefined ? second : undefined;
    const sides = [
      { onDay: onDay(a), meal: mealAt(first ?? both) },
      { onDay: onDay(b), meal: mealAt(second ?? both) },
    ] as const;
    takeMention(reading, a);
    takeMention(reading, b);
    reading.take(...meals);
    reading.takeWords('and', 'with', 'for', 'the', 'on', 'of', 'plan', 'days', 'meals', '’s', 's');
    return { trip, sides };
  },
);
