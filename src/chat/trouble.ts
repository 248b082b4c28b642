/** What stops a database from taking a record, by the first letters of SQLite's own code. */
const sentences: readonly (readonly [code: RegExp, sentence: string])[] = [
  [/^SQLITE_FULL/, 'My disk is full, so I cannot record anything'],
  [/^SQLITE_READONLY/, 'I may not write to my records at present'],
  [/^SQLITE_(IOERR|CANTOPEN)/, 'My disk does not answer as it should, so I cannot record anything'],
  [/^SQLITE_(CORRUPT|NOTADB)/, 'My records are damaged, and I leave them as they are'],
  [/^SQLITE_(BUSY|LOCKED)/, 'Another program holds my records at the moment'],
];

/**
 * What people read when a message could not be stored at all. Such a fault must end the whole message: SQLite may
 * have taken back more than the part that failed.
 * @returns undefined for any other fault
 */
export function storeTrouble(error: unknown): string | undefined {
  const code = error instanceof Error && 'code' in error && typeof error.code === 'string' ? error.code : '';
  const found = sentences.find(([pattern]) => pattern.test(code));
  if (!found) return undefined;
  return `${found[1]}. Nothing of this message was recorded. Please tell whoever runs me, and send it again later.`;
}
