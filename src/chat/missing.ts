import { pouchFacts } from '#core/meal.ts';
import type { Trip } from '#core/records.ts';
import { sayCount, sayNumber } from '#words/say.ts';
import type { House } from './command.ts';
import { batchSeen, seeStock } from './figures.ts';

/** What a trip still needs, counted roughly: /pick is the exact word. */
export function missingLines(house: House, trip: Trip): string[] {
  const portion = new Map(house.eaters.all().map((eater) => [eater.id, eater.portion]));
  const needed = trip.slots
    .flatMap((slot) => slot.eaters.map((id) => portion.get(id) ?? 1))
    .reduce((sum, p) => sum + p, 0);
  if (needed === 0) return ['Nobody is at any meal yet: say who comes, such as "for all".'];
  const held = house.trips.held(null);
  const here = held.filter((h) => h.trip === trip.id);
  const free = house.pouches
    .shelves()
    .filter((shelf) => shelf.checked && (shelf.bestByOn ?? '') >= trip.startsOn);
  seeStock(house);
  const servings = free.reduce((sum, shelf) => {
    const { facts } = batchSeen(house, shelf.batch);
    return facts.dryG === null ? sum : sum + pouchFacts(shelf.dryG, { ...facts, dryG: facts.dryG }).servings;
  }, 0);
  const pouches = free.reduce((sum, shelf) => sum + shelf.numbers.length, 0);
  const wishes = house.trips.wishes(trip.id).length;
  const lines = [
    `Needed: ${sayNumber(needed)} servings. Free in stock: ${sayNumber(servings)} servings in ${sayCount(pouches, 'pouch', 'pouches')}.`,
  ];
  if (servings < needed)
    lines.push(`Short by about ${sayNumber(needed - servings)} servings: /cook tells what to cook.`);
  if (here.length > 0) lines.push(`Kept for it: ${sayCount(here.length, 'pouch', 'pouches')}.`);
  lines.push(
    `${wishes === 0 ? 'No wishes yet' : sayCount(wishes, 'wish', 'wishes')}: /want soup saturday dinner. Then /pick.`,
  );
  return lines;
}
