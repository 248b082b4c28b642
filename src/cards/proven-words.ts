import {
  at,
  lastBounded,
  type LevelResult,
  type PicksProblem,
  type PicksResult,
  shortStepKcal,
} from '#core/picks/problem.ts';
import { sayCount } from '#words/say.ts';

/** How far a level may be from the best there can be, as people count it; undefined where it counts for nothing by itself. */
function openWords({ level, gap }: LevelResult, stepKcal: number): string | undefined {
  const most = gap ?? 0;
  switch (level) {
    case 'unfed':
      return `at most ${sayCount(most, 'meal', 'meals')} more could be filled`;
    case 'worst off':
      return `whoever goes without most might miss ${sayCount(most, 'meal', 'meals')} less`;
    case 'energy short':
      return `at most ${Math.round(most * stepKcal)} kcal less could be short`;
    case 'wishes':
      return 'one more wish might come true, or a first one in place of a later one';
    case 'dislikes':
      return `at most ${sayCount(most, 'disliked plate', 'disliked plates')} less`;
    case 'moved':
      return `at most ${sayCount(most, 'plate', 'plates')} less would change`;
    case 'waste':
      return `at most ${sayCount(most, 'serving', 'servings')} less could be left over`;
    default:
      return undefined;
  }
}

/** How sure the plan is: what is proven, and what may be better still, the first level that is open deciding. */
export function provenWords(problem: PicksProblem, { levels, clockEnded }: PicksResult): string {
  const stepKcal = shortStepKcal(
    problem.slots.flatMap(({ floors }) => (floors ?? []).map(({ kcal }) => kcal)),
  );
  const open = levels
    .slice(0, at[lastBounded] + 1)
    .filter(({ proven }) => !proven)
    .flatMap((level) => openWords(level, stepKcal) ?? []);
  const ended = clockEnded ? ' The clock ended the search; asking again may find better.' : '';
  if (open.length === 0)
    return `Proven: no other choice feeds more, then grants more wishes, then wastes less. Variety and the rest were searched.${ended}`;
  return `Best found, not proven to be the best: ${open[0]!}.${ended}`;
}
