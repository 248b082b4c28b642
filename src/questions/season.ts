import { pouchFacts } from '#core/meal.ts';
import { naClGOfSodium } from '#core/nutrition.ts';
import type { Pouch } from '#core/records.ts';
import { batchSeen } from '#house/figures.ts';
import type { House } from '#house/house.ts';
import { usesOf } from '#house/occasions.ts';
import { localDays } from '#words/local-days.ts';
import { optional, part } from '#words/parts.ts';
import { sayCodes, sayCount, sayG, sayList, sayNumber } from '#words/say.ts';
import { question } from './question.ts';

const year = optional(
  part<number>('a year', (reading) => {
    const at = [...reading.left()].find((i) => /^20\d\d$/.test(reading.all[i]!.plain));
    if (at === undefined) return undefined;
    reading.take(at);
    return Number(reading.all[at]!.plain);
  }),
);

interface Served {
  readonly pouch: Pouch;
  readonly servings: number;
  /** null where it rests on a line that nobody understood. */
  readonly sodiumMg: number | null;
}

export const season = question({
  name: 'season',
  about: 'what was dried, eaten and wasted in a year',
  asked: ['how did the season go?', 'the season at a glance'],
  takes: { year },
  answer: ({ year: asked }, house) => {
    const days = localDays(house.settings.zone);
    const of = String(asked ?? Number(days.dayOf(house.nowMs).slice(0, 4)));
    const isOf = (atMs: number | null) => atMs !== null && days.dayOf(atMs).startsWith(of);
    const all = house.pouches.ever().filter(({ sealedAtMs, goneAtMs }) => isOf(sealedAtMs) || isOf(goneAtMs));
    const own = all.filter(({ isBought }) => !isBought);
    const sealed = own.filter(({ sealedAtMs }) => isOf(sealedAtMs));
    const gone = (state: Pouch['state'], from: readonly Pouch[]) =>
      from.filter((pouch) => pouch.state === state && isOf(pouch.goneAtMs));
    const [eaten, wasted] = [gone('used', own).map((p) => servedOf(house, p)), gone('discarded', all)];
    if (all.length === 0) return `Nothing is on record for ${of}: no pouch sealed, eaten or thrown away.`;
    const loads = new Set(sealed.filter(({ isMixed }) => !isMixed).map(({ batch }) => batch)).size;
    return {
      group: [
        `Season ${of} at a glance: ${sayCount(loads, 'load', 'loads')} sealed in ${sayCount(sealed.length, 'pouch', 'pouches')}, about ${servings(sealed.map((p) => servedOf(house, p)))}.`,
        `Eaten: ${sayCount(eaten.length, 'pouch', 'pouches')}, about ${servings(eaten)}${tripsOf(house, of)}.`,
        wastedLine(house, wasted),
        ...besideBought(house, eaten),
      ].join('\n'),
    };
  },
});

const servings = (served: readonly Served[]): string =>
  sayCount(Math.round(served.reduce((sum, one) => sum + one.servings, 0)), 'serving', 'servings');

function servedOf(house: House, pouch: Pouch): Served {
  const { facts } = batchSeen(house, pouch.batch);
  if (facts.dryG === null) return { pouch, servings: 0, sodiumMg: null };
  const figures = pouchFacts(pouch.sealedG, { ...facts, dryG: facts.dryG });
  const isKnown =
    facts.recipe.unresolved.length === 0 &&
    !facts.eaten.unknown.some(({ nutrient }) => nutrient === 'sodiumMg');
  return { pouch, servings: figures.servings, sodiumMg: isKnown ? figures.sodiumMg : null };
}

/** '; on 2 trips'. */
function tripsOf(house: House, of: string): string {
  const trips = house.trips
    .all()
    .filter(
      ({ id, endsOn }) => endsOn.startsWith(of) && house.trips.held(id).some((h) => h.came === 'eaten'),
    );
  return trips.length === 0
    ? ''
    : `; on ${sayCount(trips.length, 'trip', 'trips')} (${sayList(trips.map(({ place }) => place))})`;
}

function wastedLine(house: House, wasted: readonly Pouch[]): string {
  if (wasted.length === 0) return 'Nothing was thrown away or lost.';
  const g = wasted.reduce((sum, pouch) => sum + pouch.dryG, 0);
  return `Thrown away or lost: ${sayCodes(wasted)}, ${servings(wasted.map((p) => servedOf(house, p)))}, ${sayG(g, house.settings.units)} dry.`;
}

/**
 * How much less salt was eaten, and how much less carried, than with the ready meals that were bought and recorded: serving
 * against serving, by their packets' figures. Nothing where no such meal was recorded.
 */
function besideBought(house: House, eaten: readonly Served[]): string[] {
  const ready = house.pouches
    .ever()
    .filter(({ isBought }) => isBought)
    .flatMap((pouch) => {
      const { batch } = batchSeen(house, pouch.batch);
      const isMeal = (batch.mix?.bought?.waterMl ?? 0) > 0 && usesOf(house, batch.recipe).is.includes('main');
      const served = servedOf(house, pouch);
      return isMeal && served.servings > 0 ? [{ name: batch.recipe.name, ...served }] : [];
    });
  const mains = eaten.filter(({ pouch }) => {
    const { batch } = batchSeen(house, pouch.batch);
    return batch.mix === null && usesOf(house, batch.recipe).is.includes('main');
  });
  const [saltier, known] = [ready, mains].map((list) => list.filter(({ sodiumMg }) => sodiumMg !== null));
  if (saltier!.length === 0 || known!.length === 0) return [];
  const per = (list: readonly Served[], of: (one: Served) => number) =>
    list.reduce((sum, one) => sum + of(one), 0) / list.reduce((sum, one) => sum + one.servings, 0);
  const count = known!.reduce((sum, one) => sum + one.servings, 0);
  const sodium = per(saltier!, (one) => one.sodiumMg!) - per(known!, (one) => one.sodiumMg!);
  const weight = per(saltier!, ({ pouch }) => pouch.sealedG) - per(known!, ({ pouch }) => pouch.sealedG);
  const saltG = naClGOfSodium(Math.abs(sodium) * count) * Math.sign(sodium);
  const names = sayList([...new Set(ready.map(({ name }) => name))]);
  const than = (value: number, less: string, more: string) =>
    `${sayNumber(Math.abs(Math.round(value)))} g ${value >= 0 ? less : more}`;
  return [
    `Beside ${names}, serving for serving: ${than(saltG, 'less salt', 'more salt')}, ${than(weight * count, 'less to carry', 'more to carry')} in ${sayCount(Math.round(count), 'main', 'mains')}.`,
  ];
}
