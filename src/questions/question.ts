import { command } from '#chat/command.ts';
import type { Asked, Command, Said, Takes } from '#chat/command.ts';
import type { House } from '#house/house.ts';

/** What a question about the records shows of itself; it has no slash of its own. */
interface Question<T extends Takes> {
  readonly name: string;
  /** What it tells, for a button: 'how heavy it is'. */
  readonly about: string;
  /** What somebody would type. */
  readonly asked: readonly [string, ...string[]];
  readonly takes: T;
  /** Looks and answers; it never records. The figure asked for comes first. */
  readonly answer: (asked: Asked<T>, house: House) => Said | string;
}

/** Defines a question: a request that people ask in a sentence and that only looks. */
export function question<T extends Takes>({ name, about, asked, takes, answer }: Question<T>): Command {
  return command<T, Said>({
    name,
    usage: asked[0],
    summary: about,
    examples: asked,
    takes,
    run: (found, house) => {
      const said = answer(found, house);
      return typeof said === 'string' ? { group: said } : said;
    },
    say: (said) => said,
  });
}
