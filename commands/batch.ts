import { command } from '#chat/command.ts';
import { loadNow } from '#cards/load-list.ts';
import { factsOfBatch, recipeNamed } from '#house/figures.ts';
import { potOf } from '#house/one-pot.ts';
import { potTold } from '#words/load-parts.ts';
import { rawCaution } from '#words/phrases.ts';
import { mealOfBatch } from '#house/verdicts.ts';
import type { BatchFacts } from '#core/meal.ts';
import { hasRice, rawBeside } from '#core/cautions.ts';
import type { Batch, Recipe } from '#core/records.ts';
import { loadedWith } from '#core/running.ts';
import { cautionLines } from '#house/caution-lines.ts';
import { dryOf, isSealedFrom } from '#house/dryness.ts';
import { dryingAhead, loadsKnown } from '#house/forecast.ts';
import { aheadInShort, aheadWhy, nightLines } from '#house/forecast-said.ts';
import type { House } from '#house/house.ts';
import { besideCaution, coolingCaution } from '#words/cautions.ts';
import { netWeights } from '#core/weighing.ts';
import { depthMm, loads } from '#core/scaling.ts';
import type { Settings } from '#core/settings.ts';
import { factor, flag, massG, meal as mealName, optional, trayWeights } from '#words/parts.ts';
import { isoMoment, sayG, sayList, sayMoment, sayNumber } from '#words/say.ts';
import { pastMoment } from '#words/when.ts';

/** Lines are not exact; beyond this the trays hold something that no line names. Chosen. */
const moreThanNamedFraction = 1.1;

export default command({
  name: 'batch',
  alsoCalled: ['load'],
  usage: '/batch <recipe> [x1.5] trays <weights> [gross] [pot 3.9 kg] [raw]',
  summary: 'load the dryer: a code, the expected dry weight, the water to remove',
  examples: ['/batch barley soup trays 812 798 805 790 g', '/batch barley soup x1.5 trays 1324 1310 g gross'],
  help: [
    'Weights are of the food on each tray; with "gross" the empty tray is taken off (/house tray weight 512 g).',
    '"pot 3.9 kg" tells what the finished pot weighed, when not all of it went on the trays.',
    '"same pot" tells that it is the rest of the pot that the load before came from; "anew" that it is not.',
    '"raw" marks food that was not cooked: its pouches will say so.',
  ],
  records: true,
  mayLeaveOut: true,
  doubtRepeats: true,
  live: (no, _, house) => {
    const batch = house.batches.find(no);
    return batch
      ? loadNow(house, batch)
      : { said: { group: `B${no} is no longer on record.` }, isOver: false };
  },
  offers: { of: 'meals' },
  takes: {
    potG: optional(massG('the weight of the finished pot, such as pot 3.9 kg', 'pot')),
    gross: flag('gross'),
    raw: flag('raw', 'uncooked'),
    at: pastMoment,
    factor: optional(factor),
    recipe: mealName,
    pot: potTold,
    weights: trayWeights,
    trays: flag('trays', 'tray'),
  },
  run: ({ recipe: name, factor: times, potG, gross, raw, at, pot, weights }, house) => {
    const recipe = recipeNamed(house, name);
    const trays = netWeights(weights, gross === true, house.settings.trayTaresG).map(
      ({ netG, tareG }, i) => ({
        no: i + 1,
        tareG,
        wetG: netG,
      }),
    );
    const told = {
      factor: times ?? 1,
      potG: potG ?? (recipe.potG === null ? null : recipe.potG * (times ?? 1)),
      loadedAtMs: at ?? house.nowMs,
      isRaw: raw === true,
      trays,
    };
    const anewOrSame = (which: string) =>
      [
        `/batch ${recipe.name}`,
        times === undefined ? '' : `x${times}`,
        `trays ${weights.join(' ')} g`,
        gross ? 'gross' : '',
        raw ? 'raw' : '',
        at === undefined ? '' : isoMoment(at, house.settings.zone),
        which,
      ]
        .filter((word) => word !== '')
        .join(' ');
    const batch = { ...told, potG: potOf(house, recipe, told, pot, anewOrSame) };
    const no = house.batches.load({ ...batch, recipe: recipe.id });
    const loaded = {
      id: 0,
      no,
      recipe,
      weighings: [],
      witnesses: [],
      events: [],
      rest: [],
      mix: null,
      ...batch,
    };
    const facts = factsOfBatch(house, loaded);
    const known = loadsKnown(house);
    const ahead = dryingAhead(house, loaded, facts, known);
    return {
      no,
      name: recipe.name,
      batch,
      toldAt: at === undefined ? '' : `, ${sayMoment(at, house.settings.zone)}`,
      facts,
      ready: [...aheadInShort(house, ahead), ...nightLines(house, loaded, facts, known, ahead)],
      readyWhy: aheadWhy(house, ahead),
      cautions: loadCautions(house, recipe, no, batch),
      beside: loadedBeside(house, loaded),
      settings: house.settings,
      meal: mealOfBatch(house, no),
    };
  },
  say: ({ no, name, batch, toldAt, facts, ready, readyWhy, cautions, beside, settings, meal }) => {
    const g = (value: number) => sayG(value, settings.units);
    const lines = [
      `B${no}: ${name}${batch.factor === 1 ? '' : ` x${sayNumber(batch.factor)}`}, ${g(facts.wetG)} on ${batch.trays.length === 1 ? '1 tray' : `${batch.trays.length} trays`}.`,
    ];
    const why: string[] = [];
    if (facts.expectedDryG !== null && facts.expectedDryG < facts.wetG) {
      why.push(
        `Expected dry: about ${g(facts.expectedDryG)}.`,
        `Solids ${g(facts.totals.solidsG)}, ${sayNumber(settings.residualMoisture * 100)} % moisture left; water to remove: about ${g(facts.wetG - facts.expectedDryG)}.`,
      );
    } else {
      lines.push(
        'No dry weight can be predicted: the recipe gives more solids than lie on the trays. Check the lines with /recipe, or tell me the pot: "pot 3.9 kg".',
      );
    }
    lines.push(...ready);
    why.push(...readyWhy);
    if (batch.potG === null) {
      why.push('The pot was not weighed, so the trays are taken as all of it.');
      const namedG = facts.recipe.totals.massG * batch.factor;
      if (facts.wetG > namedG * moreThanNamedFraction) {
        lines.push(
          `That is ${g(facts.wetG - namedG)} more than the lines of the recipe: water that no line names? Or were the trays on the scale ("gross"), or more cooked ("x1.5")?`,
        );
      }
    } else {
      why.push(
        `${Math.round((facts.wetG / batch.potG) * 100)} % of the ${g(batch.potG)} pot, ${sayNumber(facts.servings)} servings.`,
      );
    }
    const dryer = dryerLines(no, facts, batch.trays, beside, settings);
    lines.push(...dryer.needs);
    why.push(...dryer.why);
    if (facts.recipe.unresolved.length > 0) {
      lines.push(
        `Too low by ${sayList(facts.recipe.unresolved.map((l) => `"${l.typed}"`))}, which I could not read.`,
      );
    }
    lines.push(...cautions);
    if (batch.isRaw) lines.push(rawCaution);
    return {
      group: lines.join('\n'),
      why,
      // The log tells when something was typed; this was earlier.
      did: `loaded B${no}, ${name}${toldAt}`,
      meals: [meal],
      live: { kind: 'batch', of: no, page: 1, receipt: '' },
    };
  },
});

/** What to heed at this load: each once, in the answer that needs it. */
function loadCautions(
  house: House,
  recipe: Recipe,
  no: number,
  { isRaw, loadedAtMs }: { readonly isRaw: boolean; readonly loadedAtMs: number },
): string[] {
  const lines = cautionLines(recipe, house.foods);
  // Of rice at its meal's first load, of the rest at the house's first.
  const isFirst = hasRice(lines) ? house.batches.ofMeal(recipe.id).length === 1 : no === 1;
  const others = house.batches.latest(10).map((batch) => ({
    no: batch.no,
    isRaw: batch.isRaw,
    loadedAtMs: batch.loadedAtMs,
    isDone: isSealedFrom(house, batch.no) || (batch.weighings.length > 0 && dryOf(house, batch).is === 'dry'),
  }));
  return [
    ...(isFirst && !isRaw ? [coolingCaution(lines)] : []),
    ...besideCaution(isRaw, rawBeside({ no, isRaw, loadedAtMs, isDone: false }, others)),
  ];
}

/** What went in at about the same time. */
interface Beside {
  readonly codes: string;
  readonly wetG: number;
  readonly trays: number;
}

function loadedBeside(house: House, batch: Batch): Beside | undefined {
  const others = loadedWith(batch, house.batches.latest(10)).filter(
    ({ no, mix, events }) =>
      mix === null && !isSealedFrom(house, no) && events.every(({ what }) => what !== 'moved'),
  );
  if (others.length === 0) return undefined;
  const trays = others.flatMap((other) => other.trays);
  return {
    codes: sayList(others.map(({ no }) => `B${no}`)),
    wetG: trays.reduce((sum, { wetG }) => sum + wetG, 0),
    trays: trays.length,
  };
}

function dryerLines(
  no: number,
  facts: BatchFacts,
  trays: readonly { wetG: number; no: number }[],
  beside: Beside | undefined,
  settings: Settings,
): { readonly needs: string[]; readonly why: string[] } {
  const needs: string[] = [];
  const why: string[] = [];
  const { dryer, loadLimitG } = settings;
  if (dryer?.widthMm && dryer.lengthMm) {
    const areaCm2 = (dryer.widthMm * dryer.lengthMm) / 100;
    const depths = trays.map((tray) => depthMm(tray.wetG, areaCm2));
    const [least, most] = [Math.min(...depths), Math.max(...depths)];
    const depth =
      most - least < 0.5 ? sayNumber(Math.round(most)) : `${Math.round(least)} to ${Math.round(most)}`;
    why.push(
      `Depth on the tray: about ${depth} mm, spread level. An even layer of bite-size pieces dries best (common practice).`,
    );
  }
  if (dryer && trays.length > dryer.trays) {
    needs.push(`That is ${trays.length} trays; your dryer has ${dryer.trays}.`);
  }
  const allTrays = trays.length + (beside?.trays ?? 0);
  const isApart = dryer !== null && trays.length <= dryer.trays && allTrays > dryer.trays;
  if (isApart)
    needs.push(
      `With ${beside!.codes} that makes ${allTrays} trays; your dryer has ${dryer.trays}. In another one? /dryer B${no} moved to the small one`,
    );
  if (loadLimitG !== null) {
    const besideG = isApart ? 0 : (beside?.wetG ?? 0);
    const over = facts.wetG - loadLimitG;
    const overTogether = facts.wetG + besideG - loadLimitG;
    if (over <= 0 && overTogether > 0)
      needs.push(
        `With ${beside!.codes} ${sayG(facts.wetG + besideG, settings.units)}: over your dryer's limit of ${sayG(loadLimitG, settings.units)} by ${sayG(overTogether, settings.units)}.`,
      );
    else if (over > 0)
      needs.push(
        `Over your dryer's limit of ${sayG(loadLimitG, settings.units)} by ${sayG(over, settings.units)}: dry it in ${loads(facts.wetG, loadLimitG)} loads.`,
      );
    else
      why.push(
        `${Math.round(((facts.wetG + besideG) / loadLimitG) * 100)} % of your dryer's limit${besideG > 0 ? `, with ${beside!.codes}` : ''}.`,
      );
  }
  return { needs, why };
}
