import { Refusal } from '#core/refusal.ts';
import { optional, part, quantities } from './part.ts';

const wetWords = ['wet', 'watery', 'runny', 'soupy', 'thin'];
const dryWords = ['dry', 'thick'];
const wetnessWords = [...wetWords, ...dryWords];

/** '40 ml more', '1/4 cup less', 'water just right'. In ml; below zero for less. */
export const moreMl = optional(
  part<number>('how much more or less water, such as 40 ml more', (reading) => {
    const found = quantities(reading, 'volume')[0];
    if (!found) {
      const right = reading.keyword('right', 'perfect');
      if (right === undefined) {
        const said = [...reading.left()].find((i) => wetnessWords.includes(reading.all[i]!.plain));
        if (said === undefined) return undefined;
        throw new Refusal(
          'how-much-water',
          `I read "${reading.all[said]!.typed}", but not how much water it lacked or had too much: say 40 ml more, or 40 ml less.`,
        );
      }
      for (const word of ['just', 'water', 'exactly', 'was']) reading.keyword(word);
      return 0;
    }
    reading.settleNumbers([found.index]);
    const near = [found.index + 1, found.index - 1, found.index + 2, found.index - 2];
    // '60 ml too much': the same as 60 ml less.
    if (reading.at(found.index + 1)?.plain === 'too' && reading.at(found.index + 2)?.plain === 'much') {
      reading.take(found.index, found.index + 1, found.index + 2);
      reading.keyword('water');
      return -Math.abs(found.value);
    }
    const word = near.find((i) =>
      ['more', 'less', 'fewer', 'extra', ...wetnessWords].includes(reading.at(i)?.plain ?? ''),
    );
    const plain = word === undefined ? undefined : reading.all[word]!.plain;
    if (plain === undefined && !(found.value < 0) && !found.typed.startsWith('+')) {
      throw new Refusal('more-or-less', `I read ${found.typed}, but not whether more or less.`);
    }
    reading.take(found.index, ...(word === undefined ? [] : [word]));
    // '20 ml too wet': 'too' belongs to it.
    if (word !== undefined && wetnessWords.includes(plain!) && reading.at(word - 1)?.plain === 'too')
      reading.take(word - 1);
    const isLess = plain === 'less' || plain === 'fewer' || wetWords.includes(plain ?? '');
    const ml = isLess ? -Math.abs(found.value) : found.value;
    // 'Too dry, 20 ml more' says the same twice; 'dry, 20 ml less' does not, and stays unread.
    const same = [...reading.left()].find((i) =>
      (ml < 0 ? wetWords : dryWords).includes(reading.at(i)!.plain),
    );
    if (same !== undefined) reading.take(same, ...(reading.at(same - 1)?.plain === 'too' ? [same - 1] : []));
    reading.keyword('water');
    return ml;
  }),
);

/** A phrase of words in order, taken whole. */
function phrase<T>(like: string, ...ways: readonly (readonly [T, ...string[]])[]) {
  return optional(
    part<T>(like, (reading) => {
      for (const [value, ...words] of ways) {
        const start = [...reading.left()].find((i) =>
          words.every((word, k) => reading.at(i + k)?.plain === word),
        );
        if (start === undefined) continue;
        reading.take(...words.map((_, k) => start + k));
        return value;
      }
      return undefined;
    }),
  );
}

/** What one word about the soaking moves it by, min. Chosen. */
const soakStepMin = 5;
const hardWords = ['crunchy', 'chewy', 'hard', 'underdone', 'gritty'];
const softWords = ['mushy', 'soggy'];

/** '10 min longer', 'still crunchy', 'mushy': how much longer it should have stood, min. */
export const soakMoreMin = optional(
  part<number>('how much longer it should stand, such as 10 min longer', (reading) => {
    for (const { value, index } of quantities(reading, 'time')) {
      const word = [index + 1, index + 2, index - 1].find((i) =>
        ['longer', 'more', 'shorter', 'less'].includes(reading.at(i)?.plain ?? ''),
      );
      if (word === undefined) continue;
      const isLess = ['shorter', 'less'].includes(reading.all[word]!.plain);
      reading.take(index, word);
      reading.takeWords('soak', 'soaking', 'stand', 'standing');
      return (isLess ? -value : value) / 60;
    }
    if (reading.keyword(...hardWords) !== undefined) {
      reading.takeWords('still', 'bit', 'too', 'little');
      return soakStepMin;
    }
    const soft = [...reading.left()].find(
      (i) => reading.all[i]!.plain === 'soft' && ['too', 'not'].includes(reading.at(i - 1)?.plain ?? ''),
    );
    if (soft !== undefined) {
      const isTooSoft = reading.all[soft - 1]!.plain === 'too';
      reading.take(soft, soft - 1);
      reading.takeWords('still', 'enough');
      return isTooSoft ? -soakStepMin : soakStepMin;
    }
    if (reading.keyword(...softWords) === undefined) return undefined;
    reading.takeWords('too', 'bit');
    return -soakStepMin;
  }),
);

/** Words that say how much of it and when, and change nothing of what is learnt: 'a bit', 'next time'. */
export const smallWords = optional(
  part<true>('', (reading) => {
    reading.takeWords(
      'bit',
      'little',
      'way',
      'really',
      'very',
      'slightly',
      'quite',
      'next',
      'time',
      'was',
      'were',
      'though',
      'but',
      'yummy',
      'tasty',
      'delicious',
      'taste',
      'good',
      'great',
      'nice',
      'lovely',
    );
    return undefined;
  }),
);

/** What was said of the salt. */
export const salt = phrase<'too salty' | 'not salty enough'>(
  'too salty',
  ['too salty', 'too', 'salty'],
  ['not salty enough', 'not', 'salty', 'enough'],
  ['not salty enough', 'bland'],
  ['too salty', 'salty'],
);

/** Whether it was too much or too little. */
export const portion = phrase<'too much' | 'hungry'>(
  'too much or hungry',
  ['hungry', 'still', 'hungry'],
  ['hungry', 'hungry'],
  ['hungry', 'not', 'enough'],
  ['hungry', 'too', 'little'],
  ['hungry', 'portion', 'too', 'small'],
  ['hungry', 'too', 'small'],
  ['too much', 'portion', 'too', 'big'],
  ['too much', 'too', 'much'],
  ['too much', 'too', 'big'],
);

/** Whether they want it again. */
export const again = phrase<boolean>(
  'again',
  [false, 'not', 'again'],
  [false, 'never', 'again'],
  [true, 'again'],
  [true, 'good'],
  [true, 'loved'],
  ...(
    ['love', 'yummy', 'delicious', 'tasty', 'great', 'nice', 'excellent', 'favourite', 'favorite'] as const
  ).map((word) => [true, word] as const),
  ...(['gross', 'awful', 'disgusting', 'horrible', 'inedible', 'yuck'] as const).map(
    (word) => [false, word] as const,
  ),
);
