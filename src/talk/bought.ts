import { type Reader, turnedRound } from './hold.ts';

const deed =
  /^(?:(?:we|i|mum|dad|she|he|they|\p{Lu}[\p{L}'’-]+)(?:['’]ve|\s+have|\s+had|\s+has)?\s+)?(?:just\s+|also\s+|now\s+|finally\s+)?(?:bought|picked\s+up|purchased|stocked\s+up\s+on|got\s+(?:us\s+|some\s+more\s+)?(?=\d|an?\s|two\s|three\s|four\s|five\s|six\s))/iu;
/** What is bought for the dryer or the kitchen is no food for the trail. */
const others =
  /\b(?:absorbers?|pouches|bags?(?!\s+of)|mylar|dryer|trays?|stove|gas|canisters?|pump|oil\s+for\s+the\s+pump|labels?|scale|scales)\b/iu;
const amount = /\d|\b(?:an?|one|two|three|four|five|six|seven|eight|nine|ten|twelve|dozen)\b/iu;

/** 'We bought 6 nut bars 40 g each, contain peanuts, best by March.' */
export const buying: Reader = (look) => {
  const text = look.bare.replace(
    /^(?:(?:ok(?:ay)?|so|hi|hey|hello|today|yesterday|maybe|perhaps|possibly|probably|i think|i guess)[\s,:]+)+/iu,
    '',
  );
  const before = look.bare.slice(0, look.bare.length - text.length);
  const found = deed.exec(text);
  if (!found || look.said.codes.length + look.said.batches.length > 0 || others.test(text)) return undefined;
  const words = text
    .slice(found[0].length)
    .replace(/^\s*(?:today|yesterday|in town)\s+/iu, '')
    // '…, hazelnuts and oats in them' is what the packet says is in it.
    .replace(
      /[,;]\s*(?:(?:with|there(?:['’]s| is| are)|they have|it has|have|has)\s+)?([^,;\d]+?)\s+in\s+(?:them|it|there)(?=\s*(?:[,;.]|$))/giu,
      ', contains $1',
    )
    .trim();
  if (words === '' || !amount.test(words)) return undefined;
  // What stands before the packet's own words is said of the deed; the packet may deny and doubt as it likes.
  const { mood } = look.said;
  const packet =
    /\b(?:contains?|containing|may|might|traces|without|free|no|not)\b/iu.exec(words)?.index ?? words.length;
  const ofDeed = `${before} ${found[0]} ${words.slice(0, packet)}`.toLowerCase();
  const isSaid = (word: string | null) => word !== null && ofDeed.includes(word.toLowerCase());
  const holds = mood.asks
    ? 'that reads as a question'
    : isSaid(mood.negated)
      ? turnedRound(mood.negated!)
      : isSaid(mood.doubt)
        ? `"${mood.doubt!}" leaves it open`
        : mood.either && / or /iu.test(ofDeed)
          ? 'that leaves open which one'
          : null;
  return { means: 'bring', words, score: 6, left: [], holds };
};
