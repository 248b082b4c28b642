import { localDays } from '#words/local-days.ts';
import type { House } from './house.ts';

/** Today where the household lives, as an ISO day. */
export const todayOf = ({ settings, nowMs }: Pick<House, 'settings' | 'nowMs'>): string =>
  localDays(settings.zone).dayOf(nowMs);
