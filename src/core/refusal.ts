/**
 * A "no" that is meant to be read by the person who asked. Whatever else is thrown is a bug.
 * The transaction around the request rolls back; only the sentence is kept and sent.
 */
export class Refusal extends Error {
  readonly code: string;

  /**
   * @param code stable short name of the reason, for tests and for the log
   * @param sentence what was understood and what was not, with the figures
   */
  constructor(code: string, sentence: string) {
    super(sentence);
    this.name = 'Refusal';
    this.code = code;
  }
}

/** A doubt rather than a "no": the person may say that it is meant as it stands. */
export class Doubt extends Refusal {}
