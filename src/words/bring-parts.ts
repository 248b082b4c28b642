import type { Occasion } from '#core/occasions.ts';
import { kjPerKcal, saltPerSodium } from '#core/panel.ts';
import { Refusal } from '#core/refusal.ts';
import { bestByTold } from './best-by.ts';
import { occasionsNamed } from './occasion-words.ts';
import { mayBePanel, type PanelTold, readPanel } from './panel-parts.ts';
import { part } from './part.ts';
import { each, figure, number, Rest } from './taken-out.ts';
import { priceIn } from './piece-price.ts';

/** Figures of one piece as its packet has them; null: not told. */
export interface PieceFigures {
  readonly kcal: number | null;
  readonly sodiumMg: number | null;
  readonly proteinG: number | null;
  readonly fatG: number | null;
  readonly carbohydrateG: number | null;
}

/** What somebody bought, as told. */
export interface BringTold {
  readonly is: 'bought';
  readonly name: string;
  readonly count: number;
  /** Of one piece, as typed: '60 g', '250 ml'. */
  readonly each: string | null;
  readonly figures: PieceFigures;
  readonly panel: PanelTold | null;
  /** To be poured on one, ml. */
  readonly waterMl: number;
  /** In one piece. */
  readonly servings: number | null;
  readonly uses: readonly Occasion[] | null;
  /** ISO day. */
  readonly bestBy: string | null;
  /** Of one piece; null where it was not told. */
  readonly price: { readonly amount: number; readonly currency: string } | null;
  /** 'contains oats, may contain nuts'; '' where nothing was said. */
  readonly statement: string;
}

const counts: Readonly<Record<string, number>> = { a: 1, an: 1, one: 1, two: 2, three: 3, four: 4, five: 5, six: 6, seven: 7, eight: 8, nine: 9, ten: 10, twelve: 12, dozen: 12 }; // prettier-ignore
const counted = `(\\d{1,4}|${Object.keys(counts).join('|')})`;
const countOf = (text: string | undefined) => counts[text?.toLowerCase() ?? ''] ?? Number(text);
const packs =
  'packs?|packets?|boxe?s?|bags?|cartons?|cases?|multi-?packs?|sachets?|tins?|cans?|jars?|bottles?|tubes?|pieces?|bars?(?= of)|pouches?|tubs?|blocks?|wheels?|cups?(?= of)|portions?(?= of)';

const allergenWord =
  'wheat|gluten|barley|rye|oats|milk|eggs?|soya?|soy|nuts?|peanuts?|almonds?|hazelnuts?|cashews?|walnuts?|sesame|celery|mustard|fish|lupin|sulphites?|sulfites?';
const claims =
  '(?:(?:gluten|dairy|milk|lactose|egg|wheat|nut|soya?|peanut)[\\s-]?free|vegan|vegetarian|halal|kosher|suitable for [a-z]+)';
const states =
  /(?:^|[\s,;.(\n])(?:it |they |each )?((?:contains?|containing|may contain|might contain|made (?:with|in)|allergens?:|allergy advice:?|traces of|free (?:of|from)|without|no (?=(?:added )?(?:milk|eggs?|nuts?|peanuts?|wheat|gluten|soya?|soy|fish|dairy|sesame|celery|mustard|lupin|sulphites?))).*)$/isu;

/** What the packet says is in it: from its first word to the end, or to the next figure. */
function statementIn(rest: Rest): string {
  const said: string[] = [];
  for (const line of rest.text.split('\n')) {
    const found = states.exec(line)?.[1];
    if (found === undefined) continue;
    const told = found.split(/[,;.]\s*(?=\d|(?:best|use) by\b|,)| , /iu)[0]!.replace(/[\s),]+$/u, '');
    said.push(told);
    rest.text = rest.text.replace(told, ' , ');
  }
  for (let claim = rest.take(new RegExp(`[,;(]\\s*(${claims})(?=\\s*(?:[,;.)\\n]|$))`, 'iu')); claim;) {
    said.push(claim[1]!);
    claim = rest.take(new RegExp(`[,;(]\\s*(${claims})(?=\\s*(?:[,;.)\\n]|$))`, 'iu'));
  }
  // A claim behind a comma is a sentence of its own: 'no egg, gluten-free'.
  return said.join('; ').replace(new RegExp(`,\\s*(?=${claims})`, 'giu'), '; ');
}

/** Energy, sodium and the rest of one piece: '250 kcal', 'sodium 90 mg', '0.5 g salt'. */
function figuresIn(rest: Rest): PieceFigures {
  const of = (unit: string, words: string) =>
    rest.take(new RegExp(`${figure}\\s*(${unit})\\s*(?:of\\s+)?(?:${words})\\b${each}?`, 'iu')) ??
    flipped(rest.take(new RegExp(`\\b(?:${words})[\\s:=]*${figure}\\s*(${unit})\\b${each}?`, 'iu')));
  const grams = (words: string): number | null => {
    const found = of('m?g', words);
    return found ? number(found[1]) / (found[2]!.toLowerCase() === 'mg' ? 1000 : 1) : null;
  };
  const energy = rest.take(
    new RegExp(`(?:energy[\\s:]*)?${figure}\\s*(kcal|cal(?:ories)?|kj)\\b${each}?`, 'iu'),
  );
  rest.take(new RegExp(`[/(]\\s*${figure}\\s*(?:kcal|kj)\\b\\)?`, 'iu'));
  const sodium = grams('sodium');
  const salt = grams('salt');
  return {
    kcal: energy ? number(energy[1]) / (energy[2]!.toLowerCase() === 'kj' ? kjPerKcal : 1) : null,
    sodiumMg: sodium !== null ? sodium * 1000 : salt !== null ? (salt * 1000) / saltPerSodium : null,
    proteinG: grams('proteins?'),
    fatG: grams('fats?'),
    carbohydrateG: grams('carb(?:ohydrate)?s?'),
  };
}

const flipped = (found: RegExpExecArray | undefined) => found;

const opening =
  /^\s*(?:(?:we|i|mum|dad|she|he|they)(?:['’]ve| have| had)?\s+)?(?:just\s+|also\s+)?(?:bought|got|have|picked up|purchased|brought(?: home)?|stocked up on|took|added|add|put)?(?:\s+(?:in|us|some more|also))?\s+/iu;

/**
 * Reads what was bought, in the words of its packet: '6 oat bars 60 g 250 kcal 90 mg sodium contains oats, may contain nuts'.
 * @throws Refusal for a panel, a date or an amount that cannot be
 */
export function readBrought(typed: string, nowMs: number, zone: string): BringTold {
  const rest = new Rest(` ${typed.trim()}`.replace(/[.\s]+$/u, ''));
  const { day: bestBy, rest: dateless } = bestByTold(rest.text, nowMs, zone);
  rest.text = dateless;
  const uses = usesIn(rest);
  const paid = priceIn(rest);
  const statement = statementIn(rest);
  const panel = panelIn(rest);
  const water = rest.take(
    new RegExp(
      `(?:(?:needs|add|with|takes|pour(?: on)?)\\s+)?${figure}\\s*(ml|l|cl|dl)\\s*(?:of\\s+)?(?:(?:hot|boiling|boiled|cold|warm)\\s+)?water${each}?`,
      'iu',
    ),
  );
  const ml = { ml: 1, cl: 10, dl: 100, l: 1000 }[water?.[2]?.toLowerCase() ?? 'ml']!;
  const feeds = rest.take(
    new RegExp(`(?:serves|feeds)\\s+${counted}|${counted}\\s+servings?(?: each| per (?:pack|piece))?`, 'iu'),
  );
  const figures = figuresIn(rest);
  // '… 290 mg sodium wheat': an allergen behind the figures is what the packet says.
  const bareAllergens = rest.take(
    new RegExp(`,\\s*((?:${allergenWord})(?:\\s*(?:,|and|&)\\s*(?:${allergenWord}))*)[\\s,.]*$`, 'iu'),
  )?.[1];
  const { count, each: weight } = amountIn(rest);
  const name = rest.text
    .replace(opening, ' ')
    .replace(new RegExp(`^[\\s,]*(?:(?:${packs})\\s+(?:of\\s+)?)`, 'iu'), ' ')
    .replace(/\b(?:each|apiece|a piece|per piece|in all|in total|altogether)\b/giu, ' ')
    .replace(/[\s,;:.()]*(?:,\s*)+/gu, ' ')
    .replace(/\s+(?:at|of|with|and|for|to)\s*$/iu, '')
    .replace(/^[\s,;:.-]*(?:of|some|the|our)\s+/iu, '')
    .replace(/[\s,;:.()-]+$/u, '')
    .replace(/\s+/gu, ' ')
    .trim();
  const servings = feeds ? countOf(feeds[1] ?? feeds[2]) : null;
  return {
    is: 'bought', name: name === '' ? '' : name[0]!.toUpperCase() + name.slice(1), count, each: weight, figures, panel,
    waterMl: water ? number(water[1]) * ml : 0, servings, uses, bestBy,
    statement: [statement, ...(bareAllergens ? [`contains ${bareAllergens}`] : [])].filter(Boolean).join('; '),
    price: paid && { amount: paid.isOfAll ? paid.amount / count : paid.amount, currency: paid.currency },
  }; // prettier-ignore
}

/** A nutrition panel, line by line or in one line. */
function panelIn(rest: Rest): PanelTold | null {
  if (!mayBePanel(rest.text)) return null;
  const start = /\bnutrition|\bper\s+(?:100|serving|portion)|\bserving size|\btypical values/iu.exec(
    rest.text,
  );
  if (!start) return null;
  const lines = rest.text.slice(start.index).split('\n');
  // What a piece weighs may stand below its panel.
  const isWeight = (line: string) =>
    /^[\s,]*(?:net\s+)?\d+(?:[.,]\d+)?\s*(?:g|kg)\b[^\d%]{0,20}$/iu.test(line);
  const panel = readPanel(`it\n${lines.filter((line) => !isWeight(line)).join('\n')}`);
  rest.text = [rest.text.slice(0, start.index), ...lines.filter(isWeight)].join(' ');
  return panel;
}

function usesIn(rest: Rest): readonly Occasion[] | null {
  const found = rest.take(
    /(?:,|\b)\s*(?:(?:is|are|it['’]s|they['’]re|good|meant)\s+)*(?:for|as)\s+(?:an?\s+)?((?:breakfast|lunch|dinner|supper|main|snack|sweet|dessert|drink|side)s?(?:(?:\s*,\s*|\s+(?:and|or)\s+)(?:an?\s+)?(?:breakfast|lunch|dinner|supper|main|snack|sweet|dessert|drink|side)s?)*)\b/iu,
  );
  return found ? (occasionsNamed(found[1]!) ?? null) : null;
}

/** How many, and what one weighs; '6 x 60 g', '6 bars 60 g each', '360 g in all', '2 packs of 6'. */
function amountIn(rest: Rest): { count: number; each: string | null } {
  const unit = 'g|kg|grams?|kilos?|oz|lbs?|ml|l|cl';
  const times = rest.take(new RegExp(`(\\d{1,4})\\s*[x×*]\\s*${figure}\\s*(${unit})\\b${each}?`, 'iu'));
  if (times) return checked(Number(times[1]), `${times[2]!} ${times[3]!}`);
  const whole = rest.take(
    new RegExp(`${figure}\\s*(${unit})\\s*(?:in all|in total|altogether|together|total)\\b`, 'iu'),
  );
  const weight =
    whole ?? rest.take(new RegExp(`(?:à|of|@|at)?\\s*${figure}\\s*-?(${unit})\\b${each}?`, 'iu'));
  rest.text = rest.text.replace(opening, ' ');
  const nested = rest.take(
    new RegExp(`^[\\s,]*${counted}\\s+(?:${packs})\\s+(?:of|with)\\s+${counted}\\b`, 'iu'),
  );
  const packed =
    nested ??
    rest.take(new RegExp(`(?:a\\s+)?(?:pack|packet|box|bag|carton)\\s+of\\s+()(\\d{1,3})\\b`, 'iu'));
  const alone = packed
    ? undefined
    : (rest.take(new RegExp(`^[\\s,]*${counted}(?:\\s*[x×])?(?=\\s)`, 'iu')) ??
      rest.take(/[\s,(]*[x×]\s*(\d{1,4})\)?\s*$/iu));
  const count = packed
    ? (countOf(packed[1] || 'one') || 1) * countOf(packed[2])
    : alone
      ? countOf(alone[1])
      : 1;
  if (!weight) return checked(count, null);
  const value = number(weight[1]) / (whole ? count : 1);
  return checked(count, `${value} ${weight[2]!}`);
}

/** More would be a shop. Chosen. */
const mostPieces = 500;

function checked(count: number, each: string | null) {
  if (!(Number.isInteger(count) && count >= 1 && count <= mostPieces))
    throw new Refusal('bad-count', `${count} pieces cannot be; 1 to ${mostPieces} can.`);
  return { count, each };
}

/** All that was typed: a packet is read as a whole. */
export const brought = part<BringTold | { readonly is: 'list' }>(
  'what was bought, such as 6 oat bars 60 g each',
  (reading, { nowMs, zone }) => {
    reading.take(...reading.left());
    return reading.text.trim() === '' ? { is: 'list' } : readBrought(reading.text, nowMs, zone);
  },
);
