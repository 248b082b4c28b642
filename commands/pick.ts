import { planned } from '#chat/command.ts';
import { whyWords } from '#cards/pick-words.ts';
import { inShort, keptAsTheyAre, planTold } from '#cards/plan-told.ts';
import { type TripProblem, tripProblem } from '#house/trip-problem.ts';
import { stockQuestionsFor } from '#house/packet-questions.ts';
import { saySlot, tripMeant } from '#house/trips.ts';
import { freeSlots, holdPlan } from '#house/keeping-plan.ts';
import { slotsNamed } from '#house/wishing.ts';
import { digestOf } from '#core/picks/digest.ts';
import type { PicksPlan, PicksResult } from '#core/picks/problem.ts';
import type { PouchReason } from '#core/picks/why.ts';
import { Refusal } from '#core/refusal.ts';
import { mealOfDay, tripOrDay } from '#words/want-parts.ts';
import { sayCode, sayCodes, sayList } from '#words/say.ts';
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
  usage: '/pick [trip] · /pick keep [friday] · /pick why B4-2',
  summary: 'which pouches for which meal of a trip, who eats what, what is short and why',
  examples: ['/pick', '/pick keep', '/pick keep saturday dinner', '/pick why B4-2'],
  help: [
    'Safety first, then enough to eat for everybody, wishes, dislikes, what is kept already, waste in whole servings, what expires, variety, sodium, weight.',
    'Breakfasts are for breakfast, mains for lunch and dinner; sides and sweets go beside. "Porridge is for breakfast" tells what a meal is for.',
    '"keep" holds the pouches for the trip: they leave the stock and are given to no other trip. "keep friday" lets Friday stay as it is, however the rest is planned anew; "free friday" lifts that.',
  ],
  records: true,
  asksBy: /\bwhy\b/iu,
  takes: {
    keep: flag('keep', 'hold', 'promise'),
    why: flag('why'),
    codes: optional(pouchCodes),
    free: flag('free', 'release', 'loosen'),
    when: tripOrDay,
    slotMeal: mealOfDay,
    trip: optional(tripName),
  },
  atOnce: {
    when: ({ free }) => free === true,
    run: ({ when, slotMeal, trip: place }, house) => {
      const trip = tripMeant(house, when?.trip ?? place);
      const slots = slotsNamed(trip, when?.day, slotMeal) ?? trip.slots;
      const words = sayList(freeSlots(house, slots).map(saySlot));
      return inShort(trip.place, [`${words} may be planned anew: /pick.`], `let ${words} be planned anew`);
    },
  },
  look: (
    { when, slotMeal, trip: place, codes, why, keep },
    house,
  ): { question: TripProblem; code: string | undefined; known: PicksResult | undefined } => {
    const trip = tripMeant(house, when?.trip ?? place);
    const part = slotsNamed(trip, when?.day, slotMeal);
    if (part && !keep)
      throw new Refusal(
        'keep',
        `I read ${sayList(part.map(saySlot))}, but not what about it. To let it stay as it is: /pick keep ${part[0]!.onDay} ${part[0]!.meal}`,
      );
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
      return inShort(trip.place, [whyWords(sayCode(asked.codes[0]), why, question, plan)], undefined);
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
    const only = slotsNamed(trip, asked.when?.day, asked.slotMeal);
    const kept = asked.keep === true && !changed ? holdPlan(house, question, plan, only) : undefined;
    if (only && kept !== undefined) return keptAsTheyAre(question, result, only, kept);
    if (only && !changed)
      throw new Refusal('nothing-to-keep', `Nothing is planned for ${sayList(only.map(saySlot))}.`);
    return {
      ...planTold(house, question, result, changed ? 'changed' : kept ? 'kept' : 'shown'),
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
