import type { Batch } from '#core/records.ts';
import { Doubt, Refusal } from '#core/refusal.ts';
import { freshness, restG } from '#core/rest.ts';
import { stalePhrase } from '#words/dry-phrases.ts';
import { sayG } from '#words/say.ts';
import { partlySealed } from './dryness.ts';
import { batchNumbered, driedFacts } from './figures.ts';
import type { House } from './house.ts';

/**
 * Once pouches are sealed, the rest is weighed again before more of it is sealed.
 * @returns what to say, and what was done
 * @throws Refusal 'sealed-already', 'above-rest'; Doubt 'below-rest'
 */
export function weighRest(
  house: House,
  batch: Batch,
  weights: readonly number[],
  tray: number | undefined,
  atMs: number,
) {
  const { no } = batch;
  const g = (value: number) => sayG(value, house.settings.units);
  const { dryG } = driedFacts(house, batch);
  const before = partlySealed(house, batch, dryG);
  const leftG = restG(before);
  const [netG] = weights;
  if (netG === undefined || weights.length > 1 || tray !== undefined || leftG <= 0)
    throw new Refusal(
      'sealed-already',
      `Pouches of B${no} are sealed, so its trays no longer hold the whole batch. ${leftG > 0 ? `Weigh the rest together: /weigh B${no} ${Math.round(leftG)} g.` : 'Nothing is left of it.'} /undo takes the sealing back.`,
    );
  if (netG > leftG * 1.5 + 20)
    throw new Refusal('above-rest', `Only ${g(leftG)} of B${no} are left unsealed; ${g(netG)} cannot be.`);
  const missingG = leftG - netG;
  if (!house.sure && missingG > Math.max(2, leftG * 0.02))
    throw new Doubt(
      'below-rest',
      `${g(leftG)} of B${no} should be left, ${g(missingG)} more than that. Was some eaten? Then first: /use B${no} ${Math.round(missingG)} g.`,
    );
  house.batches.rest(batch.id, { atMs, what: 'weighed', netG });
  const after = batchNumbered(house, no);
  const fresh = freshness({ ...before, rest: after.rest }, batch.weighings.at(-1)!.atMs, atMs);
  return {
    group: [
      `B${no}, ${batch.recipe.name}: the rest weighs ${g(netG)}, ${g(leftG)} were left.`,
      fresh.is === 'gained'
        ? stalePhrase(fresh, no, house.settings)
        : 'It took up no moisture: seal it within the hour.',
    ].join('\n'),
    did: `weighed the rest of B${no}: ${g(netG)}`,
  };
}
