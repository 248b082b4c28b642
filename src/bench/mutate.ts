/**
 * Do the tests bite? Puts one small fault at a time into a file or a folder of the source, drawn by a seed, runs the
 * tests that reach it and prints what was noticed, by layer. A fault that nobody notices is printed as it stands.
 *
 *   npm run mutate -- src/core/meal.ts            every fault of one file
 *   npm run mutate -- src/core --faults 100       a hundred of a folder, drawn by --seed
 *
 * Only the sixteen test files nearest to the faulty file are run (--tests 1000 for all that reach it), so what is
 * printed is at least noticed; a missed fault costs the time of all of them.
 */
import { readFileSync, readdirSync, statSync } from 'node:fs';
import { dirname, join, normalize, relative, resolve } from 'node:path';
import { transformWithEsbuild } from 'vite';
import { type TestSpecification, type Vitest, createVitest } from 'vitest/node';
import { chance, told } from './chance.ts';
import { type CodeFault, faultsOf, withFault } from './mutations.ts';

interface FaultAt {
  readonly file: string;
  readonly fault: CodeFault;
}

const tsFiles = (path: string): string[] =>
  statSync(path).isDirectory()
    ? readdirSync(path, { recursive: true, encoding: 'utf8' })
        .filter((name) => name.endsWith('.ts') && !name.endsWith('.d.ts'))
        .map((name) => join(path, name))
    : [normalize(path)];

const plainCode = async (file: string): Promise<string> =>
  (await transformWithEsbuild(readFileSync(file, 'utf8'), file, { target: 'esnext', sourcemap: false })).code;

/** The files of this program that a file loads when it runs. */
function loads(file: string): string[] {
  const text = readFileSync(file, 'utf8');
  return [
    ...text.matchAll(/^(?:import|export)\s+(?!type\b)[^;]*?from\s+'([^']+)'|import\('([^']+)'\)/gm),
  ].flatMap((found) => {
    const from = found[1] ?? found[2] ?? '';
    if (from.startsWith('#')) return [normalize(join('src', from.slice(1)))];
    return from.startsWith('.') ? [normalize(join(dirname(file), from))] : [];
  });
}

/** How many steps of loading lie between each test file and the files it reaches. */
function stepsFrom(test: string, loaded: ReadonlyMap<string, readonly string[]>): Map<string, number> {
  const steps = new Map([[test, 0]]);
  for (const [file, step] of steps) {
    // A request is found by its folder, not by an import.
    const next =
      file === 'src/chat/command-files.ts'
        ? [...loaded.keys()].filter((name) => name.startsWith('commands/'))
        : [];
    for (const to of [...(loaded.get(file) ?? []), ...next]) if (!steps.has(to)) steps.set(to, step + 1);
  }
  return steps;
}

/** Test files that reach a file, those nearest to it first. */
function testsByNearness(tests: readonly string[]): (file: string) => string[] {
  const all = [...tests, ...tsFiles('src'), ...tsFiles('commands'), ...tsFiles('test')];
  const loaded = new Map(all.map((file) => [file, loads(file)]));
  const reached = tests.map((test) => ({ test, steps: stepsFrom(test, loaded) }));
  return (file) =>
    reached
      .flatMap(({ test, steps }) => (steps.has(file) ? [{ test, steps: steps.get(file) ?? 0 }] : []))
      .toSorted((a, b) => a.steps - b.steps)
      .map(({ test }) => test);
}

/** Near tests first, a few at a time, so that most faults are noticed by the first few. */
function inRounds(tests: readonly string[]): string[][] {
  return [tests.slice(0, 4), tests.slice(4)].filter((round) => round.length > 0);
}

async function isNoticed(
  vitest: Vitest,
  tests: readonly string[],
  specs: ReadonlyMap<string, TestSpecification>,
): Promise<boolean> {
  for (const round of inRounds(tests)) {
    const chosen = round.flatMap((test) => specs.get(test) ?? []);
    const { testModules, unhandledErrors } = await vitest.runTestSpecifications(chosen);
    if (unhandledErrors.length > 0 || testModules.some((module) => !module.ok())) return true;
  }
  return false;
}

const layerOf = (file: string): string =>
  file.startsWith('src/') ? file.split('/').slice(0, 2).join('/') : 'commands';
const short = (code: string): string => code.replace(/\s+/g, ' ').slice(0, 70);

async function main(): Promise<void> {
  const places = process.argv
    .slice(2)
    .filter((word, at, all) => !word.startsWith('--') && !all[at - 1]?.startsWith('--'));
  if (places.length === 0)
    throw new Error('Name a file or a folder, such as: npm run mutate -- src/core/meal.ts');
  const draw = chance(told('seed', 1));
  const found: FaultAt[] = [];
  for (const file of places.flatMap(tsFiles)) {
    for (const fault of faultsOf(await plainCode(file))) found.push({ file, fault });
  }
  const drawn = found
    .map((one) => ({ one, lot: draw() }))
    .toSorted((a, b) => a.lot - b.lot)
    .slice(0, told('faults', found.length))
    .map(({ one }) => one);

  let now: FaultAt | null = null;
  const vitest = await createVitest(
    'test',
    {
      config: 'test/vitest.config.ts',
      watch: false,
      bail: 1,
      reporters: [{}],
      maxWorkers: told('workers', 1),
      minWorkers: 1,
    },
    {
      plugins: [
        {
          name: 'one-fault',
          enforce: 'pre',
          async load(id) {
            const file = relative('.', id.split('?')[0] ?? id);
            return now?.file === file ? withFault(await plainCode(file), now.fault) : null;
          },
        },
      ],
    },
  );
  const specs = new Map(
    (await vitest.globTestSpecifications()).map((spec) => [relative('.', spec.moduleId), spec]),
  );
  const nearest = testsByNearness([...specs.keys()]);
  const most = told('tests', 16);
  const byLayer = new Map<string, { noticed: number; missed: number }>();
  const set = (fault: FaultAt | null): void => {
    for (const one of [now, fault]) if (one) vitest.invalidateFile(resolve(one.file));
    now = fault;
  };
  for (const one of drawn) {
    set(one);
    const noticed = await isNoticed(vitest, nearest(one.file).slice(0, most), specs);
    const layer = byLayer.get(layerOf(one.file)) ?? { noticed: 0, missed: 0 };
    byLayer.set(layerOf(one.file), layer);
    layer[noticed ? 'noticed' : 'missed'] += 1;
    const { kind, within, was, now: becomes } = one.fault;
    if (!noticed)
      console.log(`missed  ${one.file} ${within}: ${kind}: ${short(was)} -> ${short(becomes) || 'nothing'}`);
  }
  set(null);
  await vitest.close();
  for (const [layer, { noticed, missed }] of byLayer) {
    const share = Math.round((100 * noticed) / (noticed + missed));
    console.log(`${layer}: ${noticed} of ${noticed + missed} noticed, ${share} %`);
  }
}

await main();
