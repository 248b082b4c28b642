// Witness: common practice, no source.
import { expect, test } from 'vitest';
import { openTestHouse } from '../house.ts';

test('tells whoever runs it how the program does', () => {
  expect(openTestHouse().say('/status').split('\n')).toEqual([
    'Version 1.2.3, up for 26 h.',
    expect.stringMatching(/^\d answers? waiting to be delivered, 0 given up\.$/),
    'No fault since the start.',
    expect.stringMatching(/^The database takes 0\.\d MB\.$/),
    'Last backup Sun 3 May 16:00.',
  ]);
});

test('a fault is named with its time, and a missing backup', () => {
  const house = openTestHouse('2026-05-03 18:00', {
    status: () => ({
      version: '1.2.3',
      startedAtMs: Date.parse('2026-04-30T18:00:00Z'),
      waiting: 1,
      givenUp: 2,
      lastFault: { atMs: Date.parse('2026-05-03T17:30:00Z'), line: 'sendMessage: 502 Bad Gateway' },
      bytes: 3 * 1_048_576,
      lastBackupAtMs: null,
    }),
  });
  expect(house.say('/status').split('\n')).toEqual([
    'Version 1.2.3, up for 3 days.',
    '1 answer waiting to be delivered, 2 given up.',
    'Last fault, Sun 3 May 17:30: sendMessage: 502 Bad Gateway',
    'The database takes 3 MB.',
    'No backup yet; one is made every day.',
  ]);
});

test('in a group only the person who first admitted one is told', () => {
  const house = openTestHouse('2026-05-03 18:00', { admitCode: 'plum-42' });
  const telegram = (chatKey: string) => ({ door: 'telegram' as const, chatKey, chatTitle: chatKey });
  house.say('/admit plum-42', 'Ana', telegram('-1'));
  house.say('/admit plum-42', 'Ben', telegram('-2'));
  const ask = (from: string, chat: string) => house.say('/status', from, telegram(chat));
  expect(ask('Ana', '-1')).toContain('Version 1.2.3');
  expect(ask('Ana', '-2')).toContain('Version 1.2.3');
  for (const chat of ['-1', '-2']) expect(ask('Ben', chat)).toContain('Only whoever runs this bot');
});

test('a chat that admitted a group in nobody\u2019s name makes no owner of everybody', () => {
  const house = openTestHouse('2026-05-03 18:00', { admitCode: 'plum-42' });
  const group = { door: 'telegram' as const, chatKey: '-1', chatTitle: 'Kitchen' };
  house.say('/admit plum-42', 'Kitchen', { ...group, person: { key: 'chat:-1', name: 'Kitchen' } });
  expect(
    house.say('/status', 'Kitchen', { ...group, person: { key: 'chat:-1', name: 'Kitchen' } }),
  ).toContain('Only whoever');
});
