/**
 * A "no" that is meant to be read by the person who asked. Whatever else is thrown is a bug.
 * The transaction around the request rolls back; only the sentence is kept and sent.
 */
export class Refusal extends Error {
  readonly code: string;
  /** Words that, put to the request, make it one that can be carried out; each a tap, with what it then says. */
  readonly ways: readonly { readonly label: string; readonly add: string }[];

  /**
   * @param code stable short name of the reason, for tests and for the log
   * @param sentence what was understood and what was not, with the figures
   */
  constructor(code: string, sentence: string, ways: Refusal['ways'] = []) {
    super(sentence);
    this.name = 'Refusal';
    this.code = code;
    this.ways = ways;
  }
}

/** Something is missing still: what the person says next may be it. */
export class Lacking extends Refusal {}

/** A doubt rather than a "no": the person may say that it is meant as it stands. */
export class Doubt extends Refusal {}
