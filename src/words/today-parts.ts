import { DateTime } from 'luxon';
import { optional, part } from './part.ts';
import { tripAndDay } from './want-parts.ts';

/** 'tomorrow' counts from the day it is said, a weekday is the trip's own. */
export const dayOfTrip = part<{ trip: string | undefined; day: string | undefined }>(
  'a day of the trip, such as tomorrow or sunday',
  (reading, names) => {
    const here = DateTime.fromMillis(names.nowMs, { zone: names.zone });
    const said =
      reading.keyword('tomorrow') !== undefined
        ? here.plus({ days: 1 })
        : reading.keyword('yesterday') !== undefined
          ? here.minus({ days: 1 })
          : reading.keyword('today', 'tonight', 'now') !== undefined
            ? here
            : undefined;
    const found = tripAndDay.read(reading, names);
    return said === undefined ? found : { trip: found?.trip, day: said.toISODate()! };
  },
);

/** All days at once: 'whole trip', 'every day'. */
export const wholeTripFlag = optional(
  part<true>('whole trip', (reading) => {
    if (reading.keyword('whole', 'all', 'everything', 'every') === undefined) return undefined;
    reading.takeWords('the', 'trip', 'day', 'days');
    return true;
  }),
);
