/** Numbers as people type them. Everything here keeps places: `from` and `to` count UTF-16 units of the text given. */

/** The zero of every script's decimal digits in the BMP (Unicode general category Nd); nine more follow each. */
const zeros = [
  0x30, 0x660, 0x6f0, 0x7c0, 0x966, 0x9e6, 0xa66, 0xae6, 0xb66, 0xbe6, 0xc66, 0xce6, 0xd66, 0xde6, 0xe50,
  0xed0, 0xf20, 0x1040, 0x1090, 0x17e0, 0x1810, 0x1946, 0x19d0, 0x1a80, 0x1a90, 0x1b50, 0x1bb0, 0x1c40,
  0x1c50, 0xa620, 0xa8d0, 0xa900, 0xa9d0, 0xa9f0, 0xaa50, 0xabf0, 0xff10,
];

const plainFor = new Map<number, string>();
for (const zero of zeros) for (let n = 0; n < 10; n++) plainFor.set(zero + n, String(n));
// Full-width forms sit 0xFEE0 above their ASCII twins.
for (let code = 0xff01; code <= 0xff5e; code++) plainFor.set(code, String.fromCharCode(code - 0xfee0));
for (const [twins, ascii] of [
  ['‘’‚‛′‵ʹʼ´`＇', "'"],
  ['“”„‟″‶«»〝〞', '"'],
  ['‐‑‒–—―−﹘﹣⁃', '-'],
  ['⁄∕', '/'],
  ['\u00a0\u1680\u2000\u2001\u2002\u2003\u2004\u2005\u2006\u2007\u2008\u2009\u200a\u202f\u205f\u3000\t', ' '],
  ['✕✖⨯⨉╳', '×'],
  ['、', ','],
  ['。', '.'],
  ['٫', '.'],
  ['٬', ','],
] as const)
  for (const twin of twins) plainFor.set(twin.charCodeAt(0), ascii);

/**
 * The same text in plain characters: digits of any script to 0-9, full-width forms to ASCII, typographic quotes,
 * dashes, primes and spaces to their plain twins; × stays ×. Each UTF-16 unit stays one unit, so places stay valid.
 * @param text whatever was typed
 * @returns text of the same length
 */
export function plain(text: string): string {
  let out = '';
  let kept = 0;
  for (let i = 0; i < text.length; i++) {
    const code = text.charCodeAt(i);
    // Of ASCII only the backtick has a twin; nearly all that is typed ends here.
    if (code > 0x1f && code < 0x7f && code !== 0x60) continue;
    const twin = plainFor.get(code);
    if (twin === undefined) continue;
    out += text.slice(kept, i) + twin;
    kept = i + 1;
  }
  return kept === 0 ? text : out + text.slice(kept);
}

/** A number read at a place. `otherwise` is the second reading of figures such as 1,500, which only people can settle. */
export interface ReadNumber {
  readonly value: number;
  readonly from: number;
  /** The first place after the number. */
  readonly to: number;
  readonly otherwise?: number;
}

/** A number longer than this is noise, and looking no further keeps the reading linear. */
const longest = 40;

// prettier-ignore
const vulgar: Readonly<Record<string, number>> = {
  '¼': 1 / 4, '½': 1 / 2, '¾': 3 / 4, '⅐': 1 / 7, '⅑': 1 / 9, '⅒': 1 / 10, '⅓': 1 / 3, '⅔': 2 / 3, '⅕': 1 / 5,
  '⅖': 2 / 5, '⅗': 3 / 5, '⅘': 4 / 5, '⅙': 1 / 6, '⅚': 5 / 6, '⅛': 1 / 8, '⅜': 3 / 8, '⅝': 5 / 8, '⅞': 7 / 8,
};
const raised = '⁰¹²³⁴⁵⁶⁷⁸⁹';
const lowered = '₀₁₂₃₄₅₆₇₈₉';

const isDigit = (char: string | undefined) => char !== undefined && char >= '0' && char <= '9';

/** Raised or lowered figures as a number. */
const digits = (s: string) =>
  Number(s.replace(/\D/g, (c) => String(Math.max(raised.indexOf(c), lowered.indexOf(c)))));

/** ½, 3/4, ¹⁄₂ at the very start of `rest`; undefined when there is no fraction with a denominator above zero. */
function fractionAt(
  rest: string,
): { value: number; length: number; over: number; under: number } | undefined {
  const sign = vulgar[rest[0] ?? ''];
  if (sign !== undefined) return { value: sign, length: 1, over: 0, under: 1 };
  const m =
    /^(\d{1,4}) ?\/ ?(\d{1,4})(?![\d.,]*\d| ?\/ ?\d)/.exec(rest) ??
    /^([⁰¹²³⁴-⁹]{1,3})\/([₀-₉\d]{1,3})/.exec(rest);
  if (!m) return undefined;
  const [over, under] = [digits(m[1]!), digits(m[2]!)];
  return under > 0 ? { value: over / under, length: m[0].length, over, under } : undefined;
}

/** Digits with their separators at the start of `rest`, settled as far as they can be. */
function figuresAt(
  rest: string,
): { value: number; otherwise?: number; length: number; whole: boolean } | undefined {
  const m = /^(?:\d+(?:[.,']\d+)*|\.\d+)/.exec(rest);
  if (!m || m[0].length >= longest) return undefined;
  const text = m[0];
  const done = (value: number, otherwise?: number) => ({
    value,
    length: text.length,
    whole: /^\d+$/.test(text),
    ...(otherwise === undefined ? {} : { otherwise }),
  });
  if (/^\d*\.?\d+$/.test(text) && !/^[1-9]\d{0,2}\.\d{3}$/.test(text)) return done(Number(text));
  const single = /^(\d+)([.,])(\d+)$/.exec(text);
  if (single) {
    const decimal = Number(`${single[1]}.${single[3]}`);
    const thousands = Number(single[1]! + single[3]!);
    if (!/^[1-9]\d{0,2}$/.test(single[1]!) || single[3]!.length !== 3) return done(decimal);
    return single[2] === ',' ? done(thousands, decimal) : done(decimal, thousands);
  }
  const grouped =
    /^(\d{1,3}(?:,\d{3})+)(?:\.(\d+))?$/.exec(text) ??
    /^(\d{1,3}(?:\.\d{3})+)(?:,(\d+))?$/.exec(text) ??
    /^(\d{1,3}(?:'\d{3})+)(?:[.,](\d+))?$/.exec(text);
  if (grouped) return done(Number(`${grouped[1]!.replace(/\D/g, '')}.${grouped[2] ?? '0'}`));
  // "1,5,2" is no number but a list: only its first figure is read.
  const first = /^\d+/.exec(text)![0];
  return { value: Number(first), length: first.length, whole: true };
}

/**
 * The number that starts exactly at a place of a text: integers, decimal point or comma, groups of thousands,
 * fractions (½, 3/4, 1½, 1 1/2, 1-1/2), a leading '.5', a leading '-' that no letter or figure stands before.
 * @param text plain or raw; digits of any script are read
 * @param at where it must start, UTF-16 units
 * @returns the value (always finite), its places, and the other reading of '1,500' (1.5) or '1.500' (1500);
 *   undefined when no number starts there or it is longer than 40 characters
 */
export function readNumber(text: string, at: number): ReadNumber | undefined {
  const rest = plain(text.slice(at, at + longest + 2));
  const before = at > 0 ? plain(text[at - 1] ?? '') : '';
  if (isDigit(before)) return undefined;
  if (rest[0] === '-') {
    if (/[\p{L}\p{N}]/u.test(before) || !/^-(?:[\d¼-¾⅐-⅞]|\.\d)/.test(rest)) return undefined;
    const read = readNumber(` ${text.slice(at + 1, at + longest + 2)}`, 1);
    if (!read) return undefined;
    return {
      value: -read.value,
      from: at,
      to: at + read.to,
      ...(read.otherwise === undefined ? {} : { otherwise: -read.otherwise }),
    };
  }
  // In '500/500/500' the second and third are no fraction.
  const isListed = before === '/' || (before === ' ' && at > 1 && plain(text[at - 2] ?? '') === '/');
  const alone = isListed ? undefined : fractionAt(rest);
  if (alone) return { value: alone.value, from: at, to: at + alone.length };
  const figures = figuresAt(rest);
  if (!figures) return undefined;
  const to = at + figures.length;
  if (figures.whole) {
    const gap = /^(?: ?(?:and|&|\+) |[ -]| - )?/.exec(rest.slice(figures.length))![0].length;
    const part = fractionAt(rest.slice(figures.length + gap));
    if (part && (part.under === 1 || (part.over < part.under && (gap > 0 || part.over > 0)))) {
      const glued = gap === 0 && isDigit(rest[figures.length]);
      if (!glued) return { value: figures.value + part.value, from: at, to: to + gap + part.length };
    }
  }
  const { value, otherwise } = figures;
  return { value, from: at, to, ...(otherwise === undefined ? {} : { otherwise }) };
}

// prettier-ignore
const named: Readonly<Record<string, number>> = {
  one: 1, two: 2, three: 3, four: 4, five: 5, six: 6, seven: 7, eight: 8, nine: 9, ten: 10, eleven: 11, twelve: 12,
  thirteen: 13, fourteen: 14, fifteen: 15, sixteen: 16, seventeen: 17, eighteen: 18, nineteen: 19, twenty: 20, thirty: 30,
  forty: 40, fifty: 50, sixty: 60, seventy: 70, eighty: 80, ninety: 90, hundred: 100,
};
const parts: Readonly<Record<string, number>> = { half: 1 / 2, quarter: 1 / 4, third: 1 / 3 };

/** Words that a number word may start with besides the named ones. */
const openers = new Set(['a', 'an', 'half', 'quarter', 'third', 'dozen', 'couple', 'pair']);
const someParts =
  /^(?:an? )?(half|quarter|third)(?: of(?= an? |$| a$))?(?: an?(?= ))?(?: (dozen))?(?![\p{L}\p{N}])/u;
const tens =
  '(twenty|thirty|forty|fifty|sixty|seventy|eighty|ninety)(?:[ -](one|two|three|four|five|six|seven|eight|nine))?';
const hundreds = new RegExp(
  `^(an?|one|two|three|four|five|six|seven|eight|nine) hundred(?: and)?(?: ${tens})?(?![\\p{L}\\p{N}])`,
  'u',
);
const tensAlone = new RegExp(`^()${tens}(?![\\p{L}\\p{N}])`, 'u');

/** 'twenty-five', 'two hundred', 'a hundred and fifty' at the start of `rest`. */
function hundredsAt(rest: string): { value: number; length: number } | undefined {
  const m = hundreds.exec(rest) ?? tensAlone.exec(rest);
  if (!m || (m[1] === '' && m[3] === undefined)) return undefined;
  const ofHundreds = m[1] === '' ? 0 : /^an?$/.test(m[1]!) ? 1 : named[m[1]!]!;
  const value = ofHundreds * 100 + (named[m[2] ?? ''] ?? 0) + (named[m[3] ?? ''] ?? 0);
  return { value, length: m[0].replace(/ and$/, '').length };
}

/**
 * The number word that starts exactly at a place: one … twelve and a few more, half, quarter, third, dozen, couple,
 * 'half a', 'two dozen', 'half a dozen', 'one and a half', 'three quarters'.
 * @param text plain text
 * @param at where it must start, UTF-16 units
 * @param article whether a lone 'a' or 'an' counts as one
 * @returns as readNumber; undefined when no number word starts there
 */
export function readNumberWord(text: string, at: number, article = false): ReadNumber | undefined {
  if (at > 0 && /[\p{L}\p{N}]/u.test(text[at - 1] ?? '')) return undefined;
  const rest = text.slice(at, at + longest).toLowerCase();
  const start = /^\p{L}+/u.exec(rest)?.[0];
  if (start === undefined || !(Object.hasOwn(named, start) || openers.has(start))) return undefined;
  const long = hundredsAt(rest);
  if (long) return { value: long.value, from: at, to: at + long.length };
  const read = (value: number, length: number): ReadNumber => ({ value, from: at, to: at + length });
  let m = someParts.exec(rest);
  if (m) return read(parts[m[1]!]! * (m[2] ? 12 : 1), m[0].length);
  m = /^(?:an? )?(dozen|couple(?: of)?|pair(?: of)?)(?![\p{L}\p{N}])/u.exec(rest);
  if (m) return read(m[1] === 'dozen' ? 12 : 2, m[0].length);
  m =
    /^(\p{L}+)(?:[ -](dozen|halves|half|quarters|thirds)| and an? (half|quarter|third))?(?![\p{L}\p{N}])/u.exec(
      rest,
    );
  if (!m) return undefined;
  const count = Object.hasOwn(named, m[1]!) ? named[m[1]!]! : article && /^an?$/.test(m[1]!) ? 1 : undefined;
  if (count === undefined) return undefined;
  if (m[2] === 'dozen') return read(count * 12, m[0].length);
  if (m[2]) {
    const each = { halves: 1 / 2, half: 1 / 2, quarters: 1 / 4, thirds: 1 / 3 }[m[2]]!;
    return read(count * each, m[0].length);
  }
  return read(count + (m[3] ? parts[m[3]]! : 0), m[0].length);
}
