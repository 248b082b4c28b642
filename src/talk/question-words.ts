import type { Look } from './look.ts';

/** By which word a question asks. */
export type Asks = 'many' | 'much' | 'long' | 'when' | 'who' | 'where' | 'why' | 'which' | 'how' | 'whether';

const shapes: readonly (readonly [Asks, RegExp])[] = [
  ['why', / (?:why|how come|what for|for what reason) /],
  ['many', / (?:how many|number of|count (?:of|the)) /],
  [
    'long',
    / (?:how (?:much )?long(?:er)?|how much (?:more )?time|how many (?:more )?(?:hours|minutes|days)) /,
  ],
  ['much', / (?:how much|amount of|quantity of|how (?:heavy|big|large|salty|high|hot|fat|full|far|old)) /],
  [
    'when',
    / (?:when|whens|what time|what day|which day|what date|how soon|since when|by when|at what time) /,
  ],
  ['who', / (?:who|whos|whose|whom|which of us|anyone|anybody|somebody|someone) /],
  ['where', / (?:where|wheres) /],
  ['which', / (?:what|whats|which|wat|anything|something|any) /],
  ['how', / (?:how|hows) /],
];

/** By which word a message asks; 'whether' where it asks by none. */
export const asksBy = (look: Look): Asks =>
  shapes.find(([, pattern]) => look.says(pattern))?.[0] ?? 'whether';

const row = (text: string): readonly string[] => text.split(' ');

/** What a question may be about, each with the words that show it, as they are looked up. */
export const ideas = {
  water: row('water ml pour liquid hydrate rehydrate rehydration cup mug litre liter'),
  cold: row('cold lukewarm tap unboiled stream'),
  soak: row('soft tender mushy soak stand sit wait rest steep swell minute stir boil'),
  keep: row(
    'keep last expire expiry expiration spoil rot edible good bad off old date fresh rancid stale fine okay ok safe',
  ),
  weight: row('heavy weigh weight gram kilo kg mass light lighter heavier'),
  dry: row('dry ready finish done steady damp moist wet moisture far along progress'),
  dryer: row('dryer drier machine drying'),
  lose: row('lose loss'),
  seal: row('seal bag portion fill'),
  absorber: row('absorber oxygen scavenger'),
  nutrient: row(
    'salt salty sodium calorie kcal energy protein fat fatty carb carbohydrate fibre fiber nutrition nutritious filling',
  ),
  inside: row('in contain inside ingredient made consist hold with'),
  may: row(
    'affect problem bother matter trouble issue hurt harm may can allow suit suitable safe eat have ok okay fine clear good bother',
  ),
  avoid: row(
    'allergy allergic allergen avoid diet intolerant dislike hate limit age old portion restriction vegan vegetarian',
  ),
  left: row('left have stock remain still any more got there run short supply'),
  eat: row('eat use consume finish open take'),
  gone: row('promise reserve plan packed go happen become gone where miss vanish disappear still there left'),
  throw: row('throw discard bin toss chuck dump trash'),
  load: row('load start cook make put go'),
  record: row('last thing record log note enter write type change add happen did'),
  menu: row('get eat dinner breakfast lunch supper menu meal food plan cook serve planned'),
  come: row(
    'on happen ahead off cancel call come go join leave attend who high far long altitude day night when where start end',
  ),
  pack: row('pack packing backpack rucksack take bring along'),
  fuel: row('fuel gas canister cartridge stove burner propane butane'),
  cook: row('cook prepare make buy shop need enough short lack miss cover'),
  cost: row('cost price expensive cheap money pay worth'),
  like: row('like enjoy love rate rating taste favourite favorite popular opinion think verdict review'),
  undo: row('undo revert'),
  serve: row('serve serving portion feed people person'),
  hazard: row(
    'puffy swollen bloated smell stink mould mold mouldy moldy slimy leak hole torn loose sick ill poisoned',
  ),
  wish: row('want wish ask request crave fancy'),
  setting: row(
    'altitude elevation absorber tray dryer storage zone unit scale cup setting reminder pouch bag',
  ),
} as const satisfies Record<string, readonly string[]>;

export type Idea = keyof typeof ideas;
