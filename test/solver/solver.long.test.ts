import load from 'highs';
import { execFile } from 'node:child_process';
import { promisify } from 'node:util';
import { fileURLToPath } from 'node:url';
import { afterAll, describe, expect, test } from 'vitest';
import { pickPouches } from '#core/picks/pick.ts';
import { openSolver } from '#solver/solver.ts';
import { makeInstance } from '../../src/bench/picks.ts';
import { linearFrom } from '../../src/solver/highs.ts';
import { tinyProblem } from '../core/picks/tiny.ts';

// Witness: the same question asked in this thread.
const solver = openSolver();
afterAll(() => solver.dispose());

describe('the solver thread', { timeout: 30_000 }, () => {
  test('answers as the picks do in this thread, one question after the other', async () => {
    const linear = linearFrom(await load());
    const problems = [1, 2, 3].map(tinyProblem);
    const answers = await Promise.all(problems.map((p) => solver.solvePicks(p)));
    expect(answers).toEqual(problems.map((p) => pickPouches(p, linear)));
  });

  test('leaves this thread free while it works', async () => {
    let ticks = 0;
    const timer = setInterval(() => (ticks += 1), 5);
    await solver.solvePicks(makeInstance({ eaters: 6, days: 7, meals: 3, pouches: 200, stock: 'ample' }, 1));
    clearInterval(timer);
    expect(ticks).toBeGreaterThan(10);
  });

  test('a question that is cancelled rejects at once, and the next is answered', async () => {
    const control = new AbortController();
    const long = solver.solvePicks(
      makeInstance({ eaters: 8, days: 14, meals: 3, pouches: 400, stock: 'barely' }, 2),
      { signal: control.signal },
    );
    const waiting = solver.solvePicks(tinyProblem(4));
    setTimeout(() => control.abort(new Error('the trip changed')), 50);
    await expect(long).rejects.toThrow('the trip changed');
    expect((await waiting).slots).toHaveLength(tinyProblem(4).slots.length);
  });

  test('a question cancelled before its turn never runs', async () => {
    const control = new AbortController();
    control.abort(new Error('never mind'));
    await expect(solver.solvePicks(tinyProblem(5), { signal: control.signal })).rejects.toThrow('never mind');
  });

  test('households take turns: one that asks a lot does not keep another waiting', async () => {
    const done: string[] = [];
    const ask = (household: number, name: string) =>
      solver.solvePicks(tinyProblem(10), { household }).then(() => done.push(name));
    await Promise.all([ask(1, 'a1'), ask(1, 'a2'), ask(1, 'a3'), ask(2, 'b1'), ask(2, 'b2'), ask(3, 'c1')]);
    expect(done).toEqual(['a1', 'b1', 'c1', 'a2', 'b2', 'a3']);
  });

  test('says why a pouch is in the plan', async () => {
    const problem = tinyProblem(6);
    const plan = await solver.solvePicks(problem);
    const pouch = plan.slots.flatMap((s) => s.dishes.flatMap((d) => d.pouches))[0]!;
    const reason = await solver.whyThisPouch(problem, plan, pouch);
    expect(reason.level === null || reason.without! > reason.withIt!).toBe(true);
  });

  test('a bug in the thread rejects its question and no other', async () => {
    const broken = { ...tinyProblem(7), eaters: null } as unknown as ReturnType<typeof tinyProblem>;
    await expect(solver.solvePicks(broken)).rejects.toThrow();
    await expect(solver.solvePicks(tinyProblem(8))).resolves.toBeDefined();
  });

  test('disposing rejects what is open', async () => {
    const other = openSolver();
    const open = other.solvePicks(tinyProblem(9));
    await other.dispose();
    await expect(open).rejects.toThrow('disposed');
  });

  test('under tsx it answers and lets the program end', async () => {
    const script = `
      import { solvePicks } from ${JSON.stringify(new URL('../../src/solver/solver.ts', import.meta.url).href)};
      const lot = { code: 'B1/80', meal: 'ash', pouches: ['B1-1'], servingsTwentieths: 20, dryG: 80, waterMl: 200,
        sodiumMgPerServing: 1, kcalPerServing: 1, bestBy: 99, steady: true };
      const eater = { key: 'a', name: 'A', portionTwentieths: 20, sodiumLimitMg: null, energyKcal: null };
      solvePicks({ lots: [lot], eaters: [eater], slots: [{ key: 's', day: 1, order: 0, eaters: ['a'] }],
        safe: [{ eater: 'a', meal: 'ash' }], dislikes: [], wishes: [] }).then((r) => console.log(r.status, r.slots[0].dishes[0].pouches[0]));`;
    const root = fileURLToPath(new URL('..', import.meta.url));
    const { stdout } = await promisify(execFile)(
      process.execPath,
      ['--import', 'tsx', '--input-type=module', '-e', script],
      { cwd: root, timeout: 20_000 },
    );
    // One eater, one pouch: nothing is left open at any level.
    expect(stdout.trim()).toBe('proven B1-1');
  });
});
