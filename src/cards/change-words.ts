import { groupBy } from '#core/groups.ts';
import type { PicksPlan } from '#core/picks/problem.ts';
import type { Eater } from '#core/records.ts';
import type { TripProblem } from '#house/trip-problem.ts';
import { saySlot } from '#house/trips.ts';
import { sayCount, sayList } from '#words/say.ts';

/** So many changes are told one by one; more are counted. Chosen for a phone. */
const mostTold = 6;

/** What is not as it was kept: counted, and each change named: 'Sat 5 Jun dinner: Chilli, not Goulash, for Ana and Ben.' */
export function changeLines(
  { trip, problem, dishes }: TripProblem,
  plan: PicksPlan,
  eaters: readonly Eater[],
): { readonly short: string; readonly long: readonly string[] }[] {
  if (problem.before?.was !== 'kept') return [];
  const name = (meal: string | null) => (meal === null ? 'nothing' : (dishes.get(meal)?.name ?? meal));
  const changes = problem.before.seats.flatMap(({ slot, eater, meal }) => {
    const pick = plan.slots.find((s) => s.slot === slot);
    const isThere = problem.slots.find((s) => s.key === slot)?.eaters.includes(eater) ?? false;
    if (!pick || !isThere) return [];
    const now = pick.dishes.find((dish) => dish.eaters.includes(eater))?.meal ?? null;
    const who = eaters.find(({ id }) => id === Number(eater))?.name ?? '?';
    return now === meal ? [] : [{ slot, who, text: `${name(now)}, not ${name(meal)}` }];
  });
  if (changes.length === 0) return [{ short: 'Nothing of what is kept changes.', long: [] }];
  const alike = [...groupBy(changes, ({ slot, text }) => `${slot} ${text}`).values()].map((those) => {
    const slot = trip.slots.find(({ id }) => id === Number(those[0]!.slot))!;
    return `${saySlot(slot)} ${those[0]!.text}, for ${sayList(those.map(({ who }) => who))}`;
  });
  const told = alike.slice(0, mostTold).join('; ');
  const more = alike.length > mostTold ? `; and ${alike.length - mostTold} more` : '';
  const meals = new Set(changes.map(({ slot }) => slot)).size;
  return [
    {
      short: `Other than kept at ${sayCount(meals, 'meal')}.`,
      long: [`Changed from what is kept: ${told}${more}.`],
    },
  ];
}
