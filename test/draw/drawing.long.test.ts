import { afterAll, expect, test } from 'vitest';
import { commonGrids } from '#core/label-grid.ts';
import { openDrawing } from '#draw/drawing.ts';
import { labelOf } from './facts.ts';

const drawing = openDrawing();
afterAll(() => drawing.dispose());

const sheet = (meal: string) => ({ grid: commonGrids[0]!, from: 1, labels: [labelOf('B1-1', meal)] });

test('drawings asked for together come each to its asker', async () => {
  const drawn = await Promise.all([
    drawing.labels(sheet('Soup')),
    drawing.labels({ ...sheet('Stew'), from: 2 }),
  ]);
  expect(drawn.map(({ pages }) => pages)).toEqual([1, 1]);
  for (const { files } of drawn) expect(Buffer.from(files[0]!).toString('latin1', 0, 5)).toBe('%PDF-');
  expect(Buffer.from(drawn[0].files[0]!).equals(Buffer.from(drawn[1].files[0]!))).toBe(false);
});

test('a refusal in the thread is a refusal here, and the next drawing is made', async () => {
  await expect(drawing.labels(sheet('ꦱ'))).rejects.toMatchObject({ name: 'Refusal', code: 'no-glyph' });
  expect((await drawing.labels(sheet('Soup'))).pages).toBe(1);
});

test('the chat goes on while it draws', async () => {
  const labels = Array.from({ length: 300 }, (_, i) => labelOf(`B1-${i + 1}`, `Soup ${i}`));
  let isDrawn = false;
  const pending = drawing.labels({ ...sheet('Soup'), labels }).then(() => void (isDrawn = true));
  let turns = 0;
  while (!isDrawn) {
    await new Promise((resolve) => setTimeout(resolve, 1));
    turns += 1;
  }
  await pending;
  expect(turns).toBeGreaterThan(20);
});

test('what is open when the thread is ended is told so, and a later drawing starts another', async () => {
  const other = openDrawing();
  const pending = other.labels(sheet('Soup'));
  await Promise.all([expect(pending).rejects.toThrow('was disposed'), other.dispose()]);
  expect((await other.labels(sheet('Soup'))).pages).toBe(1);
  await other.dispose();
});
