import { createServer, type IncomingMessage, type ServerResponse } from 'node:http';
import type { AddressInfo } from 'node:net';

interface Update {
  readonly update_id: number;
  readonly message: { readonly chat: { readonly id: number } };
}

/** The platform's side on 127.0.0.1 with as little in it as can be, so that it is the bot that is measured. */
export async function openLoopback() {
  let updates: Update[] = [];
  let lastId = 0;
  let waitingPoll: (() => void) | undefined;
  let messageId = 1_000_000;
  const givenMs = new Map<number, number[]>();
  const tookMs: number[] = [];
  let answered = 0;

  const reply = (response: ServerResponse, result: unknown) =>
    void response
      .writeHead(200, { 'content-type': 'application/json' })
      .end(JSON.stringify({ ok: true, result }));

  async function serve(request: IncomingMessage, response: ServerResponse): Promise<void> {
    const method = (request.url ?? '').split('/')[2];
    let body = '';
    for await (const chunk of request) body += String(chunk);
    const payload = (body === '' ? {} : JSON.parse(body)) as {
      chat_id?: number;
      offset?: number;
      timeout?: number;
    };
    if (method === 'getMe') {
      return reply(response, { id: 4711, is_bot: true, first_name: 'Trail', username: 'TrailTestBot' });
    }
    if (method === 'getUpdates') {
      updates = updates.filter(({ update_id }) => update_id >= (payload.offset ?? 0));
      const give = () => {
        clearTimeout(timer);
        waitingPoll = undefined;
        reply(response, updates.slice(0, 100));
      };
      const timer = setTimeout(give, 1000 * (payload.timeout ?? 0));
      if (updates.length > 0 || !payload.timeout) return give();
      waitingPoll = give;
      return;
    }
    if (method === 'sendMessage') {
      const since = givenMs.get(payload.chat_id!)?.shift();
      if (since !== undefined) tookMs.push(performance.now() - since);
      answered += 1;
      messageId += 1;
      return reply(response, {
        message_id: messageId,
        date: 0,
        chat: { id: payload.chat_id, type: 'supergroup' },
      });
    }
    reply(response, true);
  }

  const server = createServer((request, response) => void serve(request, response));
  // A connection that is closed while the bot works is a fault of this side, and would be measured as the bot's.
  server.keepAliveTimeout = 0;
  await new Promise<void>((resolve) => server.listen(0, '127.0.0.1', resolve));
  return {
    root: `http://127.0.0.1:${(server.address() as AddressInfo).port}`,
    /** Makes messages for the bot; the clock of each starts now. */
    say(messages: readonly { chat: number; person: number; text: string }[]): void {
      const nowMs = performance.now();
      for (const { chat, person, text } of messages) {
        lastId += 1;
        updates.push({
          update_id: lastId,
          message: {
            message_id: lastId,
            date: Math.floor(Date.now() / 1000),
            chat: { id: chat, type: 'supergroup', title: 'Kitchen' },
            from: { id: person, is_bot: false, first_name: 'Ana' },
            text,
          },
        } as Update);
        const own = givenMs.get(chat);
        if (own) own.push(nowMs);
        else givenMs.set(chat, [nowMs]);
      }
      waitingPoll?.();
    },
    answered: () => answered,
    /** From each message to its answer, ms; empties the list. */
    times: () => tookMs.splice(0),
    async close(): Promise<void> {
      server.closeAllConnections();
      await new Promise((resolve) => server.close(resolve));
    },
  };
}
