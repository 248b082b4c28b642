import { tokens } from '#words/tokens.ts';

/**
 * The two messages that 'our cup is 237 or 240 ml' may be: each with one of the figures, in the unit of the last.
 * @returns none where no two figures stand beside an 'or'
 */
export function eitherOf(text: string): string[] {
  const all = tokens(text);
  const at = all.findIndex(({ plain }, i) => {
    const [one, other] = [all[i - 1], all[i + 1]];
    const isFigure = (token: typeof one) => token?.is === 'number' || token?.is === 'quantity';
    return plain === 'or' && isFigure(one) && isFigure(other);
  });
  const [one, other] = [all[at - 1], all[at + 1]];
  if (at < 0 || !one || !other) return [];
  const unit = one.is === 'number' && other.is === 'quantity' ? ` ${other.unitTyped}` : '';
  const put = (into: string) => text.slice(0, one.from) + into + text.slice(other.to);
  return [put(`${one.typed}${unit}`), put(other.typed)];
}
