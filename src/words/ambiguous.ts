/** A request that can be read in several ways: each option is a whole request that can be read in one. */
export class Ambiguous extends Error {
  readonly question: string;
  readonly options: readonly { readonly label: string; readonly request: string }[];

  constructor(question: string, options: readonly { label: string; request: string }[]) {
    super(question);
    this.question = question;
    this.options = options;
  }
}
