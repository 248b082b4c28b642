import type { PouchCode } from './parts.ts';

/**
 * What a label's two-dimensional code carries behind the bot's link: 'h3_B4-2' is pouch B4-2 of household 3. Every
 * household has a B4-2, and another household's card would name the wrong allergens.
 * @param household the household's number
 * @returns 1 to 64 of A-Z a-z 0-9 _ -, as the platform's deep links allow
 */
export function scanPayload(household: number, { batch, no }: PouchCode): string {
  return `h${household}_B${batch}-${no}`;
}

/** The pouch and the household that a deep link's payload names; undefined when it is none of ours. */
export function readScanPayload(payload: string): { household: number; code: PouchCode } | undefined {
  const found = /^h([1-9]\d{0,14})_B([1-9]\d{0,8})-([1-9]\d{0,8})$/i.exec(payload.trim());
  if (!found) return undefined;
  const [household, batch, no] = found.slice(1).map(Number) as [number, number, number];
  return { household, code: { batch, no } };
}
