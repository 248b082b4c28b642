import { Refusal } from '#core/refusal.ts';
import { type Days, tripDays } from './days.ts';
import { takeName } from './names.ts';
import { optional, part } from './part.ts';
import { placeLeft } from './place-name.ts';
import { daysChanged, type SlotChange, slotChange } from './trip-change.ts';
import { type DayEffort, dayEfforts } from './trip-efforts.ts';
import { type Company, type MealsOfTrip, mealsOfTrip, readCompany, slotMealNamed } from './trip-parts.ts';
import type { SlotMeal } from '#core/records.ts';

/** 'Is called Swan Lake', at the end: what the trip is called from now on, as typed. */
export const newName = optional(
  part<string>('is called and a new name', (reading) => {
    const at = reading.all.findIndex(({ plain }, i) => plain === 'called' && reading.at(i) !== undefined);
    const behind = [...reading.left()].filter((i) => i > at);
    if (at < 1 || behind.length === 0) return undefined;
    const name = reading.text
      .slice(reading.all[behind[0]!]!.from, reading.all[behind.at(-1)!]!.to)
      .replace(/^["“](.*)["”]$/u, '$1')
      .trim();
    reading.take(at, ...behind);
    reading.takeWords('is', 'now');
    return name;
  }),
);

/** A meal taken along to spare, or no more. */
export interface SpareMeal {
  readonly meal: SlotMeal;
  readonly isGone: boolean;
}

/** 'A spare dinner', 'one dinner in reserve', 'no spare dinner'; a dinner where no meal is named. */
export const spareMeal = optional(
  part<SpareMeal>('a spare meal, such as a spare dinner', (reading) => {
    const at = [...reading.left()].find((i) =>
      /^(?:spare|reserve|emergency|extra)$/.test(reading.all[i]!.plain),
    );
    if (at === undefined) return undefined;
    const near = [at + 1, at - 1, at - 2].find(
      (i) => slotMealNamed(reading.at(i)?.plain ?? '') !== undefined || reading.at(i)?.plain === 'meal',
    );
    // 'Extra' alone says nothing of a meal to spare.
    if (near === undefined && reading.all[at]!.plain === 'extra') return undefined;
    if (reading.all[at]!.plain === 'extra' && /\d|day$/.test(reading.all[near! + 1]?.plain ?? ''))
      return undefined;
    const isGone = [at - 1, at - 2].some((i) => /^(?:no|without|not)$/.test(reading.at(i)?.plain ?? ''));
    const meal = near === undefined ? undefined : slotMealNamed(reading.all[near]!.plain);
    reading.take(at, ...(near === undefined ? [] : [near]));
    for (const i of [at - 1, at - 2, at - 3])
      if (/^(?:a|an|one|in|no|without|not|with|plus)$/.test(reading.at(i)?.plain ?? '')) reading.take(i);
    reading.takeWords('along', 'with', 'take', 'bring');
    return { meal: meal ?? 'dinner', isGone };
  }),
);

interface Place {
  readonly name: string;
  readonly isKnown: boolean;
  readonly days: Days | undefined;
  readonly company: Company;
}

/** All that is told of a trip beside its altitude: where, when, who comes, which meals, how hard. */
export const tripTold = part<
  Place & {
    meals: MealsOfTrip | undefined;
    slot: SlotChange | undefined;
    efforts: readonly DayEffort[];
  }
>('a place', (reading, names) => {
  if ([...reading.left()].length === 0) return undefined;
  // 'Moved to 21-23 May' is told by its days.
  if (reading.all.some(({ plain }, i) => plain === 'moved' && reading.at(i + 1)?.plain === 'to'))
    reading.takeWords('moved', 'to');
  const named = takeName(reading, names.trips, 'trip', true);
  const efforts = dayEfforts(reading, names);
  // Days of a trip that is known may be somebody's own, so people are read first; of a new one they are the trip's.
  const fresh = named === undefined ? tripDays.read(reading, names) : undefined;
  const known = named ?? (fresh === undefined ? takeName(reading, names.trips, 'trip') : undefined);
  const within = fresh ?? (known === undefined ? undefined : names.tripDays(known));
  const company = readCompany(reading, names, within?.startsOn ?? '', within?.endsOn ?? '9999-12-31');
  const isAlone = company.coming.length + company.notComing.length === 0 && company.away === undefined;
  const slot = known !== undefined && within && isAlone ? slotChange(reading, names, within) : undefined;
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
});
