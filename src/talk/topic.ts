import { Refusal } from '#core/refusal.ts';
import { Ambiguous, Reading } from '#words/reading.ts';
import { pastDays } from '#words/when.ts';
import { about } from './ask.ts';
import { type Look, quoted } from './look.ts';

/** What a question may be about: the words that show it, and the question that answers it with its words. */
export interface Topic {
  readonly means: string;
  readonly cue: RegExp;
  readonly not?: RegExp;
  /** The words handed over; undefined where what it is about was not said. */
  readonly words: (look: Look) => string | undefined;
  readonly score: number;
  /** Orders count too: 'show me the trip'. */
  readonly evenUnasked?: true;
}

export const someThing = (look: Look) => about(look) || undefined;
export const someMeal = (look: Look) => (look.said.codes.length > 0 ? undefined : look.mealTyped());
export const someTrip = (look: Look) =>
  look.trip() ?? (look.says(/ (?:trip|hike|tour|we (?:go|leave|going|leaving)) /) ? '' : undefined);
export const noThing = (words: string) => (look: Look) => (about(look) === '' ? words : undefined);

export const nutrientOf = (look: Look) =>
  look.says(/ (?:salt\w*|sodium) /)
    ? 'sodium'
    : look.says(/ (?:calor\w*|kcal|energy|filling) /)
      ? 'energy'
      : look.says(/ protein /)
        ? 'protein'
        : look.says(/ fat(?:ty|tiest)? /)
          ? 'fat'
          : undefined;

export function ranked(look: Look): string | undefined {
  const what = nutrientOf(look);
  // 'Which has more protein, chili or curry' compares.
  const compares = look.said.meals.length > 1 && look.said.codes.length === 0;
  if (what === undefined || (about(look) !== '' && !compares)) return undefined;
  const least = look.says(/ (?:least|lowest|low|little|less|lightest|fewest) /) ? 'least ' : '';
  const who = look.said.people.find(({ names: [name] }) => name !== look.names.me)?.names[0];
  return `${least}${what}${who === undefined ? '' : ` for ${quoted(who)}`}`;
}

/** The first figure of a kind, as typed. */
export const figureOf = (look: Look, kind: string): string =>
  look.said.all.find((token) => token.is === 'quantity' && token.unit.kind === kind)?.typed ?? '';

const date =
  /\b(?:before|until|by)\s+(?:the\s+)?(?:end of\s+)?((?:\d{1,2}\.?\s+)?(?:jan|feb|mar|apr|may|jun|jul|aug|sep|oct|nov|dec)\p{L}*(?:\s+20\d\d)?|20\d\d(?:-\d\d?)?(?:-\d\d?)?|\d{1,2}[./]\d{1,2}[./](?:20)?\d\d)/iu;

/** 'Before 2029' is before its first day. */
export function beforeText(look: Look): string | undefined {
  const year = new Date(look.names.nowMs).getUTCFullYear();
  if (look.says(/ (?:this year|before the year is out|by the end of the year) /))
    return `${look.mealTyped() ?? ''} before ${year + 1}-01`.trim();
  if (look.says(/ (?:before|until|by) (?:the )?(?:christmas|xmas|new year s?|newyear) /))
    return `${look.mealTyped() ?? ''} before ${year}-12-${look.says(/ (?:christmas|xmas) /) ? '25' : '31'}`.trim();
  const found = date.exec(look.said.text)?.[1];
  if (found === undefined) return undefined;
  return `${look.mealTyped() ?? ''} before ${/^20\d\d$/.test(found) ? `${found}-01` : found}`.trim();
}

const daysBehind = new WeakMap<Look, string>();

/** The days behind that are spoken of, as typed: 'sunday', 'the 20th of April', 'since Friday', 'last week'. */
export function pastDayText(look: Look): string {
  const known = daysBehind.get(look);
  if (known !== undefined) return known;
  const { all, text } = look.said;
  // 'This morning' is a part of today.
  const isToday = look.says(/ this (?:morning|afternoon|evening) /);
  const isYesterday = look.says(/ last (?:night|evening) /);
  const found = isToday ? 'today' : isYesterday ? 'yesterday' : typedDays(look, new Reading(text, all));
  daysBehind.set(look, found);
  return found;
}

function typedDays(look: Look, reading: Reading): string {
  const before = [...reading.left()];
  try {
    if (pastDays.read(reading, look.names) === undefined) return '';
  } catch (error) {
    if (error instanceof Refusal || error instanceof Ambiguous) return '';
    throw error;
  }
  const left = new Set(reading.left());
  const taken = before.filter((i) => !left.has(i) && !/^(?:on|of|from)$/.test(look.said.all[i]!.plain));
  return look.said.text.slice(look.said.all[taken[0]!]!.from, look.said.all[taken.at(-1)!]!.to);
}

/** Whom and which day a look at the log is about. */
export function whoAndWhen(look: Look): string {
  const who = look.said.people.find(({ names: [name] }) => name !== look.names.me)?.names[0];
  return [who, pastDayText(look)].filter(Boolean).join(' ');
}
