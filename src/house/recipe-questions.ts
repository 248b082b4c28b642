import type { Recipe, RecipeLine } from '#core/records.ts';
import { Refusal } from '#core/refusal.ts';
import type { Choice } from '#core/talk.ts';
import { foldName, type LineResult, readLine } from '#foods/line.ts';
import { sayList } from '#words/say.ts';
import { type Names, takeMeal } from '#words/parts.ts';
import { Reading } from '#words/reading.ts';
import type { House } from './house.ts';
import { packetQuestions } from './packet-questions.ts';
import { resolver } from './recipe-text.ts';

/** What 'none of them is in it' settles. */
const everything = 'all the rest';

/**
 * Says of a food of the method that a line has it, or that it is not in the meal.
 * @param line null: it is not in it
 * @returns what was noted
 * @throws Refusal 'nothing-open', 'no-such-line'
 */
export function settleMention(house: House, recipe: Recipe, food: string, line: number | null): string {
  const { id, name, mentions, lines } = recipe;
  const isAll = line === null && food === everything;
  const open = mentions.filter(({ called }) => isAll || foldName(called) === foldName(food));
  if (open.length === 0) {
    const names = mentions.map(({ called }) => called);
    throw new Refusal(
      'nothing-open',
      `Of "${food}" nothing is open in ${name}${names.length > 0 ? `; open is ${sayList(names)}` : ''}.`,
    );
  }
  if (line !== null) {
    const old = lines[line - 1];
    if (!old)
      throw new Refusal('no-such-line', `${name} has ${lines.length} lines; there is no line ${line}.`);
    house.recipes.mendLine(id, line, { ...old, named: [...old.named, ...open] });
  }
  house.recipes.settleMentions(
    id,
    mentions.filter((one) => !open.includes(one)),
  );
  const are = open.length === 1 ? 'is' : 'are';
  return `${sayList(open.map(({ called }) => called))} ${are} ${line === null ? 'not in it' : `in line ${line}`}`;
}

const isOfFood = (wanted: LineResult['wanted']): boolean => wanted === 'food' || wanted === 'word';

/** The buttons of the first line that needs an answer, then of the first food that no line has. */
function nextQuestion(
  { name, lines, mentions }: Recipe,
  results: readonly Pick<LineResult, 'question' | 'choices' | 'wanted'>[],
): Choice[] {
  const index = results.findIndex(
    ({ question, choices, wanted }) => question !== null && (choices.length > 0 || isOfFood(wanted)),
  );
  if (index >= 0)
    return [
      ...results[index]!.choices.slice(0, 3).map(({ label, typed }) => ({
        label: `${index + 1}: ${label}`,
        request: `/recipe ${name} line ${index + 1}: ${typed}`,
      })),
      ...(isOfFood(results[index]!.wanted)
        ? [{ label: `${index + 1}: no food`, request: `/recipe ${name} line ${index + 1} is no food` }]
        : []),
    ];
  const [open] = mentions;
  if (open === undefined) return [];
  const { called } = open;
  return [
    ...(mentions.length > 2
      ? [
          {
            label: `none of the ${mentions.length} is in it`,
            request: `/recipe ${name}: ${everything} is not in it`,
          },
        ]
      : []),
    { label: `${called}: not in it`, request: `/recipe ${name}: ${called} is not in it` },
    ...likelyLines(lines, called).map((at) => ({
      label: `${called}: in line ${at}`,
      request: `/recipe ${name}: ${called} is in line ${at}`,
    })),
    { label: `${called}: add a line`, request: `/recipe ${name} line ${lines.length + 1}: ${called}` },
  ];
}

/** What of a recipe is open: a line, a food of the method, then what only a packet can tell somebody. */
export function openQuestions(house: House, recipe: Recipe): Choice[] {
  const resolve = resolver(house);
  const asked = nextQuestion(
    recipe,
    recipe.lines.map(({ question, typed }) =>
      question === null ? { question, choices: [], wanted: null } : { ...resolve(typed), question },
    ),
  );
  return asked.length > 0 ? asked : packetQuestions(recipe, house.eaters.here());
}

/** A weight at camp is read for the whole recipe, as every line is; a tap makes it one for each serving. */
export const campQuestion = ({ name, lines, servings }: Recipe): Choice[] =>
  servings > 1 && lines.some(({ camp, grams }) => camp === 'all' && grams !== null)
    ? [
        {
          label: 'At camp: as much for each serving',
          request: `/recipe ${name}: at camp is for each serving`,
        },
      ]
    : [];

/** The line that a food of the method may stand in: one that asks, or else the last made thing. */
function likelyLines(lines: readonly RecipeLine[], called: string): number[] {
  const words = called.split(' ');
  const at = lines.findIndex(({ typed }) => words.some((word) => typed.toLowerCase().includes(word)));
  const asked = lines.findIndex(({ question }) => question !== null);
  const one = at >= 0 ? at : asked;
  return one < 0 ? [] : [one + 1];
}

/** Foods of headings and method that no line has: quoted back, and open until somebody says where they are. */
export function mentionLines({ mentions }: Recipe): string[] {
  if (mentions.length === 0) return [];
  const names = mentions.map(({ called }) => called);
  const more = names.length > 5 ? ` and ${names.length - 5} more` : '';
  return [
    `Headings or method name ${sayList(names.slice(0, 5))}${more}, which no line has; till you say, ${names.length === 1 ? 'it' : 'they'} may be in it.`,
  ];
}

const isTypedIn = (called: string, typed: string) => ` ${foldName(typed)} `.includes(` ${foldName(called)} `);

/** An answer to the question which food or what word is meant holds for the next recipe with those words. */
export function rememberAnswer(house: House, old: RecipeLine, result: LineResult): string | undefined {
  if (old.question === null || result.food === null) return undefined;
  const asked = resolver(house)(old.typed);
  const { words } = readLine(old.typed);
  // A word behind a comma is no part of the food's name: it is settled for this line alone.
  const isOfName = asked.unknown.every((word) => foldName(words).split(' ').includes(word));
  const isAnswer =
    (asked.wanted === 'food' || (asked.wanted === 'word' && isOfName)) &&
    asked.choices.some(({ typed }) => typed === result.typed);
  if (!isAnswer || foldName(words) === '') return undefined;
  const answer = readLine(result.typed);
  house.learnt.learnFood(foldName(words), [answer.words, ...answer.aside].join(', '));
  return `From now on "${words}" is ${result.called}. /our ${words} forget takes that back.`;
}

/** What a line now names is no longer only in the method. */
export function settleTold(house: House, recipe: Recipe, { called, named, typed }: LineResult): void {
  const told = new Set([called, ...named.map((one) => one.called)].map(foldName));
  const left = recipe.mentions.filter(
    (one) => !told.has(foldName(one.called)) && !isTypedIn(one.called, typed),
  );
  house.recipes.settleMentions(recipe.id, left);
}

/** @throws Refusal 'no-such-recipe' */
export function mealTyped(typed: string, names: Names) {
  const reading = new Reading(typed);
  const name = takeMeal(reading, names.meals, names.otherNames);
  if (name === undefined) throw new Refusal('no-such-recipe', `I know no recipe "${typed.trim()}".`);
  return { name, reading };
}
