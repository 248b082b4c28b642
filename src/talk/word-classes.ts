import type { Token } from '#words/tokens.ts';
import { isPast, lemma } from './lemma.ts';

/**
 * Words of one meaning, a row each: the first is the word that readers look for, the others stand for it. 'polish+off' is
 * two words with at most three between them. A row holds only what can mean nothing else in this kitchen.
 */
const rows = `
  eat ate eating: polish+off wolf wolf+down gobble gobble+up scarf scarf+down nosh nibble+on tuck+into dig+into dine+on feast+on
    slurp slurp+up snack+on hoover hoover+up gulp gulp+down chow+down swallow knock+back get+through eat+up guzzle inhale ated eated
  throw threw throwing: sling lob hurl pitch compost get+rid dispose+of cast+out turf+out
  weigh weighed weighing: clock+in+at tip+scale put+scale put+scales pop+scale stick+scale
  load loaded loading: shove+dryer shove+drier pop+dryer stick+dryer go+dryer put+dryer chuck+dryer
  seal sealed sealing: close+up close shut
  undo undid undoing: reverse roll+back rollback scratch+that strike+that disregard+that ignore+that unrecord
  want wanted wanting: hanker+after hanker+for yearn keen+on dream+of vote+for dibs+on
  hate hated hating: loathe detest despise abhor can't+stand cannot+stand fed+up+with sick+of not+keen+on not+fan+of not+touch
  love loved loving: adore crazy+about mad+about fond+of fan+of partial+to
  keep kept keeping: survive endure stay+good
  come came coming: tag+along join+in attend
  pack packed packing: stow
  sticker stickers stickers: tag tags
  chart charts charts: diagram visualise visualize
  dryer dryer dryers: freeze+dryer freeze+drier lyophilizer lyophiliser
  pouch pouch pouches: sachet sachets baggie baggies
  salt salt salt: saltiness
  calorie calorie calories: kilocalorie kilojoule joule
  everybody everybody everybody: everyone+else all+of+us
`;

interface Class {
  readonly base: string;
  readonly past: string;
  readonly ing: string;
}

/** Each way of saying it as its words, by the first of them. */
const ways = new Map<string, { readonly rest: readonly string[]; readonly of: Class }[]>();

for (const row of rows.trim().split(/\n\s*(?=\S+ \S+ \S+:)/u)) {
  const [head, words] = row.split(':') as [string, string];
  const [base, past, ing] = head.trim().split(' ') as [string, string, string];
  for (const way of words.trim().split(/\s+/u)) {
    const [first, ...rest] = way.split('+') as [string, ...string[]];
    const known = ways.get(first) ?? [];
    ways.set(first, [...known, { rest, of: { base, past, ing } }]);
  }
}

/** How many words may stand between two that belong together: 'put the mac on the scale'. */
const mostBetween = 4;

const particles = new Set(
  'off down up into on out over rid of through back in at after for with to that'.split(' '),
);

/** What a word may be listed under: as typed, and its stem with and without an e that an ending took. */
const listed = (token: Token): string[] => {
  if (token.is !== 'word') return [];
  const stem = lemma(token.plain);
  return [token.plain, stem, `${stem}e`];
};

/** What stands in the place of words that mean the same: the form that is looked up, and the form as if typed. */
export interface Meant {
  readonly lemma: string;
  readonly form: string;
}

/** The words of a message that stand for another, by their index; further words of the same way have an empty form. */
export function meantWords(all: readonly Token[]): ReadonlyMap<number, Meant> {
  const found = new Map<number, Meant>();
  all.forEach((token, i) => {
    if (found.has(i)) return;
    const way = listed(token)
      .flatMap((word) => ways.get(word) ?? [])
      .map((one) => ({ ...one, at: placesOf(all, i, one.rest) }))
      .filter(({ at }) => at !== undefined)
      .toSorted((a, b) => b.rest.length - a.rest.length)[0];
    if (!way?.at) return;
    const { base, past, ing } = way.of;
    const form = token.plain.endsWith('ing') ? ing : isPast(token.plain) ? past : base;
    found.set(i, { lemma: base, form });
    // 'Off' and 'down' belong to their verb; a scale or a dryer is a thing besides.
    for (const k of way.at) if (particles.has(all[k]!.plain)) found.set(k, { lemma: base, form: '' });
  });
  return found;
}

/** Where the further words of a way stand; undefined where one is missing. */
function placesOf(all: readonly Token[], from: number, rest: readonly string[]): number[] | undefined {
  const at: number[] = [];
  let last = from;
  for (const word of rest) {
    const next = all.findIndex(
      (token, k) => k > last && k <= last + mostBetween && listed(token).includes(word),
    );
    if (
      next < 0 ||
      all.slice(last + 1, next).some(({ is, plain }) => is === 'mark' && /^[.;!?]$/.test(plain))
    )
      return undefined;
    at.push(next);
    last = next;
  }
  return at;
}
