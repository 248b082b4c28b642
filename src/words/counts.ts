import { table } from './table.ts';
import { Refusal } from '#core/refusal.ts';
import { Ambiguous } from './ambiguous.ts';
import { slips } from './near.ts';
import { type Names, type Part, part } from './part.ts';
import type { Reading } from './reading.ts';

const twofold = table<number>({
  double: 2,
  doubled: 2,
  twice: 2,
  triple: 3,
  tripled: 3,
  thrice: 3,
});

/** Which of the numbers beside an x is the factor: the one it is glued to, else the one behind it. */
function besideX(reading: Reading, index: number): number | undefined {
  const [before, x, after] = [reading.at(index - 1), reading.all[index]!, reading.at(index + 1)];
  // '4 x 500 g' counts trays.
  if (after?.is === 'quantity') return undefined;
  if (before?.is === 'number' && before.to === x.from && (after?.is !== 'number' || after.from > x.to))
    return index - 1;
  if (after?.is === 'number') return before?.is === 'number' && after.value > 100 ? undefined : index + 1;
  return before?.is === 'number' ? index - 1 : undefined;
}

function factorWithSign(reading: Reading): number[] | undefined {
  for (const index of reading.left()) {
    const token = reading.all[index]!;
    const next = reading.at(index + 1);
    if (token.is === 'mark' && token.mark === 'x') {
      const beside = besideX(reading, index);
      if (beside !== undefined) return [beside, index];
    }
    if ((token.plain === 'by' || token.plain === 'times') && next?.is === 'number') return [index + 1, index];
    if (token.is === 'number' && next?.plain === '%') return [index, index + 1];
    if (token.is === 'number' && token.spelled && /^half\b/.test(token.plain)) return [index];
  }
  return undefined;
}

/** 'x1.5', '1.5 x', 'by 1.5', '150 %', 'double', 'half'. */
export const factor = part<number>('a factor such as x1.5', (reading) => {
  const found = factorWithSign(reading);
  const number = found && reading.all[found[0]!]!;
  if (found && number?.is === 'number') {
    reading.settleNumbers([found[0]!]);
    reading.take(...found);
    const times = number.value / (reading.all[found.at(-1)!]!.plain === '%' ? 100 : 1);
    if (!(times > 0 && times <= 100))
      throw new Refusal('bad-factor', `x${number.value} is no factor I can cook by; from 0.01 to 100 is.`);
    return times;
  }
  const index = reading.keyword(...Object.keys(twofold));
  if (index === undefined) return undefined;
  const typed = reading.all[index]!.plain;
  return twofold[typed] ?? (typed.startsWith('t') && !typed.startsWith('tw') ? 3 : 2);
});

const servingNames = [
  'servings',
  'serving',
  'portions',
  'portion',
  'people',
  'persons',
  'person',
  'eaters',
  'heads',
];
const servingLeads = ['for', 'serves', 'serve', 'serving', 'servings', 'portions', 'feeds', 'makes'];
const rangeMarks = ['-', 'to', 'or'];

/** The first of these words that a token is, one typing slip forgiven from five letters on. */
function nearWord(reading: Reading, index: number, words: readonly string[]): string | undefined {
  const token = reading.at(index);
  if (token?.is !== 'word') return undefined;
  if (words.includes(token.plain)) return token.plain;
  if (token.plain.length < 5) return undefined;
  return words.find((word) => word.length >= 5 && slips(token.plain, word, 1) === 1);
}

interface Counted {
  /** Numbers typed: one, or the two ends of a range. */
  readonly ends: readonly number[];
  readonly taken: readonly number[];
  readonly remark: string | undefined;
}

function servingsTyped(reading: Reading): Counted | undefined {
  for (const wantsName of [true, false])
    for (const index of reading.left()) {
      if (reading.all[index]!.is !== 'number') continue;
      const ends = [index];
      let last = index;
      const second = reading.at(index + 2);
      if (rangeMarks.includes(reading.at(index + 1)?.plain ?? '') && second?.is === 'number') {
        ends.push(index + 2);
        last = index + 2;
      }
      const named = nearWord(reading, last + 1, servingNames);
      let lead = index - 1;
      while (['the', 'us', 'about', ':', '='].includes(reading.at(lead)?.plain ?? '')) lead -= 1;
      const led = nearWord(reading, lead, servingLeads);
      if (wantsName ? named === undefined : led === undefined) continue;
      const typed = [...(named === undefined ? [] : [last + 1]), ...(led === undefined ? [] : [lead])];
      const slip = typed.find((i) => ![named, led].includes(reading.all[i]!.plain));
      const remark =
        slip === undefined
          ? undefined
          : `read "${reading.all[slip]!.typed}" as ${slip === lead && led !== undefined ? led : named!}`;
      const from = led === undefined ? index : lead;
      return {
        ends,
        taken: [...typed, ...Array.from({ length: last - from + 1 }, (_, k) => from + k)],
        remark,
      };
    }
  return undefined;
}

/** 'For all of us', 'for everybody': as many as eat here. */
function forEverybody(reading: Reading, names: Names): number | undefined {
  const index = [...reading.left()].find(
    (i) =>
      /^(?:all|everyone|everybody|us)$/.test(reading.all[i]!.plain) &&
      reading.wordBefore(i, 'for') &&
      names.eaters.length > 0,
  );
  if (index === undefined) return undefined;
  reading.take(index, index - 1);
  if (reading.at(index + 1)?.plain === 'of' && reading.at(index + 2)?.plain === 'us')
    reading.take(index + 1, index + 2);
  return names.eaters.length;
}

/**
 * How many people or servings: 'for 3', 'for two', '8 servings', 'serves 8', 'for the two of us'.
 * @param range what '4-6' becomes: a question, or the midpoint, said so
 */
const servingsBy = (range: 'ask' | 'middle'): Part<number> =>
  part('how many servings, such as 8 servings', (reading, names) => {
    const found = servingsTyped(reading);
    if (!found) return range === 'ask' ? forEverybody(reading, names) : undefined;
    const [first, second] = found.ends.map((i) => reading.all[i]!);
    if (first?.is !== 'number' || (second && second.is !== 'number')) return undefined;
    if (second && range === 'ask')
      throw new Ambiguous(
        `"${reading.text.slice(first.from, second.to)}" can be read two ways. Which is meant?`,
        [first, second].map(({ typed }) => ({
          label: typed,
          request: reading.rewritten([{ from: first.from, to: second.to, into: typed }]),
        })),
      );
    reading.settleNumbers(found.ends);
    reading.take(...found.taken);
    if (found.remark) reading.remarks.push(found.remark);
    const value = second ? (first.value + second.value) / 2 : first.value;
    if (second)
      reading.remarks.push(`${first.typed} to ${second.typed} servings: ${value} taken, the midpoint`);
    if (!(value > 0 && value <= 1000))
      throw new Refusal('bad-servings', `${first.typed} servings cannot be; from 1 to 1000 can.`);
    return value;
  });

export const servings = servingsBy('ask');

/** The same where nobody waits to be asked, as in a recipe's heading: a range becomes its midpoint. */
export const servingsAbout = servingsBy('middle');

/** A count in front of a word: '14 pouches', '4 trays'. */
export const countOf = (...words: string[]): Part<number> =>
  part(`how many ${words[0]}`, (reading) => {
    for (const index of reading.left()) {
      const token = reading.all[index]!;
      const named = reading.at(index + 1);
      const near = nearWord(reading, index + 1, words);
      if (token.is !== 'number' || named?.is !== 'word' || near === undefined) continue;
      reading.settleNumbers([index]);
      if (near !== named.plain) reading.remarks.push(`read "${named.typed}" as ${near}`);
      reading.take(index, index + 1);
      if (!(Number.isInteger(token.value) && token.value >= 1 && token.value <= 1000)) {
        throw new Refusal(
          'bad-count',
          `${token.typed} ${named.typed} cannot be; a whole number from 1 to 1000 can.`,
        );
      }
      return token.value;
    }
    return undefined;
  });

/** How many pouches, with the meal's name between or not: 'two curry pouches', '3 pouches'. */
export const pouchCount = part<number>('how many pouches', (reading) => {
  for (const index of reading.left()) {
    if (!/^(?:pouch|pouches|bag|bags)$/.test(reading.all[index]!.plain)) continue;
    reading.take(index);
    for (let at = index - 1; at >= Math.max(0, index - 5); at--) {
      const token = reading.at(at);
      if (token?.is !== 'number' || !Number.isInteger(token.value) || token.value < 1) continue;
      reading.take(at);
      return token.value;
    }
    return undefined;
  }
  return undefined;
});

/** 'page 2', as buttons that turn a list say it. */
export const pageNumber = part<number>('a page, such as page 2', (reading) => {
  for (const index of reading.left()) {
    const token = reading.all[index]!;
    if (token.is !== 'number' || !reading.wordBefore(index, 'page')) continue;
    reading.take(index, index - 1);
    return Math.max(1, Math.round(token.value));
  }
  return undefined;
});
