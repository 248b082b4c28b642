import type { Contents } from '#core/allergens.ts';
import type { FoodTable } from './food.ts';
import { kitchen } from './kitchen.ts';
import { looseMatch, plainContents } from './loose.ts';
import { matches, type Match } from './match.ts';
import { inState, wantedStates } from './states.ts';
import { firstOf, statesSaid, stripped } from './said.ts';
import { calledAs, inNumber } from './calling.ts';
import type { Naming } from './namings.ts';
import { type ReadLine, readLine } from './read.ts';
import type { Token } from './tokens.ts';
import { neutral } from './vocabulary.ts';
import type { Learnt, Scale } from './weigh.ts';
import { foldedWords, foldName } from './words.ts';
import { nothing, together, widened } from '#core/contents.ts';

/** From here on a match is taken without asking; chosen on lines of many cooks. */
export const sureFrom = 0.55;

/** A food found for a line's words. */
export interface Found {
  readonly scale: Scale;
  readonly called: string;
  readonly contents: Contents | null;
  readonly confidence: number;
  readonly remarks: readonly string[];
  /** The folded words of the line, or of a name near them, that this food stands for. */
  readonly matched: readonly string[];
}

/** Everything known of one number of the table, whatever name led there: the widest of its contents. */
function contentsByNdb(ndb: string): Contents | null {
  const rows = kitchen().filter((entry) => entry.ndb === ndb && !entry.standsIn);
  if (rows.length === 0) return null;
  return together(rows.map(({ contents }) => contents));
}

function learntFood(line: ReadLine, table: FoodTable, learnt: Learnt): Found | undefined {
  const { words } = line;
  const means = learnt.foods.get(foldName(words)) ?? learnt.foods.get(stripped(words));
  if (means === undefined) return undefined;
  if (!/^\d{5}$/.test(means)) return byMeaning(means, line, table);
  const food = table.byNdb(means);
  if (!food) return undefined;
  const rows = kitchen().filter((entry) => entry.ndb === food.ndb && !entry.standsIn);
  const entry =
    rows.find((row) => row.names.some((name) => foldName(name) === foldName(words))) ?? rows[0] ?? null;
  return {
    scale: { food, entry },
    called: words,
    contents: contentsByNdb(food.ndb) ?? plainContents(food),
    confidence: 1,
    remarks: [`your "${words}": ${food.name}`],
    matched: foldedWords(words),
  };
}

/** The food that the household means by its own word, with all that is known of it under its usual name. */
function byMeaning(means: string, line: ReadLine, table: FoodTable): Found | undefined {
  const [words = '', ...aside] = means.split(/, */);
  const meant = { ...line, words, aside: [...aside, ...line.aside] };
  const found = findFood(meant, table, { foods: new Map(), measures: [] })[0];
  if (!found || found.confidence < sureFrom) return undefined;
  return {
    ...found,
    confidence: 1,
    remarks: [`your "${line.words}"`, ...found.remarks],
    matched: foldedWords(line.words),
  };
}

/** The household's own words for foods that occur in a line, each with what it holds. */
export function learntNamings(
  tokens: readonly Token[],
  learnt: Learnt,
  table: FoodTable,
): ReadonlyMap<string, Naming> {
  const said = new Set(tokens.map(({ word }) => word));
  const names = [...learnt.foods.keys()].filter((key) => key.split(' ').every((word) => said.has(word)));
  return new Map(
    names.map((key) => {
      const found = learntFood({ ...readLine(key), words: key, aside: [], brackets: [] }, table, learnt);
      return [
        key,
        { called: key, contents: found?.contents ?? widened(nothing), entries: [], isKind: false },
      ];
    }),
  );
}

function fromMatch(
  match: Match,
  line: ReadLine,
  said: ReadonlySet<string>,
  table: FoodTable,
): Found | undefined {
  const unit = line.amounts[0]?.unit ?? null;
  const own = new Set(match.name.split(' '));
  const names = new Set([...said].filter((word) => !own.has(word)));
  const weighsSo = (state: string | null) =>
    match.entries.some(
      (one) => one.state === state && one.weights.some((weight) => weight.unit === unit?.name),
    );
  const isTin =
    unit?.name === 'tin' ||
    unit?.name === 'jar' ||
    (unit?.holds === true && weighsSo('canned') && !weighsSo(null) && !weighsSo('frozen'));
  const isVolume = unit?.ml !== undefined || unit?.grams !== undefined;
  const wanted = wantedStates(names, { isTin, isVolume, isSpoon: unit?.name === 'tsp' });
  const { food: entry, isAsAsked } = inState(
    match.entries,
    wanted,
    unit?.name === 'tsp' || unit?.name === 'pinch',
  );
  const food = table.byNdb(entry.ndb);
  if (!food) return undefined;
  const remarks = entry.standsIn
    ? [
        `the table has no ${calledAs(entry, match.name)}; counted as "${food.name}"`,
        // Tins are mostly salted; somebody may be counting sodium.
        ...(entry.state === 'drained' && food.name.includes('without salt')
          ? ["salt from the tin is not counted: add the label's"]
          : []),
      ]
    : [];
  const state = wanted[0];
  let { confidence } = match;
  if (
    !isAsAsked &&
    state &&
    state !== 'fresh' &&
    state !== 'canned' &&
    state !== 'drained' &&
    state !== 'roasted'
  ) {
    confidence *= state === 'smoked' || state === 'dried' || state === 'fried' ? 0.5 : 0.85;
    remarks.push(`counted as ${calledAs(entry, match.name)}, not ${state}`);
  }
  const called = inNumber(calledAs(entry, match.name), line.words);
  return { scale: { food, entry }, called, contents: entry.contents, confidence, remarks, matched: [...own] };
}

/** A name in brackets, behind a comma or as an example: 'firm fish, such as cod'. */
function hiddenIn(line: ReadLine, table: FoodTable): Found[] {
  const found: Found[] = [];
  const states = statesSaid(line);
  const hidden = [
    ...line.brackets,
    ...line.aside,
    line.words.replace(/^.*?\b(?:such as|like|preferably)\b/i, ''),
  ];
  for (const text of hidden.slice(0, 6))
    for (const match of matches(
      text.replace(/^(?:such as|like|preferably|or|about)\b/i, '').split(/\bor\b/i)[0]!,
      [],
    ).slice(0, 2)) {
      const one = match.confidence > 0.8 ? fromMatch(match, line, states, table) : undefined;
      if (one) found.push({ ...one, confidence: one.confidence * 0.75 });
    }
  return found;
}

/** Foods the words of a line may mean, surest first. */
export function findFood(line: ReadLine, table: FoodTable, learnt: Learnt): Found[] {
  const known = learntFood(line, table, learnt);
  if (known) return [known];
  // 'pepper' by the spoon or to taste is ground from corns; by the piece it is a vegetable.
  const isSpoon = line.amounts.every(({ unit }) => unit?.ml !== undefined && unit.ml < 30);
  if (isSpoon && foldName(line.words).replace(/^(?:freshly )?(?:ground |milled )?/, '') === 'pepper')
    return findFood({ ...line, words: 'black pepper' }, table, learnt);
  // '1 chicken' is a bird; '200 g chicken' is its meat.
  const isCounted = line.amounts.length === 1 && line.amounts[0]!.unit === null;
  if (
    isCounted &&
    stripped(line.words) === 'chicken' &&
    foldName(line.words).endsWith('chicken') &&
    !/\b(?:breast|boneless|diced|cooked|strip|cube)/i.test([line.words, ...line.aside].join(' '))
  )
    return findFood(
      {
        ...line,
        words: `whole ${line.words}`,
        amounts: [{ value: line.amounts[0]!.value, unit: { name: 'each' } }],
      },
      table,
      learnt,
    );
  const found: Found[] = [];
  for (const { words, other, shared } of firstOf(line)) {
    // What stands behind the 'or' says nothing of the food in front of it.
    const states = statesSaid(other === null ? line : { ...line, words, brackets: [] });
    const remark = other === null ? [] : [`the first of ${line.words}`.slice(0, 80)];
    for (const match of matches(words, [...line.aside, ...line.brackets]).slice(0, 6)) {
      // A shared last word counts only when the joined name is one that people use: 'beef stock', not 'butter milk'.
      const isWhole = match.name.split(' ').length > 1 && match.confidence > 0.9;
      if (shared !== null && !isWhole && stripped(words) !== '' && shared !== words) continue;
      const one = fromMatch(match, line, states, table);
      if (one)
        found.push({
          ...one,
          confidence: one.confidence * (other !== null && shared === null ? 0.97 : 1),
          remarks: [...one.remarks, ...remark],
        });
    }
  }
  if (!found.some(({ confidence }) => confidence >= sureFrom)) {
    found.push(...hiddenIn(line, table));
    const loose = looseMatch(line.words, table);
    if (loose)
      found.push({
        scale: { food: loose.food, entry: null },
        called: loose.food.name,
        contents: plainContents(loose.food),
        confidence: loose.confidence,
        remarks: [`counted as "${loose.food.name}"`],
        matched: foldedWords(line.words).filter((word) => !neutral.has(word)),
      });
  }
  return found.toSorted((a, b) => b.confidence - a.confidence);
}
