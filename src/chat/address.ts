import { slips } from '#words/near.ts';
import { readScanPayload } from '#words/scan.ts';
import type { HelpRecord } from '#house/house.ts';
import type { Command } from './command.ts';
import { formsOf } from './forms.ts';

/** Which request a text makes, with the words that are left for it. */
export type Addressed =
  | { readonly is: 'request'; readonly command: Command; readonly words: string }
  | { readonly is: 'unknown'; readonly typed: string; readonly near: Command | undefined }
  | { readonly is: 'talk' }
  | { readonly is: 'courtesy' };

/** Nobody expects an answer to these. */
const courtesy =
  /^(?:(?:many )?thanks?(?: you)?(?: (?:a lot|so much))?|thx|cheers|ok(?:ay)?|great|good|nice|perfect|lovely|cool|yes|no|hi|hello|hey|bye|good (?:morning|evening|night))[\s!.,\p{Extended_Pictographic}]*$/iu;

/**
 * Finds the request in a text: '/water B4-2', 'water B4-2' or a plain sentence that means it.
 * @param addressed whether the text is meant for the bot even without a slash
 */
export function address(text: string, addressed: boolean, commands: readonly Command[]): Addressed {
  const trimmed = text.trim();
  const slash = /^\/\s?([\p{L}\p{N}_]+)(.*)$/su.exec(trimmed);
  if (slash) {
    const typed = slash[1]!.toLowerCase();
    const words = slash[2]!.replace(/^[\s,:;.]+/, '');
    const command = called(typed, commands);
    const linked = typed === 'start' ? called('pouch', commands) : undefined;
    // Behind /start stands what a link carried: a pouch's code, or nothing that was made here.
    const scanned = readScanPayload(words)?.code;
    const code = scanned ? `B${scanned.batch}-${scanned.no}` : words;
    if (linked && /^b\d+-\d+$/i.test(code)) return { is: 'request', command: linked, words: code };
    if (command) return { is: 'request', command, words: typed === 'start' ? '' : words };
    return addressed
      ? { is: 'unknown', typed: `/${slash[1]!}`, near: nearest(typed, commands) }
      : { is: 'talk' };
  }
  if (!addressed || trimmed === '') return { is: 'talk' };
  if (courtesy.test(trimmed)) return { is: 'courtesy' };
  const asked = trimmed.replace(politeStart, '');
  const first = /^([\p{L}_]+)(?![\p{L}\p{N}_]|['’-]\p{L})(.*)$/su.exec(asked);
  const command = first && called(first[1]!.toLowerCase(), commands);
  if (first && command) return { is: 'request', command, words: first[2]!.replace(/^[\s,:;]+/, '') };
  const meant = commands.find((c) => c.sentence?.test(trimmed)) ?? namedIn(trimmed, commands);
  if (meant) return { is: 'request', command: meant, words: trimmed };
  const typed = /^[^\s,;:!?]{1,40}/u.exec(asked)?.[0] ?? trimmed.slice(0, 40);
  return { is: 'unknown', typed, near: first ? nearest(first[1]!.toLowerCase(), commands) : undefined };
}

/** 'please …', 'can you …', "I'd like to …": what follows is the request. */
const politeStart =
  /^(?:(?:please|pls|hi|hello|hey|ok|okay|now|so|well|and|then)[\s,!]+|(?:can|could|would|will) (?:you|we|i)(?: please)?\s+|(?:i|we)(?:['’]d| would)? (?:want|like|need|have) to\s+|let(?:['’]s| us)\s+)+/iu;

/** The one request that a sentence names anywhere: 'we ate B4-2', 'I want soup'. Two of them are none. */
function namedIn(text: string, commands: readonly Command[]): Command | undefined {
  const words = new Set(
    text
      .slice(0, 200)
      .toLowerCase()
      .match(/\p{L}+/gu) ?? [],
  );
  const named = commands.filter((c) =>
    [c.name, ...c.alsoCalled].some((name) => formsOf(name).some((form) => words.has(form))),
  );
  return named.length === 1 ? named[0] : undefined;
}

/** The request of that name, or of another name that people use for it. */
export function called<R extends HelpRecord>(name: string, requests: readonly R[]): R | undefined {
  return requests.find((c) => c.name === name || c.alsoCalled.includes(name));
}

/** The request whose name is a slip of the pen away. */
export function nearest<R extends HelpRecord>(typed: string, requests: readonly R[]): R | undefined {
  const most = typed.length < 7 ? 1 : 2;
  return requests
    .map((request) => ({ request, distance: slips(typed, request.name, most) }))
    .filter(({ distance }) => distance <= most)
    .sort((a, b) => a.distance - b.distance)[0]?.request;
}
