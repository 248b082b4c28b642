import { expect, test } from 'vitest';
import { provenWords } from '#cards/proven-words.ts';
import { levelNames, type LevelName, type PicksProblem, type PicksResult } from '#core/picks/problem.ts';

// Witness: what is short counts in steps of the fiftieth part of all floors, at least 100 kcal; 10,000 kcal make steps of 200.
const problem: PicksProblem = {
  lots: [],
  eaters: [],
  slots: [
    {
      key: 's',
      day: 1,
      order: 0,
      eaters: ['a', 'b'],
      floors: [
        { eater: 'a', kcal: 4000 },
        { eater: 'b', kcal: 6000 },
      ],
    },
  ],
  safe: [],
  dislikes: [],
  wishes: [],
};

function result(gaps: Partial<Record<LevelName, number>>, clockEnded = false): PicksResult {
  const levels = levelNames.map((level) => {
    const gap = gaps[level] ?? 0;
    return { level, value: gap, bound: 0, gap, proven: gap === 0 };
  });
  return { slots: [], vector: levels.map(({ value }) => value), levels, status: 'best found', clockEnded };
}

test('what is open is told in kcal, meals and plates, not in steps of the search', () => {
  expect(provenWords(problem, result({ 'energy short': 3, wishes: 213 }))).toBe(
    'Best found, not proven to be the best: at most 600 kcal less could be short.',
  );
  expect(provenWords(problem, result({ unfed: 1, dislikes: 2 }))).toContain(
    'at most 1 meal more could be filled',
  );
  expect(provenWords(problem, result({ wishes: 213 }))).toContain('one more wish might come true');
  expect(provenWords(problem, result({ dislikes: 2 }))).toContain('at most 2 disliked plates less');
  expect(provenWords(problem, result({ waste: 1 }))).toContain('at most 1 serving less could be left over');
});

test('what is only searched is not said to be open, and the clock is named', () => {
  expect(provenWords(problem, result({ variety: 9 }))).toMatch(/^Proven: .*searched\.$/);
  expect(provenWords(problem, result({ unfed: 2 }, true))).toBe(
    'Best found, not proven to be the best: at most 2 meals more could be filled. The clock ended the search; asking again may find better.',
  );
});
