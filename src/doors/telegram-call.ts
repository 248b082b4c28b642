import { type Api, GrammyError, InputFile } from 'grammy';
import type { Outgoing } from '#core/talk.ts';
import type { Key, Part } from './telegram-draw.ts';
import { failureOf } from './telegram-refused.ts';

/** The library's own type of what the runtime has built in. */
export type Signal = NonNullable<Parameters<Api['raw']['sendMessage']>[1]>;

type TextPart = Extract<Part, { is: 'text' }>;

const markup = (keys: readonly (readonly Key[])[]) => ({
  reply_markup: { inline_keyboard: keys.map((row) => [...row]) },
});

/** What is missing is typed as an answer, which is heard in every group; it opens at whoever asked alone. */
const toBeAnswered = { reply_markup: { force_reply: true, selective: true } } as const;

const worded = ({ text, entities }: TextPart) => ({
  text,
  link_preview_options: { is_disabled: true },
  ...(entities.length > 0 ? { entities: [...entities] } : {}),
});

/** Whether an answer is to be heard: what nobody asked for and receipts are not, what somebody must do now is. */
const sounds = ({ reply, replyToKey }: Outgoing): boolean =>
  reply.sounds === true || (replyToKey !== null && reply.did === undefined);

/**
 * One call for one part, with what every message of this bot carries.
 * @returns the message's number
 */
export async function sendPart(
  api: Api,
  answer: Outgoing,
  part: Part,
  isFirst: boolean,
  signal: Signal,
): Promise<string> {
  const { chatKey, topicKey, replyToKey } = answer;
  const isReply = isFirst && replyToKey !== null && /^[1-9]\d*$/.test(replyToKey);
  const common = {
    chat_id: Number(chatKey),
    ...(topicKey === null ? {} : { message_thread_id: Number(topicKey) }),
    ...(isReply
      ? { reply_parameters: { message_id: Number(replyToKey), allow_sending_without_reply: true as const } }
      : {}),
    // Sound once for each answer at most.
    ...(isFirst && sounds(answer) ? {} : { disable_notification: true as const }),
  };
  if (part.is === 'text') {
    const sent = await api.raw.sendMessage(
      {
        ...common,
        ...worded(part),
        ...(part.keys.length > 0 ? markup(part.keys) : answer.reply.awaits ? toBeAnswered : {}),
      },
      signal,
    );
    return String(sent.message_id);
  }
  const file = () => new InputFile(part.bytes, part.name);
  const captioned = { ...common, ...(part.caption === '' ? {} : { caption: part.caption }) };
  const asDocument = async () => {
    const document = { ...captioned, document: file(), disable_content_type_detection: true };
    return String((await api.raw.sendDocument(document, signal)).message_id);
  };
  if (part.is === 'document') return asDocument();
  try {
    return String((await api.raw.sendPhoto({ ...captioned, photo: file() }, signal)).message_id);
  } catch (error) {
    // A picture that is not taken as a picture is taken as a file.
    if (!(error instanceof GrammyError) || error.error_code !== 400 || failureOf(error).is !== 'refused')
      throw error;
    return asDocument();
  }
}

export type Edited = 'done' | 'gone';

/**
 * Puts a text in the place of an earlier one. That it reads so already is as good as done.
 * @returns 'gone' where that message cannot be changed any more
 */
export async function editText(
  api: Api,
  { chatKey, messageKey }: { readonly chatKey: string; readonly messageKey: string },
  part: TextPart,
  signal: Signal,
): Promise<Edited> {
  const where = { chat_id: Number(chatKey), message_id: Number(messageKey) };
  try {
    // Without its buttons said anew a message would lose them.
    await api.raw.editMessageText({ ...where, ...worded(part), ...markup(part.keys) }, signal);
    return 'done';
  } catch (error) {
    const failure = failureOf(error);
    if (failure.is !== 'refused') throw error;
    if (/not modified/i.test(failure.why)) return 'done';
    if (/to edit not found|can't be edited|MESSAGE_ID_INVALID|identifier is not specified/i.test(failure.why))
      return 'gone';
    throw error;
  }
}

/** A sign at the message that asked. @returns whether the platform and the group take such signs */
export async function react(api: Api, { chatKey, replyToKey }: Outgoing, signal: Signal): Promise<boolean> {
  if (replyToKey === null || !/^[1-9]\d*$/.test(replyToKey)) return false;
  try {
    await api.raw.setMessageReaction(
      {
        chat_id: Number(chatKey),
        message_id: Number(replyToKey),
        reaction: [{ type: 'emoji', emoji: '👌' }],
      },
      signal,
    );
    return true;
  } catch (error) {
    if (error instanceof GrammyError && (error.error_code === 400 || error.error_code === 404)) return false;
    throw error;
  }
}
