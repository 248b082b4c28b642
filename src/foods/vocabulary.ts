import { later } from '#words/later.ts';
import { byName } from './kitchen.ts';
import { foldedWords } from './words.ts';

const set = (text: string) => new Set(foldedWords(text));

/** Words that neither name a food nor change which food is meant. */
export const neutral = set(`
uht longlife a2 jersey filtered fresh freshly chopped diced snipped shaved pulled butterflied scored smashed bruised podded blistered soaked sieved boned filleted dressed pounded flattened riced spiralized leftover minced sliced grated shredded crumbled cubed cube julienned julienne halved half quartered quarter wedge peeled unpeeled cored
seeded deseeded stemmed trimmed washed rinsed drained scrubbed cleaned picked pitted stoned hulled shelled unshelled shucked deveined beaten whisked
softened melted cold warm hot lukewarm chilled cool cooled room temperature thawed defrosted frozen raw ripe overripe underripe firm tender young mature aged old
new good quality best fine finely coarse coarsely roughly rough thin thinly thick thickly lightly heavily loosely packed firmly tightly well very extra
small medium large big jumbo little tiny mini size sized whole piece pieces chunk strip stick slice bite round ring matchstick ribbon dice
organic freerange local homemade store bought storebought shop prepared ready made your favorite favourite choice any kind type variety about approximately
optional divided separated plus more needed taste serving garnish garnishing decorating sprinkling topping dusting frying greasing brushing
unwaxed unsprayed natural pure real plain simple regular ordinary standard classic traditional authentic typical
boneless skinless bonein skinon boned skinned rindless rind removed discarded intact on off the a an of and or with each per some few another amount
cut into in to for from at by as if such like preferably possible desired wanted see note notes recipe above below page step note
toasted roasted blanched parboiled ground crushed cracked torn broken mashed pureed squeezed strained sifted unsifted heaped level scant generous
unsalted salted unsweetened low high heavy light dark sodium no added less reduced full fat lean fatty marbled
italian french greek spanish mexican english american asian chinese thai japanese korean indian turkish mediterranean german danish swiss dutch irish scottish british canadian
australian california californian moroccan middle eastern lebanese persian vietnamese hungarian polish russian swedish norwegian sicilian tuscan
brand branded store supermarket bottled bottle jarred jar can canned tin tinned packet package packaged bag box container carton frozen
day days week month year inch cm mm thickness diameter long wide length
head bunch sprig clove stalk leaf leaves stem rib bulb knob handful floret spear pod kernel heart tip end top
red white green yellow black brown purple orange pink golden pale blue color colour colored coloured colorful mixed assorted tricolor
very best whipped fat trimmed excess patted dry dried free range grass fed wild caught farmed sustainable line pole sushi grade
cooking baking eating table everyday stewing braising grilling roasting stir fry frying boiling snack
instant quick wholegrain wholewheat crusty rustic country style stale day-old homestyle
hot spicy mild sweet sour bitter sharp tangy strong
center centre back loin only part parts all both other same equal total overall worth
unbleached unrefined refined unfiltered pasteurised pasteurized cultured sprouted activated
crisp crispy crunchy smooth creamy silky soft chewy sticky fluffy flaky
heirloom vine ripened garden homegrown seasonal spring summer winter autumn
flat curly leaf leafed topped tailed ended zested juiced
separate separately together combined remaining reserved leftover additional another
bulk loose jumbo family value own made fashioned cut bag
de la le du des con al alla di del en y et und mit
scoop rounded drizzle splash dash pinch knob pat
mash squeezed crumble tap lump diagonally lengthwise crosswise horizontally vertically widthwise bias across grain
g kg oz lb lbs ml l tsp tbsp cup cups gram grams ounce ounces pound pounds
powdered granulated flaked flakes crystal crystallized stone rolled
lowsodium reducedsodium reducedsalt saltfree deli uncooked unprepared undrained liquid included including reserved
approx around roughly nearly cubed-up bitesized bite-sized one two three four five six seven eight nine ten
thick-cut thin-cut center-cut precut pre presoaked soaked overnight ahead
preferred recommended available 
`);

/** Neutral words that say what state the food is in; see states.ts for which. */
export const stateWords: Readonly<Record<string, string>> = {
  canned: 'canned', tinned: 'canned', can: 'canned', tin: 'canned', jarred: 'canned', cooked: 'cooked', boiled: 'cooked', steamed: 'cooked', precooked: 'cooked',
  poached: 'cooked', braised: 'cooked', grilled: 'cooked', baked: 'cooked', rotisserie: 'cooked', stewed: 'cooked', roasted: 'roasted', roast: 'roasted',
  frozen: 'frozen', dried: 'dried', dry: 'dry', dehydrated: 'dried', uncooked: 'dry', smoked: 'smoked', fried: 'fried', sauteed: 'fried', fresh: 'fresh', raw: 'raw', drained: 'drained',
  freezedried: 'dried', powdered: 'powdered', undrained: 'undrained', crispy: 'crispy', mashed: 'mashed', pickled: 'pickled', candied: 'candied', cured: 'cured', salted: 'salted',
}; // prettier-ignore

/** Words that turn a food into another one: never passed over. */
export const strong = set(`
vegan vegetarian nondairy glutenfree meatless eggfree plant based imitation mock substitute alternative replacer replacement flavored flavoured flavor flavour powder sauce soup
stock broth paste butter oil milk cream cheese flour sugar syrup juice extract essence vinegar bread cake cookie biscuit pie seasoning mix dressing spread chip crisp bar drink
beverage ball pickled candied cured jam jelly puree concentrate noodle pasta salad curry stew casserole burger sausage bacon ham nugget pizza sandwich wrap tart pudding custard
icecream sorbet frosting icing glaze marinade rub dip gravy cracker cereal granola yogurt sugarfree fatfree fermented beyond impossible tofurky quorn gardein oatly alpro violife daiya miyoko tikka masala pilau pilaf biryani
`);

/** Every word of every curated name that is not neutral: left over beside a match, it speaks against the match. */
export const foodWords = later((): ReadonlySet<string> => {
  const words = new Set<string>(strong);
  // A state left over is dealt with where the row is chosen.
  for (const name of byName().keys())
    for (const word of name.split(' '))
      if (!neutral.has(word) && !Object.hasOwn(stateWords, word)) words.add(word);
  return words;
});
