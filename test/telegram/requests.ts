import { command, planned } from '#chat/command.ts';
import { readCommands } from '#chat/registry.ts';
import { optional, restOfText } from '#words/parts.ts';

/** A PNG's header with the given size; enough for whoever only reads the size. */
export function png(widthPx: number, heightPx: number): Buffer {
  const bytes = Buffer.alloc(64);
  bytes.write('\x89PNG\r\n\x1a\n', 0, 'latin1');
  bytes.writeUInt32BE(13, 8);
  bytes.write('IHDR', 12, 'latin1');
  bytes.writeUInt32BE(widthPx, 16);
  bytes.writeUInt32BE(heightPx, 20);
  return bytes;
}

const about = { words: optional(restOfText('words')) };

/** Requests that exist for the door's tests alone, beside the real ones. */
export function testRequests(whenSummed: () => Promise<unknown> = () => Promise.resolve()) {
  const choose = command({
    name: 'choose',
    usage: '/choose',
    summary: 'two buttons that record',
    examples: ['/choose'],
    takes: about,
    run: ({ words }) => words,
    say: (words) => ({
      group: 'Which?',
      ...(words === 'all' ? { buttonsForAll: true } : {}),
      buttons: [
        { label: 'Low', request: '/house altitude 100 m' },
        { label: 'High', request: '/house altitude 2000 m' },
      ],
    }),
  });
  const say = command({
    name: 'echo',
    usage: '/echo',
    summary: 'what was typed, as a note too',
    examples: ['/echo a'],
    takes: about,
    run: ({ words }, { member }) => ({ words: words ?? '', name: member.name }),
    say: ({ words, name }) => ({ group: `${name}: ${words}`, notes: [{ who: name, text: words }] }),
  });
  const long = command({
    name: 'long',
    usage: '/long',
    summary: 'more than one message holds',
    examples: ['/long'],
    takes: about,
    run: () => undefined,
    say: () => ({
      group: Array.from({ length: 300 }, (_, i) => `line ${i + 1} 🥕 of a long list of pouches`).join('\n'),
      notes: Array.from({ length: 60 }, (_, i) => ({ who: `Pip ${i}`, text: 'not for you: milk' })),
      buttons: [{ label: 'Go on', request: '/echo on' }],
    }),
  });
  const paper = command({
    name: 'paper',
    usage: '/paper',
    summary: 'files of every kind',
    examples: ['/paper'],
    takes: about,
    run: () => undefined,
    say: () => ({
      group: 'Three files.',
      files: [
        {
          name: 'labels B4.pdf',
          type: 'application/pdf',
          base64: Buffer.from('%PDF-1.4 tray').toString('base64'),
          caption: 'B4',
        },
        {
          name: 'small.png',
          type: 'image/png',
          base64: png(800, 600).toString('base64'),
          caption: 'c'.repeat(3000),
        },
        { name: 'large.png', type: 'image/png', base64: png(1280, 600).toString('base64'), caption: '' },
      ],
    }),
  });
  const slow = planned({
    name: 'slow',
    usage: '/slow',
    summary: 'long sums',
    examples: ['/slow'],
    takes: about,
    look: () => undefined,
    work: whenSummed,
    keep: () => undefined,
    say: () => ({ group: 'Summed.' }),
  });
  const broken = command({
    name: 'broken',
    usage: '/broken',
    summary: 'a fault of the program',
    examples: ['/broken'],
    takes: about,
    run: ({ words }) => {
      throw new Error(`cannot work with ${words ?? 'nothing'}`);
    },
    say: () => ({ group: '' }),
  });
  return [choose, say, long, paper, slow, broken];
}

export const realRequests = await readCommands();
