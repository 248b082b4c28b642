/** What a meal is for. 'main' carries lunch and dinner, 'breakfast' carries breakfast; the others go beside a meal. */
export const occasions = ['breakfast', 'main', 'side', 'snack', 'sweet', 'drink'] as const;

export type Occasion = (typeof occasions)[number];

/** What may carry a meal of the day alone: somebody who has eaten it has had that meal. */
export const carriers = {
  breakfast: ['breakfast'],
  lunch: ['main'],
  dinner: ['main'],
} as const satisfies Record<string, readonly Occasion[]>;

/** What is put beside what carries the meal. */
export const besides = {
  breakfast: ['drink'],
  lunch: ['side', 'snack', 'drink'],
  dinner: ['side', 'sweet', 'snack', 'drink'],
} as const satisfies Record<string, readonly Occasion[]>;
