import { isWithin, together } from '#core/contents.ts';
import type { Contents } from '#core/allergens.ts';
import type { Camp, NamedFood, Recipe, RecipeLine } from '#core/records.ts';
import { Refusal } from '#core/refusal.ts';
import { campTold } from '#foods/camp.ts';
import type { LineResult } from '#foods/line.ts';
import { untold } from '#foods/untold.ts';
import { sayList } from '#words/say.ts';
import { nameKey, recipeNamed } from './figures.ts';
import type { House } from './house.ts';
import { withPackets } from './packets.ts';
import { rememberAnswer, settleTold } from './recipe-questions.ts';
import { asRecord, longestLine, mostLines, type Place, resolver } from './recipe-text.ts';

/** A recipe before and after one change, and what else is to be said of it. */
export interface Changed {
  readonly before: Recipe;
  readonly after: Recipe;
  readonly remarks: readonly string[];
}

/** 'B1 and B3', in their order. */
export const codes = (batches: readonly { no: number }[]) =>
  sayList(
    batches
      .map(({ no }) => no)
      .toSorted((a, b) => a - b)
      .map((no) => `B${no}`),
  );

export const keeps = ({ length }: readonly unknown[]) => (length === 1 ? 'keeps' : 'keep');

/** Batches that were cooked from this very wording. */
export const cookedFrom = (house: House, { id }: Recipe) =>
  house.batches.ofMeal(id).filter((batch) => batch.recipe.id === id);

/** @throws Refusal 'no-such-line' */
export function lineAt({ name, lines }: Recipe, position: number): RecipeLine {
  const found = lines[position - 1];
  if (!found)
    throw new Refusal('no-such-line', `${name} has ${lines.length} lines; there is no line ${position}.`);
  return found;
}

const holds = ({ contents, named }: RecipeLine): Contents =>
  together([...(contents === null ? [] : [contents]), ...named.map((one) => one.contents)]);

/** Keeps the changed wording for later batches: those cooked from the one before stay what they are. */
export function keepAnew(house: House, before: Recipe, change: Partial<Recipe>): Recipe {
  const { id: _, ...rest } = before;
  house.recipes.keep(nameKey(before.name), { ...rest, ...change }, house.nowMs);
  return recipeNamed(house, before.name);
}

/** The pot was weighed with a line that is not in it any more. */
const potAgain = (before: Recipe, gone: RecipeLine): { potG: null; remarks: string[] } | undefined =>
  before.potG !== null && gone.camp === null && gone.grams !== null && gone.grams > 0
    ? { potG: null, remarks: ['The finished pot was weighed with that line; weigh the next one anew.'] }
    : undefined;

/** What of a recipe names foods besides its lines. */
export const wordsBeside = ({ method, lines }: Pick<Recipe, 'method' | 'lines'>): string[] => [
  ...new Set(lines.flatMap(({ section }) => (section === null ? [] : [section]))),
  method,
];

/** Foods that headings or method name, or that somebody said to be in a line, and that no line has once it is gone. */
function opened(house: House, before: Recipe, position: number, left: readonly RecipeLine[]): NamedFood[] {
  const resolve = resolver(house);
  const gone = lineAt(before, position);
  const ofWords = resolve(gone.typed).named.map(({ called }) => called);
  const settledIn = gone.named.filter(({ called }) => !ofWords.includes(called));
  const texts = wordsBeside(before);
  const had = untold(
    texts,
    before.lines.map(({ typed }) => resolve(typed)),
  );
  const lacks = untold(
    texts,
    left.map(({ typed }) => resolve(typed)),
  );
  const isNew = (one: NamedFood) => had.every(({ called }) => called !== one.called);
  const open = [...before.mentions, ...settledIn, ...lacks.filter(isNew)];
  return open.filter((one, i) => open.findIndex(({ called }) => called === one.called) === i);
}

/** Reads an ingredient line as it will be recorded. @throws Refusal 'no-ingredient', 'long-line', 'absurd-line' */
function readAnew(house: House, typed: string, at: Place): { line: RecipeLine; result: LineResult } {
  if (typed.length > longestLine)
    throw new Refusal('long-line', `An ingredient line of mine holds ${longestLine} characters.`);
  const result = resolver(house)(typed);
  if (result.is === 'heading')
    throw new Refusal('no-ingredient', `"${typed}" is no ingredient that I can read.`);
  return { line: withPackets(house)(asRecord(result, at)), result };
}

/**
 * Puts one line in place of another, or behind the last. Where the old line was understood and the new one lacks
 * something that it held, batches cooked from it keep the old line: what went into a pouch is still in it.
 */
export function changeLine(house: House, before: Recipe, position: number, typed: string): Changed {
  if (position === before.lines.length + 1) return addLine(house, before, typed);
  const old = lineAt(before, position);
  const { line, result } = readAnew(house, typed, { ...old, servings: before.servings });
  const batches = cookedFrom(house, before);
  const lines = before.lines.with(position - 1, line);
  const mentions = opened(house, before, position, lines);
  // What is added at camp went into no batch; what moves between pot and camp changes what later batches are made of.
  const isCorrection =
    old.camp === null || line.camp === null
      ? old.camp === line.camp && (old.question !== null || isWithin(holds(old), holds(line)))
      : true;
  if (batches.length > 0 && !isCorrection) {
    const pot = potAgain(before, old);
    const after = keepAnew(house, before, { lines, mentions, ...(pot ? { potG: pot.potG } : {}) });
    return {
      before,
      after,
      remarks: [`${codes(batches)}, cooked before, ${keeps(batches)} the old line.`, ...(pot?.remarks ?? [])],
    };
  }
  house.recipes.mendLine(before.id, position, line);
  house.recipes.settleMentions(before.id, mentions);
  settleTold(house, { ...before, mentions }, result);
  const remembered = rememberAnswer(house, old, result);
  return {
    before,
    after: recipeNamed(house, before.name),
    remarks: [...countWithIt(batches), ...(remembered === undefined ? [] : [remembered])],
  };
}

export const countWithIt = (batches: readonly { no: number }[]): string[] =>
  batches.length === 0
    ? []
    : [`${codes(batches)}, cooked from it, ${batches.length === 1 ? 'counts' : 'count'} with it too.`];

/** Puts a line behind the last; batches cooked from the recipe count with it, as with a line put right. */
export function addLine(house: House, before: Recipe, typed: string): Changed {
  if (before.lines.length >= mostLines)
    throw new Refusal('too-many-lines', `${before.name} is full: a recipe of mine holds ${mostLines} lines.`);
  const last = before.lines.at(-1);
  const isCamp = campTold(typed).camp === last?.camp;
  const section = last?.camp == null || isCamp ? (last?.section ?? null) : null;
  const { line, result } = readAnew(house, typed, { section, camp: null, servings: before.servings });
  house.recipes.addLine(before.id, before.lines.length + 1, line);
  settleTold(house, before, result);
  return { before, after: recipeNamed(house, before.name), remarks: countWithIt(cookedFrom(house, before)) };
}

/** Several lines, one after the other. */
export function addLines(house: House, before: Recipe, typed: readonly string[]): Changed {
  const pieces = typed.map((one) => one.trim()).filter(Boolean);
  const all = pieces.reduce<Changed>((now, one) => addLine(house, now.after, one), {
    before,
    after: before,
    remarks: [],
  });
  if (pieces.length === 0) throw new Refusal('no-ingredient', 'Behind "add" I read no ingredient.');
  return { ...all, before };
}

/** Takes a line out, for later batches. @throws Refusal 'no-such-line', 'last-line' */
export function takeLineOut(house: House, before: Recipe, position: number): Changed {
  const gone = lineAt(before, position);
  if (before.lines.length === 1)
    throw new Refusal(
      'last-line',
      `That is the only line of ${before.name}. To be rid of the recipe: /recipe delete ${before.name}`,
    );
  const lines = before.lines.toSpliced(position - 1, 1);
  const batches = cookedFrom(house, before);
  if (gone.camp !== null) {
    house.recipes.takeOut(before.id, lines);
    house.recipes.settleMentions(before.id, opened(house, before, position, lines));
    return { before, after: recipeNamed(house, before.name), remarks: [] };
  }
  const pot = potAgain(before, gone);
  const after = keepAnew(house, before, {
    lines,
    mentions: opened(house, before, position, lines),
    ...(pot ? { potG: pot.potG } : {}),
  });
  return {
    before,
    after,
    remarks: [
      ...(batches.length > 0 ? [`${codes(batches)}, cooked with it, ${keeps(batches)} it.`] : []),
      ...(pot?.remarks ?? []),
    ],
  };
}

/** Puts a line elsewhere; nothing is counted differently. */
export function moveLine(house: House, before: Recipe, position: number, to: number): Changed {
  const old = lineAt(before, position);
  const there = lineAt(before, to);
  const moved = old.camp === there.camp ? { ...old, section: there.section } : old;
  if (position === to)
    throw new Refusal('same-place', `Line ${position} of ${before.name} stands there already.`);
  const lines = before.lines.toSpliced(position - 1, 1).toSpliced(to - 1, 0, moved);
  lines.forEach((line, i) => {
    if (line !== before.lines[i]) house.recipes.mendLine(before.id, i + 1, line);
  });
  return { before, after: recipeNamed(house, before.name), remarks: [] };
}

/** How it is eaten, also what is in stock of it. */
export function eatOtherwise(house: House, before: Recipe, how: 'dry' | 'soaked'): Changed {
  house.recipes.eat(nameKey(before.name), how);
  return { before, after: recipeNamed(house, before.name), remarks: [] };
}

/** How many servings it makes from now on. */
export function serveOthers(house: House, before: Recipe, servings: number, potG = before.potG): Changed {
  const batches = cookedFrom(house, before);
  const remarks =
    batches.length > 0 ? [`${codes(batches)}, cooked before, ${keeps(batches)} the old number.`] : [];
  // Told for each serving, it is more for more of them.
  const lines = before.lines.map((line) =>
    line.camp === 'each' && line.grams !== null
      ? { ...line, grams: (line.grams * servings) / before.servings }
      : line,
  );
  return { before, after: keepAnew(house, before, { servings, potG, lines }), remarks };
}

/** Says whether what is added at camp is told for the whole recipe or for each serving; no batch has any of it yet. */
export function addEach(house: House, before: Recipe, camp: Camp): Changed {
  const { id, name, lines, servings } = before;
  const there = lines.filter((line) => line.camp !== null);
  if (there.length === 0) throw new Refusal('nothing-at-camp', `No line of ${name} is added at camp.`);
  if (there.every((line) => line.camp === camp))
    throw new Refusal(
      'same-camp',
      `What is added to ${name} at camp is counted ${camp === 'each' ? 'for each serving' : 'for the whole recipe'} already.`,
    );
  const times = camp === 'each' ? servings : 1 / servings;
  lines.forEach((line, i) => {
    if (line.camp !== null && line.camp !== camp)
      house.recipes.mendLine(id, i + 1, {
        ...line,
        camp,
        grams: line.grams === null ? null : line.grams * times,
      });
  });
  return { before, after: recipeNamed(house, name), remarks: [] };
}
