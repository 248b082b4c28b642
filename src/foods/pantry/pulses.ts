/** Beans, lentils, peas, soya. Dry comes first: that is what a recipe means without a word for the state. */
export const pulses = `
16069 dry | lentils; lentil; brown lentil; green lentil; puy lentil; french lentil; french green lentil; black lentil; beluga lentil; whole lentil; masoor; whole masoor; castelluccio lentil; le puy lentil; de puy lentil | legume | cup 192, tbsp 12, bag 454, packet 500
16070 cooked | = | = | cup 198, tbsp 12.3
16070~ canned | = | = | tin 400, cup 198, drained 0.6
16144 dry | red lentils; red lentil; split red lentil; masoor dal; pink lentil; red split lentil; yellow lentil; dal; lentil dal; dried split red lentil | legume | cup 192, tbsp 12, bag 454, packet 500
16070~ cooked | = | legume | cup 198
16056 dry | chickpeas; chickpea; garbanzo bean; kabuli chana; chana; black chickpea; kala chana; garbanzo; ceci bean; bengal gram | legume | cup 200, tbsp 12.5, bag 454, packet 500
16057 cooked | = | = | cup 164
16360 canned | = | = | tin 425, jar 660, drained 0.6
16359 drained | = | = | cup 152
16056~ dry | chana dal; split gram; split bengal gram; split chickpea; split black chickpea; chana dal split | legume | cup 200, tbsp 12.5
16157 | chickpea flour; besan; gram flour; garbanzo bean flour; garbanzo flour | legume | cup 92, tbsp 6
16014 dry | black beans; black bean | legume | cup 194, tbsp 12.1, bag 454
16015 cooked | = | = | cup 172
16018 canned | =; black turtle bean; canned black bean | = | tin 425, drained 0.6
16015~ drained | = | = | cup 172
16016 dry | black turtle beans; black turtle bean; turtle bean | legume | cup 184
16017 cooked | = | = | cup 185
16032 dry | kidney beans; kidney bean; red kidney bean; rajma; dark red kidney bean; red bean; dark kidney bean | legume | cup 184, bag 454
16033 cooked | = | = | cup 177
16034 canned | = ; chili bean | = | tin 425, cup 177, drained 0.6
16335 drained | = | = | cup 158
16042 dry | pinto beans; pinto bean; pinto; borlotti bean; borlotti; dry bean; dried bean; mixed bean; california pink bean; bean; mixed dried bean; bayo bean; carioca bean | legume | cup 193, bag 454
16043 cooked | = | = | cup 171
16044 canned | =; mixed bean salad; three bean mix; bean mix | = | tin 425, drained 0.6
16345 drained | = | = | cup 169
16019 dry | cranberry bean; roman bean; borlotti dried | legume | cup 195
16020 cooked | = | = | cup 177
16049 dry | white beans; white bean; cannellini bean; cannellini; white kidney bean; haricot; haricot bean; small white bean; tarbais bean; judion bean | legume | cup 202, bag 454
16050 cooked | = | = | cup 179
16051 canned | = | = | tin 425, jar 660, drained 0.6
16050~ drained | = | = | cup 179
16037 dry | navy beans; navy bean | legume | cup 208
16038 cooked | = | = | cup 182
16039 canned | = | = | tin 425, drained 0.6
16024 dry | great northern bean; great northern | legume | cup 183
16025 cooked | = | = | cup 177
16026 canned | = | = | tin 425, drained 0.6
16071 dry | butter beans; butter bean; lima bean; large lima bean; gigante bean; gigantes; gigandes bean; corona bean; butterbean | legume | cup 178
16072 cooked | = | = | cup 188
16073 canned | = | = | tin 400, jar 660, drained 0.6
16072~ drained | = | = | cup 188
16062 dry | black-eyed pea; blackeyed pea; blackeyed bean; cowpea; lobia; field pea; crowder pea | legume | cup 167
16063 cooked | = | = | cup 171
16064 canned | = | = | tin 425, drained 0.6
16063~ drained | = | = | cup 171
16001 dry | adzuki bean; aduki bean; azuki bean; azuki; adzuki | legume | cup 197
16002 cooked | = | = | cup 230
16003 | red bean paste; sweet red bean paste; anko; sweet bean paste; adzuki bean paste | legume | cup 296, tin 430
16080 dry | mung bean; mungbean; mung dal; mung; moong dal; split mung dal; split moong dal; green gram; yellow mung dal; yellow moong dal; whole mung | legume | cup 207, tbsp 13
16081 cooked | = | = | cup 202
16083 dry | urad dal; black gram; urad; mungo bean; split urad dal; white urad dal; whole urad dal | legume | cup 207, tsp 4.5
16084 cooked | = | = | cup 180
16101 dry | toor dal; pigeon pea; arhar dal; tuvar dal; gandule; red gram; toor; gungo pea | legume | cup 205
16102 cooked | = | = | cup 168
16102~ canned | = | = | tin 425, drained 0.6
16085 dry | split peas; split pea; yellow split pea; green split pea; split yellow pea; split green pea; dried pea; matar dal; whole dried pea; split yellow pea dried | legume | cup 197
16086 cooked | = | = | cup 196
16052 dry | dried fava bean; dried broad bean; fava bean dried; split fava bean; broad bean; fava bean | legume | cup 150
16053 cooked | broad bean; fava bean; fava | legume | cup 170
16054 canned | broad bean; fava bean; fava; ful; foul medammes; ful medames | legume | tin 400, cup 256, drained 0.6
16076 dry | lupin; lupin bean; lupini; lupini bean | lupin | cup 180
16077 cooked | = | lupin | cup 166, jar 340
16076~ | lupin flour; lupin flake | lupin | cup 120, tbsp 8
16108 dry | soybean; dried soybean; soy bean | soy | cup 186
16109 cooked | = | soy | cup 172
16115 | soy flour; soya flour; kinako; roasted soy flour | soy | cup 84, tbsp 5.2
16006 | baked beans; baked bean; beans in tomato sauce; bean in tomato sauce; canned baked bean; vegetarian baked bean | legume ?mustard ?celery | tin 415, cup 254
16009 | pork and bean; baked bean with pork | legume pork | tin 415, cup 253
16403 | refried bean; frijoles refritos; refried pinto bean; refried black bean | legume ?pork ?milk | tin 435, cup 238
16171 | vegetarian refried bean; vegan refried bean | legume | tin 444, cup 242
16158 | hummus; houmous; humus; hommous | legume sesame | cup 246, tbsp 15, tub 200
16138 | falafel | legume ?wheat ?sesame | each 17, packet 200
16426 | tofu; firm tofu; bean curd; organic firm tofu; regular tofu; medium tofu; beancurd | soy | block 396, packet 396, cup 252, slice 84, piece 84, cup cubed 230
16159 | extra firm tofu; pressed tofu; super firm tofu | soy | block 396, packet 396, cup 252, slice 84, cup cubed 230
16127 | soft tofu | soy | block 396, packet 396, cup 248
16127 | silken tofu; firm silken tofu; soft silken tofu; silken firm tofu; organic firm silken tofu; extra firm silken tofu | soy | block 349, packet 349, carton 349, box 349, cup 240
16129 | fried tofu; tofu puff; deep fried tofu; aburaage; smoked tofu; baked tofu; marinated tofu | soy ?wheat ?sesame | block 200, each 13, packet 200, cup 120, piece 13
16128 dried | tofu; koya tofu; freeze dried tofu; koyadofu; dried bean curd; tofu skin; yuba; bean curd stick | soy | each 17, piece 17, packet 150
16432 | fermented tofu; fermented bean curd; preserved bean curd | soy alcohol ?wheat | each 11, piece 11, tbsp 17
16114 | tempeh | soy ?wheat ?oats ?barley | block 227, packet 227, cup 166
16112 | miso; miso paste; white miso; red miso; yellow miso; brown miso; shiro miso; white miso paste; aka miso; red miso paste; sweet white miso | soy ?barley ?wheat | tbsp 17, tsp 5.7, cup 275, sachet 18
16112~ | barley miso; mugi miso | soy barley | tbsp 17, tsp 5.7, cup 275
16112~ | doenjang; fermented soybean paste; soybean paste; fermented black bean; doubanjiang; chili bean paste; broad bean paste; black bean paste; chili bean sauce; chinese fermented black bean; fermented soybean; toban djan; ssamjang; yellow bean sauce; yellow bean paste | soy nightshade ?wheat ?barley ?sesame | tbsp 17, tsp 5.7, cup 275
16113 | natto | soy | packet 45, cup 175
16121~ | textured vegetable protein; tvp; soya mince; soya chunk; textured soy protein; soya protein mince; dried soya mince; soy curl; soy protein; tsp protein; soy granule | soy ?wheat | cup 96, tbsp 6
14067 | soy protein powder; vegan protein powder; plant protein powder; pea protein powder | soy legume ?wheat ?oats | scoop 45, tbsp 10, cup 120
43128 | vegan chicken; meatless chicken; vegetarian chicken piece; chicken substitute; plant based chicken; vegan chicken piece | ?soy ?wheat ?egg ?milk ?celery ?mustard | cup 168, packet 180
43132 | meatless meatball; vegetarian meatball; vegan meatball; plant based meatball; vegan meatballs | ?soy ?wheat ?egg ?milk ?celery ?mustard | each 30, cup 144, packet 400
43132~ | vegetarian mince; vegan mince; meatless crumble; plant based mince; meat free mince; plant based ground; vegan ground beef; vegan ground; plant based ground beef; meatless ground; veggie mince; quorn mince; vegetarian ground beef; plant based beef; quorn; quorn piece; vegan beef | ?soy ?wheat ?egg ?milk ?celery ?mustard ?barley ?sesame ?coconut | packet 340, cup 120, bag 300
16147 | veggie burger; vegetarian burger; soy burger; meatless burger; bean burger; vegan burger; plant based burger | ?soy ?wheat ?egg ?milk ?celery ?mustard ?sesame | each 70, patty 70, packet 280
43130 | vegetarian sausage; vegan sausage; meatless sausage; veggie sausage; vegan hotdog; vegetarian frankfurter; veggie hotdog; plant based sausage; meatless frankfurter; vegan frankfurter | ?soy ?wheat ?egg ?milk ?celery ?mustard | each 60, link 60, packet 270
43212 | vegan bacon; meatless bacon; vegan bacon bit; tempeh bacon; bacon bit vegan | ?soy ?wheat ?egg ?milk | slice 10, rasher 10, tbsp 7, packet 150
43134~ | seitan; wheat meat; mock duck; wheat gluten piece | wheat ?soy | block 227, packet 227, cup 140, tin 284
`;
