import type { Found } from './find.ts';
import { saidOf, stripped } from './said.ts';
import type { LineResult } from './line-result.ts';
import { matches } from './match.ts';
import type { ReadLine } from './read.ts';
import { foodWords, neutral } from './vocabulary.ts';
import { type Learnt, weigh } from './weigh.ts';
import { foldedWords, foldName } from './words.ts';

/**
 * The grams of a line whose food is settled, or the question about its amount.
 * @param base the result so far
 * @param whole.as the fruit whose part is used weighs the line
 */
export function amountOf(
  base: LineResult,
  line: ReadLine,
  top: Found,
  whole: { learnt: Learnt; as: 'fruit' | null; typed: string },
): LineResult {
  const facts: LineResult = {
    ...base,
    food: top.scale.food,
    called: top.called,
    contents: top.contents,
    confidence: top.confidence,
    remarks: [...new Set([...line.remarks, ...top.remarks, ...boneRemark(line)])],
  };
  const ask = (
    wanted: 'amount' | 'number',
    question: string,
    choices: LineResult['choices'] = [],
  ): LineResult => ({
    ...facts,
    is: 'asked',
    wanted,
    question,
    choices: choices.slice(0, 3),
  });
  if (line.readings) {
    const choices = figures(line.readings, line, whole.typed, top.called);
    return ask('number', `Is that ${choices.map(({ label }) => label).join(' or ')}?`, choices);
  }
  if (line.negative || line.amounts.some(({ value }) => value < 0 && line.amounts.length === 1))
    return ask('number', `How much ${top.called}? An amount below zero cannot be.`);
  if (line.statedG !== null && line.statedG > 0) return { ...facts, is: 'weighed', grams: line.statedG };
  if (line.amounts.length === 0) return { ...facts, is: 'uncounted' };
  const vague = line.amounts.some(({ unit }) => unit === null) ? vagueMeasure(line.words) : null;
  if (vague) return ask('amount', `How much is one ${vague}, in ml or in grams of ${top.called}?`);
  const weighed = weigh(line, top.scale, saidOf(line), whole.learnt, whole.as);
  if (!weighed) {
    const unit = line.amounts.find(({ unit: one }) => one?.grams === undefined)?.unit?.name;
    return ask('amount', `How many grams is ${unit ? `one ${unit} of ${top.called}` : `one ${top.called}`}?`);
  }
  return {
    ...facts,
    is: 'weighed',
    grams: weighed.grams,
    remarks: [...facts.remarks, ...weighed.remarks],
  };
}

/** '1,500 g' as the two lines it may mean. */
function figures(readings: readonly string[], line: ReadLine, typed: string, called: string) {
  const rest = typed.slice(typed.indexOf(line.amountText) + line.amountText.length).trim();
  return readings.map((figure) => {
    const amount = line.amountText.replace(/[\d.,' ]*\d/, figure);
    return { label: `${amount} ${called}`, typed: `${amount} ${rest}`.trim() };
  });
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
  const isUnknown = m[2] !== undefined && !neutral.has(folded) && !foodWords().has(folded);
  return vesselWords.has(folded) || isUnknown ? m[1]! : null;
}

/** 'carrots and celery' share one amount; which has how much, nobody can know. */
export function isTwoFoods(line: ReadLine): boolean {
  const parts = line.words.split(/ +(?:and|plus|&|\+) +/i).filter((part) => stripped(part) !== '');
  return (
    parts.length > 1 &&
    parts.every((part) => (matches(part.replace(/^[\d½¼¾⅓⅔./ ]+/, ''), [])[0]?.confidence ?? 0) > 0.8)
  );
}

export const short = (text: string) => (text.length > 60 ? `${text.slice(0, 57)}…` : text);
