// oxlint-disable-next-line import/no-named-as-default -- its types know the default alone
import PDFDocument from 'pdfkit';
import { type Paper, papers } from '#core/label-grid.ts';
import { colours, pointMm } from './look.ts';
import { features, type Line } from './typeset.ts';

const pt = (mm: number) => mm / pointMm;

/** A PDF in the making, measured in millimetres from the top left corner. */
export class Pdf {
  private readonly doc: PDFKit.PDFDocument;
  private readonly chunks: Buffer[] = [];
  private readonly registered = new Set<string>();
  private readonly finished: Promise<Buffer>;
  readonly size: { readonly widthMm: number; readonly heightMm: number };
  pages = 0;

  constructor(title: string, paper: Paper | { readonly widthMm: number; readonly heightMm: number }) {
    this.size = typeof paper === 'string' ? papers[paper] : paper;
    this.doc = new PDFDocument({
      size: [pt(this.size.widthMm), pt(this.size.heightMm)],
      margin: 0,
      autoFirstPage: false,
      info: { Title: title, CreationDate: new Date(0), ModDate: new Date(0) },
      lang: 'en',
    });
    this.finished = new Promise((resolve) => {
      this.doc.on('data', (chunk: Buffer) => this.chunks.push(chunk));
      this.doc.on('end', () => resolve(Buffer.concat(this.chunks)));
    });
  }

  page(): void {
    this.pages += 1;
    this.doc.addPage();
  }

  /** @param baselineMm where the letters stand */
  line(
    { pieces }: Line,
    xMm: number,
    baselineMm: number,
    sizePt: number,
    colour: string = colours.ink,
  ): void {
    for (const { face, text, xPt } of pieces) {
      if (!this.registered.has(face.key)) {
        this.doc.registerFont(face.key, face.data);
        this.registered.add(face.key);
      }
      this.doc
        .font(face.key, sizePt)
        .fillColor(colour)
        .text(text, pt(xMm) + xPt, pt(baselineMm), {
          lineBreak: false,
          baseline: 'alphabetic',
          features: features as PDFKit.Mixins.OpenTypeFeatures[],
        });
    }
  }

  box(xMm: number, yMm: number, widthMm: number, heightMm: number, colour: string = colours.ink): void {
    this.doc.rect(pt(xMm), pt(yMm), pt(widthMm), pt(heightMm)).fill(colour);
  }

  frame(xMm: number, yMm: number, widthMm: number, heightMm: number, lineMm = 0.25): void {
    this.doc.lineWidth(pt(lineMm)).rect(pt(xMm), pt(yMm), pt(widthMm), pt(heightMm)).stroke(colours.ink);
  }

  stroke(fromX: number, fromY: number, toX: number, toY: number, lineMm: number, colour: string): void {
    this.doc.lineWidth(pt(lineMm)).moveTo(pt(fromX), pt(fromY)).lineTo(pt(toX), pt(toY)).stroke(colour);
  }

  /** Dark modules as one filled path, rows joined, so that no hairline shows between them. */
  modules(rows: readonly (readonly boolean[])[], xMm: number, yMm: number, moduleMm: number): void {
    rows.forEach((row, r) => {
      for (let c = 0; c < row.length; c++) {
        if (!row[c]) continue;
        let end = c;
        while (row[end]) end += 1;
        this.doc.rect(pt(xMm + c * moduleMm), pt(yMm + r * moduleMm), pt((end - c) * moduleMm), pt(moduleMm));
        c = end;
      }
    });
    this.doc.fill(colours.ink);
  }

  end(): Promise<Buffer> {
    this.doc.end();
    return this.finished;
  }
}
