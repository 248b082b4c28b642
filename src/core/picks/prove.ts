import type { Grid } from './grid.ts';
import type { Linear } from './linear.ts';
import { boundable, makeMaster, type Master } from './master.ts';
import { compareVectors, measure } from './measure.ts';
import { makePricer, type Menu, menuOf, type Pricer } from './menus.ts';
import type { Found } from './search.ts';
import type { SlotTable } from './table.ts';

/** Counts after which a proof is given up, and the safety clock. */
export interface ProofLimits {
  /** Rounds of new menus for one level. */
  readonly rounds: number;
  /** Branching nodes of one whole program. */
  readonly nodes: number;
  /** Whole programs in all. */
  readonly programs: number;
  /** Seconds left on the safety clock. */
  readonly secondsLeft: () => number;
}

export interface Proof {
  readonly found: Found;
  /** One a level: no plan that keeps the levels before is below it. */
  readonly bounds: readonly number[];
  readonly clockEnded: boolean;
}

/**
 * How many menus a whole program may hold, level by level. Down to waste it is worth its time; at oldest first only
 * when it is small; after that the search alone improves the plan. Chosen on the bench's instances.
 */
const wholeMenus = [1500, 1500, 1500, 1500, 1500, 1500, 250];

/** What needs no program: nothing is below nothing, and no more wishes come true than there are. */
function plainBound(grid: Grid, level: number, vector: readonly number[]): number {
  if (level === 2) return Math.ceil(vector[1]! / Math.max(1, grid.eaterKeys.length));
  if (level === 3) return -grid.wishTotal;
  return 0;
}

/**
 * Goes through the levels in order. Where the plan is not as good as the plain bound, the master program bounds
 * the level; where bound and plan still differ, a whole program over the menus found looks for a better plan,
 * and the search goes on around what it finds. Then the level is held for the next.
 * @param again searches around a plan
 */
export function prove(
  grid: Grid,
  tables: readonly SlotTable[],
  linear: Linear,
  start: Found,
  again: (found: Found) => Found,
  limits: ProofLimits,
): Proof {
  let found = start;
  let master: Master | undefined;
  const pricer = makePricer(grid, tables);
  const bounds: number[] = [];
  let programs = 0;
  let clockEnded = false;

  const openMaster = (upTo: number): Master => {
    const opened = makeMaster(grid, linear);
    for (let k = 0; k < upTo; k += 1) opened.hold(k, found.vector[k]!);
    return opened;
  };
  const addPlan = (into: Master): void => {
    into.add(grid.slotKeys.map((_, s) => menuOf(grid, found.state, s)));
  };

  for (let level = 0; level < found.vector.length; level += 1) {
    let bound = plainBound(grid, level, found.vector);
    const canBound = (boundable as readonly number[]).includes(level);
    if (found.vector[level]! > bound && canBound && !clockEnded) {
      master ??= openMaster(level);
      addPlan(master);
      master.aim(level);
      const reached = boundLevel(master, pricer, found.vector[level]!, limits);
      bound = Math.max(bound, reached.bound);
      clockEnded ||= reached.clockEnded;
      if (
        bound < found.vector[level]! &&
        wholeMenus[level] !== undefined &&
        programs < limits.programs &&
        !clockEnded
      ) {
        programs += 1;
        const target = found.vector[level]! - 1;
        const whole = master.solveWhole(target, wholeMenus[level]!, {
          nodes: limits.nodes,
          seconds: limits.secondsLeft(),
        });
        if (whole.state) {
          const better = again({ state: whole.state, vector: measure(grid, whole.state) });
          const improved = compareVectors(better.vector, found.vector) < 0;
          if (improved) {
            const first = better.vector.findIndex((value, k) => value !== found.vector[k]!);
            found = better;
            if (first < level) {
              // An earlier level that was left open has become better: prove again from there.
              master.dispose();
              master = undefined;
              bounds.length = first;
              level = first - 1;
              continue;
            }
          }
        }
      }
    }
    bounds.push(bound);
    master?.hold(level, found.vector[level]!);
  }
  master?.dispose();
  return { found, bounds, clockEnded };
}

/** Adds the cheapest menus round by round until none is worth it, the bound meets the plan, or a count ends it. */
function boundLevel(
  master: Master,
  pricer: Pricer,
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
    best = Math.max(best, Math.ceil(sum - 1e-6));
    if (best >= value || fresh.length === 0) break;
    master.add(fresh);
  }
  return { bound: best, clockEnded: false };
}
