import { expect, test } from 'vitest';
import { openSeason, refuses } from '../season.ts';

test('an eater is shown back as understood, with what in stock suits them', () => {
  const answer = openSeason().say('/eater Pip child 7 no peanuts, no milk portion 0.6 sodium 1500');
  expect(answer).toContain('Pip (child, 7 years): never peanuts and milk; portion 0.6.');
  expect(answer).toContain('Sodium 1500 mg a day (their own limit)');
  expect(answer).toContain('Blocked: Lentil pot (milk');
  expect(answer).toContain('Unknown, so not served: Barley soup (milk (vegetable stock)).');
});

test.each([
  // NASEM 2019, chronic disease risk reduction intakes (published rows i-cdrr-*).
  ['/eater Pip age 2', 'Sodium 1200 mg'],
  ['/eater Pip age 8', 'Sodium 1500 mg'],
  ['/eater Pip age 13', 'Sodium 1800 mg'],
  ['/eater Pip age 14', 'Sodium 2300 mg'],
  // Dietary Guidelines, estimated calorie needs (published rows i-kcal-*).
  ['/eater Pip boy age 8 active', 'energy 2000 kcal'],
  ['/eater Pip girl age 8 sedentary', 'energy 1400 kcal'],
  ['/eater Pip male age 45 sedentary', 'energy 2200 kcal'],
  ['/eater Pip female age 40 moderately active', 'energy 2000 kcal'],
])('%s: %s', (typed, says) => {
  expect(openSeason().say(typed)).toContain(says);
});

test.each([
  ['/eater Pip vegan', 'Pip (adult): vegan'],
  ['/eater Pip gluten-free, no pork and no shellfish', 'gluten-free; never pork and shellfish'],
  ['/eater Pip allergic to eggs and sesame', 'never eggs and sesame'],
  ['/eater Pip no turnips', 'never turnips (a plain food, found by name)'],
  ['/eater Pip dislikes olives and leeks', 'dislikes olives'],
  ["/eater Pip doesn't like carrots", 'dislikes carrots'],
  ['/eater Pip 2200 kcal', 'energy 2200 kcal a day (their own limit)'],
])('%s', (typed, says) => {
  expect(openSeason().say(typed)).toContain(says);
});

test('a plain food is kept away by name, and what the small print may hide is unknown', () => {
  const answer = openSeason().say('/eater Pip no carrots');
  expect(answer).toContain('Blocked: ');
  expect(answer).toMatch(/Blocked: .*\(carrots\)/);
});

test('what must never be served is lifted by a tap of a grown-up, by nothing typed', () => {
  for (const typed of [
    '/eater Noa may eat milk again',
    '/eater Noa may eat milk again sure',
    '/eater Noa can have milk',
    '/eater Noa is no longer allergic to milk',
    '/eater Noa outgrew milk',
  ]) {
    const house = openSeason();
    const before = house.dump();
    expect(house.say(typed), typed).toMatch(/must never be served to Noa. Nothing is changed yet/);
    expect(house.dump(), typed).toBe(before);
    expect(house.press(1), typed).toContain('never peanuts; portion 0.6');
  }
});

test('whoever has no recorded age counts as grown-up, and it is said', () => {
  expect(openSeason().say('/eater Noa may eat milk again')).toContain(
    'No age is recorded for Ana, who counts as a grown-up.',
  );
});

test.each([
  '/eater Noa may eat peanuts?',
  '/eater can Noa have milk',
  '/eater may Noa eat peanuts?',
  '/eater is Noa vegan?',
  '/eater who is vegetarian',
  '/eater Noa no fish?',
])('a question records nothing: %s', (typed) => {
  const house = openSeason();
  const before = house.dump();
  expect(house.say(typed)).toContain('Noa (child, 7 years): never peanuts and milk');
  expect(house.dump()).toBe(before);
  // What its buttons ask is what a packet says, nothing of the eater.
  for (const { request } of house.last.at(-1)!.reply.buttons ?? []) expect(request).toMatch(/^\/our /);
});

test('a child cannot lift anything, nor grow up by a message', () => {
  const house = openSeason();
  house.say('/eater me child 9 no peanuts', 'Kit');
  const before = house.dump();
  expect(house.say('/eater me may eat peanuts', 'Kit')).toContain('Only a grown-up of the household');
  expect(house.say('/eater me adult', 'Kit')).toContain('a grown-up has to change that');
  expect(house.say('/eater me age 30', 'Kit')).toContain('a grown-up has to change that');
  expect(house.dump()).toBe(before);
});

test('a food that stands for more is said and narrowed by a tap', () => {
  const house = openSeason();
  expect(house.say('/eater Pip no butter')).toContain('never butter (so all milk)');
  expect(house.say('/eater Pip')).toContain('Blocked: Lentil pot (milk');
  house.say('/eater Pip no butter');
  expect(house.press(1)).toContain('never butter (a plain food, found by name)');
  expect(house.say('/eater Pip')).toContain('Clear in stock: Lentil pot');
});

test('what is not understood is asked with what may be meant', () => {
  const house = openSeason();
  const before = house.dump();
  expect(house.say('/eater Pip nuts')).toBe('I read "nuts", but not what of it. Which is meant?');
  expect(house.dump()).toBe(before);
  expect(house.press(1)).toContain('never nuts');
});

test('a typing slip is read as the food it is near, and said', () => {
  const answer = openSeason().say('/eater Pip alergic to penuts');
  expect(answer).toContain('never peanut;');
  expect(answer).toContain('(read "penuts" as peanut)');
});

test('told apart: never, not even near, rather not', () => {
  const answer = openSeason().say('/eater Pip no peanuts, not even near, no milk and dislikes olives');
  expect(answer).toContain('never milk and peanuts; not even near: peanuts; dislikes olives');
});

test('a similar name is asked about, never guessed', () => {
  const house = openSeason();
  const before = house.dump();
  expect(house.say('/eater Noah no fish')).toContain('Is "Noah" Noa, or somebody new?');
  expect(house.dump()).toBe(before);
  expect(house.press(2)).toContain('Noah (adult): never fish');
  expect(house.say('/eater Noa')).not.toContain('fish');
});

test('changed notes of a person are in the log', () => {
  const house = openSeason();
  house.say('/eater Noa no fish', 'Ben');
  expect(house.say('/log')).toContain('Ben: changed the eater Noa');
});

test("a child changes their own notes, not another's", () => {
  const house = openSeason();
  house.say('/eater me child 9', 'Kit');
  expect(house.say('/eater me dislikes leeks', 'Kit')).toContain('dislikes leeks');
  expect(house.say('/eater Noa may eat milk again', 'Kit')).toContain('may change their own notes');
});

test('kept pouches that no longer suit are named at once', async () => {
  const house = openSeason();
  await house.ask('/pick keep');
  expect(house.say('/eater Ana no lentils, no barley')).toMatch(
    /B\d-\d, kept for Ana: not clear, .*\/pick for Heron Lake again/s,
  );
});

refuses([
  ['/eater no milk', /not for whom/],
  ['/eater Pip no gronk', /no food, allergen or diet called "gronk"/],
  ['/eater Pip portion 9', /from 0.1 to 4/],
  ['/eater Pip portion 0', /from 0.1 to 4/],
  ['/eater Pip sodium 5 mg', /from 100 to 10000/],
  ['/eater Pip age 200', /age of 200/],
  ['/eater Noa may eat fish', /"fish" is not kept from Noa/],
  ['/eater Nemo gone', /no eater called Nemo/],
  ['/eater 12345', /could not place "12345"/],
  ['/eater Pip no', /I read "no", but not of which food/],
  ['/eater Pip nothing that swims', /called "swims" \(after "nothing that"\)/],
  ['/eater Pip vegan but eats honey', /I keep no exceptions/],
  ['/eater Pip no more than 2 g of salt', /called "than" \(after "no more"\)/],
]);

test('what was read of somebody is kept by a tap, where a word of it was not understood', () => {
  const house = openSeason();
  const before = house.dump();
  expect(house.say('/eater Pip no nuts except almonds')).toContain('could not place "except"');
  expect(house.say('/eater Pip off dairy till august')).toContain('could not place "till august"');
  expect(house.dump()).toBe(before);
  expect(house.press(1)).toContain('Pip (adult): never dairy');
});

test('what is said of somebody else is offered for nobody', () => {
  const house = openSeason();
  const before = house.dump();
  const answer = house.say('/eater me 41, Petra no nuts');
  expect(answer).toContain('could not place "Petra"');
  expect(house.last.flatMap(({ buttons }) => buttons)).toEqual([]);
  expect(house.dump()).toBe(before);
});

test('several people are told in one message, each with an age', () => {
  const answer = openSeason().say('me 41, Petra 38 no nuts, Paul 9');
  expect(answer).toContain('Ana (adult, 41 years): nothing kept away');
  expect(answer).toContain('Petra (adult, 38 years): never nuts');
  expect(answer).toContain('Paul (child, 9 years): nothing kept away');
});

// Common practice, no source: how people tell what somebody may have all the same.
test.each([
  ['fish allergy, prawns are ok', 'never fish', 'Not kept away: prawns.'],
  ['wheat allergy but oats are fine', 'never wheat', 'Not kept away: oats.'],
  ['tree nut allergy, peanuts ok', 'never tree nut', 'Not kept away: peanuts.'],
])('/eater Pip %s: what has nothing of the other is no exception', (typed, never, free) => {
  const answer = openSeason().say(`/eater Pip ${typed}`);
  expect(answer).toContain(never);
  expect(answer).toContain(free);
});

test.each(['nut allergy, almonds are ok', 'milk allergy but butter is fine', 'no gluten, oats are ok'])(
  '/eater Pip %s: an exception is refused',
  (typed) => {
    const house = openSeason();
    const before = house.dump();
    expect(house.say(`/eater Pip ${typed}`)).toContain('I keep no exceptions');
    expect(house.dump()).toBe(before);
  },
);

// Witness: 1 kcal = 4.184 kJ, NIST SP 811 (thermochemical): 9000 kJ are 2151.05 kcal, 8.4 MJ 2007.6 kcal.
test.each([
  ['energy 9000 kJ', 2151, '9000 kJ taken as 2151 kcal'],
  ['9000 kJ a day', 2151, '9000 kJ taken as 2151 kcal'],
  ['kJ 9000', 2151, '9000 kJ taken as 2151 kcal'],
  ['8.4 MJ', 2008, '8.4 MJ taken as 2008 kcal'],
  ['energy 2200', 2200, ''],
  ['energy: 2200 kcal per day', 2200, ''],
  ['9200 kJ (2200 kcal)', 2200, ''],
])('/eater Pip %s: the energy is kept in kcal', (typed, kcal, said) => {
  const answer = openSeason().say(`/eater Pip ${typed}`);
  expect(answer).toContain(`; energy ${kcal} kcal a day (their own limit).`);
  if (said === '') expect(answer).not.toContain('taken as');
  else expect(answer).toContain(said);
});

test('a figure without unit that may be kJ is asked about', () => {
  const house = openSeason();
  const before = house.dump();
  expect(house.say('/eater Pip energy 9000')).toBe('energy 9000: kJ or kcal? Which is meant?');
  expect(house.dump()).toBe(before);
  expect(house.press(1)).toContain('energy 2151 kcal a day');
});

// Common practice, no source: how people write somebody's age.
test.each([
  ['me woman 41 moderately active', 'Ana (adult, 41 years)', 'energy 2000 kcal a day'],
  ['Oma 74 woman sodium 1500', 'Oma (adult, 74 years)', 'Sodium 1500 mg a day (their own limit)'],
  ['me 15 girl', 'Ana (adult, 15 years)', 'for the age'],
  ['Noa 8', 'Noa (child, 8 years): never peanuts and milk', 'Sodium 1500 mg'],
  ['Pip 7 no milk', 'Pip (child, 7 years): never milk', 'Sodium 1500 mg'],
  ['Pip 1 portion, boy 120', 'Pip (adult, 120 years): nothing kept away; portion 1.', 'Sodium 2300 mg'],
])('/eater %s: a bare figure beside a word for a person is the age', (typed, who, says) => {
  const answer = openSeason().say(`/eater ${typed}`);
  expect(answer).toContain(who);
  expect(answer).toContain(says);
});

refuses([
  ['/eater Pip energy 100000 kJ', /energy 100000 kJ cannot be; from 200 to 10000 kcal can/],
  ['/eater Pip 9000 kJ 2500 kcal', /two energies, 9000 kJ and 2500 kcal/],
  ['/eater Pip sodium 9000 kJ', /sodium 9000 kJ cannot be/],
  ['/eater Pip portion 0.5 kg', /portion 0.5 kg cannot be/],
  ['/eater Pip woman 121', /could not place "121"/],
  ['/eater Pip boy 7 girl 9', /could not place "boy" and "9"/],
]);
