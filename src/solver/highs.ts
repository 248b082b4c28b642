import type { Highs, Model } from 'highs';
import type { IntegerLimits, Linear, LinearColumn, LinearProgram, LinearRow } from '#core/picks/linear.ts';

/**
 * Nothing but counts may end a solve differently from last time: one seed, no relative gap (the package has one thread).
 * A whole program is asked for any plan within its rows, so the first one found ends it.
 */
const steady = {
  output_flag: false,
  random_seed: 1,
  mip_rel_gap: 0,
  mip_abs_gap: 0.5,
  mip_allow_cut_separation_at_nodes: false,
} as const;

const optimal = 7;
const hopeless = new Set([8, 9, 10]);

/** Puts the loaded solver package behind the small interface that the proofs know. */
export function linearFrom(highs: Highs): Linear {
  const bound = (x: number): number =>
    x === Infinity ? highs.infinity : x === -Infinity ? -highs.infinity : x;

  /** The package takes finite limits only; a day stands for none. */
  const clock = (seconds: number): number => Math.max(0, Math.min(86400, seconds));

  const status = (model: Model): 'optimal' | 'stopped' | 'infeasible' => {
    const code = model.getModelStatus();
    return code === optimal ? 'optimal' : hopeless.has(code) ? 'infeasible' : 'stopped';
  };

  /** A solver that fails in its numbers proves nothing and finds nothing; the plan at hand is as good as before. */
  const ran = (model: Model): boolean => {
    try {
      model.run();
      return true;
    } catch {
      model.clearSolver();
      return false;
    }
  };
  const nothing = { status: 'stopped', value: NaN, bound: -Infinity, columns: new Float64Array() } as const;

  const open = (rows: readonly LinearRow[]): LinearProgram => {
    const model = highs.createModel();
    model.options.set(steady);
    for (const row of rows) model.addRow(bound(row.lower), bound(row.upper), { indices: [], values: [] });
    return {
      add(columns: readonly LinearColumn[]) {
        for (const c of columns) {
          model.addCol(c.cost, bound(c.lower), bound(c.upper), { indices: c.rows, values: c.values });
        }
      },
      setCosts: (costs) => void model.changeColsCost({ kind: 'range', from: 0, to: costs.length - 1 }, costs),
      setRow: (row, lower, upper) => void model.changeRowBounds(row, bound(lower), bound(upper)),
      setColumn: (column, lower, upper) => void model.changeColBounds(column, bound(lower), bound(upper)),
      solve(seconds) {
        model.options.set('time_limit', model.getRunTime() + clock(seconds));
        if (!ran(model)) return { ...nothing, duals: new Float64Array() };
        const { colValue, rowDual } = model.getSolution();
        return { status: status(model), value: model.getObjectiveValue(), columns: colValue, duals: rowDual };
      },
      solveWhole(whole, start, limits) {
        const integer = new Int32Array(whole.length).fill(1);
        model.changeColsIntegrality({ kind: 'set', indices: [...whole] }, integer);
        model.options.set({
          mip_max_nodes: limits.nodes,
          mip_max_improving_sols: 1,
          time_limit: model.getRunTime() + clock(limits.seconds),
        });
        if (start) model.setSolution({ colValue: [...start] });
        if (!ran(model)) {
          model.clearIntegrality();
          return nothing;
        }
        const found =
          Number.isFinite(model.getObjectiveValue()) && model.info.get('primal_solution_status') === 2;
        const result = {
          status: status(model),
          value: model.getObjectiveValue(),
          bound: Number(model.info.get('mip_dual_bound')),
          columns: found ? model.getSolution().colValue : new Float64Array(),
        };
        model.clearIntegrality();
        model.clearSolver();
        return result;
      },
      dispose: () => model.dispose(),
    };
  };

  const solveText = (text: string, limits: IntegerLimits): ReturnType<Linear['solveText']> =>
    highs.withModel({ format: 'lp', data: text }, (model) => {
      model.options.set({ ...steady, mip_max_nodes: limits.nodes, time_limit: clock(limits.seconds) });
      model.run();
      const { colValue } = model.getSolution();
      const columns = new Map<string, number>();
      colValue.forEach((value, i) => columns.set(model.getColName(i), value));
      return {
        status: status(model),
        value: model.getObjectiveValue(),
        bound: Number(model.info.get('mip_dual_bound')),
        columns,
      };
    });

  return { open, solveText };
}
