import { test } from 'vitest';
import { naClGOfSodium, sodiumMgOfNaCl, sodiumMgOfTableSalt, sodiumOfNaClMgPerG } from '#core/nutrition.ts';
import { saltGPerTeaspoon } from '#core/scaling.ts';
import { near } from './near.ts';

// IUPAC standard atomic weights Na 22.98977, Cl 35.453; from memory.
test('i-na-nacl', () => {
  near(sodiumOfNaClMgPerG / 1000, {
    row: 'i-na-nacl',
    published: 0.39337,
    within: 0.0001,
    witness: 'from memory',
  });
});

// The same ratio, mg of sodium.
test.each([
  { row: 'i-salt-1', saltG: 1, published: 393.4, within: 1, witness: 'from memory' },
  { row: 'i-salt-5', saltG: 5, published: 1966.9, within: 1, witness: 'from memory' },
  { row: 'i-salt-6', saltG: 6, published: 2360.2, within: 1, witness: 'from memory' },
  { row: 'i-salt-5.85', saltG: 5.85, published: 2301.2, within: 1, witness: 'from memory' },
])('$row: $saltG g of pure salt', ({ saltG, ...row }) => {
  near(sodiumMgOfNaCl(saltG), row);
});

test('i-na-to-salt', () => {
  near(naClGOfSodium(2300), { row: 'i-na-to-salt', published: 5.85, within: 0.01, witness: 'from memory' });
});

// USDA SR28 02047, table salt: 38758 mg in 100 g and 6.0 g a teaspoon (read); 1.5 % below pure salt.
test('i-salt-sr28', () => {
  near(sodiumMgOfTableSalt(saltGPerTeaspoon), {
    row: 'i-salt-sr28',
    published: 2325.5,
    within: 0.5,
    witness: 'read',
  });
});
