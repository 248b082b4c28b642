import { GrammyError, HttpError } from 'grammy';
import { whereItBroke } from '#core/fault.ts';

/** What a failed call means for what was to be sent. */
export type Failure =
  /** Not now: the platform is busy, away, or the connection broke. */
  | { readonly is: 'wait'; readonly afterMs: number | null; readonly why: string }
  /** The group became a supergroup. */
  | { readonly is: 'moved'; readonly to: string; readonly why: string }
  /** The topic is closed or gone. */
  | { readonly is: 'no-topic'; readonly why: string }
  /** Nothing can be sent to this chat. */
  | { readonly is: 'unreachable'; readonly why: string }
  /** This very message is not taken. */
  | { readonly is: 'refused'; readonly why: string };

const unreachable =
  /chat not found|user not found|PEER_ID_INVALID|deactivated|blocked by|kicked|not a member|chat was deleted|can't initiate/i;
const muted = /not enough rights to send text|have no rights to send|CHAT_WRITE_FORBIDDEN/i;

/** Sorts an error of a sending call. The code counts first; descriptions may change and are matched loosely. */
export function failureOf(error: unknown): Failure {
  const why = sayError(error);
  if (!(error instanceof GrammyError)) return { is: 'wait', afterMs: null, why };
  const { error_code: code, description, parameters } = error;
  if (parameters.migrate_to_chat_id !== undefined)
    return { is: 'moved', to: String(parameters.migrate_to_chat_id), why };
  if (code === 429) return { is: 'wait', afterMs: 1000 * (parameters.retry_after ?? 5), why };
  // Without the right to speak for this bot nothing is lost by waiting: the polling ends the process.
  if (code >= 500 || code === 401 || code === 404 || code === 409) return { is: 'wait', afterMs: null, why };
  if (code === 403 || unreachable.test(description) || muted.test(description))
    return { is: 'unreachable', why };
  if (/thread not found|TOPIC_(CLOSED|DELETED)|topic (is )?closed/i.test(description))
    return { is: 'no-topic', why };
  return { is: 'refused', why };
}

/**
 * An error in a few words for the log. Only chosen fields: the errors themselves hold the bot's token (in the
 * address of the call) and the text that was sent.
 */
export function sayError(error: unknown): string {
  if (error instanceof GrammyError) {
    return `${error.method}: ${error.error_code} ${error.description.slice(0, 120)}`;
  }
  if (error instanceof HttpError) {
    const inner = error.error as { code?: unknown; type?: unknown } | null | undefined;
    const code = [inner?.code, inner?.type].find((field) => typeof field === 'string');
    return `${error.message}${typeof code === 'string' ? ` (${code})` : ''}`;
  }
  return whereItBroke(error).split('\n').slice(0, 7).join('\n');
}

/** A log that never shows the token, whatever the line was made from. */
export function withoutToken(token: string, log: (line: string) => void): (line: string) => void {
  const secrets = [token, encodeURIComponent(token)];
  return (line) => {
    let shown = line;
    for (const secret of secrets) shown = shown.replaceAll(secret, '<token>');
    log(shown.replace(/\/bot[^/\s]+\//g, '/bot<token>/'));
  };
}
