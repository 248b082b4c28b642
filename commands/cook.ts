import { todayOf } from '#house/today.ts';
import { planned } from '#chat/command.ts';
import { groupBy } from '#core/groups.ts';
import { fedByDay } from '#core/picks/fed.ts';
import { cookingPlan } from '#house/cooking.ts';
import { tripProblem } from '#house/trip-problem.ts';
import { sayDayOf, saySlot, tripMeant } from '#house/trips.ts';
import { optional, part } from '#words/parts.ts';
import { takeName } from '#words/names.ts';
import { sayCount, sayHours, sayList, sayNumber } from '#words/say.ts';

export default planned({
  name: 'cook',
  usage: '/cook [trip]',
  summary: 'what to cook before a trip: meals, servings, dryer loads, the latest day to start',
  examples: ['/cook', '/cook Heron Lake'],
  help: [
    'It plans what stock cannot cover: mains for lunch and dinner, breakfasts for breakfast, wishes first. Sealing takes a day and the seal check two more.',
  ],
  takes: {
    trip: optional(
      part<string>('a trip by its place', (reading, names) => takeName(reading, names.trips, 'trip')),
    ),
  },
  look: ({ trip: place }, house) => tripProblem(house, tripMeant(house, place)),
  work: async (question, { picks }) => ({ question, result: await picks.solvePicks(question.problem) }),
  keep: ({ question, result }, _, house) => {
    const { trip } = question;
    const plan = cookingPlan(house, question, result);
    const today = todayOf(house);
    const shortKcal = fedByDay(question.problem, result).reduce((sum, one) => sum + one.shortKcal, 0);
    return {
      trip,
      plan,
      shortKcal,
      today,
      eaters: house.eaters.all(),
      limitKnown: house.settings.loadLimitG !== null,
    };
  },
  say: ({ trip, plan, shortKcal, today, eaters, limitKnown }) => {
    const name = (id: number) => eaters.find((eater) => eater.id === id)?.name ?? '?';
    const slotName = (id: number) => saySlot(trip.slots.find((slot) => slot.id === id)!);
    if (plan.cook.length === 0 && plan.nobodyCan.length === 0)
      return {
        group:
          shortKcal > 0
            ? `Stock covers ${trip.place} but for ${Math.round(shortKcal / 10) * 10} kcal: too little to cook for, so take something to nibble. /pick shows who is short.`
            : `Stock covers ${trip.place}: nothing has to be cooked. /pick shows the pouches.`,
      };
    const lines = [`To cook for ${trip.place}:`];
    const why: string[] = [];
    for (const one of plan.cook) {
      const made = sayNumber(one.recipe.servings * one.factor);
      const load =
        one.fills === null
          ? ''
          : one.loads > 1
            ? `, ${sayCount(one.loads, 'dryer load')}`
            : `, ${Math.round(one.fills * 100)} % of a dryer load`;
      const meals = one.slots.length > 4 ? `${one.slots.length} meals` : sayList(one.slots.map(slotName));
      const said = `${one.recipe.name}${one.wished ? ' (wished for)' : ''}: ${sayNumber(Number(one.servings.toFixed(1)))} servings`;
      lines.push(`${one.recipe.name}: ${sayCount(Math.ceil(one.servings), 'serving')}.`);
      why.push(
        `${said} for ${meals}. /scale ${one.recipe.name} x${sayNumber(one.factor)} makes ${made}${load}.`,
      );
    }
    if (plan.cook.some((one) => one.fills !== null && one.fills < 0.9))
      why.push('A load filled up costs no more time: what is over goes into stock.');
    for (const alike of groupBy(plan.nobodyCan, ({ slots }) => slots.join()).values()) {
      const who = sayList(alike.map(({ eater }) => name(eater)));
      const { slots: at, other } = alike[0]!;
      const kinds = [...new Set(at.map((id) => trip.slots.find((slot) => slot.id === id)!.meal))];
      lines.push(
        other === null
          ? `No recipe of yours is clear for ${who} at ${sayCount(at.length, 'meal')}.`
          : `No recipe of yours is for ${sayList(kinds)} of ${who}. "${other} is for ${kinds[0]!} too" would change that.`,
      );
      why.push(`No recipe of yours is clear for ${who} and for such a meal: ${sayList(at.map(slotName))}.`);
    }
    if (plan.cook.length > 0) {
      const { hours, recorded } = plan.loadHours;
      const from =
        recorded >= 3
          ? `${sayHours(Math.round(hours))} a load, as your last ${recorded} took`
          : 'about a day a load (common practice, until three of yours are recorded)';
      const late = plan.latestStart < today ? ': that is past, so shorten the list or the trip' : '';
      lines.push(`Start drying by ${sayDayOf(plan.latestStart)}${late}.`);
      why.push(
        `${from[0]!.toUpperCase()}${from.slice(1)}, a day to seal and pack, two days until the seals are checked.`,
      );
      if (!limitKnown)
        lines.push("Tell me your dryer's limit for whole loads: /house dryer 4 trays 20 x 45 cm 4 kg.");
    }
    const most = 3;
    const buttons = plan.cook.slice(0, most).map(({ recipe, factor }) => ({
      label: `Scale ${recipe.name}`,
      request: `/scale ${recipe.name} x${sayNumber(factor)}`,
    }));
    return {
      group: lines.join('\n'),
      why,
      ...(buttons.length === 0 ? {} : { buttons, buttonsForAll: true }),
    };
  },
});
