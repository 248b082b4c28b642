import { ft, type RequestCase } from './case.ts';

const nobodyNamed = { everybody: false, coming: [], notComing: [] };
const june = { startsOn: '2027-06-12', endsOn: '2027-06-14' };
/** A trip of that name and those days, everybody at every meal. */
const otter = (more: object = {}) => ({
  place: { name: 'Otter Creek', isKnown: false, days: june, company: nobodyNamed, efforts: [], ...more },
});
const coming = (eater: string) => ({ eater, from: null, to: null });

/** Eaters, trips, wishes. */
export const people: readonly RequestCase[] = [
  [
    '/eater Pip child 7 no peanuts, no milk portion 0.6 sodium 1500',
    'eater',
    {
      who: { fresh: 'Pip' },
      kind: 'child',
      ageYears: 7,
      never: ['peanuts', 'milk'],
      portion: 0.6,
      sodiumMg: 1500,
    },
  ],
  ['/eater portion 0.6 no milk Pip', 'eater', { who: { fresh: 'Pip' }, never: ['milk'], portion: 0.6 }],
  ['/eater Pip is 7 and allergic to nuts', 'eater', { who: { fresh: 'Pip' }, ageYears: 7, never: ['nuts'] }],
  ["/eater Pip can't eat milk", 'eater', { who: { fresh: 'Pip' }, never: ['milk'] }],
  ['/eater Pip can’t eat milk or eggs, please', 'eater', { who: { fresh: 'Pip' }, never: ['milk', 'eggs'] }],
  ['/eater Pip lactose intolerant', 'eater', { who: { fresh: 'Pip' }, never: ['lactose'] }],
  ['/eater Pip nut allergy', 'eater', { who: { fresh: 'Pip' }, never: ['nut'] }],
  ['/eater Pip gluten free', 'eater', { who: { fresh: 'Pip' }, never: ['gluten-free'] }],
  [
    '/eater Pip no pork, dislikes mushrooms and olives',
    'eater',
    { who: { fresh: 'Pip' }, never: ['pork'], dislikes: ['mushrooms', 'olives'] },
  ],
  [
    '/eater Pip no milk, olives and capers',
    'eater',
    { who: { fresh: 'Pip' }, never: ['milk', 'olives', 'capers'] },
  ],
  ['/eater Pip doesn’t like olives', 'eater', { who: { fresh: 'Pip' }, dislikes: ['olives'] }],
  ['/eater me vegetarian', 'eater', { who: { known: 'Ana' }, never: ['vegetarian'] }],
  ["/eater I'm vegan", 'eater', { who: { known: 'Ana' }, never: ['vegan'] }],
  [
    '/eater Noa may eat milk again',
    'eater',
    { who: { known: 'Noa' }, lifting: 'Noa may eat milk again', again: ['milk'] },
  ],
  ['/eater noa sodium 1.2 g', 'eater', { who: { known: 'Noa' }, sodiumMg: 1200 }],
  ['/eater Noa portion 60%', 'eater', { who: { known: 'Noa' }, portion: 0.6 }],
  ['/eater Noa portion half', 'eater', { who: { known: 'Noa' }, portion: 0.5 }],
  ['/eater עומר no milk', 'eater', { who: { fresh: 'עומר' }, never: ['milk'] }],
  ['/eater سلمى no fish', 'eater', { who: { fresh: 'سلمى' }, never: ['fish'] }],
  ['/eater 山田 no fish', 'eater', { who: { fresh: '山田' }, never: ['fish'] }],
  ['/eater Zoë no celery', 'eater', { who: { fresh: 'Zoë' }, never: ['celery'] }],
  ['/eater Vincent van Gogh no milk', 'eater', { who: { fresh: 'Vincent van Gogh' }, never: ['milk'] }],
  ['/eater "pip the brave" no milk', 'eater', { who: { fresh: 'pip the brave' }, never: ['milk'] }],
  ['/eater Rosa gone', 'eater', { who: { known: 'Rosa' }, gone: true }],
  ['/trip Otter Creek 12-14 June', 'trip', otter()],
  ['/trip 12-14 June Otter Creek', 'trip', otter()],
  ['/trip Otter Creek 12 to 14 June', 'trip', otter()],
  ['/trip Otter Creek 12–14 june', 'trip', otter()],
  ['/trip Otter Creek June 12-14', 'trip', otter()],
  ['/trip Otter Creek June 12-14, 2027', 'trip', otter()],
  ['/trip Otter Creek 12th - 14th of June', 'trip', otter()],
  ['/trip Otter Creek 12 Jun 2027 – 14 Jun 2027', 'trip', otter()],
  ['/trip Otter Creek 12.6. - 14.6.', 'trip', otter()],
  ['/trip Otter Creek 12/6 to 14/6', 'trip', otter()],
  ['/trip Otter Creek 6/12 to 6/14', 'trip', otter()],
  ['/trip Otter Creek 2027-06-12 to 2027-06-14', 'trip', otter()],
  ['/trip Otter Creek 2027/06/12 - 2027/06/14', 'trip', otter()],
  ['/trip Otter Creek ２０２７-０６-１２ to ２０２７-０６-１４', 'trip', otter()],
  ['/trip Otter Creek 12 June for 3 days', 'trip', otter()],
  ['/trip Otter Creek 12 june for 2 nights', 'trip', otter()],
  ['/trip Otter Creek fri to sun', 'trip', otter({ days: { startsOn: '2027-04-09', endsOn: '2027-04-11' } })],
  [
    '/trip Otter Creek this weekend',
    'trip',
    otter({ days: { startsOn: '2027-04-03', endsOn: '2027-04-04' } }),
  ],
  [
    '/trip Otter Creek tomorrow for 3 days',
    'trip',
    otter({ days: { startsOn: '2027-04-04', endsOn: '2027-04-06' } }),
  ],
  [
    '/trip Otter Creek from 30 April to 2 May',
    'trip',
    otter({ days: { startsOn: '2027-04-30', endsOn: '2027-05-02' } }),
  ],
  [
    '/trip Otter Creek 30 December to 2 January',
    'trip',
    otter({ days: { startsOn: '2027-12-30', endsOn: '2028-01-02' } }),
  ],
  ['/trip Otter Creek 12-14 June 1,900 m', 'trip', { ...otter(), altitude: 1900 }],
  ['/trip Otter Creek 12-14 June at 6000 ft', 'trip', { ...otter(), altitude: 6000 * ft }],
  ['/trip Otter Creek 12-14 June water 8°C', 'trip', { ...otter(), water: { startC: 8, fromSnow: false } }],
  [
    '/trip Otter Creek 12-14 June water 46 °F',
    'trip',
    { ...otter(), water: { startC: 14 / 1.8, fromSnow: false } },
  ],
  ['/trip Otter Creek 12-14 June snow', 'trip', { ...otter(), water: { startC: 0, fromSnow: true } }],
  [
    '/trip Otter Creek 12-14 June dinner breakfast',
    'trip',
    otter({ meals: { each: ['breakfast', 'dinner'], first: 'dinner', last: 'breakfast' } }),
  ],
  [
    '/trip Otter Creek 12-14 June from dinner to breakfast',
    'trip',
    otter({
      meals: {
        each: ['breakfast', 'lunch', 'dinner'],
        first: 'dinner',
        last: 'breakfast',
        edges: { first: 'dinner', last: 'breakfast' },
      },
    }),
  ],
  ['/trip Otter Creek 12-14 June for all', 'trip', otter({ company: { ...nobodyNamed, everybody: true } })],
  [
    '/trip Otter Creek 12-14 June for Ana and Ben',
    'trip',
    otter({ company: { ...nobodyNamed, coming: [coming('Ana'), coming('Ben')] } }),
  ],
  [
    '/trip Otter Creek 12-14 June without Noa',
    'trip',
    otter({ company: { ...nobodyNamed, notComing: ['Noa'] } }),
  ],
  [
    '/trip Otter Creek 12-14 June everyone except Noa and Ben',
    'trip',
    otter({ company: { everybody: true, coming: [], notComing: ['Noa', 'Ben'] } }),
  ],
  [
    '/trip Otter Creek 12-14 June with Rosa from saturday dinner',
    'trip',
    otter({
      company: {
        ...nobodyNamed,
        coming: [{ eater: 'Rosa', from: { onDay: '2027-06-12', meal: 'dinner' }, to: null }],
      },
    }),
  ],
  [
    '/trip heron lake',
    'trip',
    { place: { name: 'Heron Lake', isKnown: true, company: nobodyNamed, efforts: [] } },
  ],
  [
    '/trip heron lake cancelled',
    'trip',
    { cancelled: true, place: { name: 'Heron Lake', isKnown: true, company: nobodyNamed, efforts: [] } },
  ],
  [
    '/want soup saturday dinner',
    'want',
    { meals: ['Barley soup'], when: { day: '2027-06-12' }, slotMeal: 'dinner' },
  ],
  [
    '/want dinner saturday soup',
    'want',
    { meals: ['Barley soup'], when: { day: '2027-06-12' }, slotMeal: 'dinner' },
  ],
  ['I want lentil pot on saturday', 'want', { meals: ['Lentil pot'], when: { day: '2027-06-12' } }],
  [
    'Noa wants lentil pot for sunday dinner',
    'want',
    { meals: ['Lentil pot'], when: { day: '2027-06-13' }, slotMeal: 'dinner', eaters: ['Noa'] },
  ],
  [
    '/want lentl pot 12 june dinner',
    'want',
    { meals: ['Lentil pot'], when: { day: '2027-06-12' }, slotMeal: 'dinner' },
    /read "lentl pot" as Lentil pot/,
  ],
  ['/want not soup', 'want', { meals: ['Barley soup'], when: {}, withdrawn: true }],
  ['/cook for heron lake', 'cook', { trip: 'Heron Lake' }],
  ['what should we cook?', 'cook', {}],
  ['/pick heron lkae', 'pick', { trip: 'Heron Lake' }, /read "heron lkae" as Heron Lake/],
  ['undo that please', 'undo', {}],
];
