import { DateTime } from 'luxon';
import type { PackCounted } from '#core/absorber-packs.ts';
import { inRange } from '#core/ranges.ts';
import { Refusal } from '#core/refusal.ts';
import type { Names } from '#words/parts.ts';
import type { Reading } from '#words/reading.ts';
import { pastMoment } from '#words/when.ts';

/** One size as it was told: how many there are, where that was said. */
interface SizeTold {
  readonly sizeMl: number;
  readonly count: number | null;
}

/** Absorbers as they were told. */
export interface AbsorbersTold {
  /** Beside those there are: 'also 200 ml'. */
  readonly isMore: boolean;
  /** No longer at hand: 'without 100 ml'. */
  readonly isLess: boolean;
  readonly sizes: readonly SizeTold[];
  /** Their bag was opened on this ISO day; null: not said. */
  readonly openedOn: string | null;
}

const openedWords = ['opened', 'open'];
const between = ['x', '×', 'of', 'packs', 'pack', 'pieces', 'absorbers'];

/** How many of a size: the whole number in front of it, '20 x 300 ml'; or '17 left' behind it. */
function countOf(reading: Reading, index: number): number | null {
  let at = index - 1;
  const passed: number[] = [];
  while (between.includes(reading.at(at)?.plain ?? '')) passed.push(at--);
  const before = reading.at(at);
  const isBefore = before?.is === 'number' && passed.length > 0;
  const after = reading.at(index + 1)?.plain === ':' ? index + 2 : index + 1;
  const behind = reading.at(after);
  const isBehind =
    behind?.is === 'number' && ['left', 'packs', 'pieces'].includes(reading.at(after + 1)?.plain ?? '');
  if (!isBefore && !isBehind) return null;
  const token = isBefore ? before : behind;
  if (token?.is !== 'number' || !Number.isInteger(token.value) || token.value < 0 || token.value > 5000)
    throw new Refusal('bad-count', 'A number of packs is a whole one, from 0 to 5000.');
  reading.take(...(isBefore ? [at, ...passed] : [after, after + 1]));
  return token.value;
}

/** '100 300 500 ml', '20 x 300 ml', '50 x 300 ml opened today', '300 ml: 17 left'. Bare numbers take the unit of the last. */
export function absorbersTold(reading: Reading, names: Names): AbsorbersTold | undefined {
  const isMore = reading.keyword('also', 'too', 'added', 'besides', 'additional') !== undefined;
  const isLess = reading.keyword('without', 'no', 'remove', 'minus') !== undefined;
  const isOpened = reading.keyword(...openedWords) !== undefined;
  const moment = isOpened ? pastMoment.read(reading, names) : undefined;
  const withUnit = [...reading.left()].filter((i) => {
    const token = reading.all[i]!;
    return token.is === 'quantity' && ['ml', 'l'].includes(token.unit.symbol);
  });
  // '10 x 300': the second is a size though no unit stands behind it.
  const sized = [...reading.left()].filter(
    (i) => reading.all[i]!.is === 'number' && ['x', '×'].includes(reading.at(i - 1)?.plain ?? ''),
  );
  const counted = new Map([...withUnit, ...sized].map((i) => [i, countOf(reading, i)]));
  const indexes = [...reading.left()].filter((i) => withUnit.includes(i) || reading.all[i]!.is === 'number');
  if (indexes.length === 0) return undefined;
  reading.settleNumbers(indexes);
  let factor = 1;
  const sizes = indexes.toReversed().map((i): SizeTold => {
    const token = reading.all[i]!;
    if (token.is === 'quantity') factor = token.unit.factor;
    const value = 'value' in token ? token.value : 0;
    return { sizeMl: inRange('out-of-range', 'absorberMl', value * factor), count: counted.get(i) ?? null };
  });
  reading.take(...indexes);
  reading.takeWords('packs', 'pack', 'left', 'x', ':');
  const openedOn = isOpened
    ? DateTime.fromMillis(moment ?? names.nowMs, { zone: names.zone }).toISODate()
    : null;
  return { sizes: sizes.reverse(), openedOn, isMore, isLess };
}

/** Whether packs were counted, a bag opened or sizes added: then the sizes are added to those at hand, else they are all there are. */
export const isCounted = ({ sizes, openedOn, isMore }: AbsorbersTold): boolean =>
  isMore || openedOn !== null || sizes.some(({ count }) => count !== null);

export const sizesAfter = (told: AbsorbersTold, before: readonly number[]): number[] =>
  told.isLess
    ? before.filter((sizeMl) => told.sizes.every((one) => one.sizeMl !== sizeMl))
    : [...new Set([...(isCounted(told) ? before : []), ...told.sizes.map(({ sizeMl }) => sizeMl)])].sort(
        (a, b) => a - b,
      );

/** What is counted of each size at hand. */
export function packsAfter(
  told: AbsorbersTold,
  before: readonly PackCounted[],
  nowMs: number,
): PackCounted[] {
  if (told.isLess) return before.filter(({ sizeMl }) => told.sizes.every((one) => one.sizeMl !== sizeMl));
  const now = told.sizes.map(({ sizeMl, count }): PackCounted => {
    const known = before.find((one) => one.sizeMl === sizeMl);
    return {
      sizeMl,
      count: count ?? known?.count ?? null,
      countedAtMs: count === null ? (known?.countedAtMs ?? nowMs) : nowMs,
      openedOn: told.openedOn ?? (count === null ? (known?.openedOn ?? null) : null),
    };
  });
  const others = isCounted(told)
    ? before.filter(({ sizeMl }) => now.every((one) => one.sizeMl !== sizeMl))
    : [];
  return [...others, ...now]
    .filter(({ count, openedOn }) => count !== null || openedOn !== null)
    .sort((a, b) => a.sizeMl - b.sizeMl);
}
