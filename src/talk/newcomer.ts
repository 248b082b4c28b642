import { avoidanceOf } from '#core/avoidance.ts';
import { fold } from '#words/near.ts';
import type { Look, Meaning } from './look.ts';

/** By what people speak of somebody's food. */
export const eaterCue =
  / (?:allerg\w*|alerg\w*|vegan|vegetarian|veggie|pescatarian|coeliac|celiac|intoleran\w*|halal|kosher|gluten free|dairy free|nut free|diabetic|plant based|hates?|dislikes?|can t (?:have|eat|stand|do)|no longer eats?|stopped eating|cannot (?:have|eat|stand)|can not (?:have|eat)|cant (?:have|eat)|doesn t (?:eat|like|want)|does not (?:eat|like)|don t (?:eat|like)|must not|mustn t|may not|may (?:eat|have)|(?:is|am|are|i m|im|he s|she s|they re) allowed|no \p{L}+ for (?:me|us)(?= $)|can (?:eat|have)|avoids?|avoiding|eats? no|never eats?|won t eat|off (?:dairy|meat|gluten)|reacts? to|turned|is (?:\d{1,2}|one|two|three|four|five|six|seven|eight|nine|ten|eleven|twelve)(?: now| today| already| not \d+)?(?=(?: please| pls| thanks)? $)|years? old|yo|portion|portions|kcal|calories|(?:salt|sodium) (?:a|per) day|(?:salt|sodium) limit|my sodium|sodium (?:limit )?to \d+|limit (?:is|of|should be|has to be)|mg (?:of )?sodium|sodium \d+|half (?:a|the|an adult s?) portion|no (?:nuts?|peanuts?|milk|eggs?|fish|gluten|dairy|meat|pork)) /u;

/** 'Nuts give him hives', 'milk upsets her tummy': what a food does to somebody. */
const harm =
  / (?:makes?|gives?|upsets?) (?:\p{L}+ ){1,4}(?:ill|sick|hives|rash|cramps?|itch\w*|swell\w*|wheez\w*|bloated|migraines?|tummy|stomach) /u;

/** Whether something is kept away by what allergens, kinds of food and diets are called: 'no shellfish', 'coeliac'. */
function keepsAway(folded: string): boolean {
  const words = folded.trim().split(' ');
  return words.some((word, i) => {
    const next = words.slice(i + 1, i + 3);
    return word === 'no' || word === 'never'
      ? avoidanceOf(next[0] ?? '') !== undefined || avoidanceOf(next.join(' ')) !== undefined
      : avoidanceOf(word)?.is === 'diet';
  });
}

export const speaksOfFood = (folded: string): boolean =>
  eaterCue.test(folded) || harm.test(folded) || keepsAway(folded);

/** Words that open a sentence and are nobody's name. */
const notNames =
  /^(?:it|that|this|he|she|there|the|a|batch|pouch|tray|trip|dinner|today|tomorrow|soup|water|altitude|storage)$/iu;

/** How somebody stands to whoever writes, before their name. */
const ofKin =
  '(?:[Oo]ur|[Mm]y)\\s+(?:\\p{Ll}+\\s+)?(?:(?:grand|step|god|half)?(?:brother|sister|mother|father|son|daughter|child|kid)|friend|cousin|aunt|uncle|mum|mom|dad|nephew|niece|grandma|grandpa|granny|husband|wife|partner|boyfriend|girlfriend|neighbour|neighbor|guest|colleague|mate|boss|teacher|baby|boy|girl)\\s+';

const capital = (name: string): string => `${name[0]!.toUpperCase()}${name.slice(1)}`;

/** What is said of somebody's food, without that they come along and when. */
const behindComing = (typed: string): string =>
  typed
    .replace(
      /^[\s,]*(?:who\s+)?(?:is\s+)?(?:comes?|coming|joins?|joining|will\s+(?:come|join|be\s+there)|visits?|visiting)\b[^,;.]*[,;.]\s*/iu,
      ' ',
    )
    .replace(/^[\s,]*(?:(?:and|who|he|she|they)\b(?:['’]s|['’]re)?[\s,]*)+(?:is\s+|are\s+)?/iu, ' ')
    .replace(/\bcan['’]?t stand\b/giu, 'dislikes')
    .replace(
      /[\s,;]+(?:please\s+)?(?:write|note|put|jot|keep|mark) (?:that|it|this) (?:down|in mind)?(?:\s+please)?[\s.!]*$/iu,
      '',
    )
    .replace(/\bhas an? (\p{L}+) allergy\b/iu, 'allergic to $1')
    .trim();

/** Somebody not heard of before: 'add Pia, vegan', "I'm Ines, vegetarian", 'Max is 6 and can't have nuts'. */
export function newcomer(look: Look): Meaning | undefined {
  const { people, mood, text } = look.said;
  if (mood.asks) return undefined;
  const told = (words: string, score: number): Meaning => ({
    means: 'eater',
    words,
    score,
    left: [],
    holds: null,
  });
  const added =
    /^\s*(?:please\s+)?(?:add|new(?: eater| person| guest| child)?|eater)[\s:]+(?:(?:our|my)\s+)?(?:(?:grandpa|grandma|granny|aunt|uncle|cousin|friend|guest)\s+)?(\p{Lu}[\p{L}'’-]*)[\s,:]+(.+)$/su.exec(
      look.bare,
    );
  if (added && people.every(({ names: [name] }) => name !== added[1]))
    return told(`${added[1]} ${added[2]!.replace(/^(\d{1,2})(?=\s*,)/u, '$1 years')}`, 4);
  // "My brother Paul comes along, he's allergic to shellfish".
  const kin =
    new RegExp(`^\\s*${ofKin}(\\p{Lu}[\\p{L}'’-]+)\\b(.*)$`, 'su').exec(look.bare) ??
    new RegExp(
      `^\\s*${ofKin}(?!(?:is|has|can|comes|and|who|will|was|does)\\b)(\\p{L}{2,20})(?=,|\\s+(?:is|comes|has|can|eats|doesn|will|joins|and she|and he)\\b)(.*)$`,
      'su',
    ).exec(look.bare);
  if (
    kin &&
    people.every(({ names: [name] }) => name === look.names.me) &&
    speaksOfFood(` ${fold(kin[2]!)} `)
  )
    return {
      ...told(`${capital(kin[1]!)} ${behindComing(kin[2]!)}`, 4.5),
      holds: 'that would be somebody new',
    };
  // 'Sally 38, no shellfish'.
  const bare = /^\s*(\p{Lu}\p{Ll}[\p{L}'’-]*),?\s+(\d{1,2}[\s,].+)$/su.exec(look.bare);
  if (bare && people.length === 0 && look.said.meals.length === 0 && keepsAway(` ${fold(bare[2]!)} `))
    return { ...told(`${bare[1]} ${bare[2]}`, 4), holds: 'that would be somebody new' };
  const guest =
    /^\s*((?:\p{Lu}[\p{L}'’-]*\s+)+?)(?:is coming|comes|is joining|joins|eats with us|will be there|is here)\b[^,;:]*[,;:]\s*(.+)$/su.exec(
      look.bare,
    );
  const [trip] = look.said.trips;
  if (guest && people.length === 0)
    return {
      ...told(`${guest[1]!.trim()} ${guest[2]}`, 4),
      holds: `that would be somebody new${trip ? `; once recorded, one tap brings them along to ${trip.names[0]}` : ''}`,
    };
  const onlyName =
    /^\s*(?:[Ii]['’]?m|[Ii] am|[Mm]y name is|[Tt]his is)\s+(\p{Lu}\p{Ll}[\p{L}'’-]*)[\s.!]*$/su.exec(
      look.bare,
    )?.[1];
  if (onlyName !== undefined) return { ...told(onlyName, 4), holds: 'that would be somebody new' };
  const introduced =
    /^\s*(?:[Ii]['’]?m|[Ii] am|[Mm]y name is)\s+(\p{Lu}[\p{L}'’-]+),\s*(?:and\s+)?(.+)$/su.exec(look.bare);
  if (introduced && !eaterCue.test(` ${fold(introduced[1]!)} `))
    return told(`${introduced[1]} ${introduced[2]}`, 4);
  const aged = /^\s*(\p{L}{2,20})\s+(?:is|turns|turned)\s+(\d{1,2})\b(.*)$/su.exec(text);
  if (!aged || people.length > 0 || look.said.meals.length > 0 || notNames.test(aged[1]!)) return undefined;
  const name = `${aged[1]![0]!.toUpperCase()}${aged[1]!.slice(1)}`;
  return told(`${name} ${aged[2]} years ${aged[3]!.replace(/^[\s,]*(?:and\s+)?/u, '')}`, 3.5);
}
