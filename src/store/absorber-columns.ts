import { z } from 'zod';
import type { Pack } from '#core/absorber-packs.ts';

/** How a row tells its absorbers: of several sizes as a list, else one size and how many. */
export interface AbsorberColumns {
  readonly absorberMl: number | null;
  readonly absorberCount: number | null;
  readonly absorbersJson: string | null;
}

const PacksShape: z.ZodType<Pack[]> = z.array(z.object({ sizeMl: z.number(), count: z.number() }));

export function packsIn({ absorberMl, absorberCount, absorbersJson }: AbsorberColumns): Pack[] {
  if (absorbersJson !== null) return PacksShape.parse(JSON.parse(absorbersJson));
  return absorberMl === null ? [] : [{ sizeMl: absorberMl, count: absorberCount ?? 1 }];
}

export const packColumns = (packs: readonly Pack[]): AbsorberColumns => ({
  absorberMl: packs[0]?.sizeMl ?? null,
  absorberCount: packs.length === 0 ? null : packs.reduce((sum, { count }) => sum + count, 0),
  absorbersJson: packs.length > 1 ? JSON.stringify(packs) : null,
});
