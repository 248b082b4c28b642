declare module 'linebreak' {
  export default class LineBreaker {
    constructor(text: string);
    nextBreak(): { readonly position: number; readonly required: boolean } | null;
  }
}

declare module 'subset-font' {
  export default function subsetFont(
    font: Buffer,
    text: string,
    options: {
      readonly targetFormat: 'truetype' | 'woff' | 'woff2' | 'sfnt';
      readonly variationAxes?: Readonly<Record<string, number>>;
    },
  ): Promise<Buffer>;
}
