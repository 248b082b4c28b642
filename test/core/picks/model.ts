import { type Grid, notBefore } from '#core/picks/grid.ts';
import { makeGrid } from '#core/picks/make-grid.ts';
import type { IntegerLimits, Linear } from '#core/picks/linear.ts';
import { at, levelNames, type PicksProblem } from '#core/picks/problem.ts';

/**
 * The whole trip as one program in LP text: the independent check on small trips. Names in the text are made from
 * indices alone; nothing anybody typed gets in.
 */
export interface BigModel {
  /** The text that minimises a level with the levels before held. */
  text(level: number, held: readonly number[]): string;
  /** What each level counts besides its terms. */
  readonly besides: readonly number[];
}

type Term = readonly [number, string];

export function makeBigModel(problem: PicksProblem): BigModel {
  const grid = makeGrid(problem);
  const rows: string[] = [];
  const whole = new Set<string>();
  const levels: Term[][] = levelNames.map(() => []);
  const besides = levelNames.map(() => 0);
  const missing: Term[] = [];
  const row = (terms: readonly Term[], relation: '<=' | '=' | '>=', right: number): void => {
    if (terms.length > 0) rows.push(` c${rows.length}: ${write(terms)} ${relation} ${right}`);
  };
  const eatName = (s: number, e: number, m: number): string => `y${s}_${e}_${m}`;
  const openName = (s: number, c: number, g: number): string => `x${s}_${c}_${g}`;

  // Which variables there are at all: what is not safe, or no longer good, has none.
  const meals = (s: number, e: number): number[] =>
    grid.mealKeys.map((_, m) => m).filter((m) => grid.may[s]![e]![m] && openable(s, m).length > 0);
  const openable = (s: number, m: number): { name: string; size: number; c: number; g: number }[] =>
    grid.mealClasses[m]!.flatMap((c) =>
      grid.classes[c]!.groups.flatMap((group, g) =>
        group.bestBy >= grid.slotDay[s]!
          ? [{ name: openName(s, c, g), size: grid.classes[c]!.size, c, g }]
          : [],
      ),
    );

  grid.slotKeys.forEach((_, s) => {
    for (const e of grid.slotEaters[s]!) {
      const own = meals(s, e).map((m) => eatName(s, e, m));
      row([...own.map((name): Term => [1, name]), [1, `v${s}_${e}`]], '=', 1);
      for (const name of [...own, `v${s}_${e}`]) whole.add(name);
      missing.push([grid.nothing[s]![e]!, `v${s}_${e}`]);
      levels[at.unfed]!.push([1, `v${s}_${e}`]);
      for (const m of meals(s, e)) {
        if (grid.dislike[e]![m]) levels[at.dislikes]!.push([1, eatName(s, e, m)]);
        missing.push([grid.thin[s]![e]![m]!, eatName(s, e, m)]);
      }
      const before = grid.before[s]![e]!;
      if (before === notBefore) continue;
      const level = grid.beforeKept ? at.moved : at.changes;
      besides[level]! += 1;
      if (before < 0) levels[level]!.push([-1, `v${s}_${e}`]);
      else if (meals(s, e).includes(before)) levels[level]!.push([-1, eatName(s, e, before)]);
    }
    const dishes: Term[] = [];
    grid.mealKeys.forEach((__, m) => {
      const at_ = grid.slotEaters[s]!.filter((e) => meals(s, e).includes(m));
      const opened = openable(s, m);
      if (at_.length === 0 || opened.length === 0) return;
      const [short, waste] = [`h${s}_${m}`, `w${s}_${m}`];
      const low = at_.map((e): Term => [grid.low[s]![e]![m]!, eatName(s, e, m)]);
      const high = at_.map((e): Term => [-grid.high[s]![e]![m]!, eatName(s, e, m)]);
      row([...low, [-1, short], ...opened.map((o): Term => [-o.size, o.name])], '<=', 0);
      row([...opened.map((o): Term => [o.size, o.name]), ...high, [-1, waste]], '<=', 0);
      row([[2, short], ...low.map(([n, name]): Term => [-n, name])], '<=', 0);
      for (const e of at_) row([[1, eatName(s, e, m)], ...opened.map((o): Term => [-1, o.name])], '<=', 0);
      for (const e of at_) row([[1, eatName(s, e, m)], [-1, `d${s}_${m}`]], '<=', 0); // prettier-ignore
      whole.add(`d${s}_${m}`);
      dishes.push([1, `d${s}_${m}`]);
      // What is missing beyond a quarter counts twice, in whole twentieths.
      const twice = `q${s}_${m}`;
      whole.add(twice);
      row([[4, short], ...low.map(([n, y]): Term => [-n, y]), [-4, twice]], '<=', 3);
      missing.push([grid.worth[m]!, short], [grid.worth[m]!, twice]);
      levels[at['exact waste']]!.push([1, waste]);
      for (const { name, size, c, g } of opened) {
        whole.add(name);
        levels[at.expiring]!.push([grid.classes[c]!.groups[g]!.expiringCost, name]);
        levels[at['oldest month first']]!.push([grid.classes[c]!.groups[g]!.monthCost, name]);
        levels[at['dry weight']]!.push([grid.classes[c]!.dryTenths, name]);
        // None is opened that could stay closed.
        whole.add(`b${name}`);
        row([[1, name], [-grid.classes[c]!.stock, `b${name}`]], '<=', 0); // prettier-ignore
        const most = opened.reduce((sum, o) => sum + o.size * grid.classes[o.c]!.stock, 0);
        row([...opened.map((o): Term => [o.size, o.name]), ...low.map(([n, y]): Term => [-n, y]), [most, `b${name}`]], '<=', most + size - 1); // prettier-ignore
      }
    });
    row([...dishes, [-1, `k${s}`]], '<=', 1);
    if (dishes.length > 0) levels[at.variety]!.push([1, `k${s}`]);
  });
  stockRows(grid, openable, row);
  eaterRows(grid, meals, eatName, levels, row);
  row([...missing, [-grid.shortStep, 'steps']], '<=', grid.shortStep - 1);
  if (missing.length > 0) levels[at['energy short']]!.push([1, 'steps']);
  whole.add('steps');
  row([...levels[at['exact waste']]!, [-20, 'servings']], '<=', grid.wasteAllowed);
  if (levels[at['exact waste']]!.length > 0) levels[at.waste]!.push([1, 'servings']);
  whole.add('servings');
  besides[at.expiring] = grid.expiring;

  return {
    besides,
    text(level, held) {
      const kept = held.map((value, k) =>
        levels[k]!.length > 0 ? ` held${k}: ${write(levels[k]!)} <= ${value - besides[k]! + 0.01}` : '',
      );
      const goal = levels[level]!.length > 0 ? write(levels[level]!) : '1 zero';
      const wishes = grid.wishes.map((_, w) => ` g${w} <= 1`);
      return [
        'Minimize',
        ` obj: ${goal}`,
        'Subject To',
        ...rows,
        ...kept.filter((line) => line !== ''),
        ' cz: 1 zero <= 0',
        'Bounds',
        ...wishes,
        ...[...whole].filter((name) => !/^[xq]|^servings$|^steps$/.test(name)).map((name) => ` ${name} <= 1`),
        'Generals',
        ...[...whole].map((name) => ` ${name}`),
        'End',
        '',
      ].join('\n');
    },
  };
}

/** Terms on lines of their own, for LP readers limit the length of a line. */
const write = (terms: readonly Term[]): string =>
  terms.map(([n, name]) => `${n < 0 ? '-' : '+'} ${Math.abs(n)} ${name}`).join('\n  ');

type Row = (terms: readonly Term[], relation: '<=' | '=' | '>=', right: number) => void;

function stockRows(
  grid: Grid,
  openable: (s: number, m: number) => { name: string; c: number; g: number }[],
  row: Row,
): void {
  grid.classes.forEach((cls, c) =>
    cls.groups.forEach((group, g) => {
      const names = grid.slotKeys.flatMap((_, s) =>
        openable(s, cls.meal).filter((o) => o.c === c && o.g === g && grid.slotEaters[s]!.length > 0),
      );
      row(
        names.map(({ name }): Term => [1, name]),
        '<=',
        group.count,
      );
    }),
  );
}

function eaterRows(
  grid: Grid,
  meals: (s: number, e: number) => number[],
  eatName: (s: number, e: number, m: number) => string,
  levels: Term[][],
  row: Row,
): void {
  levels[at['worst off']]!.push([1, 'u']);
  grid.eaterKeys.forEach((_, e) => {
    const own = grid.slotKeys.map((__, s) => s).filter((s) => grid.slotEaters[s]!.includes(e));
    const has = (s: number, m: number): boolean => own.includes(s) && meals(s, e).includes(m);
    row([...own.map((s): Term => [1, `v${s}_${e}`]), [-1, 'u']], '<=', 0);
    for (const w of grid.wishesOf[e]!) {
      const { meal, slot, weight } = grid.wishes[w]!;
      const where = own.filter((s) => (slot < 0 || s === slot) && has(s, meal));
      row([[1, `g${w}`], ...where.map((s): Term => [-1, eatName(s, e, meal)])], '<=', 0);
      levels[at.wishes]!.push([-weight, `g${w}`]);
    }
    for (const s of own) {
      levels[at.variety]!.push([1, `r${s}_${e}`]);
      const last = grid.earlier[s]![e]!.at(-1);
      if (last !== undefined) {
        levels[at.variety]!.push([1, `t${s}_${e}`]);
        for (const m of meals(s, e).filter((one) => has(last, one)))
          row([[1, eatName(s, e, m)], [1, eatName(last, e, m)], [-1, `t${s}_${e}`]], '<=', 1); // prettier-ignore
      }
      for (const i of grid.earlier[s]![e]!) {
        for (const m of meals(s, e)) {
          if (has(i, m))
            row(
              [
                [1, eatName(s, e, m)],
                [1, eatName(i, e, m)],
                [-1, `r${s}_${e}`],
              ],
              '<=',
              1,
            );
        }
      }
    }
    grid.mealKeys.forEach((__, m) => {
      const where = own.filter((s) => has(s, m));
      if (where.length <= grid.often) return;
      row([...where.map((s): Term => [1, eatName(s, e, m)]), [-1, `o${e}_${m}`]], '<=', grid.often);
      levels[at.variety]!.push([1, `o${e}_${m}`]);
    });
    for (let d = 0; d < grid.dayCount; d += 1) {
      const eaten = (per: Grid['sodium']): Term[] =>
        own
          .filter((s) => grid.slotDayPlace[s] === d)
          .flatMap((s) => meals(s, e).map((m): Term => [per[s]![e]![m]!, eatName(s, e, m)]))
          .filter(([n]) => n !== 0);
      if (grid.hardLimitMg[e]! < Infinity) row(eaten(grid.hardMg), '<=', grid.hardLimitMg[e]!);
      if (grid.limited[e]) {
        row([...eaten(grid.sodium), [-1, `a${e}_${d}`]], '<=', 1000);
        levels[at['sodium and energy']]!.push([1, `a${e}_${d}`]);
      }
      if (grid.energyHigh[e]![d]! === Infinity) continue;
      row([...eaten(grid.energy), [1, `b${e}_${d}`]], '>=', grid.energyLow[e]![d]!);
      row([...eaten(grid.energy), [-1, `b${e}_${d}`]], '<=', grid.energyHigh[e]![d]!);
      levels[at['sodium and energy']]!.push([1, `b${e}_${d}`]);
    }
  });
}

/**
 * Solves the big program level by level.
 * @returns the values of the first `levels` levels; shorter when a count ended a solve before its optimum
 * @throws Error when the program has no solution: every promise is kept by leaving variables out, so that is a bug
 */
export function solveBigModel(
  problem: PicksProblem,
  linear: Linear,
  limits: IntegerLimits,
  levels: number = levelNames.length,
): number[] {
  const model = makeBigModel(problem);
  const held: number[] = [];
  for (let level = 0; level < levels; level += 1) {
    const solution = linear.solveText(model.text(level, held), limits);
    if (solution.status === 'infeasible')
      throw new Error(`level ${level} of the big program has no solution`);
    if (solution.status !== 'optimal') break;
    held.push(Math.round(solution.value) + model.besides[level]! + 0);
  }
  return held;
}
