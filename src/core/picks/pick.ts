import { layBeside } from './beside.ts';
import { checkPlan } from './check.ts';
import { greedyState } from './greedy.ts';
import { type Grid, notBefore } from './grid.ts';
import { makeGrid } from './make-grid.ts';
import { handOut } from './handout.ts';
import type { Linear } from './linear.ts';
import { compareVectors, copyState, emptyState, measure } from './measure.ts';
import {
  at,
  lastBounded,
  levelNames,
  type LevelResult,
  type PicksProblem,
  type PicksResult,
} from './problem.ts';
import { plainBounds } from './plain-bounds.ts';
import { prove } from './prove.ts';
import { search, type Found } from './search.ts';
import { strict } from './offer.ts';
import { makeSlotSolver, type SlotSolver } from './slot.ts';
import { isCoarse, isLarge, makeTables, type SlotTable } from './table.ts';

/** Every limit is a count, so that the same question gets the same plan. Chosen on the bench's instances. */
export interface PickLimits {
  /** Rounds of the first search. */
  readonly rounds: number;
  /** Rounds around each plan that a whole program found. */
  readonly roundsAgain: number;
  /** Rounds of new menus for one level. */
  readonly proofRounds: number;
  /** Branching nodes of one whole program. */
  readonly nodes: number;
  /** Whole programs in all. */
  readonly programs: number;
  /** Whole programs over a few slots each, for one level. */
  readonly corners: number;
  /** Attempts at a better plan, dives and programs alike, in all. */
  readonly tries: number;
  /** The same where some are served together, so that nothing is proven. */
  readonly triesCoarse: number;
  /** How often a level may be taken up again because a later one led to a better plan for it. */
  readonly restarts: number;
}

export const usualLimits: PickLimits = {
  rounds: 300,
  roundsAgain: 100,
  proofRounds: 60,
  nodes: 30,
  programs: 6,
  corners: 6,
  tries: 30,
  triesCoarse: 4,
  restarts: 1,
};

/** A trip of few slots has been gone through many times over before the usual rounds are up. Chosen. */
const roundsASlot = 75;

/**
 * The picks for a trip: the best plan found, level by level, with what is proven of each level. Spare slots are planned last,
 * from what is left, and count at no level.
 * @param linear the solver; without it nothing is proven beyond the plain bounds
 * @param secondsLeft a clock as safety net; when it reaches 0 the best plan found so far is answered
 * @throws Error when the finished plan does not stand the check: a bug, never an answer
 */
export function pickPouches(
  problem: PicksProblem,
  linear: Linear | undefined,
  limits: PickLimits = usualLimits,
  secondsLeft: () => number = () => Infinity,
): PicksResult {
  const spare = problem.slots.filter(({ isSpare }) => isSpare === true);
  if (spare.length === 0) return pickWhole(problem, linear, limits, secondsLeft);
  const slots = problem.slots.filter(({ isSpare }) => isSpare !== true);
  const planned = pickWhole({ ...problem, slots }, linear, limits, secondsLeft);
  const used = new Set(
    planned.slots.flatMap(({ dishes, beside = [] }) =>
      [...dishes, ...beside].flatMap(({ pouches }) => pouches),
    ),
  );
  const lots = problem.lots.map((lot) => ({
    ...lot,
    pouches: lot.pouches.filter((code) => !used.has(code)),
  }));
  const extra = pickWhole({ ...problem, lots, slots: spare }, linear, limits, secondsLeft);
  const inOrder = [...problem.slots].sort((a, b) => a.day - b.day || a.order - b.order).map(({ key }) => key);
  return {
    ...planned,
    slots: [...planned.slots, ...extra.slots].sort(
      (a, b) => inOrder.indexOf(a.slot) - inOrder.indexOf(b.slot),
    ),
  };
}

function pickWhole(
  problem: PicksProblem,
  linear: Linear | undefined,
  limits: PickLimits,
  secondsLeft: () => number,
): PicksResult {
  const grid = makeGrid(problem);
  const tables = makeTables(grid);
  const solver = makeSlotSolver(grid, tables);
  let clockEnded = false;
  const late = (): boolean => (clockEnded ||= secondsLeft() <= 0);
  // Nothing is opened and nobody is missed: there is nothing to plan.
  const good = (vector: readonly number[]): boolean => late() || vector.every((v) => v <= 0);
  // A bound on parties of several is none on the trip.
  const isBounded = !tables.some(isCoarse);

  let found: Found | undefined;
  for (const start of starts(grid)) {
    if (found && late()) break;
    for (const s of start.order) solver.fill(start.state, s);
    const next = { state: start.state, vector: measure(grid, start.state) };
    if (!found || compareVectors(next.vector, found.vector) < 0) found = next;
  }
  const isWide = grid.slotKeys.some((_, s) => isLarge(grid, s));
  const rounds = Math.min(limits.rounds, roundsASlot * grid.slotKeys.length) * (isWide ? 3 : 1);
  found = search(grid, tables, solver, found!, rounds, 1, good);
  const before = stateBefore(grid, tables, solver);
  if (before) {
    // A small change moves little: the plan before is mended as well, and wins where it is no worse.
    const mended = search(grid, tables, solver, before, rounds, 3, good);
    if (compareVectors(mended.vector, found.vector) <= 0) found = mended;
  }
  let bounds: readonly number[] = [];
  if (linear && !late()) {
    const again = (from: Found): Found => search(grid, tables, solver, from, limits.roundsAgain, 2, good);
    const proof = prove(grid, tables, solver, linear, found, again, {
      rounds: limits.proofRounds,
      nodes: limits.nodes,
      programs: limits.programs,
      corners: limits.corners,
      tries: isBounded ? limits.tries : limits.triesCoarse,
      restarts: limits.restarts,
      secondsLeft,
    });
    found = again(proof.found);
    bounds = isBounded ? proof.bounds : [];
    clockEnded ||= proof.clockEnded;
  }

  const { state, vector } = found;
  const plain = plainBounds(grid, vector);
  const levels = levelNames.map((level, k): LevelResult => {
    const bound = Math.max(bounds[k] ?? -Infinity, plain[k]!);
    const value = vector[k]!;
    return { level, value, bound, proven: value <= bound, gap: Math.max(0, value - bound) };
  });
  const result: PicksResult = {
    slots: layBeside(problem, { slots: handOut(grid, state, problem.pinned) }),
    vector,
    levels,
    status: levels.slice(0, at[lastBounded] + 1).every((l) => l.proven) ? 'proven' : 'best found',
    clockEnded,
  };
  const faults = checkPlan(problem, result);
  if (faults.length > 0) throw new Error(`the plan does not stand the check: ${faults.join('; ')}`);
  return result;
}

/** Where the search may begin: the plain list as it is, and empty plans filled from either end. */
function starts(grid: Grid): { state: ReturnType<typeof emptyState>; order: number[] }[] {
  const forward = grid.slotKeys.map((_, s) => s);
  return [
    { state: copyState(greedyState(grid)), order: [] },
    { state: emptyState(grid), order: forward },
    { state: emptyState(grid), order: [...forward].reverse() },
  ];
}

/** The plan before, as far as it is still possible: the same people at the same meals. */
function stateBefore(grid: Grid, tables: readonly SlotTable[], solver: SlotSolver): Found | undefined {
  if (grid.before.every((eaters) => eaters.every((meal) => meal === notBefore))) return undefined;
  const state = emptyState(grid);
  tables.forEach(({ parties, meals }, s) => {
    const isOther = (e: number, m: number): boolean => {
      const was = grid.before[s]![e]!;
      return was !== notBefore && was !== m;
    };
    const from = meals.map((m) =>
      parties.reduce((mask, party, i) => mask | (party.some((e) => isOther(e, m)) ? 1 << i : 0), 0),
    );
    solver.fill(state, s, strict, { from, pouches: [] });
  });
  return { state, vector: measure(grid, state) };
}
