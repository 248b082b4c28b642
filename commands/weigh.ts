import { command } from '#chat/command.ts';
import { dryJarPercent, gradeOfJar, isSeenDry, since } from '#core/dry-verdict.ts';
import { type BatchFacts, steadinessOf } from '#core/meal.ts';
import type { Batch, Weighing } from '#core/records.ts';
import { Refusal } from '#core/refusal.ts';
import { type Weighed, weighingTold } from '#cards/weighing-told.ts';
import { dryOf, isSealedFrom, pouchesFrom } from '#house/dryness.ts';
import { batchNumbered, factsOfBatch, loadedBatch } from '#house/figures.ts';
import { dryingAhead } from '#house/forecast.ts';
import { aheadInShort, aheadWhy } from '#house/forecast-said.ts';
import type { House } from '#house/house.ts';
import { weighRest } from '#house/rest-weighed.ts';
import { dryAbout, questionWeighing, weighedTrays } from '#house/weighing.ts';
import { recordJar, recordWord } from '#house/witness.ts';
import { batchNamed, flag } from '#words/parts.ts';
import { sayG, sayNumber } from '#words/say.ts';
import { humidityPercent, oneTray, piecesCold, vouchWords, weightsOrWitness } from '#words/weigh-parts.ts';
import { pastMoment } from '#words/when.ts';

export default command({
  name: 'weigh',
  alsoCalled: ['weighed', 'check'],
  usage:
    '/weigh <batch> <weights> [gross] · /weigh <batch> tray 2 <weight> · /weigh <batch> humidity 24 % · /weigh <batch> pieces crisp',
  summary: 'a check weight during drying: what changed, whether it is steady',
  examples: [
    '/weigh B4 214 209 212 205',
    '/weigh B4 tray 2 209 g',
    '/weigh B4 840 g',
    '/weigh B4 726 721 724 717 g gross at 13:30',
    '/weigh B4 humidity 24 %',
    '/weigh B4 pieces cold',
  ],
  help: [
    'One weight for each tray, or one for the whole batch. Every weighing is kept with its time.',
    '"yesterday 18:00", "at 14:30" or "2 h ago" tells when, if not now.',
    'Steady takes each tray (1 g or 0.5 %) and all of them together (2 g or 0.5 %). A coarse scale waits longer.',
    'Once pouches are sealed, one weight is that of the rest.',
  ],
  records: true,
  mayLeaveOut: true,
  doubtRepeats: true,
  offers: { of: 'loads' },
  takes: {
    batch: batchNamed('drying'),
    humidity: humidityPercent,
    words: vouchWords,
    piecesAreCold: piecesCold,
    tray: oneTray,
    gross: flag('gross'),
    at: pastMoment,
    weights: weightsOrWitness,
    trays: flag('trays', 'tray'),
  },
  run: ({ batch: no, humidity, words, piecesAreCold, tray, gross, at, weights }, house) => {
    const batch = loadedBatch(house, no);
    const atMs = at ?? house.nowMs;
    if (atMs < batch.loadedAtMs) {
      throw new Refusal(
        'before-loading',
        `B${no} was loaded after that; a check weight comes later than the loading.`,
      );
    }
    const isSealed = isSealedFrom(house, no);
    const witnesses = [words, humidity, piecesAreCold].filter((one) => one !== undefined).length;
    if (witnesses > 0) {
      if (weights.length > 0 || witnesses > 1)
        throw new Refusal(
          'one-at-a-time',
          'Weights, a hygrometer, opened pieces and a word: one at a time, each with its own message.',
        );
      return heard(house, batch, isSealed, { humidity, words, piecesAreCold }, atMs);
    }
    if (isSealed) return weighRest(house, batch, weights, tray, atMs);
    const weighed = weighedTrays(batch, weights, tray, gross === true, house.settings).map((one) => ({
      ...one,
      atMs,
    }));
    return weighAll(house, batch, weighed);
  },
  say: (outcome) => ('about' in outcome ? weighingTold(outcome) : outcome),
});

function weighAll(house: House, batch: Batch, weighed: readonly Weighing[]): Weighed {
  const { settings } = house;
  const g = (value: number) => sayG(value, settings.units);
  const before = factsOfBatch(house, batch);
  questionWeighing(batch, before, weighed, house.sure, settings);
  house.batches.weigh(batch.id, weighed);
  const now = batchNumbered(house, batch.no);
  const after = factsOfBatch(house, now);
  const sumG = weighed.reduce((all, one) => all + one.netG, 0);
  const what =
    weighed.length === 1 && weighed[0]!.trayNo > 0 ? `tray ${weighed[0]!.trayNo} ${g(sumG)}` : g(sumG);
  const recordedWhy: string[] = [];
  if (after.dryG !== null) {
    const lessG = before.dryG === null ? undefined : before.dryG - after.dryG;
    const last =
      lessG === undefined
        ? ''
        : lessG === 0
          ? ', the same as last time'
          : `, ${g(Math.abs(lessG))} ${lessG > 0 ? 'less' : 'more'} than last time`;
    recordedWhy.push(
      `The batch weighs ${g(after.dryG)}${last}; ${g(after.wetG - after.dryG)} of water are gone.`,
    );
  }
  const recorded = `B${batch.no}, ${batch.recipe.name}: ${what} recorded.`;
  return standing(house, now, after, { recorded, recordedWhy, did: `weighed B${batch.no}: ${g(sumG)}` });
}

function standing(
  house: House,
  batch: Batch,
  after: BatchFacts,
  told: Pick<Weighed, 'recorded' | 'recordedWhy' | 'did'>,
): Weighed {
  const verdict = dryOf(house, batch, after);
  const isOnItsWay = verdict.is === 'not dry' && verdict.because === 'not steady';
  const ahead = isOnItsWay ? dryingAhead(house, batch, after) : undefined;
  return {
    about: dryAbout(batch),
    ...told,
    verdict,
    ahead: aheadInShort(house, ahead),
    aheadWhy: aheadWhy(house, ahead),
    steady: steadinessOf(batch, house.settings),
    after,
    isSeen: isSeenDry(batch.witnesses, batch.weighings.at(-1)?.atMs ?? 0),
    sealed: [],
    settings: house.settings,
  };
}

/** One of what may be said beside the scale. */
interface Told {
  readonly humidity: number | undefined;
  readonly words: string | undefined;
  readonly piecesAreCold: boolean | undefined;
}

/** A hygrometer in a jar, opened pieces, or a grown-up's word. */
function heard(
  house: House,
  batch: Batch,
  isSealed: boolean,
  { humidity, words, piecesAreCold }: Told,
  atMs: number,
): Weighed {
  // A word can no longer make good what is sealed; a damp jar or a cold piece of it refuses it all the same.
  if (isSealed && words !== undefined)
    throw new Refusal(
      'sealed-already',
      `Pouches of B${batch.no} are sealed: a word now no longer speaks for them. /undo takes the sealing back.`,
    );
  const damp = isSealed && humidity !== undefined ? dampBefore(batch) : undefined;
  if (damp !== undefined && gradeOfJar(humidity!) !== 'damp')
    throw new Refusal(
      'damp-before',
      `A jar of B${batch.no} showed ${sayNumber(damp)} % before. The same jar, not at rest yet then? /undo takes that reading back; else what is sealed stays UNCHECKED.`,
    );
  if (humidity !== undefined) recordJar(house, batch, humidity, atMs);
  else if (piecesAreCold !== undefined) house.batches.pieces(batch.id, house.member.id, atMs, piecesAreCold);
  else recordWord(house, batch, words!);
  const now = batchNumbered(house, batch.no);
  const [what, did] =
    humidity !== undefined
      ? [
          `the jar shows ${sayNumber(humidity)} %: ${gradeWords(humidity)}`,
          `read the jar of B${batch.no}: ${sayNumber(humidity)} %`,
        ]
      : piecesAreCold !== undefined
        ? [
            `opened pieces are ${piecesAreCold ? 'cold or soft' : 'crisp'} inside`,
            `opened pieces of B${batch.no}: ${piecesAreCold ? 'cold' : 'crisp'}`,
          ]
        : [`${house.member.name}'s word recorded: "${words!}"`, `vouched for B${batch.no}: ${words!}`];
  return {
    ...standing(house, now, factsOfBatch(house, now), {
      recorded: `B${batch.no}, ${batch.recipe.name}: ${what}.`,
      recordedWhy: [],
      did,
    }),
    sealed: pouchesFrom(house, batch.no).filter(({ state }) => state === 'stock'),
  };
}

/** A damp reading since the last weighing: another jar that is dry does not make it good. */
function dampBefore({ witnesses, weighings }: Batch): number | undefined {
  const { jar } = since(witnesses, weighings.at(-1)?.atMs ?? 0);
  return jar && gradeOfJar(jar.humidityPercent) === 'damp' ? jar.humidityPercent : undefined;
}

function gradeWords(humidity: number): string {
  switch (gradeOfJar(humidity)) {
    case 'dry':
      return `dry (${dryJarPercent} % or less, common practice)`;
    case 'between':
      return 'not yet crisp; drier keeps longer';
    case 'damp':
      return 'damp';
  }
}
