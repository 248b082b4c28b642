import { describe, expect, test } from 'vitest';
import type { TripPaper } from '#draw/facts.ts';
import { drawTripPaper } from '#draw/trip-paper.ts';
import { longName } from './facts.ts';
import { pagesOf, plain } from './page.ts';

function paperOf(days: number, meal = 'Bean pot'): TripPaper {
  return {
    paper: 'a4',
    title: 'Heron Lake',
    subtitle: 'Sat 12 Jun to Mon 14 Jun 2027, 1900 m',
    days: Array.from({ length: days }, (_, d) => ({
      day: `day ${d + 1}`,
      slots: ['Breakfast', 'Dinner'].map((slot, s) => ({
        meal: slot,
        about: 'Ana, Ben and Noa; water 560 ml (2⅜ cups)',
        rows: [1, 2].map((no) => ({
          code: `B${d + 1}-${s * 2 + no}`,
          meal,
          figures: '95 g dry, water 280 ml (1⅛ cups)',
          eaters: 'Ana and Ben',
          isPacked: no === 1,
        })),
      })),
    })),
    people: [{ who: 'נועה', text: 'not for you: milk (cream)' }],
    totals: ['Dry 570 g; water to boil 1.7 l.'],
    cautions: ['Boiling water burns.'],
    foot: 'As of Sat 3 Apr 12:00.',
  };
}

const read = async (paper: TripPaper) => pagesOf((await drawTripPaper(paper)).pdf);

describe("a trip's sheet", () => {
  test.each([
    { paper: 'a4', widthMm: 210, heightMm: 297 },
    { paper: 'letter', widthMm: 215.9, heightMm: 279.4 },
  ] as const)('of three days is one $paper page that says it all', async ({ paper, widthMm, heightMm }) => {
    const facts = { ...paperOf(3), paper };
    const pages = await read(facts);
    expect(pages).toHaveLength(1);
    const [page] = pages as [(typeof pages)[number]];
    expect(page.widthMm).toBeCloseTo(widthMm, 1);
    expect(page.heightMm).toBeCloseTo(heightMm, 1);
    const said = [
      facts.title,
      facts.subtitle,
      ...facts.days.flatMap(({ day, slots }) => [
        day,
        ...slots.flatMap(({ meal, about, rows }) => [`${meal}: ${about}`, ...rows.map(({ code }) => code)]),
      ]),
      'נועה: not for you: milk (cream)',
      ...facts.totals,
      ...facts.cautions,
      facts.foot,
    ];
    for (const words of said) expect(page.text).toContain(plain(words));
    for (const { xMm, yMm, widthMm: wide } of page.words) {
      expect(xMm).toBeGreaterThanOrEqual(13 - 0.1);
      expect(xMm + wide).toBeLessThanOrEqual(widthMm - 13 + 0.1);
      expect(yMm).toBeLessThanOrEqual(heightMm - 13 + 0.1);
    }
  });

  test('of six days has smaller type and is one page still', async () => {
    const size = async (days: number) => {
      const pages = await read(paperOf(days));
      expect(pages).toHaveLength(1);
      return pages[0]!.words.find(({ text }) => text === 'B1-1')!.sizePt;
    };
    expect(await size(6)).toBeLessThan(await size(2));
  });

  test('of twenty days takes pages that each keep a heading with what follows it', async () => {
    const pages = await read(paperOf(20, longName));
    expect(pages.length).toBeGreaterThan(2);
    for (const [i, page] of pages.entries()) {
      expect(page.text).toContain(`page ${i + 1} of ${pages.length}`);
      const body = page.words
        .filter(({ text }) => !text.startsWith('page '))
        .toSorted((a, b) => a.yMm - b.yMm);
      expect(body.at(-1)!.text).not.toMatch(/^(day \d+|Breakfast:|Dinner:|Totals|Mind|For each person)/);
      for (const { yMm } of body) expect(yMm).toBeLessThanOrEqual(297 - 13 + 0.1);
    }
    const all = pages.map(({ text }) => text).join(' ');
    for (let d = 1; d <= 20; d++)
      for (let no = 1; no <= 4; no++) expect(all).toMatch(new RegExp(`\\bB${d}-${no}\\b`));
  });

  test('a box stands before each pouch, crossed when it is packed', async () => {
    const [page] = await read(paperOf(1));
    const dpi = 200;
    const image = await page!.render(dpi);
    const dark = (xMm: number, yMm: number) => {
      const [x, y] = [xMm, yMm].map((mm) => Math.round((mm * dpi) / 25.4)) as [number, number];
      for (let dy = -1; dy <= 1; dy++)
        for (let dx = -1; dx <= 1; dx++)
          if (image.data[((y + dy) * image.width + x + dx) * 4]! < 128) return true;
      return false;
    };
    const middleOf = (code: string) => {
      const word = page!.words.find(({ text }) => text === code)!;
      return [13 + 3.4 / 2, word.yMm - (word.sizePt * 25.4 * 0.688) / 144] as const;
    };
    expect(dark(...middleOf('B1-1'))).toBe(true);
    expect(dark(...middleOf('B1-2'))).toBe(false);
    const [x, y] = middleOf('B1-2');
    expect(dark(x - 3.4 / 2, y)).toBe(true);
    expect(dark(x + 3.4 / 2, y)).toBe(true);
  });
});
