import { Refusal } from './refusal.ts';
import { above, between, figure } from './within.ts';

const sum = (list: readonly number[]): number => list.reduce((total, g) => total + g, 0);

/**
 * What is left of a batch once these pouches are sealed. A sum that passes the batch by no more than the scale's step
 * is still the whole batch.
 * @param dryG the batch as it came off, g, above 0
 * @param sealedG pouches sealed before, g each
 * @param askedG pouches to seal now, g each, above 0
 * @param scaleResolutionG the scale's smallest step, g
 * @returns g left, never below 0
 * @throws Refusal 'more-than-dried' when there is not so much, 'impossible-weight' for a pouch of 0 g or less
 */
export function leftToSealG(
  dryG: number,
  sealedG: readonly number[],
  askedG: readonly number[],
  scaleResolutionG = 1,
): number {
  above('impossible-weight', 'The dry weight', dryG, 0, 'g');
  between('impossible-scale', "The scale's step", scaleResolutionG, 0, 1000, 'g');
  for (const g of [...sealedG, ...askedG]) above('impossible-weight', 'A pouch', g, 0, 'g');
  const before = sum(sealedG);
  const now = sum(askedG);
  if (before + now > dryG + scaleResolutionG + 1e-9) {
    const already =
      before > 0
        ? `, ${figure(before)} g of it are sealed already and ${figure(Math.max(0, dryG - before))} g are left`
        : '';
    throw new Refusal(
      'more-than-dried',
      `The batch gave ${figure(dryG)} g${already}; this would be ${figure(now)} g.`,
    );
  }
  return Math.max(0, dryG - before - now);
}
