import { recipeFacts } from '#core/meal.ts';
import type { Recipe, RecipeLine } from '#core/records.ts';
import { composerOf } from '#house/figures.ts';
import { cautionLines } from '#house/caution-lines.ts';
import type { RecipeChange } from '#words/recipe-changes.ts';
import type { House } from '#house/house.ts';
import type { Changed } from '#house/recipe-changes.ts';
import { mentionLines } from '#house/recipe-questions.ts';
import { dryingCautions, garlicCaution } from '#words/cautions.ts';
import { containsLines } from '#words/phrases.ts';
import { sayG, sayList, sayNumber } from '#words/say.ts';
import { headingsAt } from '#house/recipe-sections.ts';
import { campInShort, campLines } from '#words/camp-words.ts';
import { servingInShort } from './recipe-card.ts';

/** A line in a few words: the food and its weight, or what was typed where it is not understood. */
export function lineInShort(line: RecipeLine, units: House['settings']['units']): string {
  if (line.state === 'asked') return `"${line.typed}", not understood`;
  const where = line.camp === null ? '' : ' at camp';
  return line.grams === null
    ? `${line.called}${where}, no amount: counted as 0`
    : `${line.called} ${sayG(line.grams, units)}${where}`;
}

/** The new wording of a line: what was assumed of it and what it asks come with it. */
function newLine(line: RecipeLine, units: House['settings']['units']): string {
  const assumed = line.remarks.length > 0 ? ` (${line.remarks.join('; ')})` : '';
  return `${lineInShort(line, units)}${assumed}.${line.question === null ? '' : ` ? ${line.question}`}`;
}

/** 'Line 7: was black beans 400 g, now sweetcorn 285 g.' */
export function lineChanged(house: House, { before, after }: Changed, position: number): string {
  const { units } = house.settings;
  const old = before.lines[position - 1];
  const now = after.lines[position - 1]!;
  if (old === undefined) return `Line ${position} of ${after.name}, new: ${newLine(now, units)}`;
  const [was, is] = [lineInShort(old, units), lineInShort(now, units)];
  const differ = was === is && old.typed !== now.typed;
  return `Line ${position} of ${after.name}: was ${differ ? `"${old.typed}", ` : ''}${was}, now ${differ ? `"${now.typed}", ` : ''}${newLine(now, units)}`;
}

/** A serving in figures, then what the change brings: contents, cautions and open questions that were not there. */
export function changeBrings(house: House, { before, after }: Changed): string[] {
  const said = (recipe: Recipe) => {
    const facts = recipeFacts(recipe, composerOf(house));
    const lines = cautionLines(recipe, house.foods);
    return {
      serving: servingInShort(recipe, facts, house.settings),
      rest: [
        ...containsLines(facts),
        ...dryingCautions(lines, facts.totals),
        ...garlicCaution(lines),
        ...mentionLines(recipe),
        ...campLines(recipe, house.settings.units),
      ],
    };
  };
  const [was, now] = [said(before), said(after)];
  return [now.serving, ...now.rest.filter((one) => !was.rest.includes(one))];
}

/** 'Heading of Barley soup, above line 3: was "For the dip", now "For the crumbs".' */
function headingsChanged({ before, after }: Changed): string {
  const [was, is] = [headingsAt(before), headingsAt(after)];
  const gone = was.filter((old) => !is.some((one) => one.at === old.at && one.heading === old.heading));
  const come = is.filter((one) => !was.some((old) => one.at === old.at && one.heading === old.heading));
  const placed = ({ at, heading }: { at: number; heading: string }) => `"${heading}" above line ${at}`;
  const said = (list: typeof is, none: string) => (list.length === 0 ? none : sayList(list.map(placed)));
  return gone.length === 0
    ? `Heading of ${after.name}, new: ${said(come, '')}.`
    : `Heading of ${after.name}: was ${said(gone, '')}, now ${said(come, 'out')}.`;
}

/** How many it serves, before and after. */
export const servingsChanged = ({ before, after }: Changed): string =>
  `${after.name}: was ${sayNumber(before.servings)} servings, now ${sayNumber(after.servings)}.`;

/** What was and what is, in a line. */
export function changeHeading(
  house: House,
  now: Changed,
  change: Exclude<RecipeChange, { is: 'gone' | 'use' | 'food' | 'goes' | 'misread' | 'nofood' }>,
): string {
  const { before, after } = now;
  switch (change.is) {
    case 'line':
      return lineChanged(house, now, change.position);
    case 'more':
      return after.lines
        .slice(before.lines.length)
        .map((_, i) => lineChanged(house, now, before.lines.length + i + 1))
        .join('\n');
    case 'without': {
      const behind = change.position < before.lines.length ? ' The lines behind it move up.' : '';
      return `Line ${change.position} of ${after.name}: was ${lineInShort(before.lines[change.position - 1]!, house.settings.units)}, now out.${behind}`;
    }
    case 'move':
      return `${after.name}, ${lineInShort(after.lines[change.to - 1]!, house.settings.units)}: was line ${change.position}, now line ${change.to}.`;
    case 'heading':
      return headingsChanged(now);
    case 'camp':
      return `At camp: was ${campInShort(before, house.settings.units)} for each serving of ${after.name}, now ${campInShort(after, house.settings.units)}.`;
    case 'eaten':
      return change.how === 'dry'
        ? `${after.name} is eaten dry: no water, nothing to boil; what is in stock, too.`
        : `${after.name} is soaked: it gets its water, what is in stock, too.`;
    case 'name':
      return `Was ${before.name}, now ${after.name}.`;
  }
}
