/** A figure and the words that stand for it. */
export interface Bar {
  readonly label: string;
  readonly value: number;
  readonly says: string;
}

const barWidth = 32;
const labelWidth = 26;
const eighths = ['', '▏', '▎', '▍', '▌', '▋', '▊', '▉'];

/** A bar of blocks, an eighth of a block fine. */
function blocks(share: number): string {
  const parts = Math.round(Math.min(1, Math.max(0, share)) * barWidth * 8);
  return '█'.repeat(Math.floor(parts / 8)) + eighths[parts % 8]!;
}

/** Columns that a terminal gives a text: two to East Asian signs and pictures. */
function widthOf(text: string): number {
  const wide = text.match(
    /\p{Script=Han}|\p{Script=Hangul}|\p{Script=Hiragana}|\p{Script=Katakana}|\p{Emoji_Presentation}/gu,
  );
  return Array.from(text).length + (wide?.length ?? 0);
}

/** Bars in letters, one a line, for a terminal: each with its label before and its figure behind it. */
export function textPlot(bars: readonly Bar[]): string {
  const most = Math.max(...bars.map(({ value }) => value), 0);
  const wide = Math.min(labelWidth, Math.max(...bars.map(({ label }) => widthOf(label)), 0));
  return bars
    .map(
      ({ label, value, says }) =>
        `${label + ' '.repeat(Math.max(0, wide - widthOf(label)))} ${blocks(most > 0 ? value / most : 0)} ${says}`,
    )
    .join('\n');
}

/** At most so many of a long row: the first, the last and evenly between. */
export function thinned<T>(all: readonly T[], most: number): T[] {
  if (all.length <= most) return [...all];
  return Array.from({ length: most }, (_, i) => all[Math.round((i * (all.length - 1)) / (most - 1))]!);
}
