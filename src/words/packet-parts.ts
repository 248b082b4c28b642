import { Refusal } from '#core/refusal.ts';
import { Ambiguous } from './ambiguous.ts';
import { Reading } from './reading.ts';

/** What a packet says of one thing. */
export type Said = 'contains' | 'may contain' | 'free';

/** What a packet may speak of. */
export interface PacketLarder {
  /** Whether the words name an allergen, a kind, a diet or a food. */
  readonly knows: (words: string) => boolean;
  /** Whether they name a diet that a food may suit: 'vegan', 'gluten-free'. */
  readonly isDiet: (words: string) => boolean;
}

/** A sentence about a packet, taken apart. */
export interface PacketTold {
  /** The food, as typed. */
  readonly food: string;
  readonly said: readonly { readonly words: string; readonly is: Said }[];
  readonly claims: readonly string[];
}

type Role = 'no' | 'has' | 'may' | 'trace' | 'free' | 'or' | 'end' | 'glue';
const words: Readonly<Record<Role, string>> = {
  no: `no not without never non zero none neither nor doesn't doesnt don't dont isn't isnt hasn't hasnt haven't aren't arent
    wasn't cannot can't cant nothing lacks excludes excluding minus`,
  has: `contains contain contained containing has have having with include includes including lists list listed ingredients
    ingredient made is are holds hold`,
  may: `may might could possibly perhaps factory facility line lines site equipment handles handling
    processed produced packed`,
  trace: 'trace traces',
  free: 'free',
  or: 'or',
  end: '. ;',
  glue: `a an the any all and & of from in it its on to our ours packet pack package label box tin jar brand ones one says say said
    reads read that this does do did also added extra product products as for by be been which where same also but however though : - , / ( ) +
    suitable certified vegans vegetarians allergens allergen advice warning according according allergy us we i my per`,
}; // prettier-ignore
const roles = new Map(
  (Object.entries(words) as [Role, string][]).flatMap(([role, text]) =>
    text.split(/\s+/).map((word) => [word, role] as const),
  ),
);
const asDiet = new Map([
  ['vegans', 'vegan'],
  ['vegetarians', 'vegetarian'],
]);
const opens =
  /\b(?:contains?|containing|may|might|ingredients?|does not|doesn'?t|has|have|is|are|isn'?t|aren'?t|without|no|not|non|free|includes?|made)\b|:|\b[\p{L}]+-free\b/iu;
const speaksOfPacket =
  /\b(?:contains?|containing|traces?|free|no|not|non|without|ingredients?|suitable|factory|handles|allergens?|vegan|vegetarian|halal|kosher)\b|n't\b|\b[\p{L}]+-free\b/iu;

/** Whether a sentence may speak of what is in a packet; it is then read as that or not at all. */
export const mayBePacket = (text: string): boolean => speaksOfPacket.test(text.replaceAll('’', "'"));

/** How one thing is spoken of, while a sentence is read. */
interface State {
  is: Said;
  /** The small words since the last thing: a negation among them belongs to the next. */
  fresh: Set<Role>;
  wasSaid: boolean;
}

/**
 * Reads what a packet says. A negation holds for what follows it, up to the next word that says otherwise; where a
 * comma leaves open whether it still holds, it is asked.
 * @returns undefined where the sentence names no food and nothing in it
 * @throws Refusal for a word that is not understood, Ambiguous where a negation may end
 */
export function readPacket(text: string, larder: PacketLarder): PacketTold | undefined {
  const at = opens.exec(text.replaceAll('’', "'"));
  if (!at) return undefined;
  const food = text
    .slice(0, at.index)
    .replace(/^\s*(?:(?:our|ours|the|my)\s+)*|[\s,:;]+$/giu, '')
    .trim();
  if (food === '') return undefined;
  const reading = new Reading(text.slice(at.index));
  const said: { words: string; is: Said }[] = [];
  const claims: string[] = [];
  const state: State = { is: 'contains', fresh: new Set(), wasSaid: false };
  for (let i = 0; i < reading.all.length; i++) {
    const token = reading.all[i]!;
    const role = roles.get(token.plain);
    const glued = /^(.+)-free$/u.exec(token.plain)?.[1];
    if (role !== undefined && role !== 'glue') {
      take(state, role, reading, i);
      if (role === 'free' && isBehind(reading, i)) negateLast(said, state, reading.text);
      continue;
    }
    const diet = asDiet.get(token.plain) ?? token.plain;
    const found = phraseAt(reading, i, larder);
    if (glued !== undefined && !larder.isDiet(token.plain)) {
      if (!larder.knows(glued)) throw notUnderstood(token.typed);
      said.push({ words: glued, is: turned(state, reading.text) });
    } else if (larder.isDiet(diet) || (found && larder.isDiet(found.words))) {
      const words = found && larder.isDiet(found.words) ? found.words : diet;
      if (state.fresh.has('no') || state.is === 'free') throw doubleNegation(words);
      claims.push(words);
      i = Math.max(i, found && larder.isDiet(found.words) ? found.last : i);
    } else if (role === 'glue') {
      continue;
    } else if (found) {
      said.push({ words: found.words, is: spoken(state, said, reading, i, text.slice(0, at.index)) });
      i = found.last;
    } else throw notUnderstood(token.typed);
    state.fresh = new Set();
    state.wasSaid = true;
  }
  if (state.fresh.has('no'))
    throw new Refusal('not-understood', 'I read "no", but not of what. Nothing was recorded.');
  return said.length + claims.length > 0 ? { food, said, claims } : undefined;
}

function take(state: State, role: Role, reading: Reading, i: number): void {
  if (role === 'end') {
    state.is = 'contains';
    state.wasSaid = false;
  } else if (role === 'no') {
    if (state.fresh.has('no') || state.fresh.has('may')) throw doubleNegation(reading.all[i]!.typed);
    state.is = 'free';
  } else if (role === 'trace') {
    // 'No traces of nuts' is no nuts, 'traces of nuts' may be some.
    if (!state.fresh.has('no')) state.is = 'may contain';
  } else if (role === 'may') {
    if (state.fresh.has('no')) throw doubleNegation(`no ${reading.all[i]!.typed}`);
    state.is = 'may contain';
  } else if (role === 'free') {
    if (isBehind(reading, i)) return;
    if (state.fresh.has('no')) throw doubleNegation('not free');
    state.is = 'free';
    state.fresh.add('no');
    return;
  } else if (role === 'has' && !state.fresh.has('no') && !state.fresh.has('may')) state.is = 'contains';
  state.fresh.add(role);
}

/** 'Egg free' stands behind its food; 'free from egg' in front. */
const isBehind = (reading: Reading, i: number): boolean =>
  !['from', 'of'].includes(reading.all[i + 1]?.plain ?? '');

function negateLast(said: { words: string; is: Said }[], state: State, text: string): void {
  const last = said.at(-1);
  if (last === undefined)
    throw new Refusal('not-understood', `I read "free" in "${text}", but not of what. Nothing was recorded.`);
  if (last.is === 'free') throw doubleNegation(`no ${last.words} free`);
  last.is = 'free';
  state.is = 'contains';
}

/** 'Egg-free', and 'not egg-free', which says nothing that is sure. */
function turned(state: State, text: string): Said {
  if (state.fresh.has('no')) throw doubleNegation(text);
  return 'free';
}

/** @throws Ambiguous for 'contains celery, no milk, wheat': is there wheat in it? */
function spoken(state: State, said: PacketTold['said'], reading: Reading, i: number, before: string): Said {
  const isOpen =
    state.is === 'free' &&
    !state.fresh.has('no') &&
    !state.fresh.has('or') &&
    reading.all[i + 1]?.plain !== 'free' &&
    said.some(({ is }) => is !== 'free');
  if (reading.all[i + 1]?.plain === 'free' && !state.fresh.has('no')) return 'contains';
  if (!isOpen) return state.is;
  const token = reading.all[i]!;
  const thing = token.typed;
  const put = (into: string) => before + reading.rewritten([{ from: token.from, to: token.from, into }]);
  throw new Ambiguous(`Is there ${thing} in it, or is there none?`, [
    { label: `no ${thing}`, request: put('no ') },
    { label: `contains ${thing}`, request: put('contains ') },
  ]);
}

/** The longest known thing that begins at a word. */
function phraseAt(
  reading: Reading,
  start: number,
  larder: PacketLarder,
): { words: string; last: number } | undefined {
  let found: { words: string; last: number } | undefined;
  const typed: string[] = [];
  for (let i = start; i < reading.all.length && typed.length < 4; i++) {
    const token = reading.all[i]!;
    const role = roles.get(token.plain);
    if (
      token.is !== 'word' ||
      (role !== undefined && !(role === 'glue' && i > start) && token.plain !== 'free')
    )
      break;
    typed.push(token.plain);
    const phrase = typed.join(' ');
    // 'Gluten free' is a diet; 'egg free' is egg and a word about it.
    const isBare = token.plain === 'free' && !larder.isDiet(phrase);
    if (!isBare && role === undefined ? larder.knows(phrase) : larder.isDiet(phrase))
      found = { words: phrase, last: i };
  }
  return found;
}

const notUnderstood = (word: string) =>
  new Refusal(
    'not-understood',
    `I know no allergen or food called "${word}", so I kept nothing of this packet.`,
  );

const doubleNegation = (words: string) =>
  new Refusal(
    'double-negation',
    `"${words}" can be read two ways. Say it with one word: contains egg, no egg, may contain egg. Nothing was recorded.`,
  );
