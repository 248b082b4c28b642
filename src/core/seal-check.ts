import { pressurePa } from './boiling.ts';
import { trayThresholdG } from './dryness.ts';
import { between } from './within.ts';

/** What a pouch was found to be once it was sealed. */
export const findings = ['tight', 'loose', 'drying', 'resealed', 'opened', 'swollen', 'smells'] as const;
export type Finding = (typeof findings)[number];

/** Found so, a pouch goes on no trip and has no best-by until it is put right, eaten or thrown away. */
export type Unsound = Exclude<Finding, 'tight' | 'resealed'>;

/** Whether a pouch is as it was sealed, by what was found last. */
export function unsound(found: Finding | null): Unsound | null {
  return found === null || found === 'tight' || found === 'resealed' ? null : found;
}

/**
 * Whether one finding may follow another. A pouch that let go does not become tight by being called so: it is weighed
 * and sealed anew. What swelled or smells is not made good by anything; that thinner air alone swelled it is another
 * matter (`isByAltitude`).
 */
export function mayFollow(before: Finding | null, what: Finding): boolean {
  switch (unsound(before)) {
    case null:
      return what !== 'resealed';
    case 'loose':
    case 'drying':
    case 'opened':
      return what !== 'tight';
    case 'swollen':
    case 'smells':
      return what === 'swollen' || what === 'smells';
  }
}

/**
 * Whether food from a pouch that let go is as dry as when it was sealed: solids stay, so what it weighs more is water
 * it took up. The limit is that of one tray.
 * @param sealedG what went into the pouch, g, above 0
 * @param nowG what it weighs now, g
 * @returns what it gained and what it may have, g
 * @source irri-moisture
 */
export function regained(
  sealedG: number,
  nowG: number,
): { readonly isDry: boolean; readonly gainedG: number; readonly thresholdG: number } {
  const thresholdG = trayThresholdG(sealedG);
  const gainedG = nowG - sealedG;
  return { isDry: gainedG <= thresholdG + 1e-9, gainedG, thresholdG };
}

/**
 * How much more room a pouch's gas takes where it is opened than where it was sealed, at the same temperature
 * (Boyle): a tight pouch on a mountain is not a spoilt one.
 * @param sealedAtM m above the sea
 * @param openedAtM m above the sea
 * @returns no unit; 1 at the same height, more above it
 * @throws Refusal 'impossible-altitude'
 * @source us-atmosphere-1976
 */
export function gasGrowth(sealedAtM: number, openedAtM: number): number {
  return pressurePa(sealedAtM) / pressurePa(openedAtM);
}

/** So much higher than where it was sealed a swollen pouch may be the air's doing, m. Chosen. */
const mountainM = 500;

/**
 * Whether thinner air alone explains that a pouch swelled.
 * @param altitudeM where it was found; undefined when nobody said
 */
export function isByAltitude(sealedAtM: number, altitudeM: number | undefined): boolean {
  return altitudeM !== undefined && altitudeM - sealedAtM >= mountainM;
}

/**
 * What is left of an opened pouch.
 * @param dryG in it before, g
 * @param eaten g, or a share of it from 0 to 1
 * @throws Refusal 'more-than-there-is'
 */
export function afterEatingG(
  dryG: number,
  eaten: { readonly g: number } | { readonly share: number },
): number {
  const g = 'g' in eaten ? eaten.g : dryG * eaten.share;
  return dryG - between('more-than-there-is', 'What was eaten', g, 0, dryG, 'g');
}
