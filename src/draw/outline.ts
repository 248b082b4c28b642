import { openFaces } from './faces.ts';
import { features, line } from './typeset.ts';

const element = /<text\b([^>]*)>([^<]*)<\/text>/g;
const named: Readonly<Record<string, string>> = {
  amp: '&',
  lt: '<',
  gt: '>',
  quot: '"',
  apos: "'",
  '#39': "'",
};

function attribute(text: string, name: string): string | undefined {
  return new RegExp(`(?:^|\\s)${name}="([^"]*)"`).exec(text)?.[1];
}

const plain = (text: string) =>
  text.replace(/&([a-z]+|#39);/g, (whole, name: string) => named[name] ?? whole);

/**
 * An SVG whose letters are drawn shapes: set by the same rules and faces as print, and in need of no font where it is
 * looked at.
 * @throws Refusal 'no-glyph'
 */
export async function outlined(svg: string): Promise<string> {
  await openFaces([...svg.matchAll(element)].map(([, , text]) => plain(text!)));
  return svg.replace(element, (_, told: string, text: string) => {
    const sizePx = Number.parseFloat(attribute(told, 'font-size') ?? '11');
    const weight = attribute(told, 'font-weight') === 'bold' ? 'bold' : 'regular';
    const set = line(plain(text), { weight, sizePt: sizePx });
    const anchor = attribute(told, 'text-anchor');
    const startPx = anchor === 'middle' ? -set.widthPt / 2 : anchor === 'end' ? -set.widthPt : 0;
    const shapes = set.pieces.map(({ face, text: run, xPt }) => {
      const { glyphs, positions } = face.font.layout(run, features);
      const scale = sizePx / face.font.unitsPerEm;
      let penPx = startPx + xPt;
      return glyphs
        .map((glyph, i) => {
          const { xOffset, yOffset, xAdvance } = positions[i]!;
          const shape = glyph.path
            .scale(scale, -scale)
            .translate(penPx + xOffset * scale, -yOffset * scale)
            .toSVG();
          penPx += xAdvance * scale;
          return shape;
        })
        .join('');
    });
    const transform = attribute(told, 'transform');
    const fill = attribute(told, 'fill') ?? '#000';
    return `<path${transform === undefined ? '' : ` transform="${transform}"`} fill="${fill}" d="${shapes.join('')}"/>`;
  });
}
