/** A request's name as sentences bend it: 'seal', 'seals', 'sealed', 'sealing'; 'use', 'used', 'using'. */
export function formsOf(name: string): string[] {
  const bare = name.replace(/e$/, '');
  return [name, `${name}s`, `${bare}ed`, `${bare}ing`];
}
