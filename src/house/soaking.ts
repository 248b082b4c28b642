import { todayOf } from './today.ts';
import { boilingPointC } from '#core/boiling.ts';
import { byEvening, meanOf } from '#core/evenings.ts';
import type { Batch } from '#core/records.ts';
import { hasPieces, learntExtraMin, pieceMinutes, soakMinutes } from '#core/soak.ts';
import { nameKey } from './figures.ts';
import type { House } from './house.ts';
import { tripsOpen } from './trips.ts';

/** How much longer than the base a meal stands, and why. */
export interface Soak {
  readonly extraMin: number;
  readonly because: 'usual' | 'pieces' | 'rated';
}

/** By what was said of the meal; until then by its pieces. */
export function soakOf(house: Pick<House, 'ratings'>, { recipe }: Pick<Batch, 'recipe'>): Soak {
  const rated = house.ratings
    .ofMeal(nameKey(recipe.name))
    .flatMap(({ atMs, soakedMin, soakMoreMin }) =>
      soakedMin === null || soakMoreMin === null
        ? []
        : [{ atMs, extra: soakedMin + soakMoreMin - soakMinutes(100) }],
    );
  if (rated.length > 0) {
    const evenings = byEvening(rated).map((one) => meanOf(one.map(({ extra }) => extra)));
    return { extraMin: Math.round(learntExtraMin(evenings)), because: 'rated' };
  }
  return hasPieces(recipe.lines.flatMap(({ typed, camp }) => (camp === null ? [typed] : [])))
    ? { extraMin: pieceMinutes, because: 'pieces' }
    : { extraMin: 0, because: 'usual' };
}

/** Where water is boiled now: on a trip that is under way, else at home. */
export function whereNow(house: House): { readonly altitudeM: number; readonly place: string | null } {
  const today = todayOf(house);
  const trip = tripsOpen(house).find(
    ({ startsOn, endsOn, altitudeM }) => altitudeM !== null && startsOn <= today && today <= endsOn,
  );
  return trip
    ? { altitudeM: trip.altitudeM!, place: trip.place }
    : { altitudeM: house.settings.altitudeM, place: null };
}

/** Minutes that a meal stands at an altitude. */
export const minutesAt = (metres: number, { extraMin }: Soak): number =>
  soakMinutes(boilingPointC(metres), extraMin);
