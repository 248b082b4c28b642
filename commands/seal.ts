import { command } from '#chat/command.ts';
import type { Vouched } from '#core/dry-verdict.ts';
import type { BatchFacts } from '#core/meal.ts';
import type { Batch } from '#core/records.ts';
import { fill, type Filled, type How, howSealed } from '#house/filling.ts';
import { driedFacts, loadedBatch } from '#house/figures.ts';
import { partlySealed } from '#house/dryness.ts';
import { restG } from '#core/rest.ts';
import { Refusal } from '#core/refusal.ts';
import { Ambiguous } from '#words/reading.ts';
import type { House } from '#house/house.ts';
import { leftLines, mixNow } from '#house/mixing.ts';
import { absorberLine, absorberWhy, bestByLine, bestByWhy, fitLines } from '#house/sealing.ts';
import { type DryPart, takeDry } from '#house/take-dry.ts';
import { mealOfBatch } from '#house/verdicts.ts';
import { doubtPhrase, vouchedMark, vouchedPhrase } from '#words/dry-phrases.ts';
import { firstAbsorberCaution, firstAbsorberInShort, notForLongCaution } from '#words/cautions.ts';
import { localDays } from '#words/local-days.ts';
import { mixHolds, noWaterFor } from '#words/mixed-words.ts';
import type { MixtureTold } from '#words/mixture.ts';
import { flag, measure, optional, servings } from '#words/parts.ts';
import { kindNamed, material, pouchSaid } from '#words/pouch-parts.ts';
import { containsLines, eatenDryPhrase, rawCaution, uncheckedCaution } from '#words/phrases.ts';
import { type FillTold, fillTold, withoutAbsorber } from '#words/seal-parts.ts';
import {
  sayBatch,
  sayCodes,
  sayCount,
  sayG,
  sayList,
  sayPour,
  sayPourInShort,
  sayServingsExactly,
} from '#words/say.ts';
import { pastMoment } from '#words/when.ts';
import { howBatchEaten, soakedAlong } from '#house/eating.ts';
import { cautionLines } from '#house/caution-lines.ts';
import { packLines } from '#house/packs.ts';

/** What was sealed, to be told. */
interface Sealed {
  readonly batch: Batch;
  readonly facts: BatchFacts & { readonly dryG: number };
  readonly filled: readonly Filled[];
  readonly isDry: boolean;
  readonly vouched: Vouched | null;
  /** What the recipes leave in doubt of what was sealed. */
  readonly doubts: readonly string[];
  readonly left: readonly string[];
  /** What keeps least of a mixture. */
  readonly least: string | null;
  /** Nobody said how many a pouch of a mixture feeds. */
  readonly isServingsGuessed: boolean;
}

export default command({
  name: 'seal',
  alsoCalled: ['sealed'],
  usage:
    '/seal <count> x <weight> <batch> [+ <weight> <batch or food>] [pouch 20 x 30 cm] [unchecked] [at 14:30]',
  summary: 'record pouches: codes, absorber, water to add, best-by, what is left',
  examples: [
    '/seal 6 x 95 g B4',
    '/seal B4 4 x 95 g 2 x 140 g',
    '/seal 6 x 95 g B4 pouch 20 x 30 cm',
    '/seal 2 x 40 g B4 + 15 g milk powder',
  ],
  help: [
    'One pouch from several things gets an M code: "+ 72 g B4" from another batch, "+ 15 g milk powder" from the cupboard, for each pouch. "for 2" says how many one feeds.',
    'Sizes are the flat inner width and height of the pouch, or its volume: "pouch 1.5 l". /house pouch 20 x 30 cm keeps it. "no absorber" leaves it out.',
    'Air is reckoned pressed out. Measured: put a bowl of water on the scale, tare, push the sealed pouch just under; its grams are ml: "pressed 430 ml". "jar 1 l" is pressed by nobody.',
    'A batch that is not shown to be dry can be sealed only as "unchecked": no absorber, no best-by, not for trips.',
    'Steady lasts an hour: weigh again before sealing later, or say when it was sealed.',
  ],
  records: true,
  mayLeaveOut: true,
  doubtRepeats: true,
  offers: { of: 'loads' },
  takes: {
    measuredMl: optional(
      measure('volume', 'the sealed pouch in water, such as pressed 430 ml', 'pressed', 'measured'),
    ),
    kindName: kindNamed,
    pouch: pouchSaid,
    material,
    at: pastMoment,
    unchecked: flag('unchecked'),
    withoutAbsorber: optional(withoutAbsorber),
    feeds: optional(servings),
    fill: fillTold,
    pouchWord: flag('pouch', 'pouches', 'bag', 'bags'),
  },
  run: (asked, house) => {
    const how = howSealed(asked, house);
    const isFirst = !house.pouches.haveAbsorber();
    const sealed =
      asked.fill.is === 'mixed'
        ? sealMixed(house, how, asked.fill.mixture, asked.unchecked === true, asked.feeds)
        : sealOne(
            house,
            how,
            asked.fill.is === 'one'
              ? asked.fill
              : asked.fill.is === 'rest'
                ? restShared(house, asked.fill)
                : weightAsked(house, asked.fill),
            asked.unchecked === true,
          );
    return {
      ...sealed,
      eaten: howBatchEaten(house, sealed.batch),
      alongside: soakedAlong(house, sealed.batch),
      packs: packLines(
        house,
        sealed.filled.flatMap(({ plan }) => plan.absorber?.packs.map(({ sizeMl }) => sizeMl) ?? []),
      ),
      early: notForLongCaution(cautionLines(sealed.batch.recipe, house.foods)),
      shown: mealOfBatch(house, sealed.batch.no),
      sealedOn: localDays(house.settings.zone).dayOf(how.sealedAtMs),
      isFirstAbsorber: isFirst && sealed.filled.some(({ plan }) => plan.absorber !== null),
      settings: house.settings,
    };
  },
  say: ({
    batch,
    facts,
    filled,
    isDry,
    vouched,
    doubts,
    left,
    least,
    isServingsGuessed,
    eaten,
    alongside,
    early,
    packs,
    shown,
    sealedOn,
    isFirstAbsorber,
    settings,
  }) => {
    const meal = batch.recipe.name;
    const { isRaw, mix } = batch;
    const g = (value: number) => sayG(value, settings.units);
    const marks = [
      ...(isDry ? [] : ['UNCHECKED']),
      ...(vouched ? [vouchedMark(vouched)] : []),
      ...(isRaw ? ['RAW'] : []),
      ...(eaten.isDry ? ['eat dry'] : []),
    ];
    const lines = filled.flatMap(({ codes, eachDryG, plan, figures, isRated }) => [
      `Sealed ${sayCodes(codes)}: ${g(eachDryG)} ${meal}${codes.length > 1 ? ' each' : ''}.`,
      ...(marks.length === 0 ? [] : [`Write on ${codes.length > 1 ? 'each' : 'it'}: ${marks.join(', ')}.`]),
      ...(mix ? [`${codes.length > 1 ? 'Each' : 'It'} holds ${mixHolds(mix, settings.units)}.`] : []),
      eaten.isDry
        ? eatenDryPhrase(eaten)
        : `Water${isRaw ? ' to soak in, before it is cooked' : ''}: ${sayPourInShort(figures.waterMl, isRated)}.`,
      ...(isDry ? [absorberLine(plan, settings), bestByLine(plan)] : []),
      ...fitLines(plan),
    ]);
    const why = filled.flatMap(({ codes, plan, figures, measuredOn, isRated }) => [
      `Write on ${codes.length > 1 ? 'each' : 'it'}: ${['code', meal, sealedOn, ...marks].join(', ')}.`,
      ...(eaten.isDry
        ? []
        : [`Water: ${sayPour(figures.waterMl, isRated, settings)}.${mix ? noWaterFor(mix) : ''}`]),
      ...(mix && isServingsGuessed
        ? [`Counted as ${sayServingsExactly(figures.servings)}, as its largest part; "for 2" says otherwise.`]
        : []),
      `${sayCodes(codes)}: ${sayServingsExactly(figures.servings)}${eaten.isDry ? '' : `, exactly ${figures.waterMl.toFixed(1)} ml of water`}.`,
      ...(isDry ? [...absorberWhy(plan, settings, measuredOn), bestByWhy(plan, least)] : []),
    ]);
    lines.push(...left);
    if (alongside.length > 0)
      lines.push(`${sayList(alongside)}: eaten dry alone, soaked here with the rest.`);
    if (mix) lines.push(...containsLines(facts.recipe));
    if (isDry) why.push(...early);
    if (vouched) lines.push(vouchedPhrase(vouched, settings));
    lines.push(...doubts);
    why.push(...packs);
    if (isFirstAbsorber) {
      lines.push(firstAbsorberInShort);
      why.push(firstAbsorberCaution);
    }
    if (!isDry) lines.push(uncheckedCaution);
    if (isRaw) lines.push(rawCaution);
    const all = filled.flatMap(({ codes }) => codes);
    return {
      group: lines.join('\n'),
      why,
      did: `sealed ${sayCodes(all)} (${sayCount(all.length, 'pouch', 'pouches')})`,
      buttons: [
        { label: 'Labels', request: `/label ${sayBatch(batch)}`, stays: true },
        ...(isDry && filled.some(({ plan }) => plan.kept.material === null)
          ? [{ label: 'The pouch is foil', request: '/house pouch foil' }]
          : []),
      ],
      meals: [shown],
    };
  },
});

const doubtsOf = (parts: readonly DryPart[]): string[] =>
  parts.flatMap(({ batch: { no }, doubtedFraction }) =>
    doubtedFraction === null ? [] : [`B${no}: ${doubtPhrase(doubtedFraction)} Cold or soft: dry on.`],
  );

/** What is left of a batch, in pouches alike; a scale shows tenths of a gram at best. @throws Refusal 'nothing-left' */
/** What is left, shared out alike, for a tap: nobody said how heavy each is. @throws Ambiguous */
function weightAsked(house: House, { batch: no, count }: Extract<FillTold, { is: 'count' }>): never {
  const batch = loadedBatch(house, no);
  const leftG = restG(partlySealed(house, batch, driedFacts(house, batch).dryG));
  const eachG = Math.floor(leftG / count);
  throw new Ambiguous(
    `B${no} has ${sayG(leftG, house.settings.units)} left. How heavy is each of the ${count}?`,
    [{ label: `${count} x ${sayG(eachG, house.settings.units)}`, request: `${count} x ${eachG} g B${no}` }],
  );
}

function restShared(
  house: House,
  { batch: no, count }: Extract<FillTold, { is: 'rest' }>,
): Extract<FillTold, { is: 'one' }> {
  const batch = loadedBatch(house, no);
  const facts = driedFacts(house, batch);
  const left = restG(partlySealed(house, batch, facts.dryG));
  const eachDryG = Math.floor((left / count) * 10) / 10;
  if (!(eachDryG > 0)) throw new Refusal('nothing-left', `Nothing of B${no} is left to seal.`);
  return { is: 'one', batch: no, groups: [{ count, eachDryG }] };
}

/** Pouches of one batch. */
function sealOne(
  house: House,
  how: How,
  { batch: no, groups }: Extract<FillTold, { is: 'one' }>,
  unchecked: boolean,
): Sealed {
  const each = groups.flatMap(({ count, eachDryG }) => Array.from({ length: count }, () => eachDryG));
  const part = takeDry(house, no, each, how.sealedAtMs, unchecked);
  const { batch, facts, isDry, isMeasuredDry, vouched, leftG } = part;
  const filled = groups.map((group) =>
    fill(house, how, batch, facts, group, { isDry, isMeasuredDry, fatFraction: null }),
  );
  const left =
    leftG <= house.settings.scaleG
      ? `Nothing of B${batch.no} is left.`
      : `${sayG(leftG, house.settings.units)} of B${batch.no} are left unsealed.`;
  return {
    batch,
    facts,
    filled,
    isDry,
    vouched,
    doubts: doubtsOf([part]),
    left: [left],
    least: null,
    isServingsGuessed: false,
  };
}

/** Pouches of which each holds something of several batches, or from the cupboard. */
function sealMixed(
  house: House,
  how: How,
  told: MixtureTold,
  unchecked: boolean,
  feeds: number | undefined,
): Sealed {
  const mixed = mixNow(house, told, { sealedAtMs: how.sealedAtMs, unchecked, servings: feeds });
  const { batch, isDry, least } = mixed;
  const facts = driedFacts(house, batch);
  const group = { count: told.count, eachDryG: facts.dryG };
  return {
    batch,
    facts,
    filled: [fill(house, how, batch, facts, group, { ...mixed, fatFraction: least.fatFraction })],
    isDry,
    vouched: mixed.taken.find(({ part: { vouched } }) => isDry && vouched !== null)?.part.vouched ?? null,
    doubts: isDry ? doubtsOf(mixed.taken.map(({ part }) => part)) : [],
    left: leftLines(mixed, house.settings),
    least: least.called,
    isServingsGuessed: feeds === undefined,
  };
}
