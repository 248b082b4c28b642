/** Words that take something out of a food: 'vegan', 'gluten-free'. */
const claim =
  /\b(?:(?:gluten|wheat|dairy|milk|lactose|eggs?|nuts?|peanuts?|soya?|meat|fish|celery|mustard|sesame|alcohol|allergen)[\s-]?(?:free|less)|eggless|meatless|dairyless|milkless|non[\s-]?dairy|non[\s-]?alcoholic|vegan|vegetarian|veggie|plant(?:[\s-]?based)?|g\.?f\.?|d\.?f\.?|no[\s-](?:gluten|wheat|dairy|milk|eggs?|nuts?|soya?|meat|alcohol))\b/giu;
const claimWords = claim.source;

/** Anywhere in the line they leave a claim open: 'gluten-free, if you can'. */
const conditions = /\b(?:if|unless|when|where|whenever|depending|depends|otherwise|or not|else)\b/iu;
/** Beside the claim, between the same commas or brackets, they do. */
const doubts =
  /[?？]|\b(?:optional(?:ly)?|maybe|perhaps|possibly|probably|ideally|prefer(?:ably|red)?|hopefully|can|could|may|might|should|works?|also|too|either|both|sometimes|usually|normally|check|option|choice|not|never|almost|nearly|unsure|sure|think|guess)\b/iu;
const beforeOr = new RegExp(`(?:${claimWords})\\s*(?:or|/)\\s*`, 'iu');
const behindOr = new RegExp(`(?:\\bor\\b|/)\\s*(?:an?\\s+|the\\s+|use\\s+|some\\s+)?(?:${claimWords})`, 'iu');
/** 'gluten-free for Pip': for somebody, and perhaps not for all. */
const forSomebody = new RegExp(
  `\\bfor\\s+(?:the\\s+|our\\s+|any\\s+)?(?:coeliacs?|celiacs?|vegans?|vegetarians?|allerg\\p{L}*|those|people|anyone|anybody|guests?|kids?|child(?:ren)?|him|her|me|${claimWords})|\\b[Ff]or\\s+\\p{Lu}`,
  'u',
);

const segments = (line: string): string[] => line.split(/[()[\]{},;]|\s[-–—]\s/u);

/**
 * A line whose claim is left open, without the claim: 'butter (vegan?)' may be butter.
 * @returns undefined where no claim is in doubt
 */
export function withoutDoubtedClaim(line: string): { bare: string; claims: string } | undefined {
  if (line.search(claim) < 0) return undefined;
  const claimed = segments(line).filter((one) => one.search(claim) >= 0);
  const isOpen =
    conditions.test(line) ||
    claimed.some(
      (one) => doubts.test(one) || beforeOr.test(one) || behindOr.test(one) || forSomebody.test(one),
    );
  if (!isOpen) return undefined;
  return {
    bare: line
      .replace(claim, ' ')
      .replace(/[?？]/gu, ' ')
      .replace(/\(\s*\)/gu, ' '),
    claims: [...new Set([...line.matchAll(claim)].map(([word]) => word.toLowerCase()))].join(', '),
  };
}
