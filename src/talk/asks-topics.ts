import { about, ask, isAsking } from './ask.ts';
import type { Reader } from './hold.ts';
import { type Look, quoted } from './look.ts';

/** What a question may be about: the words that show it, and the question that answers it with its words. */
interface Topic {
  readonly means: string;
  readonly cue: RegExp;
  readonly not?: RegExp;
  /** The words handed over; undefined where what it is about was not said. */
  readonly words: (look: Look) => string | undefined;
  readonly score: number;
  /** Orders count too: 'show me the trip'. */
  readonly evenUnasked?: true;
}

const someThing = (look: Look) => about(look) || undefined;
const someMeal = (look: Look) => (look.said.codes.length > 0 ? undefined : look.mealTyped());
const someTrip = (look: Look) =>
  look.trip() ?? (look.says(/ (?:trip|hike|tour|we (?:go|leave|going|leaving)) /) ? '' : undefined);
const noThing = (words: string) => (look: Look) => (about(look) === '' ? words : undefined);

const nutrient = (look: Look) =>
  look.says(/ (?:salt\w*|sodium) /)
    ? 'sodium'
    : look.says(/ (?:calor\w*|kcal|energy|filling) /)
      ? 'energy'
      : look.says(/ protein /)
        ? 'protein'
        : look.says(/ fat(?:ty|tiest)? /)
          ? 'fat'
          : undefined;

function ranked(look: Look): string | undefined {
  const what = nutrient(look);
  if (what === undefined || about(look) !== '') return undefined;
  const least = look.says(/ (?:least|lowest|low|little|less|lightest|fewest) /) ? 'least ' : '';
  const who = look.said.people.find(({ names: [name] }) => name !== look.names.me)?.names[0];
  return `${least}${what}${who === undefined ? '' : ` for ${quoted(who)}`}`;
}

/** The first figure of a kind, as typed. */
const figureOf = (look: Look, kind: string): string =>
  look.said.all.find((token) => token.is === 'quantity' && token.unit.kind === kind)?.typed ?? '';

const date =
  /\b(?:before|until|by)\s+(?:the\s+)?(?:end of\s+)?((?:\d{1,2}\.?\s+)?(?:jan|feb|mar|apr|may|jun|jul|aug|sep|oct|nov|dec)\p{L}*(?:\s+20\d\d)?|20\d\d(?:-\d\d?)?(?:-\d\d?)?|\d{1,2}[./]\d{1,2}[./](?:20)?\d\d)/iu;

/** 'Before 2029' is before its first day. */
function beforeText(look: Look): string | undefined {
  const found = date.exec(look.said.text)?.[1];
  if (found === undefined) return undefined;
  return `${look.mealTyped() ?? ''} before ${/^20\d\d$/.test(found) ? `${found}-01` : found}`.trim();
}

const topics: readonly Topic[] = [
  {
    means: 'serves',
    cue: / how many (?:servings?|portions?|people|persons|eaters) .*(?:make|makes|serve|serves|feed|feeds|give|gives|for|in|recipe) | (?:serves|feeds) how many /,
    not: / (?:\d+ ?(?:g|kg|lbs?|oz)|one kg|left|stock|come|coming|going) /,
    words: someMeal,
    score: 5,
  },
  {
    means: 'recipe',
    cue: / (?:what|which ingredients|how much of what) .*(?:put|go|goes|going|belongs|need) (?:in|into|for) | how (?:is|are) .* made | what .* made (?:of|from|with|out of) /,
    not: / (?:water|absorber|bag|pouch|dryer|cook for|buy) /,
    words: someMeal,
    score: 4,
  },
  {
    means: 'unsealed',
    cue: / (?:unsealed|not (?:been )?sealed|left (?:to seal|over)|still to seal|isn t sealed|unpacked yet) /,
    words: (look) => (look.said.codes.length > 0 ? undefined : someThing(look)),
    score: 6,
  },
  {
    means: 'unsealed',
    cue: / how (?:many|much) (?:more |\w+ )*(?:pouches|bags|portions) .*(?:make|get|give|gives|fill|fills|seal|left in|from|out of) /,
    not: / (?:scale|cook) /,
    words: (look) =>
      look.said.batches.length > 0 && look.said.codes.length === 0
        ? `${figureOf(look, 'mass')} ${about(look)}`.trim()
        : undefined,
    score: 6,
  },
  {
    means: 'isdry',
    cue: / (?:lose|lost|losing|water (?:is |left )?(?:still |left )?(?:in|left)|still wet|how wet|how damp|evaporated) /,
    not: / (?:vacuum|pour|add|need) /,
    words: (look) => (look.said.batches.length > 0 && look.said.codes.length === 0 ? about(look) : undefined),
    score: 5.2,
  },
  {
    means: 'isdry',
    cue: / (?:what|anything|what s|whats|something|how (?:full|empty)) .*(?:dryer|drier|machine) | what .*(?:is|are) drying | (?:dryer|drier) .*(?:empty|free|busy|full) /,
    not: / (?:trays? (?:does|do)|hold|holds|size|big|limit|max\w*|settings?|weigh) /,
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
    means: 'ranking',
    cue: / (?:most|least|highest|lowest|low|high|saltiest|lightest|fattiest|fewest|rich|little) /,
    not: / \d+ ?(?:mg|g) | at (?:most|least) /,
    words: ranked,
    score: 4.5,
    evenUnasked: true,
  },
  {
    means: 'stock',
    cue: / (?:expir\w*|best by|best before|go(?:es)? (?:off|bad)|run(?:s)? out|keep|eat|use|used|eaten|old) .*(?:before|until|by) /,
    words: beforeText,
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
    cue: / (?:how many (?:days|weeks|nights|people|persons|meals|of us|kids)|how long|how soon|who (?:else )?(?:is|s|isn t|comes|goes|won t|all)|are we (?:all )?(?:going|taking)|is \p{L}+ (?:coming|going)|does \p{L}+ come|when (?:do|are|is|does)|where) /u,
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
    cue: / (?:how (?:did|do|does|was|were)|did|do|does|what (?:did|do)|who) .*(?:like|liked|likes|think|enjoy|rate|rated|rating|ratings|taste|tasted|reviews?) | (?:ratings?|reviews?|opinions?) (?:of|for|on|about) | how (?:was|were) (?:the|our|my) /,
    not: / (?:would like|looks? like|drying|doing|water|weigh\w*) /,
    words: someThing,
    score: 4,
  },
  {
    means: 'isdry',
    cue: / (?:when|how (?:soon|often)|what time) .*weigh /,
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
    cue: / (?:has|have|did|was|were) (?:any(?:one|body)|some(?:one|body)|we|it|the|my) .*(?:touch\w*|open\w*|tak\w*|took|ate|eat\w*|us(?:e|ed)|finish\w*) /,
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

/** Whom and which day a look at the log is about. */
function whoAndWhen(look: Look): string {
  const who = look.said.people.find(({ names: [name] }) => name !== look.names.me)?.names[0];
  const day = / (yesterday|today) /.exec(look.folded)?.[1];
  return [who, day].filter(Boolean).join(' ');
}

/** Questions told by their topic, whatever their wording. */
export const topical: readonly Reader[] = topics.map((topic) => (look) => {
  if (!topic.evenUnasked && !isAsking(look)) return undefined;
  if (!topic.cue.test(look.folded) || topic.not?.test(look.folded)) return undefined;
  const words = topic.words(look);
  return words === undefined ? undefined : ask(topic.means, words, topic.score);
});
