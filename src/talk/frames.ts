import { unaccountedIn } from './aside.ts';
import { about, ask, avoided, isAsking } from './ask.ts';
import { dayText } from './asks-trips.ts';
import { type Look, type Meaning, quoted } from './look.ts';
import { type Asks, asksBy, type Idea, ideas } from './question-words.ts';
import { nutrientOf, pastDayText, whoAndWhen } from './topic.ts';

/** What a message names that a question may be about. */
type Thing = 'pouch' | 'batch' | 'meal' | 'person' | 'trip' | 'food' | 'day' | 'nothing';

/**
 * A question by its pieces, whatever the wording: what it is about, by which words it asks, and the ideas that show it.
 * Every reader with a closer look at the wording comes before; these catch what is said in other words.
 */
interface Frame {
  readonly means: string;
  /** One of these has to be named; 'nothing' where none of the others is. */
  readonly of: readonly Thing[];
  /** One of these ideas has to be said. */
  readonly by?: readonly Idea[];
  /** Further ideas, each of which speaks for it. */
  readonly also?: readonly Idea[];
  readonly not?: readonly Idea[];
  readonly asks?: readonly Asks[];
  readonly words: (look: Look) => string | undefined;
}

const somebody = (look: Look): string =>
  [...new Set(look.said.people.map(({ names: [name] }) => name))].map(quoted).join(' ');
const foodOf = (look: Look): string | undefined => avoided(look) ?? unknownFood(look);

/** The one word that nothing accounts for, where a food is asked for: 'anything with raisins'. */
function unknownFood(look: Look): string | undefined {
  const [first, another] = unaccountedIn(look);
  return another === undefined && first !== undefined && /^\p{L}+(?: \p{L}+)?$/u.test(first)
    ? first
    : undefined;
}

const verbOf = (look: Look): string => {
  const verbs = [
    ['seal', 'sealed'], ['throw', 'discarded'], ['weight', 'weighed'], ['eat', 'used'], ['load', 'loaded'],
  ] as const; // prettier-ignore
  return verbs.find(([idea]) => look.has(...ideas[idea]))?.[1] ?? '';
};

const frames: readonly Frame[] = [
  { means: 'whatof', of: ['pouch'], asks: ['why', 'where', 'which', 'whether'], by: ['gone', 'throw', 'eat'], words: about },
  { means: 'whatof', of: ['pouch', 'batch'], asks: ['who'], by: ['seal', 'throw', 'weight', 'eat', 'load', 'record'], words: (look) => `${about(look)} who ${verbOf(look)}` },
  { means: 'whatof', of: ['pouch', 'batch'], asks: ['when'], by: ['seal', 'throw', 'weight', 'eat', 'load', 'record'], words: (look) => `${about(look)} when ${verbOf(look)}` },
  { means: 'water', of: ['pouch', 'meal'], by: ['water'], not: ['cold', 'fuel'], words: about },
  { means: 'coldwater', of: ['pouch', 'meal', 'nothing'], asks: ['whether', 'how', 'which'], by: ['cold'], also: ['water'], words: (look) => (look.has('water') ? about(look) : undefined) },
  { means: 'soak', of: ['pouch', 'meal', 'nothing'], asks: ['long', 'when', 'whether'], by: ['soak'], words: about },
  { means: 'keeps', of: ['pouch', 'batch', 'meal'], by: ['keep'], asks: ['long', 'when', 'whether', 'much', 'how'], not: ['dryer', 'hazard', 'nutrient'], words: (look) => (look.said.people.length > 0 ? undefined : about(look)) },
  { means: 'howheavy', of: ['pouch', 'batch'], by: ['weight', 'lose'], words: about },
  { means: 'isdry', of: ['meal', 'batch'], asks: ['when'], by: ['eat', 'may'], words: (look) => (dries(look) || look.said.batches.length > 0 ? about(look) : undefined) },
  { means: 'isdry', of: ['batch'], by: ['dry', 'dryer', 'lose'], words: about },
  { means: 'isdry', of: ['meal'], by: ['dry', 'dryer', 'lose'], words: (look) => (dries(look) ? about(look) : undefined) },
  { means: 'isdry', of: ['nothing'], by: ['dryer'], also: ['dry'], words: () => '' },
  { means: 'nutrition', of: ['pouch', 'batch', 'meal'], by: ['nutrient'], words: (look) => `${about(look)} ${nutrientOf(look) === 'sodium' ? 'sodium' : nutrientOf(look) === 'energy' ? 'energy' : 'all'}` },
  { means: 'holds', of: ['pouch', 'meal', 'batch'], by: ['inside', 'left'], asks: ['whether', 'which', 'much', 'many'], not: ['nutrient', 'weight'], words: (look) => withFood(look, about(look)) },
  { means: 'anyholds', of: ['food'], by: ['inside', 'left'], asks: ['which', 'whether'], words: (look) => (about(look) === '' ? foodOf(look) : undefined) },
  { means: 'anyholds', of: ['nothing'], by: ['inside'], asks: ['which'], words: (look) => (look.says(/ (?:with|contains?|containing|has|have) /) ? foodOf(look) : undefined) },
  { means: 'mayeat', of: ['person'], by: ['may'], asks: ['whether', 'which', 'how', 'who'], words: (look) => (about(look) === '' || look.says(/ (?:ate|had|used|opened|threw) /) ? undefined : `${about(look)} for ${somebody(look)}`) },
  { means: 'mayfood', of: ['person'], by: ['may'], asks: ['whether', 'which', 'how'], words: (look) => (about(look) === '' && avoided(look) !== undefined ? `${avoided(look)!} for ${somebody(look)}` : undefined) },
  { means: 'whatfor', of: ['person'], by: ['may'], asks: ['which'], not: ['wish', 'come', 'menu'], words: (look) => (about(look) === '' ? somebody(look) : undefined) },
  { means: 'eaterof', of: ['person'], by: ['avoid'], words: (look) => (about(look) === '' ? somebody(look) : undefined) },
  { means: 'whoavoids', of: ['food', 'nothing'], by: ['avoid', 'may'], asks: ['who'], words: (look) => (about(look) === '' ? avoided(look) : undefined) },
  { means: 'howmany', of: ['meal', 'nothing'], by: ['left'], asks: ['many', 'much', 'which', 'whether'], not: ['absorber', 'fuel', 'nutrient', 'inside'], words: (look) => (look.said.people.length > 0 || look.has('trip', 'tour', 'hike') ? undefined : about(look)) },
  { means: 'dinner', of: ['day', 'trip'], by: ['menu'], asks: ['which', 'who', 'how', 'many'], words: (look) => (about(look) === '' ? `${look.trip() ?? ''} ${dayText(look)} ${look.slotMeal()?.meal ?? ''}` : undefined) },
  { means: 'tripof', of: ['trip'], by: ['come'], words: (look) => look.trip() ?? (look.has('trip', 'tour', 'hike') ? '' : undefined) },
  { means: 'packedyet', of: ['trip', 'nothing'], by: ['pack'], asks: ['which', 'whether', 'many'], not: ['weight'], words: (look) => (about(look) === '' ? (look.trip() ?? '') : undefined) },
  { means: 'packweight', of: ['trip', 'nothing'], by: ['weight'], also: ['pack', 'menu'], words: (look) => (about(look) === '' && look.has(...ideas.pack, 'food', 'everything', 'all') ? (look.trip() ?? '') : undefined) },
  { means: 'fuelneed', of: ['trip', 'nothing'], by: ['fuel'], words: (look) => look.trip() ?? '' },
  { means: 'cook', of: ['trip'], by: ['cook'], asks: ['which', 'whether', 'much', 'many', 'when'], words: (look) => (about(look) === '' ? look.trip() : undefined) },
  { means: 'cost', of: ['pouch', 'meal', 'trip', 'nothing'], by: ['cost'], words: () => '' },
  { means: 'log', of: ['day', 'person', 'nothing'], by: ['record'], asks: ['which', 'who', 'whether', 'when'], words: (look) => (about(look) === '' ? logWords(look) : undefined) },
  { means: 'log', of: ['day'], asks: ['which', 'who'], words: (look) => (about(look) === '' && pastDayText(look) !== '' && look.says(/ (?:was|were|did|happened|went) /) ? logWords(look) : undefined) },
  { means: 'ratingsof', of: ['pouch', 'meal'], by: ['like'], words: about },
  { means: 'unsealed', of: ['batch'], by: ['seal'], also: ['left'], asks: ['much', 'many', 'which', 'whether'], words: about },
  { means: 'serves', of: ['meal'], by: ['serve'], asks: ['many', 'much'], words: (look) => look.mealTyped() },
  { means: 'whatsin', of: ['meal'], by: ['inside'], asks: ['which', 'how', 'many', 'much'], not: ['nutrient'], words: (look) => look.mealTyped() },
  { means: 'absorber', of: ['pouch', 'batch', 'meal'], by: ['absorber'], words: about },
  { means: 'worry', of: ['pouch', 'meal', 'nothing'], by: ['hazard'], words: (look) => `smells ${about(look)}` },
  { means: 'want', of: ['nothing', 'person', 'trip'], by: ['wish'], asks: ['who', 'which', 'whether'], words: (look) => (about(look) === '' ? '' : undefined) },
]; // prettier-ignore

const dries = (look: Look): boolean =>
  look.said.meals.some(({ names }) => names.some((name) => look.names.batchesOf(name, true).length > 0));

function withFood(look: Look, what: string): string | undefined {
  const food = foodOf(look);
  return food === undefined ? undefined : `${what} ${food}`;
}

/** Whose entries, and of which day. */
const logWords = (look: Look): string | undefined =>
  look.says(/ (?:what )?happens (?:if|when) /)
    ? undefined
    : // Who ate what is not on record, only who recorded it.
      look.has('eat') && look.said.people.some(({ names: [name] }) => name !== look.names.me)
      ? undefined
      : whoAndWhen(look);

function thingsNamed(look: Look): ReadonlySet<Thing> {
  const { codes, batches, meals, people, trips } = look.said;
  const found = new Set<Thing>([
    ...(codes.length > 0 ? (['pouch'] as const) : []),
    ...(batches.length > 0 && codes.length === 0 ? (['batch'] as const) : []),
    ...(meals.length > 0 && codes.length + batches.length === 0 ? (['meal'] as const) : []),
    ...(people.length > 0 && !onlyWe(look) ? (['person'] as const) : []),
    ...(trips.length > 0 || look.has('trip', 'tour', 'hike') ? (['trip'] as const) : []),
    ...(dayText(look) !== '' || pastDayText(look) !== '' ? (['day'] as const) : []),
    ...(avoided(look) !== undefined ? (['food'] as const) : []),
  ]);
  if (codes.length + batches.length + meals.length === 0) found.add('nothing');
  return found;
}

/** 'Do I pour …' asks for no person's sake; 'can I have …' does. */
const onlyWe = (look: Look): boolean =>
  look.said.people.every(({ names: [name] }) => name === look.names.me) && !look.has(...ideas.may, 'eat');

/** Worth of a frame that fits, of each further sign, and less for a word that nothing accounts for. Chosen. */
const worth = { fits: 2.5, sign: 0.35, asks: 0.3, unaccounted: 0.4 };

function worthOf(frame: Frame, look: Look, named: ReadonlySet<Thing>, by: Asks): number | undefined {
  if (!frame.of.some((thing) => named.has(thing))) return undefined;
  if (frame.asks && !frame.asks.includes(by)) return undefined;
  const shown = (some: readonly Idea[] = []) => some.filter((idea) => look.has(...ideas[idea])).length;
  const signs = shown(frame.by);
  if ((frame.by && signs === 0) || shown(frame.not) > 0) return undefined;
  const extra = Math.min(3, signs - 1 + shown(frame.also));
  return (
    worth.fits +
    worth.sign * extra +
    (frame.asks ? worth.asks : 0) -
    worth.unaccounted * Math.min(2, unaccountedIn(look).length)
  );
}

const explains = new Map<string, ReadonlySet<string>>();
for (const { means, by = [], also = [] } of frames) {
  const known = explains.get(means) ?? new Set<string>();
  explains.set(means, new Set([...known, ...[...by, ...also].flatMap((idea) => ideas[idea])]));
}

/**
 * How many words of a question's own weight the answer would pass over: each that belongs to an idea of other answers
 * and to none of this one.
 */
export function passedOver(look: Look, means: string): number {
  const own = explains.get(means);
  if (own === undefined) return 0;
  return ideaWordsIn(look).filter((lemma) => !own.has(lemma)).length;
}

const said = new WeakMap<Look, readonly string[]>();
const allIdeas = new Set<string>(Object.values(ideas).flat());

/** The words of a message that show an idea, and are no small words besides. */
function ideaWordsIn(look: Look): readonly string[] {
  const known = said.get(look);
  if (known) return known;
  const { all, lemmas, meals, people, trips } = look.said;
  const spoken = new Set([...meals, ...people, ...trips].flatMap(({ at }) => at));
  const found = lemmas.filter(
    (lemma, i) => all[i]!.is === 'word' && !spoken.has(i) && allIdeas.has(lemma) && !isSmall(lemma),
  );
  said.set(look, found);
  return found;
}

/** Words of many ideas tell none apart. */
const isSmall = (lemma: string): boolean =>
  /^(?:have|do|go|make|can|may|get|there|where|who|when|still|any|more|in|with|good|put|take|use|had|off|change|for|it|old|low|high|eat|meal|food|left|hold|much|many|long)$/.test(
    lemma,
  );

/** Every question that a message may be by its pieces. */
export function framed(look: Look): Meaning[] {
  if (!isAsking(look)) return [];
  const [named, by] = [thingsNamed(look), asksBy(look)];
  return frames.flatMap((frame) => {
    const score = worthOf(frame, look, named, by);
    const words = score === undefined ? undefined : frame.words(look);
    return score === undefined || words === undefined ? [] : [ask(frame.means, words, score)];
  });
}
