import { IANAZone } from 'luxon';
import { celsiusFromF, usCupMl } from '#core/units.ts';
import { inRange, type ranges } from '#core/ranges.ts';
import { gridFrom, type LabelsTold, sayGrid } from '#core/label-grid.ts';
import { Refusal } from '#core/refusal.ts';
import { defaultSettings, type Settings } from '#core/settings.ts';
import { labelsTold } from '#words/label-parts.ts';
import { altitudeM, countOf, flatSizeMm, type Names, quantities } from '#words/parts.ts';
import type { Reading } from '#words/reading.ts';
import { absorbersTold, packsAfter, sizesAfter } from './absorbers-told.ts';
import { pouchTold, sayPouch, withPouch } from './pouch-told.ts';
import { reminderSettings } from './reminder-settings.ts';
import { sayG, sayList, sayNumber } from '#words/say.ts';
import { taresTold } from './tray-tares.ts';

type Change = {
  readonly [K in keyof Settings]: {
    readonly name: K;
    /** As told, or made of what was told before. */
    readonly value: Settings[K] | ((before: Settings) => Settings[K]);
  };
}[keyof Settings];

/** One thing a household can tell about itself. */
export interface HouseSetting {
  /** Words that name it; the first is how it is called. */
  readonly words: readonly [string, ...string[]];
  readonly example: string;
  /** What was told, read from the words behind the name; empty when the value is missing. */
  readonly read: (reading: Reading, names: Names) => readonly Change[];
  readonly say: (settings: Settings) => string;
}

function one<K extends keyof Settings>(
  name: K,
  value: Settings[K] | ((before: Settings) => Settings[K]) | undefined,
): readonly Change[] {
  return value === undefined ? [] : [{ name, value } as Change];
}

const within = (name: keyof typeof ranges, value: number): number => inRange('out-of-range', name, value);

/** The first free bare number, or number with a unit of a kind, in base units. */
function amount(reading: Reading, kind: 'mass' | 'volume' | 'time' | null): number | undefined {
  const found = kind === null ? undefined : quantities(reading, kind)[0];
  const index = found?.index ?? [...reading.left()].find((i) => reading.all[i]!.is === 'number');
  if (index === undefined) return undefined;
  reading.settleNumbers([index]);
  reading.take(index);
  const token = reading.all[index]!;
  return found?.value ?? (token.is === 'number' ? token.value : undefined);
}

/** A temperature in °C: '15 C', '59 F', '15 degrees'. */
function temperatureC(reading: Reading): number | undefined {
  for (const index of reading.left()) {
    const token = reading.all[index]!;
    if (token.is === 'quantity') {
      const scale = token.unitTyped.replace(/[^a-z]/gi, '').toLowerCase();
      if (!['c', 'f'].includes(scale[0] ?? '') && token.unit.kind !== 'temperature') continue;
      reading.take(index);
      return scale.startsWith('f') ? celsiusFromF(token.value) : token.value;
    }
    if (token.is !== 'number') continue;
    reading.take(index);
    reading.keyword('degrees', 'degree', 'celsius', '°');
    return reading.keyword('fahrenheit', 'f') === undefined ? token.value : celsiusFromF(token.value);
  }
  return undefined;
}

/** A bare number for an altitude is metres. */
function metres(reading: Reading): number | undefined {
  const value = amount(reading, null);
  return value === undefined ? undefined : within('altitudeM', value);
}

function dryerTold(reading: Reading, names: Names): readonly Change[] {
  const trays = countOf('trays', 'tray', 'shelves').read(reading, names);
  const size = flatSizeMm.read(reading, names);
  const limitG = quantities(reading, 'mass')[0];
  reading.keyword('limit', 'load');
  if (limitG) {
    reading.settleNumbers([limitG.index]);
    reading.take(limitG.index);
    within('loadLimitG', limitG.value);
  }
  if (size) within('traySideMm', Math.max(size.a, size.b));
  if (trays === undefined && (size !== undefined || limitG === undefined)) return [];
  return [
    ...one(
      'dryer',
      trays === undefined ? undefined : { trays, widthMm: size?.a ?? null, lengthMm: size?.b ?? null },
    ),
    ...one('loadLimitG', limitG?.value),
  ];
}

function zoneTold(reading: Reading): string | undefined {
  const typed = reading
    .rest()
    .replace(/\s*\/\s*/g, '/')
    .replaceAll(' ', '_');
  if (typed === '') return undefined;
  const named = Intl.supportedValuesOf('timeZone').find((zone) => zone.toLowerCase() === typed.toLowerCase());
  const city = Intl.supportedValuesOf('timeZone').filter((one) =>
    one.toLowerCase().endsWith(`/${typed.toLowerCase()}`),
  );
  const zone =
    named ?? (city.length === 1 ? city[0] : undefined) ?? (IANAZone.isValidZone(typed) ? typed : undefined);
  if (!zone) throw new Refusal('no-such-zone', `I know no time zone "${typed}".`);
  return zone;
}

/** Margins alone shift the sheet that is told; a new sheet comes with its own. */
function labelsSetting(told: LabelsTold | undefined): readonly Change[] {
  if (!told) return [];
  const { leftMm, topMm, ...sheet } = told;
  const namesSheet = Object.values(sheet).some((value) => value !== undefined);
  if (namesSheet)
    return [...one('labels', gridFrom(told, defaultSettings.labels)), ...one('labelMargins', null)];
  if (leftMm === undefined || topMm === undefined)
    throw new Refusal(
      'one-margin',
      'Of a sheet I need both margins of its first label: left 7 mm top 13 mm.',
    );
  return one('labelMargins', { leftMm, topMm });
}

/** Everything a household can tell about itself, in the order in which it is shown. */
export const houseSettings: readonly HouseSetting[] = [
  {
    words: ['altitude', 'elevation', 'height'],
    example: '/house altitude 340 m',
    read: (reading, names) => one('altitudeM', altitudeM.read(reading, names) ?? metres(reading)),
    say: ({ altitudeM: m }) => `altitude ${Math.round(m)} m`,
  },
  {
    words: ['tray weight', 'tray weights', 'trays weigh', 'tray weighs', 'tare', 'tray'],
    example: '/house tray weight 512 g',
    read: (reading, names) => one('trayTaresG', taresTold(reading, names)),
    say: ({ trayTaresG: g, units }) =>
      g.length === 0 ? 'tray weight not told' : `tray weight ${sayList(g.map((one) => sayG(one, units)))}`,
  },
  {
    words: ['dryer', 'drier', 'machine', 'load limit', 'limit'],
    example: '/house dryer 4 trays 20 x 45 cm 4 kg',
    read: dryerTold,
    say: ({ dryer, loadLimitG, units }) => {
      const size =
        dryer?.widthMm && dryer.lengthMm
          ? ` of ${sayNumber(dryer.widthMm / 10)} x ${sayNumber(dryer.lengthMm / 10)} cm`
          : '';
      return `dryer ${dryer ? `${dryer.trays} trays${size}` : 'not told'}, ${loadLimitG === null ? 'no load limit told' : `at most ${sayG(loadLimitG, units)} a load`}`;
    },
  },
  {
    words: ['watts', 'watt', 'wattage', 'dryer power', 'dryer watts', 'dryer takes'],
    example: '/house watts 1200',
    read: (reading) => {
      const value = amount(reading, null);
      reading.keyword('w', 'watts', 'watt');
      return one('dryerWatts', value === undefined ? undefined : within('dryerWatts', value));
    },
    say: ({ dryerWatts }) =>
      dryerWatts === null ? "the dryer's power not told" : `the dryer takes ${Math.round(dryerWatts)} W`,
  },
  {
    words: ['absorber safety', 'safety factor', 'safety'],
    example: '/house absorber safety 1.5',
    read: (reading) => {
      const value = amount(reading, null);
      return one('absorberSafety', value === undefined ? undefined : within('absorberSafety', value));
    },
    say: ({ absorberSafety }) => `absorber safety ${sayNumber(absorberSafety)}`,
  },
  {
    words: ['absorbers', 'absorber', 'absorber sizes'],
    example: '/house absorbers 100 300 500 ml',
    read: (reading, names) => {
      const told = absorbersTold(reading, names);
      return told === undefined
        ? []
        : [
            ...one('absorbersMl', ({ absorbersMl }) => sizesAfter(told, absorbersMl)),
            ...one('absorberPacks', ({ absorberPacks }) => packsAfter(told, absorberPacks, names.nowMs)),
          ];
    },
    say: ({ absorbersMl, absorberPacks }) =>
      absorbersMl.length === 0
        ? 'absorbers not told'
        : [
            `absorbers ${sayList(absorbersMl.map(sayNumber))} ml of oxygen`,
            ...absorberPacks.map(
              ({ sizeMl, count, openedOn }) =>
                `${sayNumber(sizeMl)} ml${count === null ? '' : `: ${count} counted`}${openedOn === null ? '' : `, bag opened ${openedOn}`}`,
            ),
          ].join('; '),
  },
  {
    words: ['pouch', 'pouches', 'pouch size', 'bag', 'bags', 'jar', 'jars', 'tin', 'tins'],
    example: '/house pouch 20 x 30 cm foil',
    read: (reading, names) => {
      const told = pouchTold(reading, names);
      return told ? [withPouch(told)] : [];
    },
    say: ({ pouch, pouchKinds }) =>
      [
        ...(pouch === null ? ['pouch not told'] : [`pouch ${sayPouch(pouch)}`]),
        ...pouchKinds.map((kind) => `${kind.name}: ${sayPouch(kind)}`),
      ].join('; '),
  },
  {
    words: ['storage', 'cupboard', 'store', 'storage temperature', 'temperature'],
    example: '/house storage 15 C',
    read: (reading) => {
      const value = temperatureC(reading);
      // Where it is kept says nothing more than how warm it is.
      reading.takeWords('pantry', 'cellar', 'cupboard', 'basement', 'larder', 'room', 'in', 'the');
      return one('storageC', value === undefined ? undefined : within('storageC', value));
    },
    say: ({ storageC }) => `storage ${sayNumber(storageC)} °C`,
  },
  {
    words: ['labels', 'label', 'label sheet', 'label sheets', 'label margins'],
    example: '/house labels A4 3 x 8',
    read: (reading, names) => labelsSetting(labelsTold.read(reading, names)),
    say: ({ labels, labelMargins: own }) =>
      `labels ${sayGrid(labels)}${labels.paper === 'single' ? '' : `, the first ${sayNumber((own ?? labels).leftMm)} mm from the left and ${sayNumber((own ?? labels).topMm)} mm from the top`}`,
  },
  {
    words: ['cup'],
    example: '/house cup 250 ml',
    read: (reading) => {
      if (reading.keyword('us') !== undefined) return one('cupMl', usCupMl);
      const value = amount(reading, 'volume');
      return one('cupMl', value === undefined ? undefined : within('cupMl', value));
    },
    say: ({ cupMl }) => `cup ${sayNumber(Math.round(cupMl))} ml`,
  },
  {
    words: ['units', 'unit', 'weights in'],
    example: '/house units ounces',
    read: (reading) => {
      if (reading.keyword('ounces', 'ounce', 'oz', 'pounds', 'imperial', 'us') !== undefined)
        return one('units', 'ounces');
      return one(
        'units',
        reading.keyword('grams', 'gram', 'g', 'metric', 'grammes') === undefined ? undefined : 'grams',
      );
    },
    say: ({ units }) => `units ${units}`,
  },
  {
    words: ['scale', 'scale step', 'scale resolution'],
    example: '/house scale 1 g',
    read: (reading) => {
      const value = amount(reading, 'mass');
      return one('scaleG', value === undefined ? undefined : within('scaleG', value));
    },
    say: ({ scaleG, units }) => `scale to ${sayG(scaleG, units)}`,
  },
  {
    words: ['steady', 'steady gap', 'gap'],
    example: '/house steady 2 h',
    read: (reading) => {
      const hasUnit = quantities(reading, 'time').length > 0;
      const value = amount(reading, 'time');
      const hours = value === undefined ? undefined : hasUnit ? value / 3600 : value;
      return one('steadyGapHours', hours === undefined ? undefined : within('steadyGapHours', hours));
    },
    say: ({ steadyGapHours }) => `steady after two weighings ${sayNumber(steadyGapHours)} h apart`,
  },
  {
    words: ['moisture', 'residual moisture'],
    example: '/house moisture 3 %',
    read: (reading) => {
      const value = amount(reading, null);
      return one(
        'residualMoisture',
        value === undefined ? undefined : within('residualMoisture', value / 100),
      );
    },
    say: ({ residualMoisture }) => `moisture expected in dry food ${sayNumber(residualMoisture * 100)} %`,
  },
  {
    words: ['zone', 'time zone', 'timezone'],
    example: '/house zone Europe/Lisbon',
    read: (reading) => one('zone', zoneTold(reading)),
    say: ({ zone }) => `zone ${zone}`,
  },
  ...reminderSettings,
];

/** The setting that a request names: the longest of its words that the text holds. */
export function settingNamed(reading: Reading): HouseSetting | undefined {
  // Figures may stand between the words: 'tray 3 weight 502 g'.
  const said = ` ${[...reading.left()]
    .filter((i) => !/number|quantity/.test(reading.all[i]!.is))
    .map((i) => reading.all[i]!.plain)
    .join(' ')} `;
  const found = houseSettings
    .flatMap((setting) => setting.words.map((words) => ({ setting, words, at: said.indexOf(` ${words} `) })))
    .filter(({ at }) => at >= 0)
    .sort((a, b) => a.at - b.at || b.words.length - a.words.length)[0];
  if (!found)
    return houseSettings.find(
      ({ words }) => reading.keyword(...words.filter((w) => !w.includes(' '))) !== undefined,
    );
  for (const word of found.words.split(' ')) reading.keyword(word);
  return found.setting;
}
