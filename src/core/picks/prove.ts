import type { Grid } from './grid.ts';
import { seeded } from './chance.ts';
import type { IntegerLimits, Linear } from './linear.ts';
import { makeMaster, type Master, type Relaxed } from './master.ts';
import { compareVectors, measure, servingsBeyond, type State, unfed } from './measure.ts';
import { makeMenu, type Menu, menuOf } from './menus.ts';
import { plainBounds } from './plain-bounds.ts';
import { makePricer, type Pricer } from './pricer.ts';
import { at, lastBounded } from './problem.ts';
import { dive, reachWhole } from './reach.ts';
import type { Found } from './search.ts';
import type { SlotSolver } from './slot.ts';
import type { SlotTable } from './table.ts';

/** Counts after which a proof is given up, and the safety clock. */
export interface ProofLimits {
  /** Rounds of new menus for one level. */
  readonly rounds: number;
  /** Branching nodes of one whole program. */
  readonly nodes: number;
  /** Whole programs in all. */
  readonly programs: number;
  /** Whole programs over a few slots each, for one level. */
  readonly corners: number;
  /** Attempts at a better plan, dives and programs alike, in all. */
  readonly tries: number;
  /** How often a level may be taken up again because a later one led to a better plan for it. */
  readonly restarts: number;
  /** Seconds left on the safety clock. */
  readonly secondsLeft: () => number;
}

export interface Proof {
  readonly found: Found;
  /** One a level, as far as they are bounded: no plan that keeps the levels before is below it. */
  readonly bounds: readonly number[];
  readonly clockEnded: boolean;
}

/** How many menus a whole program may hold. Chosen on the bench's instances. */
const wholeMenus = 400;

/** How many menus a whole program takes up at once when all together are too many. Chosen on the same instances. */
const cornerMenus = 200;

/** 'none': there is no better plan among the menus at hand. */
type Way = (from: Master, level: number, root: Relaxed, plan: Found) => State | 'none' | undefined;

/**
 * Goes through the levels in order, as far as they are bounded. Where the plan is not as good as the plain bound, the master program bounds
 * the level; where bound and plan still differ, a whole program over the menus found looks for a better plan,
 * and the search goes on around what it finds. Then the level is held for the next.
 * @param again searches around a plan
 */
export function prove(
  grid: Grid,
  tables: readonly SlotTable[],
  solver: SlotSolver,
  linear: Linear,
  start: Found,
  again: (found: Found) => Found,
  limits: ProofLimits,
): Proof {
  let found = start;
  const pricer = makePricer(grid, tables);
  const bounds: number[] = [];
  let [programs, restarts, tries, clockEnded] = [0, 0, 0, false];
  // So that there always is a menu, whatever is left: nobody eats.
  let pool = grid.slotEaters.map((eaters, s) => makeMenu(grid, s, eaters.map(() => unfed), [])); // prettier-ignore
  let master: Master | undefined;

  const reopen = (upTo: number): Master => {
    if (master) pool = [...Array(master.count()).keys()].flatMap((i) => master!.menuAt(i) ?? []);
    master?.dispose();
    const opened = makeMaster(grid, linear);
    for (let k = 0; k < upTo; k += 1) opened.hold(k, found.vector[k]!);
    opened.add(pool);
    return opened;
  };

  const within = (): IntegerLimits => ({ nodes: limits.nodes, seconds: limits.secondsLeft() });
  /** Ways to a better plan at a level, cheapest first. */
  const diveFrom =
    (skip: number, looks: number): Way =>
    (from) => {
      const { state, left } = dive(grid, from, pricer.cheapest, skip, looks, () => limits.secondsLeft() <= 0);
      for (const s of left) solver.fill(state, s);
      return state;
    };
  const oneProgram: Way = (from, level, root, plan) => {
    if (programs >= limits.programs) return undefined;
    programs += 1;
    return reachWhole(grid, from, root, plan.vector[level]! - 1, wholeMenus, within());
  };
  const chance = seeded(11);
  const oneCorner: Way = (from, level, root, plan) => {
    from.add(menusOf(grid, plan));
    const order = grid.slotKeys
      .map((_, s) => ({ s, at: chance.below(1_000_000) }))
      .sort((a, b) => a.at - b.at);
    const around = { state: plan.state, order: order.map(({ s }) => s) };
    return reachWhole(grid, from, root, plan.vector[level]! - 1, cornerMenus, within(), around);
  };
  const dives = new Set([diveFrom(0, 2), diveFrom(0, 6)]);
  const ways: readonly Way[] = [
    ...dives,
    oneProgram,
    ...Array.from({ length: limits.corners }, () => oneCorner),
  ];

  try {
    let level = 0;
    while (level <= at[lastBounded]) {
      let bound = plainBounds(grid, found.vector)[level]!;
      if (level === at['worst off'])
        bound = Math.max(bound, Math.ceil(bounds[at.unfed]! / Math.max(1, grid.eaterKeys.length)));
      let first = level;
      if (found.vector[level]! > bound && !clockEnded) {
        master ??= reopen(level);
        master.add(menusOf(grid, found));
        master.aim(level, false);
        const reached = boundLevel(grid, master, pricer, level, found.vector[level]!, limits);
        bound = Math.max(bound, reached.bound);
        clockEnded ||= reached.clockEnded;
        if (bound < found.vector[level]!) master.aim(level, true);
        const root =
          bound < found.vector[level]! && restarts <= limits.restarts
            ? master.solve(limits.secondsLeft())
            : undefined;
        let better: Found = found;
        for (const way of root ? ways : []) {
          if (bound >= better.vector[level]! || tries >= limits.tries || limits.secondsLeft() <= 0) break;
          tries += 1;
          const state = way(master, level, root!, better);
          if (state === 'none') break;
          if (!state) continue;
          const plan = { state, vector: measure(grid, state) };
          // A dive leaves much for the search to mend; a corner is best already, but for the levels after.
          const mended =
            compareVectors(plan.vector.slice(0, level + 1), better.vector) < 0 || dives.has(way)
              ? again(plan)
              : plan;
          if (compareVectors(mended.vector, better.vector) < 0) better = mended;
        }
        if (better !== found) {
          first = better.vector.findIndex((value, k) => value !== found.vector[k]!);
          found = better;
          master.add(menusOf(grid, found));
        }
      }
      if (first >= level) {
        bounds[level] = bound;
        master?.hold(level, found.vector[level]!);
        level += 1;
      } else {
        // An earlier level that was left open has become better, and levels after it may have become worse: what
        // was bounded under the old values is bounded anew. When the count is up, no more plans are looked for.
        level = first;
        restarts += 1;
        master = reopen(level);
      }
    }
  } finally {
    master?.dispose();
  }
  return { found, bounds, clockEnded };
}

const menusOf = (grid: Grid, found: Found): Menu[] =>
  grid.slotKeys.map((_, s) => menuOf(grid, found.state, s));

/** Some levels count in steps of the whole trip. */
const inSteps = (grid: Grid, level: number, whole: number): number =>
  level === at.waste
    ? servingsBeyond(grid, whole)
    : level === at['energy short']
      ? Math.floor(whole / grid.shortStep)
      : whole;

/** Adds the cheapest menus round by round until none is worth it, the bound meets the plan, or a count ends it. */
function boundLevel(
  grid: Grid,
  master: Master,
  pricer: Pricer,
  level: number,
  value: number,
  limits: ProofLimits,
): { bound: number; clockEnded: boolean } {
  let best = -Infinity;
  for (let round = 0; round < limits.rounds; round += 1) {
    if (limits.secondsLeft() <= 0) return { bound: best, clockEnded: true };
    const relaxed = master.solve(limits.secondsLeft());
    if (!relaxed) return { bound: best, clockEnded: limits.secondsLeft() <= 0 };
    const fresh: Menu[] = [];
    const sum = relaxed.bound((s, prices) => {
      const { price, menu } = pricer.cheapest(s, prices);
      if (price < relaxed.worth(s) - 1e-7) fresh.push(menu);
      return price;
    });
    // All levels count in whole numbers, so a bound may be rounded up.
    const whole = Math.ceil(sum - 1e-6);
    best = Math.max(best, inSteps(grid, level, whole));
    // More menus only lower the linear optimum, and no bound is above it.
    const most = inSteps(grid, level, Math.ceil(relaxed.value - 1e-6));
    if (best >= value || best >= most || fresh.length === 0) break;
    master.add(fresh);
  }
  return { bound: best, clockEnded: false };
}
