/** Signs in a line of a small phone's bubble, and lines that are read without scrolling. Chosen. */
const lineSigns = 38;
export const mostPhoneLines = 12;

/** Lines that a text takes on a phone. */
export const phoneLines = (text: string): number =>
  text
    .split('\n')
    .reduce((sum, line) => sum + Math.max(1, Math.ceil(Array.from(line).length / lineSigns)), 0);

/** How many phone lines some lines take together. */
export const phoneLinesOf = (lines: readonly string[]): number =>
  lines.reduce((sum, line) => sum + phoneLines(line), 0);
