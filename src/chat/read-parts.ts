import { Lacking, Refusal } from '#core/refusal.ts';
import { isSealedFrom } from '#house/dryness.ts';
import { freeStock, mealNames, nameKey } from '#house/figures.ts';
import type { House } from '#house/house.ts';
import { takenAlong } from '#house/packing.ts';
import { tripsOpen } from '#house/trips.ts';
import { meal as mealPart, type Names } from '#words/parts.ts';
import { Ambiguous, Reading, couldNotPlace } from '#words/reading.ts';
import { fold } from '#words/near.ts';
import type { Command } from './command.ts';
import { formsOf } from './forms.ts';
import { ownEater } from '#house/self.ts';

/** A refusal for words that no part took, with the words that were. */
export class LeftOver extends Refusal {
  readonly without: string;

  constructor(sentence: string, without: string) {
    super('leftover', sentence);
    this.without = without;
  }
}

/**
 * Reads the parts a request takes; what is missing or left over is said with what was understood.
 * @throws Refusal, Ambiguous
 */
export function readParts(command: Command, words: string, names: Names) {
  const reading = new Reading(words);
  const sure = command.doubtRepeats && reading.keyword('sure') !== undefined;
  const asked: Record<string, unknown> = {};
  const missing: string[] = [];
  for (const [key, part] of Object.entries(command.takes)) {
    asked[key] = part.read(reading, names);
    if (asked[key] === undefined && part.needed) missing.push(part.like);
  }
  // The request's own name in a plain sentence is no word left over.
  reading.takeWords(...[command.name, ...command.alsoCalled].flatMap(formsOf));
  const left = reading.leftovers();
  const couldNot = left.length > 0 ? couldNotPlace(left, names.meals) : '';
  if (missing.length > 0) {
    const understood = reading.understood();
    const typed = left[0] ?? '';
    const isUnknown = left.length === 1 && !couldNot.includes('?') && /^[\p{L} '’-]{3,40}$/u.test(typed);
    if (missing.includes(mealPart.like) && isUnknown)
      throw new Refusal(
        'no-such-meal',
        names.meals.length === 0
          ? `There is no recipe called "${typed}", nor any other yet: write it first.`
          : `There is no recipe called "${typed}". Yours: ${names.meals.slice(0, 6).join(', ')}${names.meals.length > 6 ? ' and others' : ''}.`,
      );
    const need = `${understood ? `I read ${understood}, but I` : 'I'} still need ${missing.join(' and ')}.`;
    throw new Lacking('missing', couldNot ? `${need} ${couldNot}` : need);
  }
  if (left.length > 0 && command.records)
    throw new LeftOver(`${couldNot} Nothing was recorded.`, reading.withoutLeftovers());
  // What is not understood of a filter may be what somebody must not eat: nothing is shown as if it had not been said.
  const isOrder = left.every((typed) =>
    /^(?:(?:by|best|before|date|sorted|ordered|order|oldest|first|list)\s*)+$/iu.test(typed),
  );
  if (left.length > 0 && command.name === 'stock' && names.meals.length > 0 && !isOrder)
    throw new LeftOver(couldNot, reading.withoutLeftovers());
  const remarks = reading.remarks.map((remark) => `(${remark})`);
  return { asked, remarks: couldNot ? [...remarks, couldNot] : remarks, couldNot, sure };
}

/** What a request's own parts make of words: how far they speak for it. Chosen. */
const fit = { whole: 0.5, toChoose: 0.3, refused: -0.2, leftOver: -0.6, missing: -2.5 };

/** Whether a request can take these words, as a figure to add to what else speaks for it. */
export function fits(command: Command, words: string, names: Names): number {
  try {
    readParts(command, words, names);
    return fit.whole;
  } catch (error) {
    if (error instanceof Ambiguous) return fit.toChoose;
    if (!(error instanceof Refusal)) throw error;
    return error.code === 'missing' || error.code === 'no-such-meal'
      ? fit.missing
      : error.code === 'leftover'
        ? fit.leftOver
        : fit.refused;
  }
}

/** A load that was not weighed for as long as this, while another was, no longer dries. Chosen. */
const restsMs = 3 * 24 * 3_600_000;

/** The household's own names, each list read from the records only when a part asks for it. */
export function namesOf(
  house: House,
  earlier: readonly string[] = [],
  lastRecorded?: Names['lastRecorded'],
): Names {
  const lists = new Map<string, readonly string[]>();
  const once = (key: string, list: () => readonly string[]) => {
    if (!lists.has(key)) lists.set(key, list());
    return lists.get(key)!;
  };
  return {
    get meals() {
      return once('meals', () => mealNames(house));
    },
    get otherNames() {
      const meals = new Map(this.meals.map((name) => [nameKey(name), name]));
      const known = [...house.learnt.aliases()].map(([words, key]) => [words, meals.get(key)] as const);
      return new Map(known.filter((one): one is readonly [string, string] => one[1] !== undefined));
    },
    get eaters() {
      return once('eaters', () => house.eaters.here().map((eater) => eater.name));
    },
    batchesOf: (meal, drying) =>
      house.batches
        .latest(100)
        .filter((batch) => batch.recipe.name === meal && (!drying || !isSealedFrom(house, batch.no)))
        .map((batch) => batch.no),
    pouchesOf: (meal) => freeStock(house, meal),
    eatenOf: (meal) => {
      const all = house.batches
        .latest(100)
        .filter((batch) => batch.recipe.name === meal)
        .flatMap((batch) => house.pouches.ofBatch(batch.no));
      const eaten = all
        .filter((pouch) => pouch.state === 'used')
        .toSorted((a, b) => b.goneAtMs! - a.goneAtMs!);
      return eaten.length > 0 ? eaten : all.filter(({ id }) => takenAlong(house).has(id));
    },
    mealWith: (word) => {
      const key = nameKey(word);
      const having = mealNames(house).filter((name) =>
        (house.recipes.find(nameKey(name))?.lines ?? []).some(({ called, typed }) =>
          fold(`${called} ${typed}`).split(' ').includes(key),
        ),
      );
      return having.length === 1 ? having[0] : undefined;
    },
    traysOf: (code) => {
      const no = /^B(\d+)$/iu.exec(code)?.[1];
      return no === undefined ? undefined : house.batches.find(Number(no))?.trays.length;
    },
    get drying() {
      const open = house.batches.latest(20).filter((batch) => !isSealedFrom(house, batch.no));
      // What has not been touched for days, while another load has, stands in a tin and no longer in the dryer.
      const touched = (batch: (typeof open)[number]) => batch.weighings.at(-1)?.atMs ?? batch.loadedAtMs;
      const last = Math.max(...open.map(touched));
      return open.filter((batch) => last - touched(batch) < restsMs).map((batch) => batch.no);
    },
    earlier,
    lastRecorded,
    get pouchKinds() {
      return house.settings.pouchKinds.map(({ name }) => name);
    },
    get trips() {
      return once('trips', () => tripsOpen(house).map((trip) => trip.place));
    },
    tripDays: (place) => tripsOpen(house).find((trip) => trip.place === place),
    get me() {
      return ownEater(house)?.name ?? house.member.name;
    },
    nowMs: house.nowMs,
    zone: house.settings.zone,
  };
}
