import { describe, expect, test } from 'vitest';
import {
  balanceOf,
  batchFacts,
  checkWeights,
  dryVerdictOf,
  expectedMlPerDryG,
  isRefusedNow,
  pouchFacts,
  recipeFacts,
  steadinessOf,
  weighedThroughAtMs,
} from '#core/meal.ts';
import type { Batch, Recipe, RecipeLine, Weighing } from '#core/records.ts';
import { defaultSettings } from '#core/settings.ts';
import type { Per100 } from '#core/solids.ts';

// Witness: mass is neither made nor lost. The two foods are invented so that every figure can be worked by hand: 100 g of
// grain hold 10 g of water, 350 kcal, 20 g of fat and 50 mg of sodium; broth is 100 g of water with 300 mg of sodium.
const grain: Per100 = {
  waterG: 10,
  kcal: 350,
  proteinG: 10,
  fatG: 20,
  carbohydrateG: 58,
  fibreG: 8,
  ashG: 2,
  sodiumMg: 50,
};
const broth: Per100 = {
  waterG: 100,
  kcal: 0,
  proteinG: 0,
  fatG: 0,
  carbohydrateG: 0,
  fibreG: 0,
  ashG: 0,
  sodiumMg: 300,
};
const composer = (ndb: string) => ({ grain, broth })[ndb];

const line = (called: string, grams: number | null, more: Partial<RecipeLine> = {}): RecipeLine => ({
  typed: `${grams ?? ''} g ${called}`,
  state: 'weighed',
  called,
  ndb: called,
  grams,
  contents: null,
  named: [],
  remarks: [],
  question: null,
  section: null,
  camp: null,
  ...more,
});

/** 400 g of grain and 1600 g of broth: 2000 g with 360 g of solids, 80 g of fat, 1400 kcal and 5000 mg of sodium. */
const porridge: Recipe = {
  id: 1,
  name: 'Porridge',
  servings: 8,
  potG: null,
  method: '',
  eaten: null,
  mentions: [],
  lines: [line('grain', 400), line('broth', 1600)],
};
const hourMs = 3_600_000;
const weighed = (hours: number, ...netG: number[]): Weighing[] =>
  netG.map((g, i) => ({ trayNo: i + 1, atMs: hours * hourMs, netG: g }));
const all = (hours: number, netG: number): Weighing => ({ trayNo: 0, atMs: hours * hourMs, netG });

const loaded = (more: Partial<Batch> = {}): Batch => ({
  id: 1,
  no: 4,
  recipe: porridge,
  factor: 1,
  potG: null,
  loadedAtMs: 0,
  isRaw: false,
  trays: [
    { no: 1, tareG: 0, wetG: 1000 },
    { no: 2, tareG: 0, wetG: 1000 },
  ],
  weighings: [],
  witnesses: [],
  events: [],
  rest: [],
  mix: null,
  ...more,
});
const factsOf = (batch: Batch) => batchFacts(batch, composer, defaultSettings);
const dried = (dryG: number, more: Partial<Batch> = {}) =>
  loaded({ weighings: [...weighed(20, dryG / 2, dryG / 2), ...weighed(23, dryG / 2, dryG / 2)], ...more });
const verdictOf = (batch: Batch) => dryVerdictOf(batch, factsOf(batch), defaultSettings);

describe('a recipe', () => {
  test('in figures', () => {
    expect(recipeFacts(porridge, composer)).toMatchObject({
      totals: { massG: 2000, waterG: 1640, solidsG: 360, kcal: 1400, fatG: 80, sodiumMg: 5000 },
      sodiumOf: [200, 4800],
      unresolved: [],
      uncounted: [],
      finishedG: 2000,
      boiledAwayG: 0,
    });
  });
  test('its pot tells what boiled away, or was taken up', () => {
    expect(recipeFacts({ ...porridge, potG: 1800 }, composer)).toMatchObject({
      finishedG: 1800,
      boiledAwayG: 200,
    });
    expect(recipeFacts({ ...porridge, potG: 2050 }, composer).boiledAwayG).toBe(-50);
  });
  test('lines without amount or meaning count as zero and are named', () => {
    const salt = line('salt', null, { state: 'uncounted' });
    const unread = line('flurb', 500, { state: 'asked', ndb: null });
    const facts = recipeFacts({ ...porridge, lines: [...porridge.lines, salt, unread] }, composer);
    expect(facts.totals.massG).toBe(2000);
    expect(facts.sodiumOf).toEqual([200, 4800, 0, 0]);
    expect(facts.uncounted).toEqual([salt]);
    expect(facts.unresolved).toEqual([unread]);
  });
  test('predicts water for each gram: (2000 − 360 / 0.97) / (360 / 0.97)', () => {
    expect(expectedMlPerDryG(recipeFacts(porridge, composer), 0.03)).toBeCloseTo(4.388889, 6);
    const onlyBroth = { ...porridge, lines: [line('broth', 1600)] };
    expect(expectedMlPerDryG(recipeFacts(onlyBroth, composer), 0.03)).toBeUndefined();
    // 400 g of grain alone, dried to 12 % of water, would weigh 409 g: there is nothing to remove.
    const onlyGrain = { ...porridge, lines: [line('grain', 400)] };
    expect(expectedMlPerDryG(recipeFacts(onlyGrain, composer), 0.12)).toBeUndefined();
  });
});

describe('a batch', () => {
  test('of the whole pot', () => {
    expect(factsOf(loaded())).toMatchObject({
      wetG: 2000,
      servings: 8,
      totals: { solidsG: 360 },
      dryG: null,
      lastWeighedAtMs: null,
    });
    expect(factsOf(loaded()).expectedDryG).toBeCloseTo(360 / 0.97, 9);
  });
  test('of a part of a pot cooked one and a half times: 2000 of 2500 g', () => {
    // 1.5 x 0.8 = 1.2 times what the lines name, servings too.
    const facts = factsOf(loaded({ factor: 1.5, potG: 2500 }));
    expect(facts.totals.solidsG).toBeCloseTo(432, 9);
    expect(facts.totals.sodiumMg).toBeCloseTo(6000, 9);
    expect(facts.servings).toBeCloseTo(9.6, 9);
  });
  test('whose solids are not known has no prediction', () => {
    const recipe = { ...porridge, lines: [line('broth', 1600)] };
    expect(factsOf(loaded({ recipe })).expectedDryG).toBeNull();
  });
});

describe('the weight of the whole batch', () => {
  test.each([
    ['tray by tray', weighed(20, 190, 191), 381],
    ['only one tray', weighed(20, 190), null],
    ['one tray again', [...weighed(20, 190, 191), ...weighed(21, 185)], 376],
    ['all together later', [...weighed(20, 190, 191), all(21, 378)], 378],
    ['all together first, then tray by tray', [all(20, 400), ...weighed(21, 190, 191)], 381],
    ['all together twice', [all(20, 400), all(23, 380)], 380],
    ['all together twice, one tray between', [all(20, 400), ...weighed(21, 190), all(23, 380)], 380],
    ['all together, then one tray alone', [all(20, 400), ...weighed(21, 190)], 400],
    ['trays, all together, one tray', [...weighed(19, 200, 200), all(20, 395), ...weighed(21, 190)], 395],
  ])('%s', (_, weighings, g) => expect(factsOf(loaded({ weighings })).dryG).toBe(g));
});

describe('weighings of one moment', () => {
  test('are one check weight', () => {
    expect(checkWeights(loaded({ weighings: weighed(20, 190, 191) }))).toEqual([
      { atMs: 20 * hourMs, trays: [190, 191] },
    ]);
  });
  test('but a tray that comes twice was weighed again, and all together stands alone', () => {
    const weighings = [...weighed(20, 190), ...weighed(20, 191), all(20, 380), all(20, 381)];
    expect(checkWeights(loaded({ weighings })).map(({ trays }) => trays)).toEqual([
      [190, null],
      [191, null],
      380,
      381,
    ]);
  });
  test("are judged by the house's own scale and gap", () => {
    const batch = loaded({ weighings: [...weighed(20, 190, 190), ...weighed(22, 190, 190)] });
    expect(steadinessOf(batch, defaultSettings).is).toBe('steady');
    expect(steadinessOf(batch, { ...defaultSettings, steadyGapHours: 3 })).toMatchObject({
      why: 'too close',
    });
    // (1 g + 5 g) / (1 g + 1 g) of 2 h.
    expect(steadinessOf(batch, { ...defaultSettings, scaleG: 5 })).toMatchObject({
      why: 'too close',
      neededGapHours: 6,
    });
  });
});

describe('a pouch', () => {
  test('is its part of the batch by dry weight: 93 of 372 g is a quarter', () => {
    const facts = { ...factsOf(dried(372)), dryG: 372 };
    expect(pouchFacts(93, facts)).toMatchObject({ servings: 2, kcal: 350, sodiumMg: 1250 });
    expect(pouchFacts(93, facts).waterMl).toBeCloseTo(407, 9);
    expect(pouchFacts(93, facts, 1.1).waterMl).toBeCloseTo(447.7, 9);
  });
});

describe('dry or not', () => {
  test('the balance takes the batch as it is: wet, dry, solids and fat on the trays', () => {
    expect(balanceOf(factsOf(loaded()))).toBeUndefined();
    expect(balanceOf(factsOf(dried(372)))).toEqual({ wetG: 2000, dryG: 372, solidsG: 360, fatG: 80 });
    expect(balanceOf(factsOf(dried(372, { potG: 4000 })))).toMatchObject({ solidsG: 180, fatG: 40 });
  });
  // (D − 378) / (D − 80) > 10 %: the limit is 411.1 g.
  test.each([
    [372, 'dry', undefined],
    [411, 'dry', undefined],
    [412, 'not dry', 'wet by balance'],
    [1990, 'not dry', 'wet by balance'],
  ])('%f g, twice the same: %s', (dryG, is, because) => {
    expect(verdictOf(dried(dryG))).toMatchObject(because === undefined ? { is } : { is, because });
    expect(isRefusedNow(dried(dryG), factsOf(dried(dryG)))).toBe(is !== 'dry');
  });
  test('a line that could not be read does not switch the balance off', () => {
    const recipe = { ...porridge, lines: [line('grain', 400, { state: 'asked' }), line('broth', 1600)] };
    expect(verdictOf(dried(1990, { recipe }))).toMatchObject({ because: 'wet by balance' });
    expect(verdictOf(dried(372, { recipe }))).toMatchObject({ because: 'wet by balance' });
  });
  test('nor does a recipe without any solids', () => {
    const recipe = { ...porridge, lines: [line('broth', 1600)] };
    expect(verdictOf(dried(372, { recipe }))).toMatchObject({ because: 'wet by balance' });
  });
  test('a pot weighed later may refuse what was dry: half of it holds half of the solids', () => {
    const batch = dried(372, { potG: 4000 });
    expect(isRefusedNow(batch, factsOf(batch))).toBe(true);
  });
  test('a batch that was not weighed whole is refused', () => {
    const batch = loaded({ weighings: weighed(20, 190) });
    expect(isRefusedNow(batch, factsOf(batch))).toBe(true);
    expect(verdictOf(batch)).toMatchObject({ because: 'not steady' });
  });
  test('a jar and a word since the last weighing count, those before it do not', () => {
    const witnesses = (hours: number): Batch['witnesses'] => [
      { atMs: hours * hourMs, by: 'Ben', humidityPercent: 24 },
      { atMs: hours * hourMs, by: 'Ana', words: 'six pieces opened' },
    ];
    expect(verdictOf(dried(440, { witnesses: witnesses(23) }))).toMatchObject({ is: 'dry' });
    expect(verdictOf(dried(440, { witnesses: witnesses(22) }))).toMatchObject({ is: 'not dry' });
    expect(isRefusedNow(dried(440, { witnesses: witnesses(23) }), factsOf(dried(440)))).toBe(false);
  });
});

test('weighed through is when the tray weighed longest ago was weighed last', () => {
  expect(weighedThroughAtMs(loaded())).toBeNull();
  expect(weighedThroughAtMs(loaded({ weighings: weighed(20, 190) }))).toBeNull();
  expect(weighedThroughAtMs(dried(372))).toBe(23 * hourMs);
  const oneByOne = loaded({ weighings: [...weighed(20, 190, 191), ...weighed(23, 190)] });
  expect(weighedThroughAtMs(oneByOne)).toBe(20 * hourMs);
  expect(weighedThroughAtMs(loaded({ weighings: [...weighed(20, 190, 191), all(24, 380)] }))).toBe(
    24 * hourMs,
  );
  expect(weighedThroughAtMs(loaded({ weighings: [all(20, 400), all(23, 380)] }))).toBe(23 * hourMs);
});
