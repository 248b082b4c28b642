import { plain } from '#words/numbers.ts';
import { frameOf } from './frame.ts';
import { readLine } from './read.ts';

const methodHeading =
  /^(?:#+ *)?(?:method|directions?|instructions?|preparation|steps?|how to (?:make|cook)(?: it)?|to (?:make|prepare|cook)|cooking instructions)\b.{0,30}:?$/i;
const otherHeading =
  /^(?:#+ *)?(?:notes?|tips?|nutrition(?: facts)?|nutritional information|equipment|storage|serving suggestions?)\b.{0,20}:?$/i;
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

/**
 * A whole recipe as pasted: ingredient lines apart from headings and from the method.
 * @param text lines with bullets, boxes, numbering, headings, and perhaps the method below
 * @returns `lines` without bullets, in order; `headings` as typed; `method` the text set aside, times and servings
 * too; `servings` as those lines tell them, each as typed
 */
export function splitRecipe(text: string): {
  lines: string[];
  headings: string[];
  method: string;
  servings: string[];
} {
  const servings: string[] = [];
  const lines: string[] = [];
  const headings: string[] = [];
  const method: string[] = [];
  let inMethod = false;
  let sentences = 0;
  const all = text.split(/\r\n|[\n\r\u2028\u2029]/).map((line) => line.trim());
  // A list whose lines open with '-5 g' or '-2 cups' uses the dash as a bullet; a single such line may mean it.
  const dashes = all.filter((line) => /^[-–—−][\d½¼¾⅓⅔]/.test(line)).length > 1;
  for (const raw of all) {
    if (raw === '') continue;
    const bare = plain(raw)
      .replace(/^[*_]+|[*_]+$/g, '')
      .trim();
    const frame = frameOf(bare);
    if (frame) {
      method.push(raw);
      if (frame.servings !== null) servings.push(frame.servings);
      continue;
    }
    if (methodHeading.test(bare) || otherHeading.test(bare)) {
      inMethod = true;
      if (methodHeading.test(bare)) headings.push(raw);
      else method.push(raw);
      continue;
    }
    if (ingredientHeading.test(bare)) {
      inMethod = false;
      headings.push(raw);
      continue;
    }
    if (inMethod) {
      method.push(raw);
      continue;
    }
    const line = dashes ? raw.replace(/^[-–—−](?=[\d½¼¾⅓⅔])/, '') : raw;
    const clean = line
      .replace(/^(?:[-*+•·‣▢□☐◦▪●○–—✓✔]+ +|[•·‣▢□☐◦▪●○✓✔]+ *|\[[ xX]?\] *)/, '')
      .replace(/^\(?\d{1,2}[.)] +(?=\S)/, '')
      .replace(/\*\*|__/g, '')
      .trim();
    if (clean === '') continue;
    if (isMethod(clean)) {
      method.push(raw);
      // Two sentences in a row: the list is over.
      if (++sentences > 1 && lines.length > 0) inMethod = true;
      continue;
    }
    const read = readLine(clean);
    if (read.is === 'heading') headings.push(clean);
    else if (read.is === 'line') lines.push(clean);
  }
  return { lines, headings, method: method.join('\n'), servings };
}
