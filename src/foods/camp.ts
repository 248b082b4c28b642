import type { Camp } from '#core/records.ts';
import { plain } from '#words/numbers.ts';

/** What a line says of where it is added, and the line without those words. */
export interface CampTold {
  /** 'pot': said to go into the pot; null: nothing is said, so it does. */
  readonly camp: Camp | 'pot' | null;
  /** Empty where the words are a heading: 'To add at camp'. */
  readonly rest: string;
  /** Only a part of it is for camp, or it is not: how much goes where is not told. */
  readonly isDivided: boolean;
}

/** The reader of lines goes no further. */
const longestRead = 500;
const places = 'camps?|campsite|campfire|trail|trip|tour|hike|hut|tent|bivouac|bivvy|summit';
const orders =
  'add(?:\\s+in)?|stir\\s+(?:in|through)|mix\\s+in|top\\s+(?:it\\s+)?with|sprinkle(?:\\s+(?:on|over|with))?|put\\s+in|fold\\s+in|melt\\s+in|drizzle(?:\\s+(?:on|over|with))?|serve\\s+with|bring|carry|pack|take(?:\\s+along)?|finish\\s+with|with';
const deeds = `${orders}|added(?:\\s+in)?|stirred\\s+(?:in|through)|mixed\\s+in|topped\\s+with|sprinkled\\s+(?:on|over)|put\\s+in|folded\\s+in|melted\\s+in|drizzled(?:\\s+(?:on|over))?|served|carried|brought|taken\\s+along|separately|fresh\\s+added|only|extra`;
const deed = `(?:to\\s+)?(?:be\\s+)?(?:(?:is|are|goes|go|comes?)\\s+)?(?:only\\s+|just\\s+)?(?:${deeds})`;
const prepared = `(?:(?:at|in|on|for)\\s+(?:the\\s+|our\\s+)?|@\\s*)(?:${places})`;
const timed =
  "(?:when|once|after|while)\\s+(?:(?:we|you|it\\s+is|it['’]s)\\s+)?(?:re-?hydrat(?:ed|ing|e|ion)|eating|eaten|soaked)";
const atCamp = new RegExp(
  `(?:\\b${deed}[\\s,]+)*(?<![\\p{L}\\p{N}])(?:${prepared}|${timed})\\b(?!\\s*-?mix\\b)(?:\\s+only\\b)?(?:[\\s,:;–—-]+${deed}\\b)*`,
  'iu',
);
/** 'camp: 20 g butter', '20 g butter - camp'. */
const campAlone = /^camp(?:\s*:|\s+[-–—])\s*|\s*[-–—,;(]\s*camp\s*\)?$/iu;
const inPot =
  /[\s,;(]*\b(?:(?:goes?|is|are|added|cooked)\s+)?in(?:to)?\s+the\s+pot\b(?:\s+again|\s+after\s+all)?[)\s]*/iu;
const partBefore =
  /(?:(?:^|[,(;:])\s*(?:the\s+|a\s+)?(?:half|rest|remaining|remainder|some|most|part|third|quarter)(?:\s+of\s+(?:it|them))?|\b(?:not|never|the\s+rest))[\s,(]*$/iu;
const each =
  /[\s,;]*\b(?:(?:each|apiece)(?!\s+(?:serving|portion|person|eater))|(?:per|a|each|for\s+(?:each|every|one|a))\s+(?:serving|portion|person|eater|head|bowl|plate|mug|pouch|bag)|for\s+each)\b\s*/iu;
const leading = new RegExp(`^[\\s,:;–—-]*(?:(?:to\\s+)?(?:${orders})\\b[\\s,:;–—-]*)*(?=\\S)`, 'iu');

/** Brackets and signs left empty, and an order in front of the food: 'add 20 g butter at camp'. */
const tidied = (text: string): string =>
  text
    .replace(/[([{]\s*[,;:–—-]*\s*[)\]}]/gu, ' ')
    .replace(/([([{])\s*[,;]\s*/gu, '$1')
    .replace(leading, '')
    .replace(/[\s,:;–—-]+$/u, '')
    .replace(/\s+/gu, ' ')
    .replace(/\s*[,;]?\s+([,;)])/gu, '$1')
    .trim();

/**
 * Reads where a line is added: 'at camp: 20 g butter', '20 g butter (at camp)', 'add on the trail: 1 tbsp oil each'.
 */
export function campTold(line: string): CampTold {
  if (line.length > longestRead) return { camp: null, rest: line, isDivided: false };
  const text = plain(line).replace(/\s+/gu, ' ');
  const found = campAlone.exec(text) ?? atCamp.exec(text);
  if (!found) {
    const pot = inPot.exec(text);
    return pot
      ? { camp: 'pot', rest: tidied(text.replace(inPot, ' ')), isDivided: false }
      : { camp: null, rest: line, isDivided: false };
  }
  const before = text.slice(0, found.index);
  const without = `${before} ${text.slice(found.index + found[0].length)}`;
  // 'a slice of bread (30 g each) at camp' tells what one weighs.
  const told = each.exec(without);
  const isOfOne = told !== null && /\([^)]*\d[^)]*$/u.test(without.slice(0, told.index));
  const eachless = isOfOne ? without : without.replace(each, ' ');
  return {
    camp: eachless === without ? 'all' : 'each',
    rest: tidied(eachless),
    isDivided: partBefore.test(before) || inPot.test(without) || atCamp.test(without),
  };
}
