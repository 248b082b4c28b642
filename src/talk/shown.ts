import type { Look, Meaning } from './look.ts';

export const shown = (means: string, words: string, score: number): Meaning => ({
  means,
  words: words.trim(),
  score,
  left: [],
  holds: null,
  looks: true,
});

/** A batch or pouches or a meal, as a request that shows something takes them. */
export function thing(look: Look): string {
  const codes = look.codes();
  if (codes !== '') return codes;
  const [batch] = look.said.batches;
  return batch ? `B${batch.batch}` : (look.mealTyped() ?? '');
}

export const volumeOrMass = (look: Look, kind: 'mass' | 'volume' | 'length') =>
  look.said.all.find((token) => token.is === 'quantity' && token.unit.kind === kind)?.typed;

/** How many people, as typed: 'for 3', 'for three people', 'for the two of us'. */
export function peopleText(look: Look): string {
  const { all } = look.said;
  for (const [i, token] of all.entries()) {
    if (token.is !== 'number' || !Number.isInteger(token.value)) continue;
    const after = all[i + 1]?.plain ?? '';
    const before = all[i - 1]?.plain ?? '';
    const isCount =
      /^(?:people|persons?|of|servings?|portions?|eaters|hungry|adults?|kids|children)$/.test(after) ||
      (/^(?:be|are|we're|were)$/.test(before) &&
        /^(?:we|we'll|we're|were|we'd|us|be|are|will)$/.test(all[i - 2]?.plain ?? 'we')) ||
      (/^(?:for|serves|feeds)$/.test(before) &&
        !look.said.meals.some(({ at }) => at[0] === i + 1) &&
        !/^(?:pouch|pouches|tray|trays|bags?|days?|nights?|g)$/.test(after));
    if (isCount) return ` for ${token.value}`;
  }
  return '';
}
