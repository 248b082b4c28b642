/** Numbers from 0 to 1 that look random and are the same for the same seed (mulberry32). */
export function chance(seed: number): () => number {
  let state = seed >>> 0;
  return () => {
    state = (state + 0x6d2b79f5) >>> 0;
    let mixed = Math.imul(state ^ (state >>> 15), state | 1);
    mixed ^= mixed + Math.imul(mixed ^ (mixed >>> 7), mixed | 61);
    return ((mixed ^ (mixed >>> 14)) >>> 0) / 4_294_967_296;
  };
}

/** The number behind '--name' on the command line. */
export function told(name: string, otherwise: number): number {
  const at = process.argv.indexOf(`--${name}`);
  const value = Number(process.argv[at + 1]);
  return at < 0 || !Number.isFinite(value) ? otherwise : value;
}
