import {
  type CautionLine,
  type Loaded,
  fatty,
  hasRice,
  isGarlicInOil,
  mostHoursWarm,
  notForLong,
  rawAnimals,
  syrups,
  thickPieces,
} from '#core/cautions.ts';
import { fatOfSolids } from '#core/sealing-plan.ts';
import type { Totals } from '#core/solids.ts';
import { sayList } from './say.ts';

const named = (lines: readonly CautionLine[]) => sayList([...new Set(lines.map(({ called }) => called))]);

/** What to heed before a meal goes on the trays. */
export function dryingCautions(lines: readonly CautionLine[], totals: Totals): string[] {
  const fat = fatOfSolids(totals) ?? 0;
  const { isFatty, pure } = fatty(fat, lines);
  const raw = rawAnimals(lines);
  const thick = thickPieces(raw);
  const sticky = syrups(lines, totals.solidsG);
  return [
    ...(isFatty
      ? [
          `${Math.round(fat * 100)} % of the dry food is fat: fat does not dry, and goes rancid. It keeps for a shorter time; leave ${pure.length > 0 ? `the ${named(pure)}` : 'oil and butter'} out and add ${pure.length === 1 ? 'it' : 'them'} at camp.`,
        ]
      : []),
    ...(sticky.length > 0
      ? [
          `The ${named(sticky)} will not dry: it stays sticky and keeps its water. Less of it, or add it at camp.`,
        ]
      : []),
    ...(raw.length > 0
      ? [`Cook the ${named(raw)} through before drying: freeze-drying kills no germs.`]
      : []),
    ...(thick.length > 0
      ? [`Cut the ${named(thick)} to bite-size pieces; thick ones stay wet inside (common practice).`]
      : []),
  ];
}

/** Beside a planning date of food that a leaflet does not store for long. */
export function notForLongCaution(lines: readonly CautionLine[]): string[] {
  const found = notForLong(lines);
  return found.length === 0
    ? []
    : [
        `Eat it early: a storage leaflet (2007) keeps dried ${sayList([...new Set(found.map(({ called }) => called.split(',')[0]!))])} out of long storage without oxygen.`,
      ];
}

/** The first time that a household records such a recipe. */
export function garlicCaution(lines: readonly CautionLine[]): string[] {
  return isGarlicInOil(lines)
    ? ['Garlic left standing in oil at room temperature can grow botulism: heat it at once, or keep it cold.']
    : [];
}

/** Before a cooked meal goes on the trays. */
export function coolingCaution(lines: readonly CautionLine[]): string {
  return hasRice(lines)
    ? `Rice: cool it within ${mostHoursWarm} h of cooking, spread thin, or load it at once; its spores outlive the pot.`
    : `Cool what was cooked within ${mostHoursWarm} h, or load it at once.`;
}

/** Raw food and food to be eaten as it is in one load. */
export function besideCaution(isRaw: boolean, beside: readonly Loaded[]): string[] {
  if (beside.length === 0) return [];
  const codes = sayList(beside.map(({ no }) => `B${no}`));
  return [
    `Never in one load with ${codes}: raw food and food that is eaten as it comes out do not share a dryer. ${isRaw ? codes : 'This'} would have to be cooked as well. In another dryer, or one after the other?`,
  ];
}

/** The same where there is little room. */
export const firstAbsorberInShort =
  'Absorbers work once their bag is open: take out what you use within minutes.';

/** The first time that a household seals with an absorber (USU Extension, Oxygen Removal; the kind: common practice). */
export const firstAbsorberCaution =
  'Absorbers work from the minute their bag is open: take out what you use within minutes, close the rest airtight. Take the kind that carries its own moisture. Keep pouches cool and dark, not in a car or by a heater.';
