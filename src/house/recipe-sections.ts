import type { Camp, NamedFood, Recipe, RecipeLine } from '#core/records.ts';
import { Refusal } from '#core/refusal.ts';
import { campTold } from '#foods/camp.ts';
import { foldName } from '#foods/line.ts';
import { untold } from '#foods/untold.ts';
import { sayList } from '#words/say.ts';
import type { SectionChange } from '#words/section-changes.ts';
import { recipeNamed } from './figures.ts';
import type { House } from './house.ts';
import { type Changed, codes, cookedFrom, keepAnew, keeps, wordsBeside } from './recipe-changes.ts';
import { resolver } from './recipe-text.ts';

/** A heading and the first line under it, counted from 1; no heading: lines that stand under none again. */
interface Start {
  readonly at: number;
  readonly heading: string | null;
}

const startsOf = ({ lines }: Pick<Recipe, 'lines'>): Start[] =>
  lines.flatMap(({ section }, i) =>
    section === (lines[i - 1]?.section ?? null) ? [] : [{ at: i + 1, heading: section }],
  );

/** The headings of a recipe, each with the first line under it. */
export const headingsAt = (recipe: Pick<Recipe, 'lines'>): (Start & { readonly heading: string })[] =>
  startsOf(recipe).filter((one): one is Start & { heading: string } => one.heading !== null);

const key = (heading: string) => foldName(heading).replace(/^(?:for )?(?:the )?/u, '');

/**
 * The heading that is meant: by its words, loosely, by its number, or the only one.
 * @throws Refusal 'no-heading', 'which-heading'
 */
function headingMeant(recipe: Recipe, typed: string): Start & { readonly heading: string } {
  const there = headingsAt(recipe);
  const named = sayList(there.map(({ heading }) => `"${heading}"`));
  if (there.length === 0) throw new Refusal('no-heading', `${recipe.name} has no headings.`);
  if (typed === '' && there.length === 1) return there[0]!;
  const numbered = /^\d{1,2}$/u.test(typed) ? there[Number(typed) - 1] : undefined;
  const wanted = key(typed);
  const found = there.filter(({ heading }) => key(heading) === wanted);
  const near =
    found.length > 0 ? found : there.filter(({ heading }) => wanted !== '' && key(heading).includes(wanted));
  const one = numbered ?? (near.length === 1 ? near[0] : undefined);
  if (one) return one;
  throw new Refusal(
    'which-heading',
    typed === ''
      ? `${recipe.name} has the headings ${named}; say which.`
      : `Of "${typed}" I know no heading in ${recipe.name}: it has ${named}.`,
  );
}

/** What a heading says of where its lines are added. */
const campOf = (heading: string | null): Camp | null => {
  const { camp } = heading === null ? { camp: null } : campTold(heading);
  return camp === 'pot' ? null : camp;
};

/** The lines under other headings; what a heading said of camp goes with it. */
function under(recipe: Recipe, starts: readonly Start[]): RecipeLine[] {
  const sorted = starts.toSorted((a, b) => a.at - b.at);
  return recipe.lines.map((line, i) => {
    const section = sorted.findLast(({ at }) => at <= i + 1)?.heading ?? null;
    if (section === line.section) return line;
    const own = campTold(line.typed).camp;
    const camp = own === 'pot' ? null : (own ?? campOf(section));
    const each = (one: Camp | null) => (one === 'each' ? recipe.servings : 1);
    const grams = line.grams === null ? null : (line.grams / each(line.camp)) * each(camp);
    return { ...line, section, camp, grams };
  });
}

/** Foods still open once the headings are others: what only the old ones named is not, what the new ones name is. */
function openUnder(house: House, before: Recipe, lines: readonly RecipeLine[]): NamedFood[] {
  const results = before.lines.map(({ typed }) => resolver(house)(typed));
  const had = untold(wordsBeside(before), results);
  const has = untold(wordsBeside({ ...before, lines }), results);
  const isIn = (list: readonly NamedFood[], { called }: NamedFood) =>
    list.some((one) => one.called === called);
  const kept = before.mentions.filter((one) => !isIn(had, one) || isIn(has, one));
  return [...kept, ...has.filter((one) => !isIn(had, one) && !isIn(kept, one))];
}

/** Puts other headings into place. Batches keep the old ones where something they may hold would be lost, or the pot changes. */
function headed(house: House, before: Recipe, starts: readonly Start[]): Changed {
  const lines = under(before, starts);
  const mentions = openUnder(house, before, lines);
  const batches = cookedFrom(house, before);
  const isLess = before.mentions.some(({ called }) => mentions.every((one) => one.called !== called));
  const moved = lines.filter(({ camp }, i) => (camp === null) !== (before.lines[i]!.camp === null));
  const remarks = [
    ...inPlace(
      moved.filter(({ camp }) => camp === null),
      'into the pot',
    ),
    ...inPlace(
      moved.filter(({ camp }) => camp !== null),
      'in at camp',
    ),
  ];
  if (batches.length > 0 && (isLess || moved.length > 0))
    return {
      before,
      after: keepAnew(house, before, { lines, mentions }),
      remarks: [...remarks, `${codes(batches)}, cooked before, ${keeps(batches)} what the old heading says.`],
    };
  lines.forEach((line, i) => {
    if (line !== before.lines[i]) house.recipes.mendLine(before.id, i + 1, line);
  });
  house.recipes.settleMentions(before.id, mentions);
  return { before, after: recipeNamed(house, before.name), remarks };
}

const inPlace = (lines: readonly RecipeLine[], where: string): string[] =>
  lines.length === 0
    ? []
    : [`${sayList(lines.map(({ called }) => called))} ${lines.length === 1 ? 'goes' : 'go'} ${where} now.`];

/** Calls a heading something else. @throws Refusal 'no-heading', 'which-heading' */
function renameHeading(house: House, before: Recipe, typed: string, to: string): Changed {
  const old = headingMeant(before, typed);
  if (old.heading === to)
    throw new Refusal('same-heading', `That heading of ${before.name} says "${to}" already.`);
  return headed(
    house,
    before,
    startsOf(before).map((one) => (one.at === old.at ? { ...one, heading: to } : one)),
  );
}

/** Takes a heading away: its lines stand under the one before, save under what is for camp. */
function dropHeading(house: House, before: Recipe, typed: string): Changed {
  const old = headingMeant(before, typed);
  const starts = startsOf(before);
  const above = starts.findLast(({ at }) => at < old.at)?.heading ?? null;
  const heading = campOf(above) === null ? above : null;
  return headed(
    house,
    before,
    starts.map((one) => (one.at === old.at ? { ...one, heading } : one)),
  );
}

/** Puts a heading, new or there already, above a line. @throws Refusal 'no-such-line', 'same-place', 'heading-there' */
function placeHeading(
  house: House,
  before: Recipe,
  { heading, above, isNew }: Extract<SectionChange, { how: 'place' }>,
): Changed {
  const { name, lines } = before;
  if (!lines[above - 1])
    throw new Refusal('no-such-line', `${name} has ${lines.length} lines; there is no line ${above}.`);
  const isThere = headingsAt(before).some((one) => key(one.heading) === key(heading));
  const old = (isNew ?? !isThere) ? undefined : headingMeant(before, heading);
  if (!old && heading === '') throw new Refusal('no-heading', 'Say what the heading is called.');
  if (old?.at === above)
    throw new Refusal('same-place', `"${old.heading}" stands above line ${above} of ${name} already.`);
  const starts = startsOf(before).filter(({ at }) => at !== old?.at);
  const there = starts.find(({ at, heading: one }) => at === above && one !== null);
  if (there)
    throw new Refusal(
      'heading-there',
      `Above line ${above} of ${name} stands "${there.heading!}". Rename that one, or remove it first.`,
    );
  return headed(house, before, [
    ...starts.filter(({ at }) => at !== above),
    { at: above, heading: old?.heading ?? heading },
  ]);
}

/** Carries a change of headings out. */
export function changeHeadings(house: House, before: Recipe, change: SectionChange): Changed {
  if (change.how === 'name') return renameHeading(house, before, change.heading, change.to);
  return change.how === 'drop'
    ? dropHeading(house, before, change.heading)
    : placeHeading(house, before, change);
}
