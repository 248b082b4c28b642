import type { DryVerdict } from '#core/dry-verdict.ts';
import type { Steadiness } from '#core/dryness.ts';
import type { BatchFacts } from '#core/meal.ts';
import type { Pouch } from '#core/records.ts';
import type { Settings } from '#core/settings.ts';
import { secondWitness } from '#house/weighing.ts';
import { type DryAbout, dryPhrase, standPhrase } from '#words/dry-phrases.ts';
import { sayCodes } from '#words/say.ts';

/** What was recorded of a batch, and how it stands by that. */
export interface Weighed {
  readonly about: DryAbout;
  readonly did: string;
  /** What was recorded, up to how it stands. */
  readonly recorded: string;
  readonly recordedWhy: readonly string[];
  readonly verdict: DryVerdict;
  /** When it will be dry, where it is not. */
  readonly ahead: readonly string[];
  readonly aheadWhy: readonly string[];
  readonly steady: Steadiness;
  readonly after: BatchFacts;
  /** Somebody looked inside: pieces were crisp, or a jar was dry. */
  readonly isSeen: boolean;
  /** In stock of it already; empty while it dries. */
  readonly sealed: readonly Pouch[];
  readonly settings: Settings;
}

/** A weighing, or what was heard beside the scale, in words: how the batch stands, and what is next. */
export function weighingTold({
  about,
  did,
  recorded,
  recordedWhy,
  verdict,
  ahead,
  aheadWhy: hour,
  steady,
  after,
  isSeen,
  sealed,
  settings,
}: Weighed) {
  const [phrase, ...ways] = dryPhrase(verdict, steady, about, settings);
  const isRefused = verdict.is === 'not dry' && verdict.because === 'wet by balance';
  const isWarned = verdict.is === 'not dry' && verdict.because !== 'not steady';
  const isUnread = about.unread.length > 0 && !isRefused;
  const pouchG = after.dryG === null ? 0 : Math.max(1, Math.floor(after.dryG / usualPouches));
  const isReady = verdict.is === 'dry' && pouchG > 0 && sealed.length === 0;
  const isDoubted = verdict.is === 'dry' && verdict.doubtedFraction !== null;
  return {
    group: [
      `${recorded} ${standPhrase(verdict, steady)}.`,
      ...(isWarned ? [phrase!, ...ways] : []),
      ...(verdict.is === 'dry' ? ways : []),
      ...ahead,
      ...(isUnread ? ['Some lines of the recipe are not understood, so the solids are too low.'] : []),
      ...sealedLines(sealed, verdict),
      ...(verdict.is === 'dry' && sealed.length === 0
        ? [
            isDoubted
              ? 'Cold or soft is ice: dry it on. Crisp right through: seal within the hour.'
              : isSeen
                ? 'Seal within the hour.'
                : 'Open the thickest: cold or soft means ice. Seal within the hour.',
          ]
        : []),
    ].join('\n'),
    why: [
      ...recordedWhy,
      ...(isWarned ? [] : [phrase!]),
      ...hour,
      ...(isRefused ? [] : secondWitness(after, settings)),
    ],
    ...(isReady
      ? {
          buttons: [
            isDoubted
              ? { label: 'Crisp inside', request: `/weigh B${about.no} pieces crisp` }
              : {
                  label: `Sealed ${usualPouches} x ${pouchG} g`,
                  request: `/seal ${usualPouches} x ${pouchG} g B${about.no}`,
                },
            ...(isSeen ? [] : [{ label: 'A piece is cold', request: `/weigh B${about.no} pieces cold` }]),
            { label: 'Chart', request: `/chart B${about.no}` },
          ],
          buttonsForAll: true,
        }
      : {}),
    did,
  };
}

/** What is heard of a batch after pouches of it were sealed speaks of them. */
function sealedLines(sealed: readonly Pouch[], verdict: DryVerdict): string[] {
  if (sealed.length === 0) return [];
  const codes = sayCodes(sealed);
  return verdict.is === 'dry'
    ? [`${codes}: nothing changes.`]
    : [
        `${codes} ${sealed.length > 1 ? 'count' : 'counts'} as UNCHECKED now: no date, no trip. Open, dry on, seal with a fresh absorber; what smells or swells goes.`,
      ];
}

/** Pouches that are proposed of a batch. Chosen. */
const usualPouches = 6;
