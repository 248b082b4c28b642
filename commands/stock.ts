import { command } from '#chat/command.ts';
import type { House } from '#house/house.ts';
import { batchNumbered, factsOfBatch, nameKey } from '#house/figures.ts';
import { markedWith } from '#house/marks.ts';
import { pouchFacts, recipeIngredients } from '#core/meal.ts';
import type { Settings } from '#core/settings.ts';
import type { Shelf } from '#store/pouches.ts';
import { stockQuestionsFor } from '#house/packet-questions.ts';
import { avoidancesOf, barsOf, becauseWords, clearCaution, mealsInStock } from '#house/verdicts.ts';
import type { Avoidance } from '#core/avoidance.ts';
import { Refusal } from '#core/refusal.ts';
import { type Verdict, verdictFor } from '#core/verdict.ts';
import { avoidedIn } from '#words/eater-parts.ts';
import { larder } from '#foods/avoided.ts';
import { meal, optional, part } from '#words/parts.ts';
import { isFiller } from '#words/reading.ts';
import { takeName } from '#words/names.ts';
import { sayCodes, sayCount, sayG, sayList, sayMonth, sayServings } from '#words/say.ts';
import { beforeDay } from '#words/when.ts';

/** Longer lists are cut, with what was left out said. */
const mostShelves = 40;
/** What is read first fits on a phone; the rest folds. Chosen. */
const mostUnfolded = 5;

const eaterNamed = optional(
  part<string>('for whom, such as for Noa', (reading, names) => {
    const word = [...reading.left()].find((i) => reading.all[i]!.plain === 'for');
    if (word === undefined) return undefined;
    const behind = reading.at(word + 1);
    const found = behind?.plain === 'me' ? names.me : takeName(reading, names.eaters, 'eater');
    // Everything shown for somebody unknown would pass as what that person may eat.
    const isMeal = behind !== undefined && takeName(reading.without([]), names.meals, 'meal') !== undefined;
    if (found === undefined && behind?.is === 'word' && !isFiller(behind.plain) && !isMeal)
      throw new Refusal(
        'no-such-eater',
        `I know no eater called "${behind.typed}". ${names.eaters.length > 0 ? `There are ${sayList(names.eaters)}.` : 'Nobody is recorded as an eater yet.'}`,
      );
    if (behind?.plain === 'me') reading.take(word + 1);
    return found;
  }),
);

export default command({
  name: 'stock',
  alsoCalled: ['inventory', 'cupboard'],
  usage: '/stock [meal] [no milk] [for Noa] [before 2027-03]',
  summary: 'what is sealed and not yet eaten, oldest best-by first',
  examples: ['/stock', '/stock soup', '/stock no milk', '/stock before 2027-03'],
  help: ['"no milk", "vegan", "no pork" keep meals back that hold it, and say which cannot be told.'],
  takes: { before: beforeDay, avoid: optional(avoidedIn(larder)), eater: eaterNamed, meal: optional(meal) },
  run: ({ before, avoid: typed, eater: named, meal: name }, house) => {
    const eater = named === undefined ? undefined : house.eaters.find(nameKey(named));
    const own = eater === undefined ? [] : barsOf(eater);
    const avoid = (typed ?? named) ? [...avoidancesOf(typed ?? []), ...own] : undefined;
    const all = house.pouches.shelves();
    const wanted = all.filter(
      (shelf) =>
        (name === undefined || shelf.meal === name || isMixedOf(house, shelf, name)) &&
        (before === undefined || (shelf.bestByOn ?? '0') <= before),
    );
    const held = house.trips.heldCodes();
    const meals = new Set(wanted.map((shelf) => shelf.meal));
    const judged = wanted.map((shelf) => ({
      ...shelf,
      verdict: avoid ? verdictOf(house, shelf, avoid) : clear,
    }));
    const open = judged.filter(({ verdict }) => verdict.is !== 'blocked');
    return {
      shown: open.slice(0, mostShelves).map((shelf) => ({
        ...shelf,
        servings: servingsOn(house, shelf),
        marks: markedWith(house, [shelf]),
      })),
      more: open.slice(mostShelves),
      blocked: [
        ...new Set(judged.filter(({ verdict }) => verdict.is === 'blocked').map((shelf) => shelf.meal)),
      ],
      kept:
        held.length === 0
          ? []
          : house.trips.all().map(({ id, place }) => ({ place, codes: held.filter((h) => h.trip === id) })),
      any: all.length > 0,
      filtered: Boolean(name ?? before ?? avoid),
      settings: house.settings,
      avoiding: avoid !== undefined,
      open: stockQuestionsFor(house, eater ? [eater] : avoid === undefined ? house.eaters.here() : []),
      meals: meals.size === 0 ? [] : mealsInStock(house).filter((shown) => meals.has(shown.name)),
    };
  },
  say: ({ shown, more, blocked, kept, any, filtered, settings, avoiding, meals, open }) => {
    const keptLines = filtered
      ? []
      : kept.flatMap(({ place, codes }) =>
          codes.length === 0 ? [] : [`Kept for ${place}: ${sayCodes(codes)}.`],
        );
    if (shown.length + blocked.length === 0) {
      return {
        group:
          any && filtered
            ? 'Nothing in stock fits that. /stock shows all.'
            : ['Nothing is free in stock. Pouches come in with /seal.', ...keptLines].join('\n'),
      };
    }
    const lines = shown.slice(0, mostUnfolded).map((shelf) => shelfLine(shelf, settings.units));
    const why = shown.slice(mostUnfolded).map((shelf) => shelfLine(shelf, settings.units));
    if (why.length > 0) lines.push(`… and ${why.length} more that keep longer, folded below.`);
    if (shown.length === 0) lines.push('Nothing in stock is free of that.');
    if (more.length > 0) {
      const count = more.reduce((sum, { numbers }) => sum + numbers.length, 0);
      const dryG = more.reduce((sum, shelf) => sum + shelf.dryG, 0);
      lines.push(
        `… and ${sayCount(count, 'pouch', 'pouches')} more, ${sayG(dryG, settings.units)}, that keep longer. Name a meal to see them.`,
      );
    }
    if (blocked.length > 0) lines.push(`Kept back: ${sayList(blocked)}.`);
    if (shown.length > 1 && more.length === 0) {
      const count = shown.reduce((sum, { numbers }) => sum + numbers.length, 0);
      const servings = shown.reduce((sum, shelf) => sum + shelf.servings, 0);
      lines.unshift(`${sayCount(count, 'pouch', 'pouches')}, ${sayServings(servings)}:`);
    }
    return {
      group: [...lines, ...keptLines].join('\n'),
      ...(avoiding ? { heed: [clearCaution] } : {}),
      why,
      meals,
      ...(open.length === 0 ? {} : { buttons: open }),
    };
  },
});

/** Whether a mixture holds something of a meal. */
const isMixedOf = (house: House, { batch, isMixed }: Shelf, meal: string): boolean =>
  isMixed && batchNumbered(house, batch).mix!.parts.some((part) => part.meal === meal);

const clear: Verdict = { is: 'clear' };

function verdictOf(house: House, shelf: Shelf, avoid: readonly Avoidance[]): Verdict {
  return verdictFor(recipeIngredients(batchNumbered(house, shelf.batch).recipe), avoid);
}

function servingsOn(house: House, shelf: Shelf): number {
  const facts = factsOfBatch(house, batchNumbered(house, shelf.batch));
  return facts.dryG === null ? 0 : pouchFacts(shelf.dryG, { ...facts, dryG: facts.dryG }).servings;
}

function shelfLine(
  shelf: Shelf & { servings: number; verdict: Verdict; marks: string },
  units: Settings['units'],
): string {
  const { batch, isMixed, isBought, numbers, leastG, mostG, verdict, marks } = shelf;
  const date = shelf.checked
    ? shelf.bestByOn === null
      ? 'no best-by told'
      : `best by ${sayMonth(shelf.bestByOn)}`
    : shelf.shownDry
      ? 'not for the shelf'
      : 'keep frozen';
  const weight = leastG === mostG ? sayG(leastG, units) : `${sayG(leastG, units)} to ${sayG(mostG, units)}`;
  const unsure = verdict.is === 'unknown' ? ` Unknown because of ${becauseWords(verdict.because)}.` : '';
  const codes = sayCodes(numbers.map((no) => ({ batch, no, isMixed, isBought })));
  const count = isBought ? sayCount(numbers.length, 'piece') : sayCount(numbers.length, 'pouch', 'pouches');
  return `${shelf.meal}: ${count} of ${weight}, ${sayServings(shelf.servings)}, ${date}${marks}: ${codes}.${unsure}`;
}
