/**
 * How much of a phone's screen the answers of the written chats take: lines of 38 signs of what is read unfolded, notes
 * for people with it, reasons folded away and buttons apart.
 */
import { readFileSync, readdirSync } from 'node:fs';
import { join } from 'node:path';
import { mostPhoneLines, phoneLines } from '#words/phone.ts';

const chats = 'fixtures/chats';

export interface Screen {
  readonly asked: string;
  readonly lines: number;
  readonly foldedLines: number;
}

/** The answers of a written chat, each with the request before it. */
export function screensOf(chat: string): Screen[] {
  const screens: { asked: string; lines: number; foldedLines: number }[] = [];
  let isAnswer = false;
  let asked = '';
  for (const line of chat.split('\n')) {
    if (!line.startsWith('>')) {
      if (!line.startsWith('  ') && !line.startsWith('#') && line.trim() !== '') asked = line;
      isAnswer = false;
      continue;
    }
    if (!isAnswer) screens.push({ asked, lines: 0, foldedLines: 0 });
    isAnswer = true;
    const screen = screens.at(-1)!;
    const said = line.slice(2);
    if (said.startsWith('  | ')) screen.foldedLines += phoneLines(said.slice(4));
    else if (!said.startsWith('[1] ')) screen.lines += phoneLines(said.trim());
  }
  return screens;
}

export const middle = (sorted: readonly number[]): number => sorted[Math.floor((sorted.length - 1) / 2)] ?? 0;

/** Every answer of the written chats. */
export const allScreens = (): Screen[] =>
  readdirSync(chats).flatMap((name) => screensOf(readFileSync(join(chats, name), 'utf8')));

function print(): void {
  const screens = allScreens();
  const kinds = new Map<string, Screen[]>();
  for (const screen of screens) {
    const kind = /\/\w+/.exec(screen.asked)?.[0] ?? 'sentence';
    kinds.set(kind, [...(kinds.get(kind) ?? []), screen]);
  }
  const row = (name: string, some: readonly Screen[]) => {
    const lines = some.map((screen) => screen.lines).toSorted((a, b) => a - b);
    const folded = some.map((screen) => screen.foldedLines).toSorted((a, b) => a - b);
    console.log(
      `${name.padEnd(12)} ${String(some.length).padStart(4)}  ${String(middle(lines)).padStart(6)} ${String(lines.at(-1)).padStart(5)}  ${String(middle(folded)).padStart(6)} ${String(folded.at(-1)).padStart(5)}`,
    );
  };
  console.log('phone lines  n     median  most  folded  most');
  for (const [kind, some] of [...kinds].toSorted(([a], [b]) => a.localeCompare(b))) row(kind, some);
  row('all', screens);
  for (const { asked, lines } of screens.filter((screen) => screen.lines > mostPhoneLines))
    console.log(`over ${mostPhoneLines}: ${lines}  ${asked}`);
}

if (process.argv[1]?.endsWith('phone.ts')) print();
