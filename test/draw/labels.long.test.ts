import { beforeAll, describe, expect, test } from 'vitest';
import { commonGrids, placesOf, singleLabel } from '#core/label-grid.ts';
import { drawLabels } from '#draw/label-sheet.ts';
import { label } from '#draw/look.ts';
import { scanPayload } from '#words/scan.ts';
import { labelOf, longName } from './facts.ts';
import { codesIn, inkIn, type Page, pagesOf, plain } from './page.ts';

const letter30 = commonGrids.find((grid) => grid.rows === 10)!;
const a4 = commonGrids[0]!;

async function read(...asked: Parameters<typeof drawLabels>): Promise<Page[]> {
  return pagesOf((await drawLabels(...asked)).pdf);
}

describe('a sheet of 30', () => {
  // The longest name that the platform gives a bot has 32 letters (Bot API documentation, from memory).
  const link = `https://t.me/${'k'.repeat(29)}bot?start=`;
  const facts = Array.from({ length: 30 }, (_, i) =>
    labelOf(`B4-${i + 1}`, 'Red lentil pot', { scan: link + scanPayload(12, { batch: 4, no: i + 1 }) }),
  );
  let page: Page;
  beforeAll(async () => {
    [page] = (await read({ grid: letter30, from: 1, labels: facts })) as [Page];
  });

  // US Letter is 8.5 x 11 in: 215.9 x 279.4 mm.
  test('is one US Letter page', () => {
    expect(page.widthMm).toBeCloseTo(215.9, 1);
    expect(page.heightMm).toBeCloseTo(279.4, 1);
  });

  test('has each code in its own place, and nothing outside the labels', () => {
    const places = placesOf(letter30);
    for (const [i, { code }] of facts.entries()) {
      const place = places[i]!;
      const word = page.words.find(({ text }) => text === code)!;
      expect(word.xMm).toBeCloseTo(place.xMm + label.paddingMm, 1);
      expect(word.yMm).toBeGreaterThan(place.yMm);
      expect(word.yMm).toBeLessThan(place.yMm + 10);
    }
    const astray = page.words.filter(
      ({ xMm, yMm, widthMm }) =>
        !places.some(
          (place) =>
            xMm >= place.xMm &&
            xMm + widthMm <= place.xMm + place.widthMm &&
            yMm >= place.yMm &&
            yMm <= place.yMm + place.heightMm,
        ),
    );
    expect(astray).toEqual([]);
  });

  test('shows codes large and nothing below small print', () => {
    for (const { code } of facts)
      expect(page.words.find(({ text }) => text === code)!.sizePt).toBeGreaterThanOrEqual(16);
    // x-height 0.9 mm at 0.526 of the size: EU Regulation 1169/2011, article 13 (3); from memory.
    for (const { sizePt } of page.words) expect(sizePt * (25.4 / 72) * 0.526).toBeGreaterThanOrEqual(0.9);
  });

  test.each([
    { dpi: 150, called: 'at 150 dpi' },
    { dpi: 75, called: 'printed at half size and seen at 150 dpi' },
  ])('is read by another decoder $called', async ({ dpi }) => {
    const found = await codesIn(await page.render(dpi));
    expect(found.toSorted()).toEqual(facts.map(({ scan }) => scan).toSorted());
  });
});

describe('what a label says', () => {
  const full = labelOf('B12-3', 'Bean stew', {
    cautions: ['UNCHECKED: not shown to be dry, keep frozen', 'RAW: cook before eating'],
    bestBy: null,
    water: '280 ml (1⅛ cups)',
    contents: [
      'Contains: milk.',
      'Read the small print: stock cube (celery?).',
      'Allergens unknown because of: sauce.',
    ],
    notFor: ['Not for Noa: milk; Ben: unknown, sauce'],
    scan: 'B12-3 Bean stew, water 280 ml (1⅛ cups)',
  });

  test.each([a4, commonGrids[3]!, singleLabel(100, 60)])(
    'is all there on $widthMm x $heightMm mm',
    async (grid) => {
      const [page] = await read({ grid, from: 1, labels: [full] });
      const said = [
        full.code,
        full.meal,
        ...full.cautions,
        `Water ${full.water}, boiling`,
        full.soak,
        '95 g dry',
        '1.2 servings',
        'Sat 3 Apr 2027',
        ...full.contents,
        ...full.notFor,
      ];
      for (const words of said) expect(page!.text.toLowerCase()).toContain(plain(words).toLowerCase());
      expect(page!.text).not.toContain('best by');
      expect(await codesIn(await page!.render(150))).toEqual([full.scan]);
    },
  );

  test('a single label is a page of its size', async () => {
    const pages = await read({
      grid: singleLabel(80, 50),
      from: 1,
      labels: [labelOf('B1-1', 'Soup'), labelOf('B1-2', 'Soup')],
    });
    expect(pages.map(({ widthMm, heightMm }) => [Math.round(widthMm), Math.round(heightMm)])).toEqual([
      [80, 50],
      [80, 50],
    ]);
  });

  test('what does not fit in readable type is refused, not cut', async () => {
    const labels = [labelOf('B1-1', longName.repeat(4))];
    await expect(drawLabels({ grid: letter30, from: 1, labels })).rejects.toThrow(
      /B1-1 says more than a label of 66\.7 x 25\.4 mm holds/,
    );
  });
});

describe('names in any script', () => {
  test.each([
    ['long', longName],
    ['Greek', 'Φασολάδα με ελιές'],
    ['Cyrillic', 'Борщ з квасолею'],
    ['Vietnamese', 'Cháo đậu xanh nấu nấm'],
    ['Armenian', 'Ոսպով ապուր'],
    ['Georgian', 'ლობიო ნიგვზით'],
    ['Chinese', '香菇小米粥配胡萝卜'],
    ['Japanese', 'きのこと大麦のスープ'],
    ['Korean', '버섯 보리죽'],
    ['Hebrew', 'מרק עדשים כתומות'],
    ['Arabic', 'شوربة العدس الأحمر'],
    ['pictures', 'Bean pot 🍲'],
  ])('%s is on the page in full, in ink', async (_, name) => {
    const [page] = await read({ grid: a4, from: 4, labels: [labelOf('B7-1', name)] });
    const bare = (text: string) => plain(text).replaceAll(' ', '');
    expect(bare(page!.text)).toContain(bare(name));
    const image = await page!.render(100);
    expect(page!.words.filter((word) => !inkIn(image, 100, word))).toEqual([]);
  });

  // Devanagari is shaped: vowel signs move before their letters, so the text that comes out keeps the letters only.
  test('Devanagari keeps every letter', async () => {
    const [page] = await read({ grid: a4, from: 1, labels: [labelOf('B7-1', 'खिचड़ी')] });
    const letters = (text: string) =>
      Array.from(text.normalize('NFD'))
        .filter((one) => /\p{Script=Devanagari}/u.test(one))
        .toSorted();
    expect(letters(page!.text)).toEqual(letters('खिचड़ी'));
  });

  test('a sign that no font has is named, not printed as a box', async () => {
    const labels = [labelOf('B7-1', 'Soup of ꦱꦺꦴꦠꦺꦴ')];
    await expect(drawLabels({ grid: a4, from: 1, labels })).rejects.toThrow(
      /no sign for "ꦱ" \(U\+A9B1\) in "Soup of/,
    );
  });
});

test('a part-used sheet is filled from its first free label, then the next page from the top', async () => {
  const labels = Array.from({ length: 5 }, (_, i) => labelOf(`B9-${i + 1}`, 'Soup'));
  const pages = await read({ grid: a4, from: 12, labels });
  const places = placesOf(a4);
  const at = (page: Page, code: string) => {
    const { xMm, yMm } = page.words.find(({ text }) => text === code)!;
    return places.findIndex(
      (place) =>
        xMm >= place.xMm &&
        xMm < place.xMm + place.widthMm &&
        yMm >= place.yMm &&
        yMm < place.yMm + place.heightMm,
    );
  };
  expect(pages).toHaveLength(2);
  expect(['B9-1', 'B9-2', 'B9-3'].map((code) => at(pages[0]!, code))).toEqual([11, 12, 13]);
  expect(['B9-4', 'B9-5'].map((code) => at(pages[1]!, code))).toEqual([0, 1]);
});

// What stands on which label, in reading order, and how the sizes of type rank: no line breaks, no coordinates, so that
// another version of a font or a library changes nothing here unless it changes what a person reads.
test('the sheet keeps its structure', async () => {
  const labels = [
    labelOf('B4-1', 'Red lentil pot', { notFor: ['Not for Noa: milk'] }),
    labelOf('B4-2', longName, { cautions: ['RAW: cook before eating'] }),
    labelOf('B5-1', 'מרק עדשים', {
      bestBy: null,
      cautions: ['UNCHECKED: not shown to be dry, keep frozen'],
    }),
  ];
  const [page] = await read({ grid: a4, from: 1, labels });
  const told = placesOf(a4).flatMap((place, i) => {
    const words = page!.words.filter(
      ({ xMm, yMm }) =>
        xMm >= place.xMm &&
        xMm < place.xMm + place.widthMm &&
        yMm >= place.yMm &&
        yMm < place.yMm + place.heightMm,
    );
    if (words.length === 0) return [];
    const sizes = [...new Set(words.map(({ sizePt }) => sizePt))].toSorted((x, y) => y - x);
    const runs: string[] = [];
    let last = -1;
    for (const { text, sizePt } of words) {
      const rank = sizes.indexOf(sizePt) + 1;
      if (rank === last) runs[runs.length - 1] += ` ${plain(text)}`;
      else runs.push(`  size ${rank}: ${plain(text)}`);
      last = rank;
    }
    return [`label ${i + 1}`, ...runs];
  });
  await expect(`${told.join('\n')}\n`).toMatchFileSnapshot('golden/labels.txt');
});

describe('a label for camp', () => {
  const grid = singleLabel(100, 75);
  const facts = {
    ...labelOf('B4-2', 'Red lentil pot', {
      camp: 'Add butter 10 g',
      notFor: ['Not for Noa: milk (double cream)'],
      cautions: ['UNCHECKED: not shown to be dry, keep frozen'],
    }),
    isForCamp: true as const,
  };

  // A capital is 0.688 of its size; at 50 cm the least that an eye resolves by day is 5 minutes of arc, from memory.
  test('says what to do in type for the dusk, and carries its code', async () => {
    const [page] = await read({ grid, from: 1, labels: [facts] });
    const needed = ['B4-2', 'Water', 'lentil', 'butter', 'Noa:', 'UNCHECKED:'];
    for (const word of needed) {
      const found = page!.words.find(({ text }) => text.includes(word));
      expect(found, word).toBeDefined();
      const minutes = (Math.atan((found!.sizePt * (25.4 / 72) * 0.688) / 500) * 180 * 60) / Math.PI;
      expect(minutes, word).toBeGreaterThanOrEqual(20);
    }
    expect(page!.words.map(({ text }) => text).join(' ')).not.toContain('best by');
    expect(await codesIn(await page!.render(150))).toEqual([facts.scan]);
  });

  test('that is too small for it is refused', async () => {
    await expect(drawLabels({ grid: letter30, from: 1, labels: [facts] })).rejects.toThrow(
      'single 150 x 100 mm',
    );
  });
});
