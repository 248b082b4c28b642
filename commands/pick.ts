import { planned } from '#chat/command.ts';
import type { House } from '#house/house.ts';
import { changeLines } from '#cards/change-words.ts';
import { fedHead, isShort, shortLines } from '#cards/fed-words.ts';
import { dayPages, planInShort, shortByPerson } from '#cards/plan-pages.ts';
import { ungranted } from '#cards/wish-words.ts';
import { pickWords, reasonLines, whyWords } from '#cards/pick-words.ts';
import { provenWords } from '#cards/proven-words.ts';
import { type TripProblem, tripProblem } from '#house/trip-problem.ts';
import { markedWith, markLines } from '#house/marks.ts';
import { stockQuestionsFor } from '#house/packet-questions.ts';
import { mendLines } from '#house/mending.ts';
import { servedBy } from '#house/served.ts';
import { dayNotes, stoveCautions, sumInShort, sumLines, toBring, tripSums } from '#house/trip-sums.ts';
import { sayDayOf, tripMeant } from '#house/trips.ts';
import { digestOf } from '#core/picks/digest.ts';
import { fedByDay } from '#core/picks/fed.ts';
import type { PicksPlan, PicksResult } from '#core/picks/problem.ts';
import { type PouchReason, shortages } from '#core/picks/why.ts';
import { Refusal } from '#core/refusal.ts';
import { sayCode, sayCodes } from '#words/say.ts';
import { flag, optional, part, pouchCodes } from '#words/parts.ts';
import { takeName } from '#words/names.ts';

const tripName = part<string>('a trip by its place', (reading, names) =>
  takeName(reading, names.trips, 'trip'),
);

interface Worked {
  readonly question: TripProblem;
  readonly result: PicksResult;
  readonly why: PouchReason | undefined;
}

export default planned({
  name: 'pick',
  alsoCalled: ['picks', 'plan'],
  usage: '/pick [trip] · /pick keep · /pick why B4-2',
  summary: 'which pouches for which meal of a trip, who eats what, what is short and why',
  examples: ['/pick', '/pick keep', '/pick why B4-2'],
  help: [
    'Safety first, then enough to eat for everybody, wishes, dislikes, what is kept already, waste in whole servings, what expires, variety, sodium, weight.',
    'Breakfasts are for breakfast, mains for lunch and dinner; sides and sweets go beside. "Porridge is for breakfast" tells what a meal is for.',
    '"keep" holds the pouches for the trip: they leave the stock and are given to no other trip.',
  ],
  records: true,
  asksBy: /\bwhy\b/iu,
  takes: {
    keep: flag('keep', 'hold', 'promise'),
    why: flag('why'),
    codes: optional(pouchCodes),
    trip: optional(tripName),
  },
  look: (
    { trip: place, codes, why },
    house,
  ): { question: TripProblem; code: string | undefined; known: PicksResult | undefined } => {
    const trip = tripMeant(house, place);
    const question = tripProblem(house, trip);
    if (question.problem.slots.length === 0)
      throw new Refusal('nobody', `Nobody is at any meal of ${trip.place} yet: /trip ${trip.place} for all`);
    if (codes && !why)
      throw new Refusal(
        'why',
        `I read ${sayCodes(codes)}, but not what about it. To hear why it was chosen: /pick why ${sayCodes(codes)}`,
      );
    const code = codes?.[0] && sayCode(codes[0]);
    if (why && code === undefined)
      throw new Refusal('no-pouch', 'I read "why", but not which pouch, such as B4-2.');
    // The same question has the same answer: what was shown is what is kept.
    const shown = house.trips.shown(trip.id);
    const known = shown?.asked === digestOf(question.problem) ? shown.result : undefined;
    return { question, code, known };
  },
  work: async ({ question, code, known }, { picks }): Promise<Worked> => {
    const result = known ?? (await picks.solvePicks(question.problem));
    const opened = result.slots.some((slot) =>
      slot.dishes.some((dish) => code !== undefined && dish.pouches.includes(code)),
    );
    return {
      question,
      result,
      why: opened ? await picks.whyThisPouch(question.problem, result, code!) : undefined,
    };
  },
  keep: ({ question, result, why }, asked, house) => {
    const { trip } = question;
    const now = tripProblem(house, tripMeant(house, trip.place));
    if (JSON.stringify(now.problem) !== JSON.stringify(question.problem)) {
      throw new Refusal(
        'changed',
        'The stock or the trip changed while I was planning. Nothing was kept; ask again.',
      );
    }
    const plan: PicksPlan = { slots: result.slots };
    if (asked.codes?.[0]) {
      return {
        lines: [whyWords(sayCode(asked.codes[0]), why, question, plan)],
        did: undefined,
        reasons: [],
        heed: [],
        pages: [],
        isOpen: false,
        place: trip.place,
        canKeep: false,
        asks: [],
      };
    }
    const isEmpty = result.slots.every((slot) => slot.dishes.length + (slot.beside?.length ?? 0) === 0);
    if (isEmpty && asked.keep) {
      throw new Refusal(
        'nothing-to-keep',
        `No pouch in stock can go to ${trip.place}, so there is nothing to keep. /pick ${trip.place} says why.`,
      );
    }
    const before = house.trips.shown(trip.id);
    house.trips.show(trip.id, digestOf(question.problem), result, house.nowMs);
    const isOther = before && JSON.stringify(before.result.slots) !== JSON.stringify(result.slots);
    const changed = asked.keep === true && isOther === true;
    const kept = asked.keep === true && !changed ? hold(house, question, plan) : undefined;
    return {
      ...told(house, question, result, changed ? 'changed' : kept ? 'kept' : 'shown'),
      did: kept,
      place: trip.place,
      canKeep: kept === undefined && !isEmpty,
      asks: stockQuestionsFor(
        house,
        house.eaters.here().filter(({ id }) => trip.slots.some(({ eaters }) => eaters.includes(id))),
      ),
    };
  },
  say: ({ lines, heed, reasons, pages, did, place, canKeep, isOpen, asks }) => {
    const buttons = [
      ...(canKeep && lines.length > 1 ? [{ label: 'Keep these', request: `/pick keep "${place}"` }] : []),
      ...(did === undefined ? [] : [{ label: 'Pack list', request: `/pack "${place}"` }]),
      ...(isOpen ? [{ label: 'What to cook', request: `/cook "${place}"` }] : []),
      ...asks,
    ];
    return {
      group: lines.join('\n'),
      heed,
      ...(reasons.length > 0 ? { why: reasons } : {}),
      ...(did === undefined ? {} : { did }),
      ...(pages.length > 1 ? { pages } : {}),
      ...(buttons.length > 0 ? { buttons, buttonsForAll: true } : {}),
    };
  },
});

/** Holds the pouches for their slots; earlier promises of this trip that are not packed make way. */
function hold(house: House, { trip, pouches }: TripProblem, plan: PicksPlan): string {
  house.trips.release(trip.id);
  const packed = new Set(
    house.trips
      .held(trip.id)
      .filter((h) => h.came === null)
      .map((h) => h.pouch),
  );
  const codes: string[] = [];
  for (const slot of plan.slots) {
    for (const dish of [...slot.dishes, ...(slot.beside ?? [])]) {
      for (const code of dish.pouches) {
        const pouch = pouches.get(code)!;
        codes.push(code);
        if (!packed.has(pouch.id))
          house.trips.hold(trip.id, Number(slot.slot), pouch.id, dish.eaters.map(Number));
      }
    }
  }
  return `kept ${codes.length} pouches for ${trip.place}`;
}

const headings = {
  shown: (trip: string, from: string, fed: string) => [`${trip}, ${from}: ${fed}`],
  kept: (trip: string, _: string, fed: string) => [`Kept for ${trip}: ${fed}`],
  changed: (trip: string, from: string, fed: string) => [
    `${trip}, ${from}: ${fed}`,
    'The choice changed since it was shown: nothing is kept yet.',
  ],
};

function told(house: House, question: TripProblem, result: PicksResult, state: 'shown' | 'kept' | 'changed') {
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
  const lines = [...head, ...slots, ...(slots.length === 0 ? markLines(house, opened) : []), ...needs];
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
