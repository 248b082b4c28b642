import { escaped } from './escaped.ts';
import { type Reader, holdOf, turnedRound } from './hold.ts';
import { type Look, type Meaning, quoted } from './look.ts';
import { quantityText } from './settings-told.ts';

const dayWords =
  / (?:mon|tues|wednes|thurs|fri|satur|sun)day|weekend|tomorrow|overnight|january|february|march|april|may|june|july|august|september|october|november|december|jan|feb|mar|apr|jun|jul|aug|sep|sept|oct|nov|dec|weeks? | days? | nights? |\d-\d|\d \d+ |\d+(?:st|nd|rd|th) /;

const dayShort = '(?:mon|tue|wed|thu|fri|sat|sun)(?:day|s|sday|nesday|rs|rsday|urday)?';
/** 'Fri dinner till mon breakfast', 'sat to sun'. */
const fromTo = new RegExp(
  ` ${dayShort} (?:\\w+ ){0,2}(?:to|till|til|until|through|-) (?:\\w+ )?${dayShort} `,
);

const tripWords =
  'trip camp camping hike hiking backpack canoe trek tour ski expedition outing weekend'.split(' ');

/** Words that frame a trip and tell nothing of it. */
const frame =
  /\b(?:new|next(?=\s+trip)|another|(?:hut|canoe|bike|ski|day|weekend|hiking|walking|kayak)\s+(?=tour|trip|hike)|tour|trips?|camping|camp|hiking|hike|backpacking|canoeing|skiing|going|we['’]?re|we are|we|i['’]?m|i am|i|off|away|let['’]?s|go|add|plan(?:ning|ned)?|make|have|want to|just|only|leave|leaving|start(?:s|ing)?|please|both|together|probably)\b/giu;
const everybody = /\b(?:all of us|everyone|everybody|the whole family|the family|us all)\b/giu;

/** Where a sentence names the place of a trip: behind 'trip', behind 'to', or by its capitals. */
function placeIn(text: string): string | undefined {
  const titled = "\\p{Lu}[\\p{L}'’-]*(?:\\s+\\p{Lu}[\\p{L}'’-]*)*";
  const end =
    '(?=\\s*(?:,|\\d|:|\\b(?:from|this|next|on|for|in|the (?:weekend|first|last|\\d)|first|last|tomorrow|over|mon|tue|wed|thu|fri|sat|sun|jan|feb|mar|apr|may|jun|jul|aug|sep|oct|nov|dec)))';
  const patterns = [
    `["“]([^"”]{2,50})["”]`,
    `^\\s*(?:(?:new|next|another|our)\\s+)?trip\\s*(?::|to|\\b)\\s*(?!to\\b|to$)([\\p{L}][\\p{L}'’ -]{1,40}?)${end}`,
    `\\b(?:at|to|in|on|around|near|plan)\\s+(?:the\\s+)?(${titled})`,
    `^(?:(?:new|next)\\s+)?(?:trip\\s+(?:to\\s+)?)?(${titled})${end}`,
    `\\b(?:to|at)\\s+(?:the\\s+)?([\\p{L}'’-]+(?:\\s+[\\p{L}'’-]+)?)${end}`,
    `^\\s*(?!(?:new|next|this|our|the|another|day|long|last|a|my|that)\\b)([\\p{L}'’-]{3,})\\s+(?:weekend|trip|hike|camp|tour)\\b`,
    // Anywhere: two words with capitals are a name.
    "(?<=[\\s,])(\\p{Lu}[\\p{L}'’-]*(?:\\s+\\p{Lu}[\\p{L}'’-]*)+)",
  ];
  for (const pattern of patterns) {
    const flags = pattern.includes('\\p{Lu}') ? 'u' : 'iu';
    const found = new RegExp(pattern, flags).exec(text)?.[1];
    const isLower =
      found !== undefined &&
      !/\p{Lu}/u.test(found) &&
      !/\b(?:trip|camp\w*|hik\w*|going|go|off|away|tour|head\w*|leav\w*|nights?)\b/iu.test(text);
    if (isLower) continue;
    if (found !== undefined && !dayWords.test(` ${found.toLowerCase()} `)) return found;
    if (found !== undefined && found.includes(' ')) return found;
  }
  return undefined;
}

/** 'Heron Lake is at 6200 ft', 'Ben comes to Heron Lake after all', 'camping this weekend at Elk Meadow'. */
export const trip: Reader = (look) => {
  const { mood, trips, text } = look.said;
  if (mood.asks || look.said.codes.length > 0 || look.said.meals.some(({ whole }) => whole)) return undefined;
  // 'Oats every morning of the trip' wishes.
  if (look.said.meals.length > 0 && look.says(/ (?:every|each) /)) return undefined;
  const { names } = look;
  const spoken = look.said.all.findIndex(
    ({ plain }, i) =>
      (/^(?:trip|tour|hike)$/.test(plain) && /^(?:the|our|this)$/.test(look.said.all[i - 1]?.plain ?? '')) ||
      (i === look.said.mood.start && /^(?:trip|tour|hike)['’]?s$/.test(plain)),
  );
  // Where just one is planned, 'the trip' is that one; so is "trip's from the 11th".
  const known =
    trips[0] ??
    (spoken >= 0 && names.trips.length === 1
      ? { names: [names.trips[0]!] as const, at: spoken > 0 ? [spoken - 1, spoken] : [spoken], whole: true }
      : undefined);
  const isOff = look.says(
    /^ (?:please )?(?:cancel|delete|call off|scrap|forget|drop) (?:the|our|that|this|next) (?:trip|tour|hike) $/,
  );
  if (!known && isOff && names.trips.length === 1)
    return {
      means: 'trip',
      words: `${quoted(names.trips[0]!)} cancelled`,
      score: 4,
      left: [],
      holds: 'cancelling gives its pouches and wishes back',
    };
  const again = againOn(look);
  if (again !== undefined) return again;
  const spare = spareMeal(look, known?.names[0]);
  if (spare !== undefined) return spare;
  if (known) return knownTrip(look, known);
  const isTrip =
    look.has(...tripWords) ||
    look.says(/ (?:\d+|one|a|two|three|four|five|six) (?:days?|nights?) (?:at|in|on|to|near) /) ||
    // 'Otter Creek, fri dinner till mon breakfast': days, meals and a name that is nobody's.
    (look.slotMeal() !== undefined && look.says(fromTo) && placeIn(look.bare) !== undefined) ||
    look.says(
      / (?:we re|we are|were|i m|going|to go|off|away|leave|plan|let s go) (?:\w+ )?(?:to|at|up to|for|\p{L}+) /u,
    );
  if (
    !isTrip ||
    !(dayWords.test(look.folded) || fromTo.test(look.folded)) ||
    look.has('eat', 'use', 'remind') ||
    (look.has('want') && !look.says(/ (?:want|wants) to (?:go|camp|hike|spend) /))
  )
    return undefined;
  if (look.has('sodium', 'salt', 'allergic', 'vegan', 'vegetarian')) return undefined;
  const place = placeIn(look.bare);
  if (place === undefined)
    return { means: 'trip', words: text, score: 1, left: [], holds: 'I found no place in it' };
  const rest = look.bare
    .replace(
      new RegExp(`["“]?(?:\\b(?:to|at|in|on|for|around|near)\\s+)?(?:the\\s+)?${escaped(place)}["”]?`, 'iu'),
      ' ',
    )
    .replace(frame, ' ')
    .replace(everybody, 'for all')
    .replace(/\s\+\s/gu, ' and ')
    .replace(/\ba\s+(?=,|\d|$|from\b|on\b|for\b)/giu, ' ')
    .replace(/\bfor\s+for\s+all(?:\s+all(?=\s+meals))?/giu, 'for all, all')
    .replace(/\s*[,:]\s*/gu, ', ')
    .replace(/\s+/gu, ' ')
    .replace(/^[\s,]+|[\s,]+$/gu, '');
  return {
    means: 'trip',
    words: `${quoted(place)} ${rest}`,
    score: 3.5,
    left: [],
    holds: mood.doubt === null ? null : holdOf(look, { future: true, except: true, negated: true }),
  };
};

/** 'Heron Lake is on again', 'we go to Heron Lake after all': a trip that was called off. */
function againOn(look: Look): Meaning | undefined {
  const place =
    /^\s*(?:the\s+)?(?:trip\s+(?:to\s+)?)?(.{2,40}?)\s+(?:is|s)\s+(?:back\s+)?on\s+(?:again|after\s+all)\W*$/iu.exec(
      look.bare,
    )?.[1] ??
    /^\s*take\s+up\s+(?:the\s+)?(?:trip\s+(?:to\s+)?)?(.{2,40}?)\s+again\W*$/iu.exec(look.bare)?.[1];
  if (place === undefined) return undefined;
  return { means: 'trip', words: `${place} again`, score: 4, left: [], holds: holdOf(look) };
}

/** 'We take a spare dinner along', 'no spare dinner after all'. */
function spareMeal(look: Look, place: string | undefined): Meaning | undefined {
  const trip = place ?? (look.names.trips.length > 0 ? look.names.trips[0] : undefined);
  if (trip === undefined || look.said.meals.length > 0) return undefined;
  const told =
    /\b(no\s+|without\s+(?:a\s+)?)?(?:spare|emergency|reserve)\s+(breakfast|lunch|dinner|supper|meal)\b/iu.exec(
      look.said.text,
    ) ??
    /\b(no\s+)?(breakfast|lunch|dinner|supper|meal)\s+(?:in\s+reserve|to\s+spare)\b/iu.exec(look.said.text);
  if (told === null) return undefined;
  return {
    means: 'trip',
    words: `${quoted(trip)} ${told[1] === undefined ? 'a' : 'no'} spare ${told[2]!}`,
    score: 4,
    left: [],
    holds: holdOf(look, { future: true, negated: true }),
  };
}

const notComing =
  / (?:without|not coming|isn t coming|can t come|cant come|can t make it|cant make it|cannot make it|cannot come|won t come|wont come|stays home|staying home|stays at home|drops out|not come|doesn t come|not joining|(?:take|leave|count|drop|cross|keep) (?:\w+ ){1,2}(?:off|out)(?: of)?) /;
const coming =
  / (?:is coming|comes|joins|coming|can come|joining|after all|also goes|is in|will come|wants to come) /;

/** 'Rename the trip to Swan Lake', 'Heron Lake is now called Swan Lake'. */
function renamedTrip(look: Look, place: string, at: readonly number[]): Meaning | undefined {
  const { all, text } = look.said;
  const order = all.findIndex(({ plain }) => /^(?:rename|renamed|call|name)$/.test(plain));
  const called = all.findIndex(({ plain }) => plain === 'called' || plain === 'named');
  const last = Math.max(...at);
  const isOrder = order >= 0 && order < at[0]! && !look.says(/ call(?:ed)? (?:it |\S+ )?off /);
  if (!isOrder && !(called > last)) return undefined;
  let from = (isOrder ? last : called) + 1;
  while (/^(?:trip|tour|hike|to|as|into|is|now|:|from|on)$/.test(all[from]?.plain ?? '')) from++;
  const name =
    all[from] === undefined
      ? ''
      : text
          .slice(all[from]!.from)
          .replace(/[\s.!]+$/u, '')
          .replaceAll('"', '');
  if (name === '') return undefined;
  return {
    means: 'trip',
    words: `${quoted(place)} is called "${name}"`,
    score: 6,
    left: [],
    holds: holdOf(look),
  };
}

/** What is told of a trip that is planned: who comes, when, how high, that it is off. */
function knownTrip(look: Look, known: Look['said']['trips'][number]): Meaning | undefined {
  const { all } = look.said;
  const place = quoted(known.names[0]);
  const told = (words: string, score: number, holds: string | null): Meaning => ({
    means: 'trip',
    words: `${place} ${words}`,
    score,
    left: [],
    holds,
  });
  const renamed = renamedTrip(look, known.names[0], known.at);
  if (renamed) return renamed;
  const isCancel =
    look.has('cancel', 'delete') ||
    (look.has('remove', 'drop') && look.slotMeal() === undefined) ||
    look.says(/ call(?:ed)? off | is off | not going | over | not happening /);
  const whose = [...new Set(look.said.people.map(({ names: [name] }) => name))];
  if (isCancel && whose.length === 0 && look.slotMeal() === undefined)
    return told(
      'cancelled',
      4,
      (look.said.mood.negated !== null && !look.says(/ not (?:going|happening) /)
        ? turnedRound(look.said.mood.negated)
        : holdOf(look, { negated: true })) ?? 'cancelling gives its pouches and wishes back',
    );
  const hasDays = dayWords.test(look.folded.replace(/ after all /, ' '));
  const at = look.slotMeal()?.meal;
  if (whose.length > 0 && look.says(notComing) && !hasDays)
    return told(
      whose.map((name) => `without ${name}${at === undefined ? '' : ` at ${at}`}`).join(' '),
      4,
      holdOf(look, { negated: true, except: true, future: true }),
    );
  if (whose.length > 0 && look.says(coming) && !hasDays)
    return {
      ...told(`with ${whose.join(' and ')}`, 4, holdOf(look, { future: true })),
      // What is told of the person besides is no part of the trip: 'Pia comes, she eats no nuts'.
      left: /[,;:]\s*(\S.*?)\W*$/su.exec(look.bare)?.slice(1, 2) ?? [],
    };
  // '… is at 1980 not 1900': where only metres make sense.
  const bareHeight = / (?:is|lies|was) (?:really |actually )?at (\d{3,4}) /.exec(look.folded)?.[1];
  const length = quantityText(look, 'length') ?? (bareHeight === undefined ? undefined : `${bareHeight} m`);
  // '2100 m not 1900', but no other figure.
  const figures = all.filter(
    ({ is }, i) => (is === 'number' || is === 'quantity') && all[i - 1]?.plain !== 'not',
  );
  if (length !== undefined && figures.length === 1)
    return {
      ...told(length, 4, holdOf(look)),
      left: look.leftBy([
        ...known.at,
        ...all.flatMap((t, i) => (t.is === 'quantity' || t.is === 'number' || t.plain === 'not' ? [i] : [])),
        ...look.at(
          'lie',
          'altitude',
          'elevation',
          'high',
          'make',
          'set',
          'put',
          'change',
          'actually',
          'really',
        ),
      ]),
    };
  const rest = restOf(look, new Set(known.at));
  if (rest === '') return undefined;
  const isPlan =
    hasDays ||
    look.says(/ (?:days?|weeks?) /) ||
    look.says(/ from | until | till /) ||
    look.slotMeal() !== undefined;
  return told(
    rest,
    look.says(/ (?:push\w*|postpone\w*|delay\w*|forward|shift\w*) /) && isPlan ? 4 : isPlan ? 3 : 1.5,
    look.has('should')
      ? '"should" leaves it open'
      : holdOf(look, { except: true, future: true, negated: true }),
  );
}

/** The words without the trip's name and those that only frame what is told of it. */
const restOf = (look: Look, drop: ReadonlySet<number>): string =>
  look
    .without(drop)
    .replace(/^(?:(?:hi|hey|hello|ok|okay|so|please|sorry|well|and|but|oh|now)\b[\s,!]*)+/iu, '')
    .replace(/\b(?:please|pls|thanks|thank you)\b|[!\p{Extended_Pictographic}]/giu, ' ')
    .replace(
      /\b(?:(?:will|is|are|can|wants? to)\s+)?(?:only\s+)?(?:joins?|comes?|arrives?|joining|coming|join)(?:\s+us)?(?:\s+(?:at|on|in|to))?(?:\s+only)?(?=\s+(?:from|on|until|till|for)\b)/giu,
      ' ',
    )
    .replace(/\bonly\s+(?:joins?|comes?|arrives?)\b/giu, ' ')
    .replace(/\b(?:joins?|comes?|coming|joining|is|are)\s+(?=from|on|until|till)/giu, ' ')
    .replace(/\bpostpone(?:d)?\b(.*)$/iu, (_, behind: string) => `${behind.replace(/\bby\b/iu, '')} later`)
    .replace(/\bstarts?\s+(?:on\s+)?/giu, 'from ')
    .replace(/\b(?:ends?|over)\s+on\b/giu, 'until')
    .replace(
      /\b(?:the|trip|is|are|now|lies|we|our|going|moved?|change|changed|it|extend|extended|by|to(?=\s*$)|at(?=\s*$)|at(?=\s+we\b)|also|need|have|take|eat|want|already|make|instead|us|there|again|so|that|will|be|goes|go|for(?=\s*$))\b/giu,
      ' ',
    )
    .replace(/^\s*(?:at|to|for|on|,|:)\s+/iu, ' ')
    .replace(/\s+(?:to|at|for)\s*$/iu, ' ')
    .replace(/[:]/gu, ' ')
    .replace(/\s+/gu, ' ')
    .trim();
