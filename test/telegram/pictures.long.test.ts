// Witness: how a bot gets a file as in the Bot API reference (getFile, PhotoSize); what a picture of labels brings is this
// project's promise, no source.
import { createCanvas } from '@napi-rs/canvas';
import { afterEach, expect, test } from 'vitest';
import { scanCode } from '#draw/scan-code.ts';
import { scanPayload } from '#words/scan.ts';
import { openOwnSeason } from '../season.ts';
import { type OpenDoor, openDoor, until } from './group.ts';
import { botUser } from './platform.ts';
import { packedNow } from './packing.ts';

let open: OpenDoor | undefined;
afterEach(async () => {
  await open?.end();
  open = undefined;
});

/** Codes side by side, as on a table. */
function picture(texts: readonly string[]): Buffer {
  const canvas = createCanvas(60 + 260 * texts.length, 320);
  const context = canvas.getContext('2d');
  context.fillStyle = '#e8e2d8';
  context.fillRect(0, 0, canvas.width, canvas.height);
  texts.forEach((text, i) => {
    const modules = scanCode(text);
    const size = 200 / modules.length;
    context.fillStyle = '#ffffff';
    context.fillRect(40 + 260 * i, 40, 240, 240);
    context.fillStyle = '#000000';
    modules.forEach((row, y) =>
      row.forEach((isDark, x) => {
        if (isDark) context.fillRect(60 + 260 * i + x * size, 60 + y * size, size + 0.4, size + 0.4);
      }),
    );
  });
  return canvas.toBuffer('image/jpeg', 85);
}

const label = (household: number, batch: number, no: number) =>
  `https://t.me/TrailTestBot?start=${scanPayload(household, { batch, no })}`;

async function start() {
  const season = openOwnSeason();
  await season.ask('/pick keep');
  return (open = await openDoor({}, {}, season));
}

function show(door: OpenDoor, texts: readonly string[], caption?: string): void {
  const name = `photo${door.platform.files.size}`;
  door.platform.files.set(name, picture(texts));
  const sizes = [
    { file_id: `${name}-small`, file_unique_id: 's', width: 90, height: 60 },
    { file_id: name, file_unique_id: 'l', width: 1280, height: 900 },
  ];
  const toUs = { reply_to_message: { message_id: 11, date: 1, from: botUser } };
  door.say(door.group, '', { text: undefined, photo: sizes, ...(caption ? { caption } : toUs) });
}

test('a picture of a label opens its card with buttons', async () => {
  const door = await start();
  show(door, [label(1, 4, 1)]);
  const card = await door.answer(door.group, 1);
  expect(card.text).toMatch(/^B4-1/);
  expect(card.keys.flat().length).toBeGreaterThan(0);
});

test('a pile offers what can be done with it, and with "/pack" it is packed', async () => {
  const door = await start();
  show(
    door,
    [1, 2, 3, 4].map((no) => label(1, 4, no)),
  );
  const pile = await door.answer(door.group, 1);
  expect(pile.text).toBe('In the picture: B4-1 to B4-4, 4 pouches.');
  expect(pile.keys.flat().map(({ text }) => text)).toEqual([
    'Pack these',
    'Take these out',
    'These were eaten',
  ]);
  show(door, [label(1, 4, 1), label(1, 4, 2)], '/pack');
  await until(() => packedNow(door.house.db).get('B4-1') && packedNow(door.house.db).get('B4-2'));
  show(door, [label(1, 4, 1)], '/pack not');
  await until(() => packedNow(door.house.db).get('B4-1') === false);
});

test("another household's label shows nothing of ours, and records nothing", async () => {
  const door = await start();
  const before = door.house.dump();
  show(door, [label(2, 4, 1)]);
  expect((await door.answer(door.group, 1)).text).toContain('belong to another household');
  show(door, [label(2, 4, 1), label(1, 4, 2)], '/pack');
  expect((await door.answer(door.group, 2)).text).toContain('Nothing is recorded.');
  expect(door.house.dump()).toBe(before);
});

test('a picture without labels, or one that cannot be had, changes nothing and breaks nothing', async () => {
  const door = await start();
  show(door, ['https://example.org/B4-1', 'B4-1 Lentil pot']);
  door.say(door.group, '', {
    text: undefined,
    photo: [{ file_id: 'gone', file_unique_id: 'g', width: 9, height: 9 }],
    caption: '/stock',
  });
  expect((await door.answer(door.group, 2)).text + door.answers(door.group)[0]!.text).toContain(
    'Barley soup: 1 pouch',
  );
  await door.quiet();
});
