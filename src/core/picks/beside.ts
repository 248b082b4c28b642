import type { Occasion } from '../occasions.ts';
import { fedByDay } from './fed.ts';
import { byCode } from './handout.ts';
import { byText } from './order.ts';
import type { BesidePick, Lot, PicksPlan, PicksProblem, Slot, SlotPick } from './problem.ts';

/** Kinds of what goes beside, at most one of each at a table; a sweet and a snack are one kind. */
const kinds: readonly (readonly Occasion[])[] = [['side'], ['sweet', 'snack'], ['drink']];

/**
 * Lays what goes beside next to the dishes that carry the meals: first what was wished for, then, where somebody's day
 * is short of energy, whatever is there, then one sweet and one drink a day. It is a plain rule from the oldest
 * pouches, made after the plan and changing nothing of it; a side or a sweet never stands for a meal.
 */
export function layBeside(problem: PicksProblem, plan: PicksPlan): SlotPick[] {
  const gone = new Set(plan.slots.flatMap((s) => s.dishes.flatMap((d) => d.pouches)));
  const laid = new Map<string, BesidePick[]>();
  const now = (): PicksPlan => ({
    slots: plan.slots.map((s) => ({ ...s, beside: laid.get(s.slot) ?? [] })),
  });
  const slots = [...problem.slots].sort((a, b) => a.day - b.day || a.order - b.order);
  const lay = (slot: Slot, kind: readonly Occasion[], meal?: string): void => {
    const there = laid.get(slot.key) ?? [];
    const isOf = (m: string): boolean => usesOf(problem, m).some((use) => kind.includes(use));
    if (there.some((b) => isOf(b.meal)) || !kind.some((use) => slot.beside?.includes(use))) return;
    const found = choose(problem, slot, kind, gone, timesLaid(laid), meal);
    if (!found) return;
    for (const code of found.pouches) gone.add(code);
    laid.set(slot.key, [...there, found]);
  };
  for (const wish of [...problem.wishes].sort((a, b) => a.rank - b.rank)) {
    const kind = kinds.find((k) => k.some((use) => usesOf(problem, wish.meal).includes(use)));
    const at = slots.filter(
      (s) => (wish.slot === null || s.key === wish.slot) && s.eaters.includes(wish.eater),
    );
    for (const slot of kind && !carriesAny(problem, wish.meal) ? at : []) {
      if ([...laid.values()].flat().some((b) => b.meal === wish.meal && b.eaters.includes(wish.eater))) break;
      lay(slot, kind!, wish.meal);
    }
  }
  const there = new Set(problem.lots.flatMap((lot) => usesOf(problem, lot.meal)));
  for (const slot of slots) {
    for (const kind of kinds) {
      if (!kind.some((use) => slot.beside?.includes(use) && there.has(use))) continue;
      const today = { ...problem, slots: slots.filter((s) => s.day === slot.day) };
      const isShort = fedByDay(today, now()).some((f) => f.shortKcal > 0 && slot.eaters.includes(f.eater));
      if (isShort) lay(slot, kind);
    }
  }
  for (const kind of kinds.slice(1)) {
    // A sweet goes with the last meal of the day, a drink with the first.
    for (const slot of kind.includes('drink') ? slots : slots.toReversed()) {
      const isOf = (m: string): boolean => usesOf(problem, m).some((use) => kind.includes(use));
      const today = slots.filter((s) => s.day === slot.day).flatMap((s) => laid.get(s.key) ?? []);
      if (!today.some((b) => isOf(b.meal))) lay(slot, kind);
    }
  }
  return plan.slots.map(({ slot, dishes, unfed }) => {
    const beside = laid.get(slot);
    return beside ? { slot, dishes, unfed, beside } : { slot, dishes, unfed };
  });
}

const usesOf = (problem: PicksProblem, meal: string): readonly Occasion[] =>
  problem.uses?.find((use) => use.meal === meal)?.is ?? [];

const carriesAny = (problem: PicksProblem, meal: string): boolean =>
  usesOf(problem, meal).some((use) => use === 'main' || use === 'breakfast');

const timesLaid = (laid: ReadonlyMap<string, readonly BesidePick[]>): ReadonlyMap<string, number> => {
  const times = new Map<string, number>();
  for (const { meal } of [...laid.values()].flat()) times.set(meal, (times.get(meal) ?? 0) + 1);
  return times;
};

/** The meal that most at the table may and like to have, least often laid so far, the oldest first. */
function choose(
  problem: PicksProblem,
  slot: Slot,
  kind: readonly Occasion[],
  gone: ReadonlySet<string>,
  times: ReadonlyMap<string, number>,
  only: string | undefined,
): BesidePick | undefined {
  const pair = (list: PicksProblem['safe'], eater: string, meal: string): boolean =>
    list.some((p) => p.eater === eater && p.meal === meal);
  const isFor = (lot: Lot): boolean =>
    lot.steady &&
    (lot.bestBy === null || lot.bestBy >= slot.day) &&
    (only === undefined ? true : lot.meal === only) &&
    usesOf(problem, lot.meal).some((use) => kind.includes(use)) &&
    !usesOf(problem, lot.meal).some((use) => slot.carriedBy?.includes(use)) &&
    ![...(problem.barred ?? []), ...(problem.banned ?? [])].some(
      (b) => b.slot === slot.key && b.meal === lot.meal,
    ) &&
    lot.pouches.some((code) => !gone.has(code));
  const lots = problem.lots.filter(isFor);
  const found = [...new Set(lots.map((l) => l.meal))].map((meal) => {
    const eaters = slot.eaters.filter(
      (e) => pair(problem.safe, e, meal) && !pair(problem.dislikes, e, meal) && !isSalted(problem, e),
    );
    return {
      meal,
      eaters,
      oldest: Math.min(...lots.filter((l) => l.meal === meal).map((l) => l.bestBy ?? Infinity)),
    };
  });
  const enough = found
    .filter(
      ({ eaters }) => eaters.length > 0 && (only !== undefined || 2 * eaters.length >= slot.eaters.length),
    )
    .sort(
      (a, b) =>
        b.eaters.length - a.eaters.length ||
        (times.get(a.meal) ?? 0) - (times.get(b.meal) ?? 0) ||
        a.oldest - b.oldest ||
        byText(a.meal, b.meal),
    );
  for (const { meal, eaters } of enough) {
    const picked = open(
      problem,
      lots.filter((l) => l.meal === meal),
      eaters,
      gone,
    );
    if (picked) return { meal, ...picked, eaters: [...eaters].sort(byText) };
  }
  return undefined;
}

/** Somebody with a hard limit of sodium gets nothing beside: the limit was spent on the meals. */
const isSalted = (problem: PicksProblem, eater: string): boolean => {
  const who = problem.eaters.find((e) => e.key === eater);
  return who?.sodiumHard === true && who.sodiumLimitMg !== null;
};

/** The oldest pouches until nine tenths of the portions are reached; undefined when not even half is there. */
function open(
  problem: PicksProblem,
  lots: readonly Lot[],
  eaters: readonly string[],
  gone: ReadonlySet<string>,
): { pouches: string[]; openedTwentieths: number } | undefined {
  const need = eaters.reduce((sum, e) => sum + problem.eaters.find((x) => x.key === e)!.portionTwentieths, 0);
  const pouches: string[] = [];
  let opened = 0;
  const oldest = [...lots].sort(
    (a, b) => (a.bestBy ?? Infinity) - (b.bestBy ?? Infinity) || byText(a.code, b.code),
  );
  for (const lot of oldest) {
    for (const code of [...lot.pouches].sort(byCode)) {
      if (gone.has(code) || opened >= 0.9 * need) continue;
      // One serving left over is one too many when half is there already.
      if (opened >= need / 2 && opened + lot.servingsTwentieths - 1.1 * need > 20) continue;
      pouches.push(code);
      opened += lot.servingsTwentieths;
    }
  }
  return opened >= need / 2 && pouches.length > 0 ? { pouches, openedTwentieths: opened } : undefined;
}
