import { command } from '#chat/command.ts';
import { batchNumbered, factsOfBatch } from '#house/figures.ts';
import { steadyPhrase, wetCaution } from '#words/phrases.ts';
import { weighedNet } from '#house/trays.ts';
import { residualMoistureBand, usualSolidsErrorFraction } from '#core/balance.ts';
import { steadyThresholdG } from '#core/dryness.ts';
import { type BatchFacts, steadinessOf, wetByBalance } from '#core/meal.ts';
import type { Batch, Weighing } from '#core/records.ts';
import { Doubt, Refusal } from '#core/refusal.ts';
import type { Settings } from '#core/settings.ts';
import { batchCode, flag, optional, part, trayWeights } from '#words/parts.ts';
import { sayCodes, sayG, sayNumber } from '#words/say.ts';
import { pastMoment } from '#words/when.ts';

/** 'tray 2': the number behind the word. */
const oneTray = optional(
  part<number>('which tray, such as tray 2', (reading) => {
    const index = [...reading.left()].find(
      (i) =>
        reading.all[i]!.is === 'number' && reading.wordBefore(i, 'tray') && reading.all[i]!.typed.length <= 2,
    );
    const token = index === undefined ? undefined : reading.all[index]!;
    if (index === undefined || token?.is !== 'number') return undefined;
    reading.take(index, index - 1);
    return token.value;
  }),
);

export default command({
  name: 'weigh',
  alsoCalled: ['weighed', 'check'],
  usage: '/weigh <batch> <weights> [gross] · /weigh <batch> tray 2 <weight>',
  summary: 'a check weight during drying: what changed, whether it is steady',
  examples: [
    '/weigh B4 214 209 212 205',
    '/weigh B4 tray 2 209 g',
    '/weigh B4 840 g',
    '/weigh B4 726 721 724 717 g gross at 14:30',
  ],
  help: [
    'One weight for each tray, or one for the whole batch. Every weighing is kept with its time.',
    '"yesterday 18:00", "at 14:30" or "2 h ago" tells when, if not now.',
  ],
  records: true,
  doubtRepeats: true,
  takes: {
    batch: batchCode,
    tray: oneTray,
    gross: flag('gross'),
    at: pastMoment,
    weights: trayWeights,
    trays: flag('trays', 'tray'),
  },
  run: ({ batch: no, tray, gross, at, weights }, house) => {
    const batch = batchNumbered(house, no);
    const atMs = at ?? house.nowMs;
    if (atMs < batch.loadedAtMs) {
      throw new Refusal(
        'before-loading',
        `B${no} was loaded after that; a check weight comes later than the loading.`,
      );
    }
    const sealed = house.pouches.ofBatch(no);
    if (sealed.length > 0) {
      throw new Refusal(
        'sealed-already',
        `${sayCodes(sealed)} of B${no} ${sealed.length === 1 ? 'is' : 'are'} sealed, so the trays no longer hold the whole batch. Check weights come before sealing; /undo takes the sealing back.`,
      );
    }
    const before = factsOfBatch(house, batch);
    const weighed = weighedTrays(batch, weights, tray, gross === true, house.settings).map((one) => ({
      ...one,
      atMs,
    }));
    question(batch, before, weighed, house.sure, house.settings);
    house.batches.weigh(batch.id, weighed);
    const weighedBatch = batchNumbered(house, no);
    const after = factsOfBatch(house, weighedBatch);
    const steady = steadinessOf(weighedBatch, house.settings);
    return { no, meal: batch.recipe.name, before, after, weighed, steady, settings: house.settings };
  },
  say: ({ no, meal, before, after, weighed, steady, settings }) => {
    const g = (value: number) => sayG(value, settings.units);
    const sum = weighed.reduce((all, one) => all + one.netG, 0);
    const what =
      weighed.length === 1 && weighed[0]!.trayNo > 0 ? `tray ${weighed[0]!.trayNo} ${g(sum)}` : g(sum);
    const lines = [`B${no}, ${meal}: ${what} recorded.`];
    if (after.dryG !== null) {
      const gone = after.wetG - after.dryG;
      const lessG = before.dryG === null ? undefined : before.dryG - after.dryG;
      const last =
        lessG === undefined
          ? ''
          : lessG === 0
            ? ', the same as last time'
            : `, ${g(Math.abs(lessG))} ${lessG > 0 ? 'less' : 'more'} than last time`;
      lines.push(`The batch weighs ${g(after.dryG)}${last}; ${g(gone)} of water are gone.`);
    }
    lines.push(steadyPhrase(steady, settings), ...secondWitness(after, settings));
    const wet = steady.is === 'steady' ? wetByBalance(after) : undefined;
    if (wet !== undefined) {
      lines.push(wetCaution(wet));
    } else if (steady.is === 'steady') {
      lines.push(
        'Before sealing, open the thickest pieces: a cold or soft centre means ice (common practice).',
      );
      if (after.dryG !== null)
        lines.push(`Then: /seal 6 x ${Math.max(1, Math.floor(after.dryG / 6))} g B${no}`);
    }
    return { group: lines.join('\n'), did: `weighed B${no}: ${g(sum)}` };
  },
});

function weighedTrays(
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
    return [{ trayNo: tray, netG: weighedNet(weights, gross, settings, tares)[0]!.netG }];
  }
  if (weights.length === count) {
    return weighedNet(weights, gross, settings, own).map(({ netG }, i) => ({
      trayNo: batch.trays[i]!.no,
      netG,
    }));
  }
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
    `B${batch.no} lies on ${count} trays, and I read ${weights.length} weights. Give ${count}, or one for the whole batch, or "tray 2 209 g".`,
  );
}

/** Holds a weighing against what was loaded, what was weighed last, and the solids. */
function question(
  batch: Batch,
  before: BatchFacts,
  weighed: readonly Omit<Weighing, 'atMs'>[],
  sure: boolean,
  settings: Settings,
): void {
  const g = (value: number) => sayG(value, settings.units);
  for (const { trayNo, netG } of weighed) {
    const what = trayNo === 0 ? `B${batch.no}` : `Tray ${trayNo} of B${batch.no}`;
    const loadedG = trayNo === 0 ? before.wetG : batch.trays.find((t) => t.no === trayNo)!.wetG;
    if (netG > loadedG + settings.scaleG) {
      throw new Refusal(
        'above-loaded',
        `${what} was loaded with ${g(loadedG)} and cannot weigh ${g(netG)} now. Was the tray on the scale? Then add "gross".`,
      );
    }
    const lastG = trayNo === 0 ? before.dryG : batch.weighings.findLast((w) => w.trayNo === trayNo)?.netG;
    if (sure || lastG === undefined || lastG === null) continue;
    if (netG > lastG + steadyThresholdG(lastG, settings.scaleG)) {
      throw new Doubt(
        'above-last',
        `${what} weighed ${g(lastG)} last time and ${g(netG)} now: drying food does not gain. Is it right?`,
      );
    }
  }
  const totalG =
    weighed.length === batch.trays.length || weighed[0]!.trayNo === 0
      ? weighed.reduce((sum, w) => sum + w.netG, 0)
      : undefined;
  const { solidsG } = before.totals;
  if (!sure && totalG !== undefined && totalG < solidsG * (1 - usualSolidsErrorFraction)) {
    throw new Doubt(
      'below-solids',
      `${g(totalG)} is less than the ${g(solidsG)} of solids that the recipe's lines put on the trays. Was only a part of the pot loaded? Then tell me what the pot weighed: /recipe ${batch.recipe.name} pot 3.9 kg. Or is the weight right?`,
    );
  }
}

/** What the recipe's solids say about the weight: it catches gross errors and proves nothing finer. */
function secondWitness({ dryG, totals, expectedDryG, recipe }: BatchFacts, settings: Settings): string[] {
  if (dryG === null || !(totals.solidsG > 0) || expectedDryG === null) return [];
  const band = residualMoistureBand(dryG, totals.solidsG);
  const lines: string[] = [];
  const percent = (fraction: number) => `${sayNumber(Math.round(fraction * 1000) / 10)} %`;
  if (dryG < totals.solidsG) {
    lines.push(
      `That is ${sayG(totals.solidsG - dryG, settings.units)} below the recipe's solids of ${sayG(totals.solidsG, settings.units)}: within what a food table can be wrong by (${percent(usualSolidsErrorFraction)}), but is every line and weight right?`,
    );
  } else {
    lines.push(
      `The recipe's solids predict about ${sayG(expectedDryG, settings.units)} when dry; by them ${percent(band.fraction)} of this is still water (${percent(band.lowFraction)} to ${percent(band.highFraction)}, as a food table goes). A second witness, no proof.`,
    );
  }
  if (recipe.unresolved.length > 0)
    lines.push('Some lines of the recipe are not understood, so the solids are too low.');
  return lines;
}
