// Witness: none outside; the faults are worked by hand from the code beside them.
import { expect, test } from 'vitest';
import { faultsOf, withFault } from '../../src/bench/mutations.ts';

const changed = (code: string) => faultsOf(code).map((fault) => [fault.kind, withFault(code, fault)]);

test.each([
  ['const a = b < c;', [['comparison', 'const a = b <= c;']]],
  ['const a = b === c;', [['comparison', 'const a = b !== c;']]],
  ['const a = Math.max(b, c);', [['comparison', 'const a = Math.min(b, c);']]],
  ['const a = b + c;', [['dropped term', 'const a = (b);']]],
  ['const a = b ?? c;', [['dropped term', 'const a = (b);']]],
  ['const a = 24;', [['constant', 'const a = 25;']]],
  ['const a = 0.5;', [['constant', 'const a = 0.55;']]],
  ['const a = b.filter(c);', [['dropped guard', 'const a = b;']]],
  ['for (const a of b) { if (a) continue; c(a); }', [['dropped guard', 'for (const a of b) {  c(a); }']]],
])('%s', (code, faults) => {
  const found = changed(code);
  for (const [i, [kind, now]] of faults.entries()) {
    expect(found[i]?.[0]).toBe(kind);
    expect(found[i]?.[1]).toBe(now);
  }
  expect(found).toHaveLength(faults.length);
});

test('a unit is swapped where a value is read, and the fault says where it stands', () => {
  const [fault] = faultsOf('function f(waterMl) { return waterMl; }');
  expect(fault).toMatchObject({ kind: 'swapped unit', was: 'waterMl', now: '(waterMl * 1000)', within: 'f' });
});

test('what only an else may follow is left alone, and so is what comes from elsewhere', () => {
  expect(faultsOf("import { aG } from './b.js';")).toEqual([]);
  expect(faultsOf('if (a) { b(); } else { c(); }')).toEqual([]);
});
