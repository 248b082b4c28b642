import { command, type House } from '#chat/command.ts';
import { batchSeen, freeStock, nameKey, seeStock } from '#chat/figures.ts';
import { type RecipeFacts, pouchFacts } from '#core/meal.ts';
import type { Pouch } from '#core/records.ts';
import { avoidancesOf, becauseWords, mealsInStock } from '#chat/verdicts.ts';
import { verdictFor } from '#core/allergens.ts';
import { avoided } from '#words/eater-parts.ts';
import { meal, optional, part } from '#words/parts.ts';
import { takeName } from '#words/reading.ts';
import { sayCodes, sayCount, sayG, sayList, sayMonth, sayNumber } from '#words/say.ts';
import { beforeDay } from '#words/when.ts';

/** Longer lists are cut, with what was left out said. */
const mostGroups = 40;

interface Shelf {
  readonly meal: string;
  readonly pouches: Pouch[];
  readonly servings: number;
  readonly recipe: RecipeFacts;
}

const eaterNamed = optional(
  part<string>('for whom, such as for Noa', (reading, names) => {
    const word = [...reading.left()].find((i) => reading.all[i]!.plain === 'for');
    return word === undefined || names.eaters.length === 0
      ? undefined
      : takeName(reading, names.eaters, 'eater');
  }),
);

export default command({
  name: 'stock',
  alsoCalled: ['inventory', 'cupboard'],
  usage: '/stock [meal] [no milk] [for Noa] [before 2027-03]',
  summary: 'what is sealed and not yet eaten, oldest best-by first',
  examples: ['/stock', '/stock soup', '/stock no milk', '/stock before 2027-03'],
  help: ['"no milk", "vegan", "no pork" keep meals back that hold it, and say which cannot be told.'],
  sentence: /\b(?:stock|cupboard|shelf|what(?:'s| is) left|what do we have|what have we)\b/i,
  takes: { before: beforeDay, avoid: optional(avoided), eater: eaterNamed, meal: optional(meal) },
  run: ({ before, avoid: typed, eater: named, meal: name }, house) => {
    seeStock(house);
    const all = freeStock(house);
    const own = named === undefined ? [] : (house.eaters.find(nameKey(named))?.never ?? []);
    const avoid = (typed ?? named) ? [...(typed ?? []), ...own] : undefined;
    const wanted = all.filter(
      (pouch) =>
        (name === undefined || pouch.meal === name) &&
        (before === undefined || (pouch.bestByOn ?? '0') <= before),
    );
    const shelves = group(house, wanted).map((shelf) => ({
      ...shelf,
      verdict: avoid ? verdictFor(shelf.recipe.contents, avoidancesOf(avoid)) : { is: 'clear' as const },
    }));
    const held = house.trips.held(null);
    const trips = house.trips.all();
    const kept = trips.map((trip) => ({
      place: trip.place,
      pouches: house.pouches
        .inStock()
        .filter((pouch) => held.some((h) => h.trip === trip.id && h.pouch === pouch.id)),
    }));
    return {
      shelves,
      kept: kept.filter(({ pouches }) => pouches.length > 0),
      any: all.length > 0,
      filtered: Boolean(name ?? before ?? avoid),
      settings: house.settings,
      avoiding: avoid !== undefined,
      meals:
        wanted.length === 0
          ? []
          : mealsInStock(house).filter((m) => wanted.some((pouch) => pouch.meal === m.name)),
    };
  },
  say: ({ shelves, kept, any, filtered, settings, avoiding, meals }) => {
    const keptLines = filtered
      ? []
      : kept.map(({ place, pouches }) => `Kept for ${place}: ${sayCodes(pouches)}.`);
    if (shelves.length === 0) {
      return {
        group:
          any && filtered
            ? 'Nothing in stock fits that. /stock shows all.'
            : ['Nothing is free in stock. Pouches come in with /seal.', ...keptLines].join('\n'),
      };
    }
    const open = shelves.filter(({ verdict }) => verdict.is !== 'blocked');
    const lines = open.slice(0, mostGroups).map(({ meal: name, pouches, servings, verdict }) => {
      const first = pouches[0]!;
      const date = first.checked ? `best by ${sayMonth(first.bestByOn!)}` : 'UNCHECKED: keep frozen';
      const unsure = verdict.is === 'unknown' ? ` Unknown because of ${becauseWords(verdict.because)}.` : '';
      return `${name}: ${sayCount(pouches.length, 'pouch', 'pouches')} of ${weights(pouches, settings.units)}, ${sayNumber(servings)} servings, ${date}: ${sayCodes(pouches)}.${unsure}`;
    });
    if (open.length > mostGroups)
      lines.push(`… and ${open.length - mostGroups} more. Name a meal to see them.`);
    const blocked = [
      ...new Set(shelves.filter(({ verdict }) => verdict.is === 'blocked').map((shelf) => shelf.meal)),
    ];
    if (open.length === 0) lines.push('Nothing in stock is free of that.');
    if (blocked.length > 0) lines.push(`Kept back: ${sayList(blocked)}.`);
    if (avoiding)
      lines.push('By the recorded ingredients alone: traces and the small print of packets are not in it.');
    const total = open.reduce((sum, { pouches }) => sum + pouches.length, 0);
    if (open.length > 1)
      lines.push(
        `Together ${sayCount(total, 'pouch', 'pouches')}, ${sayNumber(open.reduce((sum, { servings }) => sum + servings, 0))} servings.`,
      );
    return { group: [...lines, ...keptLines].join('\n'), meals };
  },
});

/** Pouches of one meal and one best-by month together, in the order in which they should be eaten. */
function group(house: House, pouches: readonly Pouch[]): Shelf[] {
  const shelves = new Map<
    string,
    { meal: string; pouches: Pouch[]; servings: number; recipe: RecipeFacts }
  >();
  for (const pouch of pouches) {
    const batch = batchSeen(house, pouch.batch).facts;
    const key = `${pouch.meal}\n${pouch.bestByOn ?? ''}\n${pouch.batch}`;
    const shelf = shelves.get(key) ?? { meal: pouch.meal, pouches: [], servings: 0, recipe: batch.recipe };
    shelf.pouches.push(pouch);
    if (batch.dryG !== null)
      shelf.servings += pouchFacts(pouch.dryG, { ...batch, dryG: batch.dryG }).servings;
    shelves.set(key, shelf);
  }
  return [...shelves.values()];
}

function weights(pouches: readonly Pouch[], units: 'grams' | 'ounces'): string {
  const sizes = [...new Set(pouches.map((pouch) => pouch.dryG))].sort((a, b) => a - b);
  return sizes.length <= 2
    ? sayList(sizes.map((g) => sayG(g, units)))
    : `${sayG(sizes[0]!, units)} to ${sayG(sizes.at(-1)!, units)}`;
}
