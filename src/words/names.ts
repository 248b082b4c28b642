import { Ambiguous } from './ambiguous.ts';
import { isFiller } from './fillers.ts';
import { fold, forgiven, slips, stem } from './near.ts';
import type { Reading } from './reading.ts';

interface Candidate {
  readonly name: string;
  readonly indexes: number[];
  readonly slips: number;
  readonly whole: boolean;
  readonly cover: number;
}

/**
 * Finds the one name meant by the words still free, whatever their order; typing slips are forgiven and shown.
 * A name typed in full wins; otherwise the name that accounts for most of the words, then with the fewest slips.
 * @param names the household's own names
 * @param what how the thing is called in a question: 'meal', 'eater'
 * @param wholeOnly every word of the name has to be there, slips forgiven
 * @returns the name, or undefined when no word resembles any
 * @throws Ambiguous when two names fit equally well
 */
export function takeName(
  reading: Reading,
  names: readonly string[],
  what: string,
  wholeOnly = false,
): string | undefined {
  const whole = takeWhole(reading, names);
  if (whole !== undefined) return whole;
  const free = [...reading.left()].filter((i) => ['word', 'quoted', 'number'].includes(reading.all[i]!.is));
  const scored = names
    .map((name) => candidate(reading, free, name))
    .filter((c): c is Candidate => c !== undefined && (c.whole || !wholeOnly))
    .sort(
      (a, b) =>
        b.indexes.length - a.indexes.length ||
        Number(b.whole) - Number(a.whole) ||
        a.slips - b.slips ||
        b.cover - a.cover,
    );
  const best = scored[0];
  if (!best) return undefined;
  // A name whose every word was typed beats a longer one; cover alone never decides between two.
  const rivals = scored.filter(
    (c) => c.indexes.length === best.indexes.length && c.whole === best.whole && c.slips === best.slips,
  );
  const typed = best.indexes.map((i) => reading.all[i]!.typed).join(' ');
  if (rivals.length > 1) {
    const [first, ...others] = best.indexes.map((i) => reading.all[i]!);
    throw new Ambiguous(
      `"${typed}" could be ${rivals.length === 2 ? 'either of two' : `any of ${rivals.length}`} ${what}s. Which is meant?`,
      rivals.slice(0, 8).map(({ name }) => ({
        label: name,
        request: reading.rewritten([
          { from: first!.from, to: first!.to, into: `"${name.replaceAll('"', "'")}"` },
          ...others.map(({ from, to }) => ({ from, to, into: '' })),
        ]),
      })),
    );
  }
  reading.take(...best.indexes);
  if (best.slips > 0) reading.remarks.push(`read "${typed}" as ${best.name}`);
  return best.name;
}

/** A name typed in full and in order, the longest first; also inside quotes. */
export function takeWhole(reading: Reading, names: readonly string[]): string | undefined {
  const folded = names
    .map((name) => ({ name, words: fold(name).split(' ').filter(Boolean) }))
    .filter((n) => n.words.length > 0)
    .sort((a, b) => b.words.length - a.words.length);
  for (const index of reading.left()) {
    const token = reading.all[index]!;
    if (token.is !== 'quoted') continue;
    const found = folded.find((n) => n.words.join(' ') === fold(token.inside));
    if (found) {
      reading.take(index);
      return found.name;
    }
  }
  const free = [...reading.left()].filter((i) => reading.all[i]!.is !== 'mark');
  const said = free.map((i) => fold(reading.all[i]!.plain).split(' ').filter(Boolean));
  for (const { name, words } of folded) {
    for (let start = 0; start < free.length; start++) {
      const indexes: number[] = [];
      let k = 0;
      for (let j = start; j < free.length && k < words.length; j++) {
        const pieces = said[j]!;
        if (pieces.length === 0 || !pieces.every((piece, n) => words[k + n] === piece)) break;
        k += pieces.length;
        indexes.push(free[j]!);
      }
      if (k === words.length) {
        reading.take(...indexes);
        return name;
      }
    }
  }
  return undefined;
}

function candidate(reading: Reading, free: readonly number[], name: string): Candidate | undefined {
  const words = fold(name).split(' ').filter(Boolean).map(stem);
  const usedWords = new Set<number>();
  const indexes: number[] = [];
  let slipsMade = 0;
  for (const index of free) {
    const token = reading.all[index]!;
    if (token.is === 'word' && isFiller(token.plain)) continue;
    for (const piece of fold(token.is === 'quoted' ? token.inside : token.plain)
      .split(' ')
      .filter(Boolean)) {
      const typed = stem(piece);
      let best: { word: number; slips: number } | undefined;
      words.forEach((word, w) => {
        if (usedWords.has(w)) return;
        const most = Math.min(forgiven(typed), forgiven(word));
        const starts = typed.length >= 3 && word.startsWith(typed) && token.is === 'word';
        const distance = starts ? 0 : slips(typed, word, most);
        if (distance <= most && (!best || distance < best.slips)) best = { word: w, slips: distance };
      });
      if (!best) continue;
      usedWords.add(best.word);
      slipsMade += best.slips;
      if (!indexes.includes(index)) indexes.push(index);
    }
  }
  if (indexes.length === 0) return undefined;
  const onlyNumbers = indexes.every((i) => reading.all[i]!.is === 'number');
  if (onlyNumbers) return undefined;
  return {
    name,
    indexes,
    slips: slipsMade,
    whole: usedWords.size === words.length,
    cover: usedWords.size / words.length,
  };
}
