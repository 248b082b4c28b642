import { commandFiles } from './command-files.ts';
import type { Command } from './command.ts';

/** The order in which /help and the menu show the requests; a request not named here comes last. */
const order = [
  'recipe',
  'scale',
  'batch',
  'weigh',
  'seal',
  'water',
  'stock',
  'pouch',
  'use',
  'discard',
  'house',
];
const last = ['undo', 'log', 'export', 'status', 'help'];

function rank(name: string): number {
  const early = order.indexOf(name);
  const late = last.indexOf(name);
  return early >= 0 ? early : late >= 0 ? 1000 + late : 500;
}

/**
 * Reads every request from `commands/`, one file each. A file that is no request stops the start: a house
 * with a broken request is not opened.
 */
export async function readCommands(): Promise<Command[]> {
  const commands = await Promise.all(
    Object.entries(commandFiles).map(async ([file, read]) => {
      const module = (await read()) as { default?: Command };
      const command = module.default;
      if (command?.name !== file.replace(/\.ts$/, '')) {
        throw new Error(`commands/${file} does not export a request named ${file.replace(/\.ts$/, '')}.`);
      }
      return command;
    }),
  );
  const words = commands.flatMap((c) => [c.name, ...c.alsoCalled]);
  const twice = words.find((word, i) => words.indexOf(word) !== i);
  if (twice) throw new Error(`Two requests are called /${twice}.`);
  return commands.sort((a, b) => rank(a.name) - rank(b.name) || a.name.localeCompare(b.name));
}
