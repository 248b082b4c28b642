/** Oils, fats, vinegars, sauces, condiments, stocks, spreads. Rows as in vegetables.ts. */
export const sauces = `
04053 | olive oil; extra virgin olive oil; virgin olive oil; light olive oil; evoo; mild olive oil; extravirgin olive oil; good olive oil; regular olive oil; fruity olive oil | - | tbsp 13.5, tsp 4.5, cup 216
04044 | vegetable oil; oil; cooking oil; neutral oil; soybean oil; frying oil; salad oil; flavorless oil; neutral cooking oil; soya oil; cooking spray; oil for frying; neutral flavored oil; nonstick cooking spray; vegetable cooking oil; oil spray; neutral vegetable oil; nonstick spray; mild oil | ?soy | tbsp 13.6, tsp 4.5, cup 218, spray 0.3
04582 | canola oil; rapeseed oil; canola; cold pressed rapeseed oil | - | tbsp 14, cup 218
04584 | sunflower oil; high oleic sunflower oil | - | tbsp 14, cup 218
04518 | corn oil; maize oil | - | tbsp 13.6, cup 218
04042 | peanut oil; groundnut oil; arachide oil | peanut | tbsp 13.5, cup 216
04058 | sesame oil; toasted sesame oil; dark sesame oil; asian sesame oil; roasted sesame oil; light sesame oil; pure sesame oil | sesame | tbsp 13.6, tsp 4.5, cup 218, drop 0.05
04047 | coconut oil; virgin coconut oil; refined coconut oil; melted coconut oil; unrefined coconut oil; solid coconut oil; extra virgin coconut oil; extra virgin unrefined coconut oil; extra virgin unrefined coconut oil melted | coconut | tbsp 13.6, cup 218, tsp 4.5
04517 | grapeseed oil | - | tbsp 13.6, cup 218
04510 | safflower oil | - | tbsp 13.6, cup 218
04581 | avocado oil; avocado oil spray | - | tbsp 14, cup 218
04528 | walnut oil | walnut | tbsp 13.6, cup 218
04532 | hazelnut oil | hazelnut | tbsp 13.6, cup 218
04529 | almond oil | almond | tbsp 13.6, cup 218
42231 | flaxseed oil; linseed oil; flax oil | - | tbsp 13.6, cup 218
04037 | rice bran oil | - | tbsp 13.6, cup 218
04583 | mustard oil | mustard | tbsp 14, cup 218
04055 | palm oil; red palm oil; dende oil | - | tbsp 13.6, cup 216
04502 | cottonseed oil | - | tbsp 13.6, cup 218
04058~ | chili oil; crispy chili oil; chili crisp; sichuan chili oil; rayu; chili crisp oil; chili garlic oil | nightshade ?sesame ?soy ?peanut ?wheat | tbsp 13.6, tsp 4.5
04053~ | truffle oil; garlic oil; lemon oil; herb oil; basil oil; infused oil; annatto oil; lemon olive oil; garlic infused oil; flavored oil; chili olive oil | - | tbsp 13.5, tsp 4.5
04002 | lard; pork lard; rendered pork fat; bacon fat; bacon dripping; manteca; rendered bacon fat; bacon grease; pork dripping; leaf lard; rendered lard | pork | tbsp 12.8, cup 205, tsp 4.3
04001 | beef dripping; tallow; beef tallow; dripping; beef fat; beef suet rendered; of beef dripping | beef | tbsp 12.8, cup 205
04542 | chicken fat; schmaltz; rendered chicken fat | poultry | tbsp 12.8, cup 205
04574 | duck fat; rendered duck fat | poultry | tbsp 12.8, cup 205
04576 | goose fat | poultry | tbsp 12.8, cup 205
04031 | shortening; vegetable shortening; crisco; white vegetable fat; vegetable fat; trex; solid vegetable fat; frytex; vegetable lard; vegetable suet | ?soy ?wheat | tbsp 12.8, cup 205
02053 | vinegar; white vinegar; distilled vinegar; distilled white vinegar; spirit vinegar; pickling vinegar; cane vinegar; plain vinegar; coconut vinegar | - | tbsp 14.9, tsp 5, cup 238
02048 | cider vinegar; apple cider vinegar; raw apple cider vinegar; unfiltered apple cider vinegar | ?sulphites | tbsp 14.9, tsp 5, cup 239
02068 | wine vinegar; red wine vinegar; white wine vinegar; champagne vinegar; raspberry vinegar; tarragon vinegar; moscatel vinegar; pomegranate vinegar | ?sulphites | tbsp 14.9, tsp 5, cup 239
02068 | sherry vinegar; jerez vinegar | ?sulphites | tbsp 14.9, tsp 5, cup 239
02069 | balsamic vinegar; balsamic; white balsamic vinegar; balsamic glaze; balsamic reduction; white balsamic; aged balsamic vinegar; balsamico | ?sulphites | tbsp 16, tsp 5.3, cup 255
02053~ | rice vinegar; rice wine vinegar; seasoned rice vinegar; sushi vinegar; unseasoned rice vinegar; brown rice vinegar | ?wheat ?barley | tbsp 15, tsp 5, cup 239
02053~ | black vinegar; chinkiang vinegar; chinese black vinegar; zhenjiang vinegar | ?wheat ?barley | tbsp 15, tsp 5, cup 239
02053~ | malt vinegar; brown vinegar | barley | tbsp 15, tsp 5, cup 239
16123 | soy sauce; soya sauce; shoyu; light soy sauce; dark soy sauce; soy; thin soy sauce; japanese soy sauce; mushroom soy sauce; all purpose soy sauce; thick soy sauce; chinese soy sauce; naturally brewed soy sauce | soy wheat | tbsp 16, tsp 5.3, cup 255
16424 | low sodium soy sauce; reduced salt soy sauce; reduced sodium soy sauce; lite soy sauce; low salt soy sauce; lower sodium soy sauce; less sodium soy sauce | soy wheat | tbsp 16, tsp 5.3, cup 255
16124 | tamari; tamari soy sauce; tamari sauce; glutenfree soy sauce; gluten free soy sauce; gluten free tamari; soy sauce tamari; glutenfree tamari; wheat free tamari; reduced sodium tamari; soy sauce gluten free; lowsodium tamari | soy ?wheat | tbsp 18, tsp 6, cup 288
16124~ | coconut aminos; liquid aminos | ?soy ?coconut | tbsp 17, tsp 5.7
16123~ | kecap manis; sweet soy sauce; ketjap manis; ponzu; ponzu sauce; sukiyaki sauce; tonkatsu sauce; okonomiyaki sauce; yakisoba sauce; bulgogi sauce; noodle soup base; tsuyu; mentsuyu; eel sauce; maggi seasoning; maggi; seasoning sauce; golden mountain sauce; stir fry sauce; stir fry sauce bottled; sichuan stir fry sauce | soy wheat ?fish ?molluscs ?crustaceans ?celery ?barley ?sesame | tbsp 18, tsp 6, cup 280
06179 | fish sauce; nam pla; nuoc mam; thai fish sauce; vietnamese fish sauce; colatura; asian fish sauce | fish | tbsp 18, tsp 6, cup 288
06176 | oyster sauce | molluscs ?wheat ?soy ?fish ?crustaceans | tbsp 18, tsp 6, cup 288
06176~ | vegetarian oyster sauce; mushroom oyster sauce; vegan oyster sauce; vegetarian stir fry sauce; mushroom stir fry sauce | mushroom ?soy ?wheat | tbsp 18, tsp 6
06175 | hoisin; hoisin sauce; char siu sauce; peking duck sauce | soy ?wheat ?sesame | tbsp 16, tsp 5.3, cup 256
06112 | teriyaki sauce; teriyaki; teriyaki marinade; teriyaki glaze | soy wheat ?sesame ?honey | tbsp 18, tsp 6, cup 288
06971 | worcestershire sauce; worcestershire; worcester sauce; worcestershire sauce | fish ?barley ?wheat ?soy | tbsp 17, tsp 5.7, cup 275, dash 1
06971~ | vegan worcestershire sauce; vegetarian worcestershire sauce; henderson relish | ?soy ?barley ?wheat ?celery | tbsp 17, tsp 5.7
06168 | hot sauce; tabasco; hot pepper sauce; pepper sauce; louisiana hot sauce; cholula; tabasco sauce; buffalo sauce; frank hot sauce; chili hot sauce; red hot sauce; peri peri sauce; piri piri sauce; scotch bonnet sauce; green hot sauce; habanero sauce | nightshade ?celery ?mustard ?sulphites ?milk | tsp 4.7, tbsp 14.1, dash 0.6, cup 237, drop 0.05
06631 | sriracha; sriracha sauce; sriracha chili sauce | nightshade ?fish ?sulphites | tsp 6.5, tbsp 19.5, cup 280
06631~ | gochujang; sambal; sambal oelek; chili garlic sauce; chili paste; red chili paste; harissa; harissa paste; chili garlic paste; chipotle paste; aji amarillo paste; korean chili paste; sambal ulek; rose harissa; gochujang paste; chili sauce paste; ancho paste; aji panca paste; chipotle chili paste; peri peri paste; calabrian chili paste; calabrian chili; red pepper paste; chili bean paste hot; chili puree; hot chili paste | nightshade ?soy ?wheat ?barley ?fish ?crustaceans ?sulphites ?sesame | tsp 6, tbsp 18, tube 90
06961~ | adobo sauce; chipotle in adobo; chipotle; chipotle chili in adobo; chipotle pepper in adobo; chipotle chili; chipotle pepper; chipotle in adobo sauce; canned chipotle; chipotle adobo; chipotle in adobo chili; chipotle pepper in adobo sauce; chipotle chili in adobo sauce; adobo sauce from can | nightshade ?wheat ?soy ?sulphites | each 12, tbsp 15, tsp 5, tin 200
06972 | tomato chili sauce; heinz chili sauce; american chili sauce; bottled chili sauce | nightshade ?celery ?mustard | tbsp 17, cup 273
11935 | ketchup; tomato ketchup; tomato sauce au; catsup | nightshade ?celery | tbsp 17, tsp 5.7, cup 272, packet 9
02046 | mustard; yellow mustard; american mustard; prepared mustard; hot dog mustard; ballpark mustard | mustard ?sulphites | tsp 5, tbsp 15, cup 249
02046 | dijon mustard; dijon; english mustard; wholegrain mustard; grainy mustard; grain mustard; brown mustard; french mustard; whole grain mustard; german mustard; creole mustard; spicy brown mustard; stone ground mustard; coarse grain mustard; coarse mustard; hot english mustard; wholegrain dijon mustard; spicy mustard | mustard ?sulphites ?wheat | tsp 5, tbsp 15, cup 249
04703 | honey mustard; honey mustard dressing; honey mustard sauce | mustard ?egg ?sulphites honey | tbsp 15
04025 | mayonnaise; mayo; real mayonnaise; japanese mayonnaise; kewpie mayonnaise; full fat mayonnaise; kewpie; hellmann mayonnaise; duke mayonnaise; aioli; garlic mayonnaise; good quality mayonnaise; chipotle mayonnaise | egg ?mustard ?milk ?soy | tbsp 13.8, tsp 4.6, cup 220
04013~ | light mayonnaise; lowfat mayonnaise; reduced fat mayonnaise; salad cream; miracle whip; light mayo | egg ?mustard ?milk ?soy | tbsp 15, cup 235
42178~ | vegan mayonnaise; vegan mayo; egg free mayonnaise; eggfree mayonnaise; plant based mayonnaise; vegan mayonnaise store bought | ?soy ?mustard | tbsp 14, cup 224
27049 | tartar sauce; tartare sauce | egg ?mustard ?milk ?sulphites | tbsp 15
04017 | thousand island dressing; thousand island; marie rose sauce; russian dressing; cocktail dressing; burger sauce | egg ?mustard ?milk ?celery ?fish | tbsp 16, cup 250
04639 | ranch dressing; ranch | egg milk ?mustard ?celery ?soy | tbsp 15, cup 240
04639~ | ranch dressing mix; ranch seasoning; ranch seasoning mix; ranch powder; dry ranch dressing mix; ranch mix | milk ?egg ?soy ?wheat ?celery ?mustard | packet 28, tbsp 8, sachet 28
43015 | caesar dressing; caesar salad dressing | egg fish milk ?mustard ?soy | tbsp 14.7, cup 235
04539 | blue cheese dressing | egg milk ?mustard | tbsp 15, cup 245
04114 | italian dressing; vinaigrette; salad dressing; french dressing; balsamic vinaigrette; bottled vinaigrette; balsamic dressing; italian salad dressing; zesty italian dressing | ?egg ?milk ?mustard ?sulphites ?celery ?soy | tbsp 14.7, cup 235
06150 | barbecue sauce; bbq sauce; barbeque sauce; smoky bbq sauce; hickory barbecue sauce | nightshade ?wheat ?soy ?fish ?mustard ?celery ?barley ?honey | tbsp 17, cup 286
27048 | steak sauce; brown sauce; hp sauce; a1 sauce | barley ?wheat ?rye ?fish ?soy ?celery ?sulphites | tbsp 17, cup 270
06151 | plum sauce; duck sauce; chinese plum sauce; umeboshi paste; umeboshi; ume plum paste | ?soy ?wheat ?sulphites | tbsp 19, cup 305, each 10
27050 | sweet and sour sauce | ?soy ?wheat ?sulphites ?celery | tbsp 17.5, cup 280
27051 | cocktail sauce; seafood cocktail sauce | ?fish ?mustard ?sulphites | tbsp 15, cup 240
27059 | peanut sauce; satay sauce; peanut dressing | peanut soy ?wheat ?fish ?crustaceans ?sesame | tbsp 18, cup 280
27063 | enchilada sauce; red enchilada sauce; green enchilada sauce | nightshade ?wheat ?soy ?milk ?celery | cup 224, tin 283
27047 | salsa verde; green salsa; tomatillo salsa; tomatillo sauce | nightshade ?sulphites | tbsp 15, cup 240, jar 450
06164 | salsa; tomato salsa; chunky salsa; red salsa; salsa roja; pico de gallo; picante sauce; jarred salsa; hot salsa; medium salsa; mild salsa; fresh salsa | nightshade allium ?sulphites | cup 259, tbsp 16, jar 450
06931 | marinara sauce; pasta sauce; marinara; tomato pasta sauce; spaghetti sauce; arrabbiata sauce; tomato and basil sauce; pizza sauce; napoletana sauce; jarred pasta sauce; jarred tomato sauce; tomato basil sauce; tomato pasta sauce jar; jarred marinara | nightshade allium ?milk ?celery ?wheat ?soy | cup 257, jar 680, tbsp 16
06626 | pesto; basil pesto; green pesto; pesto sauce; pesto genovese; prepared pesto; fresh pesto | milk rennet ?pine-nut ?cashew ?walnut ?egg ?almond ?sulphites | cup 252, tbsp 15.8, jar 190
06626~ | red pesto; sundried tomato pesto; tomato pesto; pesto rosso | milk rennet nightshade ?pine-nut ?cashew ?egg ?almond | tbsp 15.8, cup 252, jar 190
06626~ | vegan pesto; dairy free pesto; nondairy pesto | ?pine-nut ?cashew ?soy ?walnut ?almond | tbsp 15.8, cup 252, jar 190
06930 | cheese sauce; nacho cheese sauce; alfredo sauce; queso dip; white cheese sauce; carbonara sauce; jarred alfredo sauce; queso; nacho cheese | milk ?wheat ?soy ?egg | cup 252, tbsp 16, jar 425
06166 | bechamel; white sauce; bechamel sauce | milk wheat | cup 250
27066 | horseradish sauce; creamed horseradish; horseradish cream | ?milk ?egg ?mustard sulphites | tsp 5.6, tbsp 17
02055 | horseradish; prepared horseradish; grated horseradish; fresh horseradish | ?sulphites ?mustard | tsp 5, tbsp 15
02055~ | wasabi; wasabi paste; wasabi powder | ?mustard ?soy ?milk ?sulphites ?wheat | tsp 5, tbsp 15
02054 | capers; caper; nonpareil caper; salted caper; capers in brine; drained caper; baby caper; caper berry; caperberry; brined caper | ?sulphites | tbsp 8.6, tsp 2.9, cup 138, jar 100
19303 | marmalade; orange marmalade | ?sulphites | tbsp 20, cup 320, jar 340
19297 | jam; strawberry jam; raspberry jam; fruit jam; preserve; jelly us; preserves; apricot jam; apricot preserve; blackberry jam; fig jam; cherry preserve; strawberry preserve; raspberry preserve; cherry jam; plum jam; blackcurrant jam; seedless raspberry jam; apricot preserves; peach preserve; peach jam; fruit preserve; lingonberry jam; fruit spread; cherry preserves; apricot glaze; fig preserve; blueberry jam | ?sulphites | tbsp 20, tsp 7, cup 320, jar 340
19300 | grape jelly; redcurrant jelly; apple jelly; red currant jelly; quince paste; membrillo; quince jelly; pepper jelly; hot pepper jelly; mint jelly; currant jelly; mint sauce jelly; crabapple jelly; guava paste | ?sulphites | tbsp 20, cup 320, jar 300
19294 | apple butter; fruit butter | - | tbsp 17, cup 282
19312 | apple pie filling | ?sulphites | tin 595, cup 260
19314 | cherry pie filling; fruit pie filling | ?sulphites | tin 595, cup 260
11983~ | chutney; mango chutney; tomato chutney; fruit chutney; tamarind chutney; pickle relish british; piccalilli; lime pickle; branston pickle; sweet pickle; indian pickle; achar; mango pickle; mixed pickle; pickled vegetable; giardiniera; chowchow | ?mustard ?sulphites ?celery ?barley ?wheat | tbsp 17, tsp 6, cup 270, jar 340
06631~ | curry paste; thai curry paste; red curry paste; green curry paste; thai red curry paste; thai green curry paste; yellow curry paste; massaman curry paste; panang curry paste; laksa paste; tom yum paste; rendang paste; thai yellow curry paste | nightshade ?crustaceans ?fish ?soy ?wheat ?celery ?mustard ?peanut ?sulphites | tbsp 16, tsp 5.3, jar 200, cup 250
06631~ | indian curry paste; tikka paste; korma paste; madras paste; madras curry paste; tikka masala paste; tandoori paste; balti paste; rogan josh paste; vindaloo paste; korma curry paste; curry paste indian; tikka curry paste; biryani paste | nightshade ?mustard ?celery ?wheat ?milk ?cashew ?sesame ?almond ?peanut ?sulphites ?coconut | tbsp 16, jar 200
06931~ | curry sauce; tikka masala sauce; korma sauce; simmer sauce; cooking sauce; tikka masala; butter chicken sauce; jalfrezi sauce | ?milk ?cashew ?almond ?mustard ?celery ?wheat ?coconut nightshade ?peanut ?soy ?sesame | jar 450, cup 250
06116~ | japanese curry roux; curry roux; curry block; curry roux block; curry cube | wheat soy milk ?celery ?sesame ?peanut ?beef ?poultry ?pork | block 220, cube 20, piece 20, packet 220
06172 | chicken stock; chicken broth homemade; homemade chicken stock; chicken bone broth; brown chicken stock; homemade chicken broth; fresh chicken stock; hot chicken stock; poultry stock; turkey stock; turkey broth | poultry ?celery ?wheat ?milk ?egg ?soy | cup 240, tbsp 15, carton 946, tin 411
06194 | chicken broth; canned chicken broth; chicken bouillon liquid; chicken consomme | poultry ?celery ?wheat ?milk ?egg ?soy | cup 249, tbsp 15.5, carton 946, tin 411
06970 | low sodium chicken broth; low sodium chicken stock; reduced sodium chicken broth; unsalted chicken stock; no salt chicken broth; reduced sodium chicken stock; lower sodium chicken broth; salt free chicken stock; less sodium chicken broth; unsalted chicken broth; low salt chicken stock; no salt added chicken stock | poultry ?celery ?wheat ?milk ?soy | cup 240, carton 946, tin 411
06170 | beef stock; veal stock; brown stock; lamb stock; meat stock; beef bone broth; fresh beef stock; hot beef stock; homemade beef stock; brown beef stock; meat broth; pork stock; pork broth; bone broth; veal demi glace; demi glace; ham stock | beef ?celery ?wheat ?milk ?soy ?pork ?lamb ?poultry | cup 240, tbsp 15, carton 946, tin 411
06008 | beef broth; beef consomme; beef bouillon liquid; consomme; canned beef broth; low sodium beef broth; reduced sodium beef broth; low sodium beef stock | beef ?celery ?wheat ?milk ?soy | cup 240, tin 411, carton 946
06700 | vegetable stock; vegetable broth; veg stock; hot vegetable stock; homemade vegetable stock; low sodium vegetable broth; mushroom stock; mushroom broth; vegetable bouillon liquid; reduced sodium vegetable broth; fresh vegetable stock; low sodium vegetable stock; vegan stock; unsalted vegetable stock | ?celery ?wheat ?milk ?soy ?barley allium | cup 221, tbsp 14, carton 946, tin 411
06700~ | stock; broth; hot stock; homemade stock; light stock; fresh stock; good stock; stock liquid | allium ?celery ?wheat ?milk ?soy ?barley ?poultry ?beef ?fish | cup 230, tbsp 14.4, carton 946, tin 411
06174 | fish stock; fish broth; fumet; fish fumet; court bouillon; seafood stock; shellfish stock; shrimp stock; lobster stock; fish or shellfish stock; seafood broth | fish ?crustaceans ?molluscs ?celery ?wheat ?milk | cup 233, carton 946
06963~ | dashi; dashi stock; dashi broth | fish ?soy ?wheat ?molluscs | cup 240
06081~ | dashi powder; dashi granule; instant dashi; hondashi; bonito stock powder; instant dashi powder; instant dashi granule | fish ?soy ?wheat ?milk | tsp 3, tbsp 9, sachet 5
06081 | chicken stock cube; chicken stockcube; chicken stock cube; chicken bouillon cube; chicken stock powder; chicken bouillon; chicken bouillon powder; chicken granule; chicken bouillon granule; chicken stock pot; chicken powder; chicken base; chicken bouillon paste; better than bouillon chicken; chicken stock concentrate; knorr chicken; chicken soup powder; chicken oxo cube; chicken broth powder; jellied chicken stock; chicken broth concentrate | poultry ?celery ?wheat ?milk ?soy ?egg ?barley ?mustard | cube 10, each 10, tsp 4, tbsp 12, pot 28, packet 5, sachet 5
06076 | beef stock cube; beef stockcube; beef stock cube; beef bouillon cube; beef bouillon; oxo cube; beef stock powder; beef stock pot; beef bouillon powder; beef granule; beef base; oxo; beef oxo cube; beef bouillon granule; beef stock concentrate; lamb stockcube; beef bouillon paste; lamb stock cube; beef broth powder; better than bouillon beef | beef ?celery ?wheat ?milk ?soy ?barley ?mustard ?lamb | cube 10, each 10, tsp 4, tbsp 12, pot 28
06081~ | vegetable stock cube; vegetable stockcube; vegetable stock cube; vegetable bouillon cube; vegetable bouillon; vegetable stock powder; vegetable stock pot; vegetable bouillon powder; vegetable bouillon paste; swiss bouillon powder; marigold bouillon; vegetable broth powder; mushroom stock cube; mushroom powder seasoning; vegetable base; vegetable stock concentrate; vegetable granule; mushroom bouillon; mushroom stockcube | ?celery ?wheat ?milk ?soy ?barley ?egg ?mustard | cube 10, each 10, tsp 4, tbsp 12, pot 28
06081~ | stock cube; stockcube; bouillon; bouillon powder; stock powder; bouillon cube; stock pot; stock granule; stock concentrate; better than bouillon; bouillon granule | ?celery ?wheat ?milk ?soy ?barley ?egg ?mustard ?poultry ?beef ?fish | cube 10, each 10, tsp 4, tbsp 12, pot 28
06081~ | fish stock cube; fish stockcube; fish stock cube; fish bouillon; shrimp bouillon; fish stock powder; fish bouillon cube; crab boil | fish ?crustaceans ?molluscs ?celery ?wheat ?milk ?soy ?mustard | cube 10, each 10, tsp 4, pot 28
06116 | gravy; beef gravy; prepared gravy; onion gravy; canned gravy; brown gravy | beef ?wheat ?milk ?soy ?celery ?barley | cup 233, jar 340, tin 291
06119 | chicken gravy; turkey gravy | poultry ?wheat ?milk ?soy ?celery ?egg | cup 228
06118 | gravy mix; gravy granule; brown gravy mix; gravy powder; bisto; gravy browning; onion gravy mix; gravy packet; turkey gravy mix; country gravy mix | ?wheat ?milk ?soy ?celery ?barley ?beef ?poultry | tbsp 6, tsp 2, packet 25, sachet 25
43406 | marmite; vegemite; yeast extract; promite | barley wheat celery ?rye ?oats | tsp 6, tbsp 18
06159 | tomato soup; condensed tomato soup; cream of tomato soup | wheat nightshade ?milk ?celery ?soy | tin 305, cup 250
06142 | sofrito; recaito | allium nightshade ?pork | cup 206, tbsp 13
16123~ | black bean sauce; black bean garlic sauce; bean sauce; chee hou sauce; brown bean sauce | soy wheat ?sesame ?molluscs ?fish | tbsp 17, tsp 6
11546~ | tomato bruschetta topping; sundried tomato paste; sundried tomato puree | ?fish ?nightshade ?sulphites ?milk | tbsp 15, jar 190
04018~ | coleslaw dressing; garlic sauce; toum | ?egg ?milk ?mustard | tbsp 15, cup 240
27050~ | sweet chili sauce; thai sweet chili sauce; chili dipping sauce | nightshade ?fish ?sulphites ?celery | tbsp 18, tsp 6, cup 280
06972 | chili sauce | nightshade ?celery ?mustard ?fish ?soy ?wheat ?sulphites | tbsp 17, tsp 5.7, cup 273
06043 | cream of mushroom soup; condensed cream of mushroom soup; condensed mushroom soup; cream of mushroom; mushroom soup | milk wheat mushroom ?soy ?celery ?egg ?barley | tin 298, can 298, cup 252
06016 | cream of chicken soup; condensed cream of chicken soup; cream of chicken | milk wheat poultry ?soy ?celery ?egg ?barley | tin 305, can 305, cup 252
06010 | cream of celery soup; condensed cream of celery soup; cream of celery | milk wheat celery ?soy ?egg ?barley | tin 305, can 305, cup 252
`;
