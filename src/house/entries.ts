import type { House } from './house.ts';

/** The last that the journal knows of a pouch or batch that is about such a deed. */
export function entryOf(house: House, codes: readonly string[], verb: string | undefined) {
  return house.journal
    .latest(2000)
    .filter((entry) => entry.undoneBy === null)
    .find(
      ({ did: text }) =>
        codes.some((code) => mentions(text, code)) && (verb === undefined || text.includes(verb)),
    );
}

/** Whether an entry names a code, alone or within a row such as 'B1-2 to B1-5'. */
function mentions(text: string, code: string): boolean {
  const [batch, no] = code.slice(1).split('-');
  if (no === undefined) return new RegExp(`\\b[BMS]${batch}(?![\\d])`).test(text);
  for (const m of text.matchAll(/\b[BMS](\d+)-(\d+)(?: to (?:[BMS]\d+-)?(\d+))?/g)) {
    if (m[1] !== batch) continue;
    if (Number(no) >= Number(m[2]) && Number(no) <= Number(m[3] ?? m[2])) return true;
  }
  return false;
}
