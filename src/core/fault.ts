/**
 * Where a fault is, for the log. Its own words are left out: they may quote what people typed.
 * @returns the error's name, its code if it has one, and the places it passed through, a line each
 */
export function whereItBroke(error: unknown): string {
  if (!(error instanceof Error)) return 'something that is no error was thrown';
  const frames = (error.stack ?? '').split('\n').filter((line) => /^\s+at /.test(line));
  const code = 'code' in error && typeof error.code === 'string' ? ` ${error.code}` : '';
  return [`${error.name}${code}`, ...frames].join('\n');
}
