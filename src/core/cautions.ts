/** One ingredient as the cautions see it: plain figures of the food table, and the line as it was typed. */
export interface CautionLine {
  readonly called: string;
  readonly typed: string;
  /** The table's own name and group; null for a line that no food of the table stands for. */
  readonly tableName: string | null;
  readonly group: string | null;
  /** g in the recipe; null where no amount was given. */
  readonly grams: number | null;
  /** Per 100 g; null where the table has no value. */
  readonly waterG: number | null;
  readonly fatG: number | null;
}

/** The table's groups of animal foods; eggs stand in a group with milk. @source usda-sr28 */
const animalGroups: ReadonlySet<string> = new Set([
  'Beef Products',
  'Pork Products',
  'Lamb, Veal, and Game Products',
  'Poultry Products',
  'Finfish and Shellfish Products',
  'Sausages and Luncheon Meats',
]);
const eggGroup = 'Dairy and Egg Products';

/** How the table writes that a food was not cooked. @source usda-sr28 */
const uncookedStates: ReadonlySet<string> = new Set(['raw', 'uncooked', 'unprepared']);

const wordsOf = (text: string) => text.toLowerCase().match(/\p{L}+/gu) ?? [];

/**
 * Meat, poultry, fish, seafood and egg that the recipe names uncooked: freeze-drying kills no germs, so they are not
 * ready to eat as they come out.
 * @source iowa-answerline-2021
 */
export function rawAnimals(lines: readonly CautionLine[]): CautionLine[] {
  return lines.filter(({ tableName, group }) => {
    if (tableName === null || group === null) return false;
    const words = wordsOf(tableName);
    const isAnimal = animalGroups.has(group) || (group === eggGroup && words[0] === 'egg');
    return isAnimal && words.some((word) => uncookedStates.has(word));
  });
}

/** Words that tell that a piece is small, each with what may follow it ('diced', 'slices'). Common practice, no source. */
const cutUp = [
  'chop',
  'dice',
  'cube',
  'slice',
  'mince',
  'ground',
  'grate',
  'shred',
  'strip',
  'crumble',
  'piece',
  'chunk',
  'crush',
  'puree',
  'mash',
  'flake',
  'fine',
  'small',
  'bite',
  'julienne',
  'canned',
  'tin',
  'flour',
  'powder',
];

/** Raw animal food that nobody says is cut small: thick pieces stay wet inside. Eggs are no pieces. Common practice, no source. */
export function thickPieces(raw: readonly CautionLine[]): CautionLine[] {
  return raw.filter(
    ({ typed, group }) =>
      group !== eggGroup && !wordsOf(typed).some((word) => cutUp.some((cut) => word.startsWith(cut))),
  );
}

/** From this share of fat in the dry matter on a meal is said to keep badly. Chosen: between fine and rancid in months. */
const fattyFraction = 0.2;
/** Food of which more than this is fat is fat, g per 100 g: butter, oil, nut butter's oil. Chosen. */
const pureFatG = 75;

/**
 * Whether fat rules how a meal keeps, and what in it is fat itself and better added at camp. Fat holds no water, so
 * it does not dry. Common practice, no source.
 * @param fatFraction of the dry matter, 0 to 1
 */
export function fatty(
  fatFraction: number,
  lines: readonly CautionLine[],
): { readonly isFatty: boolean; readonly pure: readonly CautionLine[] } {
  return {
    isFatty: fatFraction >= fattyFraction,
    pure: lines.filter(({ fatG }) => fatG !== null && fatG > pureFatG),
  };
}

const nutGroup = 'Nut and Seed Products';

/**
 * Meat, eggs, nuts and pearl barley: a leaflet on packs without oxygen keeps them, dried, out of long storage.
 * @source oxygen-free-leaflet
 */
export function notForLong(lines: readonly CautionLine[]): CautionLine[] {
  return lines.filter(({ tableName, group }) => {
    const words = wordsOf(tableName ?? '');
    const isEgg = group === eggGroup && words[0] === 'egg';
    const isBarley = words[0] === 'barley' && (words as string[]).includes('pearled');
    return animalGroups.has(group ?? '') || group === nutGroup || isEgg || isBarley;
  });
}

/** Sweets that hold water and keep it: honey 17 g, jam 30 g, molasses 22 g per 100 g; sugar 0. @source usda-sr28 */
const syrupWaterG = 10;
const sweetsGroup = 'Sweets';
/** Up to this share of the solids a syrup dries along with the rest. Chosen. */
const mostSyrupFraction = 0.1;

/**
 * Honey, jam and syrup where they are enough of the solids to stay sticky: sugar holds its water under vacuum. Common
 * practice, no source.
 * @param solidsG of the whole recipe, g
 */
export function syrups(lines: readonly CautionLine[], solidsG: number): CautionLine[] {
  const found = lines.filter(
    ({ group, waterG }) => group === sweetsGroup && waterG !== null && waterG >= syrupWaterG,
  );
  const syrupSolidsG = found.reduce((sum, { grams, waterG }) => sum + (grams ?? 0) * (1 - waterG! / 100), 0);
  return solidsG > 0 && syrupSolidsG > mostSyrupFraction * solidsG ? found : [];
}

/** Garlic and oil in one recipe: together, unheated and warm, they are where botulism grows. Common practice, no source. */
export function isGarlicInOil(lines: readonly CautionLine[]): boolean {
  const names = lines.map(({ tableName }) => wordsOf(tableName ?? ''));
  return names.some((words) => words[0] === 'garlic') && names.some((words) => words[0] === 'oil');
}

/** Longest that cooked food stands warm before it is cold or loaded, h. @source illinois-meat-safety */
export const mostHoursWarm = 2;

/** Rice, whose spores outlive cooking: it is cooled first of all. @source foods-2021-302 */
export function hasRice(lines: readonly CautionLine[]): boolean {
  return lines.some(({ tableName }) => wordsOf(tableName ?? '')[0] === 'rice');
}

/** A batch in the dryer. */
export interface Loaded {
  readonly no: number;
  readonly isRaw: boolean;
  readonly loadedAtMs: number;
  /** Shown to be dry, or sealed: it lies in the dryer no more. */
  readonly isDone: boolean;
}

/** Batches loaded within this of each other share a load, h: longer than loads take. Chosen. */
const oneLoadHours = 12;

/**
 * Batches of the other kind in one load: what drips or flies from raw food lands on what is eaten as it is. Common
 * practice, no source.
 */
export function rawBeside(now: Loaded, others: readonly Loaded[]): Loaded[] {
  return others.filter(
    ({ no, isRaw, loadedAtMs, isDone }) =>
      no !== now.no &&
      !isDone &&
      isRaw !== now.isRaw &&
      Math.abs(now.loadedAtMs - loadedAtMs) <= oneLoadHours * 3_600_000,
  );
}
