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
