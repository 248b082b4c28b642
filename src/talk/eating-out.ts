import { dayText } from './asks-trips.ts';
import { type Reader, holdOf, people } from './hold.ts';
import { quoted } from './look.ts';

const outWords =
  'eat dine out restaurant takeaway pub inn cafe invited at the a in have get go for on all of us dinner lunch breakfast'.split(
    ' ',
  );

/** 'We eat out on Sunday', 'dinner at the pub on Saturday': a meal of a trip that is had elsewhere. */
export const eatingOut: Reader = (look) => {
  const isOut = look.says(
    / (?:eat|eats|eating|dine|dining) out | (?:restaurant|takeaway|pub|inn|cafe) | invited /,
  );
  const [next] = look.names.trips;
  const place = look.trip() ?? (next === undefined ? undefined : quoted(next));
  const day = dayText(look);
  if (!isOut || place === undefined || day === '' || look.said.codes.length > 0) return undefined;
  const meal = look.slotMeal();
  const dayTokens = look.said.all.flatMap(({ plain }, i) =>
    day.toLowerCase().split(' ').includes(plain) ? [i] : [],
  );
  return {
    means: 'trip',
    words: `${place} eat out ${day} ${meal?.meal ?? ''}`.trim(),
    score: 5,
    left: look.leftBy([
      ...look.at(...outWords),
      ...dayTokens,
      ...(meal ? [meal.at] : []),
      ...people(look),
      ...look.said.trips.flatMap(({ at }) => at),
    ]),
    holds: holdOf(look, { future: true }),
  };
};

/** 'Swap Friday and Saturday', 'switch Saturday dinner with Sunday lunch': meals of a plan that change places. */
export const exchanging: Reader = (look) => {
  const verbs = look.at('swap', 'switch', 'exchange', 'trade');
  const days = look.said.text.match(
    /\b(?:mon|tues|wednes|thurs|fri|satur|sun)day(?:'s)?(?:\s+(?:breakfast|lunch|dinner))?|\b(?:breakfast|lunch|dinner)\s+(?:on|of)\s+(?:mon|tues|wednes|thurs|fri|satur|sun)day/giu,
  );
  const place = look.trip();
  if (verbs.length === 0 || days?.length !== 2 || look.said.codes.length > 0) return undefined;
  const used = new Set(days.flatMap((day) => day.toLowerCase().split(/\s+/)));
  return {
    means: 'exchange',
    words: `${days.map((day) => day.replace(/'s\b/u, '')).join(' and ')} ${place ?? ''}`.trim(),
    score: 6,
    left: look.leftBy([
      ...verbs,
      ...look.said.all.flatMap(({ plain, typed }, i) =>
        used.has(plain) || used.has(typed.toLowerCase()) ? [i] : [],
      ),
      ...people(look),
      ...look.said.trips.flatMap(({ at }) => at),
      ...look.at(
        'around',
        'over',
        'the',
        'day',
        'meal',
        'plan',
        'of',
        'on',
        'with',
        'for',
        'and',
        'dinner',
        'lunch',
        'breakfast',
      ),
    ]),
    holds: holdOf(look),
  };
};
