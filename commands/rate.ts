import { command } from '#chat/command.ts';
import { correctionFor, learntWords } from '#house/corrections.ts';
import { batchNumbered, driedFacts, nameKey, pouchCoded } from '#house/figures.ts';
import { pouchFacts } from '#core/meal.ts';
import { Refusal } from '#core/refusal.ts';
import { optional, part, pouchesEaten, quantities } from '#words/parts.ts';
import { takeName } from '#words/names.ts';
import { sayCode, sayCount, sayNumber, sayWater } from '#words/say.ts';
import { ownEater } from '#house/self.ts';
import { howBatchEaten } from '#house/eating.ts';

/** '40 ml more', '1/4 cup less', 'water just right'. In ml; below zero for less. */
const moreMl = optional(
  part<number>('how much more or less water, such as 40 ml more', (reading) => {
    const found = quantities(reading, 'volume')[0];
    if (!found) {
      const right = reading.keyword('right', 'perfect');
      if (right === undefined) return undefined;
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
      ['more', 'less', 'fewer', 'extra', 'drier', 'dry', 'wet', 'wetter'].includes(
        reading.at(i)?.plain ?? '',
      ),
    );
    const plain = word === undefined ? undefined : reading.all[word]!.plain;
    if (plain === undefined && !(found.value < 0) && !found.typed.startsWith('+')) {
      throw new Refusal('more-or-less', `I read ${found.typed}, but not whether more or less.`);
    }
    reading.take(found.index, ...(word === undefined ? [] : [word]));
    reading.keyword('water');
    return plain === 'less' || plain === 'fewer' ? -Math.abs(found.value) : found.value;
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

/** One rating moves a portion by a twentieth; chosen, so that ten say what one must not. */
const portionStep = 0.05;

export default command({
  name: 'rate',
  alsoCalled: ['rated'],
  usage: '/rate <pouch> [40 ml more] [too salty] [too much] [hungry] [again] [for Noa]',
  summary: 'how a meal was; the next water figure and portions learn from it',
  examples: [
    '/rate B4-2 40 ml more, too salty',
    '/rate B4-2 water just right, again',
    '/rate B4-2 too much for Noa',
  ],
  help: [
    'Later ratings weigh more. Water stays within 0.7 to 1.3 of what the weights say.',
    '"too much" and "hungry" change the portion of whoever says so, or of whom it is said for.',
  ],
  records: true,
  mayLeaveOut: true,
  doubtRepeats: true,
  takes: {
    codes: pouchesEaten,
    moreMl,
    salt: phrase<'too salty' | 'not salty enough'>(
      'too salty',
      ['too salty', 'too', 'salty'],
      ['not salty enough', 'not', 'salty', 'enough'],
      ['not salty enough', 'bland'],
      ['too salty', 'salty'],
    ),
    portion: phrase<'too much' | 'hungry'>(
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
    ),
    again: phrase<boolean>(
      'again',
      [false, 'not', 'again'],
      [false, 'never', 'again'],
      [true, 'again'],
      [true, 'good'],
      [true, 'loved'],
      ...(
        [
          'love',
          'yummy',
          'delicious',
          'tasty',
          'great',
          'nice',
          'excellent',
          'favourite',
          'favorite',
        ] as const
      ).map((word) => [true, word] as const),
      ...(['gross', 'awful', 'disgusting', 'horrible', 'inedible', 'yuck'] as const).map(
        (word) => [false, word] as const,
      ),
    ),
    eater: optional(
      part<string>('for whom, such as for Noa', (reading, names) =>
        names.eaters.length === 0 ? undefined : takeName(reading, names.eaters, 'eater'),
      ),
    ),
  },
  run: ({ codes, moreMl: more, salt, portion, again, eater: named }, house) => {
    const [code, second] = codes;
    if (!code || second) throw new Refusal('one-pouch', 'One pouch at a time, please.');
    const pouch = pouchCoded(house, code);
    if (more === undefined && !salt && !portion && again === undefined) {
      throw new Refusal('nothing-said', `I read ${sayCode(code)}, but not how it was.`);
    }
    const batch = batchNumbered(house, code.batch);
    const facts = driedFacts(house, batch);
    if (more !== undefined && howBatchEaten(house, batch).isDry)
      throw new Refusal(
        'eaten-dry',
        `${pouch.meal} is eaten dry here, so no water was poured by my figure. With water from now on: /recipe ${pouch.meal} soaked`,
      );
    const before = correctionFor(house, batch);
    const balanceMl = pouchFacts(pouch.dryG, facts).waterMl;
    const pouredMl = balanceMl * before.correction;
    if (more !== undefined && !(pouredMl + more > 0))
      throw new Refusal(
        'too-little-water',
        `${Math.abs(Math.round(more))} ml less than the ${Math.round(pouredMl)} ml of that pouch leaves none.`,
      );
    const whose = named === undefined ? ownEater(house) : house.eaters.find(nameKey(named));
    house.ratings.rate({
      mealKey: nameKey(pouch.meal),
      batch: batch.id,
      eater: whose?.id ?? null,
      byMember: house.member.id,
      atMs: house.nowMs,
      balanceMl: more === undefined ? null : balanceMl,
      pouredMl: more === undefined ? null : pouredMl,
      moreMl: more ?? null,
      salt: salt ?? null,
      portion: portion ?? null,
      again: again ?? null,
    });
    let portionNow: { name: string; portion: number; ratings: number } | undefined;
    if (portion && whose) {
      const changed =
        Math.round(
          Math.min(
            4,
            Math.max(0.1, whose.portion * (portion === 'too much' ? 1 - portionStep : 1 + portionStep)),
          ) * 100,
        ) / 100;
      house.eaters.change(whose.id, { ...whose, portion: changed });
      portionNow = { name: whose.name, portion: changed, ratings: house.ratings.portionsOf(whose.id) };
    }
    const ratings = house.ratings.ofMeal(nameKey(pouch.meal));
    return {
      pouch,
      more,
      nextMl: balanceMl * correctionFor(house, batch).correction,
      learnt: learntWords(correctionFor(house, batch)),
      salty: ratings.filter((r) => r.salt === 'too salty').length,
      rated: ratings.length,
      salt,
      again: {
        yes: ratings.filter((r) => r.again === true).length,
        no: ratings.filter((r) => r.again === false).length,
        said: again,
      },
      portionNow,
      noEater: portion !== undefined && whose === undefined,
      settings: house.settings,
    };
  },
  say: ({ pouch, more, nextMl, learnt, salty, rated, salt, again, portionNow, noEater, settings }) => {
    const lines = [`Noted for ${pouch.meal}.`];
    if (more !== undefined)
      lines.push(
        `Next time a pouch of ${Math.round(pouch.dryG)} g gets ${sayWater(nextMl, settings)}. ${learnt.join(' ')}`,
      );
    if (salt !== undefined)
      lines.push(
        salt === 'too salty'
          ? `${salty} of ${rated} ratings call it too salty. Less salt in the pot: /scale ${pouch.meal} sodium 500 mg.`
          : 'Salt can be added at camp, never taken out.',
      );
    if (again.said !== undefined) lines.push(`Again: ${again.yes} for, ${again.no} against.`);
    if (portionNow)
      lines.push(
        `${portionNow.name}'s portion is ${sayNumber(portionNow.portion)} now, learnt from ${sayCount(portionNow.ratings, 'rating')}; /eater ${portionNow.name} portion 1 sets it.`,
      );
    if (noEater) lines.push('Whose portion? You are not an eater yet: /eater me.');
    return { group: lines.join('\n'), did: `rated ${sayCode(pouch)}, ${pouch.meal}` };
  },
});
