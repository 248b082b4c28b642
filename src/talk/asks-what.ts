import { about, ask, isAsking } from './ask.ts';
import type { Reader } from './hold.ts';

/** 'What happened to B3-2', 'did we eat B1-3', 'where is B2-1', 'who threw away B3-2', 'when was B1 sealed'. */
export const history: Reader = (look) => {
  if (isAsking(look) && look.said.codes.length > 0 && look.has('pack')) return ask('whatof', about(look), 5);
  if (isAsking(look) && about(look) !== '' && look.says(/ how old /))
    return ask('whatof', `${about(look)} when loaded`, 6);
  // 'What did we put in the curry' asks for its lines.
  if (
    look.said.codes.length === 0 &&
    look.says(
      / what (?:all |else )?(?:did|do|have) (?:we|i|you) (?:all )?put (?:in|into) (?!the (?:dryer|drier))/,
    )
  )
    return undefined;
  const what = about(look);
  if (!isAsking(look) || what === '') return undefined;
  if (look.says(/ (?:may|can|can t|cant|cannot|could|allowed|should|safe|ok|okay) /)) return undefined;
  const who = look.says(/ (?:who|whose|by whom) /);
  // 'What did it weigh when it went in' asks for no time.
  const when = look.says(
    /^ (?:\p{L}+ ){0,2}when | (?:what day|how long ago|which day|what date|since when|and when) /u,
  );
  if (look.says(/ (?:will|won t|must|should|have to|has to) /)) return undefined;
  const happened = look.says(
    / (?:if|whether) .*(?:ate|used|threw|opened|sealed) | (?:happen\w*|where|became|become|still|did|was|were|has|have|had|gone|got|is .*(?:eaten|used|gone|thrown|binned|open)) ?/,
  );
  const deed = look.has(
    'eat',
    'use',
    'throw',
    'discard',
    'bin',
    'toss',
    'seal',
    'load',
    'weigh',
    'cook',
    'make',
    'record',
    'open',
    'rate',
    'pack',
    'dry',
    'start',
    'finish',
    'put',
  );
  if (look.says(/ (?:dry|ready|done) /) && !who && !when) return undefined;
  const verb = look.has('seal')
    ? ' sealed'
    : look.has('load', 'cook', 'start') ||
        look.says(/ (?:put|went|go|goes) (?:\w+ ){0,3}in /) ||
        (look.has('make') && look.said.codes.length === 0)
      ? ' loaded'
      : look.has('weigh')
        ? ' weighed'
        : look.has('eat', 'use', 'open', 'finish') || (who && look.says(/ had (?!to |a hole|been )/))
          ? ' used'
          : look.has('throw', 'discard', 'bin', 'toss')
            ? ' discarded'
            : '';
  if (look.has('load') && look.says(/ how (?:much|heavy) /) && look.said.codes.length === 0)
    return ask('howheavy', `${what} asloaded`, 5.5);
  if (who && (deed || happened)) return ask('whatof', `${what} who${verb}`, 5);
  if (when && (deed || happened)) return ask('whatof', `${what} when${verb}`, 5);
  if (happened && (deed || look.says(/ (?:happen\w*|where|became|become|still|gone|there) /)))
    return ask('whatof', `${what}${verb}`, 4.5);
  return undefined;
};

const worrying =
  /\b(?:puffy|puffed|swollen|swelled|bloated|blown up|smells?|stinks?|smelly|mou?ldy?|mou?ld|slimy|leak(?:s|ed|ing)?|loose|(?:soft|limp|floppy) (?:pouch|bag)|balloon\w*|inflated|lost (?:its |the |their )?vacuum|no vacuum|hole|torn|ripped|went off|gone off|tastes? (?:off|funny|weird|sour)|standing|stood|in the (?:sun|heat)|overnight|(?:after|for) (?:\d+|two|three|four|five|six) hours|left out|left (?:\S+ ){1,4}out|been out|out of the (?:dryer|fridge)|still in the pot|(?:made up|rehydrated|soaked|poured|cooked up)\b.*\b(?:yesterday|this morning|last night|hours ago))\b/iu;

/** 'B3-4 is puffy, what do I do', 'it stood for four hours, can we still eat it'. The caution comes first. */
export const worries: Reader = (look) => {
  const { text, mood } = look.said;
  if (!worrying.test(text)) return undefined;
  const asksWhat =
    mood.asks || /\bwhat (?:do|should|now|to do|can)\b|\b(?:safe|ok|okay) (?:to eat|still)\b/iu.test(text);
  // Nobody tells of a bloated bag without wanting to know; with its code it is recorded as found.
  const isTold =
    look.said.codes.length === 0 &&
    /\b(?:puffy|puffed|swollen|swelled|bloated|blown up|mou?ldy?|slimy)\b/iu.test(text) &&
    look.says(/ (?:bag|bags|pouch|pouches|it|one|soup|food|jar|leftovers?|rest|oats|glass) /) &&
    !look.has('throw', 'bin', 'toss', 'discard', 'chuck');
  if (!asksWhat && !isTold) return undefined;
  const kind = /\b(?:puffy|puffed|swollen|swelled|bloated|blown)/iu.test(text)
    ? 'swollen'
    : /\b(?:smells?|stinks?|smelly|mou?ld|slimy|went off|gone off|tastes?)/iu.test(text)
      ? 'smells'
      : /\b(?:standing|stood|left out|been out|hours?|in the pot|made up|rehydrated|yesterday)\b/iu.test(text)
        ? 'stood'
        : 'loose';
  return ask('worry', `${kind} ${about(look)}`, 6);
};
