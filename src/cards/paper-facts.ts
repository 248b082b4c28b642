import type { HeldPouch, Pouch, Trip } from '#core/records.ts';
import type { Paper } from '#core/label-grid.ts';
import { pouchFacts } from '#core/meal.ts';
import type { PaperRow, TripPaper } from '#draw/facts.ts';
import { sayCode, sayCount, sayG, sayList, sayMoment, sayPourShort, sayWater } from '#words/say.ts';
import { sayGoods } from '#words/camp-words.ts';
import { brokenPromises } from '#house/broken.ts';
import type { House } from '#house/house.ts';
import { correctionFor } from '#house/corrections.ts';
import { batchNumbered, driedFacts } from '#house/figures.ts';
import { marksOf } from '#house/marks.ts';
import { heldFor } from '#house/packing.ts';
import { boilingPhrase, burnCaution, rawCaution, uncheckedCaution } from '#words/phrases.ts';
import { dayNotes, type Served, sumLines, toBring, tripSums } from '#house/trip-sums.ts';
import { altitudeOf, sayDayOf } from '#house/trips.ts';
import { mealOfBatch, notesOn } from '#house/verdicts.ts';

interface Kept {
  readonly held: HeldPouch;
  readonly pouch: Pouch;
}

/** The kept pouches as dishes: those opened together and the eaters they are for. */
export function servedOf(trip: Trip, kept: readonly Kept[]): Served[] {
  const dishes = new Map<
    string,
    { slot: Trip['slots'][number]; codes: string[]; eaters: readonly number[] }
  >();
  for (const { held, pouch } of kept) {
    const slot = trip.slots.find(({ id }) => id === held.slot)!;
    const key = `${slot.id} ${held.eaters.join(' ')}`;
    const dish = dishes.get(key) ?? { slot, codes: [], eaters: held.eaters };
    dish.codes.push(sayCode(pouch));
    dishes.set(key, dish);
  }
  return [...dishes.values()];
}

/** Everything that the trip's sheet says. @throws Refusal 'nothing-kept' */
export function tripPaper(house: House, trip: Trip, paper: Paper): TripPaper {
  const { settings } = house;
  const kept = heldFor(house, trip);
  const sums = tripSums(house, servedOf(trip, kept));
  const eaters = house.eaters.all();
  const nameOf = (id: number) => `\u2068${eaters.find((eater) => eater.id === id)?.name ?? '?'}\u2069`;
  const batches = new Map(
    [...new Set(kept.map(({ pouch }) => pouch.batch))].map((no) => [no, batchNumbered(house, no)]),
  );
  const dried = new Map([...batches].map(([no, batch]) => [no, driedFacts(house, batch)]));
  const row = ({ held, pouch }: Kept): PaperRow => {
    const learnt = correctionFor(house, batches.get(pouch.batch)!);
    const { waterMl, camp } = pouchFacts(pouch.dryG, dried.get(pouch.batch)!, learnt.correction);
    return {
      code: sayCode(pouch),
      meal: pouch.meal,
      figures: [
        `${sayG(pouch.dryG, settings.units)} dry, ${waterMl === 0 ? 'eaten dry' : `water ${sayPourShort(waterMl, learnt.ratings > 0 || batches.get(pouch.batch)!.isRaw, settings)}`}`,
        ...(camp.length === 0 ? [] : [`add ${sayGoods(camp, settings.units)}`]),
        ...marksOf(house, pouch),
      ].join('; '),
      eaters: sayList(held.eaters.map(nameOf)),
      isPacked: held.packed,
    };
  };
  const days = [...new Set(trip.slots.map(({ onDay }) => onDay))].map((onDay) => ({
    day: sayDayOf(onDay),
    slots: trip.slots
      .filter((slot) => slot.onDay === onDay && slot.eaters.length > 0)
      .map((slot) => {
        const here = kept.filter(({ held }) => held.slot === slot.id);
        const waterMl = sums.waterOfSlot.get(slot.id);
        const water =
          waterMl === undefined
            ? 'nothing is kept for it'
            : waterMl === 0
              ? 'nothing to boil'
              : `water ${sayWater(waterMl, settings)}`;
        return {
          meal: slot.meal[0]!.toUpperCase() + slot.meal.slice(1),
          about: `${sayList(slot.eaters.map(nameOf))}; ${water}`,
          rows: here.map(row),
        };
      }),
  }));
  const going = eaters.filter(({ id }) => trip.slots.some((slot) => slot.eaters.includes(id)));
  const meals = [...batches.keys()].map((no) => mealOfBatch(house, no));
  const notes = new Map<string, string[]>();
  const careful = going.filter(({ never }) => never.length > 0);
  for (const { who, text } of [...notesOn(careful, meals, 'shares'), ...dayNotes(going, sums)])
    notes.set(who, [...(notes.get(who) ?? []), text]);
  const isBoiled = [...sums.waterOfDay.values()].some((ml) => ml > 0);
  const packed = kept.filter(({ held }) => held.packed).length;
  return {
    paper,
    title: trip.place,
    subtitle: `${sayDayOf(trip.startsOn)} to ${sayDayOf(trip.endsOn)} ${trip.endsOn.slice(0, 4)}, ${Math.round(altitudeOf(trip, house))} m; ${sayCount(kept.length, 'pouch', 'pouches')}, ${packed} packed (crossed)`,
    days,
    people: [...notes].map(([who, texts]) => ({ who, text: texts.join('; ') })),
    totals: [...sumLines(house, trip, sums), ...toBring(house, sums)],
    cautions: [
      ...([...batches.values()].some(({ isRaw }) => isRaw) ? [rawCaution] : []),
      ...(isBoiled ? [boilingPhrase(altitudeOf(trip, house))] : []),
      ...brokenPromises(house, trip),
      ...(kept.some(({ pouch }) => !pouch.shownDry) ? [uncheckedCaution] : []),
      ...(isBoiled ? [burnCaution] : []),
      '"Clear" speaks of the recorded ingredients alone, not of traces or small print.',
    ],
    foot: `As of ${sayMoment(house.nowMs, settings.zone)}. Tick here, then /pack in the chat.`,
  };
}
