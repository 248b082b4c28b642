import type { TalkRow } from './row.ts';

/** Hygrometers, meters and prices. */
export const measuredRows: readonly TalkRow[] = [
  ['the hygrometer in the jar with B4 shows 70 %', 'weigh', 'does', 'damp'],
  ['humidity of B4 is 24 percent', 'weigh', 'does', '24 %'],
  ['does the hygrometer of B4 show 22 %?', 'pouch|isdry|weigh', 'answers|offers'],
  ['the meter shows 4521.3 kWh', 'dryer', 'does', '4521.3 kWh'],
  ['meter reads 4521', 'dryer', 'does'],
  ['maybe the meter shows 4521 kWh', 'dryer', 'offers'],
  ['red lentils cost 3.20 a kilo', 'prices', 'does', '3.20 a kg'],
  ['10 eggs were €2.40', 'prices', 'does', '4.80 EUR a kg'],
  ['red lentils 3.20 EUR per kg', 'prices', 'does'],
  ['what do lentils cost?', 'cost', 'answers'],
  ['what does B4-2 cost', 'cost', 'answers'],
  ['our dryer is 1100 W', 'house', 'does', '1100 W'],
  ['the thickest piece of B2 is crisp right through', 'weigh', 'does', 'crisp'],
];

/** Meals of a trip that are had elsewhere, or change places. Nothing is kept in the season's plan yet. */
export const planRows: readonly TalkRow[] = [
  ['dinner at the restaurant on sunday', 'trip', 'does', '3 meals'],
  ['we are eating out on sunday evening', 'trip', 'does', '3 meals'],
  ['we eat out on sunday', 'trip', 'nothing', 'Which meals'],
  ['do we eat out on sunday?', 'trip|dinner|history|log', 'answers|offers'],
  ['swap saturday and sunday', 'exchange', 'nothing', 'Nothing is kept'],
  ['should we swap saturday and sunday?', 'exchange', 'nothing|answers|offers'],
];
