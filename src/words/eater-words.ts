import { slips } from './near.ts';

/** What a note asks: never serve it; not even near them; that food alone; rather not; or that it may be had again. */
export type Rule = 'never' | 'apart' | 'exact' | 'dislike' | 'lift';

/** What a small word does in a note about food. */
export type Role =
  'no' | 'ill' | 'may' | 'again' | 'like' | 'hate' | 'rather' | 'near' | 'only' | 'but' | 'verb' | 'glue';

const words: Readonly<Record<Role, string>> = {
  no: `no not never without avoid avoids avoiding cannot can't cant mustn't mustnt musn't shouldn't shouldnt won't wont doesn't
    doesnt don't dont isn't isnt aren't arent wasn't couldn't couldnt wouldn't wouldnt zero off away clear skip skips banned
    forbidden prohibited excluded excluding exclude excludes minus nor nothing none neither refuses refuse nobody no-one anymore
    taboo no-go nogo`,
  ill: `allergic allergy allergies allergen allergens intolerant intolerance intolerances sensitive sensitivity sensitivities
    reacts react reacted reaction reactions anaphylactic anaphylaxis sick ill unwell rash rashes hives swells swell itchy itch itches itching cramp cramps migraine migraines vomit
    vomits bloated upset upsets wheezy wheeze wheezes epipen free disease`,
  may: 'may can could allowed tolerates ok okay fine safe outgrew outgrown eats',
  again: 'again',
  like: 'like likes love loves fond keen enjoy enjoys care cares fan want wants',
  hate: 'dislikes dislike disliked hates hate hated loathes loathe detests detest stand bear fussy picky',
  rather: 'rather prefers prefer preferably',
  near: 'near nearby around beside vicinity table room air airborne close contact',
  only: 'only',
  but: 'but',
  verb: `eat eating eaten have has had having get gets getting got touch touching drink drinks drinking take takes taking
    given give gives serve served serving tolerate digest handle stomach contain contains containing cope go goes eater`,
  glue: `a an the any all of to from with for by on in at and or is am are be been being was i i'm im i've ive he she they him
    her it its it's his their them these those this that who which because since as so must should shall needs need has had please pls plz
    thanks thank thx also too either both now ever absolutely strictly strict very really severe severely bad badly strong
    strongly serious seriously mild mildly slight slightly life threatening life-threatening deadly fatal extremely highly
    medically medical diagnosed known diet diets food foods dish dishes meal meals product products ingredient ingredients kind
    kinds type types sort sorts form forms made make makes whatsoever always completely totally definitely
    everything anything things thing stuff trace traces raw cooked uncooked fresh dried tinned canned frozen plain pure same
    even keep keeps kept stay stays steer up out more longer today turned became becomes my our your son daughter sister brother
    mum mom dad friend name named called note notes will would do does did here us we person people
    foodstuff anyway religious family items item added just about how sorts ones one hi hello
    other cross contamination deathly carries carry follows follow following lays lay says makes causes cause brings go
    tummy belly mouth throat lips tongue`,
}; // prettier-ignore

const roles: ReadonlyMap<string, Role> = new Map(
  (Object.entries(words) as [Role, string][]).flatMap(([role, text]) =>
    text.split(/\s+/).map((word) => [word, role] as const),
  ),
);

/** Words of notes that are long enough to be known in spite of a slip. */
const long = [...roles.keys()].filter((word) => word.length >= 7);

/** What a small word does; a long one is known in spite of a typing slip. Undefined for any other word. */
export function roleOf(plain: string): Role | undefined {
  const exact = roles.get(plain);
  if (exact !== undefined || plain.length < 6) return exact;
  const most = plain.length < 9 ? 1 : 2;
  const near = long.find((word) => word[0] === plain[0] && slips(plain, word, most) <= most);
  return near === undefined ? undefined : roles.get(near);
}

/** Roles that say something of a food, so that one must follow or stand in front. */
export const telling: ReadonlySet<Role> = new Set([
  'no',
  'ill',
  'may',
  'like',
  'hate',
  'rather',
  'near',
  'only',
]);

/** Roles that may stand behind the food they speak of: 'peanut allergy', 'dairy free', 'no nuts near'. */
export const behind: ReadonlySet<Role> = new Set(['ill', 'near', 'again']);

/** Words that end what is said of the food before them, and say whether it is kept away: 'milk is out', 'eggs are fine'. */
const verdicts: ReadonlyMap<string, Role> = new Map([
  ...'out never banned forbidden prohibited excluded taboo no-go nogo go'
    .split(' ')
    .map((word) => [word, 'no'] as const),
  ...'ok okay fine safe allowed'.split(' ').map((word) => [word, 'may'] as const),
]);

/** What a word says at the end of a clause, behind the food; 'go' is the end of 'a no go'. */
export const verdictOf = (plain: string): Role | undefined => verdicts.get(plain);

/**
 * What the small words around a food say of it.
 * @param isDiet whether it is a way of eating ('vegan'), which is followed rather than eaten
 * @returns undefined where they do not say it plainly ('milk but not eggs', 'only fish')
 */
export function ruleOf(said: ReadonlySet<Role>, isDiet: boolean): Rule | undefined {
  const isNo = said.has('no');
  if (said.has('but') && isNo && !said.has('verb')) return undefined;
  if (said.has('near')) return isNo ? 'apart' : undefined;
  if (said.has('hate') || (isNo && (said.has('like') || said.has('rather')))) return 'dislike';
  if (said.has('rather')) return undefined;
  if (isNo && (said.has('ill') || isDiet)) return 'lift';
  if (isNo || said.has('ill')) return 'never';
  if (isDiet) return said.has('again') ? 'lift' : 'never';
  if (said.has('only')) return said.has('may') || said.has('verb') ? undefined : 'exact';
  return said.has('may') || said.has('like') ? 'lift' : undefined;
}
