import { blendedPer100, blendNumber } from '#core/blend.ts';
import type { Found } from './find.ts';
import type { Food, FoodTable } from './food.ts';
import { byName } from './kitchen.ts';
import type { ReadLine } from './read.ts';
import { foldedWords, foldName } from './words.ts';

/** Rows of the table that differ in fat alone; a share of fat between two of them is counted between them. */
const byFat: readonly (readonly string[])[] = [
  ['23477', '23557', '23472', '23562', '23567', '23572', '23577', '13498'], // beef, ground
  ['10973', '10972', '10219'], // pork, ground
  ['05662', '05305', '05668'], // turkey, ground
  ['17371', '17353', '17224'], // lamb, ground
  ['01085', '01082', '01079', '01077'], // milk
  ['01118', '01117', '01116'], // yogurt
  ['01256', '01287', '01293'], // Greek yogurt
  ['01049', '01050', '01052', '01053'], // cream
  ['01180', '01179', '01056'], // sour cream
  ['01265', '01168', '01260', '01009'], // cheddar
  ['42304', '01028', '01026'], // mozzarella
  ['01016', '01015', '01012'], // cottage cheese
  ['01186', '43274', '01017'], // cream cheese
  ['01037', '01036'], // ricotta
  ['43589', '01040'], // Swiss cheese
];
/** Dairy tells its fat by the figure alone: '2% milk'. */
const isDairy = (food: Food) => food.group === 'Dairy and Egg Products';

const number = String.raw`(\d{1,2}(?:[.,]\d+)?)`;
const fatShare = new RegExp(
  `${number} ?% ?(?:milk ?)?(?:fat|fett|m\\.?f\\b)|fat (?:content )?(?:of )?${number} ?%`,
  'i',
);
const leanShare = new RegExp(`${number} ?% ?lean|lean ${number} ?%`, 'i');
const bareShare = new RegExp(`${number} ?%`, 'i');
const lowFat =
  /\b(?:extra[- ]lean|lean|(?:low|lower|reduced|half|less)[- ]fat|fat[- ]free|non[- ]?fat|light|lite|skimmed)\b/i;

const noSalt =
  /\b(?:unsalted|salt[- ]free|sodium[- ]free|(?:no|without)(?: any)?(?: added)? (?:salt|sodium)(?: added)?)\b/i;
const lessSalt = /\b(?:low|lower|reduced|less)[- ](?:in )?(?:salt|sodium)\b/i;
const salted = /\b(?:lightly )?salted\b/i;

const textOf = (line: ReadLine) => [line.words, ...line.aside, ...line.brackets].join(', ');
const plainNumber = (text: string) => Number(text.replace(',', '.'));
const say = (value: number) => String(Math.round(value * 10) / 10);

/** The share of fat that a line tells, per cent. */
function fatSaid(text: string, food: Food): number | undefined {
  const of = (m: RegExpExecArray | null) => m?.slice(1).find((one) => one !== undefined);
  const fat = of(fatShare.exec(text));
  if (fat !== undefined) return plainNumber(fat);
  const lean = of(leanShare.exec(text));
  if (lean !== undefined) return 100 - plainNumber(lean);
  const bare = isDairy(food) ? of(bareShare.exec(text)) : undefined;
  return bare === undefined ? undefined : plainNumber(bare);
}

/** The food with the fat that was told: a row of the table, one between two rows, or the nearest, said so. */
function withFat(found: Found, fat: number, table: FoodTable): Found {
  const { food } = found.scale;
  const own = food.per100.fatG;
  if (own === null || Math.abs(own - fat) < 0.6) return found;
  const family = byFat.find((rows) => rows.includes(food.ndb)) ?? [];
  const rows = family.flatMap((ndb) => table.byNdb(ndb) ?? []);
  const above = rows.find((row) => row.per100.fatG! >= fat - 0.3);
  const below = rows.findLast((row) => row.per100.fatG! <= fat + 0.3);
  const nearest = above ?? below;
  if (!nearest) return saying(found, `${say(fat)} % fat is not in the figures: counted with ${say(own)} %`);
  if (!above || !below || above === below) {
    const is = nearest.per100.fatG!;
    const counted = { ...found, scale: { ...found.scale, food: nearest } };
    return Math.abs(is - fat) < 0.6
      ? counted
      : saying(counted, `${say(fat)} % fat is beyond the food table: counted with ${say(is)} %`);
  }
  const [low, high] = [below.per100.fatG!, above.per100.fatG!];
  const share = Math.round(((fat - low) / (high - low)) * 100) / 100;
  const between: Food = {
    ...below,
    ndb: blendNumber({ of: [below.ndb, above.ndb], share }),
    name: `${below.name}, ${say(fat)} % fat`,
    per100: blendedPer100(below.per100, above.per100, share),
  };
  return saying(
    { ...found, scale: { ...found.scale, food: between } },
    `${say(fat)} % fat: between the food table's ${say(low)} and ${say(high)} %`,
  );
}

const saying = (found: Found, remark: string): Found => ({ ...found, remarks: [...found.remarks, remark] });

/** 'lean', 'low-fat': the row whose name says so, else the leaner one of the same food, else it is said. */
function leaner(found: Found, said: string, table: FoodTable): Found {
  const { food } = found.scale;
  const own = food.per100.fatG ?? 0;
  const isHonoured =
    foldedWords(said).some((word) => found.matched.includes(word)) ||
    /lean|low ?fat|lowfat|nonfat|skim|reduced fat|fat free|light/i.test(food.name);
  if (isHonoured || own < 3) return found;
  const target = /free|non/i.test(said) ? 0 : /extra/i.test(said) ? 5 : /lean/i.test(said) ? 10 : own / 2;
  const family = byFat.find((rows) => rows.includes(food.ndb));
  if (family === undefined || target >= own)
    return saying(found, `"${said}" is not in the figures: counted with ${say(own)} % fat`);
  const rows = family.flatMap((ndb) => table.byNdb(ndb) ?? []);
  const nearest = rows.reduce((a, b) =>
    Math.abs(b.per100.fatG! - target) < Math.abs(a.per100.fatG! - target) ? b : a,
  );
  return saying(
    { ...found, scale: { ...found.scale, food: nearest } },
    `${said}: taken as ${say(nearest.per100.fatG!)} % fat`,
  );
}

/** Words that tell two rows apart by their salt alone. */
const aboutSalt = new Set(foldedWords('with without salt salted unsalted added no low lower reduced sodium'));
const besideSalt = (name: string) => foldedWords(name).filter((word) => !aboutSalt.has(word));

/** The row of the same food that differs in its salt alone. */
function saltedAs(found: Found, wants: 'none' | 'less' | 'salted', table: FoodTable): Food | undefined {
  const { food, entry } = found.scale;
  const called = entry ? foldName(entry.called) : foldName(food.name);
  const prefixes =
    wants === 'none'
      ? ['unsalted', 'no salt', 'no salt added', 'low sodium', 'lowsodium']
      : wants === 'less'
        ? ['low sodium', 'lowsodium', 'reduced sodium', 'reduced salt', 'no salt']
        : ['salted'];
  const own = besideSalt(food.name);
  const same = (row: Food) => {
    const words = besideSalt(row.name);
    return words.length === own.length && words.every((word) => own.includes(word));
  };
  const isSaltier = (row: Food) => (row.per100.sodiumMg ?? 0) > (food.per100.sodiumMg ?? 0);
  const fits = (row: Food) => row.ndb !== food.ndb && isSaltier(row) === (wants === 'salted');
  const named = prefixes
    .flatMap((prefix) => byName().get(`${prefix} ${called}`) ?? [])
    .flatMap(({ ndb }) => table.byNdb(ndb) ?? [])
    .find(fits);
  if (named) return named;
  return table
    .search(own.join(' '), 60)
    .filter((row) => same(row) && fits(row))
    .toSorted((one, two) => (one.per100.sodiumMg ?? 0) - (two.per100.sodiumMg ?? 0))
    .at(wants === 'salted' ? -1 : 0);
}

/** Below this the table's row has as good as no salt added, mg sodium in 100 g. Chosen. */
const hardlySaltedMg = 60;

function withSalt(found: Found, text: string, table: FoodTable): Found {
  const said = noSalt.exec(text)?.[0] ?? lessSalt.exec(text)?.[0] ?? salted.exec(text)?.[0];
  if (said === undefined) return found;
  const wants = noSalt.test(said) ? 'none' : lessSalt.test(said) ? 'less' : 'salted';
  const { food } = found.scale;
  const sodiumMg = food.per100.sodiumMg ?? 0;
  const isTold =
    wants === 'salted'
      ? sodiumMg >= hardlySaltedMg
      : sodiumMg < hardlySaltedMg ||
        /unsalted|without salt|(?:no|low|less) ?salt|(?:low|reduced)[- ](?:sodium|salt)/i.test(food.name);
  if (isTold) return found;
  const other = saltedAs(found, wants, table);
  if (other) return { ...found, scale: { ...found.scale, food: other } };
  return saying(
    found,
    `"${said}" is not in the figures: counted with ${Math.round(sodiumMg)} mg sodium per 100 g`,
  );
}

/**
 * A found food with the fat and the salt that the line tells of; what cannot be honoured is said.
 * @param found the food by its name
 */
export function qualified(found: Found, line: ReadLine, table: FoodTable): Found {
  const text = textOf(line);
  const fat = fatSaid(text, found.scale.food);
  const lean = lowFat.exec(text)?.[0];
  const asFat =
    fat !== undefined ? withFat(found, fat, table) : lean === undefined ? found : leaner(found, lean, table);
  return withSalt(asFat, text, table);
}
