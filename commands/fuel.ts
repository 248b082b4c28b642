import { command } from '#chat/command.ts';
import { boilingPointC } from '#core/boiling.ts';
import { learntEfficiency, LHV, usualEfficiency } from '#core/fuel.ts';
import { Refusal } from '#core/refusal.ts';
import { altitudeM, optional, part, quantities } from '#words/parts.ts';
import { sayCount, sayG, sayNumber } from '#words/say.ts';
import { startWater } from '#words/trip-parts.ts';

/** '230 g 185 g 2.5 l': the canister before and after, and the water boiled in between. */
const boiled = part<{ beforeG: number; afterG: number; waterMl: number }>(
  'the canister before and after and the water boiled, such as 230 g 185 g 2.5 l',
  (reading) => {
    const masses = quantities(reading, 'mass');
    const volume = quantities(reading, 'volume')[0];
    if (masses.length !== 2 || !volume) return undefined;
    reading.settleNumbers([...masses.map((m) => m.index), volume.index]);
    reading.take(...masses.map((m) => m.index), volume.index);
    return { beforeG: masses[0]!.value, afterG: masses[1]!.value, waterMl: volume.value };
  },
);

export default command({
  name: 'fuel',
  alsoCalled: ['canister', 'stove'],
  usage: '/fuel <canister before> <after> <water boiled> [water 8 C] [at 1900 m]',
  summary: 'weigh a gas canister before and after boiling: what your stove really burns',
  examples: ['/fuel 230 g 185 g 2.5 l', '/fuel 230 g 185 g 2.5 l water 8 C at 1900 m', '/fuel'],
  help: [
    'Until a canister was weighed, trips reckon with the range that stoves are said to have (common practice).',
  ],
  records: true,
  mayLeaveOut: true,
  takes: { water: startWater, altitude: optional(altitudeM), boiled: optional(boiled) },
  run: ({ water, altitude, boiled: told }, house) => {
    const lhvMJPerKg = LHV['canister gas'];
    if (told) {
      const { beforeG, afterG, waterMl } = told;
      if (!(afterG < beforeG))
        throw new Refusal(
          'no-fuel-burnt',
          `The canister weighed ${sayG(beforeG)} before and ${sayG(afterG)} after: it must be lighter after.`,
        );
      const weighed = {
        atMs: house.nowMs,
        burntG: beforeG - afterG,
        waterMl,
        startC: water?.startC ?? 10,
        boilC: boilingPointC(altitude ?? house.settings.altitudeM),
        lhvMJPerKg,
      };
      // Refuses what cannot be before it is kept: more heat in the water than was in the gas.
      learntEfficiency([
        { beforeG, afterG, waterMl, startC: weighed.startC, boilC: weighed.boilC, lhvMJPerKg },
      ]);
      house.ratings.weighStove(weighed);
    }
    const weighings = house.ratings.stoves();
    const learnt = learntEfficiency(
      weighings.map(({ burntG, waterMl, startC, boilC, lhvMJPerKg: lhv }) => ({
        beforeG: burntG,
        afterG: 0,
        waterMl,
        startC,
        boilC,
        lhvMJPerKg: lhv,
      })),
    );
    return { told, learnt };
  },
  say: ({ told, learnt }) => {
    const percent = (fraction: number) => `${Math.round(fraction * 100)} %`;
    const known =
      learnt.weighings === 0
        ? `No canister was weighed yet: trips reckon with ${percent(usualEfficiency.planned)}, and with ${percent(usualEfficiency.low)} to ${percent(usualEfficiency.high)} as the range (common practice, no source).`
        : `Your stove puts ${percent(learnt.fraction)} of the gas's heat into the water, learnt from ${sayCount(learnt.weighings, 'weighing')}. Trips reckon with it now.`;
    if (!told) return { group: known };
    const burnt = told.beforeG - told.afterG;
    return {
      group: `${sayG(burnt)} of gas boiled ${sayNumber(told.waterMl / 1000)} l.\n${known}`,
      did: `weighed a canister: ${sayG(burnt)} for ${sayNumber(told.waterMl / 1000)} l`,
    };
  },
});
