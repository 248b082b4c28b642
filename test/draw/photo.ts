import { type Canvas, createCanvas, type ImageData, type SKRSContext2D } from '@napi-rs/canvas';

/** What a hand-held picture does to a printed page. */
export interface Shot {
  readonly turnDeg?: number;
  /** Blur, px. */
  readonly blurPx?: number;
  /** Light at the dark side, of 1 at the bright one. */
  readonly halfLight?: number;
  /** Width of the picture, px. */
  readonly widthPx?: number;
}

/** A rendered page as somebody photographs it: on a table, turned, out of focus, lit from one side; as JPEG. */
export function photographed(page: ImageData, shot: Shot): Buffer {
  const flat = createCanvas(page.width, page.height);
  flat.getContext('2d').putImageData(page, 0, 0);
  const { turnDeg = 0, blurPx = 0, halfLight = 1, widthPx = 1280 } = shot;
  const scale = (0.72 * widthPx) / Math.max(page.width, page.height);
  const canvas = createCanvas(widthPx, widthPx);
  const context = canvas.getContext('2d');
  context.fillStyle = '#7a6a58';
  context.fillRect(0, 0, widthPx, widthPx);
  context.translate(widthPx / 2, widthPx / 2);
  context.rotate((turnDeg * Math.PI) / 180);
  context.scale(scale, scale);
  context.drawImage(flat, -page.width / 2, -page.height / 2);
  context.resetTransform();
  return lit(blurred(canvas, blurPx), halfLight).toBuffer('image/jpeg', 80);
}

function blurred(canvas: Canvas, blurPx: number): Canvas {
  if (blurPx === 0) return canvas;
  const out = createCanvas(canvas.width, canvas.height);
  const context = out.getContext('2d');
  context.filter = `blur(${blurPx}px)`;
  context.drawImage(canvas, 0, 0);
  return out;
}

/** Light falls off from left to right. */
function lit(canvas: Canvas, halfLight: number): Canvas {
  const context: SKRSContext2D = canvas.getContext('2d');
  const image = context.getImageData(0, 0, canvas.width, canvas.height);
  for (let y = 0; y < canvas.height; y += 1)
    for (let x = 0; x < canvas.width; x += 1) {
      const light = 1 - (1 - halfLight) * (x / canvas.width);
      for (const c of [0, 1, 2]) image.data[(y * canvas.width + x) * 4 + c]! *= light;
    }
  context.putImageData(image, 0, 0);
  return canvas;
}
