import { expect, test } from 'vitest';
import { openSeason, refuses } from '../season.ts';

test('until a canister was weighed the range is told as common practice', () => {
  // Published rows h-eff-camp-low and -high: 30 and 65 %, common practice.
  expect(openSeason().say('/fuel')).toContain('30 % to 65 % as the range (common practice, no source)');
});

test('a weighed canister gives the efficiency', () => {
  // 2.5 l from 10 to 99.97 °C with 4.19 kJ/(kg K): 942.5 kJ; 45 g at 45.6 MJ/kg: 2052 kJ; 46 %.
  const house = openSeason();
  expect(house.say('/fuel 230 g 185 g 2.5 l')).toContain(
    "46 % of the gas's heat into the water, learnt from 1 weighing",
  );
});

test('trips reckon with it', async () => {
  const house = openSeason();
  house.say('/fuel 230 g 185 g 2.5 l');
  expect(await house.ask('/pick')).toContain('your stove at 46 %, learnt from 1 weighing');
});

refuses([
  ['/fuel 185 g 230 g 2.5 l', /must be lighter after/],
  ['/fuel 230 g 229 g 2.5 l', /the water took/],
  ['/fuel 230 g', /could not place "230 g"/],
]);
