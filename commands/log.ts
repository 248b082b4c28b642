import { command } from '#chat/command.ts';
import { nameKey } from '#house/figures.ts';
import { takeName } from '#words/names.ts';
import { countOf, optional, part } from '#words/parts.ts';
import { pastDays } from '#words/when.ts';
import { sayMoment } from '#words/say.ts';

/** How far back somebody's own entries are looked for. */
const lookedThrough = 500;

export default command({
  name: 'log',
  usage: '/log [20 entries] [Ana] [yesterday] [sunday] [last week]',
  summary: 'who recorded what, when; newest first',
  examples: ['/log', '/log 20 entries', '/log yesterday', '/log 20 April'],
  takes: {
    count: optional(countOf('entries', 'entry', 'lines')),
    days: pastDays,
    who: optional(
      part<string>('whose entries', (reading, names) => takeName(reading, names.eaters, 'eater')),
    ),
  },
  run: ({ count, days, who }, house) => {
    const { zone } = house.settings;
    const isAsked = ({ atMs, by }: { atMs: number; by: string }) =>
      (who === undefined || nameKey(by) === nameKey(who)) &&
      (days === undefined || (atMs >= days.fromMs && atMs <= days.toMs));
    const most = Math.min(count ?? (days === undefined ? 10 : 20), 50);
    const entries = house.journal
      .latest(who === undefined && days === undefined ? most : lookedThrough)
      .filter(isAsked)
      .slice(0, most);
    return { entries, zone, who, isDay: days !== undefined };
  },
  say: ({ entries, zone, who, isDay }) => ({
    group:
      entries.length === 0
        ? `Nothing ${who === undefined && !isDay ? 'has been recorded yet' : `is on record${who === undefined ? '' : ` by ${who}`}${isDay ? ' for that time' : ''}`}.`
        : entries
            .map(
              ({ atMs, by, did, undoneBy }) =>
                `${sayMoment(atMs, zone)} ${by}: ${did}${undoneBy ? ` (taken back by ${undoneBy})` : ''}`,
            )
            .join('\n'),
  }),
});
