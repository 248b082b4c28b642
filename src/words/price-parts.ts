import { Refusal } from '#core/refusal.ts';
import { part } from './part.ts';

/** What somebody said of a price. */
export type PriceTold =
  | { readonly is: 'list' }
  | { readonly is: 'forget'; readonly what: string }
  | {
      readonly is: 'price';
      readonly price: number;
      readonly currency: string;
      /** What it is the price of, as an ingredient line would say it: '1 kg red lentils', '10 eggs'. */
      readonly line: string;
      /** No amount was said: it is not known whether the price is that of a kg or of a packet. */
      readonly isBare: boolean;
    };

const symbol = '[€$£¥₹]|(?:eur|euros?|usd|dollars?|gbp|quid|chf|francs?|sek|nok|dkk|kr|pln|zł|czk|kč)\\b';
const small = '(?:cents?|ct|pence)\\b';
const figure = String.raw`\d+(?:[.,]\d+)?`;
const withMoney = new RegExp(`(${symbol})\\s?(${figure})|(${figure})\\s?(${symbol}|${small})`, 'iu');
/** A figure with cents and no unit behind it is money where nothing else is. */
const bare = /(?<![\d.,])(\d+[.,]\d\d)(?![\d.,]|\s?(?:kg|g|l|ml|lb|oz|cl|dl|%|k?wh)\b)/giu;
const plainCurrency: Readonly<Record<string, string>> = {
  euro: 'EUR', euros: 'EUR', '€': 'EUR', eur: 'EUR', dollar: '$', dollars: '$', usd: '$', '£': 'GBP', quid: 'GBP', gbp: 'GBP',
  franc: 'CHF', francs: 'CHF', chf: 'CHF',
}; // prettier-ignore

/** Words that only join a price to its thing. */
const fillers =
  /^(?:costs?|is|are|was|were|paid|pay|we|i|our|the|of|at|now|it|about|price|prices)\b\s*|\s*\b(?:costs?|is|are|was|were|paid|now|at|for|price)$/iu;
const joins = /^(?:(?:per|a|an|for|each|every|the|\/)(?:\s+|$)|\/)+/iu;

const trimmed = (text: string): string => {
  let out = text.trim();
  for (;;) {
    const next = out.replace(fillers, '').trim();
    if (next === out) return out;
    out = next;
  }
};

interface Money {
  readonly price: number;
  readonly currency: string;
  readonly from: number;
  readonly to: number;
}

const numberOf = (typed: string): number => Number(typed.replace(',', '.'));

function moneyIn(text: string): Money | undefined {
  const found = withMoney.exec(text);
  if (found) {
    const sign = (found[1] ?? found[4])!.toLowerCase();
    const price = numberOf((found[2] ?? found[3])!);
    const [from, to] = [found.index, found.index + found[0].length];
    if (new RegExp(`^${small}`, 'iu').test(sign)) return { price: price / 100, currency: '', from, to };
    return { price, currency: plainCurrency[sign] ?? sign, from, to };
  }
  const figures = [...text.matchAll(bare)];
  const [only] = figures;
  if (only === undefined || figures.length > 1) return undefined;
  return { price: numberOf(only[1]!), currency: '', from: only.index, to: only.index + only[0].length };
}

/** 'a kg red lentils' → '1 kg red lentils'; '10 eggs' stays. */
const withOne = (amount: string): string =>
  amount === '' || /^[\d½¼¾⅓⅔⅛]/u.test(amount) ? amount : `1 ${amount}`;

/**
 * A price as people say it: 'red lentils 3.20 EUR per kg', '400 g tin chopped tomatoes 0.95', 'paid 2.40 for 10 eggs'.
 * @returns undefined where no figure in it is money
 */
export function readPrice(text: string): PriceTold | undefined {
  const typed = text.replace(/\s+/g, ' ').trim();
  if (typed === '') return { is: 'list' };
  const forgotten = /^(?:forget\s+(.+)|(.+?)\s+forget)$/iu.exec(typed);
  if (forgotten) return { is: 'forget', what: trimmed((forgotten[1] ?? forgotten[2])!) };
  const money = moneyIn(typed);
  if (!money) return undefined;
  const before = trimmed(typed.slice(0, money.from));
  const behind = typed.slice(money.to).trim();
  const joined = joins.test(behind);
  const after = trimmed(behind.replace(joins, ''));
  const isEach = /^each\b/iu.test(behind);
  const { price, currency } = money;
  const told = (line: string, isBare: boolean): PriceTold => ({ is: 'price', price, currency, line, isBare });
  if (before === '') return after === '' ? undefined : told(withOne(after), false);
  if (isEach) return told(`1 ${before}`, false);
  if (joined && after !== '') return told(`${withOne(after)} ${before}`, false);
  return told(`${before} ${after}`.trim(), !/^[\d½¼¾⅓⅔⅛]/u.test(before));
}

/** All that is said behind '/price'. */
export const priceTold = part<PriceTold>(
  'a thing and its price, such as red lentils 3.20 per kg',
  (reading) => {
    const typed = reading.rest();
    const told = readPrice(typed);
    if (told) return told;
    throw new Refusal('no-price', `I read "${typed}", but no price in it.`);
  },
);
