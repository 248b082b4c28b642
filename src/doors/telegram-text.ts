import { isolatedRuns } from './isolate.ts';

/** A line of an answer: its head, the group's own, one of the notes that are drawn as a quote, or of the fold. */
export interface Line {
  readonly text: string;
  readonly is: 'head' | 'plain' | 'note' | 'fold';
  /** From here on it is to be copied by a tap, in UTF-16 units. */
  readonly codeFrom?: number;
}

export interface Entity {
  readonly type: 'bold' | 'blockquote' | 'expandable_blockquote' | 'code';
  /** In UTF-16 units, as the platform counts. */
  readonly offset: number;
  readonly length: number;
}

export interface Piece {
  readonly text: string;
  readonly entities: readonly Entity[];
}

/** Far enough below the platform's 4096 to hold under either way of counting. In UTF-16 units. */
export const mostUnits = 3500;

const firstStrongIsolate = '\u2068';
const popIsolate = '\u2069';

/** A name that cannot turn the text around it: its own direction marks go, the rest stays as typed. */
export function isolated(name: string): string {
  return `${firstStrongIsolate}${name.replace(/[\u2066-\u2069\u202A-\u202E\n]+/gu, '')}${popIsolate}`;
}

/** What the platform would change in a text by itself, changed here so that offsets stay right. */
export function cleaned(text: string): string {
  return text
    .replace(/\p{Cs}/gu, '\uFFFD')
    .replace(/\r\n?|[\u2028\u2029]/gu, '\n')
    .replace(/\t/g, ' ')
    .replace(/[\u202A-\u202E]/gu, '')
    .replace(/[^\P{Cc}\n]/gu, '');
}

/** Takes up no room, breaks no line, and keeps the platform from making a link of what stands around it. */
const wordJoiner = '\u2060';

/**
 * Nothing in a text becomes a command, a mention, a tag or a link by itself: names are what people typed, and a request
 * that is named is not one tap away.
 */
export function unlinked(text: string): string {
  return text
    .replace(/(?<![\p{L}\p{N}_/])\/(?=\p{L}|\p{N})/gu, `/${wordJoiner}`)
    .replace(/[@#](?=[\p{L}\p{N}_])/gu, (sign) => `${sign}${wordJoiner}`)
    .replace(/\$(?=\p{Lu})/gu, `$${wordJoiner}`)
    .replace(/:\/\//gu, `:${wordJoiner}//`)
    .replace(/(?<=[\p{L}\p{N}_-])\.(?=\p{L}{2})/gu, `${wordJoiner}.`);
}

/** What people copy out of an answer and send back. */
export const withoutJoiners = (text: string): string => text.replaceAll(wordJoiner, '');

/** A text as it is put into a message: cleaned, names in every script where they belong, nothing a link. */
export const shown = (text: string): string => unlinked(isolatedRuns(cleaned(text)));

/** A text cut at a whole character, with an ellipsis when something is missing. In UTF-16 units. */
export function cutTo(text: string, most: number): string {
  return text.length <= most ? text : `${text.slice(0, wholeCharacters(text, most - 1))}…`;
}

/** A text that loses its middle, for those that differ at their end. In UTF-16 units. */
export function cutOutOf(text: string, most: number): string {
  if (text.length <= most) return text;
  const head = text.slice(0, wholeCharacters(text, Math.floor(most / 3)));
  const from = text.length - (most - 1 - head.length);
  const cut = characters.segment(text).containing(from)!;
  return `${head}…${text.slice(cut.index === from ? from : cut.index + cut.segment.length)}`;
}

const characters = new Intl.Segmenter(undefined, { granularity: 'grapheme' });

/** The largest place at or before `most` where no character as people see it is cut. */
function wholeCharacters(text: string, most: number): number {
  const holding = characters.segment(text).containing(most);
  if (!holding || holding.index > 0) return holding?.index ?? text.length;
  // One "character" longer than the limit, such as a heap of accents: cut it between code points.
  return /[\uDC00-\uDFFF]/.test(text[most]!) ? most - 1 : most;
}

/** A line too long for one message, cut at blanks where it has them and never inside an isolated name. */
function folded(text: string, most: number): string[] {
  const pieces: string[] = [];
  let rest = text;
  while (rest.length > most) {
    const whole = wholeCharacters(rest, most);
    const blank = rest.lastIndexOf(' ', whole);
    let at = blank > most / 2 ? blank : whole;
    const opened = rest.lastIndexOf(firstStrongIsolate, at - 1);
    if (opened > 0 && rest.indexOf(popIsolate, opened) >= at) at = opened;
    pieces.push(rest.slice(0, at));
    rest = rest.slice(at).trimStart();
  }
  return [...pieces, rest];
}

/**
 * Puts lines into as few pieces as hold them, cut between lines. A quote that is cut goes on as a quote.
 * @param most longest piece, in UTF-16 units
 */
export function intoPieces(lines: readonly Line[], most = mostUnits): Piece[] {
  const short = lines.flatMap((line): Line[] =>
    line.text.length <= most ? [line] : folded(line.text, most).map((text) => ({ text, is: line.is })),
  );
  const groups: Line[][] = [[]];
  let units = 0;
  for (const line of short) {
    if (units > 0 && units + 1 + line.text.length > most) {
      groups.push([]);
      units = 0;
    }
    groups.at(-1)!.push(line);
    units += (units > 0 ? 1 : 0) + line.text.length;
  }
  return groups
    .map(withoutBlankEnds)
    .filter((group) => group.length > 0)
    .map(piece);
}

/** The platform trims both ends; done here first, so that offsets count what is shown. */
function withoutBlankEnds(group: readonly Line[]): Line[] {
  const isBlank = (line: Line | undefined) => line !== undefined && line.text.trim() === '';
  let [from, to] = [0, group.length];
  while (from < to && isBlank(group[from])) from += 1;
  while (to > from && isBlank(group[to - 1])) to -= 1;
  const kept = group.slice(from, to);
  return kept.map((line, i) => {
    const start = i === 0 ? line.text.trimStart() : line.text;
    return { ...line, text: i === kept.length - 1 ? start.trimEnd() : start };
  });
}

/** From the third line on notes are folded, so that the group's text stays what is read first; reasons always are. */
function entityOf(is: Line['is'], lines: number): Entity['type'] | undefined {
  if (is === 'head') return 'bold';
  if (is === 'fold') return 'expandable_blockquote';
  if (is === 'note') return lines >= 3 ? 'expandable_blockquote' : 'blockquote';
  return undefined;
}

function piece(lines: readonly Line[]): Piece {
  const entities: Entity[] = [];
  let offset = 0;
  let run: { is: Line['is']; offset: number; lines: number } | undefined;
  const endRun = () => {
    const type = run && entityOf(run.is, run.lines);
    if (run && type && offset - 1 > run.offset)
      entities.push({ type, offset: run.offset, length: offset - 1 - run.offset });
    run = undefined;
  };
  for (const { text, is, codeFrom } of lines) {
    if (codeFrom !== undefined && codeFrom < text.length) {
      endRun();
      entities.push({ type: 'code', offset: offset + codeFrom, length: text.length - codeFrom });
    }
    if (run?.is === is) run.lines += 1;
    else {
      endRun();
      run = { is, offset, lines: 1 };
    }
    offset += text.length + 1;
  }
  endRun();
  return { text: lines.map(({ text }) => text).join('\n'), entities };
}
