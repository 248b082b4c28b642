import { Refusal } from './refusal.ts';

const kinds = ['mass', 'volume', 'length', 'temperature', 'time', 'energy'] as const;

/** What a unit measures. Factors go to g, ml, m, K (of a difference), s and kcal. */
export type UnitKind = (typeof kinds)[number];

export interface Unit {
  readonly kind: UnitKind;
  /** As it is written in answers. */
  readonly symbol: string;
  /** How many g, ml, m, K, s or kcal one of it is; for a temperature, of a difference. */
  readonly factor: number;
}

const poundG = 453.59237;
/** The U.S. gallon is 231 cubic inches of 2.54 cm, so every measure below it is an exact fraction. */
const gallonMl = 3785.411784;
const imperialGallonMl = 4546.09;

/** One U.S. cup, ml. */
export const usCupMl = gallonMl / 16;

type Row = readonly [symbol: string, factor: number, words: readonly string[]];

/**
 * Every unit a person may type, with the words for it, in small letters and without full stops.
 * A word that means two things stands first where it means what cooks mean by it: 'oz' is a weight, 'c' a cup.
 * Label measures are for sums on labels alone.
 * @source us-customary
 * @source cfr-101-9
 */
const table: Readonly<Record<UnitKind, readonly Row[]>> = {
  mass: [
    ['mg', 0.001, ['milligram', 'milligrams', 'milligramme', 'milligrammes']],
    ['g', 1, ['gr', 'gm', 'gms', 'gram', 'grams', 'gramme', 'grammes']],
    ['kg', 1000, ['kgs', 'kilo', 'kilos', 'kilogram', 'kilograms', 'kilogramme', 'kilogrammes']],
    ['oz', poundG / 16, ['ozs', 'ounce', 'ounces']],
    ['lb', poundG, ['lbs', 'pound', 'pounds']],
    ['st', poundG * 14, ['stone', 'stones']],
  ],
  volume: [
    ['ml', 1, ['mls', 'cc', 'millilitre', 'millilitres', 'milliliter', 'milliliters']],
    ['cl', 10, ['centilitre', 'centilitres', 'centiliter', 'centiliters']],
    ['dl', 100, ['decilitre', 'decilitres', 'deciliter', 'deciliters']],
    ['l', 1000, ['ltr', 'litre', 'litres', 'liter', 'liters']],
    ['tsp', gallonMl / 768, ['tsps', 'teaspoon', 'teaspoons', 'teaspoonful', 'teaspoonfuls']],
    [
      'tbsp',
      gallonMl / 256,
      ['tbsps', 'tbs', 'tbl', 'tblsp', 'tablespoon', 'tablespoons', 'tablespoonful', 'tablespoonfuls'],
    ],
    [
      'fl oz',
      gallonMl / 128,
      ['floz', 'fl ozs', 'fluid oz', 'fluid ounce', 'fluid ounces', 'oz', 'ounce', 'ounces'],
    ],
    ['cup', gallonMl / 16, ['c', 'cups', 'cupful', 'cupfuls']],
    ['pint', gallonMl / 8, ['pt', 'pts', 'pints']],
    ['quart', gallonMl / 4, ['qt', 'qts', 'quarts']],
    ['gallon', gallonMl, ['gal', 'gals', 'gallons']],
    ['imperial fl oz', imperialGallonMl / 160, ['imperial fluid ounce', 'imperial fluid ounces']],
    ['imperial pint', imperialGallonMl / 8, ['imperial pt', 'imperial pints']],
    ['imperial quart', imperialGallonMl / 4, ['imperial quarts']],
    ['imperial gallon', imperialGallonMl, ['imperial gallons']],
    ['metric cup', 250, ['metric cups']],
    ['label cup', 240, ['label cups']],
    ['label fl oz', 30, []],
    ['label tbsp', 15, []],
    ['label tsp', 5, []],
  ],
  length: [
    ['mm', 0.001, ['millimetre', 'millimetres', 'millimeter', 'millimeters']],
    ['cm', 0.01, ['centimetre', 'centimetres', 'centimeter', 'centimeters']],
    ['m', 1, ['metre', 'metres', 'meter', 'meters']],
    ['km', 1000, ['kilometre', 'kilometres', 'kilometer', 'kilometers']],
    ['in', 0.0254, ['inch', 'inches', '"', '″']],
    ['ft', 0.3048, ['foot', 'feet', "'", '′']],
    ['mi', 1609.344, ['mile', 'miles']],
  ],
  temperature: [
    ['°C', 1, ['c', 'degc', 'deg c', 'celsius', 'centigrade', 'degrees c', 'degrees celsius']],
    ['°F', 5 / 9, ['f', 'degf', 'deg f', 'fahrenheit', 'degrees f', 'degrees fahrenheit']],
  ],
  time: [
    ['s', 1, ['sec', 'secs', 'second', 'seconds']],
    ['min', 60, ['mins', 'minute', 'minutes']],
    ['h', 3600, ['hr', 'hrs', 'hour', 'hours']],
    ['day', 86_400, ['d', 'days']],
    ['week', 604_800, ['weeks']],
  ],
  energy: [
    ['kcal', 1, ['kcals', 'cal', 'cals', 'calorie', 'calories', 'kilocalorie', 'kilocalories']],
    ['kJ', 1 / 4.184, ['kilojoule', 'kilojoules']],
    ['MJ', 1000 / 4.184, ['megajoule', 'megajoules']],
  ],
};

const byWord = new Map<string, Unit[]>();
for (const kind of kinds) {
  for (const [symbol, factor, words] of table[kind]) {
    for (const word of [symbol.toLowerCase(), ...words]) {
      byWord.set(word, [...(byWord.get(word) ?? []), { kind, symbol, factor }]);
    }
  }
}

/**
 * The unit a person typed: singular, plural or short, any case, full stops or not. Only T (tablespoon) and
 * t (teaspoon) differ by case, as cooks write them.
 * @param word one word, or two such as 'fl oz' or 'imperial pint'
 * @param wanted the kind the sentence calls for; decides 'oz' (weight or volume) and 'c' (cup or Celsius)
 * @returns the unit, or undefined when the word is none (or none of the wanted kind)
 * @source us-customary
 */
export function unitNamed(word: string, wanted?: UnitKind): Unit | undefined {
  const plain = word.trim().replaceAll('.', '').replace(/\s+/g, ' ');
  const key = plain === 'T' ? 'tbsp' : plain === 't' ? 'tsp' : plain.toLowerCase();
  const found = byWord.get(key);
  return wanted === undefined ? found?.[0] : found?.find((unit) => unit.kind === wanted);
}

/** @returns g in one of the unit. @throws Refusal 'unknown-unit' when the word is no unit of weight */
export const massG = (unit: string): number => factorOf(unit, 'mass', 'weight');

/** @returns ml in one of the unit. @throws Refusal 'unknown-unit' when the word is no unit of volume */
export const volumeMl = (unit: string): number => factorOf(unit, 'volume', 'volume');

/** @returns m in one of the unit. @throws Refusal 'unknown-unit' when the word is no unit of length */
export const lengthM = (unit: string): number => factorOf(unit, 'length', 'length');

/** @returns kcal in one of the unit. @throws Refusal 'unknown-unit' when the word is no unit of energy */
export const energyKcal = (unit: string): number => factorOf(unit, 'energy', 'energy');

function factorOf(word: string, kind: UnitKind, said: string): number {
  const unit = unitNamed(word, kind);
  if (unit === undefined) throw new Refusal('unknown-unit', `"${word}" is no unit of ${said} known here.`);
  return unit.factor;
}

/**
 * An amount in another unit of the same kind. Temperatures have functions of their own.
 * @param amount in the first unit
 * @returns the same amount in the second unit
 * @throws Refusal 'units-do-not-match' when either word is no unit or the two measure different things
 * @source us-customary
 */
export function converted(amount: number, from: string, to: string): number {
  const first = unitNamed(from);
  for (const kind of first === undefined ? [] : [first.kind, ...kindsOf(from)]) {
    const one = unitNamed(from, kind);
    const other = unitNamed(to, kind);
    if (one !== undefined && other !== undefined && kind !== 'temperature') {
      return (amount * one.factor) / other.factor;
    }
  }
  throw new Refusal('units-do-not-match', `"${from}" cannot be turned into "${to}".`);
}

function kindsOf(word: string): UnitKind[] {
  return kinds.filter((kind) => unitNamed(word, kind) !== undefined);
}

/** @param degF temperature, °F. @returns °C. @source nist-sp811 */
export const celsiusFromF = (degF: number): number => (degF - 32) / 1.8;

/** @param degC temperature, °C. @returns °F. @source nist-sp811 */
export const fFromCelsius = (degC: number): number => degC * 1.8 + 32;
