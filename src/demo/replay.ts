import { Readable, Writable } from 'node:stream';
import { DateTime } from 'luxon';
import { answer } from '#chat/answer.ts';
import { openTerminal } from '#doors/terminal.ts';
import { openFoods } from '#store/foods.ts';
import { openDatabase } from '#store/open.ts';
import { assemble } from '#assemble.ts';

/**
 * Plays the people's lines of a written chat through the terminal door, on an empty household in memory and a
 * clock that the chat itself moves, and returns the whole chat as it comes out.
 * @param chat lines as the terminal door takes them; lines that start with '>' are answers and are left out
 */
export async function replay(chat: string): Promise<string> {
  const db = openDatabase(':memory:');
  const faults: string[] = [];
  const { house, close } = await assemble({
    db,
    foods: openFoods(':memory:'),
    zone: 'UTC',
    log: (line) => faults.push(line),
  });
  let nowMs = 0;
  let said = '';
  const people = chat
    .split('\n')
    .filter((line) => !line.startsWith('>'))
    .join('\n');
  await openTerminal({
    handle: (message) => answer(house, message),
    waiting: () => house.stores.messages.waiting('terminal'),
    sent: house.stores.messages.sent,
    due: () => Promise.resolve(),
    clock: {
      now: () => nowMs,
      set: (iso) => void (nowMs = DateTime.fromISO(iso.replace(' ', 'T'), { zone: 'UTC' }).toMillis()),
    },
    folder: '.',
    input: Readable.from([people]),
    output: new Writable({
      write(chunk: Buffer, _encoding, done) {
        said += chunk.toString();
        done();
      },
    }),
    echo: true,
    welcome: '',
    verbose: true,
  });
  await close();
  if (faults.length > 0) throw new Error(faults.join('\n'));
  return said;
}
