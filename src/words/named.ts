import { Refusal } from '#core/refusal.ts';
import { Ambiguous } from './ambiguous.ts';
import { batchCode, type PouchCode, pouchCodes } from './codes.ts';
import { meal, type Names, part } from './part.ts';
import type { Reading } from './reading.ts';
import { fold, stem } from './near.ts';
import { sayCode, sayCodes } from './say.ts';

// Names in place of codes: 'the soup' where one batch or pouch of it can be meant; a choice where several can.

/** Takes a meal's name and tells what stood in its place, so that a code can be put there. */
function takenMeal(reading: Reading, names: Names): { name: string; from: number; to: number } | undefined {
  const before = [...reading.left()];
  const name = meal.read(reading, names);
  if (name === undefined) return undefined;
  const left = new Set(reading.left());
  const gone = before.filter((i) => !left.has(i)).map((i) => reading.all[i]!);
  return { name, from: gone[0]!.from, to: gone.at(-1)!.to };
}

/**
 * A batch by its code, or by its meal where one batch of it can be meant.
 * @param which 'drying': only batches of which nothing is sealed; 'any': the latest ones
 * @throws Ambiguous where several can, Refusal 'no-batch-of' where none can
 */
export const batchNamed = (which: 'drying' | 'any') =>
  part<number>('a batch code such as B4', (reading, names) => {
    const coded = batchCode.read(reading, names);
    if (coded !== undefined) return coded;
    const found = takenMeal(reading, names);
    if (!found) return which === 'drying' ? onlyDrying(reading, names) : undefined;
    const drying = names.batchesOf(found.name, true);
    const can =
      drying.length > 0 || which === 'drying' ? drying : names.batchesOf(found.name, false).slice(0, 1);
    const [only, another] = can;
    if (only === undefined)
      throw new Refusal(
        'no-batch-of',
        which === 'drying'
          ? `No batch of ${found.name} is in the dryer.`
          : `No batch of ${found.name} has been loaded yet.`,
      );
    if (another !== undefined)
      throw new Ambiguous(
        `Several batches of ${found.name} can be meant. Which?`,
        can.slice(0, 6).map((no) => ({
          label: `B${no} ${found.name}`,
          request: reading.rewritten([{ from: found.from, to: found.to, into: `B${no}` }]),
        })),
      );
    return only;
  });

/** Where no batch is named, the one that is not sealed is meant; a choice where several are. */
export function onlyDrying(
  reading: Reading,
  names: Names,
  { can, question, as }: { can: readonly number[]; question: string; as: string } = {
    can: names.drying,
    question: 'Several loads are in the dryer. Which?',
    as: 'the load that dries',
  },
): number | undefined {
  const [only, another] = can;
  if (only === undefined) return undefined;
  if (another !== undefined)
    throw new Ambiguous(
      question,
      can.slice(0, 6).map((no) => ({ label: `B${no}`, request: `B${no} ${reading.text}` })),
    );
  reading.remarks.push(`B${only}, ${as}`);
  return only;
}

/** 'The chili B2-3': a meal's name beside a pouch of that meal says nothing new; another meal's stays to be asked about. */
function takeMealsOf(reading: Reading, names: Names, codes: readonly PouchCode[]): void {
  const left = [...reading.left()].filter((i) => reading.all[i]!.is === 'word');
  if (left.length === 0) return;
  const isOf = (code: PouchCode) => codes.some((one) => one.batch === code.batch && one.no === code.no);
  const stems = left.map((i) => stem(reading.all[i]!.plain));
  // The stock is looked through for those meals alone that a word could name.
  const words = names.meals
    .map((name) => ({ name, words: fold(name).split(' ').map(stem) }))
    .filter(
      (meal) => meal.words.some((word) => stems.includes(word)) && names.pouchesOf(meal.name).some(isOf),
    )
    .flatMap((meal) => meal.words);
  for (const i of left) if (words.includes(stem(reading.all[i]!.plain))) reading.take(i);
}

const wholes = ['all', 'rest', 'everything', 'every'];

/**
 * Pouches by their codes, or so many of a meal where it is plain which.
 * @throws Ambiguous where several can be meant, Refusal 'none-of' where none can
 */
export const pouchesNamed = part<PouchCode[]>('a pouch code such as B4-2', (reading, names) => {
  const coded = pouchCodes.read(reading, names);
  if (coded) {
    takeMealsOf(reading, names, coded);
    return coded;
  }
  const found = takenMeal(reading, names);
  if (!found) return undefined;
  const there = names.pouchesOf(found.name);
  const index = [...reading.left()].find((i) => reading.all[i]!.is === 'number');
  const token = index === undefined ? undefined : reading.all[index]!;
  const isCount =
    token?.is === 'number' && Number.isInteger(token.value) && token.value >= 1 && token.value <= 100;
  if (index !== undefined && isCount) reading.take(index);
  const isWhole = reading.keyword(...wholes) !== undefined;
  const count = isWhole ? there.length : isCount ? token.value : 1;
  if (there.length === 0) throw new Refusal('none-of', `No pouch of ${found.name} is free in stock.`);
  if (count > there.length)
    throw new Refusal(
      'too-few',
      `There are only ${there.length} of ${found.name} in stock: ${sayCodes(there)}.`,
    );
  if (count === there.length) return [...there];
  const spans =
    index !== undefined && isCount
      ? [{ from: reading.all[index]!.from, to: reading.all[index]!.to, into: '' }]
      : [];
  const option = (codes: readonly PouchCode[]) => ({
    label: sayCodes(codes),
    request: reading.rewritten([
      ...spans,
      { from: found.from, to: found.to, into: codes.map(sayCode).join(' ') },
    ]),
  });
  const options =
    count === 1 ? there.slice(0, 6).map((code) => option([code])) : [option(there.slice(0, count))];
  throw new Ambiguous(
    count === 1
      ? `Which ${found.name}? The oldest first:`
      : `Which ${count} of ${found.name}? The oldest are these; else name their codes.`,
    options,
  );
});

/** The pouch that is judged: by its code, or the last one of a meal that was eaten. @throws as `pouchesNamed` */
export const pouchesEaten = part<PouchCode[]>('a pouch code such as B4-2', (reading, names) => {
  const coded = pouchCodes.read(reading, names);
  if (coded) return coded;
  const before = reading.without([]);
  const found = takenMeal(reading, names);
  const [last] = found ? names.eatenOf(found.name) : [];
  if (!found || !last) return pouchesNamed.read(before, names);
  reading.remarks.push(`${sayCode(last)}, the last ${found.name} that was eaten`);
  return [last];
});
