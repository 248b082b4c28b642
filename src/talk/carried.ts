import { type Reader, holdOf, idea, people, scoreOf } from './hold.ts';
import type { Look } from './look.ts';
import { takeApart } from './pieces.ts';
import { sayCode } from '#words/say.ts';

/** 'Took B1-2 and B1-3', 'everything is packed', 'took B1-2 out of the backpack'. */
export const packing: Reader = (look) => {
  const verbs = look.at(...idea('pack'), 'tick');
  const isOut = look.says(/ (?:out of|from) (?:the |my |our )?(?:back ?pack|rucksack|bag|pack) | unpack/);
  if (verbs.length === 0 && !isOut) return undefined;
  if (look.says(/ how (?:heavy|much)/)) return undefined;
  const codes = look.codes();
  const everything = look.says(/ (?:everything|all|the lot) /);
  const what = codes !== '' ? codes : everything ? 'all' : '';
  const trip = look.trip();
  const isList = look.says(/ (?:pack(?:ing)? ?list|list|sheet|paper|print)/);
  // 'We pack in 15 x 25 cm bags' speaks of bags.
  const isOfBags =
    look.said.all.some(({ is }) => is === 'quantity') || look.says(/ (?:vacuum|bags?|sachets?) /);
  if (what === '' && !isList && trip === undefined && isOfBags) return undefined;
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
      ...look.at(
        'take',
        'put',
        'everything',
        "everything's",
        'everythings',
        'thing',
        'food',
        'unpack',
        'lot',
        'tick',
        'do',
        'back',
      ),
    ]),
    holds: holdOf(look),
  };
};

/** 'We are home, everything eaten', 'brought back B1-3 and B3-1, ate the others'. */
export const comingBack: Reader = (look) => {
  const verbs = look.at(...idea('back'));
  const everything = look.says(/ (?:everything|all|the lot|the rest|the others?|others) /);
  const codes = look.said.codes.length > 0;
  const lost = codes && look.has('lose') && !look.says(/ (?:vacuum|air|seal) /);
  if (lost) return { means: 'back', words: `${look.codes()} lost`, score: 5, left: [], holds: holdOf(look) };
  const butFor =
    / (?:ate|eaten|finished|used) .*(?:everything|all).* (?:but|except|besides|apart from) /.test(
      look.folded,
    ) ||
    / (?:everything|all of it|all) .*(?:ate|eaten|finished|used) .*(?:but|except|besides|apart from) /.test(
      look.folded,
    );
  const left = codes ? look.codes() : look.meal();
  if (butFor && left !== undefined)
    return {
      means: 'back',
      words: `all eaten except ${left}`,
      score: 7,
      left: [],
      holds: holdOf(look, { except: true }),
    };
  if (
    codes &&
    look.says(
      / only (?:the )?(?:b|m)\d.* (?:left over|left|came back|came home|back|returned|not eaten|uneaten|remained|remains) /,
    ) &&
    !look.said.mood.asks
  )
    return {
      means: 'back',
      words: `${look.codes()} returned, rest eaten`,
      score: 8.5,
      left: [],
      holds: holdOf(look, { negated: true }) ?? 'all the others would count as eaten',
    };
  const isBroken = codes && look.says(/ (?:burst|broke|broken|leaked|tore|torn|split|got lost|fell) /);
  if (
    isBroken &&
    look.says(
      / (?:the )?(?:rest|others?|everything else|all else) (?:was |were |is |are |all |got )*(?:eaten|finished|used|gone) /,
    )
  )
    return {
      means: 'back',
      words: `${look.codes()} lost, rest eaten`,
      score: 8,
      left: [],
      holds: `${look.codes()} would count as lost`,
    };
  const plainly = look.folded.replace(
    /^ (?:(?:i|we) (?:think|guess|believe|suppose) |maybe |probably |perhaps )/,
    ' ',
  );
  if (
    /^ (?:it s |we )?(?:all|everything|everything s|all of it) (?:is |was |has been |got )?(?:eaten|gone|used|finished) $/.test(
      plainly,
    ) ||
    /^ (?:we )?(?:ate|finished) (?:everything|all of it|it all) $/.test(plainly)
  )
    return { means: 'back', words: 'all eaten', score: 4, left: [], holds: holdOf(look) };
  const isHome = verbs.length > 0 || look.says(/ home /);
  if (isHome && look.says(/ (?:nothing|no food|no pouches?) (?:is |was )?(?:left|over|remaining) /))
    return { means: 'back', words: 'all eaten', score: 5, left: [], holds: holdOf(look, { negated: true }) };
  if (
    codes &&
    look.says(/ home | (?:are|re|were|came|got) back /) &&
    look.says(
      / (?:not|un) ?(?:been )?(?:eaten|opened|used|touched) | (?:left over|unopened|unused|untouched) /,
    ) &&
    !everything
  )
    return {
      means: 'back',
      words: `${look.codes()} returned`,
      score: 7,
      left: [],
      holds: holdOf(look, { negated: true }),
    };
  const isSorted = codes && everything && look.says(/ (?:not|un) ?(?:been )?(?:eaten|opened|used) /);
  const sorted = isSorted ? outcomesIn(look) : undefined;
  if (sorted !== undefined)
    return { means: 'back', words: sorted, score: 7, left: [], holds: holdOf(look, { negated: true }) };
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
    holds: holdOf(look, { except: words.includes('returned'), negated: words.includes('returned') }),
  };
};

const came =
  /\b(?:back|returned|brought|home|ate|eaten|eat|used|finished|lost|stolen|missing|unopened|left over|tumm(?:y|ies)|bell(?:y|ies)|stomachs?)\b/iu;

/** Clauses that each tell what became of something: 'and' parts them only where both sides do. */
function clausesOfBack(text: string): string[] {
  return text
    .split(/[,;.!]|\bbut\b|\bthen\b/iu)
    .flatMap((clause) => {
      const parts = clause.split(/\s+and\s+/iu);
      return parts.length > 1 && parts.every((part) => came.test(part)) ? parts : [clause];
    })
    .map((clause) => clause.trim());
}

/** The codes of a meal that a clause names, as far as they went along; '' where none is named, undefined where it may be several. */
function codesTakenAlong(clause: string, names: Look['names']): string | undefined {
  const { meals } = takeApart(clause, names);
  const [meal] = meals;
  if (!meal) return '';
  if (meal.names.length > 1 || meals.length > 1) return undefined;
  const codes = names.eatenOf(meal.names[0]);
  return codes.length === 0 ? undefined : codes.map(sayCode).join(' ');
}

/** Which pouches came back and which did not, clause by clause. */
function outcomesIn(look: Look): string | undefined {
  const clauses = clausesOfBack(look.said.text);
  const out: string[] = [];
  for (const clause of clauses) {
    const typed = [...clause.matchAll(/\bB\d+-\d+(?:\s*(?:to|-|–|and|&|,)\s*(?:B\d+-)?\d+)*/giu)]
      .map((m) => m[0])
      .join(' ');
    const codes = typed === '' ? codesTakenAlong(clause, look.names) : typed;
    if (codes === undefined) return undefined;
    const rest = /\b(?:everything(?: else)?|all|the rest|the (?:others?|other ones)|others|the lot)\b/iu.test(
      clause,
    );
    if (codes === '' && !rest) continue;
    const came = /\bnot (?:eaten|used|opened|needed)\b|\bunopened\b|\bleft over\b/iu.test(clause)
      ? 'returned'
      : /\b(?:lost|stolen|missing|gone)\b/iu.test(clause)
        ? 'lost'
        : /\b(?:ate|eaten|eat|used|finished|tumm(?:y|ies)|bell(?:y|ies)|stomachs?)\b|\beverything else was\b/iu.test(
              clause,
            )
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
