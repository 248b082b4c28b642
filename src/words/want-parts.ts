import type { SlotMeal } from '#core/records.ts';
import { oneDay } from './days.ts';
import { takeName } from './names.ts';
import { type Names, optional, part, takeMeal } from './parts.ts';
import type { Reading } from './reading.ts';
import { slotMealNamed } from './trip-parts.ts';

/** A meal of the day; none is dropped where two are named. */
export const mealOfDay = optional(
  part<SlotMeal>('a meal of the day, such as dinner', (reading) => {
    const index = [...reading.left()].find((i) => slotMealNamed(reading.all[i]!.plain) !== undefined);
    if (index === undefined) return undefined;
    reading.take(index);
    return slotMealNamed(reading.all[index]!.plain);
  }),
);

/** 'Every day', 'each morning': at every such meal of the trip. The word for a meal of the day stays for it. */
export const everyDay = optional(
  part<true>('every day', (reading) => {
    const index = [...reading.left()].find((i) => /^(?:every|each|daily)$/.test(reading.all[i]!.plain));
    if (index === undefined) return undefined;
    reading.take(index);
    if (/^(?:day|days|meal|single)$/.test(reading.at(index + 1)?.plain ?? '')) reading.take(index + 1);
    return true;
  }),
);

const joins = new Set(['and', ',', '&', 'plus']);

/** Takes one name after the other, as long as a joining word stands next to the one before. */
function several(reading: Reading, take: () => string | undefined): string[] {
  const found: string[] = [];
  for (;;) {
    const before = new Set(reading.left());
    const name = take();
    if (name === undefined) return found;
    if (!found.includes(name)) found.push(name);
    const left = new Set(reading.left());
    const taken = [...before].filter((i) => !left.has(i));
    const next = [Math.max(...taken) + 1, Math.min(...taken) - 1];
    if (!next.some((i) => joins.has(reading.all[i]?.plain ?? ''))) return found;
  }
}

/** 'Soup', 'soup and curry'. */
export const mealsWanted = optional(
  part<readonly string[]>('a meal', (reading, names) => {
    const found = several(reading, () => takeMeal(reading, names.meals, names.otherNames));
    return found.length === 0 ? undefined : found;
  }),
);

/** 'Me', 'Noa and Ben', 'all'. */
export const eatersWanting = optional(
  part<'all' | readonly string[]>('for whom, such as for Noa', (reading, names) => {
    const index = (words: readonly string[]) =>
      [...reading.left()].find((i) => words.includes(reading.all[i]!.plain));
    const everybody = index(['all', 'everybody', 'everyone', 'us']);
    if (everybody !== undefined) {
      reading.take(everybody);
      return 'all';
    }
    const me = index(['me', 'myself']);
    if (me !== undefined) reading.take(me);
    const own = me === undefined ? [] : [names.me];
    const others = several(reading, () => takeName(reading, names.eaters, 'eater'));
    return own.length + others.length === 0 ? undefined : [...new Set([...own, ...others])];
  }),
);

/** 'The first evening', 'the last day'. A word that names a meal of the day stays for it. */
function edgeDay(reading: Reading): 'first' | 'last' | undefined {
  for (const index of reading.left()) {
    const edge = /^(first|last)$/.exec(reading.all[index]!.plain)?.[1];
    const next = reading.at(index + 1)?.plain ?? '';
    if (edge === undefined || !(/^(?:day|night)$/.test(next) || slotMealNamed(next) !== undefined)) continue;
    reading.take(index);
    if (/^(?:day|night)$/.test(next)) reading.take(index + 1);
    return edge as 'first' | 'last';
  }
  return undefined;
}

/** The trip, if its place is typed, and a day of it: 'saturday' is the trip's Saturday. */
export const tripAndDay = part<{ trip: string | undefined; day: string | undefined }>(
  'a day of the trip',
  (reading, names) => {
    const trip = wholeTrip(reading, names);
    const place = trip ?? names.trips[0];
    const startsOn = place === undefined ? undefined : names.tripDays(place)?.startsOn;
    const endsOn = place === undefined ? undefined : names.tripDays(place)?.endsOn;
    const edge = edgeDay(reading);
    if (edge !== undefined && startsOn !== undefined)
      return { trip, day: edge === 'first' ? startsOn : endsOn };
    return { trip, day: startsOn === undefined ? undefined : oneDay(() => startsOn).read(reading, names) };
  },
);

/** The same, where neither may be told. */
export const tripOrDay = optional(
  part<{ trip: string | undefined; day: string | undefined }>('a day of the trip', (reading, names) => {
    const found = tripAndDay.read(reading, names);
    return found === undefined || (found.trip ?? found.day) === undefined ? undefined : found;
  }),
);

/** A trip is taken only when its place is typed in full, so that a meal's words are not mistaken for it. */
function wholeTrip(reading: Reading, names: Names): string | undefined {
  const before = reading.remarks.length;
  const named = names.trips.filter((place) => reading.text.toLowerCase().includes(place.toLowerCase()));
  const found = named.length > 0 ? takeName(reading, named, 'trip') : undefined;
  reading.remarks.length = before;
  return found;
}
