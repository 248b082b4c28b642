import { Refusal } from '#core/refusal.ts';
import { part, quantities } from './part.ts';
import type { Reading } from './reading.ts';
import type { Token } from './tokens.ts';

interface Entry {
  readonly index: number;
  readonly token: Token & { readonly is: 'number' | 'quantity' };
  readonly count: number;
  readonly taken: readonly number[];
}

const trayWords = ['trays', 'tray', 'shelves', 'shelf'];
const isTrayCount = (token: Token | undefined) =>
  token?.is === 'number' && Number.isInteger(token.value) && token.value >= 1 && token.value <= mostTrays;
/** More trays than any kitchen's dryer has. Chosen. */
const mostTrays = 60;

/** How many trays share one weight: '4 x 500 g', '4 trays of 500 g', '4 trays 500 g each'. */
function countBefore(reading: Reading, index: number): { count: number; taken: number[] } | undefined {
  let at = index - 1;
  const taken: number[] = [];
  const each = ['each', 'apiece'].includes(reading.at(index + 1)?.plain ?? '');
  let said = each;
  if (each) taken.push(index + 1);
  for (let word = reading.at(at)?.plain; word !== undefined; word = reading.at(at)?.plain) {
    const isX = reading.at(at)!.is === 'mark' && /^[x×]$/.test(word);
    if (!isX && !['of', 'at', 'with', ',', ...trayWords].includes(word)) break;
    if (isX || word === 'of' || word === 'at' || word === 'with') said = true;
    taken.push(at--);
  }
  const token = reading.at(at);
  if (token?.is !== 'number' || taken.length === (each ? 1 : 0) || !isTrayCount(token)) return undefined;
  const isNamed = taken.some((i) => trayWords.includes(reading.all[i]!.plain));
  if (!said && !isNamed) return undefined;
  return { count: said ? token.value : -token.value, taken: [...taken, at] };
}

function entriesOf(reading: Reading): Entry[] {
  const entries: Entry[] = [];
  for (const index of reading.left()) {
    const token = reading.all[index]!;
    const isWeight =
      (token.is === 'number' && !token.spelled) || (token.is === 'quantity' && token.unit.kind === 'mass');
    if (!isWeight || (token.is !== 'number' && token.is !== 'quantity')) continue;
    // '3 trays' counts them.
    if (
      token.is === 'number' &&
      isTrayCount(token) &&
      trayWords.includes(reading.at(index + 1)?.plain ?? '') &&
      token.value < 20
    ) {
      const behind = reading.at(index + 2);
      if (
        behind === undefined ||
        (behind.is !== 'number' &&
          behind.is !== 'quantity' &&
          !/^(?:of|at|with|,|x|×|:|each)$/.test(behind.plain))
      )
        continue;
    }
    const shared = countBefore(reading, index);
    if (shared) while (entries.length > 0 && shared.taken.includes(entries.at(-1)!.index)) entries.pop();
    entries.push({ index, token, count: shared?.count ?? 1, taken: [index, ...(shared?.taken ?? [])] });
  }
  return entries;
}

/**
 * A list of weights, one a tray: '812 798 805 790 g', '812 g, 798 g', '1.2 kg 1.1 kg', '4 x 500 g'. A unit at
 * the end holds for the bare numbers before it; without any unit grams are meant.
 * @throws Refusal when '4 trays' stand before another number of weights
 */
export const trayWeights = part<number[]>('the weights, such as 812 798 805 g', (reading) => {
  const entries = entriesOf(reading);
  if (entries.length === 0) return undefined;
  reading.settleNumbers(entries.map(({ index }) => index));
  const grams: number[] = [];
  let factor = 1;
  for (const { token, taken } of entries.toReversed()) {
    if (token.is === 'quantity') factor = token.unit.factor;
    if (!(token.value > 0))
      throw new Refusal('not-positive', `${token.typed} is not a weight: it must be above zero.`);
    grams.unshift(token.value * factor);
    reading.take(...taken);
  }
  const told = entries.find(({ count }) => count < 0);
  const all = joinPoundsAndOunces(entries, grams);
  if (told && -told.count !== all.length)
    throw new Refusal(
      'tray-count',
      `I read ${-told.count} trays and ${all.length === 1 ? 'one weight' : `${all.length} weights`}. Give each tray its weight, or ${-told.count} x ${told.token.typed} when all weigh the same.`,
    );
  return all;
});

/** '1 lb 12 oz' is one weight, not two; '4 x 500 g' is four. */
function joinPoundsAndOunces(entries: readonly Entry[], grams: readonly number[]): number[] {
  const joined: { g: number; count: number }[] = [];
  entries.forEach(({ token, count }, i) => {
    const before = entries[i - 1]?.token;
    const isOunces = token.is === 'quantity' && token.unit.symbol === 'oz';
    if (isOunces && before?.is === 'quantity' && before.unit.symbol === 'lb') joined.at(-1)!.g += grams[i]!;
    else joined.push({ g: grams[i]!, count: Math.max(1, count) });
  });
  return joined.flatMap(({ g, count }) => Array.from({ length: count }, () => g));
}

export interface PouchGroup {
  readonly count: number;
  readonly eachDryG: number;
}

/** '6 x 95 g', '4 x 95 g 2 x 140 g', '6 pouches of 95 g', '95 g' alone for one pouch. */
export const pouchGroups = part<PouchGroup[]>(
  'how many pouches and how heavy, such as 6 x 95 g',
  (reading) => {
    const groups: PouchGroup[] = [];
    for (const each of quantities(reading, 'mass')) {
      let at = each.index - 1;
      const used: number[] = [];
      while (isBetween(reading.at(at))) used.push(at--);
      const token = reading.at(at);
      if (token?.is === 'number') {
        reading.settleNumbers([at]);
        used.push(at);
      }
      const count = token?.is === 'number' ? token.value : 1;
      reading.settleNumbers([each.index]);
      reading.take(
        each.index,
        ...used.filter((i) => token?.is === 'number' || reading.at(i)?.plain === 'of'),
      );
      if (!(each.value > 0))
        throw new Refusal('not-positive', `${each.typed} is not a weight: it must be above zero.`);
      if (!(Number.isInteger(count) && count >= 1 && count <= 500)) {
        throw new Refusal('bad-count', `${count} is no number of pouches; a whole number from 1 to 500 is.`);
      }
      groups.push({ count, eachDryG: each.value });
    }
    groups.push(...inBareGrams(reading));
    return groups.length > 0 ? groups : undefined;
  },
);

/** '8 pouches of 120', '6 x 60': where only grams make sense a bare number is grams, said so. */
function inBareGrams(reading: Reading): PouchGroup[] {
  const groups: PouchGroup[] = [];
  for (const index of reading.left()) {
    const token = reading.all[index]!;
    if (token.is !== 'number' || token.value < 5) continue;
    let at = index - 1;
    while (isBetween(reading.at(at))) at -= 1;
    const count = reading.at(at);
    if (at === index - 1 || count?.is !== 'number' || !Number.isInteger(count.value) || count.value > 500)
      continue;
    reading.settleNumbers([at, index]);
    reading.take(...Array.from({ length: index - at + 1 }, (_, k) => at + k));
    reading.remarks.push(`${token.typed} taken as ${token.typed} g`);
    groups.push({ count: count.value, eachDryG: token.value });
  }
  return groups;
}

function isBetween(token: Token | undefined): boolean {
  if (token === undefined) return false;
  return (
    (token.is === 'mark' && token.mark === 'x') ||
    (token.is === 'word' &&
      [
        'of',
        'with',
        'pouches',
        'pouch',
        'at',
        'times',
        'by',
        'bags',
        'bag',
        'holding',
        'weighing',
        'each',
      ].includes(token.plain))
  );
}
