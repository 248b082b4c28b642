import { command } from '#chat/command.ts';
import { freeStock, nameKey, recipeNamed, factsOfRecipe } from '#house/figures.ts';
import { saySlot, tripMeant } from '#house/trips.ts';
import { becauseWords, mealOfRecipe, mealsInStock, type MealShown, verdictOn } from '#house/verdicts.ts';
import type { Eater, Trip } from '#core/records.ts';
import { Refusal } from '#core/refusal.ts';
import { type Names, flag, meal, optional, part } from '#words/parts.ts';
import { oneDay } from '#words/days.ts';
import { type Reading } from '#words/reading.ts';
import { takeName } from '#words/names.ts';
import { sayCodes, sayCount, sayList } from '#words/say.ts';
import { slotMealNamed } from '#words/trip-parts.ts';
import { ownEater } from '#house/self.ts';
import type { House } from '#house/house.ts';

const slotMeal = optional(
  part('a meal of the day, such as dinner', (reading) => {
    const index = [...reading.left()].find((i) => slotMealNamed(reading.all[i]!.plain) !== undefined);
    if (index === undefined) return undefined;
    reading.take(index);
    return slotMealNamed(reading.all[index]!.plain);
  }),
);

const eater = optional(
  part<string>('for whom, such as for Noa', (reading: Reading, names: Names) => {
    const isMe = [...reading.left()].find((i) => ['me', 'myself'].includes(reading.all[i]!.plain));
    if (isMe !== undefined) reading.take(isMe);
    return isMe === undefined ? takeName(reading, names.eaters, 'eater') : undefined;
  }),
);

/** The trip, if its place is typed, and a day of it: 'saturday' is the trip's Saturday. */
const tripAndDay = part<{ trip: string | undefined; day: string | undefined }>(
  'a day of the trip',
  (reading, names) => {
    const trip = wholeTrip(reading, names);
    const place = trip ?? names.trips[0];
    const startsOn = place === undefined ? undefined : names.tripDays(place)?.startsOn;
    return { trip, day: startsOn === undefined ? undefined : oneDay(() => startsOn).read(reading, names) };
  },
);

export default command({
  name: 'want',
  alsoCalled: ['wish', 'wants'],
  usage: '/want <meal> [saturday dinner] [for Noa] [trip]',
  summary: 'wish for a meal on a trip, for yourself or for somebody; "not" takes it back',
  examples: ['/want soup saturday dinner', '/want soup for Noa', '/want not soup', '/want'],
  help: [
    'The same wish by two people counts twice. Without a day it may be granted at any meal of the trip.',
  ],
  records: true,
  takes: {
    withdrawn: flag('not', 'withdraw', 'cancel', 'no'),
    when: tripAndDay,
    slotMeal,
    meal: optional(meal),
    eater,
  },
  run: (asked, house) => {
    const trip = tripMeant(house, asked.when.trip);
    const eaters = house.eaters.all();
    const wishes = house.trips.wishes(trip.id);
    if (asked.meal === undefined) {
      if (asked.when.day ?? asked.slotMeal ?? asked.eater)
        throw new Refusal('no-meal', 'I read when or for whom, but no meal that I know.');
      return { lines: list(trip, wishes, eaters), did: undefined, button: undefined, meals: [] };
    }
    const recipe = recipeNamed(house, asked.meal);
    const whose = whom(house, asked.eater);
    const slot = slotMeant(trip, asked.when.day, asked.slotMeal, whose);
    const mealKey = nameKey(recipe.name);
    const when = slot ? saySlot(slot) : 'any time';
    const same = wishes.find(
      (wish) =>
        wish.eater === whose.id &&
        wish.mealKey === mealKey &&
        (asked.withdrawn ? slot === undefined || wish.slot === slot.id : wish.slot === (slot?.id ?? null)),
    );
    if (asked.withdrawn) {
      if (!same)
        throw new Refusal('no-such-wish', `${whose.name} has no wish for ${recipe.name} on ${trip.place}.`);
      house.trips.dropWish(same.id);
      return {
        lines: [`Taken back: ${recipe.name} for ${whose.name}, ${trip.place}.`],
        did: `took back the wish for ${recipe.name} for ${whose.name}`,
        button: undefined,
        meals: [],
      };
    }
    if (same)
      throw new Refusal('wished-already', `${whose.name} wishes for ${recipe.name} already (${when}).`);
    house.trips.wish(
      trip.id,
      { eater: whose.id, mealKey, slot: slot?.id ?? null, byMember: house.member.id },
      house.nowMs,
    );
    const shown =
      mealsInStock(house).find((m) => m.name === recipe.name) ??
      mealOfRecipe(recipe, factsOfRecipe(house, recipe));
    const there = eaters.filter((e) =>
      trip.slots.some((s) => s.eaters.includes(e.id) && (!slot || s.id === slot.id)),
    );
    return {
      lines: [
        `Wish: ${recipe.name} for ${whose.name}, ${trip.place}, ${when}.`,
        ...togetherWith(
          house.trips
            .wishes(trip.id)
            .filter((w) => w.mealKey === mealKey && w.eater !== whose.id)
            .map((w) => eaters.find((e) => e.id === w.eater)?.name ?? '?'),
        ),
        covered(
          freeStock(house, recipe.name).filter((p) => p.checked),
          recipe.name,
        ),
        ...suits(there, shown, mealsInStock(house)),
      ],
      did: `wished for ${recipe.name} for ${whose.name} on ${trip.place}`,
      button: {
        label: 'Me too',
        request: `/want "${recipe.name}"${slot ? ` ${slot.onDay} ${slot.meal}` : ''} "${trip.place}" for me`,
      },
      meals: [],
    };
  },
  say: ({ lines, did, button, meals }) => ({
    group: lines.join('\n'),
    meals,
    ...(did === undefined ? {} : { did }),
    ...(button === undefined ? {} : { buttons: [button], buttonsForAll: true, buttonsStay: true }),
  }),
});

/** A trip is taken only when its place is typed in full, so that a meal's words are not mistaken for it. */
function wholeTrip(reading: Reading, names: Names): string | undefined {
  const before = reading.remarks.length;
  const named = names.trips.filter((place) => reading.text.toLowerCase().includes(place.toLowerCase()));
  const found = named.length > 0 ? takeName(reading, named, 'trip') : undefined;
  reading.remarks.length = before;
  return found;
}

function whom(house: House, named: string | undefined): Eater {
  const found =
    named === undefined
      ? ownEater(house)
      : house.eaters.all().find((e) => nameKey(e.name) === nameKey(named));
  if (!found)
    throw new Refusal(
      'no-eater',
      `${house.member.name}, you are not recorded as an eater yet: /eater me. Or say for whom: for Noa.`,
    );
  return found;
}

function slotMeant(trip: Trip, day: string | undefined, slotMealOf: string | undefined, whose: Eater) {
  if (day === undefined && slotMealOf === undefined) return undefined;
  const fitting = trip.slots.filter(
    (slot) =>
      (day === undefined || slot.onDay === day) && (slotMealOf === undefined || slot.meal === slotMealOf),
  );
  const theirs = fitting.filter((slot) => slot.eaters.includes(whose.id));
  if (fitting.length === 0)
    throw new Refusal(
      'no-such-slot',
      `${trip.place} has no such meal: it goes from ${trip.startsOn} to ${trip.endsOn}.`,
    );
  if (theirs.length === 0) throw new Refusal('not-there', `${whose.name} is not at ${saySlot(fitting[0]!)}.`);
  if (theirs.length > 1 && day === undefined) return undefined;
  if (theirs.length > 1)
    throw new Refusal('which-meal', `Which meal of that day: ${sayList(theirs.map((slot) => slot.meal))}?`);
  return theirs[0];
}

function togetherWith(others: readonly string[]): string[] {
  return others.length === 0
    ? []
    : [`Also wished for by ${sayList([...new Set(others)])}: it counts ${others.length + 1} times.`];
}

function covered(pouches: readonly { batch: number; no: number }[], name: string): string {
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

function list(
  trip: Trip,
  wishes: readonly { eater: number; mealKey: string; slot: number | null }[],
  eaters: readonly Eater[],
): string[] {
  if (wishes.length === 0) return [`No wishes for ${trip.place} yet. Make one: /want soup saturday dinner`];
  return [
    `Wishes for ${trip.place}:`,
    ...wishes.map((wish) => {
      const slot = trip.slots.find((s) => s.id === wish.slot);
      return `${wish.mealKey} for ${eaters.find((e) => e.id === wish.eater)?.name ?? '?'}${slot ? `, ${saySlot(slot)}` : ''}`;
    }),
  ];
}
