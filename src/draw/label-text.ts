import type { LabelFacts } from './facts.ts';
import { label, leading, type Weight } from './look.ts';

/** A block of a label's text: what it says and how loud. */
export interface Block {
  readonly text: string;
  readonly weight: Weight;
  /** Type size in parts of the body's. */
  readonly ratio: number;
  readonly leastPt: number;
  /** Height of a line in parts of its size. */
  readonly leading: number;
  readonly base: 'ltr' | 'auto';
  /** White on a dark bar. */
  readonly isBar: boolean;
}

const block = (text: string, more: Partial<Block> = {}): Block => ({
  text,
  weight: 'regular',
  ratio: 1,
  leastPt: label.bodyLeastPt,
  leading,
  base: 'ltr',
  isBar: false,
  ...more,
});

const figures = (facts: LabelFacts): string[] => [
  facts.soak,
  `${facts.dry} dry`,
  facts.servings,
  `sealed ${facts.sealed}`,
  ...(facts.bestBy === null ? [] : [`best by ${facts.bestBy}`]),
];

/** A figure stays with its unit at a line's end. */
const joined = (parts: readonly string[]) =>
  parts.map((one) => one.replace(/(?<=\d) (?=\p{L})/gu, '\u00a0')).join(', ');

const capital = (text: string) => text[0]!.toUpperCase() + text.slice(1);

/** Code and water first, then what it is; dangers stand above the water. */
function blocksWith(
  facts: LabelFacts,
  mealRatio: number,
  middle: readonly string[],
  contents: readonly string[],
): Block[] {
  return [
    block(facts.code, {
      weight: 'bold',
      ratio: label.codeRatio,
      leastPt: label.codeLeastPt,
      leading: label.codeLeading,
    }),
    ...facts.cautions.map((text) =>
      block(text, { weight: 'bold', isBar: true, ratio: label.barRatio, leastPt: label.barLeastPt }),
    ),
    block(facts.water === null ? 'Eaten dry, no water' : `Water ${facts.water}, boiling`, {
      weight: 'bold',
      ratio: label.waterRatio,
    }),
    block(facts.meal, { weight: 'bold', ratio: mealRatio, base: 'auto' }),
    ...(facts.camp === null ? [] : [block(facts.camp, { weight: 'bold', base: 'auto' })]),
    ...middle.map((text) => block(text)),
    ...contents.map((text) => block(text)),
    ...facts.notFor.map((text) => block(text, { weight: 'bold' })),
  ];
}

/** For camp: what it is, what to pour and how long to wait; then what is added and who must not have it. */
function campBlocks(facts: LabelFacts): Block[] {
  const leastPt = label.campLeastPt;
  const loud = (text: string, ratio = 1, base: Block['base'] = 'ltr') =>
    block(text, { weight: 'bold', ratio, leastPt, base });
  return [
    loud(facts.code, label.campCodeRatio),
    ...facts.cautions.map((text) => block(text, { weight: 'bold', isBar: true, leastPt })),
    loud(facts.water === null ? 'Eaten dry, no water' : `Water ${facts.water}`, label.campWaterRatio),
    ...(facts.water === null ? [] : [loud(facts.soak)]),
    loud(facts.meal, 1, 'auto'),
    ...(facts.camp === null ? [] : [loud(facts.camp, 1, 'auto')]),
    ...facts.notFor.map((text) => loud(text, 1, 'auto')),
    ...facts.contents.map((text) => block(text, { ratio: label.campContentsRatio })),
  ];
}

/**
 * The ways to arrange a label, from airy to dense: of those with the largest type the first is taken.
 * @param bodyPt size of the body: only where that is small already does a long name go down to it
 */
export function labelBlocks(facts: LabelFacts, bodyPt: number = label.bodyLeastPt): Block[][] {
  if (facts.isForCamp) return [campBlocks(facts)];
  const [soak, dry, servings, ...dates] = figures(facts);
  const airy = [soak!, joined([dry!, servings!]), capital(joined(dates))];
  const dense = [joined(figures(facts))];
  const together = [facts.contents.join(' ')];
  return [
    blocksWith(facts, label.mealRatio, airy, facts.contents),
    blocksWith(facts, label.mealRatio, dense, facts.contents),
    blocksWith(facts, label.mealRatio, dense, together),
    ...(bodyPt > label.smallPt ? [] : [blocksWith(facts, 1, dense, together)]),
  ];
}
