import { readFileSync, readdirSync } from 'node:fs';
import { join } from 'node:path';
import { expect, test } from 'vitest';
import { replay } from '#demo/replay.ts';

const folder = join(import.meta.dirname, '..', 'fixtures', 'chats');
const textOf = (name: string): string => readFileSync(join(folder, name), 'utf8');

/** A chat that plans meals takes seconds to play; the season of the README is played in both rings. */
const plans = (name: string): boolean =>
  name !== 'season.chat' && /^\S[^>\n]*: \/pick\b/mu.test(textOf(name));

/** Plays the written chats that plan meals, or the others, and holds them to the letter. */
export function playChats(planning: boolean): void {
  test.each(readdirSync(folder).filter((name) => plans(name) === planning))(
    'the chat %s comes out to the letter',
    async (name) => {
      await expect(await replay(textOf(name))).toMatchFileSnapshot(join(folder, name));
    },
  );
}
