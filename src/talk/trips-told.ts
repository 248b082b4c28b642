import { type Reader, holdOf } from './hold.ts';
import { type Look, type Meaning, quoted } from './look.ts';
import { quantityText } from './settings-told.ts';

const dayWords =
  / (?:mon|tues|wednes|thurs|fri|satur|sun)day|weekend|tomorrow|january|february|march|april|may|june|july|august|september|october|november|december|jan|feb|mar|apr|jun|jul|aug|sep|sept|oct|nov|dec|weeks? | days? /;

/** 'Heron Lake is at 6200 ft', 'Ben comes to Heron Lake after all', 'camping this weekend at Elk Meadow'. */
export const trip: Reader = (look) => {
  const { mood, trips, text } = look.said;
  if (mood.asks || look.said.codes.length > 0 || look.said.meals.some(({ whole }) => whole)) return undefined;
  const [known] = trips;
  if (known) return knownTrip(look, known);
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
  // 'A weekend trip, 12-13 June': the figures are the days.
  const hasDates = /\d\s*(?:-|–|to)\s*\d|\b\d{1,2}\s+\p{L}{3,}|\p{L}{3,}\s+\d{1,2}\b/u.test(text);
  const rest = text
    .replace(hasDates ? /\b(?:this |next )?weekend\b/giu : /(?!)/u, ' ')
    .replace(
      new RegExp(`\\b(?:to|at|in)\\s+(?:the\\s+)?${place.replace(/[.*+?^${}()|[\]\\]/g, '\\$&')}`, 'u'),
      ' ',
    )
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

/** What is told of a trip that is planned: who comes, when, how high, that it is off. */
function knownTrip(look: Look, known: Look['said']['trips'][number]): Meaning | undefined {
  const { all } = look.said;
  const drop = new Set(known.at);
  const isCancel =
    look.has('cancel', 'postpone', 'delete', 'remove', 'drop') ||
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
        holds: isOfASlot(look) ? 'that may move the whole trip' : holdOf(look, { except: true }),
      };
}

/** 'Add lunch on Sunday': a day of the week and a meal are a part of a trip, not its days. */
const isOfASlot = (look: Look): boolean =>
  look.slotMeal() !== undefined && / (?:mon|tues|wednes|thurs|fri|satur|sun)day /.test(look.folded);
