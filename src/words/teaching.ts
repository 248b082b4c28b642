import { fold } from './near.ts';
import { part, quantities } from './part.ts';
import { Reading } from './reading.ts';

/** What a household says of its own words and vessels. */
export type Teaching =
  | { readonly is: 'list' }
  | { readonly is: 'forget'; readonly words: string }
  /** 'our tin of tomatoes is 390 g': `what` is 'tin of tomatoes'; exactly one of grams and ml is set. */
  | {
      readonly is: 'measure';
      readonly what: string;
      readonly grams: number | null;
      readonly ml: number | null;
      readonly typed: string;
    }
  /** 'by curry we mean lentil curry'. */
  | { readonly is: 'name'; readonly words: string; readonly means: string };

const before = /^[\s,:;]*(?:please\s+)?(?:(?:in )?our(?: house)?|my|the|an?|one|1|every|each)\s+/iu;
const says =
  /^(.+?)\s*(?:\s(?:is|are|=|→|->|weighs?|holds?|has|contains?|takes?|comes to)|=|→|->|:)\s*(.+)$/isu;
const byMean =
  /^(?:by|with)\s+(.+?),?\s+(?:we|i|you)(?:'ll)?\s+(?:always\s+|usually\s+)?(?:mean|understand)\s+(.+)$/isu;
const isMeant = /^(.+?)\s+(?:always\s+)?(?:means?|stands? for)\s+(.+)$/isu;
const forgetFirst = /^(?:please\s+)?forget\s+(?:about\s+)?(.+)$/isu;
const forgetLast = /^(.+?)[\s,:;]+(?:forget(?:\s+it)?|forgotten)$/isu;

const bare = (text: string): string =>
  text
    .replace(before, '')
    .replace(/^[\s"'“”‘’«»]+|[\s"'“”‘’«».,;:!]+$/gu, '')
    .trim();

/** The one amount of a text, where it holds one and little else behind it. @throws Ambiguous */
function amountIn(text: string): Extract<Teaching, { is: 'measure' }> | undefined {
  const reading = new Reading(text);
  const all = (['mass', 'volume'] as const).flatMap((kind) =>
    quantities(reading, kind).map((found) => ({ ...found, kind })),
  );
  const one = all[0];
  if (all.length !== 1 || !one) return undefined;
  reading.settleNumbers([one.index]);
  const tail = reading.without([...reading.left()].filter((i) => i <= one.index));
  if (tail.leftovers().length > 0) return undefined;
  const token = reading.all[one.index]!;
  const what = bare(
    text
      .slice(0, token.from)
      .replace(
        /[\s,]*(?:\b(?:is|are|weighs?|holds?|has|contains?|takes?|comes to|about|exactly)\b|[=→:]|->)\s*/giu,
        ' ',
      ),
  );
  if (what === '') return undefined;
  // A measure is one word: a big pot is a pot.
  const vessel =
    one.kind === 'volume'
      ? /^(?:(?:big|large|small|little|old|new|red|blue|green|camp|soup|tea|coffee|wooden|tin)\s+)+(\p{L}+)$/iu.exec(
          what,
        )?.[1]
      : undefined;
  const grams = one.kind === 'mass' ? one.value : null;
  return {
    is: 'measure',
    what: vessel ?? what,
    grams,
    ml: grams === null ? one.value : null,
    typed: one.typed,
  };
}

/** Takes a sentence of teaching apart; undefined when it is none. @throws Ambiguous for '1,500 g' */
export function readTeaching(text: string): Teaching | undefined {
  const whole = text.replace(/\s+/gu, ' ').trim();
  if (whole === '' || /^(?:words?|list|all)$/i.test(whole)) return { is: 'list' };
  if (whole.length > longest) return undefined;
  const plain = whole.replace(/[.!?]+$/u, '');
  const forget = forgetFirst.exec(plain) ?? forgetLast.exec(plain);
  if (forget) return { is: 'forget', words: bare(forget[1]!) };
  const named = byMean.exec(plain) ?? isMeant.exec(plain);
  const measured = named ? undefined : amountIn(plain);
  if (measured) return measured;
  const said = named ?? says.exec(plain);
  if (!said) return undefined;
  const [words, means] = [bare(said[1]!), bare(said[2]!)];
  if (fold(words) === '' || fold(means) === '' || /\d/.test(means)) return undefined;
  return { is: 'name', words, means };
}

/** A sentence longer than this is a story. */
const longest = 160;

/** All of it: 'our cup is 250 ml', 'by curry we mean lentil curry', or nothing to list what is known. */
export const teaching = part<Teaching>(
  'what is yours, such as tin of tomatoes is 390 g',
  (reading, _names) => {
    const read = readTeaching(reading.text);
    if (read) reading.take(...reading.left());
    return read;
  },
);
