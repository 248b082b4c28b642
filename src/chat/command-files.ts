import { readdirSync } from 'node:fs';
import { dirname, join } from 'node:path';
import { fileURLToPath, pathToFileURL } from 'node:url';

const folder = join(dirname(fileURLToPath(import.meta.url)), '..', '..', 'commands');

/** The files in `commands/`, each with how it is read. `src/start.js` puts the same list into its bundle. */
export const commandFiles: Readonly<Record<string, () => Promise<unknown>>> = Object.fromEntries(
  readdirSync(folder)
    .filter((name) => name.endsWith('.ts'))
    .map((name) => [name, () => import(pathToFileURL(join(folder, name)).href)]),
);
