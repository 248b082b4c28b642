// Witness: common practice, no source. That the lock ends with a killed process is tested with the door.
import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { expect, test } from 'vitest';
import { lockHousehold } from '#store/lock.ts';

test('a household has one bot at a time', () => {
  const folder = mkdtempSync(join(tmpdir(), 'household-'));
  const path = join(folder, 'deep', 'h.db');
  const unlock = lockHousehold(path);
  expect(() => lockHousehold(path)).toThrow(/Another bot is running on .*h\.db/);
  unlock();
  lockHousehold(path)();
  rmSync(folder, { recursive: true });
});
