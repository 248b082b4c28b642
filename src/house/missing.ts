import { pouchFacts } from '#core/meal.ts';
import { carriers, type Occasion } from '#core/occasions.ts';
import type { SlotMeal, Trip } from '#core/records.ts';
import { sayCount, sayHalves, sayNumber } from '#words/say.ts';
import type { House } from './house.ts';
import { batchSeen, nameKey, seeStock } from './figures.ts';
import { usesOf } from './occasions.ts';

/** Meals of the day that the same pouches can carry. */
const kinds: readonly { readonly meals: readonly SlotMeal[]; readonly said: string }[] = [
  { meals: ['breakfast'], said: 'breakfast' },
  { meals: ['lunch', 'dinner'], said: 'lunch and dinner' },
];

/** What a trip still needs, counted roughly: /pick is the exact word. What is short is read first. */
export function missingOf(
  house: House,
  trip: Trip,
): { readonly lines: string[]; readonly why: string[]; readonly isShort: boolean } {
  if (trip.slots.every((slot) => slot.eaters.length === 0))
    return {
      lines: ['Nobody is at any meal yet: say who comes, such as "for all".'],
      why: [],
      isShort: false,
    };
  const counted = kinds.flatMap(({ meals, said }) => countKind(house, trip, meals, said));
  const short = counted.flatMap(({ inShort }) => inShort ?? []);
  const wishes = house.trips.wishes(trip.id).length;
  return {
    lines: short.length === 0 ? ['Stock has enough for it.'] : short,
    why: [
      ...counted.map(({ line }) => line),
      `${wishes === 0 ? 'No wishes yet' : sayCount(wishes, 'wish', 'wishes')}: /want soup saturday dinner. Then /pick.`,
    ],
    isShort: short.length > 0,
  };
}

function countKind(
  house: House,
  trip: Trip,
  meals: readonly SlotMeal[],
  said: string,
): { line: string; inShort: string | undefined }[] {
  const portion = new Map(house.eaters.all().map((eater) => [eater.id, eater.portion]));
  const needed = trip.slots
    .filter(({ meal, marks }) => meals.includes(meal) && !marks.includes('spare'))
    .flatMap((slot) => slot.eaters.map((id) => portion.get(id) ?? 1))
    .reduce((sum, p) => sum + p, 0);
  if (needed === 0) return [];
  seeStock(house);
  const carry: readonly Occasion[] = meals.flatMap((meal) => carriers[meal]);
  // What is to be at none of the trip's meals is not there for it.
  const bans = house.slotRules.bans(trip.id);
  const isAway = (mealKey: string): boolean =>
    trip.slots.every(({ id }) => bans.some((ban) => ban.slot === id && ban.mealKey === mealKey));
  const isFor = (batch: number): boolean =>
    !isAway(nameKey(batchSeen(house, batch).batch.recipe.name)) &&
    usesOf(house, batchSeen(house, batch).batch.recipe).is.some((use) => carry.includes(use));
  const servings = (batch: number, dryG: number): number => {
    const { facts } = batchSeen(house, batch);
    return facts.dryG === null ? 0 : pouchFacts(dryG, { ...facts, dryG: facts.dryG }).servings;
  };
  const free = house.pouches
    .shelves()
    // As /pick takes them: shown to be dry, and not past by the first day.
    .filter(
      (shelf) => shelf.checked && (shelf.bestByOn ?? trip.startsOn) >= trip.startsOn && isFor(shelf.batch),
    );
  const there = free.reduce((sum, shelf) => sum + servings(shelf.batch, shelf.dryG), 0);
  const pouches = free.reduce((sum, shelf) => sum + shelf.numbers.length, 0);
  const here = new Set(house.trips.held(null).flatMap((h) => (h.trip === trip.id ? [h.pouch] : [])));
  const kept = here.size === 0 ? [] : house.pouches.inStock().filter((p) => here.has(p.id) && isFor(p.batch));
  const held = kept.reduce((sum, pouch) => sum + servings(pouch.batch, pouch.dryG), 0);
  const short = needed - held - there;
  const parts = [
    `${sayNumber(needed)} ${needed === 1 ? 'portion' : 'portions'} needed`,
    ...(kept.length > 0 ? [`${sayNumber(held)} kept in ${sayCount(kept.length, 'pouch', 'pouches')}`] : []),
    pouches > 0
      ? `${sayNumber(there)} servings free in ${sayCount(pouches, 'pouch', 'pouches')}`
      : 'nothing free in stock is for it',
    ...(short > 0.1 ? [`short by about ${sayNumber(short)}`] : []),
  ];
  return [
    {
      line: `For ${said}: ${parts.join(', ')}.`,
      inShort:
        short > 0.1
          ? `Short for ${said}: ${sayHalves(short)} of ${sayHalves(needed)} ${needed <= 1 ? 'portion' : 'portions'}.`
          : undefined,
    },
  ];
}
