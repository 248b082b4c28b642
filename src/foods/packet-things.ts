import { type Allergen, type Kind } from '#core/allergens.ts';
import { avoidanceOf, plainWord } from '#core/avoidance.ts';
import { nothingRead, type PacketReading } from '#core/packet.ts';
import type { PacketLarder, PacketTold, Said } from '#words/packet-parts.ts';
import { larder } from './avoided.ts';
import { byName } from './kitchen.ts';
import { foldName } from './words.ts';

/** What packets may speak of. */
export const packetLarder: PacketLarder = { knows: larder.knows, isDiet: larder.isDiet };

/**
 * Words that name all of an allergen or kind, so that a "no" before them settles it. "No whey" does not say that
 * there is no milk, and "no nuts" does not speak of peanuts: the eight nuts of the EU list are meant.
 * @source eu-annex-ii
 */
const wholeTags: Readonly<Record<string, readonly Allergen[]>> = {
  milk: ['milk'], dairy: ['milk'], 'milk product': ['milk'], 'dairy product': ['milk'], egg: ['egg'], 'egg product': ['egg'], fish: ['fish'], peanut: ['peanut'], soy: ['soy'], soya: ['soy'], soybean: ['soy'], sesame: ['sesame'],
  'sesame seed': ['sesame'], wheat: ['wheat'], rye: ['rye'], barley: ['barley'], oat: ['oats'], celery: ['celery'], mustard: ['mustard'], lupin: ['lupin'], lupine: ['lupin'], sulphite: ['sulphites'], sulfite: ['sulphites'], 'sulphur dioxide': ['sulphites'],
  crustacean: ['crustaceans'], mollusc: ['molluscs'], mollusk: ['molluscs'], shellfish: ['crustaceans', 'molluscs'], seafood: ['fish', 'crustaceans', 'molluscs'],
  nut: ['almond', 'hazelnut', 'walnut', 'cashew', 'pecan', 'brazil nut', 'pistachio', 'macadamia'], 'tree nut': ['almond', 'hazelnut', 'walnut', 'cashew', 'pecan', 'brazil nut', 'pistachio', 'macadamia'],
  almond: ['almond'], hazelnut: ['hazelnut'], walnut: ['walnut'], cashew: ['cashew'], pecan: ['pecan'], 'brazil nut': ['brazil nut'], pistachio: ['pistachio'], macadamia: ['macadamia'], 'pine nut': ['pine nut'], coconut: ['coconut'], chestnut: ['chestnut'],
}; // prettier-ignore
const wholeKinds: Readonly<Record<string, readonly Kind[]>> = {
  pork: ['pork'], beef: ['beef'], lamb: ['lamb'], game: ['game'], poultry: ['poultry'], meat: ['meat', 'pork', 'beef', 'lamb', 'game', 'poultry'], honey: ['honey'], gelatine: ['gelatine'], gelatin: ['gelatine'],
  rennet: ['rennet'], 'animal rennet': ['rennet'], insect: ['insect'], alcohol: ['alcohol'], nightshade: ['nightshade'], allium: ['allium'], legume: ['legume'], mushroom: ['mushroom'], caffeine: ['caffeine'],
}; // prettier-ignore

interface Read {
  reading: { -readonly [K in keyof PacketReading]: PacketReading[K][number][] };
  /** Negated words that settle nothing. */
  readonly idle: string[];
}

/** What a sentence about a packet says, in the terms of verdicts; and what of it settles nothing. */
export function packetReading({ said, claims }: PacketTold): {
  reading: PacketReading;
  idle: readonly string[];
} {
  const read: Read = {
    reading: Object.fromEntries(
      Object.keys(nothingRead).map((key) => [key, []]),
    ) as unknown as Read['reading'],
    idle: [],
  };
  for (const { words, is } of said) note(read, words, is);
  for (const words of claims) {
    const found = avoidanceOf(words);
    if (found?.is === 'diet') read.reading.claims.push(found.diet);
    else read.idle.push(words);
  }
  const { contains, may, kinds, mayKinds, free, freeKinds } = read.reading;
  // What one sentence says both ways is not settled by it.
  return {
    reading: {
      ...read.reading,
      free: free.filter((tag) => ![...contains, ...may].includes(tag)),
      freeKinds: freeKinds.filter((kind) => ![...kinds, ...mayKinds].includes(kind)),
    },
    idle: read.idle,
  };
}

function note({ reading, idle }: Read, words: string, is: Said): void {
  const plain = plainWord(words);
  if (is === 'free') {
    const tags = Object.hasOwn(wholeTags, plain) ? wholeTags[plain]! : [];
    const kinds = Object.hasOwn(wholeKinds, plain) ? wholeKinds[plain]! : [];
    if (plain === 'gluten') reading.claims.push('gluten-free');
    else if (tags.length + kinds.length === 0) idle.push(words);
    reading.free.push(...tags);
    reading.freeKinds.push(...kinds);
    return;
  }
  const found = avoidanceOf(words);
  const foods = found ? [] : (byName().get(foldName(words)) ?? []).map(({ contents }) => contents);
  const tags = found?.is === 'allergen' ? found.tags : foods.flatMap(({ contains }) => contains);
  const kinds = found?.is === 'kind' ? found.kinds : foods.flatMap((one) => one.kinds);
  // 'Contains nuts' tells of one of them, not of which.
  const isOne = found ? tags.length + kinds.length === 1 : foods.length > 0;
  const isSure = is === 'contains' && isOne;
  (isSure ? reading.contains : reading.may).push(...tags);
  (isSure ? reading.kinds : reading.mayKinds).push(...kinds);
  reading.may.push(...foods.flatMap(({ check }) => check));
  reading.mayKinds.push(...foods.flatMap(({ checkKinds }) => checkKinds));
}

/** The name under which a food's packet is kept. */
export const packetKey = (called: string): string => foldName(called.split(',')[0]!);
