import type { Pouch } from '#core/records.ts';
import { rawMark } from '#words/phrases.ts';
import { vouchedMark } from '#words/dry-phrases.ts';
import { vouchedFor } from './dryness.ts';
import { batchSeen } from './figures.ts';
import type { House } from './house.ts';

/** What has to stand beside a pouch wherever it is named: not shown to be dry, dry against its recipe, raw. */
export function marksOf(house: House, pouch: Pick<Pouch, 'batch' | 'checked'>): string[] {
  const { batch, facts } = batchSeen(house, pouch.batch);
  const vouched = pouch.checked ? vouchedFor(batch, facts) : null;
  return [
    ...(pouch.checked ? [] : ['UNCHECKED']),
    ...(vouched === null ? [] : [`dry by ${vouchedMark(vouched)}`]),
    ...(batch.isRaw ? [rawMark] : []),
  ];
}

/** The marks of several pouches, each once: ' (RAW, cook in a pot)', or nothing. */
export function markedWith(house: House, pouches: readonly Pick<Pouch, 'batch' | 'checked'>[]): string {
  const marks = [...new Set(pouches.flatMap((pouch) => marksOf(house, pouch)))];
  return marks.length === 0 ? '' : ` (${marks.join('; ')})`;
}
