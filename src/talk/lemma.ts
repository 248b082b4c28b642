import { table } from '#words/table.ts';

/** Forms that no ending tells: past tense and participle to the verb, irregular plurals to the one. */
const irregular = table<string>(
  Object.fromEntries(
    `ate:eat eaten:eat threw:throw thrown:throw had:have has:have having:have was:be were:be is:be are:be been:be am:be
   did:do done:do does:do took:take taken:take brought:bring gave:give given:give got:get gotten:get went:go gone:go
   came:come sealed:seal left:leave lost:lose made:make said:say told:tell thought:think bought:buy kept:keep
   cut:cut put:put set:set stuck:stick found:find wrote:write written:write drank:drink drunk:drink felt:feel
   meant:mean stood:stand held:hold weighed:weigh dried:dry dries:dry drier:dryer pouches:pouch batches:batch dishes:dish
   loaves:loaf halves:half people:person persons:person kids:child children:child curries:curry
   knives:knife leaves:leave forgot:forget forgotten:forget began:begin begun:begin ran:run seen:see saw:see
   knew:know known:know spilt:spill spilled:spill tore:tear torn:tear burnt:burn chose:choose chosen:choose
   gets:get goes:go cancelled:cancel canceled:cancel cancelling:cancel undid:undo undone:undo withdrew:withdraw grew:grow grown:grow binned:bin tossed:toss chucked:chuck
   scoffed:scoff everything:everything anything:anything something:something nothing:nothing evening:evening morning:morning used:use uses:use iced:ice whats:what what's:what whos:who who's:who wheres:where where's:where hows:how how's:how whens:when
   when's:when dont:don't doesnt:doesn't didnt:didn't isnt:isn't cant:can't wont:won't`
      .trim()
      .split(/\s+/)
      .map((pair) => pair.split(':') as [string, string]),
  ),
);

const vowel = /[aeiou]/;

/**
 * The form under which a word is looked up: 'ate' and 'eating' are 'eat', 'labels' is 'label'.
 * @param word plain, in small letters
 */
export function lemma(word: string): string {
  const known = irregular[word];
  if (known !== undefined && Object.hasOwn(irregular, word)) return known;
  if (word.length > 4 && /['’]s$/.test(word)) return lemma(word.slice(0, -2));
  if (word.length > 5 && word.endsWith('ing')) return bare(word.slice(0, -3));
  if (word.length > 4 && word.endsWith('ied')) return `${word.slice(0, -3)}y`;
  if (word.length > 4 && word.endsWith('ed')) return bare(word.slice(0, -2));
  if (word.length > 4 && word.endsWith('ies')) return `${word.slice(0, -3)}y`;
  if (word.length > 4 && /(?:ch|sh|ss|x|zz)es$/.test(word)) return word.slice(0, -2);
  if (word.length > 3 && word.endsWith('s') && !/(?:ss|us|is)$/.test(word)) return word.slice(0, -1);
  return word;
}

/** 'packed' → 'pack', 'planned' → 'plan', 'used' → 'use'. */
function bare(root: string): string {
  const [a, b] = [root.at(-1), root.at(-2)];
  if (a === b && a !== undefined && !vowel.test(a) && a !== 's' && a !== 'l' && a !== 'z')
    return root.slice(0, -1);
  if (Object.hasOwn(withE, root)) return withE[root]!;
  return root;
}

/** Roots that end in e. */
const withE: Readonly<Record<string, string>> = Object.fromEntries(
  `us:use hik:hike bik:bike bak:bake consum:consume devour:devour rat:rate shar:share weigh:weigh stor:store sav:save mov:move lik:like
   lov:love hat:hate prefer:prefer chang:change schedul:schedule remov:remove includ:include exclud:exclude rehydrat:rehydrate
   hydrat:hydrate prepar:prepare scal:scale doubl:double tripl:triple manag:manage wast:waste invit:invite arriv:arrive
   leav:leave com:come hav:have tak:take mak:make giv:give liv:live measur:measure admir:admire expir:expire polish:polish`
    .trim()
    .split(/\s+/)
    .map((pair) => pair.split(':') as [string, string]),
);

/** Whether the form says that a thing is over: 'ate', 'sealed', 'thrown'. */
export const isPast = (word: string): boolean =>
  /^(?:ate|eaten|had|threw|thrown|took|taken|brought|gave|made|did|done|went|lost|left|was|were|got|put|came|opened|finished|used)$/.test(
    word,
  ) ||
  (word.length > 4 && word.endsWith('ed'));
