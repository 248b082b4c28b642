import type { Workers } from './command.ts';

/** The long sums as one household asks for them, so that households take turns. */
export function workersFor({ picks, drawing }: Workers, household: number): Workers {
  return {
    drawing,
    picks: {
      solvePicks: (problem, options) => picks.solvePicks(problem, { ...options, household }),
      whyThisPouch: (problem, plan, pouch, options) =>
        picks.whyThisPouch(problem, plan, pouch, { ...options, household }),
    },
  };
}
