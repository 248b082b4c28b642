/** Grains, flours, pasta, noodles, breads, crackers, doughs. Rows as in vegetables.ts. */
export const grains = `
20081 | flour; plain flour; all purpose flour; white flour; wheat flour; unbleached flour; unbleached plain flour; bleached flour; ap flour; 00 flour; tipo 00 flour; cake or plain flour; pastry flour; maida; white plain flour; soft flour; flour unbleached | wheat ?barley | cup 125, cup sifted 115, cup unsifted 135, cup packed 150, tbsp 7.8, tsp 2.6, handful 30, bag 1500, ml 0.53
20083 | bread flour; strong flour; strong white flour; strong white bread flour; white bread flour; high gluten flour; strong bread flour | wheat ?barley | cup 128, cup unsifted 137, tbsp 8, bag 1500
20084 | cake flour; soft cake flour | wheat | cup 115, cup sifted 100, cup unsifted 137, tbsp 7
20082 | self-raising flour; selfrising flour; selfraising flour; self raising flour; self rising flour | wheat | cup 125, tbsp 7.8, bag 1500
20080 | wholewheat flour; whole wheat flour; wholegrain flour; atta; chapati flour; wholewheat pastry flour; white wholewheat flour; graham flour; wholewheat bread flour; brown flour; atta flour; durum flour; durum wheat flour | wheat | cup 120, tbsp 7.5, bag 1500
20140~ | spelt flour; white spelt flour; wholegrain spelt flour; einkorn flour; emmer flour; kamut flour; khorasan flour; white spelt | wheat | cup 110, tbsp 7
20063 | dark rye flour; wholegrain rye flour; pumpernickel flour | rye | cup 128, tbsp 8
20064 | rye flour; medium rye flour; white rye flour; light rye flour | rye | cup 102, tbsp 6.4
20130 | barley flour; barley meal | barley | cup 120, cup unsifted 148, tbsp 7.5
20132 | oat flour | oats ?wheat ?barley | cup 104, tbsp 6.5
20011 | buckwheat flour | ?wheat | cup 120, tbsp 7.5
20061 | rice flour; white rice flour; sweet rice flour; glutinous rice flour; mochiko; rice powder; ground rice | - | cup 158, tbsp 10
20090 | brown rice flour | - | cup 158, tbsp 10
20016 | maize flour; corn flour yellow; maize flour; corn flour; fine cornmeal flour | - | cup 117, tbsp 7
20017 | masa harina; masa flour; masa; instant corn masa; corn masa flour; masarepa; nixtamalized corn flour | - | cup 114, cup tamale 123, tbsp 7.1
20020 | cornmeal; polenta; yellow cornmeal; white cornmeal; fine polenta; medium cornmeal; coarse cornmeal; stone ground cornmeal; quick cook polenta; instant polenta; blue cornmeal; quick polenta; dry polenta; finely ground cornmeal | - | cup 145, cup finely ground 135, tbsp 9, packet 500
08090 | grits; grit; corn grit; hominy grit; white grit; quick grit; stone ground grit | - | cup 156, tbsp 9.7, packet 28
20027 | cornstarch; cornflour; corn starch; maize starch; maizena; starch | - | cup 128, tbsp 8, tsp 2.7
20027~ | potato starch | nightshade | cup 160, tbsp 10, tsp 3.3
20003 | arrowroot; arrowroot powder; arrowroot flour; arrowroot starch | - | cup 128, tbsp 8, tsp 2.7
20068~ | tapioca starch; tapioca flour; cassava flour; sweet potato starch; glutinous tapioca flour | - | cup 120, tbsp 7.5
20068 | tapioca; tapioca pearl; sago; pearl tapioca; quick cooking tapioca; instant tapioca; boba | - | cup 152, tbsp 9.5
20647 | millet flour; bajra flour | - | cup 119
20648 | sorghum flour; jowar flour; teff flour | - | cup 121
20066 | semolina; fine semolina; semolina flour; sooji; suji; rava; semolina wheat; coarse semolina | wheat | cup 167, tbsp 10.4
08172 | farina; cream of wheat | wheat | cup 176, tbsp 10.9
48052 | vital wheat gluten; wheat gluten; gluten flour; gluten powder | wheat | cup 120, tbsp 8
20061~ | gluten free flour; glutenfree flour; glutenfree plain flour; glutenfree flour blend; glutenfree flour mix; glutenfree all purpose flour; gluten free plain flour; glutenfree selfrising flour; glutenfree bread flour | ?milk ?soy ?egg ?lupin | cup 140, tbsp 9
20001 dry | amaranth; amaranth grain | - | cup 193
20002 cooked | = | - | cup 246
20005 dry | barley; pearl barley; pearled barley; pot barley | barley | cup 200, tbsp 12.5
20006 cooked | = | barley | cup 157
20004 | hulled barley; barley groat; whole barley; scotch barley; hull-less barley | barley | cup 184
20009 dry | buckwheat; kasha; buckwheat groat; roasted buckwheat; raw buckwheat | - | cup 164
20010 cooked | = | - | cup 168
20012 dry | bulgur; bulgur wheat; cracked wheat; fine bulgur; coarse bulgur; medium bulgur | wheat | cup 140, tbsp 9
20013 cooked | = | wheat | cup 182
20028 dry | couscous; instant couscous; moroccan couscous; wholewheat couscous; couscou | wheat | cup 173, tbsp 11, packet 500
20029 cooked | = | wheat | cup 157
20028~ dry | giant couscous; israeli couscous; pearl couscous; fregola; ptitim; moghrabieh; maftoul | wheat | cup 165, packet 250
20013~ cooked | = | wheat | cup 170
20140 dry | spelt; whole spelt; spelt grain | wheat | cup 174
20141 cooked | = | wheat | cup 194
20140~ dry | farro; freekeh; wheat berry; pearled farro; green wheat; spelt berry; pearled spelt; einkorn; emmer; kamut; whole wheat grain; wheatberry | wheat | cup 180, packet 250
20141~ cooked | = | wheat | cup 180
20031 dry | millet; hulled millet | - | cup 200
20032 cooked | = | - | cup 174
20035 dry | quinoa; white quinoa; red quinoa; tricolor quinoa; black quinoa; tri color quinoa; quinoa grain; tri colored quinoa; quinoa uncooked | - | cup 170, tbsp 10.6, packet 300
20137 cooked | = | - | cup 185
20142 dry | teff; teff grain | - | cup 193
20062 | rye berry; rye grain; rye flake | rye | cup 169
20038 | oat groat; steel cut oat; pinhead oat; oat berry; irish oat; steel cut irish oat; coarse oatmeal | oats ?wheat ?barley | cup 176
08120 dry | oats; oat; rolled oat; porridge oat; old fashioned oat; oatmeal; quick oat; quick cooking oat; jumbo oat; oat flake; old fashioned rolled oat; porridge; old fashioned whole rolled oat; thick cut oat; instant oat; rolled porridge oat; whole oat; large flake oat | oats ?wheat ?barley | cup 90, tbsp 5.6, handful 30, packet 28
08121 cooked | = | oats ?wheat ?barley | cup 234
08120~ dry | gluten-free oats; glutenfree oat; gluten free oat; glutenfree rolled oat; gluten free rolled oat; certified glutenfree oat; glutenfree porridge oat | ?oats | cup 90, tbsp 5.6
20033 | oat bran | oats ?wheat ?barley | cup 94, tbsp 5.9
20077 | wheat bran; bran; natural bran; miller bran | wheat | cup 58, tbsp 3.6, tsp 1.2
20078 | wheat germ; wheatgerm; raw wheat germ | wheat | cup 115, tbsp 7.2
20044 dry | rice; white rice; long grain rice; long grain white rice; basmati rice; basmati; jasmine rice; thai rice; fragrant rice; carolina rice; texmati rice; thai jasmine rice; uncooked rice; long grain basmati rice; patna rice; white long grain rice | - | cup 185, tbsp 11.6, bag 1000, packet 1000, handful 40
20045 cooked | = ; steamed rice; leftover rice; boiled rice; day old rice; pouch rice plain | - | cup 158, packet 250
20046 dry | parboiled rice; converted rice; easy cook rice; parboiled long grain rice | - | cup 185
20047 cooked | = | - | cup 158
20048~ dry | poha; flattened rice; rice flake; beaten rice; pounded rice; aval; chivda rice | - | cup 95
20048 dry | instant rice; minute rice; precooked rice; quick cook rice | - | cup 95
20049 cooked | =; microwave rice; ready rice; rice pouch; pouch rice; microwavable rice | - | cup 165, packet 250
20036 dry | brown rice; long grain brown rice; wholegrain rice; brown basmati rice; brown jasmine rice; sprouted brown rice; red rice; black rice; germinated brown rice; forbidden rice; brown long grain rice; brown short grain rice | - | cup 185
20037 cooked | = | - | cup 202, packet 250
20052 dry | short grain rice; risotto rice; arborio rice; arborio; carnaroli rice; sushi rice; paella rice; bomba rice; pudding rice; carnaroli; short grain white rice; japanese rice; calrose rice; vialone nano rice; japanese short grain rice; spanish rice grain | - | cup 200, tbsp 12.5
20053 cooked | = | - | cup 186
20050 dry | medium grain rice | - | cup 195
20051 cooked | = | - | cup 186
20054 dry | glutinous rice; sticky rice; sweet rice | - | cup 185
20055 cooked | = | - | cup 174
20088 dry | wild rice; wild rice blend; wild rice mix | - | cup 160
20089 cooked | = | - | cup 164
08156 | puffed rice; rice krispy; rice cereal; crisped rice; rice crispy; rice krispie; puffed rice cereal; murmura | ?barley ?wheat | cup 14, cup crisp 28
20120 dry | pasta; spaghetti; dried pasta; macaroni; penne; fusilli; linguine; fettuccine; tagliatelle; farfalle; rigatoni; elbow macaroni; orzo; elbow pasta; ziti; bucatini; orecchiette; conchiglie; pasta shell; small pasta; rotini; cavatappi; ditalini; angel hair pasta; capellini; vermicelli pasta; short pasta; pappardelle; lasagna noodle; lasagna sheet; sheet of lasagna; sheet lasagna; tube pasta; calamarata; soup pasta; stelline; shell pasta; bow tie pasta; tubetti; strascinati; campanelle; gemelli; casarecce; trofie; spaghettini; strascinati pasta; cavatelli; mafalda; linguini; paccheri; mezze maniche; bowtie pasta; pasta shape; broken spaghetti; thin spaghetti; wagon wheel pasta; radiatore; perciatelli; spaghettoni; tagliolini; garganelli; mostaccioli; manicotti; cannelloni; cannelloni tube; jumbo shell; jumbo pasta shell; fideo; fideos; semolina pasta; durum wheat pasta | wheat ?egg | cup 100, cup spaghetti 91, cup elbow 122, cup orzo 190, cup penne 95, cup macaroni 122, handful 50, packet 500, box 454, bunch 100, nest 60, sheet 20, each 20
20121 cooked | = | wheat ?egg | cup 140, cup spaghetti 124, cup macaroni 140
20093 fresh | pasta; spaghetti; tagliatelle; linguine; fettuccine; lasagna sheet; fresh pasta; fresh egg pasta; pappardelle; egg pasta; pasta sheet; fresh lasagna sheet; fresh tagliatelle | wheat egg | packet 250, cup 120, sheet 40, nest 75
20124 dry | wholewheat pasta; wholewheat spaghetti; wholegrain pasta; wholewheat penne; wholewheat macaroni; wholegrain spaghetti; brown pasta; wholewheat fusilli; spelt pasta; wholewheat noodle | wheat | cup 100, packet 500
20125 cooked | = | wheat | cup 130
20091 dry | gluten free pasta; glutenfree pasta; corn pasta; glutenfree spaghetti; rice pasta; glutenfree penne; glutenfree macaroni; quinoa pasta; glutenfree fusilli; brown rice pasta | ?egg ?soy ?lupin | cup 105, packet 454
20092 cooked | = | ?egg ?soy ?lupin | cup 140
20109 dry | egg noodles; egg noodle; dried egg noodle; wide egg noodle; medium egg noodle; extra wide egg noodle; broad egg noodle; spaetzle; german egg noodle; kluski noodle | egg wheat | cup 38, nest 62, packet 340, bag 340
20110 cooked | = | egg wheat | cup 160
20093 fresh | egg noodles; egg noodle; asian egg noodle; chinese egg noodle; wonton noodle; fresh chinese noodle; fresh asian noodle; thin egg noodle; chow mein noodle fresh; hokkien noodle; yakisoba noodle; lo mein noodle; thin asian egg noodle; asian style egg noodle; fresh asian egg noodle; spaetzle; medium egg noodle | egg wheat | packet 400, nest 75, cup 120
20120~ dry | wheat noodle; udon noodle dried; dried udon; ramen noodle dried; noodle; dried noodle; asian noodle; chinese noodle; asian wheat noodle; chinese wheat noodle; dried udon noodle | wheat ?egg ?soy | cup 80, nest 60, packet 250
20121~ cooked | noodles; noodle; wheat noodle; ramen noodle; ramen; asian noodle; straight to wok noodle; chinese noodle | wheat ?egg ?soy | cup 160, packet 200
20093~ fresh | fresh ramen noodle; fresh ramen | wheat ?egg | packet 200, cup 150, block 200
06583 | ramen; instant noodle; ramen noodle; instant ramen; instant ramen noodle; packet ramen; ramen noodle soup | wheat ?soy ?milk ?egg ?fish ?crustaceans ?molluscs ?celery ?sesame ?mustard | packet 85, block 80, each 85, cup 80
20113 | crispy noodle; chow mein noodle; crispy chow mein noodle; fried noodle | wheat ?egg ?soy | cup 45
20114 dry | soba; soba noodle; buckwheat noodle; buckwheat soba | ?wheat | packet 250, bunch 90, cup 85
20115 cooked | = | ?wheat | cup 114
20116 dry | somen; somen noodle | wheat | packet 250, bunch 90
20117 cooked | = | wheat | cup 176
20133 dry | rice noodles; rice noodle; rice vermicelli; rice stick; rice stick noodle; vermicelli rice noodle; pad thai noodle; flat rice noodle; thin rice noodle; rice vermicelli noodle; pho noodle; rice ribbon noodle; dried rice noodle; banh pho; wide rice noodle | - | packet 250, cup 60, nest 50, handful 40
20134 cooked | = ; fresh rice noodle | - | cup 176
16082 dry | cellophane noodle; glass noodle; bean thread noodle; mung bean noodle; bean vermicelli; bean thread; mungbean vermicelli; sweet potato noodle; cellophane mungbean noodle; mungbean noodle; bean thread vermicelli; dangmyeon | - | packet 200, cup 140, bunch 50, nest 40
20133~ dry | rice paper; rice paper wrapper; spring roll rice paper; rice paper round; rice wrapper; tteok; rice cake korean; rice paper sheet | - | each 8, sheet 8, packet 250
18069 | bread; white bread; sandwich bread; sliced white bread; stale bread; day old bread; toast bread; loaf bread; crustless bread; soft white bread; toast; white sandwich bread; stale white bread; milk bread; white bread loaf; pullman bread; good bread; white loaf | wheat ?milk ?soy ?egg ?barley ?sesame | slice 29, loaf 450, loaf small 400, loaf large 800, cup 35, cup cubed 35, cup torn 30, handful 30, each 29
18075 | wholewheat bread; brown bread; wholegrain bread; granary bread; whole wheat bread; multigrain bread; seeded bread; wheat bread; wholewheat loaf | wheat ?milk ?soy ?egg ?barley ?rye ?oats ?sesame | slice 32, loaf 680, cup 45
18029 | french bread; baguette; sourdough bread; sourdough; rustic bread; country bread; crusty bread; french baguette; crusty loaf; bread loaf crusty; day old rustic bread; sourdough loaf; batard; french stick; pain de campagne; crusty white bread; country style bread; vienna bread; crusty roll loaf; artisan bread | wheat ?milk ?barley ?rye ?soy ?sesame | slice 40, slice small 15, loaf 450, loaf medium 340, each 250, cup 35, cup cubed 40, stick 250
18033 | italian bread; ciabatta; ciabatta roll; ciabatta loaf; turkish bread | wheat ?milk ?barley ?soy | slice 30, loaf 400, each 100, cup 40
18027 | egg bread; challah; brioche; brioche loaf; challah bread; hawaiian bread; panettone; brioche bun; brioche roll; brioche bread | egg wheat milk ?soy | slice 40, loaf 450, each 50, cup 40
18060 | rye bread; light rye bread; deli rye | rye wheat ?milk ?soy ?barley | slice 32, loaf 500
18044 | pumpernickel; pumpernickel bread; dark rye bread | rye wheat ?milk ?barley | slice 26, loaf 500
18039 | oatmeal bread | oats wheat ?milk ?soy | slice 27
18047 | raisin bread; fruit bread; fruit loaf; cinnamon raisin bread | wheat ?milk ?egg ?soy | slice 32
18973 | focaccia | wheat ?milk ?soy | each 500, piece 57, slice 57
18041 | pita; pita bread; white pita; flatbread; lavash; greek pita; pita pocket; arabic bread; flat bread wrap; lebanese bread | wheat ?milk ?soy ?sesame | each 60, small 28, large 60, medium 60
18042 | wholewheat pita; wholewheat pita bread | wheat ?milk ?soy | each 64, small 28, large 64
28307 | naan; naan bread; garlic naan | wheat milk ?egg | each 90
28306 | chapati; roti; chapatti; paratha; paratha bread | wheat ?milk | each 68
18364 | flour tortilla; tortilla; wrap; tortilla wrap; wheat tortilla; soft tortilla; large flour tortilla; flour tortilla wrap; burrito wrap; 8 inch flour tortilla; white wrap; sandwich wrap | wheat ?milk ?soy | each 48, small 32, medium 48, large 70, packet 484
18363 | corn tortilla; yellow corn tortilla; white corn tortilla; soft corn tortilla; maize tortilla | ?wheat | each 26, small 19, medium 26, packet 300
18360 | taco shell; hard taco shell; crispy taco shell; tostada shell; tostada | ?wheat ?soy | each 13, packet 150
18350 | burger bun; hamburger bun; hotdog bun; burger roll; sandwich bun; bun; hot dog roll; slider bun; hotdog roll; sandwich roll; finger roll | wheat ?milk ?egg ?soy ?sesame | each 44, medium 44, large 65, packet 350
18353 | hard roll; kaiser roll; crusty roll; bread roll; roll; hoagie roll; sub roll; white roll; bap; bolillo; dinner roll; submarine roll; soft roll; hero roll; bread bun; telera roll | wheat ?milk ?egg ?soy ?sesame | each 57, small 28, large 100
18001 | bagel; plain bagel | wheat ?milk ?egg ?soy ?sesame | each 99, small 69, large 131
18258 | english muffin; breakfast muffin; crumpet | wheat ?milk ?soy | each 57
18239 | croissant; butter croissant | wheat milk ?egg ?soy | each 57, small 42, large 67
18024 | cornbread; corn bread; crumbled cornbread | wheat milk egg | piece 65, cup 130, each 65
18016 | scone; american biscuit; buttermilk biscuit; biscuit us | wheat milk ?egg | each 60
18079 | breadcrumbs; breadcrumb; dry breadcrumb; dried breadcrumb; plain breadcrumb; panko; panko breadcrumb; toasted breadcrumb; fine breadcrumb; italian breadcrumb plain; japanese breadcrumb; fine dry breadcrumb; coarse breadcrumb; coarsely ground breadcrumb; golden breadcrumb; rusk crumb; breadcrumbs | wheat ?milk ?egg ?soy ?sesame | cup 108, cup panko 55, tbsp 6.8, handful 30
18069 | fresh breadcrumb; soft breadcrumb; white breadcrumb; fresh white breadcrumb; wholewheat breadcrumb; soft white breadcrumb; fresh bread breadcrumb; homemade breadcrumb; stale breadcrumb; sourdough breadcrumb; rye breadcrumb | wheat ?milk ?egg ?soy ?rye ?barley | cup 60, cup packed 80, tbsp 4, handful 20
18376 | italian breadcrumb; seasoned breadcrumb; italian seasoned breadcrumb; italian style breadcrumb | wheat milk ?egg ?soy | cup 120, tbsp 7.5
28336~ | gluten-free breadcrumbs; glutenfree breadcrumb | ?egg ?milk ?soy ?lupin | cup 108
28336 | gluten free bread; glutenfree bread; glutenfree white bread | ?egg ?milk ?soy ?lupin | slice 34, loaf 500
18242 | crouton; plain crouton | wheat ?milk | cup 30, handful 15
18081 | stuffing mix; stuffing; bread stuffing mix; sage and onion stuffing; dry stuffing mix; sage onion stuffing mix | wheat ?milk ?egg ?soy ?celery ?barley ?pork | packet 170, cup 50, box 170
18228 | crackers; saltine; soda cracker; oyster cracker; saltine cracker; cream cracker; cracker; cracker crumb; snack cracker; ritz cracker; butter cracker; club cracker | wheat ?milk ?soy ?barley ?sesame | each 3, cup 70, sleeve 113, cup crushed 70, packet 300
28327 | water biscuit; water cracker | wheat ?milk | each 3.5
18217 | matzo; matzah; matzoh; matza | wheat | each 28, sheet 28
18217~ | matzo meal; matzah meal; matzo crumb | wheat | cup 125, tbsp 8
18216 | crispbread; rye crispbread; rye cracker; ryvita | rye ?wheat ?sesame ?milk | each 10
18224 | rusk; zwieback; melba toast | wheat ?milk ?egg | each 10
18173 | digestive biscuits; graham; graham cracker; digestive biscuit; digestive; graham cracker crumb; graham crumb; biscuit; rich tea biscuit; digestive biscuit crumb; tea biscuit; biscuit crumb; marie biscuit; hobnob; plain biscuit; graham wafer; speculoos; lotus biscuit | wheat ?milk ?soy ?oats ?barley ?honey | each 14, cup 84, cup crumb 100, sheet 15, packet 400, tbsp 6
18172 | gingersnap; ginger biscuit; ginger nut; ginger cookie | wheat ?milk ?egg ?soy | each 7, cup 100
18213 | vanilla wafer; nilla wafer; wafer; wafer cookie; vanilla wafer cookie | wheat ?milk ?egg ?soy | each 4, cup 80
18192 | shortbread; shortbread biscuit; shortbread cookie; butter cookie; butter biscuit | wheat milk ?egg ?soy | each 12, cup 100
18166 | chocolate sandwich cookie; oreo; oreo cookie; sandwich cookie; chocolate sandwich biscuit | wheat soy ?milk | each 12, packet 154
18157 | chocolate wafer; chocolate cookie; chocolate biscuit; chocolate wafer cookie | wheat ?milk ?egg ?soy | each 6, cup 112
18175 | ladyfinger; lady finger biscuit; sponge finger; savoiardi; boudoir biscuit; lady finger | wheat egg ?milk | each 11, packet 200
18155~ | amaretti; amaretti biscuit; macaroon | egg almond ?wheat ?milk | each 8, cup 90
18133 | sponge cake; sponge; pound cake; trifle sponge; madeira cake; cake; angel food cake | wheat egg ?milk ?soy | slice 38, cup 60, each 38
18337 | puff pastry; puff pastry sheet; frozen puff pastry; ready rolled puff pastry; puff dough | wheat ?milk ?egg ?soy | sheet 245, packet 490, block 500, each 245, box 490, roll 320
18337 | butter puff pastry; all butter puff pastry | wheat milk ?egg | sheet 245, packet 490, block 500, each 245, roll 320
18338 | phyllo; filo; filo pastry; phyllo dough; phyllo pastry; fillo; fillo dough; phyllo sheet; kataifi; brik pastry | wheat ?milk ?soy | sheet 19, packet 270, each 19, box 454
18402 | pie crust; shortcrust pastry; pastry; pie dough; pie pastry; shortcrust; pastry dough; pie shell; short crust pastry; sweet shortcrust pastry; tart shell; pastry case; pie crust dough; pate brisee; ready rolled shortcrust pastry; unbaked pie crust; tart dough; pastry shell; single crust pie dough | wheat ?milk ?egg ?soy | each 194, sheet 230, packet 375, block 500, crust 194
18399 | graham cracker crust; graham crust | wheat ?milk ?soy | each 200
18368 | wonton wrapper; egg roll wrapper; wonton skin; spring roll wrapper; gyoza wrapper; dumpling wrapper; gyoza skin; potsticker wrapper; eggroll wrapper; dumpling skin; wonton sheet | wheat egg | each 8, packet 340, sheet 8
18970~ | pizza dough; pizza base; bread dough; fresh pizza dough; flatbread dough; pizza crust | wheat ?milk ?soy | each 400, packet 400, ball 250
08084 | toasted wheatgerm; toasted wheat germ | wheat | cup 113, tbsp 7
08020 | cornflakes; corn flake; cornflake; cornflake crumb; corn flakes; cornflakes; cornflake cereal | barley ?wheat | cup 28, cup crushed 100
08037 | granola; muesli; granola cereal; toasted muesli | oats ?wheat ?milk ?soy ?almond ?hazelnut ?walnut ?pecan ?cashew ?peanut ?sesame ?coconut ?sulphites ?honey | cup 110, tbsp 7, handful 40
08157 | puffed wheat; puffed wheat cereal | wheat | cup 12
08029 | bran flake; bran cereal; all bran; bran cereal flake; oat bran cereal; cracklin oat bran cereal; oat cereal; shredded wheat; weetabix; wheat cereal; wheat biscuit cereal; wheat flake cereal; cereal; breakfast cereal | wheat ?barley ?oats ?milk | cup 45, each 20
19056 | tortilla chip; corn chip; nacho chip; nacho; plain tortilla chip; totopos; corn tortilla chip | ?wheat ?milk ?soy | cup 26, cup crushed 75, bag 213, packet 200, handful 25, each 2.5
19411 | potato crisps; potato chip; crisp; potato crisp; plain potato chip; kettle chip; plain crisp; ready salted crisp | nightshade ?milk ?wheat ?soy | cup 25, bag 150, packet 25, handful 20
19047 | pretzel; hard pretzel; pretzel stick; pretzel twist; mini pretzel | wheat ?barley ?milk ?soy | cup 45, each 6, handful 25
19034 | popcorn; popped popcorn; air popped popcorn; popped corn | - | cup 8
19034~ | popcorn kernel; popping corn; unpopped popcorn; corn kernel unpopped | - | cup 200, tbsp 13
19816 | rice cake; puffed rice cake; brown rice cake | ?sesame ?wheat | each 9
42200 | papadum; poppadom; papad; poppadum; papadam | legume ?wheat ?sulphites | each 12
20117~ fresh | udon noodle; udon; fresh udon; fresh udon noodle; frozen udon; straight to wok noodle | wheat ?egg | packet 200, cup 150, block 200
`;
