import type { CampGood } from '#core/camp.ts';
import type { Recipe, RecipeLine } from '#core/records.ts';
import { mergedNeeds, type ShopKind, shopKinds, type ShopNeed } from '#core/shopping.ts';
import { campTold } from '#foods/camp.ts';
import { byName } from '#foods/kitchen.ts';
import { foldName, readLine } from '#foods/line.ts';
import { sayNumber } from '#words/say.ts';
import type { House } from './house.ts';

/** A recipe to be cooked, so many times. */
export interface ToShop {
  readonly recipe: Recipe;
  readonly factor: number;
}

const kindsByGroup: readonly (readonly [RegExp, ShopKind])[] = [
  [/^(?:Vegetables|Fruits)/, 'Vegetables and fruit'],
  [/^(?:Poultry|Sausages|Pork|Beef|Finfish|Lamb)/, 'Meat and fish'],
  [/^Dairy/, 'Dairy and eggs'],
  [/^(?:Cereal|Legumes|Baked|Breakfast|Soups|Meals)/, 'Dry goods'],
  [/^(?:Nut|Sweets|Snacks|Beverages)/, 'Nuts, sweets and drinks'],
  [/^(?:Spices|Fats)/, 'Spices, oils and sauces'],
];
const inTins = new Set(['tin', 'jar']);
/** Packs that a shop sells a food in, where nobody typed one; the first that the kitchen knows. */
const packs = ['packet', 'bag', 'carton', 'tub', 'bottle', 'block', 'loaf', 'tin', 'jar'];
/** What cloves, stalks and leaves are sold as. */
const wholes = ['head', 'bulb', 'bunch'];
const partsOfOne = new Set(['clove', 'stalk', 'stick', 'sprig', 'leaf', 'handful', 'rib']);

/** As it stands on a packet: '500 g', '1 kg'. */
const packSize = (g: number): string => (g >= 1000 ? `${sayNumber(g / 1000)} kg` : `${Math.round(g)} g`);

/** What one of the typed units gives, and what stands on it. */
function asTyped({ typed, grams }: RecipeLine): Pick<ShopNeed, 'unit' | 'unitG' | 'size'> | undefined {
  const { amounts, factor, each } = readLine(campTold(typed).rest);
  const [one] = amounts;
  if (!one || amounts.length > 1 || !(one.value > 0) || grams === null || grams <= 0) return undefined;
  const unitG = grams / (one.value * factor);
  if (one.unit === null) return { unit: '', unitG, size: null };
  if (!one.unit.holds) return undefined;
  const size = each?.unit ? `${sayNumber(each.value)} ${each.unit.name}` : packSize(unitG);
  return { unit: one.unit.name, unitG, size };
}

/** Packs smaller than this are not bought by more than so many. Chosen. */
const smallPackG = 100;
const mostSmallPacks = 4;

/** A pack that the household taught, else one that the kitchen knows of this food. */
function asSold(
  house: House,
  { called, ndb, typed }: RecipeLine,
  gramsNeeded: number,
): Pick<ShopNeed, 'unit' | 'unitG' | 'size'> | undefined {
  const food = foldName(called.split(',')[0]!);
  const taught = house.learnt
    .measures()
    .find(
      ({ unit, food: of, grams }) =>
        grams !== null && of !== null && packs.includes(unit) && foldName(of) === food,
    );
  if (taught) return { unit: taught.unit, unitG: taught.grams!, size: packSize(taught.grams!) };
  const rows = (byName().get(food) ?? []).filter((row) => row.ndb === ndb);
  const unit = readLine(campTold(typed).rest).amounts[0]?.unit?.name ?? '';
  const forms = partsOfOne.has(unit) ? wholes : packs;
  const sold = rows.flatMap(({ weights }) => weights).filter(({ how }) => how.length === 0);
  const best = forms.flatMap((pack) => sold.find(({ unit }) => unit === pack) ?? [])[0];
  // A handful for a lunch box is no way to buy for many: nobody takes fourteen packets of 43 g off a shelf.
  if (best && best.grams < smallPackG && gramsNeeded > mostSmallPacks * best.grams) return undefined;
  return best && { unit: best.unit, unitG: best.grams, size: packSize(best.grams) };
}

/** A line of a recipe as it is bought; nothing for water. */
function needOf(house: House, line: RecipeLine, factor: number): ShopNeed[] {
  const food = line.called.split(',')[0]!;
  // In the words of the recipe, as it will be looked for.
  const called = readLine(campTold(line.typed).rest).words.toLowerCase() || food;
  if (line.state === 'asked')
    return [{ key: `? ${foldName(line.typed)}`, called: line.typed, kind: 'Not understood', needG: null, unit: null, unitG: null, size: null }]; // prettier-ignore
  if (/^(?:[a-z]+ )?water$/u.test(food)) return [];
  const group = line.ndb === null ? '' : (house.foods.byNdb(line.ndb)?.group ?? '');
  const byGroup = kindsByGroup.find(([start]) => start.test(group))?.[1] ?? 'Other';
  const isSpice = byGroup === 'Spices, oils and sauces';
  const form =
    asTyped(line) ?? (isSpice || line.grams === null ? undefined : asSold(house, line, line.grams * factor));
  return [
    {
      key: foldName(line.called),
      called,
      kind: form?.unit != null && inTins.has(form.unit) ? 'Tins and jars' : byGroup,
      needG: line.grams === null ? null : line.grams * factor,
      unit: form?.unit ?? null,
      unitG: form?.unitG ?? null,
      size: form?.size ?? null,
    },
  ];
}

/** What is added at camp to pouches that are there already. */
const campNeed = ({ called, grams }: CampGood): ShopNeed => ({
  key: foldName(called),
  called: called.split(',')[0]!,
  kind: 'Other',
  needG: grams,
  unit: null,
  unitG: null,
  size: null,
});

/** All that has to be there for some meals, each food once, by where it stands in a shop. */
export function shopNeeds(
  house: House,
  meals: readonly ToShop[],
  camp: readonly CampGood[] = [],
): ShopNeed[] {
  const needs = mergedNeeds([
    ...meals.flatMap(({ recipe, factor }) => recipe.lines.flatMap((line) => needOf(house, line, factor))),
    ...camp.map(campNeed),
  ]);
  return needs.toSorted(
    (a, b) => shopKinds.indexOf(a.kind) - shopKinds.indexOf(b.kind) || a.called.localeCompare(b.called),
  );
}
