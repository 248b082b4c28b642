import { residualMoistureBand, usualSolidsErrorFraction } from '#core/balance.ts';
import type { BatchFacts } from '#core/meal.ts';
import type { Batch, Weighing } from '#core/records.ts';
import { Doubt, Refusal } from '#core/refusal.ts';
import type { Settings } from '#core/settings.ts';
import { isBelowSolids, netWeights, weighingDoubt } from '#core/weighing.ts';
import type { DryAbout } from '#words/dry-phrases.ts';
import { sayG, sayNumber } from '#words/say.ts';

/** What a weighing tells of each tray, or with tray 0 of all. @throws Refusal when weights and trays do not agree */
export function weighedTrays(
  batch: Batch,
  weights: readonly number[],
  tray: number | undefined,
  gross: boolean,
  settings: Settings,
): Omit<Weighing, 'atMs'>[] {
  const own = batch.trays.every((t) => t.tareG > 0) ? batch.trays.map((t) => t.tareG) : settings.trayTaresG;
  const count = batch.trays.length;
  if (tray !== undefined) {
    if (!batch.trays.some((t) => t.no === tray)) {
      throw new Refusal(
        'no-such-tray',
        `B${batch.no} has ${count} tray${count === 1 ? '' : 's'}; there is no tray ${tray}.`,
      );
    }
    if (weights.length !== 1)
      throw new Refusal('one-weight', `One weight belongs to tray ${tray}; I read ${weights.length}.`);
    const tares = own.length > 1 ? own.slice(tray - 1, tray) : own;
    return [{ trayNo: tray, netG: netWeights(weights, gross, tares)[0]!.netG }];
  }
  if (weights.length === count)
    return netWeights(weights, gross, own).map(({ netG }, i) => ({ trayNo: batch.trays[i]!.no, netG }));
  if (weights.length === 1) {
    if (gross)
      throw new Refusal(
        'gross-total',
        'A weight of all trays together cannot be taken "gross"; weigh them one by one.',
      );
    return [{ trayNo: 0, netG: weights[0]! }];
  }
  throw new Refusal(
    'tray-count',
    `B${batch.no} lies on ${count === 1 ? 'one tray' : `${count} trays`}, and I read ${weights.length} weights. Give ${count === 1 ? 'one' : `${count}, or one for the whole batch, or "tray 2 209 g"`}.`,
  );
}

/** Holds a weighing against what was loaded, what was weighed last, and the solids. @throws Refusal, Doubt */
export function questionWeighing(
  batch: Batch,
  before: BatchFacts,
  weighed: readonly Omit<Weighing, 'atMs'>[],
  sure: boolean,
  settings: Settings,
): void {
  const g = (value: number) => sayG(value, settings.units);
  for (const { trayNo, netG } of weighed) {
    const isTotal = trayNo === 0;
    const what = isTotal ? `B${batch.no}` : `Tray ${trayNo} of B${batch.no}`;
    const loadedG = isTotal ? before.wetG : batch.trays.find((t) => t.no === trayNo)!.wetG;
    const lastG =
      (isTotal ? before.dryG : batch.weighings.findLast((w) => w.trayNo === trayNo)?.netG) ?? null;
    const doubt = weighingDoubt({ netG, loadedG, lastG, isTotal }, settings.scaleG);
    if (doubt === 'above loaded') {
      throw new Refusal(
        'above-loaded',
        `${what} was loaded with ${g(loadedG)} and cannot weigh ${g(netG)} now. Was the tray on the scale? Then add "gross".`,
      );
    }
    if (doubt === 'above last' && !sure) {
      throw new Doubt(
        'above-last',
        `${what} weighed ${g(lastG!)} last time and ${g(netG)} now: drying food does not gain. Is it right?`,
      );
    }
  }
  const isWhole = weighed.length === batch.trays.length || weighed[0]!.trayNo === 0;
  const totalG = weighed.reduce((sum, w) => sum + w.netG, 0);
  if (!sure && isWhole && isBelowSolids(totalG, before.totals.solidsG)) {
    throw new Doubt(
      'below-solids',
      `${g(totalG)} is less than the ${g(before.totals.solidsG)} of solids that the recipe's lines put on the trays. Was only a part of the pot loaded? Then tell me what the pot weighed: /recipe ${batch.recipe.name} pot 3.9 kg. Or is the weight right?`,
    );
  }
}

/** What the recipe's solids say about the weight: it catches gross errors and proves nothing finer. */
export function secondWitness({ dryG, totals, expectedDryG }: BatchFacts, settings: Settings): string[] {
  if (dryG === null || !(totals.solidsG > 0) || expectedDryG === null) return [];
  const band = residualMoistureBand(dryG, totals.solidsG);
  const percent = (fraction: number) => `${sayNumber(Math.round(fraction * 1000) / 10)} %`;
  if (dryG < totals.solidsG)
    return [
      `That is ${sayG(totals.solidsG - dryG, settings.units)} below the recipe's solids of ${sayG(totals.solidsG, settings.units)}: within what a food table can be wrong by (${percent(usualSolidsErrorFraction)}), but is every line and weight right?`,
    ];
  return [
    `The recipe's solids predict about ${sayG(expectedDryG, settings.units)} when dry; by them ${percent(band.fraction)} of this is still water (${percent(band.lowFraction)} to ${percent(band.highFraction)}, as a food table goes). A second witness, no proof.`,
  ];
}

/** A batch as the words about its dryness need it. */
export function dryAbout(batch: Batch): DryAbout {
  return {
    no: batch.no,
    meal: batch.recipe.name,
    unread: batch.recipe.lines.flatMap((line, i) =>
      line.state === 'asked' ? [{ position: i + 1, typed: line.typed }] : [],
    ),
  };
}
