/** Nuts, seeds, their butters and flours, coconut. Rows as in vegetables.ts. */
export const nuts = `
12061 | almond; whole almond; raw almond; natural almond; skin on almond; unblanched almond; whole natural almond; toasted almond; chopped almond; roasted almond; unsalted almond; smoked almond | almond | each 1.2, cup 143, cup chopped 130, cup sliced 92, cup slivered 108, tbsp 9, handful 30
12062 | blanched almond; slivered almond; flaked almond; sliced almond; almond flake; almond sliver; toasted flaked almond; toasted slivered almond; blanched slivered almond | almond | each 1.2, cup 145, cup slivered 108, cup flaked 92, cup sliced 92, cup chopped 130, tbsp 7, handful 25
12062 | almond flour; ground almond; almond meal; blanched almond flour; almond powder; superfine almond flour | almond | cup 96, tbsp 6
12195 | almond butter; smooth almond butter; almond paste spread | almond | tbsp 16, cup 250, jar 340
12195~ | nut butter; mixed nut butter; nut or seed butter | ?almond ?cashew ?hazelnut ?macadamia ?pecan ?pistachio ?walnut ?brazil-nut ?peanut ?sesame | tbsp 16, cup 256, jar 340
12071 | marzipan; almond paste; marzipan; mandelmassa | almond ?egg ?wheat | cup 227, packet 227, tbsp 14
12078 | brazil nut; brazilnut; brazil nut; brazil | brazil-nut | each 5, cup 133
12087 | cashew; raw cashew; cashew nut; whole cashew; unsalted cashew; cashew piece; cashew nuts; toasted cashew | cashew | each 1.5, cup 138, tbsp 8.6, handful 30
12085 roasted | cashew; roasted cashew; dry roasted cashew; salted cashew | cashew | each 1.5, cup 137, handful 30
12088 | cashew butter; cashew paste; cashew cream | cashew | tbsp 16, cup 256
12097 | chestnut; fresh chestnut | chestnut | each 10, cup 145
12167 cooked | chestnut; roasted chestnut; vacuum packed chestnut; cooked chestnut; peeled chestnut; canned chestnut; chestnut puree; ready cooked chestnut; chestnut piece; chestnut paste | chestnut | each 8.4, cup 143, packet 200, tin 430
12100~ | chestnut flour | chestnut | cup 100
12104 | fresh coconut; coconut; coconut meat; grated coconut; grated fresh coconut; whole coconut; fresh grated coconut; coconut flesh; frozen grated coconut; fresh shredded coconut; frozen coconut; fresh coconut meat | coconut | each 397, cup 80, tbsp 5
12108 | desiccated coconut; shredded coconut; unsweetened shredded coconut; dried coconut; coconut flake; unsweetened coconut; unsweetened desiccated coconut; dry coconut; coconut shred; unsweetened coconut flake; coconut chip; dessicated coconut; finely shredded unsweetened dried coconut; unsweetened dried coconut; toasted coconut; flaked coconut; dried unsweetened coconut; finely shredded coconut | coconut ?sulphites | cup 84, cup flake 60, tbsp 5.2
12109 | sweetened flaked coconut; sweetened coconut flake; sweetened coconut; flaked sweetened coconut; sweet coconut flake | coconut sulphites | cup 93, tbsp 5.5
12179 | sweetened shredded coconut; shredded sweetened coconut | coconut sulphites | cup 93, packet 199
12118 | coconut milk; canned coconut milk; tinned coconut milk; full fat coconut milk; unsweetened coconut milk; thick coconut milk; fullfat coconut milk; coconut milk unsweetened; thai coconut milk | coconut ?sulphites | tin 400, cup 226, tbsp 15, carton 1000
12118~ | light coconut milk; lite coconut milk; reduced fat coconut milk; lowfat coconut milk; coconut milk light; coconut milk drink; coconut milk beverage; coconut drink; carton coconut milk | coconut ?sulphites | tin 400, cup 235, tbsp 15
12115 | coconut cream; thick coconut cream; canned coconut cream; unsweetened coconut cream | coconut ?sulphites | tin 400, cup 240, tbsp 15, carton 250
12116 | cream of coconut; sweetened coconut cream | coconut ?milk ?sulphites | tin 425, cup 296
12177 | creamed coconut; coconut butter; coconut block; coconut manna; block coconut cream | coconut | block 200, tbsp 14, packet 200, sachet 50
12177~ | coconut milk powder; coconut cream powder; powdered coconut milk; coconut powder | coconut ?milk | cup 100, tbsp 7, packet 50, sachet 50
12114~ | coconut flour | coconut | cup 112, tbsp 7
14090 | coconut water | coconut | cup 245
12120 | hazelnut; filbert; whole hazelnut; raw hazelnut; chopped hazelnut; toasted hazelnut; cobnut; roasted hazelnut; skinned hazelnut | hazelnut | each 1.4, cup 135, cup chopped 115, cup ground 75, tbsp 8, handful 30
12121 | blanched hazelnut; ground hazelnut; hazelnut flour; hazelnut meal | hazelnut | cup 100, cup whole 135, tbsp 7
12121~ | hazelnut butter; hazelnut paste; praline paste | hazelnut | tbsp 16, cup 250
19125 | chocolate hazelnut spread; nutella; hazelnut spread; chocolate spread; hazelnut chocolate spread; chocolate hazelnut butter | hazelnut milk ?soy | tbsp 18.5, cup 300, jar 400
12131 | macadamia; macadamia nut; raw macadamia; roasted macadamia; unsalted macadamia | macadamia | each 2.6, cup 134, handful 30
12142 | pecan; pecan half; chopped pecan; raw pecan; toasted pecan; pecan nut; pecan piece; candied pecan | pecan | each 1.5, half 1.5, cup 109, cup halves 99, cup chopped 109, tbsp 7, handful 25
12147 | pine nut; pinenut; pine nut; pine kernel; pignoli; pinon; toasted pinenut; pignoli nut; pinoli | pine-nut | cup 135, tbsp 8.6, handful 30
12151 | pistachio; shelled pistachio; raw pistachio; unsalted pistachio; pistachio nut; shelled unsalted pistachio; green pistachio; slivered pistachio; roasted pistachio; pistachio kernel; salted pistachio; chopped pistachio | pistachio | each 0.6, cup 123, tbsp 7.7, handful 30
12155 | walnut; walnut half; chopped walnut; walnut piece; english walnut; toasted walnut; walnut nut; raw walnut; ground walnut; finely chopped walnut | walnut | each 4, half 2, cup 110, cup halves 100, cup chopped 117, cup ground 80, tbsp 7, handful 25
12154 | black walnut | walnut | cup 125
12137 | mixed nuts; mixed nut; nut; assorted nut; chopped nut; unsalted mixed nut; chopped mixed nut; toasted nut; nuts | almond cashew hazelnut walnut ?brazil-nut ?macadamia ?pecan ?pistachio ?peanut | cup 134, cup chopped 125, tbsp 8, handful 30
12130 | hickory nut; butternut nut; hickorynut | ?walnut ?pecan | cup 120
12127 | ginkgo nut; gingko nut | - | each 2
16087 | peanut; raw peanut; groundnut; monkey nut; skinless peanut; blanched peanut; unsalted peanut; peanut kernel; red skin peanut | peanut | cup 146, tbsp 9, handful 30, each 1
16390 roasted | peanut; roasted peanut; dry roasted peanut; salted peanut; crushed peanut; roasted salted peanut; chopped peanut; crushed roasted peanut; unsalted roasted peanut | peanut ?wheat | cup 146, tbsp 9, handful 30, each 1
16398 | peanut butter; smooth peanut butter; creamy peanut butter; natural peanut butter; unsweetened peanut butter; organic peanut butter; smooth or chunky peanut butter; natural creamy peanut butter; unsalted peanut butter; smooth natural peanut butter | peanut | tbsp 16, tsp 5.3, cup 258, jar 340
16397 | crunchy peanut butter; chunky peanut butter; extra crunchy peanut butter | peanut | tbsp 16, cup 258, jar 340
16099 | peanut flour; powdered peanut butter; peanut butter powder; pb2; peanut powder; defatted peanut flour | peanut | cup 90, tbsp 6
12006 | chia seeds; chia seed; chia; black chia seed; white chia seed | - | cup 170, tbsp 11, tsp 3.7
12220 | flaxseed; linseed; whole flaxseed; golden flaxseed; golden linseed | - | cup 168, tbsp 10.3
12220 | ground flaxseed; flax meal; milled flaxseed; flaxseed meal; ground flax; ground linseed; finely ground flaxseed; flax; ground flax meal; milled linseed | - | cup 112, tbsp 7, tsp 2.4
12012 | hemp seed; hemp heart; hulled hemp seed; shelled hemp seed; hemp | - | cup 160, tbsp 10
12014 | pumpkin seed; pepita; hulled pumpkin seed; raw pumpkin seed; green pumpkin seed; shelled pumpkin seed; pumpkin seed kernel; toasted pumpkin seed; raw pepita | - | cup 135, tbsp 8.5, handful 30
12016 roasted | pumpkin seed; pepita; roasted pumpkin seed; roasted pepita | - | cup 125, tbsp 8
12023 | sesame seeds; sesame seed; sesame; black sesame seed; white sesame seed; unhulled sesame seed; toasted sesame seed; roasted sesame seed; benne seed; hulled sesame seed | sesame | cup 144, tbsp 9, tsp 3
12166 | tahini; tahini paste; sesame paste; light tahini; sesame butter; raw tahini; chinese sesame paste; raw tahini paste; sesame tahini; roasted tahini; dark tahini; hulled tahini; stirred tahini | sesame | tbsp 15, cup 240, jar 300
19117 | halva; halvah; halwa sesame | sesame ?pistachio ?milk ?almond | piece 30, tbsp 15
12036 | sunflower seed; hulled sunflower seed; sunflower kernel; raw sunflower seed; shelled sunflower seed; toasted sunflower seed; sunflower heart | - | cup 140, tbsp 9, handful 30
12037 roasted | sunflower seed | - | cup 128
12040 | sunflower seed butter; sunflower butter; sunbutter; seed butter | - | tbsp 16, cup 256
12036 | mixed seed; seed mix; omega seed mix; mixed sunflower pumpkin seed; salad seed mix | ?sesame | cup 140, tbsp 9, handful 30
12174 | watermelon seed; melon seed; egusi | - | cup 108
12013 | lotus seed; makhana; puffed lotus seed; fox nut | - | cup 32
19059 | trail mix; studentenfutter; fruit and nut mix; mixed fruit and nut | ?peanut ?almond ?cashew ?walnut ?hazelnut ?pecan ?brazil-nut ?pistachio ?macadamia ?milk ?soy ?sulphites ?coconut ?sesame | cup 150, handful 40, packet 100
`;
