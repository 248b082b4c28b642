import type { Camp, RecipeLine } from '#core/records.ts';
import { Refusal } from '#core/refusal.ts';
import { type Learnt, type LineResult, resolveLine } from '#foods/line.ts';
import { type Makes, makesIn } from '#foods/frame.ts';
import { type ListedLine, splitRecipe } from '#foods/recipe.ts';
import { massG, type Names, optional, servingsAbout } from '#words/parts.ts';
import { Ambiguous, Reading } from '#words/reading.ts';
import { sayList, sayNumber } from '#words/say.ts';
import type { House } from './house.ts';

/** A recipe request taken apart: what stands before the ingredient lines, and the lines. */
export interface RecipeText {
  readonly name: string;
  readonly servings: number | undefined;
  readonly potG: number | undefined;
  /** How it is eaten, where the first line says so. */
  readonly eaten: 'dry' | 'soaked' | undefined;
  /** What it gives, where that is told in pieces or by volume and not in servings. */
  readonly makes: Makes | undefined;
  /** The same recipe as text, with so many servings told. */
  readonly withServings: (servings: number) => string;
  readonly lines: readonly ListedLine[];
  readonly headings: readonly string[];
  readonly method: string;
  /** What was assumed of the heading. */
  readonly remarks: readonly string[];
}

export const mostLines = 80;
export const longestName = 60;
/** The reader of lines goes no further. */
export const longestLine = 500;
const lineStart =
  /^(?:[\d½¼¾⅓⅔⅛⅜⅝⅞.]|an?\s|one\s|two\s|half\s|three\s|four\s|salt\b|pepper\b|(?:a\s)?pinch|juice\s|some\s|to taste)/iu;

/**
 * Takes a recipe apart: the first line holds the name, the servings and perhaps the pot's weight; the lines
 * below are ingredients. On a single line the ingredients follow a colon, separated by semicolons or commas.
 */
export function readRecipeText(text: string, names: Names): RecipeText {
  const trimmed = text.trim();
  const [first = '', ...after] = trimmed.split(/\r\n|[\n\r\u2028\u2029]/);
  const { head, inline } = after.some((line) => line.trim() !== '')
    ? { head: first.replace(/:\s*$/, ''), inline: [] }
    : oneLine(first);
  const body = splitRecipe([...inline, ...after].join('\n'));
  const { lines } = body;
  const long = lines.find(({ typed }) => typed.length > longestLine)?.typed;
  if (long !== undefined)
    throw new Refusal(
      'long-line',
      `"${long.slice(0, 40)}…" is ${long.length} characters long; an ingredient line of mine holds ${longestLine}. Put each ingredient on a line of its own.`,
    );
  if (lines.length > mostLines)
    throw new Refusal(
      'too-many-lines',
      `${lines.length} ingredient lines are more than a recipe of mine holds (${mostLines}).`,
    );
  const { eaten, without } = eatenTold(head);
  const given = makesTold(without);
  const reading = new Reading(given.without);
  const { potG, count } = wholeInButtons(trimmed, head, () => ({
    potG: optional(massG('the weight of the finished pot, such as pot 3.9 kg', 'pot', 'weighs')).read(
      reading,
      names,
    ),
    count: servingsAbout.read(reading, names),
  }));
  const own = body.servings.map((typed) => servingsTold(typed, names));
  const told = own.map(({ value }) => value);
  const servings = [...new Set(count === undefined ? told : [count, ...told])];
  if (servings.length > 1)
    throw new Refusal(
      'two-servings',
      `I read ${sayList(servings.map(sayNumber))} servings. Say one number behind the name, and leave the other lines out.`,
    );
  const name = reading
    .rest()
    .replace(/\s+(?:for|serves|serving|servings|makes|with|the|finished)$/i, '')
    .replace(/[\s(),;:\p{Pd}]+$/u, '')
    .trim()
    .replace(/^["“”„«](.*)["“”»]$/u, '$1');
  if (name.length > longestName)
    throw new Refusal(
      'long-name',
      `A name of ${name.length} characters does not fit on a pouch; up to ${longestName} do.`,
    );
  return {
    name,
    servings: servings[0],
    potG,
    eaten,
    makes: given.makes ?? body.makes[0],
    withServings: (count) =>
      `${head.replace(/[\s,]+$/u, '')}, ${sayNumber(count)} servings${trimmed.slice(head.length)}`,
    lines,
    headings: body.headings,
    method: [
      ...(given.makes ? [`Makes ${given.makes.typed}`] : []),
      ...(body.method === '' ? [] : [body.method]),
    ].join('\n'),
    remarks: [...reading.remarks, ...own.flatMap(({ remarks }) => remarks)],
  };
}

/** 'Apple rings, 4 servings, eaten dry': how it is eaten, and the words without it. */
function eatenTold(head: string): { eaten: RecipeText['eaten']; without: string } {
  const found = /[\s,(]+(?:to be\s+)?(?:(eaten dry)|eaten soaked|eaten with water)\b\)?/iu.exec(head);
  if (!found) return { eaten: undefined, without: head };
  const without = head.slice(0, found.index) + head.slice(found.index + found[0].length);
  return { eaten: found[1] === undefined ? 'soaked' : 'dry', without };
}

/** 'Muffins, makes 12 muffins': what it gives, and the words without it. A bare number is a number of servings. */
function makesTold(head: string): { makes: Makes | undefined; without: string } {
  const found = /[\s,(;–—-]+(?:it\s+)?(?:makes|yields?|gives)\b[^,;)]*\)?/iu.exec(head);
  const makes = found ? makesIn(found[0].replace(/^[^\p{L}]+|\)$/gu, '')) : undefined;
  if (!found || makes === undefined) return { makes: undefined, without: head };
  return { makes, without: head.slice(0, found.index) + head.slice(found.index + found[0].length) };
}

/** How many a line of its own says, such as '4-6'. */
function servingsTold(typed: string, names: Names): { value: number; remarks: readonly string[] } {
  const reading = new Reading(`${typed} servings`);
  try {
    const value = servingsAbout.read(reading, names);
    if (value === undefined)
      throw new Refusal('bad-servings', `${typed} servings cannot be; from 1 to 1000 can.`);
    return { value, remarks: reading.remarks };
  } catch (error) {
    if (!(error instanceof Ambiguous)) throw error;
    throw new Refusal('doubtful-heading', `${error.question} Write it without the comma.`);
  }
}

/** A question about the heading keeps the lines below: its buttons send the whole recipe. */
function wholeInButtons<T>(text: string, head: string, read: () => T): T {
  try {
    return read();
  } catch (error) {
    if (!(error instanceof Ambiguous)) throw error;
    throw new Ambiguous(
      error.question,
      error.options.map(({ label, request }) => ({ label, request: request + text.slice(head.length) })),
    );
  }
}

/** 'soup, 4 servings: 300 g barley; 2 carrots' → head and ingredient lines. */
function oneLine(text: string): { head: string; inline: string[] } {
  const colon = /:(?!\d)/.exec(text);
  if (!colon) return { head: text, inline: [] };
  const listed = text.slice(colon.index + 1).trim();
  if (listed === '') return { head: text.slice(0, colon.index), inline: [] };
  const pieces = listed.includes(';') ? listed.split(';') : listed.split(/,\s+/);
  // A comma inside a line ('2 onions, chopped') does not start a new one.
  const inline: string[] = [];
  for (const piece of pieces.map((p) => p.trim()).filter(Boolean)) {
    if (inline.length === 0 || listed.includes(';') || lineStart.test(piece)) inline.push(piece);
    else inline.push(`${inline.pop()!}, ${piece}`);
  }
  return { head: text.slice(0, colon.index), inline };
}

/** Where a line stands in a recipe. */
export interface Place {
  readonly section: string | null;
  /** Where it goes if the line does not say. */
  readonly camp: Camp | null;
  readonly servings: number;
}

const atTop: Place = { section: null, camp: null, servings: 1 };

/** A resolved line as it is recorded; what is told for each serving is kept for the whole recipe. */
export function asRecord(result: LineResult, at: Place = atTop): RecipeLine {
  const camp = result.camp === 'pot' ? null : (result.camp ?? at.camp);
  const grams = result.is === 'weighed' ? result.grams : null;
  return {
    typed: result.typed.trim(),
    state: result.is === 'weighed' || result.is === 'uncounted' ? result.is : 'asked',
    called: result.called || result.typed.trim(),
    ndb: result.food?.ndb ?? null,
    grams: grams !== null && camp === 'each' ? grams * at.servings : grams,
    contents: result.own,
    named: result.food === null ? [] : result.named.map(({ called, contents }) => ({ called, contents })),
    remarks: result.remarks,
    question: result.question,
    section: at.section,
    camp,
  };
}

/** Resolves lines with what this household taught. */
export function resolver(house: House): (line: string) => LineResult {
  const learnt = learntBy(house);
  return (line) => resolveLine(line, house.foods, learnt);
}

/** What this household taught of foods and measures. */
export const learntBy = (house: House): Learnt => ({
  foods: house.learnt.foods(),
  measures: [
    ...house.learnt.measures().map(({ unit, food, grams, ml }) => ({
      unit,
      food,
      ...(grams === null ? {} : { grams }),
      ...(ml === null ? {} : { ml }),
    })),
    { unit: 'cup', food: null, ml: house.settings.cupMl },
  ],
});
