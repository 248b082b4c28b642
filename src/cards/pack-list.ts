import type { Trip } from '#core/records.ts';
import type { Choice, Reply } from '#core/talk.ts';
import { brokenPromises } from '#house/broken.ts';
import type { House } from '#house/house.ts';
import { markedWith } from '#house/marks.ts';
import { heldFor, type HeldWithPouch } from '#house/packing.ts';
import { toBring, tripSums } from '#house/trip-sums.ts';
import { saySlot } from '#house/trips.ts';
import { servedOf } from './paper-facts.ts';
import { sayCode, sayCount, sayG } from '#words/say.ts';

/** More buttons than these are turned like pages. Chosen: three rows of four. */
const mostOnPage = 12;

interface Page {
  readonly groups: readonly SlotGroup[];
}
interface SlotGroup {
  readonly slot: Trip['slots'][number];
  readonly held: readonly HeldWithPouch[];
}

/**
 * The pack list of a trip: what is packed, a page of its meals, and a button for each pouch.
 * @param page counted from 1; beyond the last it is the last
 */
export function packList(house: House, trip: Trip, page: number): Reply & { readonly page: number } {
  const all = heldFor(house, trip);
  const packed = all.filter(({ held }) => held.packed).length;
  const pages = intoPages(trip, all);
  const at = Math.min(Math.max(page, 1), pages.length);
  const { groups } = pages[at - 1]!;
  const place = `"${trip.place}"`;
  const mark = ({ held, pouch }: HeldWithPouch) => `${held.packed ? '✓' : '☐'} ${sayCode(pouch)}`;
  const lines = [
    `${trip.place}: ${packed} of ${sayCount(all.length, 'pouch', 'pouches')} packed.`,
    ...groups.map(({ slot, held }) => `${saySlot(slot)}: ${byMeal(house, held, mark)}`),
    ...(packed === all.length ? ['All packed. After the trip: /back.'] : []),
    ...toBring(house, tripSums(house, servedOf(trip, all))),
    ...brokenPromises(house, trip),
  ];
  const buttons: Choice[] = groups.flatMap(({ held }) =>
    held.map((one) => ({
      label: mark(one),
      request: `/pack ${place} ${one.held.packed ? 'not ' : ''}${sayCode(one.pouch)} page ${at}`,
    })),
  );
  const turns: Choice[] = [
    ...(at > 1 ? [{ label: `◀ ${at - 1}`, request: `/pack ${place} page ${at - 1}` }] : []),
    ...(at < pages.length
      ? [{ label: `${at + 1} of ${pages.length} ▶`, request: `/pack ${place} page ${at + 1}` }]
      : []),
    ...(packed < all.length ? [{ label: 'All', request: `/pack ${place} all page ${at}` }] : []),
  ];
  const g = (some: readonly HeldWithPouch[]) =>
    sayG(
      some.reduce((sum, { pouch }) => sum + pouch.dryG, 0),
      house.settings.units,
    );
  return {
    group: lines.join('\n'),
    why: [
      `${g(all)} in all${packed === 0 || packed === all.length ? '' : `, ${g(all.filter(({ held }) => held.packed))} of it packed`}.`,
    ],
    buttons: [...buttons, ...turns],
    buttonsForAll: true,
    buttonsStay: true,
    page: at,
  };
}

/** Meals in their order, as many on a page as have room; one with very many pouches goes on overleaf. */
function intoPages(trip: Trip, all: readonly HeldWithPouch[]): Page[] {
  const groups = trip.slots
    .map((slot) => ({ slot, held: all.filter(({ held }) => held.slot === slot.id) }))
    .flatMap(({ slot, held }) =>
      Array.from({ length: Math.ceil(held.length / mostOnPage) }, (_, i) => ({
        slot,
        held: held.slice(i * mostOnPage, (i + 1) * mostOnPage),
      })),
    );
  const pages: { groups: SlotGroup[]; count: number }[] = [];
  for (const group of groups) {
    const last = pages.at(-1);
    if (last && last.count + group.held.length <= mostOnPage) {
      last.groups.push(group);
      last.count += group.held.length;
    } else pages.push({ groups: [group], count: group.held.length });
  }
  return pages;
}

/** 'Barley soup ✓ B1-1, ☐ B1-2; rice ☐ B2-1 (RAW)': each meal named once. */
function byMeal(house: House, held: readonly HeldWithPouch[], mark: (one: HeldWithPouch) => string): string {
  const meals = [...new Set(held.map(({ pouch }) => pouch.meal))];
  return meals
    .map((meal) => {
      const of = held.filter(({ pouch }) => pouch.meal === meal);
      return `${meal} ${of.map((one) => `${mark(one)}${markedWith(house, [one.pouch])}`).join(', ')}`;
    })
    .join('; ');
}
