import { avoidanceOf } from '#core/avoidance.ts';
import { type DayFigure, energyOfDayKcal, sodiumOfDayMg } from '#core/eaters.ts';
import type { Eater } from '#core/records.ts';
import { sayList, sayNumber } from '#words/say.ts';

function rule(words: string): string {
  const found = avoidanceOf(words);
  if (found === undefined) return `${words} (a plain food, found by name)`;
  return words;
}

function figure(what: string, unit: string, day: DayFigure | undefined, source: string): string {
  if (day === undefined) return `${what}: no published figure without an age`;
  const from =
    day.from === 'their own'
      ? 'their own limit'
      : `${source} for ${day.from === 'adults' ? 'adults' : 'the age'}`;
  return `${what} ${Math.round(day.value)} ${unit} a day (${from})`;
}

/** An eater as understood: the first line says it all in short. */
export function understoodLines(eater: Eater): string[] {
  const who = [eater.kind, ...(eater.ageYears === null ? [] : [`${sayNumber(eater.ageYears)} years`])].join(
    ', ',
  );
  const diets = eater.never.filter((words) => avoidanceOf(words)?.is === 'diet');
  const foods = eater.never.filter((words) => !diets.includes(words));
  const kept = [...diets, ...(foods.length > 0 ? [`never ${sayList(foods.map(rule))}`] : [])];
  const never = kept.length > 0 ? kept.join('; ') : 'nothing kept away';
  const dislikes = eater.dislikes.length > 0 ? `; dislikes ${sayList(eater.dislikes)}` : '';
  return [
    `${eater.name} (${who}): ${never}${dislikes}; portion ${sayNumber(eater.portion)}.`,
    `${figure('Sodium', 'mg', sodiumOfDayMg(eater), 'the published level above which less is advised,')}; ${figure('energy', 'kcal', energyOfDayKcal(eater), 'the published need')}.`,
  ];
}
