import { expectedDryG, pouchWaterMl, waterRemovedG } from './balance.ts';
import { type Balance, type DryVerdict, dryVerdict, heard } from './dry-verdict.ts';
import { type CampGood, scaledGoods } from './camp.ts';
import { type CheckWeight, type Steadiness, asTotal, canHaveBeenSteady, steadiness } from './dryness.ts';
import { mixedDryG, mixedWetG } from './mixed-weights.ts';
import type { Batch, Mix } from './records.ts';
import { runningMs, stopsOf } from './running.ts';
import type { Settings } from './settings.ts';
import { type Totals, scaleTotals, shareOnTrays } from './solids.ts';
import { type Composer, type RecipeFacts, recipeFacts } from './recipe-facts.ts';

export {
  type Composer,
  ingredientsOf,
  isSaltUnweighed,
  type RecipeFacts,
  recipeFacts,
  recipeIngredients,
} from './recipe-facts.ts';

/** A batch in figures: what lies on the trays and how far it is dried. */
export interface BatchFacts {
  readonly wetG: number;
  /** What lies on the trays of all that the recipe's lines name. */
  readonly totals: Totals;
  /** The same with what is added at camp. */
  readonly eaten: Totals;
  readonly camp: readonly CampGood[];
  readonly servings: number;
  /** Predicted from the solids and the expected residual moisture; null when no solids are known. */
  readonly expectedDryG: number | null;
  /** The latest weight of every tray together, g; null until each was weighed. */
  readonly dryG: number | null;
  readonly lastWeighedAtMs: number | null;
  readonly recipe: RecipeFacts;
}

/**
 * Weighings of one moment together, as the dryness sum takes them, on the dryer's own clock. A tray that comes a second time in the same moment
 * was weighed again.
 */
export function checkWeights(batch: Batch): CheckWeight[] {
  const stops = stopsOf(batch.events);
  const occasions: Batch['weighings'][number][][] = [];
  for (const weighing of batch.weighings) {
    const last = occasions.at(-1);
    const goesOn =
      last !== undefined &&
      last[0]!.atMs === weighing.atMs &&
      last.every((w) => w.trayNo > 0 && weighing.trayNo > 0 && w.trayNo !== weighing.trayNo);
    if (goesOn) last.push(weighing);
    else occasions.push([weighing]);
  }
  return occasions.map((weighed) => {
    const [{ atMs: momentMs, trayNo, netG }] = weighed as [Batch['weighings'][number]];
    const atMs = runningMs(momentMs, stops);
    if (trayNo === 0) return { atMs, trays: netG };
    return { atMs, trays: batch.trays.map(({ no }) => weighed.find((w) => w.trayNo === no)?.netG ?? null) };
  });
}

/** The weighings of the whole batch on the dryer's own clock, in order of time: weighed together, or every tray at one moment. */
export const wholeWeights = (batch: Batch): { readonly atMs: number; readonly massG: number }[] =>
  checkWeights(batch)
    .flatMap(asTotal)
    .map(({ atMs, g }) => ({ atMs, massG: g }))
    .toSorted((a, b) => a.atMs - b.atMs);

/** The latest weight of the whole batch, g: weighed together, or tray by tray since then; null until all were weighed. */
export function latestDryG(batch: Batch): number | null {
  const wholeAt = batch.weighings.findLastIndex((w) => w.trayNo === 0);
  const since = batch.weighings.slice(wholeAt + 1);
  const latest = batch.trays.map(({ no }) => since.findLast((w) => w.trayNo === no)?.netG);
  if (latest.every((g) => g !== undefined)) return latest.reduce((sum, g) => sum + g, 0);
  if (wholeAt >= 0) return batch.weighings[wholeAt]!.netG;
  const ever = batch.trays.map(({ no }) => batch.weighings.findLast((w) => w.trayNo === no)?.netG);
  return ever.every((g) => g !== undefined) ? ever.reduce((sum, g) => sum + g, 0) : null;
}

/** @param recipe the facts of the batch's recipe, where they are known already */
export function batchFacts(
  batch: Batch,
  composer: Composer,
  settings: Settings,
  recipe: RecipeFacts = recipeFacts(batch.recipe, composer),
): BatchFacts {
  if (batch.mix) return mixedFacts(batch.mix, batch.recipe.servings, recipe);
  const wetG = batch.trays.reduce((sum, tray) => sum + tray.wetG, 0);
  const share = shareOnTrays(wetG, batch.potG);
  const totals = scaleTotals(recipe.totals, batch.factor * share);
  return {
    wetG,
    totals,
    eaten: scaleTotals(recipe.eaten, batch.factor * share),
    camp: scaledGoods(recipe.camp, batch.factor * share),
    servings: batch.recipe.servings * batch.factor * share,
    expectedDryG: totals.solidsG > 0 ? expectedDryG(totals.solidsG, settings.residualMoisture) : null,
    dryG: latestDryG(batch),
    lastWeighedAtMs: batch.weighings.at(-1)?.atMs ?? null,
    recipe,
  };
}

/** One pouch of a mixture; its recipe is of one pouch already. */
function mixedFacts(mix: Mix, servings: number, recipe: RecipeFacts): BatchFacts {
  const dryG = mixedDryG(mix);
  return {
    wetG: mixedWetG(mix),
    totals: recipe.totals,
    eaten: recipe.eaten,
    camp: recipe.camp,
    servings,
    expectedDryG: dryG,
    dryG,
    lastWeighedAtMs: null,
    recipe,
  };
}

/** Whether a batch has stopped losing weight, by all its weighings. */
export function steadinessOf(batch: Batch, settings: Settings): Steadiness {
  return steadiness(checkWeights(batch), {
    scaleResolutionG: settings.scaleG,
    minGapHours: settings.steadyGapHours,
  });
}

/** One pouch in figures. */
export interface PouchFacts {
  readonly waterMl: number;
  readonly servings: number;
  /** Energy and sodium of the portion as it is eaten, with what is added at camp. */
  readonly kcal: number;
  readonly sodiumMg: number;
  /** Carried beside the pouch and added at camp. */
  readonly camp: readonly CampGood[];
}

/**
 * A pouch's part of its batch, by dry weight.
 * @param dryG food in the pouch, g
 * @param correction the household's learnt water correction for this meal, no unit; 0 for what is eaten dry
 * @throws Refusal when the batch's weights cannot be
 */
export function pouchFacts(dryG: number, batch: BatchFacts & { dryG: number }, correction = 1): PouchFacts {
  const part = dryG / batch.dryG;
  return {
    waterMl: correction === 0 ? 0 : pouchWaterMl(dryG, batch.wetG, batch.dryG, correction),
    servings: batch.servings * part,
    kcal: batch.eaten.kcal * part,
    sodiumMg: batch.eaten.sodiumMg * part,
    camp: scaledGoods(batch.camp, part),
  };
}

/** What the balance is made of; undefined while the batch was not weighed whole. */
export function balanceOf({ wetG, dryG, totals }: BatchFacts): Balance | undefined {
  return dryG === null ? undefined : { wetG, dryG, solidsG: totals.solidsG, fatG: totals.fatG };
}

/** Whether a batch may be sealed for the shelf, by all that was weighed, measured and said of it. */
export function dryVerdictOf(batch: Batch, facts: BatchFacts, settings: Settings): DryVerdict {
  return dryVerdict(
    steadinessOf(batch, settings),
    balanceOf(facts),
    batch.witnesses,
    batch.weighings.at(-1)?.atMs ?? null,
  );
}

/**
 * Whether what was sealed as dry is contradicted by the records as they stand now: a line, a pot weight or a check weight
 * may have been put right since.
 */
export function isRefusedNow(batch: Batch, facts: BatchFacts): boolean {
  const balance = balanceOf(facts);
  return (
    balance === undefined ||
    !canHaveBeenSteady(checkWeights(batch)) ||
    heard(balance, batch.witnesses, batch.weighings.at(-1)?.atMs ?? null).is === 'not dry'
  );
}

/** When the tray that was weighed longest ago was weighed last, ms; null until all were weighed. */
export function weighedThroughAtMs(batch: Batch): number | null {
  const wholeAt = batch.weighings.findLast((w) => w.trayNo === 0)?.atMs ?? -Infinity;
  const through = Math.min(
    ...batch.trays.map(({ no }) =>
      Math.max(wholeAt, batch.weighings.findLast((w) => w.trayNo === no)?.atMs ?? -Infinity),
    ),
  );
  return Number.isFinite(through) ? through : null;
}

/**
 * What a recipe predicts for a meal nobody has dried yet: ml of water for each g of dry food.
 * @returns undefined when the recipe's solids are not known
 */
export function expectedMlPerDryG(recipe: RecipeFacts, residualMoisture: number): number | undefined {
  const { solidsG } = recipe.totals;
  if (!(solidsG > 0) || recipe.finishedG <= solidsG) return undefined;
  const dryG = expectedDryG(solidsG, residualMoisture);
  return dryG < recipe.finishedG ? waterRemovedG(recipe.finishedG, dryG) / dryG : undefined;
}
