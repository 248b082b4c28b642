import type { Look, Meaning } from './look.ts';

/** Reads a message as one thing that may be recorded or done. */
export type Reader = (look: Look) => Meaning | undefined;

/** The verbs and nouns by which people speak of each deed, as they are looked up. */
export const ideas = {
  eat: 'eat use consume finish devour scoff demolish open munch',
  throw: 'throw toss bin chuck dump discard trash ditch',
  seal: 'seal bag vacuum',
  weigh: 'weigh weight scale',
  load: 'load batch dryer drying tray',
  undo: 'undo revert',
  pack: 'pack packing backpack rucksack',
  back: 'return back bring home',
  wish: 'want wish fancy crave',
  rate: 'rate taste',
  label: 'label sticker',
  chart: 'chart graph curve plot diagram',
} as const satisfies Record<string, string>;

export const idea = (name: keyof typeof ideas): string[] => ideas[name].split(' ');

/** What is said not to be so is never offered either. */
export const turnedRound = (word: string): string => `"${word}" ${staysAsItIs}`;

export const isTurnedRound = (holds: string | null): boolean => holds !== null && holds.endsWith(staysAsItIs);
const staysAsItIs = 'turns it round, so it stays as it is';

/** What stands against recording a deed as done, in words; null where nothing does. */
export function holdOf(
  { said: { mood } }: Look,
  more: { readonly except?: boolean; readonly negated?: boolean } = {},
): string | null {
  if (mood.asks) return 'that reads as a question';
  if (mood.negated !== null && !more.negated) return turnedRound(mood.negated);
  if (mood.either) return 'that leaves open which one';
  if (mood.doubt !== null) return `"${mood.doubt}" leaves it open`;
  if (mood.part !== null) return `"${mood.part}" is not the whole`;
  if (mood.except !== null && !more.except) return `"${mood.except}" leaves something out`;
  if (mood.future !== null) return `"${mood.future}" is still to come`;
  return null;
}

const scoreOf = (...parts: readonly (number | false)[]): number =>
  parts.reduce<number>((sum, part) => sum + (part || 0), 0);

/** Pouches or a meal that a deed is done to, and the tokens that name them. */
function things(look: Look): { words: string; at: number[]; byCode: boolean } | undefined {
  const mealTokens = look.said.meals.flatMap(({ at }) => at);
  if (look.said.codes.length > 0)
    return { words: look.codes(), at: [...look.codeTokens(), ...mealTokens], byCode: true };
  const meal = look.mealTyped();
  if (meal === undefined) return undefined;
  const count = look.said.all.findIndex((token, i) => token.is === 'number' && !mealTokens.includes(i));
  const number = look.said.all[count];
  const many =
    number?.is === 'number' && Number.isInteger(number.value) && number.value > 0 && number.value < 100;
  return {
    words: `${many ? `${number.value} ` : ''}${meal}`,
    at: [...mealTokens, ...(many ? [count] : [])],
    byCode: false,
  };
}

const people = (look: Look): number[] => look.said.people.flatMap(({ at }) => at);

/** 'We ate B4-2', 'had the chili for lunch', 'ate one curry'. */
export const eating: Reader = (look) => {
  const thing = things(look);
  if (!thing) return undefined;
  const verbs = look.at(...idea('eat'));
  // 'Had' eats where a meal of the day or nothing else follows; 'have' possesses.
  const had = look.said.all.flatMap((token, i) => (token.plain === 'had' ? [i] : []));
  if (verbs.length === 0 && (had.length === 0 || look.said.mood.asks)) return undefined;
  const meal = look.slotMeal();
  return {
    means: 'use',
    words: thing.words,
    score: scoreOf(verbs.length > 0 ? 4 : 2.5, thing.byCode ? 2 : 1, meal !== undefined && 0.5),
    left: look.leftBy([...thing.at, ...verbs, ...had, ...people(look), ...(meal ? [meal.at] : [])]),
    holds: holdOf(look),
  };
};

/** 'Ate the rest of B1', 'ate the 15 g left of B1', 'half of B9-2 is left': what was never sealed, or a part. */
export const eatingPart: Reader = (look) => {
  const verbs = look.at(...idea('eat'));
  const isRest = look.says(/ (?:rest|remainder|unsealed|leftovers?|left) /);
  const mass = look.said.all.find((token) => token.is === 'quantity' && token.unit.kind === 'mass')?.typed;
  const [batch] = look.said.batches;
  if (batch && look.said.codes.length === 0 && isRest && verbs.length > 0)
    return {
      means: 'use',
      words: `B${batch.batch} ${mass ?? 'rest'}`,
      score: 6.5,
      left: [],
      holds: look.said.mood.asks ? 'that reads as a question' : null,
    };
  const half = /\b(half|a third|a quarter|three quarters|two thirds)\b/iu.exec(look.said.text)?.[1];
  if (look.said.codes.length === 1 && half !== undefined && verbs.length > 0)
    return {
      means: 'use',
      words: `${look.codes()} ${half}`,
      score: 7,
      left: [],
      holds: look.said.mood.asks ? 'that reads as a question' : null,
    };
  return undefined;
};

/** 'Threw away B1-3', 'bin B2-2 – mice'. What stands behind the code is the reason. */
export const throwing: Reader = (look) => {
  const verbs = look.at(...idea('throw'));
  const isRid = look.says(/ (?:got|get|getting) rid of /);
  const thing = things(look);
  if (!thing || (verbs.length === 0 && !isRid)) return undefined;
  const last = Math.max(...thing.at);
  const behind = look.said.all.flatMap((token, i) => (i > last ? [token] : []));
  const reason =
    behind.length === 0
      ? ''
      : look.said.text
          .slice(behind[0]!.from)
          .replace(
            /^[\s,.:;–—-]*(?:away|out|because|since|as|for|it was|it is|it's|was|is|they were)?\b[\s,]*/iu,
            '',
          )
          .trim();
  return {
    means: 'discard',
    words: `${thing.words}${reason === '' ? '' : ` ${reason}`}`,
    score: scoreOf(4, thing.byCode ? 2 : 1),
    left: [],
    holds: holdOf(look),
  };
};

/** 'Sealed six pouches of 60 g from B5': how many of what weight, and of which batch. */
export const sealing: Reader = (look) => {
  const { all, batches } = look.said;
  const verbs = look.at(...idea('seal'));
  const groups: string[] = [];
  const used: number[] = [];
  all.forEach((token, i) => {
    if (token.is !== 'quantity' || token.unit.kind !== 'mass') return;
    for (let k = i - 1; k >= Math.max(0, i - 5); k--) {
      const before = all[k]!;
      if (before.is === 'quantity' || used.includes(k)) break;
      if (before.is !== 'number' || !Number.isInteger(before.value)) continue;
      groups.push(
        `${before.value} x ${/^\p{L}/u.test(token.typed) ? `${token.value} ${token.unitTyped}` : token.typed}`,
      );
      used.push(...Array.from({ length: i - k + 1 }, (_, n) => k + n));
      return;
    }
  });
  const which = batches[0] ? `B${batches[0].batch}` : look.mealTyped();
  if (groups.length === 0 || which === undefined || look.said.codes.length > 0) return undefined;
  if (verbs.length === 0 && !look.has('make', 'pouch', 'bag', 'fill')) return undefined;
  const moment = momentOf(look);
  return {
    means: 'seal',
    words: `${groups.join(' ')} ${which}${moment.words === '' ? '' : ` at ${moment.words}`}`,
    score: scoreOf(verbs.length > 0 && 4, 2),
    left: look.leftBy([
      ...verbs,
      ...used,
      ...batches.map(({ at }) => at),
      ...look.said.meals.flatMap(({ at }) => at),
      ...people(look),
      ...moment.at,
      ...look.at('make', 'fill', 'pouch', 'bag', 'each', 'gram', 'portion'),
    ]),
    holds: holdOf(look),
  };
};

/** The weights of a message in their order, each as typed, spoken numbers as figures; not the numbers of trays. */
function weightsOf(look: Look): { words: string[]; at: number[]; trays: number[] } {
  const { all } = look.said;
  const words: string[] = [];
  const at: number[] = [];
  const trays: number[] = [];
  const moment = new Set(momentOf(look).at);
  for (let i = 0; i < all.length; i++) {
    const token = all[i]!;
    if (moment.has(i)) continue;
    const isTrayNo =
      all[i - 1]?.plain === 'tray' && token.is === 'number' && token.value >= 1 && token.value <= 20;
    if (isTrayNo) {
      trays.push(token.value);
      continue;
    }
    const next = all[i + 1];
    // 'Six hundred ten' is cut in two.
    const rest =
      token.is === 'number' &&
      token.spelled &&
      token.value % 100 === 0 &&
      (next?.is === 'number' || next?.is === 'quantity') &&
      next.value < 100 &&
      next.from > token.to &&
      /^\p{L}/u.test(next.typed)
        ? next
        : undefined;
    if (token.is === 'number' && rest) {
      words.push(`${token.value + rest.value}${rest.is === 'quantity' ? ` ${rest.unitTyped}` : ''}`);
      at.push(i, i + 1);
      i += 1;
      continue;
    }
    if (token.is === 'quantity' && token.unit.kind === 'mass')
      words.push(/^\p{L}/u.test(token.typed) ? `${token.value} ${token.unitTyped}` : token.typed);
    else if (token.is === 'number' && (token.value >= 20 || !Number.isInteger(token.value)))
      words.push(String(token.value));
    else continue;
    at.push(i);
  }
  return { words, at, trays };
}

/** 'Last night at 9' and its like: the day, and how many hours a bare hour lies behind noon. */
const spokenTimes: readonly (readonly [pattern: RegExp, day: string, later: number])[] = [
  [/\blast (?:night|evening)(?:\s+(?:at\s+)?(\d{1,2})(?:[:.](\d\d))?)?/iu, 'yesterday', 12],
  [/\byesterday (?:evening|night|afternoon)(?:\s+(?:at\s+)?(\d{1,2})(?:[:.](\d\d))?)?/iu, 'yesterday', 12],
  [/\byesterday morning(?:\s+(?:at\s+)?(\d{1,2})(?:[:.](\d\d))?)?/iu, 'yesterday', 0],
  [/\bthis morning(?:\s+(?:at\s+)?(\d{1,2})(?:[:.](\d\d))?)?/iu, 'today', 0],
];

/** The words that tell a moment, as a request takes them: 'yesterday 21:00', '7 pm', '2 h ago'. */
function momentOf(look: Look): { words: string; at: number[] } {
  const { all, text } = look.said;
  for (const [pattern, day, later] of spokenTimes) {
    const m = pattern.exec(text);
    if (!m) continue;
    const at = all.flatMap((token, i) =>
      token.from >= m.index && token.to <= m.index + m[0].length ? [i] : [],
    );
    if (m[1] === undefined) return { words: '', at };
    const hour = Number(m[1]) < 12 ? Number(m[1]) + later : Number(m[1]);
    return { words: `${day} ${hour}:${m[2] ?? '00'}`, at };
  }
  const at = all.flatMap((token, i) => {
    if (token.is === 'clock' || token.is === 'date') return [i];
    if (
      token.is === 'word' &&
      /^(?:yesterday|today|mon|tue|wed|thu|fri|sat|sun)(?:day|sday|nesday|rsday|urday)?$/.test(token.plain)
    )
      return [i];
    if (token.plain === 'ago' && all[i - 1]?.is === 'quantity') return [i - 1, i];
    return [];
  });
  return { words: at.map((i) => text.slice(all[i]!.from, all[i]!.to)).join(' '), at };
}

/** 'B6 205 203 208 201', 'mac is 817 g': weights of a load that dries. */
export const weighing: Reader = (look) => {
  const { batches, codes } = look.said;
  const verbs = look.at(...idea('weigh'));
  const { words, at, trays } = weightsOf(look);
  if (words.length === 0 || codes.length > 0) return undefined;
  const isVolume = look.said.all.some(
    (token) => token.is === 'quantity' && token.unit.kind !== 'mass' && token.unit.kind !== 'time',
  );
  if (isVolume || look.has('seal', 'house', 'absorber', 'salt', 'sodium', 'serving', 'person', 'empty'))
    return undefined;
  const which = batches[0] ? `B${batches[0].batch}` : look.mealTyped();
  const moment = momentOf(look);
  const onlyFigures = look.leftBy(at).length === 0 && at.length > 1;
  if (which === undefined && !onlyFigures) return undefined;
  if (batches.length === 0 && verbs.length === 0 && which !== undefined && words.length > 1) return undefined;
  const tray = words.length === 1 && trays.length === 1 ? `tray ${trays[0]} ` : '';
  const gross = look.has('gross') ? ' gross' : '';
  return {
    means: 'weigh',
    words:
      `${which ?? ''} ${tray}${words.join(' ')}${gross}${moment.words === '' ? '' : ` ${moment.words}`}`.trim(),
    score: scoreOf(verbs.length > 0 && 3, batches.length > 0 ? 2 : 1, words.length > 1 && 1),
    left: look.leftBy([
      ...verbs,
      ...at,
      ...moment.at,
      ...batches.map((one) => one.at),
      ...look.said.meals.flatMap((one) => one.at),
      ...people(look),
      ...look.said.all.flatMap((token, i) =>
        token.plain === 'tray' || look.said.all[i - 1]?.plain === 'tray' ? [i] : [],
      ),
      ...look.at('gross', 'gram', 'read', 'show', 'get', 'come', 'tray', 'dryer'),
    ]),
    holds: holdOf(look),
  };
};

/** 'Started the dryer with barley soup 560 570 565 555'. */
export const loading: Reader = (look) => {
  const ideasAt = look.at(...idea('load'));
  const meal = look.mealTyped();
  const { words, at } = weightsOf(look);
  if (meal === undefined || words.length === 0 || look.said.batches.length > 0) return undefined;
  const starts = look.at('start', 'put', 'fill', 'begin');
  if (ideasAt.length === 0 && words.length < 2) return undefined;
  if (look.has('empty', 'seal', 'water', 'serving', 'pouch', 'salt')) return undefined;
  const moment = momentOf(look);
  const keep = look.has('gross') ? ' gross' : '';
  const raw = look.has('raw', 'uncooked') ? ' raw' : '';
  const factor = /\bx ?\d+(?:[.,]\d+)?\b/iu.exec(look.said.text)?.[0];
  return {
    means: 'batch',
    words: `${meal} ${factor ? `${factor} ` : ''}trays ${words.join(' ')}${keep}${raw}${moment.words === '' ? '' : ` ${moment.words}`}`,
    score: scoreOf(ideasAt.length > 0 ? 3 : 1, starts.length > 0 && 1, 2),
    left: look.leftBy([
      ...ideasAt,
      ...starts,
      ...at,
      ...moment.at,
      ...look.said.meals.flatMap((one) => one.at),
      ...people(look),
      ...look.at('dry', 'gross', 'raw', 'gram', 'hour', 'oclock'),
      ...look.said.all.flatMap((token, i) =>
        look.said.all[i - 1]?.plain === 'tray' || token.plain === 'x' ? [i] : [],
      ),
    ]),
    holds: holdOf(look),
  };
};

const more = new Set(['more', 'extra', 'drier', 'dry', 'short', 'need', 'needed', 'add', 'added']);
const less = new Set(['less', 'fewer', 'wet', 'wetter', 'runny', 'watery', 'soupy']);

/** What is said of how a meal was, in the words that a rating takes. */
function judged(look: Look): { words: string[]; at: number[] } {
  const { all } = look.said;
  const words: string[] = [];
  const at: number[] = [];
  const volume = all.findIndex((token) => token.is === 'quantity' && token.unit.kind === 'volume');
  if (volume >= 0) {
    const near = all.slice(volume + 1, volume + 5).map((token) => token.plain);
    const tooMuch =
      look.says(/ too much water| less water| too (?:wet|runny|watery|thin) /) ||
      near.some((word) => less.has(word));
    const tooLittle =
      near.some((word) => more.has(word)) || all.slice(0, volume).some((token) => more.has(token.plain));
    if (tooMuch !== tooLittle || tooLittle) {
      words.push(`${all[volume]!.typed} ${tooMuch ? 'less' : 'more'}`);
      at.push(volume);
    }
  }
  const add = (pattern: RegExp, word: string) => {
    if (look.says(pattern) && !words.includes(word)) words.push(word);
  };
  if (look.says(/ (?:not|wasn t|isn t|never) (?:too |that |so |very )?salty(?! enough)/)) words.push();
  else {
    add(/ not salty enough | bland | (?:needs?|needed|more) salt /, 'not salty enough');
    if (!words.includes('not salty enough')) add(/ salty /, 'too salty');
  }
  if (volume < 0 || !look.says(/ too much water /))
    add(
      / too (?:much|big|large)(?! (?:water|salt))| (?:couldn t|could not|didn t|did not) finish | left (?:half|some|a lot) /,
      'too much',
    );
  add(/ hungry | not enough(?! (?:water|salt))| too (?:little|small)(?! water)| wanted more /, 'hungry');
  const isBad =
    / (?:never again|not again|awful|disgusting|horrible|yuck|yucky|gross|hated|didn t like|did not like|don t like|terrible|inedible) /;
  if (look.says(isBad)) words.push('not again');
  else
    add(
      / (?:again|delicious|great|loved|love|yummy|tasty|amazing|excellent|fantastic|favou?rite|best|good|lovely|perfect|super|5 stars?|five stars?) /,
      'again',
    );
  if (look.says(/ (?:water|amount) (?:was |is )?(?:just |exactly |about )?right | just right /))
    words.push('water just right');
  return { words, at };
}

const tasteWords =
  '1 2 3 4 5 need more less extra water salty salt bit too much big small hungry again great good delicious love yummy tasty amazing awful nice lovely star perfect bland enough right just little way taste rate rating give think find make runny dry wet thick thin fine super excellent fantastic favourite favorite best disgusting horrible never finish want'.split(
    ' ',
  );

/** 'B2-1 needed 50 ml more water', 'the chili was too salty'. */
export const rating: Reader = (look) => {
  const thing = things(look);
  const { words, at } = judged(look);
  const unclear = look.says(
    / (?:not|wasn t|isn t|never) (?:too |that |so |very )?(?:salty|bland|hungry)(?! enough)/,
  );
  if (!thing || (words.length === 0 && !unclear)) return undefined;
  if (look.said.mood.asks || look.has('wish', 'fancy')) return undefined;
  // 'I want soup again' wishes.
  if (look.has('want') && !look.says(/ wanted more /)) return undefined;
  const whose = look.said.people.find(({ names: [name] }) => name !== look.names.me)?.names[0];
  const portion = words.includes('too much') || words.includes('hungry');
  return {
    means: 'rate',
    words: `${thing.words} ${words.join(', ')}${whose !== undefined && portion ? ` for ${whose}` : ''}`,
    score: scoreOf(look.has('rate', 'need', 'taste') && 2, 1.5, thing.byCode ? 1.5 : 0.5, at.length > 0 && 1),
    left: look.leftBy([
      ...thing.at,
      ...at,
      ...people(look),
      ...look.at(...tasteWords),
      ...look.at(...idea('eat')),
    ]),
    holds: unclear
      ? turnedRound('not')
      : holdOf(look, { negated: words.some((word) => word.startsWith('not')) || portion }),
  };
};

/** 'Took B1-2 and B1-3', 'everything is packed', 'took B1-2 out of the backpack'. */
export const packing: Reader = (look) => {
  const verbs = look.at(...idea('pack'));
  const isOut = look.says(/ (?:out of|from) (?:the |my |our )?(?:back ?pack|rucksack|bag|pack) | unpack/);
  if (verbs.length === 0 && !isOut) return undefined;
  if (look.says(/ how (?:heavy|much)/)) return undefined;
  const codes = look.codes();
  const everything = look.says(/ (?:everything|all|the lot) /);
  const what = codes !== '' ? codes : everything ? 'all' : '';
  const trip = look.trip();
  const isList = look.says(/ (?:pack(?:ing)? ?list|list|sheet|paper|print)/);
  if (what === '' || isList)
    return {
      means: 'pack',
      words: `${trip ?? ''}${look.says(/ (?:paper|print|sheet|pdf) /) ? ' paper' : ''}`.trim(),
      score: scoreOf(3, isList && 2, trip !== undefined && 0.5),
      left: [],
      holds: null,
    };
  return {
    means: 'pack',
    words: `${trip ? `${trip} ` : ''}${isOut ? 'not ' : ''}${what}`,
    score: scoreOf(4, codes !== '' && 2, isOut && 3),
    left: look.leftBy([
      ...verbs,
      ...look.codeTokens(),
      ...people(look),
      ...look.said.trips.flatMap(({ at }) => at),
      ...look.said.meals.flatMap(({ at }) => at),
      ...look.at('take', 'put', 'everything', 'thing', 'food', 'unpack', 'lot', 'tick', 'do', 'back'),
    ]),
    holds: holdOf(look),
  };
};

/** 'We are home, everything eaten', 'brought back B1-3 and B3-1, ate the others'. */
export const comingBack: Reader = (look) => {
  const verbs = look.at(...idea('back'));
  const everything = look.says(/ (?:everything|all|the lot|the rest|the others?|others) /);
  const codes = look.said.codes.length > 0;
  if (verbs.length === 0 || !(everything || codes)) return undefined;
  if (look.says(/ (?:out of|take that|taking|take it|took that) (?:the |my |our )?(?:back|rucksack)/))
    return undefined;
  const isBack =
    look.has('return', 'bring') ||
    look.says(
      / (?:came|come|are|were|we re|got) back | back (?:home|from) | (?:we re|were|we are|i m|are|got|came) home | home again /,
    );
  if (!isBack) return undefined;
  const words = outcomesIn(look);
  if (words === undefined) return undefined;
  return {
    means: 'back',
    words,
    score: scoreOf(4, codes && 2, everything && 1),
    left: [],
    holds: holdOf(look, { except: words.includes('returned') }),
  };
};

/** Which pouches came back and which did not, clause by clause. */
function outcomesIn(look: Look): string | undefined {
  const clauses = look.said.text.split(/[,;.!]|\bbut\b|\bthen\b/iu).map((clause) => clause.trim());
  const out: string[] = [];
  for (const clause of clauses) {
    const codes = [...clause.matchAll(/\bB\d+-\d+(?:\s*(?:to|-|–|and|&|,)\s*(?:B\d+-)?\d+)*/giu)]
      .map((m) => m[0])
      .join(' ');
    const rest = /\b(?:everything|all|the rest|the others?|others|the lot)\b/iu.test(clause);
    if (codes === '' && !rest) continue;
    const came = /\b(?:lost|stolen|missing|gone)\b/iu.test(clause)
      ? 'lost'
      : /\b(?:ate|eaten|eat|used|finished)\b/iu.test(clause)
        ? 'eaten'
        : /\b(?:back|returned|brought|left over|home)\b/iu.test(clause)
          ? 'returned'
          : undefined;
    if (came === undefined) return undefined;
    out.push(`${codes === '' ? 'rest' : codes} ${came}`);
  }
  // 'Rest' takes what no other clause named, so it comes last.
  const ordered = out.toSorted((a, b) => Number(a.startsWith('rest')) - Number(b.startsWith('rest')));
  return ordered.length === 0 ? undefined : ordered.join(', ');
}

const foundWords =
  / (?:tight|firm|holding|hold|held|drawn in|loose|leaks?|leaking|leaked|lost (?:its|the|their) (?:vacuum|air)|drew air|resealed|swollen|swelled|puffy|puffed|bloated|smells?|stinks?|smelled|drying on) /;

/** 'B3-2 is loose', 'B1-4 and B1-5 hold', 'resealed B3-2 with 92 g'. */
export const finding: Reader = (look) => {
  if (look.said.codes.length === 0 || !foundWords.test(look.folded) || look.has(...idea('throw')))
    return undefined;
  const mass = look.said.all.find((token) => token.is === 'quantity' && token.unit.kind === 'mass')?.typed;
  const word = foundWords.exec(look.folded)![0].trim();
  const plain = /^(?:hold|held|holding|firm)/.test(word)
    ? 'tight'
    : /^(?:lost|drew|leak)/.test(word)
      ? 'loose'
      : /^(?:puff|bloat|swell)/.test(word)
        ? 'swollen'
        : /^(?:smell|stink)/.test(word)
          ? 'smells'
          : word === 'drying on'
            ? 'drying'
            : word === 'drawn in'
              ? 'tight'
              : word;
  const altitude = look.said.all.find(
    (token) => token.is === 'quantity' && token.unit.kind === 'length',
  )?.typed;
  const high = look.says(/ (?:mountain|mountains|summit|hut) /) ? ' mountain' : '';
  return {
    means: 'found',
    words: `${look.codes()} ${plain}${mass === undefined ? '' : ` ${mass}`}${altitude === undefined ? high : ` at ${altitude}`}`,
    score: 6,
    left: [],
    holds: holdOf(look),
  };
};

/** 'Tray 2 was 230 not 203': a weight put right. */
export const correcting: Reader = (look) => {
  const { text } = look.said;
  const m =
    /\btray\s+(\d{1,2}|one|two|three|four|five|six)\s+(?:was|is|weighed|should (?:be|have been)|weighs)\s+(\d+(?:[.,]\d+)?)\s*g?(?:\s*(?:,|and)?\s*(?:not|instead of)\s+(\d+(?:[.,]\d+)?))?/iu.exec(
      text,
    );
  if (!m || look.said.mood.asks) return undefined;
  const [batch] = look.said.batches;
  return {
    means: 'fix',
    words: `${batch ? `B${batch.batch} ` : ''}tray ${m[1]} ${m[2]} g${m[3] === undefined ? '' : ` not ${m[3]} g`}`,
    score: 6,
    left: [],
    holds: null,
  };
};

/** 'Take that back', 'undo', 'that was a mistake'. */
export const takingBack: Reader = (look) => {
  const isIt = look.says(
    / (?:take|took|taking) (?:that|it|this) back | undo | scrap that | revert | never mind that | (?:that|this|it) was (?:wrong|a mistake) | (?:delete|cancel|forget|remove) (?:that|it|the last(?: (?:one|entry|record))?) | my mistake | didn t mean (?:that|it) | wrong button | (?:it was|that was|i was) (?:just |only )?(?:a question|asking) | i (?:just |only )(?:asked|wanted to ask) /,
  );
  if (!isIt) return undefined;
  const hasThing = look.said.codes.length + look.said.batches.length > 0;
  const onlyAsked = look.says(/ question | asking | asked | to ask /);
  return {
    means: onlyAsked ? 'undoable' : 'undo',
    words: '',
    score: hasThing ? 2 : 5,
    left: hasThing ? [look.textOf([...look.said.codes, ...look.said.batches].map(({ at }) => at))] : [],
    holds: look.said.mood.asks ? 'that reads as a question' : null,
  };
};

/** 'I want curry on Saturday', "I'd love the soup Sunday evening". */
export const wishing: Reader = (look) => {
  const verbs = look.at(...idea('wish'));
  const isWish =
    verbs.length > 0 ||
    look.says(
      / (?:i d|would|we d|he d|she d|id) (?:really |so )?(?:love|like) | feel(?:s|ing)? like | in the mood for /,
    );
  const meal = look.mealTyped();
  if (!isWish || look.says(/ (?:to|wanna) (?:know|see|record|weigh|seal|cook|make|print|undo|change) /))
    return undefined;
  if (meal === undefined) {
    // A meal that nobody recorded is still a wish, to be refused by its name.
    const behind =
      / (?:want|wants|fancy|fancies|crave|craves|wish for|love|like) (?:some |the |a |an |to have )?([\p{L} ]{3,40}) $/u.exec(
        look.folded,
      )?.[1];
    return behind === undefined || look.said.codes.length > 0
      ? undefined
      : { means: 'want', words: behind, score: 1.5, left: [], holds: null };
  }
  const drop = new Set([
    ...verbs,
    ...look.at(
      'love',
      'like',
      'feel',
      'mood',
      'have',
      'please',
      'really',
      'would',
      'the',
      'a',
      'some',
      'on',
      'at',
      'for',
      'to',
      'eat',
    ),
    ...people(look),
    ...look.said.meals.flatMap(({ at }) => at),
    ...look.said.trips.flatMap(({ at }) => at),
  ]);
  const slot = look.slotMeal();
  if (slot) drop.add(slot.at);
  const rest = look.said.all.flatMap((token, i) =>
    !drop.has(i) && token.is !== 'mark' && !/^(?:i|i'd|id|we|we'd|he|she|d|s)$/.test(token.plain)
      ? [token.typed]
      : [],
  );
  const whose = look.person();
  const wishNot = look.said.mood.negated !== null ? 'not ' : '';
  return {
    means: 'want',
    words: `${wishNot}${meal}${rest.length > 0 ? ` ${rest.join(' ')}` : ''}${slot ? ` ${slot.meal}` : ''}${whose !== undefined && whose !== look.names.me ? ` for ${whose}` : ''}${look.trip() ? ` ${look.trip()}` : ''}`,
    score: 4,
    left: [],
    holds: look.said.mood.asks
      ? 'that reads as a question'
      : look.said.mood.doubt !== null
        ? `"${look.said.mood.doubt}" leaves it open`
        : null,
  };
};
