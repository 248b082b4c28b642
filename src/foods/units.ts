/** Measures as cooks write them. Grams and millilitres are exact where a law defines them. */

/** A measure of mass has `grams`, one of volume `ml`; a thing one counts (clove, tin, slice) has neither. */
export interface Unit {
  readonly name: string;
  readonly grams?: number;
  readonly ml?: number;
  /** A tin, jar or packet: a weight beside it is the weight of one. */
  readonly holds?: true;
  /** No law defines it: shown as common practice when used. */
  readonly loose?: true;
}

/** US customary volume: n × 3785.411784 / k ml, k units a gallon. @source us-customary */
const us = (perGallon: number) => 3785.411784 / perGallon;
/** @source us-customary */
export const poundG = 453.59237;
export const cupMl = us(16);

const rows: readonly (readonly [Omit<Unit, 'name'>, string])[] = [
  [{ grams: 1 }, 'g gr gm gms grm gram grams gramme grammes grms'],
  [{ grams: 1000 }, 'kg kgs kilo kilos kilogram kilograms kilogramme kilogrammes'],
  [{ grams: 0.001 }, 'mg milligram milligrams'],
  [{ grams: poundG / 16 }, 'oz ozs ounce ounces onz'],
  [{ grams: poundG }, 'lb lbs pound pounds lbm'],
  [{ ml: us(768) }, 'tsp tsps teaspoon teaspoons teaspoonful teaspoonfuls tspn tsps'],
  [
    { ml: us(256) },
    'tbsp tbsps tablespoon tablespoons tablespoonful tablespoonfuls tbs tbl tbls tblsp tblsps tbspn tbspns tblspn tblspns tbsb tablesp',
  ],
  [{ ml: us(128) }, 'floz'],
  [{ ml: cupMl }, 'cup cups cupful cupfuls'],
  [{ ml: us(8) }, 'pint pints pt pts'],
  [{ ml: us(4) }, 'quart quarts qt qts'],
  [{ ml: us(1) }, 'gallon gallons gal gals'],
  [{ ml: 1 }, 'ml mls millilitre millilitres milliliter milliliters cc'],
  [{ ml: 10 }, 'cl centilitre centilitres centiliter centiliters'],
  [{ ml: 100 }, 'dl decilitre decilitres deciliter deciliters'],
  [{ ml: 1000 }, 'l litre litres liter liters ltr ltrs'],
  // Spoonfuls and drops without a law; millilitres are common practice, no source.
  [{ ml: 10, loose: true }, 'dessertspoon dessertspoons dsp dstsp'],
  [{ ml: 0.31, loose: true }, 'pinch pinches pinchful'],
  [{ ml: 0.62, loose: true }, 'dash dashes'],
  [{ ml: 0.15, loose: true }, 'smidgen smidgens smidge'],
  [{ ml: 15, loose: true }, 'splash splashes glug glugs'],
  [{ ml: 10, loose: true }, 'drizzle drizzles'],
  [{ ml: 0.05, loose: true }, 'drop drops'],
  [{ ml: 44.36, loose: true }, 'shot shots jigger jiggers'],
  [{ holds: true }, 'tin tins can cans cn'],
  [{ holds: true }, 'jar jars'],
  [{ holds: true }, 'packet packets package packages pack packs pkg pkgs pkt pkts pckg pouch pouches'],
  [{ holds: true }, 'sachet sachets envelope envelopes env'],
  [{ holds: true }, 'bag bags'],
  [{ holds: true }, 'box boxes'],
  [{ holds: true }, 'carton cartons'],
  [{ holds: true }, 'tub tubs container containers punnet punnets'],
  [{ holds: true }, 'pot pots'],
  [{ holds: true }, 'bottle bottles'],
  [{ holds: true }, 'tube tubes'],
  [{ holds: true }, 'block blocks brick bricks cake'],
  [{}, 'clove cloves'],
  [{}, 'sprig sprigs'],
  [{}, 'bunch bunches'],
  [{}, 'stick sticks'],
  [{}, 'slice slices round rounds'],
  [{}, 'rasher rashers strip strips'],
  [{}, 'head heads crown crowns'],
  [{}, 'heart hearts'],
  [{}, 'stalk stalks rib ribs stem stems'],
  [{}, 'ear ears cob cobs'],
  [{}, 'fillet fillets filet filets'],
  [{}, 'breast breasts'],
  [{}, 'thigh thighs'],
  [{}, 'drumstick drumsticks'],
  [{}, 'leg legs'],
  [{}, 'wing wings'],
  [{}, 'chop chops cutlet cutlets'],
  [{}, 'steak steaks'],
  [{}, 'knob knobs thumb thumbs nub nubs'],
  [{}, 'handful handfuls handfull fistful fistfuls'],
  [{}, 'leaf leaves'],
  [{}, 'sheet sheets'],
  [{}, 'cube cubes'],
  [{}, 'ball balls'],
  [{}, 'loaf loaves'],
  [{}, 'piece pieces pc pcs pieces each ea'],
  [{}, 'link links'],
  [{}, 'square squares'],
  [{}, 'bulb bulbs'],
  [{}, 'spear spears'],
  [{}, 'floret florets'],
  [{}, 'nest nests'],
  [{}, 'wedge wedges'],
  [{}, 'bar bars'],
  [{}, 'half halves'],
  [{}, 'pod pods'],
  [{}, 'inch inches in'],
  [{}, 'cm'],
  [{}, 'rack racks'],
  [{}, 'log logs'],
  [{}, 'wheel wheels'],
  [{}, 'cone cones'],
  [{}, 'side sides'],
  [{}, 'pat pats'],
  [{}, 'grind grinds grinding grindings twist twists'],
  [{}, 'grating gratings'],
  [{}, 'lump lumps'],
  [{}, 'roll rolls'],
  [{}, 'segment segments'],
  [{}, 'tail tails'],
  [{}, 'disc discs disk disks'],
  [{}, 'tablet tablets'],
  [{}, 'sleeve sleeves'],
  [{}, 'dozen dozens'],
  [{}, 'scoop scoops'],
  [{}, 'patty patties'],
  [{}, 'ring rings'],
  [{}, 'root roots'],
  [{}, 'shank shanks'],
  [{}, 'crust crusts'],
  [{}, 'slab slabs'],
  [{}, 'tentacle tentacles'],
  [{}, 'tender tenders'],
  [{}, 'spray sprays'],
  [{}, 'sausage sausages'],
];

const byWord = new Map<string, Unit>();
for (const [what, words] of rows) {
  const all = words.split(' ');
  for (const word of all) byWord.set(word, { name: all[0]!, ...what });
}
/** Long words people mistype; short ones would catch real words. */
const long = [...byWord.keys()].filter((word) => word.length >= 8);

/** Whether two words differ by one letter added, lost, swapped with its neighbour or changed. */
export function oneSlip(a: string, b: string): boolean {
  if (a === b) return true;
  if (Math.abs(a.length - b.length) > 1) return false;
  let start = 0;
  while (start < a.length && a[start] === b[start]) start++;
  const [x, y] = [a.slice(start), b.slice(start)];
  return (
    x.slice(1) === y ||
    y.slice(1) === x ||
    x.slice(1) === y.slice(1) ||
    (x.length > 1 && y.length > 1 && x[0] === y[1] && x[1] === y[0] && x.slice(2) === y.slice(2))
  );
}

/** The unit with this name, such as 'cup' or 'tin'. */
export const unitNamed = (name: string): Unit | undefined => byWord.get(name);

/**
 * The unit a word stands for. Case counts for T (tablespoon) and t (teaspoon) alone.
 * @param word as typed, without its dot
 */
export function unitOf(word: string): Unit | undefined {
  if (word === 'T' || word === 'Tb') return byWord.get('tbsp');
  if (word === 't') return byWord.get('tsp');
  if (word === 'c' || word === 'C') return byWord.get('cup');
  if (word === 'EL') return byWord.get('tbsp');
  if (word === 'TL') return byWord.get('tsp');
  const small = word.toLowerCase().replace(/(.)\1{2,}/g, '$1$1');
  const exact = byWord.get(small);
  if (exact || small.length < 7) return exact;
  const slips = new Set(
    long.filter((known) => oneSlip(known, small)).map((known) => byWord.get(known)!.name),
  );
  return slips.size === 1 ? byWord.get([...slips][0]!) : undefined;
}
