import { test } from 'vitest';
import { boilingPointC, boilingPointK } from '#core/boiling.ts';
import { fFromCelsius, lengthM } from '#core/units.ts';
import { near } from './near.ts';

// IAPWS R7-97(2012), Table 36: saturation temperature, read in open-source test suites that cite the table.
test.each([
  { row: 'g-if97-ts-0.1', pressureMPa: 0.1, published: 372.755919, within: 1e-6, witness: 'read' },
  { row: 'g-if97-ts-1', pressureMPa: 1, published: 453.035632, within: 1e-6, witness: 'read' },
  { row: 'g-if97-ts-10', pressureMPa: 10, published: 584.149488, within: 1e-6, witness: 'read' },
])('$row: $pressureMPa MPa boils at $published K', ({ pressureMPa, ...row }) => {
  near(boilingPointK(pressureMPa), row);
});

// Worked from the same equation; not exactly 100.
test('g-1atm', () => {
  near(boilingPointK(0.101325) - 273.15, {
    row: 'g-1atm',
    published: 99.974,
    within: 0.002,
    witness: 'read, worked',
  });
});

// Worked: U.S. Standard Atmosphere 1976 put into the backward equation.
test.each([
  { row: 'g-boil-0', altitudeM: 0, published: 99.97, within: 0.05, witness: 'read, worked' },
  { row: 'g-boil-500', altitudeM: 500, published: 98.31, within: 0.05, witness: 'read, worked' },
  { row: 'g-boil-1000', altitudeM: 1000, published: 96.65, within: 0.05, witness: 'read, worked' },
  { row: 'g-boil-1500', altitudeM: 1500, published: 94.98, within: 0.05, witness: 'read, worked' },
  { row: 'g-boil-2000', altitudeM: 2000, published: 93.32, within: 0.05, witness: 'read, worked' },
  { row: 'g-boil-2500', altitudeM: 2500, published: 91.64, within: 0.05, witness: 'read, worked' },
  { row: 'g-boil-3000', altitudeM: 3000, published: 89.97, within: 0.05, witness: 'read, worked' },
  { row: 'g-boil-3500', altitudeM: 3500, published: 88.3, within: 0.05, witness: 'read, worked' },
  { row: 'g-boil-4000', altitudeM: 4000, published: 86.62, within: 0.05, witness: 'read, worked' },
  { row: 'g-boil-4500', altitudeM: 4500, published: 84.94, within: 0.05, witness: 'read, worked' },
  { row: 'g-boil-5000', altitudeM: 5000, published: 83.25, within: 0.05, witness: 'read, worked' },
])('$row: $altitudeM m boils at $published °C', ({ altitudeM, ...row }) => {
  near(boilingPointC(altitudeM), row);
});

// Colorado State University; USDA FSIS; a table credited to NOAA (all read): printed tables, checked to their rounding.
test.each([
  { row: 'g-csu-5000ft', altitudeFt: 5000, published: 203, within: 0.6, witness: 'read' },
  { row: 'g-csu-0ft', altitudeFt: 0, published: 212, within: 0.3, witness: 'read' },
  { row: 'g-fsis-2000ft', altitudeFt: 2000, published: 208, within: 0.6, witness: 'read' },
  { row: 'g-noaa-1000ft', altitudeFt: 1000, published: 210.2, within: 0.6, witness: 'read' },
  { row: 'g-noaa-8000ft', altitudeFt: 8000, published: 197.4, within: 0.6, witness: 'read' },
  { row: 'g-noaa-10000ft', altitudeFt: 10000, published: 193.6, within: 0.6, witness: 'read' },
  { row: 'g-noaa-14000ft', altitudeFt: 14000, published: 185.9, within: 0.6, witness: 'read' },
])('$row: $altitudeFt ft boils at $published °F', ({ altitudeFt, ...row }) => {
  near(fFromCelsius(boilingPointC(altitudeFt * lengthM('ft'))), row);
});
