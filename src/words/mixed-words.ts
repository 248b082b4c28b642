import { mixedDryG } from '#core/mixed-weights.ts';
import type { Batch, Mix } from '#core/records.ts';
import type { Settings } from '#core/settings.ts';
import { soaksUpMl } from '#core/soaks-up.ts';
import { sayBatch, sayG, sayList } from './say.ts';

/** 'Couscous, dry' as a pouch has room for it. */
const shortly = (called: string): string => called.split(',')[0]!;

/** What is in one pouch of a mixture: '76 g Lentil pot (B3), 72 g Rice (B4) and 15 g nonfat dry milk'. */
export function mixHolds({ parts, goods }: Mix, units: Settings['units']): string {
  return sayList([
    ...parts.map(({ batch, meal, eachG }) => `${sayG(eachG, units)} ${meal} (B${batch})`),
    ...goods.map(({ called, grams }) => `${sayG(grams ?? 0, units)} ${shortly(called)}`),
  ]);
}

/** Where the water of a mixture comes from. */
export function mixWater(batch: Pick<Batch, 'no' | 'mix'>, mix: Mix, units: Settings['units']): string {
  if (mix.bought) return 'The water is what its packet says.';
  const taken = mix.parts.map(
    ({ batch: no, eachG, wetG }) => `${Math.round(wetG - eachG)} ml for the ${sayG(eachG, units)} of B${no}`,
  );
  const soaked = mix.goods.flatMap((good) => {
    const ml = soaksUpMl(good);
    return ml === null
      ? []
      : [`${Math.round(ml)} ml for the ${sayG(good.grams ?? 0, units)} ${shortly(good.called)}`];
  });
  const why =
    soaked.length > 0
      ? ' Food from the cupboard takes up what the food table has between dry and made up.'
      : '';
  return `A whole ${sayBatch(batch)} holds ${sayG(mixedDryG(mix), units)}: ${sayList([...taken, ...soaked])}${soaked.length > 0 ? '' : ', as they gave up'}.${why}${noWaterFor(mix)}`;
}

/** What from the cupboard has no water of its own in the sum. */
export function noWaterFor({ goods }: Mix): string {
  const without = goods.filter((good) => soaksUpMl(good) === null);
  return without.length === 0
    ? ''
    : ` None is reckoned for ${sayList(without.map(({ called }) => shortly(called)))}: pour on as it thickens, then /rate it.`;
}

/** Longest name that fits on a pouch. */
const longestName = 60;

/** What a mixture is called: its meals, then what came with them. */
export function mixName(meals: readonly string[], goods: readonly string[]): string {
  const all = [...new Set([...meals, ...goods.map(shortly)])];
  for (let shown = all.length; shown > 1; shown--) {
    const rest = all.length - shown;
    const name = [...all.slice(0, shown), ...(rest > 0 ? [`${rest} more`] : [])].join(' + ');
    if (name.length <= longestName) return name;
  }
  return all[0]!.slice(0, longestName);
}
