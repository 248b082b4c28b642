import { each, figure, number, type Rest } from './taken-out.ts';

const money = '€|\\$|£|eur(?:os?)?|usd|dollars?|gbp|pounds?(?= (?:each|in|for))|chf|francs?';
const codes: Readonly<Record<string, string>> = { '€': 'EUR', $: 'USD', '£': 'GBP' };

/** '1.20 EUR each', '€7.20 in all'. */
export function priceIn(rest: Rest): { amount: number; currency: string; isOfAll: boolean } | null {
  const all = '(\\s*(?:in all|in total|altogether|together|for (?:all|the lot)))?';
  const behind = rest.take(
    new RegExp(`(?:at|for|cost(?:s|ing)?)?\\s*${figure}\\s*(${money})(?:${each})?${all}`, 'iu'),
  );
  const before = behind
    ? undefined
    : rest.take(new RegExp(`(?:at|for|cost(?:s|ing)?)?\\s*(${money})\\s*${figure}(?:${each})?${all}`, 'iu'));
  const [amount, currency] = behind
    ? [behind[1], behind[2]!]
    : before
      ? [before[2], before[1]!]
      : [undefined, ''];
  if (amount === undefined) return null;
  const code = codes[currency] ?? currency.slice(0, 3).toUpperCase();
  return { amount: number(amount), currency: code, isOfAll: (behind ?? before)!.at(-1) !== undefined };
}
