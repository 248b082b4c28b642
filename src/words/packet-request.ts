import { Refusal } from '#core/refusal.ts';
import { Ambiguous } from './ambiguous.ts';
import { fold } from './near.ts';
import { mayBePacket, type PacketLarder, type PacketTold, readPacket } from './packet-parts.ts';
import { optional, part } from './part.ts';

/** A request about a packet. */
export type PacketAsked =
  /** What somebody read; for one recipe alone, or from now on, perhaps in a recorded recipe too. */
  | {
      readonly is: 'read';
      readonly told: PacketTold;
      readonly meal: string | null;
      readonly alone: boolean;
      readonly typed: string;
    }
  /** What was read is put into recorded recipes. */
  | { readonly is: 'applied'; readonly food: string; readonly meal: string | null }
  | { readonly is: 'later'; readonly food: string }
  /** Every packet in a recipe of which it is open: none holds it. */
  | { readonly is: 'none'; readonly meal: string; readonly what: string };

/**
 * Takes a request about a packet; undefined where the message teaches something else.
 * @throws Refusal where it speaks of a packet and is not understood: it is never read as anything else
 */
export const packetAsked = (larder: PacketLarder) =>
  optional(
    part<PacketAsked>(
      'what a packet says, such as vegetable stock contains celery, no egg',
      (reading, names) => {
        const text = reading.text.trim().replace(/\s+sure$/iu, '');
        const take = (asked: PacketAsked): PacketAsked => {
          reading.take(...reading.left());
          return asked;
        };
        const later = /^(.+?)[\s,:]+later$/isu.exec(text);
        if (later) return take({ is: 'later', food: later[1]! });
        const none = /^(?:all\s+)?packets\s+in\s+(.+?)\s+contain\s+no\s+(.+)$/isu.exec(text);
        const allOf = none && names.meals.find((name) => fold(name) === fold(none[1]!));
        if (none && allOf !== undefined && allOf !== null)
          return take({ is: 'none', meal: allOf, what: none[2]! });
        const put = /^(.+?)\s+packet\s+in\s+(.+)$/isu.exec(text);
        if (put) {
          if (/^all(?: the)? recipes$/i.test(put[2]!))
            return take({ is: 'applied', food: put[1]!, meal: null });
          const meal = names.meals.find((name) => fold(name) === fold(put[2]!));
          if (meal !== undefined) return take({ is: 'applied', food: put[1]!, meal });
        }
        if (!mayBePacket(text) || /\bmeans?\b|^by\b|\bforget\b/iu.test(text)) return undefined;
        const { statement, meal, alone } = scoped(text, names.meals);
        const told = inScope(text, statement, () => readPacket(statement, larder));
        if (told === undefined)
          throw new Refusal(
            'not-understood',
            'I read something about a packet, but not of which food: begin with it, as in vegetable stock contains no egg. Nothing was recorded.',
          );
        return take({ is: 'read', told, meal, alone, typed: text });
      },
    ),
  );

/** '…, also in Barley soup' and '… in Barley soup': where else, or where alone, it holds. */
function scoped(text: string, meals: readonly string[]) {
  for (const at of [...text.matchAll(/[\s,]+(also\s+)?in\s+/giu)].toReversed()) {
    const tail = text.slice(at.index + at[0].length).replace(/\s+only$/iu, '');
    const meal = meals.find((name) => fold(name) === fold(tail));
    if (meal !== undefined) return { statement: text.slice(0, at.index), meal, alone: at[1] === undefined };
  }
  return { statement: text, meal: null, alone: false };
}

/** A question about the statement keeps what stands behind it. */
function inScope<T>(text: string, statement: string, read: () => T): T {
  try {
    return read();
  } catch (error) {
    if (!(error instanceof Ambiguous)) throw error;
    const rest = text.slice(statement.length);
    throw new Ambiguous(
      error.question,
      error.options.map(({ label, request }) => ({ label, request: request + rest })),
    );
  }
}
