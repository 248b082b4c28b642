import type { Camp } from '#core/records.ts';
import { plain } from '#words/numbers.ts';
import { campTold } from './camp.ts';
import { frameOf, type Makes } from './frame.ts';
import { readLine } from './read.ts';

const methodHeading =
  /^(?:#+ *)?(?:method|directions?|instructions?|preparation|steps?|how to (?:make|cook)(?: it)?|to (?:make|prepare|cook)|cooking instructions)\b.{0,30}:?$/i;
const otherHeading =
  /^(?:#+ *)?(?:notes?|tips?|nutrition(?: facts)?|nutritional information|equipment|storage|serving suggestions?)\b.{0,20}:?$/i;
/** 'Chef's note: better the next day', 'Source: grandma': a line of its own that speaks of the recipe. */
const remark =
  /^(?:\p{L}+['’]s\s+)?(?:notes?|tips?|hints?|n\.?b\.?|p\.?s\.?|source|adapted from|recipe (?:by|from)|photo|inspired by|equipment|storage|variations?|nutrition(?: per \p{L}+)?|categor(?:y|ies)|course|cuisine|keywords?|author|rating)\s*:\s*\S/iu;
const ingredientHeading = /^(?:#+ *)?(?:the )?ingredients?\b.{0,20}:?$/i;
const verbs =
  /^(?:\d{1,2}[.)] *|step \d+[.:)]? *)?(?:pre-?heat|heat|add|stir|mix|combine|place|put|cook|bake|boil|bring|simmer|fry|saut[eé]|whisk|pour|remove|serve|season|drain|chop|cut|slice|peel|wash|rinse|soak|in an? (?:large|small|medium|bowl|pan|pot|saucepan)|meanwhile|once|when|while|reduce|cover|let|leave|set|turn|transfer|spread|roll|knead|cool|chill|refrigerate|melt|beat|blend|toss|return|taste|using|line|grease|make|first|then|next|finally|allow|divide|sprinkle|fold|strain|warm|brown|roast|grill|steam)\b/i;

/** Whether a line reads as a sentence of the method rather than as an ingredient. */
function isMethod(text: string): boolean {
  const words = text.split(' ').length;
  if (
    verbs.test(text) &&
    (words > 6 || /[.!]$/.test(text)) &&
    readLine(text).amounts.length < 2 &&
    !/^\s*[\d½¼¾⅓⅔⅛]+(?:[\d ./½¼¾-]*)\s*(?:g|kg|ml|l|cups?|tbsp|tsp|oz|lbs?)\b/i.test(text)
  )
    return true;
  return words > 25 && /[.!]\s+\p{Lu}/u.test(text);
}

/** An ingredient line with the heading it stands under. */
export interface ListedLine {
  readonly typed: string;
  readonly section: string | null;
  /** What the heading says of where its lines are added. */
  readonly camp: Camp | null;
}

/** A recipe's text taken apart. */
export interface SplitRecipe {
  /** Without bullets, in order. */
  readonly lines: ListedLine[];
  /** As typed. */
  readonly headings: string[];
  /** The text set aside, times and servings too, and headings that no line stands under. */
  readonly method: string;
  /** As the lines around tell them, each as typed. */
  readonly servings: string[];
  /** What it gives in pieces or by volume. */
  readonly makes: Makes[];
}

/** A heading that says where its lines are added: 'At camp:', 'To add on the trail, per person'. */
function campHeading(text: string): Camp | undefined {
  const { camp, rest } = campTold(text.replace(/:$/, ''));
  return rest === '' && camp !== null && camp !== 'pot' ? camp : undefined;
}

const unbulleted = (line: string): string =>
  line
    .replace(/^(?:[-*+•·‣▢□☐◦▪●○–—✓✔]+ +|[•·‣▢□☐◦▪●○✓✔]+ *|\[[ xX]?\] *)/, '')
    .replace(/^\(?\d{1,2}[.)] +(?=\S)/, '')
    .replace(/\*\*|__/g, '')
    .trim();

/**
 * A whole recipe as pasted: ingredient lines apart from headings and from the method.
 * @param text lines with bullets, boxes, numbering, headings, and perhaps the method below
 */
export function splitRecipe(text: string): SplitRecipe {
  const servings: string[] = [];
  const makes: Makes[] = [];
  const lines: ListedLine[] = [];
  const headings: string[] = [];
  const method: string[] = [];
  let under: Pick<ListedLine, 'section' | 'camp'> = { section: null, camp: null };
  let inMethod = false;
  let sentences = 0;
  const all = text.split(/\r\n|[\n\r\u2028\u2029]/).map((line) => line.trim());
  // A list whose lines open with '-5 g' or '-2 cups' uses the dash as a bullet; a single such line may mean it.
  const dashes = all.filter((line) => /^[-–—−][\d½¼¾⅓⅔]/.test(line)).length > 1;
  const headed = (section: string, camp: Camp | null) => {
    closeSection();
    headings.push(section);
    under = { section: section.replace(/[\s:]+$/u, ''), camp };
  };
  const closeSection = () => {
    const { section } = under;
    if (section !== null && lines.at(-1)?.section !== section) method.push(`${section}:`);
  };
  for (const raw of all) {
    if (raw === '') continue;
    const bare = plain(raw)
      .replace(/^[*_]+|[*_]+$/g, '')
      .trim();
    if (remark.test(unbulleted(bare))) {
      method.push(raw);
      continue;
    }
    const frame = frameOf(bare);
    if (frame) {
      method.push(raw);
      if (frame.servings !== null) servings.push(frame.servings);
      if (frame.makes !== null) makes.push(frame.makes);
      continue;
    }
    if (methodHeading.test(bare) || otherHeading.test(bare)) {
      inMethod = true;
      if (methodHeading.test(bare)) headings.push(raw);
      else method.push(raw);
      continue;
    }
    const isList = ingredientHeading.test(bare);
    const camp = campHeading(unbulleted(bare));
    if (isList || camp !== undefined) {
      inMethod = false;
      if (camp !== undefined) headed(raw, camp);
      else {
        headings.push(raw);
        under = { section: null, camp: null };
      }
      continue;
    }
    if (inMethod) {
      method.push(raw);
      continue;
    }
    const clean = unbulleted(dashes ? raw.replace(/^[-–—−](?=[\d½¼¾⅓⅔])/, '') : raw);
    if (clean === '') continue;
    if (isMethod(clean)) {
      method.push(raw);
      // Two sentences in a row: the list is over.
      if (++sentences > 1 && lines.length > 0) inMethod = true;
      continue;
    }
    const read = readLine(clean);
    if (read.is === 'heading') headed(clean, null);
    else if (read.is === 'line') lines.push({ typed: clean, ...under });
  }
  closeSection();
  return { lines, headings, method: method.join('\n'), servings, makes };
}
