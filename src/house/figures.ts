import { type BatchFacts, type Composer, type RecipeFacts, batchFacts, recipeFacts } from '#core/meal.ts';
import type { Batch, Pouch, Recipe } from '#core/records.ts';
import { Refusal } from '#core/refusal.ts';
import { fold } from '#words/near.ts';
import type { PouchCode } from '#words/parts.ts';
import { sayBatch, sayCode, sayCodes, sayList } from '#words/say.ts';
import type { House } from './house.ts';

/** Names are compared folded; a name of pictures alone is compared as it is. */
export function nameKey(name: string): string {
  return fold(name) || name.trim().toLowerCase();
}

/** What people may call a meal: recipes, and what was bought and is in stock. */
export const mealNames = (house: Pick<House, 'recipes' | 'pouches'>): string[] => [
  ...new Set([...house.recipes.names(), ...house.pouches.boughtNames()]),
];

export function composerOf(house: Pick<House, 'foods'>): Composer {
  return (ndb) => house.foods.byNdb(ndb)?.per100;
}

/** @throws Refusal 'no-such-recipe' */
export function recipeNamed(house: House, name: string): Recipe {
  const recipe = house.recipes.find(nameKey(name));
  if (!recipe) throw new Refusal('no-such-recipe', `There is no recipe called ${name} yet.`);
  return recipe;
}

/**
 * A sum over one record as it was read. A record that was written is read anew, as another object, so what is kept here
 * is never old; a household with other settings or another food table has other sums.
 */
function keptFor<R extends object, F>(sum: (house: House, record: R) => F): (house: House, record: R) => F {
  const kept = new WeakMap<R, Pick<House, 'foods' | 'settings'> & { readonly facts: F }>();
  return (house, record) => {
    const before = kept.get(record);
    if (before?.foods === house.foods && before.settings === house.settings) return before.facts;
    const facts = sum(house, record);
    kept.set(record, { foods: house.foods, settings: house.settings, facts });
    return facts;
  };
}

/** What was bought and is in stock, each as its recipe of one piece. */
export const boughtRecipes = (house: Pick<House, 'pouches' | 'batches'>): Recipe[] =>
  house.pouches.mixes().flatMap((no) => {
    const batch = house.batches.find(no);
    return batch?.mix?.bought ? [batch.recipe] : [];
  });

/** A meal to be looked at: a recipe, or what was bought under that name. @throws Refusal 'no-such-recipe' */
export const mealNamed = (house: House, name: string): Recipe =>
  house.recipes.find(nameKey(name)) ??
  boughtRecipes(house).find((recipe) => nameKey(recipe.name) === nameKey(name)) ??
  recipeNamed(house, name);

export const factsOfRecipe = keptFor((house: House, recipe: Recipe): RecipeFacts =>
  recipeFacts(recipe, composerOf(house)),
);

/** @throws Refusal 'no-such-batch', naming those there are */
export function batchNumbered(house: House, no: number): Batch {
  const batch = house.batches.find(no);
  if (batch) return batch;
  const latest = house.batches.latest(5).map((b) => `B${b.no}`);
  const there = latest.length > 0 ? ` The latest are ${sayList(latest)}.` : ' No batch has been loaded yet.';
  throw new Refusal('no-such-batch', `There is no batch B${no}.${there}`);
}

/** A batch that was dried, by its number. @throws Refusal 'mixed' for a mixture, which is filled from others */
export function loadedBatch(house: House, no: number): Batch {
  const batch = batchNumbered(house, no);
  if (!batch.mix) return batch;
  if (batch.mix.bought)
    throw new Refusal(
      'bought',
      `S${no}, ${batch.recipe.name}, was bought: nothing of it is dried or weighed here.`,
    );
  throw new Refusal(
    'mixed',
    `M${no} is filled from ${sayList(batch.mix.parts.map((part) => `B${part.batch}`))}; it was not dried itself. Name one of those.`,
  );
}

export const factsOfBatch = keptFor((house: House, batch: Batch): BatchFacts =>
  batchFacts(batch, composerOf(house), house.settings, factsOfRecipe(house, batch.recipe)),
);

/** @throws Refusal 'no-such-pouch', naming those of the batch */
export function pouchCoded(house: House, code: PouchCode): Pouch {
  const pouch = house.pouches.find(code.batch, code.no);
  if (pouch && code.isMixed && !pouch.isMixed)
    throw new Refusal(
      'no-such-pouch',
      `There is no pouch ${sayCode(code)}. ${sayCode(pouch)} is ${pouch.meal}.`,
    );
  if (pouch) return pouch;
  const batch = batchNumbered(house, code.batch);
  const codes = house.pouches.ofBatch(batch.no);
  const there =
    codes.length > 0 ? `${sayBatch(batch)} has ${sayCodes(codes)}` : `Nothing of B${batch.no} is sealed yet`;
  throw new Refusal('no-such-pouch', `There is no pouch ${sayCode(code)}. ${there}.`);
}

/**
 * The pouches of the codes, every one of them still in stock.
 * @throws Refusal 'gone' for one that was used or discarded
 */
export function pouchesInStock(house: House, codes: readonly PouchCode[]): Pouch[] {
  return codes.map((code) => {
    const pouch = pouchCoded(house, code);
    if (pouch.state !== 'stock') {
      throw new Refusal('gone', `${sayCode(pouch)} was ${pouch.state} already. /undo takes a mistake back.`);
    }
    return pouch;
  });
}

interface Seen {
  readonly batch: Batch;
  readonly facts: BatchFacts;
}

const seen = new WeakMap<object, Map<number, Seen>>();

/**
 * A batch and its facts, worked out once for each message: for requests that look at several. Not for a request that
 * weighs or loads, whose batch changes under it.
 */
export function batchSeen(house: House, no: number): Seen {
  const book = seen.get(house.batches) ?? new Map<number, Seen>();
  seen.set(house.batches, book);
  const known = book.get(no);
  if (known) return known;
  const batch = batchNumbered(house, no);
  const found = { batch, facts: factsOfBatch(house, batch) };
  book.set(no, found);
  return found;
}

/** Reads every batch in stock together, for requests that look at the whole stock. */
export function seeStock(house: House): void {
  const book = seen.get(house.batches) ?? new Map<number, Seen>();
  seen.set(house.batches, book);
  for (const batch of house.batches.inStock())
    book.set(batch.no, { batch, facts: factsOfBatch(house, batch) });
}

/** The facts of a batch whose dry weight is known. @throws Refusal 'no-dry-weight' */
export function driedFacts(house: House, batch: Batch): BatchFacts & { dryG: number } {
  const facts = factsOfBatch(house, batch);
  if (facts.dryG === null) {
    throw new Refusal(
      'no-dry-weight',
      `B${batch.no} has no dry weight yet: weigh every tray first, with /weigh.`,
    );
  }
  return { ...facts, dryG: facts.dryG };
}

/** What is in stock and held for no trip, oldest best-by first; of one meal, by its name as recorded, or of all. */
export function freeStock(house: House, meal?: string): Pouch[] {
  const held = new Set(house.trips.held(null).map((h) => h.pouch));
  const stock = meal === undefined ? house.pouches.inStock() : house.pouches.inStockOf(meal);
  return held.size === 0 ? stock : stock.filter((pouch) => !held.has(pouch.id));
}
