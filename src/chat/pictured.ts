import type { Message, Reply } from '#core/talk.ts';
import { readScanPayload } from '#words/scan.ts';
import { sayCode, sayCodes, sayCount } from '#words/say.ts';
import type { PouchCode } from '#words/parts.ts';

/** More labels than these are no cards any more, but a pile. Chosen: what fits a phone. */
const mostCards = 3;

/**
 * A picture with labels: with words behind it, such as '/pack', the pouches are put to them; without, their cards are
 * shown, or what can be done with the pile.
 * @returns the message as if it had been typed, an answer, or undefined where no label is in it
 */
export function pictured(message: Message, household: number): Message | Reply | undefined {
  const scans = (message.scanned ?? []).flatMap((text) => scanIn(text, message.door) ?? []);
  if (scans.length === 0) return undefined;
  const own = scans.filter((scan) => scan.household === null || scan.household === household);
  const codes = own.map(({ code }) => code).toSorted((a, b) => a.batch - b.batch || a.no - b.no);
  // Every household has a B4-2: another one's label says nothing of ours.
  if (codes.length === 0) return { group: 'The labels in this picture belong to another household.' };
  const foreign = scans.length - own.length;
  const typed = message.text.trim();
  const named = codes.map(sayCode).join(' ');
  if (foreign > 0)
    return {
      group: `${sayCount(foreign, 'label')} of another household in the picture; ours: ${sayCodes(codes)}. Nothing is recorded.`,
    };
  if (typed === '' && codes.length > mostCards) {
    return {
      asks: true,
      group: `In the picture: ${sayCodes(codes)}, ${sayCount(codes.length, 'pouch', 'pouches')}.`,
      buttons: [
        { label: 'Pack these', request: `/pack ${named}` },
        { label: 'Take these out', request: `/pack not ${named}` },
        { label: 'These were eaten', request: `/use ${named}` },
      ],
    };
  }
  const words = typed === '' ? '/pouch' : typed;
  return { ...message, addressed: true, text: `${words} ${named}` };
}

/**
 * A label's code: behind the bot's link with its household. Bare ones, as a terminal's labels have them, hold for the
 * terminal's own household alone.
 */
function scanIn(
  text: string,
  door: Message['door'],
): { household: number | null; code: PouchCode } | undefined {
  const linked = readScanPayload(/[?&]start=([\w-]{1,64})$/.exec(text)?.[1] ?? '');
  if (linked || door !== 'terminal') return linked;
  const bare = /^[BM]([1-9]\d{0,8})-([1-9]\d{0,8})(?=\s|$)/i.exec(text.trim());
  return bare ? { household: null, code: { batch: Number(bare[1]), no: Number(bare[2]) } } : undefined;
}
