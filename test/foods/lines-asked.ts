import type { LineCase } from './line-case.ts';

/** Lines that must be asked about. */
export const asked: readonly LineCase[] = [
  ['1,500 g potatoes', null, '11352', 'two readings: 1500 or 1.5'],
  ['1.500 kg flour', null, '20081', 'two readings: 1.5 or 1500'],
  ['1 500 g flour', null, '20081', 'two readings: one of 500, or 1500'],
  ['-5 g salt', null, '02047', 'below zero'],
  ['5 flurbs of gronk', null, null, 'no such food'],
  ['asdf', null, null, 'no such food'],
  ['2 cups', null, null, 'no food named'],
  ['12', null, null, 'no food named'],
  ['1 cup carrots and celery', null, null, 'two foods, one amount'],
  ['1 onion and 2 carrots', null, null, 'two foods on one line'],
  ['1 cup vegan lobster', null, null, 'an imitation no table knows'],
  ['3 chocolate peanut clusters', null, null, 'no such food'],
  ['Preheat the oven to 180', null, null, 'no ingredient'],
  ['1 mug of rice', null, '20044', 'a measure nobody defined'],
  ['2 mugs of onions', null, '11282', 'a measure nobody defined'],
];
