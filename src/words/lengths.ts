import { inRange } from '#core/ranges.ts';
import { Refusal } from '#core/refusal.ts';
import { part, quantities } from './part.ts';

/** An altitude in metres: 'at 2400 m', '7900 ft'. */
export const altitudeM = part<number>('an altitude such as 2400 m', (reading) => {
  const found = quantities(reading, 'length').find((q) => {
    const token = reading.all[q.index]!;
    return token.is === 'quantity' && ['m', 'ft', 'km'].includes(token.unit.symbol);
  });
  if (!found) return undefined;
  // Digits grouped by a comma are the common way to write thousands of metres or feet; 1,500 m of altitude has one sense.
  const token = reading.all[found.index]!;
  const metres =
    token.is === 'quantity' ? Math.max(token.value, token.otherwise ?? token.value) * token.unit.factor : 0;
  reading.take(found.index);
  for (
    let i = found.index - 1;
    ['at', '@', 'altitude', 'elevation', 'of', ':'].includes(reading.at(i)?.plain ?? '');
    i--
  )
    reading.take(i);
  for (
    let i = found.index + 1;
    ['up', 'high', 'altitude', 'elevation', 'above', 'sea', 'level', 'asl'].includes(
      reading.at(i)?.plain ?? '',
    );
    i++
  )
    reading.take(i);
  return inRange('bad-altitude', 'altitudeM', metres);
});

/** Two lengths with an x between: '20 x 30 cm'. In millimetres. */
export const flatSizeMm = part<{ a: number; b: number }>('a size such as 20 x 30 cm', (reading) => {
  for (const { value, index, typed } of quantities(reading, 'length')) {
    const mark = reading.at(index - 1);
    const first = reading.at(index - 2);
    const token = reading.all[index]!;
    if (token.is !== 'quantity' || !mark || !['x', 'by'].includes(mark.plain.replace('×', 'x'))) continue;
    let a: number;
    if (first?.is === 'number') a = first.value * token.unit.factor * 1000;
    else if (first?.is === 'quantity' && first.unit.kind === 'length')
      a = first.value * first.unit.factor * 1000;
    else continue;
    reading.take(index, index - 1, index - 2);
    if (!(a > 0 && value > 0))
      throw new Refusal('not-positive', `${typed} is no size: both sides must be above zero.`);
    return { a, b: value * 1000 };
  }
  return undefined;
});
