import type { PicksProblem, Slot, Wish } from './problem.ts';

/** A wish that some plan may grant, with the rank it has among those of its eater. */
export interface RankedWish {
  readonly wish: Wish;
  /** 1 to 3. */
  readonly rank: number;
}

/**
 * The wishes that can come true at all, ranked anew: one that cannot uses up no rank.
 * @param can whether the wish could be granted at this slot
 */
export function grantable(problem: PicksProblem, can: (wish: Wish, slot: Slot) => boolean): RankedWish[] {
  const open = problem.wishes.filter((wish) =>
    problem.slots.some((slot) => (wish.slot === null || wish.slot === slot.key) && can(wish, slot)),
  );
  return open.map((wish) => {
    const before = new Set(
      open.filter((w) => w.eater === wish.eater && w.rank < wish.rank).map((w) => w.rank),
    );
    return { wish, rank: Math.min(3, before.size + 1) };
  });
}

/** Weights by rank: a first wish outweighs all second ones together, a second one all third ones. */
export function wishWeights(wishes: readonly RankedWish[]): readonly [number, number, number] {
  const n = Math.max(0, ...[1, 2, 3].map((r) => wishes.filter(({ rank }) => rank === r).length));
  return [(n + 1) ** 2, n + 1, 1];
}
