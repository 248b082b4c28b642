import { unitOf } from './units.ts';
import { neutral, stateWords } from './vocabulary.ts';
import { foldedWords } from './words.ts';

const set = (text: string) => new Set(text.split(/\s+/).flatMap((word) => foldedWords(word)));

/** Words the matcher passes over, though they may be the name of something that holds food of its own. */
const notClosed = set(`
mash crumble snack style homestyle dressed topped pickled candied cured deli marinated seasoned coated glazed filled stuffed
flavored wheat nut soy salt sugar corn seed grain veggie mix rub dish food product sushi tart bake brittle char kid crisp mince orange salty oil ice
flavored de la le du des con al alla di del en mit vegan blond powdered creamy
`);

/** How food is cut, bought, kept, cooked and measured, and the small words of a sentence: none of them brings food. */
const more = set(`
chop dice mince slice shred cube peel halve seed core trim wash rinse drain clean crush grind beat toast roast fry bake boil steam blanch soak melt soften cool chill
chopping slicing grating peeling peelings crosscut deseed destemmed stem stemless unstemmed destoned debearded descaled scaled skinned skinning gutted headless unhulled husked unhusked
husk shelled shucked cleaned plucked jointed spatchcocked butterfly frenched tied untied rolled unrolled folded flattened bashed bruise crinkle lattice hand-cut
handcut diagonal bitesize bitesized mouthful finger fingers batons baton brunoise chiffonade coin coins disc discs disk lengthways widthways longways sticks matchsticks shard shards shaving shavings
scrap scraps segmented segment segments sliver slivered sliced slivers strand strands stripped strip strips thick-sliced thin-sliced thicksliced thinly-sliced thinner thicker thickness torn wedges zested
small-diced smalldice largedice finedice mediumdice macerated muddled pressed unpressed rubbed pricked scraped scored shaken stirred swirled sieve sift rehydrated reconstituted reheated refrigerated unrefrigerated thaw thawing defrost defrosting
blended blitzed pulsed processed liquidised liquidized liquified finelychopped finelydiced roughlychopped
browned brown caramelized caramelised charred seared sauteed saute sweated wilted wilt griddled barbecued bbqd broiled broil poach poached simmered simmer braised stewed microwave microwaved panfried pan-fried deepfried deep-fried
airfried air-fried oven pan skillet pot bowl plate jug saucepan wok grill barbecue hob slow cooker pressure instant-pot processor blender mixer
cooked-through halfcooked half-cooked parcooked par-cooked parbaked prebaked precooked pre-cooked prewashed pre-washed precut pre-cut preshredded pre-shredded pregrated pre-grated presliced pre-sliced prechopped pre-chopped prepeeled
readymade ready-made readytouse ready-to-use readytoeat readycooked quick-cook quickcook easycook easy-cook quickcooking quick-cooking longcooking long-cooking
crispy crisped golden brittle bubbly fork-tender al-dente dente al aldente medium-rare rare welldone done
bone boned bones bonein boneless skin skinon skinoff skinless headon headoff tailon tailoff shellon shelloff leafon rind rinds rindon fat-trimmed trimmed untrimmed lean leaner leanest fattier streaky thick-cut
center-cut centre-cut best-quality goodquality good-quality high-quality highquality premium select choice prime grade grade-a fancy gourmet artisan artisanal luxury finest value budget basic basics essential
nice nicely lovely proper properly decent beautiful beautifully superb top-quality
organic bio nonorganic biodynamic nongmo gmo ethically ethical humanely grassfed grass-fed pasture pastureraised pasture-raised cornfed corn-fed outdoor-bred outdoorbred reared farm farm-fresh local locally grown homegrown home-grown wild-caught sustainably msc fairtrade
seasonal inseason in-season new-season early late winter summer spring autumn fall
hothouse greenhouse hydroponic english persian lebanese japanese european american asian oriental british irish scottish welsh french italian spanish portuguese greek turkish german austrian swiss dutch belgian danish norwegian swedish finnish polish russian hungarian ukrainian
mexican cuban brazilian peruvian argentinian chilean caribbean jamaican indian pakistani sri-lankan thai vietnamese chinese cantonese korean malaysian indonesian filipino moroccan egyptian ethiopian african israeli australian zealand nz canadian uk usa us u.s
large larger largest small smaller smallest medium-large mediumlarge medium-small smallish largish biggish big bigger biggest tiny teeny huge giant jumbo mini miniature petite baby babies tall short long longer longish fat thin skinny slim slender heavy light lighter lightly round oval flat square narrow wide
plump juicy ripe riper ripened unripe underripe overripe just-ripe firmripe fresh fresher freshest freshly freshpicked fresh-picked day-old dayold stale leftover old older young younger aged mature matured mellow
hot warm warmed lukewarm tepid cold ice-cold icecold chilled frosty room temperature temp ambient boiling boiled piping
high low higher lower medium strong mild milder weak full half third quarter quarters fifth eighth dozen pair couple few several handful handfuls bunch bunches bits bit piece pieces lot lots plenty amount quantity quantities portion portions serving servings share batch recipe recipes
double triple twice once extra more less fewer least most much many enough additional another others other rest remainder remaining reserve reserved reserving kept keep keeping set aside
heaped heaping rounded levelled leveled scant generous generously packed loosely tightly firmly lightly gently carefully quickly slowly evenly thoroughly completely entirely partially partly slightly barely nearly almost approximately approx about around roughly circa exactly precisely
very really quite rather fairly pretty super ultra extremely too so just only simply even still already yet also again ideally optionally usually normally generally typically traditionally mainly mostly
i you we he she they it its me my your yours our their them us this these those here there is are was were be been being am do does did doing have has had having get gets got getting go goes going make makes making made use uses used using need needs needed want wants wanted likes liked love loves prefer prefers preferred
preference recommend recommended suggest suggested find found buy buys bought sold available work works well good great fine ok okay better best perfect perfectly favourite favorite favorites
choose chosen choosing option options optional required necessary desired wish wished wanted depending depends according adjust adjusted taste tastes tasting test
come comes call calls called known label labelled labeled says say note notes noted footnote tip tips page above below following link instructions instruction directions method step steps package packet pack packs carton cartons tin tins tinned can cans canned jar jars jarred bottle bottled bottles tub tubs bag bags bagged box boxed boxes container containers sachet sachets envelope pouch tube wrapper wrapped unwrapped
weigh weighs weight weighed weighing total net gross drained undrained yield yields measured measure measures measuring volume worth size sized sizes count per each apiece every all both whole entire
before after during while between through throughout off out up down back away apart together separate separately divided divide dividing split combined equal equally same different similar various
cut cuts cutting prepared prepare preparation prep ready made remove removed removing discard discarded discarding reserve save saved clean dry dried pat patted patting blot blotted squeeze squeezed squeezing wring wrung press toss tossed tossing mix mixed mixing stir stirring whisk whisked whisking beaten lightly-beaten well-beaten combine add added adding pour poured pouring place placed put scatter scattered sprinkle sprinkled sprinkling drizzle drizzled drizzling brush brushed brushing coat rub grease greased greasing dust dusting roll rolling line lining lined
serve served serving garnish garnished garnishing decorate decorated decorating decoration finish finished finishing top topping fry frying shallow-frying deep-frying deepfrying sauteing cooking baking roasting grilling boiling steaming blanching poaching stewing braising simmering marinating soaking rinsing washing thickening thicken binding kneading dipping cover covered covering submerge
minute minutes min mins hour hours hr hrs second seconds day days night overnight week weeks month months morning advance ahead time times
inch inches cm mm centimetre centimetres centimeter millimetre metre foot degree degrees fahrenheit celsius
gram grams kilo kilos pound pounds ounce ounces litre liter pint cup cups spoon spoons spoonful teaspoon tablespoon glass mug
yellow red green white black brown purple orange pink blue gold golden-brown dark darker pale paler bright colour color coloured colored colourful colorful multicolored multicoloured rainbow tricolor tricolour striped variegated
plain simple regular ordinary standard normal classic traditional original authentic everyday common real true pure natural naturally genuine proper unadulterated
unsalted salted lightly-salted sea-salted unsweetened sweetened lightly-sweetened sugared unflavoured unflavored plain-flavored unbleached bleached unrefined refined enriched fortified unenriched unfortified unfiltered filtered pasteurised pasteurized unpasteurised unpasteurized homogenised homogenized unhomogenised uht longlife long-life shelf-stable shelfstable
lowfat low-fat reducedfat reduced-fat fullfat full-fat fatfree fat-free nonfat non-fat halffat half-fat lowsodium low-sodium reducedsodium reduced-sodium nosalt no-salt lowsalt low-salt reducedsalt reduced-salt saltfree sugarfree sugar-free lowsugar low-sugar lowcarb low-carb keto lite diet calorie calories free unsulphured unsulfured sulphurfree
glutenfree gluten-free nondairy non-dairy dairyfree dairy-free lactosefree lactose-free eggfree egg-free nutfree nut-free soyfree soy-free wheatfree wheat-free meatless plantbased vegetarian veggie-friendly kosher halal
fibre fiber raw uncooked unroasted roasted unroasted toasted untoasted unblanched blanched smoked unsmoked coldsmoked cold-smoked hotsmoked hot-smoked grilled chargrilled char-grilled fire-roasted fireroasted oven-roasted ovenroasted oven-dried sundried sun-dried air-dried airdried freezedried freeze-dried dehydrated dry-roasted dryroasted frozen fresh-frozen iqf vacuum-packed vacuumpacked shrink
coarse coarsely fine finely finer superfine medium-coarse chunky smooth crunchy crisp soft softer softened hard harder tender crumbly flaky flaked flake flakes sticky loose lumpy stiff stiffly silky velvety thick thickly clear cloudy sparkling still
heart hearts head heads stalk stalks stem stems sprig sprigs spear spears floret florets crown crowns clove cloves bulb bulbs leaf leaves leafy blade blades frond fronds root roots rib ribs stick tip tips top tops bottom bottoms end ends pod pods kernel kernels ear ears cob cobs stone stones pit pits pips pip core cores
fillet fillets steak steaks loin loins joint joints rack chunk chunks cutlet cutlets medallion medallions chop chops shank shanks thigh thighs leg legs wing wings breast breasts drumstick drumsticks side sides portioned slab slabs rasher rashers link links log logs wheel wheels block blocks brick bricks ball balls cube cubes sheet sheets loaf loaves round rounds ring rings nest nests square squares knob thumb
family friend friends kid kids adult adults people person guest guests
variety varieties type types kind kinds sort sorts brand brands branded store-brand supermarket shop shops store stores market grocer grocery butcher butchers fishmonger fishmongers baker bakery greengrocer section aisle counter online international
store-bought storebought shop-bought shopbought bought homemade home-made housemade from-scratch scratch own
concentrated double-concentrated liquid liquids solid solids nonstick spray
waxy floury starchy allrounder all-rounder maincrop mealy russet maris piper edward desiree yukon rooster charlotte desirée vivaldi nicola idaho
maldon himalayan iodised iodized uniodized coarse-grained fine-grained finegrained rock flaky-sea pearl
gala fuji braeburn bramley cox smith granny honeycrisp jonagold pippin conference comice bartlett bosc anjou williams hass cavendish medjool deglet noor valencia navel seville eureka unwaxed waxed victoria
roma plum vine heirloom beefsteak san marzano campari globe bell pointed romano long-stem longstem tenderstem
spanish-style vidalia maui walla button closed-cap open-cap flat-cap closedcup flatcap
basmati-type longgrain long-grain shortgrain short-grain mediumgrain medium-grain roundgrain stoneground stone-ground extra-strong breadmaking
first second third last next final one two three four five six seven eight nine ten eleven twelve fifteen twenty hundred thousand
w s m l xl t o g x ca c b d f h j k p q r u v z th st nd rd ea lg sm med pkg pkt oz lb kg ml tsp tbsp tbs
and-more etc please thank thanks yes haha lol hmm yum but because since due where how what whatever whichever who why unless although though whether either neither nor
ingredient ingredients list shopping item items product products food foods cook cooks chef kitchen home house
liking hand hands mortar pestle knife fork grater mandoline mandolin peeler sieve colander cheesecloth muslin paper towel towels foil cloth string tray
heat heating preheated flame fire smoke smoky smoking burner stove stovetop
side-dish-free lidded lid open opened unopened closed sealed intact attached unattached loose-leaf bonded
consistency texture strength spiciness sweetness acidity
combination along especially imported domestic matter matters pared paring chunked plunged headnote casing casings shell shells tail tails shoulder neck spun tough woody damaged blemished bruises moon moons halfmoon millimeter millimeters millimetres millimetre
moistened moist dampened drizzling trickle glug swirl dollop dollops blob knobs nub spoonfuls mounded mound level levelling heap heaps pinch pinches dash dashes splash splashes squeeze squirt crack cracks grind grinds twist twists
broken breaking crumbled snapped shattered bashed smash smashed smashing mashing mashed ricing sieving straining draining pressing slicing-thin tearing ripping picking stripping plucking cored scooped scooping hollowed hollow slit slits scoring pricking pierced piercing skewered threaded
discarding saving leaving left leave including includes excluded attached stick-on weighs-about totalling totaling total-weight equivalent equals equal approximate average medium-size standard-size regular-size
dusted greased lined warmed reheated boiled browned charred flambeed flamed deglazed reduced skimmed strained brushed drizzled sprinkled scattered spooned piped spread layered stacked arranged mounded wrapped tossed turned flipped
could can will would should shall must zest zests garnished
peppery zingy tangy tart sweet sweeter sour bitter sharp pungent aromatic fragrant spicy savory savoury salty fruity earthy herbaceous grassy floral rich bold robust intense subtle delicate
clean-shaven peeled unpeeled half-peeled scrubbed unscrubbed washed unwashed rinsed unrinsed stoned unstoned pitted unpitted seeded unseeded deseeded seedless unshelled skinned
`);

/** Words of manner, quality, measure and speech. A word is in this list or it is not: no word enters by a slip. */
export const closedWords: ReadonlySet<string> = (() => {
  const words = new Set([...neutral, ...Object.keys(stateWords), ...more]);
  for (const word of notClosed) words.delete(word);
  return words;
})();

/** '400', '400g', '2%', '14oz', '1st': a figure with or without its unit. */
export function isFigure(word: string): boolean {
  const [, unit] = /^\d[\d.,]*(\p{L}*)%?$/u.exec(word) ?? [];
  return (
    unit !== undefined &&
    (unit === '' || /^(?:st|nd|rd|th|x|in|ish|c|f)$/.test(unit) || unitOf(unit) !== undefined)
  );
}
