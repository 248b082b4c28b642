import { about, ask, isAsking } from './ask.ts';
import type { Reader } from './hold.ts';
import type { Look } from './look.ts';

/** 'What is for dinner on Saturday', 'who eats what on Sunday', 'who comes', 'what are we short of'. */
export const tripAsks: Reader = (look) => {
  if (!isAsking(look) && !look.says(/ (?:who eats what|menu) /)) return undefined;
  const trip = look.trip() ?? '';
  if (trip === '' && look.says(/ (?:what|which|list|show|any) (?:\w+ )?trips? (?:do|are|have|is|$)/))
    return ask('trip', '', 4.5);
  const day = dayText(look);
  const slot = look.slotMeal()?.meal ?? '';
  const isFood = look.says(
    / (?:eat|eats|eating|dinner|breakfast|lunch|supper|menu|for food|meal|meals|planned|chosen) /,
  );
  if (
    look.says(
      / (?:who (?:comes|is coming|s coming|is going|goes|all comes|all is coming)|who s (?:in|going)|when (?:is|do we (?:leave|go)|does|are)|how high|what altitude|where are we going|how long is) /,
    ) &&
    (trip !== '' || look.has('trip', 'go', 'come', 'leave'))
  )
    return ask('tripof', trip, 4);
  if (
    look.says(/ (?:enough|short|missing|lack\w*|cover\w*|run out|everybody fed|still need) /) &&
    !look.has('absorber', 'pack') &&
    (trip !== '' || look.has('food', 'trip', 'meal', 'eat', 'cook', 'dinner', 'missing', 'short'))
  )
    return ask('cook', trip, 4.5);
  if (
    look.says(/ (?:wish|wishes|wished|want|wants|wanted|ask(?:ed)? for) /) &&
    look.says(/ (?:who|what|which|did|does|list|any) /)
  )
    return ask('want', '', 4.2);
  if (
    (day !== '' || slot !== '' || trip !== '' || look.says(/ who eats what /)) &&
    isFood &&
    look.said.codes.length === 0 &&
    look.said.meals.length === 0 &&
    look.says(/ (?:what|whats|which|who|menu) /) &&
    !look.has('cook', 'have', 'allergic', 'suggest', 'propose', 'choose', 'pick')
  )
    return ask('dinner', `${trip} ${day} ${slot}`, 4.5);
  if (
    look.says(
      / (?:everything|all|what|anything|it|food) .* in (?:the|our|my) (?:bags?|packs?|backpacks?|rucksacks?|car|boat|sledge?|sled)(?: already| yet| now)? $| (?:everything|all|what|anything|still|left|already) .*(?:pack|packed)| (?:pack|packed) .*(?:left|missing|still|everything|all) /,
    )
  )
    return ask('packedyet', trip, 5);
  if (look.has('cost', 'price', 'expensive', 'pay', 'money', 'cheap')) return ask('cost', about(look), 4);
  return undefined;
};

/** The day that is spoken of, as typed. */
export function dayText(look: Look): string {
  const found =
    /\b(?:(?:mon|tues|wednes|thurs|fri|satur|sun)day|today|tonights?|tomorrow|mon|tue|wed|thu|fri|sat|sun|\d{1,2}(?:st|nd|rd|th)?\s+(?:of\s+)?(?:jan|feb|mar|apr|may|jun|jul|aug|sep|oct|nov|dec)\p{L}*|first (?:day|evening|night)|last (?:day|evening|night))\b/iu.exec(
      look.said.text,
    )?.[0];
  return found?.toLowerCase().startsWith('tonight') ? 'today' : (found ?? '');
}

/** 'What is our altitude', 'which absorbers do we have'. */
export const settingAsks: Reader = (look) => {
  if (
    !isAsking(look) ||
    !look.says(
      / (?:where (?:do )?we live|altitude|elevation|how high (?:do we|are we|is home)|absorbers?|tray weights?|trays?|dryer|storage|time ?zone|units?|settings?|scale|cup|reminders?|horizon|(?:cellar|pantry|basement) .*(?:set|temperature|degrees)|(?:warm|cold) .*(?:cellar|pantry|basement)) /,
    )
  )
    return undefined;
  if (
    about(look) !== '' ||
    look.said.trips.length > 0 ||
    look.says(/ (?:how do|how can|how to|in the (?:dryer|drier|machine)|who) /)
  )
    return undefined;
  const word = look.says(/ (?:dryer|drier) /)
    ? 'dryer'
    : look.says(/ where (?:do )?we live /)
      ? 'altitude'
      : (/(altitude|elevation|absorbers?|trays?|dryer|storage|zone|units?|scale|cup|reminders?|horizon)/iu.exec(
          look.said.text,
        )?.[1] ?? (look.says(/ (?:cellar|pantry|basement) /) ? 'storage' : ''));
  return ask('settingof', word.toLowerCase(), 3.5);
};

/** 'What do we need to buy', 'shopping list', 'shopping list for the lentil pot'. */
export const shopping: Reader = (look) =>
  !(look.said.meals.length > 0 && look.said.all.some(({ is }) => is === 'number' || is === 'quantity')) &&
  look.has('shop', 'shopping', 'buy', 'groceries') &&
  (isAsking(look) || look.says(/ list |^ (?:shop|shopping|buy|groceries) /))
    ? ask(
        'shop',
        `${!isAsking(look) && look.has('make', 'new', 'create', 'write', 'start') ? '' : 'preview '}${look.meal() ?? look.trip() ?? ''}`.trim(),
        4,
      )
    : undefined;

/** 'The season at a glance', 'how did the season go', 'what did we waste this year'. */
export const seasonAsked: Reader = (look) => {
  const isSeason =
    look.says(/ season /) && (isAsking(look) || look.says(/ (?:glance|summary|review|overview|report) /));
  const isYear = isAsking(look) && look.says(/ wasted? /) && look.says(/ (?:year|season) /);
  if (!isSeason && !isYear) return undefined;
  const year = /\b20\d\d\b/.exec(look.said.text)?.[0] ?? '';
  return { means: 'season', words: year, score: 4, left: [], holds: null };
};
