/** A load's time where nobody has recorded three yet, h. Common practice, no source. */
export const usualLoadHours = 24;
const fewestLoads = 3;

/**
 * How long a load takes in this house: the mean from loading to the weighing that showed it dry, once three are
 * recorded; a day until then.
 * @param dried loads that were shown to be dry, ms
 * @returns h, and how many loads it rests on
 */
export function loadHours(dried: readonly { readonly loadedAtMs: number; readonly driedAtMs: number }[]): {
  readonly hours: number;
  readonly recorded: number;
} {
  const hours = dried.map(({ loadedAtMs, driedAtMs }) => (driedAtMs - loadedAtMs) / 3_600_000);
  if (hours.length < fewestLoads) return { hours: usualLoadHours, recorded: hours.length };
  return { hours: hours.reduce((sum, h) => sum + h, 0) / hours.length, recorded: hours.length };
}
