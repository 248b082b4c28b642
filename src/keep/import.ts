import { readConfig } from '#config.ts';
import { importHousehold } from '#store/import.ts';

// npm run import -- FILE: reads an exported household into an empty database.

process.umask(0o077);
try {
  const { databasePath } = readConfig(process.env);
  const file = process.argv[2];
  if (file === undefined) {
    process.stdout.write('Which file? npm run import -- household.json\n');
    process.exitCode = 1;
  } else {
    const counts = importHousehold(file, databasePath);
    process.stdout.write(
      `${databasePath} holds the household now: ${counts['recipe']} recipes, ${counts['batch']} batches, ${counts['pouch']} pouches, ${counts['trip']} trips.\n`,
    );
  }
} catch (error) {
  process.stderr.write(`${error instanceof Error ? error.message : String(error)}\n`);
  process.exitCode = 1;
}
