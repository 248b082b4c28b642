import { expect, test } from 'vitest';
import { readCommands } from '#chat/registry.ts';
import { menu } from '#chat/help.ts';
import { openSeason, refuses } from '../season.ts';

const commands = await readCommands();

test('every request is listed once, within one message of the platform', () => {
  const answer = openSeason().say('/help');
  for (const { name } of commands) expect(answer.match(new RegExp(`^/${name}:`, 'gm')), name).toHaveLength(1);
  expect(answer.length).toBeLessThan(3500);
});

test.each(commands.map((c) => c.name))('/help %s shows usage and an example that works', (name) => {
  const answer = openSeason().say(`/help ${name}`);
  expect(answer).toContain(`/${name}`);
  expect(answer).toContain('For example:');
});

test("the menu keeps the platform's limits", () => {
  // Bot API: 1 to 32 characters of a-z 0-9 _, description 1 to 256, at most 100 commands.
  const items = menu(commands);
  expect(items.length).toBeLessThanOrEqual(100);
  // A tap on a name sends it: what takes back by its name alone is not one tap away.
  expect(items.map(({ command }) => command)).not.toContain('undo');
  for (const { command, description } of items) {
    expect(command).toMatch(/^[a-z0-9_]{1,32}$/);
    expect(description.length).toBeGreaterThan(0);
    expect(description.length).toBeLessThanOrEqual(256);
  }
});

refuses([['/help wizardry', /There is no request called "wizardry"/]]);
