import { expect, test } from 'vitest';
import { energyOf, kjPerKcal, type Panel, panelFigures, saltPerSodium } from '#core/panel.ts';
import { readPanel } from '#words/panel-parts.ts';

const none: Panel = {
  ofG: 100,
  carbohydrateHoldsFibre: false,
  kcal: null,
  fatG: 0,
  carbohydrateG: 0,
  fibreG: 0,
  proteinG: 0,
  sodiumMg: 0,
};

// Annex XIV: carbohydrate and protein 4 kcal/g, fat 9, fibre 2; and 17, 37 and 8 kJ/g.
test.each([
  ['carbohydrateG', 4, 17],
  ['proteinG', 4, 17],
  ['fatG', 9, 37],
  ['fibreG', 2, 8],
] as const)('1 g %s is %i kcal, %i kJ', (key, kcal, kj) => {
  expect(energyOf({ ...none, [key]: 1 })).toBe(kcal);
  // The Regulation rounds its kJ to whole ones.
  expect(Math.abs(kcal * kjPerKcal - kj)).toBeLessThan(1);
});

// Annex I: salt = sodium × 2.5.
test('salt is sodium times 2.5', () => {
  expect(saltPerSodium).toBe(2.5);
  expect(
    readPanel('stock per 100 g: energy 10 kcal, fat 0 g, carbohydrate 1 g, protein 1 g, salt 2.5 g').panel
      .sodiumMg,
  ).toBe(1000);
});

// Annex XV: energy, fat, of which saturates, mono-, polyunsaturates, carbohydrate, of which sugars, polyols, starch,
// fibre, protein, salt, vitamins and minerals. The figures are of our own invention.
const annexXv = `stock cube
Nutrition information per 100 g
Energy 1142 kJ/275 kcal
Fat 20 g
of which saturates 12 g
mono-unsaturates 5 g
polyunsaturates 2 g
Carbohydrate 14 g
of which sugars 5,1 g
polyols 0 g
starch 8 g
Fibre 0,5 g
Protein 8 g
Salt 48 g
Potassium 300 mg`;

test('the order of Annex XV is read back; carbohydrate there is without its fibre', () => {
  const { panel, food } = readPanel(annexXv);
  expect(food).toBe('stock cube');
  expect(panel).toEqual({
    ofG: 100,
    carbohydrateHoldsFibre: false,
    kcal: 275,
    fatG: 20,
    carbohydrateG: 14,
    fibreG: 0.5,
    proteinG: 8,
    sodiumMg: 19_200,
  });
  const { per100, waterG } = panelFigures(panel);
  expect(per100.carbohydrateG).toBe(14.5);
  expect(per100.waterG).toBeCloseTo(100 - 20 - 14.5 - 8 - 48, 9);
  expect(waterG[0]).toBeLessThanOrEqual(per100.waterG!);
  expect(waterG[1]).toBeGreaterThanOrEqual(per100.waterG!);
});

// 21 CFR 101.9(d)(12), the sample label; figures from memory.
const sample = `granola
Nutrition Facts
8 servings per container
Serving size 2/3 cup (55g)
Amount per serving
Calories 230
% Daily Value*
Total Fat 8g 10%
Saturated Fat 1g 5%
Trans Fat 0g
Cholesterol 0mg 0%
Sodium 160mg 7%
Total Carbohydrate 37g 13%
Dietary Fiber 4g 14%
Total Sugars 12g
Includes 10g Added Sugars 20%
Protein 3g
Vitamin D 2mcg 10%
Calcium 260mg 20%
Iron 8mg 45%
Potassium 240mg 6%`;

test('the U.S. sample label is read back; carbohydrate there holds its fibre', () => {
  const { panel } = readPanel(sample);
  expect(panel).toEqual({
    ofG: 55,
    carbohydrateHoldsFibre: true,
    kcal: 230,
    fatG: 8,
    carbohydrateG: 37,
    fibreG: 4,
    proteinG: 3,
    sodiumMg: 160,
  });
  const { per100 } = panelFigures(panel);
  expect(per100.kcal).toBeCloseTo((230 / 55) * 100, 9);
  expect(per100.waterG).toBeCloseTo(100 - ((8 + 37 + 3 + 0.4) * 100) / 55, 6);
});
