import { slips } from '#words/near.ts';
import type { Command } from './command.ts';

/** Which request a text makes, with the words that are left for it. */
export type Addressed =
  | { readonly is: 'request'; readonly command: Command; readonly words: string }
  | { readonly is: 'unknown'; readonly typed: string; readonly near: Command | undefined }
  | { readonly is: 'talk' };

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
    if (linked && /^b\d+-\d+$/i.test(words)) return { is: 'request', command: linked, words };
    if (command) return { is: 'request', command, words: typed === 'start' ? '' : words };
    return addressed
      ? { is: 'unknown', typed: `/${slash[1]!}`, near: nearest(typed, commands) }
      : { is: 'talk' };
  }
  if (!addressed || trimmed === '') return { is: 'talk' };
  const first = /^([\p{L}_]+)(.*)$/su.exec(trimmed);
  const command = first && called(first[1]!.toLowerCase(), commands);
  if (first && command) return { is: 'request', command, words: first[2]!.replace(/^[\s,:;]+/, '') };
  const meant = commands.find((c) => c.sentence?.test(trimmed));
  if (meant) return { is: 'request', command: meant, words: trimmed };
  const typed = first ? first[1]! : trimmed.slice(0, 40);
  return { is: 'unknown', typed, near: first ? nearest(typed.toLowerCase(), commands) : undefined };
}

function called(name: string, commands: readonly Command[]): Command | undefined {
  return commands.find((c) => c.name === name || c.alsoCalled.includes(name));
}

function nearest(typed: string, commands: readonly Command[]): Command | undefined {
  const most = typed.length < 4 ? 1 : 2;
  return commands
    .map((command) => ({ command, distance: slips(typed, command.name, most) }))
    .filter(({ distance }) => distance <= most)
    .sort((a, b) => a.distance - b.distance)[0]?.command;
}
