import type { Batch } from '#core/records.ts';
import type { Reply } from '#core/talk.ts';
import { dryOf, pouchesFrom } from '#house/dryness.ts';
import { factsOfBatch } from '#house/figures.ts';
import { dryingAhead } from '#house/forecast.ts';
import { aheadInShort } from '#house/forecast-said.ts';
import type { House } from '#house/house.ts';
import { rawCaution } from '#words/phrases.ts';
import { sayCodes, sayG, sayMoment } from '#words/say.ts';

const twoDaysMs = 48 * 3_600_000;

/**
 * A load as it stands, for the message that told of it: what it weighs, when it will be dry, what was sealed.
 * @returns null as its text while nothing was weighed: then it is as it was told
 */
export function loadNow(
  house: House,
  batch: Batch,
): { readonly said: Reply | null; readonly isOver: boolean } {
  const { settings } = house;
  const last = batch.weighings.at(-1);
  const pouches = pouchesFrom(house, batch.no);
  const head = `B${batch.no}, ${batch.recipe.name}:`;
  const raw = batch.isRaw ? [rawCaution] : [];
  if (pouches.length > 0)
    return {
      said: { group: [`${head} sealed as ${sayCodes(pouches)}.`, ...raw].join('\n') },
      // A sealing may be taken back.
      isOver: house.nowMs - Math.max(...pouches.map(({ sealedAtMs }) => sealedAtMs)) > twoDaysMs,
    };
  if (!last) return { said: null, isOver: false };
  const facts = factsOfBatch(house, batch);
  const isDry = dryOf(house, batch, facts).is === 'dry';
  const g = (value: number) => sayG(value, settings.units);
  const weighs = facts.dryG === null ? '' : ` ${g(facts.wetG)} wet, ${g(facts.dryG)} now,`;
  const lines = [
    `${head} ${isDry ? 'to be sealed' : 'drying'}.`,
    `Weighed ${sayMoment(last.atMs, settings.zone)}:${weighs || ' some trays,'} ${isDry ? 'steady then. Look inside, seal within the hour of it.' : 'not steady.'}`,
    ...(isDry ? [] : aheadInShort(house, dryingAhead(house, batch, facts))),
    ...raw,
  ];
  return {
    said: {
      group: lines.join('\n'),
      buttons: [{ label: 'Chart', request: `/chart B${batch.no}` }],
      buttonsForAll: true,
      buttonsStay: true,
    },
    isOver: false,
  };
}
