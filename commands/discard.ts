import { command } from '#chat/command.ts';
import { goneWords, remainingLines, takeOut } from '#house/leave.ts';
import { optional, pouchesNamed, restOfText } from '#words/parts.ts';

export default command({
  name: 'discard',
  alsoCalled: ['discarded', 'bin'],
  usage: '/discard <pouches> [reason]',
  summary: 'pouches thrown away, and why',
  examples: ['/discard B4-3 seal failed'],
  records: true,
  mayLeaveOut: true,
  takes: { codes: pouchesNamed, why: optional(restOfText('a reason')) },
  run: ({ codes, why }, house) => ({ ...takeOut(house, codes, 'discarded', why ?? null), why }),
  say: ({ why, ...left }) => ({
    group: [
      `Discarded: ${goneWords(left)}${why ? `, because: ${why}` : ''}.`,
      'A pouch that swelled, leaked or smells off: out with it unopened, and no tasting.',
      ...remainingLines(left),
    ].join('\n'),
    did: `discarded ${goneWords(left)}${why ? `: ${why}` : ''}`,
  }),
});
