import type { Camp } from '#core/records.ts';

/** A change of a recipe's headings. */
export type SectionChange =
  | { readonly is: 'heading'; readonly how: 'name'; readonly heading: string; readonly to: string }
  | { readonly is: 'heading'; readonly how: 'drop'; readonly heading: string }
  | {
      readonly is: 'heading';
      readonly how: 'place';
      readonly heading: string;
      readonly above: number;
      /** null: new where there is none of these words. */
      readonly isNew: boolean | null;
    };

const sections = '(?:sub-?)?(?:headings?|headlines?|headers?|sections?(?:\\s+headings?)?|sub-?titles?)';
const verbs =
  'delete|remove|drop|strike|take\\s+out|leave\\s+out|move|put|shift|add|insert|new|rename|change|correct|fix|make|set|call';
const whole = new RegExp(
  `^(.*?)[\\s,:]*(?<![\\p{L}])(?:(${verbs})\\s+)?(?:(?:the|a|an)\\s+)?(?:new\\s+)?${sections}\\b\\s*[,:]?\\s*(.*)$`,
  'isu',
);
const anyHeading = new RegExp(`\\b${sections}\\b`, 'iu');
const toLine =
  /\s+(?:to\s+|up\s+to\s+|down\s+to\s+)?(?:(?:above|before|over|at|from|on)\s+)?line\s+(\d{1,2})\s*(?:(?:of|in)\s+(?:the\s+)?(.+))?$/isu;
const becomes =
  /\s+(?:to\s+be|should\s+(?:be|read|say)|is\s+now(?:\s+called)?|is\s+called|reads|says|to|into|is|as)\s+|\s*(?:=|→|->)\s*|\s*:\s+/giu;
const ofName = /\s+(?:of|in|from|for|to|into)\s+(?:the\s+)?/giu;

const bare = (text: string): string =>
  text
    .trim()
    .replace(/^["“”„«'](.*)["“”»']$/su, '$1')
    .trim();

/** Where the recipe's name stands: in front, or at every place where it may begin behind the text. */
const withName = (text: string, before: string): { name: string; text: string }[] =>
  before.trim() !== ''
    ? [{ name: before, text }]
    : [...` ${text}`.matchAll(ofName)].map(({ index, 0: word }) => ({
        name: ` ${text}`.slice(index + word.length),
        text: ` ${text}`.slice(0, index),
      }));

type Named = SectionChange & { readonly name: string };

function renamed(rest: string, before: string): Named[] {
  const all = ` ${rest}`;
  const readings = [...all.matchAll(becomes)].flatMap(({ index, 0: word }): Named[] => {
    const [left, right] = [all.slice(0, index), all.slice(index + word.length)];
    const change = (name: string, heading: string, to: string): Named => ({
      is: 'heading',
      how: 'name',
      name,
      heading: bare(heading),
      to: bare(to),
    });
    if (before.trim() !== '') return [change(before, left, right)];
    return [
      // 'heading of the barley soup: For the dip' has its name alone in front.
      ...withName(left, '').map(({ name, text }) => change(name, text, right)),
      ...withName(right, '').map(({ name, text }) => change(name, left, text)),
    ];
  });
  // 'Rename heading To finish to At camp': words of the heading before none.
  return [
    ...readings.filter(({ heading }) => heading !== ''),
    ...readings.filter(({ heading }) => heading === ''),
  ];
}

/**
 * 'Rename heading For the sauce to For the dip', 'soup heading 2 is For the crumbs', 'add heading At camp above line 4'.
 * @returns every reading, the likeliest first
 */
export function sectionChanges(text: string): Named[] {
  if (!anyHeading.test(text)) return [];
  const found = whole.exec(text.replace(/\s+/gu, ' '));
  if (!found) return [];
  const [, before = '', verb = '', rest = ''] = found;
  const deed = verb.toLowerCase();
  if (/^(?:delete|remove|drop|strike|take|leave)/u.test(deed))
    return withName(rest, before).map(({ name, text: heading }) => ({
      is: 'heading',
      how: 'drop',
      name,
      heading: bare(heading),
    }));
  const place = toLine.exec(` ${rest}`);
  if (place && /^(?:move|put|shift|add|insert|new)?$/u.test(deed)) {
    const typed = ` ${rest}`.slice(0, place.index);
    const isNew = /^(?:add|insert|new)$/u.test(deed) ? true : /^(?:move|shift)$/u.test(deed) ? false : null;
    return withName(typed, place[2] ?? before).map(({ name, text: heading }) => ({
      is: 'heading',
      how: 'place',
      name,
      heading: bare(heading),
      above: Number(place[1]),
      isNew,
    }));
  }
  return /^(?:rename|change|correct|fix|make|set|call)?$/u.test(deed) ? renamed(rest, before) : [];
}

const anyPlace = /\b(?:at\s+camp|the\s+pot)\b/iu;

const forEach =
  '(?:for\\s+)?(?:each|every(?:one|body)?|per|an?)(?:\\s+(?:serving|portion|person|eater|one|of\\s+them))?|apiece';
const forAll =
  '(?:for|in|of)\\s+(?:all(?:\\s+(?:of\\s+)?(?:the\\s+)?(?:servings|portions|of\\s+us|\\d+))?|total|the\\s+(?:whole|entire)(?:\\s+(?:recipe|pot|batch))?)|altogether|together';
const camp = new RegExp(
  `^(.+?)[\\s,:]+(?:(?:what\\s+is|everything|all|it|that|is)\\s+)*(?:added\\s+)?at\\s+camp[\\s,:]+(?:(?:is|are|goes|counts?|meant|told|counted)\\s+)*(?:(${forEach})|(${forAll}))$`,
  'isu',
);

/** 'Soup: at camp is for each serving', 'soup at camp in all'. */
export function campChange(text: string): { is: 'camp'; name: string; camp: Camp } | undefined {
  const found = anyPlace.test(text) ? camp.exec(text.replace(/\s+/gu, ' ')) : null;
  return found ? { is: 'camp', name: found[1]!, camp: found[2] === undefined ? 'all' : 'each' } : undefined;
}

const theirPlace =
  '(?:is|are|goes?|comes?|gets?)\\s+(?:only\\s+)?(?:added\\s+|put\\s+|stirred\\s+)?(?:in(?:to)?\\s+)?';
const goes = new RegExp(
  `^(.+?)\\s+${theirPlace}(?:(at\\s+camp(?:\\s+only)?)|(?:in(?:to)?\\s+)?the\\s+pot)$`,
  'isu',
);

/** 'The butter in the soup is added at camp', 'soup: the butter goes into the pot'. */
export function placeChanges(
  text: string,
): { is: 'goes'; name: string; food: string; where: 'camp' | 'pot' }[] {
  const found = anyPlace.test(text) ? goes.exec(text.replace(/\s+/gu, ' ')) : null;
  if (!found) return [];
  const body = found[1]!;
  const where: 'camp' | 'pot' = found[2] === undefined ? 'pot' : 'camp';
  const change = (name: string, food: string) => ({
    is: 'goes' as const,
    name,
    food: food.replace(/^(?:the|our)\s+/iu, ''),
    where,
  });
  const front = /^(.+?)\s*[,:]\s*(.+)$/su.exec(body);
  return [
    ...(front ? [change(front[1]!, front[2]!)] : []),
    ...withName(body, '').map(({ name, text: food }) => change(name, food.trim())),
  ];
}
