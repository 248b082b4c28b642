/**
 * Vegetables and mushrooms. A row: `NDB state | names | contents | weights in g`; '=' repeats the names and contents above it.
 * Weights: common practice, no source, unless the food table has the same measure. How rows are read: ../kitchen.ts
 */
export const vegetables = `
11282 | onion; yellow onion; brown onion; white onion; spanish onion; cooking onion; red onion; purple onion; onion wedge | allium | small 70, medium 130, large 200, slice 14, cup 150, cup chopped 160, cup diced 150, cup sliced 115, cup minced 160, tbsp 10
11283 cooked | = | = | medium 94, cup 210
11286 fried | = ; caramelized onion; caramelised onion; fried onion | = | cup 87
11284~ | crispy onion; crispy fried onion; french fried onion | allium ?wheat | cup 55, packet 100, tbsp 4
11294 | sweet onion; vidalia onion; vidalia | allium | medium 150, small 100, large 331, cup chopped 160, cup sliced 115
11287 frozen | onion | allium | cup 160
11285 | pearl onion; cocktail onion; baby onion; button onion; silverskin onion | allium | each 12, cup 140, packet 283, jar 200
11284 | dried onion; onion flake; dried onion flake; dehydrated onion; dried minced onion; instant onion | allium ?sulphites | tbsp 5
11291 | spring onion; springonion; scallion; spring onions; green onions; welsh onion; salad onion; escallion | allium | each 15, small 5, medium 15, large 25, bunch 100, stalk 15, cup 80, cup chopped 75, cup sliced 60, tbsp 5.5
11677 | shallot; eschalot; banana shallot; asian shallot | allium | each 30, small 15, medium 30, large 45, clove 15, cup 160, tbsp 10
11246 | leek; baby leek | allium | each 150, small 90, medium 150, large 250, stalk 150, cup 89
11247 cooked | = | = | cup 104
11215 | garlic; garlic clove; clove of garlic; minced garlic; crushed garlic; garlic paste; garlic puree | allium | clove 4, each 4, small 3, medium 4, large 6, head 50, bulb 50, tsp 3.3, tbsp 10, cup 136
11156 | chives; chive | allium | bunch 20, tbsp 3, sprig 0.5, cup 48, handful 10, each 0.5
11615 dried | = | = | tbsp 0.4
11124 | carrot; orange carrot; rainbow carrot; heirloom carrot; carrot stick | - | each 61, small 50, medium 61, large 90, bunch 400, cup 128, cup chopped 128, cup grated 110, cup sliced 122, cup diced 128, cup shredded 110, cup julienned 110
11125 cooked | = | - | medium 46, cup 156
11130 frozen | = | - | cup 130
11126 canned | = | - | tin 411, drained 0.6
11128 drained | = | - |
11683 dried | = | ?sulphites | cup 74
11960 | baby carrot | - | each 10, cup 128, bag 454, packet 454
11143 | celery; celery stalk; celery stick; celery rib; stick of celery; celery heart; celery leaf | celery | each 40, small 17, medium 40, large 64, stalk 40, stick 40, head 500, bunch 500, heart 300, cup 101, cup chopped 101, cup sliced 101, cup diced 101
11144 cooked | = | celery | cup 150
11141 | celeriac; celery root; knob celery | celery | each 600, small 400, medium 600, large 900, cup 156
11333 | green bell pepper; green pepper; green capsicum; sweet green pepper | nightshade | each 150, small 74, medium 150, large 190, slice 10, strip 5, cup 149, cup sliced 92, cup diced 149
11334 cooked | = | nightshade | cup 135
11634 dried | green bell pepper; green pepper | nightshade | tbsp 0.4
11821 | bell pepper; red bell pepper; red pepper; capsicum; red capsicum; sweet pepper; sweet red pepper; pepper; orange bell pepper; orange pepper; romano pepper; pointed pepper; mixed pepper; paprika pepper | nightshade | each 150, small 74, medium 150, large 190, slice 10, strip 5, cup 149, cup sliced 92, cup diced 149, cup chopped 149
11823 cooked | = | nightshade | cup 135
11931 dried | = ; dried bell pepper; dried pepper flakes sweet | nightshade | tbsp 0.4
11951 | yellow bell pepper; yellow pepper; yellow capsicum | nightshade | each 150, large 186, cup 149
11916 | roasted red pepper; roasted pepper; roasted bell pepper; jarred pepper; piquillo pepper; jarred roasted pepper; chargrilled pepper | nightshade | each 70, jar 340, cup 190, tin 400
11943 | pimento; canned pimento; jarred pimento | nightshade | jar 113, cup 192
11670 | chili; green chili; green chili pepper; chili pepper; fresh chili; hot pepper; finger chili; thai chili green; poblano; poblano pepper; anaheim pepper; anaheim chili; hot green pepper; long green chili | nightshade | each 15, small 5, medium 15, large 45, cup 150, tbsp 9
11819 | red chili; red chili pepper; thai chili; birds eye chili; bird eye chili; cayenne pepper fresh; hot red pepper; scotch bonnet; scotch bonnet chili; scotch bonnet pepper; habanero; habanero pepper; fresno chili; long red chili | nightshade | each 15, small 5, medium 15, large 45, tbsp 9
11979 | jalapeno; jalapeno pepper; jalapeno chili | nightshade | each 14, small 10, medium 14, large 25, cup 90, tbsp 6
11632 canned | jalapeno; jalapeno pepper; pickled jalapeno; jarred jalapeno | nightshade ?sulphites | tbsp 8.5, tin 200, jar 200
11977 | serrano; serrano pepper; serrano chili | nightshade | each 6
11980 canned | green chili; chili; canned green chili; diced green chili; tinned green chili; mild green chili | nightshade | tin 113, cup 139, jar 113
11962 | dried chili; dried red chili; dried hot chili; dried arbol chili; arbol chili; dried thai chili; whole dried chili; dried guajillo; guajillo; guajillo chili; guajillo pepper; dried chili pod; kashmiri chili | nightshade | each 2, small 0.5, medium 2, large 5, cup 37
11978 | ancho; ancho chili; ancho pepper; dried ancho chili; chili ancho; dried poblano; mulato chili | nightshade | each 17, small 12, medium 17, large 19
11982 | pasilla; pasilla chili; dried pasilla chili | nightshade | each 7
11529 | tomato; red tomato; vine tomato; beefsteak tomato; heirloom tomato; salad tomato; ripe tomato; fresh tomato; slicing tomato; beef tomato | nightshade | each 123, small 91, medium 123, large 182, slice 20, wedge 31, cup 180, cup chopped 180, cup diced 180
11529 | plum tomato; roma tomato; roma; san marzano tomato fresh; paste tomato | nightshade | each 62, small 50, medium 62, large 85, cup 180
11529 | cherry tomato; grape tomato; baby plum tomato; baby tomato; cocktail tomato | nightshade | each 15, cup 149, pint 298, punnet 250, packet 250, tub 250, handful 75
11530 cooked | tomato; roasted tomato; stewed fresh tomato | nightshade | cup 240
11531 canned | tomato; plum tomato; cherry tomato; canned tomato; tinned tomato; chopped tomato canned; chopped tinned tomato; peeled plum tomato; san marzano tomato; whole peeled tomato | nightshade | tin 400, jar 680, carton 390, cup 240, drained 0.6
11537 | fire roasted tomato; diced tomato with green chili; rotel | nightshade | tin 411, cup 241
11533 | stewed tomato | nightshade ?celery | tin 411, cup 255
11693 | crushed tomato; polpa; crushed canned tomato | nightshade | tin 400, cup 242
11547 | passata; tomato puree us; passata; strained tomato; tomato passata; sieved tomato; pureed tomato | nightshade | jar 680, bottle 680, carton 500, tin 400, cup 250
11546 | tomato paste; tomato puree; concentrated tomato; tomato concentrate; double concentrate tomato; double concentrated tomato puree | nightshade | tbsp 16, tsp 5.4, cup 262, tin 170, tube 130, jar 190
11549 | tomato sauce | nightshade | cup 245, tin 425, jar 400
11548 | tomato powder | nightshade | tbsp 7, cup 112
11955 | sundried tomato; dried tomato | nightshade ?sulphites | cup 54, each 2, tbsp 3.4
11956 | sundried tomato in oil; oil packed sundried tomato; sundried tomato oil packed; sunblush tomato; semi dried tomato | nightshade ?sulphites | cup 110, each 3, jar 180, drained 0.6
11886 | tomato juice | nightshade | cup 243
11527 | green tomato | nightshade | each 123, large 182, small 91
11954 | tomatillo; tomate verde | nightshade | each 34, cup 132, tin 340
11209 | eggplant; aubergine; brinjal; baby eggplant; japanese eggplant; chinese eggplant; globe eggplant | nightshade | each 458, small 300, medium 458, large 650, slice 25, cup 82
11210 cooked | = | nightshade | cup 99
11477 | zucchini; courgette; baby marrow; green squash; summer squash zucchini | - | each 196, small 118, medium 196, large 323, cup 124, cup sliced 113, cup grated 124, cup shredded 124
11478 cooked | = | - | cup 180
11641 | summer squash; yellow squash; pattypan squash; marrow; crookneck squash; yellow summer squash | - | each 196, small 118, medium 196, large 323, cup 113, cup chopped 124
11485 | butternut squash; butternut; butternut pumpkin | - | each 900, small 600, medium 900, large 1400, cup 140
11486 cooked | = ; roasted butternut squash | - | cup 205
11482 | acorn squash | - | each 431, small 300, medium 431, large 700, cup 140
11492 | spaghetti squash | - | each 1100, cup 101
11643 | winter squash; squash; kabocha; kabocha squash; delicata squash; hubbard squash; red kuri squash | - | each 900, small 500, medium 900, large 1400, cup 116
11644 cooked | = | - | cup 205
11422 | pumpkin; sugar pumpkin; pie pumpkin; pumpkin flesh | - | each 2000, small 1000, cup 116
11423 cooked | = ; mashed pumpkin | - | cup 245
11424 canned | pumpkin; pumpkin puree; canned pumpkin; solid pack pumpkin; pumpkin pure | - | tin 425, cup 245
11352 | potato; yellow potato; boiling potato; yukon gold potato; yukon gold; all rounder potato; maris piper potato; maris piper; desiree potato; king edward potato; mashing potato; fingerling potato; waxy potato; floury potato; charlotte potato; rooster potato; yellow flesh potato | nightshade | each 213, small 150, medium 190, large 300, cup 150, cup diced 150, cup grated 150
11353 | russet potato; baking potato; russet; idaho potato; jacket potato raw | nightshade | each 213, small 170, medium 213, large 369, cup 150
11354 | white potato | nightshade | each 213, small 150, medium 190, large 300, cup 150
11355 | red potato; red skinned potato; red skin potato; red bliss potato | nightshade | each 150, small 80, medium 150, large 300, cup 150
11352 | new potato; baby potato; baby new potato; salad potato; creamer potato; jersey royal potato | nightshade | each 50, small 40, medium 60, large 100, cup 150
11367 cooked | potato; boiled potato; leftover potato; new potato | nightshade | each 135, cup 156, medium 167
11674 roasted | potato; baked potato; jacket potato; baking potato | nightshade | each 173, large 299, medium 173, small 138
11374 canned | potato; new potato | nightshade | tin 454, drained 0.62
11657 | mashed potato; mash; potato mash; mashed potatoes homemade | nightshade milk | cup 210
11378 | instant mashed potato; potato flake; instant potato flake; instant potato; dried mashed potato; mashed potato flake; dehydrated potato flake; instant mash; mashed potato powder | nightshade ?sulphites ?milk | cup 60, tbsp 4, packet 110
11413 | potato flour | nightshade ?sulphites | cup 160
31021 | hashbrown; frozen hashbrown; shredded potato frozen | nightshade | cup 105, each 64, packet 850
11402 | french fry; frozen chip; oven chip; frozen french fry | nightshade | packet 900, cup 100
11507 | sweet potato; sweetpotato; sweet potato; orange sweetpotato; kumara; boniato | - | each 225, small 130, medium 225, large 400, cup 133
11510 cooked | = ; mashed sweetpotato | - | cup 328, medium 151
11508 roasted | = ; baked sweetpotato | - | cup 200, medium 114, large 180
11514 canned | sweet potato; sweetpotato; sweetpotato puree | - | tin 425, cup 255
11601 | yam; white yam | - | each 450, cup 150
11518 | taro; eddo; taro root; dasheen | - | each 200, cup 104
11134 | cassava; yuca; manioc; cassava root; yuca root | - | each 408, cup 206
11564 | turnip | - | each 122, small 61, medium 122, large 183, cup 130
11565 cooked | = | - | cup 156
11435 | rutabaga; swede; yellow turnip | - | each 386, small 192, medium 386, large 772, cup 140
11298 | parsnip | - | each 130, small 90, medium 130, large 180, cup 133
11299 cooked | = | - | cup 156
11080 | beet; red beet; golden beet; baby beet; raw beetroot; beetroot | - | each 100, small 60, medium 100, large 150, bunch 450, cup 136, cup grated 136
11081 cooked | = ; vacuum packed beet | - | cup 170, each 50, packet 250
11082 canned | = | - | tin 425, cup 170, drained 0.6
11084 drained | = | - |
11609 | pickled beet; pickled beetroot | ?sulphites | jar 340, cup 227
11429 | radish; red radish; radishe; breakfast radish | - | each 9, small 2, medium 5, large 9, bunch 115, cup 116
11430 | daikon; daikon radish; mooli; white radish; korean radish | - | each 338, small 250, cup 116
11109 | cabbage; white cabbage; green cabbage; pointed cabbage; sweetheart cabbage; spring cabbage; hispi cabbage; cabbage head | - | each 900, small 700, medium 900, large 1250, head 900, leaf 23, wedge 110, cup 89, cup shredded 70, bag 400
11110 cooked | = | - | cup 150
11109 | coleslaw mix; slaw mix; shredded cabbage mix; broccoli slaw; cabbage mix | - | cup 70, bag 400, packet 400
11112 | red cabbage; purple cabbage | - | each 840, small 570, medium 840, large 1130, head 840, cup 89, cup shredded 70
11114 | savoy cabbage; savoy | - | each 700, head 700, cup 70
11119 | napa cabbage; chinese cabbage; chinese leaf; nappa cabbage; wombok; pe tsai | - | each 840, head 840, small 500, cup 76, leaf 20
11116 | bok choy; bokchoy; baby bokchoy; pak choi; chinese chard | - | each 150, small 100, medium 150, large 840, head 840, bunch 400, cup 70
11118 | kimchi; kimchee; cabbage kimchi | ?fish ?crustaceans ?molluscs ?wheat ?soy | cup 150, jar 400, tbsp 10
11439 | sauerkraut | ?sulphites | cup 142, jar 680, tin 411
11098 | brussels sprout; brussel sprout; brussels; sprout brussels | - | each 19, cup 88, bag 454, packet 454
11099 cooked | = | - | cup 156
11090 | broccoli; broccoli floret; broccoli crown; calabrese; tenderstem broccoli; broccolini; sprouting broccoli; tenderstem; purple sprouting broccoli; broccoli head | - | each 350, head 350, small 250, medium 350, large 608, floret 11, bunch 608, crown 250, stalk 150, cup 91, cup floret 71, cup chopped 91, bag 340, packet 340
11091 cooked | = | - | cup 156
11092 frozen | = | - | cup 156
11096 | broccoli rabe; broccoli raab; rapini | - | bunch 437, cup 40
11135 | cauliflower; cauliflower floret; romanesco; cauli | - | each 588, head 588, small 265, medium 588, large 840, floret 13, cup 107, bag 400
11136 cooked | = | - | cup 124
11137 frozen | = | - | cup 132
11135 | cauliflower rice; riced cauliflower; cauli rice | - | cup 107, bag 340, packet 340
11457 | spinach; baby spinach; fresh spinach; spinach leaf; baby spinach leaf | - | cup 30, cup packed 40, bunch 340, handful 30, bag 200, packet 200, box 284, leaf 10
11458 cooked | = | - | cup 180
11463 frozen | =; chopped frozen spinach; leaf spinach | - | cup 156, packet 284, box 284, block 90, cube 30
11459 canned | = | - | tin 383, drained 0.65
11461 drained | = | - |
11233 | kale; curly kale; lacinato kale; tuscan kale; cavolo nero; dinosaur kale; black kale; baby kale | - | cup 21, cup chopped 67, bunch 250, leaf 20, handful 25, bag 200
11234 cooked | = | - | cup 118
11147 | swiss chard; chard; rainbow chard; silverbeet; green swiss chard | - | cup 36, bunch 340, leaf 48
11148 cooked | = | - | cup 175
11161 | collard green; collard; spring green; collards | - | cup 36, bunch 300, leaf 25
11270 | mustard green; gai choy; mustard leaf | mustard | cup 56, bunch 300
11568 | turnip green; turnip top | - | cup 55, bunch 300
11086 | beet green; beet leaf | - | cup 38, bunch 200
11207 | dandelion green; dandelion leaf | - | cup 55, bunch 200
11250 | lettuce; butterhead lettuce; boston lettuce; bibb lettuce; butter lettuce; round lettuce; little gem; little gem lettuce; baby gem | - | each 163, small 100, head 163, cup 55, leaf 8
11251 | romaine; romaine lettuce; cos; cos lettuce; romaine heart | - | each 450, head 450, heart 250, cup 47, leaf 10
11252 | iceberg; iceberg lettuce; crisphead lettuce | - | each 539, head 539, small 324, cup 72, leaf 8
11253 | leaf lettuce; green leaf lettuce; salad leaf; mixed salad leaf; salad green; mixed green; mesclun; baby green; field green; spring mix; mixed lettuce; salad mix; baby leaf; lamb lettuce; mache; baby salad green; baby leaf salad; mixed baby green; mixed leaf; frisee | - | cup 36, bag 140, packet 140, head 360, handful 25, leaf 10
11959 | arugula; rocket; rocket leaf; roquette; rucola; baby arugula; wild rocket; rocket salad | - | cup 20, bag 100, packet 100, bunch 100, handful 20, leaf 2
11591 | watercress; cress; garden cress; upland cress | - | cup 34, bunch 85, handful 20, bag 85
11213 | endive; escarole; curly endive; batavia | - | cup 50, head 513
11151 | belgian endive; chicory; witloof; witloof chicory; red chicory | - | each 130, head 130
11952 | radicchio; treviso; treviso radicchio | - | each 200, head 200, cup 40, leaf 8
11011 | asparagus; asparagus spear; asparagus tip; green asparagus; white asparagus | - | each 16, small 12, medium 16, large 20, spear 16, bunch 400, cup 134
11012 cooked | = | - | cup 180, spear 15
11052 | green beans; green bean; french bean; string bean; runner bean; haricot vert; snap bean; fine bean; bobby bean; fine green bean; dwarf bean; wax bean; yellow bean; long bean; yardlong bean; flat bean | - | each 5.5, cup 100, cup chopped 110, handful 60, bag 340, packet 200
11053 cooked | = | - | cup 125
11060 frozen | = | - | cup 121
11054 canned | = | - | tin 411, drained 0.6
11056 drained | = | - |
11304 | peas; pea; green pea; fresh pea; garden pea; shelled pea; english pea; petit pois; petits pois; shelled english pea | legume | cup 145, tbsp 9
11305 cooked | = | legume | cup 160
11312 frozen | = ; frozen pea | legume | cup 134, bag 450, packet 450, handful 40
11306 canned | = ; marrowfat pea; mushy pea | legume | tin 425, drained 0.6
11308 drained | = | legume |
11300 | snow pea; mangetout; sugar snap pea; sugar snap; snap pea; pea pod; edible podded pea; sugar pea; chinese pea pod | legume | each 3, cup 63, cup chopped 98, handful 50, bag 200, packet 200
11322 | pea and carrot; frozen pea and carrot; frozen carrot and pea | legume | cup 140
11583 | mixed vegetable; frozen mixed vegetable; mixed vegetable frozen; frozen vegetable mix; stir fry vegetable; frozen vegetable; macedoine | legume ?celery | cup 182, bag 450, packet 284
11581 canned | mixed vegetable | legume ?celery | tin 425, cup 163
11167 | corn; sweetcorn; sweet corn; corn kernel; yellow corn; fresh corn; sweetcorn kernel; fresh corn kernel; corn cut from cob; baby corn | - | cup 145, ear 90, each 90, small 73, medium 90, large 143, tbsp 9
11167 | corn on the cob; corn cob; ear of corn; sweetcorn cob; corn ear | - | each 90, ear 90, small 73, medium 90, large 143
11168 cooked | corn; sweetcorn; corn kernel | - | cup 149, ear 89
11178 frozen | corn; sweetcorn; corn kernel; yellow corn; frozen corn | - | cup 136, bag 450, packet 284, handful 40
11170 canned | corn; sweetcorn; corn kernel; whole kernel corn | - | tin 340, cup 164, drained 0.75
11172 drained | = | - |
11174 | creamed corn; cream style corn; creamed sweetcorn | ?milk | tin 418, cup 256
20030 | hominy; canned hominy; pozole corn; white hominy | - | tin 425, cup 165
11278 | okra; bhindi | - | each 12, cup 100, bag 340
11279 cooked | = | - | cup 160
11280 frozen | = | - | cup 112
11205 | cucumber; english cucumber; persian cucumber; lebanese cucumber; hothouse cucumber; kirby cucumber; mini cucumber | - | each 301, small 158, medium 220, large 301, slice 7, cup 104, cup chopped 133, cup diced 133
11206 | peeled cucumber | - | each 201, medium 201, cup 133
11937 | pickle; dill pickle; gherkin; pickled cucumber; cornichon; kosher dill; pickle spear; pickle chip | ?mustard ?sulphites | each 65, small 37, medium 65, large 135, spear 35, slice 7, cup 143, tbsp 9, jar 340
11945 | pickle relish; sweet relish; relish; sweet pickle relish | ?mustard ?sulphites ?celery | tbsp 15
11260 | mushroom; white mushroom; button mushroom; closed cup mushroom; champignon; cup mushroom; mixed mushroom; table mushroom; fresh mushroom; wild mushroom; mushroom cap; flat mushroom | mushroom | each 18, small 10, medium 18, large 23, cup 70, cup whole 96, cup sliced 70, cup chopped 70, handful 60, punnet 250, packet 227, box 227
11261 cooked | = | mushroom | cup 156
11264 canned | = | mushroom | tin 184, cup 156, jar 184, drained 0.6
11266 | cremini; cremini mushroom; crimini; crimini mushroom; chestnut mushroom; baby bella; baby bella mushroom; brown mushroom; baby portobello mushroom | mushroom | each 20, small 12, medium 20, large 25, cup 87, cup sliced 72, packet 227
11265 | portobello; portobello mushroom; portabella; portabella mushroom; portobello cap | mushroom | each 84, small 60, medium 84, large 110, cup 86
11238 | shiitake; shiitake mushroom; fresh shiitake; shitake; shitake mushroom | mushroom | each 19, small 12, medium 19, large 25, cup 70
11268 dried | shiitake; shiitake mushroom; chinese black mushroom; black mushroom; shitake; shitake mushroom | mushroom | each 3.6, cup 30
11268 | dried mushroom; porcini; dried porcini; dried porcini mushroom; dried wild mushroom; dried mixed mushroom; porcini mushroom dried; cep dried | mushroom ?sulphites | cup 28, tbsp 1.8, handful 10, packet 25, each 3
11987 | oyster mushroom; king oyster mushroom; king trumpet mushroom; eryngii | mushroom | each 50, small 15, medium 120, large 148, cup 86
11950 | enoki; enoki mushroom; enokitake; beech mushroom; shimeji | mushroom | each 3, packet 100, bunch 100, cup 65
11239 | chanterelle; chanterelle mushroom; girolle | mushroom | each 5.4, cup 54
11240 | morel; morel mushroom | mushroom | each 12.9, cup 66
11993 | maitake; hen of the wood; maitake mushroom | mushroom | cup 70
11988 | wood ear; wood ear mushroom; black fungus; cloud ear; dried wood ear; cloud ear mushroom | mushroom | each 4.5, cup 28
11989 | straw mushroom; canned straw mushroom | mushroom | tin 425, cup 182, drained 0.5
11957 | fennel; fennel bulb; florence fennel; bulb fennel; bulb of fennel; finocchio | - | each 234, bulb 234, small 170, medium 234, large 350, cup 87
11007 | artichoke; globe artichoke | - | each 128, medium 128, large 162, small 90
11009 | artichoke heart; frozen artichoke heart | ?sulphites | each 30, cup 168, packet 255
11008 canned | artichoke heart; artichoke; marinated artichoke; marinated artichoke heart; marinated artichokes | ?sulphites | tin 400, jar 280, cup 168, each 30, drained 0.6
11226 | jerusalem artichoke; sunchoke | - | each 50, cup 150
11241 | kohlrabi | - | each 250, cup 135
11603 | jicama; yam bean; mexican turnip | - | each 659, small 365, medium 659, large 1300, cup 120
11149 | chayote; christophine; mirliton; choko | - | each 203, cup 132
11254 | lotus root; renkon | - | each 115, slice 8, cup 120
11026 | fresh bamboo shoot | - | cup 151
11028 | bamboo shoot; sliced bamboo shoot; canned bamboo shoot | - | tin 227, cup 131, drained 0.62
11590 | water chestnut; waterchestnut; canned waterchestnut; sliced waterchestnut; water chestnut | - | tin 227, cup 140, each 7, drained 0.6
11043 | bean sprout; mung bean sprout; beansprout; mungbean sprout; bean shoot; sprouted mungbean | legume | cup 104, packet 300, bag 300, handful 50
11001 | alfalfa sprout; alfalfa; broccoli sprout; sprout | legume | cup 33, handful 15
11248 | sprouted lentil; lentil sprout; sprouted green lentil; sprouted brown lentil | legume | cup 77
11211 | edamame; frozen edamame; edamame bean; shelled edamame; soybean green; green soybean; mukimame | soy | cup 150, bag 340, packet 340
11088 | broad bean; fava bean; fava; broadbean; podded broad bean; fresh fava bean | legume | cup 126
11031 | lima bean; fresh lima bean; fordhook lima bean; butter bean fresh | legume | cup 156
11039 frozen | lima bean; fava bean; broad bean; baby lima bean; butter bean; fordhook lima bean | legume | cup 160, packet 284
11961 | heart of palm; palm heart; canned heart of palm | - | tin 400, cup 146, each 33, drained 0.55
11963 | nopal; cactus paddle; nopales; nopale | - | each 60, cup 86
11667~ | nori; nori sheet; laver; sushi nori; toasted nori; seaweed sheet | ?crustaceans ?molluscs | sheet 2.6, each 2.6, packet 25
11667~ | kombu; kelp; dried kelp; dried kombu; kombu seaweed | ?crustaceans ?molluscs | piece 5, sheet 20, inch 2, each 5, strip 5
11669 | fresh wakame; wakame fresh | ?crustaceans ?molluscs | cup 80
11442 | fresh agar | - | cup 80
11663 | agar; agar agar; agar powder; agar flake; agar agar powder; kanten | - | tsp 2, tbsp 5
11667 | spirulina; spirulina powder; dried spirulina | ?crustaceans ?molluscs | tbsp 7, tsp 2.3
11667~ | dried seaweed; dulse; wakame; dried wakame; dried wakame seaweed; seaweed; arame; hijiki; dried kelp flake | ?crustaceans ?molluscs | tbsp 2, tsp 0.7, cup 15, piece 2
11216 | ginger; fresh ginger; root ginger; ginger root; gingerroot; grated ginger; minced ginger; ginger paste; stem ginger fresh; fresh root ginger; galangal | - | inch 8, piece 15, knob 15, thumb 25, slice 2.2, each 50, tsp 2, tbsp 6, cup 96
11972 | lemongrass; lemongrass stalk; stalk of lemongrass | - | each 12, stalk 12, stick 12, cup 67, tbsp 4.8
11990 | wasabi root; fresh wasabi | mustard | each 169, tsp 5
11974 | grape leaf; vine leaf | ?sulphites | leaf 4, each 4, jar 450
11416 | squash blossom; pumpkin flower; courgette flower; zucchini blossom | - | each 2
11024 | bitter melon; bitter gourd; karela; goya | - | each 124, cup 93
11218 | bottle gourd; calabash; lauki; opo squash | - | each 771, cup 116
11220 | luffa; ridge gourd; loofah; turai; silk squash | - | each 178, cup 95
11593 | winter melon; wax gourd; ash gourd; wintermelon | - | cup 132
11503 | water spinach; morning glory; kangkong; ong choy | - | cup 56, bunch 250
11620 | drumstick vegetable; moringa pod; drumstick pod | - | each 11, cup 100
11222 | moringa leaf; drumstick leaf; moringa | - | cup 21
11157 | chrysanthemum green; garland chrysanthemum; shungiku | - | cup 25, bunch 150
11104 | burdock; burdock root; gobo | - | each 156, cup 118
11282 | boiling onion; pickling onion; cipollini; cipollini onion; small boiling onion | allium | each 35, cup 150
11437 | salsify; black salsify; scorzonera; oyster plant | - | each 70, cup 133
11438 cooked | salsify; black salsify; scorzonera | - | cup 135
`;
