import { table } from '#words/table.ts';
import { isFiller } from '#words/fillers.ts';
import { fold } from '#words/near.ts';
import { articles, auxiliaries, harmless, openers, pronouns, questionWords } from './grammar.ts';
import { lemma } from './lemma.ts';
import type { Look, Meaning } from './look.ts';

/** Words by which people ask; whatever the answer, they are accounted for by it. */
const asking = new Set(
  `still there left right much many long far soon often big large heavy high old good safe ready dry done enough more most least
  less any some all every each both whole total altogether together sum number amount size kind sort list show tell give see
  look find check know think mean say please explain remind calculate work need want use take make do go get put keep hold
  contain include come eat drink cook boil pour add stir soak stand sit wait rest let water hot cold boiling cup ml litre mug meal food
  dish dinner lunch breakfast snack supper recipe ingredient serving portion pouch bag batch load dryer drier dry tray weigh weight
  gram heavy seal absorber label sticker print chart graph curve plot picture drying stock store cupboard larder pantry cellar
  shelf freezer best by expire expiry date good off bad first next last new fresh trip tour plan pack packing backpack
  rucksack rest return people person eater kid child family everyone guest friend one two thing stuff something anything nothing
  everything salt sodium calorie kcal energy protein fat fibre carb nutrition allergy allergic diet vegan vegetarian gluten
  free without with safe ok okay fine allow suit clear may might can could shall should will would must gas fuel canister stove
  setting altitude house unit scale measure word log history entry record happen change export data spreadsheet file help start
  undo mistake back wish want choose pick menu day night week month year today tomorrow yesterday tonight morning evening noon
  now already yet again ever never always maybe really actually exactly about around roughly approximately only just also too
  else different other same per for than then so if when while until till before after since because due between
  out of in into on at to from up down over under near left over remaining available possible necessary
  like love enjoy taste rate rating people did was were been being has have had going gone come came short missing lack
  buy shop shopping cost price expensive cheap money dear okay idea wonder question answer card detail info information
  current currently long time hour minute finish finished start started begin end ready wet steady shown prove
  double triple half twice scale enlarge reduce pot tins tin cut piece level even small medium big little round instead code cool warm always constant constantly permanently
  throw away open opened close empty full single separate sheet page paper pdf png copy send share
  name called call type kind worth suitable quickly fast slow slowly well better best worse worst sure certain certainly home camp
  set intolerant touch low no calories lactose which
  leave into rest sun heat lose fill empty busy full backup today morning
  limit run set
  vacuum air bag share
  own use used self monday tuesday wednesday thursday friday saturday sunday january february march april june july august september october november december
  n an feel warm look st nd rd th
  mountain lake hut summit trail shop kitchen mine yours ours weather rain snow cold warm`
    .trim()
    .split(/\s+/),
);

export const knownWords: ReadonlySet<string> = asking;

/** Whether people ask and tell by it of anything at all. */
export const isAccounted = (word: string): boolean =>
  harmless.has(word) ||
  isFiller(word) ||
  openers.has(word) ||
  questionWords.has(word) ||
  auxiliaries.has(word) ||
  pronouns.has(word) ||
  articles.has(word) ||
  asking.has(word) ||
  asking.has(lemma(word));

const unaccounted = new WeakMap<Look, string[]>();

/** Words of a message that are no name of the household's, no figure, and none by which people ask; as typed. */
export function unaccountedIn(look: Look): string[] {
  const known = unaccounted.get(look);
  if (known) return known;
  const { all, meals, people, trips, lemmas } = look.said;
  const spoken = new Set([...meals, ...people, ...trips].flatMap(({ at }) => at));
  const found = all.flatMap((token, i) =>
    token.is === 'word' && !spoken.has(i) && !isAccounted(token.plain) && !asking.has(lemmas[i]!)
      ? [token.typed]
      : [],
  );
  unaccounted.set(look, found);
  return found;
}

/** Words that turn a question round, and that these answers take as meant. */
const ownWords = table<string>({
  unsealed: 'not',
  packedyet: 'not',
  whoavoids: "not cannot can't cant",
  tripof: "not isn't isnt won't wont",
});

/**
 * What an answer leaves aside: pieces of the message that are neither in the words handed over nor words by which
 * people ask anyway. Said beside the answer, so that nothing is answered as if it had not been said.
 */
export function asideOf(look: Look, { means, words }: Meaning): string[] {
  const { all, meals, people, trips, codes, batches, text } = look.said;
  const folded = ` ${fold(words)} `;
  const isIn = (name: string) => folded.includes(` ${fold(name)} `);
  const own = new Set(ownWords[means]?.split(' ') ?? []);
  const spoken = new Set<number>();
  const groups: number[][] = [];
  if (means === 'firstwords' || means === 'stranger') return [];
  const isCoded = codes.length + batches.length > 0 || /\b[BMS]\d+-\d/u.test(words);
  for (const { names, at } of meals) {
    for (const i of at) spoken.add(i);
    const isMeant = isCoded || names.some(isIn) || at.some((i) => isIn(all[i]!.plain));
    if (!isMeant) groups.push([...at]);
  }
  for (const { names, at } of people) {
    for (const i of at) spoken.add(i);
    if (names[0] !== look.names.me && !isIn(names[0])) groups.push([...at]);
  }
  for (const { names, at } of trips) {
    for (const i of at) spoken.add(i);
    if (!names.some(isIn) && look.names.trips[0] !== names[0]) groups.push([...at]);
  }
  const isFigureIn = (value: number) =>
    folded.includes(` ${fold(String(value))} `) || words.includes(String(value));
  all.forEach((token, i) => {
    if (spoken.has(i) || own.has(token.plain)) return;
    const isLost =
      token.is === 'number' || token.is === 'quantity'
        ? !isFigureIn(token.value) &&
          !isIn(token.typed) &&
          !(token.is === 'number' && token.value === 1 && token.spelled)
        : token.is === 'date' || token.is === 'clock'
          ? !words.includes(token.typed)
          : token.is === 'word'
            ? !isAccounted(token.plain) && !isIn(token.plain) && !isIn(lemma(token.plain))
            : false;
    if (!isLost) return;
    if (groups.at(-1)?.at(-1) === i - 1) groups.at(-1)!.push(i);
    else groups.push([i]);
  });
  return groups
    .toSorted((a, b) => a[0]! - b[0]!)
    .map((group) => text.slice(all[group[0]!]!.from, all[group.at(-1)!]!.to));
}
