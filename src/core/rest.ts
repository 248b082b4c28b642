import { sumThresholdG } from './dryness.ts';
import { isStale } from './dry-verdict.ts';

/** What happened to the part of a batch that is not sealed. */
export interface RestEvent {
  readonly atMs: number;
  readonly what: 'weighed' | 'used' | 'discarded';
  readonly netG: number;
}

/** A batch of which some may be sealed. */
export interface PartlySealed {
  /** As it came off, g. */
  readonly dryG: number;
  readonly sealed: readonly { readonly dryG: number; readonly sealedAtMs: number }[];
  readonly rest: readonly RestEvent[];
}

/**
 * What is left unsealed, g, never below 0: what came off less what was sealed, eaten and thrown away.
 * @param untilMs what came later is not taken off
 * @param pouches whether those sealed in that very moment are taken off, too
 */
export function restG(
  { dryG, sealed, rest }: PartlySealed,
  untilMs = Infinity,
  pouches: 'until' | 'before' = 'until',
): number {
  const isIn = (ms: number) => (pouches === 'until' ? ms <= untilMs : ms < untilMs);
  const sealedG = sealed.filter((p) => isIn(p.sealedAtMs)).reduce((sum, p) => sum + p.dryG, 0);
  return Math.max(0, dryG - sealedG - goneG(rest, untilMs));
}

/** What of the rest was eaten or thrown away, g. */
export function goneG(rest: readonly RestEvent[], untilMs = Infinity): number {
  return rest
    .filter(({ what, atMs }) => what !== 'weighed' && atMs <= untilMs)
    .reduce((sum, { netG }) => sum + netG, 0);
}

/** Whether dry food may be sealed now, or what keeps it from it. */
export type Freshness =
  | { readonly is: 'fresh' }
  | { readonly is: 'stale'; readonly weighedAtMs: number }
  | {
      readonly is: 'gained';
      readonly gainedG: number;
      readonly thresholdG: number;
      readonly weighedAtMs: number;
    };

/**
 * Steady is a state of an hour: dry food takes up the kitchen's moisture at once. What is sealed later rests on a
 * fresh weighing, of the rest alone where pouches were sealed before, and that may not show more than was left.
 * Common practice, no source.
 * @param weighedThroughAtMs when the tray that was weighed longest ago was weighed last, ms
 * @param sealingAtMs when it is sealed, ms
 */
export function freshness(batch: PartlySealed, weighedThroughAtMs: number, sealingAtMs: number): Freshness {
  const weighed = batch.rest.findLast(({ what, atMs }) => what === 'weighed' && atMs <= sealingAtMs);
  if (weighed === undefined || weighed.atMs < weighedThroughAtMs)
    return isStale(weighedThroughAtMs, sealingAtMs)
      ? { is: 'stale', weighedAtMs: weighedThroughAtMs }
      : { is: 'fresh' };
  // What is sealed in the very moment of a weighing is sealed after it.
  const leftG = restG(batch, weighed.atMs, 'before');
  const thresholdG = sumThresholdG(leftG);
  if (weighed.netG > leftG + thresholdG + 1e-9)
    return { is: 'gained', gainedG: weighed.netG - leftG, thresholdG, weighedAtMs: weighed.atMs };
  return isStale(weighed.atMs, sealingAtMs) ? { is: 'stale', weighedAtMs: weighed.atMs } : { is: 'fresh' };
}
