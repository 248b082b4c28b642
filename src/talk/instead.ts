import type { Names } from '#words/parts.ts';
import type { Token } from '#words/tokens.ts';
import { weekdayNamed } from '#words/weekday.ts';
import { type Said, takeApart } from './pieces.ts';
import { sayCode } from '#words/say.ts';

/** Words that turn to what was said before. */
const lead =
  /^(?:(?:no+|nope|sorry|oops|ups|wait|hang on|hm+|argh|ah|oh|i mean|actually|correction|wrong(?: \w+)?|my bad|stop|(?:scratch|scrap|strike|undo|forget) that)\b[\s,.!:;–-]*)+/iu;
const meant =
  /^(?:(?:i|we) (?:meant|mean)|it (?:was|is|should be|should have been)|that (?:was|should be|should have been)|make (?:that|it)|should (?:be|have been)|rather|instead)\s+/iu;
// 'Must not have nuts' denies its verb and puts nothing right.
const rightNotWrong =
  /^(.+?),?\s+(?:and\s+)?(?:(?<!\b(?:must|can|may|might|should|could|will|would|shall|do|does|did)\s)not|instead of|rather than)\s+(.+)$/iu;
const notWrong =
  /^not\s+(.+?)(?:\s*[,;:–-]\s*|\s+)(?:(?:but|it was|i meant|we meant|rather)\s+)?((?:\S+)(?:\s+\S+){0,3})$/iu;
const saidButWas =
  /^(?:(?:i|we)\s+)?(?:said|typed|wrote|put|entered|recorded|had)\s+(.+?)\s*(?:,|\bbut\b|\band\b|\bwhen\b|\bthough\b)\s*(?:(?:but|and)\s+)?(?:(?:it|that|they|i|we)\s+)?(?:was|were|is|are|should\s+(?:be|have\s+(?:been|said))|meant|mean|really\s+was)\s+(?:really\s+|actually\s+)?(.+)$/iu;
const each = /^(\d+(?:[.,]\d+)?\s*(?:g|grams?|oz|ounces?)\s+(?:each|a piece|apiece|per pouch))$/iu;

/** A longer message says its own. Chosen. */
const longest = 80;

/** What is said to be right, what to be wrong; undefined where a message turns to nothing before. */
function turned(typed: string): { right: string; wrong: string | undefined } | undefined {
  const text = typed.trim().replace(/[\s.!]+$/u, '');
  if (text.length > longest || /[?？]/.test(text)) return undefined;
  const behind = text.replace(lead, '');
  const isLed = behind !== text;
  const right = behind.replace(meant, '');
  const isMeant = right !== behind;
  const both = rightNotWrong.exec(right);
  if (both) return { right: both[1]!, wrong: both[2]! };
  const taken = saidButWas.exec(behind);
  if (taken) return { right: taken[2]!, wrong: taken[1]! };
  const denied = notWrong.exec(right);
  if (denied) return { right: denied[2]!, wrong: denied[1]! };
  if (isLed || isMeant || each.test(text)) return { right, wrong: undefined };
  return undefined;
}

interface Span {
  readonly from: number;
  readonly to: number;
  readonly into: string;
}

const spanOf = (all: readonly Token[], at: readonly number[], into: string): Span => ({
  from: all[at[0]!]!.from,
  to: all[at.at(-1)!]!.to,
  into,
});

/** Figures of a message: masses, volumes, lengths, times, bare numbers; each with its kind. */
const figuresOf = ({ all }: Said) =>
  all.flatMap((token, i) =>
    // The number of a tray is no figure that was weighed.
    /^trays?$/.test(all[i - 1]?.plain ?? '')
      ? []
      : token.is === 'quantity'
        ? [{ i, kind: token.unit.kind, value: token.value, typed: token.typed }]
        : token.is === 'number'
          ? [{ i, kind: 'number', value: token.value, typed: token.typed }]
          : [],
  );

function codesPut(before: Said, now: Said, wrong: Said | undefined): Span | undefined {
  const [first] = now.codes;
  if (!first) return undefined;
  const into = now.codes.map(({ code }) => sayCode(code)).join(' ');
  const old = wrong?.codes[0]?.code;
  const same = before.codes.filter(({ code }) => code.batch === old?.batch && code.no === old.no);
  if (old) return same[0] && spanOf(before.all, [same[0].at], into);
  if (before.codes.length === 0) return undefined;
  const isRow = before.codes.length === 1 || before.codes.length === now.codes.length;
  return isRow
    ? spanOf(
        before.all,
        before.codes.map(({ at }) => at),
        into,
      )
    : undefined;
}

function namePut(
  before: Said['meals'],
  now: Said['meals'],
  wrong: Said['meals'],
  all: readonly Token[],
): Span | undefined {
  const [is] = now;
  if (!is) return undefined;
  const [old] = wrong;
  const place = old ? before.find((one) => one.names[0] === old.names[0]) : before[0];
  return place && spanOf(all, place.at, `"${is.names[0]}"`);
}

/** 'It was the chili, not the curry': a meal in the place of the one pouch that was named. */
function mealForCode(before: Said, now: Said): Span | undefined {
  const [meal] = now.meals;
  const [code, another] = before.codes;
  return meal && code && !another && before.meals.length === 0
    ? spanOf(before.all, [code.at], `"${meal.names[0]}"`)
    : undefined;
}

function figurePut(before: Said, now: Said, wrong: Said | undefined): Span | undefined {
  const [figure, another] = figuresOf(now);
  if (!figure || another) return undefined;
  const old = wrong && figuresOf(wrong)[0];
  const alike = figuresOf(before).filter(
    (one) => one.kind === figure.kind || one.kind === 'number' || figure.kind === 'number',
  );
  const ofKind = alike.filter(({ kind }) => kind === figure.kind);
  const place = old
    ? alike.find(({ value }) => value === old.value)
    : ofKind.length === 1
      ? ofKind[0]
      : alike.length === 1
        ? alike[0]
        : undefined;
  if (!place) return undefined;
  const bare = figure.kind === 'number' && place.kind !== 'number';
  const unit = bare ? place.typed.replace(/^[\d.,\s]+/u, ' ') : '';
  return spanOf(before.all, [place.i], `${figure.typed}${unit}`);
}

/** 'Not peanuts, pistachios': the very words that were said before, exchanged. */
function wordsPut(before: string, right: string, wrong: string): Span | undefined {
  const from = before.toLowerCase().indexOf(wrong.toLowerCase().trim());
  return from < 0 || wrong.trim() === ''
    ? undefined
    : { from, to: from + wrong.trim().length, into: right.trim() };
}

/** 'That was tray 3, not 2': another tray in the place of the one that was named. */
function trayPut(before: Said, now: Said): Span | undefined {
  const trayAt = ({ all }: Said) =>
    all.flatMap(({ is }, i) => (is === 'number' && /^trays?$/.test(all[i - 1]?.plain ?? '') ? [i] : []));
  const [[old, more], [is]] = [trayAt(before), trayAt(now)];
  return old === undefined || more !== undefined || is === undefined || figuresOf(now).length > 1
    ? undefined
    : spanOf(before.all, [old], now.all[is]!.typed);
}

function dayPut(before: Said, now: Said): Span | undefined {
  const dayAt = ({ all }: Said) =>
    all.findIndex((token) => token.is === 'word' && weekdayNamed(token.plain) >= 0);
  const [old, is] = [dayAt(before), dayAt(now)];
  return old < 0 || is < 0 ? undefined : spanOf(before.all, [old], now.all[is]!.typed);
}

/**
 * The message before, as it was meant: 'no, I meant B1-3', 'not Ben, Tomas', '62 g each', 'sunday, not saturday'.
 * @param typed what is said now
 * @param earlier what the same person said and had recorded
 * @returns undefined where it turns to nothing before, or nothing in that has its place
 */
export function asMeant(typed: string, earlier: string, names: Names): string | undefined {
  const told = turned(typed);
  if (!told) return undefined;
  const [before, now] = [takeApart(earlier, names), takeApart(told.right, names)];
  const wrong = told.wrong === undefined ? undefined : takeApart(told.wrong, names);
  const batch = now.batches[0] && before.batches[0];
  const tray = trayPut(before, now);
  const literal = told.wrong === undefined ? undefined : wordsPut(before.text, told.right, told.wrong);
  const span =
    tray ??
    codesPut(before, now, wrong) ??
    (batch ? spanOf(before.all, [batch.at], `B${now.batches[0]!.batch}`) : undefined) ??
    namePut(before.people, now.people, wrong?.people ?? [], before.all) ??
    namePut(before.meals, now.meals, wrong?.meals ?? [], before.all) ??
    mealForCode(before, now) ??
    figurePut(before, now, wrong) ??
    dayPut(before, now) ??
    literal;
  if (!span) return undefined;
  const text = before.text.slice(0, span.from) + span.into + before.text.slice(span.to);
  return text === before.text ? undefined : text;
}
