/** Where in a shop it stands; in the order people walk. Common practice, no source. */
export const shopKinds = [
  'Vegetables and fruit',
  'Meat and fish',
  'Dairy and eggs',
  'Tins and jars',
  'Dry goods',
  'Nuts, sweets and drinks',
  'Spices, oils and sauces',
  'Other',
  'Not understood',
] as const;
export type ShopKind = (typeof shopKinds)[number];

/** So much of a food, and what a shop sells it in. */
export interface ShopNeed {
  readonly key: string;
  readonly called: string;
  readonly kind: ShopKind;
  /** g of food as the recipes use it; null where no amount is told. */
  readonly needG: number | null;
  /** 'tin', 'packet'; '' for pieces; null: by weight. */
  readonly unit: string | null;
  /** What one gives, g: of a tin what is left once drained. */
  readonly unitG: number | null;
  /** What stands on one: '400 g'. */
  readonly size: string | null;
}

/** Sums of one food together; tins and packs tell more of what to buy than pieces, and pieces more than a weight. */
export function mergedNeeds(needs: readonly ShopNeed[]): ShopNeed[] {
  const tells = ({ unit }: ShopNeed) => (unit === null ? 0 : unit === '' ? 1 : 2);
  const byFood = new Map<string, ShopNeed>();
  for (const need of needs) {
    const before = byFood.get(need.key);
    if (!before) byFood.set(need.key, need);
    else {
      const best = tells(need) > tells(before) ? need : before;
      const needG =
        before.needG === null && need.needG === null ? null : (before.needG ?? 0) + (need.needG ?? 0);
      byFood.set(need.key, { ...best, needG });
    }
  }
  return [...byFood.values()];
}

/** A twentieth of a tin is not worth another tin. Chosen. */
const slack = 0.05;

/**
 * What is to be bought of it.
 * @param homeG what is at home, g
 * @returns whole pieces or packs, or a weight as shops weigh it, rounded up; nothing where all of it is at home
 */
export function toBuy(
  { needG, unitG }: Pick<ShopNeed, 'needG' | 'unitG'>,
  homeG: number,
): { readonly count: number | null; readonly grams: number } | undefined {
  const missingG = (needG ?? 0) - homeG;
  if (needG !== null && missingG <= 1e-9) return undefined;
  if (needG === null) return { count: null, grams: 0 };
  if (unitG !== null) {
    const count = Math.max(1, Math.ceil(missingG / unitG - slack));
    return { count, grams: count * unitG };
  }
  const step = missingG < 20 ? 1 : missingG < 100 ? 10 : missingG < 1000 ? 50 : 100;
  return { count: null, grams: Math.ceil(missingG / step - 1e-9) * step };
}
