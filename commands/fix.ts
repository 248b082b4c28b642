import { command } from '#chat/command.ts';
import type { Batch, Pouch } from '#core/records.ts';
import { Refusal } from '#core/refusal.ts';
import { batchNumbered, loadedBatch } from '#house/figures.ts';
import { dryOf, pouchesFrom } from '#house/dryness.ts';
import { cookedAsNow } from '#house/cooked-as-now.ts';
import type { House } from '#house/house.ts';
import { type MealShown, mealOfBatch } from '#house/verdicts.ts';
import { entryOf } from '#house/entries.ts';
import { stillThere, takeBack } from '#house/taking-back.ts';
import { batchCode, optional, part, pouchCodes, quantities } from '#words/parts.ts';
import { sayBatch, sayCode, sayCodes, sayDay, sayG, sayList, sayMoment } from '#words/say.ts';
import { sure } from '#words/sure.ts';
import { oneTray } from '#words/weigh-parts.ts';

/** 'not 203 g': what stands there now, by which the weighing is found. */
const wrongG = optional(
  part<number>('what it was, such as not 203 g', (reading) => {
    const found = quantities(reading, 'mass').find(({ index }) => reading.wordBefore(index, 'not'));
    if (!found) return undefined;
    reading.take(found.index, found.index - 1);
    return found.value;
  }),
);
const rightG = optional(
  part<number>('what it was, such as 230 g', (reading) => {
    const [found] = quantities(reading, 'mass');
    if (!found) return undefined;
    reading.take(found.index);
    return found.value;
  }),
);
/** 'Not eaten', 'not thrown away', 'still here': pouches that are there after all. */
const notGone = optional(
  part<true>('that it is still there, such as not eaten', (reading) => {
    if (reading.all.some(({ is }) => is === 'quantity')) return undefined;
    const isTold = reading.keyword('not', 'never', 'still') !== undefined;
    if (!isTold) return undefined;
    reading.takeWords(
      ...'eaten used opened thrown discarded binned away out gone here there in stock it is was were'.split(
        ' ',
      ),
    );
    return true;
  }),
);
/** 'Never happened', 'loaded twice': a batch that there was not. */
const neverWas = optional(
  part<true>('that it never happened', (reading) => {
    const index = [...reading.left()].find((i) =>
      /^(?:happened|twice|doubly|duplicate)$/.test(reading.all[i]!.plain),
    );
    if (index === undefined) return undefined;
    reading.take(index);
    reading.takeWords('never', 'loaded', 'recorded', 'was', 'is', 'a');
    return true;
  }),
);

/** 'Cooked as now': by the recipe as it stands, whatever stood there when it was loaded. */
const asNow = optional(
  part<true>('that it was cooked by the recipe as it stands now, cooked as now', (reading) => {
    const index = [...reading.left()].find((i) => reading.all[i]!.plain === 'cooked');
    if (index === undefined) return undefined;
    reading.take(index);
    reading.takeWords(...'was were as by the new recipe it stands is now this way too'.split(' '));
    return true;
  }),
);

interface Place {
  readonly batch: Batch;
  readonly trayNo: number;
  readonly wasG: number;
  /** null: the weight as loaded. */
  readonly atMs: number | null;
}

export default command({
  name: 'fix',
  alsoCalled: ['correct'],
  usage: '/fix [batch] tray 2 230 g [not 203 g] · /fix B4-3 not eaten · /fix B7 never happened',
  summary: 'put an old record right in place; what came after stays',
  examples: ['/fix B4 tray 2 209 g', '/fix B4 tray 2 191 g not 190 g'],
  help: [
    '"B4 cooked as now": the recipe was wrong, not the pot; a grown-up taps, and what is sealed counts by the recipe as it stands.',
    '"B4-3 not eaten" puts a pouch back in stock, however long ago it was recorded as gone. "B7 never happened" takes a load back with what stands on it, after a tap.',
    'It changes the last weight of that tray; with "not 203 g" the one that stands there as 203 g, the loaded weight too. /undo takes it back.',
  ],
  records: true,
  offers: { of: 'eaten', behind: 'not eaten', label: (pouch) => `${pouch}: not eaten` },
  takes: {
    codes: optional(pouchCodes),
    neverWas,
    notGone,
    asNow,
    batch: optional(batchCode),
    sure,
    tray: oneTray,
    wrongG,
    rightG,
  },
  run: (
    { codes, neverWas: isNone, notGone: isThere, asNow: isAsNow, batch: no, sure: isSure, ...weight },
    house,
  ) => {
    if (no !== undefined && isAsNow) {
      const before = cookedAsNow(house, no, isSure === true);
      return { cooked: { before, shown: mealOfBatch(house, no), sealed: pouchesFrom(house, no) } };
    }
    if (codes && isThere) {
      const was = codes.flatMap(
        (code) =>
          entryOf(house, [sayCode(code)], 'used') ?? entryOf(house, [sayCode(code)], 'discarded') ?? [],
      );
      return {
        back: stillThere(house, codes),
        was: [
          ...new Set(
            was.map(({ by, did, atMs }) => `${by} had recorded ${sayDay(atMs, house.settings.zone)}: ${did}`),
          ),
        ],
      };
    }
    if (no !== undefined && isNone) {
      const batch = batchNumbered(house, no);
      const deed = batch.mix?.bought ? 'brought' : batch.mix ? 'sealed' : 'loaded';
      const target = { entries: [], count: undefined, codes: undefined, batch: no, deed };
      return { undone: takeBack(house, target, isSure === true, `${sayBatch(batch)} never happened`) };
    }
    return { weight: weightPutRight(house, no, weight) };
  },
  say: ({ back, was, undone, weight, cooked }) =>
    cooked
      ? sayCooked(cooked)
      : back
        ? {
            group: `${sayCodes(back)} ${back.length === 1 ? 'is' : 'are'} in stock again; all else stays as it is.${was.map((line) => `\n${line}.`).join('')}`,
            did: `put ${sayCodes(back)} back in stock, not gone after all`,
          }
        : undone
          ? { group: `Taken back: ${sayList(undone)}.` }
          : sayWeight(weight),
});

function sayCooked({
  before,
  shown,
  sealed,
}: {
  readonly before: Batch;
  readonly shown: MealShown;
  readonly sealed: readonly Pouch[];
}) {
  return {
    group: [
      `B${before.no} counts as cooked by ${before.recipe.name} as it stands now.`,
      ...(sealed.length > 0
        ? [`${sayCodes(sealed)} with it. Labels that are printed are old: print them anew.`]
        : []),
    ].join('\n'),
    did: `B${before.no} was cooked by the recipe as it stands now`,
    meals: [shown],
    ...(sealed.length > 0
      ? { buttons: [{ label: 'Labels', request: `/label B${before.no}` }], buttonsForAll: true }
      : {}),
  };
}

interface Weight {
  readonly tray: number | undefined;
  readonly wrongG: number | undefined;
  readonly rightG: number | undefined;
}

function weightPutRight(house: House, no: number | undefined, { tray, wrongG: wasG, rightG: isG }: Weight) {
  if (isG === undefined)
    throw new Refusal(
      'missing',
      'I still need what it was, such as tray 2 230 g, or which pouch is not eaten.',
    );
  if (tray === undefined)
    throw new Refusal('which-tray', 'I read the weight, but not of which tray: tray 2.');
  if (!(isG > 0)) throw new Refusal('not-positive', 'A weight must be above zero.');
  const place = placeMeant(house, no, tray, wasG);
  const { batch } = place;
  if (place.atMs === null) house.batches.mendTray(batch.id, tray, isG);
  else house.batches.mendWeighing(batch.id, { trayNo: tray, atMs: place.atMs }, isG);
  const now = batchNumbered(house, batch.no);
  return {
    place,
    isG,
    dry: dryOf(house, now).is,
    sealed: pouchesFrom(house, batch.no),
    settings: house.settings,
  };
}

function sayWeight({
  place: { batch, trayNo, wasG, atMs },
  isG,
  dry,
  sealed,
  settings,
}: ReturnType<typeof weightPutRight>) {
  const g = (value: number) => sayG(value, settings.units);
  const when = atMs === null ? 'as loaded' : `at ${sayMoment(atMs, settings.zone)}`;
  return {
    group: [
      `B${batch.no}, tray ${trayNo}, ${when}: was ${g(wasG)}, now ${g(isG)}.`,
      dry === 'dry' ? 'By its weights it counts as dry.' : 'By its weights it is not shown to be dry.',
      ...(sealed.length > 0 ? [`${sayCodes(sealed)} stand on it: their water and dates follow.`] : []),
    ].join('\n'),
    did: `put tray ${trayNo} of B${batch.no} right: ${g(wasG)} to ${g(isG)}`,
  };
}

/** Grams that are the same weight as typed. */
const alike = (a: number, b: number): boolean => Math.abs(a - b) < 0.5;

/** The weight that is meant: the one that stands there as told, else the last of that tray. @throws Refusal */
function placeMeant(house: House, no: number | undefined, trayNo: number, wasG: number | undefined): Place {
  const batches = no === undefined ? house.batches.latest(5) : [loadedBatch(house, no)];
  for (const batch of batches) {
    const weighed = batch.weighings.filter((one) => one.trayNo === trayNo);
    const found = weighed.findLast((one) => wasG === undefined || alike(one.netG, wasG));
    if (found) return { batch, trayNo, wasG: found.netG, atMs: found.atMs };
    const loaded = batch.trays.find((tray) => tray.no === trayNo);
    if (loaded && (wasG === undefined ? no !== undefined || batch === batches[0] : alike(loaded.wetG, wasG)))
      return { batch, trayNo, wasG: loaded.wetG, atMs: null };
  }
  throw new Refusal(
    'no-such-weight',
    `I find no tray ${trayNo}${wasG === undefined ? '' : ` with ${sayG(wasG)}`}${no === undefined ? ' in the latest batches' : ` of B${no}`}.`,
  );
}
