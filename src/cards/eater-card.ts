import { avoidanceOf } from '#core/avoidance.ts';
import { avoidanceNamed, larder } from '#foods/avoided.ts';
import { type DayFigure, energyOfDayKcal, sodiumOfDayMg } from '#core/eaters.ts';
import type { Eater } from '#core/records.ts';
import { sayList, sayNumber } from '#words/say.ts';

/** What a word is read as, where that is more or other than it says. */
function rule(words: string, isExact: boolean): string {
  const found = avoidanceNamed(words, isExact);
  if (found === undefined || (found.is === 'food' && !found.isWide))
    return `${words} (a plain food, found by name)`;
  if (found.is === 'food')
    return `${words} (so all ${[...found.tags, ...found.kinds].find((one) => one !== 'meat')!})`;
  return words.startsWith('lactose') ? `${words} (so all milk)` : words;
}

const isDiet = (words: string): boolean => larder.isDiet(words);

/** What a diet means here, where the ingredients cannot tell all of it. */
const dietLines: Readonly<Record<string, string>> = {
  halal:
    'Halal here: no pork, no alcohol. Meat, gelatine and made foods stay unknown: no ingredient tells how they were made. This certifies nothing.',
  kosher:
    'Kosher here: no pork, no shellfish. Meat, fish, wine, gelatine and made foods stay unknown: no ingredient tells how they were made or kept apart. This certifies nothing.',
};

function figure(what: string, unit: string, day: DayFigure | undefined, source: string): string {
  if (day === undefined) return `${what}: no published figure without an age`;
  const from =
    day.from === 'their own'
      ? 'their own limit'
      : `${source} for ${day.from === 'adults' ? 'adults' : 'the age'}`;
  return `${what} ${Math.round(day.value)} ${unit} a day (${from})`;
}

const dietLine = (words: string): string[] => {
  const found = avoidanceOf(words);
  if (found?.is === 'untold')
    return [`No list of ingredients can tell what is ${words}, so no meal is called clear.`];
  return found?.is === 'diet' && dietLines[found.diet] !== undefined ? [dietLines[found.diet]!] : [];
};

/** An eater as understood: the first line says it all in short. */
export function understoodLines(eater: Eater): string[] {
  const who = [eater.kind, ...(eater.ageYears === null ? [] : [`${sayNumber(eater.ageYears)} years`])].join(
    ', ',
  );
  const diets = eater.never.filter(isDiet);
  const foods = eater.never.filter((words) => !diets.includes(words));
  const kept = [
    ...diets,
    ...(foods.length > 0
      ? [`never ${sayList(foods.map((words) => rule(words, eater.exact.includes(words))))}`]
      : []),
  ];
  const never = kept.length > 0 ? kept.join('; ') : 'nothing kept away';
  const dislikes = eater.dislikes.length > 0 ? `; dislikes ${sayList(eater.dislikes)}` : '';
  const near = eater.apart.length > 0 ? `; not even near: ${sayList(eater.apart)}` : '';
  return [
    `${eater.name} (${who}): ${never}${near}${dislikes}; portion ${sayNumber(eater.portion)}.`,
    ...diets.flatMap(dietLine),
  ];
}

/** What a day's figures are for somebody, and where they come from. */
export const dayLines = (eater: Eater): string[] => [
  `${figure('Sodium', 'mg', sodiumOfDayMg(eater), 'the published level above which less is advised,')}; ${figure('energy', 'kcal', energyOfDayKcal(eater), 'the published need')}.`,
];
