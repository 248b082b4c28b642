import { plainWord } from '#core/avoidance.ts';
import type { Eater } from '#core/records.ts';
import { Refusal } from '#core/refusal.ts';
import { avoidanceNamed, standsForMore } from '#foods/avoided.ts';
import { Ambiguous } from '#words/reading.ts';
import { sayList } from '#words/say.ts';
import type { House } from './house.ts';

/** The age from which somebody may lift what must never be served. */
export const grownUpYears = 18;

export const isChild = ({ kind, ageYears }: Pick<Eater, 'kind' | 'ageYears'>): boolean =>
  kind === 'child' || (ageYears !== null && ageYears < grownUpYears);

/** Whoever writes, as an eater; undefined for a member who is none. */
export const selfOf = (house: House): Eater | undefined =>
  house.eaters.here().find((eater) => eater.member === house.member.id);

const meansSame = (a: string, b: string) =>
  plainWord(a) === plainWord(b) || JSON.stringify(avoidanceNamed(a)) === JSON.stringify(avoidanceNamed(b));

/** The words under which a food is kept from somebody, whatever it is called now. */
export const keptAs = (eater: Eater | undefined, words: string): string | undefined =>
  [...(eater?.never ?? []), ...(eater?.dislikes ?? [])].find((kept) => meansSame(kept, words));

/** Whether the narrow reading of a food lets more pass than the wide one that holds now. */
export const isNarrowing = (eater: Eater | undefined, words: string): boolean =>
  eater !== undefined && eater.never.includes(words) && !eater.exact.includes(words) && standsForMore(words);

/** What was kept from somebody before and is not, or only in part, now. */
export function barsLost(
  before: readonly Eater[],
  after: readonly Eater[],
): { name: string; lost: string[] }[] {
  return before.flatMap(({ id, name, never, exact }) => {
    const now = after.find((eater) => eater.id === id);
    const lost = never.filter(
      (words) => !now?.never.includes(words) || (now.exact.includes(words) && !exact.includes(words)),
    );
    return lost.length > 0 ? [{ name, lost }] : [];
  });
}

/**
 * What must never be served is lifted by a tap of a grown-up, never by what is typed: a slip of the pen, a child at
 * the telephone or a question read as a statement would be enough.
 * @param lifted what is to be allowed, as kept
 * @param request the request again, for the button
 * @throws Refusal for a child, Ambiguous with the button where nothing was tapped yet
 */
export function liftedByTap(
  house: House,
  name: string,
  lifted: readonly string[],
  isSure: boolean,
  request: string,
): void {
  if (lifted.length === 0) return;
  const self = selfOf(house);
  if (self !== undefined && isChild(self))
    throw new Refusal(
      'for-a-grown-up',
      `${sayList(lifted)} must never be served to ${name}. Only a grown-up of the household may change that, and ${self.name} is recorded as a child.`,
    );
  if (house.tapped && isSure) return;
  const age =
    self?.ageYears === null || self === undefined
      ? ` No age is recorded for ${house.member.name}, who counts as a grown-up.`
      : '';
  throw new Ambiguous(
    `${sayList(lifted)} must never be served to ${name}. Nothing is changed yet: a grown-up taps if that is over.${age}`,
    [{ label: `${name} may have ${sayList(lifted)}`, request: `${request} sure`.trim() }],
  );
}
