import { readPrice } from '#words/price-parts.ts';
import { type Reader, holdOf, people, scoreOf } from './hold.ts';
import type { Look } from './look.ts';

/** The tokens of a bare number, and of a percent sign or a unit behind it. */
function figure(look: Look, behind: readonly string[]): { typed: string; at: number[] } | undefined {
  const { all } = look.said;
  const index = all.findIndex(
    (token, i) => token.is === 'number' && behind.includes(all[i + 1]?.plain ?? ''),
  );
  if (index >= 0) return { typed: all[index]!.typed, at: [index, index + 1] };
  const alone = all.flatMap((token, i) => (token.is === 'number' ? [i] : []));
  return alone.length === 1 ? { typed: all[alone[0]!]!.typed, at: alone } : undefined;
}

/** 'The hygrometer in the jar of B4 shows 24 %', 'humidity of the soup 24 percent'. */
export const jar: Reader = (look) => {
  const named = look.at('hygrometer', 'humidity', 'rh');
  const shown = figure(look, ['%', 'percent', 'rh']);
  if (named.length === 0 || shown === undefined || look.said.codes.length > 0) return undefined;
  const [batch] = look.said.batches;
  const { drying } = look.names;
  const which = batch
    ? `B${batch.batch}`
    : (look.mealTyped() ?? (drying.length === 1 ? `B${drying[0]}` : ''));
  return {
    means: 'weigh',
    words: `${which} humidity ${shown.typed} %`.trim(),
    score: scoreOf(4.5, batch !== undefined && 1),
    left: look.leftBy([
      ...named,
      ...shown.at,
      ...people(look),
      ...look.said.batches.map(({ at }) => at),
      ...look.said.meals.flatMap(({ at }) => at),
      ...look.at(
        'jar',
        'glass',
        'show',
        'read',
        'say',
        'stand',
        'be',
        'in',
        'with',
        'of',
        'for',
        'at',
        'closed',
        'inside',
        'now',
        'down',
        'to',
      ),
    ]),
    holds: holdOf(look),
  };
};

/** 'The meter shows 4521.3 kWh'. */
export const meter: Reader = (look) => {
  const named = look.at('meter');
  const shown = figure(look, ['kwh']);
  const isRead = look.says(/ kwh | meter (?:of the dryer )?(?:shows?|reads?|says?|stands?|is|was|showed) /);
  if (named.length === 0 || shown === undefined || !isRead) return undefined;
  return {
    means: 'dryer',
    words: `meter ${shown.typed}`,
    score: 5,
    left: look.leftBy([
      ...named,
      ...shown.at,
      ...people(look),
      ...look.at(
        'dryer',
        'electricity',
        'power',
        'show',
        'read',
        'say',
        'stand',
        'be',
        'now',
        'of',
        'at',
        'kwh',
      ),
    ]),
    holds: holdOf(look),
  };
};

/** 'Red lentils cost 3.20 a kilo', '10 eggs were €2.40': with money in it and an amount, and nothing of ours. */
export const pricing: Reader = (look) => {
  const told = readPrice(look.bare);
  if (told?.is !== 'price' || told.isBare || look.said.codes.length + look.said.batches.length > 0)
    return undefined;
  const isSaid = told.currency !== '' || look.has('cost', 'price', 'pay');
  if (!isSaid) return undefined;
  return { means: 'prices', words: look.bare, score: 5.5, left: [], holds: holdOf(look) };
};
