import { command } from '#chat/command.ts';
import { exchange, wishesLeft } from '#house/exchanging.ts';

import { saySlot, tripMeant } from '#house/trips.ts';
import { exchangeTold } from '#words/exchange-parts.ts';
import { sayCodes } from '#words/say.ts';

export default command({
  name: 'exchange',
  usage: '/exchange saturday and sunday · /exchange saturday dinner and sunday dinner [trip]',
  summary: 'two days or two meals of a kept plan change places',
  examples: ['/exchange saturday and sunday', '/exchange saturday dinner and sunday dinner'],
  help: [
    'All else stays. A pouch that keeps too short, or is for somebody who is not there, stays where it is, and nothing moves.',
  ],
  records: true,
  offers: { of: 'days' },
  takes: { told: exchangeTold },
  run: ({ told }, house) => {
    const trip = tripMeant(house, told.trip);
    const exchanged = exchange(house, trip, told.sides);
    return { place: trip.place, exchanged, wishes: wishesLeft(house, trip, exchanged) };
  },
  say: ({ place, exchanged, wishes }) => ({
    group: [
      `${place}: ${exchanged.map(({ one, other }) => `${saySlot(one)} and ${saySlot(other)}`).join('; ')} changed places.`,
      ...exchanged.flatMap(({ one, other, moved }) =>
        (
          [
            [other, moved.filter(({ held }) => held.slot === one.id)],
            [one, moved.filter(({ held }) => held.slot === other.id)],
          ] as const
        ).map(([slot, now]) =>
          now.length === 0
            ? `${saySlot(slot)}: nothing.`
            : `${saySlot(slot)}: ${[...new Set(now.map(({ pouch }) => pouch.meal))].join(', ')}, ${sayCodes(now.map(({ pouch }) => pouch))}.`,
        ),
      ),
      ...wishes,
    ].join('\n'),
    did: `let ${exchanged.map(({ one, other }) => `${saySlot(one)} and ${saySlot(other)}`).join('; ')} change places`,
    buttons: [{ label: 'The plan by day', request: `/today "${place}"` }],
    buttonsForAll: true,
  }),
});
