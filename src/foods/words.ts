import { plain } from '#words/numbers.ts';

/** One word, many spellings: British and American, old and new, and the slips seen most. Keys and values are folded. */
const spellings: Readonly<Record<string, string>> = {
  chilli: 'chili', chile: 'chili', chilly: 'chili', chily: 'chili', chilie: 'chili', chillie: 'chili',
  yoghurt: 'yogurt', yogourt: 'yogurt', yoghourt: 'yogurt', catsup: 'ketchup', tumeric: 'turmeric', brocolli: 'broccoli',
  brocoli: 'broccoli', parmesean: 'parmesan', parmigiano: 'parmesan', parmigiana: 'parmesan', mozarella: 'mozzarella', mozzerella: 'mozzarella',
  worcester: 'worcestershire', zuchini: 'zucchini', zuccini: 'zucchini', avacado: 'avocado', avocadoe: 'avocado', bulghur: 'bulgur', bulgar: 'bulgur',
  burghul: 'bulgur', bouillion: 'bouillon', cinamon: 'cinnamon', cummin: 'cumin', tahina: 'tahini', garbanzo: 'chickpea', chickpease: 'chickpea',
  allpurpose: 'plain', wholemeal: 'wholewheat', wholegrain: 'wholegrain', flavour: 'flavor', flavoured: 'flavored', flavored: 'flavored',
  colour: 'color', grey: 'gray', raising: 'rising', caster: 'caster', castor: 'caster', demerera: 'demerara', muscavado: 'muscovado',
  licorice: 'liquorice', whisky: 'whiskey', vermicellus: 'vermicelli', lasagne: 'lasagna', pitta: 'pita', omelette: 'omelet', fillet: 'fillet',
  filet: 'fillet', rinded: 'rindless', pimiento: 'pimento', pimenton: 'paprika', jalapeno: 'jalapeno', jalepeno: 'jalapeno', habenero: 'habanero',
  gelatine: 'gelatin', sulfite: 'sulphite', sulfured: 'sulphured', unsulfured: 'unsulphured', skimmed: 'skim', semiskimmed: 'semiskim',
  confectioner: 'confectioner', icing: 'icing', tomatoe: 'tomato', potatoe: 'potato', tomatos: 'tomato', onoin: 'onion', leaf: 'leaf', leave: 'leaf',
  dessicated: 'desiccated', dehydrated: 'dehydrated', stalk: 'stalk', haloumi: 'halloumi', raddish: 'radish', rocket: 'arugula', maize: 'maize',
  dhal: 'dal', daal: 'dal', dahl: 'dal', toor: 'toor', tur: 'toor', urad: 'urad', channa: 'chana', aubergene: 'aubergine', sirracha: 'sriracha',
  siracha: 'sriracha', szechuan: 'sichuan', szechwan: 'sichuan', prawns: 'prawn', mince: 'mince', minced: 'minced',
  coco: 'cocoa', 'decaffeinated': 'decaf', fettucine: 'fettuccine', fettuccini: 'fettuccine', linguini: 'linguine', spaghettis: 'spaghetti',
  brussel: 'brussels', scallopini: 'scallopine', neufchatel: 'neufchatel', beetroot: 'beet', mangetout: 'mangetout', mange: 'mange',
  bicarb: 'bicarbonate', edamame: 'edamame', fava: 'fava', msg: 'msg', evoo: 'evoo', margerine: 'margarine', oleo: 'margarine',
}; // prettier-ignore

/** Words written apart or together: the pair becomes the one word the tables use. */
const joined: Readonly<Record<string, string>> = {
  'bread crumb': 'breadcrumb', 'sun dried': 'sundried', 'corn starch': 'cornstarch', 'corn meal': 'cornmeal', 'butter milk': 'buttermilk',
  'chick pea': 'chickpea', 'all purpose': 'plain', 'whole wheat': 'wholewheat', 'whole meal': 'wholewheat', 'whole grain': 'wholegrain',
  'self rising': 'selfrising', 'self raising': 'selfrising', 'egg plant': 'eggplant', 'semi skim': 'semiskim', 'oat meal': 'oatmeal',
  'tomato puree': 'tomato puree', 'water cress': 'watercress', 'beet root': 'beet', 'cauli flower': 'cauliflower', 'pop corn': 'popcorn',
  'soy bean': 'soybean', 'soya bean': 'soybean', 'soya': 'soy', 'black eye': 'blackeyed', 'black eyed': 'blackeyed', 'bone in': 'bonein',
  'skin on': 'skinon', 'butter nut': 'butternut', 'pine nut': 'pinenut', 'pine kernel': 'pinenut', 'pea nut': 'peanut', 'wal nut': 'walnut', 'ground nut': 'peanut',
  'free range': 'freerange', 'low fat': 'lowfat', 'fat free': 'fatfree', 'non fat': 'nonfat', 'half fat': 'lowfat', 'reduced fat': 'lowfat',
  'full fat': 'fullfat', 'non dairy': 'nondairy', 'dairy free': 'nondairy', 'freeze dried': 'freezedried', 'lactose free': 'lactosefree', 'gluten free': 'glutenfree', 'sugar free': 'sugarfree', 'egg free': 'eggfree',
  'five spice': 'fivespice', '5 spice': 'fivespice', 'creme fraiche': 'cremefraiche', 'mange tout': 'mangetout', 'sweet corn': 'sweetcorn', 'spring onion': 'springonion',
  'green onion': 'springonion', 'salad onion': 'springonion', 'bay leaf': 'bayleaf', 'goat cheese': 'goatcheese', 'goat s': 'goat', 'baker s': 'baker',
  'hot dog': 'hotdog', 'ice cream': 'icecream', 'sour dough': 'sourdough', 'flat bread': 'flatbread', 'short bread': 'shortbread', 'nut meg': 'nutmeg',
  'lemon grass': 'lemongrass', 'horse radish': 'horseradish', 'sea weed': 'seaweed', 'sea food': 'seafood', 'egg yolk': 'yolk', 'egg white': 'eggwhite',
  'flax seed': 'flaxseed', 'lin seed': 'flaxseed', 'ginger bread': 'gingerbread', 'graham cracker': 'graham', 'half half': 'halfandhalf',
  'red currant': 'redcurrant', 'black currant': 'blackcurrant', 'sweet potato': 'sweetpotato', 'water chestnut': 'waterchestnut', 'passion fruit': 'passionfruit',
  'dragon fruit': 'dragonfruit', 'star fruit': 'starfruit', 'star anise': 'staranise', 'crab meat': 'crabmeat', 'brazil nut': 'brazilnut', 'cashew nut': 'cashew',
  'mung bean': 'mungbean', 'moong bean': 'mungbean', 'moong': 'mung', 'hazel nut': 'hazelnut', 'pecan nut': 'pecan', 'chest nut': 'chestnut', 'macadamia nut': 'macadamia',
  'pistachio nut': 'pistachio', 'filbert': 'hazelnut', 'cob nut': 'hazelnut', 'multi grain': 'multigrain', 'soymilk': 'soy milk', 'stock cube': 'stockcube', 'bouillon cube': 'stockcube',
  'linseed': 'flaxseed', 'wholewheat flour': 'wholewheat flour', 'silver beet': 'silverbeet', 'pak choi': 'bokchoy', 'bok choy': 'bokchoy', 'pak choy': 'bokchoy', 'hash brown': 'hashbrown',
  // German kitchen words, for households that type both.
  mehl: 'flour', weizenmehl: 'flour', kartoffel: 'potato', kartoffeln: 'potato', zwiebel: 'onion', zwiebeln: 'onion', sahne: 'cream', nudel: 'noodle', nudeln: 'noodle', ei: 'egg', eier: 'egg', salz: 'salt',
  hackfleisch: 'ground meat', kase: 'cheese', kaese: 'cheese', lachs: 'salmon', lach: 'salmon', petersilie: 'parsley', senf: 'mustard', milch: 'milk', zucker: 'sugar', reis: 'rice', rei: 'rice', knoblauch: 'garlic', mohre: 'carrot', mohren: 'carrot', karotte: 'carrot', karotten: 'carrot',
  tomaten: 'tomato', apfel: 'apple', hahnchen: 'chicken', huhn: 'chicken', rindfleisch: 'beef', schweinefleisch: 'pork', schinken: 'ham', pilz: 'mushroom', pilze: 'mushroom', champignon: 'mushroom', erbse: 'pea', erbsen: 'pea', linse: 'lentil', linsen: 'lentil', bohne: 'bean', bohnen: 'bean',
  bruhe: 'stock', gemusebruhe: 'vegetable stock', huhnerbruhe: 'chicken stock', joghurt: 'yogurt', haferflocken: 'rolled oat', nusse: 'nut', mandel: 'almond', mandeln: 'almond', haselnuss: 'hazelnut', haselnusse: 'hazelnut', walnusse: 'walnut', walnuss: 'walnut', erdnuss: 'peanut', erdnusse: 'peanut', weizen: 'wheat',
  roggen: 'rye', gerste: 'barley', sellerie: 'celery', sesam: 'sesame', soja: 'soy', fisch: 'fish', garnele: 'shrimp', garnelen: 'shrimp', krabben: 'shrimp', paprikapulver: 'paprika', pfeffer: 'pepper', honig: 'honey', brot: 'bread', ol: 'oil', olivenol: 'olive oil', essig: 'vinegar', wasser: 'water', thunfisch: 'tuna', lauch: 'leek', kohl: 'cabbage',
}; // prettier-ignore

/** Every word of the pairs above: 'pine' of 'pine kernel', which no folded name shows. */
export const wordsJoined: readonly string[] = Object.keys(joined).flatMap((pair) => pair.split(' '));

const always: Readonly<Record<string, string>> = {
  leaves: 'leaf', loaves: 'loaf', halves: 'half', calves: 'calf', knives: 'knife', potatoes: 'potato', tomatoes: 'tomato', mangoes: 'mango',
  swiss: 'swiss', molasses: 'molasses', hummus: 'hummus', couscous: 'couscous', asparagus: 'asparagus', bass: 'bass', cos: 'cos', geese: 'goose',
  cookies: 'cookie', pies: 'pie', brownies: 'brownie', smoothies: 'smoothie', chillies: 'chili', chilies: 'chili', veggies: 'veggie', courgettes: 'courgette',
  prunes: 'prune', haas: 'hass', hass: 'hass', hollandaise: 'hollandaise', brussels: 'brussels', swede: 'swede', oxo: 'oxo', pus: 'pus', tortillas: 'tortilla',
  radishes: 'radish', squashes: 'squash', boneless: 'boneless', skinless: 'skinless', seedless: 'seedless', rindless: 'rindless', cress: 'cress', bouquets: 'bouquet',
  citrus: 'citrus', octopus: 'octopus', hibiscus: 'hibiscus', allspice: 'allspice', hoisin: 'hoisin', gas: 'gas', das: 'das', anchovies: 'anchovy',
}; // prettier-ignore

function singular(word: string): string {
  if (Object.hasOwn(always, word)) return always[word]!;
  if (word.length < 4 || /(?:ss|us|is)$/.test(word) || !word.endsWith('s')) return word;
  if (word.endsWith('ies')) return word.length > 4 ? `${word.slice(0, -3)}y` : word.slice(0, -1);
  if (/(?:ch|sh|ss|x|z|o)es$/.test(word)) return word.slice(0, -2);
  return word.slice(0, -1);
}

/** Folded words are asked for over and over; a bounded memory keeps long texts from filling the house. */
const remembered = new Map<string, string>();
function foldWord(word: string): string {
  let folded = remembered.get(word);
  if (folded === undefined) {
    const one = singular(word);
    folded = Object.hasOwn(spellings, one) ? spellings[one]! : one;
    if (remembered.size > 20_000) remembered.clear();
    remembered.set(word, folded);
  }
  return folded;
}

/** 'cream of tartar', 'salt and pepper': words that only link. */
const links = new Set(['of', 'and', 'the', 'a', 'an']);

/** Nearly all that is typed, and all the tables hold; letters of every script take several times as long to find. */
export const isAscii = (text: string): boolean => /^[\x20-\x7e]*$/.test(text);

const withoutAccents = (small: string): string =>
  small
    .replace(/œ/g, 'oe')
    .replace(/æ/g, 'ae')
    .replace(/ß/g, 'ss')
    .replace(/ø/g, 'o')
    .normalize('NFKD')
    .replace(/\p{M}/gu, '');

const wordsIn = (letter: string, figure: string, flags: string) => ({
  possessive: new RegExp(`(${letter})'(?:s(?!${letter}))?`, flags),
  word: new RegExp(`\\d+(?:[.,]\\d+)?%|(?:${letter}|${figure})+`, flags),
});
const anyWords = wordsIn('\\p{L}', '\\p{N}', 'gu');
const asciiWords = wordsIn('[a-z]', '[0-9]', 'g');

/**
 * Words of a text in the form the tables use: plain characters, small letters without accents, singular, one
 * spelling, pairs such as 'bread crumbs' joined.
 * @returns the words in order; figures stay, '2%' is one word
 */
export function foldedWords(text: string): string[] {
  const small = plain(text).toLowerCase();
  const plainly = isAscii(small);
  const { possessive, word: oneWord } = plainly ? asciiWords : anyWords;
  const letters = (plainly ? small : withoutAccents(small)).replace(
    possessive,
    (_, letter: string) => letter,
  );
  const words = (letters.match(oneWord) ?? []).map(foldWord).filter((word) => !links.has(word));
  const out: string[] = [];
  for (const word of words) {
    const pair = `${out.at(-1)} ${word}`;
    const alone = Object.hasOwn(joined, word) ? joined[word]! : word;
    if (out.length > 0 && Object.hasOwn(joined, pair)) out.splice(-1, 1, ...joined[pair]!.split(' '));
    else out.push(...alone.split(' '));
  }
  return out;
}

/**
 * The key under which the household's own words for a food are kept.
 * @param text as typed
 * @returns folded words, one space between
 */
export const foldName = (text: string): string => foldedWords(text).join(' ');
