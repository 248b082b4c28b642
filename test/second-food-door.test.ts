import * as fc from 'fast-check';
import { expect, test } from 'vitest';
import { kitchen } from '#foods/kitchen.ts';
import { openTestHouse } from './house.ts';

/** More than these few typed recipes only where somebody asks for them. */
const runs = Number(process.env['SECOND_FOODS'] ?? 0) > 0 ? 400 : 40;

const spoken = [
  ['peanut', 'no peanuts'],
  ['milk', 'no milk'],
  ['egg', 'no eggs'],
  ['sesame', 'no sesame'],
  ['crustaceans', 'no prawns'],
  ['wheat', 'no gluten'],
  ['soy', 'no soya'],
] as const;
const plain = kitchen()
  .filter(({ contents }) => contents.contains.length + contents.check.length === 0)
  .flatMap(({ names }) => names.slice(0, 2))
  .filter((name) => !/ or /.test(name));

test('typed as a recipe, a second food that somebody must not have is never clear for them', () => {
  const house = openTestHouse();
  for (const [tag, words] of spoken) house.say(`/eater "${tag}" child 7 ${words}`);
  let count = 0;
  fc.assert(
    fc.property(
      fc.constantFrom(...spoken),
      fc.constantFrom(...plain),
      fc.constantFrom(
        ' with ',
        ' in ',
        ', ',
        ' / ',
        ' or ',
        ' stuffd with ',
        ' (',
        ' & ',
        ' zzyx ',
        ', plus ',
      ),
      fc.nat(10_000),
      ([tag], first, between, pick) => {
        const holding = kitchen().filter(
          ({ contents, state }) => state === null && [...contents.contains, ...contents.check].includes(tag),
        );
        const second = holding[pick % holding.length]!.called;
        const answer = house.say(`/recipe Try ${++count}, 2 servings\n200 g ${first}${between}${second}`);
        const line = answer.split('\n').find((one) => one.startsWith(`${tag}: `));
        expect([`${first}${between}${second}`, line]).toEqual([
          `${first}${between}${second}`,
          expect.stringMatching(/: (?:unknown|not for you)/),
        ]);
      },
    ),
    { numRuns: runs },
  );
});
