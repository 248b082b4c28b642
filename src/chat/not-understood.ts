import type { Choice, Reply } from '#core/talk.ts';
import type { Addressed, Chosen } from './chosen.ts';
import type { Answerer } from './answerer.ts';

export const asButton = ({ command, words }: Chosen): Choice => {
  const does = command.summary.split(/[,:;(]/)[0]!.trim();
  return {
    label: (words && !words.startsWith(':') ? `${does}: ${words}` : does).slice(0, 60),
    request: `/${command.name} ${words}`.trim(),
  };
};

/** What came nearest, and where to begin. */
export function notUnderstood(
  { commands }: Answerer,
  { typed, near, of, things }: Extract<Addressed, { is: 'unknown' }>,
): Reply {
  if (typed.startsWith('/')) {
    const meant = near ? ` Did you mean /${near.name}?` : '';
    return {
      group: `I know no request "${typed}".${meant}\nFor example: ${(near ?? commands[0])!.examples[0]}\n/help lists them all.`,
    };
  }
  const help: Choice = { label: 'What I can do', request: '/firstwords' };
  return {
    asks: true,
    group: `I did not understand that, and nothing is recorded.${of.length > 0 ? ' Is it one of these?' : ''}${near ? ` Did you mean /${near.name}?` : ''}`,
    // At most three: what it may mean, what it names, and where to begin.
    buttons: [...of.map(asButton), ...things].slice(0, 2).concat(help),
  };
}
