/** What happened to a batch in the dryer, beside its weighings. */
export interface DryerEvent {
  readonly atMs: number;
  readonly what: 'stopped' | 'resumed' | 'moved';
  /** Where it was moved to, in people's words; null for the rest. */
  readonly note: string | null;
}

/** A time in which nothing dried; `toMs` is null while it stands still. */
export interface Stop {
  readonly fromMs: number;
  readonly toMs: number | null;
}

/** @param events in order of time, stops and goings-on in turn */
export function stopsOf(events: readonly DryerEvent[]): Stop[] {
  const stops: Stop[] = [];
  for (const { what, atMs } of events) {
    const open = stops.at(-1);
    const isOpen = open !== undefined && open.toMs === null;
    if (what === 'stopped' && !isOpen) stops.push({ fromMs: atMs, toMs: null });
    if (what === 'resumed' && isOpen) stops[stops.length - 1] = { ...open, toMs: atMs };
  }
  return stops;
}

/**
 * A moment on the dryer's own clock, which stands still while nothing dries: weighings that agree over a stop prove
 * nothing, and a forecast counts no hour twice.
 * @returns ms: the moment less all the time before it in which nothing ran
 */
export function runningMs(atMs: number, stops: readonly Stop[]): number {
  return stops.reduce(
    (ms, { fromMs, toMs }) => ms - Math.max(0, Math.min(atMs, toMs ?? atMs) - fromMs),
    atMs,
  );
}

/**
 * The moment at which the dryer's own clock will show a time, by all the stops that are known.
 * @param ranMs on the dryer's own clock, as `runningMs` gives it
 * @returns ms; null while the dryer stands still
 */
export function momentOf(ranMs: number, stops: readonly Stop[]): number | null {
  let atMs = ranMs;
  for (const { fromMs, toMs } of stops) {
    if (atMs < fromMs) break;
    if (toMs === null) return null;
    atMs += toMs - fromMs;
  }
  return atMs;
}

/** Trays that go in within so long of one another dry in one run, h. Chosen: one meal is portioned after the other. */
const oneRunHours = 2;

/** What tells whether two batches lie in the dryer together. */
export interface Loaded {
  readonly no: number;
  readonly loadedAtMs: number;
  readonly trays: readonly unknown[];
  readonly events: readonly DryerEvent[];
  readonly mix: unknown;
}

/**
 * The batches that dry in one run with another: loaded at about the same time, and not moved to another dryer.
 * @param mostTrays of the dryer; more cannot lie in it together, so then none is beside it; null where it is not known
 */
export function besideInRun<L extends Loaded>(
  batch: Loaded,
  others: readonly L[],
  mostTrays: number | null,
): L[] {
  const stays = ({ events }: Loaded) => events.every(({ what }) => what !== 'moved');
  if (batch.mix !== null || !stays(batch)) return [];
  const beside = loadedWith(batch, others).filter((other) => other.mix === null && stays(other));
  const trays = [batch, ...beside].reduce((sum, load) => sum + load.trays.length, 0);
  return mostTrays !== null && trays > mostTrays ? [] : beside;
}

/** What was loaded at about the same time, wherever it dries. */
export const loadedWith = <L extends Loaded>(batch: Loaded, others: readonly L[]): L[] =>
  others.filter(
    (other) =>
      other.no !== batch.no && Math.abs(other.loadedAtMs - batch.loadedAtMs) <= oneRunHours * 3_600_000,
  );
