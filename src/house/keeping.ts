import { bestByDay, type Kept, keepsMonths, monthsUntilUsed, type StorageSpell } from '#core/bestby.ts';
import type { Code } from '#core/records.ts';
import { fatOfSolids } from '#core/sealing-plan.ts';
import type { Settings } from '#core/settings.ts';
import type { DatedPouch } from '#store/pouches.ts';
import { localDays } from '#words/local-days.ts';
import { sayCodes, sayCount, sayList, sayMonth } from '#words/say.ts';
import { batchSeen } from './figures.ts';
import type { House } from './house.ts';

const monthMs = (365.25 / 12) * 86_400_000;

/** A pouch whose planning date moved. */
interface Moved {
  readonly code: Code;
  readonly was: string;
  readonly is: string;
}

/**
 * What the house told anew reaches what is in stock: another storage temperature from now on, or what its usual pouch
 * is made of. Dates are reckoned anew for every pouch, by where it was kept since it was sealed.
 * @param before the settings as they were
 */
export function redateStock(house: House, before: Settings): Moved[] {
  const now = house.told.all();
  const isMoved = before.storageC !== now.storageC;
  if (isMoved) {
    if (house.told.spells().length === 0) house.told.moved(0, before.storageC);
    house.told.moved(house.nowMs, now.storageC);
  }
  const material = before.pouch?.material === now.pouch?.material ? null : (now.pouch?.material ?? null);
  if (!isMoved && material === null) return [];
  return house.pouches.dated().flatMap((pouch): Moved[] => {
    const isTold = material !== null && pouch.kept?.isUsual === true && pouch.kept.material === null;
    if (!isMoved && !isTold) return [];
    const kept = isTold ? { ...pouch.kept, material, areaCm2: now.pouch?.areaCm2 ?? null } : pouch.kept;
    const is = kept === null ? scaled(house, pouch, before, now) : dateOf(house, pouch, kept, now);
    house.pouches.redate(pouch.id, is, kept);
    return is === pouch.bestByOn ? [] : [{ code: pouch, was: pouch.bestByOn, is }];
  });
}

/** The date by where a pouch was kept since it was sealed. */
function dateOf(house: House, { sealedAtMs }: DatedPouch, kept: Kept, { storageC, zone }: Settings): string {
  const months = monthsUntilUsed(pastOf(house, sealedAtMs), storageC, (tempC) => keepsMonths(kept, tempC));
  return bestByDay(localDays(zone).dayOf(sealedAtMs), months);
}

/** Where it was kept before now, stretch by stretch. */
function pastOf(house: House, sealedAtMs: number): StorageSpell[] {
  const spells = house.told.spells();
  return spells.slice(0, -1).flatMap(({ fromMs, tempC }, i) => {
    const from = Math.max(fromMs, sealedAtMs);
    const to = spells[i + 1]!.fromMs;
    return to > from ? [{ months: (to - from) / monthMs, tempC }] : [];
  });
}

/** A pouch from before it was kept what its date rests on: what is left of its time is longer or shorter alike. */
function scaled(house: House, pouch: DatedPouch, before: Settings, now: Settings): string {
  const today = localDays(now.zone).dayOf(house.nowMs);
  const leftMonths = (Date.parse(pouch.bestByOn) - Date.parse(today)) / monthMs;
  if (leftMonths <= 0) return pouch.bestByOn;
  const { facts } = batchSeen(house, pouch.batch);
  const as: Kept = {
    material: 'foil',
    areaCm2: null,
    isMeasuredDry: false,
    fatFraction: fatOfSolids(facts.totals) ?? 1,
    absorber: true,
    spareMl: null,
  };
  return bestByDay(today, (leftMonths * keepsMonths(as, now.storageC)) / keepsMonths(as, before.storageC));
}

const mostMoved = 4;

/** Which dates moved, those alike together. */
export function movedLines(moved: readonly Moved[]): string[] {
  if (moved.length === 0) return [];
  const groups = new Map<string, Moved[]>();
  for (const one of moved) {
    const key = `${sayMonth(one.was)} → ${sayMonth(one.is)}`;
    groups.set(key, [...(groups.get(key) ?? []), one]);
  }
  const said = [...groups].map(([key, all]) => `${sayCodes(all.map(({ code }) => code))} ${key}`);
  const more = said.length - mostMoved;
  return [
    `Planning dates of ${sayCount(moved.length, 'pouch', 'pouches')} in stock moved: ${sayList([...said.slice(0, mostMoved), ...(more > 0 ? [`${more} more dates (/stock)`] : [])])}. Printed labels show the old ones.`,
  ];
}
