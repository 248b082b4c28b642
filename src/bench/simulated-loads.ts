/**
 * Simulated loads of a freeze dryer. The kinetics are assumed, not measured: ice leaves so that the root of what is left
 * falls as a straight line (Pilsworth, Natick AD0769592, 1972), bound water behind it by exponential desorption; trays
 * differ.
 */
export interface Kinetics {
  readonly name: string;
  /** Time constant of desorption, h, from and to. */
  readonly desorptionHours: readonly [number, number];
  /** The pump stops at a share of the drying time, drawn from 0 to 1; from then on nothing leaves. */
  readonly stops?: boolean;
}

export const usual: Kinetics = { name: 'usual desorption (2 to 6 h)', desorptionHours: [2, 6] };
export const slow: Kinetics = { name: 'slow desorption (8 to 20 h)', desorptionHours: [8, 20] };
export const stopped: Kinetics = { name: 'the pump stops', desorptionHours: [2, 6], stops: true };

interface SimulatedTray {
  readonly solidsG: number;
  readonly waterG: (hours: number) => number;
}

export interface SimulatedLoad {
  readonly trays: readonly SimulatedTray[];
  readonly wetG: number;
  /** What the recipe says the solids are, g: up to 5 % off. */
  readonly toldSolidsG: number;
  readonly iceHours: number;
}

/** Moisture of the air in the dryer, which nothing goes below, g per g of solids. */
const restFraction = 0.012;

export function drawLoad(draw: () => number, kinetics: Kinetics): SimulatedLoad {
  const between = (low: number, high: number) => low + (high - low) * draw();
  const iceHours = between(14, 34);
  const solidsFraction = between(0.15, 0.35);
  const boundFraction = between(0.1, 0.2);
  const tau = between(...kinetics.desorptionHours);
  const stopHours = kinetics.stops ? between(0, 1) * iceHours * 1.3 : Infinity;
  const trays = Array.from({ length: 4 }, (): SimulatedTray => {
    const wetG = between(600, 950);
    const solidsG = wetG * solidsFraction;
    const ownHours = iceHours * between(0.85, 1.15);
    const iceG = wetG - solidsG * (1 + boundFraction);
    const dries = ownHours * 0.7;
    return {
      solidsG,
      waterG: (hours) => {
        const t = Math.min(hours, stopHours);
        const ice = t >= ownHours ? 0 : iceG * (1 - t / ownHours) ** 2;
        const bound = boundFraction * Math.exp(-Math.max(0, t - dries) / tau);
        return ice + solidsG * Math.max(restFraction, bound);
      },
    };
  });
  const solidsG = trays.reduce((sum, tray) => sum + tray.solidsG, 0);
  const wetG = trays.reduce((sum, tray) => sum + tray.solidsG + tray.waterG(0), 0);
  return { trays, wetG, toldSolidsG: solidsG * between(0.95, 1.05), iceHours };
}

/** Water on all trays, g. */
export const waterOf = ({ trays }: SimulatedLoad, hours: number): number =>
  trays.reduce((sum, tray) => sum + tray.waterG(hours), 0);

/** Solids on all trays, g. */
export const solidsOf = ({ trays }: SimulatedLoad): number =>
  trays.reduce((sum, tray) => sum + tray.solidsG, 0);
