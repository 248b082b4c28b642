import { inRange } from './ranges.ts';
import { between } from './within.ts';

/** The atmosphere at sea level, Pa. @source us-atmosphere-1976 */
export const seaLevelPa = 101_325;

const seaLevelK = 288.15;
const lapseKPerM = 0.0065;
/** g₀·M / (R*·L) with the constants of 1976: 9.80665, 28.9644, 8314.32, 0.0065. */
const exponent = (9.80665 * 28.9644) / (8314.32 * lapseKPerM);

/**
 * Air pressure at an altitude on a standard day. Weather moves it by about 2 kPa either way. Altitude is geopotential;
 * below 5500 m it differs from a map's by less than 5 m.
 * @param altitudeM m, −500 to 5500
 * @returns Pa
 * @throws Refusal 'impossible-altitude'
 * @source us-atmosphere-1976
 */
export function pressurePa(altitudeM: number): number {
  inRange('impossible-altitude', 'altitudeM', altitudeM);
  return seaLevelPa * (1 - (lapseKPerM * altitudeM) / seaLevelK) ** exponent;
}

/** Coefficients n₁ to n₁₀ of region 4. @source iapws-if97 */
const n1 = 0.11670521452767e4;
const n2 = -0.72421316703206e6;
const n3 = -0.17073846940092e2;
const n4 = 0.1202082470247e5;
const n5 = -0.32325550322333e7;
const n6 = 0.1491510861353e2;
const n7 = -0.48232657361591e4;
const n8 = 0.40511340542057e6;
const n9 = -0.23855557567849;
const n10 = 0.65017534844798e3;

/**
 * Temperature at which water boils under a pressure: the backward equation of region 4.
 * @param pressureMPa MPa, 0.000611213 to 22.064
 * @returns K
 * @throws Refusal 'impossible-pressure'
 * @source iapws-if97
 */
export function boilingPointK(pressureMPa: number): number {
  between('impossible-pressure', 'The pressure', pressureMPa, 0.000611213, 22.064, 'MPa');
  const beta = pressureMPa ** 0.25;
  const e = beta ** 2 + n3 * beta + n6;
  const f = n1 * beta ** 2 + n4 * beta + n7;
  const g = n2 * beta ** 2 + n5 * beta + n8;
  const d = (2 * g) / (-f - Math.sqrt(f ** 2 - 4 * e * g));
  return (n10 + d - Math.sqrt((n10 + d) ** 2 - 4 * (n9 + n10 * d))) / 2;
}

/**
 * Boiling point of water at an altitude on a standard day; weather moves it by about 0.6 °C.
 * @param altitudeM m, −500 to 5500
 * @returns °C
 * @throws Refusal 'impossible-altitude'
 * @source iapws-if97
 */
export function boilingPointC(altitudeM: number): number {
  return boilingPointK(pressurePa(altitudeM) / 1e6) - 273.15;
}
