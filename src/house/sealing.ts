import { DateTime } from 'luxon';
import { bestBy } from '#core/bestby.ts';
import { pressurePa, seaLevelPa } from '#core/boiling.ts';
import { type BatchFacts, fatOfSolids } from '#core/meal.ts';
import {
  type AbsorberChoice,
  chooseAbsorber,
  freeAirMl,
  oxygenMl,
  particleDensityGPerMl,
} from '#core/oxygen.ts';
import type { Settings } from '#core/settings.ts';
import { sayNumber } from '#words/say.ts';

/** What goes into one pouch beside the food, and how long it is planned to keep. */
export interface Sealing {
  readonly volumeMl: number | null;
  /** Oxygen in the free air, ml; null while the pouch's size is unknown. */
  readonly oxygenMl: number | null;
  readonly absorber: AbsorberChoice | null;
  /** The household seals without one. */
  readonly noAbsorber: boolean;
  readonly bestByOn: string | null;
  readonly fatFraction: number;
  readonly storageC: number;
}

/**
 * @param foodG dry food in the pouch, g
 * @param facts of its batch, dried
 * @throws Refusal 'food-does-not-fit' when the food is larger than the pouch
 */
export function planSealing(
  foodG: number,
  facts: BatchFacts & { dryG: number },
  told: { volumeMl: number | null; absorber: boolean; checked: boolean; settings: Settings; nowMs: number },
): Sealing {
  const { volumeMl, settings } = told;
  // Without a figure for fat the least keeping row of the policy holds.
  const fatFraction = fatOfSolids(facts.totals) ?? 1;
  const { waterG, proteinG, fatG, carbohydrateG, fibreG, ashG, solidsG } = facts.totals;
  const density =
    solidsG > 0 && waterG >= 0
      ? particleDensityGPerMl({
          waterG: Math.max(0, facts.dryG - solidsG),
          proteinG,
          fatG,
          carbohydrateG,
          fibreG,
          ashG,
        })
      : 1.45;
  const oxygen =
    volumeMl === null
      ? null
      : oxygenMl(freeAirMl(volumeMl, foodG, density), pressurePa(settings.altitudeM) / seaLevelPa);
  const absorber =
    told.checked && told.absorber && oxygen !== null && settings.absorbersMl.length > 0
      ? chooseAbsorber(oxygen, settings.absorbersMl, settings.absorberSafety)
      : null;
  const months = bestBy(fatFraction, settings.storageC, told.absorber).months;
  return {
    volumeMl,
    oxygenMl: oxygen,
    absorber,
    noAbsorber: !told.absorber,
    bestByOn: told.checked ? lastOfMonth(told.nowMs, months, settings.zone) : null,
    fatFraction,
    storageC: settings.storageC,
  };
}

/** A planning date is no finer than a month: the end of the last whole month within the figure. */
function lastOfMonth(fromMs: number, months: number, zone: string): string {
  const whole = Math.floor(months);
  const to = DateTime.fromMillis(fromMs, { zone }).plus({
    months: whole,
    days: Math.floor((months - whole) * 30),
  });
  const end = to.endOf('month').hasSame(to, 'day') ? to : to.minus({ months: 1 }).endOf('month');
  return (end.toMillis() < fromMs ? to : end).toISODate()!;
}

/** Which absorber, and why; or what is missing to say so. */
export function absorberLine(plan: Sealing, settings: Settings): string {
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
