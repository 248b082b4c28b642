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
