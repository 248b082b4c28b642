/** Every publication a figure rests on, once: key → citation. Docblocks name the key as `@source key`. */
export const sources = {
  'usda-sr28': 'USDA National Nutrient Database for Standard Reference, Release 28 (2015)',
} as const;

export type SourceKey = keyof typeof sources;
