import { above, between } from './within.ts';

/** One time the batch was weighed while drying. */
export interface CheckWeight {
  readonly atMs: number;
  /** g of food tray by tray, null where a tray was not weighed; or one number for all trays together. */
  readonly trays: readonly (number | null)[] | number;
}

export interface SteadyOptions {
  /** The scale's smallest step, g. */
  readonly scaleResolutionG: number;
  /** Weighings closer than this prove nothing, h. */
  readonly minGapHours: number;
}

/** Chosen: a kitchen scale, and long enough under vacuum for a moist core to show. Common practice, no source. */
export const usualSteadyOptions: SteadyOptions = { scaleResolutionG: 1, minGapHours: 2 };

/** What the two weighings that were compared show; `tray` counts from 1 and is missing for a total. */
export interface Compared {
  /** Later less earlier, g: below 0 while water leaves. */
  readonly changeG: number;
  readonly thresholdG: number;
  readonly gapHours: number;
  readonly tray?: number;
}

export type Steadiness =
  | ({ readonly is: 'steady' } & Compared)
  | ({ readonly is: 'not yet'; readonly why: 'too close' | 'still losing' | 'gained' } & Compared)
  | { readonly is: 'not yet'; readonly why: 'one weighing'; readonly tray?: number };

/**
 * The largest change that still counts as none: 1 g, 0.5 % of the weight or twice the scale's step, whichever is
 * most. Common practice, no source: no extension service prints a number for it.
 * @param massG g on the tray, or on all of them for a total
 * @param scaleResolutionG g
 * @returns g
 */
export function steadyThresholdG(massG: number, scaleResolutionG: number): number {
  return Math.max(1, 0.005 * massG, 2 * scaleResolutionG);
}

/**
 * Whether a batch has stopped losing weight. Each tray's last weighing is held against its latest earlier one that
 * lies far enough back, and every tray has to be steady; the tray that is furthest from it is the one reported.
 * Steady says that drying has stopped, not that nothing is frozen inside: thick pieces are still to be opened.
 * Common practice, no source.
 * @param checks in any order; totals and weighings by tray may be mixed
 * @throws Refusal 'impossible-weight' for a weight of 0 or less, 'impossible-scale', 'impossible-gap'
 */
export function steadiness(
  checks: readonly CheckWeight[],
  options: SteadyOptions = usualSteadyOptions,
): Steadiness {
  between('impossible-scale', "The scale's step", options.scaleResolutionG, 0, 1000, 'g');
  between('impossible-gap', 'The least gap', options.minGapHours, 0, 1000, 'h');
  const ordered = checks.toSorted((a, b) => a.atMs - b.atMs);
  for (const { trays } of ordered) for (const g of typeof trays === 'number' ? [trays] : trays) known(g);

  const last = ordered.at(-1);
  if (last === undefined) return { is: 'not yet', why: 'one weighing' };
  const byTotal = () => judged(ordered.flatMap(asTotal), options);
  if (typeof last.trays === 'number') return byTotal();

  const worst = worstTray(ordered, options);
  const alone = worst.is === 'not yet' && worst.why === 'one weighing';
  // Weighed together before and tray by tray now: the sum is still comparable.
  return alone && !last.trays.includes(null) && ordered.some((c) => typeof c.trays === 'number')
    ? byTotal()
    : worst;
}

interface Point {
  readonly atMs: number;
  readonly g: number;
}

function known(g: number | null): void {
  if (g !== null) above('impossible-weight', 'A check weight', g, 0, 'g');
}

function asTotal({ atMs, trays }: CheckWeight): Point[] {
  if (typeof trays === 'number') return [{ atMs, g: trays }];
  const weighed = trays.filter((g) => g !== null);
  return weighed.length < trays.length || weighed.length === 0
    ? []
    : [{ atMs, g: weighed.reduce((sum, g) => sum + g, 0) }];
}

function worstTray(ordered: readonly CheckWeight[], options: SteadyOptions): Steadiness {
  const byTray = ordered.flatMap(({ atMs, trays }) => (typeof trays === 'number' ? [] : [{ atMs, trays }]));
  const count = Math.max(0, ...byTray.map(({ trays }) => trays.length));
  const verdicts = Array.from({ length: count }, (_, index): Steadiness => {
    const points = byTray.flatMap(({ atMs, trays }): Point[] => {
      const g = trays[index] ?? null;
      return g === null ? [] : [{ atMs, g }];
    });
    return { ...judged(points, options), tray: index + 1 };
  });
  return (
    verdicts.reduce<Steadiness | undefined>(
      (worst, verdict) => (worst === undefined || rank(verdict) > rank(worst) ? verdict : worst),
      undefined,
    ) ?? { is: 'not yet', why: 'one weighing' }
  );
}

/** How much a verdict asks of the household: kind first, then how far past its threshold. */
function rank(verdict: Steadiness): number {
  const order = ['too close', 'one weighing', 'still losing', 'gained'] as const;
  const kind = verdict.is === 'steady' ? 0 : order.indexOf(verdict.why) + 1;
  const past = 'changeG' in verdict ? Math.abs(verdict.changeG) / verdict.thresholdG : 0;
  return kind + past / (1 + past);
}

function judged(points: readonly Point[], options: SteadyOptions): Steadiness {
  const last = points.at(-1);
  const earlier = points.slice(0, -1);
  const first = earlier[0];
  if (last === undefined || first === undefined) return { is: 'not yet', why: 'one weighing' };
  const hours = (point: Point) => (last.atMs - point.atMs) / 3_600_000;
  const partner = earlier.findLast((point) => hours(point) >= options.minGapHours);
  const against = partner ?? first;
  const compared: Compared = {
    changeG: last.g - against.g,
    thresholdG: steadyThresholdG(last.g, options.scaleResolutionG),
    gapHours: hours(against),
  };
  if (partner === undefined) return { is: 'not yet', why: 'too close', ...compared };
  // Tenths of a gram do not add up exactly in binary: the boundary itself counts as steady.
  if (Math.abs(compared.changeG) <= compared.thresholdG + 1e-9) return { is: 'steady', ...compared };
  return { is: 'not yet', why: compared.changeG < 0 ? 'still losing' : 'gained', ...compared };
}
