/** 'at 7 this morning', 'this evening at 7': the hour of a part of the day, behind a word that a time follows. */
const hourOfDay =
  /^(\d{1,2})(?! ?[\p{L}%°]| ?[.,:]\d)|^(\d{1,2})(?= (?:this|in the|yesterday|tomorrow|last|o'?clock)\b)/iu;
const dayPart = /\b(morning|afternoon|evening|tonight|night)\b/iu;
const opensTime = /\b(?:at|around|about|by|since|until|till|before|after)\s+$/iu;

/** The part of the day stands right before the hour or right behind it, as far as a comma reaches. */
export function hourByDayPart(
  smooth: string,
  at: number,
  rest: string,
): { hour: number; length: number } | undefined {
  const before = smooth
    .slice(Math.max(0, at - 40), at)
    .split(/[,.;\n]/u)
    .at(-1)!;
  const m = opensTime.test(before) ? hourOfDay.exec(rest) : null;
  const figure = m?.[1] ?? m?.[2];
  if (figure === undefined) return undefined;
  const behind = rest
    .slice(figure.length)
    .split(/[,.;\n]/u)[0]!
    .slice(0, 30);
  const part = (dayPart.exec(behind) ?? dayPart.exec(before))?.[1]?.toLowerCase();
  const hour = Number(figure);
  if (part === undefined || hour < 1 || hour > 12) return undefined;
  // 'At 2 last night' is after midnight.
  const isEarly = part === 'morning' || (part === 'night' && hour < 6);
  return { hour: isEarly ? hour % 12 : (hour % 12) + 12, length: figure.length };
}

/** Whether 'yesterday evening' or 'last night' was the day before; after midnight last night is today. @param hour 0 to 23 */
export const wasDayBefore = (lead: string | undefined, hour: number): boolean =>
  lead === 'yesterday' || (lead === 'last' && hour >= 12);
