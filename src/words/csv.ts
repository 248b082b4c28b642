/** A text that a spreadsheet would carry out. */
const formula = /^[=+\-@\t\r]/;

function cell(value: string | number | null | undefined): string {
  if (value === null || value === undefined) return '';
  if (typeof value === 'number') return String(value);
  return `"${(formula.test(value) ? `'${value}` : value).replaceAll('"', '""')}"`;
}

/**
 * Rows as comma-separated text (RFC 4180), its first line the names of the columns. What people typed stays text: a
 * spreadsheet carries none of it out.
 * @returns text with a mark in front that tells spreadsheets it is UTF-8
 */
export function csv(
  columns: readonly string[],
  rows: readonly Readonly<Record<string, string | number | null>>[],
): string {
  const lines = [columns.map(cell), ...rows.map((row) => columns.map((name) => cell(row[name])))];
  return `\uFEFF${lines.map((line) => line.join(',')).join('\r\n')}\r\n`;
}
