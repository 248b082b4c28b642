import { Refusal } from '#core/refusal.ts';
import { type LineResult, foldName, resolveLine } from '#foods/line.ts';
import { isMetric } from '#foods/amount.ts';
import { unitOf, type Unit } from '#foods/units.ts';
import { Ambiguous } from '#words/reading.ts';
import { sayList, sayNumber } from '#words/say.ts';
import type { House } from './house.ts';

/** What '1 tin of tomatoes' names: a unit or vessel, and the food in it; a food alone is counted by the piece. */
export interface Taught {
  readonly unit: string;
  readonly food: string | null;
}

export const sayTaught = ({ unit, food }: Taught): string =>
  food === null ? unit : unit === 'each' ? food : `${unit} of ${food}`;

const foodOf = (house: House, words: string): LineResult => resolveLine(`100 g ${words}`, house.foods);

/**
 * The food that some words mean.
 * @param request how the request goes on with another wording, for the buttons
 * @throws Ambiguous with the foods it may be, Refusal 'no-such-food'
 */
export function foodMeant(house: House, words: string, request: (called: string) => string): LineResult {
  const found = foodOf(house, words);
  if (found.is === 'weighed' && found.food) return found;
  if (found.choices.length > 0)
    throw new Ambiguous(
      `Which food is "${words}"?`,
      found.choices.map(({ label }) => ({ label, request: request(label) })),
    );
  throw new Refusal('no-such-food', `I know no food called "${words}".`);
}

const noun = (unit: Unit) => unit.name;

/**
 * Takes 'tin of tomatoes', 'tomato tin', 'mug', 'onion' apart.
 * @param isVolume whether an amount in ml was told: a mug holds it, an onion does not
 * @throws Refusal for measures that the law fixes, and for words that are neither vessel nor food
 */
export function taughtBy(house: House, what: string, isVolume: boolean): Taught {
  const words = what.split(' ');
  const first = unitOf(words[0]!.toLowerCase());
  const last = unitOf(words.at(-1)!.toLowerCase());
  const fixed = (unit: Unit) => {
    if (unit.grams !== undefined || isMetric(unit))
      throw new Refusal('fixed-unit', `One ${unit.name} is the same in every house.`);
    return unit;
  };
  const of = / (?:full )?of /i.exec(what);
  if (of) {
    const [vessel, food] = [what.slice(0, of.index), what.slice(of.index + of[0].length)];
    const unit = unitOf(vessel.toLowerCase());
    return { unit: unit ? noun(fixed(unit)) : oneWord(vessel), food: food.toLowerCase() };
  }
  if (words.length === 1 && first) return { unit: noun(fixed(first)), food: null };
  const whole = foodOf(house, what);
  if (words.length > 1 && (whole.is !== 'weighed' || first?.holds || last?.holds)) {
    const unit = first ?? last;
    if (unit) {
      const food = (first ? words.slice(1) : words.slice(0, -1)).join(' ').toLowerCase();
      return { unit: noun(fixed(unit)), food };
    }
  }
  if (!isVolume) return { unit: 'each', food: what.toLowerCase() };
  if (resolveLine(`1 ${what}`, house.foods).is === 'weighed')
    throw new Refusal('no-vessel', `"${what}" is a food: tell me what one weighs, in grams.`);
  return { unit: oneWord(what), food: null };
}

function oneWord(vessel: string): string {
  const word = vessel.trim().toLowerCase();
  if (/^\p{L}[\p{L}'-]{1,24}$/u.test(word)) return word;
  throw new Refusal('no-vessel', `"${vessel}" is no measure that I can keep: one word such as mug is.`);
}

const [leastG, mostG, leastMl, mostMl] = [0.05, 20_000, 0.5, 20_000];

/** @throws Refusal 'out-of-range' */
export function plausible(grams: number | null, ml: number | null): void {
  const isFine = grams === null ? ml! >= leastMl && ml! <= mostMl : grams >= leastG && grams <= mostG;
  if (!isFine)
    throw new Refusal(
      'out-of-range',
      `I can keep ${leastG} g to ${mostG / 1000} kg, or ${leastMl} ml to ${mostMl / 1000} l; I read ${grams === null ? `${sayNumber(ml!)} ml` : `${sayNumber(grams)} g`}.`,
    );
}

/** Everything learnt, a line each. */
export function learntLines(house: House): string[] {
  const { learnt } = house;
  const meals = new Map(house.recipes.names().map((name) => [foldName(name), name]));
  const amount = (grams: number | null, ml: number | null) =>
    grams === null ? `${sayNumber(ml!)} ml` : `${sayNumber(grams)} g`;
  return [
    ...(house.told.told().includes('cupMl') ? [`cup: ${sayNumber(house.settings.cupMl)} ml`] : []),
    ...learnt.measures().map((one) => `${sayTaught(one)}: ${amount(one.grams, one.ml)}`),
    ...[...learnt.aliases()].map(([words, key]) => `"${words}" means ${meals.get(foldName(key)) ?? key}`),
    ...[...learnt.foods()].map(([words, means]) => `"${words}" means ${means}`),
  ];
}

/** Takes back one thing learnt. @returns what it was. @throws Refusal 'not-learnt', naming what is */
export function forget(house: House, words: string): string {
  const key = foldName(words);
  const { learnt } = house;
  const measure = learnt.measures().find((one) => foldName(sayTaught(one)) === key);
  if (measure && learnt.forgetMeasure(measure.id)) return sayTaught(measure);
  const alias = [...learnt.aliases().keys()].find((one) => foldName(one) === key);
  if (alias !== undefined && learnt.forgetAlias(alias)) return `"${alias}"`;
  const food = [...learnt.foods().keys()].find((one) => foldName(one) === key);
  if (food !== undefined && learnt.forgetFood(food)) return `"${food}"`;
  const known = learntLines(house);
  throw new Refusal(
    'not-learnt',
    `I have learnt nothing of "${words}". ${known.length > 0 ? `What I know: ${sayList(known.slice(0, 8))}.` : 'Nothing was taught yet.'}`,
  );
}
