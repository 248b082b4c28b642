import { table } from './table.ts';
import { DateTime } from 'luxon';
import { type SlotMeal, slotMeals } from '#core/records.ts';
import { Refusal } from '#core/refusal.ts';
import { celsiusFromF } from '#core/units.ts';
import { oneDay } from './days.ts';
import { fold } from './near.ts';
import { type Names, optional, part } from './parts.ts';
import { Ambiguous, type Reading } from './reading.ts';
import { weekdayNamed } from './weekday.ts';

const mealWords = table<SlotMeal>({
  breakfast: 'breakfast',
  breakfasts: 'breakfast',
  lunch: 'lunch',
  lunches: 'lunch',
  midday: 'lunch',
  dinner: 'dinner',
  dinners: 'dinner',
  supper: 'dinner',
  evening: 'dinner',
  morning: 'breakfast',
  noon: 'lunch',
});

/** The meal of the day that a word names. */
export function slotMealNamed(word: string): SlotMeal | undefined {
  return mealWords[word];
}

/** The word in front of a day that was taken already: 'from friday dinner' begins with dinner. */
function beforeDay(reading: Reading, at: number): string {
  const day = reading.all[at];
  const isDay = day?.is === 'word' && weekdayNamed(day.plain) >= 0;
  return isDay ? (reading.all[at - 1]?.plain ?? '') : '';
}

export interface MealsOfTrip {
  /** Meals of a whole day. */
  readonly each: readonly SlotMeal[];
  /** The first meal of the first day and the last of the last. */
  readonly first: SlotMeal;
  readonly last: SlotMeal;
  /** Only the first or the last meal of all was told: 'from friday dinner'. */
  readonly edges?: { readonly first: SlotMeal | undefined; readonly last: SlotMeal | undefined };
  /** What is named comes to the meals that are planned, or goes: 'add lunches', 'no breakfasts'. */
  readonly change?: 'added' | 'gone';
}

const addWords = ['add', 'plus', 'also', 'extra'];
const goneWords = ['no', 'without', 'drop', 'skip', 'remove', 'minus', 'not'];

/**
 * Which meals: 'dinner breakfast', 'all meals', 'from dinner to breakfast'. Named in the order dinner, breakfast
 * they are read as from dinner on the first day to breakfast on the last, as one sleeps in between.
 */
export const mealsOfTrip = optional(
  part<MealsOfTrip>('which meals, such as from dinner to breakfast', (reading) => {
    let first: SlotMeal | undefined;
    let last: SlotMeal | undefined;
    const named: SlotMeal[] = [];
    let change: MealsOfTrip['change'];
    for (let i = 0; i < reading.all.length; i++) {
      const token = reading.at(i);
      const meal = token?.is === 'word' ? slotMealNamed(token.plain) : undefined;
      if (meal === undefined) continue;
      const lead = reading.at(i - 1)?.plain ?? beforeDay(reading, i - 1);
      if (['from', 'starting', 'start', 'starts', 'after', 'leave', 'leaving'].includes(lead)) {
        first = meal;
        reading.take(i - 1);
      } else if (
        ['to', 'until', 'till', 'through', '-', 'ends', 'end'].includes(lead) &&
        // 'Until Sunday breakfast' names the last meal, the day being read already; 'Friday to Sunday dinner' one of each day.
        (reading.at(i - 1) !== undefined || first !== undefined || /^(?:until|till|ends?)$/.test(lead))
      ) {
        last = meal;
        reading.take(i - 1);
      } else {
        if (!named.includes(meal)) named.push(meal);
        const near = [i - 1, i - 2].find((k) =>
          [...addWords, ...goneWords].includes(reading.at(k)?.plain ?? ''),
        );
        if (near !== undefined) {
          change = addWords.includes(reading.all[near]!.plain) ? 'added' : 'gone';
          reading.take(near);
        } else if (/^(?:too|also)$/.test(reading.at(i + 1)?.plain ?? '')) {
          change = 'added';
          reading.take(i + 1);
        }
      }
      reading.take(i);
    }
    if (named.length + Number(first !== undefined) + Number(last !== undefined) > 0)
      reading.takeWords('only', 'just');
    const all = reading.keyword('meals');
    if (all !== undefined && reading.at(all - 1)?.plain === 'all') reading.take(all - 1);
    if (named.length === 0 && first === undefined && last === undefined && all === undefined)
      return undefined;
    const rank = (meal: SlotMeal) => slotMeals.indexOf(meal);
    const overnight = named.length > 1 && rank(named[0]!) > rank(named.at(-1)!);
    const each =
      named.length === 0
        ? [...slotMeals]
        : slotMeals.filter((m) => named.includes(m) || m === first || m === last);
    return {
      each,
      first: first ?? (overnight ? named[0]! : each[0]!),
      last: last ?? (overnight ? named.at(-1)! : each.at(-1)!),
      ...(change === undefined ? {} : { change }),
      ...(named.length === 0 && all === undefined ? { edges: { first, last } } : {}),
    };
  }),
);

/** The slots of a trip: every wanted meal from the first of the first day to the last of the last. */
export function slotsOf(
  startsOn: string,
  endsOn: string,
  meals: MealsOfTrip,
): { onDay: string; meal: SlotMeal }[] {
  const slots: { onDay: string; meal: SlotMeal }[] = [];
  const rank = (meal: SlotMeal) => slotMeals.indexOf(meal);
  for (
    let day = DateTime.fromISO(startsOn, { zone: 'UTC' });
    day.toISODate()! <= endsOn;
    day = day.plus({ days: 1 })
  ) {
    const onDay = day.toISODate()!;
    for (const meal of meals.each) {
      if (onDay === startsOn && rank(meal) < rank(meals.first)) continue;
      if (onDay === endsOn && rank(meal) > rank(meals.last)) continue;
      slots.push({ onDay, meal });
    }
  }
  return slots;
}

/** Somebody's own days on a trip: 'Rosa from saturday', 'Ben to friday dinner', 'Rosa only saturday', 'without Ben'. */
export interface Coming {
  readonly eater: string;
  readonly from: { readonly onDay: string; readonly meal: SlotMeal | null } | null;
  readonly to: { readonly onDay: string; readonly meal: SlotMeal | null } | null;
}

export interface Company {
  readonly everybody: boolean;
  readonly coming: readonly Coming[];
  readonly notComing: readonly string[];
  /** There, but not at this meal of the day. */
  readonly away?: readonly { readonly eater: string; readonly meal: SlotMeal }[];
}

const until = ['to', 'until', 'till', 'leaves', 'leaving'];
const since = ['from', 'comes', 'joins', 'arrives', 'since'];
const just = ['only', 'just', 'on'];

const wordsOf = new WeakMap<readonly string[], readonly { name: string; words: string[] }[]>();

/** Names with their folded words, the longest first; worked out once for each list. */
function inWords(names: readonly string[]) {
  const known = wordsOf.get(names);
  if (known) return known;
  const list = names
    .toSorted((a, b) => b.length - a.length)
    .map((name) => ({ name, words: fold(name).split(' ') }));
  wordsOf.set(names, list);
  return list;
}

/** An eater's name that starts at an index, in full; the longest first. */
function eaterAt(
  reading: Reading,
  index: number,
  names: readonly string[],
): { name: string; indexes: number[] } | undefined {
  const quoted = reading.at(index);
  if (quoted?.is === 'quoted') {
    const name = names.find((one) => fold(one) === fold(quoted.inside));
    return name === undefined ? undefined : { name, indexes: [index] };
  }
  for (const { name, words } of inWords(names)) {
    const indexes = words.map((_, k) => index + k);
    if (indexes.every((i, k) => reading.at(i) !== undefined && fold(reading.all[i]!.plain) === words[k]))
      return { name, indexes };
  }
  return firstName(reading, index, names);
}

/** One word of a longer name, where it is named as somebody: 'without Ben' for Ben Lee, unless there are two. */
function firstName(reading: Reading, index: number, names: readonly string[]) {
  const token = reading.at(index)!;
  const lead = reading.all[index - 1]?.plain ?? '';
  if (token.is !== 'word' || !['for', 'with', 'without', 'except', 'minus', 'not', 'and', ','].includes(lead))
    return undefined;
  const own = names.filter((name) => fold(name).split(' ').includes(fold(token.plain)));
  if (own.length === 0) return undefined;
  if (own.length === 1) return { name: own[0]!, indexes: [index] };
  throw new Ambiguous(
    `"${token.typed}" could be any of ${own.length} eaters. Which is meant?`,
    own.slice(0, 8).map((name) => ({
      label: name,
      request: reading.rewritten([
        { from: token.from, to: token.to, into: `"${name.replaceAll('"', "'")}"` },
      ]),
    })),
  );
}

function moment(reading: Reading, at: number, names: Names, startsOn: string) {
  const view = reading.without([...reading.left()].filter((i) => i < at || i > at + 3));
  const onDay = oneDay(() => startsOn).read(view, names);
  if (onDay === undefined) return undefined;
  const next = [...view.left()].find(
    (i) => i >= at && i <= at + 3 && slotMealNamed(view.all[i]!.plain) !== undefined,
  );
  const meal = next === undefined ? null : slotMealNamed(view.all[next]!.plain)!;
  for (let i = at; i <= Math.min(at + 3, reading.all.length - 1); i++) {
    if (view.at(i) === undefined || i === next) reading.take(i);
  }
  return { onDay, meal };
}

/**
 * Who comes, and when. Read after the trip's own days and before its meals, so that 'Rosa from saturday dinner'
 * belongs to Rosa.
 * @param startsOn the trip's first day, ISO
 */
export function readCompany(reading: Reading, names: Names, startsOn: string, endsOn: string): Company {
  const coming: Coming[] = [];
  const notComing: string[] = [];
  const away: { eater: string; meal: SlotMeal }[] = [];
  let everybody = false;
  let lastExcluded = -1;
  for (let i = 0; i < reading.all.length; i++) {
    const token = reading.at(i);
    if (!token) continue;
    if (
      ['all', 'everybody', 'everyone', 'us'].includes(token.plain) &&
      reading.at(i + 1)?.plain !== 'meals'
    ) {
      everybody = true;
      reading.take(i);
      const count = reading.at(i + 1);
      if (count?.is === 'number' && count.value === names.eaters.length) reading.take(i + 1);
      continue;
    }
    if (token.is === 'number' && /^(?:people|persons|adults|eaters)$/.test(reading.at(i + 1)?.plain ?? '')) {
      if (token.value !== names.eaters.length)
        throw new Refusal(
          'who-comes',
          `I read ${token.typed} ${reading.at(i + 1)!.typed}, but not who: name them, such as "for ${names.eaters.slice(0, 2).join(' and ')}", or "for all".`,
        );
      everybody = true;
      reading.take(i, i + 1);
      continue;
    }
    const isMe = ['me', 'myself'].includes(token.plain);
    const found = isMe ? { name: names.me, indexes: [i] } : eaterAt(reading, i, names.eaters);
    if (!found) continue;
    let lead = i - 1;
    while (['and', ',', '&', 'or'].includes(reading.all[lead]?.plain ?? '')) lead -= 1;
    const left = ['without', 'not', 'except', 'minus', 'but'].includes(reading.at(lead)?.plain ?? '');
    const behindAnother = lead < i - 1 && lead === lastExcluded;
    reading.take(...found.indexes);
    const end = found.indexes.at(-1)!;
    if (left || behindAnother) {
      const meal = mealBehind(reading, end + 1);
      if (meal) away.push({ eater: found.name, meal });
      else notComing.push(found.name);
      lastExcluded = end;
      continue;
    }
    coming.push({ eater: found.name, ...daysOf(reading, end + 1, names, startsOn) });
  }
  for (const word of ['without', 'except', 'minus']) reading.keyword(word);
  for (const { eater, from, to } of coming) {
    if (from && to && from.onDay > to.onDay)
      throw new Refusal('bad-days', `${eater} would leave before coming.`);
    const outside = [from, to].find((m) => m !== null && (m.onDay < startsOn || m.onDay > endsOn));
    if (outside)
      throw new Refusal(
        'outside-trip',
        `${outside.onDay} is not a day of this trip, which goes from ${startsOn} to ${endsOn}.`,
      );
  }
  return { everybody, coming, notComing, ...(away.length > 0 ? { away } : {}) };
}

/** 'At breakfast', 'from the dinners', behind somebody who is not there then. */
function mealBehind(reading: Reading, at: number): SlotMeal | undefined {
  let index = at;
  while (/^(?:at|for|from|of|the|all)$/.test(reading.at(index)?.plain ?? '')) index += 1;
  const meal = slotMealNamed(reading.at(index)?.plain ?? '');
  if (index === at || meal === undefined) return undefined;
  for (let i = at; i <= index; i++) reading.take(i);
  return meal;
}

function daysOf(reading: Reading, at: number, names: Names, startsOn: string): Omit<Coming, 'eater'> {
  let index = at;
  let from: Coming['from'] = null;
  let to: Coming['to'] = null;
  for (let turn = 0; turn < 3; turn++) {
    const word = reading.at(index)?.plain ?? '';
    const kind = since.includes(word)
      ? 'from'
      : until.includes(word)
        ? 'to'
        : just.includes(word)
          ? 'just'
          : undefined;
    if (!kind) break;
    let start = index + 1;
    if (['on', 'from', 'to'].includes(reading.at(start)?.plain ?? '')) start += 1;
    const when = moment(reading, start, names, startsOn);
    if (!when) break;
    for (let i = index; i < start; i++) reading.take(i);
    if (kind === 'from' || kind === 'just') from = when;
    if (kind === 'to' || kind === 'just') to = when;
    while (index < reading.all.length && reading.at(index) === undefined) index += 1;
  }
  return { from, to };
}

/** Whether an eater's own days hold a slot. */
export function isThere(
  { from, to }: Omit<Coming, 'eater'>,
  slot: { onDay: string; meal: SlotMeal },
): boolean {
  const rank = (meal: SlotMeal) => slotMeals.indexOf(meal);
  if (
    from &&
    (slot.onDay < from.onDay ||
      (slot.onDay === from.onDay && from.meal !== null && rank(slot.meal) < rank(from.meal)))
  )
    return false;
  return !(
    to &&
    (slot.onDay > to.onDay ||
      (slot.onDay === to.onDay && to.meal !== null && rank(slot.meal) > rank(to.meal)))
  );
}

/** The temperature of the water before it is heated: 'water 8 C'; or 'snow'. */
export const startWater = optional(
  part<{ startC: number; fromSnow: boolean }>("the water's temperature, such as water 8 C", (reading) => {
    if (reading.keyword('snow') !== undefined) return { startC: 0, fromSnow: true };
    for (const index of reading.left()) {
      const token = reading.all[index]!;
      if (!['water', 'stream'].includes(reading.at(index - 1)?.plain ?? '')) continue;
      if (token.is !== 'quantity' && token.is !== 'number') continue;
      const fahrenheit = token.is === 'quantity' && /f/i.test(token.unitTyped);
      const startC = fahrenheit ? celsiusFromF(token.value) : token.value;
      if (!(startC >= 0 && startC < 60))
        throw new Refusal(
          'bad-temperature',
          `Water of ${token.typed} to start with cannot be; 0 to 60 °C can. For snow, say "snow".`,
        );
      reading.take(index, index - 1);
      return { startC, fromSnow: false };
    }
    return undefined;
  }),
);
