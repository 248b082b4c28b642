import { command } from '#chat/command.ts';
import { brokenPromises } from '#chat/broken.ts';
import { type HeldWithPouch, heldByCode, heldFor } from '#chat/packing.ts';
import { saySlot, tripMeant } from '#chat/trips.ts';
import type { Trip } from '#core/records.ts';
import { flag, optional, part, pouchCodes } from '#words/parts.ts';
import { takeName } from '#words/reading.ts';
import { sayCodes, sayCount, sayG } from '#words/say.ts';

/** A phone shows no more without scrolling. */
const mostButtons = 8;

export default command({
  name: 'pack',
  alsoCalled: ['packed'],
  usage: '/pack [trip] [codes] · /pack all · /pack not B4-2',
  summary: 'the pouches to take, ticked off one by one',
  examples: ['/pack', '/pack B4-1 B4-2', '/pack all', '/pack not B4-2'],
  records: true,
  takes: {
    trip: optional(
      part<string>('a trip by its place', (reading, names) => takeName(reading, names.trips, 'trip')),
    ),
    codes: optional(pouchCodes),
    everything: flag('all', 'everything'),
    not: flag('not', 'unpack', 'out'),
  },
  run: ({ trip: place, codes, everything, not }, house) => {
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
    };
  },
  say: ({ trip, all, did, units, broken }) => {
    const packed = all.filter(({ held }) => held.packed);
    const lines = [
      `${trip.place}: ${packed.length} of ${sayCount(all.length, 'pouch', 'pouches')} packed, ${sayG(
        all.reduce((sum, { pouch }) => sum + pouch.dryG, 0),
        units,
      )} in all.`,
      ...slotGroups(trip, all).map(
        ({ slot, held }) =>
          `${saySlot(slot)}: ${held.map(({ held: h, pouch }) => `${h.packed ? '✓' : '☐'} B${pouch.batch}-${pouch.no} ${pouch.meal}`).join(', ')}`,
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
      request: `/pack "${trip.place}" ${held.map(({ pouch }) => `B${pouch.batch}-${pouch.no}`).join(' ')}`,
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
  },
});

function slotGroups(trip: Trip, held: readonly HeldWithPouch[]) {
  return trip.slots
    .map((slot) => ({ slot, held: held.filter((h) => h.held.slot === slot.id) }))
    .filter((group) => group.held.length > 0);
}
