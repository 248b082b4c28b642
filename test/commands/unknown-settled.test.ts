// Witness: what each tap says by its plain words, by hand. From the recipe, the label, the plan, the stock and the card.
import { expect, test } from 'vitest';
import { openTestHouse, type TestHouse } from '../house.ts';

const pasted =
  '/recipe Risotto\nServes 4\n400 g risotto rice\n1 l chicken stock\n150 ml white wine\n60 g parmesan\n1 onion\nMethod\nFry the onion, add the rice.';

/** Three sealed pouches of a pasted recipe with stock, wine and parmesan, and a child with an egg allergy. */
function openRisotto(): TestHouse {
  const house = openTestHouse();
  house.say('/eater Noa child 7 egg allergy');
  house.say(pasted);
  house.say('/batch risotto trays 1000 g pot 2100 g');
  house.at(24);
  house.say('/weigh B1 270');
  house.at(3);
  house.say('/weigh B1 270');
  house.say('/seal 3 x 90 g B1');
  return house;
}

/** Presses the button whose label begins so, and reads what comes of it. */
function tap(house: TestHouse, label: string): string {
  const at = house.last.flatMap(({ buttons }) => buttons).findIndex((one) => one.label.startsWith(label));
  expect(
    at,
    `${label} among ${house.last.flatMap(({ buttons }) => buttons.map((one) => one.label)).join(', ')}`,
  ).toBeGreaterThanOrEqual(0);
  return house.press(at + 1);
}

const ways: readonly [string, (house: TestHouse) => string | Promise<string>][] = [
  ['the recipe', (house) => house.say('/recipe risotto')],
  ['the label', (house) => house.ask('/label B1')],
  ['the plan', (house) => {
    house.say('/trip Heron Lake 2026-06-12 dinner for Noa');
    return house.ask('/pick');
  }],
  ['the stock', (house) => house.say('/stock')],
  ['the stock for her', (house) => house.say('/stock for Noa')],
  ['the card', (house) => house.say('/pouch B1-1')],
]; // prettier-ignore

test.each(ways)('from %s: clear in three taps, one a packet', async (_, ask) => {
  const house = openRisotto();
  await ask(house);
  expect(tap(house, 'No egg in the chicken stock')).toContain('Noa: unknown, so not for you yet: egg');
  expect(tap(house, 'No egg in the white wine')).toContain(
    'Noa: unknown, so not for you yet: egg (parmesan)',
  );
  expect(tap(house, 'No egg in the parmesan')).toContain('Noa: clear');
  expect(house.say('/pouch B1-1')).toContain('Noa: clear');
  expect(house.faults).toEqual([]);
});

test.each(ways)('from %s: clear in one tap where all packets were read', async (_, ask) => {
  const house = openRisotto();
  await ask(house);
  const answer = tap(house, 'I read all 3 packets: no egg');
  expect(answer).toContain('Noted: no egg in chicken stock, white wine and parmesan, read by Ana.');
  expect(answer).toContain('Noa: clear');
  expect(house.say('/pouch B1-1')).toContain('Noa: clear');
  expect(house.say('/our')).toContain('parmesan: no egg (read by Ana');
  house.say('/undo');
  expect(house.say('/pouch B1-1')).toContain('Noa: unknown');
  expect(house.say('/our')).not.toContain('parmesan');
});

test.each(ways)('from %s: blocked in one tap', async (_, ask) => {
  const house = openRisotto();
  await ask(house);
  expect(tap(house, 'There is egg in the chicken stock')).toContain('Noa: not for you: egg (chicken stock)');
  expect(house.say('/pouch B1-1')).toContain('Noa: not for you: egg');
});

test('pouches of an older wording are settled with it', async () => {
  const house = openRisotto();
  house.say(pasted.replace('1 onion', '2 onions'));
  await house.ask('/label B1');
  expect(tap(house, 'I read all 3 packets')).toContain('Noa: clear');
  expect(house.say('/pouch B1-1')).toContain('Noa: clear');
  expect(house.say('/recipe risotto')).toContain('Noa: clear');
});

test('what is typed asks for the tap; a child has nothing to say', () => {
  const house = openRisotto();
  const before = house.dump();
  expect(house.say('/our packets in Risotto contain no egg')).toContain('Nothing is changed yet');
  expect(house.dump()).toBe(before);
  house.say('/eater me child 9', 'Ben');
  house.say('/our packets in Risotto contain no egg', 'Ben');
  expect(house.press(1, 'Ben')).toContain('A grown-up has to read that packet');
  expect(house.say('/pouch B1-1')).toContain('Noa: unknown');
});

test('a packet that is not open is not asked about', () => {
  const house = openRisotto();
  expect(house.say('/our packets in Risotto contain no sesame')).toContain(
    'Of no packet in Risotto it is open',
  );
});
