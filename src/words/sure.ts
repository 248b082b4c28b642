import { optional, part } from './part.ts';

/** 'sure', as the button that confirms a request puts it. */
export const sure = optional(
  part<true>('sure', (reading) => {
    const isSure = reading.keyword('sure') !== undefined;
    reading.takeWords('sure');
    return isSure || undefined;
  }),
);
