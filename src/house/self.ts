import type { Eater } from '#core/records.ts';
import { nameKey } from './figures.ts';
import type { House } from './house.ts';

/** The eater that a member is: the one recorded as theirs, else the one of their name whom nobody else is. */
export function ownEater(house: Pick<House, 'eaters' | 'member'>): Eater | undefined {
  const here = house.eaters.here();
  return (
    here.find((eater) => eater.member === house.member.id) ??
    here.find((eater) => eater.member === null && nameKey(eater.name) === nameKey(house.member.name))
  );
}
