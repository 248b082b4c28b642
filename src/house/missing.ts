import { pouchFacts } from '#core/meal.ts';
import type { Trip } from '#core/records.ts';
import { sayCount, sayNumber } from '#words/say.ts';
import type { House } from './house.ts';
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
    // As /pick takes them: shown to be dry, and not past by the first day.
    .filter((shelf) => shelf.checked && (shelf.bestByOn ?? trip.startsOn) >= trip.startsOn);
  seeStock(house);
  const servings = free.reduce((sum, shelf) => {
    const { facts } = batchSeen(house, shelf.batch);
    return facts.dryG === null ? sum : sum + pouchFacts(shelf.dryG, { ...facts, dryG: facts.dryG }).servings;
  }, 0);
  const pouches = free.reduce((sum, shelf) => sum + shelf.numbers.length, 0);
  const heldHere = new Set(here.map((h) => h.pouch));
  const kept = here.length === 0 ? [] : house.pouches.inStock().filter((pouch) => heldHere.has(pouch.id));
  const keptServings = kept.reduce((sum, pouch) => {
    const { facts } = batchSeen(house, pouch.batch);
    return facts.dryG === null ? sum : sum + pouchFacts(pouch.dryG, { ...facts, dryG: facts.dryG }).servings;
  }, 0);
  const lines = [
    `Needed: ${sayNumber(needed)} servings.${kept.length > 0 ? ` Kept for it: ${sayNumber(keptServings)} in ${sayCount(kept.length, 'pouch', 'pouches')}.` : ''} Free in stock: ${sayNumber(servings)} servings in ${sayCount(pouches, 'pouch', 'pouches')}.`,
  ];
  const short = needed - keptServings - servings;
  if (short > 0.05) lines.push(`Short by about ${sayNumber(short)} servings: /cook tells what to cook.`);
  const wishes = house.trips.wishes(trip.id).length;
  lines.push(
    `${wishes === 0 ? 'No wishes yet' : sayCount(wishes, 'wish', 'wishes')}: /want soup saturday dinner. Then /pick.`,
  );
  return lines;
}
