import { boilingPointC } from '#core/boiling.ts';
import type { Steadiness } from '#core/dryness.ts';
import type { RecipeFacts } from '#core/meal.ts';
import type { Settings } from '#core/settings.ts';
import { sayG, sayList, sayNumber } from './say.ts';

/** What a meal contains, may contain and leaves unknown, a line each. Unknown is never left out. */
export function containsLines(facts: RecipeFacts): string[] {
  const certain = new Set<string>();
  for (const { contents } of facts.contents) for (const tag of contents?.contains ?? []) certain.add(tag);
  const smallPrint = new Map<string, string[]>();
  for (const { ingredient, contents } of facts.contents) {
    const open = (contents?.check ?? []).filter((tag) => !certain.has(tag));
    if (open.length > 0) smallPrint.set(ingredient, open);
  }
  const unknown = facts.contents
    .filter(({ contents }) => contents === null)
    .map(({ ingredient }) => ingredient);
  return [
    ...(certain.size > 0
      ? [`Contains: ${[...certain].join(', ')}.`]
      : unknown.length > 0
        ? []
        : ['Contains: none of the listed allergens, by its ingredients.']),
    ...(smallPrint.size > 0
      ? [
          `Read the small print: ${[...smallPrint].map(([ingredient, tags]) => `${ingredient} (${tags.join(', ')}?)`).join('; ')}.`,
        ]
      : []),
    ...(unknown.length > 0 ? [`Allergens unknown because of: ${sayList(unknown)}.`] : []),
  ];
}

/** Why a batch is steady or not, with the figures. */
export function steadyPhrase(steady: Steadiness, settings: Settings): string {
  if (steady.is === 'not yet' && steady.why === 'one weighing') {
    return steady.tray
      ? `Not steady yet: tray ${steady.tray} was weighed once only. Weigh again after ${sayNumber(settings.steadyGapHours)} h or more of drying.`
      : `Not steady yet: it takes two weighings, ${sayNumber(settings.steadyGapHours)} h or more apart.`;
  }
  if (!('changeG' in steady)) return 'Not steady yet.';
  const where = steady.tray ? `tray ${steady.tray}` : 'the batch';
  const change = `${where} changed by ${sayG(Math.abs(steady.changeG))} in ${sayNumber(steady.gapHours)} h`;
  const limit = `the limit is ${sayNumber(steady.thresholdG)} g (1 g, 0.5 % of the weight or twice your scale's step, whichever is most: common practice)`;
  if (steady.is === 'steady') {
    const most =
      steady.changeG === 0
        ? 'nothing changed'
        : `the most that changed is ${where}, by ${sayG(Math.abs(steady.changeG))},`;
    return `Steady: ${most} in ${sayNumber(steady.gapHours)} h; ${limit}.`;
  }
  if (steady.why === 'too close') {
    return `Not steady yet: the weighings are ${sayNumber(steady.gapHours)} h apart, and it takes ${sayNumber(settings.steadyGapHours)} h of further drying to show.`;
  }
  if (steady.why === 'gained')
    return `Not steady: ${where} gained ${sayG(steady.changeG)}; dry food takes up moisture from the air. ${limit[0]!.toUpperCase()}${limit.slice(1)}.`;
  return `Not steady yet: ${change}; ${limit}.`;
}

/** A steady weight that the balance contradicts. */
export function wetCaution(leastFraction: number): string {
  return `Caution: the weight is steady, but by the recipe at least ${Math.round(leastFraction * 100)} % of it is still water, more than food without oxygen may hold (about 10 %). Ice in thick pieces, or a wrong line or weight? Look before you trust it.`;
}

/** Minutes to let a pouch stand; longer where water boils cooler. Common practice, no source. */
export function soakMinutes(boilC: number): number {
  return Math.round(15 + Math.max(0, 100 - boilC));
}

/** 'Water boils at 92.0 °C at 2400 m; let it stand 23 min (common practice).' */
export function boilingPhrase(altitudeM: number): string {
  const boilC = boilingPointC(altitudeM);
  return `Water boils at ${boilC.toFixed(1)} °C at ${Math.round(altitudeM)} m. Stir, close, let stand ${soakMinutes(boilC)} min (common practice).`;
}

export const burnCaution = 'Boiling water burns; once wet it is fresh food, so eat within 2 hours.';
export const rawCaution = 'RAW: freeze-drying kills no germs. Cook to 74 °C (165 °F) before eating.';
export const uncheckedCaution =
  'Unchecked: not shown to be dry. No shelf, no best-by, no absorber: a damp pouch without oxygen can grow botulism. Keep it frozen, or dry it on.';
