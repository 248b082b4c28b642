import { Refusal } from '#core/refusal.ts';
import { type PouchCode, batchCode, pouchCodes } from './codes.ts';
import { pouchesNamed } from './named.ts';
import { type Names, optional, part, quantities } from './part.ts';
import type { Reading } from './reading.ts';

/** How much of it: g, or a share from 0 to 1. */
export type Eaten = { readonly g: number } | { readonly share: number };

/** 'half', 'a third', '50 %', '40 g': how much of a pouch or of the rest. */
export const eatenPart = optional(
  part<Eaten>('how much of it, such as half or 40 g', (reading) => {
    const [mass] = quantities(reading, 'mass');
    if (mass) {
      reading.settleNumbers([mass.index]);
      reading.take(mass.index);
      if (!(mass.value > 0))
        throw new Refusal('not-positive', `${mass.typed} is not a weight: it must be above zero.`);
      reading.takeWords('of');
      return { g: mass.value };
    }
    for (const index of reading.left()) {
      const token = reading.all[index]!;
      if (token.is !== 'number') continue;
      const isPercent = reading.at(index + 1)?.plain === '%';
      const share = isPercent ? token.value / 100 : token.value;
      if (!(share > 0 && share < 1)) continue;
      reading.take(index, ...(isPercent ? [index + 1] : []));
      reading.takeWords('of', 'a');
      return { share };
    }
    return undefined;
  }),
);

/** Pouches by their codes; none where a batch alone is named, whose rest is meant. */
export const codesOrBatch = part<PouchCode[]>('a pouch code such as B4-2', (reading, names) =>
  reading.all.some(({ is }) => is === 'batch')
    ? (pouchCodes.read(reading, names) ?? [])
    : pouchesNamed.read(reading, names),
);

/** @throws Refusal 'mixed-alone' for 'M6': a mixture has no rest, only pouches */
function oneBatch(reading: Reading, names: Names): number | undefined {
  const mixed = reading.all.find((token) => token.is === 'batch' && token.isMixed);
  if (mixed)
    throw new Refusal(
      'mixed-alone',
      `"${mixed.typed}" names no single pouch: say which, such as ${mixed.typed.toUpperCase()}-1.`,
    );
  return batchCode.read(reading, names);
}

/** A batch's code where no pouch is named: 'B4 rest'. */
export const batchAlone = optional(
  part<number>('a batch code such as B4', (reading, names) =>
    reading.all.some(({ is }) => is === 'pouch') ? undefined : oneBatch(reading, names),
  ),
);

/** 'the rest of B4', 'the unsealed rest'; where a pouch is named, these words are about something else. */
export const theRest = optional(
  part<true>('the rest', (reading) => {
    if (reading.all.some((token) => token.is === 'pouch')) return undefined;
    const index = [...reading.left()].find((i) =>
      ['rest', 'remainder', 'unsealed', 'leftover', 'leftovers', 'remaining'].includes(reading.all[i]!.plain),
    );
    if (index === undefined) return undefined;
    reading.takeWords('rest', 'remainder', 'unsealed', 'leftover', 'leftovers', 'remaining', 'of', 'left');
    return true;
  }),
);
