import { DateTime } from 'luxon';
import type { Pack } from '#core/absorber-packs.ts';
import type { Batch, Code } from '#core/records.ts';
import type { Settings } from '#core/settings.ts';

const ounceG = 28.349523125;

/** A figure without needless digits: 3 significant ones below 100, whole above. */
export function sayNumber(value: number): string {
  const size = Math.abs(value);
  if (size >= 100 || Number.isInteger(value)) return String(Math.round(value));
  return String(Number(value.toFixed(size >= 10 ? 1 : 2)));
}

/** Grams as a kitchen scale shows them, with ounces first for a household that weighs so. */
export function sayG(g: number, units: Settings['units'] = 'grams'): string {
  const grams = Math.abs(g) >= 10 ? String(Math.round(g)) : String(Number(g.toFixed(1)));
  if (units === 'grams') return Math.abs(g) >= 10_000 ? `${Number((g / 1000).toFixed(2))} kg` : `${grams} g`;
  const ounces = g / ounceG;
  if (Math.abs(ounces) < 32) return `${Number(ounces.toFixed(1))} oz (${grams} g)`;
  return `${Number((ounces / 16).toFixed(2))} lb (${grams} g)`;
}

/** Millilitres to what a jug can measure: the nearest 5 ml. */
export function sayMl(ml: number): string {
  return `${roundedMl(ml)} ml`;
}

/** The nearest 5 ml, and never zero for water that is needed. */
export function roundedMl(ml: number): number {
  return Math.max(5, Math.round(ml / 5) * 5);
}

const eighths = ['', '⅛', '¼', '⅜', '½', '⅝', '¾', '⅞'];

/** Cups to the nearest eighth: '1⅜ cups'. */
export function sayCups(ml: number, cupMl: number): string {
  const parts = Math.max(1, Math.round((ml / cupMl) * 8));
  const whole = Math.floor(parts / 8);
  const words = `${whole > 0 ? whole : ''}${eighths[parts % 8]}`;
  return `${words} ${parts > 8 ? 'cups' : 'cup'}`;
}

/** Water as a jug and as a cup show it: '355 ml (1½ cups)'. */
export function sayWater(ml: number, settings: Settings): string {
  return `${sayMl(ml)} (${sayCups(ml, settings.cupMl)})`;
}

/** Until a meal is rated one starts with less than it gave up: pieces and sauces take less back. Chosen. */
const startShare = 0.85;

/** What to start with where nobody rated the meal yet, ml. */
export const startMl = (ml: number): number => roundedMl(ml * startShare);

/** The same in short, for where nobody pours yet: '250 to 295 ml'. */
export function sayPourInShort(ml: number, isRated: boolean): string {
  const isOne = isRated || startMl(ml) === roundedMl(ml);
  return isOne ? sayMl(ml) : `${startMl(ml)} to ${sayMl(ml)}`;
}

/** Water to pour: a figure once the meal was rated, until then where to start and how far to go. */
export function sayPour(ml: number, isRated: boolean, settings: Settings): string {
  const isOne = isRated || startMl(ml) === roundedMl(ml);
  return isOne ? sayWater(ml, settings) : `start with ${startMl(ml)} ml, up to ${sayWater(ml, settings)}`;
}

/** The same where there is little room: '240 to 280 ml (1⅛ cups)'. */
export function sayPourShort(ml: number, isRated: boolean, settings: Settings): string {
  const isOne = isRated || startMl(ml) === roundedMl(ml);
  return isOne ? sayWater(ml, settings) : `${startMl(ml)} to ${sayWater(ml, settings)}`;
}

/** 'a, b and c'. */
export function sayList(items: readonly string[]): string {
  if (items.length <= 1) return items.join('');
  return `${items.slice(0, -1).join(', ')} and ${items.at(-1)!}`;
}

/** 'Sat 3 May 2026'. */
export function sayDay(ms: number, zone: string): string {
  return DateTime.fromMillis(ms, { zone }).setLocale('en-GB').toFormat('ccc d LLL yyyy');
}

/** 'Sat 3 May 18:20'. */
export function sayMoment(ms: number, zone: string): string {
  return DateTime.fromMillis(ms, { zone }).setLocale('en-GB').toFormat('ccc d LLL HH:mm');
}

/** '2027-04-01 18:20', as a request takes it. */
export function isoMoment(ms: number, zone: string): string {
  return DateTime.fromMillis(ms, { zone }).toFormat('yyyy-MM-dd HH:mm');
}

/** '18:20'. */
export function sayClock(ms: number, zone: string): string {
  return DateTime.fromMillis(ms, { zone }).toFormat('HH:mm');
}

/** 'May 2029' from an ISO day. */
export function sayMonth(iso: string): string {
  return DateTime.fromISO(iso, { zone: 'UTC' }).setLocale('en-GB').toFormat('LLL yyyy');
}

/** 'B4'; 'M5' for what is filled from several things. */
export function sayBatch({ no, mix }: Pick<Batch, 'no' | 'mix'>): string {
  return `${mix?.bought ? 'S' : mix ? 'M' : 'B'}${no}`;
}

/** 'B4-2'; 'M5-1' for a pouch that is filled from several things, 'S6-1' for a piece that was bought. */
export function sayCode({ batch, no, isMixed, isBought }: Code): string {
  return `${isBought ? 'S' : isMixed ? 'M' : 'B'}${batch}-${no}`;
}

/** The code that `sayCode` wrote. */
export function readCode(code: string): Code {
  const [batch, no] = code.slice(1).split('-').map(Number) as [number, number];
  const isBought = code.startsWith('S');
  return { batch, no, isMixed: isBought || code.startsWith('M'), ...(isBought ? { isBought } : {}) };
}

/** '3 pouches'; pieces where all of it was bought. */
export const sayPieces = (some: readonly Code[]): string =>
  some.length > 0 && some.every(({ isBought }) => isBought)
    ? sayCount(some.length, 'piece')
    : sayCount(some.length, 'pouch', 'pouches');

/** 'B4-1', or 'B4-1 to B4-6' where numbers run on; in their order. */
export function sayCodes(codes: readonly Code[]): string {
  const runs: { first: Code; to: number }[] = [];
  for (const code of codes.toSorted((a, b) => a.batch - b.batch || a.no - b.no)) {
    const last = runs.at(-1);
    if (last && last.first.batch === code.batch && last.to === code.no - 1) last.to = code.no;
    else runs.push({ first: code, to: code.no });
  }
  return sayList(
    runs.flatMap(({ first, to }) => {
      const length = to - first.no + 1;
      if (length < 3) return Array.from({ length }, (_, i) => sayCode({ ...first, no: first.no + i }));
      return [`${sayCode(first)} to ${sayCode({ ...first, no: to })}`];
    }),
  );
}

/** '300 ml', '2 x 300 ml', '500 + 300 ml'. */
export function sayPacks(packs: readonly Pack[]): string {
  const said = packs.map(({ sizeMl, count }) => `${count > 1 ? `${count} x ` : ''}${sayNumber(sizeMl)}`);
  return `${said.join(' + ')} ml`;
}

/** To the half, from ten on to the whole: '½', '3½', '12'. Nobody fills a bowl with 0.87 of a serving. */
export function sayHalves(value: number): string {
  if (value >= 10) return String(Math.round(value));
  const halves = Math.max(1, Math.round(value * 2));
  const whole = Math.floor(halves / 2);
  return `${whole > 0 ? whole : ''}${halves % 2 === 1 ? '½' : ''}`;
}

/** '1 serving', 'about 7½ servings'. */
export function sayServings(servings: number): string {
  const said = sayHalves(servings);
  const steps = servings < 10 ? servings * 2 : servings;
  const isExact = steps > 0.5 && Math.abs(steps - Math.round(steps)) < 0.02;
  return `${isExact ? '' : 'about '}${said} serving${said === '1' || said === '½' ? '' : 's'}`;
}

/** For the fold: '1.19 servings'. */
export function sayServingsExactly(servings: number): string {
  const said = sayNumber(servings);
  return `${said} serving${said === '1' ? '' : 's'}`;
}

/** '2 h 20 min', '24 h', '45 min'. */
export function sayHours(hours: number): string {
  const minutes = Math.round(hours * 60);
  const parts = [`${Math.floor(minutes / 60)} h`, `${minutes % 60} min`];
  return parts.filter((part) => !part.startsWith('0 ')).join(' ') || '0 min';
}

/** '1 pouch', '3 pouches'. */
export function sayCount(count: number, one: string, many = `${one}s`): string {
  return `${count} ${count === 1 ? one : many}`;
}
