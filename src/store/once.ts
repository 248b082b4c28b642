import type { Statement } from 'better-sqlite3';
import type { Db } from './db.ts';

/** A file whose writes are counted: what was read at one count holds as long as the count stands. */
export interface Counted {
  readonly db: Db;
  readonly writes: () => number;
  /** What was written was taken back: nothing read since may be kept. */
  readonly takenBack: () => void;
  /** Prepares every statement at once, used or not. @throws SqliteError for one that is wrong */
  readonly prepareAll: () => void;
}

/**
 * Counts every statement that writes; reading costs nothing more. A statement is prepared when it is first used: of the
 * three hundred and more of a house one message needs a few.
 */
export function counted(db: Db): Counted {
  let writes = 0;
  const known: (() => Statement)[] = [];
  const prepare = (sql: string) => {
    let prepared: Statement | undefined;
    let isPlucked = false;
    const ready = (): Statement => (prepared ??= isPlucked ? db.prepare(sql).pluck() : db.prepare(sql));
    known.push(ready);
    const statement = {
      pluck: () => {
        isPlucked = true;
        return statement;
      },
      get: (...values: unknown[]) => ready().get(...values),
      all: (...values: unknown[]) => ready().all(...values),
      run: (...values: unknown[]) => {
        writes += 1;
        return ready().run(...values);
      },
    };
    return statement;
  };
  const counting = new Proxy(db, {
    get(target, key) {
      if (key === 'prepare') return prepare;
      const value: unknown = Reflect.get(target, key, target);
      return typeof value === 'function' ? (value.bind(target) as unknown) : value;
    },
  });
  return {
    db: counting,
    writes: () => writes,
    takenBack: () => void (writes += 1),
    prepareAll: () => {
      for (const ready of known) ready();
    },
  };
}

/**
 * The same reads, each asked of the file once: an answer is kept until something is written. For one message; what it
 * gives is shared, so nobody changes it.
 * @param store functions that read, and functions that write: an answer during which something was written is not kept
 */
export function readOnce<S extends object>(store: S, writes: () => number): S {
  let asOf = writes();
  const known = new Map<string, unknown>();
  const wrap = (name: string, read: (...values: unknown[]) => unknown) => {
    return (...values: unknown[]): unknown => {
      if (asOf !== writes()) {
        known.clear();
        asOf = writes();
      }
      const key = `${name} ${JSON.stringify(values)}`;
      if (known.has(key)) return known.get(key);
      const found = read(...values);
      if (asOf === writes()) known.set(key, found);
      return found;
    };
  };
  return Object.fromEntries(
    Object.entries(store).map(([name, value]) => [
      name,
      typeof value === 'function' ? wrap(name, value as (...values: unknown[]) => unknown) : value,
    ]),
  ) as S;
}
