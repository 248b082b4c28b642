import { pouchFacts } from '#core/meal.ts';
import type { Pouch } from '#core/records.ts';
import type { LabelFacts } from '#draw/facts.ts';
import { sayCode, sayDay, sayG, sayMonth, sayPourShort, sayServings } from '#words/say.ts';
import { sayGoods } from '#words/camp-words.ts';
import { scanPayload } from '#words/scan.ts';
import type { House } from '#house/house.ts';
import { vouchedOf } from '#house/dryness.ts';
import { vouchedMark } from '#words/dry-phrases.ts';
import { correctionFor } from '#house/corrections.ts';
import { batchNumbered, driedFacts } from '#house/figures.ts';
import { unsound } from '#core/seal-check.ts';
import { foundMark } from '#words/found-words.ts';
import { containsOnPaper, rawMark } from '#words/phrases.ts';
import { becauseWords, mealOfBatch, type MealShown, verdictOn } from '#house/verdicts.ts';
import { howBatchEaten } from '#house/eating.ts';
import { minutesAt, soakOf } from '#house/soaking.ts';

/** What the labels of these pouches say; each batch is worked out once. */
export function labelFacts(house: House, pouches: readonly Pouch[]): LabelFacts[] {
  const batches = new Map<number, ReturnType<typeof ofBatch>>();
  return pouches.map((pouch) => {
    const batch = batches.get(pouch.batch) ?? ofBatch(house, pouch.batch);
    batches.set(pouch.batch, batch);
    return labelOf(house, pouch, batch);
  });
}

function ofBatch(house: House, no: number) {
  const batch = batchNumbered(house, no);
  const facts = driedFacts(house, batch);
  return {
    isRaw: batch.isRaw,
    eaten: howBatchEaten(house, batch),
    vouched: vouchedOf(house, batch, facts),
    facts,
    learnt: correctionFor(house, batch),
    soaking: soakOf(house, batch),
    contents: containsOnPaper(facts.recipe),
    notFor: notForLine(house, mealOfBatch(house, no)),
  };
}

function labelOf(
  { settings, chatLink, household }: House,
  pouch: Pouch,
  { isRaw, eaten, vouched, facts, learnt, soaking, contents, notFor }: ReturnType<typeof ofBatch>,
): LabelFacts {
  const figures = pouchFacts(pouch.dryG, facts, learnt.correction);
  const code = sayCode(pouch);
  const water = sayPourShort(figures.waterMl, learnt.ratings > 0 || isRaw, settings);
  const found = unsound(pouch.found);
  const soak = minutesAt(settings.altitudeM, soaking);
  return {
    code,
    meal: pouch.meal,
    water: eaten.isDry ? null : water,
    soak: eaten.isDry
      ? 'Ready as it is'
      : isRaw
        ? `Soak ${soak} min, then cook in a pot`
        : `Stand ${soak} min at ${Math.round(settings.altitudeM)} m`,
    dry: sayG(pouch.dryG, settings.units),
    servings: sayServings(figures.servings),
    sealed: sayDay(pouch.sealedAtMs, settings.zone),
    bestBy: pouch.bestByOn === null ? null : sayMonth(pouch.bestByOn),
    cautions: [
      ...(pouch.shownDry ? [] : ['UNCHECKED: not shown to be dry, keep frozen']),
      ...(found === null ? [] : [`${foundMark[found]}: not for the shelf`]),
      ...(pouch.shownDry && vouched ? [`Dry against its recipe: ${vouchedMark(vouched)}`] : []),
      ...(isRaw ? [rawMark] : []),
    ],
    camp: figures.camp.length === 0 ? null : `Add ${sayGoods(figures.camp, settings.units)}`,
    contents,
    notFor,
    scan:
      chatLink === null
        ? `${code} ${pouch.meal}, ${eaten.isDry ? 'eaten dry' : `water ${water}`}`
        : chatLink + scanPayload(household, pouch),
  };
}

/** Who must not have it, and who must not have it yet. */
function notForLine(house: House, meal: MealShown): string[] {
  const said = house.eaters.here().flatMap((eater) => {
    const verdict = verdictOn(eater, meal);
    if (verdict.is === 'clear') return [];
    const why =
      verdict.is === 'blocked' ? becauseWords(verdict.by) : `unknown, ${becauseWords(verdict.because)}`;
    return [`\u2068${eater.name}\u2069: ${why}`];
  });
  return said.length === 0 ? [] : [`Not for ${said.join('; ')}`];
}
