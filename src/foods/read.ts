import { plain } from '#words/numbers.ts';
import {
  type Amount,
  emptyFound,
  type Found,
  isExact,
  isMetric,
  scanAmount,
  type Size,
  weightIn,
} from './amount.ts';
import { edibleWeight } from './edible-weight.ts';

export type { Amount, Size } from './amount.ts';

/** A line taken apart, before any food is looked for. Pure syntax. */
export interface ReadLine {
  readonly typed: string;
  readonly is: 'line' | 'heading' | 'empty';
  /** What is asked for, to be added up ('1 cup plus 2 tbsp'); none when the line names no amount. */
  readonly amounts: readonly Amount[];
  /** 1 save for 'heaped', 'scant' and their like. */
  readonly factor: number;
  readonly size: Size | null;
  /** What one tin, jar or packet holds: '2 x 400 g tins'. */
  readonly each: Amount | null;
  /** The weight the author gives for the whole line: '3 carrots (200 g)', '400g/14oz'. */
  readonly statedG: number | null;
  /** What `each` or `statedG` weighs is what is left after draining or peeling. */
  readonly isEdible: boolean;
  /** The amount as typed and, where a figure can be read two ways, the two readings written out. */
  readonly amountText: string;
  readonly readings: readonly [string, string] | null;
  readonly negative: boolean;
  /** The words left for the food, up to the first comma; then the words after it; then what stood in brackets. */
  readonly words: string;
  readonly aside: readonly string[];
  readonly brackets: readonly string[];
  /** 'juice of 2 limes', 'zest of 1 lemon': only that part of the fruit is used. */
  readonly part: 'juice' | 'zest' | null;
  readonly toTaste: boolean;
  readonly optional: boolean;
  readonly remarks: readonly string[];
}

/** Takes out what stands in brackets; an unclosed bracket runs to the end, a stray closing one is dropped. */
function withoutBrackets(s: string): { outside: string; inside: string[] } {
  const inside: string[] = [];
  let outside = '';
  let depth = 0;
  let from = 0;
  for (let i = 0; i < s.length; i++) {
    const char = s[i]!;
    if ('([{'.includes(char)) {
      if (depth++ === 0) {
        outside += s.slice(from, i) + ' ';
        from = i + 1;
      }
    } else if (')]}'.includes(char)) {
      if (depth > 0 && --depth === 0) {
        inside.push(s.slice(from, i).trim());
        from = i + 1;
      } else if (depth === 0) {
        outside += s.slice(from, i) + ' ';
        from = i + 1;
      }
    }
  }
  if (depth > 0) inside.push(s.slice(from).trim());
  else outside += s.slice(from);
  return { outside, inside: inside.filter((text) => text !== '') };
}

/** '2-inch', '1/2 in (1 cm) dice', '5 cm': measures of length say nothing of weight. */
const lengths =
  /(?:\d+(?:[.,/]\d+)?|[¼-¾⅐-⅞])(?: ?(?:\d\/\d|[¼-¾⅐-⅞]))?(?: ?(?:-|to|x|×) ?\d*(?:[./]\d+)?[¼-¾⅐-⅞]?)?[ -]?(?:inch(?:es)?|in\b\.?|cm\b|mm\b|centimet(?:er|re)s?|millimet(?:er|re)s?|")(?:es)?/gi;
const bullet = /^(?:[-*+•·‣▢□☐◦▪●○–—✓✔]+ +|[•·‣▢□☐◦▪●○✓✔]+|\[[ x]?\] *|\(?\d{1,2}[.)] +(?=\S)|#{1,6} +)/;
const headings =
  /^(?:for (?:the |an? )?[\p{L}' &-]{2,40}|(?:the )?ingredients?(?: list)?|to (?:serve|finish|garnish))\s*:?$/iu;

const weightAlone =
  /^(?:about |approx\.? |approximately |around |roughly |~|total(?:ing)? |weighing )*[\d¼-¾⅐-⅞][\d¼-¾⅐-⅞., /-]*(?:to \d+ ?)?(?:k?g|grams?|oz|ounces?|lbs?|pounds?|kilos?)\.?(?: (?:each|total|in total|in all|apiece))?$/i;

/** What notes in brackets say of the weight: of one, of all, or nothing. Notes that say nothing of it are kept. */
function weighedBy(
  notes: readonly string[],
  found: Found | undefined,
): Pick<Found, 'amounts' | 'statedG' | 'each'> & { kept: string[]; isEdible: boolean } {
  let { amounts, statedG, each } = found ?? emptyFound();
  const [first] = amounts;
  const kept: string[] = [];
  let isEdible = false;
  for (const text of notes) {
    const left = edibleWeight(text);
    if (left && first) {
      isEdible = true;
      kept.push(text);
      if (first.unit?.holds) each = left;
      else if (left.unit!.grams !== undefined) statedG = left.value * left.unit!.grams;
      continue;
    }
    const isEach =
      /\b(?:each|apiece|per)\b/i.test(text) || (first?.unit?.holds === true && first.unit.name !== 'block');
    const weight = weightIn(text);
    if (!weight) kept.push(text);
    else if (!first) amounts = [weight];
    else if (isEach && !each && !isExact(first.unit)) each = weight;
    else if (weight.unit!.grams !== undefined && statedG === null) {
      const mine = first.unit?.grams;
      const stated = weight.value * weight.unit!.grams;
      // '1 cup (8 oz) milk' speaks of fluid ounces.
      const isFluid =
        first.unit?.name === 'cup' && weight.unit!.name === 'oz' && weight.value === 8 * first.value;
      const isSame = mine !== undefined && Math.abs(stated / (first.value * mine) - 1) < 0.15;
      if (mine === undefined ? !isFluid : isSame && isMetric(weight.unit!) && !isMetric(first.unit!))
        statedG = stated;
    }
  }
  return { amounts, statedG, each, kept, isEdible };
}

/** Bullets, boxes and numbering off; a lone '-' before a figure stays, since it may be meant. */
const unbullet = (text: string) => text.replace(bullet, '');

/**
 * Takes an ingredient line apart.
 * @param line one line as typed, in any order a cook writes it; at most its first 500 characters are read
 */
export function readLine(line: string): ReadLine {
  const typed = line.trim();
  let s = unbullet(plain(typed.slice(0, 500)).replace(/\s+/g, ' ').trim()).trim();
  const blank: ReadLine = {
    typed, is: 'line', amounts: [], factor: 1, size: null, each: null, statedG: null, isEdible: false, amountText: '', readings: null, negative: false,
    words: '', aside: [], brackets: [], part: null, toTaste: false, optional: false, remarks: [],
  }; // prettier-ignore
  if (!/[\p{L}\p{N}]/u.test(s)) return { ...blank, is: 'empty' };
  if (headings.test(s) || (/^[^\d¼-¾⅐-⅞,]{2,60}:$/.test(s) && s.split(' ').length <= 7))
    return { ...blank, is: 'heading', words: s };
  // 'a little oil', 'some parsley': food, but no amount.
  s = s.replace(
    /^(?:an? (?:little|bit|touch|dab|dribble|scattering|sprinkling)|some|extra|enough|more)(?: (?:bit )?of)? (?!of |few |drops|sprigs|leaves|slices|cloves|stalks|gem|virgin|large|firm|lean|sharp|mature|fine|dark|thick)(?=\p{L})/iu,
    '',
  );
  const remarks: string[] = [];
  const optional = /\boptional\b/i.test(s);
  const toTaste =
    /\b(?:to|as|for) (?:taste|needed|required|desired|serv\w+|garnish\w*|decorat\w+|sprinkl\w+|greas\w+|dust\w+|frying|brushing|drizzl\w+)\b|\bas needed\b|\ba\.n\.|\bq\.?s\.?$|\bto (?:serve|garnish|finish|taste|decorate)\b/i.test(
      s,
    );
  const more =
    /[,;(]? *\b(?:plus|and|with|\+) +(?:an? )?(?:little |bit )?(?:some |extra|more|additional)\b.*$/i.exec(s);
  if (more && more.index > 0) {
    remarks.push(`'${more[0].replace(/^[,;( ]+/, '').replace(/[) ]+$/, '')}' is not counted`);
    s = s.slice(0, more.index) + (more[0].includes(')') && !more[0].includes('(') ? ')' : '');
  }
  s = s
    .replace(/[,;]? *\boptional\b[,;]? */i, ' ')
    .replace(/\( *\)/g, ' ')
    .trim();

  const partOf =
    /^(?:(?:the|freshly|fresh|finely|squeezed|grated|strained) +)*(juice|zest|rind|peel)(?: +(?:and|&|\+) +(?:juice|zest|rind|grated zest))?,? +(?:of|from) +/i.exec(
      s,
    );
  let part: ReadLine['part'] = null;
  if (partOf) {
    part = /juice/i.test(partOf[0]) ? 'juice' : 'zest';
    if (/juice/i.test(partOf[0]) && /zest|rind|peel/i.test(partOf[0]))
      remarks.push('the zest is counted with the juice');
    s = s.slice(partOf[0].length);
  }

  let found = scanAmount(s, 0, true);
  let rest = s;
  let amountText = '';
  if (found) {
    amountText = s.slice(0, found.to).trim();
    rest = s.slice(found.to).replace(/^ *(?:of +(?:the +)?|x +|[-:]+ +)?/i, '');
  } else {
    // 'red lentils 200 g', 'Onions: 2', 'eggs x 2': the amount comes after the food.
    const bare = withoutBrackets(s)
      .outside.replace(lengths, (text) => ' '.repeat(text.length))
      .replace(/ +$/, '');
    for (const m of bare.matchAll(/(?<![\p{L}\p{N}.,/%-])(?:[x×] ?)?([\d.¼-¾⅐-⅞-])/giu)) {
      const at = m.index + m[0].length - 1;
      const tail = scanAmount(bare, at, false);
      if (!tail || bare[tail.to] === '%') continue;
      const isWhole = bare.slice(tail.to).trim().replace(/[.)]$/, '') === '';
      if (!isWhole && tail.amounts[0]?.unit == null) continue;
      found = tail;
      amountText = bare.slice(at, tail.to).trim();
      rest = `${bare.slice(0, m.index).replace(/[ :,=-]+$/, '')}${/^[\s.)]*$/.test(bare.slice(tail.to)) ? '' : `, ${bare.slice(tail.to)}`}`;
      rest += withoutBrackets(s)
        .inside.map((text) => ` (${text})`)
        .join('');
      break;
    }
  }
  const { outside, inside } = withoutBrackets(rest.replace(/^[,;:.\s]+/, ''));
  const clean = outside.replace(lengths, ' ').replace(/\s+/g, ' ').trim();
  const [words = '', ...after] = clean
    .split(/ *[,;] *| - | -- /)
    .map((text) => text.trim())
    .filter((text) => text !== '');
  // 'pork loin, about 3 pounds', '4 fillets, 150 g each': a weight behind the comma speaks as one in brackets does.
  const isWeight = (text: string) => weightAlone.test(text) || edibleWeight(text) !== undefined;
  const aside = after.filter((text) => !isWeight(text));
  const notes = [...inside, ...after.filter(isWeight)];
  const { amounts, statedG, each, kept, isEdible } = weighedBy(notes, found);
  return {
    ...blank, amounts, factor: found?.factor ?? 1, size: found?.size ?? null, each, statedG, isEdible, amountText,
    readings: found?.readings ?? null, negative: found?.negative ?? false, words, aside, brackets: kept, part, toTaste, optional,
    remarks: [...(found?.remarks ?? []), ...remarks, ...(isEdible ? ['the weight after draining or peeling is counted'] : [])],
  }; // prettier-ignore
}
