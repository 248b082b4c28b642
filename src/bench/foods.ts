import { readFileSync } from 'node:fs';
import { z } from 'zod';
import { nuts } from '#core/allergens.ts';
import { type Avoidance, avoidanceOf } from '#core/avoidance.ts';
import { verdictFor } from '#core/verdict.ts';
import { avoidancesOf } from '#house/verdicts.ts';
import { resolveLine } from '#foods/line.ts';
import { openFoods } from '#store/foods.ts';
import { neverOf } from './said-eater.ts';
import { type EatenBy, ingredientsOf, plainMeals } from './plain-meals.ts';

/** A line and what is in it: `certain` must be blocked, `likely` must not be clear, `may` is either; '*' is everything. */
const FoodRow = z.object({
  typed: z.string(),
  certain: z.array(z.string()),
  likely: z.array(z.string()),
  may: z.array(z.string()),
  set: z.string(),
});
/** A line and a verdict by diet: B blocked, U unknown, C clear, x any. */
const DietRow = z.object({ typed: z.string(), diets: z.record(z.string(), z.string()), set: z.string() });
/** How somebody says what an eater never eats, and lines that must not be clear for them. */
const EaterRow = z.object({ eater: z.string(), must_not_be_clear: z.array(z.string()) });
const Row = z.union([FoodRow, DietRow, EaterRow]);

const tags: Readonly<Record<string, Avoidance>> = {
  soy: { is: 'allergen', tags: ['soy'] },
  wheat: { is: 'allergen', tags: ['wheat'] },
  gluten: { is: 'allergen', tags: ['wheat', 'rye', 'barley', 'oats'] },
  milk: { is: 'allergen', tags: ['milk'] },
  egg: { is: 'allergen', tags: ['egg'] },
  fish: { is: 'allergen', tags: ['fish'] },
  crustacean: { is: 'allergen', tags: ['crustaceans'] },
  mollusc: { is: 'allergen', tags: ['molluscs'] },
  nut: { is: 'allergen', tags: nuts },
  peanut: { is: 'allergen', tags: ['peanut'] },
  sesame: { is: 'allergen', tags: ['sesame'] },
  celery: { is: 'allergen', tags: ['celery'] },
  mustard: { is: 'allergen', tags: ['mustard'] },
  sulphite: { is: 'allergen', tags: ['sulphites'] },
  lupin: { is: 'allergen', tags: ['lupin'] },
};

type Said = 'clear' | 'blocked' | 'unknown';
const table = openFoods(':memory:');

const verdict = (typed: string, avoid: readonly Avoidance[]): Said =>
  verdictFor(ingredientsOf(resolveLine(typed, table)), avoid).is;
const asks = (typed: string) => resolveLine(typed, table).question !== null;
const ofDiet = (name: string): Avoidance[] => {
  const known = avoidanceOf(name);
  return known ? [known] : avoidancesOf([name]);
};

const [, , file, ...flags] = process.argv;
if (file === undefined) {
  console.error(
    'Usage: npm run bench:foods -- FILE [--each]    FILE: one JSON object a line: typed, certain, likely, may, set; or typed, diets; or eater, must_not_be_clear',
  );
  process.exit(2);
}
const rows = readFileSync(file, 'utf8')
  .split('\n')
  .filter((line) => line.trim() !== '')
  .map((line) => Row.parse(JSON.parse(line)));

interface Judged {
  readonly typed: string;
  readonly set: string;
  readonly verdicts: Readonly<Record<string, Said>>;
  /** Shown clear though it is there. */
  readonly missed: readonly string[];
  readonly right: number;
  readonly wanted: number;
  /** Not clear, though nothing says that it is there. */
  readonly over: readonly string[];
  /** Certain, and only shown unknown. */
  readonly unsure: readonly string[];
}

function judge(row: z.infer<typeof Row>): Judged[] {
  if ('eater' in row) {
    const never = neverOf(row.eater);
    return row.must_not_be_clear.map((typed) => {
      // Somebody whose words were not understood is not recorded without them.
      const said = never === null ? 'unknown' : verdict(typed, avoidancesOf(never));
      const name = `${row.eater}: ${typed}`;
      const missed = said === 'clear' ? [row.eater] : [];
      return { typed: name, set: 'eater', verdicts: { [row.eater]: said }, missed, right: 1 - missed.length, wanted: 1, over: [], unsure: [] };
    }); // prettier-ignore
  }
  const names = 'diets' in row ? Object.keys(row.diets) : Object.keys(tags);
  const verdicts = Object.fromEntries(
    names.map((name) => [name, verdict(row.typed, 'diets' in row ? ofDiet(name) : [tags[name]!])]),
  );
  const is = (name: string) => verdicts[name]!;
  const [certain, likely, may] =
    'diets' in row
      ? [pick(row.diets, 'B'), pick(row.diets, 'U'), pick(row.diets, 'x')]
      : [row.certain, row.likely, row.may.includes('*') ? names : row.may];
  const there = [...certain, ...likely];
  const missed = there.filter((name) => is(name) === 'clear');
  const over = names.filter((name) => is(name) !== 'clear' && ![...there, ...may].includes(name));
  const unsure = certain.filter((name) => is(name) === 'unknown');
  const right = there.length - missed.length - unsure.length;
  return [{ typed: row.typed, set: row.set, verdicts, missed, right, wanted: there.length, over, unsure }];
}

const pick = (diets: Readonly<Record<string, string>>, letter: string) =>
  Object.keys(diets).filter((name) => diets[name] === letter);

if (flags.includes('--each'))
  for (const row of rows)
    for (const { typed, verdicts } of judge(row)) console.log(JSON.stringify({ typed, verdicts }));
else report(rows.flatMap(judge));

function report(all: readonly Judged[]): void {
  for (const { typed, set, missed, unsure, over } of all) {
    if (missed.length > 0) console.log(`CLEAR though there: ${missed.join(', ')}  "${typed}" (${set})`);
    if (flags.includes('--all') && unsure.length > 0) console.log(`unknown though certain: ${unsure.join(', ')}  "${typed}"`); // prettier-ignore
    if (flags.includes('--all') && over.length > 0)
      console.log(`over-cautious: ${over.join(', ')}  "${typed}"`);
  }
  console.log('Meals of our own that an eater may still eat:');
  for (const one of plainMeals(table)) console.log(`  ${sayEaten(one)}`);
  console.log(
    'By set: lines, things in them, shown clear, unknown where certain, over-cautious, lines that ask',
  );
  for (const set of [...new Set(all.map((one) => one.set))].toSorted()) sum(set, all.filter((one) => one.set === set)); // prettier-ignore
  sum('all', all);
}

function sayEaten({ who, clear, of }: EatenBy): string {
  return `${who.padEnd(14)} ${clear} of ${of} meals clear`;
}

function sum(name: string, some: readonly Judged[]): void {
  const count = (of: (one: Judged) => number) => some.reduce((total, one) => total + of(one), 0);
  const asked = some.filter(({ typed, set }) => set !== 'eater' && asks(typed)).length;
  console.log(
    `${name.padEnd(15)} ${String(some.length).padStart(4)} lines  ${String(count((one) => one.wanted)).padStart(4)} there  clear ${count((one) => one.missed.length)}  unsure ${count((one) => one.unsure.length)}  over ${count((one) => one.over.length)}  asks ${asked}`,
  );
}
