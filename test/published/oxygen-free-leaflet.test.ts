import { expect, test } from 'vitest';
import { oxygenFreeMostMoistureFraction } from '#core/balance.ts';

// Home storage leaflet (2007) warning of botulism above about 10 % moisture in reduced-oxygen packs, read in a copy
// (row d-o2free-max: 10 % wet basis). Not a government figure.
test('the outer limit of moisture for food packed without oxygen is 10 %', () => {
  expect(oxygenFreeMostMoistureFraction * 100).toBe(10);
});
