import { createServer, type IncomingMessage, type ServerResponse } from 'node:http';
import type { AddressInfo } from 'node:net';
import { type Form, readForm } from './form.ts';
import { type Sent, asText, keysRefusal, refusalOf, textRefusal } from './rules.ts';

/** A chat as the platform knows it. */
export interface Chat {
  id: number;
  type: 'private' | 'group' | 'supergroup' | 'channel';
  title?: string;
  first_name?: string;
  is_forum?: true;
  /** Topics that are there; closed ones refuse messages. */
  topics?: Map<number, 'open' | 'closed'>;
  migratedTo?: number;
  /** Why nothing can be sent here: 'Forbidden: bot was kicked from the group chat'. */
  forbidden?: string;
}

export interface Call {
  readonly method: string;
  readonly payload: Form;
  readonly atMs: number;
}

/** What goes wrong with a call: instead of an answer, or after it was carried out. */
export type Fault =
  | { readonly answer: { status: number; description: string; parameters?: object } }
  | { readonly html: number }
  | { readonly cut: 'before' | 'after' }
  | { readonly delayMs: number };

type UpdateBody = Record<string, unknown>;

export interface Platform {
  readonly root: string;
  readonly token: string;
  readonly calls: Call[];
  /** What arrived in chats, in order. */
  readonly sent: Sent[];
  /** Called before every call; a fault it returns happens. */
  fault: (method: string, payload: Form) => Fault | undefined;
  /** At most this many messages a minute into one group; beyond it 429 with the seconds to wait. */
  limit: { perMinute: number; retryAfterS: number } | null;
  /** Adds an update and hands it out; `id` to send the same one again. */
  readonly update: (body: UpdateBody, id?: number) => number;
  /** Hands out an update once more though it was confirmed, before whatever is next. */
  readonly again: (body: UpdateBody, id: number) => void;
  /** Calls that were refused as they stood, with the words. */
  /** Files that people sent, by name. */
  readonly files: Map<string, Buffer>;
  /** Methods that a server of an older version does not know. */
  unknown: ReadonlySet<string>;
  /** Signs at people's messages, by chat and message. */
  readonly reactions: Map<string, string>;
  /** An older server knows no keys that copy a line. */
  knowsCopying: boolean;
  /** Messages at the top of chats, by chat. */
  readonly pinned: Map<number, Set<number>>;
  /** Whether the bot may pin. */
  mayPin: boolean;
  readonly refusals: { readonly method: string; readonly code: number; readonly why: string }[];
  /** Updates that were not confirmed by a later offset. */
  readonly unconfirmed: () => number[];
  readonly chat: (chat: Chat) => Chat;
  /** Forgets a message, as if somebody had deleted it. */
  readonly remove: (chatId: number, messageId: number) => void;
  /** A number for the next message of a chat. */
  readonly nextMessageId: (chatId: number) => number;
  readonly close: () => Promise<void>;
}

export const botUser = { id: 4711, is_bot: true, first_name: 'Trail', username: 'TrailTestBot' };

/** The platform's side of a bot on 127.0.0.1, as strict as the real one where that is known. */
export async function openPlatform(token = '4711:SECRET-token_of-tests'): Promise<Platform> {
  const chats = new Map<number, Chat>();
  const messages = new Map<number, { last: number; there: Set<number> }>();
  const presses = new Set<string>();
  let updates: { update_id: number; [key: string]: unknown }[] = [];
  const strays: { update_id: number; [key: string]: unknown }[] = [];
  let lastUpdateId = 1000;
  let poll: { give: () => void; cutOff: () => void } | undefined;
  const stamps = new Map<number, number[]>();

  const messagesOf = (chatId: number) => {
    const known = messages.get(chatId) ?? { last: 10, there: new Set<number>() };
    messages.set(chatId, known);
    return known;
  };

  const platform: Platform = {
    root: '',
    token,
    calls: [],
    sent: [],
    fault: () => undefined,
    limit: null,
    update(body, id = (lastUpdateId += 1)) {
      updates = [...updates.filter((u) => u.update_id !== id), { update_id: id, ...body }];
      const press = body['callback_query'] as { id?: string } | undefined;
      if (press?.id) presses.add(press.id);
      poll?.give();
      return id;
    },
    again: (body, id) => void strays.push({ update_id: id, ...body }),
    refusals: [],
    files: new Map(),
    unknown: new Set(),
    reactions: new Map(),
    knowsCopying: true,
    pinned: new Map(),
    mayPin: true,
    unconfirmed: () => updates.map((u) => u.update_id),
    chat(chat) {
      chats.set(chat.id, chat);
      return chat;
    },
    remove: (chatId, messageId) => void messagesOf(chatId).there.delete(messageId),
    nextMessageId(chatId) {
      const known = messagesOf(chatId);
      known.last += 1;
      known.there.add(known.last);
      return known.last;
    },
    async close() {
      poll?.cutOff();
      server.closeAllConnections();
      await new Promise((resolve) => server.close(resolve));
    },
  };

  const server = createServer((request, response) => void serve(request, response));

  // A connection that is dropped in the very moment it is used again would look like a fault.
  server.keepAliveTimeout = 120_000;

  async function serve(request: IncomingMessage, response: ServerResponse): Promise<void> {
    const [, bot, method = '', name = ''] = (request.url ?? '').split('/');
    if (bot === 'file' && method === `bot${token}`) {
      const bytes = platform.files.get(name);
      if (!bytes) return refuse(response, 404, 'Not Found');
      return void response.writeHead(200, { 'content-type': 'application/octet-stream' }).end(bytes);
    }
    const payload = await readForm(request);
    if (bot !== `bot${token}`) return refuse(response, 401, 'Unauthorized');
    platform.calls.push({ method, payload, atMs: Date.now() });
    const fault = platform.fault(method, payload);
    if (fault && 'delayMs' in fault) await new Promise((resolve) => setTimeout(resolve, fault.delayMs));
    if (fault && 'cut' in fault && fault.cut === 'before') return void request.socket.destroy();
    if (fault && 'html' in fault) {
      response
        .writeHead(fault.html, { 'content-type': 'text/html' })
        .end('<html><body>Bad Gateway</body></html>');
      return;
    }
    if (fault && 'answer' in fault) {
      return refuse(response, fault.answer.status, fault.answer.description, fault.answer.parameters);
    }
    if (method === 'getUpdates') return getUpdates(payload, response);
    const outcome = carryOut(method, payload);
    if (fault && 'cut' in fault) return void request.socket.destroy();
    if ('refused' in outcome) {
      platform.refusals.push({ method, code: outcome.code, why: outcome.refused });
      return refuse(response, outcome.code, outcome.refused, outcome.parameters);
    }
    reply(response, outcome.result);
  }

  function getUpdates(payload: Form, response: ServerResponse): void {
    const {
      offset = 0,
      timeout = 0,
      limit = 100,
    } = payload.fields as { offset?: number; timeout?: number; limit?: number };
    // Two pollers: the older one is cut off.
    poll?.cutOff();
    updates = updates.filter((u) => u.update_id >= offset);
    const give = () => {
      poll = undefined;
      clearTimeout(timer);
      reply(response, [...strays.splice(0), ...updates.slice(0, limit)].slice(0, limit));
    };
    const timer = setTimeout(() => poll && give(), timeout * 1000);
    poll = {
      give,
      cutOff: () => {
        poll = undefined;
        clearTimeout(timer);
        refuse(
          response,
          409,
          'Conflict: terminated by other getUpdates request; make sure that only one bot instance is running',
        );
      },
    };
    // Not on the socket, which serves many requests.
    response.once('close', () => {
      if (!response.writableEnded) {
        clearTimeout(timer);
        poll = undefined;
      }
    });
    if (updates.length > 0 || timeout === 0) give();
  }

  function carryOut(
    method: string,
    payload: Form,
  ): { result: unknown } | { refused: string; code: number; parameters?: object } {
    const { fields } = payload;
    if (platform.unknown.has(method)) return { code: 404, refused: 'Not Found: method not found' };
    if (method === 'getMe') {
      return {
        result: {
          ...botUser,
          can_join_groups: true,
          can_read_all_group_messages: false,
          supports_inline_queries: false,
        },
      };
    }
    if (method === 'answerCallbackQuery') {
      if (!presses.delete(String(fields['callback_query_id']))) {
        return {
          code: 400,
          refused: 'Bad Request: query is too old and response timeout expired or query ID is invalid',
        };
      }
      if (asText(fields['text']).length > 200) return { code: 400, refused: 'Bad Request: MESSAGE_TOO_LONG' };
      return { result: true };
    }
    if (method === 'getFile') {
      const bytes = platform.files.get(String(fields['file_id']));
      return bytes
        ? { result: { file_id: fields['file_id'], file_path: fields['file_id'], file_size: bytes.length } }
        : { code: 400, refused: 'Bad Request: invalid file_id' };
    }
    if (method === 'setMyCommands' || method === 'deleteWebhook') return { result: true };
    const chat = chats.get(Number(fields['chat_id']));
    if (!chat) return { code: 400, refused: 'Bad Request: chat not found' };
    if (chat.forbidden) return { code: 403, refused: chat.forbidden };
    if (chat.migratedTo !== undefined) {
      return {
        code: 400,
        refused: 'Bad Request: group chat was upgraded to a supergroup chat',
        parameters: { migrate_to_chat_id: chat.migratedTo },
      };
    }
    if (method === 'sendChatAction') return { result: true };
    const known = messagesOf(chat.id);
    if (method === 'editMessageReplyMarkup') {
      const id = Number(fields['message_id']);
      const target = platform.sent.find((m) => m.chatId === chat.id && m.messageId === id);
      if (!target || !known.there.has(id))
        return { code: 400, refused: 'Bad Request: message to edit not found' };
      const keys = keysOf(fields['reply_markup']);
      if (JSON.stringify(target.keys) === JSON.stringify(keys))
        return { code: 400, refused: 'Bad Request: message is not modified' };
      target.keys = keys;
      return { result: true };
    }
    const changed = onMessage(method, payload, chat, known.there);
    if (changed) return changed;
    if (!/^send(Message|Photo|Document)$/.test(method))
      return { code: 404, refused: 'Not Found: method not found' };
    const refusal = refusalOf(method, payload, chat, known.there, platform.knowsCopying);
    if (refusal) return { code: 400, refused: refusal };
    const slow = tooMany(chat);
    if (slow !== undefined)
      return {
        code: 429,
        refused: `Too Many Requests: retry after ${slow}`,
        parameters: { retry_after: slow },
      };
    const messageId = platform.nextMessageId(chat.id);
    platform.sent.push({
      chatId: chat.id,
      messageId,
      method,
      text: asText(fields['text'] ?? fields['caption']).trim(),
      entities: (fields['entities'] ?? []) as Sent['entities'],
      keys: keysOf(fields['reply_markup']),
      asksOne: (fields['reply_markup'] as { force_reply?: boolean } | undefined)?.force_reply === true,
      edits: 0,
      topic: (fields['message_thread_id'] as number | undefined) ?? null,
      replyTo: (fields['reply_parameters'] as { message_id: number } | undefined)?.message_id ?? null,
      silent: fields['disable_notification'] === true || fields['disable_notification'] === 'true',
      file: Object.values(payload.files)[0] ?? null,
      atMs: Date.now(),
    });
    return { result: { message_id: messageId, date: 0, chat: { id: chat.id, type: chat.type } } };
  }

  /** Calls about a message that is there; undefined for any other call. */
  function onMessage(
    method: string,
    { fields }: Form,
    chat: Chat,
    there: ReadonlySet<number>,
  ): { result: unknown } | { refused: string; code: number; parameters?: object } | undefined {
    const id = Number(fields['message_id']);
    if (method === 'setMessageReaction') {
      const signs = fields['reaction'] as { type: string; emoji: string }[];
      if (!there.has(id)) return { code: 400, refused: 'Bad Request: message to react not found' };
      if (signs.some(({ emoji }) => !['👌', '👍', '🔥'].includes(emoji)))
        return { code: 400, refused: 'Bad Request: REACTION_INVALID' };
      platform.reactions.set(`${chat.id} ${id}`, signs[0]?.emoji ?? '');
      return { result: true };
    }
    if (method === 'pinChatMessage' || method === 'unpinChatMessage') {
      if (!platform.mayPin)
        return { code: 400, refused: 'Bad Request: not enough rights to manage pinned messages in the chat' };
      const pinned = platform.pinned.get(chat.id) ?? new Set();
      platform.pinned.set(chat.id, pinned);
      if (!there.has(id)) return { code: 400, refused: 'Bad Request: message to pin not found' };
      if (method === 'pinChatMessage' && fields['disable_notification'] !== true)
        return { code: 400, refused: 'Bad Request: this bot pins without a sound' };
      if (method === 'pinChatMessage') pinned.add(id);
      else pinned.delete(id);
      return { result: true };
    }
    if (method !== 'editMessageText') return undefined;
    const target = platform.sent.findLast((m) => m.chatId === chat.id && m.messageId === id);
    if (!target || !there.has(id)) return { code: 400, refused: 'Bad Request: message to edit not found' };
    if (target.method !== 'sendMessage')
      return { code: 400, refused: 'Bad Request: there is no text in the message to edit' };
    const refusal = textRefusal(fields) ?? keysRefusal(fields['reply_markup'], platform.knowsCopying);
    if (refusal) return { code: 400, refused: refusal };
    const slow = tooMany(chat);
    if (slow !== undefined)
      return {
        code: 429,
        refused: `Too Many Requests: retry after ${slow}`,
        parameters: { retry_after: slow },
      };
    const now = {
      text: asText(fields['text']).trim(),
      entities: (fields['entities'] ?? []) as Sent['entities'],
      keys: keysOf(fields['reply_markup']),
    };
    const { text, entities, keys } = target;
    if (JSON.stringify(now) === JSON.stringify({ text, entities, keys }))
      return {
        code: 400,
        refused:
          'Bad Request: message is not modified: specified new message content and reply markup are exactly the same as a current content and reply markup of the message',
      };
    Object.assign(target, now, { edits: target.edits + 1 });
    return { result: { message_id: id, date: 0, chat: { id: chat.id, type: chat.type } } };
  }

  /** Limits only what would otherwise arrive, as the real one does. */
  function tooMany(chat: Chat): number | undefined {
    const { limit } = platform;
    if (!limit || chat.type === 'private') return undefined;
    const recent = (stamps.get(chat.id) ?? []).filter((atMs) => atMs > Date.now() - 60_000);
    if (recent.length >= limit.perMinute) return limit.retryAfterS;
    stamps.set(chat.id, [...recent, Date.now()]);
    return undefined;
  }

  await new Promise<void>((resolve) => server.listen(0, '127.0.0.1', resolve));
  return Object.assign(platform, { root: `http://127.0.0.1:${(server.address() as AddressInfo).port}` });
}

/** An edit that names no keyboard takes the one that was there away. */
const keysOf = (markup: unknown): Sent['keys'] =>
  (markup as { inline_keyboard?: Sent['keys'] } | undefined)?.inline_keyboard ?? [];

function reply(response: ServerResponse, result: unknown): void {
  if (!response.destroyed)
    response.writeHead(200, { 'content-type': 'application/json' }).end(JSON.stringify({ ok: true, result }));
}

function refuse(response: ServerResponse, code: number, description: string, parameters?: object): void {
  if (response.destroyed) return;
  response
    .writeHead(code, { 'content-type': 'application/json' })
    .end(JSON.stringify({ ok: false, error_code: code, description, ...(parameters ? { parameters } : {}) }));
}
