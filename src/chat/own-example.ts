import type { Code } from '#core/records.ts';
import type { Names } from '#words/parts.ts';
import { sayCode } from '#words/say.ts';

// An example speaks of this household's own pouches, meals, people and trip, wherever it has any.

/** Meals, people and the place that the written examples speak of. */
const exampleMeals =
  /(?:red |barley )?(?:lentil |chickpea )?(?:curry|pot|stew|soup)\b(?! of)|\b(?:soup|curry|chili|stew|mac and cheese)\b/giu;
const examplePeople = /\b(?:Noa|Ben|Rosa|Pip|Ana|Ines|Tomas)\b/gu;
const examplePlace = /\bHeron Lake\b/gu;

/** Each different thing of an example is one of the household's; the last serves for more. */
function exchanged(text: string, pattern: RegExp, own: readonly string[]): string {
  const [first] = own;
  if (first === undefined) return text;
  const given = new Map<string, string>();
  return text.replace(pattern, (typed) => {
    const key = typed.toLowerCase();
    if (!given.has(key)) given.set(key, own[Math.min(given.size, own.length - 1)]!);
    return given.get(key)!;
  });
}

/** The pouches that an example may name: free ones, of one batch if it has several. */
function ownCodes(names: Names): string[] {
  // The first meal that has any will do: to look through all of them reads the whole stock.
  const all = firstFree(names);
  const [first] = all;
  return all
    .toSorted(
      (a, b) =>
        Number(b.batch === first?.batch) - Number(a.batch === first?.batch) ||
        a.batch - b.batch ||
        a.no - b.no,
    )
    .map(sayCode);
}

function firstFree(names: Names): readonly Code[] {
  for (const meal of names.meals) {
    const pouches = names.pouchesOf(meal);
    if (pouches.length > 0) return pouches;
  }
  return [];
}

/**
 * A written example in the household's own words.
 * @param example as written for everybody, such as '/use B4-2 B4-3'
 */
export function ownExample(example: string, names: Names): string {
  const codes = ownCodes(names);
  const batches = [
    ...new Set([...names.drying.map((no) => `B${no}`), ...codes.map((code) => code.split('-')[0]!)]),
  ];
  const isNew = /^\/(?:recipe|batch|trip)\b/u.test(example);
  let text = exchanged(example, /\bB\d+-\d+\b/gu, codes);
  text = exchanged(text, /\bB\d+\b(?!-)/gu, batches);
  text = exchanged(
    text,
    examplePeople,
    names.eaters.filter((name) => !/\s/u.test(name)),
  );
  if (/^\/recipe\b/u.test(example)) return text;
  text = exchanged(
    text,
    exampleMeals,
    names.meals.map((name) => name.toLowerCase()),
  );
  // A trip that is planned is no example of planning one.
  return isNew && /\d+-\d+ \p{Lu}/u.test(text) ? text : exchanged(text, examplePlace, names.trips);
}
