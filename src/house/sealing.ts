import type { SealingPlan } from '#core/sealing-plan.ts';
import type { Settings } from '#core/settings.ts';
import { sayMonth, sayNumber } from '#words/say.ts';

/** Which absorber, and why; or what is missing to say so. */
export function absorberLine(plan: SealingPlan, settings: Settings): string {
  if (plan.noAbsorber) return 'Sealed without an absorber, so the planning date is short.';
  if (plan.oxygenMl === null) {
    return 'Absorber: tell me the pouch first, flat inside: /house pouch 20 x 30 cm.';
  }
  const air = `${Math.round(plan.oxygenMl)} ml of oxygen in at most ${Math.round(plan.volumeMl!)} ml of pouch`;
  if (plan.absorber === null) {
    const needed = Math.ceil(plan.oxygenMl * settings.absorberSafety);
    return `Absorber: ${needed} ml or more (${air}, times ${sayNumber(settings.absorberSafety)} for safety). Your sizes: /house absorbers 100 300 500 ml.`;
  }
  const { count, sizeMl } = plan.absorber;
  return `Absorber: ${count > 1 ? `${count} x ` : ''}${sayNumber(sizeMl)} ml (${air}, times ${sayNumber(settings.absorberSafety)} for safety). Not food.`;
}

export function bestByLine(plan: SealingPlan): string {
  return `Best by ${sayMonth(plan.bestByOn!)}: a planning date, from ${Math.round(plan.fatFraction * 100)} % fat in the dry food and ${sayNumber(plan.storageC)} °C.`;
}
