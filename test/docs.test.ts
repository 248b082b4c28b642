import { existsSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { expect, test } from 'vitest';
import { helpTable } from '#chat/help.ts';
import { readCommands } from '#chat/registry.ts';

const root = join(import.meta.dirname, '..');
const read = (name: string) => readFileSync(join(root, name), 'utf8');

/** The README's generated parts: what stands between the marks is made from the code. */
async function generated(): Promise<Record<string, string>> {
  const season = read('fixtures/chats/season.chat').split('\n');
  const from = season.findIndex((line) => line.startsWith('Ines: /recipe Barley soup'));
  const to = season.findIndex((line, i) => i > from && line.startsWith('[2027-05-14'));
  return {
    'chat: season.chat': `\`\`\`text\n${season.slice(from, to).join('\n').trim()}\n\`\`\``,
    requests: helpTable(await readCommands()),
  };
}

async function withGenerated(readme: string): Promise<string> {
  let text = readme;
  for (const [mark, content] of Object.entries(await generated())) {
    const pattern = new RegExp(`<!-- ${mark} -->\\n(?:[\\s\\S]*?\\n<!-- end -->\\n)?`);
    expect(readme, mark).toMatch(pattern);
    text = text.replace(pattern, () => `<!-- ${mark} -->\n\n${content}\n\n<!-- end -->\n`);
  }
  return text;
}

test("the README's chat and table are those of the code", async () => {
  await expect(await withGenerated(read('README.md'))).toMatchFileSnapshot(join(root, 'README.md'));
});

test.each(['README.md', 'DEVELOPERS.md'])('every script and path that %s names exists', (name) => {
  const text = read(name);
  const { scripts } = JSON.parse(read('package.json')) as { scripts: Record<string, string> };
  const named = [...text.matchAll(/npm run ([a-z:]+)/g)].map((m) => m[1]!);
  expect(named.filter((script) => !(script in scripts))).toEqual([]);
  const paths = [...text.matchAll(/`((?:src|test|commands|fixtures|\.ci)\/[\w./-]*)`/g)].map((m) => m[1]!);
  expect(paths.length).toBeGreaterThan(0);
  // An example of a file to write is named with the word thaw.
  expect(
    paths.filter((path) => !path.includes('thaw') && !path.includes('…') && !existsSync(join(root, path))),
  ).toEqual([]);
});

test('the top level holds what the house agreed on and nothing else', async () => {
  const { execFileSync } = await import('node:child_process');
  const tracked = execFileSync('git', ['ls-files'], { cwd: root, encoding: 'utf8' }).trim().split('\n');
  const top = [...new Set(tracked.map((path) => path.split('/')[0]!))].filter(
    (name) => !name.startsWith('.'),
  );
  expect(top.toSorted()).toEqual(
    [
      'DEVELOPERS.md',
      'LICENSE',
      'README.md',
      'commands',
      'fixtures',
      'package-lock.json',
      'package.json',
      'src',
      'test',
      'tsconfig.json',
    ].toSorted(),
  );
});
