import type { Message } from '#core/talk.ts';
import type { HouseholdStore } from '#store/households.ts';

const quoted = (name: string) => `"${name.replaceAll('"', '')}"`;

/**
 * A message with the people it means by their names: '@ben' is whoever is called so in public, and 'for them' in answer
 * to somebody's message is that person.
 */
export function peopleMeant(
  { nameBehind }: Pick<HouseholdStore, 'nameBehind'>,
  household: number,
  { text, answersTo }: Pick<Message, 'text' | 'answersTo'>,
): string {
  const named = text.replace(/(?<![\p{L}\p{N}_@])@(\w{3,32})/gu, (typed, alias: string) => {
    const name = nameBehind(household, alias);
    return name === undefined ? typed : quoted(name);
  });
  return answersTo === undefined
    ? named
    : named.replace(/(?<=\bfor )(?:them|him|her)\b/giu, () => quoted(answersTo.name));
}
