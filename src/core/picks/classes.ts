import { byText } from './order.ts';
import type { Lot } from './problem.ts';

/** Pouches of one class with the same best-by; the cost figures are per pouch. */
export interface Group {
  /** Infinity when there is no date. */
  readonly bestBy: number;
  readonly count: number;
  /** Its twentieths with a minus when it will not keep long after the trip, else 0; and servings × months left. */
  readonly expiringCost: number;
  readonly monthCost: number;
}

/** Lots that are the same to eat and to carry, counted together. */
export interface Class {
  readonly meal: number;
  readonly size: number;
  /** Dry weight of a pouch, tenths of a gram. */
  readonly dryTenths: number;
  /** Ascending by best-by; only those that outlive the first day. */
  readonly groups: readonly Group[];
  readonly lots: readonly Lot[];
  readonly stock: number;
  /** Whether some best-by falls inside the trip. */
  readonly dated: boolean;
  /** Cost of the oldest n pouches, for classes that are not dated. */
  readonly expiringSums: readonly number[];
  readonly monthSums: readonly number[];
}

const monthDays = 30;
/** A pouch without a date stands behind every dated one. Chosen: a hundred years. */
const undatedDays = 36500;

/** A pouch that keeps no longer than this after the trip expires soon. Chosen. */
const soonDays = 60;

/** Days and months a pouch would still keep after the trip; never below 0. */
export function daysLeftAfter(bestBy: number | null, lastDay: number): number {
  return bestBy === null ? undatedDays : Math.max(0, Math.min(undatedDays, bestBy - lastDay));
}

export const monthsOf = (daysLeft: number): number => Math.floor(daysLeft / monthDays);

/** The lots as classes, by meal, size and weight; only those that outlive the first day. */
export function makeClasses(
  lots: readonly Lot[],
  meals: readonly string[],
  firstDay: number,
  lastDay: number,
): Class[] {
  const byKey = new Map<string, Lot[]>();
  for (const lot of lots) {
    const key = JSON.stringify([lot.meal, lot.servingsTwentieths, lot.dryG, lot.waterMl]);
    byKey.set(key, [...(byKey.get(key) ?? []), lot]);
  }
  const classes = [...byKey.values()].map((members): Class => {
    const { meal, servingsTwentieths: size, dryG } = members[0]!;
    const kept = members.filter((l) => (l.bestBy ?? Infinity) >= firstDay);
    const sorted = [...kept].sort(
      (a, b) => (a.bestBy ?? Infinity) - (b.bestBy ?? Infinity) || byText(a.code, b.code),
    );
    const groups: Group[] = [];
    const expiringSums = [0];
    const monthSums = [0];
    for (const lot of sorted) {
      const left = daysLeftAfter(lot.bestBy, lastDay);
      const group = {
        bestBy: lot.bestBy ?? Infinity,
        count: lot.pouches.length,
        expiringCost: left <= soonDays ? -size : 0,
        monthCost: size * monthsOf(left),
      };
      const last = groups.at(-1);
      if (last && last.bestBy === group.bestBy)
        groups[groups.length - 1] = { ...last, count: last.count + group.count };
      else groups.push(group);
      for (let i = 0; i < group.count; i += 1) {
        expiringSums.push(expiringSums.at(-1)! + group.expiringCost);
        monthSums.push(monthSums.at(-1)! + group.monthCost);
      }
    }
    return {
      meal: meals.indexOf(meal),
      size,
      dryTenths: Math.round(dryG * 10),
      groups,
      lots: sorted,
      stock: groups.reduce((sum, g) => sum + g.count, 0),
      dated: groups.some((g) => g.bestBy < lastDay),
      expiringSums,
      monthSums,
    };
  });
  const water = (c: Class): number => c.lots[0]?.waterMl ?? -1;
  return classes
    .filter((c) => c.stock > 0)
    .sort((a, b) => a.meal - b.meal || a.size - b.size || a.dryTenths - b.dryTenths || water(a) - water(b));
}
