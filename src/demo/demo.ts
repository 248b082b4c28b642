import { readFileSync } from 'node:fs';
import { replay } from './replay.ts';

process.stdout.write(
  await replay(readFileSync(new URL('../fixtures/chats/season.chat', import.meta.url), 'utf8')),
);
