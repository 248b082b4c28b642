import { Worker } from 'node:worker_threads';
import { Refusal } from '#core/refusal.ts';
import type { ChartFacts, LabelSheet, TripPaper } from './facts.ts';
import type { Answer, Drawn, Wanted } from './serve.ts';

/** A thread that draws beside the chat. */
export interface Drawing {
  labels(sheet: LabelSheet): Promise<Drawn>;
  paper(paper: TripPaper): Promise<Drawn>;
  chart(chart: ChartFacts): Promise<Drawn>;
  /** The texts of the codes in a picture. */
  codes(picture: Uint8Array): Promise<readonly string[]>;
  /** Ends the thread; drawings still open are rejected. A later one starts a new thread. */
  dispose(): Promise<void>;
}

interface Waiting {
  readonly resolve: (answer: Answer) => void;
  readonly reject: (reason: unknown) => void;
  readonly timer: NodeJS.Timeout;
}

/** Nothing that a household prints takes so long; a thread that does is stuck. */
const mostSeconds = 60;

/** Opens no thread yet: the first drawing does, and it is kept, without holding the program open. */
export function openDrawing(): Drawing {
  let worker: Worker | undefined;
  let lastId = 0;
  const waiting = new Map<number, Waiting>();

  const settle = (id: number): Waiting | undefined => {
    const found = waiting.get(id);
    waiting.delete(id);
    if (found) clearTimeout(found.timer);
    if (waiting.size === 0) worker?.unref();
    return found;
  };

  const failed = (from: Worker, reason: unknown): void => {
    if (from !== worker) return;
    worker = undefined;
    for (const id of Array.from(waiting.keys())) settle(id)?.reject(reason);
  };

  const start = (): Worker => {
    const started = new Worker(new URL('./thread.js', import.meta.url), { execArgv: [] });
    started.on('message', (answer: Answer) => {
      const { id, drawn, texts, refused, fault } = answer;
      const done = settle(id);
      if (drawn ?? texts) done?.resolve(answer);
      else if (refused) done?.reject(new Refusal(refused.code, refused.sentence));
      else done?.reject(new Error(fault));
    });
    started.on('error', (error) => failed(started, error));
    started.on('exit', (code) => failed(started, new Error(`the drawing thread ended with ${code}`)));
    return started;
  };

  const ask = (wanted: Wanted): Promise<Answer> =>
    new Promise((resolve, reject) => {
      worker ??= start();
      const asked = worker;
      lastId += 1;
      const timer = setTimeout(() => {
        failed(asked, new Error(`a drawing took more than ${mostSeconds} s`));
        void asked.terminate();
      }, mostSeconds * 1000);
      waiting.set(lastId, { resolve, reject, timer });
      asked.ref();
      asked.postMessage({ id: lastId, wanted });
    });

  const drawn = async (wanted: Wanted): Promise<Drawn> => (await ask(wanted)).drawn!;

  return {
    labels: (sheet) => drawn({ is: 'labels', sheet }),
    paper: (paper) => drawn({ is: 'paper', paper }),
    chart: (chart) => drawn({ is: 'chart', chart }),
    codes: async (picture) => (await ask({ is: 'codes', picture })).texts!,
    async dispose() {
      const old = worker;
      if (old) failed(old, new Error('the drawing thread was disposed'));
      await old?.terminate();
    },
  };
}
