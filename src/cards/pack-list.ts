import { groupBy } from '#core/groups.ts';
import type { Trip } from '#core/records.ts';
import type { Choice, Reply } from '#core/talk.ts';
import { brokenPromises } from '#house/broken.ts';
import type { House } from '#house/house.ts';
import { markedWith } from '#house/marks.ts';
import { heldFor, type HeldWithPouch } from '#house/packing.ts';
import { toBring, tripSums } from '#house/trip-sums.ts';
import { sayDayOf } from '#house/trips.ts';
import { servedOf } from './paper-facts.ts';
import { sayCode, sayCodes, sayCount, sayG } from '#words/say.ts';

/** More buttons than these are turned like pages. Chosen: what fits a phone with its meals. */
const mostOnPage = 9;

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
  const broken = brokenPromises(house, trip);
  const lines = [
    `${trip.place}: ${packed} of ${sayCount(all.length, 'pouch', 'pouches')} packed.`,
    ...groups.map(({ slot, held }) => `${inShort(slot)}: ${byMeal(house, held)}.`),
    ...(packed === all.length ? ['All packed. After the trip: /back.'] : []),
    ...toBring(house, tripSums(house, servedOf(trip, all))),
    ...broken,
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
    ...(broken.length > 0 ? [{ label: 'Plan anew', request: `/pick ${place}` }] : []),
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

/** 'Fri 4 dinner': a trip is within a month or two. */
const inShort = ({ onDay, meal }: Trip['slots'][number]): string =>
  `${sayDayOf(onDay).split(' ').slice(0, 2).join(' ')} ${meal}`;

/** 'Barley soup B1-1 and B1-2 ✓; rice B2-1 (RAW) ☐': each meal named once; of some that are packed, how many. */
function byMeal(house: House, held: readonly HeldWithPouch[]): string {
  return [...groupBy(held, ({ pouch }) => pouch.meal)]
    .map(([meal, of]) => {
      const pouches = of.map(({ pouch }) => pouch);
      const packed = of.filter((one) => one.held.packed).length;
      const state = packed === 0 ? '☐' : packed === of.length ? '✓' : `${packed} of ${of.length} ✓`;
      return `${meal} ${sayCodes(pouches)}${markedWith(house, pouches)} ${state}`;
    })
    .join('; ');
}
