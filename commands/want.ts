import { command } from '#chat/command.ts';
import { batchNumbered, freeStock, mealNamed, mealNames, nameKey } from '#house/figures.ts';
import type { House } from '#house/house.ts';
import { tripMeant } from '#house/trips.ts';
import { becauseWords, mealsInStock, type MealShown, shownOf, verdictOn } from '#house/verdicts.ts';
import { pinned, takenBack } from '#house/wish-rules.ts';
import { eatersMeant, sayWhen, slotMeant, slotsNamed } from '#house/wishing.ts';
import type { Eater, Recipe, Slot, Trip } from '#core/records.ts';
import { Refusal } from '#core/refusal.ts';
import { batchCode, flag, optional, pouchCodes } from '#words/parts.ts';
import { sayBatch, sayCodes, sayCount, sayList } from '#words/say.ts';
import { eatersWanting, everyDay, mealOfDay, mealsWanted, tripAndDay } from '#words/want-parts.ts';

export default command({
  name: 'want',
  alsoCalled: ['wish', 'wants'],
  usage: '/want <meals> [saturday dinner] [for Noa] [trip] · /want no soup saturday',
  summary: 'wish for a meal on a trip, or keep one away from a meal; "not" takes a wish back',
  examples: [
    '/want soup saturday dinner',
    '/want soup for Noa',
    '/want not soup',
    '/want no soup sunday dinner',
    '/want B1-1 saturday dinner',
    '/want B4 sunday dinner',
    '/want',
  ],
  help: [
    'The same wish by two people counts twice. Without a day it may be granted at any meal of the trip. Several meals and people go in one: soup and curry for Noa and Ben, or for all.',
    '"No soup saturday" keeps a meal away from there, "no soup" from the whole trip, once no wish for it is left. A code says which pouch is opened then; that of a batch or a mixture means its meal.',
  ],
  records: true,
  offers: { of: 'in stock' },
  takes: {
    withdrawn: flag('not', 'withdraw', 'cancel'),
    no: flag('no', 'without'),
    every: everyDay,
    codes: optional(pouchCodes),
    batch: optional(batchCode),
    when: tripAndDay,
    slotMeal: mealOfDay,
    meals: mealsWanted,
    eaters: eatersWanting,
  },
  run: (asked, house) => {
    const trip = tripMeant(house, asked.when.trip);
    const slots = slotsNamed(trip, asked.when.day, asked.slotMeal);
    const nothing = { did: undefined, button: undefined, meals: [] as MealShown[] };
    if (asked.codes) return { ...nothing, ...pinned(house, trip, asked.codes, slots) };
    // A mixture has no recipe of its own that a name could mean: its code does.
    const ofBatch = asked.batch === undefined ? [] : [batchNumbered(house, asked.batch).recipe];
    if (asked.meals === undefined && ofBatch.length === 0) {
      if (slots ?? asked.eaters)
        throw new Refusal('no-meal', 'I read when or for whom, but no meal that I know.');
      return { ...nothing, lines: list(house, trip) };
    }
    const recipes = [...ofBatch, ...(asked.meals ?? []).map((meal) => mealNamed(house, meal))];
    // "No soup" takes one's own wish back; where nobody wishes for it, it is to be at no meal.
    const isWished = house.trips
      .wishes(trip.id)
      .some(({ mealKey }) => recipes.some(({ name }) => nameKey(name) === mealKey));
    const isNo = asked.no === true && asked.eaters === undefined && (slots !== undefined || !isWished);
    const eaters = eatersMeant(house, trip, isNo ? 'all' : asked.eaters);
    if (asked.withdrawn ?? asked.no)
      return { ...nothing, ...takenBack(house, trip, recipes, eaters, slots, isNo) };
    const names = sayList([
      ...(asked.batch === undefined ? [] : [sayBatch(batchNumbered(house, asked.batch))]),
      ...(asked.meals ?? []).map((name) => `"${name}"`),
    ]);
    const again = (slot: Slot | undefined) =>
      `/want ${names}${slot ? ` ${slot.onDay} ${slot.meal}` : ''} "${trip.place}" for ${asked.eaters === 'all' ? 'all' : sayList(eaters.map((e) => `"${e.name}"`))}`;
    if (asked.every)
      return together(
        (slots ?? trip.slots)
          .filter((one) => eaters.some(({ id }) => one.eaters.includes(id)))
          .map((one) => wished(house, trip, recipes, eaters, one)),
      );
    const slot = slots && slotMeant(slots, eaters, again);
    return wished(house, trip, recipes, eaters, slot);
  },
  say: ({ lines, did, button, meals }) => ({
    group: lines.join('\n'),
    meals,
    ...(did === undefined ? {} : { did }),
    ...(button === undefined ? {} : { buttons: [button], buttonsForAll: true, buttonsStay: true }),
  }),
});

/** Wishes for several meals of the trip, told as one: what each says alike is said once. */
function together(all: readonly ReturnType<typeof wished>[]): ReturnType<typeof wished> {
  const [first] = all;
  if (!first) throw new Refusal('no-such-slot', 'The trip has no such meal.');
  return { ...first, lines: [...new Set(all.flatMap(({ lines }) => lines))] };
}

function wished(
  house: House,
  trip: Trip,
  recipes: readonly Recipe[],
  eaters: readonly Eater[],
  slot: Slot | undefined,
) {
  const before = house.trips.wishes(trip.id);
  const there = slot ? eaters.filter(({ id }) => slot.eaters.includes(id)) : eaters;
  const when = sayWhen(trip, slot?.id ?? null);
  const lines: string[] = [];
  let fresh = 0;
  for (const recipe of recipes) {
    const mealKey = nameKey(recipe.name);
    const same = before.filter((w) => w.mealKey === mealKey && w.slot === (slot?.id ?? null));
    const now = there.filter(({ id }) => same.every((w) => w.eater !== id));
    for (const { id } of now)
      house.trips.wish(
        trip.id,
        { eater: id, mealKey, slot: slot?.id ?? null, byMember: house.member.id },
        house.nowMs,
      );
    if (now.length === 0) continue;
    fresh += now.length;
    const others = before.filter((w) => w.mealKey === mealKey && !now.some(({ id }) => id === w.eater));
    const isBanned =
      slot && house.slotRules.bans(trip.id).some((b) => b.slot === slot.id && b.mealKey === mealKey);
    if (isBanned) house.slotRules.allow(slot.id, mealKey);
    const all = house.eaters.all();
    lines.push(
      `Wish: ${recipe.name} for ${sayList(now.map(({ name }) => name))}, ${trip.place}, ${when}.`,
      ...(isBanned ? [`It was to be kept away from ${when}; that no longer holds.`] : []),
      ...togetherWith(
        others.map((w) => all.find((e) => e.id === w.eater)?.name ?? '?'),
        now.length,
      ),
      covered(
        freeStock(house, recipe.name).filter((p) => p.checked),
        keptOf(house, trip, recipe.name),
        recipe.name,
      ),
      ...suits(
        all.filter((e) => trip.slots.some((s) => s.eaters.includes(e.id) && (!slot || s.id === slot.id))),
        shownOf(house, recipe),
        mealsInStock(house),
      ),
    );
  }
  const who = sayList(there.map(({ name }) => name));
  const what = sayList(recipes.map(({ name }) => name));
  if (fresh === 0)
    throw new Refusal(
      'wished-already',
      `${who} ${there.length > 1 ? 'wish' : 'wishes'} for ${what} already (${when}).`,
    );
  const away = eaters.filter((e) => !there.includes(e)).map(({ name }) => name);
  if (away.length > 0) lines.push(`${sayList(away)} ${away.length > 1 ? 'are' : 'is'} not there.`);
  return {
    lines,
    did: `wished for ${what} for ${who} on ${trip.place}`,
    button: {
      label: 'Me too',
      request: `/want ${sayList(recipes.map(({ name }) => `"${name}"`))}${slot ? ` ${slot.onDay} ${slot.meal}` : ''} "${trip.place}" for me`,
    },
    meals: [] as MealShown[],
  };
}

function togetherWith(others: readonly string[], now: number): string[] {
  const different = [...new Set(others)];
  return different.length === 0
    ? []
    : [`Also wished for by ${sayList(different)}: it counts ${different.length + now} times.`];
}

/** Pouches of a meal that are kept for the trip already. */
function keptOf(house: House, trip: Trip, name: string) {
  const held = new Set(
    house.trips.held(trip.id).flatMap(({ pouch, came }) => (came === null ? [pouch] : [])),
  );
  return house.pouches.inStockOf(name).filter(({ id }) => held.has(id));
}

function covered(
  pouches: readonly { batch: number; no: number }[],
  kept: Parameters<typeof sayCodes>[0],
  name: string,
): string {
  if (pouches.length === 0 && kept.length > 0)
    return `Kept for the trip: ${sayCodes(kept)}; no other pouch of it is free.`;
  if (pouches.length === 0)
    return `No free pouch of ${name} is in stock: it would have to be cooked, see /cook.`;
  return `In stock: ${sayCount(pouches.length, 'pouch', 'pouches')}, ${sayCodes(pouches)}.`;
}

/** Whom it would not suit, and what would. */
function suits(there: readonly Eater[], shown: MealShown, stock: readonly MealShown[]): string[] {
  return there.flatMap((who) => {
    const verdict = verdictOn(who, shown);
    if (verdict.is === 'clear') return [];
    const reason =
      verdict.is === 'blocked' ? becauseWords(verdict.by) : `unknown, ${becauseWords(verdict.because)}`;
    const instead = stock.filter((other) => verdictOn(who, other).is === 'clear').map((other) => other.name);
    return [
      `Not for ${who.name}: ${reason}. ${instead.length > 0 ? `Clear for ${who.name}: ${sayList(instead.slice(0, 4))}.` : `Nothing in stock is clear for ${who.name}.`}`,
    ];
  });
}

function list(house: House, trip: Trip): string[] {
  const eaters = house.eaters.all();
  const names = new Map(mealNames(house).map((name) => [nameKey(name), name]));
  const name = (mealKey: string) => names.get(mealKey) ?? mealKey;
  const wishes = house.trips
    .wishes(trip.id)
    .map(
      (w) =>
        `${name(w.mealKey)} for ${eaters.find((e) => e.id === w.eater)?.name ?? '?'}${w.slot === null ? '' : `, ${sayWhen(trip, w.slot)}`}`,
    );
  const bans = house.slotRules.bans(trip.id).map((b) => `No ${name(b.mealKey)} at ${sayWhen(trip, b.slot)}`);
  if (wishes.length + bans.length === 0)
    return [`No wishes for ${trip.place} yet. Make one: /want soup saturday dinner`];
  return [`Wishes for ${trip.place}:`, ...wishes, ...bans];
}
