import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { tokensOf } from '#foods/tokens.ts';
import { foldedWords } from '#foods/words.ts';

// Plain ASCII is read by expressions of its own, since nearly all text is; a letter of another script anywhere in the
// text takes the general ones. Both must read the same.
const ascii = fc.stringMatching(/^[ -~]{0,60}$/);

describe('plain text and text of any script are read alike', () => {
  it('as folded words', () => {
    fc.assert(
      fc.property(ascii, (text) => {
        expect([...foldedWords(text), 'ж']).toEqual(foldedWords(`${text} ж`));
      }),
    );
  });
  it('as words and breaks', () => {
    const apart = (text: string) => tokensOf(`${text} , `);
    fc.assert(
      fc.property(ascii, (text) => {
        expect([...apart(text), { word: 'ж', breaks: null }]).toEqual(tokensOf(`${text} , ж`));
      }),
    );
  });
});
