// Witness: the calendar of 2027, by hand (3 April 2027 is a Saturday); what 'Monday week' and its like mean: common
// practice, no source.
import { expect, test } from 'vitest';
import { openSeason } from '../season.ts';

/** It is Saturday 3 April 2027; Heron Lake is planned from 12 to 14 June, dinner to breakfast. */
test.each([
  ['/trip Otter Bend Monday week to Wednesday dinner', 'Otter Bend, Mon 12 Apr to Wed 14 Apr 2027'],
  ['/trip Otter Bend in two weeks for three days dinner', 'Otter Bend, Sat 17 Apr to Mon 19 Apr 2027'],
  ['/trip Otter Bend in 10 days for two nights dinner', 'Otter Bend, Tue 13 Apr to Thu 15 Apr 2027'],
  ['/trip Otter Bend a week on Monday lunch', 'Otter Bend, Mon 12 Apr'],
  ['/trip Otter Bend the weekend after dinner', 'Otter Bend, Sat 17 Apr to Sun 18 Apr 2027'],
  ['/trip Otter Bend tomorrow till Thursday dinner', 'Otter Bend, Sun 4 Apr to Thu 8 Apr 2027'],
  [
    '/trip Otter Bend the day after tomorrow overnight dinner breakfast',
    'Otter Bend, Mon 5 Apr to Tue 6 Apr',
  ],
  ['/trip weekend at Otter Bend 21-22 August dinner', 'Otter Bend, Sat 21 Aug to Sun 22 Aug 2027'],
  ['/trip Otter Bend 4.7.-6.7. dinner', 'Otter Bend, Sun 4 Jul to Tue 6 Jul 2027'],
  ['/trip Otter Bend Sat 12 June to Mon 14 June dinner', 'Otter Bend, Sat 12 Jun to Mon 14 Jun 2027'],
  ['/trip Friday Harbor 12-14 June dinner', 'Friday Harbor, Sat 12 Jun'],
  ['/trip Saturday hike 5 June lunch', 'Saturday hike, Sat 5 Jun'],
  ['/trip May Lake this weekend dinner', 'May Lake, Sat 3 Apr to Sun 4 Apr'],
  ['Saturday hike to May Lake on 15 May, lunch only, for all', 'May Lake, Sat 15 May'],
  ["we're going to otter bend from friday to sunday", 'otter bend, Fri 9 Apr to Sun 11 Apr'],
  ['/trip Heron Lake until 15 June', 'Heron Lake, Sat 12 Jun to Tue 15 Jun'],
  ['/trip Heron Lake from friday', 'Heron Lake, Fri 11 Jun to Mon 14 Jun'],
  ['/trip Heron Lake a day longer', 'Heron Lake, Sat 12 Jun to Tue 15 Jun'],
  ['move heron lake one week later', 'Heron Lake, Sat 19 Jun to Mon 21 Jun'],
  ['add lunch on sunday to heron lake', 'Sun 13 Jun: breakfast, lunch and dinner'],
  ['heron lake: no breakfast on monday', 'Heron Lake, Sat 12 Jun to Mon 14 Jun 2027: 3 meals'],
])('%s', (typed, says) => {
  const house = openSeason();
  expect(house.say(typed)).toContain(says);
  expect(house.faults).toEqual([]);
});

test.each([
  ['/trip Otter Bend the weekend after next dinner', 'can be read two ways'],
  ['/trip Otter Bend Sunday 12 June dinner', '12 June 2027 is a Saturday'],
  ['/trip Heron Lake saturday', 'That is one day of the trip'],
  ['/trip Heron Lake no lunch on sunday', 'The trip has no lunch on 2027-06-13'],
  ['/trip Otter Bend dinner 12-14 June bananas', 'I could not place "bananas"'],
  ['/trip Otter Bend three weeks later 12 June dinner', 'I could not place "later"'],
])('%s is asked about or refused', (typed, says) => {
  const house = openSeason();
  const before = house.dump();
  expect(house.say(typed)).toContain(says);
  expect(house.dump()).toBe(before);
});
