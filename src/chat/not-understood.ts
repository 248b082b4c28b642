import type { Choice, Message, Reply } from '#core/talk.ts';
import type { Addressed, Chosen } from './chosen.ts';
import type { Answerer } from './answerer.ts';
import { offer } from './propose.ts';

const capital = (text: string): string => `${text[0]!.toUpperCase()}${text.slice(1)}`;

export const asButton = ({ command, words }: Chosen): Choice => {
  const does = command.summary.split(/[,:;(]/)[0]!.trim();
  return {
    label: (words && !words.startsWith(':')
      ? `${capital(does)}: ${words.replaceAll('"', '')}`
      : capital(does)
    ).slice(0, 60),
    request: `/${command.name} ${words}`.trim(),
  };
};

/** At most as many choices: more are no help on a phone. */
const mostChoices = 3;

/** What came nearest, each a tap away, or where to begin. */
export function notUnderstood(
  answerer: Answerer,
  message: Message,
  household: number,
  { typed, near, of, deeds, things }: Extract<Addressed, { is: 'unknown' }>,
): Reply {
  const { commands } = answerer;
  if (typed.startsWith('/')) {
    const meant = near ? ` Did you mean /${near.name}?` : '';
    const behind = message.text.trim().replace(/^\/\S*\s*/u, '');
    if (near && behind !== '')
      return {
        asks: true,
        group: `I know no request "${typed}".${meant}`,
        buttons: [{ label: `/${near.name} ${behind}`.slice(0, 60), request: `/${near.name} ${behind}` }],
      };
    return {
      group: `I know no request "${typed}".${meant}\nFor example: ${(near ?? commands[0])!.examples[0]}\n/help lists them all.`,
    };
  }
  // A deed is offered only if it could be recorded; the button says what would be.
  const meant = [
    ...deeds.flatMap((one) => offer(answerer, message, household, one) ?? []),
    // What stands against a reading stands against its button.
    ...of
      .filter(({ holds }) => holds === null)
      .flatMap((one) =>
        one.command.records ? (offer(answerer, message, household, one) ?? []) : [asButton(one)],
      ),
  ].filter(({ label }, i, all) => all.findIndex((other) => other.label === label) === i);
  const buttons = [...meant, ...things].slice(0, mostChoices);
  const help: Choice = { label: 'What I can do', request: '/firstwords' };
  const isNear = near === undefined ? '' : ` Did you mean /${near.name}?`;
  return meant.length > 0
    ? { asks: true, group: `Nothing is recorded yet. Is one of these meant?${isNear}`, buttons }
    : {
        asks: true,
        group: `I found no request in that; nothing is recorded.${isNear}`,
        buttons: buttons.length < mostChoices ? [...buttons, help] : buttons,
      };
}
