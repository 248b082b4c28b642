import type { Material } from '#core/barrier.ts';
import { isRigid, type PouchKind } from '#core/pouch-kind.ts';
import { inRange } from '#core/ranges.ts';
import { Refusal } from '#core/refusal.ts';
import type { Settings } from '#core/settings.ts';
import { unitNamed } from '#core/units.ts';
import { flatSizeMm, type Names, quantities } from '#words/parts.ts';
import { gussetMm, kindOfSize, kindOfVolume, materialSaid, takeMaterial } from '#words/pouch-parts.ts';
import { Ambiguous, isFiller, type Reading } from '#words/reading.ts';

/** Two figures with an x between, unit or not. */
interface Size {
  readonly from: number;
  readonly sides: readonly [string, string];
  readonly unit: string | undefined;
  /** Where its words end. */
  readonly to: number;
  readonly values: readonly [number, number];
}

function sizesIn(reading: Reading): Size[] {
  return [...reading.left()].flatMap((i) => {
    const [a, mark, b] = [reading.at(i), reading.at(i + 1), reading.at(i + 2)];
    if (a?.is !== 'number' && a?.is !== 'quantity') return [];
    if (b?.is !== 'number' && b?.is !== 'quantity') return [];
    if (mark === undefined || !['x', '×', 'by'].includes(mark.plain)) return [];
    const unit = b.is === 'quantity' ? b.unitTyped : a.is === 'quantity' ? a.unitTyped : undefined;
    return [
      { from: i, sides: [String(a.value), String(b.value)], unit, to: i + 2, values: [a.value, b.value] },
    ];
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
      : 'Which is the usual pouch? The other gets a name of its own: /house pouch small 15 x 20 cm.',
    options.map((label) => ({
      label,
      request:
        another === undefined
          ? reading.rewritten([
              { from: reading.all[only.from]!.from, to: reading.all[only.to]!.to, into: label },
            ])
          : `pouch ${label}`,
    })),
  );
}

/** A kind of pouch as it was told. */
export interface PouchTold {
  /** null: the usual one. */
  readonly name: string | null;
  /** Without a size the material alone was told, of the kind that is there. */
  readonly kind: Omit<PouchKind, 'material'> | null;
  readonly material: Material | null;
}

const aroundNames = new Set(
  'usual normal standard our size sizes kind called named made out of all in new'.split(' '),
);

/** A name of one or two words: 'small', 'family pack'. */
function nameIn(reading: Reading): string | undefined {
  const words = [...reading.left()].filter((i) => {
    const { is, plain } = reading.all[i]!;
    return (is === 'word' && !isFiller(plain) && !aroundNames.has(plain)) || is === 'quoted';
  });
  if (words.length === 0 || words.length > 2) return undefined;
  reading.take(...words);
  return words
    .map((i) => reading.all[i]!.typed.replaceAll('"', ''))
    .join(' ')
    .toLowerCase();
}

/** 'pouch 20 x 30 cm foil', 'small 15 x 20 cm', 'jar 1 l', 'pouch 1.5 l', 'pouches are foil'. @throws Ambiguous, Refusal 'out-of-range' */
export function pouchTold(reading: Reading, names: Names): PouchTold | undefined {
  const gusset = gussetMm.read(reading, names);
  askSize(reading);
  const material = takeMaterial(reading) ?? null;
  const kind = sizeTold(reading, names, gusset);
  reading.takeWords(...aroundNames);
  const rigid = reading.all.find(({ plain }) => /^(?:jar|tin|can)s?$/.test(plain))?.plain.replace(/s$/, '');
  const name = nameIn(reading) ?? (isRigid(material) ? (rigid ?? null) : null);
  if (kind === undefined && material === null) return undefined;
  if (kind !== undefined) inRange('out-of-range', 'pouchMl', kind.volumeMl);
  return { name, kind: kind ?? null, material };
}

function sizeTold(
  reading: Reading,
  names: Names,
  gusset: number | undefined,
): Omit<PouchKind, 'material'> | undefined {
  const size = flatSizeMm.read(reading, names);
  if (size) return kindOfSize(size, gusset);
  const measured = quantities(reading, 'volume')[0];
  const index = measured?.index ?? [...reading.left()].find((i) => reading.all[i]!.is === 'number');
  const token = index === undefined ? undefined : reading.all[index];
  if (index === undefined || (token?.is !== 'number' && token?.is !== 'quantity')) return undefined;
  reading.settleNumbers([index]);
  reading.take(index);
  return kindOfVolume(inRange('out-of-range', 'pouchMl', measured?.value ?? token.value));
}

/** What was told, put into the settings. @throws Refusal 'no-size' where only the material of an unknown kind was told */
export function withPouch(told: PouchTold):
  | { readonly name: 'pouch'; readonly value: (before: Settings) => Settings['pouch'] }
  | {
      readonly name: 'pouchKinds';
      readonly value: (before: Settings) => Settings['pouchKinds'];
    } {
  const { name, kind, material } = told;
  const made = (before: PouchKind | null | undefined): PouchKind => {
    const size = kind ?? before;
    if (!size)
      throw new Refusal(
        'no-size',
        'I read what it is made of, but not its size: /house pouch 20 x 30 cm foil',
      );
    const { volumeMl, areaCm2, told: said } = size;
    return { volumeMl, areaCm2, told: said, material: material ?? before?.material ?? null };
  };
  if (name === null) return { name: 'pouch', value: ({ pouch }) => made(pouch) };
  return {
    name: 'pouchKinds',
    value: ({ pouchKinds }) => [
      ...pouchKinds.filter((one) => one.name !== name),
      { name, ...made(pouchKinds.find((one) => one.name === name)) },
    ],
  };
}

/** A kind in words. */
export const sayPouch = ({ told, material, volumeMl }: PouchKind): string =>
  `${told}, ${material === null ? 'foil or clear?' : materialSaid[material]}${told.endsWith('ml') ? '' : `, at most ${Math.round(volumeMl)} ml when full`}`;
