/** All parts a request may take, from one place. */
export * from './part.ts';
export * from './codes.ts';
export * from './weights.ts';
export * from './counts.ts';
export * from './lengths.ts';
export * from './named.ts';
