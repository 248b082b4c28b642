import { stripped } from './said.ts';
import type { ReadLine } from './read.ts';
import type { Learnt } from './weigh.ts';
import { foldName } from './words.ts';

/** The part of a fruit: juice or zest has an entry of its own, weighed by the fruit. */
export function partOf(line: ReadLine): { line: ReadLine; as: 'fruit' | null } {
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
    !/\b(?:slice|wedge|segment|peel|cut|halve|quarter)/i.test(after) &&
    (/\bjuiced?\b/i.test(after) || !/\bzest/i.test(after))
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
export function readings(line: ReadLine): ReadLine[] {
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
export function joined(line: ReadLine): ReadLine {
  let { words, aside } = line;
  while (aside.length > 0 && words !== '' && stripped(words) === '') {
    words = `${words} ${aside[0]}`;
    aside = aside.slice(1);
  }
  return { ...line, words, aside };
}

/** 'mug' is no unit of any table until the household says what it holds. */
export function withTaughtUnits(line: ReadLine, learnt: Learnt): ReadLine {
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
