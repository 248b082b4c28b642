import { type Reader, holdOf } from './hold.ts';
import { eaterCue, newcomer, speaksOfFood } from './newcomer.ts';
import { tokens } from '#words/tokens.ts';

/** Sodium in table salt, g per g: 22.98976928 / (22.98976928 + 35.45). @source iupac-weights */
const sodiumShareOfSalt = 0.3934;

/** 'Noa may have milk' allows; elsewhere 'may have' doubts. */
const isAllowing = (doubt: string | null): boolean => /^(?:may|could|can) have$/iu.test(doubt ?? '');

/** 'I'm vegan now', 'Noa turned 8', 'Ben hates mushrooms', 'Noa can have milk again'. */
export const eater: Reader = (look) => {
  const { people, mood, all } = look.said;
  const mine = /^\s*(?:i['’]?m|i am|i turned)\s+(\d{1,2})(?:\s+(?:years? old|now|today))*[\s.!]*$/iu.exec(
    look.bare,
  )?.[1];
  if (mine !== undefined && !mood.asks)
    return { means: 'eater', words: `me ${mine} years`, score: 5, left: [], holds: null };
  // 'I am Ada' says who writes.
  const isName =
    /^\s*(?:[Ii]['’]?m|[Ii] am|[Mm]y name is|[Tt]his is)\s+\p{Lu}\p{Ll}[\p{L}'’-]*[\s.!]*$/su.test(look.bare);
  if (isName && !mood.asks && !eaterCue.test(look.folded))
    return people.some(({ names: [name] }) => name !== look.names.me) ? undefined : newcomer(look);
  const lifts = look.says(
    / (?:forget|drop|remove|lift|delete|cancel|no more) (?:\w+ )?(?:salt|sodium) limit | (?:salt|sodium) limit (?:is |can be )?(?:gone|over|lifted|dropped|removed) /,
  );
  const whose = people[0]?.names[0];
  if (lifts && !mood.asks && whose !== undefined)
    return {
      means: 'eater',
      words: `${whose === look.names.me ? 'me' : whose} no sodium limit`,
      score: 5,
      left: [],
      holds: 'that takes a limit away',
    };
  const isNew = /^\s*(?:please\s+)?(?:new|add)\s+(?:eater|person|guest|child)\b/iu.test(look.bare);
  if ((!isNew && !speaksOfFood(look.folded)) || look.said.codes.length > 0) return undefined;
  const fresh = newcomer(look);
  if (fresh) return fresh;
  const [who] = people;
  if (!who || mood.asks) return undefined;
  // 'I'm not the intolerant one' tells nothing of anybody.
  if (look.says(/ not the .*\bone /)) return undefined;
  const isMe = who.names[0] === look.names.me && !all.some((token) => token.typed === look.names.me);
  const first = who.at[0]!;
  const before = all
    .slice(mood.start, first)
    .some(
      (token) =>
        token.is === 'word' &&
        !/^(?:hi|hey|ok|so|and|but|please|now|oh|fyi|our|my|set|make|put|change|note|remember|record|write|down|that|also)$/.test(
          token.plain,
        ),
    );
  const drop = new Set(who.at);
  const rest = look
    .without(drop)
    .replace(/^(?:(?:please|note|remember|record|write|put|down|that|also)\s+)+/iu, '')
    .replace(/^(?:['’]?m|am|is|are|now)\s+/iu, '')
    .replace(/\b(?:now|today|by the way|btw|anymore|any more|just|really|also)\b/giu, ' ')
    .replace(/\blimit (?:is|of|should be|has to be) (\d{3,4})(?: not \d+)?\b/giu, 'sodium $1')
    .replace(/\blimit (?:is|of)\b/giu, ' ')
    .replace(
      /\b(?:only\s+)?(?:eats?|has|gets|takes)\s+(?:only\s+)?half\s+(?:a|the|an)\s+portion\b/iu,
      'portion 0.5',
    )
    .replace(/\beats?\s+(?=\d+\s*%)/iu, '')
    .replace(
      /(\d+)\s*%\s*(?:of\s+)?(?:an?\s+|the\s+)?portions?\b/iu,
      (_, n: string) => `portion ${Number(n) / 100}`,
    )
    .replace(/\bturn(?:ed|s)\s+(\d+)\b/iu, 'age $1')
    .replace(
      /^(?:is\s+)?(\d{1,2}|one|two|three|four|five|six|seven|eight|nine|ten|eleven|twelve)$/iu,
      'age $1',
    )
    .replace(
      /\b(?:hates?|can['’]?t stand|cannot stand|doesn['’]?t like|does not like|don['’]?t like)\b/giu,
      'dislikes',
    )
    .replace(
      /\b(?:no longer|doesn['’]?t|does not|don['’]?t|do not)\s+(?:(?:needs?|ha(?:s|ve)) to avoid|avoids?)(?=\s+\p{L})/iu,
      'may eat',
    )
    .replace(
      /\b(?:can|may)\s+(?:eat|have)\b|\b(?:is\s+|am\s+|are\s+)?allowed(?:\s+to\s+(?:eat|have))?\b/iu,
      'may eat',
    )
    .replace(/\b(?:no longer eats?|stopped eating|can['’]?t do)\b/iu, 'never')
    .replace(/^(?:is\s+)?(\d{1,2})\s*,?\s+not\s+\d{1,2}$/iu, 'age $1')
    .replace(/^(no\s+\p{L}+)\s+for$/iu, '$1')
    .replace(/\s+/gu, ' ')
    .trim();
  const salt = /\b(\d+(?:[.,]\d+)?)\s*(g|mg)\s+(?:of\s+)?salt\b/iu.exec(look.said.text);
  const sodiumMg = salt
    ? Math.round(Number(salt[1]!.replace(',', '.')) * (salt[2] === 'g' ? 1000 : 1) * sodiumShareOfSalt)
    : 0;
  const portion = look.has('portion')
    ? look.said.all.findLast(
        (token) =>
          token.is === 'number' && token.value >= 0.1 && token.value <= 3 && !Number.isInteger(token.value),
      )
    : undefined;
  if (portion?.is === 'number')
    return {
      means: 'eater',
      words: `${isMe ? 'me' : who.names[0]} portion ${portion.value}`,
      score: 4,
      left: [],
      holds: holdOf(look, { part: true }),
    };
  const limit =
    /\b(\d{3,4})\s*mg\b/iu.exec(look.said.text)?.[1] ??
    /\bsodium\s+(?:limit\s+)?(?:to|is|at|of)?\s*(\d{3,4})\b/iu.exec(look.said.text)?.[1];
  if (limit !== undefined && look.has('sodium'))
    return {
      means: 'eater',
      words: `${isMe ? 'me' : who.names[0]} sodium ${limit}`,
      score: 4,
      left: [],
      holds: holdOf(look, { future: true, negated: true }),
    };
  return {
    means: 'eater',
    words: `${isMe ? 'me' : who.names[0]} ${salt ? `sodium ${sodiumMg}` : rest}`,
    score: before ? 2 : 4,
    left: [],
    holds: salt
      ? `salt is not sodium: ${salt[1]} ${salt[2]} of salt hold ${sodiumMg} mg of sodium`
      : (isAllowing(mood.doubt) ? null : mood.doubt) !== null ||
          (mood.part !== null && !/portion 0\.5/.test(rest))
        ? holdOf(look, { negated: true })
        : null,
  };
};

/** 'Remove Rosa': nobody is taken out without a tap. */
export const leaving: Reader = (look) => {
  const [who] = look.said.people;
  const isSelf = who?.at.every((i) => /^(?:my|mine|me|i|myself)$/.test(look.said.all[i]!.plain));
  if (!who || isSelf || look.said.mood.asks || look.said.trips.length > 0 || look.said.people.length > 1)
    return undefined;
  const isGone = look.says(
    / (?:take|cross|strike) \w+ off | (?:moved|moves|moving) (?:out|away) | no longer (?:lives|eats) (?:here|with us) | left (?:us|the house|home) for good /,
  );
  if (isGone && look.said.codes.length + look.said.meals.length === 0)
    return {
      means: 'eater',
      words: `${who.names[0]} gone`,
      score: 4.5,
      left: [],
      holds: 'that takes somebody out of all that is planned',
    };
  if (!look.has('remove', 'delete') || look.said.codes.length + look.said.meals.length > 0) return undefined;
  // 'Remove the mushroom thing from Tomas' takes out no person.
  if (
    look.says(/ (?:from|of|for) /) ||
    look.leftBy([...who.at, ...look.at('remove', 'delete', 'eater', 'person')]).length > 0
  )
    return undefined;
  return {
    means: 'eater',
    words: `${who.names[0]} gone`,
    score: 4,
    left: [],
    holds: 'that takes somebody out of all that is planned',
  };
};

/** 'The soup pot weighed 2.5 kg': what the finished pot weighed. */
export const pot: Reader = (look) => {
  const meal = look.mealTyped();
  const mass = look.said.all.find((token) => token.is === 'quantity' && token.unit.kind === 'mass')?.typed;
  if (
    meal === undefined ||
    mass === undefined ||
    !look.has('pot') ||
    // 'Lentil pot with 1 kg lentils' is a name.
    (look.at('pot').every((i) => look.said.meals.some(({ at }) => at.includes(i))) &&
      !look.says(/ (?:weigh\w*|came to|comes to|is|was|finished|done) /)) ||
    look.has('tray', 'load', 'batch', 'add', 'change')
  )
    return undefined;
  return {
    means: 'recipe',
    words: `${meal.replaceAll('"', '')} pot ${mass}`,
    score: 6,
    left: [],
    holds: look.said.mood.asks
      ? 'that reads as a question'
      : look.has('double', 'twice', 'triple', 'half')
        ? "more or less than the recipe was in that pot, and one recipe's pot is kept"
        : null,
  };
};

/** 'New recipe', 'add a recipe for'. */
const newRecipe =
  /^\s*(?:please\s+)?(?:new|(?:add|record|save|keep|store|note)(?: (?:a|the|this|my|our))?(?: new)?)\s+recipe\b[\s:,]*(?:for\s+)?/iu;

/** A recipe's text without the words that announce it. */
export const withoutLead = (text: string): string =>
  text.replace(newRecipe, '').replace(/^\s*recipe\s*[:–-]?\s+(?=\S)/iu, '');

/** A recipe as it is read out: 'four hundred grams of rice one can of …' in figures, an amount a line. */
function spoken(text: string): string {
  const plain = text
    .replace(
      /\b(?:and\s+)?an?\s+(?=(?:litre|liter|kilo|cup|tin|can|pinch|tablespoon|teaspoon|onion|clove|jar|packet)\b)/giu,
      '1 ',
    )
    .replace(/\s+(?:full stop|period|comma|new line)\b/giu, (mark) => (/comma/iu.test(mark) ? ',' : '\n'));
  let out = '';
  let last = 0;
  for (const token of tokens(plain)) {
    const isWords =
      (token.is === 'number' && token.spelled) || (token.is === 'quantity' && /^\p{L}/u.test(token.typed));
    if (!isWords || (token.is !== 'number' && token.is !== 'quantity')) continue;
    out += `${plain.slice(last, token.from)}${token.value}${token.is === 'quantity' ? ` ${token.unitTyped}` : ''}`;
    last = token.to;
  }
  return (out + plain.slice(last))
    .replace(/\b(\d+(?:\.\d+)?\s+\p{L}+)\s+of\s+(?=\p{L})/giu, '$1 ')
    .replace(/\s+and\s+(?=\d)/giu, ' ')
    .trim();
}

/** A recipe in one line, an ingredient a line: the name ends at the servings, each amount begins a line. */
function inLines(text: string): string {
  if (/[;\n:]/.test(text)) return text;
  const head =
    /^(.*?\b\d+\s*(?:people|persons?|servings?|portions?)\b|.*?\b(?:serves|for)\s+\d+\b)[\s,.]*(.+)$/isu.exec(
      text,
    );
  if (!head) return text;
  const lines = head[2]!.split(/(?:,\s+|\s+)(?=[\d½¼¾⅓⅔]+(?:[.,/]\d+)?\s*\p{L})/u);
  return [
    head[1]!
      .replace(/\s+(?=\d+\s*(?:people|persons?|servings?|portions?)\b)/iu, ', ')
      .replace(/people|persons?/iu, 'servings'),
    ...lines,
  ].join('\n');
}

/** How a recipe is announced before its name. */
const introduced = /^(?:(?:here(?:['’]s| is| are)|this is|that['’]s|try|recipe for|my|our|the)\s+)+/iu;
const servesWords =
  /[,;.\s]*\b(?:feeds|serves|makes|for|enough for)\s+(\d{1,2})(?:\s+(?:people|persons?|servings?|portions?))?\b[\s.!]*|[,;.\s]*\b(\d{1,2})\s+(?:servings?|portions?|people|persons?)\b[\s.!]*/iu;
const servesTold = (text: string): string => {
  const found = servesWords.exec(text);
  return `${found?.[1] ?? found?.[2] ?? '1'} servings`;
};

/** 'New recipe lentil stew 4 people 250 g lentils …', 'delete the recipe …', a pasted recipe. */
export const recipe: Reader = (look) => {
  const { text, mood, meals } = look.said;
  const lines = text.split('\n').filter((line) => line.trim() !== '');
  const amounts = (some: string) =>
    (
      some.match(
        /(?:^|[\s,;:])[\d½¼¾⅓⅔]+(?:[.,/]\d+)?\s*(?:g|kg|ml|l|dl|oz|lbs?|cups?|tbsp|tsp|tins?|cans?|cloves?|pinch|x)?\b/giu,
      ) ?? []
    ).length;
  // 'Recipe pea soup, 4 servings: 400 g split peas; …'.
  const isTold = /^\s*recipe\s+[^:\n]+[:\n]/iu.test(look.bare) && amounts(text) >= 2;
  if (newRecipe.test(text) || newRecipe.test(look.bare) || isTold)
    return {
      means: 'recipe',
      words: inLines(spoken(withoutLead(isTold || !newRecipe.test(text) ? look.bare : text))),
      score: 6,
      left: [],
      holds: mood.asks ? 'that reads as a question' : null,
    };
  const aloud =
    /^recipe\s+(?:for\s+)?(.{3,50}?)\s+(?:it\s+|that\s+)?(?:serves|feeds|makes|for)\s+(\w+)(?:\s+(?:people|servings?|portions?))?[\s,.]*(?:and\s+)?(?:(?:it|you)\s+)?(?:needs?|takes?|has|with|is)?[:\s]+(.+)$/isu.exec(
      look.bare,
    );
  const counted = aloud && tokens(aloud[2]!)[0];
  if (aloud && counted?.is === 'number' && amounts(spoken(aloud[3]!)) >= 2)
    return {
      means: 'recipe',
      words: `${aloud[1]!}, ${counted.value} servings: ${spoken(aloud[3]!).replaceAll(/\s+(?=\d)/gu, '; ')}`,
      score: 7,
      left: [],
      holds: mood.asks ? 'that reads as a question' : 'a recipe without its slash is shown first',
    };
  if (lines.length > 2 && amounts(lines.slice(1).join('\n')) >= 2 && look.said.codes.length === 0)
    return {
      means: 'recipe',
      words: text,
      score: 5,
      left: [],
      holds: 'a recipe without its slash is shown first',
    };
  if (/;/.test(text) && /\b(?:serv\w*|portions?|people|persons?)\b/iu.test(text) && amounts(text) >= 3)
    return {
      means: 'recipe',
      words: text,
      score: 4,
      left: [],
      holds: mood.asks ? 'that reads as a question' : null,
    };
  // 'Recipe: tomato pasta 5 portions, 500 g penne, …'.
  const inOneLine =
    /^recipe\s*[:–-]\s*([^,;:\d]{3,60}?)[\s,]+(?:for\s+|serves\s+)?(\d{1,2})\s*(?:portions?|servings?|people|persons?)?\s*[,:;]\s*(.+)$/isu.exec(
      look.bare,
    );
  if (inOneLine && amounts(inOneLine[3]!) >= 2)
    return {
      means: 'recipe',
      words: `${inOneLine[1]!.trim()}, ${inOneLine[2]!} servings: ${inOneLine[3]!.replaceAll(/,\s+(?=\d|[½¼¾])/gu, '; ')}`,
      score: 7,
      left: [],
      holds: mood.asks ? 'that reads as a question' : 'a recipe without its slash is shown first',
    };
  // "Grandma's pancake mix: 300 g flour, 3 eggs, 500 ml milk, feeds 4".
  const headed = /^([^:\d]{3,60}):\s*(.+)$/su.exec(look.bare);
  if (
    headed &&
    amounts(headed[2]!) >= 3 &&
    /\b(?:serv\w*|portions?|people|persons?|feeds|makes|for \d)\b/iu.test(text) &&
    look.said.codes.length === 0
  )
    return {
      means: 'recipe',
      words: inLines(
        `${headed[1]!.replace(introduced, '')}, ${servesTold(headed[2]!)}: ${headed[2]!.replace(servesWords, '').replaceAll(/,\s*(?=\d|\p{L}+ of\b)/gu, '; ')}`,
      ),
      score: 4.5,
      left: [],
      holds: mood.asks ? 'that reads as a question' : 'a recipe without its slash is shown first',
    };
  if (
    look.has('recipe') &&
    meals.length > 0 &&
    !look.has('delete', 'remove', 'drop', 'rename', 'call', 'change')
  )
    return { means: 'recipe', words: look.mealTyped()!, score: 3, left: [], holds: null };
  return undefined;
};
