/** What the proofs need of a linear and integer programming package; the thread brings one along. */
export interface Linear {
  /** An empty program that minimises, with these rows. */
  open(rows: readonly LinearRow[]): LinearProgram;
  /** One program written out as LP text; columns by name. */
  solveText(text: string, limits: IntegerLimits): TextSolution;
}

export interface LinearRow {
  readonly lower: number;
  readonly upper: number;
}

export interface LinearColumn extends LinearRow {
  readonly cost: number;
  readonly rows: readonly number[];
  readonly values: readonly number[];
}

export interface IntegerLimits {
  /** Branching nodes, a count. */
  readonly nodes: number;
  /** Safety net only. */
  readonly seconds: number;
}

export interface LinearSolution {
  readonly status: 'optimal' | 'stopped' | 'infeasible';
  readonly value: number;
  readonly columns: Float64Array;
  /** Change of the value by a unit more on the row's right side. */
  readonly duals: Float64Array;
}

export interface IntegerSolution {
  readonly status: 'optimal' | 'stopped' | 'infeasible';
  readonly value: number;
  readonly bound: number;
  /** Empty when no solution was found. */
  readonly columns: Float64Array;
}

export interface TextSolution {
  readonly status: 'optimal' | 'stopped' | 'infeasible';
  readonly value: number;
  readonly bound: number;
  readonly columns: ReadonlyMap<string, number>;
}

export interface LinearProgram {
  add(columns: readonly LinearColumn[]): void;
  setCosts(costs: readonly number[]): void;
  setRow(row: number, lower: number, upper: number): void;
  setColumn(column: number, lower: number, upper: number): void;
  solve(seconds: number): LinearSolution;
  /** Any solution of the same program with these columns whole; `start` is a solution to begin with, one value a column. */
  solveWhole(
    whole: readonly number[],
    start: readonly number[] | undefined,
    limits: IntegerLimits,
  ): IntegerSolution;
  dispose(): void;
}
