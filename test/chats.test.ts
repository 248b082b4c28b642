import { readFileSync } from 'node:fs';
import { expect, test } from 'vitest';
import { playChats } from './written-chats.ts';

playChats(false);

test('a week for four, from an empty cupboard to home again, takes 40 messages and taps at most', () => {
  const chat = readFileSync(new URL('../fixtures/chats/week-for-four.chat', import.meta.url), 'utf8');
  const said = chat.split('\n').filter((line) => /^\p{Lu}\p{L}*: /u.test(line));
  expect(said.length).toBeGreaterThan(20);
  expect(said.length).toBeLessThanOrEqual(40);
  expect(chat).toContain('Lake Loop, Sat 10 Jul: All are fed.');
  expect(chat).toContain('24 of 24 pouches packed.');
  expect(chat).toMatch(/Lake Loop: eaten: .*; back in stock: B3-6\./);
});
