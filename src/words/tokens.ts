import { hourByDayPart } from './hour-of-day.ts';
import type { Code } from '#core/records.ts';
import { type Unit, unitNamed } from '#core/units.ts';
import { plain, readNumber, readNumberWord } from './numbers.ts';

interface Place {
  readonly from: number;
  readonly to: number;
  /** The words as typed. */
  readonly typed: string;
  /** Plain lower case, for comparing. */
  readonly plain: string;
}

/** A piece of a message with its place in the text. */
export type Token = Place &
  (
    | { readonly is: 'word' }
    | { readonly is: 'quoted'; readonly inside: string }
    | { readonly is: 'mark'; readonly mark: string }
    | {
        readonly is: 'number';
        readonly value: number;
        readonly otherwise?: number;
        readonly spelled: boolean;
      }
    | {
        readonly is: 'quantity';
        readonly value: number;
        readonly otherwise?: number;
        readonly unit: Unit;
        readonly unitTyped: string;
        readonly numberTo: number;
      }
    | { readonly is: 'batch'; readonly batch: number; readonly isMixed: boolean }
    | {
        readonly is: 'pouch';
        readonly batch: number;
        readonly no: number;
        readonly isMixed: boolean;
        readonly isBought: boolean;
      }
    | { readonly is: 'date'; readonly iso: string }
    | { readonly is: 'clock'; readonly hour: number; readonly minute: number }
  );

/** The code that a token is. */
export const codeIn = ({ batch, no, isMixed, isBought }: Token & { readonly is: 'pouch' }): Code => ({
  batch,
  no,
  ...(isMixed ? { isMixed } : {}),
  ...(isBought ? { isBought } : {}),
});

// A dash with a blank on one side only is a minus: 'B2 -3 g' names no pouch.
// A mixture's M stands close to its number: '1900 m 2' is a height.
const pouchCode = /^(?:b ?|m|s)(\d{1,6})(?:-| - )(\d{1,5})(?:(?![\p{L}\d])|(?=[bms]\d))/iu;
const batchCode = /^(?:b ?|m|s)(\d{1,6})(?![\p{L}\d])/iu;
const isoDate = /^(\d{4})(?:-(\d{1,2})(?:-(\d{1,2}))?|([/.])(\d{1,2})\4(\d{1,2}))(?![\d/-])/;
const clockTime = /^(\d{1,2})[:.](\d{2})(?: ?(am|pm))?(?![\d\p{L}]|[.,:]\d)/iu;
const hourOnly = /^(\d{1,2}) ?(am|pm)(?!\p{L})/iu;
const times = /^[x×](?=\s*[\d.½¼¾⅓⅔⅛])|^[x×](?![\p{L}\p{N}])/iu;
const word = /^[\p{L}\p{M}\p{N}_]+(?:['-][\p{L}\p{M}\p{N}_]+)*'?/u;
const unitWord = /^( ?)(fl\.? ?oz|[°º]? ?[\p{L}µ]+|["'%°])\.?(?![\p{L}\p{N}])/iu;
const pictures = /^(?:\p{Extended_Pictographic}|\p{M}|\p{Cf}|\p{Emoji_Modifier}|[\u{1f1e6}-\u{1f1ff}])+/u;

/** Only these open a number, a code, a date or a time: a figure, a sign before one, a letter. */
const mayHaveValue = /^(?:[\p{N}\p{L}]|[-.]\S)/u;

/** How far after a place the scanner looks; keeps the reading linear in the message's length. */
const window = 80;

/**
 * Cuts a message into pieces: numbers with their units, codes, dates, clock times, quoted words, words, marks.
 * Pictures and control characters stand for nothing and are left out.
 * @param text the message as typed, of any length; time is linear in it
 */
export function tokens(text: string): Token[] {
  const source: Source = { text, smooth: plain(text) };
  const { smooth } = source;
  const found: Token[] = [];
  let afterLetter = false;
  for (let at = 0; at < smooth.length;) {
    const code = smooth.charCodeAt(at);
    if (isPlainMark[code] === 1) {
      found.push({ ...place(source, at, 1), is: 'mark', mark: smooth[at]! });
      afterLetter = false;
      at += 1;
      continue;
    }
    const rest = smooth.slice(at, at + window);
    const length = isLetterOrFigure(code) ? 0 : blankLength(rest);
    if (length > 0) {
      at += length;
      afterLetter = false;
      continue;
    }
    const token = tokenAt(source, at, rest, afterLetter);
    found.push(token);
    at = token.to;
    afterLetter = token.is !== 'mark' && token.is !== 'pouch' && /[\p{L}\p{N}]$/u.test(token.plain.slice(-2));
  }
  return found;
}

interface Source {
  readonly text: string;
  /** The text in plain characters, place for place. */
  readonly smooth: string;
}

/** ASCII signs that begin nothing longer. */
const isPlainMark = new Uint8Array(65_536);
for (const sign of '!#$%&()*+,/:;<=>?@[\\]^`{|}~') isPlainMark[sign.charCodeAt(0)] = 1;

const isLetterOrFigure = (code: number): boolean =>
  (code >= 0x30 && code <= 0x39) || (code >= 0x41 && code <= 0x5a) || (code >= 0x61 && code <= 0x7a);

const blankLength = (rest: string): number =>
  (/^[\s\p{Cc}]+/u.exec(rest) ?? pictures.exec(rest))?.[0].length ?? 0;

function place({ text, smooth }: Source, at: number, length: number): Place {
  return {
    from: at,
    to: at + length,
    typed: text.slice(at, at + length),
    plain: smooth.slice(at, at + length).toLowerCase(),
  };
}

function tokenAt(source: Source, at: number, rest: string, afterLetter: boolean): Token {
  const { smooth } = source;
  const token = afterLetter || !mayHaveValue.test(rest) ? undefined : valued(source, at, rest);
  if (token) return token;
  const quote = rest[0] === '"' ? /^"([^"\n]{1,70})"/.exec(rest) : null;
  if (quote) {
    const range = place(source, at, quote[0].length);
    return { ...range, is: 'quoted', inside: range.typed.slice(1, -1) };
  }
  const letters = times.test(rest) ? null : word.exec(rest);
  if (letters) return { ...place(source, at, longWord(smooth, at, letters[0].length)), is: 'word' };
  const one = place(source, at, smooth.codePointAt(at)! > 0xffff ? 2 : 1);
  return { ...one, is: 'mark', mark: /[x×]/i.test(one.plain) ? 'x' : one.plain };
}

/** A word may be longer than the window: it ends where its letters end. */
function longWord(smooth: string, at: number, length: number): number {
  if (length < window) return length;
  const letter = /[\p{L}\p{M}\p{N}_]/uy;
  let to = at + length;
  for (letter.lastIndex = to; letter.test(smooth); letter.lastIndex = to) to = letter.lastIndex;
  return to - at;
}

/** '21st' is a day and no weight in stone, 'twenty second' no time. */
const isOrdinal = (value: number, isSpelled: boolean, behind: string): boolean =>
  isSpelled
    ? value >= 20 && /^ second$/i.test(behind)
    : value % 10 === 1 && value <= 31 && /^st$/i.test(behind);

/** '815 in total', '4 in the dryer' measure no inches. */
const isPreposition = /^ in (?:total|all|the|our|my|each|one|a)\b/i;

function valued(source: Source, at: number, rest: string): Token | undefined {
  const { smooth } = source;
  const isFigure = rest[0]! >= '0' && rest[0]! <= '9';
  const mayBeCode = /^[bms]/i.test(rest);
  const isBought = /^s/i.test(rest);
  const isMixed = isBought || /^m/i.test(rest);
  let m = mayBeCode ? pouchCode.exec(rest) : null;
  if (m)
    return {
      ...place(source, at, m[0].length),
      is: 'pouch',
      batch: Number(m[1]),
      no: Number(m[2]),
      isMixed,
      isBought,
    };
  m = mayBeCode ? batchCode.exec(rest) : null;
  if (m) return { ...place(source, at, m[0].length), is: 'batch', batch: Number(m[1]), isMixed };
  m = isFigure ? isoDate.exec(rest) : null;
  if (m && Number(m[1]) >= 1900 && Number(m[1]) < 2200) {
    const two = (part: string) => part.padStart(2, '0');
    const [month, dayOf] = m[2] === undefined ? [m[5]!, m[6]] : [m[2], m[3]];
    const day = dayOf === undefined ? '' : `-${two(dayOf)}`;
    return { ...place(source, at, m[0].length), is: 'date', iso: `${m[1]}-${two(month)}${day}` };
  }
  m = isFigure ? (clockTime.exec(rest) ?? hourOnly.exec(rest)) : null;
  if (m && (rest[m[1]!.length] === ':' || m.at(-1) !== undefined)) {
    const minute = /^\d+$/.test(m[2]!) ? Number(m[2]) : 0;
    const half = m.at(-1)?.toLowerCase();
    const hour = half === 'pm' ? (Number(m[1]) % 12) + 12 : half === 'am' ? Number(m[1]) % 12 : Number(m[1]);
    if (hour < 24 && minute < 60) return { ...place(source, at, m[0].length), is: 'clock', hour, minute };
    // '25:00' is no time, and no two numbers either: it is quoted back whole.
    if (rest[m[1]!.length] === ':') return { ...place(source, at, m[0].length), is: 'word' };
  }
  const ofDay = isFigure ? hourByDayPart(smooth, at, rest) : undefined;
  if (ofDay) return { ...place(source, at, ofDay.length), is: 'clock', hour: ofDay.hour, minute: 0 };
  const figures = readNumber(smooth, at);
  const number = figures ?? readNumberWord(smooth, at);
  if (!number) return undefined;
  const other = number.otherwise === undefined ? {} : { otherwise: number.otherwise };
  const tail = smooth.slice(number.to, number.to + 16);
  const unitText = unitWord.exec(tail);
  if (
    unitText &&
    !times.test(tail.trimStart()) &&
    !isOrdinal(number.value, !figures, unitText[0]) &&
    !isPreposition.test(tail)
  ) {
    const unitTyped = unitText[2]!;
    const unit = unitNamed(unitTyped);
    if (unit) {
      const range = place(source, at, number.to - at + unitText[0].length);
      return {
        ...range,
        is: 'quantity',
        value: number.value,
        ...other,
        unit,
        unitTyped,
        numberTo: number.to,
      };
    }
  }
  return {
    ...place(source, at, number.to - at),
    is: 'number',
    value: number.value,
    ...other,
    spelled: !figures,
  };
}
