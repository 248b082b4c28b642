import { plain } from '#words/numbers.ts';
import { foldedWords, isAscii } from './words.ts';

/**
 * How a break puts what stands behind it: 'with' in the food, 'perhaps' in it, 'without' it, for a 'purpose', or only
 * apart from what stood before ('apart').
 */
export type Break = 'with' | 'perhaps' | 'without' | 'purpose' | 'apart';

/** A folded word of a line, or a break between words: a comma, a bracket, 'with', 'or'. */
export interface Token {
  /** For a break its sign: two spellings of one connective have the same. */
  readonly word: string;
  readonly breaks: Break | null;
}

const table = (rows: readonly (readonly [Break, string, string])[]) => {
  const map = new Map<string, { word: string; breaks: Break }>();
  for (const [breaks, sign, words] of rows)
    for (const word of words.split(' ')) map.set(word, { word: sign, breaks });
  return map;
};

/** Words that link two foods, or set one apart; each spelling that people type has one sign. */
const connectives = table([
  ['with', '&', '& + and n plus und et y e och'],
  ['with', 'with', 'with w wth avec mit con including incl containing contains'],
  ['with', 'in', 'in within inside into on onto over under upon'],
  ['with', 'of', 'of from'],
  ['with', 'beside', 'by alongside accompanied'],
  ['apart', 'a', 'a an the some any'],
  ['apart', 'then', 'then until till if when once while as at to per see about that which'],
  ['purpose', 'for', 'for'],
  ['perhaps', 'or', 'or / | alternatively either else otherwise'],
  ['perhaps', 'such', 'such like eg ie e.g. i.e. preferably maybe perhaps possibly might may'],
  ['perhaps', 'not', 'not avoid avoiding instead rather replace replaces replacing replacement substitute substituted swap sub versus vs'],
  ['without', 'no', 'no without minus omit omitting except excluding sans non ohne zero'],
]); // prettier-ignore

/** 'w/o', 'b/c': a slash that is no choice between two foods. */
const shortened: readonly (readonly [RegExp, string])[] = [
  [/\bw\/o\b/gi, ' without '],
  [/\bw\/(?=\s?\p{L})/giu, ' with '],
  [/\b(?:in(?:stead| place) of|rather than|in lieu of)\b/gi, ' instead '],
  [/\bnon[- ](?=\p{L})/giu, 'non'],
  [/\bmay contain\b/gi, ' may '],
  [/\be\.?g\b\.?/gi, ' such '],
  [/\bfree (?:of|from)\b/gi, ' without '],
  [/(?<=\p{L})n['’]t\b/giu, ' not '],
  // 'bone-in', 'on the vine': the word in the middle links no food.
  [/\b(bone|skin|head|shell|leaf|tail)[- ](in|on|off)\b/gi, '$1$2'],
];

const pieces = (letter: string, inside: string, flags: string) => ({
  isWord: new RegExp(`[${letter}]`, flags),
  wordOrMark: new RegExp(
    `[${letter}][${letter}${inside}'’%]*(?:[.,]\\d[${letter}]*%?)*|[^\\s${letter}]`,
    `g${flags}`,
  ),
});
const anyPieces = pieces('\\p{L}\\p{N}', '\\p{M}', 'u');
const asciiPieces = pieces('a-z0-9', '', '');
/** Marks inside a word ('self-raising', 'Kellogg's') or that say nothing. */
const quiet = new Set(['-', "'", '’', '%', '°', '#', '~', '™', '®', '`', '\u00ad']);

/**
 * A line as words and breaks, in the order typed. Nothing is left out but marks inside words.
 * @param text at most its first 600 characters are read
 */
export function tokensOf(text: string): Token[] {
  let small = plain(text.slice(0, 600)).toLowerCase();
  for (const [looks, becomes] of shortened) small = small.replace(looks, becomes);
  const { wordOrMark, isWord } = isAscii(small) ? asciiPieces : anyPieces;
  small = small.replace(/ - | -- |–|—/g, ' ; ');
  const out: Token[] = [];
  let run: string[] = [];
  const close = () => {
    for (const word of foldedWords(run.join(' '))) out.push({ word, breaks: null });
    run = [];
  };
  for (const [piece] of small.matchAll(wordOrMark)) {
    const isMark = !isWord.test(piece);
    const link = connectives.get(piece);
    if (link) {
      close();
      out.push(link);
    } else if (!isMark) run.push(piece);
    else if (!quiet.has(piece)) {
      close();
      out.push({ word: piece === ')' || piece === ']' ? ')' : ',', breaks: 'apart' });
    }
  }
  close();
  return out;
}

/** The words and breaks of a name as one text; two texts with the same key name the same. */
export const keyOf = (tokens: readonly Token[]): string => tokens.map(({ word }) => word).join(' ');
