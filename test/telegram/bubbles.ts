import { createCanvas, GlobalFonts, type SKRSContext2D } from '@napi-rs/canvas';
import type { Screen } from './played.ts';

const widthPx = 720;
const size = 30;
const line = 40;
const pad = 24;

const family = GlobalFonts.families.some((one) => one.family === 'DejaVu Sans')
  ? 'DejaVu Sans'
  : 'sans-serif';

/** Words into lines of a bubble's width. */
function wrapped(context: SKRSContext2D, text: string, width: number): string[] {
  return text.split('\n').flatMap((paragraph) => {
    const lines: string[] = [''];
    for (const word of paragraph.split(' ')) {
      const next = lines.at(-1) === '' ? word : `${lines.at(-1)!} ${word}`;
      if (context.measureText(next).width <= width) lines[lines.length - 1] = next;
      else lines.push(word);
    }
    return lines;
  });
}

/** A message and its answer as a phone shows them: a bubble each, what is folded as one line, buttons below. */
export function drawScreen({ asked, by, sent }: Screen): Buffer {
  const canvas = createCanvas(widthPx, 2400);
  const context = canvas.getContext('2d');
  context.fillStyle = '#cfd8cf';
  context.fillRect(0, 0, widthPx, 2400);
  let y = pad;
  const bubble = (
    x: number,
    width: number,
    colour: string,
    blocks: { text: string; font: string; ink: string }[],
  ) => {
    const all = blocks.flatMap(({ text, font, ink }) => {
      context.font = font;
      return wrapped(context, text, width - 2 * pad).map((one) => ({ one, font, ink }));
    });
    context.fillStyle = colour;
    context.beginPath();
    context.roundRect(x, y, width, all.length * line + 2 * pad - 10, 22);
    context.fill();
    all.forEach(({ one, font, ink }, i) => {
      context.font = font;
      context.fillStyle = ink;
      context.fillText(one, x + pad, y + pad + 22 + i * line);
    });
    y += all.length * line + 2 * pad;
  };
  const plain = `${size}px "${family}"`;
  const bold = `bold ${size}px "${family}"`;
  bubble(120, widthPx - 140, '#dff4d8', [
    { text: by, font: bold, ink: '#2f6f4f' },
    { text: asked, font: plain, ink: '#1c1c1c' },
  ]);
  const clean = (text: string) => text.replace(/[\u2060\u2068\u2069]/gu, '').trim();
  const cuts = [
    ...new Set([0, ...sent.entities.flatMap((e) => [e.offset, e.offset + e.length]), sent.text.length]),
  ].toSorted((a, b) => a - b);
  const blocks = cuts.slice(0, -1).flatMap((from, i) => {
    const text = clean(sent.text.slice(from, cuts[i + 1]));
    const type = sent.entities.find((e) => e.offset <= from && from < e.offset + e.length)?.type;
    if (text === '') return [];
    if (type === 'expandable_blockquote')
      return [{ text: `▏${text.split('\n')[0]!.slice(0, 30)}… ▾`, font: plain, ink: '#6a7a8a' }];
    if (type === 'blockquote') return [{ text: `▏${text}`, font: plain, ink: '#345a7a' }];
    return [{ text, font: type === 'bold' ? bold : plain, ink: '#1c1c1c' }];
  });
  bubble(20, widthPx - 140, '#ffffff', blocks);
  for (const row of sent.keys) {
    const width = (widthPx - 140 - 8 * (row.length - 1)) / row.length;
    row.forEach(({ text }, i) => {
      context.fillStyle = '#8fa79a';
      context.beginPath();
      context.roundRect(20 + i * (width + 8), y - 8, width, 56, 14);
      context.fill();
      context.fillStyle = '#ffffff';
      context.font = plain;
      const label = clean(text);
      const shown =
        context.measureText(label).width > width - 16
          ? `${label.slice(0, Math.floor((label.length * (width - 40)) / context.measureText(label).width))}…`
          : label;
      context.fillText(shown, 20 + i * (width + 8) + (width - context.measureText(shown).width) / 2, y + 31);
    });
    y += 64;
  }
  const out = createCanvas(widthPx, Math.min(2400, y + pad));
  out.getContext('2d').drawImage(canvas, 0, 0);
  return out.toBuffer('image/png');
}
