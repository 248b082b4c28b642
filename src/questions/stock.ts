import { todayOf } from '#house/today.ts';
import { mealNames, freeStock } from '#house/figures.ts';
import { flag, optional, restOfText } from '#words/parts.ts';
import { Reading } from '#words/reading.ts';
import { takeName } from '#words/names.ts';
import { sayBatch, sayCode, sayCodes, sayCount, sayG, sayList, sayMonth, sayPieces } from '#words/say.ts';
import { pouchFacts } from '#core/meal.ts';
import { isSealedFrom } from '#house/dryness.ts';
import { batchSeen } from '#house/figures.ts';
import type { House } from '#house/house.ts';
import { restsOn } from '#house/sealing.ts';
import { sayNumber } from '#words/say.ts';
import { aboutParts, pouchesAbout } from './about.ts';
import { question } from './question.ts';

const servingsIn = (house: House, pouches: readonly { batch: number; dryG: number }[]): number =>
  pouches.reduce((sum, pouch) => {
    const { facts } = batchSeen(house, pouch.batch);
    return facts.dryG === null ? sum : sum + pouchFacts(pouch.dryG, { ...facts, dryG: facts.dryG }).servings;
  }, 0);

/** Batches of a meal of which nothing is sealed yet: dry, or still drying. */
const waitingLines = (house: House, meal: string): string[] =>
  house.batches
    .latest(20)
    .filter((batch) => batch.recipe.name === meal && !batch.mix && !isSealedFrom(house, batch.no))
    .map((batch) => {
      const { dryG } = batchSeen(house, batch.no).facts;
      return `${sayBatch(batch)} is not sealed yet${dryG === null ? '' : `: ${sayG(dryG, house.settings.units)} at its last weighing`}.`;
    });

/** All pouches that were ever sealed, and how many of them are left. */
function madeSoFar(house: House, meal: string | undefined): string {
  const made = house.batches
    .latest(1000)
    .filter((batch) => meal === undefined || batch.recipe.name === meal)
    .flatMap((batch) => house.pouches.ofBatch(batch.no))
    .filter(({ isBought }) => !isBought);
  const here = made.filter(({ state }) => state === 'stock').length;
  return `${sayCount(made.length, 'pouch', 'pouches')}${meal === undefined ? '' : ` of ${meal}`} sealed so far; ${here} of them in stock.`;
}

export const howMany = question({
  name: 'howmany',
  about: 'how many are left',
  asked: ['how many curries are left?', 'what do we have?'],
  takes: { ever: flag('ever'), what: optional(restOfText('a meal')) },
  answer: ({ ever, what }, house) => {
    const typed = what?.replaceAll('"', '') ?? '';
    const meals = mealNames(house);
    const batch = /^[BMS](\d+)$/i.exec(typed)?.[1];
    const meal =
      typed === '' || batch
        ? undefined
        : (takeName(new Reading(`"${typed}"`), meals, 'meal') ?? takeName(new Reading(typed), meals, 'meal'));
    if (typed !== '' && meal === undefined && batch === undefined) {
      const there = [...new Set(freeStock(house).map((pouch) => pouch.meal))];
      return `No ${typed}: it is no meal of yours. ${there.length > 0 ? `In stock: ${sayList(there)}.` : 'Nothing is in stock.'}`;
    }
    const all = batch
      ? house.pouches.ofBatch(Number(batch)).filter((pouch) => pouch.state === 'stock')
      : freeStock(house, meal);
    if (ever) return madeSoFar(house, meal);
    const waiting = meal === undefined ? [] : waitingLines(house, meal);
    if (all.length === 0 && meal === undefined)
      return house.batches.latest(1).length > 0
        ? 'Nothing is free in stock.'
        : {
            group: 'Nothing is in stock yet. Begin with a recipe, then load the dryer, weigh and seal.',
            buttons: [{ label: 'How a recipe is typed', request: '/help recipe' }],
          };
    if (all.length === 0) return [`No ${meal} is left in stock.`, ...waiting].join('\n');
    if (meal !== undefined || batch !== undefined) {
      const name = meal ?? all[0]!.meal;
      const first = all
        .map((pouch) => pouch.bestByOn)
        .filter((day) => day !== null)
        .toSorted()[0];
      return {
        group: `${sayPieces(all)} of ${name}: ${sayCodes(all)}, ${sayNumber(servingsIn(house, all))} servings.${first ? ` The first is best by ${sayMonth(first)}.` : ''}${waiting.map((line) => `\n${line}`).join('')}`,
        buttons: [{ label: 'Show all stock', request: '/stock' }],
      };
    }
    const byMeal = new Map<string, number>();
    for (const pouch of all) byMeal.set(pouch.meal, (byMeal.get(pouch.meal) ?? 0) + 1);
    return {
      group: `${sayCount(all.length, 'pouch', 'pouches')}, ${sayNumber(servingsIn(house, all))} servings: ${sayList([...byMeal].map(([name, count]) => `${count} ${name}`))}.`,
      buttons: [{ label: 'With codes', request: '/stock' }],
    };
  },
});

export const keeps = question({
  name: 'keeps',
  about: 'how long it keeps',
  asked: [
    'how long does the chili keep?',
    'why does B2-1 keep no longer?',
    'what goes off first?',
    'is B2-1 still good?',
  ],
  takes: aboutParts,
  answer: (asked, house) => {
    const named = asked.codes ?? asked.batch ?? asked.meal;
    const all = named === undefined ? house.pouches.inStock() : pouchesAbout(house, asked);
    const here = all.filter((pouch) => pouch.state === 'stock');
    const [gone] = all;
    if (here.length === 0 && asked.codes && gone)
      return `${sayCode(gone)} is not in stock any more: it was ${gone.state}.`;
    if (here.length === 0)
      return named === undefined ? 'Nothing is in stock.' : 'No pouch of it is in stock.';
    const dated = here
      .filter((pouch) => pouch.bestByOn !== null)
      .toSorted((a, b) => (a.bestByOn! < b.bestByOn! ? -1 : 1));
    const undated = here.filter((pouch) => pouch.bestByOn === null);
    const lines: string[] = [];
    const today = todayOf(house);
    const groups = new Map<string, typeof dated>();
    for (const pouch of dated)
      groups.set(`${pouch.meal} ${pouch.bestByOn}`, [
        ...(groups.get(`${pouch.meal} ${pouch.bestByOn}`) ?? []),
        pouch,
      ]);
    for (const group of [...groups.values()].slice(0, named === undefined ? 4 : 6)) {
      const { meal, bestByOn } = group[0]!;
      lines.push(
        `${meal}, ${sayCodes(group)}: best by ${sayMonth(bestByOn!)}${bestByOn! < today ? ', which is past' : ''}.`,
      );
    }
    const [first] = dated;
    const kept = house.pouches.dated().find(({ id }) => id === first?.id)?.kept ?? null;
    if (named !== undefined && first && kept)
      lines.push(`It rests on ${restsOn(kept, house.settings.storageC, first.isMixed ? 'the part' : null)}`);
    if (dated.length > 0)
      lines.push(
        'A planning date. A pouch that is loose, swollen or smells off is thrown away whatever its date.',
      );
    if (undated.length > 0) lines.push(`${sayCodes(undated)}: unchecked, so no date; keep frozen or dry on.`);
    return { group: lines.join('\n') };
  },
});
