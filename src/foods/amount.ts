import { table } from '#words/table.ts';
import { readNumber, readNumberWord } from '#words/numbers.ts';
import { unitNamed, unitOf, type Unit } from './units.ts';

export type Size = 'small' | 'medium' | 'large' | 'extra large';

/** A number and what it counts; no unit means whole things ('2 onions'). */
export interface Amount {
  readonly value: number;
  readonly unit: Unit | null;
}

interface Scanned {
  value: number;
  to: number;
  spread?: [number, number];
  readings?: [string, string];
}

const near =
  /^(?:about|approx(?:imately|\.)?|around|roughly|circa|ca\.?|nearly|almost|at least|up to|some|~|a good|an? scant|an? generous|an? heaped|an? heaping|generous|scant|heaped|heaping|rounded|level|good) +/i;
const factors: readonly (readonly [RegExp, number, number, string])[] = [
  // Common practice, no source: [cup, spoon].
  [/\bheap(?:ed|ing)\b/i, 1.1, 1.5, 'heaped'],
  [/\brounded\b/i, 1.05, 1.25, 'rounded'],
  [/\bscant\b/i, 0.9, 0.9, 'scant'],
  [/\bgenerous\b/i, 1.1, 1.1, 'generous'],
];
const sizes = table<Size>({
  small: 'small', sm: 'small', sml: 'small', little: 'small', tiny: 'small', mini: 'small', thin: 'small', medium: 'medium', md: 'medium', med: 'medium',
  'medium-sized': 'medium', 'medium-size': 'medium', 'small-sized': 'small', 'large-sized': 'large', average: 'medium', regular: 'medium',
  large: 'large', lg: 'large', lge: 'large', lrg: 'large', big: 'large', thick: 'large', fat: 'large', xl: 'extra large', jumbo: 'extra large',
  'extra-large': 'extra large', huge: 'extra large', giant: 'extra large',
}); // prettier-ignore

/** A number or number word, with the range it may open: '2', '2-3', '2 to 3', 'half a'. */
function scanNumber(s: string, at: number, words: boolean): Scanned | undefined {
  const one = (from: number) => readNumber(s, from) ?? (words ? readNumberWord(s, from, true) : undefined);
  const first = one(at);
  if (!first) return undefined;
  const gap = /^ *(?:-|to|or|\/)+ *(?=[\d¼-¾⅐-⅞a-z.])/i.exec(s.slice(first.to, first.to + 12))?.[0];
  // '400g/14oz' never comes here; '1-inch' and '1 or more' have no second number.
  if (gap !== undefined && !(gap.includes('/') && gap.trim() !== '/')) {
    const second = gap.includes('/') ? undefined : one(first.to + gap.length);
    const isSecond =
      second !== undefined &&
      second.value > first.value &&
      first.value >= 0 &&
      second.value <= first.value * 10;
    // '1 14-oz can' has no dash between; '1-14 oz' would be a wild range and falls out by the factor of ten.
    if (isSecond && second.otherwise === undefined && first.otherwise === undefined)
      return { value: (first.value + second.value) / 2, to: second.to, spread: [first.value, second.value] };
  }
  const text = s.slice(first.from, first.to);
  return {
    value: first.value,
    to: first.to,
    ...(first.otherwise === undefined
      ? {}
      : { readings: [String(first.value), String(first.otherwise)] as [string, string] }),
    ...(text === '' ? {} : {}),
  };
}

/** The unit that starts here, after a space or dash; undefined when the next word is none. */
function scanUnit(s: string, at: number): { unit: Unit; to: number } | undefined {
  const rest = s.slice(at, at + 40);
  const fl = /^[ -]*(?:fl\.? ?oz\.?|fluid[ -]ounces?)(?!\p{L})/iu.exec(rest);
  if (fl) return { unit: unitNamed('floz')!, to: at + fl[0].length };
  const m = /^[ -]*(\p{L}+|#)(\.(?!\d))?(?!\p{L})/u.exec(rest);
  // 't-bone' holds no teaspoon.
  if (!m || (m[1]!.length === 1 && /^-\p{L}/u.test(rest.slice(m[0].length)))) return undefined;
  const unit = m[1] === '#' ? unitNamed('lb') : unitOf(m[1]!);
  if (!unit) return undefined;
  return { unit, to: at + m[0].length };
}

/** Defined by law, so a line may be weighed by it. */
export const isExact = (unit: Unit | null) =>
  unit !== null && (unit.grams !== undefined || unit.ml !== undefined) && unit.loose !== true;
const spoons = new Set(['cup', 'tsp', 'tbsp', 'dessertspoon', 'pint', 'quart', 'gallon']);
export const isMetric = (unit: Unit) => /^(?:k?g|mg|[cd]?l|ml)$/.test(unit.name);

/** What one amount came to, and where it ends. */
export interface Found {
  amounts: Amount[];
  factor: number;
  size: Size | null;
  each: Amount | null;
  statedG: number | null;
  to: number;
  remarks: string[];
  readings: [string, string] | null;
  negative: boolean;
}

/** Words between a number and its unit: sizes, 'heaped', 'lightly packed'. Gives where they end. */
function scanManner(s: string, at: number, found: Found): number {
  for (;;) {
    const m = /^[ -]*((?:extra[ -])?[\p{L}-]+)\.?(?= )/u.exec(s.slice(at, at + 30));
    if (!m) return at;
    const word = m[1]!.toLowerCase();
    const size = sizes[word.replace(' ', '-')] ?? sizes[word];
    if (size) found.size = size;
    else if (
      !/^(?:heap(?:ed|ing)|rounded|scant|level|generous|good|full|whole|packed|lightly|loosely|firmly|tightly|well|loose|overflowing|dry|metric|us|standard)$/.test(
        word,
      )
    )
      return at;
    else if (
      (word === 'whole' || word === 'dry' || word === 'good' || word === 'full') &&
      !scanUnit(s, at + m[0].length)
    )
      return at;
    const factor = factors.find(([looks]) => looks.test(word));
    if (factor) {
      const spoon = scanUnit(s, at + m[0].length)?.unit.name;
      found.factor *= spoon === 'tbsp' || spoon === 'tsp' || spoon === 'dessertspoon' ? factor[2] : factor[1];
      found.remarks.push(`${factor[3]}: taken as ${found.factor} times a level one (common practice)`);
    }
    at += m[0].length;
  }
}

/** 'a few sprigs', 'several leaves': three, and said so. */
function fewOf(s: string, at: number, found: Found): Scanned | undefined {
  const m =
    /^(?:a few|few|several|some (?=(?:drops|sprigs|leaves|slices|cloves|stalks)\b))(?: good| large| small)?(?= )/i.exec(
      s.slice(at, at + 24),
    );
  if (!m) return undefined;
  found.remarks.push(`'${m[0].trim()}' taken as 3`);
  return { value: 3, to: at + m[0].trimEnd().length };
}

/** 'pinch of salt', 'small bunch coriander', 'knob of butter': one, though no number stands there. */
function bareUnit(s: string, at: number, found: Found): Found | undefined {
  const m =
    /^(?:(small|large|big|good|generous|heaped|level|medium|little|fat) )?(pinch|handful|bunch|knob|dash|splash|drizzle|sprig|glug|smidgen|sprinkle|tin|can|jar|packet|pack|package|stick|head|bag|squeeze|drop|stalk|clove|slice|tbsp|tsp|cup|teaspoon|tablespoon)( of|(?= ))/i.exec(
      s.slice(at, at + 40),
    );
  if (!m) return undefined;
  const isLoose = /^(?:pinch|handful|bunch|knob|dash|splash|drizzle|sprig|glug|smidgen)$/i.test(m[2]!);
  const unit = unitOf(m[2]!.toLowerCase());
  if (!unit || (!isLoose && !m[3])) return undefined;
  const size = sizes[m[1]?.toLowerCase() ?? ''];
  if (size) found.size = size;
  return { ...found, amounts: [{ value: 1, unit }], to: at + m[0].length };
}

/** '2 x 400 g tins', '2 (14 oz) cans', '1 14-oz can', '4 6-oz fillets', '1 (2-inch) piece': what one of them is. */
function scanPack(s: string, count: Scanned, found: Found): Found | undefined {
  const at = count.to;
  const times = /^ *[x×*] *(?=[\d.¼-¾⅐-⅞])/i.exec(s.slice(at, at + 6));
  const gap = times ?? /^(?: *[([] *(?:about |approx\.? |~)?| +)(?=[\d.¼-¾⅐-⅞])/.exec(s.slice(at, at + 18));
  if (!gap) return undefined;
  const inner = scanNumber(s, at + gap[0].length, false);
  const unit = inner && scanUnit(s, inner.to);
  if (!inner || !unit || inner.value <= 0) return undefined;
  if (/^(?:inch|cm)$/.test(unit.unit.name)) {
    const piece = /^[ -]*[)\]]? *(?=(?:piece|knob|thumb|length|stick|chunk|bit)\b)/i.exec(
      s.slice(unit.to, unit.to + 12),
    );
    return piece
      ? {
          ...found,
          amounts: [{ value: count.value * inner.value, unit: unit.unit }],
          to: unit.to + piece[0].length,
        }
      : undefined;
  }
  if (!isExact(unit.unit)) return undefined;
  let to = unit.to;
  let each: Amount = { value: inner.value, unit: unit.unit };
  const other = /^ *[/,|] *(?=[\d.¼-¾⅐-⅞])/.exec(s.slice(to, to + 6));
  const second = other && scanNumber(s, to + other[0].length, false);
  const secondUnit = second && scanUnit(s, second.to);
  if (second && secondUnit && isExact(secondUnit.unit)) {
    to = secondUnit.to;
    if (isMetric(secondUnit.unit) && !isMetric(each.unit!))
      each = { value: second.value, unit: secondUnit.unit };
  }
  const closed = /^ *(?:each)? *[)\]]?/i.exec(s.slice(to, to + 12))![0];
  to += closed.length;
  const container = scanUnit(s, scanManner(s, to, found));
  if (container && !isExact(container.unit))
    return { ...found, amounts: [{ value: count.value, unit: container.unit }], each, to: container.to };
  const isPlain = !times && !/[)\]]/.test(closed);
  // '1 500 g' is one of 500 g, or 1500 g as the French write it: only people can tell.
  const spaced =
    isPlain && /^\d{1,3} \d{3}(?![\d.,])/.test(s.slice(count.to - String(count.value).length, to));
  if (spaced && !/^[\d,.]+-/.test(s.slice(at + gap[0].length)))
    return {
      ...found,
      amounts: [{ value: count.value * each.value, unit: each.unit }],
      readings: [`${count.value} x ${inner.value}`, String(count.value * 1000 + inner.value)],
      to,
    };
  return { ...found, amounts: [{ value: count.value, unit: null }], each, to };
}

/** One amount with all that may hang on it, starting exactly at a place. */
export function scanAmount(s: string, start: number, words: boolean): Found | undefined {
  const found: Found = {
    amounts: [],
    factor: 1,
    size: null,
    each: null,
    statedG: null,
    to: start,
    remarks: [],
    readings: null,
    negative: false,
  };
  let at = start;
  for (let m = near.exec(s.slice(at, at + 40)); m; m = near.exec(s.slice(at, at + 40))) {
    const [lead] = m;
    if (/^some/i.test(lead)) return undefined;
    const factor = factors.find(([looks]) => looks.test(lead));
    if (factor) {
      const spoon = /^\W*[\d/. ½¼¾⅓⅔⅛a-z]{0,8}?(?:tsp|tbsp|teaspoon|tablespoon)/i.test(
        s.slice(at + m[0].length, at + 30),
      );
      found.factor *= spoon ? factor[2] : factor[1];
      found.remarks.push(`${factor[3]}: taken as ${found.factor} times a level one (common practice)`);
      // 'a heaped tablespoon': the article was the number.
      if (/^an? /i.test(m[0])) {
        const unit = scanUnit(s, at + m[0].length - 1);
        if (unit) return { ...found, amounts: [{ value: 1, unit: unit.unit }], to: unit.to };
      }
    }
    at += m[0].length;
  }
  const number = (words ? fewOf(s, at, found) : undefined) ?? scanNumber(s, at, words);
  if (!number) return words ? bareUnit(s, at, found) : undefined;
  if (number.spread) found.remarks.push(`midpoint of ${number.spread.map(say).join(' to ')}`);
  if (number.readings) found.readings = number.readings;
  found.negative = number.value < 0;
  at = number.to;

  const pack = scanPack(s, { ...number }, found);
  if (pack) return pack;

  at = scanManner(s, at, found);
  const unit = scanUnit(s, at);
  const value = number.value;
  if (!unit) return { ...found, amounts: [{ value, unit: null }], to: at };
  at = unit.to;
  // '15 oz can chickpeas', '400g tin tomatoes': one container that holds so much.
  const holder = isExact(unit.unit) && !spoons.has(unit.unit.name) ? scanUnit(s, at) : undefined;
  if (holder?.unit.holds && !number.spread && !/^(?:pot|block|tube)$/.test(holder.unit.name) && s[at] !== '.')
    return {
      ...found,
      amounts: [{ value: 1, unit: holder.unit }],
      each: { value, unit: unit.unit },
      to: holder.to,
    };
  found.amounts.push({ value, unit: unit.unit });
  if (unit.unit.name === 'dozen') found.amounts = [{ value: value * 12, unit: null }];

  // '400g/14oz', '1 cup / 240 g', '½ cup/125 ml', '8 oz | 225 g'
  const slash = /^ *[/|] *(?=[\d.¼-¾⅐-⅞])/.exec(s.slice(at, at + 6));
  if (slash) {
    const second = scanAmount(s, at + slash[0].length, false);
    const other = second?.amounts[0];
    if (second && other?.unit && isExact(other.unit)) {
      if (other.unit.grams !== undefined && (isMetric(other.unit) || unit.unit.grams === undefined)) {
        if (!isMetric(unit.unit) || unit.unit.grams === undefined)
          found.statedG = second.statedG ?? other.value * other.unit.grams;
      }
      return { ...found, to: second.to };
    }
  }
  // '1 cup plus 2 tbsp', '2 lb 4 oz', '1 lb, 2 oz', '1 kg 200 g'
  for (;;) {
    const plus =
      /^ *(?:plus|\+|and|&|,)? *(?=[\d.¼-¾⅐-⅞])|^ +(?:plus|and|\+|minus|less) +(?=an? |one |two )/i.exec(
        s.slice(at, at + 12),
      );
    const less = /^ +(?:minus|less) +(?=[\da¼-¾⅐-⅞])/i.exec(s.slice(at, at + 12));
    const join = less ?? plus;
    if (!join || (join[0].length === 0 && s[at] !== ' ')) break;
    const next = scanNumber(s, at + join[0].length, true);
    const nextUnit = next && scanUnit(s, next.to);
    const last = found.amounts.at(-1)!.unit;
    if (!next || !nextUnit || !last || !isExact(nextUnit.unit) || !isExact(last)) break;
    const said = /plus|\+|and|&|minus|less/i.test(join[0]);
    const sameKind = (nextUnit.unit.grams === undefined) === (last.grams === undefined);
    const smaller = (nextUnit.unit.grams ?? nextUnit.unit.ml!) < (last.grams ?? last.ml!);
    if (!sameKind || (!said && !smaller)) break;
    found.amounts.push({ value: less ? -next.value : next.value, unit: nextUnit.unit });
    at = nextUnit.to;
  }
  return { ...found, to: at };
}

const say = (value: number) => String(Math.round(value * 1000) / 1000);

export const emptyFound = (): Found => ({
  amounts: [],
  factor: 1,
  size: null,
  each: null,
  statedG: null,
  to: 0,
  remarks: [],
  readings: null,
  negative: false,
});

/** The weight or volume in a bracket ('about 200 g', '14 oz/400 g'), the metric one when there are two. */
export function weightIn(text: string): Amount | undefined {
  if (text.length > 60) return undefined;
  const all: Amount[] = [];
  for (const m of text.matchAll(/(?<![\p{L}\p{N}.,]|\d\/)(?=[\d¼-¾⅐-⅞.])/gu)) {
    const number = scanNumber(text, m.index, false);
    const unit = number && scanUnit(text, number.to);
    if (number && unit && isExact(unit.unit) && number.value > 0 && !number.readings)
      all.push({ value: number.value, unit: unit.unit });
  }
  const masses = all.filter((amount) => amount.unit!.grams !== undefined);
  return (
    masses.find((amount) => isMetric(amount.unit!)) ??
    masses[0] ??
    all.find((amount) => /^(?:floz|ml|l|cl|dl)$/.test(amount.unit!.name))
  );
}
