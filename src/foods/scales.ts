import type { Food } from './food.ts';
import { byName, type KitchenFood } from './kitchen.ts';
import { unitNamed, unitOf } from './units.ts';
import { foldedWords, foldName } from './words.ts';

/** A weight somebody wrote down: for so much of a unit, said this way, so many grams. */
export interface Known {
  readonly unit: string;
  readonly how: readonly string[];
  readonly grams: number;
  readonly isTable: boolean;
}

/** '.5 cup, diced' → half a cup, diced; a label that speaks of a yield describes another state and gives nothing. */
function fromLabel(label: string, grams: number): Known | undefined {
  if (/yield|serving|refuse/i.test(label) && !/fluid/i.test(label)) return undefined;
  const m = /^(\d*\.?\d+) (fl oz|[A-Za-z]+)(?: (large|medium|small))?[, ]*(.*)$/.exec(label);
  if (!m) return undefined;
  const word = m[2]!.toLowerCase();
  const unit = word === 'fl oz' ? unitNamed('floz') : unitOf(word);
  const name = /^(?:large|medium|small)$/.test(word) ? word : (unit?.name ?? 'each');
  if (unit?.grams !== undefined) return undefined;
  const rest = m[4]!.replace(/\(.*$/, '').replace(/\bor .*$/, '');
  const size = m[3] ?? /\b(large|medium|small)\b/.exec(rest)?.[1];
  if (size && !unit) return { unit: size, how: [], grams: grams / Number(m[1]), isTable: true };
  return { unit: name, how: foldedWords(rest), grams: grams / Number(m[1]), isTable: true };
}

/** What one food weighs by its own measures; never by another food's. */
export interface Scale {
  readonly food: Food;
  readonly entry: KitchenFood | null;
}

/** All the weights of a food: its curated ones, the file's, and what its packs hold in any state. */
export function knownWeights({ food, entry }: Scale): Known[] {
  const own = (entry?.weights ?? []).map(({ unit, how, grams }) => ({ unit, how, grams, isTable: false }));
  const file = entry?.standsIn
    ? []
    : food.measures.flatMap(({ label, grams }) => fromLabel(label, grams) ?? []);
  // What one tin or packet holds is the same drained or not, frozen or not; a packet of dry rice is none of cooked.
  const isBoiled = (state: string | null) => state === 'cooked' || state === 'dry';
  const others =
    entry && !isBoiled(entry.state)
      ? (byName().get(foldName(entry.called)) ?? []).filter(
          (other) => other !== entry && !isBoiled(other.state),
        )
      : [];
  const packs = others
    .flatMap((other) => other.weights)
    .filter(({ unit }) => unitNamed(unit)?.holds === true);
  return [...own, ...file, ...packs.map(({ unit, how, grams }) => ({ unit, how, grams, isTable: false }))];
}

const mlOf = (name: string) => unitNamed(name)?.ml;

/** The best of several weights for one unit: the one whose words the line says. */
export function best(list: readonly Known[], said: ReadonlySet<string>): Known | undefined {
  let top: { known: Known; score: number } | undefined;
  for (const known of list) {
    const missing = known.how.filter((word) => !said.has(word)).length;
    const score = (known.how.length - missing) * 2 - missing * 3 - (known.isTable ? 0.5 : 0);
    if (!top || score > top.score) top = { known, score };
  }
  return top?.known;
}

/** Grams in a millilitre, from the food's own cups and spoons; the measure nearest in size to the one asked speaks. */
export function gramsPerMl(scale: Scale, ml: number, said: ReadonlySet<string>): number | undefined {
  const volumes = knownWeights(scale).filter(
    ({ unit }) => mlOf(unit) !== undefined && unitNamed(unit)?.loose !== true,
  );
  if (volumes.length === 0) return undefined;
  const missing = (known: Known) => known.how.filter((word) => !said.has(word)).length;
  const hits = (known: Known) => known.how.length - missing(known);
  const far = (known: Known) => Math.abs(Math.log(mlOf(known.unit)! / ml));
  const fits = volumes.toSorted(
    (a, b) =>
      missing(a) - missing(b) ||
      hits(b) - hits(a) ||
      Number(a.isTable) - Number(b.isTable) ||
      far(a) - far(b),
  );
  // 'sliced' beats the plain cup where the line says so; otherwise the plain one nearest in size.
  const said1 = volumes
    .filter((known) => known.how.length > 0 && missing(known) === 0)
    .toSorted((a, b) => hits(b) - hits(a) || far(a) - far(b));
  const pick = said1[0] ?? fits[0]!;
  return pick.grams / mlOf(pick.unit)!;
}
