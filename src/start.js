// Starts the program. Node 20 reads no TypeScript, and having each of some two hundred files translated takes most of a
// second at every start. So the sources are put together into one file beside the packages, made anew whenever one of
// them changes; where that cannot be done, tsx reads them one by one.
import { createHash } from 'node:crypto';
import { readFileSync, readdirSync, renameSync, rmSync, statSync } from 'node:fs';
import { dirname, join } from 'node:path';
import { fileURLToPath, pathToFileURL } from 'node:url';

const root = join(dirname(fileURLToPath(import.meta.url)), '..');
const cache = join(root, 'node_modules', '.cache', 'tray-to-trail');

/** What the bundle depends on, as a short text: sources by time and size, packages, Node, and where all this lies. */
function stamp() {
  const hash = createHash('sha256').update(`${process.version} ${root}`);
  for (const folder of ['src', 'commands']) {
    const names = readdirSync(join(root, folder), { recursive: true, encoding: 'utf8' });
    for (const name of names.toSorted((a, b) => (a < b ? -1 : 1))) {
      if (!/\.(?:ts|js)$/.test(name)) continue;
      const { mtimeMs, size } = statSync(join(root, folder, name));
      hash.update(`${name} ${mtimeMs} ${size}\n`);
    }
  }
  for (const name of ['package.json', 'package-lock.json'])
    hash.update(String(statSync(join(root, name)).mtimeMs));
  return hash.digest('hex').slice(0, 16);
}

/**
 * Puts the sources together, what is read later in files of its own. Paths that a file finds from its own place stay
 * those of the sources.
 */
async function bundle(folder) {
  const { build } = await import('esbuild');
  const commands = readdirSync(join(root, 'commands')).filter((name) => name.endsWith('.ts'));
  const imports = commands.map(
    (name, i) => `import * as file${i} from ${JSON.stringify(join(root, 'commands', name))};`,
  );
  const listed = commands.map((name, i) => `${JSON.stringify(name)}: async () => file${i}`);
  const aside = `${folder}.${process.pid}`;
  await build({
    entryPoints: { program: join(root, 'src', 'main.ts') },
    bundle: true,
    splitting: true,
    outdir: aside,
    platform: 'node',
    format: 'esm',
    target: 'node20',
    packages: 'external',
    legalComments: 'none',
    plugins: [
      {
        name: 'places',
        setup(building) {
          building.onLoad({ filter: /command-files\.ts$/ }, () => ({
            contents: `${imports.join('')}export const commandFiles = {${listed.join(',')}};`,
            resolveDir: root,
          }));
          building.onLoad({ filter: /[\\/]src[\\/].*\.ts$/ }, ({ path: source }) => ({
            contents: readFileSync(source, 'utf8').replaceAll(
              'import.meta.url',
              JSON.stringify(pathToFileURL(source).href),
            ),
            loader: 'ts',
          }));
        },
      },
    ],
  });
  for (const old of readdirSync(cache)) {
    const isOld = old.startsWith('program-') && !old.endsWith(`.${process.pid}`);
    if (isOld) rmSync(join(cache, old), { recursive: true, force: true });
  }
  // Written aside and renamed: a second start at the same time never reads half of it, and whoever is second keeps the first's.
  if (statSync(folder, { throwIfNoEntry: false })) rmSync(aside, { recursive: true, force: true });
  else renameSync(aside, folder);
}

async function program() {
  try {
    const folder = join(cache, `program-${stamp()}`);
    if (!statSync(folder, { throwIfNoEntry: false })) await bundle(folder);
    return join(folder, 'program.js');
  } catch {
    const { register } = await import('tsx/esm/api');
    register();
    return join(root, 'src', 'main.ts');
  }
}

await import(pathToFileURL(await program()).href);
