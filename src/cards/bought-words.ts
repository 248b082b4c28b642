import type { Batch } from '#core/records.ts';
import { batchNumbered, factsOfBatch } from '#house/figures.ts';
import type { House } from '#house/house.ts';
import { sayCodes, sayCount, sayG, sayMonth, sayServings, sayWater } from '#words/say.ts';

/** A piece in figures, how it is eaten, and until when its packet says it keeps. */
export function sayBought(house: House, batch: Batch): string[] {
  const facts = factsOfBatch(house, batch);
  const { eaten, recipe, servings } = facts;
  const of = (nutrient: 'kcal' | 'sodiumMg') => !eaten.unknown.some((one) => one.nutrient === nutrient);
  const least = recipe.isSodiumLeast ? 'at least ' : '';
  const figures = [
    ...(of('kcal') ? [`${Math.round(eaten.kcal)} kcal`] : []),
    ...(of('sodiumMg') ? [`${least}${Math.round(eaten.sodiumMg)} mg sodium`] : []),
  ];
  const missing = [...(of('kcal') ? [] : ['energy']), ...(of('sodiumMg') ? [] : ['sodium'])];
  const waterMl = batch.mix?.bought?.waterMl ?? 0;
  const bestBy = house.pouches.ofBatch(batch.no)[0]?.bestByOn ?? null;
  return [
    ...(figures.length > 0
      ? [`A piece${servings === 1 ? '' : `, ${sayServings(servings)}`}: ${figures.join(', ')}.`]
      : []),
    ...(missing.length > 0 ? [`Not told: ${missing.join(' and ')}. It is on the packet.`] : []),
    waterMl > 0 ? `Pour ${sayWater(waterMl, house.settings)} of hot water on each.` : 'Eaten as it is.',
    bestBy === null ? 'No best-by date was told.' : `Best by ${sayMonth(bestBy)}.`,
  ];
}

/** What was bought and is in stock and held for no trip, a line each. */
export const shelfLines = (house: House): string[] =>
  house.pouches
    .shelves()
    .filter(({ isBought }) => isBought)
    .map(({ batch, isMixed, isBought, numbers, leastG, bestByOn }) => {
      const { recipe } = batchNumbered(house, batch);
      const date = bestByOn === null ? 'no date told' : `best by ${sayMonth(bestByOn)}`;
      const codes = sayCodes(numbers.map((no) => ({ batch, no, isMixed, isBought })));
      return `${recipe.name}: ${sayCount(numbers.length, 'piece')} of ${sayG(leastG, house.settings.units)}, ${date}: ${codes}.`;
    });
