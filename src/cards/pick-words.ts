import { groupBy } from '#core/groups.ts';
import type { LevelName, PicksPlan, PicksResult } from '#core/picks/problem.ts';
import type { PouchReason, Shortage } from '#core/picks/why.ts';
import type { Eater } from '#core/records.ts';
import { readCode, sayCodes, sayList, sayMl } from '#words/say.ts';
import type { TripProblem } from '#house/trip-problem.ts';
import type { TripSums } from '#house/trip-sums.ts';
import { saySlot } from '#house/trips.ts';

/** 'Fri 12 Jun dinner: barley soup B4-1 and B4-2 for Ana and Ben; 710 ml.' */
export function pickLines(
  { trip, dishes }: TripProblem,
  result: PicksResult,
  eaters: readonly Eater[],
  sums: TripSums,
  marked: (codes: readonly string[]) => string,
): string[] {
  const name = (key: string) => eaters.find((eater) => eater.id === Number(key))?.name ?? '?';
  return result.slots.map((pick) => {
    const slot = trip.slots.find((s) => s.id === Number(pick.slot))!;
    if (pick.dishes.length === 0) return `${saySlot(slot)}: nothing.`;
    const said = pick.dishes.map(
      (dish) =>
        `${dishes.get(dish.meal)?.name ?? dish.meal} ${sayCodes(dish.pouches.map(readCode))}${marked(dish.pouches)} for ${sayList(dish.eaters.map(name))}`,
    );
    return `${saySlot(slot)}: ${said.join('; ')}. ${waterOf(sums.waterOfSlot.get(slot.id) ?? 0)}.`;
  });
}

const waterOf = (ml: number) => (ml > 0 ? `Water ${sayMl(ml)}` : 'Nothing to boil');

const servings = (twentieths: number) => (twentieths / 20).toFixed(1);

/**
 * What is short, and why: who goes without, those alike in one line; dishes that fall short because the rest is eaten
 * at other meals share a line, as the stock is simply too small.
 */
export function reasonLines(
  short: readonly Shortage[],
  question: TripProblem,
  eaters: readonly Eater[],
): string[] {
  const dishName = (key: string) => question.dishes.get(key)?.name ?? key;
  const slotOf = (key: string) => sayIfFound(question, key);
  const partly = short.filter(
    (one, i) =>
      !one.unfed &&
      short.findIndex((other) => !other.unfed && other.slot === one.slot && other.meal === one.meal) === i,
  );
  const usedUp = partly.filter((one) => one.reason.is === 'used up');
  const summed = usedUp.length < 2 ? [] : usedUp;
  const lines = [
    ...unfedLines(short, question, eaters),
    ...partly
      .filter((one) => !summed.includes(one))
      .map((one) => {
        const dish = one.meal === null ? '' : ` of ${dishName(one.meal)}`;
        return `Short: ${slotOf(one.slot)} is ${servings(one.shortTwentieths)} servings short${dish}: ${whyShort(one, question, eaters)}.`;
      }),
  ];
  if (summed.length === 0) return lines;
  const all = summed.reduce((sum, one) => sum + one.shortTwentieths, 0);
  const said = summed.map(
    (one) => `${slotOf(one.slot)} ${servings(one.shortTwentieths)} of ${dishName(one.meal ?? '')}`,
  );
  return [
    ...lines,
    `Short by ${servings(all)} servings in all, as everything clear is eaten at the other meals: ${said.join('; ')}.`,
  ];
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
    return `Short: ${sayList(alike.map((one) => one.name))} ${alike.length > 1 ? 'have' : 'has'} nothing at ${at}: ${why}.`;
  });
}

const nameOf = (shortage: Shortage, eaters: readonly Eater[]) =>
  eaters.find((eater) => eater.id === Number(shortage.eater))?.name ?? '?';

function sayIfFound({ trip }: TripProblem, key: string): string {
  const slot = trip.slots.find((s) => s.id === Number(key));
  return slot ? saySlot(slot) : key;
}

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
    case 'kept apart':
      return `${sayList(reason.meals.map((m) => dishes.get(m)?.name ?? m))} must not be near ${sayList(reason.near)}`;
    case 'too much sodium':
      return `what is clear would pass ${name}'s sodium limit of the day`;
    case 'past best-by':
      return `what is clear is past its best-by then: ${sayList([...new Set(reason.lots.map((lot) => dishes.get(lot.meal)?.name ?? lot.meal))])}`;
    case 'promised':
      return `what is clear is kept for ${sayList(reason.trips)}`;
    case 'used up':
      return `what is clear is used at ${sayList(reason.slots.map((s) => sayIfFound(question, s.slot)))}`;
    case 'too little left':
      return `only ${servings(reason.leftTwentieths)} servings of what is clear are left, too little for ${problem.eaters.length > 1 ? 'a dish' : name}`;
  }
}

const levelWords: Readonly<Record<LevelName, string>> = {
  'units short': 'more would be missing',
  unfed: 'somebody more would go without',
  'worst off': 'whoever goes without most would miss more meals',
  wishes: 'a wish would not be granted',
  dislikes: 'somebody would get what they dislike',
  waste: 'more food would be left over',
  'oldest first': 'older food would stay at home',
  variety: 'somebody would get the same again too soon',
  'sodium and energy': "the day's sodium or energy would fit less well",
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
  const pick = plan.slots.find((slot) => slot.dishes.some((dish) => dish.pouches.includes(code)));
  const slot = pick && question.trip.slots.find((s) => s.id === Number(pick.slot));
  if (!slot || !why) return `${code} is not among the picks for ${question.trip.place}.`;
  if (why.level === null)
    return `${code} is for ${saySlot(slot)}; another choice without it would be just as good.`;
  return `${code} is for ${saySlot(slot)}: without it ${levelWords[why.level]}${why.proven ? '' : ', as far as I found'}.`;
}
