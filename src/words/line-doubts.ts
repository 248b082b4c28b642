/** What somebody says of how a line was read: that it is wrong, or that it is no food at all. */
export type LineDoubt =
  | { readonly is: 'misread'; readonly position: number | null }
  | { readonly is: 'nofood'; readonly position: number };

const line = '(?:the\\s+|a\\s+|one\\s+)?line(?:\\s+(\\d{1,2}))?';
const wrong =
  '(?:is|was)\\s+(?:wrong|misread|read\\s+wrong(?:ly)?|not\\s+right|not\\s+(?:what\\s+I\\s+meant|that)|another\\s+food|something\\s+else)';
const noFood =
  "(?:is|was)\\s*(?:no|not(?:\\s+an?|\\s+any)?|n[o’']t\\s+(?:an?\\s+)?)\\s*(?:food|ingredient)(?:\\s+at\\s+all)?(?:\\s+sure)?";
const behind = new RegExp(`^(.+?)[\\s,:]+${line}\\s+(?:(${wrong})|${noFood})$`, 'isu');
const first = new RegExp(`^${line}\\s+(?:of|in)\\s+(?:the\\s+)?(.+?)\\s+(?:(${wrong})|${noFood})$`, 'isu');

/** 'Soup line 3 is wrong', 'line 3 of the soup is no food'. */
export function lineDoubt(text: string): (LineDoubt & { readonly name: string }) | undefined {
  const one = text.replace(/\s+/gu, ' ').trim();
  if (!/\bline\b/iu.test(one)) return undefined;
  const [name, position, isWrong] = behind.exec(one)?.slice(1) ?? reordered(first.exec(one));
  if (name === undefined) return undefined;
  if (isWrong !== undefined)
    return { is: 'misread', name, position: position === undefined ? null : Number(position) };
  return position === undefined ? undefined : { is: 'nofood', name, position: Number(position) };
}

const reordered = (found: RegExpExecArray | null): (string | undefined)[] =>
  found === null ? [] : [found[2], found[1], found[3]];
