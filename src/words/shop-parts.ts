import { factor, servings } from './counts.ts';
import { optional, part, takeMeal, type Names } from './part.ts';
import { Reading } from './reading.ts';
import { takeName } from './names.ts';

/** A meal to shop for. */
export interface MealToShop {
  readonly name: string;
  readonly factor: number | undefined;
  readonly servings: number | undefined;
}

/** 'make': a list that waits is asked about first; 'new': in its place; 'preview': only looked at. */
export type ShopMode = 'make' | 'new' | 'preview';

export type ShopAsked =
  | { readonly is: 'show'; readonly page: number }
  /** Of the next trip, or of the one named. */
  | { readonly is: 'trip'; readonly place: string | undefined; readonly mode: ShopMode }
  | { readonly is: 'meals'; readonly meals: readonly MealToShop[]; readonly mode: ShopMode }
  | { readonly is: 'tick'; readonly nos: readonly number[]; readonly isGot: boolean; readonly page: number }
  | { readonly is: 'got'; readonly foods: readonly string[]; readonly isGot: boolean }
  | { readonly is: 'home'; readonly lines: readonly string[] }
  | { readonly is: 'done' }
  | { readonly is: 'unknown'; readonly words: string };

const pieces = (text: string): string[] =>
  text
    .split(/\s*[,;\n]\s*|\s+and\s+/iu)
    .map((one) => one.trim())
    .filter(Boolean);

/** 'Lentil pot x2', 'barley soup for 8': one meal, every word of it accounted for. */
function mealIn(typed: string, names: Names): MealToShop | undefined {
  // 'Two pots of soup' is the soup twice.
  const text = typed.replace(
    /^(\d{1,2}|two|three|four|five|six|a|one)\s+(?:pots?|batch(?:es)?|loads?|times)\s+(?:of\s+)?(?:the\s+)?(.+)$/iu,
    (_, count: string, of: string) =>
      `${of} x${{ a: 1, one: 1, two: 2, three: 3, four: 4, five: 5, six: 6 }[count.toLowerCase()] ?? count}`,
  );
  const reading = new Reading(text);
  const times = factor.read(reading, names);
  const feeds = servings.read(reading, names);
  const name = takeMeal(reading, names.meals, names.otherNames);
  return name === undefined || reading.leftovers().length > 0
    ? undefined
    : { name, factor: times, servings: feeds };
}

function read(text: string, names: Names): ShopAsked {
  const page = Number(/\bpage\s+(\d{1,3})\s*$/iu.exec(text)?.[1] ?? 1);
  const bare = text.replace(/\s*\bpage\s+\d{1,3}\s*$/iu, '').trim();
  if (bare === '' || /^(?:list|show)$/iu.test(bare)) return { is: 'show', page };
  if (/^(?:done|finished|clear|close|over)$/iu.test(bare)) return { is: 'done' };
  const tick = /^(tick|untick)\s+(\d[\d\s,]*)$/iu.exec(bare);
  if (tick)
    return {
      is: 'tick',
      isGot: tick[1]!.toLowerCase() === 'tick',
      nos: tick[2]!.match(/\d+/gu)!.map(Number),
      page,
    };
  const home =
    /^(?:(?:we\s+)?have|(?:at\s+)?home|there\s+(?:is|are))(?:\s+(?:got|at\s+home))?\s*:?\s+(.+)$/isu.exec(
      bare,
    );
  if (home) return { is: 'home', lines: pieces(home[1]!.replace(/\s+at\s+home$/iu, '')) };
  const got =
    /^(?:(not)\s+)?(?:got|bought|ticked?|have\s+got)\s+(.+)$/isu.exec(bare) ?? /^(not)\s+(.+)$/isu.exec(bare);
  if (got) return { is: 'got', isGot: got[1] === undefined, foods: pieces(got[2]!) };
  const anew = /^(new|anew|again|preview)(?:\s+(?:for\s+)?(.+))?$/isu.exec(bare);
  const mode = anew === null ? 'make' : anew[1]!.toLowerCase() === 'preview' ? 'preview' : 'new';
  const named = anew ? (anew[2] ?? '') : bare.replace(/^for\s+/iu, '');
  if (named === '') return { is: 'trip', place: undefined, mode };
  const meals = pieces(named).map((one) => mealIn(one, names));
  if (meals.every((one) => one !== undefined)) return { is: 'meals', meals, mode };
  const reading = new Reading(named);
  const place = takeName(reading, names.trips, 'trip');
  return place !== undefined && reading.leftovers().length === 0
    ? { is: 'trip', place, mode }
    : { is: 'unknown', words: named };
}

/** All that was typed. */
export const shopAsked = optional(
  part<ShopAsked>('meals, or a trip', (reading, names) => {
    reading.take(...reading.left());
    return read(reading.text.trim(), names);
  }),
);
