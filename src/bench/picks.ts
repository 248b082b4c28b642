import load from 'highs';
import { monitorEventLoopDelay } from 'node:perf_hooks';
import { fileURLToPath } from 'node:url';
import { seeded } from '#core/picks/chance.ts';
import { greedyState } from '#core/picks/greedy.ts';
import { makeGrid } from '#core/picks/make-grid.ts';
import { measure } from '#core/picks/measure.ts';
import { pickPouches } from '#core/picks/pick.ts';
import {
  at,
  lastBounded,
  levelNames,
  type Lot,
  type PicksProblem,
  type PicksResult,
} from '#core/picks/problem.ts';
import { openSolver } from '#solver/solver.ts';
import { linearFrom } from '../solver/highs.ts';

/** Invented names; the figures are drawn from a seed, so that everybody measures the same trips. */
const names = ['Ondra', 'Mirel', 'Tove', 'Bashir', 'Lune', 'Quill', 'Saoirse', 'Pim', 'Yaro', 'Dagny'];
const dishes = [
  'ember stew', 'harbour rice', 'moss pilaf', 'copper beans', 'lantern dal', 'quarry oats', 'willow soup', 'amber hash',
  'fjord chowder', 'saffron mash', 'barley bowl', 'plum porridge', 'cinder chilli', 'meadow pasta',
]; // prettier-ignore

export interface Shape {
  readonly eaters: number;
  readonly days: number;
  readonly meals: number;
  readonly pouches: number;
  readonly stock: 'ample' | 'short' | 'barely' | 'tight';
  /** With breakfasts, mains and sides, energy floors and pouches of odd sizes, as families have them. */
  readonly family?: boolean;
}

/** A trip of the given shape; 'short' has four fifths of the portions, 'barely'
 * the nine tenths that count as fed if not a spoon were lost, 'tight' one eater with two safe meals. */
export function makeInstance(shape: Shape, seed: number): PicksProblem {
  const chance = seeded(seed);
  const portions = [20, 30, 12, 20, 12, 20, 30, 20, 12, 20];
  const eaters = Array.from({ length: shape.eaters }, (_, i) => ({
    key: `e${i}`,
    name: names[i] ?? `Scout ${i}`,
    portionTwentieths: portions[i % portions.length]!,
    sodiumLimitMg: i % 3 === 0 ? 2000 : null,
    energyKcal: i % 2 === 0 ? 2200 : null,
  }));
  const mealCount = Math.min(dishes.length, 6 + Math.floor(shape.pouches / 40));
  const slots = Array.from({ length: shape.days * shape.meals }, (_, i) => ({
    key: `s${i}`,
    day: 100 + Math.floor(i / shape.meals),
    order: i % shape.meals,
    eaters: eaters.filter(() => chance.below(20) > 0).map((e) => e.key),
  }));
  const lots: Lot[] = [];
  let made = 0;
  const need = slots.reduce(
    (sum, s) => sum + s.eaters.reduce((n, k) => n + portions[Number(k.slice(1)) % portions.length]!, 0),
    0,
  );
  let stock = 0;
  for (let batch = 1; made < shape.pouches; batch += 1) {
    const size = [20, 40, 20, 60, 40, 30][chance.below(6)]!;
    const count = Math.min(shape.pouches - made, 4 + chance.below(9));
    made += count;
    const wanted =
      shape.stock === 'short' || shape.stock === 'barely'
        ? Math.max(0, Math.floor(((shape.stock === 'short' ? 0.8 : 0.9) * need - stock) / size))
        : count;
    const kept = Math.min(count, wanted);
    stock += kept * size;
    if (kept === 0) continue;
    const dryG = size * (4 + chance.below(3));
    lots.push({
      code: `B${batch}/${dryG}`,
      meal: dishes[chance.below(mealCount)]!,
      pouches: Array.from({ length: kept }, (_, i) => `B${batch}-${i + 1}`),
      servingsTwentieths: size,
      dryG,
      waterMl: dryG * 3,
      sodiumMgPerServing: 400 + 50 * chance.below(14),
      kcalPerServing: 450 + 25 * chance.below(16),
      bestBy: 102 + chance.below(shape.stock === 'tight' ? 300 : 2500),
      steady: true,
    });
  }
  const meals = [...new Set(lots.map((l) => l.meal))];
  const pairs = eaters.flatMap((e) => meals.map((meal) => ({ eater: e.key, meal })));
  const picky = shape.stock === 'tight' ? 'e2' : '';
  const safe = pairs.filter((p) => (p.eater === picky ? meals.indexOf(p.meal) < 2 : chance.below(8) > 0));
  const drawn: PicksProblem = {
    lots,
    eaters,
    slots,
    safe,
    dislikes: pairs.filter(() => chance.below(10) === 0),
    wishes: eaters.flatMap((e) =>
      [1, 2, 3].map((rank) => ({
        eater: e.key,
        meal: meals[chance.below(meals.length)]!,
        slot: chance.below(2) === 0 ? null : slots[chance.below(slots.length)]!.key,
        rank,
      })),
    ),
  };
  return shape.family === true ? asFamilies(drawn, shape, seed) : drawn;
}

/** Every third meal is a breakfast, one in seven goes beside; the first of three meals a day is breakfast. */
function asFamilies(problem: PicksProblem, shape: Shape, seed: number): PicksProblem {
  const chance = seeded(seed + 77);
  const meals = [...new Set(problem.lots.map((l) => l.meal))];
  const uses = meals.map((meal, i) => ({
    meal,
    is: [i % 7 === 6 ? ('sweet' as const) : i % 3 === 2 ? ('breakfast' as const) : ('main' as const)],
  }));
  const share = [0.2, 0.3, 0.3];
  return {
    ...problem,
    uses,
    lots: problem.lots.map((lot) => ({
      ...lot,
      servingsTwentieths: lot.servingsTwentieths - 3 + chance.below(7),
    })),
    slots: problem.slots.map((slot) => {
      const order = shape.meals === 3 ? slot.order : slot.order + 1;
      return {
        ...slot,
        carriedBy: [order === 0 ? 'breakfast' : 'main'],
        beside: ['sweet'],
        floors: slot.eaters.map((eater) => {
          const { portionTwentieths } = problem.eaters.find((e) => e.key === eater)!;
          return { eater, kcal: Math.round(share[order]! * (1200 + 70 * portionTwentieths)) };
        }),
      };
    }),
  };
}

const shapes = [
  { eaters: 4, days: 3, meals: 2, pouches: 60, aimSeconds: 0.5 },
  { eaters: 6, days: 7, meals: 3, pouches: 200, aimSeconds: 0.5 },
  { eaters: 6, days: 7, meals: 3, pouches: 200, aimSeconds: 0.5, family: true },
  { eaters: 8, days: 14, meals: 3, pouches: 400, aimSeconds: 2 },
  { eaters: 8, days: 14, meals: 3, pouches: 400, aimSeconds: 2, family: true },
  { eaters: 13, days: 3, meals: 2, pouches: 150, aimSeconds: 2 },
];
/** The largest that is answered at all; one seed. */
const largest = { eaters: 20, days: 30, meals: 3, pouches: 3000, stock: 'ample', family: true } as const;
const stocks = ['ample', 'short', 'barely', 'tight'] as const;
const seeds = [1, 2, 3];

/** '0=' is proven; '12>10' has the bound 10. */
const showLevels = (result: PicksResult): string =>
  result.levels.map((l) => (l.proven ? `${l.value}=` : `${l.value}>${l.bound}`)).join(' / ');

/** Longest and 99th-percentile delay of this thread's event loop while the work runs, ms. */
async function delayWhile(work: () => Promise<unknown>): Promise<{ mostMs: number; highMs: number }> {
  const monitor = monitorEventLoopDelay({ resolution: 2 });
  monitor.enable();
  await work();
  monitor.disable();
  return { mostMs: monitor.max / 1e6, highMs: monitor.percentile(99) / 1e6 };
}

async function bench(): Promise<void> {
  const linear = linearFrom(await load());
  console.log(`levels: ${levelNames.join(' / ')}`);
  console.log("after a value: '=' proven, '>' the bound it is known not to be below\n");
  for (const { aimSeconds, ...shape } of shapes) {
    for (const stock of stocks) {
      for (const seed of seeds) {
        const problem = makeInstance({ ...shape, stock }, seed);
        const grid = makeGrid(problem);
        const plain = measure(grid, greedyState(grid));
        const [start, cpu] = [performance.now(), process.cpuUsage()];
        const result = pickPouches(problem, linear);
        const seconds = (performance.now() - start) / 1000;
        const spent = process.cpuUsage(cpu);
        const cpuSeconds = (spent.user + spent.system) / 1e6;
        const open = result.levels.slice(0, at[lastBounded] + 1).filter((l) => !l.proven);
        const gaps = open.map((l) => `${l.level} ${l.gap}`).join(', ') || 'none';
        const name = `${shape.eaters} eaters, ${shape.days} days, ${shape.meals} meals, ${shape.pouches} pouches, ${stock}${shape.family ? ', as families' : ''}, seed ${seed}`;
        console.log(
          `${name}: ${seconds.toFixed(2)} s (${(seconds / aimSeconds).toFixed(2)} of the aim; ${cpuSeconds.toFixed(2)} s of processor), open down to waste: ${gaps}`,
        );
        console.log(`  plain list ${plain.join(' / ')}`);
        console.log(`  picks      ${showLevels(result)}`);
      }
    }
  }
  const began = performance.now();
  const whole = pickPouches(
    makeInstance(largest, 1),
    linear,
    undefined,
    () => 9 - (performance.now() - began) / 1000,
  );
  const took = (performance.now() - began) / 1000;
  console.log(
    `20 eaters, 30 days, 3 meals, 3000 pouches, as families: ${took.toFixed(1)} s (${(took / 10).toFixed(2)} of the aim), ${whole.clockEnded ? 'ended by the clock' : 'ended by its counts'}`,
  );
  console.log(`  picks      ${showLevels(whole)}`);
  const solver = openSolver();
  const large = makeInstance({ ...shapes[3]!, stock: 'ample' }, 1);
  await solver.solvePicks(makeInstance({ ...shapes[0]!, stock: 'ample' }, 1)); // so that starting up is not measured
  const idle = await delayWhile(() => new Promise((done) => setTimeout(done, 1000)));
  const busy = await delayWhile(() => solver.solvePicks(large));
  await solver.dispose();
  console.log(
    `\nevent loop of the main thread while the thread picks, as a ratio to idle: 99th percentile ${(busy.highMs / idle.highMs).toFixed(2)}, longest ${(busy.mostMs / idle.mostMs).toFixed(2)} (longest ${busy.mostMs.toFixed(1)} ms)`,
  );
}

if (process.argv[1] === fileURLToPath(import.meta.url)) await bench();
