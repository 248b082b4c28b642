import { command } from '#chat/command.ts';
import { countOf, optional } from '#words/parts.ts';
import { sayMoment } from '#words/say.ts';

export default command({
  name: 'log',
  usage: '/log [20 entries]',
  summary: 'who recorded what, when; newest first',
  examples: ['/log', '/log 20 entries'],
  takes: { count: optional(countOf('entries', 'entry', 'lines')) },
  run: ({ count }, house) => ({
    entries: house.journal.latest(Math.min(count ?? 10, 50)),
    zone: house.settings.zone,
  }),
  say: ({ entries, zone }) => ({
    group:
      entries.length === 0
        ? 'Nothing has been recorded yet.'
        : entries
            .map(
              ({ atMs, by, did, undoneBy }) =>
                `${sayMoment(atMs, zone)} ${by}: ${did}${undoneBy ? ` (taken back by ${undoneBy})` : ''}`,
            )
            .join('\n'),
  }),
});
