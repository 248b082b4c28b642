import { momentOf, weightsOf } from './amounts.ts';
import { type Reader, holdOf, idea, people, scoreOf } from './hold.ts';

/** 'Sealed six pouches of 60 g from B5': how many of what weight, and of which batch. */
export const sealing: Reader = (look) => {
  const { all, batches } = look.said;
  const isFilled = look.has('pouch', 'bag', 'jar', 'portion');
  const verbs = look.at(
    ...idea('seal'),
    ...(isFilled ? ['pack', 'fill', 'put', 'divide', 'split', 'portion', 'make'] : []),
  );
  const groups: string[] = [];
  const used: number[] = [];
  all.forEach((token, i) => {
    if (token.is !== 'quantity' || token.unit.kind !== 'mass') return;
    const isInOne =
      /^(?:in|as)$/.test(all[i + 1]?.plain ?? '') &&
      all[i + 2]?.is === 'number' &&
      all[i + 2]?.plain === 'one';
    if (isInOne) {
      groups.push(`1 x ${token.typed}`);
      used.push(i, i + 1, i + 2);
      return;
    }
    for (let k = i - 1; k >= Math.max(0, i - 5); k--) {
      const before = all[k]!;
      if (before.is === 'quantity' || used.includes(k)) break;
      if (before.is !== 'number' || !Number.isInteger(before.value)) continue;
      groups.push(
        `${before.value} x ${/^\p{L}/u.test(token.typed) ? `${token.value} ${token.unitTyped}` : token.typed}`,
      );
      used.push(...Array.from({ length: i - k + 1 }, (_, n) => k + n));
      return;
    }
  });
  // '6 x 60': where pouches are sealed, grams alone make sense.
  const bare =
    groups.length === 0
      ? (/\b(\d{1,2})\s*[x×]\s*(\d{2,4})\b(?!\s*(?:cm|mm|x|×|in))/iu.exec(look.said.text) ??
        /\b(\d{1,2}|two|three|four|five|six|seven|eight|nine|ten|twelve)\s+(\d{2,3})s\b/iu.exec(
          look.said.text,
        ) ??
        /\b(\d{1,2}|two|three|four|five|six|seven|eight|nine|ten|twelve)\s+(?:pouches|bags|portions)\s+(?:of|with|at)\s+(\d{2,4})\b(?!\s*(?:cm|mm|x|×|in))/iu.exec(
          look.said.text,
        ))
      : null;
  // 'Five at 70 and one at 24'.
  if (groups.length === 0 && !bare && verbs.length > 0) {
    for (const m of look.said.text.matchAll(
      /\b(\d{1,2}|one|two|three|four|five|six|seven|eight|nine|ten)\s+(?:at|of|with)\s+(\d{2,4})\b(?!\s*(?:cm|mm|x|×|in|c\b))/giu,
    )) {
      const count = all.find(({ from }) => from === m.index);
      if (count?.is !== 'number') continue;
      groups.push(`${count.value} x ${m[2]!} g`);
      all.forEach((token, i) => {
        if (token.from >= m.index && token.to <= m.index + m[0].length) used.push(i);
      });
    }
  }
  if (bare && verbs.length > 0) {
    groups.push(
      `${look.said.all.find(({ from }) => from === bare.index)?.plain ?? bare[1]!} x ${bare[2]!} g`,
    );
    all.forEach((token, i) => {
      if (token.from >= bare.index && token.to <= bare.index + bare[0].length) used.push(i);
    });
  }
  // 'B5 into bags: 60 60 60 74': a weight each.
  if (groups.length === 0 && batches[0] && look.says(/ (?:in|into) (?:the )?(?:bags|pouches) /)) {
    const each = weightsOf(look);
    if (each.words.length > 1) {
      groups.push(...each.words.map((typed) => `1 x ${/\p{L}/u.test(typed) ? typed : `${typed} g`}`));
      used.push(...each.at);
      verbs.push(...look.at('bag', 'pouch'));
    }
  }
  const which = batches[0] ? `B${batches[0].batch}` : look.mealTyped();
  // 'Seal the rest of B3 as one pouch', 'in two bags'.
  const isRest =
    look.says(/ (?:the )?(?:rest|remainder|leftovers?|what s left) /) &&
    groups.length === 0 &&
    (look.has('seal', 'bag', 'vacuum', 'pack') || (isFilled && look.has('put', 'fill')));
  const inCount = look.said.all.find(
    ({ is }, i) => is === 'number' && /^(?:as|in|into)$/.test(all[i - 1]?.plain ?? ''),
  );
  if (isRest && !look.said.mood.asks && look.said.codes.length === 0)
    return {
      means: 'seal',
      words: `${which ?? ''} rest in ${inCount?.is === 'number' ? inCount.value : 1}`.trim(),
      score: 7,
      left: [],
      holds: holdOf(look),
    };
  const count = all.find(
    (token) => token.is === 'number' && Number.isInteger(token.value) && token.value < 50,
  );
  // 'Seal everything that is dry': how much of what there is to seal is told.
  if (
    groups.length === 0 &&
    verbs.length > 0 &&
    which === undefined &&
    look.says(/ (?:everything|all|what s|whatever) /) &&
    !look.said.mood.asks
  )
    return { means: 'unsealed', words: '', score: 5, left: [], holds: null, looks: true };
  // Without a weight it is asked for, not taken for something else.
  if (
    groups.length === 0 &&
    verbs.length > 0 &&
    batches[0] &&
    look.said.codes.length === 0 &&
    !look.said.mood.asks
  )
    return look.has('undo') || look.said.all.some(({ is }) => is === 'quantity')
      ? undefined
      : {
          means: 'seal',
          words: `B${batches[0].batch}${count?.is === 'number' ? ` ${count.value}` : ''}`,
          score: 4.5,
          left: [],
          holds: holdOf(look, {
            negated: look.says(/ (?:didn t|didnt|did not|not|haven t) (?:\w+ )?(?:weigh|weighed|weighing) /),
          }),
        };
  if (groups.length === 0 || look.said.codes.length > 0) return undefined;
  if (which === undefined && verbs.length === 0) return undefined;
  if (verbs.length === 0 && !look.has('make', 'pouch', 'bag', 'fill')) return undefined;
  const moment = momentOf(look);
  if (
    which === undefined &&
    look.leftBy([
      ...verbs,
      ...used,
      ...people(look),
      ...moment.at,
      ...look.at('fill', 'pouch', 'bag', 'each', 'gram', 'portion'),
    ]).length > 0
  )
    return undefined;
  return {
    means: 'seal',
    words: `${groups.join(' ')} ${which ?? ''}${look.has('unchecked') ? ' unchecked' : ''}${moment.words === '' ? '' : ` at ${moment.words}`}`,
    score: scoreOf(verbs.length > 0 && 4, 2),
    left: look.leftBy([
      ...verbs,
      ...used,
      ...batches.map(({ at }) => at),
      ...look.said.meals.flatMap(({ at }) => at),
      ...people(look),
      ...moment.at,
      ...look.at(
        'unchecked',
        'make',
        'fill',
        'pouch',
        'bag',
        'each',
        'gram',
        'portion',
        'leave',
        'leftover',
        'little',
        'small',
      ),
    ]),
    holds: holdOf(look),
  };
};
