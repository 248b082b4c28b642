import { expect } from 'vitest';

/** A published figure, as printed, and how closely a sum has to meet it. */
export interface Published {
  readonly row: string;
  readonly published: number;
  /** Largest difference, in the figure's own unit. */
  readonly within?: number;
  /** Largest difference as a share of the figure. */
  readonly withinFraction?: number;
  /** How the figure is known: read in the source, from memory of it, common practice; worked by hand from such. */
  readonly witness: string;
}

/** Holds a sum against its published figure. Two exact figures may still differ in the last binary digit. */
export function near(actual: number, row: Published): void {
  const allowed = (row.within ?? Math.abs(row.published) * (row.withinFraction ?? 0)) + 1e-12;
  const words = `${row.row} (${row.witness}): ${actual} against ${row.published}, allowed ${allowed}`;
  expect(Math.abs(actual - row.published), words).toBeLessThanOrEqual(allowed);
}
