import { expect, test } from 'vitest';
import { drawReply } from '#doors/terminal.ts';
import { openSeason, refuses } from '../season.ts';
import type { TestHouse } from '../house.ts';

/** Width and height of a PNG, from its header. PNG Specification, third edition, section 11.2.1; from memory. */
function sizeOf(house: TestHouse): [number, number] {
  const file = house.last[0]!.reply.files![0]!;
  expect(file.type).toBe('image/png');
  const png = Buffer.from(file.base64, 'base64');
  expect(png.toString('latin1', 1, 4)).toBe('PNG');
  return [png.readUInt32BE(16), png.readUInt32BE(20)];
}

test('a batch as a curve, and in letters for the terminal', async () => {
  const house = openSeason();
  const answer = await house.ask('/chart B4');
  expect(answer).toMatch(/^B4 Lentil pot: drying\n3000 g wet on 4 trays/);
  expect(Math.max(...sizeOf(house))).toBeLessThan(1280);
  const last = house.last[0]!;
  expect(last.reply.files![0]!.name).toBe('chart-B4.png');
  const shown = drawReply(last, ['data/chart-B4.png'], false);
  expect(shown).toContain(`> tray 1, 0.0 h    ${'█'.repeat(32)} 750 g`);
  // 190 of 750 g is 8.1 of 32 blocks.
  expect(shown).toContain(`> tray 1, 25.0 h   ${'█'.repeat(8)}▏ 190 g`);
  expect(shown).toContain('> [file: data/chart-B4.png]');
});

test.each(['/chart B2', '/chart B1'])('%s: a batch with few weighings or none', async (typed) => {
  const house = openSeason();
  await house.ask(typed);
  expect(Math.max(...sizeOf(house))).toBeLessThan(1280);
  expect(house.faults).toEqual([]);
});

test('the stock by month, with what has no date', async () => {
  const house = openSeason();
  const answer = await house.ask('/chart stock');
  expect(answer).toContain('9 pouches on');
  expect(answer).toContain('1 pouch without a best-by: unchecked');
  const plot = house.last[0]!.reply.files![0]!.inText!;
  expect(plot).toMatch(/Lentil pot .*█ 6$/m);
  expect(plot).toMatch(/no best-by Barley soup .* 1$/m);
  expect(Math.max(...sizeOf(house))).toBeLessThan(1280);
});

test('a trip by eater and day, nobody left out', async () => {
  const house = openSeason();
  await house.ask('/pick keep');
  const answer = await house.ask('/chart heron lake');
  expect(answer).toContain('Heron Lake: sodium and energy a day');
  const plot = house.last[0]!.reply.files![0]!.inText!;
  for (const who of ['Ana', 'Ben', 'Noa', 'Rosa']) expect(plot).toContain(`${who}, Sat 12 Jun`);
  expect(plot).toContain('of 1500 mg sodium');
});

test('a chart records nothing', async () => {
  const house = openSeason();
  const before = house.dump();
  await house.ask('/chart stock');
  expect(house.dump()).toBe(before);
});

refuses([
  ['/chart', /Which batch/],
  ['/chart B9', /There is no batch B9/],
  ['/chart B4 stock', /One chart at a time/],
  ['/chart trip', /Nothing is kept for Heron Lake yet/],
]);

test('a season at a glance, with what to cook next', async () => {
  const house = openSeason();
  house.say('/use B1-1 B1-2');
  house.say('/discard B4-6 torn');
  const answer = await house.ask('/chart season');
  // Sealed are two of B1, one of B3 and six of B4.
  expect(answer).toContain('in pouches: 9 sealed, 2 eaten, 1 thrown away; 6 left now.');
  expect(answer).toContain('Cook next: Barley soup (2 pouches eaten, 1 left).');
  expect(Math.max(...sizeOf(house))).toBeLessThan(1280);
  expect(house.last[0]!.reply.files![0]!.name).toBe('chart-season.png');
  expect(drawReply(house.last[0]!, ['x.png'], false).join('\n')).toContain(
    '0 eaten, 5 left, 1 thrown away, 6 sealed',
  );
  const before = house.dump();
  await house.ask('/chart season stock');
  expect(house.dump()).toBe(before);
});
