import type { PicksProblem } from './problem.ts';

/**
 * A short print of a question, the plan before left out: the same question has the same print, and its answer need not
 * be worked out again. Two 32-bit multiplicative hashes; a chance likeness of two of one trip's questions is not feared.
 */
export function digestOf({ before: _before, ...question }: PicksProblem): string {
  const text = JSON.stringify(question);
  let [a, b] = [0x811c9dc5, 0x1b873593];
  for (let i = 0; i < text.length; i += 1) {
    const code = text.charCodeAt(i);
    a = Math.imul(a ^ code, 0x01000193);
    b = Math.imul(b ^ code, 0x85ebca6b) ^ (b >>> 13);
  }
  return `${(a >>> 0).toString(16)}-${(b >>> 0).toString(16)}-${text.length}`;
}
