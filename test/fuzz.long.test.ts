import { expect, test } from 'vitest';
import { readCommands } from '#chat/registry.ts';
import { fuzz, quantile, repeated } from './fuzz.ts';
import { eating } from './requests/eating.ts';
import { kitchen } from './requests/kitchen.ts';
import { people } from './requests/people.ts';
import { refused } from './requests/refused.ts';
import { openSeason } from './season.ts';

const commands = await readCommands();
const real = [
  ...[...eating, ...kitchen, ...people, ...refused].map(([typed]) => typed),
  ...commands.flatMap((c) => c.examples),
  '/recipe Chili, 4 servings\n2 x 400 g tins kidney beans, drained\n1 large onion, chopped\n½ cup red lentils\n1 tsp salt',
  '/recipe Trial, 2 servings: 1 (14 oz) can tomatoes; 1 cup plus 2 tbsp flour; juice of 2 limes; a pinch of salt',
  'by curry we mean lentil pot',
];

/** `npm run fuzz` asks for 100,000; the tests send a few. */
const wanted = Number(process.env['FUZZ_MESSAGES'] ?? 1500);
const isLong = wanted > 10_000;
const seed = Number(process.env['FUZZ_SEED'] ?? 20270403);

test(`${wanted} generated messages break nothing, and no answer that is an error changed a record`, () => {
  const { counts, times, faults } = fuzz(wanted, seed, real, commands);
  const sorted = times.map(({ ms }) => ms).toSorted((a, b) => a - b);
  const worst = times.toSorted((a, b) => b.ms - a.ms).slice(0, 8);
  const ms = (value: number) => `${value.toFixed(2)} ms`;
  console.log(
    [
      `${times.length} messages, seed ${seed}: ${Object.entries(counts)
        .map(([what, count]) => `${count} ${what}`)
        .join(', ')}; ${faults.length} faults`,
      `median ${ms(quantile(sorted, 0.5))}, p99 ${ms(quantile(sorted, 0.99))}, most ${ms(sorted.at(-1) ?? 0)}`,
      ...(isLong
        ? worst.map((one) => `  ${ms(one.ms)} for ${one.length} characters: ${JSON.stringify(one.typed)}`)
        : []),
    ].join('\n'),
  );
  expect(faults.slice(0, 20)).toEqual([]);
  // Times are held only where nothing else runs: in `npm run fuzz`.
  if (isLong) expect(quantile(sorted, 0.99)).toBeLessThan(20);
}, 3_600_000);

/** What a message may open with. */
const starts = commands.filter((c) => c.planned === null).map((c) => `/${c.name} `);

if (isLong)
  test('the time grows with the length, not faster', () => {
    const slow: string[] = [];
    const perThousand: number[] = [];
    for (const start of starts)
      for (const piece of repeated) {
        const house = openSeason();
        const took = (length: number) => {
          const text = start + piece.repeat(Math.ceil(length / piece.length));
          let least = Infinity;
          for (let turn = 0; turn < 2; turn++) {
            const from = performance.now();
            house.say(text);
            least = Math.min(least, performance.now() - from);
          }
          return least;
        };
        let [short, long] = [took(2000), took(16_000)];
        // Eight times the length; quadratic time would be sixty-four times. What looks slow is looked at again, as
        // something else may have had the machine.
        const isSlow = () => long > 40 && long / Math.max(short, 1) > 24;
        for (let again = 0; again < 4 && isSlow(); again++) {
          short = Math.max(short, took(2000));
          long = Math.min(long, took(16_000));
        }
        house.db.close();
        perThousand.push(long / 16);
        if (isSlow())
          slow.push(`${JSON.stringify(start + piece)}: ${short.toFixed(1)} to ${long.toFixed(1)} ms`);
      }
    const sorted = perThousand.toSorted((a, b) => a - b);
    console.log(
      `${sorted.length} kinds of 16,000 characters: median ${quantile(sorted, 0.5).toFixed(2)} ms a thousand, most ${sorted.at(-1)!.toFixed(2)} ms`,
    );
    expect(slow).toEqual([]);
  }, 600_000);
