import { allergens, type Contents, hiddenIn, kinds, undeclaredKinds } from './allergens.ts';

/** What is known of water: that nothing is in it. */
export const nothing: Contents = { contains: [], check: [], kinds: [], checkKinds: [], hides: [] };

/** Several foods in one pot: what is certain in one is certain in all, and a doubt stays one. */
export function together(all: readonly Contents[]): Contents {
  const contains = new Set(all.flatMap((one) => one.contains));
  const certainKinds = new Set(all.flatMap((one) => one.kinds));
  return {
    contains: [...contains],
    check: [...new Set(all.flatMap((one) => one.check))].filter((tag) => !contains.has(tag)),
    kinds: [...certainKinds],
    checkKinds: [...new Set(all.flatMap((one) => one.checkKinds))].filter((kind) => !certainKinds.has(kind)),
    hides: [...new Set(all.flatMap(hiddenIn))],
  };
}

/** One of several foods, nobody knows which: only what all of them hold is certain. */
export function oneOf(all: readonly Contents[]): Contents {
  if (all.length === 1) return together(all);
  const union = together(all.map(perhaps));
  const contains = union.check.filter((tag) => all.every((one) => one.contains.includes(tag)));
  const certainKinds = union.checkKinds.filter((kind) => all.every((one) => one.kinds.includes(kind)));
  return together([{ ...nothing, contains, kinds: certainKinds }, union]);
}

/** A food that may be in it: all that it holds is in doubt. */
export const perhaps = (known: Contents): Contents => ({
  contains: [],
  check: [...new Set([...known.contains, ...known.check])],
  kinds: [],
  checkKinds: [...new Set([...known.kinds, ...known.checkKinds])],
  hides: hiddenIn(known),
});

/** What a food holds is certain, but a word beside it was not understood: it may hold anything else as well. */
export const widened = (known: Contents): Contents => ({
  ...known,
  check: allergens.filter((tag) => !known.contains.includes(tag)),
  checkKinds: kinds.filter((kind) => !known.kinds.includes(kind)),
  hides: undeclaredKinds,
});

/** Whether a food brings nothing that another does not hold as well. */
export const isWithin = (small: Contents, large: Contents): boolean =>
  small.contains.every((tag) => large.contains.includes(tag)) &&
  small.kinds.every((kind) => large.kinds.includes(kind)) &&
  small.check.every((tag) => large.check.includes(tag) || large.contains.includes(tag)) &&
  small.checkKinds.every((kind) => large.checkKinds.includes(kind) || large.kinds.includes(kind));
