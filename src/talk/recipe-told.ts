import { fold } from '#words/near.ts';
import { Ambiguous, Reading } from '#words/reading.ts';
import { takeMeal } from '#words/parts.ts';
import { changesTyped, type RecipeChange } from '#words/recipe-changes.ts';
import { type Reader, turnedRound } from './hold.ts';
import type { Look } from './look.ts';

/** The recipe that a name means, every word of it accounted for; as typed where several can be meant. */
function recipeMeant(typed: string, { meals, otherNames }: Look['names']): string | undefined {
  const reading = new Reading(typed);
  try {
    const name = takeMeal(reading, meals, otherNames);
    return reading.leftovers().length === 0 ? name : undefined;
  } catch (error) {
    if (error instanceof Ambiguous) return typed;
    throw error;
  }
}

/** A change as it is typed behind its slash. */
function asRequest(change: RecipeChange, name: string): string {
  switch (change.is) {
    case 'line':
      return `${name} line ${change.position}: ${change.typed}`;
    case 'without':
      return `${name} delete line ${change.position}`;
    case 'food':
      return change.typed === null
        ? `${name} remove ${change.food}`
        : `${name} replace ${change.food} with ${change.typed}`;
    case 'more':
      return `${name} add line: ${change.typed}`;
    case 'move':
      return `${name} move line ${change.position} to ${change.to}`;
    case 'name':
      return `${name} is called ${change.newName}`;
    case 'heading':
      if (change.how === 'drop') return `${name} remove heading "${change.heading}"`;
      return change.how === 'name'
        ? `${name} rename heading "${change.heading}" to "${change.to}"`
        : `${name} ${change.isNew === null ? 'put' : change.isNew ? 'add' : 'move'} heading "${change.heading}" above line ${change.above}`;
    case 'misread':
      return `${name} line${change.position === null ? '' : ` ${change.position}`} is wrong`;
    case 'nofood':
      return `${name} line ${change.position} is no food`;
    case 'goes':
      return `${name}: ${change.food} goes ${change.where === 'camp' ? 'in at camp' : 'into the pot'}`;
    case 'camp':
      return `${name}: at camp is for ${change.camp === 'each' ? 'each serving' : 'all'}`;
    case 'eaten':
      return `${name} ${change.how === 'dry' ? 'eaten dry' : 'soaked'}`;
    case 'gone':
      return `delete recipe ${name}`;
    case 'use':
      return `${name} is ${{ is: '', also: 'also ', not: 'not ' }[change.how]}for ${change.uses.join(' and ')}`;
  }
}

const serves =
  /^(?:the\s+)?(?:recipe\s+(?:of|for)\s+)?(?:the\s+)?(.+?)(?:\s+recipe)?\s+(?:now\s+)?(?:serves|feeds|makes)\s+(\d{1,3})(?:\s+(?:servings?|portions?|people))?(?:\s+now)?$/isu;

/** Words before an order that make it a thought or a wish. */
const wishes =
  /^(?:(?:maybe|perhaps|possibly)\s+|(?:should|shall|can|could|would|may|must|did|do)\s+(?:we|i)\s+|(?:we|i)\s+(?:should|could|might|may|must|would|will)\s+)+/iu;
const polite = /^(?:(?:can|could|would|will)\s+you\s+(?:please\s+)?|let(?:['’]?s|\s+us)\s+)/iu;

const amount = /[\d½¼¾⅓⅔]|\b(?:an?|half|one|two|three|four|five|six|some|to taste)\b/iu;

/** What stands against changing a recipe. Words of an ingredient, such as 'half', are its own; 'no food' denies nothing that was asked. */
function heldBack(look: Look, typed: string, isDenial = false): string | null {
  const { mood } = look.said;
  if (mood.asks) return 'that reads as a question';
  if (mood.negated !== null && !isDenial) return turnedRound(mood.negated);
  if (mood.doubt !== null) return `"${mood.doubt}" leaves it open`;
  if (mood.future !== null) return `"${mood.future}" is still to come`;
  const wish = wishes.exec(look.bare)?.[0].trim();
  if (wish !== undefined) return `"${wish}" leaves it open`;
  return amount.test(typed) ? null : `no amount is in "${typed}"`;
}

/** 'Add 2 bay leaves to the barley soup', 'rename the soup to pearl soup', 'delete the recipe lentil pot'. */
export const changing: Reader = (look) => {
  const { codes, batches } = look.said;
  if (codes.length + batches.length > 0 || look.names.meals.length === 0) return undefined;
  const text = look.bare
    .replace(wishes, '')
    .replace(polite, '')
    .replace(/[\s?？]+$/u, '')
    // How long a change is to hold is no part of a name or a line.
    .replace(
      /[\s,]+(?:(?:from now on|for good|for ever|forever|in (?:the )?future|permanently|from today(?: on)?|next time)[\s.!]*)+$/iu,
      '',
    );
  // 'Rename mac and cheese cheesy mac': the longest of a recipe's names, and what it is to be called.
  const renamed = /^(?:rename|call)\s+(?:the\s+)?(.+)$/isu.exec(text)?.[1]?.split(/\s+/u);
  for (let cut = (renamed?.length ?? 1) - 1; renamed && cut >= 1; cut--) {
    const [old, fresh] = [renamed.slice(0, cut).join(' '), renamed.slice(cut).join(' ')];
    const own = look.names.meals.find((meal) => fold(meal) === fold(old));
    if (own !== undefined && !/^(?:to|as|into)\b/iu.test(fresh))
      return {
        means: 'recipe',
        words: asRequest({ is: 'name', name: own, newName: fresh }, own),
        score: 6,
        left: [],
        holds: heldBack(look, '1'),
      };
  }
  const served = serves.exec(text);
  const feeding = served ? recipeMeant(served[1]!, look.names) : undefined;
  if (served && feeding !== undefined)
    return {
      means: 'recipe',
      words: `${feeding} serves ${served[2]!}`,
      score: 6,
      left: [],
      holds: heldBack(look, served[2]!),
    };
  // 'Chili with 3 onions from now on instead of 2': an amount put in the place of another.
  const changed =
    /^(?:(?:make|cook|do|we\s+make|we\s+cook)\s+)?(?:the\s+)?(.+?)\s+(?:with|takes?|gets?|has|should\s+have)\s+(\d[^,;]*?\p{L}[^,;]*?)(?:\s+(?:from\s+now\s+on|in\s+future|always|now))?(?:,?\s+(?:instead\s+of|rather\s+than|not)\s+(?:the\s+)?\d[\d.,]*(?:\s*\p{L}+)?)(?:\s+(?:from\s+now\s+on|in\s+future|now))?[\s.!]*$/isu.exec(
      look.bare,
    );
  const changedMeal = changed && !look.said.mood.asks ? recipeMeant(changed[1]!, look.names) : undefined;
  const food = changed?.[2]!.replace(
    /^[\d.,/½¼¾\s]+(?:(?:g|kg|ml|l|dl|tsp|tbsp|cups?|tins?|cans?|oz|lbs?)\b\s*)?(?:of\s+)?/iu,
    '',
  );
  if (changed && changedMeal !== undefined && food)
    return {
      means: 'recipe',
      words: asRequest({ is: 'food', name: changedMeal, food, typed: changed[2]! }, changedMeal),
      score: 7,
      left: [],
      holds: heldBack(look, changed[2]!, look.said.mood.negated === 'not'),
    };
  const inMeal =
    /^in\s+(?:the\s+)?(.+?),?\s+(?:it['’]?s|it is|there (?:are|is)|goes?|go)\s+(\d[^,;]*?)\s+(?:of\s+)?(\p{L}[\p{L} ]+?),?\s+not\s+[^,;]+$/iu.exec(
      look.bare.replace(/[\s.!]+$/u, ''),
    );
  const inMealName = inMeal && !look.said.mood.asks ? recipeMeant(inMeal[1]!, look.names) : undefined;
  if (inMeal && inMealName !== undefined)
    return {
      means: 'recipe',
      words: asRequest(
        {
          is: 'food',
          name: inMealName,
          food: inMeal[3]!,
          typed: `${inMeal[2]!.toLowerCase()} ${inMeal[3]!}`,
        },
        inMealName,
      ),
      score: 7,
      left: [],
      holds: 'it would put a line of the recipe right',
    };
  const servesNow =
    /^(?:the\s+)?(.+?)\s+(?:is|are)\s+(?:enough\s+)?for\s+(\d{1,3})(?:\s+(?:people|servings?|portions?))?,?\s+not\s+(?:for\s+)?\d{1,3}$/iu.exec(
      text,
    );
  const servesMeal = servesNow && !look.said.mood.asks ? recipeMeant(servesNow[1]!, look.names) : undefined;
  if (servesNow && servesMeal !== undefined)
    return {
      means: 'recipe',
      words: `${servesMeal} serves ${servesNow[2]!}`,
      score: 7,
      left: [],
      holds: 'it would change for how many the recipe is',
    };
  const lacking =
    /^(?:the\s+)?(.+?)\s+(?:should\s+(?:have|get)|needs?|could\s+(?:use|have)|gets|has|got)\s+((?:\d|half|an?\s|½|¼|¾).+?)(?:\s+(?:too|as\s+well|more|in\s+it|also))*[\s.!]*$/isu.exec(
      look.bare,
    );
  const lacks = lacking && !look.said.mood.asks ? recipeMeant(lacking[1]!, look.names) : undefined;
  // 'Mac needs 350 cheddar': a bare figure of that size is grams, of a line there is.
  const bareGrams =
    /^(\d{2,4})\s+(?!(?:g|kg|ml|l|dl|cl|oz|lbs?|grams?|tins?|cans?|cups?|tbsp|tsp)\b)(\p{L}[\p{L} ]+)$/u.exec(
      lacking?.[2] ?? '',
    );
  if (lacking && lacks !== undefined && bareGrams && Number(bareGrams[1]) >= 20)
    return {
      means: 'recipe',
      words: asRequest(
        { is: 'food', name: lacks, food: bareGrams[2]!, typed: `${bareGrams[1]!} g ${bareGrams[2]!}` },
        lacks,
      ),
      score: 6.5,
      left: [],
      holds: 'it would change a line of the recipe, in grams',
    };
  const isFood =
    lacking !== null &&
    !/\bmore\b/iu.test(lacking[2]!) &&
    /\p{L}{3,}/u.test(lacking[2]!.replace(/^[\d.,\s]*(?:g|kg|ml|l|tsp|tbsp|cups?|of)?\b/iu, '')) &&
    !look.has('water', 'serving', 'pouch', 'portion', 'minute', 'hour', 'day');
  if (lacking && lacks !== undefined && isFood)
    return {
      means: 'recipe',
      words: asRequest({ is: 'more', name: lacks, typed: lacking[2]! }, lacks),
      score: 6,
      left: [],
      holds: 'it would be a new line of the recipe',
    };
  for (const change of changesTyped(text)) {
    const name = recipeMeant(change.name, look.names);
    // 'Take out the soup' speaks of the pouch.
    if (name === undefined || (change.is === 'gone' && !look.has('recipe'))) continue;
    const typed = change.is === 'food' || !('typed' in change) ? '1' : change.typed;
    return {
      means: 'recipe',
      words: asRequest(change, name),
      score: 6,
      left: [],
      holds: heldBack(look, typed, change.is === 'nofood'),
    };
  }
  return undefined;
};
