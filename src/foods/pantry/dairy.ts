/** Milk, cream, butter, cheese, yogurt, eggs, and what stands in for them. Rows as in vegetables.ts. */
export const dairy = `
01077 | milk; whole milk; full fat milk; full cream milk; cow milk; fresh milk; fullfat milk; cold milk; warm milk; hot milk; organic milk; raw milk | milk | cup 244, carton 946, bottle 1000
01077~ | lactose-free milk; lactose free whole milk; lactose free semi skimmed milk | milk | cup 244, carton 946
01174 | 2% milk; semiskim milk; lowfat milk; semi skimmed milk; reduced fat milk; half fat milk | milk | cup 244
01175 | 1% milk | milk | cup 244
01085 | skim milk; nonfat milk; fat free milk; skimmed milk; fatfree milk | milk | cup 245
01230 | buttermilk; cultured buttermilk; whole buttermilk; lowfat buttermilk | milk | cup 245
01094 | dry buttermilk; powdered buttermilk; buttermilk powder; dried buttermilk | milk | cup 120, tbsp 6.5
01092 | nonfat dry milk; milk powder; dry milk; powdered milk; instant milk powder; skim milk powder; dried milk; nonfat dry milk powder; dried skim milk; instant nonfat dry milk; nonfat milk powder; dry milk powder | milk | cup 68, tbsp 4.3
01090 | whole milk powder; dry whole milk; full cream milk powder; whole dry milk; dried whole milk | milk | cup 128, tbsp 8
01096 | evaporated milk; canned evaporated milk; carnation milk | milk | tin 354, cup 252
01095 | condensed milk; sweetened condensed milk | milk | tin 397, cup 306, tbsp 19
01106 | goat milk; goats milk; goat s milk | milk | cup 244
01109 | sheep milk; ewe milk | milk | cup 245
01108 | buffalo milk | milk | cup 244
01102 | chocolate milk | milk ?soy | cup 250
01053 | heavy cream; heavy whipping cream; whipping cream; cream; thick cream; thickened cream; fresh cream; whipped cream homemade; cold heavy cream; pure cream; dairy cream; cooking cream | milk | cup 238, cup whipped 120, tbsp 15, carton 300, tub 300, pot 300
01053~ | double cream; extra thick cream; extra thick double cream; thick double cream; fresh double cream | milk | cup 238, cup whipped 120, tbsp 15, carton 300, tub 300, pot 300
01053~ | clotted cream; cornish clotted cream | milk | cup 238, tbsp 15, tub 227, pot 227
01050 | light cream; single cream; coffee cream; table cream; pouring cream | milk | cup 240, tbsp 15, carton 300
01049 | half and half; halfandhalf | milk | cup 242, tbsp 15
01054 | whipped cream; aerosol whipped cream; squirty cream; whipped topping dairy | milk | cup 60, tbsp 3
01056 | sour cream; soured cream; smetana; full fat sour cream; cremefraiche; creme fraiche; mexican crema; crema; fullfat sour cream | milk | cup 230, tbsp 12, tub 227, container 227, carton 227
01179 | light sour cream; lowfat sour cream; reduced fat sour cream; lowfat cremefraiche | milk | cup 230, tbsp 12
01116 | yogurt; plain yogurt; natural yogurt; whole milk yogurt; full fat yogurt; plain whole milk yogurt; curd; dahi; fullfat yogurt; set yogurt; kefir; unsweetened yogurt; plain whole yogurt; live yogurt | milk | cup 245, tbsp 15, tub 500, pot 150, container 227
01117 | lowfat yogurt; lowfat plain yogurt; plain lowfat yogurt | milk | cup 245, tbsp 15
01118 | nonfat yogurt; fat free yogurt; skim yogurt; nonfat plain yogurt; fatfree yogurt | milk | cup 245, tbsp 15
01293 | greek yogurt; plain greek yogurt; greek style yogurt; strained yogurt; labneh; full fat greek yogurt; fullfat greek yogurt; full fat plain greek yogurt; skyr; thick yogurt; labne; lebneh; fullfat plain greek yogurt; whole milk greek yogurt | milk | cup 245, tbsp 15, tub 500, pot 150
01256 | nonfat greek yogurt; fat free greek yogurt; 0% greek yogurt; fatfree greek yogurt; nonfat plain greek yogurt; 2% greek yogurt | milk | cup 245, tbsp 15, container 170
01119 | vanilla yogurt | milk ?gelatine | cup 245
01121 | fruit yogurt; strawberry yogurt; flavored yogurt | milk ?gelatine | cup 245
01001 | salted butter; butter salted; lightly salted butter | milk | tbsp 14.2, tsp 4.7, cup 227, stick 113, knob 15, pat 5, packet 250, block 250, piece 15, slice 7
01145 | unsalted butter; sweet butter; butter unsalted; cold unsalted butter; unsalted sweet butter | milk | tbsp 14.2, tsp 4.7, cup 227, stick 113, knob 15, pat 5, packet 250, block 250, piece 15, slice 7
01001 | butter; cold butter; melted butter; softened butter; soft butter; european butter; browned butter; clarified butter fresh; dairy butter; cultured butter; irish butter | milk | tbsp 14.2, tsp 4.7, cup 227, stick 113, knob 15, pat 5, packet 250, block 250, piece 15, slice 7
01001~ | garlic butter; garlic and herb butter; garlic herb butter | milk allium | tbsp 14.2, tsp 4.7, cup 227
01003 | ghee; clarified butter; desi ghee; samna; niter kibbeh; usli ghee | milk | tbsp 13, cup 205, tsp 4.3
01009 | cheddar; cheddar cheese; sharp cheddar; mature cheddar; mild cheddar; white cheddar; sharp cheddar cheese; strong cheddar; extra sharp cheddar; tasty cheese; grated cheddar; lancashire; lancashire cheese; red leicester; double gloucester; extra mature cheddar; yellow cheddar; vintage cheddar; english cheddar | milk ?rennet | cup 113, cup diced 132, cup melted 244, tbsp 7, slice 21, handful 30
01009 | cheese; grated cheese; shredded cheese; hard cheese; melting cheese; cheese grated; sharp cheese; mixed cheese; semi hard cheese; cheese slice; yellow cheese; kashkaval; cantal; cantal cheese; manchego; manchego cheese; caciocavallo; farmhouse cheese; mixed grated cheese | milk ?rennet | cup 113, cup diced 132, tbsp 7, slice 21, handful 30
01251 | mexican cheese; mexican blend cheese; mexican cheese blend; mexican blend; shredded mexican cheese; taco cheese; pizza cheese blend; four cheese blend | milk ?rennet | cup 113, packet 227, bag 227
01042 | american cheese; processed cheese; process cheese; cheese single; velveeta; burger cheese slice; kraft single; dairylea | milk ?soy | slice 21, cup 113, each 21
01048 | cheese spread; processed cheese spread; cheese whiz; laughing cow; cheese triangle; soft cheese spread | milk ?soy | cup 244, tbsp 15, each 17
01004 | blue cheese; gorgonzola; gorgonzola cheese; stilton; stilton cheese; danish blue; dolcelatte; bleu cheese; cambozola; gorgonzola dolce; gorgonzola piccante; maytag blue; blue stilton; soft blue cheese; cabrales | milk ?rennet | cup 135, tbsp 8.4
01039 | roquefort; roquefort cheese | milk rennet | cup 135, tbsp 8.4
01005 | brick cheese | milk ?rennet | cup 113
01006 | brie; brie cheese | milk ?rennet | cup 144, slice 20, wheel 250
01007 | camembert; camembert cheese; soft rind cheese; reblochon; vacherin; epoisses | milk ?rennet | each 250, cup 144, wheel 250
01010 | cheshire cheese; caerphilly; wensleydale; wensleydale cheese | milk ?rennet | cup 120
01011 | colby; colby cheese; colby jack; colby jack cheese; longhorn cheese | milk ?rennet | cup 113, cup diced 132, slice 28
01012 | cottage cheese; creamed cottage cheese; small curd cottage cheese; large curd cottage cheese | milk ?rennet | cup 220, tub 300, tbsp 14, container 454
01014 | dry cottage cheese; quark; curd cheese; farmer cheese; farmers cheese; pot cheese; twarog; tvorog; fromage frais; fromage blanc; dry curd cottage cheese; farmer s cheese | milk ?rennet | cup 220, cup dry 145, tbsp 14, tub 250
01017 | cream cheese; full fat cream cheese; soft cheese; philadelphia cheese; philadelphia; full fat soft cheese; fullfat cream cheese; softened cream cheese; soft cream cheese; brick cream cheese; boursin | milk | cup 232, tbsp 14.5, packet 227, tub 227, block 227, brick 227
01053~ | mascarpone; mascarpone cheese | milk | cup 227, tbsp 14.5, tub 227
01031 | neufchatel; light cream cheese; lowfat cream cheese; neufchatel cheese; reduced fat cream cheese; 1/3 less fat cream cheese; light soft cheese | milk | cup 232, tbsp 14.5, packet 227
01018 | edam; edam cheese | milk ?rennet | cup 113, slice 28
01019 | feta; feta cheese; crumbled feta; greek feta; sheep feta; greek style salad cheese; bulgarian feta; sirene; salad cheese; feta crumble | milk ?rennet | cup 150, tbsp 9, packet 200, block 200
01020 | fontina; fontina cheese; taleggio; raclette; raclette cheese; italian fontina; taleggio cheese; italian fontina or taleggio; havarti; havarti cheese | milk ?rennet | cup 108, cup diced 132, slice 28
01022 | gouda; gouda cheese; smoked gouda; jarlsberg | milk ?rennet | cup 113, slice 28
01023 | gruyere; gruyere cheese; comte; comte cheese; appenzeller; beaufort | milk rennet | cup 108, slice 28
01040 | swiss cheese; emmental; emmental cheese; emmenthal; emmentaler; swiss; emmenthaler | milk ?rennet | cup 108, cup diced 132, slice 28
01024 | limburger | milk ?rennet | cup 134
01025 | monterey jack; monterey jack cheese; jack cheese; pepper jack; pepper jack cheese; monterey; monterey cheese | milk ?rennet | cup 113, cup diced 132, slice 28
01026 | mozzarella; fresh mozzarella; buffalo mozzarella; mozzarella cheese; mozzarella ball; whole milk mozzarella; burrata; bocconcini; mozzarella di bufala; buffala mozzarella; fresh mozzarella cheese; mozzarella pearl | milk ?rennet | cup 112, cup diced 132, ball 125, slice 28, each 125, packet 125, handful 30
01028 | part skim mozzarella; lowfat mozzarella; light mozzarella | milk ?rennet | cup 113, slice 28
01029 | low moisture mozzarella; shredded mozzarella; grated mozzarella; pizza cheese; low moisture part skim mozzarella; string cheese; shredded mozzarella cheese; grated mozzarella cheese | milk ?rennet | cup 113, cup diced 132, each 28, handful 30
01030 | muenster; muenster cheese; munster | milk ?rennet | cup 113, cup diced 132, slice 28
01032 | parmesan powder; grated parmesan dried; canned parmesan; parmesan dried; green can parmesan | milk ?rennet ?egg | cup 100, tbsp 5
01033 | parmesan; parmesan cheese; parmesan reggiano; reggiano; grana padano; parmesan rind; fresh parmesan; freshly grated parmesan; parmigiano; grana; parmesan wedge | milk rennet ?egg | cup 100, cup grated 100, cup shredded 100, cup shaved 85, tbsp 5, piece 30, handful 25
01032 | grated parmesan; grated parmesan cheese; finely grated parmesan; grated parmesan cheese powder | milk rennet ?egg | cup 100, tbsp 5
01038 | pecorino; romano; pecorino romano; pecorino cheese; romano cheese; pecorino romano cheese; pecorino toscano; asiago; asiago cheese; kefalotyri; hard sheep cheese; aged pecorino | milk rennet | cup 100, tbsp 5
01035 | provolone; provolone cheese | milk ?rennet | slice 28, cup 112, cup diced 132
01036 | ricotta; ricotta cheese; whole milk ricotta; whole milk ricotta cheese; fresh ricotta; homemade ricotta; full fat ricotta | milk | cup 246, tbsp 15.4, tub 250, container 425
01037 | part skim ricotta; lowfat ricotta; part skim ricotta cheese | milk | cup 246, tbsp 15.4
01159 | goat's cheese; goat cheese; goatcheese; soft goatcheese; chevre; fresh goatcheese; goat s cheese; goat cheese soft; goat cheese log; rindless goatcheese; soft rindless goatcheese; chevre log; crumbled goatcheese; mild goatcheese; goat curd | milk ?rennet | cup 140, log 115, tbsp 14, slice 20
01156 | hard goatcheese; aged goatcheese; goat gouda | milk ?rennet | cup 113
01228 | queso fresco; fresh queso fresco; fresh cheese; crumbled queso fresco | milk ?rennet | cup 122, tbsp 8
01229~ | halloumi; panela cheese; queso panela; halloumi cheese; queso blanco; bread cheese; grilling cheese | milk ?rennet | block 225, cup 125, packet 225, slice 25
01267 | cotija; cotija cheese; queso cotija | milk ?rennet | cup 110, tbsp 7
01165 | queso anejo; anejo cheese | milk ?rennet | cup 132
01166 | queso asadero; oaxaca cheese; oaxaca; queso oaxaca; quesillo; asadero | milk ?rennet | cup 113, cup diced 132
01167 | queso chihuahua; chihuahua cheese; queso quesadilla | milk ?rennet | cup 113
01114 | whey; sweet whey | milk | cup 246
01115 | whey powder; dried whey | milk | cup 145, tbsp 7.5
14058 | whey protein; whey protein powder; protein powder; whey protein isolate | milk ?soy | scoop 30, cup 100, tbsp 7
01225 | dulce de leche; caramel sauce dairy; cajeta; milk caramel; caramel condensed milk | milk | tbsp 19, cup 300, tin 397
19095 | vanilla ice cream; vanilla icecream; icecream; ice cream | milk ?egg ?wheat ?soy | cup 132, scoop 66, tub 500
01057 | eggnog | milk egg | cup 254
42135~ | whipped topping; cool whip; frozen whipped topping; non dairy whipped topping; dessert topping; whipped dessert topping | milk ?soy | cup 75, tub 227, tbsp 4
01123 | egg; whole egg; fresh egg; hen egg; chicken egg; beaten egg; egg beaten; freerange egg; large egg; raw egg; egg wash; organic egg; brown egg; lightly beaten egg | egg | each 50, small 38, medium 44, large 50, extra large 56, cup 243, tbsp 15
01124 | egg white; eggwhite; egg white; liquid egg white; white of egg | egg | each 33, small 25, medium 29, large 33, cup 243, tbsp 15
01125 | egg yolk; yolk; egg yolk; yolk of egg | egg | each 17, small 13, medium 15, large 17, cup 243, tbsp 15
01129 cooked | hard boiled egg; boiled egg; egg; hardboiled egg; hard cooked egg; soft boiled egg | egg | each 50, small 38, medium 44, large 50, extra large 56, cup 136
01132 cooked | scrambled egg | egg milk | each 61, cup 220
01130 | omelet | egg milk | each 61
01131 | poached egg | egg | each 50
01133 dried | egg powder; dried egg; powdered egg; whole egg powder; dry egg powder; whole dried egg; egg; dehydrated egg | egg | cup 85, tbsp 5
01173 dried | egg white powder; dried egg white; powdered egg white; meringue powder; eggwhite powder; dried eggwhite; eggwhite | egg | tbsp 7, cup 107
01138 | duck egg | egg | each 70
01140 | quail egg | egg | each 9
01139 | goose egg | egg | each 144
14091 | almond milk; unsweetened almond milk; almond beverage; almond drink | almond | cup 262, carton 946
14016 | vanilla almond milk; sweetened almond milk; vanilla unsweetened almond milk | almond | cup 240
16139 | soy milk; soya milk; soymilk; plain soy milk; vanilla soy milk; soy drink; soya drink | soy | cup 243, carton 946
16222 | unsweetened soy milk; unsweetened soya milk; organic soy milk | soy | cup 243
14639 | rice milk; rice drink | - | cup 240
14639~ | oat milk; oat drink; barista oat milk; unsweetened oat milk | oats ?wheat ?barley | cup 240
14091~ | cashew milk; unsweetened cashew milk; cashew drink | cashew | cup 250
14091~ | hazelnut milk | hazelnut | cup 250
14091~ | plant milk; plant based milk; nondairy milk; non dairy milk; vegan milk; dairy free milk; nut milk; unsweetened plant milk; milk alternative; unsweetened nondairy milk; milk of choice; hemp milk; plant based drink; unsweetened plant based milk; milk substitute | ?almond ?soy ?oats ?cashew ?hazelnut ?coconut ?macadamia ?pistachio ?walnut  | cup 245
04610~ | margarine; baking margarine; hard margarine; margarine stick; stork; oleo margarine; block margarine; stick margarine; soft margarine; vegetable spread; sunflower spread; baking spread; tub margarine; low fat spread; buttery spread | ?milk ?soy | tbsp 14.2, tsp 4.7, cup 227, stick 113, knob 15
04610~ | vegan butter; nondairy butter; dairy free butter; plant butter; vegan margarine; vegan spread; dairy free spread; plant based butter; vegan block; vegan baking block; earth balance; nondairy margarine; dairy free margarine; vegan buttery stick; nondairy spread; vegan butter stick; plant based spread | ?soy ?cashew ?coconut ?almond | tbsp 14.2, tsp 4.7, cup 227, stick 113, knob 15
43276~ | vegan cheese; dairy free cheese; plant based cheese; nondairy cheese; vegan cheddar; vegan cream cheese; nondairy cream cheese; dairy free cream cheese; vegan parmesan; vegan mozzarella; plant based cream cheese; non dairy cream cheese; vegan feta; nondairy cheddar | ?soy ?cashew ?almond ?coconut ?oats  ?hazelnut ?macadamia | cup 113, cup cream 232, slice 20, tbsp 14, packet 227
43476~ | vegan yogurt; plant yogurt; nondairy yogurt; coconut yogurt; plant based yogurt; almond yogurt; dairy free yogurt; oat yogurt; nondairy sour cream; vegan sour cream; coconut milk yogurt; vegan cream; plant based cream; soy cream; oat cream; soya cream; plant cream; oat creme; vegan whipping cream; plant based yogurt | ?soy ?coconut ?almond ?oats ?cashew  | cup 245, tbsp 15
43597~ | paneer; indian cheese; unsalted paneer | milk ?rennet | block 225, cup 125, packet 225, cube 15
01015 | lowfat cottage cheese; reduced fat cottage cheese; 2% cottage cheese; light cottage cheese | milk ?rennet | cup 226, tub 300, tbsp 14
01016 | 1% cottage cheese; fat free cottage cheese; nonfat cottage cheese | milk ?rennet | cup 226, tub 300, tbsp 14
43476 | soy yogurt; soya yogurt; tofu yogurt; soy yoghurt | soy ?almond ?oats | cup 245, tbsp 15, pot 125
`;
