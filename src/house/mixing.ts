import { oxygenFreeMostMoistureFraction } from '#core/balance.ts';
import { type Per100, totalsOf } from '#core/solids.ts';
import { pouchFacts } from '#core/meal.ts';
import { isDryGood } from '#core/mixed.ts';
import type { Batch, RecipeLine } from '#core/records.ts';
import { Refusal } from '#core/refusal.ts';
import { fatOfSolids } from '#core/sealing-plan.ts';
import type { LineResult } from '#foods/line.ts';
import type { FromBatch, MixtureTold } from '#words/mixture.ts';
import { mixName } from '#words/mixed-words.ts';
import { sayG } from '#words/say.ts';
import { areDryGoods } from './dryness.ts';
import { batchNumbered, composerOf, nameKey } from './figures.ts';
import type { House } from './house.ts';
import { withPackets } from './packets.ts';
import { asRecord, resolver } from './recipe-text.ts';
import { type DryPart, takeDry } from './take-dry.ts';

/** A mixture as it is about to be sealed: recorded, with the batches it was taken from. */
export interface Mixed {
  readonly batch: Batch;
  readonly taken: readonly { readonly part: DryPart; readonly eachG: number }[];
  /** Every part shown to be dry and fresh, and all from the cupboard known to be dry. */
  readonly isDry: boolean;
  /** A hygrometer showed every part dry; what comes from the cupboard was in no jar. */
  readonly isMeasuredDry: boolean;
  /** What keeps least, and its share of fat: its date is the date of the whole. */
  readonly least: { readonly called: string; readonly fatFraction: number };
}

/**
 * Fills pouches from several batches and from the cupboard; each batch gives what is taken of it.
 * @param servings of one pouch, where somebody said so; else those of the part that feeds most
 * @throws Refusal for a batch that cannot give it, for food whose weight is not known or that is not dry
 */
export function mixNow(
  house: House,
  { count, parts, goods: told }: MixtureTold,
  at: { readonly sealedAtMs: number; readonly unchecked: boolean; readonly servings: number | undefined },
): Mixed {
  const taken = parts.map(({ batch, eachG }: FromBatch) => ({
    part: takeDry(house, batch, Array<number>(count).fill(eachG), at.sealedAtMs, at.unchecked),
    eachG,
  }));
  const goods = goodsRead(house, told);
  if (!at.unchecked) refuseDamp(house, goods);
  const name = mixName(
    taken.map(({ part }) => part.batch.recipe.name),
    goods.map(({ called }) => called),
  );
  const servings =
    at.servings ?? Math.max(...taken.map(({ part, eachG }) => pouchFacts(eachG, part.facts).servings));
  const recipe = house.recipes.keepBeside(
    nameKey(name),
    { name, servings, potG: null, method: '', eaten: null, lines: goods, mentions: [] },
    at.sealedAtMs,
  );
  const { no } = house.batches.mix(
    recipe,
    taken.map(({ part, eachG }) => ({ batch: part.batch, eachG })),
    at.sealedAtMs,
  );
  return {
    batch: batchNumbered(house, no),
    taken,
    isDry: taken.every(({ part }) => part.isDry) && areDryGoods(house, goods),
    isMeasuredDry: goods.length === 0 && taken.every(({ part }) => part.isMeasuredDry),
    least: leastKeeping(house, taken, goods),
  };
}

const mostPercent = 100 * oxygenFreeMostMoistureFraction;

/** Lines from the cupboard, each with its grams. @throws Refusal 'how-much' */
function goodsRead(house: House, told: MixtureTold['goods']): RecipeLine[] {
  const resolve = resolver(house);
  const read = withPackets(house);
  return told.map(({ typed, grams }) => {
    const result: LineResult = resolve(typed);
    const line = read(asRecord(result));
    if (line.camp !== null)
      throw new Refusal(
        'at-camp',
        `"${typed}" is added at camp, so it is not sealed in: leave it out here, or give it a line of its recipe.`,
      );
    const g = line.grams ?? result.grams ?? grams;
    if (g === null || !(g > 0))
      throw new Refusal(
        'how-much',
        `I read "${typed}", but not how many grams each pouch holds. Say so: + 10 g ${line.called}.`,
      );
    return { ...line, grams: g };
  });
}

/** @throws Refusal 'not-dry' naming what from the cupboard is not known to be dry */
function refuseDamp(house: House, goods: readonly RecipeLine[]): void {
  if (areDryGoods(house, goods)) return;
  const composer = composerOf(house);
  const reasons = goods.flatMap(({ called, ndb, state, question, typed }) => {
    const per100 = ndb === null ? undefined : composer(ndb);
    if (state !== 'weighed' || question !== null)
      return [`"${typed}" is not understood: ${(question ?? 'what is it').replace(/[.?]+$/u, '')}`];
    if (isDryGood(per100)) return [];
    return per100?.waterG == null
      ? [`nobody knows how much water is in ${called}`]
      : [
          `${called}, without its fat, is ${Math.round((100 * per100.waterG) / (100 - (per100.fatG ?? 0)))} % water, and ${mostPercent} % is the most`,
        ];
  });
  throw new Refusal(
    'not-dry',
    `That pouch is not shown to be dry: ${reasons.join('; ')}. Beside dried food and without oxygen that is where botulism can grow. Leave it out and add it at camp, or seal the whole as "unchecked" and keep it frozen.`,
  );
}

/** Of all that goes in, what keeps least by the policy. */
function leastKeeping(
  house: House,
  taken: readonly { readonly part: DryPart; readonly eachG: number }[],
  goods: readonly RecipeLine[],
): Mixed['least'] {
  const composer = composerOf(house);
  const all = [
    ...taken.map(({ part: { batch, facts } }) => ({
      called: `${batch.recipe.name} (B${batch.no})`,
      fatFraction: fatOfSolids(facts.totals) ?? 1,
    })),
    ...goods.map(({ called, ndb, grams }) => ({
      called,
      fatFraction: fatOf(ndb === null ? undefined : composer(ndb), grams),
    })),
  ];
  // The fatter keeps less, whatever else.
  return all.reduce((least, one) => (one.fatFraction > least.fatFraction ? one : least));
}

function fatOf(per100: Per100 | undefined, grams: number | null): number {
  if (per100 === undefined || per100.fatG === null) return 1;
  return fatOfSolids(totalsOf([{ grams: grams ?? 100, food: '', per100 }])) ?? 1;
}

/** What is left of each batch, a line each. */
export function leftLines({ taken }: Mixed, { scaleG, units }: House['settings']): string[] {
  return taken.map(({ part: { batch, leftG } }) =>
    leftG <= scaleG
      ? `Nothing of B${batch.no} is left.`
      : `${sayG(leftG, units)} of B${batch.no} are left unsealed.`,
  );
}
