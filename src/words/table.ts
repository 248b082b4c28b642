/**
 * A table asked by typed words. It knows its own rows alone: of a plain object somebody who types "constructor" would
 * get what every object has.
 */
export const table = <T>(rows: Readonly<Record<string, T>>): Readonly<Record<string, T>> =>
  Object.assign(Object.create(null) as Record<string, T>, rows);
