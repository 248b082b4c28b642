import type { Material } from '#core/barrier.ts';
import { type Kept, type Lengthens, whatLengthens } from '#core/bestby.ts';
import type { SealingPlan } from '#core/sealing-plan.ts';
import type { Settings } from '#core/settings.ts';
import { materialSaid } from '#words/pouch-parts.ts';
import { sayList, sayMonth, sayNumber, sayPacks } from '#words/say.ts';

const roomWords: Readonly<Record<SealingPlan['room'], string>> = {
  pressed: 'of pouch with the air pressed out',
  measured: 'as measured',
  rigid: 'of jar',
};

/** Which absorber, or what is missing to say so. */
export function absorberLine(plan: SealingPlan, settings: Settings): string {
  if (plan.noAbsorber) return 'Sealed without an absorber, so the planning date is short.';
  return plan.absorber === null
    ? `Absorber: ${neededMl(plan, settings)} ml or more. Your sizes: /house absorbers 100 300 500 ml.`
    : `Absorber: ${sayPacks(plan.absorber.packs)}, not food.`;
}

const neededMl = (plan: SealingPlan, settings: Settings): number =>
  Math.ceil(plan.oxygenMl * settings.absorberSafety);

/**
 * What the absorber rests on.
 * @param measuredOn the pouch of this meal whose measured room was taken
 */
export function absorberWhy(plan: SealingPlan, settings: Settings, measuredOn: string | null): string[] {
  if (plan.noAbsorber) return [];
  const air = `${Math.round(plan.oxygenMl)} ml of oxygen in about ${Math.round(plan.volumeMl)} ml ${measuredOn === null ? roomWords[plan.room] : `as measured on ${measuredOn}`}`;
  const safety = `times ${sayNumber(settings.absorberSafety)} for safety`;
  const packs =
    plan.absorber === null ? `${neededMl(plan, settings)} ml or more` : sayPacks(plan.absorber.packs);
  return [`Absorber: ${packs} (${air}, ${safety}).`];
}

/** Food and water that the pouch will not hold. */
export function fitLines({ isTooFull }: SealingPlan): string[] {
  return isTooFull ? ['Food and water hardly fit this pouch: a larger one, or a bowl.'] : [];
}

const lengthensSaid = ({ areaCm2 }: Kept): Readonly<Record<Lengthens, string>> => ({
  'tell the pouch': `foil, if it is (/house pouch${areaCm2 === null ? ' 20 x 30 cm' : ''} foil)`,
  foil: 'foil',
  'a larger absorber': 'a larger absorber',
  'an absorber': 'an absorber',
  'a dry jar': "a hygrometer's word before sealing",
  'less fat': 'less fat',
  cooler: 'a cooler place',
});

const wallSaid = (material: Material | null): string =>
  material === null ? 'a pouch nobody described, counted as clear plastic' : materialSaid[material];

/** The date; of a pouch that nobody described it is said what it was taken for. */
export const bestByLine = ({ bestByOn, kept }: SealingPlan): string =>
  `Best by ${sayMonth(bestByOn!)}${kept.material === null ? ', if it is clear plastic' : ' (planning date)'}.`;

/** The date and what it rests on. @param least what of a mixture keeps least */
export const bestByWhy = (plan: SealingPlan, least: string | null = null): string =>
  `Best by ${sayMonth(plan.bestByOn!)}: ${restsOn(plan.kept, plan.storageC, least)}${plan.kept.material === null ? ' It is a planning date.' : ''}`;

/** What a planning date rests on, and what would lengthen it. @param least what of a mixture keeps least */
export function restsOn(kept: Kept, storageC: number, least: string | null): string {
  const longer = whatLengthens(kept, storageC).map((one) => lengthensSaid(kept)[one]);
  const more = longer.length === 0 ? '' : ` Longer with ${sayList(longer)}.`;
  const dry = kept.isMeasuredDry ? 'measured dry' : 'dry by weight';
  const fat = `${Math.round(kept.fatFraction * 100)} % fat in ${least === null ? 'the dry food' : `${least}, which keeps least`}`;
  return `${wallSaid(kept.material)}, ${dry}, ${fat}, ${sayNumber(storageC)} °C.${more}`;
}
