import type { Contents } from '#core/allergens.ts';
import type { Food, FoodTable } from './food.ts';
import { kitchen, type KitchenFood } from './kitchen.ts';
import { inState, matches, type Match, wantedStates } from './match.ts';
import { looseMatch, plainContents } from './loose.ts';
import { type ReadLine, readLine } from './read.ts';
import { type Learnt, type Scale, weigh } from './weigh.ts';
import { unitNamed } from './units.ts';
import { neutral } from './vocabulary.ts';
import { foldedWords, foldName } from './words.ts';

export { readLine } from './read.ts';
export { foldName } from './words.ts';
export type { Learnt } from './weigh.ts';

export interface Choice {
  readonly label: string;
  /** A line that, in place of this one, resolves without a question. */
  readonly typed: string;
}

export interface LineResult {
  readonly typed: string;
  /** 'uncounted': no amount, counted as zero and named. 'asked': a person must settle something first. */
  readonly is: 'weighed' | 'uncounted' | 'asked' | 'heading';
  readonly food: Food | null;
  /** Short kitchen name: 'red lentils, dry'. */
  readonly called: string;
  readonly grams: number | null;
  /** null: nothing is known of what it contains. */
  readonly contents: Contents | null;
  readonly remarks: readonly string[];
  readonly question: string | null;
  readonly choices: readonly Choice[];
  /** 0 … 1, how much of the typed words the food accounts for. */
  readonly confidence: number;
  readonly wanted: 'food' | 'amount' | 'number' | null;
}

/** From here on a match is taken without asking; chosen on lines of many cooks. */
export const sureFrom = 0.55;

export const nothingLearnt: Learnt = { foods: new Map(), measures: [] };

/** A food found for a line's words. */
interface Found {
  readonly scale: Scale;
  readonly called: string;
  readonly contents: Contents | null;
  readonly confidence: number;
  readonly remarks: readonly string[];
}

const calledAs = (entry: KitchenFood) =>
  entry.state === null || entry.called.includes(entry.state)
    ? entry.called
    : `${entry.called}, ${entry.state}`;

/** Everything known of one number of the table, whatever name led there: the widest of its contents. */
function contentsByNdb(ndb: string): Contents | null {
  const rows = kitchen.filter((entry) => entry.ndb === ndb && !entry.standsIn);
  if (rows.length === 0) return null;
  const contains = [...new Set(rows.flatMap(({ contents }) => contents.contains))];
  const kinds = [...new Set(rows.flatMap(({ contents }) => contents.kinds))];
  return {
    contains,
    kinds,
    check: [...new Set(rows.flatMap(({ contents }) => contents.check))].filter(
      (tag) => !contains.includes(tag),
    ),
    checkKinds: [...new Set(rows.flatMap(({ contents }) => contents.checkKinds))].filter(
      (kind) => !kinds.includes(kind),
    ),
  };
}

const stripped = (words: string) =>
  foldedWords(words)
    .filter((word) => !neutral.has(word))
    .join(' ');

function learntFood(words: string, table: FoodTable, learnt: Learnt): Found | undefined {
  const ndb = learnt.foods.get(foldName(words)) ?? learnt.foods.get(stripped(words));
  const food = ndb === undefined ? undefined : table.byNdb(ndb);
  if (!food) return undefined;
  const rows = kitchen.filter((entry) => entry.ndb === food.ndb && !entry.standsIn);
  const entry =
    rows.find((row) => row.names.some((name) => foldName(name) === foldName(words))) ?? rows[0] ?? null;
  return {
    scale: { food, entry },
    called: words,
    contents: contentsByNdb(food.ndb) ?? plainContents(food),
    confidence: 1,
    remarks: [],
  };
}

/** Everything a line's words say, for states and manners of cutting. */
function saidOf(line: ReadLine): Set<string> {
  return new Set(
    [line.words, ...line.aside, ...line.brackets, line.amountText].flatMap((text) => foldedWords(text)),
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
  const isTin = unit?.name === 'tin' || unit?.name === 'jar';
  const isVolume = unit?.ml !== undefined || unit?.grams !== undefined;
  const wanted = wantedStates(names, { isTin, isVolume, isSpoon: unit?.name === 'tsp' });
  const { food: entry, isAsAsked } = inState(
    match.entries,
    wanted,
    unit?.name === 'tsp' || unit?.name === 'pinch',
  );
  const food = table.byNdb(entry.ndb);
  if (!food) return undefined;
  const remarks = entry.standsIn ? [`the table has no ${entry.called}; counted as "${food.name}"`] : [];
  const state = wanted[0];
  let { confidence } = match;
  if (
    !isAsAsked &&
    state &&
    state !== 'fresh' &&
    state !== 'canned' &&
    state !== 'drained' &&
    state !== 'roasted' &&
    state !== 'fried'
  ) {
    confidence *= state === 'smoked' || state === 'dried' ? 0.5 : 0.85;
    remarks.push(`counted as ${calledAs(entry)}, not ${state}`);
  }
  return { scale: { food, entry }, called: calledAs(entry), contents: entry.contents, confidence, remarks };
}

const alternative = / +(?:and\/)?or +|(?<=\p{L}) *\/ *(?=\p{L})/iu;

/** 'beef or chicken stock' → 'beef stock'; 'butter or oil' → 'butter'; what was left out, to be said. */
function firstOf(line: ReadLine): { words: string; other: string | null; shared: string | null }[] {
  const [first = '', second = ''] = line.words.split(alternative);
  if (second === '') return [{ words: line.words, other: null, shared: null }];
  const rest = line.words.slice(first.length).replace(/^ *(?:or|\/|and\/or) */i, '');
  const others = foldedWords(second).filter((word) => !/^\d/.test(word));
  const out: { words: string; other: string | null; shared: string | null }[] = [];
  const plainSecond = second.replace(/[\d½¼¾⅓⅔].*$/, '').trim();
  const tokens = plainSecond.split(/\s+/);
  if (others.filter((word) => !neutral.has(word)).length > 1 || tokens.length > 1)
    for (let take = Math.min(3, tokens.length - 1); take >= 1; take--)
      out.push({
        words: `${first} ${tokens.slice(-take).join(' ')}`,
        other: rest,
        shared: tokens.slice(-take).join(' '),
      });
  out.push({ words: first, other: rest, shared: null });
  if (stripped(first) === '')
    out.push({ words: `${first} ${plainSecond}`, other: rest, shared: plainSecond });
  return out;
}

function findFood(line: ReadLine, table: FoodTable, learnt: Learnt): Found[] {
  const said = saidOf(line);
  const known = learntFood(line.words, table, learnt);
  if (known) return [known];
  const found: Found[] = [];
  for (const { words, other, shared } of firstOf(line)) {
    const saidHere =
      other === null
        ? said
        : new Set([
            ...foldedWords(words),
            ...line.aside.flatMap((text) => foldedWords(text)),
            ...foldedWords(line.amountText),
          ]);
    const remark = other === null ? [] : [`the first of ${line.words}`.slice(0, 80)];
    for (const match of matches(words, line.aside).slice(0, 6)) {
      // A shared last word counts only when the joined name is one that people use: 'beef stock', not 'butter milk'.
      const isWhole = match.name.split(' ').length > 1 && match.confidence > 0.9;
      if (shared !== null && !isWhole && stripped(words) !== '' && shared !== words) continue;
      const one = fromMatch(match, line, saidHere, table);
      if (one)
        found.push({
          ...one,
          confidence: one.confidence * (other !== null && shared === null ? 0.97 : 1),
          remarks: [...one.remarks, ...remark],
        });
    }
  }
  if (!found.some(({ confidence }) => confidence >= sureFrom)) {
    // The name may stand in brackets, behind a comma or as an example: 'firm fish, such as cod'.
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
        const one = match.confidence > 0.8 ? fromMatch(match, line, said, table) : undefined;
        if (one) found.push({ ...one, confidence: one.confidence * 0.75 });
      }
    const loose = looseMatch(line.words, table);
    if (loose)
      found.push({
        scale: { food: loose.food, entry: null },
        called: loose.food.name,
        contents: plainContents(loose.food),
        confidence: loose.confidence,
        remarks: [`counted as "${loose.food.name}"`],
      });
  }
  return found.sort((a, b) => b.confidence - a.confidence);
}

/** The part of a fruit: juice or zest has an entry of its own, weighed by the fruit. */
function partOf(line: ReadLine): { line: ReadLine; as: 'fruit' | null } {
  if (line.part) {
    const fruit = line.words
      .replace(/\b(?:small|large|medium|ripe|juicy|fresh|organic|unwaxed)\b/gi, '')
      .trim()
      .replace(/s$/i, '');
    return {
      line: { ...line, words: `${fruit} ${line.part}` },
      as:
        line.amounts[0]?.unit == null ||
        line.amounts[0].unit.name === 'wedge' ||
        line.amounts[0].unit.name === 'half'
          ? 'fruit'
          : null,
    };
  }
  const bare = foldName(
    line.words.replace(/\b(?:small|large|medium|ripe|juicy|fresh|organic|unwaxed)\b/gi, ''),
  );
  const after = line.aside.join(' ');
  if (
    /^(?:lemon|lime|orange|grapefruit)$/.test(bare) &&
    line.amounts[0]?.unit == null &&
    line.amounts.length === 1 &&
    !/\b(?:slice|wedge|zest(?:ed)?|segment|peel|cut|halve|quarter)/i.test(after)
  ) {
    if (/\bjuiced?\b/i.test(after) || line.brackets.some((text) => /^juiced?\b/i.test(text)))
      return { line: { ...line, words: `${bare} juice` }, as: 'fruit' };
  }
  if (
    /^(?:lemon|lime|orange|grapefruit)$/.test(bare) &&
    /^(?:(?:finely )?(?:grated )?)?zest(?:ed)?(?: only)?$/i.test(after)
  )
    return { line: { ...line, words: `${bare} zest` }, as: 'fruit' };
  return { line, as: null };
}

/** A unit word may belong to the food: '2 sausages', '1 rib eye steak', 'hearts of palm'. */
function readings(line: ReadLine): ReadLine[] {
  const [first] = line.amounts;
  const unit = first?.unit;
  if (!unit || line.amounts.length !== 1 || unit.grams !== undefined || unit.ml !== undefined) return [line];
  const word = /(\p{L}+)\.?$/u.exec(line.amountText)?.[1];
  if (!word) return [line];
  return [
    line,
    {
      ...line,
      amounts: [{ value: first.value, unit: null }],
      words: `${word} ${line.words.replace(/^of /i, '')}`.trim(),
    },
  ];
}

/** 'mug' is no unit of any table until the household says what it holds. */
function withTaughtUnits(line: ReadLine, learnt: Learnt): ReadLine {
  const [first] = line.amounts;
  if (!first || first.unit || learnt.measures.length === 0) return line;
  const words = line.words.split(' ');
  const unit = learnt.measures.find((one) => foldName(one.unit) === foldName(words[0] ?? ''));
  if (!unit || words.length < 2) return line;
  return {
    ...line,
    amounts: [{ value: first.value, unit: { name: unit.unit } }],
    words: words.slice(1).join(' ').replace(/^of /i, ''),
  };
}

const blank = {
  food: null,
  called: '',
  grams: null,
  contents: null,
  remarks: [],
  question: null,
  choices: [],
  confidence: 0,
  wanted: null,
} as const;

/**
 * An ingredient line → food, grams, what it contains; or the one question that settles it.
 * @param line as typed
 * @param table the food table
 * @param learnt what the household taught; it wins
 */
export function resolveLine(line: string, table: FoodTable, learnt: Learnt = nothingLearnt): LineResult {
  return resolve(readLine(line), table, learnt, true);
}

function resolve(read: ReadLine, table: FoodTable, learnt: Learnt, mayAsk: boolean): LineResult {
  if (read.is !== 'line')
    return { ...blank, typed: read.typed, is: 'heading', called: read.words.replace(/:$/, '') };
  const results = readings(withTaughtUnits(read, learnt)).map((line) =>
    resolveAs(line, read, table, learnt, mayAsk),
  );
  const rank = (result: LineResult) =>
    (result.is === 'asked' ? 0 : 1) + (result.wanted === 'food' ? 0 : 0.5) + result.confidence * 0.4;
  return results.reduce((a, b) => (rank(b) > rank(a) + 0.08 ? b : a));
}

function resolveAs(
  whole: ReadLine,
  read: ReadLine,
  table: FoodTable,
  learnt: Learnt,
  mayAsk: boolean,
): LineResult {
  const { line, as } = partOf(whole);
  const base = { ...blank, typed: read.typed, called: line.words || read.typed };
  const found = line.words === '' && line.brackets.length === 0 ? [] : findFood(line, table, learnt);
  const top = found[0];
  const ask = (wanted: 'food' | 'amount' | 'number', question: string, choices: Choice[], more: Partial<LineResult> = {}): LineResult => ({
    ...base, is: 'asked', wanted, question, choices: choices.slice(0, 3), ...more,
  }); // prettier-ignore
  const name = line.words || read.typed;
  if (!top || top.confidence < sureFrom) {
    const choices = mayAsk ? foodChoices(found, line, table, learnt) : [];
    return ask('food', `Which food is "${short(name)}"?`, choices, { confidence: top?.confidence ?? 0 });
  }
  const facts = {
    food: top.scale.food,
    called: top.called,
    contents: top.contents,
    confidence: top.confidence,
  };
  const remarks = [...new Set([...line.remarks, ...top.remarks])];
  if (line.readings) {
    const rest = read.typed.slice(read.typed.indexOf(line.amountText) + line.amountText.length).trim();
    const choices = line.readings.map((figure) => {
      const typed = `${line.amountText.replace(/[\d.,']+/, figure)} ${rest}`.trim();
      return { label: `${line.amountText.replace(/[\d.,']+/, figure)} ${top.called}`, typed };
    });
    return ask('number', `Is that ${choices.map(({ label }) => label).join(' or ')}?`, choices, {
      ...facts,
      remarks,
    });
  }
  if (line.negative || line.amounts.some(({ value }) => value < 0 && line.amounts.length === 1)) {
    return ask('number', `How much ${top.called}? An amount below zero cannot be.`, [], {
      ...facts,
      remarks,
    });
  }
  if (line.statedG !== null && line.statedG > 0)
    return { ...base, ...facts, is: 'weighed', grams: line.statedG, remarks };
  if (line.amounts.length === 0) return { ...base, ...facts, is: 'uncounted', remarks };
  const weighed = weigh(line, top.scale, saidOf(line), learnt, as);
  if (!weighed) {
    const unit = line.amounts.find(({ unit: one }) => one?.grams === undefined)?.unit?.name;
    const what = unit ? `one ${unit} of ${top.called}` : `one ${top.called}`;
    return ask('amount', `How many grams is ${what}?`, [], { ...facts, remarks });
  }
  return {
    ...base,
    ...facts,
    is: 'weighed',
    grams: weighed.grams,
    remarks: [...remarks, ...weighed.remarks],
  };
}

const short = (text: string) => (text.length > 60 ? `${text.slice(0, 57)}…` : text);

/** Up to three foods the words may mean, each as a line that resolves by itself. */
function foodChoices(found: readonly Found[], line: ReadLine, table: FoodTable, learnt: Learnt): Choice[] {
  const out: Choice[] = [];
  const add = (called: string) => {
    const typed = `${line.amountText} ${called}`.trim();
    if (out.length >= 3 || out.some((choice) => choice.label === called)) return;
    const tried = resolve(readLine(typed), table, learnt, false);
    if (tried.is === 'weighed' || tried.is === 'uncounted') out.push({ label: called, typed });
  };
  for (const { called, scale } of found) if (scale.entry) add(called);
  for (const food of table.search(line.words, 8)) {
    const entry = kitchen.find((one) => one.ndb === food.ndb && !one.standsIn);
    if (entry) add(calledAs(entry));
  }
  return out;
}

/** The unit a name stands for, for those who keep learnt measures. */
export const isUnit = (name: string): boolean => unitNamed(name) !== undefined;
