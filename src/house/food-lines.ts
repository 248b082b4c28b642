import type { Recipe } from '#core/records.ts';
import { Refusal } from '#core/refusal.ts';
import { campTold } from '#foods/camp.ts';
import { fold, stem } from '#words/near.ts';
import { Ambiguous } from '#words/reading.ts';
import type { RecipeChange } from '#words/recipe-changes.ts';
import { sayList } from '#words/say.ts';

const wordsOf = (text: string): string[] => fold(text).split(' ').filter(Boolean).map(stem);

/** Positions of the lines that name a food: every word of it stands in the line, or in what the line was found to be. */
export function linesWith({ lines }: Pick<Recipe, 'lines'>, food: string): number[] {
  const wanted = wordsOf(food);
  return lines.flatMap(({ typed, called }, i) => {
    const there = new Set([...wordsOf(typed), ...wordsOf(called)]);
    return wanted.length > 0 && wanted.every((word) => there.has(word)) ? [i + 1] : [];
  });
}

const leadingAmount =
  /^\s*(?:about\s+)?(?:[\d½¼¾⅓⅔⅛.,/]+(?:\s*[x×]\s*[\d.,]+)?|an?|half|one|two|three|four|five|six)\s*(?:kg|g|mg|lbs?|oz|ml|cl|dl|l|cups?|tbsp|tsp|tablespoons?|teaspoons?|tins?|cans?|pinch(?:es)?(?: of)?|sticks?|cloves?|slices?)?(?=\s)/iu;

/**
 * A change told by a food, as one of the line that has it. Without an amount of its own, what takes its place takes
 * the old one's.
 * @throws Refusal 'no-such-food' where no line has it, Ambiguous where several do
 */
export function atItsLine(
  recipe: Recipe,
  told: Extract<RecipeChange, { is: 'food' | 'goes' }>,
): Extract<RecipeChange, { is: 'without' | 'line' }> {
  const { name, lines } = recipe;
  const { food } = told;
  const found = linesWith(recipe, food);
  if (found.length === 0)
    throw new Refusal(
      'no-such-food',
      `No line of ${name} names "${food}": it has ${sayList(lines.map((line) => line.called))}.`,
    );
  const change = (position: number): Extract<RecipeChange, { is: 'without' | 'line' }> => {
    const line = lines[position - 1]!;
    if (told.is === 'goes') {
      const { rest } = campTold(line.typed);
      return {
        is: 'line',
        name,
        position,
        typed: `${rest}, ${told.where === 'camp' ? 'at camp' : 'in the pot'}`,
      };
    }
    const { typed } = told;
    if (typed === null) return { is: 'without', name, position };
    const old = leadingAmount.exec(line.typed)?.[0].trim();
    const hasAmount = leadingAmount.test(`${typed} `) || /\bto taste\b/iu.test(typed);
    return { is: 'line', name, position, typed: hasAmount || old === undefined ? typed : `${old} ${typed}` };
  };
  const [only, another] = found;
  if (another === undefined) return change(only!);
  throw new Ambiguous(
    `${found.length} lines of ${name} name "${food}". Which is meant?`,
    found.slice(0, 4).map((position) => {
      const one = change(position);
      return {
        label: `${position}: ${lines[position - 1]!.typed}`,
        request:
          one.is === 'line' ? `${name} line ${position}: ${one.typed}` : `${name} delete line ${position}`,
      };
    }),
  );
}
