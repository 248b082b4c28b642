import type { Code } from '#core/records.ts';
import { Refusal } from '#core/refusal.ts';
import { part } from './part.ts';
import type { Reading } from './reading.ts';
import { sayCode } from './say.ts';
import { codeIn, type Token } from './tokens.ts';

export type PouchCode = Code;

const joins = new Set([',', '&', '+', 'and']);
const spans = new Set(['to', '-', '..', 'until', 'through']);

/** The first free token after an index and its index, marks in `skip` passed over and collected. */
function next(reading: Reading, index: number, skip: ReadonlySet<string>) {
  const passed: number[] = [];
  for (let i = index + 1; i < reading.all.length; i++) {
    const token = reading.at(i);
    if (!token) return undefined;
    if ((token.is === 'mark' || token.is === 'word') && skip.has(token.plain)) passed.push(i);
    else return passed.length > 0 || i === index + 1 ? { token, index: i, passed } : undefined;
  }
  return undefined;
}

/** Pouch codes: 'B4-2', 'B4-2 B4-3', 'B4-1 to B4-6', 'B4-1 to 6', 'B4-2, 3 and 5'. */
export const pouchCodes = part<PouchCode[]>('a pouch code such as B4-2', (reading) => {
  const codes: PouchCode[] = [];
  for (let i = 0; i < reading.all.length; i++) {
    const token = reading.at(i);
    if (token?.is !== 'pouch') continue;
    reading.take(i);
    codes.push(codeIn(token));
    for (let from = i; ;) {
      const following = continuation(reading, from, codes.at(-1)!);
      if (!following) break;
      reading.take(...following.passed, following.index);
      codes.push(...following.codes);
      from = following.index;
    }
  }
  const once = codes.filter((c, i) => codes.findIndex((d) => d.batch === c.batch && d.no === c.no) === i);
  return once.length > 0 ? once : undefined;
});

function continuation(reading: Reading, from: number, last: PouchCode) {
  const dots = next(reading, from, new Set(['.', ...spans]));
  const spanned = dots && dots.passed.length > 0 ? dots : undefined;
  if (spanned) {
    if (spanned.token.is === 'pouch' && spanned.token.batch !== last.batch)
      throw new Refusal(
        'bad-range',
        `${sayCode(last)} to ${sayCode(codeIn(spanned.token))} goes over two batches; name the pouches of each.`,
      );
    const end = lastOf(spanned.token, last);
    if (end !== undefined) {
      if (end <= last.no || end - last.no > 500) {
        throw new Refusal('bad-range', `${sayCode(last)} to ${end} is no row of codes I can follow.`);
      }
      const codes = Array.from({ length: end - last.no }, (_, k) => ({
        ...last,
        no: last.no + k + 1,
      }));
      return { ...spanned, codes };
    }
  }
  const listed = next(reading, from, joins);
  if (!listed || listed.passed.length === 0 || listed.token.is !== 'number') return undefined;
  const no = listed.token.value;
  if (!Number.isInteger(no) || no < 1 || listed.token.spelled) return undefined;
  return { ...listed, codes: [{ ...last, no }] };
}

function lastOf(token: Token, first: PouchCode): number | undefined {
  if (token.is === 'pouch' && token.batch === first.batch) return token.no;
  if (token.is === 'number' && Number.isInteger(token.value) && !token.spelled) return Math.abs(token.value);
  return undefined;
}

/** A batch code: 'B4'. */
export const batchCode = part<number>('a batch code such as B4', (reading) => {
  for (const i of reading.left()) {
    const token = reading.all[i]!;
    if (token.is === 'batch') {
      reading.take(i);
      return token.batch;
    }
  }
  return undefined;
});
