import { byName } from './kitchen.ts';
import type { Amount, ReadLine, Size } from './read.ts';
import { best, gramsPerMl, type Known, knownWeights, type Scale } from './scales.ts';
import { unitNamed, type Unit } from './units.ts';

import { foldedWords, foldName } from './words.ts';

export type { Scale } from './scales.ts';

/** What the household taught: it wins over the tables. */
export interface Learnt {
  /** Folded words (see foldName) → the name of a food, or its number in the food table. */
  readonly foods: ReadonlyMap<string, string>;
  /** `unit` as typed ('mug', 'cup'); `food` a number of the table or folded words, null for every food. */
  readonly measures: readonly {
    readonly unit: string;
    readonly food: string | null;
    readonly grams?: number;
    readonly ml?: number;
  }[];
}

const holders = [
  ['packet', 'bag', 'box', 'sachet', 'block'],
  ['tub', 'pot', 'carton', 'packet'],
  ['pot', 'tub'],
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
  'heart',
  'tail',
  'side',
  'roll',
  'tablet',
  'disc',
]);
/** Common practice, no source: what a size does where the tables know one size only. */
const sizeFactor: Readonly<Record<Size, number>> = { small: 0.7, medium: 1, large: 1.35, 'extra large': 1.6 };
const packFactor: Readonly<Record<Size, number>> = { small: 0.55, medium: 1, large: 2, 'extra large': 2.5 };

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
  named: ReadonlySet<string>,
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
      remarks: [
        known.isTable && factor === 1
          ? `${what === '' ? 'each' : `1 ${what}`} taken as ${say(known.grams)} (food table)`
          : practice(what === '' ? 'each' : `1 ${what}`, known.grams * factor),
      ],
    };
  if (unit === null || unit.name === 'piece') {
    if (unit) {
      const piece = of('piece');
      if (piece) return from(piece, 1, 'piece');
    }
    if (size) {
      const exact = of(size);
      if (exact) return from(exact, 1, `${size} one`);
      const plainOne = of('each') ?? of('medium');
      return from(plainOne, sizeFactor[size], `${size} one`);
    }
    // '1 garlic bulb', '2 lemon wedges': the unit stands behind the food.
    for (const part of [
      'bulb',
      'head',
      'clove',
      'stalk',
      'sprig',
      'leaf',
      'bunch',
      'slice',
      'wedge',
      'floret',
      'heart',
      'spear',
      'rack',
    ])
      if (named.has(part)) {
        const known = of(part);
        if (known) return from(known, 1, part);
      }
    return from(of('each') ?? of('medium') ?? of('large') ?? of('small'), 1, '');
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
  if (unit.name === 'cm') return from(of('inch'), 1 / 2.54, 'cm');
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

/** What the household taught for this unit and food: of the words typed first, then of any name the food has. */
function taught(
  learnt: Learnt,
  unit: string,
  { food, entry }: Scale,
  words: string,
): { grams?: number; ml?: number } | undefined {
  const same = learnt.measures.filter((one) => foldName(one.unit) === foldName(unit));
  if (same.length === 0) return undefined;
  const typed = foldName(words);
  const names = new Set((entry?.names ?? []).map(foldName));
  return (
    same.find((one) => one.food !== null && (one.food === food.ndb || foldName(one.food) === typed)) ??
    same.find((one) => one.food !== null && names.has(foldName(one.food))) ??
    same.find((one) => one.food === null)
  );
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
  // What the line itself says of its tins, and of the size of its onions, is nearer than what is usual here.
  const isOwn = line.each === null && (unit !== null || line.size === null || line.size === 'medium');
  const own = isOwn && as === null ? taught(learnt, unit?.name ?? 'each', scale, line.words) : undefined;
  if (own?.grams !== undefined) {
    const mine = { grams: own.grams, remarks: [`your ${unit?.name ?? line.words} of ${say(own.grams)}`] };
    return unit?.holds ? drained(mine, scale, said, unit) : mine;
  }
  const ml = own?.ml ?? unit?.ml;
  const ownMl =
    own?.ml !== undefined && Math.abs(own.ml / (unit?.ml ?? 0) - 1) > 0.01
      ? [`your ${unit?.name} of ${Math.round(own.ml)} ml`]
      : [];
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
    return {
      grams: ml * density,
      remarks: unit?.loose && own === undefined ? [practice(`1 ${unit.name}`, ml * density)] : ownMl,
    };
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
  const counted = countedG(scale, unit, line.size, said, new Set(foldedWords(line.words)));
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
  if (line.isEdible) return whole;
  return unit?.holds || line.aside.some((text) => /drain/i.test(text))
    ? drained(whole, scale, said, unit ?? unitNamed('tin')!)
    : whole;
}

function drained(whole: Weighed, scale: Scale, said: ReadonlySet<string>, unit: Unit): Weighed {
  if (!said.has('drained') || !scale.entry) return whole;
  const siblings = byName().get(foldName(scale.entry.called)) ?? [];
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
