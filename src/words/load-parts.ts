import { optional, part } from './part.ts';

/** 'same pot', 'the rest of the pot', 'cooked anew': whether a load came from the pot of the one before. */
export const potTold = optional(
  part<'same' | 'anew'>("'same pot' or 'anew'", (reading) => {
    const same = reading.keyword('same', 'rest', 'remaining', 'remainder');
    if (same !== undefined) {
      reading.takeWords('same', 'rest', 'remaining', 'remainder', 'of', 'the', 'pot', 'load');
      return 'same';
    }
    if (reading.keyword('anew') === undefined) return undefined;
    reading.takeWords('cooked', 'pot');
    return 'anew';
  }),
);
