/** Tries of a law: all of them in the long ring, a fifth where the answer is waited for. */
export const tries = (all: number): number => (process.env['RING'] === 'all' ? all : Math.ceil(all / 5));
