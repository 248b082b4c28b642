import { panelFigures } from '#core/panel.ts';
import type { RecipeLine } from '#core/records.ts';
import { Refusal } from '#core/refusal.ts';
import type { FoodTable } from '#foods/food.ts';
import { packetKey } from '#foods/packet-things.ts';
import type { BoughtStore } from '#store/bought.ts';
import type { OwnFood, OwnFoodStore } from '#store/own-foods.ts';
import type { PanelTold } from '#words/panel-parts.ts';
import { sayDay, sayNumber } from '#words/say.ts';
import type { House } from './house.ts';
import { foodMeant } from './learning.ts';

/** What was bought ready, by its row: 'bought:3'. */
const ofPiece = /^bought:(\d+)$/;
/** The number of a bought piece in the table as its household sees it. */
export const numberOfBought = (row: number): string => `bought:${row}`;

const number = /^own:(\d+):(.+)$/;
const numberOf = ({ id, baseNdb }: OwnFood): string => `own:${id}:${baseNdb}`;

/**
 * The food table as a household sees it: with the foods whose panels it read. A panel that was taken back leaves
 * the table's own food in its place.
 */
export function tableWith(
  table: FoodTable,
  { ownFoods: own, bought }: { readonly ownFoods: OwnFoodStore; readonly bought: BoughtStore },
): FoodTable {
  return {
    search: (words, limit) => table.search(words, limit),
    byNdb: (ndb) => {
      const piece = ofPiece.exec(ndb)?.[1];
      const figures = piece === undefined ? undefined : bought.byId(Number(piece));
      if (figures) return { ndb, name: 'as its packet says', group: 'Snacks', per100: figures, measures: [] };
      const [, id, base] = number.exec(ndb) ?? [];
      if (id === undefined) return table.byNdb(ndb);
      const food = table.byNdb(base!);
      const read = own.byId(Number(id));
      return food && read
        ? { ...food, ndb, name: `${food.name} (by its packet)`, per100: read.per100 }
        : food;
    },
  };
}

const round = (value: number | null): string =>
  value === null ? '?' : sayNumber(Math.round(value * 10) / 10);

/** A food's panel on one line, with who read it and when. */
export function panelLine(
  house: House,
  { called, per100, leastWaterG, mostWaterG, ...read }: OwnFood,
): string {
  const by = house.members().find(({ id }) => id === read.readBy)?.name ?? 'somebody';
  return `${called}, 100 g: ${round(per100.kcal)} kcal, ${round(per100.fatG)} g fat, ${round(per100.carbohydrateG)} g carbohydrate with its fibre, ${round(per100.proteinG)} g protein, ${Math.round(per100.sodiumMg ?? 0)} mg sodium; water ${Math.round(per100.waterG ?? 0)} g by difference (${Math.round(leastWaterG)} to ${Math.round(mostWaterG)}). Panel read by ${by}, ${sayDay(read.readAtMs, house.settings.zone)}`;
}

const remarkStart = 'counted by its panel';
/** What is counted by its own panel is no longer counted as something near it. */
const isStandIn = (remark: string): boolean => remark.startsWith('the table has no ');

/** A recorded line that counts with the household's own packet; undefined where it does already or is another food. */
export function withPanel(line: RecipeLine, own: OwnFood): RecipeLine | undefined {
  const isIt = line.state !== 'asked' && line.ndb !== null && packetKey(line.called) === own.foodKey;
  if (!isIt || line.ndb === numberOf(own)) return undefined;
  return {
    ...line,
    ndb: numberOf(own),
    remarks: [...line.remarks.filter((one) => !one.startsWith(remarkStart) && !isStandIn(one)), remarkStart],
  };
}

/**
 * Takes in a panel. Its figures count for the food that the words name.
 * @throws Refusal for a food that no table knows, and for figures that cannot be
 */
export function readPanelOf(house: House, told: PanelTold, request: (food: string) => string): OwnFood {
  const { called, food } = foodMeant(house, told.food, request);
  if (!food) throw new Refusal('no-such-food', `I know no food called "${told.food}".`);
  const { per100, waterG } = panelFigures(told.panel);
  house.ownFoods.keep({
    foodKey: packetKey(called),
    called: called.split(',')[0]!,
    baseNdb: food.ndb,
    per100,
    leastWaterG: waterG[0],
    mostWaterG: waterG[1],
    readBy: house.member.id,
    readAtMs: house.nowMs,
  });
  return house.ownFoods.all().find(({ foodKey }) => foodKey === packetKey(called))!;
}
