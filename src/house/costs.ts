import {
  type CostSum,
  type Priced,
  type RunEnergy,
  costOf,
  costSum,
  pricePerKg,
  runEnergy,
} from '#core/costs.ts';
import { pouchFacts } from '#core/meal.ts';
import type { Batch, Pouch, RecipeLine } from '#core/records.ts';
import { Refusal } from '#core/refusal.ts';
import { runningMs, stopsOf } from '#core/running.ts';
import { foldName } from '#foods/line.ts';
import type { Price } from '#store/prices.ts';
import type { PriceTold } from '#words/price-parts.ts';
import { sayList } from '#words/say.ts';
import { batchNumbered, factsOfBatch } from './figures.ts';
import { besideNow } from './forecast.ts';
import type { House } from './house.ts';
import { resolver } from './recipe-text.ts';

const hourMs = 3_600_000;

/** Things that are no food and have one price each. */
const things: readonly (readonly [key: string, called: string, per: Price['per'], words: RegExp])[] = [
  [
    'electricity',
    'electricity',
    'kWh',
    /^(?:(?:the )?(?:electricity|power|current|energy)|1 kwh(?: .*)?|.* kwh)$/i,
  ],
  ['pouch', 'a pouch', 'piece', /\b(?:pouch(?:es)?|bags?)\b/i],
  ['absorber', 'an absorber', 'piece', /\babsorbers?\b/i],
];

const countIn = (line: string): number => Number(/^\d+(?:[.,]\d+)?/.exec(line)?.[0].replace(',', '.') ?? 1);

/**
 * A price as it is kept: for a kg, a kWh or a piece.
 * @throws Refusal 'other-money' beside prices in another currency; 'no-weight' where the weight of what was named is not
 * known; 'per-what' where no amount was said
 */
export function priceMeant(house: House, told: Extract<PriceTold, { is: 'price' }>): Price {
  const currency = oneCurrency(house, told.currency);
  const thing = things.find(([, , , words]) => words.test(told.line));
  if (thing) {
    const [key, called, per] = thing;
    return { key, called, per, amount: told.price / countIn(told.line), currency };
  }
  if (told.isBare)
    throw new Refusal(
      'per-what',
      `${told.line} ${told.price} for how much: "per kg", "for 400 g", "for 10"?`,
    );
  const line = resolver(house)(told.line);
  if (line.is !== 'weighed' || line.grams === null || line.food === null)
    throw new Refusal('no-weight', `I do not know what ${told.line} weighs. Say it by weight: "for 400 g".`);
  return {
    key: foldName(line.called),
    called: line.called,
    per: 'kg',
    amount: pricePerKg(told.price, line.grams),
    currency,
  };
}

/** Prices add up only in one money. */
export function oneCurrency(house: House, said: string): string {
  const known = house.prices.all().find(({ currency }) => currency !== '')?.currency;
  if (said === '' || known === undefined || known === said) return said === '' ? (known ?? '') : said;
  throw new Refusal('other-money', `Your other prices are in ${known}; I do not change ${said} into it.`);
}

/** The thing whose price is to be forgotten. */
export const thingKey = (house: House, words: string): string => {
  const thing = things.find(([, , , looks]) => looks.test(words));
  return thing ? thing[0] : foldName(resolver(house)(`100 g ${words}`).called);
};

const pricesOf = (house: House): ReadonlyMap<string, Price> =>
  new Map(house.prices.all().map((price) => [price.key, price]));

const isWater = ({ called }: RecipeLine): boolean => called === 'water';

/** What a recipe's lines cost, with what has no price. */
export function ingredientsCost(house: House, lines: readonly RecipeLine[]): CostSum {
  const prices = pricesOf(house);
  return costSum(
    lines.map((line): Priced => {
      if (isWater(line)) return { called: line.called, cost: 0 };
      const price = prices.get(foldName(line.called));
      const isKnown = price !== undefined && line.state === 'weighed' && line.grams !== null;
      return { called: line.called, cost: isKnown ? costOf(line.grams, price.amount) : null };
    }),
  );
}

/** What drying a batch took: its part, by water, of the run it lay in; undefined where nobody can say. */
export function dryingEnergy(house: House, batch: Batch): RunEnergy | undefined {
  const run = [batch, ...besideNow(house, batch)];
  const waters = run.map((one) => {
    const { wetG, dryG } = factsOfBatch(house, one);
    return dryG === null ? null : wetG - dryG;
  });
  if (batch.mix !== null || waters.some((g) => g === null)) return undefined;
  const startMs = Math.min(...run.map(({ loadedAtMs }) => loadedAtMs));
  const endMs = Math.max(...run.map(({ weighings }) => weighings.at(-1)!.atMs));
  const ranHours = (runningMs(endMs, stopsOf(batch.events)) - startMs) / hourMs;
  const energy = runEnergy({ startMs, endMs, ranHours }, house.prices.readings(), house.settings.dryerWatts);
  const allG = waters.reduce<number>((sum, g) => sum + g!, 0);
  return energy && { ...energy, kwh: (energy.kwh * waters[0]!) / allG };
}

/** One line of what a pouch costs. */
export interface CostLine {
  readonly what: 'ingredients' | 'drying' | 'pouch and absorber';
  readonly sum: number;
  /** By the dryer's plate: the most it can have been. */
  readonly atMost: boolean;
}

export interface PouchCost {
  readonly lines: readonly CostLine[];
  readonly sum: number;
  readonly currency: string;
  /** Foods without a price: the sum is too low by them. */
  readonly unpriced: readonly string[];
}

/** What a pouch costs, as far as prices were told; undefined where none was. */
export function pouchCost(house: House, pouch: Pouch): PouchCost | undefined {
  const prices = pricesOf(house);
  if (prices.size === 0) return undefined;
  const batch = batchNumbered(house, pouch.batch);
  const parts = batch.mix
    ? batch.mix.parts.map(({ batch: no, eachG }) => partCost(house, batchNumbered(house, no), eachG))
    : [partCost(house, batch, pouch.sealedG)];
  const goods = batch.mix ? [ingredientsCost(house, batch.mix.goods)] : [];
  const food = [...parts.map(({ food: one }) => one), ...goods];
  const kwh = parts.reduce<number | null>(
    (sum, { energy }) => (sum === null || !energy ? null : sum + energy.kwh),
    0,
  );
  const perKwh = prices.get('electricity')?.amount;
  const packed = ['pouch', ...pouch.absorbers.flatMap(({ count }) => Array<string>(count).fill('absorber'))];
  const lines: CostLine[] = [
    { what: 'ingredients', sum: food.reduce((sum, one) => sum + one.sum, 0), atMost: false },
    ...(kwh === null || perKwh === undefined
      ? []
      : [
          {
            what: 'drying' as const,
            sum: kwh * perKwh,
            atMost: parts.some(({ energy }) => energy?.by === 'plate'),
          },
        ]),
    ...(prices.has('pouch') || prices.has('absorber')
      ? [
          {
            what: 'pouch and absorber' as const,
            sum: packed.reduce((sum, key) => sum + (prices.get(key)?.amount ?? 0), 0),
            atMost: false,
          },
        ]
      : []),
  ];
  return {
    lines,
    sum: lines.reduce((sum, line) => sum + line.sum, 0),
    currency: [...prices.values()].find(({ currency }) => currency !== '')?.currency ?? '',
    unpriced: [...new Set(food.flatMap(({ unpriced }) => unpriced))],
  };
}

/** What some dried food of a batch costs, and what drying it took. */
function partCost(
  house: House,
  batch: Batch,
  dryG: number,
): { food: CostSum; energy: RunEnergy | undefined } {
  const facts = factsOfBatch(house, batch);
  const whole = ingredientsCost(house, batch.recipe.lines);
  const ofAll = facts.dryG === null ? 0 : dryG / facts.dryG;
  const servings = facts.dryG === null ? 0 : pouchFacts(dryG, { ...facts, dryG: facts.dryG }).servings;
  const energy = dryingEnergy(house, batch);
  return {
    food: { sum: (whole.sum * servings) / batch.recipe.servings, unpriced: whole.unpriced },
    energy: energy && { ...energy, kwh: energy.kwh * ofAll },
  };
}

/** A sum of money; two figures behind the point. */
export const sayMoney = (sum: number, currency: string): string =>
  `${sum.toFixed(2)}${currency === '' ? '' : ` ${currency}`}`;

/** 'no price for onions and stock', short enough for a phone. */
export function unpricedPhrase(unpriced: readonly string[]): string {
  const shown = unpriced.slice(0, 3);
  const more = unpriced.length - shown.length;
  return `no price for ${sayList([...shown, ...(more > 0 ? [`${more} more`] : [])])}`;
}
