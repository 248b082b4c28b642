import { usualSolidsErrorFraction } from './balance.ts';
import { sumThresholdG, trayThresholdG } from './dryness.ts';
import { Refusal } from './refusal.ts';
import { figure } from './within.ts';

/** No household tray holds more, g; beyond it a unit or a comma was slipped. Chosen. */
const mostTrayG = 15_000;

export interface Net {
  readonly netG: number;
  readonly tareG: number;
}

/**
 * Weights as typed, less the empty trays when they were weighed together.
 * @param weightsG g, one a tray
 * @param gross whether the tray is in the weight
 * @param taresG g of each empty tray in the same order; one value holds for all
 * @returns g of food and of tray; the tray is 0 where it was not on the scale
 * @throws Refusal 'no-tare', 'tare-count', 'lighter-than-tray' or 'absurd-weight'
 */
export function netWeights(weightsG: readonly number[], gross: boolean, taresG: readonly number[]): Net[] {
  const absurd = weightsG.find((g) => g > mostTrayG);
  if (absurd !== undefined) {
    throw new Refusal(
      'absurd-weight',
      `${figure(absurd)} g on one tray cannot be: more than ${mostTrayG} g does not fit.`,
    );
  }
  if (!gross) return weightsG.map((netG) => ({ netG, tareG: 0 }));
  if (taresG.length === 0) {
    throw new Refusal(
      'no-tare',
      'I do not know your empty trays yet. Tell me once: /house tray weight 512 g.',
    );
  }
  if (taresG.length > 1 && taresG.length < weightsG.length) {
    throw new Refusal(
      'tare-count',
      `I know the empty weight of ${taresG.length} trays, and ${weightsG.length} were weighed.`,
    );
  }
  return weightsG.map((grossG, i) => {
    const tareG = taresG.length === 1 ? taresG[0]! : taresG[i]!;
    if (grossG <= tareG) {
      throw new Refusal(
        'lighter-than-tray',
        `${figure(grossG)} g is no more than the empty tray of ${figure(tareG)} g. Leave "gross" out if the tray was not on the scale.`,
      );
    }
    return { netG: grossG - tareG, tareG };
  });
}

/** A weighing as it is held against what is known; g. */
export interface Claimed {
  readonly netG: number;
  /** What was loaded on that tray, or on all. */
  readonly loadedG: number;
  /** What the same weighed last; null the first time. */
  readonly lastG: number | null;
  /** All trays together rather than one of them. */
  readonly isTotal: boolean;
}

/**
 * What speaks against one weighing: more than was loaded cannot be; more than last time is doubted, as drying food
 * does not gain.
 * @param scaleG the scale's smallest step, g
 * @returns undefined when nothing does. Common practice, no source.
 */
export function weighingDoubt(
  { netG, loadedG, lastG, isTotal }: Claimed,
  scaleG: number,
): 'above loaded' | 'above last' | undefined {
  if (netG > loadedG + scaleG) return 'above loaded';
  if (lastG === null) return undefined;
  const limitG = isTotal ? sumThresholdG(lastG) : trayThresholdG(lastG);
  return netG > lastG + Math.max(limitG, scaleG) ? 'above last' : undefined;
}

/**
 * Whether a batch weighs less than its solids, further than a food table can be wrong: a line, a pot or a scale is.
 * @param totalG the whole batch, g
 * @param solidsG what the lines put on the trays, g
 * @source usda-sr28
 */
export function isBelowSolids(totalG: number, solidsG: number): boolean {
  return totalG < solidsG * (1 - usualSolidsErrorFraction);
}
