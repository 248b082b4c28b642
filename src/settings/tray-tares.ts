import { inRange } from '#core/ranges.ts';
import { Refusal } from '#core/refusal.ts';
import type { Settings } from '#core/settings.ts';
import { type Names, trayWeights } from '#words/parts.ts';
import type { Reading } from '#words/reading.ts';

type Tares = Settings['trayTaresG'];
type Before = Pick<Settings, 'trayTaresG' | 'dryer'>;

/** More trays than any kitchen's dryer has. Chosen. */
const mostTrays = 60;

/** Indexes of the figures that number a tray: 'tray 3 weight 502 g', 'tray 3: 502 g'. */
function numbered(reading: Reading): number[] {
  return [...reading.left()].filter((i) => {
    const token = reading.all[i]!;
    return (
      token.is === 'number' &&
      Number.isInteger(token.value) &&
      token.value >= 1 &&
      token.value <= mostTrays &&
      reading.all[i - 1]?.plain === 'tray'
    );
  });
}

/** What empty trays weigh, g: all of them told anew, or some by their numbers, the others as before. */
export function taresTold(reading: Reading, names: Names): Tares | ((before: Before) => Tares) | undefined {
  const at = numbered(reading);
  const trays = at.map((i) => {
    const token = reading.all[i]!;
    return token.is === 'number' ? token.value : 0;
  });
  reading.take(...at);
  if (at.length > 0) reading.takeWords('tray', 'weight', 'weighs', 'tare');
  const grams = trayWeights.read(reading, names)?.map((g) => inRange('out-of-range', 'trayTareG', g));
  if (grams === undefined || at.length === 0) return grams;
  if (grams.length !== trays.length)
    throw new Refusal(
      'tray-count',
      `I read ${trays.map((no) => `tray ${no}`).join(', ')}, but ${grams.length} weights. One weight belongs to each: tray 3 weight 502 g.`,
    );
  return (before) => withTares(before, trays, grams);
}

/** @throws Refusal where nobody told how many trays there are, or what the others weigh */
function withTares({ trayTaresG, dryer }: Before, trays: readonly number[], grams: Tares): Tares {
  const [only] = trayTaresG;
  const count = trayTaresG.length > 1 ? trayTaresG.length : (dryer?.trays ?? 0);
  const beyond = trays.find((no) => no > count);
  if (only === undefined || count === 0)
    throw new Refusal(
      'others-unknown',
      `${only === undefined ? 'What the other trays weigh' : 'How many trays there are'} is not told yet. Tell all in their order: /house tray weight 512 498 505 510 g.`,
    );
  if (beyond !== undefined)
    throw new Refusal('no-such-tray', `There are ${count} trays; there is no tray ${beyond}.`);
  return Array.from({ length: count }, (_, i) => {
    const told = trays.lastIndexOf(i + 1);
    return told >= 0 ? grams[told]! : (trayTaresG[i] ?? only);
  });
}
