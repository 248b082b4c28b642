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
  /** Weighings closer than this prove nothing, h; a coarse scale needs longer, see `neededGapHours`. */
  readonly minGapHours: number;
}

/** Chosen: a kitchen scale, and long enough under vacuum for a moist core to show. Common practice, no source. */
const usualSteadyOptions: SteadyOptions = { scaleResolutionG: 1, minGapHours: 2 };

/** What the two weighings that were compared show; `tray` counts from 1 and is missing for a total. */
export interface Compared {
  /** Later less earlier, g: below 0 while water leaves. */
  readonly changeG: number;
  readonly thresholdG: number;
  readonly gapHours: number;
  /** How far apart they have to be on this scale, h. */
  readonly neededGapHours: number;
  readonly tray?: number;
}

export type Steadiness =
  | ({ readonly is: 'steady' } & Compared)
  | ({ readonly is: 'not yet'; readonly why: 'too close' | 'still losing' | 'gained' } & Compared)
  | { readonly is: 'not yet'; readonly why: 'one weighing'; readonly tray?: number };

/** Share of its weight that a tray or a batch may change and still count as unchanged. Common practice, no source. */
const steadyFraction = 0.005;

/**
 * The largest change of one tray that still counts as none: 1 g or 0.5 % of the weight, whichever is more. Common
 * practice, no source: no extension service prints a number for it. A coarse scale does not widen it.
 * @param massG g on the tray
 * @returns g
 */
export function trayThresholdG(massG: number): number {
  return Math.max(1, steadyFraction * massG);
}

/**
 * The largest change of all trays together that still counts as none: 2 g or 0.5 % of the weight, whichever is more.
 * Chosen by simulation (`npm run bench:dry`): tray by tray alone, four times 1 g pass while 4 g leave.
 * @param massG g on all trays
 * @returns g
 */
export function sumThresholdG(massG: number): number {
  return Math.max(2, steadyFraction * massG);
}

/** The scale that the least gap is chosen for: a kitchen scale of 1 g. */
const usualScaleG = usualSteadyOptions.scaleResolutionG;

/**
 * How far apart two weighings have to be. Readings that agree hide a change of up to one step of the scale. The limit
 * does not grow with the step; instead it is waited until a loss at the limit's pace would have shown through it as
 * clearly as it does on a scale of 1 g. Chosen by simulation (`npm run bench:dry`).
 * @param thresholdG the limit, g, above 0
 * @returns h, never less than `minGapHours`
 */
export function neededGapHours(
  thresholdG: number,
  { scaleResolutionG, minGapHours }: SteadyOptions = usualSteadyOptions,
): number {
  return minGapHours * Math.max(1, (thresholdG + scaleResolutionG) / (thresholdG + usualScaleG));
}

/**
 * Whether a batch has stopped losing weight. Each tray's last weighing is held against its latest earlier one that
 * lies far enough back; every tray has to be steady, and so has their sum. The one that is furthest from it is
 * reported. Steady says that drying has stopped, not that nothing is frozen inside: thick pieces are still to be opened.
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
  const byTotal = () => judged(ordered.flatMap(asTotal), sumThresholdG, options);
  if (typeof last.trays === 'number') return byTotal();

  const worst = worstTray(ordered, options);
  const alone = worst.is === 'not yet' && worst.why === 'one weighing';
  // Weighed together before and tray by tray now: the sum is still comparable.
  return alone && !last.trays.includes(null) && ordered.some((c) => typeof c.trays === 'number')
    ? byTotal()
    : worst;
}

/** Tenths of a gram do not add up exactly in binary: the boundary itself counts as steady. */
const hairG = 1e-9;

/** What was once judged steady by other settings, or on the limits of an older rule, is not judged anew by a gram. Chosen. */
const slack = 2;

/**
 * Whether weighings that were called steady still can have been: each tray's last weight agrees with an earlier one of
 * it, or all together with an earlier sum. How far apart they were is not asked again, as settings may have changed
 * since; a weight that was put right afterwards is found.
 * @param checks in any order
 */
export function canHaveBeenSteady(checks: readonly CheckWeight[]): boolean {
  const ordered = checks.toSorted((a, b) => a.atMs - b.atMs);
  const agrees = (weights: readonly number[], limitOf: (massG: number) => number): boolean => {
    const last = weights.at(-1);
    return (
      last !== undefined &&
      weights.slice(0, -1).some((g) => Math.abs(g - last) <= slack * limitOf(last) + hairG)
    );
  };
  const sums = ordered.flatMap(asTotal).map(({ g }) => g);
  if (ordered.some(({ trays }) => typeof trays === 'number')) return agrees(sums, sumThresholdG);
  const byTray = ordered.flatMap(({ trays }) => (typeof trays === 'number' ? [] : [trays]));
  const count = Math.max(0, ...byTray.map((trays) => trays.length));
  return (
    count > 0 &&
    Array.from({ length: count }, (_, tray) =>
      byTray.flatMap((trays) => {
        const g = trays[tray] ?? null;
        return g === null ? [] : [g];
      }),
    ).every((weights) => agrees(weights, trayThresholdG))
  );
}

export interface Point {
  readonly atMs: number;
  readonly g: number;
}

function known(g: number | null): void {
  if (g !== null) above('impossible-weight', 'A check weight', g, 0, 'g');
}

/** A weighing of all trays together, or of every tray, as one weight; none where a tray is missing. */
export function asTotal({ atMs, trays }: CheckWeight): Point[] {
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
    return { ...judged(points, trayThresholdG, options), tray: index + 1 };
  });
  const worst = verdicts.reduce<Steadiness | undefined>(
    (most, verdict) => (most === undefined || rank(verdict) > rank(most) ? verdict : most),
    undefined,
  );
  if (worst === undefined) return { is: 'not yet', why: 'one weighing' };
  return worst.is === 'steady' ? (unsteadySum(verdicts, byTray) ?? worst) : worst;
}

/** How many times the limit of the sum grows with a longer gap, at most: half as long again. Chosen. */
const longestPace = 1.5;

/** Steady trays that lose together more than the batch may: what they lost is added, tray by tray. */
function unsteadySum(
  trays: readonly Steadiness[],
  byTray: readonly { readonly trays: readonly (number | null)[] }[],
): Steadiness | undefined {
  const steady = trays.filter((tray) => tray.is === 'steady');
  const totalG = trays.reduce(
    (sum, _, index) => sum + (byTray.findLast((c) => (c.trays[index] ?? null) !== null)?.trays[index] ?? 0),
    0,
  );
  const changeG = steady.reduce((sum, tray) => sum + tray.changeG, 0);
  const gapHours = Math.min(...steady.map((tray) => tray.gapHours));
  const needed = Math.max(...steady.map((tray) => tray.neededGapHours));
  // For what leaves the limit is a pace: what may go in the least gap. Over a longer one the same pace carries further.
  const pace = changeG < 0 ? Math.min(longestPace, Math.max(1, gapHours / needed)) : 1;
  const thresholdG = sumThresholdG(totalG) * pace;
  if (Math.abs(changeG) <= thresholdG + hairG) return undefined;
  return {
    is: 'not yet',
    why: changeG < 0 ? 'still losing' : 'gained',
    changeG,
    thresholdG,
    gapHours,
    neededGapHours: needed,
  };
}

/** How much a verdict asks of the household: kind first, then how far past its threshold. */
function rank(verdict: Steadiness): number {
  const order = ['too close', 'one weighing', 'still losing', 'gained'] as const;
  const kind = verdict.is === 'steady' ? 0 : order.indexOf(verdict.why) + 1;
  const past = 'changeG' in verdict ? Math.abs(verdict.changeG) / verdict.thresholdG : 0;
  return kind + past / (1 + past);
}

function judged(
  points: readonly Point[],
  thresholdOf: (massG: number) => number,
  options: SteadyOptions,
): Steadiness {
  const last = points.at(-1);
  const earlier = points.slice(0, -1);
  const first = earlier[0];
  if (last === undefined || first === undefined) return { is: 'not yet', why: 'one weighing' };
  const hours = (point: Point) => (last.atMs - point.atMs) / 3_600_000;
  const thresholdG = thresholdOf(last.g);
  const needed = neededGapHours(thresholdG, options);
  const partner = earlier.findLast((point) => hours(point) >= needed);
  const against = partner ?? first;
  const compared: Compared = {
    changeG: last.g - against.g,
    thresholdG,
    gapHours: hours(against),
    neededGapHours: needed,
  };
  if (Math.abs(compared.changeG) > thresholdG + hairG)
    return { is: 'not yet', why: compared.changeG < 0 ? 'still losing' : 'gained', ...compared };
  return partner === undefined
    ? { is: 'not yet', why: 'too close', ...compared }
    : { is: 'steady', ...compared };
}
