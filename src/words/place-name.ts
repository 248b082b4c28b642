import { Refusal } from '#core/refusal.ts';
import { couldNotPlace, type Reading } from './reading.ts';
import { sayList } from './say.ts';

/** Words that lead to a place or go on from it, and are no part of its name. */
const around = new Set(
  `to at in on over from for with by up into and a an the trip we're we are were i i'm go going off away us let's plan planned new next another this coming then add trips camp camping hike hiking backpacking canoeing just only both together all of leave leaving start starts starting make have please , - . : ; ( )`.split(
    ' ',
  ),
);
/** Of those, the ones that may end a name: 'Saturday hike'. */
const endsAName = new Set(['hike', 'camp', 'trip']);
/** Words that tell a time: a place named with one is quoted. */
const ofTime = new Set(
  `week weeks day days night nights month months after until till next later longer shorter earlier ago now hour hours`.split(
    ' ',
  ),
);

const leadsToPeople = /^(?:for|with|without|except|minus)$/;

/** Somebody who is named to come along and is no eater. */
function refuseStranger(name: string, eaters: readonly string[]): never {
  const known = eaters.length > 0 ? `There are ${sayList(eaters)}; ` : '';
  throw new Refusal(
    'no-such-eater',
    `I know no eater called "${name}". ${known}/eater ${name} adds somebody.`,
  );
}

/**
 * The place that a trip's words leave: one run of words, never put together from what was not understood.
 * @returns its name as typed, '' where no word is left; everything left is taken
 * @param eaters the household's own
 * @throws Refusal 'no-such-eater' for a name behind 'with'; 'leftover' where words stand apart from it, or tell a time that was not understood
 */
export function placeLeft(reading: Reading, eaters: readonly string[]): string {
  const runs: number[][] = [];
  for (const index of reading.left()) {
    if (reading.all[index]!.is === 'quoted') runs.push([index], []);
    else if (runs.at(-1)?.at(-1) === index - 1) runs.at(-1)!.push(index);
    else runs.push([index]);
  }
  const isAround = (index: number) => around.has(reading.all[index]!.plain);
  const isOnly = runs.flat().every(isAround);
  const trimmed = runs
    .map((run) => {
      const first = run.findIndex((index) => !isAround(index));
      const last = run.findLastIndex((index) => !isAround(index) || endsAName.has(reading.all[index]!.plain));
      // 'Camp' alone is a place where nothing else is.
      if (first < 0 && isOnly)
        return run.filter((index) => endsAName.has(reading.all[index]!.plain)).slice(0, 1);
      return first < 0 ? [] : run.slice(first, last + 1);
    })
    .filter((run) => run.length > 0);
  const text = (run: readonly number[]) =>
    reading.text.slice(reading.all[run[0]!]!.from, reading.all[run.at(-1)!]!.to);
  const titled = trimmed.filter((run) => run.some((index) => /^["“\p{Lu}]/u.test(reading.all[index]!.typed)));
  const inQuotes = trimmed.find((run) => reading.all[run[0]!]!.is === 'quoted');
  const place = inQuotes ?? (titled.length === 1 ? titled[0]! : trimmed[0]);
  const stray = trimmed.filter((run) => run !== place);
  const untold = (place ?? []).filter((index) => ofTime.has(reading.all[index]!.plain));
  const stranger = stray.find((run) => leadsToPeople.test(reading.all[run[0]! - 1]?.plain ?? ''));
  if (stranger) refuseStranger(text(stranger), eaters);
  const within = (place ?? []).findIndex(
    (index, i) => i > 0 && leadsToPeople.test(reading.all[index]!.plain),
  );
  if (place && within > 0 && within < place.length - 1) refuseStranger(text(place.slice(within + 1)), eaters);
  const lost = [...stray.map(text), ...untold.map((index) => reading.all[index]!.typed)];
  if (lost.length > 0)
    throw new Refusal(
      'leftover',
      `${couldNotPlace(lost, [])} A place named so stands in quotes: "${place ? text(place).replaceAll('"', '') : lost[0]!}".`,
    );
  reading.take(...reading.left());
  return place === undefined
    ? ''
    : text(place)
        .replace(/^["“](.*)["”]$/u, '$1')
        .trim();
}
