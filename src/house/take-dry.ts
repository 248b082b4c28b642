import { type BatchFacts, steadinessOf, weighedThroughAtMs } from '#core/meal.ts';
import { gradeOfJar, since, type Vouched } from '#core/dry-verdict.ts';
import type { Batch } from '#core/records.ts';
import { Refusal } from '#core/refusal.ts';
import { freshness, goneG } from '#core/rest.ts';
import { leftToSealG } from '#core/sealing.ts';
import { DateTime } from 'luxon';
import { sayMoment } from '#words/say.ts';
import { dryPhrase, stalePhrase } from '#words/dry-phrases.ts';
import { dryOf, partlySealed, sealedOf } from './dryness.ts';
import { driedFacts, loadedBatch } from './figures.ts';
import type { House } from './house.ts';
import { dryAbout } from './weighing.ts';

/** Part of a dried batch that goes into pouches now. */
export interface DryPart {
  readonly batch: Batch;
  readonly facts: BatchFacts & { readonly dryG: number };
  /** Shown to be dry, and weighed within the hour. */
  readonly isDry: boolean;
  /** Dry against its recipe, on somebody's word. */
  readonly vouched: Vouched | null;
  /** Water that the recipe still finds in it, 0 to 1, where nobody has looked inside; null: no doubt. */
  readonly doubtedFraction: number | null;
  /** A hygrometer in a jar showed it dry since it was weighed last. */
  readonly isMeasuredDry: boolean;
  /** Of the batch, when this is taken, g. */
  readonly leftG: number;
}

/**
 * Takes food of a batch for pouches; nothing is recorded yet.
 * @param askedG pouches, g each
 * @param unchecked sealed although nothing shows it to be dry
 * @throws Refusal 'not-dry', 'weigh-again', 'more-than-dried' and others, each with the figures
 */
export function takeDry(
  house: House,
  no: number,
  askedG: readonly number[],
  sealedAtMs: number,
  unchecked: boolean,
): DryPart {
  const batch = loadedBatch(house, no);
  const facts = driedFacts(house, batch);
  const { settings } = house;
  const verdict = dryOf(house, batch, facts);
  if (verdict.is === 'not dry' && !unchecked)
    throw new Refusal(
      'not-dry',
      `B${no} is not shown to be dry. ${dryPhrase(verdict, steadinessOf(batch, settings), dryAbout(batch), settings).join('\n')}\nA damp pouch without oxygen is where botulism grows, so I name no absorber and no best-by for it. Dry it on and weigh again, or seal it as "unchecked" and keep it frozen.`,
    );
  const before = sealedOf(house, no).map(({ dryG }) => dryG);
  const gone = goneG(batch.rest);
  const leftG = leftToSealG(facts.dryG, gone > 0 ? [...before, gone] : before, askedG, settings.scaleG);
  const isDry = verdict.is === 'dry' && isFresh(house, batch, facts.dryG, sealedAtMs, unchecked);
  const { jar } = since(batch.witnesses, batch.weighings.at(-1)?.atMs ?? 0);
  const isMeasuredDry = jar !== undefined && gradeOfJar(jar.humidityPercent) === 'dry';
  return {
    batch,
    facts,
    isDry,
    isMeasuredDry,
    vouched: verdict.is === 'dry' && isDry ? verdict.vouched : null,
    doubtedFraction: verdict.is === 'dry' && isDry ? verdict.doubtedFraction : null,
    leftG,
  };
}

/** What is sealed right behind its weighing is sealed as much later. Chosen. */
const soonAfterMs = 30 * 60_000;

const sealedThen = (atMs: number, zone: string): Refusal['ways'][number] => ({
  label: `It was sealed then: ${sayMoment(atMs, zone)}`,
  add: `at ${DateTime.fromMillis(atMs, { zone }).toFormat('yyyy-MM-dd HH:mm')}`,
});

/**
 * Whether the weight it is sealed on is of this hour.
 * @throws Refusal 'weigh-again' where it is not, unless it is sealed as unchecked; 'sealed-before' for a time that cannot be
 */
function isFresh(house: House, batch: Batch, dryG: number, sealedAtMs: number, unchecked: boolean): boolean {
  if (sealedAtMs < batch.weighings.at(-1)!.atMs)
    throw new Refusal(
      'sealed-before',
      `B${batch.no} was weighed after that; it is sealed on its last weighing.`,
    );
  const fresh = freshness(partlySealed(house, batch, dryG), weighedThroughAtMs(batch)!, sealedAtMs);
  if (fresh.is === 'fresh') return true;
  if (unchecked) return false;
  throw new Refusal(
    'weigh-again',
    `${stalePhrase(fresh, batch.no, house.settings)} Or seal it as "unchecked" and keep it frozen.`,
    [
      // Where no time was told, it may have been right behind the weighing.
      ...(fresh.is === 'stale' && house.nowMs - sealedAtMs < 60_000
        ? [sealedThen(fresh.weighedAtMs + soonAfterMs, house.settings.zone)]
        : []),
      { label: 'Seal it unchecked, keep it frozen', add: 'unchecked' },
    ],
  );
}
