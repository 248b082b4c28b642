import { readdirSync, readFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { expect, test } from 'vitest';
import { sources } from '#core/sources.ts';

const here = (path: string) => fileURLToPath(new URL(path, import.meta.url));
const core = here('../../src/core');
const text = readdirSync(core, { recursive: true, encoding: 'utf8' })
  .filter((name) => name.endsWith('.ts') && name !== 'sources.ts')
  .map((name) => readFileSync(`${core}/${name}`, 'utf8'))
  .join('\n');
const named = new Set([...text.matchAll(/@source ([a-z0-9-]+)/g)].map((match) => match[1]));

test('every source a docblock names is listed', () => {
  expect([...named].filter((key) => key !== undefined && !(key in sources))).toEqual([]);
});
test('every listed source is named somewhere, and in alphabetical place', () => {
  expect(Object.keys(sources).filter((key) => !named.has(key))).toEqual([]);
  expect(Object.keys(sources)).toEqual(Object.keys(sources).toSorted());
});
test('every listed source has its check values', () => {
  const files = readdirSync(here('../published'));
  // SR28 is a table, not a formula: it is held by the tests of the foods that read it.
  const held = Object.keys(sources).filter((key) => key !== 'usda-sr28');
  expect(held.filter((key) => !files.includes(`${key}.test.ts`))).toEqual([]);
});
