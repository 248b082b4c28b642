import { ingredientsOf } from '#core/meal.ts';
import type { RecipeLine } from '#core/records.ts';
import { Refusal } from '#core/refusal.ts';
import { campTold } from '#foods/camp.ts';
import { factsOfRecipe, nameKey, mealNamed } from '#house/figures.ts';
import type { House } from '#house/house.ts';
import { asRecord, resolver } from '#house/recipe-text.ts';
import { containsLines } from '#words/phrases.ts';
import { becauseWords, mealOfRecipe, mealsInStock, verdictOn } from '#house/verdicts.ts';
import { flag, optional, part, restOfText } from '#words/parts.ts';
import { sayCount, sayG, sayList } from '#words/say.ts';
import { aboutParts, mealAbout } from './about.ts';
import { eaterOf, eatersNamed } from './people.ts';
import { question } from './question.ts';

export const serves = question({
  name: 'serves',
  about: 'how many servings it makes',
  asked: ['how many servings does the soup make?'],
  takes: aboutParts,
  answer: (asked, house) => {
    const recipe = mealNamed(house, mealAbout(house, asked));
    const { totals, finishedG } = factsOfRecipe(house, recipe);
    const g = (value: number) => sayG(value / recipe.servings, house.settings.units);
    return {
      group: `${recipe.name}: ${sayCount(recipe.servings, 'serving', 'servings')} as written, ${g(finishedG)} wet each, ${g(totals.solidsG)} of it solids.`,
      buttons: [{ label: 'Show the recipe', request: `/recipe ${recipe.name}` }],
    };
  },
});

export const whatsIn = question({
  name: 'whatsin',
  about: 'what is in it',
  asked: ["what's in the soup?", 'how many carrots go into the soup?'],
  takes: aboutParts,
  answer: (asked, house) => {
    const recipe = mealNamed(house, mealAbout(house, asked));
    const contents = mealOfRecipe(recipe, factsOfRecipe(house, recipe));
    const contains = containsLines(factsOfRecipe(house, recipe));
    return {
      group: [`${contents.name}: ${recipe.lines.map(withPlace).join('; ')}.`, ...contains].join('\n'),
      buttons: [{ label: 'Show the recipe', request: `/recipe ${recipe.name}` }],
      meals: [contents],
    };
  },
});

/** A line as typed, with 'at camp' where only its heading says so. */
const withPlace = ({ typed, camp }: RecipeLine): string =>
  camp === null || campTold(typed).camp !== null ? typed : `${typed} (at camp)`;

const figures = {
  sodium: { unit: 'mg sodium', of: (totals: Figures) => totals.sodiumMg },
  energy: { unit: 'kcal', of: (totals: Figures) => totals.kcal },
  protein: { unit: 'g protein', of: (totals: Figures) => totals.proteinG },
  fat: { unit: 'g fat', of: (totals: Figures) => totals.fatG },
} as const;
type Figures = ReturnType<typeof factsOfRecipe>['totals'];

export const ranking = question({
  name: 'ranking',
  about: 'which meal has most of it',
  asked: ['which meal has the least salt?', 'what has the most protein?'],
  takes: {
    least: flag('least'),
    what: part<keyof typeof figures>('salt, energy, protein or fat', (reading) => {
      const index = [...reading.left()].find((i) => reading.all[i]!.plain in figures);
      if (index === undefined) return undefined;
      reading.take(index);
      return reading.all[index]!.plain as keyof typeof figures;
    }),
    who: optional(eatersNamed),
  },
  answer: ({ least, what, who = [] }, house) => {
    const eaters = who.map((name) => eaterOf(house, name));
    const stocked = mealsInStock(house);
    const clear = stocked.filter((meal) => eaters.every((eater) => verdictOn(eater, meal).is === 'clear'));
    const { unit, of } = figures[what];
    const ranked = clear
      .map(({ name }) => {
        const recipe = mealNamed(house, name);
        const facts = factsOfRecipe(house, recipe);
        const isLeast = facts.uncounted.length + facts.unresolved.length > 0;
        return { name, value: of(facts.eaten) / recipe.servings, isLeast };
      })
      .toSorted((a, b) => (least ? a.value - b.value : b.value - a.value));
    if (ranked.length === 0) return 'Nothing in stock can be told of that.';
    const kept = stocked.length - clear.length;
    return [
      `A serving, ${least ? 'least' : 'most'} first: ${sayList(ranked.map(({ name, value, isLeast }) => `${name} ${isLeast ? 'at least ' : ''}${Math.round(value)} ${unit}`))}.`,
      ...(kept > 0
        ? [`${sayCount(kept, 'meal', 'meals')} in stock not clear for ${sayList(who)} left out.`]
        : []),
    ].join('\n');
  },
});

export const ratingsOf = question({
  name: 'ratingsof',
  about: 'how it was liked',
  asked: ['how did we like the chili?'],
  takes: aboutParts,
  answer: (asked, house) => {
    const name = mealAbout(house, asked);
    const all = house.ratings.ofMeal(nameKey(name));
    if (all.length === 0)
      return `Nobody has rated ${name} yet. For example: the ${name.toLowerCase()} was too salty, or needed 40 ml more.`;
    const count = (is: (one: (typeof all)[number]) => boolean) => all.filter(is).length;
    const told = [
      [count((one) => one.again === true), 'again'],
      [count((one) => one.again === false), 'not again'],
      [count((one) => one.salt === 'too salty'), 'too salty'],
      [count((one) => one.salt === 'not salty enough'), 'not salty enough'],
      [count((one) => one.portion === 'too much'), 'too much'],
      [count((one) => one.portion === 'hungry'), 'stayed hungry'],
      [count((one) => (one.moreMl ?? 0) > 0), 'more water'],
      [count((one) => (one.moreMl ?? 0) < 0), 'less water'],
    ] as const;
    const said = told.flatMap(([n, word]) => (n === 0 ? [] : [`${n} x ${word}`]));
    return `${name}, ${sayCount(all.length, 'rating', 'ratings')}: ${said.length > 0 ? sayList(said) : 'the water was right'}.`;
  },
});

/** Every eater whose food is asked for where nobody is named. */
const whoOf = (house: House, who: readonly string[] | undefined) =>
  who === undefined || who.length === 0 ? house.eaters.here() : who.map((name) => eaterOf(house, name));

export const mayFood = question({
  name: 'mayfood',
  about: 'who may eat that',
  asked: ['may Noa have cheese?', 'peanuts for Noa?'],
  takes: { who: optional(eatersNamed), what: restOfText('a food') },
  answer: ({ who, what: typed }, house) => {
    const what = typed.replace(/^(?:for|to)\s+|\s+(?:for|to)$/giu, '');
    const line = resolver(house)(`100 g ${what}`);
    if (line.food === null && line.own === null)
      throw new Refusal('no-such-food', `I know no food called "${what}", so I cannot say.`);
    const contents = ingredientsOf(asRecord(line));
    const lines = whoOf(house, who).map((eater) => {
      const verdict = verdictOn(eater, { contents });
      return verdict.is === 'blocked'
        ? `${eater.name}: NO, ${becauseWords(verdict.by)}.`
        : verdict.is === 'unknown'
          ? `${eater.name}: unknown, so not yet: ${becauseWords(verdict.because)}.`
          : `${eater.name}: ${what} is not kept away${eater.never.length > 0 ? ` (never ${sayList(eater.never)})` : ''}.`;
    });
    return [...lines, 'By what is recorded, not traces. Nothing is changed.'].join('\n');
  },
});
