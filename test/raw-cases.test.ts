// Witness: freeze-drying kills no germs (Kansas State, Iowa State extension, read for the reference of this project); the
// simmer and its heat are chosen. Weights are chosen so that the sums can be done by hand.
import { expect, test } from 'vitest';
import { seenBy } from '#chat/answerer.ts';
import { labelFacts } from '#cards/label-facts.ts';
import { tripPaper } from '#cards/paper-facts.ts';
import { heatToBoilKJ, heatToCookKJ } from '#core/fuel.ts';
import { openTestHouse } from './house.ts';

const raw = 'RAW: soak, then cook in a pot';

/** Two pouches of raw mince, 100 g of 200 g dry from 800 g wet: 300 ml each. */
function mince() {
  const house = openTestHouse('2027-04-01 08:00');
  house.say('/eater me');
  house.say('/recipe Mince, 4 servings: 500 g ground beef, raw, 90 % lean; 300 g onions');
  house.say('/batch mince raw trays 400 400 g');
  house.at(20);
  house.say('/weigh B1 100 100 g');
  house.at(3);
  house.say('/weigh B1 100 100 g');
  const sealed = house.say('/seal 2 x 100 g B1');
  return { house, sealed };
}

test('the water answer says what to do with it before anything else', () => {
  const { house } = mince();
  for (const asked of ['/water B1-1', '/water 100 g mince', '/water 100 g B1', 'how much water for mince?']) {
    const answer = house.say(asked, 'Ana', { addressed: true });
    expect(answer.split('\n')[0]).toBe(`${raw} to 74 °C (165 °F) all through. Freeze-drying kills no germs.`);
    expect(answer).toMatch(/soak in 300 ml \(1¼ cups\) of cold water, about 15 min, then cook it at once\./);
    expect(answer).toContain('Its water need not boil before; the gas for the pot counts.');
    expect(answer).not.toMatch(/pour|boiling water|let stand/);
  }
});

test('beside food that only takes boiling water each says its own', () => {
  const { house } = mince();
  house.say('/recipe Stew, 8 servings: 600 g red lentils; 2.4 l water');
  house.say('/batch stew trays 700 700 700 700 g');
  house.at(20);
  house.say('/weigh B2 143 143 143 143');
  house.at(3);
  house.say('/weigh B2 143 143 143 143');
  house.say('/seal 1 x 100 g B2');
  const answer = house.say('/water B1-1 B2-1');
  expect(answer.split('\n')[0]).toContain(raw);
  expect(answer).toContain('B1-1 (100 g Mince): soak in 300 ml');
  expect(answer).toContain('B2-1 (100 g Stew): start with 330 ml of boiling water, up to 390 ml');
  expect(answer).toContain('Stir, close, let stand 15 min');
});

test('sealing, card, stock and label say it', () => {
  const { house, sealed } = mince();
  expect(sealed).toContain('Write on each: code, Mince, 2027-04-02, RAW.');
  expect(sealed).toContain('Water to soak in, before it is cooked: 300 ml');
  const card = house.say('/pouch B1-1');
  expect(card.split('\n')[1]).toContain(raw);
  expect(card).toContain('Loaded raw Thu 1 Apr 2027');
  expect(card).toContain('It need not boil: soak, then cook in a pot.');
  expect(card).not.toContain('let stand');
  expect(house.say('/stock')).toContain(`(${raw}): B1-1 and B1-2`);
  const seen = seenOf(house);
  expect(labelFacts(seen, seen.pouches.ofBatch(1))[0]).toMatchObject({
    cautions: [raw],
    soak: 'Soak 15 min, then cook in a pot',
  });
});

const seenOf = (house: ReturnType<typeof openTestHouse>) =>
  seenBy(house.house, 1, {
    member: { id: 1, name: 'Ana' },
    journal: { lastHere: () => [], standingOn: () => [], undo: () => '', redo: () => '', latest: () => [] },
    status: null,
    sure: false,
    tapped: false,
    nowMs: Date.parse('2027-04-09T12:00:00Z'),
  });

test('plan, pack list, paper and gas say it', async () => {
  const { house } = mince();
  house.say('/trip Heron Lake 12-13 June dinner for all 0 m');
  const plan = await house.ask('/pick keep');
  expect(plan).toContain(`${raw}: B1-1 and B1-2.`);
  expect(await house.ask('/pick')).toContain(`Mince B1-1 (${raw}) for Ana, 2 portions. Water 300 ml.`);
  // 0.6 l from 10 to 100.0 °C: 226 kJ. Two pots: 0.1 kg of food each like water, 37.7 kJ, and 0.3 kW for 10 min, 180 kJ:
  // 662 kJ in all. Through 40 % of 45.6 MJ/kg, a fifth to spare: 44 g, where the water alone would take 15 g.
  expect(plan).toMatch(
    /Gas: about 44 g .*RAW food is soaked, then cooked: 2 pots of it, 10 min at a simmer, in the gas \(chosen\)\./,
  );
  expect(house.say('/pack')).toContain(`Mince B1-1 (${raw}) ☐`);
  const seen = seenOf(house);
  const paper = tripPaper(seen, seen.trips.all()[0]!, 'a4');
  expect(paper.cautions[0]).toContain(raw);
  expect(paper.days[0]!.slots[0]!.rows[0]!.figures).toBe(`100 g dry, water 300 ml (1¼ cups); ${raw}`);
  expect(paper.totals.join()).toContain('2 pots of it');
});

// Worked by hand with 4.19 kJ/kgK (test/published/water-heat.test.ts): 0.1 kg from 10 to 100 °C, and 0.3 kW x 600 s.
test('a pot takes the heat of its food and ten minutes at a simmer', () => {
  expect(heatToCookKJ(100, 10, 100)).toBeCloseTo(0.1 * 4.19 * 90 + 180, 9);
  expect(heatToCookKJ(0, 100, 100)).toBe(180);
  expect(heatToCookKJ(300, 10, 90) - 180).toBeCloseTo(heatToBoilKJ(300, 10, 90), 9);
});
