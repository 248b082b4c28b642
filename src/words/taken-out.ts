/** A number as it is typed; a comma is a decimal point. */
export const figure = '(\\d+(?:[.,]\\d+)?)';
export const number = (text: string | undefined): number => Number((text ?? '').replace(',', '.'));
/** Behind a figure that is of one. */
export const each =
  '(?:\\s*(?:each|apiece|a piece|per (?:piece|bar|pack|packet|portion|unit|one|bag|tin|sachet)))';

/** Takes the first match out of a text. */
export class Rest {
  text: string;

  constructor(text: string) {
    this.text = text;
  }

  take(like: RegExp): RegExpExecArray | undefined {
    const found = like.exec(this.text);
    if (!found) return undefined;
    this.text = `${this.text.slice(0, found.index)} , ${this.text.slice(found.index + found[0].length)}`;
    return found;
  }
}
