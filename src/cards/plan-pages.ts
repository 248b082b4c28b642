import { groupBy } from '#core/groups.ts';
import type { DayFed } from '#core/picks/fed.ts';
import type { Eater } from '#core/records.ts';
import type { Page } from '#core/talk.ts';
import { sayDayOf } from '#house/trips.ts';
import { dayNumber, type TripProblem } from '#house/trip-problem.ts';
import { mostPhoneLines, phoneLines, phoneLinesOf } from '#words/phone.ts';
import { sayCount, sayList } from '#words/say.ts';
import { isShort } from './fed-words.ts';
import type { SlotPicked } from './pick-words.ts';

const tens = (kcal: number): number => Math.round(kcal / 10) * 10;
const capital = (word: string) => `${word[0]!.toUpperCase()}${word.slice(1)}`;
/** More people than these share a line. Chosen. */
const mostShort = 2;
/** And more than these are counted. Chosen. */
const mostNamed = 6;

/** 'Short: Tomas 2670, Ines 2690 kcal; nothing at 2 meals.' A line a person where there are few. */
export function shortByPerson(fed: readonly DayFed[], eaters: readonly Eater[]): string[] {
  const said = [...groupBy(fed.filter(isShort), (one) => one.eater)].map(([eater, days]) => ({
    name: eaters.find(({ id }) => id === Number(eater))?.name ?? '?',
    kcal: tens(days.reduce((sum, one) => sum + one.shortKcal, 0)),
    meals: days.flatMap((one) => one.missed),
  }));
  const nothingAt = (meals: number) => (meals > 0 ? [`nothing at ${sayCount(meals, 'meal')}`] : []);
  if (said.length <= mostShort)
    return said.map(({ name, kcal, meals }) => {
      const what = [...(kcal > 0 ? [`${kcal} kcal short`] : []), ...nothingAt(meals.length)];
      return `${name}: ${what.join(', ')}.`;
    });
  const lacking = said.filter(({ kcal }) => kcal > 0);
  const worst = lacking.toSorted((a, b) => b.kcal - a.kcal)[0];
  if (worst && said.length > mostNamed)
    return [
      `${said.length} people are short, most ${worst.name}: ${[`${worst.kcal} kcal`, ...nothingAt(worst.meals.length)].join(', ')}.`,
    ];
  const energy =
    lacking.length === 0 ? [] : [`${lacking.map(({ name, kcal }) => `${name} ${kcal}`).join(', ')} kcal`];
  const missed = nothingAt(new Set(said.flatMap(({ meals }) => meals)).size);
  return [`Short: ${[...energy, ...missed].join('; ')}.`];
}

/** 'Fri 4 Jun dinner: Barley soup, Chickpea rice.' The whole plan in a line a meal, or a day where that is too long. */
export function planInShort(picked: readonly SlotPicked[], others: readonly string[]): string[] {
  const room = mostPhoneLines - phoneLinesOf(others);
  const bySlot = picked.map(
    ({ slot, dishes }) =>
      `${sayDayOf(slot.onDay).slice(0, 3)} ${slot.marks.includes('spare') ? 'spare ' : ''}${slot.meal}: ${dishes.join(', ') || 'nothing'}.`,
  );
  if (phoneLinesOf(bySlot) <= room) return bySlot;
  const byDay = [...groupBy(picked, ({ slot }) => slot.onDay)].map(
    ([day, those]) =>
      `${sayDayOf(day).slice(0, 3)}: ${[...new Set(those.flatMap(({ dishes }) => dishes))].join(', ') || 'nothing'}.`,
  );
  return phoneLinesOf(byDay) <= room ? byDay : [];
}

/** A page a day: what is opened at each meal, for whom, the water; who is short that day. */
export function dayPages(
  { trip }: TripProblem,
  picked: readonly SlotPicked[],
  fed: readonly DayFed[],
  eaters: readonly Eater[],
): Page[] {
  return [...groupBy(picked, ({ slot }) => slot.onDay)].flatMap(([day, those]) => {
    const whole = page(day, those);
    // A table of many fills a phone with one meal.
    return phoneLines(whole.group) <= mostPhoneLines || those.length < 2
      ? [whole]
      : those.map((one) => ({
          ...page(day, [one]),
          label: `${sayDayOf(day).slice(0, 3)} ${one.slot.meal}`,
        }));
  });

  function page(day: string, those: readonly SlotPicked[]): Page {
    const short = fed.filter((one) => one.day === dayNumber(day) && isShort(one));
    const names = short.map((one) => eaters.find(({ id }) => id === Number(one.eater))?.name ?? '?');
    return {
      label: sayDayOf(day).split(' ').slice(0, 2).join(' '),
      group: [
        `${trip.place}, ${sayDayOf(day)}:`,
        ...those.map(({ slot, text }) => `${capital(slot.meal)}: ${text}`),
        ...(short.length === 0 ? [] : [`Short that day: ${sayList(names)}.`]),
      ].join('\n'),
      why: short.map((one, i) =>
        one.shortKcal > 0
          ? `${names[i]!}: ${tens(one.kcal)} of ${tens(one.floorKcal!)} kcal.`
          : `${names[i]!}: ${sayCount(one.missed.length, 'meal')} missing.`,
      ),
    };
  }
}
