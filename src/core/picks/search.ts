import { type Chance, seeded } from './chance.ts';
import type { Grid } from './grid.ts';
import {
  classCost,
  compareVectors,
  copyState,
  measure,
  overwrite,
  roomForWaste,
  unfed,
  type State,
} from './measure.ts';
import type { KeptBack } from './offer.ts';
import { at } from './problem.ts';
import type { SlotSolver } from './slot.ts';
import { apart, isLarge, type SlotTable } from './table.ts';

export interface Found {
  readonly state: State;
  readonly vector: number[];
}

/**
 * Takes a few slots out of the plan and puts each back at its best, in a seeded order, a fixed number of times;
 * keeps the new plan whenever its vector of levels is no worse.
 * @param start the plan to start from; it is left as it is
 * @param rounds how often
 * @param seed of the order in which slots are taken out
 * @param done whether a vector cannot be bettered, so that the search may end early
 */
export function search(
  grid: Grid,
  tables: readonly SlotTable[],
  solver: SlotSolver,
  start: Found,
  rounds: number,
  seed: number,
  done: (vector: readonly number[]) => boolean = () => false,
): Found {
  const chance = seeded(seed);
  const slots = grid.slotKeys.length;
  const [eaters, classes] = [grid.eaterKeys.length, grid.classes.length];
  const state = copyState(start.state);
  const kept = copyState(start.state);
  let vector = start.vector;
  // A single slot is at its best once it is filled with this or that left over.
  const count = slots > 1 ? rounds : 24;

  const slotsOf = (m: number): number[] => {
    const found: number[] = [];
    for (let s = 0; s < slots; s += 1) {
      if (grid.slotEaters[s]!.some((e) => state.eat[s * eaters + e] === m)) found.push(s);
    }
    return found;
  };

  /** A slot where somebody is short, else one that wastes, else any. */
  const sore = (): number => {
    const offset = chance.below(slots);
    const [short, waste] = [vector[at['energy short']]!, vector[at['exact waste']]!];
    const sign = short > 0 ? -1 : 1;
    for (let i = 0; i < slots && (short > 0 || waste > 0); i += 1) {
      const s = (offset + i) % slots;
      if (sign * balance(grid, state, s, sign) > 0) return s;
    }
    return offset;
  };

  /**
   * What all but the last slot must do without, so that dishes, pouches and hunger can change places: whole dishes,
   * single parties from single dishes, one party from all, some pouches.
   */
  const keepBack = (partyCount: number, places: number): KeptBack => {
    const kind = chance.below(4);
    const odds = 2 + chance.below(2);
    const one = 1 << chance.below(Math.max(1, partyCount));
    const from = Array.from({ length: places }, () => {
      if (kind === 0) return 0;
      if (kind === 1) return one;
      if (kind === 2) return chance.below(odds) === 0 ? -1 : 0;
      return chance.below(1 << partyCount) & chance.below(1 << partyCount);
    });
    const some = chance.below(2) === 0;
    return {
      from,
      pouches: some ? grid.classes.map(() => (chance.below(3) === 0 ? 1 + chance.below(2) : 0)) : [],
    };
  };

  const alike = slots > 1 ? alikeSlots(grid) : [];
  for (let round = 0; round < count && !done(vector); round += 1) {
    if (round % 4 === 2 && alike.length > 0) {
      // Two meals that change places whole: no pouch more, and perhaps nothing twice running.
      const [a, b] = alike[chance.below(alike.length)]!;
      swapSlots(state, a, b, eaters, classes);
      const next = isPossible(grid, state, a, b) ? measure(grid, state) : undefined;
      if (next && compareVectors(next, vector) <= 0) {
        vector = next;
        for (const s of [a, b]) copySlot(kept, state, s, eaters, classes);
      } else for (const s of [a, b]) copySlot(state, kept, s, eaters, classes);
      continue;
    }
    const out = new Set<number>();
    const size = Math.min(slots, 2 + chance.below(3));
    const first = round % 3 === 0 ? chance.below(slots) : sore();
    out.add(first);
    if (round % 3 === 1 && tables[first]!.meals.length > 0) {
      // Slots that compete for the same meal.
      const meals = tables[first]!.meals;
      const rivals = slotsOf(meals[chance.below(meals.length)]!);
      while (out.size < size && rivals.length > 0) out.add(rivals.splice(chance.below(rivals.length), 1)[0]!);
    }
    while (out.size < size) out.add(chance.below(slots));
    const order = [...out];
    for (let i = order.length - 1; i > 0; i -= 1) {
      const j = chance.below(i + 1);
      [order[i], order[j]] = [order[j]!, order[i]!];
    }
    const asTheySit = order.map((s) =>
      isLarge(grid, s) ? apart(grid, state, s, (n) => chance.below(n)) : tables[s]!,
    );
    for (const s of order) solver.clear(state, s);
    const part = slots === 1 ? round % 4 : chance.below(4);
    const grain = (slots === 1 ? round < count / 2 : chance.below(3) > 0) ? 1 : grainFor(grid, chance);
    order.forEach((s, i) => {
      const table = asTheySit[i]!;
      const { meals, parties } = table;
      const room = roomForWaste(grid, state, vector[at.waste]!);
      const free = part === 0 ? 0 : part === 1 ? room : chance.below(room + 1);
      const back = i < order.length - 1 ? keepBack(parties.length, meals.length) : undefined;
      solver.fill(state, s, { free, grain }, back, table);
    });
    const next = measure(grid, state);
    if (compareVectors(next, vector) <= 0) {
      vector = next;
      for (const s of order) copySlot(kept, state, s, eaters, classes);
    } else {
      for (const s of order) copySlot(state, kept, s, eaters, classes);
    }
  }
  overwrite(state, kept);
  return { state, vector };
}

/** Pairs of slots with the same company, whose meals may change places; none where somebody's day is limited. */
function alikeSlots(grid: Grid): [number, number][] {
  const pairs: [number, number][] = [];
  grid.slotEaters.forEach((eaters, a) => {
    if (eaters.length === 0 || eaters.some((e) => grid.hardLimitMg[e]! < Infinity)) return;
    for (let b = a + 1; b < grid.slotKeys.length; b += 1)
      if (grid.slotEaters[b]!.join() === eaters.join()) pairs.push([a, b]);
  });
  return pairs;
}

function swapSlots(state: State, a: number, b: number, eaters: number, classes: number): void {
  for (const [list, n] of [
    [state.eat, eaters],
    [state.open, classes],
  ] as const)
    // prettier-ignore
    for (let i = 0; i < n; i += 1)
      [list[a * n + i], list[b * n + i]] = [list[b * n + i]!, list[a * n + i]!];
}

/** Whether what two slots hold may be there: for such meals, with the same needs, and in date. */
function isPossible(grid: Grid, state: State, a: number, b: number): boolean {
  const [eaters, classes] = [grid.eaterKeys.length, grid.classes.length];
  const fits = (s: number, was: number): boolean =>
    grid.slotEaters[s]!.every((e) => {
      const m = state.eat[s * eaters + e]!;
      return m < 0 || (grid.may[s]![e]![m]! && grid.low[s]![e]![m] === grid.low[was]![e]![m]);
    });
  return (
    fits(a, b) &&
    fits(b, a) &&
    grid.classes.every(
      (cls, c) => !cls.dated || classCost(grid, cls, (s) => state.open[s * classes + c]!) !== undefined,
    )
  );
}

/** How coarsely what is short is looked at: from a small part of a step up to twice a step. */
const grainFor = (grid: Grid, chance: Chance): number =>
  Math.max(2, Math.floor((grid.shortStep * (1 + chance.below(8))) / 4));

function copySlot(target: State, source: State, s: number, eaters: number, classes: number): void {
  for (let i = s * eaters; i < (s + 1) * eaters; i += 1) target.eat[i] = source.eat[i]!;
  for (let i = s * classes; i < (s + 1) * classes; i += 1) target.open[i] = source.open[i]!;
}

/** With sign 1: what is left over at the slot, twentieths; with −1: what is missing, as a negative number. */
function balance(grid: Grid, state: State, s: number, sign: 1 | -1): number {
  const [eaters, classes] = [grid.eaterKeys.length, grid.classes.length];
  const left = new Map<number, number>();
  let sum = 0;
  for (let c = 0; c < classes; c += 1) {
    const n = state.open[s * classes + c]!;
    const { meal, size } = grid.classes[c]!;
    if (n > 0) left.set(meal, (left.get(meal) ?? 0) + n * size);
  }
  for (const e of grid.slotEaters[s]!) {
    const m = state.eat[s * eaters + e]!;
    if (m === unfed) sum -= sign < 0 ? grid.nothing[s]![e]! : 0;
    else {
      left.set(m, (left.get(m) ?? 0) - (sign < 0 ? grid.low : grid.high)[s]![e]![m]!);
      if (sign < 0) sum -= grid.thin[s]![e]![m]!;
    }
  }
  for (const n of left.values()) if (sign * n > 0) sum += n;
  return sum;
}
