import { command } from '#chat/command.ts';
import { goneWords, remainingLines, takeOut } from '#house/leave.ts';
import { pouchesNamed } from '#words/parts.ts';

export default command({
  name: 'use',
  alsoCalled: ['used', 'eat', 'ate', 'opened'],
  usage: '/use <pouches>',
  summary: 'pouches that were opened and eaten',
  examples: ['/use B4-2 B4-3', '/use B4-1 to B4-6'],
  records: true,
  mayLeaveOut: true,
  takes: { codes: pouchesNamed },
  run: ({ codes }, house) => takeOut(house, codes, 'used', null),
  say: (left) => ({
    group: [`Used: ${goneWords(left)}.`, ...remainingLines(left)].join('\n'),
    did: `used ${goneWords(left)}`,
    meals: left.meals,
  }),
});
