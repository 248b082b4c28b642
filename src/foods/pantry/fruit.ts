/** Fruit, fresh, dried and tinned. Rows as in vegetables.ts. */
export const fruit = `
09003 | apple; eating apple; red apple; dessert apple; pink lady apple; braeburn apple; honeycrisp apple; macintosh apple; mcintosh apple; apple slice | - | each 182, small 149, medium 182, large 223, cup 125, cup sliced 109, cup chopped 125, cup grated 120, cup diced 125
09502 | granny smith apple; cooking apple; bramley apple; tart apple; green apple; granny smith; bramley; cox apple; baking apple | - | each 182, small 149, medium 182, large 206, cup 125, cup sliced 109
09501 | golden delicious apple; golden delicious; yellow apple | - | each 182, large 215, cup 125
09503 | gala apple; royal gala apple | - | each 172, large 200, cup 125
09504 | fuji apple | - | each 192, large 236, cup 125
09004 | peeled apple | - | each 161, large 216, cup 110
09011 dried | apple; apple ring; dried apple ring | sulphites | cup 86, each 6.4
09401 | applesauce; apple sauce; apple puree; unsweetened applesauce; stewed apple | - | cup 244, jar 680, tbsp 15
09402 | sweetened applesauce | - | cup 255
09016 | apple juice; apple cider us; cloudy apple juice; sweet cider; pressed apple juice | - | cup 248
09021 | apricot; fresh apricot | - | each 35, cup 155
09032 dried | apricot; dried apricot half; sulphured dried apricot; dried apricots sulphured | sulphites | each 7, half 3.5, cup 130, cup chopped 145, handful 40
09032 | unsulphured dried apricot; unsulphured apricot; hunza apricot; organic dried apricot | - | each 7, cup 130
09024 canned | apricot | - | tin 411, cup 244, drained 0.6
09037 | avocado; ripe avocado; avo; hass avocado; avocado pear | - | each 150, small 110, medium 150, large 200, half 75, cup 150, cup mashed 230, cup pureed 230
09040 | banana; ripe banana; overripe banana; mashed banana | - | each 118, small 101, medium 118, large 136, cup 150, cup mashed 225
19400 | banana chip; dried banana chip | ?sulphites | cup 72, handful 30
09041 | banana powder; dried banana; dehydrated banana | ?sulphites | cup 100
09042 | blackberry; bramble | - | each 5, cup 144, punnet 150, handful 50
09048 frozen | = | - | cup 151
09050 | blueberry; fresh blueberry; bilberry; wild blueberry; huckleberry | - | each 1.4, cup 148, pint 340, punnet 150, handful 50
09054 frozen | = | - | cup 155
09163 dried | blueberry | ?sulphites | cup 160
09070 | cherry; sweet cherry; black cherry; bing cherry; fresh cherry; pitted cherry | - | each 8, cup 150, cup pitted 154
09063 | sour cherry; tart cherry; morello cherry; griotte; red sour cherry | - | each 8, cup 155
09068 frozen | sour cherry; tart cherry; cherry; griotte; sweet cherry | - | cup 155
09044 dried | cherry; sour cherry; tart cherry; sweet cherry | ?sulphites | cup 160, tbsp 10
09328 | maraschino cherry; glace cherry; cocktail cherry; candied cherry; glacier cherry | ?sulphites | each 5, cup 170, jar 283
09078 | cranberry; fresh cranberry | - | cup 105, bag 340, packet 340, handful 35
09078 frozen | = | - | cup 105, bag 340, packet 340
09079 dried | cranberry; craisin; sweetened cranberry | ?sulphites | cup 120, tbsp 8, handful 40
09081 | cranberry sauce; cranberry jelly; jellied cranberry sauce; whole berry cranberry sauce | ?sulphites | cup 277, tin 397, jar 200, tbsp 17
43382 | cranberry juice; unsweetened cranberry juice | - | cup 253
09083 | blackcurrant; fresh blackcurrant | - | cup 112
09084 | redcurrant; red currant; white currant; fresh redcurrant; whitecurrant | - | cup 112, sprig 10
09085 | currants; currant; dried currant; zante currant; dried blackcurrant; currant dried | ?sulphites | cup 144, tbsp 9
09298 | raisins; raisin; seedless raisin; dark raisin; thompson raisin; jumbo raisin; dried grape | ?sulphites | cup 145, cup packed 165, tbsp 9, handful 40, packet 43
09297 | sultanas; golden raisin; sultana; white raisin; blond raisin | sulphites | cup 145, cup packed 165, tbsp 9, handful 40
09298 | mixed dried fruit; dried mixed fruit; dried fruit; mixed fruit dried; fruit mix dried | sulphites | cup 145
09426 | candied peel; mixed peel; candied lemon peel; candied orange peel; candied fruit; candied citron; citron; chopped mixed peel; glace fruit; candied citrus peel; crystallized fruit | ?sulphites | cup 130, tbsp 10
09087 | date; pitted date; deglet noor date; stoned date; dried date; chopped date | ?sulphites | each 7.1, cup 147, cup chopped 147, tbsp 9
09421 | medjool date; medjool | ?sulphites | each 24, cup 160
09089 | fig; fresh fig; black mission fig | - | each 50, small 40, medium 50, large 64
09094 dried | fig; turkish fig; calimyrna fig | ?sulphites | each 8.4, cup 149
09107 | gooseberry | - | cup 150
09111 | grapefruit; pink grapefruit; red grapefruit; white grapefruit; ruby grapefruit | - | each 246, small 200, medium 246, large 332, cup 230
09404 | grapefruit juice; pink grapefruit juice | - | cup 247, fruit 196
09132 | grape; seedless grape; red grape; green grape; white grape; black grape; seedless red grape; red seedless grape | - | each 4.9, cup 151, bunch 500, handful 60
09135 | grape juice; white grape juice; red grape juice; verjuice; must; verjus | ?sulphites | cup 253
09139 | guava | - | each 55, cup 165
09144 | jackfruit; fresh jackfruit; ripe jackfruit | - | cup 165
09144 canned | jackfruit; green jackfruit; young jackfruit; young green jackfruit | - | tin 400, cup 165, drained 0.55
09148 | kiwi; kiwifruit; kiwi fruit; green kiwi; gold kiwi | - | each 69, cup 180
09149 | kumquat | - | each 19
09150 | lemon; unwaxed lemon; meyer lemon; lemon wedge; lemon slice; preserved lemon fresh; lemon half | - | each 84, small 58, medium 84, large 110, wedge 10, slice 7, half 42
09152 | lemon juice; fresh lemon juice; freshly squeezed lemon juice; bottled lemon juice; juiced lemon | ?sulphites | fruit 47, fruit large 60, wedge 6, cup 244, tbsp 15.2
09156 | lemon zest; lemon peel; lemon rind; grated lemon peel; lemon zested | - | fruit 6, tbsp 6, tsp 2, strip 2, piece 2
09159 | lime; key lime; fresh lime; lime wedge; lime half | - | each 67, small 50, medium 67, large 85, wedge 8, slice 6, half 33
09160 | lime juice; fresh lime juice; key lime juice; juiced lime | ?sulphites | fruit 30, wedge 4, cup 242, tbsp 15.4
09156 | lime zest; lime peel; lime rind | - | fruit 4, tbsp 6, tsp 2, strip 2
09164 | lychee; litchi; fresh lychee | - | each 9.6, cup 190
09164 canned | = | - | tin 565, drained 0.45
09176 | mango; ripe mango; fresh mango; mango flesh; alphonso mango; green mango; mango chunk | - | each 207, small 160, medium 207, large 336, cup 165
09176 frozen | = | - | cup 165
09176 canned | mango pulp; mango puree; alphonso mango pulp; mango | - | tin 850, cup 245
09178 dried | mango | ?sulphites | cup 120, each 10
09181 | cantaloupe; melon; cantaloupe melon; rockmelon; charentais melon; muskmelon | - | each 1000, small 441, medium 552, large 814, cup 160
09184 | honeydew; honeydew melon; galia melon; green melon | - | each 1280, small 1000, cup 170
09326 | watermelon; seedless watermelon | - | each 4500, wedge 286, slice 280, cup 152
09193 | olive; black olive; kalamata olive; kalamata; ripe olive; pitted olive; black pitted olive; mediterranean black olive; nicoise olive; oil cured olive; mixed olive; gaeta olive; greek olive | ?sulphites | each 4, small 3.2, medium 4, large 4.4, cup 150, cup sliced 135, tbsp 8.4, jar 180, tin 170, handful 30
09195 | green olive; castelvetrano olive; manzanilla olive; spanish olive; stuffed olive; pimento stuffed olive | ?sulphites | each 3.4, cup 150, tbsp 8.4, jar 180, handful 30
09200 | orange; navel orange; valencia orange; blood orange; seville orange; sweet orange; bitter orange; orange slice; orange segment; unwaxed orange | - | each 131, small 96, medium 131, large 184, slice 15, wedge 22, cup 180
09206 | orange juice; fresh orange juice; freshly squeezed orange juice; blood orange juice; sour orange juice; bitter orange juice; juiced orange | - | fruit 80, cup 248
09216 | orange zest; orange peel; orange rind; grated orange peel; tangerine peel; clementine zest; grapefruit zest; mandarin peel | - | fruit 10, tbsp 6, tsp 2, strip 3, piece 3
09218 | tangerine; mandarin; mandarin orange; satsuma | - | each 88, small 76, medium 88, large 120, cup 195
09219 canned | mandarin; mandarin orange; mandarin segment | - | tin 312, cup 249, drained 0.6
09433 | clementine | - | each 74
09226 | papaya; pawpaw; green papaya | - | each 300, small 157, medium 300, large 780, cup 145, cup mashed 230
09231 | passionfruit; passion fruit; granadilla; passionfruit pulp | - | each 18, cup 236, tbsp 15
09236 | peach; yellow peach; white peach; fresh peach | - | each 150, small 130, medium 150, large 175, cup 154, cup sliced 154
09238 canned | peach; peach half; peach slice; cling peach | - | tin 411, cup 250, half 98, drained 0.6
09246 dried | peach | sulphites | each 13, cup 160
09191 | nectarine; white nectarine | - | each 142, small 129, medium 142, large 156, cup 143
09252 | pear; conference pear; comice pear; william pear; ripe pear; firm pear; bartlett pear; anjou pear | - | each 178, small 148, medium 178, large 230, cup 140, cup cubed 161
09414 | bosc pear; bosc | - | each 179, cup 140
09254 canned | pear; pear half | - | tin 411, cup 248, half 76, drained 0.6
09259 dried | pear | sulphites | each 18, cup 180
09340 | asian pear; nashi; nashi pear; korean pear; apple pear | - | each 200, small 122, medium 200, large 275, cup 140
09263 | persimmon; kaki; fuyu persimmon; sharon fruit | - | each 168
09266 | pineapple; fresh pineapple; ripe pineapple; pineapple chunk | - | each 905, slice 84, ring 84, cup 165
09268 canned | pineapple; pineapple chunk; pineapple ring; crushed pineapple; pineapple tidbit; pineapple slice; pineapple in juice | - | tin 432, slice 47, ring 47, cup 249, cup drained 181, drained 0.6
09178~ dried | pineapple; candied pineapple; dried tropical fruit; dried papaya | ?sulphites | cup 120
09273 | pineapple juice | - | cup 250
09277 | plantain; green plantain; ripe plantain; yellow plantain | - | each 179, cup 148
09279 | plum; red plum; damson; victoria plum; mirabelle; greengage; umeboshi fresh | - | each 66, cup 165
09291 dried | plum; prune; pitted prune; stoned prune; agen prune | ?sulphites | each 9.5, cup 174
09286 | pomegranate seed; pomegranate aril; pomegranate arils | - | cup 174, tbsp 11, handful 40
09286 | pomegranate | - | each 155, small 100, medium 155, large 200, half 80, cup 174
09442 | pomegranate juice | - | cup 249
09295 | pomelo; pummelo | - | each 609, cup 190
09296 | quince | - | each 92
09302 | raspberry; fresh raspberry; red raspberry | - | each 1.9, cup 123, pint 312, punnet 150, handful 40
09518 frozen | = ; mixed berry; berry; frozen berry; mixed berries; summer fruit | - | cup 140
09302 | mixed berry; berry; fresh berry; forest fruit | - | cup 140
09307 | rhubarb; rhubarb stalk | - | stalk 51, each 51, stick 51, cup 122
09309 frozen | = | - | cup 137
09316 | strawberry; fresh strawberry; ripe strawberry | - | each 12, small 7, medium 12, large 18, cup 150, cup halves 152, cup sliced 166, cup pureed 232, pint 357, punnet 250, box 400
09318 frozen | = | - | cup 149
09322 | tamarind; tamarind pod; tamarind pulp; tamarind paste; wet tamarind; tamarind block; block tamarind; tamarind concentrate; tamarind puree | ?sulphites | tbsp 18, tsp 6, cup 290, piece 15
09110 | goji berry; goji; wolfberry | ?sulphites | tbsp 5.6, cup 90
09334 | feijoa | - | each 42
09422 | durian | - | cup 243
09060 | starfruit; carambola | - | each 91, cup 132
09287 | prickly pear; cactus pear; cactus fruit; dragonfruit; pitaya | - | each 103, cup 149
09190 | mulberry; boysenberry; loganberry; elderberry | - | cup 140
09315 | soursop; guanabana | - | cup 225
09313 | sapodilla; chikoo | - | each 170
09097 canned | fruit cocktail; fruit salad; tinned fruit cocktail | - | tin 411, cup 237, drained 0.6
09297~ | dried barberry; barberry; zereshk | ?sulphites | cup 80, tbsp 5
`;
