import { command } from '#chat/command.ts';
import { eatPart, endRest, noPouch } from '#house/eaten.ts';
import { goneWords, remainingLines, takeOut } from '#house/leave.ts';
import { pastMoment } from '#words/when.ts';
import { batchAlone, codesOrBatch, eatenPart, theRest } from '#words/eaten-parts.ts';

export default command({
  name: 'use',
  alsoCalled: ['used', 'eat', 'ate', 'opened'],
  usage: '/use <pouches> · /use <pouch> half · /use <batch> rest',
  summary: 'pouches that were opened and eaten, whole or in part',
  examples: ['/use B4-2 B4-3', '/use B4-1 to B4-6', '/use B4-2 half', '/use B4 rest'],
  help: [
    'A day or an hour that has passed may stand behind: /use B4-2 yesterday.',
    '"rest" is what was never sealed; with a weight (/use B4 30 g) a part of it.',
  ],
  records: true,
  mayLeaveOut: true,
  offers: { of: 'pouches' },
  takes: { codes: codesOrBatch, batch: batchAlone, much: eatenPart, rest: theRest, at: pastMoment },
  run: ({ codes, batch, much, rest, at }, house) => {
    if (batch === undefined)
      return (much && eatPart(house, codes, much)) ?? takeOut(house, codes, 'used', null, at);
    if (rest === undefined && much === undefined) throw noPouch(batch);
    return endRest(house, batch, 'used', much, null);
  },
  say: (left) =>
    'group' in left
      ? left
      : {
          group: [
            `Used: ${goneWords(left)}${left.on === null ? '' : `, ${left.on}`}.`,
            ...remainingLines(left),
          ].join('\n'),
          did: `used ${goneWords(left)}${left.on === null ? '' : `, ${left.on}`}`,
          meals: left.meals,
        },
});
