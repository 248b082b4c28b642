import { type Contents, mayHoldAnything, nuts } from '#core/allergens.ts';
import { gluten } from '#core/avoidance.ts';
import { nothing } from '#core/contents.ts';
import type { Eater, Recipe, RecipeLine } from '#core/records.ts';
import type { Choice } from '#core/talk.ts';
import { verdictFor } from '#core/verdict.ts';
import type { House } from './house.ts';
import { boughtRecipes, nameKey } from './figures.ts';
import { barsOf, mealsInStock, verdictOn } from './verdicts.ts';

/** What must not be in somebody's meal and only a packet can tell: a button for each answer. */
export function packetQuestions(
  { name, lines }: Recipe,
  eaters: readonly Pick<Eater, 'never' | 'exact'>[],
): Choice[] {
  for (const eater of eaters) {
    const found = openLines(eater, lines);
    const [first] = found;
    if (first === undefined) continue;
    const { food, open } = first;
    const alike = found.filter((one) => one.open === open);
    const told = (word: string) => `/our ${food} contains ${word}${open}, also in ${name}`;
    return [
      { label: `No ${open} in the ${food}`, request: told('no ') },
      { label: `There is ${open} in the ${food}`, request: told('') },
      { label: 'Ask me later', request: `/our ${food} later` },
      ...(alike.length > 1
        ? [
            {
              label: `I read ${alike.length === 2 ? 'both' : `all ${alike.length}`} packets: no ${open}`,
              request: `/our packets in ${name} contain no ${open}`,
            },
          ]
        : []),
    ];
  }
  return [];
}

/** The foods of a recipe whose small print leaves open what somebody avoids, each once, with what that is. */
export function openLines(
  eater: Pick<Eater, 'never' | 'exact'>,
  lines: readonly RecipeLine[],
): { readonly food: string; readonly open: string }[] {
  const found = lines.flatMap((line) => {
    const open = line.state === 'asked' ? undefined : openFor(eater, line);
    return open === undefined ? [] : [{ food: line.called.split(',')[0]!, open }];
  });
  return found.filter(({ food }, i) => found.findIndex((one) => one.food === food) === i);
}

/** The same of what lies in pouches; of a mixture no packet can be told. */
export function pouchQuestions(house: House, recipes: readonly Recipe[]): Choice[] {
  for (const recipe of recipes) {
    const asked =
      wordingsOf(house, recipe.name).length > 0 ? packetQuestions(recipe, house.eaters.here()) : [];
    if (asked.length > 0) return asked;
  }
  return [];
}

/** The same for what of the stock is unknown for somebody: the first meal that a packet can settle. */
export function stockQuestions(house: House, eater: Pick<Eater, 'never' | 'exact'>): Choice[] {
  for (const meal of mealsInStock(house)) {
    if (verdictOn(eater, meal).is !== 'unknown') continue;
    for (const recipe of wordingsOf(house, meal.name)) {
      const asked = packetQuestions(recipe, [eater]);
      if (asked.length > 0) return asked;
    }
  }
  return [];
}

/** The same for the first of several people for whom something is open. */
export function stockQuestionsFor(house: House, eaters: readonly Pick<Eater, 'never' | 'exact'>[]): Choice[] {
  for (const eater of eaters) {
    const asked = stockQuestions(house, eater);
    if (asked.length > 0) return asked;
  }
  return [];
}

/** A meal's recipe of today, the older ones that pouches in stock were cooked from, and what was bought under that name. */
export const wordingsOf = (house: House, name: string): Recipe[] => {
  const today = house.recipes.find(nameKey(name));
  const isIt = (recipe: Recipe) => recipe.id !== today?.id && nameKey(recipe.name) === nameKey(name);
  const older = today === undefined ? [] : house.pouches.recipes().map((id) => house.recipes.byId(id));
  return [...(today ? [today] : []), ...[...older, ...boughtRecipes(house)].filter(isIt)];
};

const ofGluten: readonly string[] = gluten;

/** The first thing that an eater avoids and a line's small print leaves open, in the words of a packet. */
function openFor(eater: Pick<Eater, 'never' | 'exact'>, line: RecipeLine): string | undefined {
  const { called, contents } = line;
  const isBought = line.ndb?.startsWith('bought:') === true;
  if (contents === null || (mayHoldAnything(contents) && !isBought)) return undefined;
  const bars = barsOf(eater);
  const isOpen = (alone: Partial<Contents>) =>
    verdictFor(
      [{ ingredient: called, contents: { ...nothing, claims: contents.claims ?? [], ...alone } }],
      bars,
    ).is === 'unknown';
  // What its packet warns of is read, not open.
  const warned = line.remarks.flatMap((remark) => /^packet: .*?may contain ([^;]*)/u.exec(remark)?.[1] ?? []);
  const isWarned = (one: string) => warned.some((told) => told.includes(one));
  const tag = contents.check.find((one) => isOpen({ check: [one] }) && !isWarned(one));
  if (tag === undefined)
    return contents.checkKinds.find((kind) => isOpen({ checkKinds: [kind] }) && !isWarned(kind));
  // A coeliac asks for gluten, not for one cereal after another; who avoids nuts for nuts.
  if (ofGluten.includes(tag) && bars.some((bar) => bar.is === 'diet' && bar.diet === 'gluten-free'))
    return 'gluten';
  const openNuts = contents.check.filter(
    (one) => (nuts as readonly string[]).includes(one) && isOpen({ check: [one] }),
  );
  return openNuts.length > 1 && openNuts.includes(tag) ? 'nuts' : tag;
}
