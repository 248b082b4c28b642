import { groupBy } from '#core/groups.ts';
import { boilingPointC } from '#core/boiling.ts';
import { mergedGoods } from '#core/camp.ts';
import { simmerMinutes } from '#core/fuel.ts';
import { pouchFacts } from '#core/meal.ts';
import type { Eater, HeldPouch, Trip } from '#core/records.ts';
import type { Choice, Page } from '#core/talk.ts';
import { correctionFor } from '#house/corrections.ts';
import { howBatchEaten } from '#house/eating.ts';
import { batchSeen } from '#house/figures.ts';
import type { House } from '#house/house.ts';
import { marksOf } from '#house/marks.ts';
import type { HeldWithPouch } from '#house/packing.ts';
import { minutesAt, soakOf } from '#house/soaking.ts';
import { sumInShort, tripSums } from '#house/trip-sums.ts';
import { altitudeOf, sayDayOf } from '#house/trips.ts';
import { sayGoods } from '#words/camp-words.ts';
import { burnCaution } from '#words/phrases.ts';
import { sayCode, sayCodes, sayList, sayPourInShort, sayPourShort } from '#words/say.ts';
import { servedOf } from './paper-facts.ts';

type Slot = Trip['slots'][number];

/** What is still kept for a trip, and all that ever was. */
export interface KeptNow {
  readonly open: readonly HeldWithPouch[];
  readonly ever: readonly HeldPouch[];
}

const capital = (word: string) => `${word[0]!.toUpperCase()}${word.slice(1)}`;
const named = (eaters: readonly Eater[], ids: readonly number[]): string[] =>
  eaters.filter(({ id }) => ids.includes(id)).map(({ name }) => name);

/** A day of a trip, and what holds for the days from it on. */
export interface DayTold extends Page {
  readonly common: readonly string[];
  readonly why: readonly string[];
}

/** A day of a trip as it is eaten: each meal with its pouches, water and soak, who has nothing, what to add. */
export function dayOfTrip(house: House, trip: Trip, onDay: string, kept: KeptNow): DayTold {
  const eaters = house.eaters.all();
  const slots = trip.slots.filter((slot) => slot.onDay === onDay && slot.eaters.length > 0);
  const meals = slots.map((slot) => mealAtSlot(house, trip, slot, kept, eaters));
  const isToCome = kept.open.filter(({ held }) => dayOfSlot(trip, held.slot) >= onDay);
  const toCome = sumInShort(house, trip, tripSums(house, servedOf(trip, isToCome)));
  const boils = meals.some(({ waterMl }) => waterMl > 0);
  return {
    label: sayDayOf(onDay).split(' ').slice(0, 2).join(' '),
    group: [
      `${trip.place}, ${sayDayOf(onDay)}:`,
      ...(meals.length === 0 ? ['No meal of ours that day.'] : meals.flatMap(({ lines }) => lines)),
    ].join('\n'),
    why: meals.flatMap(({ why }) => why),
    common: [
      ...(boils
        ? [`Water boils at ${boilingPointC(altitudeOf(trip, house)).toFixed(1)} °C there. ${burnCaution}`]
        : []),
      ...(toCome.length === 0 ? [] : [`From that day on: ${toCome[0]!}`]),
    ],
  };
}

const dayOfSlot = (trip: Trip, slot: number): string => trip.slots.find(({ id }) => id === slot)!.onDay;

interface MealTold {
  readonly lines: readonly string[];
  readonly why: readonly string[];
  readonly waterMl: number;
}

function mealAtSlot(
  house: House,
  trip: Trip,
  slot: Slot,
  { open, ever }: KeptNow,
  eaters: readonly Eater[],
): MealTold {
  const here = open.filter(({ held }) => held.slot === slot.id);
  const head = capital(slot.meal);
  if (here.length === 0) {
    const had = ever.some((held) => held.slot === slot.id);
    const who = sayList(named(eaters, slot.eaters));
    return {
      lines: [had ? `${head}: opened.` : `${head}: nothing is kept, for ${who}.`],
      why: [],
      waterMl: 0,
    };
  }
  const dishes = [...groupBy(here, ({ pouch, held }) => `${pouch.batch} ${held.eaters.join()}`).values()].map(
    (some) => dish(house, trip, slot, some, eaters),
  );
  const without = slot.eaters.filter((id) => !here.some(({ held }) => held.eaters.includes(id)));
  return {
    lines: [
      ...dishes.flatMap(({ lines }, i) => [`${i === 0 ? head : 'And'}: ${lines[0]!}`, ...lines.slice(1)]),
      ...(without.length === 0 ? [] : [`Nothing for ${sayList(named(eaters, without))}.`]),
    ],
    why: dishes.flatMap(({ why }) => why),
    waterMl: dishes.reduce((sum, { waterMl }) => sum + waterMl, 0),
  };
}

/** Pouches of one batch for the same people. */
function dish(
  house: House,
  trip: Trip,
  slot: Slot,
  some: readonly HeldWithPouch[],
  eaters: readonly Eater[],
): MealTold {
  const { settings } = house;
  const [first] = some as [HeldWithPouch];
  const { batch, facts } = batchSeen(house, first.pouch.batch);
  const learnt = correctionFor(house, batch);
  const isSettled = learnt.ratings > 0 || batch.isRaw;
  const figures = some.map(({ pouch }) =>
    pouchFacts(pouch.dryG, { ...facts, dryG: facts.dryG! }, learnt.correction),
  );
  const waterMl = figures.reduce((sum, one) => sum + one.waterMl, 0);
  const isDry = howBatchEaten(house, batch).isDry || waterMl === 0;
  const everybody = first.held.eaters.length === slot.eaters.length;
  const who = everybody ? '' : `, for ${sayList(named(eaters, first.held.eaters))}`;
  const camp = mergedGoods(figures.flatMap((one) => one.camp));
  const marks = [...new Set(some.flatMap(({ pouch }) => marksOf(house, pouch)))];
  const minutes = minutesAt(altitudeOf(trip, house), soakOf(house, batch));
  return {
    waterMl: isDry ? 0 : waterMl,
    lines: [
      `${first.pouch.meal}, ${sayCodes(some.map(({ pouch }) => pouch))}${who}.`,
      ...(marks.length === 0 ? [] : [`${marks.join('. ')}.`]),
      isDry
        ? 'Eaten dry.'
        : batch.isRaw
          ? `RAW: soak in ${sayPourShort(waterMl, true, settings)}, ${minutes} min, then cook it ${simmerMinutes} min in a pot.`
          : `${sayPourInShort(waterMl, isSettled)} boiling, ${minutes} min.`,
      ...(camp.length === 0 ? [] : [`Add ${sayGoods(camp, settings.units)}.`]),
    ],
    why: isDry
      ? []
      : some.map(
          ({ pouch }, i) => `${sayCode(pouch)}: ${sayPourShort(figures[i]!.waterMl, isSettled, settings)}.`,
        ),
  };
}

/** A tap for each meal that is still to be opened that day. */
export function eatenButtons(trip: Trip, onDay: string, { open }: KeptNow): Choice[] {
  return trip.slots
    .filter((slot) => slot.onDay === onDay)
    .flatMap((slot): Choice[] => {
      const codes = open.filter(({ held }) => held.slot === slot.id).map(({ pouch }) => sayCode(pouch));
      return codes.length === 0
        ? []
        : [{ label: `${capital(slot.meal)} eaten`, request: `/use ${codes.join(' ')}` }];
    });
}
