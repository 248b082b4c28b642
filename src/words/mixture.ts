import { Refusal } from '#core/refusal.ts';
import { Ambiguous } from './ambiguous.ts';
import { isFiller } from './fillers.ts';
import { around, batchIn, textOf } from './mixture-batch.ts';
import { type Names, part, quantities } from './part.ts';
import type { Reading } from './reading.ts';

/** So much of a batch in each pouch. */
export interface FromBatch {
  readonly batch: number;
  readonly eachG: number;
}

/** One pouch from several things, as it was told. */
export interface MixtureTold {
  readonly count: number;
  readonly parts: readonly FromBatch[];
  /** Lines of what comes from the cupboard, for one pouch, as typed; with the grams that stand in each. */
  readonly goods: readonly { readonly typed: string; readonly grams: number | null }[];
}

const joins = new Set(['+', '&', 'plus', 'and', 'with']);
/** The free tokens between two joins. */
interface Piece {
  readonly at: readonly number[];
  /** A plus stands before it: it goes in, amount or not. */
  readonly isAdded: boolean;
}

function piecesOf(reading: Reading): { pieces: Piece[]; joints: number[] } {
  const pieces: { at: number[]; isAdded: boolean }[] = [{ at: [], isAdded: false }];
  const joints: number[] = [];
  for (const index of reading.left()) {
    if (isJoin(reading, index)) {
      joints.push(index);
      pieces.push({ at: [], isAdded: ['+', 'plus'].includes(reading.all[index]!.plain) });
    } else pieces.at(-1)!.at.push(index);
  }
  const isSaying = (index: number) => {
    const { plain, is } = reading.all[index]!;
    return is !== 'number' && !around.has(plain) && !(is === 'word' && isFiller(plain));
  };
  // A number alone counts the pouches.
  return { pieces: pieces.filter(({ at }) => at.some(isSaying)), joints };
}

/** A comma joins only what begins with an amount or a batch. */
function isJoin(reading: Reading, index: number): boolean {
  const next = reading.at(index + 1)?.is;
  const { plain } = reading.all[index]!;
  return (
    joins.has(plain) || (plain === ',' && (next === 'quantity' || next === 'number' || next === 'batch'))
  );
}

/** Whether a piece holds a batch, or words that are more than 'each' and 'pouches'. */
const namesThing = (reading: Reading, at: readonly number[]): boolean =>
  at.some((index) => {
    const { is, plain } = reading.all[index]!;
    return is === 'batch' || is === 'quoted' || (is === 'word' && !around.has(plain) && !isFiller(plain));
  });

/**
 * '1 x 5 g B1 + 5 g' and a picture behind it: nothing says what is added, and the same again is not meant.
 * @throws Refusal 'what-of'
 */
function refuseNameless(reading: Reading, pieces: readonly Piece[]): void {
  const is = ({ at }: Piece, ...kinds: string[]) =>
    at.some((index) => kinds.includes(reading.all[index]!.is));
  const [first] = pieces;
  if (!first || !is(first, 'batch') || !is(first, 'quantity')) return;
  const weight = first.at.findIndex((index) => reading.all[index]!.is === 'quantity');
  const batch = first.at.findIndex((index) => reading.all[index]!.is === 'batch');
  // 'B4 95 g + 140 g' are two pouches of B4.
  if (batch < weight) return;
  const bare = pieces.find(
    (piece) => piece.isAdded && is(piece, 'quantity') && !is(piece, 'number', 'batch'),
  );
  if (bare && !namesThing(reading, bare.at))
    throw new Refusal('what-of', `I read "${textOf(reading, bare.at)}", but not of what.`);
}

/** What stands in one piece. */
interface Source extends Piece {
  readonly count: { readonly value: number; readonly index: number } | undefined;
  readonly eachG: number | null;
  /** The batch's number; undefined for what comes from the cupboard. */
  readonly batch: number | undefined;
}

/**
 * '4 x 76 g B3 + 72 g B4', '3 x 80 g curry + 15 g milk powder': pouches of which each holds something of all.
 * Undefined where only one thing is named.
 * @throws Refusal or Ambiguous for what is joined and cannot be one pouch
 */
export const mixtureTold = part<MixtureTold>('what goes into each pouch', (reading, names) => {
  const { pieces, joints } = piecesOf(reading);
  // '4 x 95 g and 2 x 140 g of B4' are pouches of one batch: only what names a thing of its own is one.
  if (pieces.filter(({ at }) => namesThing(reading, at)).length < 2) {
    refuseNameless(reading, pieces);
    return undefined;
  }
  const view = reading.without([]);
  const sources = pieces.map((piece) => sourceOf(view, piece, names));
  const named = sources.filter((source) => source.batch !== undefined || isCupboard(reading, source));
  if (named.length < 2) return undefined;
  const bare = sources.find((source) => !named.includes(source));
  if (bare) throw new Refusal('what-of', `I read "${textOf(reading, bare.at)}", but not of what.`);
  const count = countOfAll(reading, sources);
  const told = { count, ...apart(reading, sources) };
  reading.remarks.push(...view.remarks);
  reading.take(...joints, ...pieces.flatMap(({ at }) => at));
  const pouches = [...reading.left()].filter((i) => isPouchWord(reading, i + 1) && isCount(reading, i));
  reading.take(...pouches);
  reading.takeWords(...around);
  return told;
});

function sourceOf(view: Reading, { at, isAdded }: Piece, names: Names): Source {
  const others = [...view.left()].filter((index) => !at.includes(index));
  const alone = view.without(others);
  const weighed = quantities(alone, 'mass')[0];
  const bare = weighed ? undefined : bareGrams(alone);
  const mass = weighed ?? bare;
  const count = mass === undefined ? undefined : countBefore(alone, mass.index);
  const hidden = [mass?.index, count?.index].filter((index) => index !== undefined);
  const quoted = at.some((index) => view.all[index]!.is === 'quoted');
  const batch = quoted ? undefined : batchIn(view, at, view.without([...others, ...hidden]), names);
  // What comes from the cupboard is read as an ingredient line, which knows its own amounts.
  if (bare && batch === undefined) return { at, isAdded, count: undefined, eachG: null, batch };
  if (bare) view.remarks.push(`${bare.value} taken as ${bare.value} g`);
  return { at, isAdded, count, eachG: mass?.value ?? null, batch };
}

/** '60 chilli': a number that is no count is grams. */
function bareGrams(reading: Reading): { value: number; index: number } | undefined {
  const index = [...reading.left()].findLast((i) => {
    const next = reading.all[i + 1]?.plain ?? '';
    return reading.all[i]!.is === 'number' && !/^(?:x|×|pouch|pouches|bags?)$/.test(next);
  });
  const token = index === undefined ? undefined : reading.all[index];
  return index !== undefined && token?.is === 'number' && token.value >= 5
    ? { value: token.value, index }
    : undefined;
}

/** The whole number in front of a weight: '4 x 76 g', '4 pouches of 76 g', '4 pouches: 76 g'. */
function countBefore(reading: Reading, mass: number): Source['count'] {
  for (let i = mass - 1; i >= 0; i--) {
    const token = reading.at(i);
    if (token?.is === 'number' && Number.isInteger(token.value)) return { value: token.value, index: i };
    if (token === undefined) continue;
    if (token.is === 'quantity') return undefined;
    if (!around.has(token.plain) && !isFiller(token.plain)) return undefined;
  }
  return undefined;
}

/** Something that is no batch, with a weight or a number of its own or behind a plus: '15 g milk powder', '1 oil sachet'. */
function isCupboard(reading: Reading, { at, batch, isAdded }: Source): boolean {
  if (batch !== undefined) return false;
  const tokens = at.map((index) => reading.all[index]!);
  return (
    (isAdded || tokens.some(({ is }) => is === 'quantity' || is === 'number')) &&
    tokens.some(
      ({ is, plain }) => is === 'quoted' || (is === 'word' && !around.has(plain) && !isFiller(plain)),
    )
  );
}

/** How many pouches: said once, in front of the first thing. */
function countOfAll(reading: Reading, sources: readonly Source[]): number {
  const counts = sources.filter(({ batch }) => batch !== undefined).flatMap(({ count }) => count ?? []);
  const [first, second] = counts;
  const alone = [...reading.left()].find((i) => isPouchWord(reading, i + 1) && isCount(reading, i));
  const value = first?.value ?? (alone === undefined ? 1 : (reading.all[alone] as { value: number }).value);
  if (second !== undefined) {
    const { from, to } = reading.all[second.index]!;
    const x = reading.all[second.index + 1]!;
    throw new Ambiguous(
      `I read ${first!.value} and ${second.value} pouches. Does each hold something of all, or are they sealed apart?`,
      [
        {
          label: `${value} pouches, each of all`,
          request: reading.rewritten([{ from, to: x.plain === 'x' ? x.to : to, into: '' }]),
        },
        {
          label: `Apart: ${textOf(reading, sources[0]!.at)} first`,
          request: textOf(reading, sources[0]!.at),
        },
      ],
    );
  }
  if (first === undefined && alone === undefined) reading.remarks.push('one pouch');
  if (!(value >= 1 && value <= 500))
    throw new Refusal('bad-count', `${value} is no number of pouches; a whole number from 1 to 500 is.`);
  return value;
}

const isPouchWord = (reading: Reading, index: number) =>
  /^(?:pouch|pouches|bags?)$/.test(reading.all[index]?.plain ?? '');
function isCount(reading: Reading, index: number): boolean {
  const token = reading.all[index];
  return token?.is === 'number' && Number.isInteger(token.value);
}

/** Batches and what comes from the cupboard; the same batch twice is one part. */
function apart(reading: Reading, sources: readonly Source[]): Pick<MixtureTold, 'parts' | 'goods'> {
  const parts = new Map<number, number>();
  const goods: MixtureTold['goods'][number][] = [];
  for (const { at, batch, eachG } of sources) {
    if (batch === undefined) {
      goods.push({ typed: lineOf(reading, at), grams: eachG });
      continue;
    }
    if (eachG === null)
      throw new Refusal(
        'how-much',
        `I read "${textOf(reading, at)}", but not how much of it each pouch holds.`,
      );
    if (!(eachG > 0))
      throw new Refusal('not-positive', `${eachG} g of B${batch} is not a weight: it must be above zero.`);
    parts.set(batch, (parts.get(batch) ?? 0) + eachG);
  }
  if (parts.size === 0)
    throw new Refusal('no-batch', 'None of that is a batch that was dried here. Name one, such as 76 g B3.');
  return { parts: [...parts].map(([batch, eachG]) => ({ batch, eachG })), goods };
}

/** The words of a line without those that only stand round it. */
function lineOf(reading: Reading, at: readonly number[]): string {
  const isAround = (index: number) => around.has(reading.all[index]!.plain);
  const from = at.findIndex((index) => !isAround(index));
  const to = at.findLastIndex((index) => !isAround(index));
  return textOf(reading, at.slice(from, to + 1)).replaceAll('"', '');
}
