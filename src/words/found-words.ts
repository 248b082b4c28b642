import type { Code, Pouch } from '#core/records.ts';
import { type Finding, type Unsound, unsound } from '#core/seal-check.ts';
import { optional, part } from './part.ts';
import { sayCode, sayDay } from './say.ts';

/** What people say of a pouch, and what it is then. */
const said: Readonly<Record<Finding, readonly string[]>> = {
  tight: ['tight', 'drawn', 'firm', 'sound'],
  loose: ['loose', 'slack', 'leaks', 'leaking', 'leaky', 'leaked', 'soft'],
  drying: ['drying', 'dry', 'dried'],
  resealed: ['resealed', 'reseal'],
  opened: ['opened', 'open', 'torn'],
  swollen: ['swollen', 'swelled', 'puffed', 'puffy', 'bloated', 'bulging', 'blown'],
  smells: ['smells', 'smell', 'smelly', 'stinks', 'rancid', 'sour', 'mouldy', 'moldy'],
};

/** How it was found, in people's own words. */
export const foundAs = optional(
  part<Finding>('what it was found to be: tight, loose, opened, swollen or smells', (reading) => {
    const index = [...reading.left()].find((i) =>
      Object.values(said).some((words) => words.includes(reading.all[i]!.plain)),
    );
    if (index === undefined) return undefined;
    reading.take(index);
    const [what] = (Object.entries(said) as [Finding, readonly string[]][]).find(([, words]) =>
      words.includes(reading.all[index]!.plain),
    )!;
    reading.takeWords(...said[what], 'in', 'on', 'up', 'again', 'seal', 'seals', 'bad', 'air');
    return what;
  }),
);

/** Beside a pouch wherever it is named. */
export const foundMark: Readonly<Record<Unsound, string>> = {
  loose: 'LOOSE',
  drying: 'DRYING ON',
  opened: 'OPENED',
  swollen: 'SWOLLEN, do not eat',
  smells: 'SMELLS, do not eat',
};

const foundWhy: Readonly<Record<Unsound, string>> = {
  loose: 'it let air in. Dry it on and seal it anew, eat it soon, or throw it away (common practice)',
  drying: 'its food is back in the dryer',
  opened: 'eat the rest within days, kept closed and dry (common practice), or seal it anew',
  swollen: 'throw it away unopened; no tasting',
  smells: 'throw it away; no tasting',
};

/** How a pouch was found last, for its card; nothing while nobody looked. */
export function foundLines(pouch: Code & Pick<Pouch, 'found' | 'foundAtMs'>, zone: string): string[] {
  const { found, foundAtMs } = pouch;
  if (found === null || foundAtMs === null) return [];
  const day = sayDay(foundAtMs, zone);
  const bad = unsound(found);
  if (bad !== null) return [`${sayCode(pouch)}, ${foundMark[bad]} (${day}): ${foundWhy[bad]}.`];
  return [found === 'tight' ? `Seal found tight ${day}.` : `Sealed anew ${day}.`];
}
