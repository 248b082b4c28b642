import { whatLengthens } from '#core/bestby.ts';
import type { SealingPlan } from '#core/sealing-plan.ts';
import type { Settings } from '#core/settings.ts';
import { sayList, sayMonth, sayNumber } from '#words/say.ts';

const roomWords: Readonly<Record<SealingPlan['room'], string>> = {
  pressed: 'of pouch with the air pressed out',
  measured: 'as measured',
  rigid: 'of jar',
};

/** Which absorber, and why; or what is missing to say so. */
export function absorberLine(plan: SealingPlan, settings: Settings): string {
  if (plan.noAbsorber) return 'Sealed without an absorber, so the planning date is short.';
  const air = `${Math.round(plan.oxygenMl)} ml of oxygen in about ${Math.round(plan.volumeMl)} ml ${roomWords[plan.room]}`;
  const safety = `times ${sayNumber(settings.absorberSafety)} for safety`;
  if (plan.absorber === null) {
    const needed = Math.ceil(plan.oxygenMl * settings.absorberSafety);
    return `Absorber: ${needed} ml or more (${air}, ${safety}). Your sizes: /house absorbers 100 300 500 ml.`;
  }
  const { count, sizeMl } = plan.absorber;
  return `Absorber: ${count > 1 ? `${count} x ` : ''}${sayNumber(sizeMl)} ml (${air}, ${safety}). Not food.`;
}

/** Food and water that the pouch will not hold. */
export function fitLines({ isTooFull }: SealingPlan): string[] {
  return isTooFull
    ? [
        'Food and water will hardly fit this pouch: take a larger one, or eat it from a bowl (over 85 % full).',
      ]
    : [];
}

/** @param least what of a mixture keeps least */
export function bestByLine(plan: SealingPlan, least: string | null = null): string {
  const longer = whatLengthens(plan.fatFraction, plan.storageC, !plan.noAbsorber);
  const more = longer.length === 0 ? '' : ` Longer with ${sayList(longer)}.`;
  return `Best by ${sayMonth(plan.bestByOn!)}: a planning date, from ${Math.round(plan.fatFraction * 100)} % fat in ${least === null ? 'the dry food' : `${least}, which keeps least,`} and ${sayNumber(plan.storageC)} °C.${more}`;
}
