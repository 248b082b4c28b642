/** What parts of the request were found, by the names under which it takes them; parts not named here are not there. */
export type Parts = Readonly<Record<string, unknown>>;

/**
 * A typed request, the request it makes, the parts found in it, and what the answer must say was assumed or left.
 * Witness of every row: the plain meaning of its words, by hand; of units, their legal definitions, given below.
 */
export type RequestCase = readonly [typed: string, command: string, parts: Parts, remarks?: RegExp];

/** Exact by definition: international pound and foot, 1959 (NIST SP 811, appendix B.8); US gallon 231 in³. */
export const lb = 453.59237;
export const oz = lb / 16;
export const ft = 0.3048;
export const usCup = 3785.411784 / 16;

/** A pouch's code. */
export const code = (batch: number, no: number) => ({ batch, no });

/** The moment that a day and a clock time of the season's house name, in UTC. */
export const at = (iso: string) => Date.parse(`${iso}:00.000Z`);
