import type { LabelsTold } from '#core/label-grid.ts';
import { Refusal } from '#core/refusal.ts';
import { flatSizeMm, type Names, part, quantities } from './parts.ts';
import type { Reading } from './reading.ts';

/** A length that stands behind one of these words: 'left 7 mm'. */
function behindMm(reading: Reading, ...words: string[]): number | undefined {
  const found = quantities(reading, 'length').find(({ index }) => reading.wordBefore(index, ...words));
  if (!found) return undefined;
  reading.take(found.index, found.index - 1);
  const mm = Math.round(found.value * 1e5) / 100;
  if (mm < 0 || mm > 200)
    throw new Refusal('bad-margin', `${found.typed} is no margin of a sheet; 0 to 200 mm is.`);
  return mm;
}

/** '3 x 8', with bare numbers. */
function cellsTold(reading: Reading): LabelsTold['cells'] {
  for (const index of reading.left()) {
    const mark = reading.all[index]!;
    const [columns, rows] = [reading.at(index - 1), reading.at(index + 1)];
    if (mark.is !== 'mark' || mark.mark !== 'x' || columns?.is !== 'number' || rows?.is !== 'number')
      continue;
    const isCount = (value: number) => Number.isInteger(value) && value >= 1 && value <= 40;
    if (!isCount(columns.value) || !isCount(rows.value))
      throw new Refusal(
        'bad-cells',
        `${columns.typed} x ${rows.typed} labels is no sheet I can follow; 3 x 8 is.`,
      );
    reading.take(index - 1, index, index + 1);
    return { columns: columns.value, rows: rows.value };
  }
  return undefined;
}

function paperTold(reading: Reading): LabelsTold['paper'] {
  if (reading.keyword('a4') !== undefined) return 'a4';
  if (reading.keyword('letter') !== undefined) {
    reading.takeWords('us');
    return 'letter';
  }
  return reading.keyword('single', 'singles') === undefined ? undefined : 'single';
}

const round = (mm: number) => Math.round(mm * 100) / 100;

/** How labels are cut: 'A4 3 x 8', 'letter 2 x 5 of 101.6 x 50.8 mm gap 4.8 mm left 4 mm top 12 mm', 'single 100 x 60 mm'. */
export const labelsTold = part<LabelsTold>('a sheet of labels such as A4 3 x 8', (reading, names: Names) => {
  const paper = paperTold(reading);
  const leftMm = behindMm(reading, 'left', 'margin');
  const topMm = behindMm(reading, 'top');
  const gap = behindMm(reading, 'gap', 'gaps', 'between');
  const size = flatSizeMm.read(reading, names);
  const cells = cellsTold(reading);
  reading.takeWords('labels', 'label', 'sheet', 'sheets', 'margins', 'margin', 'each', 'paper');
  const told: LabelsTold = {
    paper,
    cells,
    sizeMm: size && { width: round(size.a), height: round(size.b) },
    leftMm,
    topMm,
    gapMm: gap === undefined ? undefined : { x: gap, y: 0 },
  };
  return Object.values(told).some((value) => value !== undefined) ? told : undefined;
});
