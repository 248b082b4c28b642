import { isNegation } from './grammar.ts';
import { sayCode } from '#words/say.ts';
import type { Look, Meaning } from './look.ts';

/** Reads a message as one thing that may be recorded or done. */
export type Reader = (look: Look) => Meaning | undefined;

/** The verbs and nouns by which people speak of each deed, as they are looked up. */
const ideas = {
  eat: 'eat use consume finish devour scoff demolish open munch',
  throw: 'throw toss bin chuck dump discard trash ditch',
  seal: 'seal bag vacuum',
  weigh: 'weigh weight scale',
  load: 'load batch dryer drying tray',
  undo: 'undo revert',
  pack: 'pack packing backpack rucksack',
  back: 'return back bring home',
  wish: 'want wish fancy crave',
  rate: 'rate taste',
  label: 'label sticker',
  chart: 'chart graph curve plot diagram',
} as const satisfies Record<string, string>;

export const idea = (name: keyof typeof ideas): string[] => ideas[name].split(' ');

const staysAsItIs = 'turns it round, so it stays as it is';

/** What is said not to be so is never offered either. */
export const turnedRound = (word: string): string => `"${word}" ${staysAsItIs}`;

export const whichOne = 'that leaves open which one';
/** Whether a deed is held because one of two things was meant. */
export const leavesWhichOpen = (holds: string | null): boolean => holds === whichOne;

export const isTurnedRound = (holds: string | null): boolean => holds !== null && holds.endsWith(staysAsItIs);

/** What stands against recording a deed as done, in words; null where nothing does. */
export function holdOf(
  look: Look,
  more: {
    readonly except?: boolean;
    readonly negated?: boolean;
    readonly future?: boolean;
    readonly part?: boolean;
  } = {},
): string | null {
  const { mood, all, codes } = look.said;
  const denied = codesDenied(look);
  if (mood.asks) return 'that reads as a question';
  // 'Not B1-4' leaves that one out and turns nothing else round.
  const isOnlyCodes =
    mood.negated === 'not' &&
    codes.length > denied.length &&
    denied.length > 0 &&
    all.filter(({ plain }) => isNegation(plain)).length === denied.length;
  if (mood.negated !== null && !more.negated && !isOnlyCodes) return turnedRound(mood.negated);
  if (mood.either) return whichOne;
  if (mood.doubt !== null) return `"${mood.doubt}" leaves it open`;
  if (mood.part !== null && !more.part) return `"${mood.part}" is not the whole`;
  if (mood.except !== null && !more.except) return `"${mood.except}" leaves something out`;
  if (mood.future !== null && !more.future) return `"${mood.future}" is still to come`;
  return null;
}

export const scoreOf = (...parts: readonly (number | false)[]): number =>
  parts.reduce<number>((sum, part) => sum + (part || 0), 0);

/** Pouches or a meal that a deed is done to, and the tokens that name them. */
export function things(look: Look): { words: string; at: number[]; byCode: boolean } | undefined {
  const mealTokens = look.said.meals.flatMap(({ at }) => at);
  const but = codesDenied(look);
  if (but.length > 0 && but.length < look.said.codes.length)
    return {
      words: look.said.codes
        .filter(({ at }) => !but.includes(at))
        .map(({ code }) => sayCode(code))
        .join(' '),
      at: [...look.said.codes.map(({ at }) => at), ...but.map((at) => at - 1), ...mealTokens],
      byCode: true,
    };
  if (look.said.codes.length > 0)
    return { words: look.codes(), at: [...look.codeTokens(), ...mealTokens], byCode: true };
  const meal = look.mealTyped();
  const whole = wholeBatch(look);
  if (whole) return whole;
  if (meal === undefined) return undefined;
  const count = look.said.all.findIndex((token, i) => token.is === 'number' && !mealTokens.includes(i));
  const number = look.said.all[count];
  // 'All but two': the others of those in stock.
  const butFor = look.says(/ (?:all|everything) (?:but|except) /);
  const many =
    number?.is === 'number' && Number.isInteger(number.value) && number.value > 0 && number.value < 100;
  return {
    words: `${many ? `${butFor ? leftBut(look, number.value) : number.value} ` : look.says(/ all (?:of )?(?:the|our|of) /) ? 'all ' : ''}${meal}`,
    at: [...mealTokens, ...(many ? [count] : [])],
    byCode: false,
  };
}

/** 'B1-2 and B1-3 eaten, not B1-4': the codes that stand behind a 'not'. */
export const codesDenied = ({ said: { all, codes } }: Look): number[] =>
  codes.flatMap(({ at }) => (/^(?:not|except)$/.test(all[at - 1]?.plain ?? '') ? [at] : []));

/** 'All of B3', 'the whole batch B3': its pouches that are in stock. */
function wholeBatch(look: Look): { words: string; at: number[]; byCode: boolean } | undefined {
  const [batch, another] = look.said.batches;
  if (
    !batch ||
    another ||
    !look.says(/ (?:all|everything|whole|every pouch) (?:of |from |in |the |pouches |bags )*(?:b|m)\d/)
  )
    return undefined;
  const codes = look.names.meals
    .flatMap((meal) => look.names.pouchesOf(meal))
    .filter((one) => one.batch === batch.batch && (one.isMixed === true) === batch.isMixed);
  return codes.length === 0
    ? undefined
    : {
        words: codes.map(sayCode).join(' '),
        at: [batch.at, ...look.at('all', 'everything', 'whole', 'every')],
        byCode: true,
      };
}

/** How many of the meal there are besides. */
const leftBut = (look: Look, but: number): number =>
  Math.max(
    1,
    look.said.meals
      .slice(0, 1)
      .flatMap(({ names }) => names.slice(0, 1))
      .flatMap((name) => look.names.pouchesOf(name)).length - but,
  );

export const people = (look: Look): number[] => look.said.people.flatMap(({ at }) => at);
