import { isAccounted } from './aside.ts';
import { about, ask, avoided, isAsking } from './ask.ts';
import type { Reader } from './hold.ts';
import { type Look, quoted } from './look.ts';
import { weekdayNamed } from '#words/weekday.ts';

const months = /^(?:jan|feb|mar|apr|may|jun|jul|aug|sep|oct|nov|dec)/;

/**
 * Words written as a name that is nobody's and nothing's here: 'Timo', where no eater, meal, place or food is called so.
 * Only where capitals tell names: not at the beginning of a sentence, not in a message that is all capitals.
 */
export function strangersIn(look: Look): string[] {
  const { all, meals, people, trips, mood, text } = look.said;
  if (!/\p{Ll}/u.test(text)) return [];
  const spoken = new Set([...meals, ...people, ...trips].flatMap(({ at }) => at));
  return all.flatMap((token, i) => {
    const before = all[i - 1];
    const opens =
      i === mood.start || before === undefined || (before.is === 'mark' && /^[.!?;:]$/.test(before.plain));
    const isName =
      token.is === 'word' &&
      !spoken.has(i) &&
      !opens &&
      /^\p{Lu}\p{Ll}+$/u.test(token.typed.replace(/['’]s$/u, '')) &&
      !isAccounted(token.plain) &&
      !months.test(token.plain) &&
      weekdayNamed(token.plain) < 0;
    return isName ? [token.typed.replace(/['’]s$/u, '')] : [];
  });
}

/** 'May Timo eat the chili?', 'what is Lena allergic to?': nobody is known by that name, so nothing can be said. */
export const stranger: Reader = (look) => {
  if (!isAsking(look) || look.said.codes.some(() => look.has('pack'))) return undefined;
  const [name] = strangersIn(look);
  const isOfFood =
    look.says(
      / (?:may|can|can t|cannot|could|allowed|allerg\w*|safe|suits?|suitable|eat|eats|ok|okay|diet|vegan|vegetarian|avoids?|intoleran\w*) /,
    ) && !look.says(/ (?:water|ml|dry|seal|cook|come|comes|coming|join|joins|go|goes|going|record\w*) /);
  if (name === undefined || !isOfFood) return undefined;
  const what =
    about(look) === ''
      ? avoided(look) === undefined && !look.has('eat', 'have', 'allergic', 'allergy', 'avoid', 'diet')
      : false;
  return what ? undefined : ask('stranger', quoted(name), 6.5);
};
