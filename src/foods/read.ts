import { plain, readNumber, readNumberWord } from '#words/numbers.ts';
import { unitOf, unitNamed, type Unit } from './units.ts';

export type Size = 'small' | 'medium' | 'large' | 'extra large';

/** A number and what it counts; no unit means whole things ('2 onions'). */
export interface Amount {
  readonly value: number;
  readonly unit: Unit | null;
}

/** A line taken apart, before any food is looked for. Pure syntax. */
export interface ReadLine {
  readonly typed: string;
  readonly is: 'line' | 'heading' | 'empty';
  /** What is asked for, to be added up ('1 cup plus 2 tbsp'); none when the line names no amount. */
  readonly amounts: readonly Amount[];
  /** 1 save for 'heaped', 'scant' and their like. */
  readonly factor: number;
  readonly size: Size | null;
  /** What one tin, jar or packet holds: '2 x 400 g tins'. */
  readonly each: Amount | null;
  /** The weight the author gives for the whole line: '3 carrots (200 g)', '400g/14oz'. */
  readonly statedG: number | null;
  /** The amount as typed and, where a figure can be read two ways, the two readings written out. */
  readonly amountText: string;
  readonly readings: readonly [string, string] | null;
  readonly negative: boolean;
  /** The words left for the food, up to the first comma; then the words after it; then what stood in brackets. */
  readonly words: string;
  readonly aside: readonly string[];
  readonly brackets: readonly string[];
  /** 'juice of 2 limes', 'zest of 1 lemon': only that part of the fruit is used. */
  readonly part: 'juice' | 'zest' | null;
  readonly toTaste: boolean;
  readonly optional: boolean;
  readonly remarks: readonly string[];
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
const sizes: Readonly<Record<string, Size>> = {
  small: 'small', sm: 'small', sml: 'small', little: 'small', tiny: 'small', mini: 'small', thin: 'small', medium: 'medium', md: 'medium', med: 'medium',
  'medium-sized': 'medium', 'medium-size': 'medium', 'small-sized': 'small', 'large-sized': 'large', average: 'medium', regular: 'medium',
  large: 'large', lg: 'large', lge: 'large', lrg: 'large', big: 'large', thick: 'large', fat: 'large', xl: 'extra large', jumbo: 'extra large',
  'extra-large': 'extra large', huge: 'extra large', giant: 'extra large',
}; // prettier-ignore

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
  if (!m) return undefined;
  const unit = m[1] === '#' ? unitNamed('lb') : unitOf(m[1]!);
  if (!unit) return undefined;
  return { unit, to: at + m[0].length };
}

const isExact = (unit: Unit | null) =>
  unit !== null && (unit.grams !== undefined || unit.ml !== undefined) && unit.loose !== true;
const isMetric = (unit: Unit) => /^(?:k?g|mg|[cd]?l|ml)$/.test(unit.name);

interface Found {
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

/** One amount with all that may hang on it, starting exactly at a place. */
function scanAmount(s: string, start: number, words: boolean): Found | undefined {
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
    if (/^(?:some)/i.test(m[0])) return undefined;
    const factor = factors.find(([looks]) => looks.test(m![0]));
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
  const number = scanNumber(s, at, words);
  if (!number) return undefined;
  if (number.spread) found.remarks.push(`midpoint of ${number.spread.map(say).join(' to ')}`);
  if (number.readings) found.readings = number.readings;
  found.negative = number.value < 0;
  at = number.to;

  // '2 x 400 g tins', '2 (14 oz) cans', '1 14-oz can', '2 400g tins'
  const times = /^ *[x×*] *(?=[\d.¼-¾⅐-⅞])/i.exec(s.slice(at, at + 6));
  const opens = /^ *[([]? *(?:about |approx\.? |~)?(?=[\d.¼-¾⅐-⅞])/.exec(s.slice(at, at + 16));
  const gap = times ?? (opens && (opens[0].length > 0 || times) ? opens : null);
  if (gap) {
    const inner = scanNumber(s, at + gap[0].length, false);
    const unit = inner && scanUnit(s, inner.to);
    if (inner && unit && isExact(unit.unit) && inner.value > 0) {
      let to = unit.to;
      let each: Amount = { value: inner.value, unit: unit.unit };
      const other = /^ *[/,|] *(?=[\d.¼-¾⅐-⅞])/.exec(s.slice(to, to + 6));
      if (other) {
        const second = scanNumber(s, to + other[0].length, false);
        const secondUnit = second && scanUnit(s, second.to);
        if (second && secondUnit && isExact(secondUnit.unit)) {
          to = secondUnit.to;
          if (isMetric(secondUnit.unit) && !isMetric(each.unit!))
            each = { value: second.value, unit: secondUnit.unit };
        }
      }
      to += /^ *(?:each)? *[)\]]?/i.exec(s.slice(to, to + 12))![0].length;
      const container = scanUnit(s, scanManner(s, to, found));
      if (container && !isExact(container.unit))
        return { ...found, amounts: [{ value: number.value, unit: container.unit }], each, to: container.to };
      if (times || /^[^)\]]*[)\]]/.test(s.slice(unit.to, to)))
        return { ...found, amounts: [{ value: number.value, unit: null }], each, to };
    }
  }

  at = scanManner(s, at, found);
  const unit = scanUnit(s, at);
  const value = number.value;
  if (!unit) return { ...found, amounts: [{ value, unit: null }], to: at };
  at = unit.to;
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

/** Takes out what stands in brackets; an unclosed bracket runs to the end, a stray closing one is dropped. */
function withoutBrackets(s: string): { outside: string; inside: string[] } {
  const inside: string[] = [];
  let outside = '';
  let depth = 0;
  let from = 0;
  for (let i = 0; i < s.length; i++) {
    const char = s[i]!;
    if ('([{'.includes(char)) {
      if (depth++ === 0) {
        outside += s.slice(from, i) + ' ';
        from = i + 1;
      }
    } else if (')]}'.includes(char)) {
      if (depth > 0 && --depth === 0) {
        inside.push(s.slice(from, i).trim());
        from = i + 1;
      } else if (depth === 0) {
        outside += s.slice(from, i) + ' ';
        from = i + 1;
      }
    }
  }
  if (depth > 0) inside.push(s.slice(from).trim());
  else outside += s.slice(from);
  return { outside, inside: inside.filter((text) => text !== '') };
}

/** '2-inch', '1/2 in (1 cm) dice', '5 cm': measures of length say nothing of weight. */
const lengths =
  /(?:\d+(?:[.,/]\d+)?|[¼-¾⅐-⅞])(?: ?(?:\d\/\d|[¼-¾⅐-⅞]))?(?: ?(?:-|to|x|×) ?\d*(?:[./]\d+)?[¼-¾⅐-⅞]?)?[ -]?(?:inch(?:es)?|in\b\.?|cm\b|mm\b|centimet(?:er|re)s?|millimet(?:er|re)s?|")(?:es)?/gi;
const bullet = /^(?:[-*+•·‣▢□☐◦▪●○–—✓✔]+ +|[•·‣▢□☐◦▪●○✓✔]+|\[[ x]?\] *|\(?\d{1,2}[.)] +(?=\S)|#{1,6} +)/;
const headings =
  /^(?:for (?:the |an? )?[\p{L}' &-]{2,40}|(?:the )?ingredients?(?: list)?|to (?:serve|finish|garnish))\s*:?$/iu;

/** Bullets, boxes and numbering off; a lone '-' before a figure stays, since it may be meant. */
const unbullet = (text: string) => text.replace(bullet, '');

/**
 * Takes an ingredient line apart.
 * @param line one line as typed, in any order a cook writes it; at most its first 500 characters are read
 */
export function readLine(line: string): ReadLine {
  const typed = line.trim();
  let s = unbullet(plain(typed.slice(0, 500)).replace(/\s+/g, ' ').trim()).trim();
  const blank: ReadLine = {
    typed, is: 'line', amounts: [], factor: 1, size: null, each: null, statedG: null, amountText: '', readings: null, negative: false,
    words: '', aside: [], brackets: [], part: null, toTaste: false, optional: false, remarks: [],
  }; // prettier-ignore
  if (!/[\p{L}\p{N}]/u.test(s)) return { ...blank, is: 'empty' };
  if (headings.test(s) || (/^[^\d¼-¾⅐-⅞,]{2,60}:$/.test(s) && s.split(' ').length <= 7))
    return { ...blank, is: 'heading', words: s };
  const remarks: string[] = [];
  const optional = /\boptional\b/i.test(s);
  const toTaste =
    /\b(?:to|as|for) (?:taste|needed|required|desired|serv\w+|garnish\w*|decorat\w+|sprinkl\w+|greas\w+|dust\w+|frying|brushing|drizzl\w+)\b|\bas needed\b|\ba\.n\.|\bq\.?s\.?$|\bto (?:serve|garnish|finish|taste|decorate)\b/i.test(
      s,
    );
  const more =
    /[,;(]? *\b(?:plus|and|with|\+) +(?:an? )?(?:little |bit )?(?:some |extra|more|additional)\b.*$/i.exec(s);
  if (more && more.index > 0) {
    remarks.push(`'${more[0].replace(/^[,;( ]+/, '').replace(/[) ]+$/, '')}' is not counted`);
    s = s.slice(0, more.index) + (more[0].includes(')') && !more[0].includes('(') ? ')' : '');
  }
  s = s
    .replace(/[,;]? *\boptional\b[,;]? */i, ' ')
    .replace(/\( *\)/g, ' ')
    .trim();

  const partOf =
    /^(?:(?:the|freshly|fresh|finely|squeezed|grated|strained) +)*(juice|zest|rind|peel)(?: +(?:and|&|\+) +(?:juice|zest|rind|grated zest))?,? +(?:of|from) +/i.exec(
      s,
    );
  let part: ReadLine['part'] = null;
  if (partOf) {
    part = /juice/i.test(partOf[0]) ? 'juice' : 'zest';
    if (/juice/i.test(partOf[0]) && /zest|rind|peel/i.test(partOf[0]))
      remarks.push('the zest is counted with the juice');
    s = s.slice(partOf[0].length);
  }

  let found = scanAmount(s, 0, true);
  let rest = s;
  let amountText = '';
  if (found) {
    amountText = s.slice(0, found.to).trim();
    rest = s.slice(found.to).replace(/^ *(?:of +(?:the +)?|x +|[-:]+ +)?/i, '');
  } else {
    // 'red lentils 200 g', 'Onions: 2', 'eggs x 2': the amount comes after the food.
    const bare = withoutBrackets(s)
      .outside.replace(lengths, (text) => ' '.repeat(text.length))
      .replace(/ +$/, '');
    for (const m of bare.matchAll(/(?<![\p{L}\p{N}.,/%-])(?:[x×] ?)?([\d.¼-¾⅐-⅞-])/giu)) {
      const at = m.index + m[0].length - 1;
      const tail = scanAmount(bare, at, false);
      if (!tail || bare[tail.to] === '%') continue;
      const isWhole = bare.slice(tail.to).trim().replace(/[.)]$/, '') === '';
      if (!isWhole && tail.amounts[0]?.unit == null) continue;
      found = tail;
      amountText = bare.slice(at, tail.to).trim();
      rest = `${bare.slice(0, m.index).replace(/[ :,=-]+$/, '')}${/^[\s.)]*$/.test(bare.slice(tail.to)) ? '' : `, ${bare.slice(tail.to)}`}`;
      rest += withoutBrackets(s)
        .inside.map((text) => ` (${text})`)
        .join('');
      break;
    }
  }
  const { outside, inside } = withoutBrackets(rest.replace(/^[,;:.\s]+/, ''));
  let statedG = found?.statedG ?? null;
  let each = found?.each ?? null;
  const first = found?.amounts[0];
  const kept: string[] = [];
  for (const text of inside) {
    const eachOf =
      /\b(?:each|apiece|per)\b/i.test(text) || (first?.unit?.holds === true && first.unit.name !== 'block');
    const weight = weightIn(text);
    if (!weight) kept.push(text);
    else if (!first) found = { ...emptyFound(), amounts: [weight], to: 0 };
    else if (eachOf && !each && !isExact(first.unit)) each = weight;
    else if (weight.unit!.grams !== undefined && statedG === null) {
      const mine = first.unit?.grams;
      const stated = weight.value * weight.unit!.grams;
      if (
        mine === undefined ||
        (isMetric(weight.unit!) &&
          Math.abs(stated / (first.value * mine) - 1) < 0.15 &&
          !isMetric(first.unit!))
      )
        statedG = stated;
    }
  }
  const clean = outside.replace(lengths, ' ').replace(/\s+/g, ' ').trim();
  const [words = '', ...aside] = clean
    .split(/ *[,;] *| - | -- /)
    .map((text) => text.trim())
    .filter((text) => text !== '');
  return {
    ...blank, amounts: found?.amounts ?? [], factor: found?.factor ?? 1, size: found?.size ?? null, each, statedG, amountText,
    readings: found?.readings ?? null, negative: found?.negative ?? false, words, aside, brackets: kept, part, toTaste, optional,
    remarks: [...(found?.remarks ?? []), ...remarks],
  }; // prettier-ignore
}

const emptyFound = (): Found => ({
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
function weightIn(text: string): Amount | undefined {
  if (text.length > 60) return undefined;
  const all: Amount[] = [];
  for (const m of text.matchAll(/(?<![\p{L}\p{N}.,/])(?=[\d¼-¾⅐-⅞.])/gu)) {
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
