import { type Allergen, type Contents, type Diet, hiddenIn, type Kind } from './allergens.ts';
import { nothing, widened } from './contents.ts';

/** What a household read on a packet, as far as verdicts go. A tag or kind is in one of the three at most. */
export interface PacketReading {
  readonly contains: readonly Allergen[];
  readonly kinds: readonly Kind[];
  /** 'May contain', or one of a group that was not told apart ('nuts'). */
  readonly may: readonly Allergen[];
  readonly mayKinds: readonly Kind[];
  /** Said not to be in it. */
  readonly free: readonly Allergen[];
  readonly freeKinds: readonly Kind[];
  /** Diets that the packet says it suits: 'gluten-free', 'vegan'. They settle that diet and no allergen. */
  readonly claims: readonly Diet[];
}

export const nothingRead: PacketReading = {
  contains: [],
  kinds: [],
  may: [],
  mayKinds: [],
  free: [],
  freeKinds: [],
  claims: [],
};

/** Kinds that come with an allergen: what holds no milk holds no dairy. */
const kindsOf: Readonly<Partial<Record<Allergen, Kind>>> = { milk: 'dairy', egg: 'egg', fish: 'fish', crustaceans: 'shellfish', molluscs: 'shellfish' }; // prettier-ignore

const union = <T>(...lists: readonly (readonly T[])[]): T[] => [...new Set(lists.flat())];
const without = <T>(list: readonly T[], others: readonly T[]): T[] =>
  list.filter((one) => !others.includes(one));

/** A later reading of the same packet: what it says of a thing holds, what it does not speak of stays. */
export function readAgain(before: PacketReading, now: PacketReading): PacketReading {
  const tags = [...now.contains, ...now.may, ...now.free];
  const kinds = [...now.kinds, ...now.mayKinds, ...now.freeKinds];
  return {
    contains: union(without(before.contains, tags), now.contains),
    may: union(without(before.may, tags), now.may),
    free: union(without(before.free, tags), now.free),
    kinds: union(without(before.kinds, kinds), now.kinds),
    mayKinds: union(without(before.mayKinds, kinds), now.mayKinds),
    freeKinds: union(without(before.freeKinds, kinds), now.freeKinds),
    claims: union(before.claims, now.claims),
  };
}

/** What was said to be in it, or that it may be, and is now said not to be. */
export const liftedBy = (before: PacketReading, now: PacketReading): (Allergen | Kind)[] => [
  ...[...before.contains, ...before.may].filter((tag) => now.free.includes(tag)),
  ...[...before.kinds, ...before.mayKinds].filter((kind) => now.freeKinds.includes(kind)),
];

/** What the packet denies although the food is made of it: such a packet is of another food. */
export const deniedBy = (known: Contents | null, { free, freeKinds }: PacketReading): (Allergen | Kind)[] => [
  ...(known?.contains ?? []).filter((tag) => free.includes(tag)),
  ...(known?.kinds ?? []).filter((kind) => freeKinds.includes(kind)),
];

/** Of a food of which nothing is known everything may be in it, rennet and all other kinds too. */
const unheardOf: Contents = widened(nothing);

/**
 * What is known of a food once its packet was read. Only what the packet speaks of changes: small print is settled,
 * never what the food is made of for certain.
 * @param known as the kitchen knows it; null: nothing is known
 */
export function settled(known: Contents | null, reading: PacketReading): Contents {
  const base = known ?? unheardOf;
  const contains = union(base.contains, reading.contains);
  const broughtKinds = contains.flatMap((tag) => kindsOf[tag] ?? []);
  const kinds = union(base.kinds, reading.kinds, broughtKinds);
  const check = without(union(base.check, reading.may), [...contains, ...reading.free]);
  const openKinds = check.flatMap((tag) => kindsOf[tag] ?? []);
  // Dairy is settled with milk; shellfish only with crustaceans and molluscs both.
  const settledKinds = reading.free
    .flatMap((tag) => kindsOf[tag] ?? [])
    .filter((kind) => !openKinds.includes(kind));
  const checkKinds = without(union(base.checkKinds, reading.mayKinds, openKinds), [
    ...kinds,
    ...reading.freeKinds,
    ...settledKinds,
  ]);
  const claims = union(base.claims ?? [], reading.claims);
  return {
    contains,
    check,
    kinds,
    checkKinds,
    hides: without(hiddenIn(base), [...kinds, ...reading.freeKinds]),
    ...(claims.length === 0 ? {} : { claims }),
  };
}
