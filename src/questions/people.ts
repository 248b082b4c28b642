import { dayLines, understoodLines } from '#cards/eater-card.ts';
import type { Avoidance } from '#core/avoidance.ts';
import type { Eater } from '#core/records.ts';
import { Refusal } from '#core/refusal.ts';
import { nameKey } from '#house/figures.ts';
import type { House } from '#house/house.ts';
import { avoidanceNamed } from '#foods/avoided.ts';
import {
  avoidancesOf,
  becauseWords,
  mealOfBatch,
  mealOfRecipe,
  type MealShown,
  mealsInStock,
  verdictOn,
} from '#house/verdicts.ts';
import { factsOfRecipe, mealNamed } from '#house/figures.ts';
import { type Verdict, verdictFor } from '#core/verdict.ts';
import { flag, optional, part, restOfText } from '#words/parts.ts';
import { takeName } from '#words/names.ts';
import { sayList } from '#words/say.ts';
import { aboutParts, type About } from './about.ts';
import { question } from './question.ts';

/** Everybody that is named, each once. */
export const eatersNamed = part<string[]>('for whom', (reading, names) => {
  const found: string[] = [];
  for (let left = names.eaters; left.length > 0;) {
    const name = takeName(reading, left, 'eater', true);
    if (name === undefined) break;
    found.push(name);
    left = left.filter((one) => one !== name);
  }
  return found.length === 0 ? undefined : found;
});

export const eaterOf = (house: House, name: string): Eater => {
  const found = house.eaters.find(nameKey(name));
  if (!found) throw new Refusal('no-such-eater', `I know no eater called "${name}".`);
  return found;
};

/** The meal that is asked about, with all wordings that are in stock. */
function mealAsked(house: House, { codes, batch, meal }: About): MealShown {
  const no = codes?.[0]?.batch ?? batch;
  if (no !== undefined) return mealOfBatch(house, no);
  if (meal === undefined) throw new Refusal('no-meal', 'Which meal or pouch is meant?');
  const stocked = mealsInStock(house).find(({ name }) => name === meal);
  const recipe = mealNamed(house, meal);
  return stocked ?? mealOfRecipe(recipe, factsOfRecipe(house, recipe));
}

const byRecord = 'By the recorded ingredients alone, not traces.';

function mayLine(eater: Eater, meal: MealShown): string {
  const verdict = verdictOn(eater, meal);
  if (verdict.is === 'blocked') return `${eater.name}: NO, ${becauseWords(verdict.by)}.`;
  if (verdict.is === 'unknown')
    return `${eater.name}: unknown, so not yet: ${becauseWords(verdict.because)}.`;
  return `${eater.name}: yes, clear${eater.never.length === 0 ? '; nothing is kept away' : ''}.`;
}

export const mayEat = question({
  name: 'mayeat',
  about: 'who may eat it',
  asked: ['may Noa eat the chili?', 'is the curry ok for Ben?'],
  takes: { everybody: flag('everybody'), who: optional(eatersNamed), ...aboutParts },
  answer: ({ everybody, who = [], ...asked }, house) => {
    const meal = mealAsked(house, asked);
    const eaters =
      everybody || who.length === 0 ? house.eaters.here() : who.map((name) => eaterOf(house, name));
    if (eaters.length === 0) return 'Nobody is recorded as an eater yet: /eater me';
    return [`${meal.name}:`, ...eaters.map((eater) => mayLine(eater, meal)), byRecord].join('\n');
  },
});

export const stranger = question({
  name: 'stranger',
  about: 'who that is',
  asked: ['may Timo eat the chili?'],
  takes: { name: restOfText('a name') },
  answer: ({ name: typed }, house) => {
    const name = typed.replaceAll('"', '');
    const here = house.eaters.here().map((eater) => eater.name);
    return {
      group: `I know nobody called ${name}, so I cannot say what suits them.${here.length === 0 ? '' : ` Recorded: ${sayList(here)}.`}`,
      buttons: [{ label: `${name} eats here`, request: `/eater "${name}"` }],
    };
  },
});

export const whatFor = question({
  name: 'whatfor',
  about: 'what suits',
  asked: ['what can Noa eat?'],
  takes: { who: eatersNamed },
  answer: ({ who }, house) => {
    const eaters = who.map((name) => eaterOf(house, name));
    const meals = mealsInStock(house);
    if (meals.length === 0) return 'Nothing is in stock yet.';
    const lines = eaters.flatMap((eater) => {
      const of = (is: 'clear' | 'blocked' | 'unknown') =>
        meals.filter((meal) => verdictOn(eater, meal).is === is).map((meal) => meal.name);
      const [clear, unknown, blocked] = [of('clear'), of('unknown'), of('blocked')];
      return [
        `${eater.name}: ${clear.length > 0 ? sayList(clear) : 'nothing in stock is clear'}.`,
        ...(unknown.length > 0 ? [`Unknown, so not yet: ${sayList(unknown)}.`] : []),
        ...(blocked.length > 0 ? [`Not: ${sayList(blocked)}.`] : []),
      ];
    });
    return {
      group: [...lines, byRecord].join('\n'),
      ...(eaters.length === 1
        ? { buttons: [{ label: 'With codes', request: `/stock for ${eaters[0]!.name}` }] }
        : {}),
    };
  },
});

/** Whether a meal is vegan, vegetarian and the like. */
const dietSaid = (diet: string, verdict: Verdict): string =>
  verdict.is === 'blocked'
    ? `no, not ${diet}: ${becauseWords(verdict.by)}`
    : verdict.is === 'unknown'
      ? `unknown: ${becauseWords(verdict.because)}`
      : `yes, ${diet} by its recorded ingredients`;

export const holds = question({
  name: 'holds',
  about: 'is it in there',
  asked: ['does the curry have gluten?', 'are there nuts in the soup?'],
  takes: { ...aboutParts, what: restOfText('what it may hold') },
  answer: ({ what, ...asked }, house) => {
    if (avoidanceNamed(what) === undefined && house.foods.search(what, 1).length === 0)
      throw new Refusal('no-such-food', `I know no food, allergen or diet called "${what}".`);
    const avoid = avoidancesOf([what]);
    const hasMeal = asked.codes ?? asked.batch ?? asked.meal;
    if (hasMeal !== undefined) {
      const meal = mealAsked(house, asked);
      const verdict = verdictFor(meal.contents, avoid);
      const said =
        avoid[0]?.is === 'diet'
          ? dietSaid(what, verdict)
          : verdict.is === 'blocked'
            ? `yes: ${becauseWords(verdict.by)}`
            : verdict.is === 'unknown'
              ? `unknown: ${becauseWords(verdict.because)}`
              : `no ${what} in its recorded ingredients`;
      return `${meal.name}: ${said}.\n${byRecord}`;
    }
    return anyHolding(house, what, avoid);
  },
});

export const anyHolds = question({
  name: 'anyholds',
  about: 'which meals have it',
  asked: ['does anything here have peanuts?'],
  takes: { what: restOfText('what it may hold') },
  answer: ({ what }, house) => anyHolding(house, what, avoidancesOf([what])),
});

/** Which meals in stock hold something, which may, which do not. */
function anyHolding(house: House, what: string, avoid: readonly Avoidance[]): string {
  const meals = mealsInStock(house).map((meal) => ({ meal, verdict: verdictFor(meal.contents, avoid) }));
  const named = (is: string) => meals.filter(({ verdict }) => verdict.is === is).map(({ meal }) => meal.name);
  return [
    ...(named('blocked').length > 0
      ? [`With ${what}: ${sayList(named('blocked'))}.`]
      : [`Nothing in stock holds ${what} by its recorded ingredients.`]),
    ...(named('unknown').length > 0 ? [`Unknown: ${sayList(named('unknown'))}.`] : []),
    ...(named('clear').length > 0 ? [`Without: ${sayList(named('clear'))}.`] : []),
    byRecord,
  ].join('\n');
}

export const eaterOfName = question({
  name: 'eaterof',
  about: 'what is known of',
  asked: ['what is Noa allergic to?', 'how old is Noa?'],
  takes: { who: eatersNamed },
  answer: ({ who }, house) =>
    who
      .flatMap((name) => {
        const eater = eaterOf(house, name);
        return [understoodLines(eater)[0]!, ...dayLines(eater)];
      })
      .join('\n'),
});

/** Whether what is asked for and what somebody avoids are about the same thing, if only in part. */
function overlaps(own: Avoidance, asked: Avoidance): boolean {
  if (own.is === 'allergen' && asked.is === 'allergen')
    return own.tags.some((tag) => asked.tags.includes(tag));
  if (own.is === 'kind' && asked.is === 'kind') return own.kinds.some((kind) => asked.kinds.includes(kind));
  return JSON.stringify(own) === JSON.stringify(asked);
}

export const whoAvoids = question({
  name: 'whoavoids',
  about: 'who avoids it',
  asked: ['who is vegetarian?', 'who cannot have milk?'],
  takes: { what: optional(restOfText('what')) },
  answer: ({ what }, house) => {
    const here = house.eaters.here();
    const word = what?.trim().toLowerCase() ?? '';
    if (word === '') {
      const some = here.filter((eater) => eater.never.length > 0);
      return some.length === 0
        ? 'Nobody here has anything kept away.'
        : some.map((eater) => `${eater.name}: ${sayList(eater.never)}.`).join('\n');
    }
    const wanted = avoidancesOf([word]);
    const found = here.filter((eater) =>
      eater.never.some(
        (one) =>
          one.toLowerCase() === word ||
          avoidancesOf([one]).some((own) => wanted.some((asked) => overlaps(own, asked))),
      ),
    );
    return found.length === 0
      ? `Nobody here is recorded with "${word}".`
      : `${sayList(found.map((eater) => `${eater.name} (${sayList(eater.never)})`))}.`;
  },
});
