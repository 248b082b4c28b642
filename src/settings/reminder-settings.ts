import { type ReminderKind, reminderKinds, remindSetting } from '#core/reminders.ts';
import { inRange } from '#core/ranges.ts';
import { Refusal } from '#core/refusal.ts';
import type { Settings } from '#core/settings.ts';
import type { Reading } from '#words/reading.ts';
import { sayList } from '#words/say.ts';

const wordsOf: Record<ReminderKind, readonly string[]> = {
  weigh: ['weigh', 'weighing', 'weight', 'weights', 'load', 'loads'],
  seal: ['seal', 'seals', 'sealing', 'check', 'checks'],
  'best-by': ['best-by', 'best', 'by', 'bestby', 'dates'],
  trip: ['trip', 'trips', 'cook', 'cooking'],
};
const saidOf: Record<ReminderKind, string> = {
  weigh: 'weigh',
  seal: 'seal check',
  'best-by': 'best-by',
  trip: 'trip',
};

function switched(reading: Reading) {
  const on = reading.keyword('on', 'yes', 'again') !== undefined;
  const off = reading.keyword('off', 'no', 'never', 'none', 'stop') !== undefined;
  if (on === off) return [];
  const named = reminderKinds.filter((kind) => {
    const found = wordsOf[kind].some((word) =>
      [...reading.left()].some((i) => reading.all[i]!.plain === word),
    );
    if (found) reading.takeWords(...wordsOf[kind]);
    return found;
  });
  reading.takeWords('all', 'for', 'the', 'of');
  // A word that names no kind must not switch them all.
  if (named.length === 0 && [...reading.left()].length > 0) {
    throw new Refusal(
      'no-such-reminder',
      `I remind of ${sayList(reminderKinds.map((kind) => saidOf[kind]))}; "${reading.rest()}" is none of them.`,
    );
  }
  return (named.length === 0 ? reminderKinds : named).map((kind) => ({
    name: remindSetting[kind],
    value: on,
  }));
}

const daysIn: Record<string, number> = { day: 1, days: 1, week: 7, weeks: 7, month: 30, months: 30 };

function horizon(reading: Reading) {
  for (const index of reading.left()) {
    const token = reading.all[index]!;
    if (token.is !== 'number' && token.is !== 'quantity') continue;
    reading.settleNumbers([index]);
    const after = reading.at(index + 1);
    const unit = token.is === 'quantity' ? token.unitTyped.toLowerCase() : (after?.plain ?? 'days');
    const days = Object.hasOwn(daysIn, unit) ? daysIn[unit] : undefined;
    if (days === undefined) return [];
    reading.take(index, ...(token.is === 'number' && after ? [index + 1] : []));
    const value = Math.round(token.value * days);
    return [{ name: 'horizonDays' as const, value: inRange('out-of-range', 'horizonDays', value) }];
  }
  return [];
}

/** What a household tells about its reminders; part of all that it can tell. */
export const reminderSettings = [
  {
    words: ['reminders', 'reminder', 'remind'] as const,
    example: '/house remind weigh off',
    read: switched,
    say: (settings: Settings) => {
      const on = reminderKinds.filter((kind) => settings[remindSetting[kind]]);
      return on.length === 0
        ? 'reminders off'
        : `reminders ${sayList(on.map((kind) => saidOf[kind]))}, none at night`;
    },
  },
  {
    words: ['horizon'] as const,
    example: '/house horizon 60 days',
    read: horizon,
    say: ({ horizonDays }: Settings) => `horizon ${horizonDays} days before best-by`,
  },
];
