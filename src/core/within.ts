import { Refusal } from './refusal.ts';

/** A figure inside a refusal: short enough to read, never so short that it misleads. */
export function figure(value: number): string {
  if (!Number.isFinite(value)) return 'no number';
  return String(Math.abs(value) >= 1000 ? Math.round(value) : Number(value.toPrecision(4)));
}

/**
 * Refuses what is not above a limit, or no number at all.
 * @param code the refusal's code
 * @param what the figure's name as a person says it: 'The dry weight'
 * @returns the value, unchanged
 * @throws Refusal with the given code
 */
export function above(code: string, what: string, value: number, low: number, unit: string): number {
  if (Number.isFinite(value) && value > low) return value;
  throw new Refusal(
    code,
    `${what} has to be more than ${figure(low)}${gap(unit)}; it was ${said(value, unit)}.`,
  );
}

/**
 * Refuses what lies outside two limits, both allowed, or is no number at all.
 * @param code the refusal's code
 * @param what the figure's name as a person says it: 'The altitude'
 * @returns the value, unchanged
 * @throws Refusal with the given code
 */
export function between(
  code: string,
  what: string,
  value: number,
  low: number,
  high: number,
  unit: string,
): number {
  if (Number.isFinite(value) && value >= low && value <= high) return value;
  const limits = Number.isFinite(high)
    ? `between ${figure(low)} and ${figure(high)}${gap(unit)}`
    : `${figure(low)}${gap(unit)} or more`;
  throw new Refusal(code, `${what} has to be ${limits}; it was ${said(value, unit)}.`);
}

function said(value: number, unit: string): string {
  return Number.isFinite(value) ? figure(value) + gap(unit) : 'no number';
}

function gap(unit: string): string {
  return unit === '' ? '' : ` ${unit}`;
}
