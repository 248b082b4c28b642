import { changeLines } from './change-words.ts';
import { fedHead, isShort, shortLines } from './fed-words.ts';
import { dayPages, planInShort, shortByPerson } from './plan-pages.ts';
import { pickWords, reasonLines } from './pick-words.ts';
import { provenWords } from './proven-words.ts';
import { ungranted } from './wish-words.ts';
import type { House } from '#house/house.ts';
import { markedWith, markLines } from '#house/marks.ts';
import { mendLines } from '#house/mending.ts';
import { servedBy } from '#house/served.ts';
import type { TripProblem } from '#house/trip-problem.ts';
import { dayNotes, stoveCautions, sumInShort, sumLines, toBring, tripSums } from '#house/trip-sums.ts';
import { sayDayOf, saySlot } from '#house/trips.ts';
import { fedByDay } from '#core/picks/fed.ts';
import type { PicksPlan, PicksResult } from '#core/picks/problem.ts';
import { shortages } from '#core/picks/why.ts';
import type { Slot } from '#core/records.ts';
import { readCode, sayCodes, sayList } from '#words/say.ts';

/** An answer about a plan that shows none. */
export const inShort = (place: string, lines: string[], did: string | undefined, reasons: string[] = []) => ({
  lines,
  did,
  reasons,
  heed: [],
  pages: [],
  isOpen: false,
  place,
  canKeep: false,
  asks: [],
});

/** Some meals that stay as they are, each with what it is. */
export function keptAsTheyAre(
  { trip, dishes }: TripProblem,
  plan: PicksPlan,
  only: readonly Slot[],
  did: string,
) {
  const lines = only.map((slot) => {
    const picked = plan.slots.find((one) => one.slot === String(slot.id));
    const all = [...(picked?.dishes ?? []), ...(picked?.beside ?? [])];
    return `${saySlot(slot)}: ${all.length === 0 ? 'nothing' : sayList(all.map(({ meal, pouches }) => `${dishes.get(meal)?.name ?? meal} ${sayCodes(pouches.map(readCode))}`))}.`;
  });
  return inShort(
    trip.place,
    [`${trip.place}: ${only.length > 1 ? 'these meals stay' : 'this meal stays'} as planned.`, ...lines],
    did,
    ['The rest may change when you plan again; "/pick free" with the day lifts it.'],
  );
}

/** What is taken along to spare and finds nothing left. */
function spareLines({ trip }: TripProblem, plan: PicksPlan): string[] {
  return trip.slots
    .filter(({ id, marks }) => {
      const picked = plan.slots.find(({ slot }) => slot === String(id));
      return marks.includes('spare') && picked?.dishes.length === 0;
    })
    .map(({ meal }) => `Nothing is left for the spare ${meal}.`);
}

const headings = {
  shown: (trip: string, from: string, fed: string) => [`${trip}, ${from}: ${fed}`],
  kept: (trip: string, _: string, fed: string) => [`Kept for ${trip}: ${fed}`],
  changed: (trip: string, from: string, fed: string) => [
    `${trip}, ${from}: ${fed}`,
    'The choice changed since it was shown: nothing is kept yet.',
  ],
};

/** The plan as it is told: who is fed with what, what is short, what the whole trip weighs and boils. */
export function planTold(
  house: House,
  question: TripProblem,
  result: PicksResult,
  state: 'shown' | 'kept' | 'changed',
) {
  const { trip } = question;
  const eaters = house.eaters.all();
  const served = servedBy(question, result);
  const sums = tripSums(house, served);
  const short = shortages(question.problem, result);
  const fed = fedByDay(question.problem, result);
  const picked = pickWords(question, result, eaters, sums, (codes) =>
    markedWith(
      house,
      codes.map((code) => question.pouches.get(code)!),
    ),
  );
  const opened = result.slots
    .flatMap(({ dishes, beside = [] }) => [...dishes, ...beside])
    .flatMap(({ pouches }) => pouches.map((code) => question.pouches.get(code)!));
  const isFed = fedHead(question, fed, eaters);
  const head = headings[state](trip.place, sayDayOf(trip.startsOn), isFed);
  const changes = changeLines(question, result, eaters);
  const needs = [
    ...shortByPerson(fed, eaters),
    ...changes.map(({ short: said }) => said),
    ...(state === 'kept' ? [] : sumInShort(house, trip, sums)),
  ];
  const heed = state === 'kept' ? [] : stoveCautions(sums);
  const slots = state === 'kept' ? [] : planInShort(picked, [...head, ...needs, ...heed]);
  const isSpareSaid = slots.some((line) => line.includes('spare'));
  const spare = isSpareSaid ? [] : spareLines(question, result);
  const lines = [
    ...head,
    ...slots,
    ...spare,
    ...(slots.length === 0 ? markLines(house, opened) : []),
    ...needs,
  ];
  const reasons = [
    ...shortLines(question, fed, eaters),
    ...changes.flatMap(({ long }) => long),
    ...ungranted(house, question, result),
    ...mendLines(house, fed),
    ...reasonLines(short, question, eaters, fed, result),
    ...(served.length > 0
      ? [...sumLines(house, trip, sums), ...toBring(house, sums), provenWords(question.problem, result)]
      : []),
    ...dayNotes(eaters, sums).map(({ who, text }) => `${who}: ${text}`),
  ];
  const all = { label: 'All days', group: lines.join('\n'), why: reasons };
  return {
    lines,
    heed,
    reasons,
    isOpen: fed.some(isShort),
    pages: state === 'kept' ? [] : [all, ...dayPages(question, picked, fed, eaters)],
  };
}
