import type { Meaning } from '#talk/look.ts';
import { isQuestion } from '#talk/mood.ts';
import { called } from './called.ts';
import type { Addressed, Chosen, Requests } from './chosen.ts';
import type { Command } from './command.ts';

/** A slash on each line: several requests. */
export function inLines(text: string, { commands }: Requests): Addressed | undefined {
  const lines = text.split(/\s*\n\s*/u).filter((line) => line !== '');
  const of = lines.flatMap((line): Chosen[] => {
    const m = /^\/([\p{L}\p{N}_]+)(.*)$/u.exec(line);
    const command = m ? called(m[1]!.toLowerCase(), commands) : undefined;
    const words = m?.[2]!.trim() ?? '';
    const isPlain = command && !command.planned && !(command.records && isQuestion(words));
    return isPlain ? [{ command, words, holds: null, left: [] }] : [];
  });
  return of.length === lines.length && of.length <= mostTogether ? { is: 'together', of } : undefined;
}

/** More requests in one message are none. Chosen. */
const mostTogether = 8;

/** Settings or people told in one message: all of them, where nothing stands against any. */
export function chainOf(meaning: Meaning, command: Command, { commands }: Requests): Chosen[] | undefined {
  if (!meaning.also || !(chained.has(command.name) || deedsTold.has(command.name))) return undefined;
  const of: Chosen[] = [];
  for (let one: Meaning | undefined = meaning; one; one = one.also) {
    const its = called(one.means, commands);
    const isOfKind =
      its === command ||
      (its !== undefined && ofHouse.has(its.name) && ofHouse.has(command.name)) ||
      (its !== undefined && deedsTold.has(its.name) && deedsTold.has(command.name));
    if (its === undefined || !isOfKind || one.holds !== null || one.left.length > 0) return undefined;
    of.push({ command: its, words: one.words, holds: null, left: [] });
  }
  return of;
}

/** Deeds that one message may tell of different things. */
const deedsTold = new Set(['use', 'discard', 'found', 'weigh', 'want', 'eater', 'trip']);
/** What a household tells of itself in one breath. */
const ofHouse = new Set(['house', 'eater']);
const chained = new Set(['house', 'eater', 'found', 'weigh', 'want', 'rate']);
