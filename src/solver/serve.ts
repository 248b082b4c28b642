import load from 'highs';
import { pickPouches, type PickLimits } from '#core/picks/pick.ts';
import type { PicksProblem, PicksResult } from '#core/picks/problem.ts';
import { type PouchReason, whyPouch } from '#core/picks/why.ts';
import { linearFrom } from './highs.ts';

/** What the thread is asked. `seconds` is the safety net, not the limit. */
export interface Question {
  readonly id: number;
  readonly problem: PicksProblem;
  readonly limits: PickLimits;
  readonly seconds: number;
  /** Present: why this pouch of that plan; absent: the plan itself. */
  readonly why?: { readonly pouch: string; readonly plan: PicksResult };
}

export interface Answer {
  readonly id: number;
  readonly picks?: PicksResult;
  readonly reason?: PouchReason;
  /** What was thrown: always a bug. */
  readonly fault?: string;
}

interface Port {
  on(event: 'message', listener: (question: Question) => void): unknown;
  postMessage(answer: Answer | { readonly ready: true }): void;
}

/** Answers questions one after the other; the solver is loaded once. */
export async function serve(port: Port): Promise<void> {
  const linear = linearFrom(await load());
  port.on('message', ({ id, problem, limits, seconds, why }) => {
    const end = performance.now() + seconds * 1000;
    const left = (): number => (end - performance.now()) / 1000;
    try {
      if (why) port.postMessage({ id, reason: whyPouch(problem, why.plan, why.pouch, linear, limits, left) });
      else port.postMessage({ id, picks: pickPouches(problem, linear, limits, left) });
    } catch (thrown) {
      port.postMessage({
        id,
        fault: thrown instanceof Error ? (thrown.stack ?? thrown.message) : String(thrown),
      });
    }
  });
  port.postMessage({ ready: true });
}
