// A name in a right-to-left script takes figures and signs beside it along, so that a count moves behind the code it
// stands before. Isolated (UAX 9, section 6.3), it stays what it is and moves nothing.

const scripts = ['Hebrew', 'Arabic', 'Syriac', 'Thaana', 'Nko', 'Samaritan', 'Mandaic', 'Adlam'];
const rightToLeft = scripts.map((script) => `\\p{Script=${script}}`).join('');
/** From its first letter to its last: what stands between two of them belongs to it, a comma or a colon does not. */
const run = new RegExp(
  `[${rightToLeft}](?:[${rightToLeft}\\p{M}\\p{N} \\u00a0'’"&.()/-]*[${rightToLeft}])?\\p{M}*`,
  'gu',
);
const isolate = /(\u2068[^\u2069\n]*\u2069)/u;

/** Every right-to-left name in a text set apart from what stands beside it; what is set apart already stays so. */
export function isolatedRuns(text: string): string {
  if (!new RegExp(`[${rightToLeft}]`, 'u').test(text)) return text;
  return text
    .split(isolate)
    .map((part) => (part.startsWith('\u2068') ? part : part.replace(run, (name) => `\u2068${name}\u2069`)))
    .join('');
}
