import { isDone, previewed, shopList } from '#cards/shop-list.ts';
import { planned } from '#chat/command.ts';
import { type DayFed, fedByDay } from '#core/picks/fed.ts';
import { Refusal } from '#core/refusal.ts';
import type { ShopNeed } from '#core/shopping.ts';
import { factorFromServings } from '#core/scaling.ts';
import type { Reply } from '#core/talk.ts';
import { type CookingPlan, cookingPlan } from '#house/cooking.ts';
import { recipeNamed } from '#house/figures.ts';
import type { House } from '#house/house.ts';
import { servedBy } from '#house/served.ts';
import { atHome, itemsNamed, itemsNumbered, listOfNow } from '#house/shop-changes.ts';
import { shopNeeds, type ToShop } from '#house/shopping.ts';
import { tripProblem } from '#house/trip-problem.ts';
import { campOfTrip, tripSums } from '#house/trip-sums.ts';
import { tripMeant } from '#house/trips.ts';
import type { ShoppingList } from '#house/shop-changes.ts';
import { type MealToShop, type ShopAsked, shopAsked, type ShopMode } from '#words/shop-parts.ts';
import { Ambiguous } from '#words/reading.ts';
import { sayCount, sayList, sayNumber } from '#words/say.ts';

interface Outcome {
  readonly said: Reply;
}

export default planned({
  name: 'shop',
  alsoCalled: ['shopping', 'groceries'],
  usage: '/shop [trip] · /shop <meal> x2, <meal> for 8 · /shop home 500 g lentils · /shop got onions',
  summary: 'what to buy for what is to be cooked, in tins, packs and pieces, ticked off one by one',
  examples: [
    '/shop barley soup x2',
    '/shop Heron Lake',
    '/shop home 200 g pearl barley',
    '/shop got carrots',
    '/shop done',
  ],
  help: [
    'Without a meal it is for what the next trip still lacks, as /cook has it; the list stays as it was made until "/shop new" or "/shop done".',
    '"home 500 g lentils, onions" takes off what is at home; without an amount all of it is.',
  ],
  records: true,
  live: (of, page, house) => {
    const list = house.shopping.byId(of);
    if (!list) return undefined;
    const isOver = house.shopping.current()?.id !== of;
    const { page: _, ...said } = shopList(house, list, page);
    return isOver
      ? { said: { group: `The list for ${list.madeFor} is put away.` }, isOver }
      : { said, isOver };
  },
  takes: { asked: shopAsked },
  atOnce: {
    when: ({ asked }) => asked !== undefined && asked.is !== 'show' && asked.is !== 'trip',
    run: ({ asked }, house): Outcome => atOnce(house, asked!),
  },
  look: ({ asked: typed }, house) => {
    const asked: ShopAsked = typed ?? { is: 'show', page: 1 };
    const page = asked.is === 'show' ? asked.page : 1;
    const place = asked.is === 'trip' ? asked.place : undefined;
    const mode: ShopMode = asked.is === 'trip' ? asked.mode : 'make';
    const isLooked = asked.is === 'show' || (mode === 'preview' && place === undefined);
    if (isLooked && house.shopping.current()) return { is: 'there' as const, page };
    return { is: 'plan' as const, mode, question: tripProblem(house, tripMeant(house, place)) };
  },
  work: async (looked, { picks }) =>
    looked.is === 'there' ? looked : { ...looked, result: await picks.solvePicks(looked.question.problem) },
  keep: (worked, _, house): Outcome => {
    if (worked.is === 'there') return { said: shown(house, listOfNow(house), worked.page) };
    const { question, result, mode } = worked;
    const { trip } = question;
    const plan = cookingPlan(house, question, result);
    const cook = plan.cook.map(({ recipe, factor }) => ({ recipe, factor }));
    const camp = campOfTrip(tripSums(house, servedBy(question, result)));
    if (cook.length + camp.length === 0)
      return {
        said: {
          group: nothingToBuy(trip.place, plan, fedByDay(question.problem, result)),
          ...(plan.nobodyCan.length === 0
            ? {}
            : {
                buttons: [{ label: 'What to cook', request: `/cook "${trip.place}"` }],
                buttonsForAll: true,
              }),
        },
      };
    const named = timesOf(cook);
    const madeFor = named.length === 0 ? trip.place : `${trip.place} (${sayList(named)})`;
    return made(house, { madeFor, needs: shopNeeds(house, cook, camp), mode, words: `"${trip.place}"` });
  },
  say: ({ said }) => said,
});

/** Why no list is made: stock covers all of it, or nothing is known that could be cooked. */
function nothingToBuy(place: string, { nobodyCan }: CookingPlan, fed: readonly DayFed[]): string {
  const open = new Set(nobodyCan.flatMap(({ slots }) => slots)).size;
  if (open > 0)
    return `Nothing to buy yet, though ${sayCount(open, 'meal')} of ${place} ${open === 1 ? 'is' : 'are'} not covered: no recipe of yours is for ${open === 1 ? 'it' : 'them'}.`;
  const shortKcal = fed.reduce((sum, one) => sum + one.shortKcal, 0);
  return shortKcal > 0
    ? `Stock covers ${place} but for ${Math.round(shortKcal / 10) * 10} kcal: too little to cook for, so buy something to nibble.`
    : `Stock covers ${place}: nothing has to be cooked, so nothing is to be bought for it.`;
}

/** The list shown, for others to tick too. */
function shown(house: House, list: ShoppingList, page: number, receipt = ''): Reply {
  const { page: at, ...reply } = shopList(house, list, page);
  return { ...reply, live: { kind: 'shop', of: list.id, page: at, receipt } };
}

const timesOf = (meals: readonly ToShop[]): string[] =>
  meals.map(({ recipe, factor }) => `${recipe.name}${factor === 1 ? '' : ` x${sayNumber(factor)}`}`);

interface Wanted {
  readonly madeFor: string;
  readonly needs: readonly ShopNeed[];
  readonly mode: ShopMode;
  /** What it is for, as the request takes it. */
  readonly words: string;
}

/** A new list; one that waits is put away only where that was said. */
function made(house: House, { madeFor, needs, mode, words }: Wanted): Outcome {
  if (needs.length === 0) throw new Refusal('nothing-to-buy', `${madeFor}: no line of it is to be bought.`);
  const before = house.shopping.current();
  if (mode === 'preview') {
    const items = needs.map((need, i) => ({ ...need, id: 0, position: i + 1, homeG: 0, isGot: false }));
    return { said: previewed(house, madeFor, items, `/shop ${words}`) };
  }
  if (mode === 'make' && before?.items.some((item) => !isDone(item)))
    throw new Ambiguous(
      `There is a list for ${before.madeFor}, ${before.items.filter(isDone).length} of ${before.items.length} ticked. A new one puts it away. Nothing is changed yet.`,
      [
        { label: `New list for ${madeFor}`.slice(0, 60), request: `new ${words}` },
        { label: 'The list of now', request: '' },
      ],
    );
  house.shopping.make(madeFor, needs, house.nowMs);
  return { said: { ...shown(house, listOfNow(house), 1), did: `made a shopping list for ${madeFor}` } };
}

const toShop =
  (house: House) =>
  ({ name, factor, servings }: MealToShop): ToShop => {
    const recipe = recipeNamed(house, name);
    const times = factor ?? (servings === undefined ? 1 : factorFromServings(servings, recipe.servings));
    return { recipe, factor: times };
  };

function atOnce(house: House, asked: ShopAsked): Outcome {
  switch (asked.is) {
    case 'meals': {
      const meals = asked.meals.map(toShop(house));
      const named = timesOf(meals);
      return made(house, {
        madeFor: sayList(named),
        needs: shopNeeds(house, meals),
        mode: asked.mode,
        words: named.join(', '),
      });
    }
    case 'tick':
    case 'got':
      return ticked(house, asked);
    case 'home': {
      const list = listOfNow(house);
      const foods = atHome(house, list, asked.lines);
      const did = `at home for the shopping list: ${sayList(foods)}`;
      const page = pageOf(list, foods);
      return { said: { ...shown(house, listOfNow(house), page, `At home: ${sayList(foods)}.`), did } };
    }
    case 'done': {
      const list = listOfNow(house);
      const open = list.items.filter((item) => !isDone(item));
      house.shopping.close();
      const left =
        open.length === 0 ? '' : ` Not ticked: ${sayList(open.slice(0, 8).map(({ called }) => called))}.`;
      return {
        said: {
          group: `The list for ${list.madeFor} is put away.${left}`,
          did: `put the shopping list for ${list.madeFor} away`,
        },
      };
    }
    case 'unknown':
      throw new Refusal('no-such-meal', `I know no meal and no trip "${asked.words}". Nothing was recorded.`);
    default:
      throw new Error('what takes a plan does not come here');
  }
}

/** The page on which the first of some foods stands. */
const pageOf = ({ items }: ShoppingList, foods: readonly string[]): number =>
  Math.ceil((items.find(({ called }) => foods.includes(called))?.position ?? 1) / 9);

function ticked(house: House, asked: Extract<ShopAsked, { is: 'tick' | 'got' }>): Outcome {
  const list = listOfNow(house);
  const items = asked.is === 'tick' ? itemsNumbered(list, asked.nos) : itemsNamed(list, asked.foods);
  const changed = items.filter((item) => item.isGot !== asked.isGot);
  for (const item of changed) house.shopping.got(item.id, asked.isGot);
  const foods = sayList(items.map(({ called }) => called));
  const receipt = `${asked.isGot ? 'In the basket' : 'Still to buy'}: ${foods}.`;
  const page =
    asked.is === 'tick'
      ? asked.page
      : pageOf(
          list,
          items.map(({ called }) => called),
        );
  return {
    said: {
      ...shown(house, listOfNow(house), page, receipt),
      ...(changed.length === 0 ? {} : { did: `${asked.isGot ? 'bought' : 'did not buy'} ${foods}` }),
    },
  };
}
