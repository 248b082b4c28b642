import { placesOf } from '#core/label-grid.ts';
import { openFaces } from './faces.ts';
import type { LabelFacts, LabelSheet } from './facts.ts';

import { labelBlocks } from './label-text.ts';
import { drawLabel } from './label.ts';
import { Pdf } from './pdf.ts';

export interface Printed {
  readonly pdf: Buffer;
  readonly pages: number;
}

/**
 * Labels on sheets, the first at any free place of a part-used one.
 * @throws Refusal 'label-too-small', 'no-glyph'
 */
export async function drawLabels({ grid, from, labels }: LabelSheet): Promise<Printed> {
  await openFaces(
    labels.flatMap((facts) =>
      labelBlocks(facts)
        .flat()
        .map(({ text }) => text),
    ),
  );
  const pdf = new Pdf(titleOf(labels), grid.paper === 'single' ? grid : grid.paper);
  const places = placesOf(grid);
  labels.forEach((facts, i) => {
    const at = (from - 1 + i) % places.length;
    if (i === 0 || at === 0) pdf.page();
    drawLabel(pdf, facts, places[at]!);
  });
  return { pdf: await pdf.end(), pages: pdf.pages };
}

function titleOf(labels: readonly LabelFacts[]): string {
  const [first, last] = [labels[0]!.code, labels.at(-1)!.code];
  return first === last ? `Label ${first}` : `Labels ${first} to ${last}`;
}
