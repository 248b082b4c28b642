import type { PicksProblem, Slot } from './problem.ts';

/**
 * Whether a meal may carry a slot for an eater: it is for such a meal of the day, or a breakfast or main that this
 * eater wished for just there, nobody sits there whom it must not be near,
 * and nobody said that it is not to be there. Where it is fixed what the eater has, it is that and nothing else.
 */
export function fitsTo(problem: PicksProblem): (slot: Slot, eater: string, meal: string) => boolean {
  const uses = new Map((problem.uses ?? []).map((use) => [use.meal, use.is]));
  const key = (...parts: readonly string[]): string => JSON.stringify(parts);
  const barred = new Set(
    [...(problem.barred ?? []), ...(problem.banned ?? [])].map((b) => key(b.slot, b.meal)),
  );
  const wished = new Set(
    problem.wishes.flatMap((w) => (w.slot === null ? [] : [key(w.slot, w.eater, w.meal)])),
  );
  const fixed = new Map((problem.fixed ?? []).map((seat) => [key(seat.slot, seat.eater), seat.meal]));
  return (slot, eater, meal) => {
    if (barred.has(key(slot.key, meal))) return false;
    const stays = fixed.get(key(slot.key, eater));
    if (stays !== undefined) return stays === meal;
    const is = uses.get(meal);
    if (slot.carriedBy === undefined || is === undefined) return true;
    if (is.some((occasion) => slot.carriedBy!.includes(occasion))) return true;
    return is.some((one) => one === 'breakfast' || one === 'main') && wished.has(key(slot.key, eater, meal));
  };
}
