import { command } from '#chat/command.ts';
import { type HeldWithPouch, heldByCode, heldFor } from '#house/packing.ts';
import { tripMeant } from '#house/trips.ts';
import type { HeldPouch } from '#core/records.ts';
import { Refusal } from '#core/refusal.ts';
import { meal as mealName, type Names, optional, part, type PouchCode, pouchCodes } from '#words/parts.ts';
import { type Reading } from '#words/reading.ts';
import { takeName } from '#words/names.ts';
import { sayCode, sayCodes, sayCount, sayList } from '#words/say.ts';

type Came = NonNullable<HeldPouch['came']>;

const words: Readonly<Record<string, Came>> = {
  eaten: 'eaten',
  ate: 'eaten',
  used: 'eaten',
  returned: 'returned',
  return: 'returned',
  back: 'returned',
  unopened: 'returned',
  home: 'returned',
  lost: 'lost',
  spoilt: 'lost',
  spoiled: 'lost',
  torn: 'lost',
};

interface Told {
  readonly codes: readonly PouchCode[] | 'rest' | { readonly meal: string };
  readonly came: Came;
}

/** 'B4-2 B4-3 returned, B4-5 lost, rest eaten'; codes without a word came back. */
const outcomes = optional(
  part<Told[]>('what became of which pouches, such as B4-2 returned, rest eaten', (reading, names) => {
    const told: Told[] = [];
    const except = exceptIn(reading, names);
    for (let start = 0; start < reading.all.length;) {
      const end = nextOutcome(reading, start);
      const view = reading.without(
        [...reading.left()].filter((i) => i < start || i > (end ?? reading.all.length)),
      );
      const codes = pouchCodes.read(view, names);
      const rest = [...view.left()].find((i) =>
        ['rest', 'others', 'all', 'everything'].includes(view.all[i]!.plain),
      );
      for (let i = start; i <= (end ?? reading.all.length - 1); i++)
        if (view.at(i) === undefined || i === rest || i === end) reading.take(i);
      const came = end === undefined ? 'returned' : words[reading.all[end]!.plain]!;
      if (codes) told.push({ codes, came });
      else if (rest !== undefined) told.push({ codes: 'rest', came });
      if (end === undefined) break;
      start = end + 1;
    }
    // 'All eaten except the soups': what is left out came back, or was eaten where the rest came back.
    const rest = told.find(({ codes }) => codes === 'rest');
    if (except && rest)
      told.unshift({ codes: except, came: rest.came === 'returned' ? 'eaten' : 'returned' });
    return told.length > 0 ? told : undefined;
  }),
);

const exceptWords = ['except', 'but', 'besides', 'excluding', 'minus', 'apart', 'without'];

/** What stands behind 'except': codes or a meal, taken with the word. */
function exceptIn(reading: Reading, names: Names): Told['codes'] | undefined {
  const at = [...reading.left()].find((i) => exceptWords.includes(reading.all[i]!.plain));
  if (at === undefined) return undefined;
  const view = reading.without([...reading.left()].filter((i) => i <= at));
  const before = new Set(view.left());
  const codes = pouchCodes.read(view, names);
  const meal = codes ? undefined : mealName.read(view, names);
  if (!codes && meal === undefined) return undefined;
  const left = new Set(view.left());
  reading.take(at, ...[...before].filter((i) => !left.has(i)));
  reading.takeWords('for', 'from');
  return codes ?? { meal: meal! };
}

function nextOutcome(reading: Reading, start: number): number | undefined {
  for (let i = start; i < reading.all.length; i++) {
    if (reading.at(i) !== undefined && Object.hasOwn(words, reading.all[i]!.plain)) return i;
  }
  return undefined;
}

export default command({
  name: 'back',
  alsoCalled: ['home'],
  usage: '/back [trip] <codes> returned, <codes> lost, rest eaten',
  summary: 'after a trip: what was eaten, what comes back to stock, what was lost',
  examples: ['/back B4-2 B4-3 returned, rest eaten', '/back all eaten', '/back B4-5 lost'],
  records: true,
  offers: { of: 'trips', request: 'pick', label: (place) => `Plan ${place}` },
  takes: {
    trip: optional(
      part<string>('a trip by its place', (reading, names) => takeName(reading, names.trips, 'trip')),
    ),
    told: outcomes,
  },
  run: ({ trip: place, told }, house) => {
    const trip = tripMeant(house, place ?? lastStarted(house));
    const all = heldFor(house, trip);
    if (told === undefined) return { trip, all, settled: [], open: all, over: false };
    const settled: { one: HeldWithPouch; came: Came }[] = [];
    for (const { codes, came } of told) {
      const open = all.filter((one) => !settled.some((s) => s.one === one));
      // Pouches that were never packed stayed at home: the rest is what was carried.
      const carried = open.some((one) => one.held.packed) ? open.filter((one) => one.held.packed) : open;
      const chosen =
        codes === 'rest'
          ? carried
          : 'meal' in codes
            ? carried.filter((one) => one.pouch.meal === codes.meal)
            : heldByCode(house, trip, all, codes);
      const atHome = codes === 'rest' || 'meal' in codes ? undefined : chosen.find((one) => !one.held.packed);
      if (atHome && all.some((one) => one.held.packed))
        throw new Refusal(
          'not-packed',
          `${sayCode(atHome.pouch)} was not packed for ${trip.place}, so it stayed at home.`,
        );
      for (const one of chosen) {
        if (settled.some((s) => s.one === one))
          throw new Refusal('twice', `${sayCode(one.pouch)} is named twice.`);
        settled.push({ one, came });
      }
    }
    for (const { one, came } of settled) {
      house.trips.came(one.held.id, came);
      if (came === 'eaten') house.pouches.leave(one.pouch.id, 'used', `at ${trip.place}`, house.nowMs);
      if (came === 'lost')
        house.pouches.leave(one.pouch.id, 'discarded', `lost at ${trip.place}`, house.nowMs);
    }
    const packedOpen = all.filter((one) => !settled.some((s) => s.one === one));
    const stayed = told.some(({ codes }) => codes === 'rest')
      ? packedOpen.filter((one) => !one.held.packed)
      : [];
    for (const one of stayed) house.trips.came(one.held.id, 'returned');
    for (const one of stayed) settled.push({ one, came: 'returned' });
    const open = packedOpen.filter((one) => !stayed.includes(one));
    if (open.length === 0) house.trips.end(trip.id, true);
    return { trip, all, settled, open, over: open.length === 0 };
  },
  say: ({ trip, settled, open, over }) => {
    const codes = (came: Came) => settled.filter((s) => s.came === came).map((s) => s.one.pouch);
    const said = (['eaten', 'returned', 'lost'] as const).flatMap((came) =>
      codes(came).length === 0
        ? []
        : [`${came === 'returned' ? 'back in stock' : came}: ${sayCodes(codes(came))}`],
    );
    const lines =
      settled.length === 0
        ? [`Kept for ${trip.place}: ${sayCodes(open.map((one) => one.pouch))}. What became of them?`]
        : [`${trip.place}: ${said.join('; ')}.`];
    if (settled.length > 0 && open.length > 0)
      lines.push(
        `Still open: ${sayCount(open.length, 'pouch', 'pouches')}, ${sayCodes(open.map((one) => one.pouch))}.`,
      );
    const eaten = codes('eaten')[0];
    if (over)
      lines.push(
        eaten
          ? `The trip is done. How was it? /rate ${sayCode(eaten)} 40 ml more, too salty`
          : 'The trip is done.',
      );
    return {
      group: lines.join('\n'),
      ...(settled.length === 0 ? {} : { did: `${trip.place}: ${sayList(said)}` }),
      ...(over
        ? {}
        : {
            buttons: [
              { label: 'All eaten', request: `/back "${trip.place}" rest eaten` },
              { label: 'All came back', request: `/back "${trip.place}" rest returned` },
            ],
            buttonsForAll: true,
          }),
    };
  },
});

/** The trip people come back from: the last that started and holds pouches. */
function lastStarted(house: Parameters<typeof tripMeant>[0]): string | undefined {
  const holding = new Set(house.trips.held(null).map((h) => h.trip));
  return house.trips.all().filter((trip) => !trip.isOver && holding.has(trip.id))[0]?.place;
}
