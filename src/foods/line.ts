import type { Contents } from '#core/allergens.ts';
import { calledAs, findFood, type Found, saidOf, stripped, sureFrom } from './find.ts';
import type { Food, FoodTable } from './food.ts';
import { kitchen } from './kitchen.ts';
import { matches } from './match.ts';
import { type ReadLine, readLine } from './read.ts';
import { unitNamed } from './units.ts';
import { foodWords, neutral } from './vocabulary.ts';
import { type Learnt, weigh } from './weigh.ts';
import { foldedWords, foldName } from './words.ts';

export { sureFrom } from './find.ts';
export { readLine } from './read.ts';
export { foldName } from './words.ts';
export type { Learnt } from './weigh.ts';

export interface Choice {
  readonly label: string;
  /** A line that, in place of this one, resolves without a question. */
  readonly typed: string;
}

export interface LineResult {
  readonly typed: string;
  /** 'uncounted': no amount, counted as zero and named. 'asked': a person must settle something first. */
  readonly is: 'weighed' | 'uncounted' | 'asked' | 'heading';
  readonly food: Food | null;
  /** Short kitchen name: 'red lentils, dry'. */
  readonly called: string;
  readonly grams: number | null;
  /** null: nothing is known of what it contains. */
  readonly contents: Contents | null;
  readonly remarks: readonly string[];
  readonly question: string | null;
  readonly choices: readonly Choice[];
  /** 0 … 1, how much of the typed words the food accounts for. */
  readonly confidence: number;
  readonly wanted: 'food' | 'amount' | 'number' | null;
}

export const nothingLearnt: Learnt = { foods: new Map(), measures: [] };

/** The part of a fruit: juice or zest has an entry of its own, weighed by the fruit. */
function partOf(line: ReadLine): { line: ReadLine; as: 'fruit' | null } {
  if (line.part) {
    const fruit = line.words
      .replace(/\b(?:small|large|medium|ripe|juicy|fresh|organic|unwaxed)\b/gi, '')
      .trim()
      .replace(/s$/i, '');
    return {
      line: { ...line, words: `${fruit} ${line.part}` },
      as:
        line.amounts[0]?.unit == null ||
        line.amounts[0].unit.name === 'wedge' ||
        line.amounts[0].unit.name === 'half'
          ? 'fruit'
          : null,
    };
  }
  const bare = foldName(
    line.words.replace(/\b(?:small|large|medium|ripe|juicy|fresh|organic|unwaxed)\b/gi, ''),
  );
  const after = line.aside.join(' ');
  if (
    /^(?:lemon|lime|orange|grapefruit)$/.test(bare) &&
    line.amounts[0]?.unit == null &&
    line.amounts.length === 1 &&
    !/\b(?:slice|wedge|zest(?:ed)?|segment|peel|cut|halve|quarter)/i.test(after)
  ) {
    if (/\bjuiced?\b/i.test(after) || line.brackets.some((text) => /^juiced?\b/i.test(text)))
      return { line: { ...line, words: `${bare} juice` }, as: 'fruit' };
  }
  if (
    /^(?:lemon|lime|orange|grapefruit)$/.test(bare) &&
    /^(?:(?:finely )?(?:grated )?)?zest(?:ed)?(?: only)?$/i.test(after)
  )
    return { line: { ...line, words: `${bare} zest` }, as: 'fruit' };
  return { line, as: null };
}

/** A unit word may belong to the food: '2 sausages', '1 rib eye steak', 'hearts of palm'. */
function readings(line: ReadLine): ReadLine[] {
  const [first] = line.amounts;
  const unit = first?.unit;
  if (!unit || line.amounts.length !== 1 || unit.grams !== undefined || unit.ml !== undefined) return [line];
  const word = /(\p{L}+)\.?$/u.exec(line.amountText)?.[1];
  if (!word) return [line];
  return [
    line,
    {
      ...line,
      amounts: [{ value: first.value, unit: null }],
      words: `${word} ${line.words.replace(/^of /i, '')}`.trim(),
    },
  ];
}

/** 'boneless, skinless chicken thighs': the food stands behind the comma. */
function joined(line: ReadLine): ReadLine {
  let { words, aside } = line;
  while (aside.length > 0 && words !== '' && stripped(words) === '') {
    words = `${words} ${aside[0]}`;
    aside = aside.slice(1);
  }
  return { ...line, words, aside };
}

/** 'mug' is no unit of any table until the household says what it holds. */
function withTaughtUnits(line: ReadLine, learnt: Learnt): ReadLine {
  const [first] = line.amounts;
  if (!first || first.unit || learnt.measures.length === 0) return line;
  const words = line.words.split(' ');
  const unit = learnt.measures.find((one) => foldName(one.unit) === foldName(words[0] ?? ''));
  if (!unit || words.length < 2) return line;
  return {
    ...line,
    amounts: [{ value: first.value, unit: { name: unit.unit } }],
    words: words.slice(1).join(' ').replace(/^of /i, ''),
  };
}

const blank = {
  food: null,
  called: '',
  grams: null,
  contents: null,
  remarks: [],
  question: null,
  choices: [],
  confidence: 0,
  wanted: null,
} as const;

/**
 * An ingredient line → food, grams, what it contains; or the one question that settles it.
 * @param line as typed
 * @param table the food table
 * @param learnt what the household taught; it wins
 */
export function resolveLine(line: string, table: FoodTable, learnt: Learnt = nothingLearnt): LineResult {
  return resolve(readLine(line), table, learnt, true);
}

function resolve(read: ReadLine, table: FoodTable, learnt: Learnt, mayAsk: boolean): LineResult {
  if (read.is !== 'line')
    return { ...blank, typed: read.typed, is: 'heading', called: read.words.replace(/:$/, '') };
  const results = readings(withTaughtUnits(joined(read), learnt)).map((line) =>
    resolveAs(line, read, table, learnt, mayAsk),
  );
  const rank = (result: LineResult) =>
    (result.is === 'asked' ? 0 : 1) + (result.wanted === 'food' ? 0 : 0.5) + result.confidence * 0.4;
  return results.reduce((a, b) => (rank(b) > rank(a) + 0.08 ? b : a));
}

function resolveAs(
  whole: ReadLine,
  read: ReadLine,
  table: FoodTable,
  learnt: Learnt,
  mayAsk: boolean,
): LineResult {
  const { line, as } = partOf(whole);
  const base = { ...blank, typed: read.typed, called: line.words || read.typed };
  const found = line.words === '' && line.brackets.length === 0 ? [] : findFood(line, table, learnt);
  const top = found[0];
  const ask = (wanted: 'food' | 'amount' | 'number', question: string, choices: Choice[], more: Partial<LineResult> = {}): LineResult => ({
    ...base, is: 'asked', wanted, question, choices: choices.slice(0, 3), ...more,
  }); // prettier-ignore
  const name = line.words || read.typed;
  const isSecondAmount =
    / (?:and|plus|&|\+) +(?:[\d½¼¾⅓⅔]|one |two |an? )/i.test(line.words) && !/ or /i.test(line.words);
  if (isSecondAmount || ((!top || top.confidence < sureFrom) && isTwoFoods(line)))
    return ask('food', `"${short(name)}" names more than one food: give each a line of its own.`, []);
  if (!top || top.confidence < sureFrom) {
    const choices = mayAsk ? foodChoices(found, line, table, learnt) : [];
    // A weight is a weight whatever the food: it is kept, though nothing is counted until the food is settled.
    const isMass =
      line.amounts.length > 0 &&
      line.amounts.every(({ unit, value }) => unit?.grams !== undefined && value > 0);
    const grams =
      line.statedG ??
      (isMass && !line.readings
        ? line.amounts.reduce((sum, { value, unit }) => sum + value * unit!.grams!, 0) * line.factor
        : null);
    return ask('food', `Which food is "${short(name)}"?`, choices, {
      confidence: top?.confidence ?? 0,
      grams,
    });
  }
  const facts = {
    food: top.scale.food,
    called: top.called,
    contents: top.contents,
    confidence: top.confidence,
  };
  const remarks = [...new Set([...line.remarks, ...top.remarks, ...boneRemark(line)])];
  if (line.readings) {
    const rest = read.typed.slice(read.typed.indexOf(line.amountText) + line.amountText.length).trim();
    const choices = line.readings.map((figure) => {
      const typed = `${line.amountText.replace(/[\d.,' ]*\d/, figure)} ${rest}`.trim();
      return { label: `${line.amountText.replace(/[\d.,' ]*\d/, figure)} ${top.called}`, typed };
    });
    return ask('number', `Is that ${choices.map(({ label }) => label).join(' or ')}?`, choices, {
      ...facts,
      remarks,
    });
  }
  if (line.negative || line.amounts.some(({ value }) => value < 0 && line.amounts.length === 1)) {
    return ask('number', `How much ${top.called}? An amount below zero cannot be.`, [], {
      ...facts,
      remarks,
    });
  }
  if (line.statedG !== null && line.statedG > 0)
    return { ...base, ...facts, is: 'weighed', grams: line.statedG, remarks };
  if (line.amounts.length === 0) return { ...base, ...facts, is: 'uncounted', remarks };
  const vague = line.amounts.some(({ unit }) => unit === null) ? vagueMeasure(line.words) : null;
  if (vague)
    return ask('amount', `How much is one ${vague}, in ml or in grams of ${top.called}?`, [], {
      ...facts,
      remarks,
    });
  const weighed = weigh(line, top.scale, saidOf(line), learnt, as);
  if (!weighed) {
    const unit = line.amounts.find(({ unit: one }) => one?.grams === undefined)?.unit?.name;
    const what = unit ? `one ${unit} of ${top.called}` : `one ${top.called}`;
    return ask('amount', `How many grams is ${what}?`, [], { ...facts, remarks });
  }
  return {
    ...base,
    ...facts,
    is: 'weighed',
    grams: weighed.grams,
    remarks: [...remarks, ...weighed.remarks],
  };
}

/** What is thrown away with the bone or the shell is weighed here as food: the figures come out too high. */
const boneRemark = (line: ReadLine): string[] =>
  /\b(?:bone-?in|on the bone|shell-?on|in (?:the|their) shells?)\b/i.test(
    [line.words, ...line.aside].join(' '),
  )
    ? ['weighed with bone or shell, which is counted as food']
    : [];

const vesselWords = new Set(
  foldedWords(
    'mug bowl glass ladle plate tray spoon spoonful tot wineglass teacup jug mugful bowlful scoopful shovel bucket thermos billy pot panful pan tray crate sack',
  ),
);

/** 'mug of rice', 'bowl rice': a measure that nobody has defined; an onion must not be counted for it. */
function vagueMeasure(words: string): string | null {
  const m = /^(\p{L}+)( of )?/u.exec(words);
  const folded = foldName(m?.[1] ?? '');
  if (!m || folded === '') return null;
  const isUnknown = m[2] !== undefined && !neutral.has(folded) && !foodWords.has(folded);
  return vesselWords.has(folded) || isUnknown ? m[1]! : null;
}

/** 'carrots and celery' share one amount; which has how much, nobody can know. */
function isTwoFoods(line: ReadLine): boolean {
  const parts = line.words.split(/ +(?:and|plus|&|\+) +/i).filter((part) => stripped(part) !== '');
  return (
    parts.length > 1 &&
    parts.every((part) => (matches(part.replace(/^[\d½¼¾⅓⅔./ ]+/, ''), [])[0]?.confidence ?? 0) > 0.8)
  );
}

const short = (text: string) => (text.length > 60 ? `${text.slice(0, 57)}…` : text);

/** Up to three foods the words may mean, each as a line that resolves by itself. */
function foodChoices(found: readonly Found[], line: ReadLine, table: FoodTable, learnt: Learnt): Choice[] {
  const out: Choice[] = [];
  const own = new Set(stripped(line.words).split(' '));
  // A weight from brackets stays with the line.
  const { statedG, each, amountText } = line;
  const eachText =
    each && !amountText.includes(String(each.value)) ? ` (${each.value} ${each.unit?.name} each)` : '';
  const weight = statedG === null ? eachText : ` (${statedG} g)`;
  const add = (called: string) => {
    const typed = `${amountText} ${called}${weight}`.trim();
    if (!foldedWords(called).some((word) => own.has(word))) return;
    if (out.length >= 3 || out.some((choice) => choice.label === called)) return;
    const tried = resolve(readLine(typed), table, learnt, false);
    if (tried.is === 'weighed' || tried.is === 'uncounted') out.push({ label: called, typed });
  };
  for (const { called, scale } of found) if (scale.entry) add(called);
  const words = stripped(line.words);
  if (words !== '')
    for (const food of table.search(words, 8)) {
      const entry = kitchen.find((one) => one.ndb === food.ndb && !one.standsIn);
      if (entry) add(calledAs(entry));
    }
  return out;
}

/** The unit a name stands for, for those who keep learnt measures. */
export const isUnit = (name: string): boolean => unitNamed(name) !== undefined;
