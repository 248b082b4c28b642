import { readConfig } from '#config.ts';
import { backupsOf } from '#store/backups.ts';
import { restore } from '#store/restore.ts';

// npm run restore -- FILE: puts a backup in the place of the records.

function say(line: string): void {
  process.stdout.write(`${line}\n`);
}

process.umask(0o077);
try {
  const { databasePath } = readConfig(process.env);
  const file = process.argv[2];
  if (file === undefined) {
    const there = backupsOf(databasePath);
    say('Which backup? npm run restore -- FILE');
    say(there.length === 0 ? `There is none of ${databasePath} yet.` : 'There are:');
    for (const { path } of there) say(`  ${path}`);
    process.exitCode = 1;
  } else {
    const { holds, replaced } = restore(file, databasePath, Date.now());
    const last =
      holds.lastAtMs === null ? '' : `, the last recorded ${new Date(holds.lastAtMs).toISOString()}`;
    say(`${file} is whole: ${holds.households} household(s), ${holds.pouches} pouch(es)${last}.`);
    say(
      `It is ${databasePath} now.${replaced === null ? '' : ` What was there before is kept as ${replaced}.`}`,
    );
  }
} catch (error) {
  process.stderr.write(`${error instanceof Error ? error.message : String(error)}\n`);
  process.exitCode = 1;
}
