import { DateTime } from 'luxon';
import { command } from '#chat/command.ts';
import { correctionOf } from '#house/corrections.ts';
import { batchNumbered, driedFacts } from '#house/figures.ts';
import { rawCaution, steadyPhrase, uncheckedCaution, wetCaution } from '#words/phrases.ts';
import { mealOfBatch } from '#house/verdicts.ts';
import { type Sealing, absorberLine, planSealing } from '#house/sealing.ts';
import { pouchFacts, steadinessOf, wetByBalance } from '#core/meal.ts';
import { pouchVolumeMl } from '#core/oxygen.ts';
import { Refusal } from '#core/refusal.ts';
import { leftToSealG } from '#core/sealing.ts';
import { batchCode, flag, flatSizeMm, measure, optional, part, pouchGroups } from '#words/parts.ts';
import { sayCodes, sayCount, sayG, sayMonth, sayNumber, sayWater } from '#words/say.ts';

const withoutAbsorber = part<true>('no absorber', (reading) => {
  const index = reading.all.findIndex((t, i) => /^absorbers?$/.test(t.plain) && reading.at(i) !== undefined);
  if (index < 1 || !reading.wordBefore(index, 'no', 'without')) return undefined;
  reading.take(index, index - 1);
  return true;
});

export default command({
  name: 'seal',
  alsoCalled: ['sealed'],
  usage: '/seal <count> x <weight> <batch> [pouch 20 x 30 cm] [no absorber] [unchecked]',
  summary: 'record pouches: codes, absorber, water to add, best-by, what is left',
  examples: ['/seal 6 x 95 g B4', '/seal B4 4 x 95 g 2 x 140 g', '/seal 6 x 95 g B4 pouch 20 x 30 cm'],
  help: [
    'Sizes are the flat inner width and height of the pouch, or its volume: "pouch 1.5 l". /house pouch 20 x 30 cm keeps it.',
    'A batch that is not steady can be sealed only as "unchecked": no absorber, no best-by, not for trips.',
  ],
  records: true,
  doubtRepeats: true,
  takes: {
    size: optional(flatSizeMm),
    volumeMl: optional(measure('volume', "the pouch's volume, such as pouch 1.5 l")),
    batch: batchCode,
    groups: pouchGroups,
    unchecked: flag('unchecked'),
    withoutAbsorber: optional(withoutAbsorber),
    pouchWord: flag('pouch', 'pouches', 'bag', 'bags'),
  },
  run: ({ size, volumeMl, batch: no, groups, unchecked, withoutAbsorber }, house) => {
    const batch = batchNumbered(house, no);
    const facts = driedFacts(house, batch);
    const { settings } = house;
    const steadiness = steadinessOf(batch, settings);
    const steady = steadiness.is === 'steady';
    if (!steady && !unchecked) {
      throw new Refusal(
        'not-steady',
        `B${no} is not shown to be dry. ${steadyPhrase(steadiness, settings)}\nA damp pouch without oxygen is where botulism grows, so I name no absorber and no best-by for it. Dry it on and weigh again, or seal it as "unchecked" and keep it frozen.`,
      );
    }
    const sealed = house.pouches.ofBatch(no).map((pouch) => pouch.dryG);
    const asked = groups.flatMap(({ count, eachDryG }) => Array.from({ length: count }, () => eachDryG));
    const leftG = leftToSealG(facts.dryG, sealed, asked, settings.scaleG);
    const toldMl = size ? pouchVolumeMl(size.a, size.b) : volumeMl;
    const plans = groups.map((group) => ({
      group,
      plan: planSealing(group.eachDryG, facts, {
        volumeMl: toldMl ?? settings.pouch?.volumeMl ?? null,
        absorber: !withoutAbsorber,
        checked: steady,
        settings,
        nowMs: house.nowMs,
      }),
      figures: pouchFacts(group.eachDryG, facts, correctionOf(house, batch.recipe.name).correction),
    }));
    const numbers = house.pouches.seal(
      batch.id,
      plans.flatMap(({ group, plan }) =>
        Array.from({ length: group.count }, () => ({
          dryG: group.eachDryG,
          sealedAtMs: house.nowMs,
          checked: steady,
          volumeMl: plan.volumeMl,
          absorberMl: plan.absorber?.sizeMl ?? null,
          absorberCount: plan.absorber?.count ?? null,
          bestByOn: plan.bestByOn,
        })),
      ),
    );
    return {
      no,
      meal: batch.recipe.name,
      shown: mealOfBatch(house, no),
      isRaw: batch.isRaw,
      steady,
      plans,
      numbers,
      sealedAtMs: house.nowMs,
      leftG,
      wet: steady ? wetByBalance(facts) : undefined,
      settings,
    };
  },
  say: ({ no, meal, shown, isRaw, steady, plans, numbers, sealedAtMs, leftG, wet, settings }) => {
    const g = (value: number) => sayG(value, settings.units);
    const lines: string[] = [];
    let at = 0;
    const sealedDay = DateTime.fromMillis(sealedAtMs, { zone: settings.zone }).toISODate();
    for (const { group, plan, figures } of plans) {
      const codes = sayCodes(numbers.slice(at, at + group.count).map((n) => ({ batch: no, no: n })));
      at += group.count;
      lines.push(
        `Sealed ${codes}: ${g(group.eachDryG)} ${meal}${group.count > 1 ? ' each' : ''}, ${sayNumber(figures.servings)} servings. Write on ${group.count > 1 ? 'each' : 'it'}: code, ${meal}, ${sealedDay}${steady ? '' : ', UNCHECKED'}${isRaw ? ', RAW' : ''}.`,
        `Water: ${sayWater(figures.waterMl, settings)} (exactly ${figures.waterMl.toFixed(1)} ml).`,
        ...(steady ? [absorberLine(plan, settings), bestByLine(plan)] : []),
      );
    }
    lines.push(
      leftG <= settings.scaleG ? `Nothing of B${no} is left.` : `${g(leftG)} of B${no} are left unsealed.`,
    );
    if (wet !== undefined) lines.push(wetCaution(wet));
    if (!steady) lines.push(uncheckedCaution);
    if (isRaw) lines.push(rawCaution);
    const all = sayCodes(numbers.map((n) => ({ batch: no, no: n })));
    return {
      group: lines.join('\n'),
      did: `sealed ${all} (${sayCount(numbers.length, 'pouch', 'pouches')})`,
      meals: [shown],
    };
  },
});

function bestByLine(plan: Sealing): string {
  return `Best by ${sayMonth(plan.bestByOn!)}: a planning date, from ${Math.round(plan.fatFraction * 100)} % fat in the dry food and ${sayNumber(plan.storageC)} °C.`;
}
