import { DateTime } from 'luxon';
import { command } from '#chat/command.ts';
import { nameKey } from '#house/figures.ts';
import { takeName } from '#words/names.ts';
import { countOf, flag, optional, part } from '#words/parts.ts';
import { sayMoment } from '#words/say.ts';

/** How far back somebody's own entries are looked for. */
const lookedThrough = 500;

export default command({
  name: 'log',
  usage: '/log [20 entries] [Ana] [yesterday]',
  summary: 'who recorded what, when; newest first',
  examples: ['/log', '/log 20 entries', '/log yesterday'],
  takes: {
    count: optional(countOf('entries', 'entry', 'lines')),
    today: flag('today'),
    yesterday: flag('yesterday'),
    who: optional(
      part<string>('whose entries', (reading, names) => takeName(reading, names.eaters, 'eater')),
    ),
  },
  run: ({ count, today, yesterday, who }, house) => {
    const { zone } = house.settings;
    const now = DateTime.fromMillis(house.nowMs, { zone });
    const day = today ? now : yesterday ? now.minus({ days: 1 }) : undefined;
    const isAsked = ({ atMs, by }: { atMs: number; by: string }) =>
      (who === undefined || nameKey(by) === nameKey(who)) &&
      (day === undefined || DateTime.fromMillis(atMs, { zone }).hasSame(day, 'day'));
    const most = Math.min(count ?? 10, 50);
    const entries = house.journal
      .latest(who === undefined && day === undefined ? most : lookedThrough)
      .filter(isAsked)
      .slice(0, most);
    return { entries, zone, who, isDay: day !== undefined };
  },
  say: ({ entries, zone, who, isDay }) => ({
    group:
      entries.length === 0
        ? `Nothing ${who === undefined && !isDay ? 'has been recorded yet' : `is on record${who === undefined ? '' : ` by ${who}`}${isDay ? ' for that day' : ''}`}.`
        : entries
            .map(
              ({ atMs, by, did, undoneBy }) =>
                `${sayMoment(atMs, zone)} ${by}: ${did}${undoneBy ? ` (taken back by ${undoneBy})` : ''}`,
            )
            .join('\n'),
  }),
});
