import type { Food } from './food.ts';
import { byName, type KitchenFood } from './kitchen.ts';
import type { Amount, ReadLine, Size } from './read.ts';
import { unitNamed, unitOf, type Unit } from './units.ts';
import { foldedWords, foldName } from './words.ts';

/** What the household taught: it wins over the tables. */
export interface Learnt {
  /** Folded words (see foldName) → number in the food table. */
  readonly foods: ReadonlyMap<string, string>;
  /** `unit` as typed ('mug', 'cup'); `food` a number of the table or folded words, null for every food. */
  readonly measures: readonly {
    readonly unit: string;
    readonly food: string | null;
    readonly grams?: number;
    readonly ml?: number;
  }[];
}

/** A weight somebody wrote down: for so much of a unit, said this way, so many grams. */
interface Known {
  readonly unit: string;
  readonly how: readonly string[];
  readonly grams: number;
  readonly isTable: boolean;
}

/** '.5 cup, diced' → half a cup, diced; a label that speaks of a yield describes another state and gives nothing. */
function fromLabel(label: string, grams: number): Known | undefined {
  if (/yield|serving|refuse/i.test(label) && !/fluid/i.test(label)) return undefined;
  const m = /^(\d*\.?\d+) (fl oz|[A-Za-z]+)(?: (large|medium|small))?[, ]*(.*)$/.exec(label);
  if (!m) return undefined;
  const word = m[2]!.toLowerCase();
  const unit = word === 'fl oz' ? unitNamed('floz') : unitOf(word);
  const name = /^(?:large|medium|small)$/.test(word) ? word : (unit?.name ?? 'each');
  if (unit?.grams !== undefined) return undefined;
  const rest = m[4]!.replace(/\(.*$/, '').replace(/\bor .*$/, '');
  const size = m[3] ?? /\b(large|medium|small)\b/.exec(rest)?.[1];
  if (size && !unit) return { unit: size, how: [], grams: grams / Number(m[1]), isTable: true };
  return { unit: name, how: foldedWords(rest), grams: grams / Number(m[1]), isTable: true };
}

/** What one food weighs by its own measures; never by another food's. */
export interface Scale {
  readonly food: Food;
  readonly entry: KitchenFood | null;
}

const holders = [
  ['packet', 'bag', 'box', 'sachet', 'block'],
  ['tub', 'carton', 'packet'],
  ['bottle', 'carton', 'jar'],
  ['tin', 'jar'],
  ['cube', 'each'],
  ['loaf', 'each'],
];
const wholes = new Set([
  'fillet',
  'breast',
  'thigh',
  'steak',
  'chop',
  'leg',
  'wing',
  'drumstick',
  'link',
  'sausage',
  'patty',
  'spear',
  'floret',
  'ear',
  'pod',
  'bar',
  'piece',
  'head',
  'bulb',
  'stalk',
  'stick',
  'each',
  'square',
  'leaf',
  'rasher',
  'strip',
  'ball',
  'sheet',
  'nest',
  'ring',
  'clove',
]);
/** Common practice, no source: what a size does where the tables know one size only. */
const sizeFactor: Readonly<Record<Size, number>> = { small: 0.7, medium: 1, large: 1.35, 'extra large': 1.6 };
const packFactor: Readonly<Record<Size, number>> = { small: 0.55, medium: 1, large: 2, 'extra large': 2.5 };

function knownWeights({ food, entry }: Scale): Known[] {
  const own = (entry?.weights ?? []).map(({ unit, how, grams }) => ({ unit, how, grams, isTable: false }));
  const file = entry?.standsIn
    ? []
    : food.measures.flatMap(({ label, grams }) => fromLabel(label, grams) ?? []);
  // What one tin or packet holds is the same whatever state the row describes.
  const others = entry ? (byName.get(foldName(entry.called)) ?? []).filter((other) => other !== entry) : [];
  const packs = others
    .flatMap((other) => other.weights)
    .filter(({ unit }) => unitNamed(unit)?.holds === true);
  return [...own, ...file, ...packs.map(({ unit, how, grams }) => ({ unit, how, grams, isTable: false }))];
}

const mlOf = (name: string) => unitNamed(name)?.ml;

/** The best of several weights for one unit: the one whose words the line says. */
function best(list: readonly Known[], said: ReadonlySet<string>): Known | undefined {
  let top: { known: Known; score: number } | undefined;
  for (const known of list) {
    const missing = known.how.filter((word) => !said.has(word)).length;
    const score = (known.how.length - missing) * 2 - missing * 3 - (known.isTable ? 0.5 : 0);
    if (!top || score > top.score) top = { known, score };
  }
  return top?.known;
}

/** Grams in a millilitre, from the food's own cups and spoons; the measure nearest in size to the one asked speaks. */
function gramsPerMl(scale: Scale, ml: number, said: ReadonlySet<string>): number | undefined {
  const volumes = knownWeights(scale).filter(
    ({ unit }) => mlOf(unit) !== undefined && unitNamed(unit)?.loose !== true,
  );
  if (volumes.length === 0) return undefined;
  const missing = (known: Known) => known.how.filter((word) => !said.has(word)).length;
  const hits = (known: Known) => known.how.length - missing(known);
  const fits = volumes.toSorted(
    (a, b) =>
      missing(a) - missing(b) ||
      hits(b) - hits(a) ||
      Number(a.isTable) - Number(b.isTable) ||
      Math.abs(Math.log(mlOf(a.unit)! / ml)) - Math.abs(Math.log(mlOf(b.unit)! / ml)),
  );
  // 'sliced' beats the plain cup where the line says so; otherwise the plain one nearest in size.
  const said1 = volumes
    .filter((known) => known.how.length > 0 && missing(known) === 0)
    .toSorted((a, b) => hits(b) - hits(a));
  const pick = said1[0] ?? fits[0]!;
  return pick.grams / mlOf(pick.unit)!;
}

export interface Weighed {
  readonly grams: number;
  readonly remarks: readonly string[];
}

const say = (grams: number) => `${grams >= 10 ? Math.round(grams) : Math.round(grams * 10) / 10} g`;
const practice = (what: string, grams: number) => `${what} taken as ${say(grams)} (common practice)`;

/** Grams of one thing counted: 'large' onion, 'clove', 'tin', 'each'. */
function countedG(
  scale: Scale,
  unit: Unit | null,
  size: Size | null,
  said: ReadonlySet<string>,
): Weighed | undefined {
  const all = knownWeights(scale);
  const of = (name: string) =>
    best(
      all.filter((known) => known.unit === name),
      said,
    );
  const label = unit ? unit.name : 'piece';
  const from = (known: Known | undefined, factor: number, what: string): Weighed | undefined =>
    known && {
      grams: known.grams * factor,
      remarks: known.isTable && factor === 1 ? [] : [practice(`1 ${what}`, known.grams * factor)],
    };
  if (unit === null || unit.name === 'piece') {
    const name = scale.entry?.called ?? 'piece';
    if (unit) {
      const piece = of('piece');
      if (piece) return from(piece, 1, `piece of ${name}`);
    }
    if (size) {
      const exact = of(size);
      if (exact) return from(exact, 1, `${size} ${name}`);
      const plainOne = of('each') ?? of('medium');
      return from(plainOne, sizeFactor[size], `${size} ${name}`);
    }
    return from(of('each') ?? of('medium') ?? of('large') ?? of('small'), 1, name);
  }
  const isHolder = unit.holds === true;
  const factor = size === null ? 1 : isHolder ? packFactor[size] : sizeFactor[size];
  const sized = size
    ? best(
        all.filter((known) => known.unit === unit.name && known.how.includes(size)),
        said,
      )
    : undefined;
  if (sized) return from(sized, 1, `${size} ${label}`);
  const own = of(unit.name);
  if (own) return from(own, own.how.includes(size ?? '') ? 1 : factor, `${size ? `${size} ` : ''}${label}`);
  for (const group of holders)
    if (group[0] === unit.name || (isHolder && group.includes(unit.name)))
      for (const other of group) {
        const known = of(other);
        if (known) return from(known, factor, label);
      }
  if (unit.name === 'half') return from(of('each') ?? of('medium'), 0.5, 'half');
  if (unit.name === 'tin')
    return {
      grams: 400 * factor,
      remarks: [practice(`1 ${size ?? ''} tin`.replace('  ', ' '), 400 * factor)],
    };
  if (wholes.has(unit.name)) {
    const exact = size ? of(size) : undefined;
    return exact
      ? from(exact, 1, label)
      : from(of('each') ?? of('medium'), size ? sizeFactor[size] : 1, label);
  }
  return undefined;
}

/** What the household taught for this unit and food. */
export function taught(
  learnt: Learnt,
  unit: string,
  food: Food,
  words: string,
): { grams?: number; ml?: number } | undefined {
  const same = learnt.measures.filter((one) => foldName(one.unit) === foldName(unit));
  const mine = same.find(
    (one) => one.food !== null && (one.food === food.ndb || foldName(one.food) === foldName(words)),
  );
  return mine ?? same.find((one) => one.food === null);
}

/**
 * Grams of a line's food.
 * @param line as read
 * @param scale the food and its curated entry
 * @param said every folded word of the line: 'sliced', 'packed' choose among weights
 * @returns undefined when neither the household nor the tables know what the measure weighs
 */
export function weigh(
  line: ReadLine,
  scale: Scale,
  said: ReadonlySet<string>,
  learnt: Learnt,
  as: 'fruit' | null,
): Weighed | undefined {
  let grams = 0;
  const remarks: string[] = [];
  const manner = line.size ? new Set([...said, line.size]) : said;
  for (const amount of line.amounts) {
    const one = oneG(amount, line, scale, manner, learnt, as);
    if (!one) return undefined;
    grams += amount.value * one.grams;
    for (const remark of one.remarks) if (!remarks.includes(remark)) remarks.push(remark);
  }
  if (!Number.isFinite(grams) || grams < 0) return undefined;
  return { grams: grams * line.factor, remarks };
}

function oneG(
  amount: Amount,
  line: ReadLine,
  scale: Scale,
  said: ReadonlySet<string>,
  learnt: Learnt,
  as: 'fruit' | null,
): Weighed | undefined {
  const { unit } = amount;
  if (unit?.grams !== undefined) return { grams: unit.grams, remarks: [] };
  const own = unit ? taught(learnt, unit.name, scale.food, line.words) : undefined;
  if (own?.grams !== undefined)
    return { grams: own.grams, remarks: [`1 ${unit!.name} weighs ${say(own.grams)} in this house`] };
  const ml = own?.ml ?? unit?.ml;
  if (ml !== undefined) {
    const pinch = unit?.loose
      ? best(
          knownWeights(scale).filter((known) => known.unit === unit.name),
          said,
        )
      : undefined;
    if (pinch) return { grams: pinch.grams, remarks: [practice(`1 ${unit!.name}`, pinch.grams)] };
    const density = gramsPerMl(scale, ml, said);
    if (density === undefined) return undefined;
    return { grams: ml * density, remarks: unit?.loose ? [practice(`1 ${unit.name}`, ml * density)] : [] };
  }
  if (line.each) return packG(line.each, line, scale, said, unit);
  if (as === 'fruit' || unit?.name === 'wedge') {
    const known = best(
      knownWeights(scale).filter((one) => one.unit === (unit?.name ?? 'fruit')),
      said,
    );
    const factor = line.size === null || known?.how.includes(line.size) ? 1 : sizeFactor[line.size];
    if (known)
      return {
        grams: known.grams * factor,
        remarks: [practice(`1 ${unit?.name ?? 'fruit'}`, known.grams * factor)],
      };
  }
  const counted = countedG(scale, unit, line.size, said);
  return counted && unit?.holds ? drained(counted, scale, said, unit) : counted;
}

/** A tin of a stated weight; drained when the line says so. */
function packG(
  each: Amount,
  line: ReadLine,
  scale: Scale,
  said: ReadonlySet<string>,
  unit: Unit | null,
): Weighed | undefined {
  const ml = each.unit?.ml;
  const density = ml === undefined ? undefined : (gramsPerMl(scale, ml, said) ?? 1);
  const grams = each.value * (each.unit?.grams ?? ml! * density!);
  const whole: Weighed = { grams, remarks: [] };
  return unit?.holds || line.aside.some((text) => /drain/i.test(text))
    ? drained(whole, scale, said, unit ?? unitNamed('tin')!)
    : whole;
}

function drained(whole: Weighed, scale: Scale, said: ReadonlySet<string>, unit: Unit): Weighed {
  if (!said.has('drained') || !scale.entry) return whole;
  const siblings = byName.get(foldName(scale.entry.called)) ?? [];
  const fraction =
    scale.entry.drainedFraction ??
    siblings.find((entry) => entry.drainedFraction !== null)?.drainedFraction ??
    null;
  if (fraction === null) return whole;
  const grams = whole.grams * fraction;
  return {
    grams,
    remarks: [`${say(whole.grams)} ${unit.name} taken as ${say(grams)} drained (common practice)`],
  };
}
