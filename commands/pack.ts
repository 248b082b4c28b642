import { planned } from '#chat/command.ts';
import type { House } from '#house/house.ts';
import { packList } from '#cards/pack-list.ts';
import { overNow } from '#cards/trip-board.ts';
import { tripPaper } from '#cards/paper-facts.ts';
import { type HeldWithPouch, heldByCode, heldFor } from '#house/packing.ts';
import { tripMeant } from '#house/trips.ts';
import type { Paper } from '#core/label-grid.ts';
import type { Reply } from '#core/talk.ts';
import { Refusal } from '#core/refusal.ts';
import type { TripPaper } from '#draw/facts.ts';
import type { Drawn } from '#draw/serve.ts';
import { flag, optional, pageNumber, part, type PouchCode, pouchCodes } from '#words/parts.ts';
import { takeName } from '#words/names.ts';
import { sayCodes, sayCount } from '#words/say.ts';

export default planned({
  name: 'pack',
  alsoCalled: ['packed'],
  usage: '/pack [trip] [codes] · /pack all · /pack not B4-2 · /pack paper',
  summary: 'the pouches to take, ticked off one by one',
  examples: ['/pack', '/pack B4-1 B4-2', '/pack all', '/pack not B4-2', '/pack paper'],
  help: ['"paper" makes a sheet to print: by day and meal the pouches, water and notes, with boxes to tick.'],
  records: true,
  mayLeaveOut: true,
  live: (of, page, house) => {
    const trip = house.trips.all().find(({ id }) => id === of);
    if (!trip) return undefined;
    const isKept = house.trips.held(of).some(({ came }) => came === null);
    if (trip.isOver) return overNow(house, trip);
    if (!isKept) return { said: { group: `${trip.place}: nothing is kept for it now.` }, isOver: false };
    const { page: _, ...said } = packList(house, trip, page);
    return { said, isOver: false };
  },
  offers: { of: 'trips', request: 'pick', label: (place) => `Plan ${place}` },
  takes: {
    page: optional(pageNumber),
    trip: optional(
      part<string>('a trip by its place', (reading, names) => takeName(reading, names.trips, 'trip')),
    ),
    codes: optional(pouchCodes),
    everything: flag('all', 'everything'),
    not: flag('not', 'unpack', 'out'),
    paper: flag('paper', 'print', 'sheet'),
    a4: flag('a4'),
    letter: flag('letter'),
  },
  atOnce: {
    when: ({ paper, a4, letter }) => !paper && !a4 && !letter,
    run: (asked, house): Outcome => ticked(asked, house),
  },
  look: (asked, house): TripPaper => {
    if (asked.codes || asked.everything || asked.not)
      throw new Refusal(
        'paper-alone',
        'I read "paper" and what to tick: one at a time. Nothing was recorded.',
      );
    return paperMeant(asked, house);
  },
  work: async (paper, { drawing }) => ({ paper, drawn: await drawing.paper(paper) }),
  keep: ({ paper, drawn }, asked, house): Outcome => {
    if (JSON.stringify(paperMeant(asked, house)) !== JSON.stringify(paper))
      throw new Refusal(
        'changed',
        'Something that stands on the sheet changed while I was drawing. Ask again.',
      );
    return { paper, drawn };
  },
  say: (outcome) => ('drawn' in outcome ? printed(outcome) : shown(outcome)),
});

type Outcome = ReturnType<typeof ticked> | Printed;

interface Printed {
  readonly paper: TripPaper;
  readonly drawn: Drawn;
}

interface Asked {
  readonly trip: string | undefined;
  readonly codes: PouchCode[] | undefined;
  readonly everything: true | undefined;
  readonly not: true | undefined;
  readonly page: number | undefined;
}

/** Ticks off what was named, and the list as it stands then. */
function ticked({ trip: place, codes, everything, not, page = 1 }: Asked, house: House) {
  const trip = tripMeant(house, place);
  const before = heldFor(house, trip);
  const chosen = codes ? heldByCode(house, trip, before, codes) : everything ? before : [];
  const toPack = not !== true;
  const changed = chosen.filter(({ held }) => held.packed !== toPack);
  for (const { held } of changed) house.trips.pack(held.id, toPack);
  const all = heldFor(house, trip);
  const codesOf = (some: readonly HeldWithPouch[]) => sayCodes(some.map(({ pouch }) => pouch));
  const count = `${all.filter(({ held }) => held.packed).length} of ${all.length} packed`;
  return {
    trip,
    list: packList(house, trip, page),
    receipt:
      chosen.length === 0
        ? ''
        : changed.length === 0
          ? `${codesOf(chosen)} ${chosen.length === 1 ? 'is' : 'are'} ${toPack ? 'packed already' : 'not packed'}: ${count}.`
          : `${toPack ? 'Packed' : 'Taken out'} ${codesOf(changed)}: ${count}.`,
    did:
      changed.length === 0
        ? undefined
        : `${toPack ? 'packed' : 'took out'} ${codesOf(changed)} for ${trip.place}`,
  };
}

function shown({ trip, list, receipt, did }: ReturnType<typeof ticked>): Reply {
  const { page, ...reply } = list;
  return {
    ...reply,
    ...(did === undefined ? {} : { did }),
    live: { kind: 'pack', of: trip.id, page, receipt },
  };
}

function paperMeant(
  { trip: place, a4, letter }: { trip: string | undefined; a4: true | undefined; letter: true | undefined },
  house: House,
): TripPaper {
  const own = house.settings.labels.paper;
  const paper: Paper = letter ? 'letter' : a4 || own === 'single' ? 'a4' : own;
  return tripPaper(house, tripMeant(house, place), paper);
}

function printed({ paper, drawn }: Printed): Reply {
  return {
    group: `${paper.title}: the sheet to print, ${sayCount(drawn.pages, 'page')}.`,
    files: [
      {
        name: `pack-${paper.title}.pdf`.slice(0, 80),
        type: 'application/pdf',
        base64: Buffer.from(drawn.files[0]!).toString('base64'),
        caption: `${paper.title}, ${paper.subtitle}`.slice(0, 200),
      },
    ],
  };
}
