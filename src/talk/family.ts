import type { Reader } from './hold.ts';
import { Look, type Meaning } from './look.ts';
import { setting } from './settings-told.ts';

const counted = '(?:\\s+(?:\\d+|two|three|four|five|six|seven|eight)(?:\\s+(?:of us|people|eaters))?)?';
/** Words before a list of people who eat here. */
const opensList = new RegExp(
  `^(?:(?:there )?(?:we are|we['’]re|us|there are|there['’]?s|(?:the|our) (?:family|household|crew|lot)(?: is| are)?|in the family are|eating here are|eaters(?: are)?|who eats(?: here)?|people(?: are)?|(?:our |the |my )?(?:kids|children|boys|girls|twins)(?: are)?)${counted}(?: eating(?: here)?)?)\\s*[:,–-]?\\s+(.+)$`,
  'isu',
);

/** How somebody stands to whoever writes, before their name: it says who is meant, and of a child that it is one. */
const kin =
  /^(?:and\s+)?(?:(?:our|my|the|her|his|a)\s+)?(?:(?:\d+|two|three|four|both|little|big|older|younger|oldest|youngest)\s+)*(?:(son|daughter|kid|kids|child|children|baby|toddler|twins|girls?|boys?)|wife|husband|partner|mum|mom|mother|dad|father|grandma|grandpa|granny|gran|grandmother|grandfather|nan|aunt|uncle|cousin|friend|sister|brother)\s+/iu;
const name = "\\p{Lu}[\\p{L}'’-]*(?:\\s+\\p{Lu}[\\p{L}'’-]*)?";
const person = new RegExp(
  `^(${name})(?:\\s*\\(?\\s*(?:who is |is |age |aged )?(\\d{1,2})(?:\\s*(?:years?(?: old)?|y\\/?o|yrs?))?\\s*\\)?)?(?:[\\s,]+\\(?((?:no|not|never|allergic|vegan|vegetarian|veggie|coeliac|celiac|gluten|nut|milk|lactose|diabetic|child|portion|cannot|can['’]t|is|has|hates|dislikes|avoids|eats)\\b[^)]*)\\)?)?$`,
  'u',
);

/** Somebody of the list as /eater takes it; undefined where a piece is no person. */
function told(piece: string, isChild: boolean): string | undefined {
  const self = /^(?:me|myself|i)(?:,?\s+(?:am\s+)?(\d{1,2}))?$/iu.exec(piece);
  if (self) return self[1] === undefined ? 'me' : `me ${self[1]} years`;
  const m = person.exec(piece);
  if (!m) return undefined;
  const years = m[2] === undefined ? '' : ` ${m[2]} years`;
  const child = isChild && m[2] === undefined ? ' child' : '';
  return `${m[1]}${child}${years}${m[3] === undefined ? '' : ` ${m[3]}`}`;
}

/** Where a household is told of in the same breath as its place: '… at 574 m and there are four of us, me, …'. */
const alsoFamily =
  /[,;.]?\s+(?:and\s+)?(?=(?:there are|we are|we['’]?re)\s+(?:\d|two|three|four|five|six|seven|eight)\b)/iu;

/** 'We live at 574 m and there are four of us, me, Karl and Lena 9': settings, then people. */
export const household: Reader = (look) => {
  const found = alsoFamily.exec(look.bare);
  if (!found || found.index === 0 || look.said.mood.asks || look.said.codes.length > 0) return undefined;
  const told = setting(new Look(look.bare.slice(0, found.index), look.names));
  const people = family(new Look(look.bare.slice(found.index + found[0].length), look.names));
  if (!told || !people) return undefined;
  const link = (one: Meaning): Meaning =>
    one.also ? { ...one, also: link(one.also) } : { ...one, also: people };
  return { ...link(told), score: 8 };
};

/** 'We are four: me, Tom, Lea 9 and Ida 6. Lea can't have nuts': several people in one message, and what is kept from them. */
export const family: Reader = (look) => {
  if (look.said.mood.asks || look.said.codes.length + look.said.trips.length > 0) return undefined;
  const isOfChildren = /^\s*(?:our |the |my )?(?:kids|children|boys|girls|twins)\b/iu.test(look.bare);
  const [first, ...further] = look.bare
    .split(/[.!;\n]+\s*(?=\S)/u)
    .map((one) => one.replace(/[.!\s]+$/u, ''));
  // Without words that open it, it is a list of people where each is named with an age.
  const opened = opensList.exec(first ?? '')?.[1];
  const list = opened ?? first ?? '';
  const people: string[] = [];
  let ofChildren = isOfChildren;
  for (const piece of list
    .split(/\s*,\s*(?![^(]*\))(?:and\s+)?|\s+(?:and|&|plus)\s+(?![^(]*\))/iu)
    .map((one) => one.trim())
    .filter(Boolean)) {
    const stands = kin.exec(piece);
    // 'The kids Ben and Noa': both are.
    if (stands) ofChildren = stands[1] !== undefined;
    const words = told(piece.replace(kin, ''), stands ? stands[1] !== undefined : ofChildren);
    const isAged = words !== undefined && /^\S+(?: \S+)? \d/u.test(words);
    if (words !== undefined && (opened !== undefined || isAged)) people.push(words);
    // '…, no nuts' goes on about the one before.
    else if (words === undefined && people.length > 0 && /^\p{Ll}/u.test(piece))
      people.push(`${people.pop()!}, ${piece}`);
    else return undefined;
  }
  if (people.length < 2) return undefined;
  for (const sentence of further) {
    const at = people.findIndex((one) =>
      sentence.toLowerCase().startsWith(`${one.split(' ')[0]!.toLowerCase()} `),
    );
    // A sentence that is about none of them is not dropped.
    if (at < 0) return undefined;
    people[at] += `, ${sentence.slice(people[at]!.split(' ')[0]!.length).trim()}`;
  }
  return people
    .map((words): Meaning => ({ means: 'eater', words, score: 5, left: [], holds: null }))
    .reduceRight((rest, one) => ({ ...one, also: rest }));
};
