import { Refusal } from '#core/refusal.ts';
import { optional, part } from './part.ts';
import { trayWeights } from './weights.ts';

/** 'tray 2': the number behind the word. */
export const oneTray = optional(
  part<number>('which tray, such as tray 2', (reading) => {
    const index = [...reading.left()].find(
      (i) =>
        reading.all[i]!.is === 'number' && reading.wordBefore(i, 'tray') && reading.all[i]!.typed.length <= 2,
    );
    const token = index === undefined ? undefined : reading.all[index]!;
    if (index === undefined || token?.is !== 'number') return undefined;
    reading.take(index, index - 1);
    return token.value;
  }),
);

const vouchers = ['vouch', 'vouches'];
const jarWords = ['humidity', 'hygrometer', 'rh', 'jar'];

/** 'humidity 24 %', 'hygrometer shows 24 %', '24 % rh'. */
export const humidityPercent = optional(
  part<number>('what the hygrometer shows, such as humidity 24 %', (reading) => {
    const named = [...reading.left()].filter((i) => jarWords.includes(reading.all[i]!.plain));
    if (named.length === 0) return undefined;
    const numbers = [...reading.left()].filter((i) => reading.all[i]!.is === 'number');
    const index = numbers.find((i) => reading.at(i + 1)?.plain === '%') ?? numbers.find((i) => i > named[0]!);
    const token = index === undefined ? undefined : reading.all[index]!;
    if (index === undefined || token?.is !== 'number')
      throw new Refusal('no-humidity', 'I read a hygrometer, but not what it shows, such as humidity 24 %.');
    reading.settleNumbers([index]);
    reading.take(...named, index);
    if (reading.at(index + 1)?.plain === '%') reading.take(index + 1);
    reading.takeWords('shows', 'showed', 'reads', 'says', 'relative', 'closed');
    return token.value;
  }),
);

export const coldWords = ['cold', 'soft', 'wet', 'icy', 'ice', 'frozen', 'damp', 'moist', 'cool', 'spongy'];
export const crispWords = ['crisp', 'crispy', 'dry', 'crunchy', 'brittle', 'warm', 'hard'];
export const pieceWords = [
  'piece',
  'pieces',
  'centre',
  'center',
  'middle',
  'core',
  'inside',
  'chunk',
  'chunks',
];

/** 'pieces cold', 'the thickest piece is soft inside', 'all pieces crisp': whether ice is left in what was opened. */
export const piecesCold = optional(
  part<boolean>('what opened pieces were like, such as pieces cold', (reading) => {
    const has = (words: readonly string[]) =>
      [...reading.left()].filter((i) => words.includes(reading.all[i]!.plain));
    const pieces = has(pieceWords);
    const [cold, crisp] = [has(coldWords), has(crispWords)];
    if (pieces.length === 0 || cold.length + crisp.length === 0) return undefined;
    reading.take(...pieces, ...cold, ...crisp);
    reading.takeWords(
      'thickest',
      'thick',
      'biggest',
      'largest',
      'all',
      'some',
      'still',
      'opened',
      'broken',
      'and',
      'is',
      'are',
      'was',
      'were',
      'in',
      'of',
    );
    // One cold piece is enough.
    return cold.length > 0;
  }),
);

/** Weights as ever; none where a hygrometer or a word is told instead. */
export const weightsOrWitness = part<number[]>(trayWeights.like, (reading, names) => {
  const isWitness = reading.all.some(({ plain }) =>
    [...jarWords, ...vouchers, ...pieceWords].includes(plain),
  );
  return trayWeights.read(reading, names) ?? (isWitness ? [] : undefined);
});

/** 'vouch six pieces opened, crisp inside': everything behind the word. No slip is forgiven: 'pouch' is near. */
export const vouchWords = optional(
  part<string>("a grown-up's word, such as vouch six pieces opened, crisp inside", (reading) => {
    const index = [...reading.left()].find((i) => vouchers.includes(reading.all[i]!.plain));
    if (index === undefined) return undefined;
    reading.take(index);
    return reading.rest();
  }),
);
