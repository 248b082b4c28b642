import { Refusal } from '#core/refusal.ts';
import type { Settings } from '#core/settings.ts';
import { sayG } from '#words/say.ts';

/** No household tray holds more; beyond it a unit or a comma was slipped. Chosen. */
const mostTrayG = 15_000;

export interface Net {
  readonly netG: number;
  readonly tareG: number;
}

/**
 * Weights as typed, less the empty trays when they were weighed together.
 * @param weights g, one a tray
 * @param gross whether the tray is in the weight
 * @param tares g of each empty tray; those of the settings unless the batch keeps its own
 * @throws Refusal 'no-tare', 'tare-count', 'lighter-than-tray' or 'absurd-weight'
 */
export function weighedNet(
  weights: readonly number[],
  gross: boolean,
  settings: Settings,
  tares: readonly number[] = settings.trayTaresG,
): Net[] {
  const absurd = weights.find((g) => g > mostTrayG);
  if (absurd !== undefined) {
    throw new Refusal(
      'absurd-weight',
      `${sayG(absurd)} on one tray cannot be: more than ${sayG(mostTrayG)} does not fit.`,
    );
  }
  if (!gross) return weights.map((netG) => ({ netG, tareG: 0 }));
  if (tares.length === 0) {
    throw new Refusal(
      'no-tare',
      'I do not know your empty trays yet. Tell me once: /house tray weight 512 g.',
    );
  }
  if (tares.length > 1 && tares.length < weights.length) {
    throw new Refusal(
      'tare-count',
      `I know the empty weight of ${tares.length} trays, and ${weights.length} were weighed.`,
    );
  }
  return weights.map((grossG, i) => {
    const tareG = tares.length === 1 ? tares[0]! : tares[i]!;
    if (grossG <= tareG) {
      throw new Refusal(
        'lighter-than-tray',
        `${sayG(grossG)} is no more than the empty tray of ${sayG(tareG)}. Leave "gross" out if the tray was not on the scale.`,
      );
    }
    return { netG: grossG - tareG, tareG };
  });
}
