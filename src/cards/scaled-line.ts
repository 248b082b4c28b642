import type { RecipeLine } from '#core/records.ts';
import { kitchenMeasureMl } from '#core/measures.ts';
import type { Settings } from '#core/settings.ts';
import { campTold } from '#foods/camp.ts';
import { type Amount, readLine } from '#foods/read.ts';
import { sayG, sayNumber } from '#words/say.ts';

/** A recipe's line, more or less of it. */
export interface ScaledLine {
  readonly called: string;
  readonly text: string;
  /** What was rounded to the half of a piece, as it comes out: 'carrots 8.62'. */
  readonly exact?: string;
  /** What rounding to a measure adds or takes away, g, and as a share of the line. */
  readonly costG: number;
  readonly costFraction: number;
}

/** A line in grams, and where it was typed by measure or by piece, in those as well. */
export function scaledLine(line: RecipeLine, times: number, settings: Settings): ScaledLine {
  const plain = { called: line.called, costG: 0, costFraction: 0 };
  if (line.state === 'asked') return { ...plain, text: `${line.typed}: not understood, so not scaled` };
  if (line.state === 'uncounted' || line.grams === null) return { ...plain, text: line.typed };
  const grams = line.grams * times;
  const where = line.camp === null ? '' : ' at camp';
  const measured = inMeasures(line, times, settings);
  if (!measured) return { ...plain, text: `${sayG(grams, settings.units)} ${line.called}${where}` };
  return {
    called: line.called,
    text: `${sayG(grams, settings.units)} ${line.called}${where}: ${measured.words}`,
    ...(measured.exact === undefined ? {} : { exact: `${line.called} ${sayNumber(measured.exact)}` }),
    costG: grams * measured.costFraction,
    costFraction: measured.costFraction,
  };
}

/** '4 tins of 400 g'; of a part of one its share. */
function inTins(count: number, unit: string, { value, unit: of }: Amount): string {
  const size = of?.grams === undefined && of?.ml === undefined ? '' : ` of ${sayNumber(value)} ${of.name}`;
  return `${sayNumber(Math.round(count * 100) / 100)} ${unit}${count > 1 && !unit.endsWith('s') ? 's' : ''}${size}`;
}

function inMeasures(
  line: RecipeLine,
  times: number,
  settings: Settings,
): { words: string; costFraction: number; exact?: number } | undefined {
  const { amounts, factor, each } = readLine(campTold(line.typed).rest);
  // What is told for each serving is given by weight.
  const [count] = amounts;
  if (count === undefined || line.camp === 'each') return undefined;
  // What is bought by the tin stays tins; the grams beside say how much of the last one.
  if (each !== null && count.unit?.holds)
    return { words: inTins(count.value * times, count.unit.name, each), costFraction: 0 };
  if (each !== null) return undefined;
  if (amounts.every((amount) => amount.unit?.ml !== undefined)) {
    const { cupMl } = settings;
    const mlOf = (unit: (typeof amounts)[number]['unit']) => (unit?.name === 'cup' ? cupMl : (unit?.ml ?? 0));
    const ml = amounts.reduce((sum, { value, unit }) => sum + value * mlOf(unit), 0) * factor * times;
    const measure = kitchenMeasureMl(ml, cupMl);
    if (!measure) return undefined;
    const count = `${measure.whole > 0 ? measure.whole : ''}${measure.fractionText}`;
    const plural = measure.of === 'cup' && measure.whole + measure.fraction > 1 ? 'cups' : measure.of;
    return { words: `${count} ${plural}`, costFraction: measure.costFraction };
  }
  const [only] = amounts;
  if (amounts.length !== 1 || !only || only.unit?.grams !== undefined) return undefined;
  const exact = only.value * times;
  const halves = Math.max(1, Math.round(exact * 2)) / 2;
  const unit = only.unit?.name ?? '';
  const word = unit === '' ? '' : ` ${unit}${halves > 1 && !unit.endsWith('s') ? 's' : ''}`;
  const isRounded = Math.abs(halves - exact) > 0.005;
  const said = `${Math.floor(halves) || ''}${halves % 1 === 0 ? '' : '½'}`;
  return {
    words: `${said}${word}`,
    costFraction: (halves - exact) / exact,
    ...(isRounded ? { exact } : {}),
  };
}
