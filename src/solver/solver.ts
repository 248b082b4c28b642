import { Worker } from 'node:worker_threads';
import { type PickLimits, usualLimits } from '#core/picks/pick.ts';
import type { PicksProblem, PicksResult } from '#core/picks/problem.ts';
import type { PouchReason } from '#core/picks/why.ts';
import type { Answer, Question } from './serve.ts';

export interface AskOptions {
  /** Aborting it ends the work at once and rejects with the signal's reason. */
  readonly signal?: AbortSignal;
  readonly limits?: PickLimits;
  /** Safety net; the counts in `limits` are what ends the work. */
  readonly seconds?: number;
  /** Who asks: households take turns, so that one with many questions does not keep the others waiting. */
  readonly household?: number;
}

/** A thread that picks beside the chat: one question at a time, the others wait their turn, household by household. */
export interface Solver {
  solvePicks(problem: PicksProblem, options?: AskOptions): Promise<PicksResult>;
  /** Why this pouch of that plan: the first level at which the best plan without it gets worse. */
  whyThisPouch(
    problem: PicksProblem,
    plan: PicksResult,
    pouch: string,
    options?: AskOptions,
  ): Promise<PouchReason>;
  /** Ends the thread; questions still open are rejected. A later question starts a new one. */
  dispose(): Promise<void>;
}

interface Waiting {
  readonly question: Question;
  readonly household: number | undefined;
  readonly signal: AbortSignal | undefined;
  readonly resolve: (answer: Answer) => void;
  readonly reject: (reason: unknown) => void;
  readonly onAbort: () => void;
}

/** So that the largest trips are answered within ten seconds, the search for a better plan ended before. */
const usualSeconds = 9;

/** Opens no thread yet: the first question does, and it is kept, without holding the program open. */
export function openSolver(): Solver {
  let worker: Worker | undefined;
  let running: Waiting | undefined;
  let queue: Waiting[] = [];
  let lastId = 0;
  /** When each household had its last turn, in the order of turns. */
  const lastTurn = new Map<number | undefined, number>();

  const stop = async (): Promise<void> => {
    const old = worker;
    worker = undefined;
    await old?.terminate();
  };

  const settle = (waiting: Waiting): void => waiting.signal?.removeEventListener('abort', waiting.onAbort);

  const failed = (from: Worker, reason: unknown): void => {
    if (from !== worker) return;
    worker = undefined;
    const lost = running;
    running = undefined;
    if (lost) {
      settle(lost);
      lost.reject(reason);
    }
    next();
  };

  const start = (): Worker => {
    const started = new Worker(new URL('./thread.js', import.meta.url), { execArgv: [] });
    started.on('message', (answer: Answer | { ready: true }) => {
      if ('ready' in answer || started !== worker || answer.id !== running?.question.id) return;
      const done = running;
      running = undefined;
      settle(done);
      if (answer.fault !== undefined) done.reject(new Error(answer.fault));
      else done.resolve(answer);
      next();
    });
    started.on('error', (error) => failed(started, error));
    started.on('exit', (code) => failed(started, new Error(`the solver thread ended with ${code}`)));
    return started;
  };

  /** Whose household has waited longest since its last turn; of one household the first asked. */
  const takeTurn = (): Waiting | undefined => {
    const turn = ({ household }: Waiting): number => lastTurn.get(household) ?? 0;
    const chosen = queue.reduce<Waiting | undefined>(
      (first, one) => (first && turn(first) <= turn(one) ? first : one),
      undefined,
    );
    if (!chosen) return undefined;
    queue = queue.filter((other) => other !== chosen);
    lastTurn.set(chosen.household, 1 + Math.max(0, ...lastTurn.values()));
    return chosen;
  };

  /** The thread holds the program open only while somebody waits for an answer. */
  const next = (): void => {
    if (!running && queue.length === 0) lastTurn.clear();
    running ??= takeTurn();
    if (!running) {
      worker?.unref();
      return;
    }
    worker ??= start();
    worker.ref();
    worker.postMessage(running.question);
  };

  const ask = (question: Omit<Question, 'id' | 'limits' | 'seconds'>, options: AskOptions): Promise<Answer> =>
    new Promise((resolve, reject) => {
      const { signal } = options;
      if (signal?.aborted) return reject(signal.reason as Error);
      const onAbort = (): void => {
        queue = queue.filter((other) => other !== waiting);
        if (running === waiting) {
          // A running program cannot be interrupted from outside: its thread goes, the next question gets a new one.
          running = undefined;
          void stop();
          next();
        }
        reject(signal!.reason as Error);
      };
      lastId += 1;
      const waiting: Waiting = {
        question: {
          ...question,
          id: lastId,
          limits: options.limits ?? usualLimits,
          seconds: options.seconds ?? usualSeconds,
        },
        household: options.household,
        signal,
        resolve,
        reject,
        onAbort,
      };
      signal?.addEventListener('abort', onAbort, { once: true });
      queue.push(waiting);
      if (!running) next();
    });

  return {
    solvePicks: async (problem, options = {}) => (await ask({ problem }, options)).picks!,
    whyThisPouch: async (problem, plan, pouch, options = {}) =>
      (await ask({ problem, why: { plan, pouch } }, options)).reason!,
    async dispose() {
      const open = running ? [running, ...queue] : queue;
      running = undefined;
      queue = [];
      await stop();
      for (const waiting of open) {
        settle(waiting);
        waiting.reject(new Error('the solver was disposed'));
      }
    },
  };
}

let shared: Solver | undefined;

/** The picks, worked out beside the chat by the one solver thread of this program. */
export function solvePicks(problem: PicksProblem, options: AskOptions = {}): Promise<PicksResult> {
  shared ??= openSolver();
  return shared.solvePicks(problem, options);
}

/** Ends the shared thread, if there is one. */
export async function disposeSolver(): Promise<void> {
  await shared?.dispose();
  shared = undefined;
}
