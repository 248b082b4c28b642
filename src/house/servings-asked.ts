import { servingsFromMl, servingsFromPieces } from '#core/servings-guess.ts';
import type { Makes } from '#foods/frame.ts';
import { Ambiguous } from '#words/reading.ts';
import { sayNumber } from '#words/say.ts';
import type { RecipeText } from './recipe-text.ts';

/** Pieces and litres are no servings: how many it feeds is asked. */
export function howManyServings({ name, withServings }: RecipeText, makes: Makes): Ambiguous {
  const { pieces, ml } = makes;
  const choices = (ml === null ? servingsFromPieces(pieces ?? 1) : servingsFromMl(ml)).map((count) => ({
    label: `${sayNumber(count)} servings${pieces !== null && pieces > count ? `, ${sayNumber(pieces / count)} each` : ''}`,
    request: withServings(count),
  }));
  return new Ambiguous(`${name} makes ${makes.typed}. How many servings is that?`, choices);
}
