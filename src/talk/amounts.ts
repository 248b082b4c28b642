import { wasDayBefore } from '#words/hour-of-day.ts';
import { table } from '#words/table.ts';
import type { Look } from './look.ts';

/** A day that is spoken of and an hour, bare or on the clock, before or behind it. */
const hour = "(\\d{1,2})(?:[:.](\\d\\d))?(?:\\s*o['’]?clock)?(?!\\s*(?:g|kg|oz|ml|x)\\b|\\d)";
const spokenDays =
  'last (?:night|evening)|yesterday (?:evening|night|afternoon|morning)|this morning|in the morning|this afternoon';
const dayThenHour = new RegExp(
  `\\b(${spokenDays})(?:,?\\s+(?:at\\s+|around\\s+)?${hour}(?:(?<=clock)|(?!\\s*[,/\\d])))?`,
  'iu',
);
const hourThenDay = new RegExp(`\\b(?:at|around|about|since)\\s+${hour}\\s+(?:on\\s+)?(${spokenDays})`, 'iu');
const spokenDay = new RegExp(spokenDays, 'iu');
const hours = 'zero one two three four five six seven eight nine ten eleven twelve'.split(' ');
/** 'Half past six', 'a quarter to seven'. */
const clockWords = new RegExp(
  `\\b(?:at\\s+)?((?:half|a quarter|quarter) (?:past|to))\\s+(\\d{1,2}|${hours.slice(1).join('|')})\\b`,
  'iu',
);
/** 'Half an hour ago', 'an hour ago', '30 min ago', as a request takes it. */
const ago =
  /\b(?:about\s+|some\s+)?(?:(half an|quarter of an|three quarters of an|an?|one|two|three|four|five|six|\d+(?:[.,]\d+)?)\s*(hours?|hrs?|h|min(?:ute)?s?))\s+ago\b/iu;
const shares = table<number>({
  'half an': 0.5,
  'quarter of an': 0.25,
  'three quarters of an': 0.75,
  a: 1,
  an: 1,
  one: 1,
  two: 2,
  three: 3,
  four: 4,
  five: 5,
  six: 6,
});
const monthWord = /^(?:jan|feb|mar|apr|may|jun|jul|aug|sept?|oct|nov|dec)(?:\p{L}{2,6})?$/u;

/** The words that tell a moment, as a request takes them: 'yesterday 21:00', '7 pm', '2 h ago'. */
export function momentOf(look: Look): { words: string; at: number[] } {
  const { all, text } = look.said;
  const within = (from: number, length: number) =>
    all.flatMap((token, i) => (token.from >= from && token.to <= from + length ? [i] : []));
  // 'At 8.30' is a time; a bare 8.30 may weigh.
  const dotted = /\bat\s+(\d{1,2})\.(\d\d)\b(?!\s*(?:g|kg|oz|ml|l)\b)/iu.exec(text);
  if (dotted && Number(dotted[1]) < 24 && Number(dotted[2]) < 60 && !spokenDay.test(text))
    return {
      words: `${dotted[1]!.padStart(2, '0')}:${dotted[2]!}`,
      at: within(dotted.index, dotted[0].length),
    };
  const told = clockWords.exec(text);
  if (told) {
    const hourTold = shares[told[2]!.toLowerCase()] ?? hours.indexOf(told[2]!.toLowerCase());
    const minutes = { half: 30, quarter: 15 }[told[1]!.toLowerCase().replace(/^a /, '').split(' ')[0]!] ?? 0;
    const base =
      (Number.isFinite(Number(told[2])) ? Number(told[2]) : hourTold) * 60 +
      (/ to$/iu.test(told[1]!) ? -minutes : minutes);
    const isLate = /\b(?:evening|afternoon|night|pm)\b/iu.test(text) && base < 720;
    const late = base + (isLate ? 720 : 0);
    const day = spokenDay.exec(text);
    const isBefore = /\b(?:yesterday|last night|last evening)\b/iu.test(text);
    if (base > 0 && late < 1440)
      return {
        words: `${isBefore ? 'yesterday ' : ''}${String(Math.floor(late / 60)).padStart(2, '0')}:${String(late % 60).padStart(2, '0')}`,
        at: [...within(told.index, told[0].length), ...(day ? within(day.index, day[0].length) : [])],
      };
  }
  const since = /\b(?:since|from)\s+(\d{1,2})(?:\s*o['’]?clock)?(?=\s*(?:[,.!]|$))/iu.exec(text);
  if (since && Number(since[1]) < 24 && !spokenDay.test(text))
    return { words: `${since[1]!.padStart(2, '0')}:00`, at: within(since.index, since[0].length) };
  const past = ago.exec(text);
  if (past) {
    const count = shares[past[1]!.toLowerCase()] ?? Number(past[1]!.replace(',', '.'));
    return {
      words: `${count} ${/^m/i.test(past[2]!) ? 'min' : 'h'} ago`,
      at: within(past.index, past[0].length),
    };
  }
  const behind = hourThenDay.exec(text);
  const before = behind ? undefined : dayThenHour.exec(text);
  const spoken = behind ?? before;
  if (spoken) {
    const [day, typedHour, minute] = behind
      ? [behind[3]!, behind[1], behind[2]]
      : [before![1]!, before![2], before![3]];
    const at = within(spoken.index, spoken[0].length);
    const lead = day.toLowerCase().split(' ')[0];
    const dayOf = (hour: number) => (wasDayBefore(lead, hour) ? 'yesterday' : 'today');
    if (typedHour === undefined) {
      // 'At 7 am this morning': the hour stands apart from its day.
      const clock = all.findIndex((token) => token.is === 'clock');
      const told = all[clock];
      if (told?.is !== 'clock') return { words: '', at };
      const two = (figure: number) => String(figure).padStart(2, '0');
      return {
        words: `${dayOf(told.hour)} ${two(told.hour)}:${two(told.minute)}`,
        at: [...at, clock],
      };
    }
    const isEarly = /night/i.test(day) && Number(typedHour) < 6;
    const isLate = /night|evening|afternoon/i.test(day) && Number(typedHour) < 12 && !isEarly;
    const on24 = Number(typedHour) + (isLate ? 12 : 0);
    return { words: `${dayOf(on24)} ${on24}:${minute ?? '00'}`, at };
  }
  const at = all.flatMap((token, i) => {
    if (token.is === 'clock' || token.is === 'date') return [i];
    if (
      token.is === 'word' &&
      /^(?:yesterday|today|mon|tue|wed|thu|fri|sat|sun)(?:day|sday|nesday|rsday|urday)?$/.test(token.plain)
    )
      return [i];
    if (token.plain === 'ago' && all[i - 1]?.is === 'quantity') return [i - 1, i];
    // '29 April', 'April 29'.
    const isDay = (other: number) => {
      const one = all[other];
      return one?.is === 'number' && Number.isInteger(one.value) && one.value >= 1 && one.value <= 31;
    };
    if (token.is === 'word' && monthWord.test(token.plain))
      return isDay(i - 1) ? [i - 1, i] : isDay(i + 1) ? [i, i + 1] : [];
    return [];
  });
  return {
    words: [...new Set(at)]
      .toSorted((a, b) => a - b)
      .map((i) => text.slice(all[i]!.from, all[i]!.to))
      .join(' '),
    at,
  };
}

/** The weights of a message in their order, each as typed, spoken numbers as figures; not the numbers of trays. */
export function weightsOf(look: Look): { words: string[]; at: number[]; trays: number[] } {
  const { all } = look.said;
  const words: string[] = [];
  const at: number[] = [];
  const trays: number[] = [];
  const moment = new Set(momentOf(look).at);
  for (let i = 0; i < all.length; i++) {
    const token = all[i]!;
    if (moment.has(i)) continue;
    // 'And the last one 580': the tray, not one gram.
    if (token.plain === 'one' && all[i - 1]?.plain === 'last') {
      at.push(i);
      continue;
    }
    const isTrayNo =
      all[i - 1]?.plain === 'tray' && token.is === 'number' && token.value >= 1 && token.value <= 20;
    if (isTrayNo) {
      trays.push(token.value);
      continue;
    }
    const joins = all[i + 1]?.plain === 'and' && token.is === 'number' && token.spelled ? 1 : 0;
    const next = all[i + 1 + joins];
    // 'Six hundred ten' is cut in two.
    const rest =
      token.is === 'number' &&
      token.spelled &&
      token.value % 100 === 0 &&
      (next?.is === 'number' || next?.is === 'quantity') &&
      next.value < 100 &&
      next.from > token.to &&
      /^\p{L}/u.test(next.typed)
        ? next
        : undefined;
    if (token.is === 'number' && rest) {
      words.push(`${token.value + rest.value}${rest.is === 'quantity' ? ` ${rest.unitTyped}` : ''}`);
      at.push(i, i + 1, i + 1 + joins);
      i += 1 + joins;
      continue;
    }
    const shared = sharedBy(all, i) ?? sharedBehind(all, i);
    const isBare = token.is === 'number' && token.value >= 20;
    if (((token.is === 'quantity' && token.unit.kind === 'mass') || isBare) && shared) {
      words.push(`${shared.count} x ${token.typed}${isBare ? ' g' : ''}`);
      at.push(...shared.at, i);
      i = Math.max(i, ...shared.at);
      continue;
    }
    if (token.is === 'quantity' && token.unit.kind === 'mass')
      words.push(/^\p{L}/u.test(token.typed) ? `${token.value} ${token.unitTyped}` : token.typed);
    else if (
      token.is === 'number' &&
      (token.value >= 20 || (!Number.isInteger(token.value) && !token.spelled))
    )
      words.push(String(token.value));
    else continue;
    at.push(i);
  }
  return { words, at, trays };
}

/** '520 g each, 4 of them': the same, told behind. */
function sharedBehind(all: Look['said']['all'], i: number): { count: number; at: number[] } | undefined {
  if (all[i + 1]?.plain !== 'each') return undefined;
  const k = all[i + 2]?.plain === ',' ? i + 3 : i + 2;
  const token = all[k];
  const isCount =
    token?.is === 'number' && Number.isInteger(token.value) && token.value >= 1 && token.value < 20;
  if (!isCount || all[k + 1]?.plain !== 'of' || all[k + 2]?.plain !== 'them') return undefined;
  return { count: token.value, at: [i + 1, k, k + 1, k + 2] };
}

/** '4 trays of 520 g': how many trays share a weight, and the words that say so. */
function sharedBy(all: Look['said']['all'], i: number): { count: number; at: number[] } | undefined {
  let k = i - 1;
  const at: number[] = [];
  while (['of', 'at', 'with', 'each', 'trays', 'tray', 'shelves', 'x'].includes(all[k]?.plain ?? ''))
    at.push(k--);
  const token = all[k];
  const isCount =
    token?.is === 'number' && Number.isInteger(token.value) && token.value >= 1 && token.value < 20;
  return isCount && at.some((j) => all[j]!.plain !== 'each')
    ? { count: token.value, at: [...at, k] }
    : undefined;
}
