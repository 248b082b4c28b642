import * as fc from 'fast-check';
import { expect, test } from 'vitest';
import { readParts } from '#chat/read-parts.ts';
import { readCommands } from '#chat/registry.ts';
import { avoidanceOf, avoidedWords } from '#core/avoidance.ts';
import { verdictFor } from '#core/verdict.ts';
import { avoidanceNamed, larder } from '#foods/avoided.ts';
import { kitchen } from '#foods/kitchen.ts';
import type { Names } from '#words/parts.ts';
import { tries } from '../ring.ts';

const eater = (await readCommands()).find(({ name }) => name === 'eater')!;
const names: Names = {
  meals: ['Lentil pot'],
  otherNames: new Map(),
  eaters: ['Ana', 'Noa'],
  trips: [],
  eatenOf: () => [],
  drying: [],
  pouchKinds: [],
  earlier: [],
  batchesOf: () => [],
  pouchesOf: () => [],
  tripDays: () => undefined,
  me: 'Ana',
  nowMs: 0,
  zone: 'UTC',
};

/** What a message about a person records, as its own words; an error for one that records nothing. */
const read = (typed: string) => readParts(eater, typed, names).asked;
const neverOf = (typed: string) => {
  const { never = [], apart = [] } = read(typed) as Record<string, string[] | undefined>;
  return [...never, ...apart];
};
/** Whether recorded words keep a thing away: an allergen, kind or diet by its meaning, a food by its verdict. */
const keeps = (never: readonly string[], thing: string) => {
  const meaning = avoidanceOf(thing);
  if (meaning !== undefined)
    return never.some((words) => JSON.stringify(avoidanceOf(words)) === JSON.stringify(meaning));
  const bars = never.map((words) => avoidanceNamed(words)!);
  return kitchen()
    .filter(({ called }) => called === thing)
    .every(
      ({ called, contents, ndb }) => verdictFor([{ ingredient: called, contents, ndb }], bars).is !== 'clear',
    );
};

// How people say it: from memory of family messages and of forms for camps and schools, no source.
const inFront = [
  'no', 'no any', 'never', 'without', 'not', "can't have", 'cant have', "can't eat", 'cannot eat any', 'can not have', 'must not eat', 'must not get', "mustn't get", 'musnt have',
  "doesn't eat", 'does not eat', "won't eat", 'avoids', 'must avoid', 'has to avoid', 'allergic to', 'is allergic to', 'alergic to', 'allergick to', 'is severely allergic to', 'very allergic to any',
  'has an allergy to', 'intolerant to', 'is intolerant of', 'sensitive to', 'reacts to', 'reacts badly to', 'gets sick from', 'gets hives from', 'is off', 'stays away from', 'keep away from', 'has to stay clear of',
  'not allowed', 'is not allowed to have', 'may not eat', 'must never have', 'should not eat', "shouldn't have", 'anaphylactic to', 'allergies:', 'allergy -', 'free from', 'free of', 'must be kept away from', 'no traces of', 'has an epipen for',
]; // prettier-ignore
const atTheEnd = ['allergy', 'free', 'allergic', 'intolerant', 'intolerance', 'sensitivity', 'allergies'];
const verdicts = ['are out', 'is out, sadly', 'are banned', 'never', 'makes her ill', 'upset his tummy', 'are not ok', 'gives him cramps', 'is a no-go']; // prettier-ignore
/** What follows as the reason of what was said, and takes nothing of it back. */
const reasons = [
  ', she gets hives',
  ', it makes him ill',
  ' (rash)',
  ', his throat swells',
  ', sick for days',
];
const noise = [
  '',
  ' please',
  ', thanks',
  ' at all',
  ', ever',
  ' of any kind',
  ' age 7',
  ', portion 0.6',
  ' (strictly)',
  '!',
  '.',
];
const things = [
  ...avoidedWords.filter((word) => !larder.isDiet(word)),
  ...kitchen().map(({ called }) => called),
];

const person = fc.constantFrom('Pip', 'pip', 'Noa', 'Vincent van Gogh', "Pip's", 'סבא', 'my son Pip');

test('whatever is avoided in whatever words is kept away, or nothing is recorded', () => {
  let recorded = 0;
  let all = 0;
  fc.assert(
    fc.property(
      person,
      fc.constantFrom(...inFront),
      fc.uniqueArray(fc.constantFrom(...things), { minLength: 1, maxLength: 3 }),
      fc.constantFrom(', ', ' and ', ' or ', ' & ', '/', ', and '),
      fc.constantFrom(...noise),
      (who, lead, foods, between, end) => {
        all += 1;
        const typed = `${who} ${lead} ${foods.join(between)}${end}`;
        let never: string[];
        try {
          never = neverOf(typed);
        } catch {
          return; // asked about: nothing is recorded
        }
        recorded += 1;
        for (const food of foods) expect(keeps(never, food), `${typed}: ${never.join(' | ')}`).toBe(true);
        const { who: read_ } = read(typed) as { who?: { fresh?: string; known?: string } };
        const name = read_?.fresh ?? read_?.known ?? '';
        for (const food of foods) expect(name.toLowerCase(), typed).not.toContain(food.toLowerCase());
      },
    ),
    { numRuns: tries(500) },
  );
  // Most are: of a hundred drawn, ninety and five more or less.
  expect(recorded / all).toBeGreaterThan(0.8);
});

test('the same behind the food: "peanut allergy", "dairy-free"', () => {
  fc.assert(
    fc.property(
      person,
      fc.constantFrom(...things.filter((word) => !/free|gluten|cereal/.test(word))),
      fc.constantFrom(...atTheEnd),
      fc.boolean(),
      (who, food, word, isGlued) => {
        const typed = `${who} ${food}${isGlued ? '-' : ' '}${word}`;
        let never: string[];
        try {
          never = neverOf(typed);
        } catch {
          return;
        }
        expect(keeps(never, food), `${typed}: ${never.join(' | ')}`).toBe(true);
      },
    ),
    { numRuns: tries(300) },
  );
});

test('what is said behind the food keeps it away, and a reason behind that takes nothing back', () => {
  let recorded = 0;
  let all = 0;
  fc.assert(
    fc.property(
      fc.constantFrom(...things.filter((word) => !/free|gluten|cereal/.test(word))),
      fc.constantFrom(
        ...verdicts.map((said) => (food: string) => `Pip ${food} ${said}`),
        ...inFront.map((said) => (food: string) => `Pip ${said} ${food}`),
      ),
      fc.constantFrom('', ...reasons),
      (food, said, reason) => {
        const typed = said(food) + reason;
        all += 1;
        let asked: Record<string, unknown>;
        try {
          asked = read(typed);
        } catch {
          return;
        }
        recorded += 1;
        expect(asked['again'], typed).toBeUndefined();
        const { never = [], apart = [] } = asked as Record<string, string[] | undefined>;
        expect(keeps([...never, ...apart], food), `${typed}: ${never.join(' | ')}`).toBe(true);
      },
    ),
    { numRuns: tries(500) },
  );
  expect(recorded / all).toBeGreaterThan(0.6);
});

test('a typing slip never turns what is avoided into a name or drops it', () => {
  fc.assert(
    fc.property(
      fc.constantFrom(...inFront),
      fc.constantFrom(...avoidedWords.filter((word) => word.length > 4 && !larder.isDiet(word))),
      fc.nat(),
      fc.constantFrom('drop', 'double', 'swap'),
      (lead, food, place, how) => {
        const at = place % (food.length - 1);
        const slipped =
          how === 'drop'
            ? food.slice(0, at) + food.slice(at + 1)
            : how === 'double'
              ? food.slice(0, at) + food[at]! + food.slice(at)
              : food.slice(0, at) + food[at + 1]! + food[at]! + food.slice(at + 2);
        let asked: Record<string, unknown>;
        try {
          asked = read(`Pip ${lead} ${slipped}`);
        } catch {
          return;
        }
        const { never = [], who } = asked as { never?: string[]; who?: { fresh: string } };
        expect(who?.fresh).toBe('Pip');
        expect(never.length, `${lead} ${slipped}`).toBeGreaterThan(0);
      },
    ),
    { numRuns: tries(500) },
  );
});

test('no message that asks or allows keeps less away than before', () => {
  fc.assert(
    fc.property(
      fc.constantFrom(
        'may eat',
        'can have',
        'is no longer allergic to',
        'outgrew',
        'may eat again',
        'eats',
        'is not allergic to',
      ),
      fc.constantFrom(...things),
      (lead, food) => {
        let asked: Record<string, unknown>;
        try {
          asked = read(`Noa ${lead} ${food}`);
        } catch {
          return;
        }
        expect(asked.never).toBeUndefined();
        // It is lifted only with the whole message repeated for the tap that confirms it.
        expect(asked.again === undefined || typeof asked.lifting === 'string').toBe(true);
      },
    ),
  );
});
