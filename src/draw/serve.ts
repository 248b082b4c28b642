import { Refusal } from '#core/refusal.ts';
import type { ChartFacts, LabelSheet, TripPaper } from './facts.ts';

/** What the thread is asked to draw. */
export type Wanted =
  | { readonly is: 'labels'; readonly sheet: LabelSheet }
  | { readonly is: 'paper'; readonly paper: TripPaper }
  | { readonly is: 'chart'; readonly chart: ChartFacts }
  | { readonly is: 'codes'; readonly picture: Uint8Array };

export interface Question {
  readonly id: number;
  readonly wanted: Wanted;
}

/** A page count for paper; a chart may take several pictures. */
export interface Drawn {
  readonly files: readonly Uint8Array[];
  readonly pages: number;
}

export interface Answer {
  readonly id: number;
  readonly drawn?: Drawn;
  /** What stands in a picture's codes. */
  readonly texts?: readonly string[];
  readonly refused?: { readonly code: string; readonly sentence: string };
  /** What was thrown: always a bug. */
  readonly fault?: string;
}

interface Port {
  on(event: 'message', listener: (question: Question) => void): unknown;
  postMessage(answer: Answer): void;
}

/** The libraries are heavy: each is loaded when its first drawing is wanted. */
async function draw(wanted: Exclude<Wanted, { is: 'codes' }>): Promise<Drawn> {
  if (wanted.is === 'labels') {
    const { drawLabels } = await import('./label-sheet.ts');
    const { pdf, pages } = await drawLabels(wanted.sheet);
    return { files: [pdf], pages };
  }
  if (wanted.is === 'paper') {
    const { drawTripPaper } = await import('./trip-paper.ts');
    const { pdf, pages } = await drawTripPaper(wanted.paper);
    return { files: [pdf], pages };
  }
  const { drawChart } = await import('./chart.ts');
  const pictures = await drawChart(wanted.chart);
  return { files: pictures.map(({ png }) => png), pages: pictures.length };
}

async function answer({ id, wanted }: Question): Promise<Answer> {
  try {
    if (wanted.is === 'codes') {
      const { readCodes } = await import('./read-codes.ts');
      return { id, texts: await readCodes(wanted.picture) };
    }
    return { id, drawn: await draw(wanted) };
  } catch (thrown) {
    if (thrown instanceof Refusal) return { id, refused: { code: thrown.code, sentence: thrown.message } };
    return { id, fault: thrown instanceof Error ? (thrown.stack ?? thrown.message) : String(thrown) };
  }
}

/** Draws one thing after the other, in the order asked. */
export function serve(port: Port): void {
  let turn: Promise<void> = Promise.resolve();
  port.on('message', (question) => {
    turn = turn.then(async () => port.postMessage(await answer(question)));
  });
}
