import type { Material } from '#core/barrier.ts';
import { areaOfVolumeCm2 } from '#core/barrier.ts';
import { pouchVolumeMl } from '#core/oxygen.ts';
import type { PouchKind } from '#core/pouch-kind.ts';
import { flatSizeMm } from './lengths.ts';
import { type Names, measure, optional, part, quantities } from './part.ts';
import type { Reading } from './reading.ts';
import { sayNumber } from './say.ts';

/** Words for what a pouch is made of. Common names, no source. */
const materialWords: Readonly<Record<Material, readonly string[]>> = {
  foil: ['foil', 'mylar', 'aluminium', 'aluminum', 'alu', 'metallised', 'metallized', 'silver'],
  clear: ['clear', 'transparent', 'plastic', 'ziplock', 'zip-lock', 'nylon', 'see-through'],
  glass: ['jar', 'jars', 'glass'],
  tin: ['tin', 'tins', 'cans'],
};
const materialOf = new Map(
  Object.entries(materialWords).flatMap(([material, words]) =>
    words.map((word) => [word, material as Material] as const),
  ),
);

const joins = ['+', '&', 'plus', 'and', 'with'];
/** Nobody tells a pouch by the spoon: what is measured so goes into it. */
const spoons = /(?:tsps?|tbsps?|tbs|spoon(?:ful)?s?)$/i;
const holders = /^(?:pouch|pouches|bags?|jars?|tins?|cans?)$/;

/** How a material is said. */
export const materialSaid: Readonly<Record<Material, string>> = {
  foil: 'foil',
  clear: 'clear plastic',
  glass: 'glass jar',
  tin: 'tin',
};

/** The material that a token names; vacuum bags are clear, and 'vacuum' alone is a deed. */
function materialAt(reading: Reading, index: number): Material | undefined {
  const { plain } = reading.all[index]!;
  if (plain === 'vacuum' && holders.test(reading.all[index + 1]?.plain ?? '')) return 'clear';
  return materialOf.get(plain);
}

/** What a pouch is made of: 'foil', 'clear', 'jar', 'tin'. Words that named the setting count, taken or not. */
export function takeMaterial(reading: Reading): Material | undefined {
  const found = reading.all.flatMap((_, i) => (materialAt(reading, i) === undefined ? [] : [i]));
  reading.take(...found);
  const [first] = found;
  return first === undefined ? undefined : materialAt(reading, first);
}

/** The same where other parts of a request may hold such a word: 'no can do'. */
export const material = optional(
  part<Material>('what the pouch is made of, such as foil', (reading) => {
    const index = [...reading.left()].find((i) => materialAt(reading, i) !== undefined);
    if (index === undefined) return undefined;
    reading.take(index);
    return materialAt(reading, index);
  }),
);

/** 'gusset 8 cm', '8 cm gusset': how far the bottom opens, mm. */
export const gussetMm = optional(
  part<number>('a gusset such as gusset 8 cm', (reading) => {
    const index = [...reading.left()].find((i) => /^gussets?$/.test(reading.all[i]!.plain));
    if (index === undefined) return undefined;
    const lengths = quantities(reading, 'length');
    // '25 x 35 cm gusset 8 cm': what stands behind it, else in front and no side of the pouch.
    const near =
      lengths.find(({ index: at }) => [index + 1, index + 2].includes(at)) ??
      lengths.find(
        ({ index: at }) => at === index - 1 && !/^(?:x|by)$/.test(reading.at(at - 1)?.plain ?? ''),
      );
    if (!near) return undefined;
    reading.take(index, near.index);
    reading.takeWords('bottom');
    return near.value * 1000;
  }),
);

/** The pouch's volume: 'pouch 1.5 l', '1 l jar'. One that is joined on, '+ 20 ml oil', is of what goes in. */
export const pouchVolume = part<number>("the pouch's volume, such as pouch 1.5 l", (reading, names) => {
  const joined = quantities(reading, 'volume')
    .filter(
      ({ index, typed }) =>
        spoons.test(typed) ||
        (reading.wordBefore(index, ...joins) && !holders.test(reading.at(index + 1)?.plain ?? '')),
    )
    .map(({ index }) => index);
  const view = reading.without(joined);
  const free = new Set(view.left());
  const volumeMl = measure('volume', 'one volume').read(view, names);
  if (volumeMl === undefined) return undefined;
  const still = new Set(view.left());
  reading.take(...[...free].filter((index) => !still.has(index)));
  return volumeMl;
});

/** A flat size with or without gusset, as a kind of pouch; its material is told apart. */
export function kindOfSize(
  size: { a: number; b: number },
  gusset: number | undefined,
): Omit<PouchKind, 'material'> {
  // A bottom gusset is folded in: each side of the pouch is half of it longer.
  const heightMm = size.b + (gusset ?? 0) / 2;
  return {
    volumeMl: pouchVolumeMl(size.a, heightMm),
    areaCm2: (2 * size.a * heightMm) / 100,
    told: `${sayNumber(size.a / 10)} x ${sayNumber(size.b / 10)} cm${gusset === undefined ? ' flat' : `, gusset ${sayNumber(gusset / 10)} cm`}`,
  };
}

/** A volume alone. */
export const kindOfVolume = (volumeMl: number): Omit<PouchKind, 'material'> => ({
  volumeMl,
  areaCm2: areaOfVolumeCm2(volumeMl),
  told: `${sayNumber(volumeMl)} ml`,
});

/** What was said of the pouch in a request that seals: a size, or a kind by its name. */
export const pouchSaid = optional(
  part<Omit<PouchKind, 'material'>>('a pouch such as 20 x 30 cm', (reading, names) => {
    const gusset = gussetMm.read(reading, names);
    const size = flatSizeMm.read(reading, names);
    if (size) return kindOfSize(size, gusset);
    const volumeMl = pouchVolume.read(reading, names);
    return volumeMl === undefined ? undefined : kindOfVolume(volumeMl);
  }),
);

/** One of the household's kinds, by its whole name. */
export const kindNamed = optional(
  part<string>('a pouch by its name', (reading, names: Names) => {
    for (const name of names.pouchKinds) {
      const words = name.toLowerCase().split(' ');
      const start = [...reading.left()].find((i) =>
        words.every((word, k) => reading.at(i + k)?.plain === word),
      );
      if (start === undefined) continue;
      reading.take(...words.map((_, k) => start + k));
      return name;
    }
    return undefined;
  }),
);
