import { planned } from '#chat/command.ts';
import type { House } from '#house/house.ts';
import { batchNumbered, pouchCoded, pouchesInStock } from '#house/figures.ts';
import { labelFacts } from '#cards/label-facts.ts';
import { pouchQuestions } from '#house/packet-questions.ts';
import { altitudeOf } from '#house/trips.ts';
import { mealOfBatch } from '#house/verdicts.ts';
import { gridFrom, type LabelGrid, type LabelsTold, sayGrid } from '#core/label-grid.ts';
import type { Pouch } from '#core/records.ts';
import { Refusal } from '#core/refusal.ts';
import type { LabelFacts, LabelSheet } from '#draw/facts.ts';
import { labelsTold } from '#words/label-parts.ts';
import { batchCode, flag, meal, optional, part, type PouchCode, pouchCodes } from '#words/parts.ts';
import { sayCodes, sayCount, sayNumber } from '#words/say.ts';

/** More would be a mistake rather than a cupboard. */
const mostLabels = 500;

/** The first free label of a sheet: 'from 5', 'start at label 5'. */
const firstFree = optional(
  part<number>('the first free label, such as from 5', (reading) => {
    const at = reading.keyword('from', 'start', 'starting', 'beginning');
    if (at === undefined) return undefined;
    const index = [...reading.left()].find((i) => i > at && reading.all[i]!.is === 'number');
    if (index === undefined) return undefined;
    reading.takeWords('at', 'label', 'no');
    reading.take(index);
    const token = reading.all[index]!;
    return token.is === 'number' ? token.value : undefined;
  }),
);

const batches = optional(
  part<number[]>('a batch code such as B4', (reading, names) => {
    const found: number[] = [];
    for (let no = batchCode.read(reading, names); no !== undefined; no = batchCode.read(reading, names))
      found.push(no);
    return found.length > 0 ? found : undefined;
  }),
);
export default planned({
  name: 'label',
  alsoCalled: ['labels'],
  usage: '/label <batch or pouches> [A4 3 x 8] [from 5] [single]',
  summary: 'labels to print: code, meal, dates, water, allergens, a code to scan',
  examples: [
    '/label B4',
    '/label B4-2 single',
    '/label B4 camp',
    '/label B4 from 5',
    '/label B1 B4 letter 3 x 10',
  ],
  help: [
    '"camp" makes large labels for the dusk: code, water, minutes, what is added, who must not have it.',
    '"from 5" starts at the fifth label of a sheet that is used in part; "single" makes pages of one label.',
    'Your own sheets: /house labels A4 3 x 8 of 63.5 x 33.9 mm gap 2.5 mm left 7 mm top 13 mm',
  ],
  offers: { of: 'sealed' },
  takes: {
    codes: optional(pouchCodes),
    batches,
    from: firstFree,
    labels: optional(labelsTold),
    camp: flag('camp', 'dusk', 'dark', 'large', 'big'),
    everything: flag('all', 'everything', 'every'),
    meal: optional(meal),
  },
  look: ({ codes = [], batches: nos = [], from, labels: told, camp, everything, meal: name }, house) => {
    const grid = gridMeant(house, told ?? (camp ? campSize : undefined));
    const pouches = pouchesMeant(house, codes, nos, everything ? 'all' : name);
    const sheet: LabelSheet = {
      grid,
      from: checkedFrom(from ?? 1, grid),
      labels: factsFor(house, pouches, camp === true),
    };
    return { sheet, pouches };
  },
  work: async ({ sheet, pouches }, { drawing }) => ({ sheet, pouches, drawn: await drawing.labels(sheet) }),
  keep: (
    { sheet, pouches, drawn },
    { codes = [], batches: nos = [], camp, everything, meal: name },
    house,
  ) => {
    const now = pouchesMeant(house, codes, nos, everything ? 'all' : name);
    if (JSON.stringify(factsFor(house, now, camp === true)) !== JSON.stringify(sheet.labels))
      throw new Refusal(
        'changed',
        'Something that stands on the labels changed while I was drawing. Ask again.',
      );
    const meals = [...new Set(pouches.map((pouch) => pouch.batch))].map((no) => mealOfBatch(house, no));
    const asks = pouchQuestions(
      house,
      [...new Set(pouches.map((pouch) => pouch.batch))].map((no) => batchNumbered(house, no).recipe),
    );
    const gone = codes.filter((code) => pouchCoded(house, code).state !== 'stock');
    return { sheet, pouches, gone, drawn, meals, asks, hasLink: house.chatLink !== null };
  },
  say: ({ sheet, pouches, gone, drawn, meals, asks, hasLink }) => {
    const { grid, labels, from } = sheet;
    const free = (from - 1 + labels.length) % (grid.columns * grid.rows);
    const next =
      grid.paper === 'single' || free === 0 ? '' : ` The next free label of the last sheet is ${free + 1}.`;
    const codes = sayCodes(pouches);
    return {
      group: [
        `${sayCount(labels.length, 'label')} for ${codes} on ${sayCount(drawn.pages, 'page')}: ${sayGrid(grid)}.${next}`,
        ...(gone.length === 0 ? [] : [`No label for ${sayCodes(gone)}: no longer in stock.`]),
        `Print at 100 %, not "fit to page". ${hasLink ? "Scanned, a code opens its pouch's card." : 'Scanned, a code shows the pouch, its meal and its water.'}`,
      ].join('\n'),
      files: [
        {
          name: `labels-${pouches.length === 1 ? codes : `${labels[0]!.code}-and-${labels.length - 1}-more`}.pdf`,
          type: 'application/pdf',
          base64: Buffer.from(drawn.files[0]!).toString('base64'),
          caption: `Labels: ${codes}`.slice(0, 200),
        },
      ],
      meals,
      ...(asks.length === 0 ? {} : { buttons: asks }),
    };
  },
});

/** What stands on the labels; for camp with the minutes of the place where a pouch is to be eaten. */
function factsFor(house: House, pouches: readonly Pouch[], isForCamp: boolean): LabelFacts[] {
  if (!isForCamp) return labelFacts(house, pouches);
  const tripOf = new Map(house.trips.held(null).map(({ pouch, trip }) => [pouch, trip]));
  return pouches.flatMap((pouch) => {
    const trip = house.trips.all().find(({ id }) => id === tripOf.get(pouch.id));
    const altitudeM = trip ? altitudeOf(trip, house) : house.settings.altitudeM;
    const there = { ...house, settings: { ...house.settings, altitudeM } };
    return labelFacts(there, [pouch]).map((facts) => ({ ...facts, isForCamp: true as const }));
  });
}

/** Large enough for type that is read in the dusk. Chosen. */
const campSize: LabelsTold = {
  paper: 'single',
  cells: undefined,
  sizeMm: { width: 100, height: 75 },
  leftMm: undefined,
  topMm: undefined,
  gapMm: undefined,
};

function gridMeant(house: House, told: LabelsTold | undefined): LabelGrid {
  const { labels, labelMargins } = house.settings;
  const own = labels.paper === 'single' || labelMargins === null ? labels : { ...labels, ...labelMargins };
  return told ? gridFrom(told, own) : own;
}

function checkedFrom(from: number, grid: LabelGrid): number {
  const count = grid.columns * grid.rows;
  if (Number.isInteger(from) && from >= 1 && from <= count) return from;
  throw new Refusal(
    'no-such-label',
    `A sheet of ${grid.columns} x ${grid.rows} has labels 1 to ${count}, counted along the rows; I read ${sayNumber(from)}.`,
  );
}

/** The pouches of the codes, and those of the batches that are still there. */
/** @param meal of which all pouches in stock are meant besides; 'all' for the whole stock */
function pouchesMeant(
  house: House,
  codes: readonly PouchCode[],
  nos: readonly number[],
  meal: string | undefined,
): Pouch[] {
  if (codes.length + nos.length === 0 && meal !== undefined) {
    const there =
      meal === 'all'
        ? house.pouches.inStock().filter(({ isBought }) => !isBought)
        : house.pouches.inStockOf(meal);
    if (there.length === 0)
      throw new Refusal(
        'none-left',
        meal === 'all' ? 'Nothing is in stock.' : `No pouch of ${meal} is in stock.`,
      );
    if (there.length > mostLabels) throw tooMany(there.length);
    return there;
  }
  if (codes.length + nos.length === 0)
    throw new Refusal('what', 'I still need a batch code such as B4, or pouch codes such as B4-1 to B4-6.');
  const ofBatches = nos.flatMap((no) => {
    const batch = batchNumbered(house, no);
    const there = house.pouches.ofBatch(batch.no).filter(({ state }) => state === 'stock');
    if (there.length === 0) throw new Refusal('none-left', `No pouch of B${no} is in stock.`);
    return there;
  });
  // Of a row of codes those that are there get a label; where none is, the refusal says what became of it.
  const there = codes.filter((code) => pouchCoded(house, code).state === 'stock');
  const all = [
    ...ofBatches,
    ...pouchesInStock(house, there.length > 0 || ofBatches.length > 0 ? there : codes),
  ];
  const bought = all.find(({ isBought }) => isBought);
  if (bought)
    throw new Refusal(
      'bought',
      `${sayCodes([bought])}, ${bought.meal}, was bought: its own packet is its label. Write the code on it.`,
    );
  const once = all.filter((pouch, i) => all.findIndex(({ id }) => id === pouch.id) === i);
  if (once.length > mostLabels) throw tooMany(once.length);
  return once;
}

const tooMany = (count: number) =>
  new Refusal('too-many', `${count} labels at once are too many; ${mostLabels} are the most.`);
