import { toBuy } from '#core/shopping.ts';
import type { Choice, Reply } from '#core/talk.ts';
import type { House } from '#house/house.ts';
import type { ShopItem, ShoppingList } from '#house/shop-changes.ts';
import { mostPhoneLines, phoneLines, phoneLinesOf } from '#words/phone.ts';
import { sayG } from '#words/say.ts';

/** More buttons than these are turned like pages. Chosen: as for the pack list. */
const mostOnPage = 9;

const plural = (unit: string, count: number) =>
  count === 1 ? unit : /(?:x|s|ch)$/u.test(unit) ? `${unit}es` : unit === 'loaf' ? 'loaves' : `${unit}s`;
const capital = (text: string) => text[0]!.toUpperCase() + text.slice(1);

/** What of a food is said besides what to buy: how much of it is needed, and what is at home. */
function notesOn(house: House, item: ShopItem): string[] {
  const { units } = house.settings;
  const buy = toBuy(item, item.homeG);
  if (!buy || item.needG === null) return [];
  const missingG = item.needG - item.homeG;
  // Tins that hold just what is needed say nothing more by its weight.
  const isMore = item.unit !== '' && buy.count !== null && buy.grams > missingG * 1.02;
  return [
    ...(isMore ? [`${sayG(missingG, units)} needed`] : []),
    ...(item.homeG > 0 ? [`${sayG(item.homeG, units)} at home`] : []),
  ];
}

/** 'Kidney beans: 4 tins of 400 g', 'Carrots: 4, about 240 g', 'Red lentils: 800 g'. */
function sayItem(house: House, item: ShopItem, isShort = false): string {
  const { units } = house.settings;
  const name = capital(item.called);
  const buy = toBuy(item, item.homeG);
  if (!buy) return `${name}: at home`;
  if (item.needG === null)
    return item.kind === 'Not understood' ? `"${item.called}"` : `${name}, no amount told`;
  const notes = isShort ? [] : notesOn(house, item);
  const behind = notes.length === 0 ? '' : ` (${notes.join(', ')})`;
  if (buy.count === null) return `${name}: ${sayG(buy.grams, units)}${behind}`;
  if (item.unit === '')
    return `${name}: ${buy.count}, about ${sayG(item.needG - item.homeG, units)}${behind}`;
  return `${name}: ${buy.count} ${plural(item.unit!, buy.count)} of ${item.size!}${behind}`;
}

/** The foods of a page as a shop has them; what is needed of each goes into the fold where a phone has no room for it. */
function foodLines(house: House, items: readonly ShopItem[], others: readonly string[]) {
  const said = (isShort: boolean) => (item: ShopItem) =>
    `${isDone(item) ? '✓' : '☐'} ${sayItem(house, item, isShort)}`;
  const room = mostPhoneLines - phoneLinesOf(others);
  // As it was made: a list keeps its looks while it is ticked.
  const asMade = items.map((item) => ({ ...item, homeG: 0, isGot: false }));
  if (phoneLinesOf(asMade.map(said(false))) <= room) return { lines: items.map(said(false)), why: [] };
  const why = items.flatMap((item) => {
    const notes = notesOn(house, item);
    return notes.length === 0 ? [] : [`${capital(item.called)}: ${notes.join(', ')}.`];
  });
  return { lines: items.map(said(true)), why };
}

export const isDone = (item: ShopItem): boolean => item.isGot || toBuy(item, item.homeG) === undefined;

/**
 * The list as it stands: what it is for, a page of its foods by where they stand in a shop, and a button for each.
 * @param page counted from 1; beyond the last it is the last
 */
export function shopList(house: House, list: ShoppingList, page: number): Reply & { readonly page: number } {
  const pages = Math.max(1, Math.ceil(list.items.length / mostOnPage));
  const at = Math.min(Math.max(page, 1), pages);
  const here = list.items.slice((at - 1) * mostOnPage, at * mostOnPage);
  const done = list.items.filter(isDone).length;
  const mark = (item: ShopItem) => (isDone(item) ? '✓' : '☐');
  const ticked = `${done} of ${list.items.length} in the basket or at home.`;
  const whole = `To buy for ${list.madeFor}: ${ticked}`;
  // A trip's meals go into the fold where they are many.
  const isLong = phoneLines(whole) > 2 && list.madeFor.includes(' (');
  const head = isLong ? `To buy for ${list.madeFor.split(' (')[0]!}: ${ticked}` : whole;
  const { lines, why: needed } = foodLines(house, here, [head]);
  const why = [...(isLong ? [`For ${list.madeFor}.`] : []), ...needed];
  if (done === list.items.length) lines.push('All there. /shop done puts the list away.');
  const buttons: Choice[] = here.map((item) => ({
    label: `${mark(item)} ${capital(item.called)}`.slice(0, 40),
    request: `/shop ${item.isGot ? 'untick' : 'tick'} ${item.position} page ${at}`,
  }));
  const turns: Choice[] = [
    ...(at > 1 ? [{ label: `◀ ${at - 1}`, request: `/shop page ${at - 1}` }] : []),
    ...(at < pages ? [{ label: `${at + 1} of ${pages} ▶`, request: `/shop page ${at + 1}` }] : []),
  ];
  return {
    group: [head, ...lines].join('\n'),
    ...(why.length === 0 ? {} : { why }),
    buttons: [...buttons, ...turns],
    buttonsForAll: true,
    buttonsStay: true,
    page: at,
  };
}

/** So many foods are told where the list is only looked at. Chosen for a phone. */
const mostPreviewed = 9;

/** What would be bought, told without a list being made. */
export function previewed(house: House, madeFor: string, items: readonly ShopItem[], request: string): Reply {
  const told = items.slice(0, mostPreviewed).map((item) => sayItem(house, item, items.length > 5));
  const folded = items.slice(mostPreviewed).map((item) => sayItem(house, item));
  const more = folded.length === 0 ? [] : [`… and ${folded.length} more, folded below.`];
  return {
    group: [`To buy for ${madeFor}:`, ...told, ...more].join('\n'),
    ...(folded.length === 0 ? {} : { why: folded }),
    buttons: [{ label: 'Make it a list', request }],
    buttonsForAll: true,
  };
}
