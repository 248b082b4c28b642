import { account, type Account, contentsOfLine, ownContents } from './account.ts';
import { type CampTold, campTold } from './camp.ts';
import { amountOf, isTwoFoods, short } from './amount-of.ts';
import { askedAsDish, askFood, asking } from './asking.ts';
import { type Choice, foodChoices, withoutWords } from './choices.ts';
import { isWithin, nothing, perhaps, together, widened } from '#core/contents.ts';
import { withoutDoubtedClaim } from './doubted-claims.ts';
import { findFood, learntNamings, sureFrom } from './find.ts';
import type { FoodTable } from './food.ts';
import { joined, partOf, readings, withTaughtUnits } from './forms.ts';
import { byName, type KitchenFood } from './kitchen.ts';
import { blank, type LineResult } from './line-result.ts';
import { namings } from './namings.ts';
import { qualified } from './qualities.ts';
import { type ReadLine, readLine } from './read.ts';
import { tokensOf } from './tokens.ts';
import type { Learnt } from './weigh.ts';
import { foldedWords, foldName } from './words.ts';

export type { Named } from './account.ts';
export type { Choice } from './choices.ts';
export type { LineResult } from './line-result.ts';
export { sureFrom } from './find.ts';
export { readLine } from './read.ts';
export { foldName };
export type { Learnt } from './weigh.ts';

export const nothingLearnt: Learnt = { foods: new Map(), measures: [] };

/** A line with its food found, before its other words are looked at. */
interface Counted {
  readonly result: LineResult;
  /** The folded words under which the food was found. */
  readonly matched: readonly string[];
  /** The kitchen's row; null where the food is asked for, or known by the table alone. */
  readonly entry: KitchenFood | null;
  readonly amountText: string;
  /** The line without its amount. */
  readonly words: string;
}

/**
 * An ingredient line → food, grams, what it contains; or the one question that settles it.
 * @param line as typed
 * @param table the food table
 * @param learnt what the household taught; it wins
 */
export function resolveLine(line: string, table: FoodTable, learnt: Learnt = nothingLearnt): LineResult {
  const { camp, rest, isDivided } = campTold(line);
  const result = doubted(rest, resolve(readLine(rest), table, learnt, true), table, learnt);
  if (camp === null) return result;
  const here = { ...result, typed: line.trim(), camp };
  if (isDivided)
    return {
      ...here,
      is: 'asked',
      wanted: 'number',
      question:
        'How much of it goes into the pot, and how much is added at camp? Give each a line of its own.',
      choices: [],
    };
  const choices = result.choices.map((one) => ({ ...one, typed: `${one.typed}${behindCamp(camp)}` }));
  return { ...here, choices };
}

/** 'Butter (vegan?)' is counted as it reads, and may be what it is without the claim. */
function doubted(line: string, result: LineResult, table: FoodTable, learnt: Learnt): LineResult {
  const claimed = result.contents === null ? undefined : withoutDoubtedClaim(line);
  if (claimed === undefined) return result;
  const { contents } = resolve(readLine(claimed.bare), table, learnt, false);
  const opened = (known: LineResult['contents']) =>
    known && together([known, contents === null ? widened(nothing) : perhaps(contents)]);
  const all = { ...result, contents: opened(result.contents), own: opened(result.own) };
  if (isWithin(all.contents!, result.contents!)) return result;
  return { ...all, remarks: [...result.remarks, `whether it is ${claimed.claims} is left open`] };
}

/**
 * Other foods that a line may mean than the one it was read as.
 * @param called what it was read as
 */
export function otherFoods(line: string, called: string, table: FoodTable, learnt: Learnt): Choice[] {
  const { camp, rest } = campTold(line);
  const [read] = readings(withTaughtUnits(joined(readLine(rest)), learnt));
  if (!read) return [];
  const resolves = (typed: string) => isSettled(resolve(readLine(typed), table, learnt, false));
  return foodChoices(findFood(read, table, learnt), read, table, resolves, called).map((one) => ({
    ...one,
    typed: `${one.typed}${behindCamp(camp)}`,
  }));
}

const behindCamp = (camp: CampTold['camp']): string =>
  camp === null ? '' : camp === 'pot' ? ', in the pot' : camp === 'each' ? ' each, at camp' : ', at camp';

function resolve(read: ReadLine, table: FoodTable, learnt: Learnt, mayAsk: boolean): LineResult {
  if (read.is !== 'line') return heading(read);
  const results = readings(withTaughtUnits(joined(read), learnt)).map((line) =>
    resolveAs(line, read, table, learnt, mayAsk),
  );
  const rank = ({ result }: Counted) =>
    (result.is === 'asked' ? 0 : 1) + (result.wanted === 'food' ? 0 : 0.5) + result.confidence * 0.4;
  return accounted(
    results.reduce((a, b) => (rank(b) > rank(a) + 0.08 ? b : a)),
    table,
    learnt,
    mayAsk,
  );
}

/** A heading counts nothing; what it names is named. Kinds of dishes ('For the sauce') are made of the lines below. */
function heading(read: ReadLine): LineResult {
  const { named } = account(tokensOf(read.typed), []);
  const foods = named.filter(({ isKind }) => !isKind);
  return {
    ...blank,
    typed: read.typed,
    is: 'heading',
    called: read.words.replace(/:$/, ''),
    contents: foods.length > 0 ? together(foods.map(({ contents }) => contents)) : null,
    named: foods,
  };
}

/** The reader of lines goes no further. */
const longestRead = 500;

/** The line with all its words accounted for: what they name is in its contents, what nobody understood is asked. */
function accounted(counted: Counted, table: FoodTable, learnt: Learnt, mayAsk: boolean): LineResult {
  const { result } = counted;
  const tokens = tokensOf(result.typed);
  // Of a food that only the table knows, the words of its name tell what is in it.
  const isOfTable = counted.entry === null;
  const own = {
    names: learntNamings(tokens, learnt, table),
    measures: new Set([
      ...foldedWords(counted.amountText),
      ...learnt.measures.flatMap(({ unit }) => foldedWords(unit)),
      ...(isOfTable ? counted.matched : []),
    ]),
  };
  const sheet = tinned(
    counted,
    account(tokens, result.food === null || isOfTable ? [] : counted.matched, own),
  );
  const unknown =
    result.typed.length > longestRead ? [...sheet.unknown, 'the end of the line'] : [...sheet.unknown];
  const whole = { ...sheet, unknown };
  if (result.food === null) return asking(result, whole);
  const dish = sheet.named.find(
    (one) => one.isDish && one.isSure && one.isBeside && !isWithin(one.contents, result.contents ?? nothing),
  );
  if (dish) return asking(askedAsDish(result, counted.words, dish), { ...account(tokens, [], own), unknown });
  const contents =
    result.contents === null ? asking(result, whole).contents : contentsOfLine(result.contents, whole);
  const all = {
    ...result,
    contents,
    own: ownContents(result.contents, whole),
    named: whole.named,
    unknown,
    remarks: [...result.remarks, ...namedRemarks(result, whole)],
  };
  if (unknown.length === 0 || result.is === 'asked') return all;
  const resolves = (typed: string) => isSettled(resolve(readLine(typed), table, learnt, false));
  return {
    ...all,
    question: `What is ${unknown.map((word) => `"${word}"`).join(', ')}?`,
    wanted: 'word',
    choices: mayAsk ? withoutWords(result.typed, unknown, resolves) : [],
  };
}

/** A tin of what nobody tins by itself ('1 can steak') is a dish: what else is in it, the line does not say. */
function tinned({ entry, amountText }: Counted, sheet: Account): Account {
  const isFlesh = entry?.contents.kinds.some((kind) => kind === 'meat' || kind === 'fish');
  if (!entry || !isFlesh || !/\b(?:tins?|cans?)\b/i.test(amountText)) return sheet;
  const rows = byName().get(foldName(entry.called)) ?? [entry];
  const isTinned = rows.some(
    ({ state, weights }) =>
      state === 'canned' ||
      state === 'drained' ||
      weights.some(({ unit }) => unit === 'tin' || unit === 'jar'),
  );
  const dish = namings().get('stew');
  if (isTinned || !dish) return sheet;
  const one = { called: 'tinned dish', contents: perhaps(dish.contents), isSure: false, isDish: true, isBeside: false, isKind: false }; // prettier-ignore
  return { ...sheet, named: [...sheet.named, one] };
}

const isSettled = (result: LineResult) =>
  (result.is === 'weighed' || result.is === 'uncounted') && result.question === null;

/** What is named and not weighed, each once. */
function namedRemarks({ remarks, contents }: LineResult, { named }: Account): string[] {
  const others = named.filter(
    (one) =>
      !remarks.some((remark) => remark.includes(one.called)) &&
      !/ or /.test(one.called) &&
      !(one.isBeside && isWithin(one.contents, contents ?? nothing)),
  );
  const names = [...new Set(others.map(({ called, isSure }) => (isSure ? called : `perhaps ${called}`)))];
  return names.length > 0 ? [`named, not weighed: ${names.slice(0, 4).join(', ')}`] : [];
}

function resolveAs(
  whole: ReadLine,
  read: ReadLine,
  table: FoodTable,
  learnt: Learnt,
  mayAsk: boolean,
): Counted {
  const { line, as } = partOf(whole);
  const base: LineResult = { ...blank, is: 'asked', typed: read.typed, called: line.words || read.typed };
  const found = line.words === '' && line.brackets.length === 0 ? [] : findFood(line, table, learnt);
  const top = found[0] && qualified(found[0], line, table);
  const { amountText } = line;
  const words = base.called;
  const isSecondAmount =
    / (?:and|plus|&|\+) +(?:[\d½¼¾⅓⅔]|one |two |an? )/i.test(line.words) && !/ or /i.test(line.words);
  const isSure = top !== undefined && top.confidence >= sureFrom;
  if (isSecondAmount || (!isSure && isTwoFoods(line))) {
    const question = `"${short(base.called)}" names more than one food: give each a line of its own.`;
    return {
      result: { ...base, is: 'asked', wanted: 'food', question },
      matched: [],
      entry: null,
      amountText,
      words,
    };
  }
  if (!isSure) {
    const resolves = (typed: string) => isSettled(resolve(readLine(typed), table, learnt, false));
    const choices = mayAsk ? foodChoices(found, line, table, resolves) : [];
    return { result: askFood(base, line, top, choices), matched: [], entry: null, amountText, words };
  }
  return {
    result: amountOf(base, line, top, { learnt, as, typed: read.typed }),
    matched: top.matched,
    entry: top.scale.entry,
    amountText,
    words,
  };
}
