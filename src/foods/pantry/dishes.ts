/**
 * Dishes, ready meals and made things: never counted as one plain ingredient, though what they hold is known. A row is
 * `names | contents`, contents as in vegetables.ts; `@savoury` and their like stand for what such dishes are usually
 * made of, all of it 'look at the small print'. Common practice, no source: a dish's recipe differs from house to
 * house, so each row says rather too much than too little.
 */
const nuts = '?almond ?brazil-nut ?cashew ?hazelnut ?macadamia ?pecan ?pistachio ?walnut ?pine-nut';
const flesh = '?pork ?beef ?lamb ?poultry';
const gluten = '?wheat ?barley ?rye ?oats';
const savoury = `${gluten} ?milk ?egg ?soy ?celery ?mustard ?sulphites ?allium ?nightshade ?mushroom ?legume ?alcohol`;
const asian = `${savoury} ?fish ?crustaceans ?molluscs ?peanut ?sesame ${nuts} ?coconut`;
export const usually: Readonly<Record<string, string>> = {
  nuts,
  flesh,
  gluten,
  savoury,
  meal: `${savoury} ${flesh}`,
  asian: `${asian} ${flesh}`,
  curry: `${savoury} ?cashew ?almond ?coconut ?peanut ?sesame ?fish ?crustaceans ${flesh}`,
  sea: `${savoury} ?fish ?crustaceans ?molluscs`,
  sweet: `?wheat ?barley ?oats ?milk ?egg ?soy ?peanut ?sesame ?sulphites ?gelatine ?alcohol ?coconut ?chestnut ?caffeine ?honey ${nuts}`,
  any: `${asian} ?lupin ?chestnut ${flesh} ?game ?honey ?gelatine ?rennet ?caffeine ?insect`,
};

export const dishes = `
lasagna; lasagne sheet dish; moussaka pasta | wheat @meal ?rennet
cannelloni; manicotti; baked ziti; pasta bake; tuna pasta bake; pastitsio; timballo | wheat @meal ?fish
macaroni and cheese; mac and cheese; macaroni cheese; mac n cheese; cauliflower mac | wheat milk @meal
cauliflower cheese; dauphinoise; dauphinoise potato; potato dauphinoise; gratin; potato gratin; gratin dauphinois; au gratin; scalloped potato; tartiflette; raclette dish | milk @meal
ravioli; tortellini; agnolotti; cappelletti; filled pasta; stuffed pasta; stuffed shell | wheat ?egg @meal ?rennet @nuts ?crustaceans ?fish
spaghetti bolognese; spag bol; carbonara; spaghetti carbonara; spaghetti meatball; alfredo; fettuccine alfredo; pasta salad; stroganoff; beef stroganoff; tetrazzini; hamburger helper; cacio e pepe; puttanesca dish | wheat @meal ?fish
risotto; mushroom risotto; arancini; arancino | @meal ?rennet ?fish ?crustaceans ?molluscs
paella dish; seafood paella; jambalaya; gumbo; etouffee; crawfish boil; low country boil | @meal ?fish ?crustaceans ?molluscs celery
stew; beef stew; lamb stew; chicken stew; hotpot; lancashire hotpot; casserole; cassoulet; goulash; gulasch; ragout; ragu; ratatouille dish; tagine; bourguignon; beef bourguignon; coq au vin; pot au feu; hot pot; irish stew; chili con carne; chili with bean; chili and bean; chili no bean; chili without bean; beef chili; turkey chili; chicken chili; bean chili; white chili; vegetarian chili; vegan chili; veggie chili; chili bowl; chili soup; stewed steak; stewed beef; minced beef in gravy; steak in gravy; chicken in white sauce; chili dish; sloppy joe; pot roast dinner; brunswick stew; ropa vieja; feijoada; fricassee; navarin; osso buco dish; scouse; stovies; eintopf | @meal ?fish
bolognese; bolognese sauce; bolognaise; meat sauce; ragu sauce | ?celery @meal
soup; broth soup; bisque; lobster bisque; chowder; clam chowder; corn chowder; potage; veloute; minestrone; borscht; gazpacho; vichyssoise; consomme; mulligatawny; cock a leekie; scotch broth; cullen skink; cream soup; condensed soup; cup a soup; packet soup; soup mix; menudo; pozole dish; avgolemono; french onion soup | @meal ?fish ?crustaceans ?molluscs ?sesame ?coconut
lobster bisque; crab bisque; shrimp bisque; prawn bisque | crustaceans @meal ?fish ?molluscs
clam chowder | molluscs @meal ?fish ?crustaceans
fish soup; fish stew; bouillabaisse; cioppino; cullen skink; fish chowder; zarzuela; fish curry | fish @sea ?coconut
bisque | @meal ?fish ?crustaceans ?molluscs
ramen; ramen noodle soup; pho; pho soup; laksa; tom yum; tom yum soup; tom kha; hot and sour soup; wonton soup; miso soup; udon soup; noodle soup; mee goreng; nasi goreng; char kway teow; pad thai; pad see ew; chow mein dish; lo mein dish; singapore noodle; drunken noodle; japchae; yakisoba dish; okonomiyaki; takoyaki; gyudon; katsu curry; donburi; bibimbap; bulgogi; sushi; sushi roll; california roll; dragon roll; rainbow roll; spicy tuna roll; tuna roll; salmon roll; hand roll; maki; nigiri; poke; poke bowl; teppanyaki; sukiyaki; shabu shabu; hot pot soup; egg drop soup; stir fry; stirfry; chop suey; kung pao; kung pao chicken; general tso; general tso chicken; orange chicken; sweet and sour; sweet and sour pork; sweet and sour chicken; sesame chicken; lemon chicken; fried rice; egg fried rice; special fried rice; special fried; congee dish; larb; som tam; papaya salad; gado gado; satay; chicken satay; pork satay; beef satay; rendang; beef rendang; adobo dish; lumpia; sinigang; pancit; dan dan noodle; mapo tofu; crab rangoon; bao; bao bun; pot noodle; cup noodle; instant ramen | @asian
miso soup | soy @asian
pad thai | ?peanut @asian
spring roll; egg roll; eggroll; summer roll; wonton; dumpling; gyoza dish; potsticker dish; dim sum; shumai; siu mai; har gow; momo; manti; pierogi; pelmeni; vareniki; maultaschen; kreplach; xiaolongbao; soup dumpling; semmelknodel; knodel; knoedel; spaetzle; spatzle | wheat @asian
bao; bao bun; bun dish; suet dumpling | wheat @meal
prawn cracker; prawn toast; shrimp toast; shrimp chip; prawn puff; scampi; tempura prawn; prawn tempura; shrimp tempura; coconut shrimp; popcorn shrimp; prawn cocktail; prawn curry; shrimp cocktail; prawn salad; shrimp scampi | crustaceans @sea ?sesame ?coconut
tempura; vegetable tempura; tempura batter; tempura mix; tempura batter mix; batter; batter mix; pancake batter; yorkshire pudding batter; beer batter; pakora batter | wheat @meal ?beef
batter; batter mix; beer batter; pancake batter; battered; beer battered | wheat ?barley ?egg ?milk ?soy ?mustard ?alcohol
crumbed; breaded; breadcrumbed; panko crusted; panko crumbed; panee; in breadcrumb; bread coated; schnitzel; escalope dish; milanese; katsu; tonkatsu; kiev; cordon bleu; chicken kiev; chicken cordon bleu; goujon; chicken goujon; nugget; chicken nugget; chicken tender breaded; popcorn chicken; chicken dipper; chicken finger; chicken strip breaded; southern fried chicken; fried chicken; kentucky fried chicken; chicken parmigiana; parmigiana dish; chicken parmesan dish; chicken parm; fried fish; wiener schnitzel; crispy chicken; chicken katsu; corn dog; pig in blanket; pigs in blankets; toad in the hole; beef wellington; wellington; en croute; salmon en croute; country fried steak; chicken fried steak | wheat @meal ?fish
kiev; chicken kiev; cordon bleu; chicken cordon bleu; parmigiana; chicken parmigiana; chicken parm | wheat milk @meal
fish finger; fish stick; fish cake; fishcake; fish goujon; fish nugget; battered fish; breaded fish; fish and chip; fish ball; fish burger; crab stick dish; scampi bite; filet o fish | fish wheat @sea
fishcake; salmon fishcake; cod fishcake; thai fishcake | fish wheat @asian
fish pie; fisherman pie; kedgeree; fish taco | fish @sea
crab cake; crabcake; crab dip; crab salad | crustaceans @sea
calamari ring; fried calamari; salt and pepper squid | molluscs @sea
croquette; potato croquette; ham croquette; rissole; fritter; corn fritter; courgette fritter; beignet; frikadelle; frikadellen; kofta; kofte; cevapcici; patty; burger patty dish; bubble and squeak; rosti; potato cake; potato waffle; hash brown patty; latke; tater tot; potato puff; potato pancake; bhaji; onion bhaji; pakora; onion ring; arepa; empanada filling; boxty; duchess potato; potato skin; loaded potato; potato wedge seasoned; curly fry; smiley face; potato smile; potato gem; blooming onion | @meal ?fish
onion bhaji; bhaji; pakora; papad; poppadom; papadum; poppadum; papadam; pappadum; sev; bombay mix; chevda; chakli; murukku | legume @curry
samosa; empanada; pasty; cornish pasty; turnover; calzone; stromboli; knish; burek; borek; boreka; strudel; vol au vent; volauvent; spanakopita; tiropita; sausage roll; quiche; quiche lorraine; pot pie; steak pie; pork pie; chicken pie; meat pie; steak and kidney pie; steak and kidney pudding; steak and ale pie; tart; flan; galette; tourtiere; pithivier; tarte flambee; flammkuchen; pissaladiere; hand pie; hot pocket | wheat @meal ?fish ?sesame
quiche; quiche lorraine; frittata dish; spanish omelette; tortilla espanola; omelet; frittata; souffle; shakshuka; huevos rancheros; scotch egg; egg salad; eggs benedict; egg benedict; egg florentine; egg mayonnaise; egg mayo; egg sandwich; devilled egg; deviled egg; stuffed egg; egg muffin; egg bite; egg curry; pickled egg; tamago; tamagoyaki; egg foo young | egg @meal ?fish
quiche; quiche lorraine | wheat egg milk @meal
scotch egg | egg wheat @meal
french toast; eggy bread; bread and butter pudding; bread pudding; pain perdu; pancake; crepe; blini; blin; waffle; yorkshire pudding; popover; clafoutis; german pancake; dutch baby; drop scone; pikelet; crumpet; dosa dish; kaiserschmarrn; hotcake; flapjack pancake | wheat ?egg ?milk @sweet ?mustard
shepherd pie; shepherds pie; cottage pie; cumberland pie; hachis parmentier | ?milk @meal
pie; savoury pie; savory pie; pie filling savoury | @meal @sweet ?fish ?crustaceans
apple pie; fruit pie; cherry pie; pecan pie; pumpkin pie; key lime pie; lemon meringue pie; custard tart; bakewell tart; treacle tart; fruit tart; mince pie; cheesecake; cake; carrot cake; chocolate cake; sponge; sponge cake; victoria sponge; fruit cake; fruitcake; pound cake; angel food cake; birthday cake; cupcake; muffin; brownie; blondie; cookie; cookie dough; biscuit dough; cake mix; brownie mix; pancake mix; muffin mix; cookie mix; bread mix; pizza dough mix; waffle mix; scone; scone mix; doughnut; donut; eclair; profiterole; choux; choux bun; danish pastry; danish; cinnamon roll; cinnamon bun; hot cross bun; panettone; stollen; lebkuchen; gingerbread; gingerbread man; teacake; bun; chelsea bun; lardy cake; madeleine; financier; biscotti; cantucci; macaroon; amaretti; florentine; shortbread; digestive; jaffa cake; wafer; ice cream cone; baklava; halva cake; tiramisu; trifle; swiss roll; lamington; pavlova; roulade; battenberg; parkin; flapjack; granola bar; cereal bar; protein bar; energy bar; snack bar; energy ball; rice krispie treat; crumble; apple crumble; cobbler; peach cobbler; crisp dessert; strudel; churro; beignet; rum baba; savarin; mooncake; mochi; pop tart; toaster pastry; fig roll; garibaldi; malt loaf; banana bread; zucchini bread; cornbread mix; corn bread; cornbread; soda bread; monkey bread; brioche; pain au chocolat; polenta cake | ?wheat ?barley @sweet ?mustard
apple pie; cherry pie; pecan pie; key lime pie; custard tart; treacle tart; mince pie; sponge cake; victoria sponge; fruit cake; cookie dough; muffin; doughnut; donut; eclair; profiterole; danish pastry; cinnamon roll; cinnamon bun; hot cross bun; panettone; stollen; scone; shortbread; digestive; baklava; brioche; pain au chocolat; crumpet; pikelet; swiss roll; teacake; malt loaf; soda bread; pop tart; fig roll; pancake mix; croissant; lady finger; ladyfinger; savoiardi | wheat @sweet
eclair; profiterole; choux; choux bun; brioche; panettone; tiramisu; trifle; custard tart; meringue nest; meringue; pavlova; angel food cake; zabaglione; zabaione; sabayon; lemon meringue pie; royal icing; macaron; marzipan; frangipane; floating island; creme anglaise; creme patissiere; pastry cream; creme brulee; creme caramel; advocaat; eggnog; lemon curd; lime curd; orange curd; curd tart; tamagoyaki; aioli; aioli mayo; hollandaise; hollandaise sauce; bearnaise; bearnaise sauce; tartare sauce; remoulade; caesar dressing; thousand island dressing; gribiche; sauce gribiche | egg @sweet ?mustard ?fish ?celery
hollandaise; hollandaise sauce; bearnaise; bearnaise sauce; creme anglaise; creme patissiere; pastry cream; creme brulee; creme caramel; panna cotta; lemon curd; lime curd; orange curd; tiramisu; eggnog; sabayon sauce; custard tart | milk @sweet ?mustard ?celery
hollandaise; hollandaise sauce; bearnaise; bearnaise sauce | milk egg ?wheat ?soy ?mustard ?sulphites ?celery ?alcohol ?allium
lemon curd; lime curd; orange curd; passionfruit curd; fruit curd; curd spread; creme anglaise; creme patissiere; pastry cream; creme brulee; creme caramel; eggnog | milk egg ?sulphites ?wheat ?alcohol
meringue; meringue nest; pavlova | egg ?milk ?soy
zabaglione; zabaione; sabayon | egg alcohol ?milk ?sulphites
marzipan; almond paste; frangipane; amaretti; macaron; nougatine; praline; praline paste; gianduja; turron; marzipan paste; almond cake; bakewell tart; orgeat; almond croissant; romesco; romesco sauce; ajo blanco | almond ?wheat ?egg ?milk ?soy ?hazelnut ?peanut ?sulphites ?walnut ?cashew ?pistachio ?nightshade ?allium
nougat; torrone; nut brittle; pecan pie; walnut cake; coffee and walnut cake; nut roast; nut loaf; nut cutlet; nut bar; nut mix; nut and raisin; trail mix dish; baklava; pistachio paste; hazelnut paste; nut paste; nut meal; nut flour; nut milk; nut cheese; nut oil; dukkah; dukka; florentine; ferrero rocher; snickers; toblerone; nutella; gianduja; bounty | @nuts ?peanut ?sesame ?soy ?milk ?egg ?wheat ?oats ?honey ?sulphites
nut roast; nut loaf; nut cutlet; nut meal; nut flour; nut milk; nut mix; nut bar; nut paste; nut oil; nut crust | almond cashew hazelnut walnut ?pecan ?brazil-nut ?pistachio ?macadamia ?pine-nut ?peanut ?wheat ?oats ?egg ?milk ?soy ?celery ?honey ?sesame
nougat; torrone; halva with egg; divinity | egg @nuts ?peanut ?sesame ?milk ?honey ?wheat ?soy
nougatine; praline; praline paste; gianduja | almond hazelnut ?milk ?soy ?walnut ?pecan ?pistachio ?cashew ?peanut ?wheat
pistachio paste; pistachio butter; pistachio cream | pistachio ?almond ?milk ?soy ?cashew ?hazelnut
hazelnut paste; nutella; ferrero rocher | hazelnut ?milk ?soy ?wheat ?almond
pecan pie; pecan praline | pecan wheat ?egg ?milk ?soy
walnut cake; coffee and walnut cake; walnut bread; walnut loaf | walnut wheat ?egg ?milk ?soy ?barley ?caffeine
peanut brittle; peanut cluster; peanut bar; peanut cookie; peanut sauce; satay sauce; peanut dip; peanut dressing; peanut stew; maafe; reese; reese cup; peanut butter cup; snickers; groundnut stew | peanut ?wheat ?milk ?egg ?soy ?sesame ?fish ?crustaceans ?allium ?nightshade ?coconut @nuts
satay; chicken satay; pork satay; beef satay | ?peanut @asian
dulce de leche; caramel sauce; toffee sauce; butterscotch sauce; fudge sauce; cajeta; milk jam; caramel; toffee; fudge; butterscotch; banoffee; kulfi; lassi; mango lassi; rasmalai; ras malai; rasgulla; gulab jamun; kheer; rice pudding; tapioca pudding; arroz con leche; semolina pudding; milkshake; smoothie with milk; ambrosia rice; ice cream sundae; gelato; frozen yogurt; blancmange; panna cotta; junket; labneh; labneh dip; tzatziki; raita; cacik; milk pudding; cheesecake; cheese sauce; mornay; mornay sauce; cheese dip; queso dip; fondue; cheese fondue; cheese powder; cheese straw; welsh rarebit; cheese toastie; grilled cheese; cheese toast; cheesy; cheesy chip; creamed spinach; saag paneer; palak paneer; paneer tikka; mattar paneer; matar paneer; paneer curry; dal makhani; butter chicken; murgh makhani; makhani; malai kofta; shahi paneer; white chocolate; hot chocolate; cocoa drink; latte; cappuccino; mocha; ovaltine; horlicks; protein shake; whey; curd cheese pastry; malted milk | milk ?egg ?wheat ?barley ?soy ?celery ?mustard ?sulphites ?alcohol @nuts ?gelatine ?caffeine ?rennet ?allium ?nightshade ?coconut ?legume ?honey
gulab jamun; cheese straw; welsh rarebit; cheese toastie; grilled cheese; cheese toast; horlicks; ovaltine | milk wheat ?barley ?egg ?soy ?mustard ?alcohol @nuts ?rennet
malted milk; malted milk powder; malted milk ball; horlicks; ovaltine; malteser; malted drink; malt drink; malted; malt | barley ?milk ?wheat ?soy ?egg ?caffeine
malted milk; malted milk powder; horlicks; ovaltine; malteser | barley milk ?wheat ?soy ?egg ?caffeine
white sauce; bechamel; bechamel sauce; cheese sauce mix; parsley sauce; bread sauce; veloute sauce; mornay sauce; roux sauce | ?wheat ?milk ?egg ?soy ?celery ?mustard ?allium
bechamel; bechamel sauce | wheat milk ?egg ?soy ?celery
roux | wheat ?milk ?pork ?poultry
saltine; cracker; rice cracker; cheese cracker; oyster cracker; water biscuit; cream cracker; melba toast; crispbread; breadstick; grissini; pretzel; pretzel stick; croute; crouton; bagel chip; pita chip; tortilla wrap; bruschetta dish; garlic bread; garlic baguette; naan bread filled; stuffed naan; stuffed paratha; paratha; focaccia pizza; cheese bread; bread roll; bread | wheat ?rye ?barley ?milk ?egg ?soy ?sesame ?sulphites ?allium
garlic bread; garlic baguette; cheese bread; cheese cracker | wheat milk ?rye ?barley ?egg ?soy ?sesame ?allium
rice cracker; rice cake cracker; senbei; arare | ?soy ?wheat ?sesame ?crustaceans ?fish ?peanut ?milk
oatcake; oat cake; oat cracker; oat biscuit; hobnob; anzac biscuit; granola bar; muesli bar; oat bar; haggis; parkin | oats ?wheat ?barley ?milk ?egg ?soy @nuts ?honey ?sulphites ?sesame ?peanut ?lamb
pizza; pizza base topped; pepperoni pizza; margherita; pizza pocket; pizza roll; sandwich; toastie; panini; sub; hoagie; burger; hamburger; cheeseburger; hot dog bun filled; hotdog roll; gyro; doner; doner kebab; kebab; shawarma; falafel wrap; wrap; burrito; taco; quesadilla; enchilada; tamale; nacho; loaded nacho; fajita; chimichanga; tostada; chilaquiles; blt; club sandwich; reuben; philly cheesesteak; slider; big mac; ploughman; open sandwich; smorrebrod; canape | ?wheat @meal ?fish ?sesame
pizza; sandwich; toastie; panini; cheeseburger; burrito | wheat @meal ?fish ?sesame
burger; hamburger; burger patty; hamburger patty; beef burger; beefburger; turkey burger; chicken burger; lamb burger; veggie burger; bean burger; meatball; meatloaf; sausage meat; faggot; meat patty; salisbury steak; swedish meatball | ?wheat ?barley ?egg ?milk ?soy ?celery ?mustard ?sulphites ?allium ?legume @flesh ?sesame
veggie burger; bean burger; vegan burger; veggie sausage; vegan sausage; vegetarian sausage; veggie mince; vegan mince; quorn; seitan; vegan nugget; vegan chicken; plant based burger; plant burger; meat free mince; tofurky; vegetarian burger; veggie ball; vegan meatball; soy mince; soya mince; beyond burger; impossible burger | ?soy ?wheat ?barley ?egg ?milk ?celery ?mustard ?sesame ?sulphites ?legume ?mushroom ?allium @nuts ?oats ?lupin
quorn | mushroom ?egg ?milk ?wheat ?barley
seitan | wheat ?soy
salad; potato salad; pasta salad; macaroni salad; tuna salad; chicken salad; egg salad; coleslaw; slaw; caesar salad; greek salad; cobb salad; waldorf salad; nicoise salad; salad nicoise; russian salad; olivier salad; bean salad; three bean salad; ham salad; seafood salad; fattoush; tabbouleh; tabouli; caprese; panzanella; coronation chicken; salad bowl; salad kit; taco salad; ambrosia salad | @meal ?fish ?crustaceans ?molluscs ?peanut ?sesame @nuts
caesar salad; caesar dressing | ?fish ?egg ?milk @meal
tuna salad; salad nicoise; nicoise salad; tuna mayo; tuna mayonnaise; tuna melt; tuna pasta; tuna casserole | fish @meal
tabbouleh; tabouli; kibbeh; kibbe; couscous salad; couscous mix; fattoush; panzanella; tarhana; bulgur salad; stuffing; sage and onion stuffing; stuffing mix; seitan dish; matzo ball; matzo ball soup; kugel; noodle kugel; semolina cake; bread sauce; savoury rice wheat | wheat @meal @nuts
waldorf salad | celery walnut @meal
tarhana; trahana; kishk; kashk with wheat | wheat milk ?nightshade ?allium ?celery
seafood rice; seafood mix; seafood pasta; seafood stew; seafood pizza; seafood stick; seafood medley dish; fruits de mer; frutti di mare; seafood cocktail; surimi salad; seafood platter; seafood | fish crustaceans molluscs ?egg ?wheat ?soy ?milk ?celery ?mustard ?sulphites ?allium ?alcohol
surimi; crab stick; seafood stick; imitation crab | fish ?crustaceans ?molluscs ?egg ?wheat ?soy ?milk ?sulphites
bagna cauda; anchoiade; anchovy butter; anchovy paste; gentleman relish; taramasalata; tarama; fish roe dip; rouille; fish paste; fish stock; fish broth; fish fumet; fumet; court bouillon fish; garum; bonito flake; katsuobushi; bonito; dashi powder; fish oil; cod liver oil; salmon pate; mackerel pate; tuna pate; smoked salmon pate; kipper pate; gravlax; gravadlax; lox; rollmop; brandade; lutefisk; gefilte fish; ceviche; sashimi; poke; escabeche fish; boquerones; gentleman's relish | fish ?milk ?egg ?wheat ?soy ?sesame ?celery ?mustard ?crustaceans ?molluscs ?sulphites ?allium
tapenade; olive tapenade; olive paste; olive spread | ?fish ?sulphites ?almond ?mustard ?allium
bagna cauda; anchovy butter | fish milk ?allium ?walnut
furikake | ?fish ?sesame ?soy ?egg ?crustaceans ?wheat ?milk
fish oil; cod liver oil; krill free oil | fish ?soy
krill; krill oil; langoustine; langostino; scampi tail; dublin bay prawn; norway lobster; tomalley; crab paste; crab butter; shrimp paste; prawn paste; dried shrimp; sambal terasi; sambal belacan; terasi; belacan; crayfish tail; yabby; moreton bay bug; marron; spiny lobster; crab stock; lobster stock; shellfish stock; prawn stock; shrimp stock; shrimp powder; xo sauce | crustaceans ?fish ?molluscs ?soy ?wheat ?sulphites ?nightshade ?allium
sambal; sambal oelek dish; xo sauce | ?crustaceans ?fish ?molluscs ?soy ?nightshade ?allium ?peanut ?wheat
escargot; snail; whelk; winkle; periwinkle; abalone; cockle; razor clam; geoduck; conch; sea snail; limpet; cuttlefish; squid ink; cuttlefish ink; oyster extract; squid | molluscs ?milk ?allium ?sulphites
lecithin; soy lecithin; soya lecithin | ?soy ?egg
soy lecithin; soya lecithin; yuba; tofu skin; bean curd skin; beancurd skin; beancurd; bean curd; natto; okara; soy nut; soya nut; soy flour; soy protein; soya protein; soy protein isolate; tempeh; tempe; aburaage; inari; edamame bean; soy crisp; soy milk powder; tvp; textured vegetable protein; soy mince; soya mince; soya chunk; soy curl; doenjang; gochujang dish; ssamjang; black bean sauce; fermented bean curd; hoisin dish; soy sauce powder; shoyu powder; tamari powder | soy ?wheat ?barley
soy sauce powder; shoyu powder; soya sauce powder | soy wheat
gingelly oil; gingelly; gingili oil; til oil; til; sesame paste; gomasio; gomashio; za'atar; zaatar; halva; halwa sesame; hummus dish; baba ganoush; babaganoush; baba ghanoush; baba ganush; moutabal; mutabal; benne seed; benne; sesame bar; sesame snap; tahina; tahini sauce; tahini dressing; shichimi; dukkah; dukka; everything bagel seasoning; everything bagel; sesame bread; sesame bun; sesame cracker; sesame bagel; simit | sesame ?wheat ?milk ?egg ?soy ?hazelnut ?almond ?pistachio ?sulphites ?allium ?mustard ?legume
sesame bread; sesame bun; sesame cracker; sesame bagel; simit; everything bagel | sesame wheat ?milk ?egg ?soy ?barley ?allium
shichimi; shichimi togarashi; togarashi | ?sesame ?mustard
mirepoix; soffritto; sofrito mix; battuto; holy trinity; suppengrun; suppengrn; soup vegetable; soup green; celery salt; celery seed; celery powder; celery root; bloody mary mix; clamato; v8; waldorf | celery ?allium ?nightshade ?sulphites
clamato | celery molluscs nightshade ?sulphites
panch phoron; panch phoran; panch puran; mustard glaze; honey mustard; mustard sauce; mustard dressing; mustard vinaigrette; mustard cream; mustard crust; piccalilli; chow chow; mostarda; senf; moutarde; colman's; kasundi; sambar powder; mustard leaf; mustard green; mustard pickle | mustard ?wheat ?barley ?egg ?milk ?soy ?sulphites ?celery ?honey ?alcohol ?allium
mustard; honey mustard chicken | mustard ?sulphites ?wheat
dressed crab | crustaceans ?egg ?milk ?mustard ?wheat ?soy
celery remoulade; celeriac remoulade | celery egg ?mustard ?milk ?sulphites ?soy
wasabi paste; wasabi pea; wasabi; wasabi powder | ?mustard ?soy ?wheat ?milk ?sulphites
devilled; deviled; curried; curry flavoured; peri peri chicken; blackened; cajun; cajun spiced; jerk; jerk chicken; tandoori; tandoori chicken; tikka; chicken tikka; tikka masala; chicken tikka masala; korma; vindaloo; madras; jalfrezi; balti; dopiaza; bhuna; rogan josh; pasanda; biryani; pilau; pilaf; pilau rice; dal; dal tadka; daal; dhansak; chana masala; sambar; rasam; thoran; keema; keema curry; curry; vegetable curry; chicken curry; lamb curry; thai curry; green curry; thai green curry; red curry; thai red curry; yellow curry; massaman curry; massaman; panang curry; curry sauce; curry dish; masala; masala sauce; kofta curry; bunny chow; rendang; saag; saag aloo; aloo gobi; bombay potato; chaat dish; pav bhaji; vada; medu vada; idli dish; uttapam; upma; poha dish; kedgeree; coronation | @curry
massaman; massaman curry; korma; chicken korma; pasanda | ?peanut ?cashew ?almond @curry ?molluscs
tikka; chicken tikka; tandoori chicken; tandoori; chicken tikka masala; tikka masala | ?milk @curry
dal; daal; dal tadka | legume @curry
upma; semolina halwa | wheat @curry
buttered; butter sauce; garlic butter; herb butter; brown butter; beurre blanc; brandy butter; lemon butter; butter icing; buttercream; butter frosting; buttery; buttered crumb; creamed; cream sauce; cream filling; creamy sauce; cream icing; cream cheese icing; cream cheese frosting; whipped topping cream; creamy dressing; yogurt sauce; yogurt dressing; yoghurt dressing; sour cream dip; ranch; ranch dressing; blue cheese dressing; buttermilk dressing; cheese stuffing; cheese topping; cheese crust; milky; custard; instant pudding; instant pudding mix; pudding mix; pudding; angel delight; vanilla pudding; chocolate pudding; bread and milk; ice cream; icecream; sherbet; semifreddo; mousse; chocolate mousse; fool; syllabub; posset; infant formula; baby formula; formula; baby milk; toddler milk; follow on milk; casein; caseinate; sodium caseinate; lactose; whey powder; milk protein; milk solid; milk sugar; ghee butter; skyr; quark; quark cheese; fromage blanc; curd; curds; kashk; ayran; buttermilk powder; non dairy creamer; nondairy creamer; coffee creamer; creamer; coffee whitener; whitener | ?milk ?egg ?wheat ?soy ?sulphites ?gelatine ?mustard ?celery ?allium @nuts
buttered; garlic butter; herb butter; brown butter; beurre blanc; brandy butter; lemon butter; cream sauce; creamy sauce; casein; caseinate; sodium caseinate; lactose; whey powder; milk protein; milk solid; milk sugar; skyr; quark; sherbet; semifreddo; kashk; ayran; buttermilk powder; yogurt sauce; sour cream dip; syllabub; posset; ranch; ranch dressing; blue cheese dressing | milk ?egg ?wheat ?soy ?sulphites ?gelatine ?mustard ?celery ?allium
garlic butter; herb garlic butter; garlic and herb butter; cowboy butter; cafe de paris butter; kiev butter | milk allium ?mustard ?fish ?celery
casein; caseinate; sodium caseinate; lactose; whey powder; milk protein; milk solid; milk sugar | milk
non dairy creamer; nondairy creamer; coffee creamer; creamer; coffee whitener; whitener | ?milk ?soy
infant formula; baby formula; formula; baby milk; toddler milk; follow on milk | ?milk ?soy ?fish ?egg
instant mash; mash; mashed potato dish; smash; smash potato | ?milk ?sulphites ?soy ?celery ?wheat ?allium nightshade
floured; flour coated; dredged; seasoned flour; dumpling dough; pastry; suet pastry; pie dough; pastry case; flan case; pie crust; crust; cracker crumb; crumb; crumb topping; streusel; streusel topping; crumb coating; biscuit crumb; biscuit base; cookie crumb; graham crust; gluten; wheat gluten; wheat starch; durum; semola; pasta; noodle; chow mein noodle; crispy noodle; fideo; fideos; seitan strip; fregola; orzo dish; maftoul; freekeh dish; teff bread; bread stuffing; bread coating; sourdough starter; pasta water; pasta cooking water; noodle water | wheat ?egg ?milk ?soy ?barley ?sulphites
gluten | wheat ?rye ?barley ?oats
noodle | ?wheat ?egg ?soy
crumb; crust | ?wheat ?milk ?egg ?soy @nuts
glaze; coating; crusted; coated; dressing; vinaigrette; marinade; marinated; rub; spice rub; seasoning; seasoned; seasoning mix; spice mix; spice blend; sauce; sauce mix; dip; dipping sauce; spread; topping; filling; stuffed; filled; loaded; smothered; glazed; flavoring; flavor; flavored; essence; premix; mix; ready mix; rice mix; noodle mix; dinner kit; meal kit; kit; ready meal; tv dinner; frozen meal; microwave meal; takeaway; takeout; leftover; leftovers; bake; pudding savoury; hash; corned beef hash; roast dinner; buddha bowl; bowl dish; platter; mezze; antipasti; antipasto; tapas; crisps and dip; party food; snack; snack mix; party mix; trail mix; protein powder; protein shake powder; meal replacement; supplement; gravy mix; casserole mix; rice a roni; condiment; relish; chutney; pickle; ferment; powder; paste; pate; terrine; mousse savoury; spread cheese; forcemeat; skewer; kabob; brochette | @any
tater tot; onion ring; hash brown patty; fried onion; crispy onion; fried shallot; crispy shallot; french fried onion; crispy fried onion; potato waffle; curly fry; fry onion | ?wheat ?milk ?egg ?soy ?celery ?mustard ?allium ?nightshade
fried shallot; fried onion; crispy onion; crispy shallot; french fried onion; crispy fried onion; onion ring | allium ?wheat ?milk ?egg ?soy
bacon bit; bacon bits; bacon flavoured bit; baco | ?soy ?pork ?wheat ?celery
corn nut; corn nuts; giant toasted corn | ?soy
licorice; liquorice; black licorice; licorice candy; red licorice | ?wheat ?barley ?gelatine ?soy ?sulphites
amaretto; amaretto liqueur; disaronno; frangelico; nocino; creme de noyaux; nut liqueur | alcohol ?almond ?hazelnut ?walnut ?sulphites
baileys; irish cream; cream liqueur | alcohol milk ?barley ?egg ?sulphites
oatmilk; oat drink; oat creamer; oat cream | oats ?wheat ?barley ?soy
dauphine potato; pommes dauphine; choux potato | wheat egg milk nightshade
yorkshire pudding; toad in the hole | wheat egg milk ?pork ?beef ?sulphites ?soy ?mustard
vegetable; veg; veggie; mixed vegetable; vegetable medley; root vegetable; garden vegetable | ?celery ?allium ?nightshade ?mushroom ?legume
meat; cooked meat; cold cut; cold meat; lunch meat; mixed grill; mince meat; offal | meat @flesh ?game ?milk ?soy ?wheat ?egg ?celery ?mustard ?sulphites
poultry; fowl | poultry
fish; white fish; oily fish; fish fillet; fish flake; fish steak | fish
roe; caviar; fish roe; lumpfish roe; milt; masago; tobiko; ikura | fish
shellfish; crustacean; seafood medley; sea food | ?fish ?crustaceans ?molluscs
crustacean; shrimp or prawn | crustaceans
mollusc; mollusk; bivalve | molluscs
shellfish | crustaceans molluscs
nut; nuts; tree nut; treenut; mixed nut; nut piece; chopped nut; nut crumb; nut topping; praline nut | almond cashew hazelnut walnut ?brazil-nut ?macadamia ?pecan ?pistachio ?pine-nut ?peanut ?chestnut
monkey nut; cob nut free | peanut
seed; seeds; mixed seed; seed mix; omega seed | ?sesame ?mustard ?celery
seeds topping | ?sesame ?mustard
dairy; dairy product; milk product | milk
cereal; breakfast cereal; grain; mixed grain; multigrain; flake cereal | ?wheat ?barley ?rye ?oats ?milk ?soy @nuts ?honey
legume; pulse; bean | legume ?soy ?lupin
lupin; lupine; lupini; lupini bean; lupin bean; lupin seed; lupin flake | lupin
sulphite; sulphur dioxide; sodium metabisulphite; metabisulphite; campden tablet; e220; e223; potassium metabisulphite | sulphites
allium | allium
chocolate coated; chocolate covered; chocolate coating; chocolate spread; chocolate sauce; chocolate bar; candy bar; candy; sweets; confectionery; chocolate drink; chocolate egg; mars bar; kit kat; kitkat; twix; oreo; m and m; smarties; truffle chocolate; chocolate truffle; ganache; frosting; icing | ?milk ?soy ?wheat ?barley ?egg @nuts ?peanut ?sesame ?gelatine ?sulphites ?caffeine ?coconut ?alcohol
kit kat; kitkat; twix; oreo | wheat ?milk ?soy ?barley @nuts
chocolate spread; chocolate hazelnut spread | ?milk ?hazelnut ?soy ?almond ?peanut
ganache | ?milk ?soy ?alcohol @nuts
coconut milk powder; coconut cream powder | coconut ?milk ?sulphites
coconut macaroon | coconut ?egg ?wheat ?milk ?almond ?sulphites
surstromming; roe dip | fish
black pudding; blood sausage; white pudding; blutwurst; boudin noir; morcilla | pork ?oats ?barley ?wheat ?milk ?soy ?sulphites ?allium ?celery ?mustard
haggis | oats ?lamb ?beef ?wheat ?barley ?milk ?allium
salsify; scorzonera; black salsify; oyster plant | -
pea protein; pea protein powder; pea protein isolate; yellow pea protein | legume ?soy
rice protein; hemp protein; hemp protein powder | ?soy
vital gluten | wheat
chocolate biscuit; jammie dodger; custard cream; bourbon biscuit; rich tea biscuit; ginger nut; ginger biscuit; ginger snap; gingersnap; ginger nuts; hob nob; wafer biscuit | wheat @sweet
corned beef hash | beef @meal
egg wash; egg glaze; egg noodle; egg pasta; eggy; egg mayonnaise; egg powder; powdered egg; egg white powder; dried egg white; albumen; albumin; egg replacer with egg; tartare; steak tartare; mayo; mayonnaise; aioli | egg ?wheat ?mustard ?milk ?soy ?sulphites
egg noodle; egg pasta | egg wheat ?soy
egg white powder; dried egg white; albumen; albumin; egg powder; powdered egg; egg glaze; egg wash | egg ?milk
steak tartare | beef egg ?mustard ?fish ?sulphites ?allium
non dairy milk; plant milk; plant based milk; vegan milk; vegetable milk; alternative milk; dairy free milk; milk alternative; milk substitute; dairy alternative; vegan yogurt alternative | ?soy ?oats ?almond ?cashew ?hazelnut ?coconut ?legume ?barley
egg replacer; egg substitute; vegan egg | ?egg ?soy ?milk ?wheat ?lupin
meat substitute; meat alternative; meat replacer; mock meat; vegan meat; imitation meat | ?soy ?wheat ?egg ?milk ?mushroom ?legume ?celery ?mustard
eclair; profiterole; choux; choux bun; brioche; panettone; custard tart; trifle; swiss roll; french toast; sponge cake; victoria sponge | wheat egg @sweet
tiramisu | wheat egg milk @sweet
ice cream; icecream; gelato; frozen yogurt; sundae | milk ?egg @sweet
meringue; meringue nest | egg ?milk ?soy
coconut macaroon; macaroon | ?almond ?egg ?coconut @sweet
egg fried rice | egg @asian
tuna mayonnaise; tuna mayo; tuna salad | fish egg @meal
baklava | wheat @nuts ?milk ?honey ?egg ?sesame ?peanut
gyoza; potsticker | wheat @asian
ravioli; tortellini; agnolotti; cappelletti; filled pasta; stuffed pasta | wheat @meal ?rennet @nuts ?crustaceans ?fish
msg; monosodium glutamate; ajinomoto; accent seasoning; citric acid; ascorbic acid; calcium chloride; lye; baker ammonia; baker's ammonia; potash; tartaric acid; vitamin c powder; kansui; ammonium bicarbonate; alum; pickle crisp; sodium citrate; malic acid; activated charcoal | -
gnocchi; potato gnocchi; fresh gnocchi; gnocchi di patate | nightshade ?wheat ?egg ?milk ?sulphites
dried shrimp; dried prawn; shrimp powder; tiny dried shrimp; dried baby shrimp | crustaceans ?sulphites
tzatziki; raita; cacik; yogurt sauce; tzatziki sauce | milk ?egg ?mustard ?allium
garlic sauce; toum | allium ?egg ?milk ?mustard
tapenade; olive tapenade; olive paste; black olive tapenade; olive spread | ?fish ?sulphites ?almond ?mustard ?allium
malted milk; malted milk powder; horlicks; ovaltine; malteser | barley milk ?wheat ?soy ?egg ?caffeine
soy yogurt; soya yogurt; soy cream; soya cream | soy
juice; fruit juice; own juice; natural juice; light syrup; heavy syrup; syrup; sugar syrup; brine | ?sulphites
`;
