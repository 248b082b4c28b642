import { readFileSync, readdirSync } from 'node:fs';
import { join } from 'node:path';
import { expect, test } from 'vitest';
import { replay } from '#demo/replay.ts';

const folder = join(import.meta.dirname, '..', 'fixtures', 'chats');

test.each(readdirSync(folder))('the chat %s comes out to the letter', async (name) => {
  const path = join(folder, name);
  await expect(await replay(readFileSync(path, 'utf8'))).toMatchFileSnapshot(path);
});
