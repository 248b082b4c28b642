/**
 * Minutes to let a pouch stand: a quarter of an hour, and a minute for each degree that water boils below 100 °C.
 * Common practice, no source.
 * @param boilC where the water boils, °C
 * @returns whole minutes
 */
export function soakMinutes(boilC: number): number {
  return Math.round(15 + Math.max(0, 100 - boilC));
}
