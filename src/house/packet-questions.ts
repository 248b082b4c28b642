import { type Contents, mayHoldAnything, nuts } from '#core/allergens.ts';
import { gluten } from '#core/avoidance.ts';
import { nothing } from '#core/contents.ts';
import type { Eater, Recipe, RecipeLine } from '#core/records.ts';
import type { Choice } from '#core/talk.ts';
import { verdictFor } from '#core/verdict.ts';
import type { House } from './house.ts';
import { nameKey } from './figures.ts';
import { barsOf, mealsInStock, verdictOn } from './verdicts.ts';

/** What must not be in somebody's meal and only a packet can tell: a button for each answer. */
export function packetQuestions(
  { name, lines }: Recipe,
  eaters: readonly Pick<Eater, 'never' | 'exact'>[],
): Choice[] {
  for (const eater of eaters)
    for (const line of lines) {
      const open = line.state === 'asked' ? undefined : openFor(eater, line);
      if (open === undefined) continue;
      const food = line.called.split(',')[0]!;
      const told = (word: string) => `/our ${food} contains ${word}${open}, also in ${name}`;
      return [
        { label: `No ${open} in the ${food}`, request: told('no ') },
        { label: `The ${food} contains ${open}`, request: told('') },
        { label: 'Ask me later', request: `/our ${food} later` },
      ];
    }
  return [];
}

/** The same for what of the stock is unknown for somebody: the first meal that a packet can settle. */
export function stockQuestions(house: House, eater: Pick<Eater, 'never' | 'exact'>): Choice[] {
  for (const meal of mealsInStock(house)) {
    const recipe =
      verdictOn(eater, meal).is === 'unknown' ? house.recipes.find(nameKey(meal.name)) : undefined;
    const asked = recipe ? packetQuestions(recipe, [eater]) : [];
    if (asked.length > 0) return asked;
  }
  return [];
}

const ofGluten: readonly string[] = gluten;

/** The first thing that an eater avoids and a line's small print leaves open, in the words of a packet. */
function openFor(
  eater: Pick<Eater, 'never' | 'exact'>,
  { called, contents }: RecipeLine,
): string | undefined {
  if (contents === null || mayHoldAnything(contents)) return undefined;
  const bars = barsOf(eater);
  const isOpen = (alone: Partial<Contents>) =>
    verdictFor(
      [{ ingredient: called, contents: { ...nothing, claims: contents.claims ?? [], ...alone } }],
      bars,
    ).is === 'unknown';
  const tag = contents.check.find((one) => isOpen({ check: [one] }));
  if (tag === undefined) return contents.checkKinds.find((kind) => isOpen({ checkKinds: [kind] }));
  // A coeliac asks for gluten, not for one cereal after another; who avoids nuts for nuts.
  if (ofGluten.includes(tag) && bars.some((bar) => bar.is === 'diet' && bar.diet === 'gluten-free'))
    return 'gluten';
  const openNuts = contents.check.filter(
    (one) => (nuts as readonly string[]).includes(one) && isOpen({ check: [one] }),
  );
  return openNuts.length > 1 && openNuts.includes(tag) ? 'nuts' : tag;
}
