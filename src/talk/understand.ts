import { asideOf } from './aside.ts';
import * as asksAdvice from './asks-advice.ts';
import * as asksPeople from './asks-people.ts';
import * as asksPouches from './asks-pouches.ts';
import * as asksTopics from './asks-topics.ts';
import * as asksTrips from './asks-trips.ts';
import * as asksWhat from './asks-what.ts';
import * as bought from './bought.ts';
import * as carried from './carried.ts';
import * as corrected from './corrected.ts';
import * as dried from './dried.ts';
import * as dryerTold from './dryer-told.ts';
import * as mixed from './mixed.ts';
import { framed, passedOver } from './frames.ts';
import * as eaten from './eaten.ts';
import * as family from './family.ts';
import * as helps from './helps.ts';
import { codesDenied, type Reader } from './hold.ts';
import { Look, type Meaning } from './look.ts';
import * as sealed from './sealed.ts';
import * as shows from './shows.ts';
import * as strangers from './strangers.ts';
import * as rated from './rated.ts';
import * as eatingOut from './eating-out.ts';
import * as measured from './measured.ts';
import * as settingsTold from './settings-told.ts';
import * as recipeTold from './recipe-told.ts';
import * as taught from './taught.ts';
import * as told from './told.ts';
import * as tripsTold from './trips-told.ts';
import * as wished from './wished.ts';
import type { Names } from '#words/parts.ts';

/** Every way to read a message; their order says nothing. */
const readers: readonly Reader[] = [
  eaten.eating, eaten.eatingPart, eaten.throwing, eaten.takenAway, eaten.openedOnly, eaten.finding,
  corrected.takingBack, corrected.stillThere, corrected.neverWas,
  sealed.sealing, dried.weighing, dried.loading, dried.correcting,
  mixed.mixing,
  bought.buying,
  rated.rating,
  wished.wishing,
  carried.packing, carried.comingBack,
  settingsTold.setting, settingsTold.reminding,
  told.eater, told.leaving, told.pot, told.recipe,
  family.family, family.household,
  taught.teaching,
  recipeTold.changing,
  tripsTold.trip,
  shows.water, shows.scaling, shows.labels, shows.charts, shows.picks, shows.exporting, shows.calendar, shows.stock, shows.logs,
  helps.helping, helps.fuel, helps.cooking,
  asksPouches.howMany, asksPouches.howHeavy, asksPouches.dryness, asksPouches.wetSaid, asksPouches.sealable, asksPouches.keeping, asksPouches.older, asksPouches.should, asksPouches.first, asksPouches.nameAlone, asksPouches.cards, asksPouches.undoAsks,
  asksWhat.history, asksWhat.worries,
  asksAdvice.advising, strangers.stranger, asksPeople.mayEat, asksPeople.nutrients, asksPeople.ingredients, asksPeople.eaters,
  asksTrips.tripAsks, asksTrips.settingAsks, asksTrips.shopping, asksTrips.seasonAsked,
  ...asksTopics.topical,
  dryerTold.dryer, dryerTold.pieces,
  eatingOut.eatingOut, eatingOut.exchanging,
  measured.jar, measured.meter, measured.pricing,
]; // prettier-ignore

/** What a question takes off a reading that would record. Chosen: an answer wins where there is one. */
const heldByAsking = 3;
/** What 'if' takes off a reading that would record. Chosen. */
const heldByIf = 2;

/** Deeds that one message may tell one after the other. */
const tellable = new Set([
  'use',
  'discard',
  'seal',
  'weigh',
  'rate',
  'pack',
  'found',
  'eater',
  'house',
  'want',
  'trip',
]);

/**
 * Reads a whole message before any request is chosen: its pieces, how it is said, and every request or question that
 * would account for it, the best first.
 * @param text as typed, without a slash
 * @param names the household's own
 */
export function couldMean(text: string, names: Names): Meaning[] {
  if (text.length > longestSaying) return asRecipe(text, names);
  const look = new Look(text, names);
  const found = readingsOf(look);
  if (look.said.mood.asks) return found;
  const [best] = found;
  const isTold = best === undefined || tellable.has(best.means);
  // 'Ate B1-2 and B1-3' is one saying; 'ate B1-2 and B1-3 leaked' are two: only where each part tells by itself.
  const clauses = isTold
    ? (inClauses(text, names, borders) ?? inClauses(text, names, allBorders))
    : undefined;
  if (clauses) return [clauses, ...found];
  const isMixed = saysSeveral(text, names) || areApart(look, names);
  return found
    .map((one) => withRating(one, found))
    .map((one) =>
      isMixed && deeds.has(one.means) && one.holds === null ? { ...one, holds: severalThings } : one,
    );
}

/** What an answer to a sentence would leave aside, as typed. */
export const leftAside = (text: string, names: Names, meaning: Meaning): string[] =>
  text.length > longestSaying ? [] : asideOf(new Look(text, names), meaning);

/** Nobody says more in a sentence or two; what is longer is a recipe, or nothing that is understood. Chosen. */
const longestSaying = 800;

/** A long text by its beginning. */
function asRecipe(text: string, names: Names): Meaning[] {
  const found = told.recipe(new Look(text.slice(0, longestSaying), names));
  return found?.means === 'recipe' ? [{ ...found, words: told.withoutLead(text) }] : [];
}

/** What an answer leaves aside speaks against it: each piece as much, up to three. Chosen. */
const worthAside = 0.35;
/** A word that belongs to another answer speaks against it as much. Chosen. */
const worthPassed = 0.5;
/** How much less a look is worth for what it would leave aside. */
function besideThePoint(look: Look, one: Meaning): number {
  if (one.looks !== true) return 0;
  return (
    worthAside * Math.min(3, asideOf(look, one).length) +
    worthPassed * Math.min(3, passedOver(look, one.means))
  );
}

function readingsOf(look: Look): Meaning[] {
  const { asks, doubt } = look.said.mood;
  // 'Water if we open two': what is only supposed is not what is meant.
  const isSupposed = doubt === 'if';
  return [...readers.flatMap((read) => read(look) ?? []), ...framed(look)]
    .map((one) => ({
      ...one,
      // In a question a question is meant, where one accounts for it; words left over speak against a reading.
      score:
        one.score -
        (asks && one.holds !== null ? heldByAsking : 0) -
        (isSupposed && one.holds !== null ? heldByIf : 0) -
        Math.min(1, 0.3 * one.left.length) -
        besideThePoint(look, one),
    }))
    .toSorted((a, b) => b.score - a.score);
}

/** The deed and the rating that one message tells of the same pouch: 'we ate B1-2, needed 40 ml more'. */
function withRating(deed: Meaning, found: readonly Meaning[]): Meaning {
  if (deed.means !== 'use' && deed.means !== 'discard') return deed;
  const rating = found.find(({ means }) => means === 'rate');
  if (rating === undefined) return deed;
  // What either accounts for is accounted for.
  const left = deed.left.filter((words) =>
    rating.left.some((other) => other.includes(words) || words.includes(other)),
  );
  const { beside: _, ...both } = deed;
  return { ...both, also: { ...rating, left: [] }, score: Math.max(deed.score, rating.score) + 0.7, left };
}

/** Where one saying may end and the next begin. */
const borders =
  /[;\n]+|\.(?=\s|$)|,\s*(?:and\s+|then\s+)?|\s+(?:and|then|but)\s+(?!B\d)|\s+(?=(?:threw|ate|binned|tossed|sealed|weighed|chucked|used|discarded|opened)\b)/iu;

/** The same, and before a code: 'B1-2 is loose and B1-3 tight'. */
const allBorders = new RegExp(borders.source.replaceAll('(?!B\\d)', ''), 'iu');

/** The clauses of a text, each with what stood in front of it. */
function cutAt(text: string, at: RegExp): { clause: string; between: string }[] {
  const found: { clause: string; between: string }[] = [];
  let from = 0;
  let between = '';
  for (const m of [...text.matchAll(new RegExp(at.source, 'giu')), undefined]) {
    const clause = text.slice(from, m?.index ?? text.length).trim();
    if (clause === '') between += m?.[0] ?? '';
    else {
      found.push({ clause, between });
      between = m?.[0] ?? '';
    }
    from = (m?.index ?? 0) + (m?.[0].length ?? 0);
  }
  return found;
}

/** Two sayings in one message, each with a deed and a thing of its own: 'ate B1-2, threw away B1-3'. */
function inClauses(text: string, names: Names, at: RegExp): Meaning | undefined {
  const clauses = cutAt(text, at);
  if (clauses.length < 2 || clauses.length > 6 || text.length > 300) return undefined;
  const sayings = clauses.reduce<string[]>((all, { clause, between }) => {
    // A clause without a thing of its own goes on about the one before.
    if (all.length > 0 && !/\b[BM]\d+/i.test(clause) && !isOwnSaying(clause, names))
      all[all.length - 1] += `${between}${clause}`;
    else all.push(clause);
    return all;
  }, []);
  const deeds = sayings.flatMap((clause) => {
    const look = new Look(clause, names);
    const [best] = readingsOf(look);
    const isOwn =
      best !== undefined &&
      best.score >= (best.means === 'weigh' && best.left.length === 0 ? barelyOwn : ownScore) &&
      tellable.has(best.means) &&
      (look.said.codes.length + look.said.batches.length > 0 ||
        best.means === 'house' ||
        best.means === 'eater' ||
        best.means === 'want' ||
        best.means === 'trip' ||
        best.means === 'weigh');
    return isOwn ? [best] : [];
  });
  // 'B1-2 tight, B1-3 loose' are two sayings of one kind; 'ate B1-2 and B1-3' is one.
  const kinds = new Set(
    deeds.map(
      ({ means, words }) => `${means}${apart.has(means) ? words.replace(/\b[BM]\d+(?:-\d+)?\b/giu, '') : ''}`,
    ),
  );
  if (deeds.length < 2 || deeds.length !== sayings.length || kinds.size < 2) return undefined;
  const all = deeds.reduceRight<Meaning | undefined>(
    (rest, one) => (rest ? { ...one, also: rest } : one),
    undefined,
  );
  return all && { ...all, score: Math.max(...deeds.map(({ score }) => score)) + 1 };
}

/** Deeds of which one message may tell several that differ. */
const apart = new Set(['found', 'eater', 'rate', 'weigh']);

/** A clause that tells a deed of a meal or a person by itself: 'weighed the mac: 815'. */
function isOwnSaying(clause: string, names: Names): boolean {
  const look = new Look(clause, names);
  if (look.said.meals.length + look.said.people.length + look.said.trips.length === 0) return false;
  const [best] = readingsOf(look);
  if (best?.means === 'weigh' && best.left.length === 0 && best.score >= barelyOwn) return true;
  return (
    best !== undefined &&
    best.score >= ownScore &&
    (best.means === 'weigh' ||
      best.means === 'eater' ||
      best.means === 'use' ||
      best.means === 'want' ||
      best.means === 'trip')
  );
}

/** What joins codes of one saying. */
const joiners =
  /^(?:and|,|&|\+|to|till|until|through|plus|also|then|both|the|of|or|one|ones|pouch|pouches|bag|bags|from|too|as|well|-|;|\/)$/;

/** Codes with other words between them: what is said of the one need not be said of the other. */
function areApart(look: Look, names: Names): boolean {
  const { all, codes, meals, text } = look.said;
  // 'B1-2 and B1-3 eaten, not B1-4' leaves one out.
  if (codes.length < 2 || codesDenied(look).length > 0) return false;
  const [first, last] = [codes[0]?.at ?? 0, codes.at(-1)?.at ?? 0];
  const named = new Set(meals.flatMap(({ at }) => at));
  const isApart = all
    .slice(first, last)
    .some(({ is, plain }, k) => is === 'word' && !named.has(first + k) && !joiners.test(plain));
  if (!isApart) return false;
  // 'B4-2: eaten by me. B4-3: eaten by Ben' says the same of both.
  const told = cutAt(text, allBorders)
    .filter(({ clause }) => /\b[BM]\d+-\d/iu.test(clause))
    .map(({ clause }) => readingsOf(new Look(clause, names))[0]);
  return told.some((one) => one === undefined || one.score < ownScore || one.means !== told[0]?.means);
}

const deeds = new Set(['use', 'discard', 'found', 'weigh', 'seal', 'pack', 'back']);
const severalThings = 'that says several things; please one at a time';

/** Different deeds in one message, of which not all are understood: none of them may take the others' things. */
function saysSeveral(text: string, names: Names): boolean {
  if (text.length > 300) return false;
  const sayings = text
    .split(/[;\n]+|\.(?=\s|$)|,\s*|\s+(?:and|then|but)\s+(?!B\d)/iu)
    .filter((clause) => /\b[BM]\d+/i.test(clause));
  if (sayings.length < 2) return false;
  const means = sayings.flatMap((clause) => {
    const [best] = readingsOf(new Look(clause, names));
    return best && deeds.has(best.means) && best.score >= ownScore ? [best.means] : [];
  });
  return new Set(means).size > 1;
}

/** A weight of what dries, every word of it accounted for, needs no verb. Chosen. */
const barelyOwn = 2.4;
/** What a clause has to be worth to be a saying of its own. Chosen. */
const ownScore = 3.5;
