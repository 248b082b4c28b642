import { Doubt, Refusal } from '#core/refusal.ts';
import type { Choice, Message, Reply } from '#core/talk.ts';
import { Ambiguous } from '#words/reading.ts';
import { isTurnedRound } from '#talk/hold.ts';
import type { Chosen } from './chosen.ts';
import type { Answerer } from './answerer.ts';
import { exampleFor, open, record, Repeated, waysOf } from './carry-out.ts';
import { shortened } from './beside.ts';

/** Thrown to take back what was carried out only to see what it would record. */
export class Rehearsed extends Error {
  readonly did: string;
  readonly reply: Reply | undefined;

  constructor(did: string, reply?: Reply) {
    super('rehearsed');
    this.did = did;
    this.reply = reply;
  }
}

export type Request = Pick<Chosen, 'command' | 'words'>;

/**
 * What a request would record, in the words of the journal: it is carried out and taken back at once.
 * @returns undefined for a request whose sums are long, or that records nothing
 * @throws Refusal, Ambiguous as the request itself
 */
export const rehearse = (
  answerer: Answerer,
  message: Message,
  household: number,
  request: Request,
): string | undefined => rehearsed(answerer, message, household, request)?.did;

/** The same with the answer that it would give. */
function rehearsed(
  answerer: Answerer,
  message: Message,
  household: number,
  { command, words }: Request,
): Rehearsed | undefined {
  if (command.planned) return undefined;
  try {
    answerer.stores.together(() => {
      const opened = open(answerer, message, household, command, words);
      const { reply } = record(answerer, message, command, opened, () =>
        command.answer(opened.asked, opened.house),
      );
      throw new Rehearsed(reply.did ?? '', reply);
    });
  } catch (error) {
    if (error instanceof Rehearsed) return error.did === '' ? undefined : error;
    throw error;
  }
  return undefined;
}

function buttonFor({ command, words }: Request, did: string | undefined): Choice {
  const label = did === undefined ? `/${command.name} ${words}`.trim() : `Record: ${did}`;
  return {
    label: shortened(label),
    request: `/${command.name} ${words}`.trim(),
  };
}

const saysNo = (error: unknown): boolean =>
  error instanceof Refusal || error instanceof Ambiguous || error instanceof Repeated;

/** A button that records what was asked about or is said besides; none where it could not be recorded. */
export function offer(
  answerer: Answerer,
  message: Message,
  household: number,
  one: Request,
  evenDoubted = false,
): Choice | undefined {
  try {
    const did = rehearse(answerer, message, household, one);
    return did === undefined ? undefined : buttonFor(one, did);
  } catch (error) {
    // What is only doubted can be tried, and asks again.
    if (error instanceof Doubt && evenDoubted) return buttonFor(one, undefined);
    if (saysNo(error)) return undefined;
    throw error;
  }
}

/** What a request would record; undefined where it could not. */
function wouldRecord(
  answerer: Answerer,
  message: Message,
  household: number,
  one: Request,
): string | undefined {
  try {
    return rehearse(answerer, message, household, one);
  } catch (error) {
    if (saysNo(error)) return undefined;
    throw error;
  }
}

/** Why nothing was recorded, what it would be with all that is told beside it, and the one tap that records it. */
export function proposal(
  answerer: Answerer,
  message: Message,
  household: number,
  one: Chosen,
  also: readonly Chosen[] = [],
): Reply {
  const { holds, command, words } = one;
  const left = [one, ...also].flatMap((told) => told.left);
  const notUnderstood =
    left.length === 0 ? '' : `I did not understand ${left.map((words) => `"${words}"`).join(' and ')}.`;
  const why = [holds === null ? '' : `${holds[0]!.toUpperCase()}${holds.slice(1)}.`, notUnderstood]
    .filter((line) => line !== '')
    .join(' ');
  // What is said not to be so is not one tap away.
  if (isTurnedRound(holds)) return { group: `Nothing is recorded. ${why}` };
  let tried: Rehearsed | undefined;
  try {
    tried = rehearsed(answerer, message, household, one);
  } catch (error) {
    // 'The two smaller ones': which they are was said, and not understood.
    if (
      error instanceof Ambiguous &&
      left.some((typed) => /\b(?:small|big|large|light|heav)\p{L}*/iu.test(typed))
    )
      return {
        asks: true,
        group:
          `${error.question.replace(' The oldest are these; else name their codes.', '')} ${why} Name their codes.`.trim(),
      };
    if (error instanceof Ambiguous)
      return {
        asks: true,
        group: `${error.question} ${why}`.trim(),
        buttons: error.options.map(({ label, request }) => ({
          label,
          request: `/${command.name} ${request}`,
        })),
      };
    if (!(error instanceof Refusal)) throw error;
    const because = error.message.replace(' Nothing was recorded.', '');
    const said = `Nothing is recorded. ${why} ${because}`.replace(/ +/g, ' ');
    // What is right already needs no example of putting it right.
    if (error.code === 'in-stock') return { group: because };
    if (error.ways.length > 0) return { asks: true, group: said, buttons: waysOf(error, command, one.words) };
    return { group: `${said}\nFor example: ${exampleFor(answerer, message, household, command)}` };
  }
  const figures = words.match(/\d{2,}/gu) ?? [];
  const isSum =
    tried !== undefined &&
    ['batch', 'weigh', 'seal'].includes(command.name) &&
    figures.some((figure) => !tried?.did.includes(figure));
  const did = tried && isSum ? `${tried.did} (${words})` : tried?.did;
  const shown = command.name === 'recipe' ? preview(tried?.reply) : '';
  const beside = also.flatMap((told) => {
    const would = wouldRecord(answerer, message, household, told);
    return would === undefined ? [] : [{ did: would, request: `/${told.command.name} ${told.words}` }];
  });
  if (did !== undefined && beside.length > 0)
    return {
      asks: true,
      group: [
        `Nothing is recorded yet. ${why}`,
        'If it is meant:',
        did,
        ...beside.map((told) => told.did),
      ].join('\n'),
      buttons: [
        {
          label: `Record all ${beside.length + 1}`,
          request: [`/${command.name} ${words}`, ...beside.map(({ request }) => request)].join('\n'),
        },
      ],
    };
  return {
    asks: true,
    group: `Nothing is recorded yet. ${why}${did === undefined ? '' : `\nIf it is meant: ${did}.`}${shown}`,
    buttons: [buttonFor(one, did)],
  };
}

/** Lines of a recipe that is shown before it is kept. Chosen: what a phone shows at once. */
const mostShown = 12;

/** A recipe as it would be kept, line by line. */
function preview(reply: Reply | undefined): string {
  if (!reply) return '';
  const lines = [...reply.group.split('\n').slice(1), ...(reply.why ?? [])];
  return `\n${lines.slice(0, mostShown).join('\n')}`;
}
