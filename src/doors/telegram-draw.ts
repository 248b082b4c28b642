import type { FileOut, Outgoing } from '#core/talk.ts';
import { isolatedRuns } from './isolate.ts';
import {
  type Entity,
  type Line,
  cleaned,
  cutOutOf,
  cutTo,
  intoPieces,
  isolated,
  shown,
  unlinked,
} from './telegram-text.ts';

export type Key =
  | { readonly text: string; readonly callback_data: string }
  /** A tap copies a line; nothing is heard of it. */
  | { readonly text: string; readonly copy_text: { readonly text: string } };

/** One call to the platform. An answer is one or several, always the same ones in the same order. */
export type Part =
  | {
      readonly is: 'text';
      readonly text: string;
      readonly entities: readonly Entity[];
      /** Rows of buttons; none for no keyboard. */
      readonly keys: readonly (readonly Key[])[];
    }
  | {
      readonly is: 'photo' | 'document';
      readonly name: string;
      readonly bytes: Buffer;
      readonly caption: string;
    };

const exampleWords = 'For example: ';
/** The platform copies no more than this. */
const mostCopied = 256;
const mostButtons = 8;
/** A list has a button for each thing on its page. */
const mostOfList = 24;
/** A button alone in its row is cut by phones at about this many units (from memory). */
const mostLabelUnits = 32;
/** How wide each of so many labels in a row may be, in units (from memory: what a phone shows). */
const mostUnitsInRow = [mostLabelUnits, 20, 11, 9] as const;
const mostCaptionUnits = 1024;

/** An answer as the platform shows it: plain text and entities, then its files. */
export function draw({ reply, buttons }: Pick<Outgoing, 'reply' | 'buttons'>): Part[] {
  const lines: Line[] = cleaned(reply.group)
    .split('\n')
    .map((text, i, all) => {
      // One line alone needs no weight.
      const is = i === 0 && all.length + (reply.why ?? []).length > 1 ? 'head' : 'plain';
      // What works as it stands is copied by a tap, as it stands.
      return is === 'plain' && text.startsWith(exampleWords)
        ? { text: isolatedRuns(text), is, codeFrom: exampleWords.length }
        : { text: shown(text), is };
    });
  const most = reply.live || reply.pages ? mostOfList : mostButtons;
  if (buttons.length > most) {
    lines.push({
      text: `(${most} of ${buttons.length} choices fit below; the others can be typed.)`,
      is: 'plain',
    });
  }
  for (const { who, text } of reply.notes ?? []) {
    const [first, ...more] = shown(text).split('\n');
    lines.push({ text: `${isolated(unlinked(cleaned(who)))}: ${first!}`, is: 'note' });
    for (const line of more) lines.push({ text: line, is: 'note' });
  }
  for (const text of (reply.why ?? []).flatMap((line) => shown(line).split('\n')))
    lines.push({ text, is: 'fold' });
  const files = (reply.files ?? []).map(drawFile);
  const keys = buttons.length === 0 && !reply.awaits ? copying(reply.group) : keyboard(buttons, most);
  const pieces = intoPieces(lines);
  // An answer of a file alone needs no text; one with buttons, or with nothing at all, has to have some.
  if (pieces.length === 0 && (keys.length > 0 || files.length === 0))
    pieces.push({ text: '…', entities: [] });
  return [
    ...pieces.map((piece, i): Part => ({ is: 'text', ...piece, keys: i === pieces.length - 1 ? keys : [] })),
    ...files,
  ];
}

/** A key that copies the line that works as it stands; its text is set to be copied by a tap all the same. */
function copying(group: string): Key[][] {
  const line = cleaned(group)
    .split('\n')
    .find((one) => one.startsWith(exampleWords))
    ?.slice(exampleWords.length);
  if (!line || line.length > mostCopied) return [];
  return [[{ text: cutTo(`Copy: ${isolatedRuns(line)}`, mostLabelUnits), copy_text: { text: line } }]];
}

export const copies = (key: Key): boolean => 'copy_text' in key;

/** Rows of buttons: as many side by side as their labels leave room for. The data is the button's row in the database. */
export function keyboard(buttons: Outgoing['buttons'], most = mostButtons): Key[][] {
  const shown = buttons.slice(0, most);
  const labels = shown.map(({ label }) => isolatedRuns(cleaned(label)).replace(/\s+/gu, ' ').trim() || '…');
  const cut = labels.map((label) => cutTo(label, mostLabelUnits));
  // Few choices are easier to hit two in a row.
  const longestRow = most > mostButtons ? mostUnitsInRow.length : 2;
  const rows: Key[][] = [];
  shown.forEach(({ id }, i) => {
    // Two labels that differ only past the cut would look the same: those lose their middle instead.
    const isTwin = cut.some((other, j) => j !== i && other === cut[i]);
    const key = { text: isTwin ? cutOutOf(labels[i]!, mostLabelUnits) : cut[i]!, callback_data: String(id) };
    const last = rows.at(-1);
    const widest = last && last.length < longestRow ? mostUnitsInRow[last.length]! : 0;
    if (last && [...last, key].every(({ text }) => text.length <= widest)) last.push(key);
    else rows.push([key]);
  });
  return rows;
}

function drawFile({ name, type, base64, caption }: FileOut): Part {
  const bytes = Buffer.from(base64, 'base64');
  const said = cutTo(shown(caption).trim(), mostCaptionUnits);
  // The platform refuses empty files.
  if (bytes.length === 0)
    return { is: 'text', text: `${said || name} (nothing in it)`, entities: [], keys: [] };
  const safeName =
    cleaned(name)
      .replace(/[/\\\n]+/g, '-')
      .trim() || 'file';
  return {
    is: type === 'image/png' && isPhoto(bytes) ? 'photo' : 'document',
    name: safeName,
    bytes,
    caption: said,
  };
}

/** A picture small enough to be shown without being shrunk; larger ones go as files, untouched. */
function isPhoto(bytes: Buffer): boolean {
  if (bytes.length < 24 || bytes.toString('latin1', 1, 4) !== 'PNG') return false;
  const [widthPx, heightPx] = [bytes.readUInt32BE(16), bytes.readUInt32BE(20)];
  const [short, long] = [Math.min(widthPx, heightPx), Math.max(widthPx, heightPx)];
  return short > 0 && long < 1280 && long / short <= 20;
}
