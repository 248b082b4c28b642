import { expect, test } from 'vitest';
import { readScanPayload } from '#words/scan.ts';
import { codesIn, pagesOf, plain } from '../draw/page.ts';
import { openSeason, refuses } from '../season.ts';
import type { TestHouse } from '../house.ts';

const pdfOf = (house: TestHouse) => Buffer.from(house.last[0]!.reply.files![0]!.base64, 'base64');

test('a batch gets a label for each pouch in stock', async () => {
  const house = openSeason();
  const answer = await house.ask('/label B4');
  expect(answer).toContain('6 labels for B4-1 to B4-6 on 1 page: A4, 2 x 7 labels of 99.1 x 38.1 mm.');
  expect(answer).toContain('The next free label of the last sheet is 7.');
  expect(answer).toContain('Noa: not for you: milk');
  const file = house.last[0]!.reply.files![0]!;
  expect(file).toMatchObject({
    name: 'labels-B4-1-and-5-more.pdf',
    type: 'application/pdf',
    caption: 'Labels: B4-1 to B4-6',
  });
  const [page] = await pagesOf(pdfOf(house));
  // 3000 g wet, 760 g dry: 95 x 2240 / 760 = 280 ml; 8 servings x 95 / 760 = 1. By hand.
  for (const words of [
    'B4-6',
    'Lentil pot',
    'Water 240 to 280 ml (1⅛ cups), boiling',
    '95 g dry',
    '1 serving',
    'Contains: milk.',
    'Not for Noa: milk',
  ])
    expect(page!.text).toContain(plain(words));
  expect(house.faults).toEqual([]);
});

test('without a bot the code to scan is plain text, with one it opens the pouch of this household', async () => {
  const house = openSeason();
  await house.ask('/label B4-2 single');
  const scanned = async () => codesIn(await (await pagesOf(pdfOf(house)))[0]!.render(150));
  expect(await scanned()).toEqual(['B4-2 Lentil pot, water 240 to 280 ml (1⅛ cups)']);
  Object.assign(house.house, { chatLink: 'https://t.me/kettle_and_tray_bot?start=' });
  await house.ask('/label B4-2 single');
  const [link] = await scanned();
  expect(link).toMatch(/^https:\/\/t\.me\/kettle_and_tray_bot\?start=/);
  const household = house.house.stores.households.of('terminal', 'test')!;
  expect(readScanPayload(link!.split('=')[1]!)).toEqual({ household, code: { batch: 4, no: 2 } });
});

test('an unchecked pouch says so and has no best-by', async () => {
  const house = openSeason();
  await house.ask('/label B3');
  const [page] = await pagesOf(pdfOf(house));
  expect(page!.text).toContain('UNCHECKED: not shown to be dry, keep frozen');
  expect(page!.text).not.toContain('best by');
});

test('raw food, unknown allergens and whom it is not for stand on the label', async () => {
  const house = openSeason();
  house.say('/recipe Tartare, 2 servings: 500 g beef, minced; 2 tbsp flurbsauce');
  house.say('/batch tartare raw trays 400 g pot 530 g');
  house.at(20);
  house.say('/weigh B5 150 g');
  house.at(3);
  house.say('/weigh B5 150 g');
  house.say('/seal 1 x 100 g B5');
  await house.ask('/label B5');
  const [page] = await pagesOf(pdfOf(house));
  expect(page!.text).toContain('RAW: soak, then cook in a pot');
  expect(page!.text).toContain('Allergens unknown because of:');
  expect(page!.text).toMatch(/Not for Noa: unknown, .*flurbsauce/);
});

test('a part-used sheet, other paper, sheets of the house', async () => {
  const house = openSeason();
  expect(await house.ask('/label B4 from 12')).toContain('on 2 pages');
  expect(await house.ask('/label B1 B4 letter 3 x 10')).toContain(
    '8 labels for B1-1, B1-2 and B4-1 to B4-6 on 1 page: US Letter',
  );
  expect(house.say('/house labels A4 3 x 7 of 63.5 x 38.1 mm gap 2.5 mm left 6 mm top 14 mm')).toContain(
    'labels A4, 3 x 7 labels of 63.5 x 38.1 mm, the first 6 mm from the left and 14 mm from the top',
  );
  await house.ask('/label B4-1');
  const [page] = await pagesOf(pdfOf(house));
  const code = page!.words.find(({ text }) => text === 'B4-1')!;
  expect(code.xMm).toBeCloseTo(6 + 1.9, 1);
  house.say('/house labels left 9 mm top 20 mm');
  await house.ask('/label B4-1');
  const [moved] = await pagesOf(pdfOf(house));
  const there = moved!.words.find(({ text }) => text === 'B4-1')!;
  expect(there.xMm - code.xMm).toBeCloseTo(3, 1);
  expect(there.yMm - code.yMm).toBeCloseTo(6, 1);
});

test('what changes while it draws is not printed', async () => {
  const house = openSeason();
  const pending = house.ask('/label B4');
  house.say('/use B4-1');
  expect(await pending).toContain('changed while I was drawing');
});

refuses([
  ['/label', 'Which batch'],
  ['/label B9', /There is no batch B9/],
  ['/label B2', /No pouch of B2 is in stock/],
  ['/label B4-9', /There is no pouch B4-9/],
  ['/label B4 from 15', /labels 1 to 14, counted along the rows; I read 15/],
  ['/label B4 3 x 9', /I know A4 sheets of 2 x 7/],
  ['/label B4 single 30 x 15 mm', /too small to be read/],
]);
