import { about } from './ask.ts';
import {
  someThing,
  someMeal,
  someTrip,
  noThing,
  ranked,
  beforeText,
  whoAndWhen,
  type Topic,
} from './topic.ts';

/** Topics of trips, of what was recorded and how it was liked, and of help. */
export const otherTopics: readonly Topic[] = [
  {
    means: 'tripwater',
    cue: / water /,
    words: (look) =>
      look.said.codes.length + look.said.meals.length === 0 &&
      (look.said.trips.length > 0 || look.says(/ (?:trip|in total|altogether|in all|whole|all together) /))
        ? (look.trip() ?? '')
        : undefined,
    score: 5.5,
  },
  {
    means: 'cook',
    cue: / what (?:do|else do|all do|should|must) (?:we|i) (?:all |still |else )*(?:need|take|bring|want|get) /,
    not: / (?:water|absorber|salt|buy) /,
    words: (look) =>
      about(look) === '' ? (look.trip() ?? (look.says(/ trip /) ? '' : undefined)) : undefined,
    score: 4.5,
  },
  {
    means: 'ranking',
    cue: / (?:more|most|least|highest|lowest|low|high|saltiest|lightest|fattiest|fewest|rich|little) /,
    not: / \d+ ?(?:mg|g) | at (?:most|least) /,
    words: ranked,
    score: 4.5,
    evenUnasked: true,
  },
  {
    means: 'stock',
    cue: / (?:expir\w*|best by|best before|go(?:es)? (?:off|bad)|run(?:s)? out|keep|eat|use|used|eaten|old) .*(?:before|until|by|this year) /,
    words: (look) => (look.said.codes.length > 0 ? undefined : beforeText(look)),
    score: 5,
  },
  {
    means: 'log',
    cue: / what (?:did|has|have) \p{L}+ (?:do|done|record\w*|enter\w*|change\w*|write|typed?|seal\w*|cook\w*) | what did (?:we|everyone|everybody) eat /u,
    words: (look) => (about(look) === '' ? whoAndWhen(look) : undefined),
    score: 4.5,
  },
  {
    means: 'tripof',
    cue: / (?:is .* (?:high|far|cold)|how many (?:days|weeks|nights|people|persons|meals|of us|kids)|how long|how soon|who (?:else )?(?:is|s|isn t|comes|goes|won t|all)|are we (?:all )?(?:going|taking)|is \p{L}+ (?:coming|going)|does \p{L}+ come|when (?:do|are|is|does)|where) /u,
    not: / (?:eats?|eating|dinner|breakfast|lunch|cook\w*|dry\w*|packed|pack|water|food|keep|stand|soak\w*) /,
    words: someTrip,
    score: 4,
  },
  {
    means: 'trip',
    cue: /^ (?:can i see |can you )?(?:please )?(?:show|see|open|display|list|what s|whats|what is)(?: me| us)? (?:\p{L}+ )*(?:plan )?(?:for |of |about )?(?:the |our |my |next )*(?:trip|trips|tour|hike)(?: plan| details| again)? $/u,
    words: (look) => look.trip() ?? '',
    score: 4.5,
    evenUnasked: true,
  },
  {
    means: 'ratingsof',
    cue: / (?:how (?:did|do|does|was|were)|did|do|does|what (?:did|do)|who) .*(?:like|liked|likes|think|enjoy|rate|rated|rating|ratings|taste|tasted|reviews?) | (?:was|were|is|are) .*(?:good|tasty|salty|nice|popular|bland|liked) $| (?:was|were) .* too (?:salty|bland|much|little|wet|dry|spicy|runny) | (?:ratings?|reviews?|opinions?) (?:of|for|on|about) | how (?:was|were) (?:the|our|my) /,
    not: / (?:would like|looks? like|drying|doing|water|weigh\w*|how long|good for|still good) /,
    words: someThing,
    score: 4,
  },
  {
    means: 'isdry',
    cue: / (?:when|whens|how (?:soon|often)|what time) .*weigh\w* /,
    words: (look) => (look.says(/ (?:last|did|was|were|had) /) ? undefined : about(look)),
    score: 6,
  },
  {
    means: 'help',
    cue: / what (?:does|do|is|s) (?:a |the |an )?(\p{L}+)(?: request| command)? (?:mean|do|for|good for) $/u,
    words: (look) =>
      look.said.codes.length === 0
        ? / what (?:does|do|is|s) (?:a |the |an )?(\p{L}+)/u.exec(look.folded)?.[1]
        : undefined,
    score: 3.5,
  },
  {
    means: 'howmany',
    cue: / (?:larder|pantry|cupboard|cellar|store ?room|basement|freezer|shelves|supplies|reserves?) /,
    not: / (?:degrees|warm|cold|\d+ ?c|temperature|hot) /,
    words: (look) => (look.said.codes.length === 0 ? (look.mealTyped() ?? '') : undefined),
    score: 3.5,
  },
  {
    means: 'howmany',
    cue: / (?:do we|have we|is there|are there|did we) (?:still )?(?:have|got|keep|left|any|more|some) .*/,
    words: (look) => (look.said.codes.length === 0 ? look.mealTyped() : undefined),
    score: 5,
    not: / (?:enough|gluten|milk|nuts?|salt|absorbers?|to|eaten|ate|cook\w*) /,
  },
  {
    means: 'whatof',
    cue: / (?:(?:has|have|did|was|were) (?:any(?:one|body)|some(?:one|body)|we|it|the|my)|no ?(?:body|one) (?:has |have |had )?) ?.*(?:touch\w*|open\w*|tak\w*|took|ate|eat\w*|us(?:e|ed)|finish\w*) /,
    words: (look) => (about(look) === '' ? undefined : `${about(look)} used`),
    score: 4.4,
  },
  {
    means: 'scale',
    cue: / how many (?:trays|loads) .*(?:fill|fills|make|makes|need|needs|take|takes|for) /,
    words: (look) => {
      const meal = someMeal(look);
      return meal === undefined ? undefined : `${meal} x1`;
    },
    score: 4,
  },
  {
    means: 'firstwords',
    cue: /^ (?:are you|you) (?:there|here|awake|alive|on|online|working)(?: bot)? $/,
    words: noThing(''),
    score: 5,
  },
  {
    means: 'unsealed',
    cue: / how much (?:of|is left of|remains of) .*(?:left|remain\w*|over) /,
    words: (look) => look.said.batches[0] && about(look),
    score: 4.6,
  },
];
