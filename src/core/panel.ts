import { Refusal } from './refusal.ts';
import type { Per100 } from './solids.ts';

/** A nutrition panel as it stands on a packet; g of each nutrient in the amount it speaks of. */
export interface Panel {
  /** What the figures are for: 100 g, 100 ml, or a serving of so many grams. */
  readonly ofG: number;
  /** Whether 'carbohydrate' holds the fibre: on U.S. labels it does, on those of the EU it does not. */
  readonly carbohydrateHoldsFibre: boolean;
  readonly kcal: number | null;
  readonly fatG: number;
  readonly carbohydrateG: number;
  readonly fibreG: number | null;
  readonly proteinG: number;
  readonly sodiumMg: number;
}

/** Salt is sodium times this on labels of the EU. @source eu-annex-xiv */
export const saltPerSodium = 2.5;
/** kJ in a kcal. Exact by definition of the thermochemical calorie. */
export const kjPerKcal = 4.184;

/** Energy of 1 g, kcal, for labels. @source eu-annex-xiv */
const kcalPerG = { fat: 9, carbohydrate: 4, fibre: 2, protein: 4 } as const;

/**
 * What the figures of a panel add up to, kcal in the amount it speaks of.
 * @source eu-annex-xiv
 */
export function energyOf({ fatG, carbohydrateG, fibreG, proteinG, carbohydrateHoldsFibre }: Panel): number {
  const available = carbohydrateG - (carbohydrateHoldsFibre ? (fibreG ?? 0) : 0);
  return (
    kcalPerG.fat * fatG +
    kcalPerG.carbohydrate * Math.max(0, available) +
    kcalPerG.fibre * (fibreG ?? 0) +
    kcalPerG.protein * proteinG
  );
}

/** How far energy may lie from what the figures add up to: rounding, polyols, acids. Chosen. */
const energyFraction = 0.2;
const energyKcal = 15;
/** What a label names nowhere and is no water: minerals beside salt, acids. g in 100 g. Chosen. */
const mostUnnamedG = 3;
/** Fibre that an EU label need not name. g in 100 g. Chosen. */
const mostUnnamedFibreG = 5;
/** Rounded figures together are off by no more, g in 100 g. Chosen. */
const roundingG = 1.5;

export interface PanelFigures {
  readonly per100: Per100;
  /** Water by difference, g in 100 g: least and most it can be. */
  readonly waterG: readonly [number, number];
}

/**
 * A panel's figures for 100 g, with water by difference.
 * @throws Refusal 'bad-panel' for figures that weigh more than the food, or whose energy does not add up
 */
export function panelFigures(panel: Panel): PanelFigures {
  const { ofG, fibreG, kcal } = panel;
  if (!(ofG > 0)) throw new Refusal('bad-panel', 'A panel for 0 g says nothing.');
  const of100 = (value: number) => (value * 100) / ofG;
  const fat = of100(panel.fatG);
  const protein = of100(panel.proteinG);
  const fibre = fibreG === null ? null : of100(fibreG);
  const carbohydrate = of100(panel.carbohydrateG + (panel.carbohydrateHoldsFibre ? 0 : (fibreG ?? 0)));
  const salt = (of100(panel.sodiumMg) * saltPerSodium) / 1000;
  const named = fat + protein + carbohydrate + salt;
  if (named > 100 + roundingG)
    throw new Refusal(
      'bad-panel',
      `Fat, carbohydrate, fibre, protein and salt together are ${named.toFixed(1)} g in 100 g: more than the food. Is the panel for another amount?`,
    );
  const added = energyOf(panel);
  const off = kcal === null ? 0 : Math.abs(kcal - added);
  if (kcal !== null && off > Math.max((energyKcal * ofG) / 100, energyFraction * Math.max(kcal, added)))
    throw new Refusal(
      'bad-panel',
      `${Math.round(kcal)} kcal do not go with the rest, which adds up to ${Math.round(added)} kcal. Is a figure mistyped?`,
    );
  const water = Math.min(100, Math.max(0, 100 - named));
  const unnamed = mostUnnamedG + (fibreG === null && !panel.carbohydrateHoldsFibre ? mostUnnamedFibreG : 0);
  return {
    per100: {
      waterG: water,
      kcal: of100(kcal ?? added),
      proteinG: protein,
      fatG: fat,
      carbohydrateG: carbohydrate,
      fibreG: fibre,
      ashG: salt,
      sodiumMg: of100(panel.sodiumMg),
    },
    waterG: [Math.max(0, water - unnamed - roundingG), Math.min(100, water + roundingG)],
  };
}
