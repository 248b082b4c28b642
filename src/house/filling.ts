import type { Material } from '#core/barrier.ts';
import { type BatchFacts, type PouchFacts, pouchFacts } from '#core/meal.ts';
import { isRigid, type PouchKind } from '#core/pouch-kind.ts';
import type { Batch, Code } from '#core/records.ts';
import { type SealingPlan, sealingPlan } from '#core/sealing-plan.ts';
import { localDays } from '#words/local-days.ts';
import type { PouchGroup } from '#words/parts.ts';
import { correctionFor } from './corrections.ts';
import type { House } from './house.ts';
import { sayCode } from '#words/say.ts';
import { Refusal } from '#core/refusal.ts';

/** How the pouches are sealed, whatever goes in. */
export interface How {
  readonly sealedAtMs: number;
  readonly measuredMl: number | null;
  readonly withAbsorber: boolean;
  /** The pouch that was said, or the usual one; null where none is known. */
  readonly kind: PouchKind | null;
  readonly material: Material | null;
  /** Nothing was said of the pouch: it is the household's usual one. */
  readonly isUsual: boolean;
}

/** Pouches of one weight, filled and recorded. */
export interface Filled {
  readonly codes: readonly Code[];
  readonly eachDryG: number;
  readonly plan: SealingPlan;
  readonly figures: PouchFacts;
  /** One figure is said: somebody rated the meal, or it is raw and only soaks. */
  readonly isRated: boolean;
  /** The pouch of this meal whose measured room was taken; null: its own, or reckoned. */
  readonly measuredOn: string | null;
}

/**
 * How it is sealed: what was said of the pouch, else what the household has told.
 * @throws Refusal 'no-size' for a jar of which nobody knows how much it holds
 */
export function howSealed(
  asked: {
    readonly at: number | undefined;
    readonly measuredMl: number | undefined;
    readonly withoutAbsorber: true | undefined;
    readonly kindName: string | undefined;
    readonly pouch: Omit<PouchKind, 'material'> | undefined;
    readonly material: Material | undefined;
  },
  { settings, nowMs }: House,
): How {
  const named = settings.pouchKinds.find(({ name }) => name === asked.kindName);
  // 'jar' alone is the jar that the house knows.
  const known =
    named ?? settings.pouchKinds.find((kind) => isRigid(kind.material) && kind.material === asked.material);
  if (isRigid(asked.material ?? null) && !asked.pouch && !known)
    throw new Refusal(
      'no-size',
      'I read a jar or tin, but not how much it holds: jar 1 l. /house jar 1 l keeps it.',
    );
  const usual = settings.pouch;
  const size = asked.pouch ?? known ?? usual;
  const material =
    asked.material ??
    (asked.pouch ? (known?.material ?? usual?.material) : size && (known ?? usual)?.material) ??
    null;
  return {
    sealedAtMs: asked.at ?? nowMs,
    measuredMl: asked.measuredMl ?? null,
    withAbsorber: !asked.withoutAbsorber,
    kind: size && { ...size, material },
    material,
    isUsual: !asked.pouch && !known && asked.material === undefined,
  };
}

/** How dry the food was shown to be, and the fat of what keeps least in a mixture. */
interface ShownDry {
  readonly isDry: boolean;
  readonly isMeasuredDry: boolean;
  readonly fatFraction: number | null;
}

/** Records pouches of one weight, with what goes into them and how long they are planned to keep. */
export function fill(
  house: House,
  how: How,
  batch: Batch,
  facts: BatchFacts & { readonly dryG: number },
  { count, eachDryG }: PouchGroup,
  { isDry, isMeasuredDry, fatFraction }: ShownDry,
): Filled {
  const { settings } = house;
  const learnt = correctionFor(house, batch);
  const figures = pouchFacts(eachDryG, facts, learnt.correction);
  // A jar has its own room, whatever a pouch of the meal took.
  const mayKnow = how.measuredMl === null && !isRigid(how.material);
  const before = mayKnow ? house.pouches.measured(batch.recipe.name) : undefined;
  const plan = sealingPlan(eachDryG, facts, {
    ...settings,
    ...how,
    measuredMl: how.measuredMl ?? (before ? before.mlPerG * eachDryG : null),
    pouchMl: how.kind?.volumeMl ?? null,
    areaCm2: how.kind?.areaCm2 ?? null,
    isMeasuredDry,
    waterMl: figures.waterMl,
    isDry,
    fatFraction,
    sealedOn: localDays(settings.zone).dayOf(how.sealedAtMs),
  });
  const numbers = house.pouches.seal(
    batch.id,
    Array.from({ length: count }, () => ({
      dryG: eachDryG,
      sealedAtMs: how.sealedAtMs,
      checked: isDry,
      volumeMl: plan.volumeMl,
      absorbers: plan.absorber?.packs ?? [],
      bestByOn: plan.bestByOn,
      kept:
        plan.bestByOn === null
          ? null
          : {
              ...plan.kept,
              isUsual: how.isUsual,
              measuredMlPerG: how.measuredMl === null ? null : how.measuredMl / eachDryG,
            },
    })),
  );
  const isMixed = batch.mix !== null;
  return {
    codes: numbers.map((no) => ({ batch: batch.no, no, isMixed })),
    eachDryG,
    plan,
    figures,
    isRated: learnt.ratings > 0 || batch.isRaw,
    measuredOn: before ? sayCode({ ...before, isMixed }) : null,
  };
}
