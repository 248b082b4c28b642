import { command } from '#chat/command.ts';
import { endRest, noPouch } from '#house/eaten.ts';
import { goneWords, remainingLines, takeOut } from '#house/leave.ts';
import { batchAlone, codesOrBatch, theRest } from '#words/eaten-parts.ts';
import { optional, restOfText } from '#words/parts.ts';

/** Words that only lead to a reason. */
const behindThing =
  /^(?:(?:the|a|an|pouch|pouches|because(?: of)?|cause(?: of)?|cos|bc|since|as|due to|it was|it is|was|is|,|:|-)(?=\s|$)\s*)+/iu;

export default command({
  name: 'discard',
  alsoCalled: ['discarded', 'bin'],
  usage: '/discard <pouches> [reason] · /discard <batch> rest [reason]',
  summary: 'pouches thrown away, and why',
  examples: ['/discard B4-3 seal failed', '/discard B4 rest smelled off'],
  records: true,
  mayLeaveOut: true,
  offers: { of: 'pouches' },
  takes: {
    codes: codesOrBatch,
    batch: batchAlone,
    rest: theRest,
    why: optional(restOfText('a reason')),
  },
  run: ({ codes, batch, rest, why: typed }, house) => {
    const why =
      typed
        ?.replace(behindThing, '')
        .replace(/[\s,]*\b(?:please|pls|thanks|thank you)[\s.!]*$/iu, '')
        .trim() || undefined;
    if (batch === undefined) return { ...takeOut(house, codes, 'discarded', why ?? null), why };
    if (rest === undefined) throw noPouch(batch);
    return endRest(house, batch, 'discarded', undefined, why ?? null);
  },
  say: (left) =>
    'group' in left
      ? left
      : {
          group: [
            `Discarded: ${goneWords(left)}${left.why ? `, because: ${left.why}` : ''}.`,
            'A pouch that swelled, leaked or smells off: out with it unopened, and no tasting.',
            ...remainingLines(left),
          ].join('\n'),
          did: `discarded ${goneWords(left)}${left.why ? `: ${left.why}` : ''}`,
        },
});
