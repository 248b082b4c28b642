/** What takes time to put together and is not needed at every start: made when it is first asked for, then kept. */
export function later<T extends object>(make: () => T): () => T {
  let made: T | undefined;
  return () => (made ??= make());
}
