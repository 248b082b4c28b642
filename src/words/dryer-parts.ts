import type { DryerEvent } from '#core/running.ts';
import { optional, part } from './part.ts';

/** What people say of a dryer, and what it does then. */
export const dryerWords: Readonly<Record<DryerEvent['what'], readonly string[]>> = {
  stopped: [
    'stopped',
    'stops',
    'stop',
    'off',
    'failed',
    'fails',
    'broke',
    'died',
    'cut',
    'out',
    'stood',
    'stands',
  ],
  resumed: [
    'running',
    'runs',
    'ran',
    'resumed',
    'resume',
    'resumes',
    'restarted',
    'restart',
    'on',
    'back',
    'going',
    'goes',
  ],
  moved: ['moved', 'move', 'moves'],
};

/** Small words about a dryer that say nothing more. */
const besides =
  'again went down up still is was has from at since to till until between dryer pump machine power electricity it load'.split(
    ' ',
  );

/** What happened in the dryer: 'stopped', 'runs again', 'moved to the cellar'. */
export const dryerEvent = optional(
  part<DryerEvent['what']>('what happened: stopped, runs again or moved', (reading) => {
    const kinds = Object.keys(dryerWords) as DryerEvent['what'][];
    for (const kind of ['moved', 'stopped', 'resumed'] as const satisfies typeof kinds) {
      const index = [...reading.left()].find((i) => dryerWords[kind].includes(reading.all[i]!.plain));
      if (index === undefined) continue;
      reading.takeWords(...dryerWords[kind]);
      if (kind !== 'moved') reading.takeWords(...besides);
      return kind;
    }
    return undefined;
  }),
);

/** A meter of electricity as it was read, kWh: 'meter 4521.3', 'the meter shows 4521.3 kWh'. */
export const meterShown = part<number>('what the meter shows, such as meter 4521.3', (reading) => {
  const at = [...reading.left()].find((i) => reading.all[i]!.plain === 'meter');
  if (at === undefined) return undefined;
  const index = [...reading.left()].find((i) => i > at && reading.all[i]!.is === 'number');
  if (index === undefined) return undefined;
  reading.settleNumbers([index]);
  const token = reading.all[index]!;
  reading.take(at, index);
  reading.takeWords('the', 'shows', 'showed', 'reads', 'read', 'at', 'is', 'kwh', 'now');
  return token.is === 'number' ? token.value : undefined;
});
