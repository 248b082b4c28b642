import { command } from '#chat/command.ts';
import { pouchFacts, steadinessOf, weighedThroughAtMs } from '#core/meal.ts';
import type { BatchFacts } from '#core/meal.ts';
import { pouchVolumeMl } from '#core/oxygen.ts';
import type { Batch } from '#core/records.ts';
import { Refusal } from '#core/refusal.ts';
import { freshness, goneG } from '#core/rest.ts';
import { leftToSealG } from '#core/sealing.ts';
import { sealingPlan } from '#core/sealing-plan.ts';
import { correctionOf } from '#house/corrections.ts';
import { dryOf, partlySealed, sealedOf } from '#house/dryness.ts';
import { batchNumbered, driedFacts } from '#house/figures.ts';
import type { House } from '#house/house.ts';
import { absorberLine, bestByLine, fitLines } from '#house/sealing.ts';
import { mealOfBatch } from '#house/verdicts.ts';
import { dryAbout } from '#house/weighing.ts';
import { dryPhrase, stalePhrase, vouchedMark, vouchedPhrase } from '#words/dry-phrases.ts';
import { firstAbsorberCaution } from '#words/cautions.ts';
import { localDays } from '#words/local-days.ts';
import {
  batchNamed,
  flag,
  flatSizeMm,
  measure,
  optional,
  part,
  type PouchGroup,
  pouchGroups,
} from '#words/parts.ts';
import { rawCaution, uncheckedCaution } from '#words/phrases.ts';
import { sayCodes, sayCount, sayG, sayNumber, sayWater } from '#words/say.ts';
import { pastMoment } from '#words/when.ts';

const withoutAbsorber = part<true>('no absorber', (reading) => {
  const index = reading.all.findIndex((t, i) => /^absorbers?$/.test(t.plain) && reading.at(i) !== undefined);
  if (index < 1 || !reading.wordBefore(index, 'no', 'without')) return undefined;
  reading.take(index, index - 1);
  return true;
});

export default command({
  name: 'seal',
  alsoCalled: ['sealed'],
  usage: '/seal <count> x <weight> <batch> [pouch 20 x 30 cm] [no absorber] [unchecked] [at 14:30]',
  summary: 'record pouches: codes, absorber, water to add, best-by, what is left',
  examples: ['/seal 6 x 95 g B4', '/seal B4 4 x 95 g 2 x 140 g', '/seal 6 x 95 g B4 pouch 20 x 30 cm'],
  help: [
    'Sizes are the flat inner width and height of the pouch, or its volume: "pouch 1.5 l". /house pouch 20 x 30 cm keeps it.',
    'Air is reckoned pressed out. Measured: put a bowl of water on the scale, tare, push the sealed pouch just under; its grams are ml: "pressed 430 ml". "jar 1 l" is pressed by nobody.',
    'A batch that is not shown to be dry can be sealed only as "unchecked": no absorber, no best-by, not for trips.',
    'Steady lasts an hour: weigh again before sealing later, or say when it was sealed.',
  ],
  records: true,
  mayLeaveOut: true,
  doubtRepeats: true,
  takes: {
    measuredMl: optional(
      measure('volume', 'the sealed pouch in water, such as pressed 430 ml', 'pressed', 'measured'),
    ),
    rigid: flag('jar', 'tin', 'can'),
    size: optional(flatSizeMm),
    volumeMl: optional(measure('volume', "the pouch's volume, such as pouch 1.5 l")),
    batch: batchNamed('any'),
    at: pastMoment,
    groups: pouchGroups,
    unchecked: flag('unchecked'),
    withoutAbsorber: optional(withoutAbsorber),
    pouchWord: flag('pouch', 'pouches', 'bag', 'bags'),
  },
  run: ({ measuredMl, rigid, size, volumeMl, batch: no, at, groups, unchecked, withoutAbsorber }, house) => {
    const batch = batchNumbered(house, no);
    const facts = driedFacts(house, batch);
    const { settings } = house;
    const sealedAtMs = at ?? house.nowMs;
    const verdict = dryOf(house, batch, facts);
    if (verdict.is === 'not dry' && !unchecked) {
      throw new Refusal(
        'not-dry',
        `B${no} is not shown to be dry. ${dryPhrase(verdict, steadinessOf(batch, settings), dryAbout(batch), settings).join('\n')}\nA damp pouch without oxygen is where botulism grows, so I name no absorber and no best-by for it. Dry it on and weigh again, or seal it as "unchecked" and keep it frozen.`,
      );
    }
    const sealed = sealedOf(house, no).map((pouch) => pouch.dryG);
    const goneBeforeG = goneG(batch.rest);
    const asked = groups.flatMap(({ count, eachDryG }) => Array.from({ length: count }, () => eachDryG));
    const leftG = leftToSealG(
      facts.dryG,
      goneBeforeG > 0 ? [...sealed, goneBeforeG] : sealed,
      asked,
      settings.scaleG,
    );
    const isDry = verdict.is === 'dry' && isFresh(house, batch, facts, sealedAtMs, unchecked === true);
    const toldMl = size ? pouchVolumeMl(size.a, size.b) : volumeMl;
    const { correction } = correctionOf(house, batch.recipe.name);
    const figuresOf = ({ eachDryG }: PouchGroup) => pouchFacts(eachDryG, facts, correction);
    const plans = groups.map((group) => ({
      group,
      plan: sealingPlan(group.eachDryG, facts, {
        ...settings,
        pouchMl: toldMl ?? settings.pouch?.volumeMl ?? null,
        measuredMl: measuredMl ?? null,
        isRigid: rigid === true,
        waterMl: figuresOf(group).waterMl,
        withAbsorber: !withoutAbsorber,
        isDry,
        sealedOn: localDays(settings.zone).dayOf(sealedAtMs),
      }),
      figures: figuresOf(group),
    }));
    const isFirstAbsorber =
      plans.some(({ plan }) => plan.absorber !== null) &&
      house.pouches.inStock().every(({ absorberMl }) => absorberMl === null);
    const numbers = house.pouches.seal(
      batch.id,
      plans.flatMap(({ group, plan }) =>
        Array.from({ length: group.count }, () => ({
          dryG: group.eachDryG,
          sealedAtMs,
          checked: isDry,
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
      isDry,
      vouched: verdict.is === 'dry' && isDry ? verdict.vouched : null,
      plans,
      numbers,
      sealedOn: localDays(settings.zone).dayOf(sealedAtMs),
      leftG,
      isFirstAbsorber,
      settings,
    };
  },
  say: ({
    no,
    meal,
    shown,
    isRaw,
    isDry,
    vouched,
    plans,
    numbers,
    sealedOn,
    leftG,
    isFirstAbsorber,
    settings,
  }) => {
    const g = (value: number) => sayG(value, settings.units);
    const marks = [
      ...(isDry ? [] : ['UNCHECKED']),
      ...(vouched ? [vouchedMark(vouched)] : []),
      ...(isRaw ? ['RAW'] : []),
    ];
    const lines: string[] = [];
    let at = 0;
    for (const { group, plan, figures } of plans) {
      const codes = sayCodes(numbers.slice(at, at + group.count).map((n) => ({ batch: no, no: n })));
      at += group.count;
      lines.push(
        `Sealed ${codes}: ${g(group.eachDryG)} ${meal}${group.count > 1 ? ' each' : ''}, ${sayNumber(figures.servings)} servings. Write on ${group.count > 1 ? 'each' : 'it'}: ${['code', meal, sealedOn, ...marks].join(', ')}.`,
        `Water${isRaw ? ' to soak in, before it is cooked' : ''}: ${sayWater(figures.waterMl, settings)} (exactly ${figures.waterMl.toFixed(1)} ml).`,
        ...(isDry ? [absorberLine(plan, settings), bestByLine(plan)] : []),
        ...fitLines(plan),
      );
    }
    lines.push(
      leftG <= settings.scaleG ? `Nothing of B${no} is left.` : `${g(leftG)} of B${no} are left unsealed.`,
    );
    if (vouched) lines.push(vouchedPhrase(vouched, settings));
    if (isFirstAbsorber) lines.push(firstAbsorberCaution);
    if (!isDry) lines.push(uncheckedCaution);
    if (isRaw) lines.push(rawCaution);
    const all = sayCodes(numbers.map((n) => ({ batch: no, no: n })));
    return {
      group: lines.join('\n'),
      did: `sealed ${all} (${sayCount(numbers.length, 'pouch', 'pouches')})`,
      meals: [shown],
    };
  },
});

/**
 * Whether the weight it is sealed on is of this hour.
 * @throws Refusal 'weigh-again' where it is not, unless it is sealed as unchecked; 'sealed-before' for a time that cannot be
 */
function isFresh(
  house: House,
  batch: Batch,
  { dryG }: BatchFacts & { dryG: number },
  sealedAtMs: number,
  unchecked: boolean,
): boolean {
  const weighedAtMs = weighedThroughAtMs(batch)!;
  if (sealedAtMs < batch.weighings.at(-1)!.atMs)
    throw new Refusal(
      'sealed-before',
      `B${batch.no} was weighed after that; it is sealed on its last weighing.`,
    );
  const fresh = freshness(partlySealed(house, batch, dryG), weighedAtMs, sealedAtMs);
  if (fresh.is === 'fresh') return true;
  if (unchecked) return false;
  throw new Refusal(
    'weigh-again',
    `${stalePhrase(fresh, batch.no, house.settings)} Or seal it as "unchecked" and keep it frozen.`,
  );
}
