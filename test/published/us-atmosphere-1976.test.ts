import { test } from 'vitest';
import { pressurePa } from '#core/boiling.ts';
import { near } from './near.ts';

// Read in an open-source test that cites the publication, and (4500, 5000 m) from its troposphere formula as printed
// by UC Santa Cruz. Pa.
test.each([
  { row: 'g-atm-0', altitudeM: 0, published: 101325, withinFraction: 1e-5, witness: 'read' },
  { row: 'g-atm-500', altitudeM: 500, published: 95460.839342, withinFraction: 1e-5, witness: 'read' },
  { row: 'g-atm-1000', altitudeM: 1000, published: 89874.570502, withinFraction: 1e-5, witness: 'read' },
  { row: 'g-atm-1500', altitudeM: 1500, published: 84556.004841, withinFraction: 1e-5, witness: 'read' },
  { row: 'g-atm-2000', altitudeM: 2000, published: 79495.215511, withinFraction: 1e-5, witness: 'read' },
  { row: 'g-atm-2500', altitudeM: 2500, published: 74682.533661, withinFraction: 1e-5, witness: 'read' },
  { row: 'g-atm-3000', altitudeM: 3000, published: 70108.54467, withinFraction: 1e-5, witness: 'read' },
  { row: 'g-atm-3500', altitudeM: 3500, published: 65764.084371, withinFraction: 1e-5, witness: 'read' },
  { row: 'g-atm-4000', altitudeM: 4000, published: 61640.235304, withinFraction: 1e-5, witness: 'read' },
  { row: 'g-atm-4500', altitudeM: 4500, published: 57728.3, withinFraction: 2e-5, witness: 'read' },
  { row: 'g-atm-5000', altitudeM: 5000, published: 54019.9, withinFraction: 2e-5, witness: 'read' },
])('$row: $altitudeM m', ({ altitudeM, ...row }) => {
  near(pressurePa(altitudeM), row);
});
