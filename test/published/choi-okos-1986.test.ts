import { test } from 'vitest';
import { componentDensity, freeAirMl, particleDensityGPerMl } from '#core/oxygen.ts';
import { near } from './near.ts';

// Choi & Okos 1986 as printed in ASHRAE Refrigeration, Thermal Properties of Foods; from memory, kg/m³.
test.each([
  { row: 'e-choi-water', component: 'water', published: 995.7, within: 0.5, witness: 'from memory' },
  { row: 'e-choi-protein', component: 'protein', published: 1319.5, within: 0.5, witness: 'from memory' },
  { row: 'e-choi-fat', component: 'fat', published: 917.2, within: 0.5, witness: 'from memory' },
  { row: 'e-choi-carb', component: 'carbohydrate', published: 1592.9, within: 0.5, witness: 'from memory' },
  { row: 'e-choi-fiber', component: 'fibre', published: 1304.2, within: 0.5, witness: 'from memory' },
  { row: 'e-choi-ash', component: 'ash', published: 2418.2, within: 0.5, witness: 'from memory' },
] as const)('$row: $component at 20 °C', ({ component, ...row }) => {
  near(componentDensity(20)[component], row);
});

// The same equations with SR28's composition per 100 g (read): water, protein, fat, carbohydrate, fibre, ash. g/ml.
test.each([
  {
    row: 'e-density-20044',
    food: 'rice',
    g: [11.62, 7.13, 0.66, 79.95, 1.3, 0.64],
    published: 1.461,
    withinFraction: 0.005,
    witness: 'from memory',
  },
  {
    row: 'e-density-20081',
    food: 'wheat flour',
    g: [11.92, 10.33, 0.98, 76.31, 2.7, 0.47],
    published: 1.442,
    withinFraction: 0.005,
    witness: 'from memory',
  },
  {
    row: 'e-density-01092',
    food: 'milk',
    g: [3.96, 35.1, 0.72, 52.19, 0, 8.03],
    published: 1.483,
    withinFraction: 0.005,
    witness: 'from memory',
  },
  {
    row: 'e-density-11931',
    food: 'peppers',
    g: [2, 17.9, 3, 68.7, 21.3, 8.4],
    published: 1.462,
    withinFraction: 0.005,
    witness: 'from memory',
  },
  {
    row: 'e-density-04053',
    food: 'oil',
    g: [0, 0, 100, 0, 0, 0],
    published: 0.917,
    withinFraction: 0.005,
    witness: 'from memory',
  },
])('$row: $food', ({ g, ...row }) => {
  const [waterG = 0, proteinG = 0, fatG = 0, carbohydrateG = 0, fibreG = 0, ashG = 0] = g;
  near(particleDensityGPerMl({ waterG, proteinG, fatG, carbohydrateG, fibreG, ashG }), row);
});

// SR28 household weights over the measure's exact volume (read), the density above (from memory): void fraction.
test.each([
  {
    row: 'e-void-flour',
    grams: 125,
    measureMl: 236.588,
    gPerMl: 1.442,
    published: 0.634,
    within: 0.006,
    witness: 'from memory, worked',
  },
  {
    row: 'e-void-rice',
    grams: 185,
    measureMl: 236.588,
    gPerMl: 1.461,
    published: 0.465,
    within: 0.006,
    witness: 'from memory, worked',
  },
  {
    row: 'e-void-fd-red-pepper',
    grams: 1.6,
    measureMl: 59.147,
    gPerMl: 1.462,
    published: 0.981,
    within: 0.006,
    witness: 'from memory, worked',
  },
  {
    row: 'e-void-fd-parsley',
    grams: 1.4,
    measureMl: 59.147,
    gPerMl: 1.419,
    published: 0.983,
    within: 0.006,
    witness: 'from memory, worked',
  },
])('$row: what is air in a measure of it', ({ grams, measureMl, gPerMl, ...row }) => {
  near(freeAirMl(measureMl, grams, gPerMl) / measureMl, row);
});

// J. Food Eng. 2015;159:36-41, Table 5 (read): measured density of soybean oil and tomato paste, within 5 %. The oil's
// composition is pure fat; the paste's is SR28 11546 (water 73.5, protein 4.32, fat 0.47, carbohydrate 18.91, fibre
// 4.1, ash 2.8; fibre and ash from memory).
test.each([
  {
    row: 'e-meas-soybean-oil',
    published: 0.925,
    withinFraction: 0.05,
    witness: 'read',
    g: [0, 0, 100, 0, 0, 0],
  },
  {
    row: 'e-meas-tomato-paste',
    published: 1.095,
    withinFraction: 0.05,
    witness: 'read',
    g: [73.5, 4.32, 0.47, 18.91, 4.1, 2.8],
  },
])('$row: equations against a measurement', ({ g, ...row }) => {
  const [waterG = 0, proteinG = 0, fatG = 0, carbohydrateG = 0, fibreG = 0, ashG = 0] = g;
  near(particleDensityGPerMl({ waterG, proteinG, fatG, carbohydrateG, fibreG, ashG }), row);
});
