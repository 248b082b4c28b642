import { DateTime } from 'luxon';
import { Refusal } from '#core/refusal.ts';

const months = ['jan', 'feb', 'mar', 'apr', 'may', 'jun', 'jul', 'aug', 'sep', 'oct', 'nov', 'dec'];
const month =
  '(jan(?:uary)?|feb(?:ruary)?|mar(?:ch)?|apr(?:il)?|may|june?|july?|aug(?:ust)?|sept?(?:ember)?|oct(?:ober)?|nov(?:ember)?|dec(?:ember)?)\\.?';
const lead =
  '(?:best\\s*(?:by|before)(?:\\s+(?:the\\s+)?end(?:\\s+of)?)?|b\\.?b\\.?[de]?\\.?|use\\s*by|exp(?:ires?|iry)?(?:\\s+(?:date|on|in))?|(?:good|keeps?|lasts?)\\s+(?:until|till|to))\\s*:?\\s*';
const forms: readonly RegExp[] = [
  new RegExp(`${lead}(?<y>\\d{4})-(?<m>\\d{1,2})(?:-(?<d>\\d{1,2}))?(?![\\d-])`, 'iu'),
  new RegExp(`${lead}(?<d>\\d{1,2})[./](?<m>\\d{1,2})[./](?<y>\\d{4}|\\d{2})(?!\\d)`, 'iu'),
  new RegExp(`${lead}(?<m>\\d{1,2})[./](?<y>\\d{4})(?!\\d)`, 'iu'),
  new RegExp(`${lead}(?<w>${month})\\s+(?<d>\\d{1,2})(?:st|nd|rd|th)?(?:\\s*,?\\s*(?<y>20\\d\\d))?\\b`, 'iu'),
  new RegExp(
    `${lead}(?:(?<d>\\d{1,2})(?:st|nd|rd|th)?\\s+(?:of\\s+)?)?(?<w>${month})(?:\\s*,?\\s*(?<y>20\\d\\d))?\\b`,
    'iu',
  ),
];

/**
 * The day until which a packet says its food keeps: of a month its last; the next of its kind where no year stands.
 * @throws Refusal 'no-such-day'
 */
export function bestByTold(text: string, nowMs: number, zone: string): { day: string | null; rest: string } {
  const found = forms.map((form) => form.exec(text)).find((one) => one !== null);
  if (!found) {
    const open = new RegExp(`(?<![\\p{L}])${lead}(\\S+)`, 'iu').exec(text);
    if (open)
      throw new Refusal(
        'no-such-day',
        `I could not read "${open[0].trim()}": a month or a day such as best by 2027-03 or best by 15 March 2027 is needed.`,
      );
    return { day: null, rest: text };
  }
  const rest = `${text.slice(0, found.index)} , ${text.slice(found.index + found[0].length)}`;
  const { y, m, d, w } = found.groups!;
  const monthNo = w === undefined ? Number(m) : months.indexOf(w.slice(0, 3).toLowerCase()) + 1;
  const today = DateTime.fromMillis(nowMs, { zone }).startOf('day');
  const at = (year: number): DateTime => {
    const first = DateTime.fromObject(
      { year, month: monthNo, day: d === undefined ? 1 : Number(d) },
      { zone },
    );
    return d === undefined ? first.endOf('month').startOf('day') : first;
  };
  const year = y === undefined ? undefined : y.length === 2 ? 2000 + Number(y) : Number(y);
  const day = year === undefined ? (at(today.year) >= today ? at(today.year) : at(today.year + 1)) : at(year);
  if (!day.isValid)
    throw new Refusal('no-such-day', `${found[0].trim()}: there is no such day or month of the calendar.`);
  return { day: day.toISODate(), rest };
}
