import { plain } from './numbers.ts';

/**
 * How many typing slips (a letter wrong, missing, too many, or two swapped) lie between two words.
 * Optimal string alignment distance; stops counting above `most`.
 * @returns the distance, or most + 1 when it is larger
 */
export function slips(a: string, b: string, most: number): number {
  if (Math.abs(a.length - b.length) > most) return most + 1;
  let twoBack: number[] = [];
  let before = Array.from({ length: b.length + 1 }, (_, j) => j);
  for (let i = 1; i <= a.length; i++) {
    const row = [i];
    let least = i;
    for (let j = 1; j <= b.length; j++) {
      const same = a[i - 1] === b[j - 1] ? 0 : 1;
      let cost = Math.min(before[j]! + 1, row[j - 1]! + 1, before[j - 1]! + same);
      if (i > 1 && j > 1 && a[i - 1] === b[j - 2] && a[i - 2] === b[j - 1])
        cost = Math.min(cost, twoBack[j - 2]! + 1);
      row.push(cost);
      least = Math.min(least, cost);
    }
    if (least > most) return most + 1;
    twoBack = before;
    before = row;
  }
  return Math.min(before[b.length]!, most + 1);
}

/** Typing slips forgiven in a word: none below four letters, one up to six, two from seven on. Chosen. */
export function forgiven(word: string): number {
  return word.length < 4 ? 0 : word.length < 7 ? 1 : 2;
}

/** Lower case without accents, plain characters, single spaces: the form in which names are compared. */
export function fold(text: string): string {
  const known = folded.get(text);
  if (known !== undefined) return known;
  const result = foldNow(text);
  if (text.length <= 40) {
    if (folded.size >= 5000) folded.clear();
    folded.set(text, result);
  }
  return result;
}

/** The same words are folded by every part of a request; a bounded memory keeps long messages from filling it. */
const folded = new Map<string, string>();

function foldNow(text: string): string {
  return plain(text)
    .normalize('NFKD')
    .replace(/(?<=\p{Script=Latin})\p{M}+/gu, '')
    .normalize('NFC')
    .toLowerCase()
    .replace(/[^\p{L}\p{M}\p{N}]+/gu, ' ')
    .trim();
}

/** A word as it is compared: folded, a plural s left off. */
export function stem(word: string): string {
  const folded = fold(word);
  if (folded.length > 4 && folded.endsWith('ies')) return `${folded.slice(0, -3)}y`;
  if (folded.length > 3 && folded.endsWith('s') && !folded.endsWith('ss')) return folded.slice(0, -1);
  return folded;
}
