import { Refusal } from '#core/refusal.ts';
import { energyKcal as kcalIn, massG, unitNamed } from '#core/units.ts';
import { Ambiguous } from './ambiguous.ts';
import { optional, part, quantities } from './part.ts';
import type { Reading } from './reading.ts';
import { sayNumber } from './say.ts';
import type { Token } from './tokens.ts';

type Figure = Token & { readonly is: 'number' | 'quantity' };

/** The free figure behind one of these words, 'energy 2200', 'energy: 2200', or before it; both are taken. */
function takeBeside(reading: Reading, words: readonly string[]) {
  for (const index of reading.left()) {
    const word = reading.all[index]!;
    if (word.is !== 'word' || !words.includes(word.plain)) continue;
    const between = [':', '=', 'of'].includes(reading.at(index + 1)?.plain ?? '') ? 1 : 0;
    for (const beside of [index + 1 + between, index - 1]) {
      const token = reading.at(beside);
      if (token?.is !== 'number' && token?.is !== 'quantity') continue;
      reading.settleNumbers([beside]);
      reading.take(index, beside);
      takeADay(reading, Math.max(index, beside) + 1);
      return { word, figure: token, percentAt: beside > index ? beside + 1 : -1 };
    }
  }
  return undefined;
}

/** Every figure of a person is one of a day: 'a day', 'per day', 'daily' behind it add nothing. */
function takeADay(reading: Reading, at: number): void {
  const [first, second] = [reading.at(at)?.plain ?? '', reading.at(at + 1)?.plain ?? ''];
  if (['daily', '/day'].includes(first)) reading.take(at);
  if (['a', 'per', 'each', 'every', '/'].includes(first) && second === 'day') reading.take(at, at + 1);
}

const cannotBe = (what: string, typed: string, low: number, high: number, unit = '') =>
  new Refusal('out-of-range', `${what} ${typed} cannot be; from ${low} to ${high}${unit} can.`);

/** 'portion 0.6', '60 % portion', with no unit. @throws Refusal 'out-of-range' */
export const portion = optional(
  part<number>('a portion such as portion 0.6', (reading) => {
    const found = takeBeside(reading, ['portion', 'portions', 'eats']);
    if (!found) return undefined;
    const { figure, percentAt } = found;
    const isPercent = reading.at(percentAt)?.plain === '%';
    if (isPercent) reading.take(percentAt);
    const value = figure.value / (isPercent ? 100 : 1);
    if (figure.is === 'quantity' || !(value >= 0.1 && value <= 4))
      throw cannotBe('portion', figure.typed, 0.1, 4);
    return value;
  }),
);

/** 'No sodium limit': none of their own any more; the published figure for the age holds. */
export const noLimit = optional(
  part<true>('no sodium limit', (reading) => {
    const at = [...reading.left()].find(
      (i) =>
        /^(?:limit|limits)$/.test(reading.all[i]!.plain) &&
        /^(?:sodium|salt)$/.test(reading.at(i - 1)?.plain ?? '') &&
        /^(?:no|without)$/.test(reading.at(i - 2)?.plain ?? ''),
    );
    if (at === undefined) return undefined;
    reading.take(at, at - 1, at - 2);
    return true;
  }),
);

/** 'sodium 1500', 'sodium 1.5 g': mg a day. @throws Refusal 'out-of-range' */
export const sodiumMg = optional(
  part<number>('a sodium limit such as sodium 1500', (reading) => {
    const figure = takeBeside(reading, ['sodium'])?.figure;
    if (!figure) return undefined;
    const isOther = figure.is === 'quantity' && figure.unit.kind !== 'mass';
    const mg = figure.value * (figure.is === 'quantity' ? figure.unit.factor / massG('mg') : 1);
    if (isOther || !(mg >= 100 && mg <= 10_000)) throw cannotBe('sodium', figure.typed, 100, 10_000, ' mg');
    return Math.round(mg * 1000) / 1000;
  }),
);

/** Without a unit, more than anybody eats in a day, kcal: it may be kJ. Chosen. */
const mostBareKcal = 5000;

/**
 * 'energy 2200', '2200 kcal', 'energy 9000 kJ', '9 MJ': kcal a day. What was told in joules is said in kcal.
 * @throws Refusal 'out-of-range' or 'two-amounts', Ambiguous where a figure without unit may be kJ
 * @source nist-sp811
 */
export const energyKcal = optional(
  part<number>('an energy need such as 2200 kcal', (reading) => {
    const told = quantities(reading, 'energy');
    const [first, second] = told;
    if (!first) {
      const bare = takeBeside(reading, ['energy', 'kcal', 'calories', 'kj', 'mj']);
      return bare && bareKcal(reading, bare.word, bare.figure);
    }
    // A packet's way: '9200 kJ (2200 kcal)' is one amount.
    if (second && Math.abs(second.value - first.value) > 0.02 * first.value)
      throw new Refusal('two-amounts', `I read two energies, ${first.typed} and ${second.typed}; give one.`);
    for (const { index } of told) {
      reading.settleNumbers([index]);
      reading.take(index);
      takeADay(reading, index + 1);
    }
    reading.keyword('energy');
    const inKcal = told.find(({ index }) => unitOf(reading.all[index]!) === 'kcal');
    return inKcal ? heldKcal(inKcal.value, inKcal.typed) : saidInKcal(reading, first.value, first.typed);
  }),
);

const unitOf = (token: Token) => (token.is === 'quantity' ? token.unit.symbol : undefined);

function bareKcal(reading: Reading, { plain, typed }: Token, figure: Figure): number {
  if (figure.is === 'quantity') throw cannotBe('energy', figure.typed, 200, 10_000, ' kcal');
  const unit = unitNamed(plain, 'energy')?.symbol;
  if (unit === 'kJ' || unit === 'MJ')
    return saidInKcal(reading, figure.value * kcalIn(unit), `${figure.typed} ${typed}`);
  if (unit === undefined && figure.value > mostBareKcal) {
    const withUnit = (symbol: string) => ({
      label: `${figure.typed} ${symbol}`,
      request: reading.rewritten([{ from: figure.from, to: figure.to, into: `${figure.typed} ${symbol}` }]),
    });
    throw new Ambiguous(`energy ${figure.typed}: kJ or kcal? Which is meant?`, ['kJ', 'kcal'].map(withUnit));
  }
  return heldKcal(figure.value, figure.typed);
}

function saidInKcal(reading: Reading, kcal: number, typed: string): number {
  const whole = Math.round(heldKcal(kcal, typed));
  reading.remarks.push(`${typed} taken as ${sayNumber(whole)} kcal`);
  return whole;
}

function heldKcal(kcal: number, typed: string): number {
  if (!(kcal >= 200 && kcal <= 10_000)) throw cannotBe('energy', typed, 200, 10_000, ' kcal');
  return kcal;
}
