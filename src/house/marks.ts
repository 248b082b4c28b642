import { groupBy } from '#core/groups.ts';
import type { Pouch } from '#core/records.ts';
import { rawMark } from '#words/phrases.ts';
import { unsound } from '#core/seal-check.ts';
import { foundMark } from '#words/found-words.ts';
import { vouchedMark } from '#words/dry-phrases.ts';
import { sayCodes } from '#words/say.ts';
import { vouchedOf } from './dryness.ts';
import { batchSeen } from './figures.ts';
import type { House } from './house.ts';

/** What has to stand beside a pouch wherever it is named: not shown to be dry, dry against its recipe, raw. */
export function marksOf(house: House, pouch: Pick<Pouch, 'batch' | 'shownDry' | 'found'>): string[] {
  const { batch, facts } = batchSeen(house, pouch.batch);
  const vouched = pouch.shownDry ? vouchedOf(house, batch, facts) : null;
  const found = unsound(pouch.found);
  return [
    ...(pouch.shownDry ? [] : ['UNCHECKED']),
    ...(found === null ? [] : [foundMark[found]]),
    ...(vouched === null ? [] : [`dry by ${vouchedMark(vouched)}`]),
    ...(batch.isRaw ? [rawMark] : []),
  ];
}

/** 'RAW, cook in a pot: B1-1 and B1-2.' What has to stand beside pouches that are not named one by one. */
export function markLines(house: House, pouches: readonly Pouch[]): string[] {
  const marked = pouches.flatMap((pouch) => marksOf(house, pouch).map((mark) => ({ mark, pouch })));
  return [...groupBy(marked, ({ mark }) => mark)].map(
    ([mark, those]) => `${mark}: ${sayCodes(those.map(({ pouch }) => pouch))}.`,
  );
}

/** The marks of several pouches, each once: ' (RAW, cook in a pot)', or nothing. */
export function markedWith(
  house: House,
  pouches: readonly Pick<Pouch, 'batch' | 'shownDry' | 'found'>[],
): string {
  const marks = [...new Set(pouches.flatMap((pouch) => marksOf(house, pouch)))];
  return marks.length === 0 ? '' : ` (${marks.join('; ')})`;
}
