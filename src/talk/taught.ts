import { type Reader, holdOf } from './hold.ts';

/** 'Our mug holds 300 ml', 'a medium onion here is more like 120 g', 'by curry we mean …'. */
export const teaching: Reader = (look) => {
  const { mood } = look.said;
  const text = look.bare;
  if (
    mood.asks &&
    look.says(/ our .*(?:hold|holds|weigh|weighs|big) | how (?:big|much) is our /) &&
    !look.says(/ (?:trays?|pouch|pouches|bags?|dryer) /)
  )
    return { means: 'our', words: '', score: 4, left: [], holds: null };
  if (mood.asks)
    return look.says(
      / (?:our|my) (?:measures?|words?|units) | what have we taught | (?:did|have) (?:we|i) (?:teach|taught) | words .*(?:teach|taught|learn\w*) /,
    )
      ? { means: 'our', words: '', score: 4, left: [], holds: null }
      : undefined;
  const forgets =
    /^\s*(?:please\s+)?forget\s+(?:about\s+)?(?!that\b|it\b|this\b|what\b|my\b|the last\b)(.+)$|^(.+?)[\s,:;]+forget(?:\s+it)?\s*$/iu.exec(
      text,
    );
  if (forgets) return { means: 'our', words: text, score: 3, left: [], holds: holdOf(look) };
  const byMean = /\bby\s+.+\bwe\b.*\bmean\b/iu.test(text);
  if (byMean) return { means: 'our', words: text, score: 5, left: [], holds: holdOf(look) };
  const called = /^\s*(?:we|i)\s+call\s+(.+?)\s+(?:just\s+)?["“]?([\p{L} ]+)["”]?\s*[.!]*$/iu.exec(text);
  if (called)
    return {
      means: 'our',
      words: `by ${called[2]} we mean ${called[1]}`,
      score: 3,
      left: [],
      holds: holdOf(look),
    };
  const measured =
    /^(.*?\b(?:our|my|an?|the|one|in our house)\b\s+)?(.+?)\s+(?:here\s+|at home\s+|always\s+)?(?:is|are|weighs?|holds?|has|takes?|comes to|contains?|=)\s+(?:(?:always|usually|more like|about|around|roughly|only|exactly|just)\s+)*(\d+(?:[.,]\d+)?\s*(?:g|kg|ml|l|oz|lb|grams?|millilit(?:er|re)s?|ounces?))(?:\s+(?:each|here|at home|for us|with us|on average|drained|net|dry|cooked|raw|(?:with|in|by|for) (?:my|our) \p{L}+))?[\s.!]*$/iu.exec(
      text.trim(),
    );
  if (
    !measured ||
    look.said.codes.length + look.said.batches.length > 0 ||
    look.said.people.some(({ at }) => !at.every((i) => /^(?:my|our)$/.test(look.said.all[i]!.plain)))
  )
    return undefined;
  // A measure is one word: a soup ladle is a ladle.
  const isMeasure = /^(?:ladle|mug|bowl|spoon|scoop|cup|glass|pan|jug|beaker|tin|can|jar|dipper|tumbler)$/iu;
  const last = measured[2]!.trim().split(/\s+/u).at(-1)!;
  const told = isMeasure.test(last) && /\b(?:ml|l|millilit)/iu.test(measured[3]!) ? last : measured[2]!;
  const what = told.replace(/\b(?:small|medium|large|big|normal|average|usual|typical)\b\s*/giu, '').trim();
  const hasTin = /\b(?:tins?|cans?|jars?|packets?|cup|mug|spoon|scoop)\b/iu.test(measured[2]!);
  if (
    look.said.meals.some(({ whole }) => whole && !hasTin) ||
    /\b(?:trays?|bags?|scale|dryer|altitude|cups?|storage|pouch(?:es)?|absorbers?)\b/iu.test(what)
  )
    return undefined;
  return {
    means: 'our',
    words: `${what} is ${measured[3]}`,
    score: /\b(?:our|my)\b/iu.test(measured[1] ?? '') ? 4 : 3,
    left: [],
    holds: holdOf(look),
  };
};
