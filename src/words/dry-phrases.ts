import { oxygenFreeMostMoistureFraction } from '#core/balance.ts';
import {
  type DryVerdict,
  type Vouched,
  coldLastsHours,
  dampJarPercent,
  dryJarPercent,
} from '#core/dry-verdict.ts';
import type { Compared, Steadiness } from '#core/dryness.ts';
import type { Freshness } from '#core/rest.ts';
import type { Settings } from '#core/settings.ts';
import { sayG, sayHours, sayList, sayMoment, sayNumber } from './say.ts';

const percent = (fraction: number) => `${Math.round(fraction * 100)} %`;

/** What the recipe leaves in doubt of a load that is steady, and what settles it. */
export const doubtPhrase = (doubtedFraction: number): string =>
  `About ${percent(doubtedFraction)} may still be water by the recipe, and a scale sees no ice. Break open three thick pieces.`;

/** How a batch stands, in a word or two. */
export function standPhrase(verdict: DryVerdict, steady: Steadiness): string {
  if (verdict.is === 'dry') {
    if (verdict.vouched !== null) return 'DRY AGAINST ITS RECIPE';
    return verdict.doubtedFraction === null ? 'Steady' : 'Steady, but look inside';
  }
  if (verdict.because !== 'not steady') return 'NOT DRY';
  return steady.is === 'not yet' && steady.why === 'gained' ? 'Not steady, it gained' : 'Not steady yet';
}

/** Why a batch's weight is steady or not, with the figures. */
export function steadyPhrase(steady: Steadiness, settings: Settings): string {
  if (steady.is === 'not yet' && steady.why === 'one weighing') {
    return steady.tray
      ? `Not steady yet: tray ${steady.tray} was weighed once only. Weigh again after ${sayHours(settings.steadyGapHours)} or more of drying.`
      : `Not steady yet: it takes two weighings, ${sayHours(settings.steadyGapHours)} or more apart.`;
  }
  if (!('changeG' in steady)) return 'Not steady yet.';
  const where = steady.tray ? `tray ${steady.tray}` : 'the batch';
  const limit = `the limit is ${sayG(steady.thresholdG)} (${steady.tray ? '1 g' : '2 g for all trays together'} or 0.5 %, whichever is more: common practice)`;
  if (steady.is === 'steady') {
    const most =
      steady.changeG === 0
        ? 'nothing changed'
        : `the most that changed is ${where}, by ${sayG(Math.abs(steady.changeG))},`;
    return `Steady: ${most} in ${sayHours(steady.gapHours)}; ${limit}.`;
  }
  if (steady.why === 'too close') return tooClose(steady, settings);
  const change = `${where} ${steady.why === 'gained' ? 'gained' : 'changed by'} ${sayG(Math.abs(steady.changeG))} in ${sayHours(steady.gapHours)}`;
  if (steady.why === 'gained')
    return `Not steady: ${change}; dry food takes up moisture from the air. ${limit[0]!.toUpperCase()}${limit.slice(1)}.`;
  return `Not steady yet: ${change}; ${limit}.`;
}

function tooClose({ gapHours, neededGapHours }: Compared, settings: Settings): string {
  const because =
    neededGapHours > settings.steadyGapHours
      ? ` on a scale that shows steps of ${sayNumber(settings.scaleG)} g`
      : '';
  return `Not steady yet: the weighings are ${sayHours(gapHours)} apart, and it takes ${sayHours(neededGapHours)} of further drying to show${because}.`;
}

/** What is asked for in words and may be put right: the batch, its meal and the lines nobody could read. */
export interface DryAbout {
  readonly no: number;
  readonly meal: string;
  /** Lines that could not be read, by their place from 1. */
  readonly unread: readonly { readonly position: number; readonly typed: string }[];
}

/** The verdict with its figures: what refuses, and what can be done about it. */
export function dryPhrase(
  verdict: DryVerdict,
  steady: Steadiness,
  about: DryAbout,
  settings: Settings,
): string[] {
  if (verdict.is === 'dry')
    return [
      steadyPhrase(steady, settings),
      ...(verdict.vouched === null ? [] : [vouchedPhrase(verdict.vouched, settings)]),
      ...(verdict.doubtedFraction === null ? [] : [doubtPhrase(verdict.doubtedFraction)]),
    ];
  switch (verdict.because) {
    case 'not steady':
      return [steadyPhrase(verdict.steadiness, settings)];
    case 'damp jar':
      return [
        `NOT DRY: the hygrometer in the jar showed ${sayNumber(verdict.humidityPercent)} %, and over ${dampJarPercent} % food is damp. Dry it on and weigh again.`,
      ];
    case 'cold inside':
      return [
        `NOT DRY: a piece was cold or soft inside (${verdict.by}, ${sayMoment(verdict.atMs, settings.zone)}), and that is ice. Dry it on for ${coldLastsHours} h or more, weigh it and open pieces again.`,
      ];
    case 'wet by balance':
      return wetByBalance(verdict, about);
  }
}

function wetByBalance(
  { left, mayBeVouched }: Extract<DryVerdict, { because: 'wet by balance' }>,
  { no, meal, unread }: DryAbout,
): string[] {
  const line = unread[0]?.position ?? 2;
  return [
    `NOT DRY, though the weight is steady: by the recipe at least ${percent(left.lowFraction)} of it, fat left out, is still water (${percent(oxygenFreeMostMoistureFraction)} is the most without oxygen), ${percent(left.stillThereFraction)} of all that was loaded. Still frozen, or did the pump stop? Dry it on.`,
    unread.length > 0
      ? `${sayList(unread.map(({ typed }) => `"${typed}"`))} could not be read and counts as water. Put it right: /recipe ${meal} line ${line}: 350 g carrots`
      : `If a line or the pot is wrong, put it right: /recipe ${meal} line ${line}: 350 g carrots, or /recipe ${meal} pot 3.9 kg.`,
    ...(mayBeVouched
      ? [
          `Else it takes two things: a hygrometer in a closed jar with the food at ${dryJarPercent} % or less (/weigh B${no} humidity 24 %), then a grown-up's word (/weigh B${no} vouch six pieces opened, crisp inside).`,
        ]
      : []),
  ];
}

/** How the override is shown, for ever after. */
export function vouchedPhrase({ humidityPercent, words, by, atMs }: Vouched, settings: Settings): string {
  return `DRY AGAINST ITS RECIPE: ${vouchedMark({ humidityPercent, by })} on ${sayMoment(atMs, settings.zone)}: "${words}".`;
}

/** The same where there is little room. */
export function vouchedMark({ humidityPercent, by }: Pick<Vouched, 'humidityPercent' | 'by'>): string {
  return `jar at ${sayNumber(humidityPercent)} %, ${by}'s word`;
}

/** Why dry food may not be sealed on its last weighing. */
export function stalePhrase(fresh: Freshness, no: number, settings: Settings): string {
  if (fresh.is === 'gained')
    return `The rest of B${no} gained ${sayG(fresh.gainedG)} (the limit is ${sayNumber(fresh.thresholdG)} g): it took up moisture. Dry it on and weigh it again: /weigh B${no} and its weight.`;
  if (fresh.is === 'stale')
    return `B${no} was weighed last at ${sayMoment(fresh.weighedAtMs, settings.zone)}, and steady lasts an hour: dry food takes up the kitchen's moisture. Weigh it again first: /weigh B${no} and the weights. If it was sealed in time, say when: "at 14:30".`;
  return '';
}
