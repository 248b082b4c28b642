import type { Reader } from './deeds.ts';
import { holdOf } from './deeds.ts';
import { type Look, quoted } from './look.ts';

/** The text from the first token of a kind on; for what a request reads by itself. */
function quantityText(look: Look, ...kinds: readonly string[]): string | undefined {
  const token = look.said.all.find((one) => one.is === 'quantity' && kinds.includes(one.unit.kind));
  return token?.typed;
}

interface SettingCue {
  /** The setting's name as /house takes it. */
  readonly name: string;
  readonly cue: RegExp;
  /** Its value as typed, where one stands. */
  readonly value: (look: Look) => string | undefined;
}

const size =
  /\d+(?:[.,]\d+)?\s*(?:cm|mm|in(?:ch(?:es)?)?)?\s*(?:x|×|by)\s*\d+(?:[.,]\d+)?\s*(?:cm|mm|in(?:ch(?:es)?)?|")?/iu;
const behindWords = (look: Look, pattern: RegExp) => pattern.exec(look.said.text)?.[0];

/** By which words people speak of each setting, and what its value looks like. */
const settings: readonly SettingCue[] = [
  {
    name: 'absorbers',
    cue: / absorbers? | oxygen packets? /,
    value: (look) =>
      look.said.all.some((t) => t.is === 'number' || (t.is === 'quantity' && t.unit.kind === 'volume'))
        ? behindWords(
            look,
            /\d[\d\s,and&/+]*(?:\s*(?:ml|cc))?(?:[\s,]*(?:and|&|or|\/)?\s*\d+\s*(?:ml|cc)?)*/iu,
          )
            ?.replace(/cc/gi, 'ml')
            .replace(/[/&]|\band\b|\bor\b/gi, ' ')
        : undefined,
  },
  {
    name: 'tray weight',
    cue: /^(?=.* trays? )(?!.* (?:dryer|drier|machine|holds?) )/,
    value: (look) =>
      behindWords(look, /\d+(?:[.,]\d+)?\s*(?:lbs?|pounds?)\s*\d+(?:[.,]\d+)?\s*(?:oz|ounces?)/iu) ??
      quantityText(look, 'mass'),
  },
  { name: 'dryer', cue: / (?:dryer|drier|machine) | trays of /, value: (look) => dryerText(look) },
  {
    name: 'pouch',
    cue: / (?:bags?|pouch|pouches|pouch size) /,
    value: (look) => (size.test(look.said.text) ? withUnit(size.exec(look.said.text)![0], look) : undefined),
  },
  {
    name: 'storage',
    cue: / (?:storage|cellar|pantry|cupboard|store|store ?room|basement|shelf) /,
    value: (look) => behindWords(look, /-?\d+(?:[.,]\d+)?\s*(?:°|º|degrees?|deg)?\s*[cf]?\b/iu),
  },
  {
    name: 'units',
    cue: / (?:units?|imperial|metric|ounces|grams|pounds) /,
    value: (look) =>
      look.says(/ (?:imperial|ounces?|pounds?|oz) /)
        ? 'ounces'
        : look.says(/ (?:metric|grams?) /)
          ? 'grams'
          : undefined,
  },
  { name: 'cup', cue: / cups? /, value: (look) => quantityText(look, 'volume') },
  { name: 'scale', cue: / scales? /, value: (look) => quantityText(look, 'mass') },
  { name: 'moisture', cue: / moisture /, value: (look) => behindWords(look, /\d+(?:[.,]\d+)?\s*%/u) },
  {
    name: 'altitude',
    cue: / (?:live|altitude|elevation|above sea level|our house|home) /,
    value: (look) => quantityText(look, 'length'),
  },
  {
    name: 'zone',
    cue: / time ?zone | timezone | zone /,
    value: (look) => behindWords(look, /\b[A-Z][A-Za-z]+\/[A-Z][A-Za-z_]+\b/u),
  },
];

function withUnit(text: string, look: Look): string {
  return /cm|mm|in|"/i.test(text) ? text : `${text} ${look.says(/ inch(?:es)? /) ? 'inch' : 'cm'}`;
}

function dryerText(look: Look): string | undefined {
  const { text } = look.said;
  const trays = /(\d+|one|two|three|four|five|six|seven|eight|nine|ten)\s*(?:trays?|shelves)/iu.exec(
    text,
  )?.[0];
  const sides = size.exec(text)?.[0];
  const mass = quantityText(look, 'mass');
  const found = [trays, sides === undefined ? undefined : withUnit(sides, look), mass].filter(
    (one) => one !== undefined,
  );
  return found.length === 0 ? undefined : found.join(' ');
}

/** Words by which settings are spoken of; they account for themselves. */
const settingWords =
  'absorber oxygen packet tray weigh weight empty tare dryer drier machine hold max maximum load at most up to take bag pouch size measure flat storage cellar pantry cupboard store basement shelf keep degree celsius fahrenheit unit imperial metric ounce gram pound cup scale show step only resolution moisture live altitude elevation above sea level high home house zone timezone time set switch change use put make set setting inch inches x by each 1 have buy get deg c f old new'.split(
    ' ',
  );

/** 'We live at 520 m', 'our bags are 8 x 10 inches', 'switch to imperial units'. */
export const setting: Reader = (look) => {
  const { all, mood, text } = look.said;
  if (look.said.trips.length > 0 || look.said.meals.some(({ whole }) => whole)) return undefined;
  if (look.said.codes.length + look.said.batches.length > 0 || mood.asks) return undefined;
  if (!look.says(/ (?:we|our|i|my|the|set|switch|change|use|house|is|are|to|have|has|live) /))
    return undefined;
  const told = settings.flatMap((one) => {
    const value = one.cue.test(look.folded) ? one.value(look)?.trim() : undefined;
    return value === undefined || value === '' ? [] : [{ name: one.name, value }];
  });
  // Units alone are a wish for other units; beside other figures they measure.
  const hasFigures = all.some((token) => token.is === 'number' || token.is === 'quantity');
  const [first, second] = told.filter(({ name }) => name !== 'units' || !hasFigures);
  if (first === undefined) return undefined;
  const valueTokens = [first, ...(second ? [second] : [])].flatMap(({ value }) =>
    all.flatMap((token, i) => {
      const from = text.toLowerCase().indexOf(value.toLowerCase());
      const isIn = from >= 0 && token.from >= from && token.to <= from + value.length;
      const words = value.toLowerCase().split(/[\s,]+/);
      return isIn || token.plain.split(/\s+/).every((word) => words.includes(word)) ? [i] : [];
    }),
  );
  const explicit = look.has('set', 'house', 'setting', 'switch', 'change') || look.says(/ we live | our /);
  const meaning = {
    means: 'house',
    score: explicit ? 4 : 2.5,
    left: look.leftBy([...valueTokens, ...look.at(...settingWords)]),
    holds: holdOf(look),
  };
  const words = ({ name, value }: { name: string; value: string }) => `${name} ${value}`;
  return {
    ...meaning,
    words: words(first),
    ...(second ? { also: { ...meaning, words: words(second) } } : {}),
  };
};

/** 'Remind me 90 days before stuff expires', 'no more weighing reminders'. */
export const reminding: Reader = (look) => {
  if (!look.has('remind', 'reminder', 'nag') || look.said.mood.asks) return undefined;
  const span = /\b(\d+|a|one|two|three|four|six)\s*(days?|weeks?|months?)\b/iu.exec(look.said.text);
  if (span && look.says(/ (?:before|ahead|expire|expires|best by|goes off|go off) /))
    return {
      means: 'house',
      words: `horizon ${span[1] === 'a' ? '1' : span[1]} ${span[2]}`,
      score: 5,
      left: [],
      holds: holdOf(look),
    };
  const kind = look.has('weigh', 'weighing')
    ? 'weigh'
    : look.has('seal')
      ? 'seal'
      : look.has('trip', 'cook')
        ? 'trip'
        : look.says(/ best by | expir/)
          ? 'best-by'
          : '';
  const off = look.says(/ (?:off|stop|no more|don t|dont|never|no|quit|without) /);
  const on = look.says(/ (?:on|again|yes|please|start) /);
  if (!off && !on) return undefined;
  return {
    means: 'house',
    words: `remind ${kind} ${off ? 'off' : 'on'}`.replace('  ', ' '),
    score: 4,
    left: [],
    holds: look.said.mood.doubt === null ? null : holdOf(look),
  };
};

/** Sodium in table salt, g per g: 22.98976928 / (22.98976928 + 35.45). @source iupac-weights */
const sodiumShareOfSalt = 0.3934;

const eaterCue =
  / (?:allerg\w*|alerg\w*|vegan|vegetarian|veggie|pescatarian|coeliac|celiac|intoleran\w*|halal|kosher|gluten free|dairy free|nut free|diabetic|plant based|hates?|dislikes?|can t (?:have|eat|stand)|cannot (?:have|eat)|cant (?:have|eat)|doesn t (?:eat|like|want)|does not (?:eat|like)|don t (?:eat|like)|must not|mustn t|may not|may (?:eat|have)|can (?:eat|have)|never eats?|won t eat|off (?:dairy|meat|gluten)|reacts? to|turned|years? old|yo|portion|portions|kcal|calories|(?:salt|sodium) (?:a|per) day|(?:salt|sodium) limit|no (?:nuts?|peanuts?|milk|eggs?|fish|gluten|dairy|meat|pork)) /;

/** 'I'm vegan now', 'Noa turned 8', 'Ben hates mushrooms', 'Noa can have milk again'. */
export const eater: Reader = (look) => {
  const { people, mood, all } = look.said;
  if (!eaterCue.test(look.folded) || look.said.codes.length > 0) return undefined;
  const [who] = people;
  if (!who || mood.asks) return undefined;
  const isMe = who.names[0] === look.names.me && !all.some((token) => token.typed === look.names.me);
  const first = who.at[0]!;
  const before = all
    .slice(mood.start, first)
    .some(
      (token) =>
        token.is === 'word' && !/^(?:hi|hey|ok|so|and|but|please|now|oh|fyi|our|my)$/.test(token.plain),
    );
  const drop = new Set(who.at);
  const rest = look
    .without(drop)
    .replace(/^(?:['’]?m|am|is|are|now)\s+/iu, '')
    .replace(/\b(?:now|today|by the way|btw|anymore|any more|just|really|also)\b/giu, ' ')
    .replace(/\bturn(?:ed|s)\s+(\d+)\b/iu, 'age $1')
    .replace(/\b(?:hates?|can['’]?t stand|doesn['’]?t like|does not like|don['’]?t like)\b/giu, 'dislikes')
    .replace(/\b(?:can|may)\s+(?:eat|have)\b/iu, 'may eat')
    .replace(/\s+/gu, ' ')
    .trim();
  const salt = /\b(\d+(?:[.,]\d+)?)\s*(g|mg)\s+(?:of\s+)?salt\b/iu.exec(look.said.text);
  const sodiumMg = salt
    ? Math.round(Number(salt[1]!.replace(',', '.')) * (salt[2] === 'g' ? 1000 : 1) * sodiumShareOfSalt)
    : 0;
  return {
    means: 'eater',
    words: `${isMe ? 'me' : who.names[0]} ${salt ? `sodium ${sodiumMg}` : rest}`,
    score: before ? 2 : 4,
    left: [],
    holds: salt
      ? `salt is not sodium: ${salt[1]} ${salt[2]} of salt hold ${sodiumMg} mg of sodium`
      : (mood.doubt ?? mood.part) !== null
        ? holdOf(look, { negated: true })
        : null,
  };
};

/** 'Our mug holds 300 ml', 'a medium onion here is more like 120 g', 'by curry we mean …'. */
export const teaching: Reader = (look) => {
  const { mood } = look.said;
  const text = look.bare;
  if (mood.asks)
    return look.says(/ (?:our|my) (?:measures?|words?|units) | what have we taught /)
      ? { means: 'our', words: '', score: 4, left: [], holds: null }
      : undefined;
  const forgets =
    /^\s*(?:please\s+)?forget\s+(?:about\s+)?(?!that\b|it\b|this\b)(.+)$|^(.+?)[\s,:;]+forget(?:\s+it)?\s*$/iu.exec(
      text,
    );
  if (forgets) return { means: 'our', words: text, score: 3, left: [], holds: holdOf(look) };
  const byMean = /\bby\s+.+\bwe\b.*\bmean\b/iu.test(text);
  if (byMean) return { means: 'our', words: text, score: 5, left: [], holds: holdOf(look) };
  const called = /^\s*(?:we|i)\s+call\s+(.+?)\s+(?:just\s+)?["“]?([\p{L} ]+)["”]?\s*[.!]*$/iu.exec(text);
  if (called)
    return {
      means: 'our',
      words: `by ${called[2]} we mean ${called[1]}`,
      score: 3,
      left: [],
      holds: holdOf(look),
    };
  const measured =
    /^(.*?\b(?:our|my|an?|the|one|in our house)\b\s+)?(.+?)\s+(?:here\s+|at home\s+|always\s+)?(?:is|are|weighs?|holds?|has|takes?|comes to|contains?|=)\s+(?:(?:always|usually|more like|about|around|roughly|only|exactly|just)\s+)*(\d+(?:[.,]\d+)?\s*(?:g|kg|ml|l|oz|lb|grams?|millilit(?:er|re)s?|ounces?))(?:\s+(?:each|here|at home|on average))?[\s.!]*$/iu.exec(
      text.trim(),
    );
  if (
    !measured ||
    look.said.codes.length + look.said.batches.length > 0 ||
    look.said.people.some(({ at }) => !at.every((i) => /^(?:my|our)$/.test(look.said.all[i]!.plain)))
  )
    return undefined;
  const what = measured[2]!
    .replace(/\b(?:small|medium|large|big|normal|average|usual|typical)\b\s*/giu, '')
    .trim();
  if (
    look.said.meals.some(({ whole }) => whole) ||
    /\b(?:trays?|bags?|scale|dryer|altitude|cups?|storage|pouch(?:es)?|absorbers?)\b/iu.test(what)
  )
    return undefined;
  return {
    means: 'our',
    words: `${what} is ${measured[3]}`,
    score: /\b(?:our|my)\b/iu.test(measured[1] ?? '') ? 4 : 3,
    left: [],
    holds: holdOf(look),
  };
};

const dayWords =
  / (?:mon|tues|wednes|thurs|fri|satur|sun)day|weekend|tomorrow|january|february|march|april|may|june|july|august|september|october|november|december|jan|feb|mar|apr|jun|jul|aug|sep|sept|oct|nov|dec|weeks? | days? /;

/** 'Heron Lake is at 6200 ft', 'Ben comes to Heron Lake after all', 'camping this weekend at Elk Meadow'. */
export const trip: Reader = (look) => {
  const { mood, trips, all, text } = look.said;
  if (mood.asks || look.said.codes.length > 0 || look.said.meals.some(({ whole }) => whole)) return undefined;
  const known = trips[0];
  if (known) {
    const drop = new Set(known.at);
    const isCancel =
      look.has('cancel', 'postpone') ||
      look.says(/ call(?:ed)? off | is off | not going | over | not happening /);
    const whose = [...new Set(look.said.people.map(({ names: [name] }) => name))];
    const notComing = look.says(
      / (?:without|not coming|isn t coming|can t come|cant come|can t make it|cannot come|won t come|stays home|staying home|drops out|not come) /,
    );
    const coming = look.says(/ (?:is coming|comes|joins|coming|can come|joining|after all|also goes|is in) /);
    if (isCancel && whose.length === 0)
      return {
        means: 'trip',
        words: `${quoted(known.names[0])} cancelled`,
        score: 4,
        left: [],
        holds: holdOf(look, { negated: true }) ?? 'cancelling gives its pouches and wishes back',
      };
    if (whose.length > 0 && notComing)
      return {
        means: 'trip',
        words: `${quoted(known.names[0])} without ${whose.join(' and ')}`,
        score: 4,
        left: [],
        holds: holdOf(look, { negated: true, except: true }),
      };
    if (whose.length > 0 && coming)
      return {
        means: 'trip',
        words: `${quoted(known.names[0])} with ${whose.join(' and ')}`,
        score: 4,
        left: [],
        holds: holdOf(look),
      };
    const rest = look
      .without(drop)
      .replace(
        /\b(?:the|trip|to|is|are|now|at|an?|of|lies|we|our|going|move|moved|change|changed|it)\b/giu,
        ' ',
      )
      .replace(/\s+/gu, ' ')
      .trim();
    const length = quantityText(look, 'length');
    if (length !== undefined)
      return {
        means: 'trip',
        words: `${quoted(known.names[0])} ${length}`,
        score: 4,
        left: look.leftBy([
          ...known.at,
          ...all.flatMap((t, i) => (t.is === 'quantity' ? [i] : [])),
          ...look.at('lie', 'altitude', 'elevation', 'high'),
        ]),
        holds: holdOf(look),
      };
    return rest === ''
      ? undefined
      : {
          means: 'trip',
          words: `${quoted(known.names[0])} ${rest}`,
          score: dayWords.test(look.folded) ? 3 : 1.5,
          left: [],
          holds: holdOf(look, { except: true }),
        };
  }
  const isTrip =
    look.has('trip', 'camp', 'camping', 'hike', 'hiking', 'backpack', 'canoe', 'trek', 'tour', 'ski') ||
    look.says(/ (?:we re|we are|were|i m|going|off|away) (?:\w+ )?(?:to|at|up to) /);
  if (!isTrip || !dayWords.test(look.folded) || look.has('eat', 'use', 'want')) return undefined;
  const lower =
    /\b(?:to|at)\s+(?:the\s+)?([\p{L}'’-]+(?:\s+[\p{L}'’-]+)?)(?=\s*(?:,|\d|\bfrom\b|\bthis\b|\bnext\b|\bon\b|\bfor\b|\b(?:mon|tue|wed|thu|fri|sat|sun)))/iu.exec(
      text,
    )?.[1];
  const place =
    /\b(?:at|to|in|on|around|near)\s+(?:the\s+)?((?:\p{Lu}[\p{L}'’-]*)(?:\s+\p{Lu}[\p{L}'’-]*)*)/u.exec(
      text,
    )?.[1] ??
    /^((?:\p{Lu}[\p{L}'’-]*)(?:\s+\p{Lu}[\p{L}'’-]*)*)\b/u.exec(
      text.replace(/^(?:new )?trip\s+(?:to\s+)?/iu, ''),
    )?.[1] ??
    lower;
  if (place === undefined)
    return { means: 'trip', words: text, score: 1, left: [], holds: 'I found no place in it' };
  const rest = text
    .replace(place, ' ')
    .replace(
      /\b(?:new|trip|camping|camp|hiking|hike|backpacking|canoeing|going|we['’]?re|we are|we|i['’]?m|off|away|at the|at|to the|let['’]?s|go|plan(?:ning)?|a|only|just|everyone|everybody)\b/giu,
      (word) => (/every/i.test(word) ? 'for all' : ' '),
    )
    .replace(/\ball of us\b/giu, 'for all')
    .replace(/\s*,\s*/gu, ', ')
    .replace(/\s+/gu, ' ')
    .replace(/^[\s,]+|[\s,]+$/gu, '');
  return {
    means: 'trip',
    words: `${place} ${rest}`,
    score: 3.5,
    left: [],
    holds: mood.doubt === null ? null : holdOf(look),
  };
};

/** A recipe in one line, an ingredient a line: the name ends at the servings, each amount begins a line. */
function inLines(text: string): string {
  if (/[;\n:]/.test(text)) return text;
  const head =
    /^(.*?\b\d+\s*(?:people|persons?|servings?|portions?)\b|.*?\b(?:serves|for)\s+\d+\b)[\s,.]*(.+)$/isu.exec(
      text,
    );
  if (!head) return text;
  const lines = head[2]!.split(/(?:,\s*|\s+)(?=[\d½¼¾⅓⅔]+(?:[.,/]\d+)?\s*\p{L})/u);
  return [
    head[1]!
      .replace(/\s+(?=\d+\s*(?:people|persons?|servings?|portions?)\b)/iu, ', ')
      .replace(/people|persons?/iu, 'servings'),
    ...lines,
  ].join('\n');
}

/** 'New recipe lentil stew 4 people 250 g lentils …', 'delete the recipe …', a pasted recipe. */
export const recipe: Reader = (look) => {
  const { text, mood, meals } = look.said;
  const named =
    /^\s*(?:please\s+)?(?:new|add(?: a| the)?(?: new)?|record(?: a)?|save(?: this)?(?: a)?)\s+recipe\b[\s:,]*(?:for\s+)?/iu;
  const lines = text.split('\n').filter((line) => line.trim() !== '');
  const amounts = (some: string) =>
    (
      some.match(
        /(?:^|[\s,;:])[\d½¼¾⅓⅔]+(?:[.,/]\d+)?\s*(?:g|kg|ml|l|dl|oz|lbs?|cups?|tbsp|tsp|tins?|cans?|cloves?|pinch|x)?\b/giu,
      ) ?? []
    ).length;
  if (named.test(text))
    return {
      means: 'recipe',
      words: inLines(text.replace(named, '')),
      score: 6,
      left: [],
      holds: mood.asks ? 'that reads as a question' : null,
    };
  if (lines.length > 2 && amounts(lines.slice(1).join('\n')) >= 2 && look.said.codes.length === 0)
    return {
      means: 'recipe',
      words: text,
      score: 5,
      left: [],
      holds: 'a recipe without its slash is shown first',
    };
  if (/;/.test(text) && /\b(?:serv\w*|portions?|people|persons?)\b/iu.test(text) && amounts(text) >= 3)
    return {
      means: 'recipe',
      words: text,
      score: 4,
      left: [],
      holds: mood.asks ? 'that reads as a question' : null,
    };
  if (
    look.has('recipe') &&
    meals.length > 0 &&
    !look.has('delete', 'remove', 'drop', 'rename', 'call', 'change')
  )
    return { means: 'recipe', words: look.mealTyped()!, score: 3, left: [], holds: null };
  return undefined;
};
