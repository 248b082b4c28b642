import { groupBy } from '#core/groups.ts';
import type { DayFed } from '#core/picks/fed.ts';
import { helpingAt } from '#core/picks/helpings.ts';
import type { DishPick, LevelName, PicksPlan, PicksResult } from '#core/picks/problem.ts';
import type { PouchReason, Shortage } from '#core/picks/why.ts';
import type { Eater, Slot } from '#core/records.ts';
import { readCode, sayCodes, sayList, sayMl } from '#words/say.ts';
import type { TripProblem } from '#house/trip-problem.ts';
import type { TripSums } from '#house/trip-sums.ts';
import { saySlot } from '#house/trips.ts';

/** What is opened at a meal, in words. */
export interface SlotPicked {
  readonly slot: Slot;
  /** The names of the dishes, each with what has to stand beside it. */
  readonly dishes: readonly string[];
  /** 'barley soup B4-1 and B4-2 for Ana and Ben, 1.5 portions each. Water 710 ml.' */
  readonly text: string;
}

/** The plan, meal by meal. */
export function pickWords(
  question: TripProblem,
  result: PicksResult,
  eaters: readonly Eater[],
  sums: TripSums,
  marked: (codes: readonly string[]) => string,
): SlotPicked[] {
  const { trip, dishes } = question;
  return result.slots.map((pick) => {
    const slot = trip.slots.find((s) => s.id === Number(pick.slot))!;
    const all = [...pick.dishes, ...(pick.beside ?? [])];
    if (all.length === 0) return { slot, dishes: [], text: 'nothing.' };
    const name = ({ meal }: Pick<DishPick, 'meal'>) => dishes.get(meal)?.name ?? meal;
    const pouches = (codes: readonly string[]) => `${sayCodes(codes.map(readCode))}${marked(codes)}`;
    const whom = (keys: readonly string[]) =>
      whomWords(
        keys.map((key) => nameOfKey(key, eaters)),
        slot.eaters.map((id) => nameOfKey(String(id), eaters)),
      );
    const said = pick.dishes.map(
      (dish) =>
        `${name(dish)} ${pouches(dish.pouches)} for ${whom(dish.eaters)}${helpingWords(question, pick.slot, dish)}`,
    );
    const beside = (pick.beside ?? []).map(
      (dish) =>
        `${name(dish)} ${pouches(dish.pouches)}${dish.eaters.length < slot.eaters.length ? ` for ${whom(dish.eaters)}` : ''}`,
    );
    const lines = [...said, ...(beside.length > 0 ? [`beside it ${sayList(beside)}`] : [])];
    return {
      slot,
      dishes: [...new Set(all.map((dish) => `${name(dish)}${marked(dish.pouches)}`))],
      text: `${lines.join('; ')}. ${waterOf(sums.waterOfSlot.get(slot.id) ?? 0)}.`,
    };
  });
}

const waterOf = (ml: number) => (ml > 0 ? `Water ${sayMl(ml)}` : 'Nothing to boil');

/** 'All', 'all but Cleo', or the names: whichever is short. */
function whomWords(names: readonly string[], there: readonly string[]): string {
  const without = there.filter((name) => !names.includes(name));
  if (without.length === 0 && there.length > 2) return 'all';
  return without.length <= 2 && names.length > 4 ? `all but ${sayList(without)}` : sayList(names);
}

const nameOfKey = (key: string, eaters: readonly Eater[]): string =>
  eaters.find((eater) => eater.id === Number(key))?.name ?? '?';

/** How much each gets, where it is not the portion: ', 1.5 portions each'. */
function helpingWords({ problem }: TripProblem, key: string, dish: DishPick): string {
  const slot = problem.slots.find((s) => s.key === key)!;
  const helpings = dish.eaters.map((eater) => helpingAt(problem, slot, eater, dish.meal).helping);
  const there = Math.min(1, dish.openedTwentieths / helpings.reduce((sum, n) => sum + n, 0));
  const portions = dish.eaters.map(
    (eater, i) => (there * helpings[i]!) / problem.eaters.find((e) => e.key === eater)!.portionTwentieths,
  );
  const [least, most] = [Math.min(...portions), Math.max(...portions)];
  if (least >= 0.85 && most <= 1.15) return '';
  const each = (n: number) => String(Number(n.toFixed(1)));
  const said = each(least) === each(most) ? each(most) : `${each(least)} to ${each(most)}`;
  return `, ${said} ${said === '1' ? 'portion' : 'portions'}${portions.length > 1 ? ' each' : ''}`;
}

const servings = (twentieths: number) => (twentieths / 20).toFixed(1);

/**
 * Why somebody goes without, those alike in one line; and dishes that fall short, where the lines of energy do not
 * tell it or there is more to it than that all is eaten.
 */
export function reasonLines(
  short: readonly Shortage[],
  question: TripProblem,
  eaters: readonly Eater[],
  fed: readonly DayFed[],
  plan: PicksPlan,
): string[] {
  const isTold = ({ eater, slot, reason }: Shortage): boolean => {
    const day = question.problem.slots.find((s) => s.key === slot)!.day;
    const used = reason.is === 'used up' || reason.is === 'too little left';
    return used && fed.some((one) => one.eater === eater && one.day === day && one.shortKcal > 0);
  };
  const partly = short.filter(
    (one, i) =>
      !one.unfed &&
      isWorthAWord(one, plan) &&
      !isTold(one) &&
      short.findIndex((other) => !other.unfed && other.slot === one.slot && other.meal === one.meal) === i,
  );
  return [
    ...unfedLines(short, question, eaters),
    ...partly.map((one) => {
      const dish = one.meal === null ? '' : ` of ${question.dishes.get(one.meal)?.name ?? one.meal}`;
      return `${sayIfFound(question, one.slot)} is ${servings(one.shortTwentieths)} servings short${dish}: ${whyShort(one, question, eaters)}.`;
    }),
  ];
}

/** A dish that lacks less than a quarter of what its eaters need is no shortage, so long as the energy is there. */
function isWorthAWord({ slot, meal, shortTwentieths }: Shortage, plan: PicksPlan): boolean {
  const dish = plan.slots.find((s) => s.slot === slot)?.dishes.find((d) => d.meal === meal);
  return dish !== undefined && 4 * shortTwentieths > dish.openedTwentieths + shortTwentieths;
}

/** Who has nothing to eat, at which meals and why; people and meals with the same reason share a line. */
function unfedLines(short: readonly Shortage[], question: TripProblem, eaters: readonly Eater[]): string[] {
  const unfed = short.filter((one) => one.unfed);
  const why = (one: Shortage) => whyShort(one, question, eaters);
  const ofPerson = groupBy(unfed, (one) => `${one.eater} ${why(one)}`);
  const people = [...ofPerson.values()].map((alike) => ({
    name: nameOf(alike[0]!, eaters),
    at: sayList(alike.map((one) => sayIfFound(question, one.slot))),
    why: why(alike[0]!),
  }));
  return [...groupBy(people, (one) => `${one.at} ${one.why}`).values()].map((alike) => {
    const { at, why } = alike[0]!;
    return `Nothing for ${sayList(alike.map((one) => one.name))} at ${at}: ${why}.`;
  });
}

const nameOf = (shortage: Shortage, eaters: readonly Eater[]) =>
  eaters.find((eater) => eater.id === Number(shortage.eater))?.name ?? '?';

function sayIfFound({ trip }: TripProblem, key: string): string {
  const slot = trip.slots.find((s) => s.id === Number(key));
  return slot ? saySlot(slot) : key;
}

const mealAt = ({ trip }: TripProblem, key: string): string =>
  trip.slots.find((slot) => slot.id === Number(key))?.meal ?? 'it';

/** Why a meal is short for somebody, to stand after a colon. */
function whyShort(shortage: Shortage, question: TripProblem, eaters: readonly Eater[]): string {
  const { dishes, problem } = question;
  const name = nameOf(shortage, eaters);
  const { reason } = shortage;
  switch (reason.is) {
    case 'nothing in stock':
      return 'nothing is in stock';
    case 'nothing clear': {
      const unknown =
        reason.unknown.length > 0
          ? `; unknown are ${sayList(reason.unknown.map((m) => dishes.get(m)?.name ?? m))}`
          : '';
      return `no meal in stock is clear for ${name}${reason.food ? `, most hold ${reason.food}` : ''}${unknown}`;
    }
    case 'for other meals': {
      const meal = mealAt(question, shortage.slot);
      const [other] = reason.meals;
      const mend =
        other === undefined
          ? ''
          : `; "${dishes.get(other)?.name ?? other} is for ${meal} too" would change that`;
      return `nothing that is clear is for ${meal}${mend}`;
    }
    case 'not wanted':
      return `${sayList(reason.meals.map((m) => dishes.get(m)?.name ?? m))} is not to be there, as was said`;
    case 'kept apart':
      return `${sayList(reason.meals.map((m) => dishes.get(m)?.name ?? m))} must not be near ${sayList(reason.near)}`;
    case 'too much sodium':
      return `what is clear would pass ${name}'s sodium limit of the day`;
    case 'past best-by':
      return `what is clear is past its best-by then: ${sayList([...new Set(reason.lots.map((lot) => dishes.get(lot.meal)?.name ?? lot.meal))])}`;
    case 'promised':
      return `what is clear is kept for ${sayList(reason.trips)}`;
    case 'used up':
      return reason.slots.length > 3
        ? 'what is clear is used at the other meals'
        : `what is clear is used at ${sayList(reason.slots.map((s) => sayIfFound(question, s.slot)))}`;
    case 'too little left':
      return `only ${servings(reason.leftTwentieths)} servings of what is clear are left, too little for ${problem.eaters.length > 1 ? 'a dish' : name}`;
  }
}

const levelWords: Readonly<Record<LevelName, string>> = {
  'energy short': 'somebody would get less to eat',
  unfed: 'somebody more would go without',
  'worst off': 'whoever goes without most would miss more meals',
  wishes: 'a wish would not be granted',
  dislikes: 'somebody would get what they dislike',
  moved: 'more of what is kept would change',
  waste: 'more food would be left over',
  expiring: 'food that will not keep would stay at home',
  variety: 'somebody would get the same again too soon, or there would be more dishes at one table',
  changes: 'more of the plan shown before would change',
  'sodium and energy': "the day's sodium or energy would fit less well",
  'exact waste': 'a little more food would be left over',
  'oldest month first': 'an older pouch would stay at home',
  'dry weight': 'the packs would be heavier',
};

/** Why a pouch was chosen: what would get worse without it. */
export function whyWords(
  code: string,
  why: PouchReason | undefined,
  question: TripProblem,
  plan: PicksPlan,
): string {
  const opens = (slot: PicksPlan['slots'][number]) =>
    [...slot.dishes, ...(slot.beside ?? [])].some((dish) => dish.pouches.includes(code));
  const pick = plan.slots.find(opens);
  const slot = pick && question.trip.slots.find((s) => s.id === Number(pick.slot));
  if (slot && pick.beside?.some((dish) => dish.pouches.includes(code)))
    return `${code} goes beside what is eaten at ${saySlot(slot)}, the oldest of its kind.`;
  if (!slot || !why) return `${code} is not among the picks for ${question.trip.place}.`;
  if (why.level === null)
    return `${code} is for ${saySlot(slot)}; another choice without it would be just as good.`;
  return `${code} is for ${saySlot(slot)}: without it ${levelWords[why.level]}${why.proven ? '' : ', as far as I found'}.`;
}
