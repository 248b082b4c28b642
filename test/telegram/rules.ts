import type { Form, FormFile } from './form.ts';
import type { Chat } from './platform.ts';

export interface Sent {
  readonly chatId: number;
  readonly messageId: number;
  readonly method: string;
  text: string;
  entities: { type: string; offset: number; length: number }[];
  keys: { text: string; callback_data: string; copy_text?: { text: string } }[][];
  /** It asks the person it answers for a message of theirs. */
  readonly asksOne: boolean;
  /** How often it was changed. */
  edits: number;
  readonly topic: number | null;
  readonly replyTo: number | null;
  readonly silent: boolean;
  readonly file: FormFile | null;
  readonly atMs: number;
}

export const asText = (field: unknown): string => (typeof field === 'string' ? field : '');

/**
 * Why the platform would not take a message; undefined when it would. The limits are those of the Bot API
 * reference (sendMessage, sendPhoto, sendDocument, InlineKeyboardButton, ReplyParameters), the wording as far as
 * the official server's source shows it.
 */
export function refusalOf(
  method: string,
  { fields, files }: Form,
  chat: Chat,
  there: ReadonlySet<number>,
  knowsCopying: boolean,
): string | undefined {
  if ('parse_mode' in fields) return 'Bad Request: this bot must not use a parse_mode';
  return (
    (method === 'sendMessage' ? textRefusal(fields) : fileRefusal(method, fields, files)) ??
    topicRefusal(fields['message_thread_id'], chat) ??
    replyRefusal(fields['reply_parameters'], there) ??
    keysRefusal(fields['reply_markup'], knowsCopying)
  );
}

export function textRefusal(fields: Form['fields']): string | undefined {
  const { text } = fields;
  if (typeof text !== 'string' || text.trim() === '') return 'Bad Request: message text is empty';
  if (text.length > 4096) return 'Bad Request: message is too long';
  if (/\p{Cs}/u.test(text)) return 'Bad Request: strings must be encoded in UTF-8';
  if (JSON.stringify(fields['link_preview_options']) !== '{"is_disabled":true}')
    return 'Bad Request: previews are to be off';
  const entities = (fields['entities'] ?? []) as Sent['entities'];
  return entitiesRefusal(text, entities) ?? linkRefusal(text, entities);
}

/**
 * What the platform makes a link of by itself: commands, mentions, tags, addresses (TD, find_entities; the patterns
 * here are wider). It takes such a message; this bot must not send one.
 */
const links = /(?<![\w/])\/[a-z0-9_]+|(?<!\w)@\w+|(?<!\w)#\w+|\w+:\/\/|[\p{L}\p{N}-]+\.\p{L}{2,}/giu;

function linkRefusal(text: string, entities: Sent['entities']): string | undefined {
  const codes = entities.filter(({ type }) => type === 'code');
  for (const { 0: found, index } of text.matchAll(links))
    if (!codes.some(({ offset, length }) => offset <= index && index < offset + length))
      return `Bad Request: this bot must not link "${found}"`;
  return undefined;
}

function entitiesRefusal(text: string, entities: Sent['entities']): string | undefined {
  if (!Array.isArray(entities) || entities.length > 100) return 'Bad Request: too many entities';
  let end = 0;
  for (const { type, offset, length } of entities) {
    if (!['blockquote', 'expandable_blockquote', 'bold', 'code'].includes(type))
      return 'Bad Request: unsupported entity';
    if (!Number.isInteger(offset) || !Number.isInteger(length) || length < 1 || offset < 0)
      return 'Bad Request: bad entity';
    if (offset + length > text.length) return 'Bad Request: entity beyond the text';
    if (offset < end) return 'Bad Request: a quote in a quote';
    if ([offset, offset + length].some((at) => /[\uDC00-\uDFFF]/.test(text[at] ?? '')))
      return 'Bad Request: entity cuts a character';
    end = offset + length;
  }
  return undefined;
}

function fileRefusal(method: string, fields: Form['fields'], files: Form['files']): string | undefined {
  if (asText(fields['caption']).length > 1024) return 'Bad Request: message caption is too long';
  const file = files[method === 'sendPhoto' ? 'photo' : 'document'];
  if (!file || file.bytes.length === 0) return 'Bad Request: file must be non-empty';
  if (method === 'sendPhoto') {
    const isPng = file.bytes.toString('latin1', 1, 4) === 'PNG';
    const [width, height] = isPng ? [file.bytes.readUInt32BE(16), file.bytes.readUInt32BE(20)] : [0, 0];
    if (width + height > 10_000 || width < 1 || height < 1 || Math.max(width / height, height / width) > 20) {
      return 'Bad Request: PHOTO_INVALID_DIMENSIONS';
    }
  }
  return undefined;
}

function topicRefusal(topic: unknown, chat: Chat): string | undefined {
  if (topic === undefined) return undefined;
  const state = chat.topics?.get(Number(topic));
  if (state === undefined) return 'Bad Request: message thread not found';
  return state === 'closed' ? 'Bad Request: TOPIC_CLOSED' : undefined;
}

function replyRefusal(given: unknown, there: ReadonlySet<number>): string | undefined {
  if (given === undefined) return undefined;
  const { message_id: id, allow_sending_without_reply: may } = given as Record<string, unknown>;
  if (typeof id !== 'number' || id < 1) return 'Bad Request: message identifier is not specified';
  return there.has(id) || may === true ? undefined : 'Bad Request: message to be replied not found';
}

export function keysRefusal(markup: unknown, knowsCopying = true): string | undefined {
  if (markup === undefined) return undefined;
  const forced = markup as { force_reply?: boolean; selective?: boolean };
  // It opens at everybody unless selective.
  if (forced.force_reply) return forced.selective ? undefined : 'Bad Request: this bot asks one person alone';
  const rows = (markup as { inline_keyboard?: Sent['keys'] }).inline_keyboard;
  if (!rows || rows.flat().length > 100 || rows.some((row) => row.length > 8))
    return 'Bad Request: reply markup is too long';
  for (const { text, callback_data: data, copy_text: copied } of rows.flat()) {
    if (typeof text !== 'string' || text.trim() === '') return 'Bad Request: button text must be non-empty';
    if (copied) {
      if (!knowsCopying) return 'Bad Request: BUTTON_TYPE_INVALID';
      if (copied.text.length < 1 || copied.text.length > 256) return 'Bad Request: text to copy is too long';
      continue;
    }
    const bytes = Buffer.byteLength(asText(data));
    if (bytes < 1 || bytes > 64) return 'Bad Request: BUTTON_DATA_INVALID';
  }
  return undefined;
}
