import type { Names } from '#words/parts.ts';
import { at } from './case.ts';

/** The season's names, as the household knows them. */
export const seasonNames: Names = {
  meals: ['Barley soup', 'Lentil pot', 'Rice and beans'],
  otherNames: new Map(),
  eaters: ['Ana', 'Ben', 'Noa', 'Rosa'],
  eatenOf: () => [],
  drying: [],
  pouchKinds: [],
  earlier: [],
  batchesOf: () => [4],
  pouchesOf: () => [{ batch: 4, no: 2 }],
  trips: ['Heron Lake'],
  tripDays: () => ({ startsOn: '2027-06-12', endsOn: '2027-06-14' }),
  me: 'Ana',
  nowMs: at('2027-04-03T14:00'),
  zone: 'UTC',
};
