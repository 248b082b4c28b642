import { test } from 'vitest';
import { boilingPointC } from '#core/boiling.ts';
import { fuelG, fusionKJPerKg, heatFromSnowKJ, heatToBoilKJ, waterHeatKJPerKgK } from '#core/fuel.ts';
import { near } from './near.ts';

// Engineering table of saturated water, 280 to 373.15 K (read), kJ/(kg K): one figure for all of it has to lie
// within 1 % of each that is printed.
test.each([
  { row: 'h-cp-280', published: 4.198, withinFraction: 0.002, witness: 'read' },
  { row: 'h-cp-300', published: 4.179, withinFraction: 0.002, witness: 'read' },
  { row: 'h-cp-330', published: 4.184, withinFraction: 0.002, witness: 'read' },
  { row: 'h-cp-350', published: 4.195, withinFraction: 0.002, witness: 'read' },
  { row: 'h-cp-373.15', published: 4.217, withinFraction: 0.002, witness: 'read' },
])('$row: one specific heat serves from cold water to the boil', (row) => {
  near(waterHeatKJPerKgK, { ...row, withinFraction: 0.01 });
});

// CRC Handbook, from memory, kJ/kg.
test('h-fusion', () => {
  near(fusionKJPerKg, { row: 'h-fusion', published: 333.6, withinFraction: 0.003, witness: 'from memory' });
});

// Worked from those figures.
test('h-heat-1kg: a litre from 10 to 100 °C', () => {
  near(heatToBoilKJ(1000, 10, 100), {
    row: 'h-heat-1kg',
    published: 377.1,
    withinFraction: 0.002,
    witness: 'read, worked',
  });
});

test('h-heat-snow: a kilogram of snow at 0 °C to 100 °C', () => {
  near(heatFromSnowKJ(1000, 100), {
    row: 'h-heat-snow',
    published: 752.6,
    withinFraction: 0.003,
    witness: 'from memory, worked',
  });
});

// Worked: heat to the boil at that altitude over efficiency and heating value.
test.each([
  {
    row: 'h-fuel-500-10-0-50-45.7',
    waterMl: 500,
    startC: 10,
    altitudeM: 0,
    efficiency: 0.5,
    lhv: 45.7,
    published: 8.25,
    withinFraction: 0.005,
    witness: 'read, worked',
  },
  {
    row: 'h-fuel-500-10-3000-50-45.7',
    waterMl: 500,
    startC: 10,
    altitudeM: 3000,
    efficiency: 0.5,
    lhv: 45.7,
    published: 7.33,
    withinFraction: 0.005,
    witness: 'read, worked',
  },
  {
    row: 'h-fuel-1000-5-1500-40-45.7',
    waterMl: 1000,
    startC: 5,
    altitudeM: 1500,
    efficiency: 0.4,
    lhv: 45.7,
    published: 20.63,
    withinFraction: 0.005,
    witness: 'read, worked',
  },
  {
    row: 'h-fuel-2000-15-0-45-26.945',
    waterMl: 2000,
    startC: 15,
    altitudeM: 0,
    efficiency: 0.45,
    lhv: 26.945,
    published: 58.73,
    withinFraction: 0.005,
    witness: 'read, worked',
  },
  {
    row: 'h-fuel-1500-2-2500-55-44.43',
    waterMl: 1500,
    startC: 2,
    altitudeM: 2500,
    efficiency: 0.55,
    lhv: 44.43,
    published: 23.06,
    withinFraction: 0.005,
    witness: 'read, worked',
  },
])('$row: $published g of fuel', ({ waterMl, startC, altitudeM, efficiency, lhv, ...row }) => {
  near(fuelG(heatToBoilKJ(waterMl, startC, boilingPointC(altitudeM)), efficiency, lhv), row);
});
