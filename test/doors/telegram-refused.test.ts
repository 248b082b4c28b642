// Witness: codes, texts and parameters as in the Bot API reference (ResponseParameters) and the source of the
// official server; that errors of the library hold the token was tried with grammY 1.46.
import { inspect } from 'node:util';
import { GrammyError, HttpError } from 'grammy';
import { expect, test } from 'vitest';
import { failureOf, sayError, withoutToken } from '#doors/telegram-refused.ts';

const refused = (error_code: number, description: string, parameters = {}) =>
  new GrammyError('Call failed', { ok: false, error_code, description, parameters }, 'sendMessage', {
    text: 'secretword',
  });

test.each([
  [429, 'Too Many Requests: retry after 7', { retry_after: 7 }, { is: 'wait', afterMs: 7000 }],
  [429, 'Too Many Requests', {}, { is: 'wait', afterMs: 5000 }],
  [502, 'Bad Gateway', {}, { is: 'wait', afterMs: null }],
  [401, 'Unauthorized', {}, { is: 'wait', afterMs: null }],
  [403, 'Forbidden: bot was blocked by the user', {}, { is: 'unreachable' }],
  [403, 'in words that nobody knows yet', {}, { is: 'unreachable' }],
  [400, 'Bad Request: chat not found', {}, { is: 'unreachable' }],
  [400, 'Bad Request: not enough rights to send text messages to the chat', {}, { is: 'unreachable' }],
  [400, 'Bad Request: not enough rights to send photos to the chat', {}, { is: 'refused' }],
  [
    400,
    'Bad Request: group chat was upgraded to a supergroup chat',
    { migrate_to_chat_id: -1001 },
    { is: 'moved', to: '-1001' },
  ],
  [400, 'Bad Request: message thread not found', {}, { is: 'no-topic' }],
  [400, 'Bad Request: TOPIC_CLOSED', {}, { is: 'no-topic' }],
  [400, "Bad Request: can't parse entities", {}, { is: 'refused' }],
])('%i %s', (code, description, parameters, expected) => {
  expect(failureOf(refused(code, description, parameters))).toMatchObject(expected);
});

test('a connection that fails is tried again', () => {
  expect(failureOf(new HttpError('Network request failed', new Error('cut')))).toMatchObject({
    is: 'wait',
    afterMs: null,
  });
});

test('what is said of an error holds neither token nor text, however deep the error does', () => {
  const token = '4711:SECRET-token_of-tests';
  const inner = Object.assign(new Error(`request to http://x/bot${token}/sendMessage failed`), {
    code: 'ECONNRESET',
    type: 'system',
  });
  const errors = [
    refused(400, `odd: https://x/bot${token}/y`),
    new HttpError("Network request for 'sendMessage' failed!", inner),
    inner,
    Object.assign(new Error(`cannot store secretword`), { code: 'SQLITE_FULL' }),
    `secretword ${token}`,
    undefined,
  ];
  // They do hold them: the test would pass on anything otherwise.
  expect(inspect(errors, { depth: 9 })).toContain(token);
  expect(inspect(errors, { depth: 9 })).toContain('secretword');
  const lines: string[] = [];
  const log = withoutToken(token, (line) => lines.push(line));
  for (const error of errors) log(sayError(error));
  log(`raw ${token} and ${encodeURIComponent(token)} and https://x/bot1:other/getMe`);
  const said = lines.join('\n');
  expect(said).not.toContain('SECRET');
  expect(said).not.toContain('secretword');
  expect(said).not.toContain('1:other');
  expect(said).toContain('ECONNRESET');
  expect(said).toContain('SQLITE_FULL');
  expect(said).toContain('400');
});
