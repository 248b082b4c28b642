import type { Names } from '#words/parts.ts';
import { takeApart, type Said } from './pieces.ts';
import { sayCode } from '#words/say.ts';

/** A message with what it only points to put in, and how that was read. */
export interface Continued {
  readonly text: string;
  readonly remark: string | null;
}

/** Words that point to what was named before; longer ones first. */
const pointers = /\b(?:that one|this one|the same one|the other one|those ones|it|them|those|that)\b/iu;
/** A message that only puts something else in the place of what was asked before. */
const goesOn = /^(?:no[,.!]?\s+)?(?:and|i meant|what about|how about|or|then)\s+(?:for\s+)?(.+?)[\s?？]*$/iu;

/** A longer message names what it is about. Chosen. */
const longestPointing = 200;

/** What a message was about: pouches, else a batch, else a meal; as typed behind a request. */
function thingOf({ codes, batches, meals }: Said): string | undefined {
  if (codes.length > 0) return codes.map(({ code }) => sayCode(code)).join(' ');
  const [batch] = batches;
  if (batch) return `B${batch.batch}`;
  const [meal] = meals;
  return meal && meal.names.length === 1 ? `"${meal.names[0]}"` : undefined;
}

/**
 * What a message points to is what was named last: 'it' and 'that one' become a code or a meal, 'and for Ben?' asks
 * the last question again for Ben.
 * @param text as typed
 * @param names the household's own, with what was said in this chat lately, the newest first
 */
export function continued(text: string, names: Names): Continued {
  const unchanged = { text, remark: null };
  const [before] = names.earlier;
  if (before === undefined || text.length > longestPointing) return unchanged;
  const said = takeApart(text, names);
  const more = goesOn.exec(text.trim());
  const asked = more && takeApart(before, names);
  if (more && asked) {
    const replaced = inPlace(before, asked, said, more[1]!);
    if (replaced !== undefined) return { text: replaced, remark: `read as "${replaced}"` };
  }
  if (thingOf(said) !== undefined) return unchanged;
  const pointer = pointers.exec(text);
  if (!pointer) return unchanged;
  for (const earlier of names.earlier) {
    const thing = thingOf(takeApart(earlier, names));
    if (thing === undefined) continue;
    const whole = text.slice(0, pointer.index) + thing + text.slice(pointer.index + pointer[0].length);
    return { text: whole, remark: `"${pointer[0]}" is ${thing.replaceAll('"', '')}` };
  }
  return unchanged;
}

/** The earlier message with its person, pouch or meal exchanged for the one now named. */
function inPlace(before: string, asked: Said, now: Said, typed: string): string | undefined {
  const put = (at: readonly number[], instead: string) => {
    const [first, last] = [asked.all[at[0]!]!, asked.all[at.at(-1)!]!];
    return asked.text.slice(0, first.from) + instead + asked.text.slice(last.to);
  };
  const person = now.people[0];
  const oldPerson = asked.people[0];
  if (person && oldPerson) return put(oldPerson.at, person.names[0]);
  if (person && !oldPerson && now.meals.length === 0)
    return `${before.replace(/[\s?？]+$/u, '')} for ${person.names[0]}?`;
  const thing = thingOf(now);
  const [code] = asked.codes;
  const [batch] = asked.batches;
  const [meal] = asked.meals;
  const old = code ? [code.at] : batch ? [batch.at] : meal?.at;
  return thing !== undefined && old !== undefined && typed.length < 60 ? put(old, thing) : undefined;
}
