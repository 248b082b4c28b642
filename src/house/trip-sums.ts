import { boilingPointC } from '#core/boiling.ts';
import { energyOfDayKcal, sodiumOfDayMg } from '#core/eaters.ts';
import {
  fuelG,
  heatFromSnowKJ,
  heatToBoilKJ,
  heatToCookKJ,
  learntEfficiency,
  LHV,
  simmerMinutes,
} from '#core/fuel.ts';
import { type CampGood, goodsG, mergedGoods } from '#core/camp.ts';
import { pouchFacts } from '#core/meal.ts';
import type { Eater, Trip } from '#core/records.ts';
import type { Note } from '#core/talk.ts';
import { readCode, sayCount, sayG, sayList, sayNumber } from '#words/say.ts';
import { sayGoods } from '#words/camp-words.ts';
import type { House } from './house.ts';
import { correctionFor } from './corrections.ts';
import { batchSeen, pouchCoded } from './figures.ts';
import { altitudeOf, sayDayOf } from './trips.ts';

/** Pouches opened at a slot and who eats from them. */
export interface Served {
  readonly slot: Trip['slots'][number];
  readonly codes: readonly string[];
  readonly eaters: readonly number[];
  /** What part of it each eater has; without, by portions. */
  readonly parts?: ReadonlyMap<number, number>;
}

export interface TripSums {
  readonly dryG: number;
  /** Carried beside the pouches and added at camp, by slot. */
  readonly campOfSlot: ReadonlyMap<number, readonly CampGood[]>;
  /** ml to boil, by slot and by day. */
  readonly waterOfSlot: ReadonlyMap<number, number>;
  readonly waterOfDay: ReadonlyMap<string, number>;
  /** g of food dried raw, by slot: cooked in a pot of its own. */
  readonly rawOfSlot: ReadonlyMap<number, number>;
  /** By eater, then day. */
  readonly kcal: ReadonlyMap<number, ReadonlyMap<string, number>>;
  readonly sodiumMg: ReadonlyMap<number, ReadonlyMap<string, number>>;
  /** Eater and day, 'id day', on which salt that was not weighed is eaten. */
  readonly unweighedSalt: ReadonlySet<string>;
}

function add<K>(map: Map<K, number>, key: K, value: number): void {
  map.set(key, (map.get(key) ?? 0) + value);
}

/** What a trip weighs, drinks and gives, from the pouches chosen for it. */
export function tripSums(house: House, served: readonly Served[]): TripSums {
  const portions = new Map(house.eaters.all().map((eater) => [eater.id, eater.portion]));
  const waterOfSlot = new Map<number, number>();
  const waterOfDay = new Map<string, number>();
  const rawOfSlot = new Map<number, number>();
  const kcal = new Map<number, Map<string, number>>();
  const sodiumMg = new Map<number, Map<string, number>>();
  const campOfSlot = new Map<number, CampGood[]>();
  const unweighedSalt = new Set<string>();
  let dryG = 0;
  for (const { slot, codes, eaters, parts } of served) {
    let dishKcal = 0;
    let dishSodium = 0;
    let isLeast = false;
    for (const code of codes) {
      const pouch = pouchCoded(house, readCode(code));
      const { batch, facts } = batchSeen(house, pouch.batch);
      if (facts.dryG === null) continue;
      const figures = pouchFacts(
        pouch.dryG,
        { ...facts, dryG: facts.dryG },
        correctionFor(house, batch).correction,
      );
      dryG += pouch.dryG;
      campOfSlot.set(slot.id, mergedGoods([...(campOfSlot.get(slot.id) ?? []), ...figures.camp]));
      if (batch.isRaw) add(rawOfSlot, slot.id, pouch.dryG);
      add(waterOfSlot, slot.id, figures.waterMl);
      add(waterOfDay, slot.onDay, figures.waterMl);
      dishKcal += figures.kcal;
      dishSodium += figures.sodiumMg;
      isLeast ||= facts.recipe.isSodiumLeast;
    }
    const all = eaters.reduce((sum, id) => sum + (portions.get(id) ?? 1), 0);
    for (const id of eaters) {
      const part = parts?.get(id) ?? (portions.get(id) ?? 1) / all;
      if (!kcal.has(id)) kcal.set(id, new Map());
      if (!sodiumMg.has(id)) sodiumMg.set(id, new Map());
      add(kcal.get(id)!, slot.onDay, dishKcal * part);
      add(sodiumMg.get(id)!, slot.onDay, dishSodium * part);
      if (isLeast) unweighedSalt.add(`${id} ${slot.onDay}`);
    }
  }
  return { dryG, campOfSlot, waterOfSlot, waterOfDay, rawOfSlot, kcal, sodiumMg, unweighedSalt };
}

/** Fuel for spills, wind and tea; chosen. */
const fuelMargin = 1.2;

const litres = (ml: number) => `${(ml / 1000).toFixed(1)} l`;

const waterOf = (sums: TripSums): number => [...sums.waterOfDay.values()].reduce((sum, ml) => sum + ml, 0);

/** What a trip burns, with what it rests on. */
function fuelOf(house: House, trip: Trip, sums: TripSums) {
  const waterMl = waterOf(sums);
  const boilC = boilingPointC(altitudeOf(trip, house));
  const startC = trip.fromSnow ? 0 : trip.startWaterC;
  const pots = [...sums.rawOfSlot.values()];
  const heatKJ =
    (trip.fromSnow ? heatFromSnowKJ(waterMl, boilC) : heatToBoilKJ(waterMl, startC, boilC)) +
    pots.reduce((sum, g) => sum + heatToCookKJ(g, startC, boilC), 0);
  const stove = learntEfficiency(
    house.ratings.stoves().map(({ burntG, waterMl: ml, startC, boilC: to, lhvMJPerKg }) => ({
      beforeG: burntG,
      afterG: 0,
      waterMl: ml,
      startC,
      boilC: to,
      lhvMJPerKg,
    })),
  );
  const lhv = LHV['canister gas'];
  const grams = Math.round(fuelG(heatKJ, stove.fraction, lhv, fuelMargin));
  const range = `${Math.round(fuelG(heatKJ, stove.highFraction, lhv, fuelMargin))} to ${Math.round(fuelG(heatKJ, stove.lowFraction, lhv, fuelMargin))} g`;
  return { grams, range, stove, pots, boilC };
}

/** All that is added at camp on a trip, each food once. */
export const campOfTrip = ({ campOfSlot }: TripSums): CampGood[] =>
  mergedGoods([...campOfSlot.values()].flat());

/** 'Dry 500 g and 60 g to add at camp'. */
const carried = (house: House, sums: TripSums): string => {
  const camp = campOfTrip(sums);
  const g = goodsG(camp);
  const added =
    camp.length === 0 ? '' : ` and ${g > 0 ? sayG(g, house.settings.units) : 'something'} to add at camp`;
  return `Dry ${sayG(sums.dryG, house.settings.units)}${added}`;
};

/** What is to be heeded where something is boiled. */
export const stoveCautions = (sums: TripSums): string[] =>
  waterOf(sums) > 0 ? ['No stove in a tent or vehicle.'] : [];

/** Dry weight, water and gas in one line. */
export function sumInShort(house: House, trip: Trip, sums: TripSums): string[] {
  if (sums.dryG === 0) return [];
  const dry = carried(house, sums);
  const waterMl = waterOf(sums);
  if (waterMl === 0) return [`${dry}; all of it is eaten dry, nothing to boil.`];
  const { grams } = fuelOf(house, trip, sums);
  return [`${dry}; ${litres(waterMl)} to boil; gas ${grams} g.`];
}

/** The sums in words: what is carried, what is boiled, what burns. */
export function sumLines(house: House, trip: Trip, sums: TripSums): string[] {
  const waterMl = waterOf(sums);
  if (sums.dryG === 0) return [];
  if (waterMl === 0) return [`${carried(house, sums)}; all of it is eaten dry, nothing to boil.`];
  const days = [...sums.waterOfDay]
    .filter(([, ml]) => ml > 0)
    .map(([onDay, ml]) => `${sayDayOf(onDay)} ${litres(ml)}`);
  const { grams, range, stove, pots, boilC } = fuelOf(house, trip, sums);
  const percent = (fraction: number) => `${Math.round(fraction * 100)} %`;
  const from =
    stove.weighings === 0
      ? `${range} as stoves go (${percent(stove.lowFraction)} to ${percent(stove.highFraction)} efficient, common practice; weigh a canister before and after: /fuel)`
      : `your stove at ${percent(stove.fraction)}, learnt from ${sayCount(stove.weighings, 'weighing')}`;
  const cooked =
    pots.length === 0
      ? ''
      : ` RAW food is soaked, then cooked: ${sayCount(pots.length, 'pot')} of it, ${simmerMinutes} min at a simmer, in the gas (chosen).`;
  return [
    `${carried(house, sums)}; water to boil ${litres(waterMl)}: ${sayList(days)}.`,
    `Gas: about ${grams} g ${trip.fromSnow ? 'from snow' : `from ${sayNumber(trip.startWaterC)} °C`} to ${boilC.toFixed(1)} °C, a fifth to spare; ${from}.${cooked} Never run a stove in a tent or vehicle.`,
  ];
}

/** What is carried beside the pouches. */
export const toBring = (house: House, sums: TripSums): string[] => {
  const camp = campOfTrip(sums);
  return camp.length === 0
    ? []
    : [`To add at camp, carried beside the pouches: ${sayGoods(camp, house.settings.units)}.`];
};

/** For each eater the day's sodium against their limit and the energy, of these meals alone. */
export function dayNotes(eaters: readonly Eater[], sums: TripSums): Note[] {
  return eaters.flatMap((eater): Note[] => {
    const sodium = sums.sodiumMg.get(eater.id);
    const kcal = sums.kcal.get(eater.id);
    if (!sodium || !kcal) return [];
    const limit = sodiumOfDayMg(eater)?.value;
    const need = energyOfDayKcal(eater)?.value;
    const day = (onDay: string) => {
      const mg = sodium.get(onDay) ?? 0;
      const least = sums.unweighedSalt.has(`${eater.id} ${onDay}`) ? 'at least ' : '';
      const salt =
        limit === undefined
          ? `${least}${Math.round(mg)} mg`
          : `${least}${Math.round((mg / limit) * 100)} %${mg > limit ? ' (over)' : ''}`;
      const energy = Math.round(kcal.get(onDay) ?? 0);
      const share = need === undefined ? '' : ` of ${Math.round(need)}`;
      return `${sayDayOf(onDay).slice(0, 3)} sodium ${salt}, ${energy}${share} kcal`;
    };
    return [{ who: eater.name, text: [...sodium.keys()].toSorted().map(day).join('; ') }];
  });
}
