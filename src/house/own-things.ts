import { groupBy } from '#core/groups.ts';
import { sayBatch, sayCode } from '#words/say.ts';
import { isSealedFrom } from './dryness.ts';
import { mealNames } from './figures.ts';
import type { House } from './house.ts';
import { takenAlong } from './packing.ts';
import { sayDayOf, tripsAhead } from './trips.ts';

/** What of a household a request can be about, when nobody said what. */
export type Kind =
  'loads' | 'batches' | 'sealed' | 'pouches' | 'eaten' | 'meals' | 'in stock' | 'eaters' | 'days' | 'trips';

/** One thing of the household: as it is called, and as a request takes it. */
export interface OwnThing {
  readonly label: string;
  readonly words: string;
}

/** As many as a phone has room for below a message. Chosen. */
const mostThings = 7;

/** A household's own things of one kind, what is likeliest meant first. */
export function ownThings(house: House, kind: Kind): OwnThing[] {
  return things[kind](house).slice(0, mostThings);
}

const named = (name: string): OwnThing => ({ label: name, words: `"${name}"` });

const things: Readonly<Record<Kind, (house: House) => OwnThing[]>> = {
  loads: (house) =>
    batches(house)
      .filter(({ no }) => !isSealedFrom(house, no))
      .map(asThing),
  batches: (house) => batches(house).map(asThing),
  sealed: (house) => {
    const stocked = new Set(house.pouches.shelves().map(({ batch }) => batch));
    return batches(house)
      .filter(({ no }) => stocked.has(no))
      .map(asThing);
  },
  pouches: (house) => {
    const along = takenAlong(house);
    const stock = house.pouches.inStock();
    // On the way it is what is in the bag.
    const here = along.size > 0 ? stock.filter(({ id }) => along.has(id)) : stock;
    return oneOfEach(here);
  },
  eaten: (house) =>
    oneOfEach(
      house.batches
        .latest(20)
        .flatMap(({ no }) => house.pouches.ofBatch(no))
        .filter(({ state }) => state === 'used')
        .toSorted((a, b) => b.goneAtMs! - a.goneAtMs!),
    ),
  meals: (house) => house.recipes.names().map(named),
  'in stock': (house) => {
    const stocked = new Set(house.pouches.shelves().map(({ meal }) => meal));
    return mealNames(house)
      .filter((name) => stocked.has(name))
      .map(named);
  },
  eaters: (house) => house.eaters.here().map(({ name }) => named(name)),
  days: (house) => {
    const [trip] = tripsAhead(house);
    if (!trip) return [];
    const held = new Set(house.trips.held(trip.id).map(({ slot }) => slot));
    const days = [...new Set(trip.slots.map(({ onDay }) => onDay))];
    // A meal of both days, and something kept for it on one of them.
    const mayGo = (day: string, other: string) =>
      trip.slots.some(
        (slot) =>
          slot.onDay === day &&
          trip.slots.some(
            (its) => its.onDay === other && its.meal === slot.meal && (held.has(slot.id) || held.has(its.id)),
          ),
      );
    return days.slice(1).flatMap((day, i) => {
      const before = days[i]!;
      const label = `${sayDayOf(before)} and ${sayDayOf(day)}`;
      return mayGo(before, day) ? [{ label, words: `${before} and ${day}` }] : [];
    });
  },
  trips: (house) => tripsAhead(house).map(({ place }) => named(place)),
};

const batches = (house: House) => house.batches.latest(20).filter(({ mix }) => !mix?.bought);

const asThing = (batch: ReturnType<typeof batches>[number]): OwnThing => ({
  label: `${sayBatch(batch)} ${batch.recipe.name}`,
  words: sayBatch(batch),
});

/** The first pouch of each meal: many of one meal are no choice. */
const oneOfEach = (pouches: ReturnType<House['pouches']['inStock']>): OwnThing[] =>
  [...groupBy(pouches, ({ meal }) => meal).values()].map(([first]) => ({
    label: `${sayCode(first!)} ${first!.meal}`,
    words: sayCode(first!),
  }));
