import type { Failure } from './telegram-refused.ts';

const probeEveryMs = 1000;
/** Whoever was answered so lately can be reached: what fails then is one chat's own trouble. */
const freshMs = 1500;

/**
 * Chats that wait for the platform to come back. One of them asks every second; on the first word from the platform
 * all are served at once, however long they have been waiting.
 * @param serve serves a chat now
 */
export function openAway(serve: (chatKey: string) => void, closing: AbortSignal) {
  const stranded = new Set<string>();
  let probe: NodeJS.Timeout | undefined;
  let deliveredAtMs = 0;
  closing.addEventListener('abort', () => clearTimeout(probe), { once: true });

  function ask(): void {
    probe = undefined;
    const [first] = stranded;
    if (first === undefined || closing.aborted) return;
    stranded.delete(first);
    serve(first);
    if (stranded.size > 0) probe ??= setTimeout(ask, probeEveryMs);
  }

  function reached(): void {
    if (stranded.size === 0 || closing.aborted) return;
    const waiting = [...stranded];
    stranded.clear();
    for (const chatKey of waiting) serve(chatKey);
  }

  return {
    /** A call for a chat failed. */
    failed(chatKey: string, failure: Failure): void {
      // Told to wait, it waits; the others are none of its business.
      if (failure.is !== 'wait' || failure.afterMs !== null || closing.aborted) return;
      if (Date.now() - deliveredAtMs < freshMs) return;
      stranded.add(chatKey);
      probe ??= setTimeout(ask, probeEveryMs);
    },
    /** The platform answered something; it may still not take messages. */
    reached,
    /** A message arrived. */
    delivered(): void {
      deliveredAtMs = Date.now();
      reached();
    },
  };
}
