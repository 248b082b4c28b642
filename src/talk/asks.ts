import type { Reader } from './deeds.ts';
import { type Look, type Meaning, quoted } from './look.ts';

// Questions about what is on record. Each names the question that answers it and hands over what it is about; no
// question here ever records.

const ask = (means: string, words: string, score: number): Meaning => ({
  means,
  words: words.trim(),
  score,
  left: [],
  holds: null,
});

/** What a question is about, as the questions take it: codes, a batch, a meal. */
function about(look: Look): string {
  const codes = look.codes();
  if (codes !== '') return codes;
  const [batch] = look.said.batches;
  return batch ? `B${batch.batch}` : (look.mealTyped() ?? '');
}

const isAsking = (look: Look): boolean => look.said.mood.asks;

/** 'How many curries are left', 'do we have any pizza left', 'anything vegan'. */
export const howMany: Reader = (look) => {
  const counts =
    (dietWords(look) !== '' && look.says(/ (?:anything|something|any|what) /)) ||
    look.says(
      / how many | number of | do we (?:still )?have | have we got | got any | any .*left | is there (?:any|still)| are there (?:any|still)| what s left | what is left | whats left | what do we have | in stock | in the (?:cupboard|cellar|pantry|store) | (?:left|remaining) $| on the shelf /,
    );
  if (!counts || look.says(/ how many (?:cups|ml|mugs|people|days|hours|calories|kcal|loads|trays|grams) /))
    return undefined;
  if (look.has('absorber', 'setting', 'altitude') || (look.has('pack') && !look.has('stock')))
    return undefined;
  const diet = dietWords(look);
  const meal = look.mealTyped();
  const whose = look.person();
  if (whose !== undefined && look.says(/ for /)) return ask('stock', `${meal ?? ''} for ${whose}`, 4.5);
  if (diet !== '') return ask('stock', `${diet} ${meal ?? ''}`, 4.5);
  if (look.said.codes.length > 0) return ask('whatof', look.codes(), 3);
  const unknown = meal === undefined ? unknownFood(look) : undefined;
  const score = 3 + (meal === undefined ? 0 : 1) + (look.says(/ how many /) ? 0.5 : 0);
  return ask('howmany', meal ?? (look.said.batches[0] ? about(look) : (unknown ?? '')), score);
};

/** A food that the household has no meal of: 'any pizza left'. */
function unknownFood(look: Look): string | undefined {
  const found =
    / (?:any|some|of|more|many) ([\p{L}]{3,20})(?: \w+)? (?:left|remaining|in stock|do we have|are|have we) /u.exec(
      look.folded,
    )?.[1];
  return found === undefined ||
    /^(?:pouch|pouches|food|meals?|dinners?|servings?|thing|things|stock|bags?|left|are|do|more|of|it|them|that|we|breakfasts?|days?)$/.test(
      found,
    )
    ? undefined
    : found;
}

const diets = /\b(vegan|vegetarian|pescatarian|gluten[- ]free|dairy[- ]free|nut[- ]free|halal|kosher)\b/iu;
const free =
  /\b(?:without|no|free of|free from)\s+((?:any\s+)?[\p{L}]{3,15}(?:\s+(?:or|and)\s+[\p{L}]{3,15})?)/iu;

function dietWords(look: Look): string {
  const diet = diets.exec(look.said.text)?.[1];
  if (diet !== undefined) return diet.replace(' ', '-');
  const without = free.exec(look.said.text)?.[1];
  return without === undefined ? '' : `no ${without.replace(/^any\s+/iu, '')}`;
}

/** 'How heavy is B3-4', 'what does the pack weigh'. */
export const howHeavy: Reader = (look) => {
  if (
    !look.says(
      / how heavy | how much (?:does|do|did|will|should|would) .*weigh| what (?:does|do|did|will|is|s) .*(?:weigh|weight)| weight of | total weight | how many grams | dry weight | how much (?:is|are) (?:in|on) /,
    )
  )
    return undefined;
  if (look.says(/ (?:pack|backpack|rucksack|food|bag) /) && about(look) === '')
    return ask('packweight', look.trip() ?? '', 4);
  if (look.says(/ when (?:dry|done|ready) | expected | should | supposed /) && look.said.batches.length > 0)
    return ask('isdry', about(look), 4);
  return about(look) === '' ? undefined : ask('howheavy', about(look), 4.5);
};

/** 'Is B6 dry', 'when will it be ready'. */
export const dryness: Reader = (look) => {
  if (
    isAsking(look) &&
    look.says(/ how (?:is|s|are) .*(?:doing|going|coming|getting on|looking) /) &&
    look.said.batches.length > 0
  )
    return ask('isdry', about(look), 4);
  const dry = look.says(/ (?:dry|dried|done|ready|steady|finished) /) && !look.says(/ dry (?:weight|goods) /);
  const when = look.says(
    / (?:how long (?:until|till|before|does|will|has)|when (?:will|is|can|do|should)|how much longer|hours? (?:left|to go)) /,
  );
  if (!isAsking(look) || (!dry && !(when && look.has('dryer', 'drying', 'weigh', 'load')))) return undefined;
  if (
    look.said.trips.length > 0 ||
    look.has('cook', 'everybody') ||
    look.says(/ (?:finished|done) (?:with|eating|packing) /)
  )
    return undefined;
  return ask('isdry', about(look), 3.5 + (about(look) === '' ? 0 : 0.5) + (look.has('weigh') ? 0.5 : 0));
};

/** 'Can I seal B5', 'is B5 ready to seal', 'which absorber do I need'. */
export const sealable: Reader = (look) => {
  if (!isAsking(look)) return undefined;
  if (look.has('absorber') && look.says(/ (?:which|what|how many|how big|need|size) /))
    return ask(
      'absorber',
      `${look.said.all.find((t) => t.is === 'quantity' && t.unit.kind === 'mass')?.typed ?? ''} ${about(look)}`,
      4,
    );
  if (
    look.has('seal') &&
    look.says(/ (?:can|may|should|could|ready|ok|okay|safe|time) /) &&
    !look.has('check') &&
    (look.said.batches.length > 0 || look.said.meals.length > 0)
  )
    return ask('isdry', about(look), 5);
  return undefined;
};

/** 'May Noa eat the chili', 'is the curry ok for Ben', 'what can Noa have', 'does the curry have gluten'. */
export const mayEat: Reader = (look) => {
  const { said } = look;
  const who = said.people.map(({ names: [name] }) => name);
  const isMay = look.says(
    / (?:may|can|could|should|is|are|ok|okay|safe|fine|good|clear|allowed|suit|suits|suitable|works?|eats?|have|has|right) /,
  );
  const hasThing = said.meals.length + said.codes.length + said.batches.length > 0;
  if (!isAsking(look)) return undefined;
  if (look.says(/ (?:weigh|seal|cook|make|print|pack|weight|come|coming|comes|wish|wished|want|wants) /))
    return undefined;
  const whom =
    who.length > 0
      ? who.map(quoted).join(' ')
      : look.says(/ (?:everyone|everybody|all of us|anyone|anybody|who|which of us) /)
        ? 'everybody'
        : '';
  if (
    whom !== '' &&
    hasThing &&
    isMay &&
    look.says(/ (?:may|can|could|ok|okay|safe|fine|clear|allowed|suits?|suitable|eat|eats|have|for) /) &&
    !look.says(
      / (?:who|which of us) (?:ate|used|had|threw|sealed|made|cooked|loaded|weighed|recorded|discarded|opened|did) /,
    )
  ) {
    if (
      look.says(/ (?:ate|eaten|had|did|has|have) (?!gluten|milk)/) &&
      !look.says(/ (?:may|can|could|ok|okay|safe) /)
    )
      return undefined;
    return ask('mayeat', `${about(look)} for ${whom}`, 5);
  }
  if (
    who.length > 0 &&
    !hasThing &&
    look.says(/ (?:what|which|anything|something|everything|meals?|pouches|food) /) &&
    look.says(/ (?:may|can|could|eat|have|safe|ok|clear|allowed) /)
  )
    return ask('whatfor', who.map(quoted).join(' '), 5);
  const avoid = avoided(look);
  if (
    who.length > 0 &&
    !hasThing &&
    avoid !== undefined &&
    look.says(/ (?:may|can|eat|have|allowed|allergic) /)
  )
    return ask('eaterof', quoted(who[0]!), 4.5);
  if (
    avoid !== undefined &&
    (hasThing || look.says(/ (?:which|what|anything|any) /)) &&
    look.says(/ (?:contain|contains|have|has|in|got|free|with|any|is|are|there|nuts?) /)
  )
    return ask('holds', `${about(look)} ${avoid}`, hasThing ? 5 : 3);
  return undefined;
};

const avoidable =
  /\b(gluten|wheat|barley|rye|oats?|milk|dairy|lactose|butter|cheese|cream|eggs?|nuts?|peanuts?|almonds?|walnuts?|cashews?|hazelnuts?|soya?|fish|shellfish|crustaceans?|prawns?|shrimps?|mussels?|molluscs?|sesame|celery|mustard|lupin|sulphites?|sulfites?|pork|beef|meat|chicken|lamb|bacon|honey|mushrooms?|onions?|garlic|tomato(?:es)?|chil(?:l)?i(?:es)?|pepper|alcohol|wine|gelatine?|coriander|coconut|allergens?)\b/giu;

function avoided(look: Look): string | undefined {
  const inMeals = new Set(look.said.meals.filter(({ whole }) => whole).flatMap(({ at }) => at));
  const words = look.said.all
    .flatMap((token, i) => (token.is === 'word' && !inMeals.has(i) ? [token.typed] : []))
    .join(' ');
  const found = [...words.matchAll(avoidable)]
    .map((m) => m[1]!)
    .filter((word) => !look.said.meals.some(({ at }) => at.some((i) => look.said.all[i]!.typed === word)));
  const diet = diets.exec(words)?.[1]?.replace(' ', '-');
  return found[0] ?? diet;
}

/** 'How much salt in the soup', 'how many calories in B2-1'. */
export const nutrients: Reader = (look) => {
  if (about(look) === '') return undefined;
  if (
    look.says(/ (?:salt|sodium|salty) /) &&
    look.says(/ (?:how|much|what|is|does|amount|many) /) &&
    isAsking(look) &&
    !look.says(/ \d+ mg /)
  )
    return ask('nutrition', `${about(look)} sodium`, 5);
  if (look.says(/ (?:calories|kcal|energy|kilojoules?|kj) /) && isAsking(look))
    return ask('nutrition', `${about(look)} energy`, 5);
  if (look.says(/ (?:protein|fat|fibre|fiber|carbs?|carbohydrates?|nutrition|nutrients?) /) && isAsking(look))
    return ask('nutrition', `${about(look)} all`, 5);
  return undefined;
};

/** 'What is in the mac and cheese', 'show the recipe'. */
export const ingredients: Reader = (look) => {
  const meal = look.mealTyped();
  if (meal === undefined || look.said.codes.length > 0) return undefined;
  if (
    look.says(
      / (?:what s|whats|what is|what goes|what went) (?:in|into) | ingredients? | (?:made (?:of|from|with)) | (?:show|see|give) .*recipe | recipe (?:of|for) | how (?:do|did) (?:we|you|i) (?:make|cook) /,
    )
  )
    return ask('recipe', meal, 5);
  return undefined;
};

/** 'How long does the chili keep', 'is B2-1 still good', 'what goes off first'. */
export const keeping: Reader = (look) => {
  const isKeep = look.says(
    / (?:how long .*(?:keep|last|good)|best by|best before|expir\w*|use by|go(?:es|ing)? off|go(?:es|ing)? bad|still (?:good|ok|okay|edible|fine|safe)|too old|out of date|spoil\w*|shelf life|how old|oldest|eat first|keeps?|run(?:s|ning)? out)/,
  );
  if (!isKeep || (!isAsking(look) && !look.says(/ (?:first|oldest) /))) return undefined;
  if (look.says(/ (?:smell|puff|swollen|swell|bloat|leak|loose|mould|mold)/)) return undefined;
  if (look.said.people.length > 0 && look.says(/ how old /))
    return ask('eaterof', quoted(look.person()!), 4.5);
  return ask('keeps', about(look), 4 + (about(look) === '' ? 0 : 0.5));
};

/** 'What happened to B3-2', 'did we eat B1-3', 'where is B2-1', 'who threw away B3-2', 'when was B1 sealed'. */
export const history: Reader = (look) => {
  const what = about(look);
  if (!isAsking(look) || what === '') return undefined;
  if (look.says(/ (?:may|can|could|allowed|should|safe|ok|okay) /)) return undefined;
  const who = look.says(/ (?:who|whose|by whom) /);
  const when = look.says(/ (?:when|what day|how long ago|which day|what date) /);
  const happened = look.says(/ (?:happen\w*|where|become|still|did|was|were|has|have|had|gone|got) /);
  const deed = look.has(
    'eat',
    'use',
    'throw',
    'discard',
    'bin',
    'toss',
    'seal',
    'load',
    'weigh',
    'cook',
    'make',
    'record',
    'open',
    'rate',
    'pack',
    'dry',
    'start',
    'finish',
  );
  if (look.says(/ (?:dry|ready|done) /) && !who && !when) return undefined;
  const verb = look.has('seal')
    ? ' sealed'
    : look.has('load', 'cook', 'start') || (look.has('make') && look.said.codes.length === 0)
      ? ' loaded'
      : look.has('weigh')
        ? ' weighed'
        : look.has('eat', 'use', 'open', 'finish')
          ? ' used'
          : look.has('throw', 'discard', 'bin', 'toss')
            ? ' discarded'
            : '';
  if (who && (deed || happened)) return ask('whatof', `${what} who${verb}`, 5);
  if (when && (deed || happened)) return ask('whatof', `${what} when${verb}`, 5);
  if (happened && (deed || look.says(/ (?:happen\w*|where|become|still|gone|there) /)))
    return ask('whatof', `${what}${verb}`, 4.5);
  return undefined;
};

/** 'Who is vegetarian', 'what is Noa allergic to', 'who cannot have milk'. */
export const eaters: Reader = (look) => {
  if (!isAsking(look)) return undefined;
  const diet = diets.exec(look.said.text)?.[1] ?? avoided(look);
  const hasThing = look.said.meals.length + look.said.codes.length > 0;
  if (
    look.says(
      /^ (?:who|which of us|who s|whos|anyone|anybody|is anyone|is anybody|does anyone|does anybody) /,
    ) &&
    !hasThing &&
    (diet !== undefined || look.says(/ (?:allerg\w*|diets?|picky|avoid\w*) /))
  )
    return ask('whoavoids', diet?.replace(' ', '-') ?? '', 5);
  if (
    look.said.people.length > 0 &&
    !hasThing &&
    look.says(
      / (?:allerg\w*|avoid\w*|not eat|can t|cannot|never|how old|age|portion|sodium limit|calories|diet|dislikes?|hate|hates|intoleran\w*) /,
    )
  )
    return ask('eaterof', quoted(look.person()!), 4.5);
  if (
    look.says(
      / who (?:eats|are|is) (?:the )?(?:eaters?|with us|recorded|here|in the (?:house|family)) | list (?:of )?eaters | who (?:all )?eats(?: here| with us)? $/,
    )
  )
    return ask('eater', '', 3);
  return undefined;
};

/** 'What is for dinner on Saturday', 'who eats what on Sunday', 'who comes', 'what are we short of'. */
export const tripAsks: Reader = (look) => {
  if (!isAsking(look) && !look.says(/ (?:who eats what|menu) /)) return undefined;
  const trip = look.trip() ?? '';
  const day = dayText(look);
  const slot = look.slotMeal()?.meal ?? '';
  const isFood = look.says(/ (?:eat|eats|eating|dinner|breakfast|lunch|supper|menu|for food|meal|meals) /);
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
    return ask('want', '', 3.5);
  if (
    (day !== '' || slot !== '' || trip !== '' || look.says(/ who eats what /)) &&
    isFood &&
    look.said.codes.length === 0 &&
    look.said.meals.length === 0 &&
    look.says(/ (?:what|whats|which|who|menu) /) &&
    !look.has('cook', 'have', 'allergic')
  )
    return ask('dinner', `${trip} ${day} ${slot}`, 4.5);
  if (
    look.says(
      / (?:everything|all|what|anything|still|left|already) .*(?:pack|packed)| (?:pack|packed) .*(?:left|missing|still)/,
    )
  )
    return ask('packedyet', trip, 5);
  if (look.has('cost', 'price', 'expensive', 'pay', 'money', 'cheap')) return ask('cost', '', 4);
  return undefined;
};

function dayText(look: Look): string {
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
      / (?:altitude|elevation|how high (?:do we|are we|is home)|absorbers?|tray weights?|trays?|dryer|storage|time ?zone|units?|settings?|scale|cup|reminders?|horizon) /,
    )
  )
    return undefined;
  if (about(look) !== '' || look.said.trips.length > 0 || look.says(/ (?:how do|how can|how to) /))
    return undefined;
  const word =
    /(altitude|elevation|absorbers?|trays?|dryer|storage|zone|units?|scale|cup|reminders?|horizon)/iu.exec(
      look.said.text,
    )?.[1] ?? '';
  return ask('settingof', word.toLowerCase(), 3.5);
};

const worrying =
  /\b(?:puffy|puffed|swollen|swelled|bloated|blown up|smells?|stinks?|smelly|mou?ldy?|mou?ld|slimy|leak(?:s|ed|ing)?|loose|lost (?:its|the) vacuum|no vacuum|hole|torn|ripped|went off|gone off|tastes? (?:off|funny|weird|sour)|standing|stood|left out|been out|out of the (?:dryer|fridge))\b/iu;

/** 'B3-4 is puffy, what do I do', 'it stood for four hours, can we still eat it'. The caution comes first. */
export const worries: Reader = (look) => {
  const { text, mood } = look.said;
  if (!worrying.test(text)) return undefined;
  const asksWhat =
    mood.asks || /\bwhat (?:do|should|now|to do|can)\b|\b(?:safe|ok|okay) (?:to eat|still)\b/iu.test(text);
  if (!asksWhat) return undefined;
  const kind = /\b(?:puffy|puffed|swollen|swelled|bloated|blown)/iu.test(text)
    ? 'swollen'
    : /\b(?:smells?|stinks?|smelly|mou?ld|slimy|went off|gone off|tastes?)/iu.test(text)
      ? 'smells'
      : /\b(?:standing|stood|left out|been out|hours?)\b/iu.test(text)
        ? 'stood'
        : 'loose';
  return ask('worry', `${kind} ${about(look)}`, 6);
};

/** 'What do we need to buy', 'shopping list': what is to be cooked says it, until a list of its own does. */
export const shopping: Reader = (look) =>
  look.has('shop', 'shopping', 'buy', 'groceries') && (isAsking(look) || look.says(/ list /))
    ? ask('cook', look.trip() ?? '', 4)
    : undefined;

/** 'Should I throw out B1-5', 'should we eat it now': what its date says. */
export const should: Reader = (look) =>
  look.said.codes.length > 0 &&
  isAsking(look) &&
  look.has('throw', 'discard', 'bin', 'toss', 'eat', 'use', 'keep') &&
  look.says(/ (?:should|shall|must|need to|have to|can i|can we|may|could i|could we) /)
    ? ask('keeps', look.codes(), 4)
    : undefined;

/** A code alone, 'tell me about B3-1', 'cards please'. */
export const cards: Reader = (look) => {
  const what = look.codes() !== '' ? look.codes() : look.said.batches[0] ? about(look) : '';
  if (what === '') return undefined;
  const isOnly = look.leftBy([...look.codeTokens(), ...look.said.batches.map(({ at }) => at)]).length === 0;
  const wants = look.says(
    / (?:card|cards|about|details?|info|information|show|tell|again|what s|whats|what is|see) /,
  );
  if (!isOnly && !wants) return undefined;
  return ask('pouch', what, wants ? 3.5 : 2.5);
};

/** 'Can I undo', 'what was recorded last'. */
export const undoAsks: Reader = (look) =>
  isAsking(look) && look.has('undo', 'revert') && look.said.codes.length === 0
    ? ask('undoable', '', 5)
    : undefined;
