import { momentOf } from './amounts.ts';
import { isAccounted } from './aside.ts';
import type { Look } from './look.ts';
import { type Reader, holdOf, idea, people, scoreOf, things } from './hold.ts';
import { sayCode } from '#words/say.ts';

/** 'Please mark … as eaten', 'can you record that …': words that only ask for it to be written down. */
const orderWords = (look: Look): number[] =>
  look.says(/ (?:mark|record|note|log|enter|put|write|save|tick|jot|put down) /)
    ? look.at(
        'mark',
        'record',
        'note',
        'log',
        'enter',
        'put',
        'write',
        'save',
        'tick',
        'jot',
        'say',
        'tell',
        'want',
        'can',
        'could',
        'would',
        'you',
      )
    : [];

/** The day on which it was, as a request takes it; '' for today. */
function dayOf(look: Look): string {
  if (look.says(/ (?:last (?:night|evening)|yesterday(?: (?:evening|night|afternoon|morning|noon))?) /))
    return 'yesterday';
  const { words } = momentOf(look);
  return /^(?:today|this)/iu.test(words) || look.said.mood.future !== null ? '' : words;
}

/** 'We ate B4-2', 'had the chili for lunch', 'ate one curry'. */
export const eating: Reader = (look) => {
  const thing = things(look);
  if (!thing) return undefined;
  const verbs = look.at(...idea('eat'));
  if (
    verbs.length === 0 &&
    look.says(/ had (?:\w+ )?(?:mou?ld|a (?:hole|leak|tear)|mice|worms?|moths?|gone) /)
  )
    return undefined;
  // 'Had' eats where a meal of the day or nothing else follows; 'have' possesses.
  const willHave = look.says(/ (?:will|ll|gonna|going to|let s|wanna) (?:\w+ )?have /);
  const isHaving = look.says(/ (?:are|re|is|am|m) having /);
  const had = look.said.all.flatMap((token, i) =>
    /^(?:had|tried|tasted|shared)$/.test(token.plain) ||
    (isHaving && token.plain === 'having') ||
    (willHave && token.plain === 'have')
      ? [i]
      : [],
  );
  if (verbs.length === 0 && (had.length === 0 || look.said.mood.asks)) return undefined;
  const meal = look.slotMeal();
  // 'Used 60 ml less for B1-2' speaks of water.
  const isOfWater = look.said.all.some((token) => token.is === 'quantity' && token.unit.kind === 'volume');
  if (isOfWater && verbs.every((i) => look.said.lemmas[i] === 'use')) return undefined;
  const done = [...thing.at, ...verbs, ...had];
  const behind = thing.byCode && verbs.length > 0 ? look.asideBehind(done) : [];
  const beside = behind.flatMap((i) =>
    isAccounted(look.said.all[i]!.plain) || look.said.all[i]!.is !== 'word' ? [] : [look.said.all[i]!.typed],
  );
  // 'Open B4-3 for me' may ask to see it.
  const isOrder = look.says(/^ (?:open|take)(?: up)? /) && verbs.length > 0 && had.length === 0;
  const when = dayOf(look);
  return {
    means: 'use',
    words: `${thing.words}${when === '' ? '' : ` ${when}`}`,
    score: scoreOf(verbs.length > 0 ? 4 : 2.5, thing.byCode ? 2 : 1, meal !== undefined && 0.5),
    left: look.leftBy([
      ...(verbs.length > 0 ? look.at('take', 'bring') : []),
      ...thing.at,
      ...verbs,
      ...had,
      ...people(look),
      ...orderWords(look),
      ...look.circumstances(),
      ...momentOf(look).at,
      ...behind,
      ...(meal ? [meal.at] : []),
    ]),
    holds:
      holdOf(look) ??
      ((isHaving || willHave) && verbs.length === 0
        ? '"have" is not over yet'
        : isOrder
          ? '"open" may only mean to show it'
          : null),
    ...(beside.length === 0 ? {} : { beside }),
  };
};

/** 'Ate the rest of B1', 'ate the 15 g left of B1', 'half of B9-2 is left': what was never sealed, or a part. */
export const eatingPart: Reader = (look) => {
  const verbs = look.at(...idea('eat'));
  const isRest = look.says(/ (?:rest|remainder|unsealed|leftovers?|left) /);
  const mass = look.said.all.find((token) => token.is === 'quantity' && token.unit.kind === 'mass')?.typed;
  const [batch] = look.said.batches;
  const isTaste =
    look.says(/ (?:took|taken|take|tasted|tried|snacked|nibbled|try|taste|pinched) /) && mass !== undefined;
  if (
    batch &&
    look.said.codes.length === 0 &&
    isTaste &&
    verbs.length === 0 &&
    !look.has('seal', 'weigh', 'tray') &&
    !look.said.mood.asks
  )
    return {
      means: 'use',
      words: `B${batch.batch} ${mass}`,
      score: 5,
      left: [],
      holds: holdOf(look, { part: true }) ?? 'nobody said that it is eaten',
    };
  if (batch && look.said.codes.length === 0 && isRest && verbs.length > 0)
    return {
      means: 'use',
      words: `B${batch.batch} ${mass ?? 'rest'}`,
      score: 6.5,
      left: [],
      holds: holdOf(look, { part: true }),
    };
  const half =
    /\b(half(?! an? (?:hour|day)| past| \d| (?:one|two|three|four|five|six|seven|eight|nine|ten|eleven|twelve)\b)|a third|a quarter|three quarters|two thirds)\b/iu.exec(
      look.said.text,
    )?.[1];
  const had = look.said.all.some((token) => token.plain === 'had');
  const share = half ?? mass;
  if (look.said.codes.length === 1 && share !== undefined && (verbs.length > 0 || had))
    return {
      means: 'use',
      words: `${look.codes()} ${share}`,
      score: 7,
      left: [],
      holds: holdOf(look, { part: true }),
    };
  return undefined;
};

/** 'Took B4-3 to work', 'gave B2-1 to the neighbour': gone from the shelf, though nobody said eaten. */
export const takenAway: Reader = (look) => {
  const verbs = look.said.all.flatMap((token, i) =>
    /^(?:took|taken|take|taking|gave|given|handed|lent|sold|gone)$/.test(token.plain) ? [i] : [],
  );
  const isMeal =
    look.slotMeal() !== undefined &&
    look.says(
      / (?:for|was|were|is|are|as) (?:\w+ )?(?:breakfast|lunch|dinner|supper|snack|tonight) | (?:breakfast|lunch|dinner|supper|snack) (?:\w+ ){0,2}(?:was|were) /,
    );
  if (
    (verbs.length === 0 && !isMeal) ||
    look.has(...idea('eat'), ...idea('throw'), ...idea('pack'), 'out', 'want', 'rate', 'salty', 'water') ||
    look.said.mood.asks ||
    look.says(/ back /)
  )
    return undefined;
  const thing = things(look);
  // A meal alone may be spoken of in many ways; how many pouches of it are gone is told.
  if (!thing || (!thing.byCode && !/^"?(?:\d|all )/.test(thing.words))) return undefined;
  const when = dayOf(look);
  return {
    means: 'use',
    words: `${thing.words}${when === '' ? '' : ` ${when}`}`,
    score: 3.5,
    left: [],
    holds: holdOf(look) ?? 'nobody said that it is eaten',
  };
};

/** 'Don't want B2-3 any more, bin it': what is turned round stands in another clause than the deed. */
function isOtherClause(look: Look, verbs: readonly number[]): boolean {
  const { all, mood } = look.said;
  const at = all.findIndex((token) => token.plain === mood.negated);
  const [verb] = verbs;
  if (at < 0 || verb === undefined) return false;
  const between = all.slice(Math.min(at, verb) + 1, Math.max(at, verb));
  return between.some(({ plain }) => /^(?:,|;|\.|so|but|then)$/.test(plain));
}

/** 'Threw away B1-3', 'bin B2-2 – mice'. What stands behind the code is the reason. */
export const throwing: Reader = (look) => {
  const verbs = look.at(...idea('throw'));
  const isRid = look.says(
    / (?:(?:got|get|getting) rid of|out (?:it|they) (?:went|go|goes)|went (?:straight )?(?:out|(?:in|into|to) the (?:bin|trash|rubbish|compost))|in the (?:bin|trash|rubbish)|to the compost) /,
  );
  const thing = things(look);
  if (!thing || (verbs.length === 0 && !isRid)) return undefined;
  const last = Math.max(...thing.at);
  const behind = look.said.all.flatMap((token, i) => (i > last ? [token] : []));
  const typed = behind.length === 0 ? '' : look.said.text.slice(behind[0]!.from);
  const reason = typed
    .replace(
      /^[\s,.:;–—-]*(?:away|out|because|since|as|for|it was|it is|it's|was|is|they were|had|went (?:out|(?:in|into|to) the (?:bin|trash|rubbish|compost)))?\b[\s,]*/iu,
      '',
    )
    .replace(/[\s,.]*\b(?:so|and)?\s*out (?:it|they) (?:went|go|goes)[\s.!]*$/iu, '')
    .replace(
      /[\s,.]*\b(?:so|and)\s+(?:(?:i|we)\s+)?(?:threw|binned|tossed|chucked|discarded|trashed|dumped)\s+(?:it|them|that|both)(?:\s+(?:out|away))?[\s.!]*$/iu,
      '',
    )
    .replace(/[\s?？!.]+$/u, '')
    .trim();
  return {
    means: 'discard',
    words: `${thing.words}${reason === '' ? '' : ` ${reason}`}`,
    score: scoreOf(4, thing.byCode ? 2 : 1),
    // A figure or a load told in front of it is no reason.
    left: look.said.all.flatMap((token, i) =>
      i < last &&
      !thing.at.includes(i) &&
      (token.is === 'batch' || token.is === 'quantity' || (token.is === 'number' && token.value >= 20))
        ? [token.typed]
        : [],
    ),
    holds:
      holdOf(look, { negated: isOtherClause(look, verbs) }) ??
      (look.says(/ (?:would|could) be /) ? '"would" leaves it open' : null),
  };
};

const foundWords =
  / (?:tight|firm|(?:rock |brick )?hard|stiff|solid|holding|holds?|held|drawn in|loose|leaks?|leaking|leaked|lost (?:its|the|their) (?:vacuum|air)|drew air|hole|tear|rip|torn|ripped|punctured|burst|split|vacuum (?:is |has )?(?:gone|lost|broken)|came open|come open|came undone|came apart|seal (?:has )?(?:failed|broke|gave)|resealed|swollen|swelled|blown up|balloon\w*|inflated|puffy|puffed|bloated|smells?|stinks?|smelled|drying on) /;

/** The pouches that were looked at: by their codes, or all of a batch. */
function codesFound(look: Look): string {
  const codes = look.codes();
  const [batch] = look.said.batches;
  if (codes !== '' || !batch || !look.says(/ (?:all|every|pouches|bags|they|each) /)) return codes;
  return look.names.meals
    .flatMap((meal) => look.names.pouchesOf(meal))
    .filter((one) => one.batch === batch.batch)
    .map(sayCode)
    .join(' ');
}

/** 'Opened B2-2 but we did not eat it': open, and still there. */
export const openedOnly: Reader = (look) => {
  const codes = look.codes();
  const isOpened = look.says(/ (?:opened|opend|tore open|cut open|is open|are open) /);
  const isKept = look.says(
    / (?:didn t|did not|didnt|haven t|not) (?:\w+ ){0,2}(?:eat|eaten|ate|use|used|finish|touch\w*) /,
  );
  return codes === '' || !isOpened || !isKept || look.said.mood.asks
    ? undefined
    : {
        means: 'found',
        words: `${codes} opened`,
        score: 7.5,
        left: [],
        holds: holdOf(look, { negated: true }),
      };
};

/** 'B3-2 is loose', 'B1-4 and B1-5 hold', 'resealed B3-2 with 92 g'. */
export const finding: Reader = (look) => {
  const codes = codesFound(look);
  if (codes === '' || !foundWords.test(look.folded) || look.has(...idea('throw'))) return undefined;
  // 'Split M3-1 between two' shares it.
  if (look.says(/ split .*(?:between|among|for|into|in (?:two|three|\d)) /)) return undefined;
  const mass = look.said.all.find((token) => token.is === 'quantity' && token.unit.kind === 'mass')?.typed;
  const word = foundWords.exec(look.folded)![0].trim();
  const plain = /^(?:hold|held|holding|firm|rock|brick|hard|stiff|solid)/.test(word)
    ? 'tight'
    : /^(?:lost|drew|leak|hole|tear|rip|torn|ripped|punctured|burst|split|vacuum|c[ao]me|seal)/.test(word)
      ? 'loose'
      : /^(?:puff|bloat|swell|blown|balloon|inflat)/.test(word)
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
    words: `${codes} ${plain}${mass === undefined ? '' : ` ${mass}`}${altitude === undefined ? high : ` at ${altitude}`}`,
    score: 6,
    // 'B1-3 burst, rest eaten' says something of the others.
    left: look.said.all.flatMap((token, i) =>
      /^(?:rest|others|remaining)$/.test(token.plain) || ['eat', 'finish'].includes(look.said.lemmas[i]!)
        ? [token.typed]
        : [],
    ),
    holds: holdOf(look),
  };
};
