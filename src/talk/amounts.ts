import type { Look } from './look.ts';

/** 'Last night at 9' and its like: the day, and how many hours a bare hour lies behind noon. */
const spokenTimes: readonly (readonly [pattern: RegExp, day: string, later: number])[] = [
  [/\blast (?:night|evening)(?:\s+(?:at\s+)?(\d{1,2})(?:[:.](\d\d))?)?/iu, 'yesterday', 12],
  [/\byesterday (?:evening|night|afternoon)(?:\s+(?:at\s+)?(\d{1,2})(?:[:.](\d\d))?)?/iu, 'yesterday', 12],
  [/\byesterday morning(?:\s+(?:at\s+)?(\d{1,2})(?:[:.](\d\d))?)?/iu, 'yesterday', 0],
  [/\bthis morning(?:\s+(?:at\s+)?(\d{1,2})(?:[:.](\d\d))?)?/iu, 'today', 0],
];

/** The words that tell a moment, as a request takes them: 'yesterday 21:00', '7 pm', '2 h ago'. */
export function momentOf(look: Look): { words: string; at: number[] } {
  const { all, text } = look.said;
  for (const [pattern, day, later] of spokenTimes) {
    const m = pattern.exec(text);
    if (!m) continue;
    const at = all.flatMap((token, i) =>
      token.from >= m.index && token.to <= m.index + m[0].length ? [i] : [],
    );
    if (m[1] === undefined) return { words: '', at };
    const hour = Number(m[1]) < 12 ? Number(m[1]) + later : Number(m[1]);
    return { words: `${day} ${hour}:${m[2] ?? '00'}`, at };
  }
  const at = all.flatMap((token, i) => {
    if (token.is === 'clock' || token.is === 'date') return [i];
    if (
      token.is === 'word' &&
      /^(?:yesterday|today|mon|tue|wed|thu|fri|sat|sun)(?:day|sday|nesday|rsday|urday)?$/.test(token.plain)
    )
      return [i];
    if (token.plain === 'ago' && all[i - 1]?.is === 'quantity') return [i - 1, i];
    return [];
  });
  return { words: at.map((i) => text.slice(all[i]!.from, all[i]!.to)).join(' '), at };
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
    const isTrayNo =
      all[i - 1]?.plain === 'tray' && token.is === 'number' && token.value >= 1 && token.value <= 20;
    if (isTrayNo) {
      trays.push(token.value);
      continue;
    }
    const next = all[i + 1];
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
      at.push(i, i + 1);
      i += 1;
      continue;
    }
    const shared = sharedBy(all, i);
    if (token.is === 'quantity' && token.unit.kind === 'mass' && shared) {
      words.push(`${shared.count} x ${token.typed}`);
      at.push(...shared.at, i);
      continue;
    }
    if (token.is === 'quantity' && token.unit.kind === 'mass')
      words.push(/^\p{L}/u.test(token.typed) ? `${token.value} ${token.unitTyped}` : token.typed);
    else if (token.is === 'number' && (token.value >= 20 || !Number.isInteger(token.value)))
      words.push(String(token.value));
    else continue;
    at.push(i);
  }
  return { words, at, trays };
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
