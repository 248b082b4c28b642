import { type PackCounted, packsLeft } from '#core/absorber-packs.ts';
import { sayCount, sayNumber } from '#words/say.ts';
import type { House } from './house.ts';
import { sayDayOf } from './trips.ts';

/** What is left of a size, by what was counted and what was sealed since. */
const leftOf = (house: House, pack: PackCounted): number | null =>
  packsLeft(pack, house.pouches.packsUsed(pack.countedAtMs));

/** What is known of the packs: '300 ml: 17 left, bag open since Sat 3 Apr.' @param sizesMl only of these sizes */
export function packLines(house: House, sizesMl?: readonly number[]): string[] {
  return house.settings.absorberPacks
    .filter(({ sizeMl }) => sizesMl === undefined || sizesMl.includes(sizeMl))
    .flatMap((pack) => {
      const left = leftOf(house, pack);
      const said = [
        ...(left === null
          ? []
          : [
              left === 0
                ? 'none left as counted, count anew with /house absorbers 20 x 300 ml'
                : `${sayCount(left, 'pack')} left`,
            ]),
        ...(pack.openedOn === null ? [] : [`bag open since ${sayDayOf(pack.openedOn)}`]),
      ];
      return said.length === 0 ? [] : [`${sayNumber(pack.sizeMl)} ml: ${said.join(', ')}.`];
    });
}
