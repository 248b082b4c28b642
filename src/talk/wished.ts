import { type Reader, holdOf, idea, people } from './hold.ts';
import { dayText } from './asks-trips.ts';
import { type Look, type Meaning, quoted } from './look.ts';

/** What is wished of a trip's meals: a meal, a pouch for one of them, a meal that is not to be there. */
export const wishing: Reader = (look) => pouchForMeal(look) ?? keptAway(look) ?? wish(look);

/** No deed with a pouch or a meal is told. */
const deeds = [
  'eat', 'use', 'have', 'seal', 'weigh', 'load', 'pack', 'cook', 'make', 'dry', 'call', 'water', 'label', 'discard', 'find',
]; // prettier-ignore

/** 'B4-1 for Saturday dinner', 'B4-1 on Saturday evening please': which pouch is opened then. */
function pouchForMeal(look: Look): Meaning | undefined {
  const slot = look.slotMeal();
  if (look.codes() === '' || look.names.trips.length === 0 || look.said.mood.asks || look.has(...deeds))
    return undefined;
  // The code leads: 'we'll take B4-3 for lunch' is a deed.
  if (slot === undefined || look.said.codes[0]!.at !== look.said.mood.start) return undefined;
  if (!look.says(/ (?:for|on) /) || look.says(/ (?:was|were|went|got) /)) return undefined;
  const day = dayText(look);
  return {
    means: 'want',
    words: `${look.codes()} ${day} ${slot.meal}${look.trip() ? ` ${look.trip()}` : ''}`.replace(/ +/gu, ' '),
    score: 4,
    left: [],
    holds: day === '' ? 'I found no day in it' : holdOf(look, { future: true }),
  };
}

/** 'No stew on this trip': at none of its meals. */
function keptAway(look: Look): Meaning | undefined {
  const meal = look.mealTyped();
  const isTrip =
    look.said.trips.length > 0 || look.says(/ (?:on|for|during) (?:this|the|our|that) (?:whole )?trip /);
  if (meal === undefined || !isTrip || look.said.mood.asks || look.has(...deeds)) return undefined;
  // 'No' in front is read as an answer to something where it stands alone, so the words as typed decide.
  if (!/^\s*(?:please\s+)?(?:there\s+(?:should|shall|must)\s+be\s+)?no\s/iu.test(look.said.text))
    return undefined;
  // For one person alone it is their wish that is meant.
  if (look.said.people.length > 0 || look.says(/ for (?:me|us|him|her|them) /)) return undefined;
  if (dayText(look) !== '' || look.slotMeal() !== undefined) return undefined;
  return {
    means: 'want',
    words: `no ${meal}${look.trip() ? ` ${look.trip()}` : ''}`,
    score: 4,
    left: [],
    holds: look.said.mood.doubt === null ? null : `"${look.said.mood.doubt}" leaves it open`,
  };
}

/** 'I want curry on Saturday', "I'd love the soup Sunday evening". */
function wish(look: Look): Meaning | undefined {
  const verbs = look.at(...idea('wish'));
  const isWish =
    verbs.length > 0 ||
    // 'Could we have soup on Sunday?' asks for it; with no day it asks what there is.
    (look.says(/ (?:can|could|may) (?:we|i) (?:please )?have /) &&
      (look.slotMeal() !== undefined || look.said.trips.length > 0 || dayText(look) !== '')) ||
    look.says(
      / (?:i d|would|we d|he d|she d|id) (?:really |so )?(?:love|like) | (?:would|d) be (?:so |really )?(?:nice|lovely|great|good|cool|perfect|yummy) | feel(?:s|ing)? like | in the mood for /,
    );
  const meal = look.mealTyped();
  // 'Changed my mind, no chili for me': a wish that was made is taken back.
  if (
    meal !== undefined &&
    !look.said.mood.asks &&
    look.says(
      / (?:changed my mind|on second thoughts?|no longer want|don t want .* (?:anymore|any more|after all)) /,
    ) &&
    look.says(/ (?:no|not|don t|no longer) /)
  )
    return { means: 'want', words: `not ${meal}`, score: 6, left: [], holds: null };
  const slot = look.slotMeal();
  // 'Soup for dinner on Saturday': a meal and when, and nothing else.
  const isEvery = look.says(/ (?:every|each|daily) /);
  const isOrder =
    !isWish &&
    meal !== undefined &&
    look.names.trips.length > 0 &&
    !look.said.mood.asks &&
    (slot !== undefined ||
      isEvery ||
      (look.said.people.length > 0 && look.says(/ for /)) ||
      / (?:mon|tues|wednes|thurs|fri|satur|sun)day /.test(look.folded)) &&
    !look.has(
      'eat',
      'use',
      'have',
      'seal',
      'weigh',
      'load',
      'pack',
      'cook',
      'make',
      'dry',
      'call',
      'water',
    ) &&
    look.said.codes.length + look.said.batches.length === 0;
  if (
    (!isWish && !isOrder) ||
    look.says(/ (?:to|wanna) (?:know|see|record|weigh|seal|cook|make|print|undo|change) /)
  )
    return undefined;
  if (meal === undefined) {
    // A meal that nobody recorded is still a wish, to be refused by its name.
    const behind =
      / (?:want|wants|fancy|fancies|crave|craves|wish for|love|like) (?:some |the |a |an |to have )?([\p{L} ]{3,40}) $/u.exec(
        look.folded,
      )?.[1];
    return behind === undefined || look.said.codes.length > 0
      ? undefined
      : { means: 'want', words: behind, score: 1.5, left: [], holds: null };
  }
  const drop = new Set([
    ...verbs,
    ...look.at(
      'love',
      'like',
      'feel',
      'mood',
      'have',
      'please',
      'really',
      'would',
      'the',
      'a',
      'some',
      'on',
      'at',
      'for',
      'to',
      'eat',
      'not',
      'no',
      "don't",
      "doesn't",
      'dont',
      'anymore',
      'any',
      'more',
      'again',
      'longer',
      'be',
      'nice',
      'lovely',
      'great',
      'good',
      'so',
      'meal',
      'both',
      'together',
      'sorry',
      'oops',
      'hey',
      'ok',
      'instead',
      'rather',
      'than',
      'of',
      ...(isEvery ? ['of', 'trip', 'whole', 'all'] : []),
    ),
    ...people(look),
    ...look.said.meals.flatMap(({ at }) => at),
    ...look.said.trips.flatMap(({ at }) => at),
  ]);
  if (slot) drop.add(slot.at);
  const rest = look.said.all.flatMap((token, i) =>
    i >= look.said.mood.start &&
    !drop.has(i) &&
    token.is !== 'mark' &&
    !/^(?:i|i'd|id|we|we'd|he|she|d|s)$/.test(token.plain)
      ? [token.typed]
      : [],
  );
  const whose = look.person();
  const wishNot =
    look.said.mood.negated !== null ||
    / no (?:more |more of )?(?:the )?$/.test(
      ` ${look.said.text.slice(0, look.said.all[look.said.meals[0]!.at[0]!]!.from).toLowerCase()}`,
    )
      ? 'not '
      : '';
  return {
    means: 'want',
    words: `${wishNot}${mealsTold(look, meal)}${rest.length > 0 ? ` ${rest.join(' ')}` : ''}${slot ? ` ${slot.meal}` : ''}${forWhom(look, whose)}${look.trip() ? ` ${look.trip()}` : ''}`,
    score: isWish ? 4 : 2.2,
    left: [],
    holds: look.said.mood.asks
      ? 'that reads as a question'
      : look.said.mood.either
        ? 'that leaves open which one'
        : look.said.mood.doubt !== null
          ? `"${look.said.mood.doubt}" leaves it open`
          : null,
  };
}

/** Every meal that is named, joined; one that may be several as it was typed. */
function mealsTold(look: Look, first: string): string {
  // 'Curry instead of the chili' wishes for the one.
  if (look.says(/ (?:instead of|rather than|in place of|not) /)) return first;
  const sure = look.said.meals.filter(({ names }) => names.length === 1).map(({ names }) => quoted(names[0]));
  return sure.length === look.said.meals.length && sure.length > 1 ? sure.join(' and ') : first;
}

/** Everybody who is named; whoever writes says so without it. */
function forWhom(look: Look, whose: string | undefined): string {
  const all = [...new Set(look.said.people.map(({ names: [name] }) => name))];
  if (all.length > 1) return ` for ${all.map((name) => quoted(name)).join(' and ')}`;
  return whose !== undefined && whose !== look.names.me ? ` for ${whose}` : '';
}
