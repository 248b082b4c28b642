import { pouchVolumeMl } from '#core/oxygen.ts';
import { inRange } from '#core/ranges.ts';
import type { Settings } from '#core/settings.ts';
import { unitNamed } from '#core/units.ts';
import { flatSizeMm, type Names, quantities } from '#words/parts.ts';
import { Ambiguous, type Reading } from '#words/reading.ts';
import { sayNumber } from '#words/say.ts';

/** Two figures with an x between, unit or not. */
interface Size {
  readonly from: number;
  readonly sides: readonly [string, string];
  readonly unit: string | undefined;
  readonly values: readonly [number, number];
}

function sizesIn(reading: Reading): Size[] {
  return [...reading.left()].flatMap((i) => {
    const [a, mark, b] = [reading.at(i), reading.at(i + 1), reading.at(i + 2)];
    if (a?.is !== 'number' && a?.is !== 'quantity') return [];
    if (b?.is !== 'number' && b?.is !== 'quantity') return [];
    if (mark === undefined || !['x', '×', 'by'].includes(mark.plain)) return [];
    const unit = b.is === 'quantity' ? b.unitTyped : a.is === 'quantity' ? a.unitTyped : undefined;
    return [{ from: i, sides: [String(a.value), String(b.value)], unit, values: [a.value, b.value] }];
  });
}

/** Sides of any pouch for a meal, mm. Chosen. */
const [shortestSideMm, longestSideMm] = [50, 450];

/** The units in which a pouch can have these sides; every one where none fits. */
function unitsFor({ unit, values }: Size): string[] {
  if (unit !== undefined) return [unit];
  const all = ['cm', 'mm', 'in'];
  const fitting = all.filter((symbol) => {
    const mm = values.map((value) => value * unitNamed(symbol, 'length')!.factor * 1000);
    return mm.every((side) => side >= shortestSideMm && side <= longestSideMm);
  });
  return fitting.length > 0 ? fitting : all;
}

/** Two sizes, or one without unit, are asked about. @throws Ambiguous */
function askSize(reading: Reading): void {
  const sizes = sizesIn(reading);
  const [only, another] = sizes;
  if (only === undefined || (another === undefined && only.unit !== undefined)) return;
  // '20 x 30 and 15 x 20 cm': the unit at the end holds for those before it.
  const shared = sizes.at(-1)!.unit;
  const options = sizes.flatMap((size) =>
    unitsFor({ ...size, unit: size.unit ?? shared }).map((unit) => size.sides.join(' x ') + ` ${unit}`),
  );
  throw new Ambiguous(
    another === undefined
      ? `I read ${only.sides.join(' x ')}, but not of what. Which is meant?`
      : 'I keep one usual pouch size; another is said when you seal: /seal 6 x 95 g B4 pouch 15 x 20 cm. Which is the usual one?',
    options.map((label) => ({ label, request: `pouch ${label}` })),
  );
}

/** 'pouch 20 x 30 cm', 'pouch 1.5 l'. @throws Ambiguous, Refusal 'out-of-range' */
export function pouchTold(reading: Reading, names: Names): Settings['pouch'] | undefined {
  askSize(reading);
  const size = flatSizeMm.read(reading, names);
  if (size)
    return {
      volumeMl: pouchVolumeMl(size.a, size.b),
      told: `${sayNumber(size.a / 10)} x ${sayNumber(size.b / 10)} cm flat`,
    };
  const measured = quantities(reading, 'volume')[0];
  const index = measured?.index ?? [...reading.left()].find((i) => reading.all[i]!.is === 'number');
  const token = index === undefined ? undefined : reading.all[index];
  if (index === undefined || (token?.is !== 'number' && token?.is !== 'quantity')) return undefined;
  reading.settleNumbers([index]);
  reading.take(index);
  const volumeMl = measured?.value ?? token.value;
  return {
    volumeMl: inRange('out-of-range', 'pouchMl', volumeMl),
    told: `${sayNumber(volumeMl)} ml`,
  };
}
