import { about } from './ask.ts';
import { type Look, quoted } from './look.ts';
import { someThing, someMeal, noThing, figureOf, type Topic } from './topic.ts';

/** The batch that is named, or the one of a meal of which nothing is sealed. */
function unsealedBatch({ said: { batches, meals }, names }: Look): string | undefined {
  const no = batches[0]?.batch ?? (meals[0] && names.batchesOf(meals[0].names[0], true)[0]);
  return no === undefined ? undefined : `B${no}`;
}

/** Topics of recipes, the dryer, pouches and water. */
export const kitchenTopics: readonly Topic[] = [
  {
    means: 'serves',
    cue: / how many (?:servings?|portions?|people|persons|eaters) .*(?:make|makes|serve|serves|feed|feeds|give|gives|for|in|recipe) | (?:serves|feeds) how many /,
    not: / (?:\d+ ?(?:g|kg|lbs?|oz)|one kg|left|stock|come|coming|going) /,
    words: someMeal,
    score: 5,
  },
  {
    means: 'howmany',
    cue: / (?:did|have|has|had) (?:we|i|you|somebody|anybody|anyone|mum|dad) .*(?:buy|bought|purchased|get any|got any) /,
    not: / (?:eaten|ate|cooked|sealed|trip|absorbers?) /,
    words: (look) =>
      look.meal() ??
      look.folded.replace(/^.* (?:buy|bought|purchased|any)\b(?: any| some| more)? /u, '').trim(),
    score: 6,
  },
  {
    means: 'howmany',
    cue: / how many (?:\p{L}+ )*(?:did|have) (?:we|i) (?:\p{L}+ )?(?:made?|sealed?|filled?|packed|done|bagged) /u,
    words: (look) => (look.said.codes.length > 0 ? undefined : `ever ${look.mealTyped() ?? ''}`.trim()),
    score: 6.5,
  },
  {
    means: 'howmany',
    cue: /^ (?:can|could|shall) (?:we|i) (?:make|cook|dry|have) (?:some |a |an |us )?\p{L}+(?: \p{L}+)? $/u,
    words: (look) =>
      look.said.meals.length > 0 || look.said.people.some(({ names: [name] }) => name !== look.names.me)
        ? undefined
        : / (?:make|cook|dry|have) (?:some |a |an |us )?(.+?) $/u.exec(look.folded)?.[1],
    score: 3.4,
  },
  {
    means: 'howmany',
    cue: / (?:which|what|wich) (?:codes?|numbers?) (?:are|is|do|does|have|has) /,
    words: (look) => (look.said.codes.length > 0 ? undefined : look.mealTyped()),
    score: 5,
  },
  {
    means: 'unsealed',
    cue: / (?:what|whats|what s|anything|which|something|how much) .*(?:unsealed|not sealed|open|in jars?) /,
    not: / (?:dryer|drier|stove|absorbers?|weigh\w*) /,
    words: (look) => (about(look) === '' ? '' : undefined),
    score: 4.8,
  },
  {
    means: 'atcamp',
    cue: / (?:what|which|how much|anything|something) .*(?:add|adds|added|goes|go|bring|stir|need) .*at camp | at camp .*(?:what|add) /,
    words: someMeal,
    score: 5.5,
  },
  {
    means: 'whatsin',
    cue: / (?:what|which ingredients|how much of what) .*(?:put|go|goes|going|belongs|need) (?:in|into|for) | how (?:is|are) .* made | what .* made (?:of|from|with|out of) /,
    not: / (?:water|absorber|bag|pouch|dryer|cook for|buy) /,
    words: someMeal,
    score: 4,
  },
  {
    means: 'whatsin',
    cue: / how (?:many|much) \p{L}+ (?:go|goes|are|is|do we put|belongs?) (?:there )?(?:in|into) /u,
    not: / (?:pouch|pouches|servings?|bags|salt|sodium|water|stock|dryer|calories|protein|fat) /,
    words: someMeal,
    score: 5.3,
  },
  {
    means: 'recipe',
    cue: / (?:list|show|see|which|what|all) (?:me |us |all |of |our |the |my |your )*recipes? /,
    words: (look) => (look.said.meals.length === 0 && look.said.all.length < 9 ? '' : undefined),
    score: 4.5,
    evenUnasked: true,
  },
  {
    means: 'recipe',
    cue: / (?:have|got|is there|know|any) .*recipe (?:for|of) \p{L}/u,
    words: (look) =>
      look.said.meals.length > 0
        ? undefined
        : / recipe (?:for|of) (?:a |the )?(.+?) $/u.exec(look.folded)?.[1],
    score: 5.5,
  },
  {
    means: 'unsealed',
    cue: / (?:which|what) (?:batches|loads|ones) .*(?:seal\w*) | (?:anything|something|what) (?:is |s )?(?:left |still )*(?:to seal|unsealed) /,
    words: (look) => (about(look) === '' ? '' : undefined),
    score: 5,
  },
  {
    means: 'water',
    cue: / (?:ml|l|cups?) (?:\w+ ){0,7}(?:enough|ok|okay|too much|too little|right) | (?:enough|ok|too much|right) .*\d+ ?ml /,
    words: (look) =>
      look.said.mood.asks && look.said.codes.length + look.said.meals.length > 0 ? about(look) : undefined,
    score: 4.5,
  },
  {
    means: 'soak',
    cue: / how (?:long|many minutes) .*(?:need|needs|take|takes|ready) /,
    not: / (?:dry|dryer|drier|drying|seal|sealed|keep|last|cook|load) /,
    words: (look) =>
      look.said.batches.length === 0 &&
      look.said.meals.every(({ names }) =>
        names.every((name) => look.names.batchesOf(name, true).length === 0),
      )
        ? someThing(look) && `${about(look)} ${figureOf(look, 'length')}`.trim()
        : undefined,
    score: 4.6,
  },
  {
    means: 'isdry',
    cue: / how (?:long|many hours) (?:has|have|is|was|s) .* (?:in|been|going|running|dried|drying|dryer) /,
    words: (look) => (look.said.codes.length > 0 ? undefined : someThing(look)),
    score: 5.6,
  },
  {
    means: 'isdry',
    cue: / how far (?:is|are|along|has|s) /,
    words: (look) => (look.said.trips.length === 0 ? someThing(look) : undefined),
    score: 4.5,
  },
  {
    means: 'howmany',
    cue: / (?:run out of|out of) |^ (?:please )?count (?:the |our |all )?(?:pouches|bags|stock) /,
    words: (look) =>
      look.said.codes.length === 0
        ? (look.mealTyped() ?? (look.says(/ count /) ? '' : undefined))
        : undefined,
    score: 5.2,
    evenUnasked: true,
  },
  {
    means: 'without',
    cue: / (?:without|leave out|omit|skip|no) (?!me |us |you |him |her )\p{L}/u,
    not: / (?:trip|eat|anything|any|everything|stock|left|what(?! if)|which|who|water|absorber) /,
    words: (look) => {
      const food =
        /\b(?:without|leave out|omit|skip|no)\s+((?:(?:any|the)\s+)?[\p{L}]+(?:\s+(?!in\b|from\b|for\b|please\b)[\p{L}]+)?)/iu.exec(
          look.said.text,
        )?.[1];
      const isMaking =
        look.said.mood.asks ||
        look.has('make', 'cook', 'do', 'have', 'prepare') ||
        look.says(/ (?:can|could|would) /);
      const meal = someMeal(look);
      return food !== undefined && isMaking && meal !== undefined && look.said.batches.length === 0
        ? `${meal} ${food}`
        : undefined;
    },
    score: 5.5,
    evenUnasked: true,
  },
  {
    means: 'stock',
    cue: / (?:which|what) (?:pouches|bags|meals|ones|food) .*(?:for|suits?|ok for) /,
    not: / (?:trip|heron|dinner|lunch|breakfast|cook) /,
    words: (look) => {
      const who = look.said.people.find(({ names: [name] }) => name !== look.names.me)?.names[0];
      return who === undefined || about(look) !== '' ? undefined : `for ${quoted(who)}`;
    },
    score: 4.2,
  },
  {
    means: 'trip',
    cue: /^ (?:show|open|display|see) (?:me )?(?:the )?\p{L}/u,
    words: (look) =>
      about(look) === '' &&
      look.said.people.length === 0 &&
      !look.has('food', 'pack', 'list', 'chart', 'label', 'plan', 'pick', 'water')
        ? look.trip()
        : undefined,
    score: 4,
    evenUnasked: true,
  },
  {
    means: 'unsealed',
    cue: / (?:unsealed|not (?:yet |been )?(?:sealed|in (?:a |any |the )?(?:bags?|pouch|pouches))|left (?:to seal|over)|still to seal|isn t sealed|unpacked yet) /,
    words: (look) => (look.said.codes.length > 0 ? undefined : someThing(look)),
    score: 6,
  },
  {
    means: 'unsealed',
    cue: / how (?:many|much) (?:more |\w+ )*(?:pouches|bags|portions) .*(?:make|get|give|gives|fill|fills|seal|left in|from|out of) /,
    not: / (?:scale|cook) /,
    words: (look) =>
      look.said.codes.length === 0 && unsealedBatch(look) !== undefined
        ? `${figureOf(look, 'mass')} ${unsealedBatch(look)!}`.trim()
        : undefined,
    score: 6,
  },
  {
    means: 'isdry',
    cue: / (?:water (?:is |left )?(?:still |left )?(?:in|left)|still wet|how wet|how damp|evaporated) /,
    not: / (?:vacuum|pour|add|need) /,
    words: (look) => (look.said.batches.length > 0 && look.said.codes.length === 0 ? about(look) : undefined),
    score: 5.2,
  },
  {
    means: 'isdry',
    cue: / (?:open|stop|empty|unload) the (?:dryer|drier) | (?:what|anything|what s|whats|something|how (?:full|empty)) .*(?:dryer|drier|machine) | what .*(?:is|are) drying | what ?s drying | (?:dryer|drier) .*(?:empty|free|busy|full) /,
    not: / (?:(?:dryer|drier) do we have|our (?:dryer|drier)|trays? (?:does|do)|hold|holds|size|big|limit|max\w*|settings?|weigh) /,
    words: (look) => about(look),
    score: 5,
  },
  {
    means: 'soak',
    cue: / (?:how hot|what temperature|which temperature) .*(?:water|boil) | water .*(?:how hot|what temperature) | (?:boils?|boiling) (?:at what|point) /,
    words: (look) => `${about(look)} ${figureOf(look, 'length')}`.trim(),
    score: 5,
  },
  {
    means: 'water',
    cue: / (?:ml|cups?|litres?|water) for /,
    words: (look) => (look.said.codes.length + look.said.meals.length > 0 ? about(look) : undefined),
    score: 3,
  },
  {
    means: 'howmany',
    cue: / what (?:can|could|do|is there|s there) (?:we |i |you |still |left )*(?:eat|have|to eat|for us to eat)(?: still| left| now| today)? $/,
    words: noThing(''),
    score: 3.5,
  },
  {
    means: 'settingof',
    cue: / (?:what|which|how) (?:size|big|large|kind|sort) .*(?:bags?|pouch|pouches) | (?:bags?|pouch|pouches) .*(?:what|which) size | (?:what|which) (?:bags?|pouch size) /,
    not: / (?:absorber|left|have we) /,
    words: () => 'pouch',
    score: 4,
  },
];
