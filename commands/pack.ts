import { planned } from '#chat/command.ts';
import type { House } from '#house/house.ts';
import { brokenPromises } from '#house/broken.ts';
import { tripPaper } from '#cards/paper-facts.ts';
import { markedWith } from '#house/marks.ts';
import { type HeldWithPouch, heldByCode, heldFor } from '#house/packing.ts';
import { saySlot, tripMeant } from '#house/trips.ts';
import type { Paper } from '#core/label-grid.ts';
import type { Trip } from '#core/records.ts';
import type { Reply } from '#core/talk.ts';
import { Refusal } from '#core/refusal.ts';
import type { TripPaper } from '#draw/facts.ts';
import type { Drawn } from '#draw/serve.ts';
import { flag, optional, part, type PouchCode, pouchCodes } from '#words/parts.ts';
import { takeName } from '#words/names.ts';
import { sayCode, sayCodes, sayCount, sayG } from '#words/say.ts';

/** A phone shows no more without scrolling. */
const mostButtons = 8;

export default planned({
  name: 'pack',
  alsoCalled: ['packed'],
  usage: '/pack [trip] [codes] · /pack all · /pack not B4-2 · /pack paper',
  summary: 'the pouches to take, ticked off one by one',
  examples: ['/pack', '/pack B4-1 B4-2', '/pack all', '/pack not B4-2', '/pack paper'],
  help: ['"paper" makes a sheet to print: by day and meal the pouches, water and notes, with boxes to tick.'],
  records: true,
  mayLeaveOut: true,
  takes: {
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
  say: (outcome) => ('drawn' in outcome ? printed(outcome) : list(outcome)),
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
}

/** Ticks off what was named, and the list as it stands then. */
function ticked({ trip: place, codes, everything, not }: Asked, house: House) {
  const trip = tripMeant(house, place);
  const all = heldFor(house, trip);
  const chosen = codes ? heldByCode(house, trip, all, codes) : everything ? all : [];
  for (const { held } of chosen) house.trips.pack(held.id, not !== true);
  const did =
    chosen.length === 0
      ? undefined
      : `${not ? 'took out' : 'packed'} ${sayCodes(chosen.map((c) => c.pouch))} for ${trip.place}`;
  return {
    trip,
    all: heldFor(house, trip),
    did,
    units: house.settings.units,
    broken: brokenPromises(house, trip),
    marks: new Map(all.map(({ pouch }) => [pouch.id, markedWith(house, [pouch])])),
  };
}

function list({ trip, all, did, units, broken, marks }: ReturnType<typeof ticked>): Reply {
  const packed = all.filter(({ held }) => held.packed);
  const lines = [
    `${trip.place}: ${packed.length} of ${sayCount(all.length, 'pouch', 'pouches')} packed, ${sayG(
      all.reduce((sum, { pouch }) => sum + pouch.dryG, 0),
      units,
    )} in all.`,
    ...slotGroups(trip, all).map(
      ({ slot, held }) =>
        `${saySlot(slot)}: ${held.map(({ held: h, pouch }) => `${h.packed ? '✓' : '☐'} ${sayCode(pouch)} ${pouch.meal}${marks.get(pouch.id)!}`).join(', ')}`,
    ),
  ];
  const open = slotGroups(
    trip,
    all.filter(({ held }) => !held.packed),
  );
  if (open.length === 0) lines.push('All packed. After the trip: /back.');
  lines.push(...broken);
  const buttons = open.slice(0, mostButtons - 1).map(({ slot, held }) => ({
    label: saySlot(slot),
    request: `/pack "${trip.place}" ${held.map(({ pouch }) => sayCode(pouch)).join(' ')}`,
  }));
  return {
    group: lines.join('\n'),
    ...(did === undefined ? {} : { did }),
    ...(open.length === 0
      ? {}
      : {
          buttons: [...buttons, { label: 'All', request: `/pack "${trip.place}" all` }],
          buttonsForAll: true,
        }),
  };
}

function slotGroups(trip: Trip, held: readonly HeldWithPouch[]) {
  return trip.slots
    .map((slot) => ({ slot, held: held.filter((h) => h.held.slot === slot.id) }))
    .filter((group) => group.held.length > 0);
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
