import { gasConstant } from './bestby.ts';
import { between } from './within.ts';

/** Soaking of air-dried Boletus speeds up with warmth by this activation energy, kJ/mol. @source boletus-2005 */
const soakingKJPerMol = 19.2;

/**
 * How much longer food soaks in cooler water than at 100 °C.
 * @param tempC of the water, °C, 0 to 100
 * @returns times as long, 1 and more
 * @throws Refusal 'impossible-temperature'
 * @source boletus-2005
 */
export function soakFactor(tempC: number): number {
  between('impossible-temperature', "The water's temperature", tempC, 0, 100, '°C');
  const perKelvin = 1 / (tempC + 273.15) - 1 / 373.15;
  return Math.exp(((soakingKJPerMol * 1000) / gasConstant) * perKelvin);
}

/** Minutes in boiling water at sea level. Common practice, no source. */
const baseMinutes = 15;
/** Pieces are soft later than what is chopped small, min. Chosen. */
export const pieceMinutes = 5;
/** What ratings may take off or add, min. Chosen. */
const [leastExtraMin, mostExtraMin] = [-10, 30];

/**
 * Minutes to let a pouch stand: a quarter of an hour, and a minute for each degree that water boils below 100 °C, which
 * is more than the published factor asks for. Common practice, no source.
 * @param boilC where the water boils, °C
 * @param extraMin for pieces, or learnt from ratings
 * @returns whole minutes
 */
export function soakMinutes(boilC: number, extraMin = 0): number {
  return Math.round(baseMinutes + extraMin + Math.max(0, 100 - boilC));
}

/**
 * Minutes in cold water.
 * @returns whole minutes, to the next 5
 * @source boletus-2005
 */
export function coldSoakMinutes(waterC: number, extraMin = 0): number {
  return Math.ceil(((baseMinutes + extraMin) * soakFactor(waterC)) / 5) * 5;
}

/** Words of a line that tell of pieces. Common practice, no source. */
const pieceWords = /\b(?:chunks?|cubes?|cubed|pieces?|bite|florets?|halves|strips?)\b/i;

/** Whether a recipe's lines speak of pieces. */
export const hasPieces = (typed: readonly string[]): boolean => typed.some((line) => pieceWords.test(line));

/** How much longer a meal stands than the base, by what was said of it: one figure an evening, each counts twice the one before. */
export function learntExtraMin(rightExtraMin: readonly number[]): number {
  let weighted = 0;
  let weights = 0;
  for (const minutes of rightExtraMin) {
    weighted = weighted / 2 + minutes;
    weights = weights / 2 + 1;
  }
  const mean = weights === 0 ? 0 : weighted / weights;
  return Math.min(mostExtraMin, Math.max(leastExtraMin, mean));
}
