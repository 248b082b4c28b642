import type { ShopKind, ShopNeed } from '#core/shopping.ts';
import type { Db } from './db.ts';

/** One food of a list. */
export interface ShopItem extends ShopNeed {
  readonly id: number;
  /** Counted from 1. */
  readonly position: number;
  readonly homeG: number;
  readonly isGot: boolean;
}

export interface ShoppingList {
  readonly id: number;
  readonly madeAtMs: number;
  /** 'Lentil pot x1.5 and Barley soup'. */
  readonly madeFor: string;
  readonly items: readonly ShopItem[];
}

/** Shopping lists: the one of now, and the ones before it. */
export function shoppingStore(db: Db) {
  const head = 'SELECT id, made_at_ms AS madeAtMs, made_for AS madeFor FROM shopping WHERE household = ?';
  const current = db.prepare(`${head} AND is_current = 1 ORDER BY id DESC LIMIT 1`);
  const byId = db.prepare(`${head} AND id = ?`);
  const items = db.prepare(
    `SELECT id, position, food_key AS key, called, kind, need_g AS needG, unit, unit_g AS unitG, size, home_g AS homeG,
       is_got AS isGot FROM shop_item WHERE shopping = ? ORDER BY position`,
  );
  const close = db.prepare('UPDATE shopping SET is_current = 0 WHERE household = ? AND is_current = 1');
  const insert = db.prepare('INSERT INTO shopping (household, made_at_ms, made_for) VALUES (?, ?, ?)');
  const add = db.prepare(
    `INSERT INTO shop_item (household, shopping, position, food_key, called, kind, need_g, unit, unit_g, size)
     VALUES (:household, :shopping, :position, :key, :called, :kind, :needG, :unit, :unitG, :size)`,
  );
  const setGot = db.prepare('UPDATE shop_item SET is_got = ? WHERE household = ? AND id = ?');
  const setHome = db.prepare('UPDATE shop_item SET home_g = ? WHERE household = ? AND id = ?');
  return (household: number) => {
    const whole = (row: Omit<ShoppingList, 'items'> | undefined): ShoppingList | undefined =>
      row && {
        ...row,
        items: (items.all(row.id) as (Omit<ShopItem, 'isGot'> & { isGot: 0 | 1; kind: ShopKind })[]).map(
          (item) => ({ ...item, isGot: item.isGot === 1 }),
        ),
      };
    return {
      current: (): ShoppingList | undefined => whole(current.get(household) as ShoppingList | undefined),
      byId: (id: number): ShoppingList | undefined =>
        whole(byId.get(household, id) as ShoppingList | undefined),
      /** The list of now from here on. */
      make: (madeFor: string, needs: readonly ShopNeed[], atMs: number): void => {
        close.run(household);
        const shopping = Number(insert.run(household, atMs, madeFor).lastInsertRowid);
        needs.forEach((need, i) => add.run({ household, shopping, position: i + 1, ...need }));
      },
      close: (): void => void close.run(household),
      got: (item: number, isGot: boolean): void => void setGot.run(isGot ? 1 : 0, household, item),
      home: (item: number, grams: number): void => void setHome.run(grams, household, item),
    };
  };
}
