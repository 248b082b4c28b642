import type { Allergen, Kind } from '#core/allergens.ts';

/**
 * What a made food may hold without any law asking its label for it. A plain food hides nothing, however much small
 * print it has about milk; a stock may be made with mushrooms, a biscuit with potato starch, a sweet with cocoa.
 * Common practice, no source.
 */
const savoury: readonly Kind[] = ['allium', 'nightshade', 'mushroom', 'legume', 'insect'];
const bakery: readonly Kind[] = ['allium', 'nightshade', 'legume', 'insect'];
const sweet: readonly Kind[] = ['caffeine', 'nightshade', 'legume', 'insect'];

/** By the first two figures of the table's numbers, which are its food groups. */
const groups: Readonly<Record<string, readonly Kind[]>> = {
  '03': savoury, '06': savoury, '07': savoury, '21': savoury, '22': savoury, '36': savoury,
  '08': bakery, '18': bakery, '20': bakery, '25': bakery,
  '14': sweet, '19': sweet, '28': bakery, '42': savoury, '43': savoury,
}; // prettier-ignore
const madeGroups: ReadonlySet<string> = new Set(['03', '06', '07', '18', '21', '22', '25', '36']);

/** One food and no mixture: oats, bran, cornflakes, fish sauce, raising agents, cured ham, nuts, seaweed, rice vinegar. */
const plainOnes: ReadonlySet<string> = new Set([
  '02053', '04044', '08156', '14534', '11667', '11669', '12130', '12137', '12195',
  '08090', '08172', '08120', '08121', '08084', '08157', '08020', '18217', '18369', '18372', '18373', '18374', '18375', '18363', '06179', '07071', '19034', '25009',
]); // prettier-ignore

/** Mixtures whose small print names hardly another allergen: ketchup, mustard, pickles, salsa, hummus, flavoured oil … */
const otherMixtures: ReadonlySet<string> = new Set([
  '11935', '02046', '04703', '04539', '27047', '11937', '11533', '11549', '11578', '16403', '16158', '16432', '43134', '01042', '01048', '15121', '15119', '15126',
  '15162', '11378', '28307', '28306', '28327', '42200', '02055', '43154', '16006', '16009', '11174', '11956', '01102', '14192', '14181', '14415', '19125', '19087',
]); // prettier-ignore

/** Names of foods that come with herbs, spices or a filling of which nothing else is said. */
const flavoured = /\b(?:marinated|stuffed|infused|flavou?red|pickled|pancetta)\b/;
const sweets =
  /yogurt|chocolate|ice cream|custard|pudding|topping|shake|cookie|cake|biscuit|wafer|granola|brownie|gingersnap|shortbread|ladyfinger|amaretti|frosting/;

/**
 * Kinds that a food may hold unsaid.
 * @param food its number, the names it goes by, and what it carries for certain and by its small print
 */
export function hiddenKinds(food: {
  readonly ndb: string;
  readonly names: readonly string[];
  readonly kinds: readonly Kind[];
  readonly check: readonly Allergen[];
}): readonly Kind[] {
  const group = food.ndb.slice(0, 2);
  // Small print about two other foods is that of something made; about one it is a trace or a variant of the make.
  const others = food.check.filter((tag) => tag !== 'sulphites').length;
  const isDrink = group === '14' && food.kinds.some((kind) => kind === 'alcohol' || kind === 'caffeine');
  const isFlavoured = food.names.some((name) => flavoured.test(name));
  const isMade =
    !plainOnes.has(food.ndb) &&
    (madeGroups.has(group) || (others >= 2 && !isDrink) || otherMixtures.has(food.ndb) || isFlavoured);
  if (!isMade) return [];
  const isSweet = sweets.test(food.names[0]!) && !/cracker|rice/.test(food.names[0]!);
  const kinds = isSweet ? sweet : (groups[group] ?? savoury);
  return kinds.filter((kind) => !food.kinds.includes(kind));
}
