import type { Names } from '#words/parts.ts';
import { weightsOf } from './amounts.ts';
import { unaccountedIn } from './aside.ts';
import { avoided } from './ask.ts';
import { dayText } from './asks-trips.ts';
import { things } from './hold.ts';
import { isPast } from './lemma.ts';
import { Look, type Meaning, quoted } from './look.ts';

type Deed = Pick<Meaning, 'means' | 'words'>;

/** Nothing longer is looked through for deeds. Chosen. */
const longest = 300;

/** What may be told of a load by its figures: weighed, sealed, loaded. */
function ofLoad(look: Look): Deed[] {
  const [batch] = look.said.batches;
  const meal = look.mealTyped();
  const { words, trays } = weightsOf(look);
  const groups = look.said.all.flatMap((token) =>
    token.is === 'number' && token.value > 1 && token.value < 40 ? [token.value] : [],
  );
  if (words.length === 0 || look.has('seal', 'bag', 'pouch')) return [];
  const which = batch ? `B${batch.batch}` : meal;
  // A weight and nothing else named is a weight of what dries.
  if (which === undefined)
    return look.said.people.length + look.said.trips.length > 0
      ? []
      : look.names.drying.slice(0, 2).map((no) => ({ means: 'weigh', words: `B${no} ${words.join(' ')}` }));
  const dries = batch
    ? look.names.drying.includes(batch.batch)
    : look.said.meals.some(({ names }) => names.some((name) => look.names.batchesOf(name, true).length > 0));
  const tray = words.length === 1 && trays.length === 1 ? `tray ${trays[0]} ` : '';
  const seal =
    groups.length === 1 && words.length === 1
      ? [{ means: 'seal', words: `${groups[0]} x ${grams(words[0]!)} ${which}` }]
      : [];
  return [
    ...seal,
    ...(dries ? [{ means: 'weigh', words: `${which} ${tray}${words.join(' ')}` }] : []),
    ...(meal !== undefined && !batch ? [{ means: 'batch', words: `${meal} trays ${words.join(' ')}` }] : []),
  ];
}

const grams = (typed: string): string => (/[\p{L}]/u.test(typed) ? typed : `${typed} g`);

/** What may be told of a person: what is kept away, what is not liked, what is wished for. */
function ofPerson(look: Look): Deed[] {
  const [who] = look.said.people.map(({ names: [name] }) => name);
  const meal = look.mealTyped();
  const food = avoided(look);
  const isAlone =
    look.said.codes.length + look.said.batches.length === 0 &&
    look.said.all.every(({ is }) => is !== 'quantity' && is !== 'number');
  const isOver = look.said.all.some(({ is, plain }) => is === 'word' && plain !== 'put' && isPast(plain));
  if (
    meal !== undefined &&
    isAlone &&
    !isOver &&
    unaccountedIn(look).length < 3 &&
    look.names.trips.length > 0
  ) {
    const when = [dayText(look), look.slotMeal()?.meal].filter(Boolean).join(' ');
    const whom = who === undefined || who === look.names.me ? '' : ` for ${quoted(who)}`;
    return [{ means: 'want', words: `${meal}${when === '' ? '' : ` ${when}`}${whom}` }];
  }
  if (who === undefined || food === undefined) return [];
  const name = who === look.names.me ? 'me' : quoted(who);
  return [
    { means: 'eater', words: `${name} no ${food}` },
    { means: 'eater', words: `${name} dislikes ${food}` },
  ];
}

/** 'No chili for me please': no wish for it; it may be that it is not liked. */
function notLiked(look: Look): Deed[] {
  const [who] = look.said.people.map(({ names: [name] }) => name);
  const meal = look.meal() ?? avoided(look);
  if (meal === undefined || look.said.codes.length > 0) return [];
  const when = [dayText(look), look.slotMeal()?.meal].filter(Boolean).join(' ');
  if (who === undefined && when === '') return [];
  if (when !== '' && look.meal() !== undefined) return [{ means: 'want', words: `no ${meal} ${when}` }];
  return [
    {
      means: 'eater',
      words: `${who === undefined || who === look.names.me ? 'me' : quoted(who)} dislikes ${meal.replaceAll('"', '')}`,
    },
  ];
}

/**
 * What a message that nobody understands may tell, by the things it names alone: the deeds that such things go through.
 * Nothing where it asks or turns something round.
 */
export function deedsNear(text: string, names: Names): Deed[] {
  if (text.length > longest) return [];
  const look = new Look(text, names);
  const { mood, codes } = look.said;
  if (mood.asks) return [];
  if (mood.negated !== null) return look.has('want', 'like', 'fancy', 'wish') ? notLiked(look) : [];
  if (/\b(?:no|without|never)\b/iu.test(text)) return notLiked(look);
  const thing = things(look);
  if (codes.length > 0 && thing && look.has('lose'))
    return [{ means: 'discard', words: `${thing.words} lost` }];
  if (codes.length > 0 && thing)
    return [
      { means: 'use', words: thing.words },
      { means: 'discard', words: thing.words },
    ];
  return [...ofLoad(look), ...ofPerson(look)];
}
