/**
 * Plays the written chats through the Telegram door and prints what a phone shows of each request's answers: lines
 * unfolded, buttons, sounds, edits; then turns every plan's pages. With a folder, ten screens are drawn into it.
 *
 * npm run bench:screens -- --out FOLDER
 */
import { mkdirSync, readFileSync, readdirSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { mostPhoneLines, phoneLines } from '#words/phone.ts';
import { drawScreen } from '../../test/telegram/bubbles.ts';
import { until } from '../../test/telegram/group.ts';
import { isThrough, type Played, played, type Screen, unfolded } from '../../test/telegram/played.ts';
import { middle } from './phone.ts';

const chats = 'fixtures/chats';
const outAt = process.argv.indexOf('--out');
const folder = outAt < 0 ? undefined : process.argv[outAt + 1];

const kindOf = ({ asked }: Screen): string => /^\/(\w+)/.exec(asked)?.[1] ?? 'sentence';
const linesOf = ({ sent }: Screen): number => phoneLines(unfolded(sent));

function row(name: string, some: readonly Screen[]): string {
  const lines = some.map(linesOf).toSorted((a, b) => a - b);
  const sum = (of: (screen: Screen) => number) => some.reduce((all, one) => all + of(one), 0);
  const figures = [
    some.length,
    middle(lines),
    lines.at(-1) ?? 0,
    sum(({ sent }) => sent.keys.flat().length),
    sum(({ sent }) => (sent.silent ? 0 : 1)),
    sum(({ sent }) => sent.edits),
  ];
  return name.padEnd(12) + figures.map((figure) => String(figure).padStart(8)).join('');
}

/** Turns every plan to each of its days; the lines of each page. */
async function pagesOf({ door, screens }: Played): Promise<number[]> {
  const found: number[] = [];
  for (const { sent } of screens.filter((screen) => kindOf(screen) === 'pick')) {
    const count = sent.keys.flat().filter(({ text }) => /^(?:• )?\w{3} \d+$/.test(text)).length;
    for (let i = 0; i < count; i += 1) {
      const key = sent.keys.flat().filter(({ text }) => /^(?:• )?\w{3} \d+$/.test(text))[i]!;
      const edits = sent.edits;
      door.press(door.group, sent.messageId, key.callback_data);
      await until(() => sent.edits > edits || isThrough(door));
      await until(() => isThrough(door));
      found.push(phoneLines(unfolded(sent)));
    }
  }
  return found;
}

const all: Screen[] = [];
const pages: number[] = [];
for (const name of readdirSync(chats)) {
  const play = await played(readFileSync(join(chats, name), 'utf8'));
  all.push(
    ...play.screens.map(({ sent, ...said }) => ({ ...said, sent: { ...sent, keys: [...sent.keys] } })),
  );
  pages.push(...(await pagesOf(play)));
  await play.door.end();
}
const kinds = new Map<string, Screen[]>();
for (const screen of all) kinds.set(kindOf(screen), [...(kinds.get(kindOf(screen)) ?? []), screen]);
console.log(`answers           n  median    most buttons  sounds   edits`);
for (const [kind, some] of [...kinds].toSorted(([a], [b]) => a.localeCompare(b)))
  console.log(row(kind, some));
console.log(row('all', all));
const sorted = pages.toSorted((a, b) => a - b);
console.log(
  `pages of plans: ${pages.length}, median ${middle(sorted)}, most ${sorted.at(-1) ?? 0} phone lines`,
);
for (const screen of all.filter((one) => linesOf(one) > mostPhoneLines))
  console.log(`over ${mostPhoneLines}: ${linesOf(screen)}  ${screen.asked.split('\n')[0]!}`);

if (folder !== undefined) {
  mkdirSync(folder, { recursive: true });
  const wanted = ['recipe', 'batch', 'weigh', 'seal', 'water', 'stock', 'trip', 'pick', 'pack', 'cook'];
  for (const kind of wanted) {
    const some = (kinds.get(kind) ?? []).toSorted((a, b) => linesOf(a) - linesOf(b));
    const screen = some.at(-1);
    if (screen) writeFileSync(join(folder, `${kind}.png`), drawScreen(screen));
  }
}
process.exit(0);
