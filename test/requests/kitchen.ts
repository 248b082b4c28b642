import { pouchVolumeMl } from '#core/oxygen.ts';
import { at, code, lb, oz, type RequestCase } from './case.ts';

const soup = { recipe: 'Barley soup' };

/** A flat pouch as it is read. */
const flat = (widthMm: number, heightMm: number, said: string) => ({
  volumeMl: pouchVolumeMl(widthMm, heightMm),
  areaCm2: (2 * widthMm * heightMm) / 100,
  told: `${said} cm flat`,
});

/** Loading, weighing, sealing, scaling. */
export const kitchen: readonly RequestCase[] = [
  [
    '/batch barley soup trays 812 798 805 790 g',
    'batch',
    { ...soup, weights: [812, 798, 805, 790], trays: true },
  ],
  [
    '/batch barley soup ×1.5: 812, 798, 805 and 790 g',
    'batch',
    { ...soup, factor: 1.5, weights: [812, 798, 805, 790] },
  ],
  ['/batch trays 500 490 g barley soup', 'batch', { ...soup, weights: [500, 490], trays: true }],
  [
    '/batch barly soup 500 490 g',
    'batch',
    { ...soup, weights: [500, 490] },
    /read "barly soup" as Barley soup/,
  ],
  ['/batch barley soup\n500 g\n490 g', 'batch', { ...soup, weights: [500, 490] }],
  ['/batch barley soup 0.5 0.49 kg', 'batch', { ...soup, weights: [500, 490] }],
  ['/batch barley soup 0,5 kg 0,49 kg', 'batch', { ...soup, weights: [500, 490] }],
  ['/batch barley soup ５００ ４９０ ｇ', 'batch', { ...soup, weights: [500, 490] }],
  ['/batch barley soup ٥٠٠ ٤٩٠ g', 'batch', { ...soup, weights: [500, 490] }],
  ['/batch barley soup 500/490/480 g', 'batch', { ...soup, weights: [500, 490, 480] }],
  ['/batch barley soup 4 x 500 g', 'batch', { ...soup, weights: [500, 500, 500, 500] }],
  ['/batch barley soup four trays of 500 g', 'batch', { ...soup, weights: [500, 500, 500, 500] }],
  ['/batch barley soup 4 trays 500 g each', 'batch', { ...soup, weights: [500, 500, 500, 500] }],
  ['/batch barley soup 2 trays 500 490 g', 'batch', { ...soup, weights: [500, 490] }],
  ['/batch barley soup x2 2 x 500 g', 'batch', { ...soup, factor: 2, weights: [500, 500] }],
  ['/batch barley soup 1.5x 500 490 g', 'batch', { ...soup, factor: 1.5, weights: [500, 490] }],
  ['/batch barley soup x 1 1/2 500 490 g', 'batch', { ...soup, factor: 1.5, weights: [500, 490] }],
  ['/batch double barley soup 500 490 g', 'batch', { ...soup, factor: 2, weights: [500, 490] }],
  ['/batch twice barley soup 500 g', 'batch', { ...soup, factor: 2, weights: [500] }],
  ['/batch half barley soup 500 g', 'batch', { ...soup, factor: 0.5, weights: [500] }],
  [
    '/batch barley soup pot 3,9 kg trays 812 798 g',
    'batch',
    { ...soup, potG: 3900, weights: [812, 798], trays: true },
  ],
  ['/batch barley soup 17 oz 16½ oz', 'batch', { ...soup, weights: [17 * oz, 16.5 * oz] }],
  ['/batch barley soup 1 lb 2 oz, 1 lb 1 oz', 'batch', { ...soup, weights: [lb + 2 * oz, lb + oz] }],
  [
    '/batch barley soup 500 g raw, yesterday 18:00',
    'batch',
    { ...soup, weights: [500], raw: true, at: at('2027-04-02T18:00') },
  ],
  ['/load barley soup 1324 1310 g gross', 'batch', { ...soup, weights: [1324, 1310], gross: true }],
  ['/weigh B2 400', 'weigh', { batch: 2, weights: [400] }],
  ['/weigh b2: 400g!', 'weigh', { batch: 2, weights: [400] }],
  ['/weigh 400 g B2 pls', 'weigh', { batch: 2, weights: [400] }],
  ['B2 weighs 400 g', 'weigh', { batch: 2, weights: [400] }],
  ["/weigh I weighed B2, it's 400 g", 'weigh', { batch: 2, weights: [400] }],
  ['/weigh B2 → 400 g 🙂', 'weigh', { batch: 2, weights: [400] }],
  ['/weigh B2 ４００ｇ', 'weigh', { batch: 2, weights: [400] }],
  ['/weigh B2 four hundred g', 'weigh', { batch: 2, weights: [400] }],
  ['/weigh B2 tray 1 400 g', 'weigh', { batch: 2, tray: 1, weights: [400] }],
  ['/weigh B4 214 209 212 205', 'weigh', { batch: 4, weights: [214, 209, 212, 205] }],
  ['/weigh B2 400 g at 7 am', 'weigh', { batch: 2, weights: [400], at: at('2027-04-03T07:00') }],
  ['/weigh B2 400 g yesterday 18:00', 'weigh', { batch: 2, weights: [400], at: at('2027-04-02T18:00') }],
  ['/weigh B2 400 g 2 h ago', 'weigh', { batch: 2, weights: [400], at: at('2027-04-03T12:00') }],
  ['/weigh B2 400 g half an hour ago', 'weigh', { batch: 2, weights: [400], at: at('2027-04-03T13:30') }],
  ['/weigh B2 400 g 2 April 23:00', 'weigh', { batch: 2, weights: [400], at: at('2027-04-02T23:00') }],
  ['/weigh B2 400 g 2027/04/02 23:00', 'weigh', { batch: 2, weights: [400], at: at('2027-04-02T23:00') }],
  ['/weigh B2 400 g on friday at 11 pm', 'weigh', { batch: 2, weights: [400], at: at('2027-04-02T23:00') }],
  ['/weigh B2 912 g grosss', 'weigh', { batch: 2, weights: [912], gross: true }, /read "grosss" as gross/],
  ['/seal 1 x 95 g B4', 'seal', { fill: { is: 'one', batch: 4, groups: [{ count: 1, eachDryG: 95 }] } }],
  ['/seal 1×95g b4', 'seal', { fill: { is: 'one', batch: 4, groups: [{ count: 1, eachDryG: 95 }] } }],
  [
    'could you please seal 1 x 95 g B4',
    'seal',
    { fill: { is: 'one', batch: 4, groups: [{ count: 1, eachDryG: 95 }] } },
  ],
  ['/seal 50 g of B1', 'seal', { fill: { is: 'one', batch: 1, groups: [{ count: 1, eachDryG: 50 }] } }],
  [
    '/seal B1 two pouches of 40 grams',
    'seal',
    { fill: { is: 'one', batch: 1, groups: [{ count: 2, eachDryG: 40 }] } },
  ],
  [
    '/seal B1 2 pouches with 40 g each',
    'seal',
    { fill: { is: 'one', batch: 1, groups: [{ count: 2, eachDryG: 40 }] } },
  ],
  [
    '/seal B1 2 × 20 g, 1 × 45 g',
    'seal',
    {
      fill: {
        is: 'one',
        batch: 1,
        groups: [
          { count: 2, eachDryG: 20 },
          { count: 1, eachDryG: 45 },
        ],
      },
    },
  ],
  [
    '/seal B1 2 x 40 g pouch 20×30cm',
    'seal',
    {
      fill: { is: 'one', batch: 1, groups: [{ count: 2, eachDryG: 40 }] },
      pouch: flat(200, 300, '20 x 30'),
      pouchWord: true,
    },
  ],
  [
    '/seal B1 2 x 40 g pouch 8" x 12"',
    'seal',
    {
      fill: { is: 'one', batch: 1, groups: [{ count: 2, eachDryG: 40 }] },
      pouch: flat(203.2, 304.8, '20.3 x 30.5'),
      pouchWord: true,
    },
  ],
  [
    '/seal B1 2 x 40 g pouch 8 x 12 inches',
    'seal',
    {
      fill: { is: 'one', batch: 1, groups: [{ count: 2, eachDryG: 40 }] },
      pouch: flat(203.2, 304.8, '20.3 x 30.5'),
      pouchWord: true,
    },
  ],
  ['/seal B1 2 oz', 'seal', { fill: { is: 'one', batch: 1, groups: [{ count: 1, eachDryG: 2 * oz }] } }],
  [
    '/seal 40 g without absorber B1',
    'seal',
    { fill: { is: 'one', batch: 1, groups: [{ count: 1, eachDryG: 40 }] }, withoutAbsorber: true },
  ],
  ['/scale barley soup to 10 servings', 'scale', { meal: 'Barley soup', servings: 10 }],
  ["let's scale barley soup to ten servings", 'scale', { meal: 'Barley soup', servings: 10 }],
  [
    '/scale barley soup to 10 servngs',
    'scale',
    { meal: 'Barley soup', servings: 10 },
    /read "servngs" as servings/,
  ],
  [
    '/scale to 14 pouches of 90 g: barley soup',
    'scale',
    { meal: 'Barley soup', pouches: [{ count: 14, eachDryG: 90 }] },
  ],
  ['/scale barley soup 14 x 90 g', 'scale', { meal: 'Barley soup', pouches: [{ count: 14, eachDryG: 90 }] }],
  ['/scale barley soup to 4 trays', 'scale', { meal: 'Barley soup', trays: 4 }],
  ['/scale barley soup by 1.5', 'scale', { meal: 'Barley soup', factor: 1.5 }],
  ['/scale barley soup 150 %', 'scale', { meal: 'Barley soup', factor: 1.5 }],
  ['/scale half barley soup', 'scale', { meal: 'Barley soup', factor: 0.5 }],
  [
    '/scale barley soup with 500 g pearl barley',
    'scale',
    { meal: 'Barley soup', atHand: '500 g pearl barley' },
  ],
  ['/scale barley soup 500mg sodium', 'scale', { meal: 'Barley soup', sodiumMg: 500 }],
  ['/pouch B4-2', 'pouch', { codes: [code(4, 2)] }],
  ['/fuel 230g → 185g, 2,5 l', 'fuel', { boiled: { beforeG: 230, afterG: 185, waterMl: 2500 } }],
  [
    '/fuel from 230 g to 185 g for 2.5 litres, water 46 °F',
    'fuel',
    { boiled: { beforeG: 230, afterG: 185, waterMl: 2500 }, water: { startC: 14 / 1.8, fromSnow: false } },
  ],
];
