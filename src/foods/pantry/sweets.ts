/** Sugars, syrups, chocolate, raising agents and other baking things. Rows as in vegetables.ts. */
export const sweets = `
19335 | sugar; granulated sugar; white sugar; caster sugar; superfine sugar; cane sugar; natural cane sugar; organic cane sugar; fine sugar; vanilla sugar; castor sugar; golden caster sugar; organic granulated sugar; raw cane sugar; golden granulated sugar; raw sugar fine; unrefined sugar; superfine white sugar; pure cane sugar; organic granulated cane sugar; beet sugar; organic sugar; evaporated cane juice; cinnamon sugar; baker sugar; refined sugar; jam sugar; preserving sugar; fine granulated sugar; white caster sugar; white granulated sugar; golden sugar | - | cup 200, cup superfine 200, tbsp 12.6, tsp 4.2, cube 4, packet 2.8, lump 4
19334 | brown sugar; light brown sugar; dark brown sugar; soft brown sugar; muscovado; muscovado sugar; dark muscovado sugar; light muscovado sugar; light soft brown sugar; dark soft brown sugar; packed brown sugar; dark brown soft sugar; light brown soft sugar; molasses sugar; golden brown sugar; brown cane sugar; soft light brown sugar; soft dark brown sugar; light brown muscovado sugar | - | cup 213, cup packed 220, cup unpacked 145, tbsp 13, tsp 4.5
19908 | demerara sugar; turbinado sugar; raw sugar; demerara; turbinado; sugar in the raw; sanding sugar; coarse sugar; sparkling sugar; pearl sugar; decorating sugar | - | cup 202, tbsp 12.6, tsp 4.6
19336 | powdered sugar; icing sugar; confectioner sugar; confectioners sugar; sifted icing sugar; sifted powdered sugar; 10x sugar; snow sugar; golden icing sugar | - | cup 113, cup sifted 102, cup unsifted 120, tbsp 7.1, tsp 2.4, packet 500
19340 | maple sugar | - | cup 160, tsp 3, tbsp 9
19340~ | jaggery; palm sugar; gur; coconut sugar; piloncillo; panela; rapadura; sucanat; coconut palm sugar; date sugar; rock sugar; yellow rock sugar; grated palm sugar; crushed palm sugar; unrefined cane sugar; panocha; chancaca; gula melaka; rock candy; chinese rock sugar; unrefined evaporated cane juice | - | cup 170, tbsp 11, tsp 3.7, piece 15, disc 15, cone 225
19296 | honey; clear honey; runny honey; raw honey; manuka honey; liquid honey; wildflower honey; mild honey; set honey; acacia honey; crystallized honey; orange blossom honey; hot honey; good honey; thick honey; floral honey | honey | tbsp 21, tsp 7, cup 339, jar 340
19353 | maple syrup; pure maple syrup; grade b maple syrup; dark maple syrup; real maple syrup; amber maple syrup | - | tbsp 20, tsp 6.7, cup 322
19129 | pancake syrup; table syrup; breakfast syrup | - | tbsp 20, cup 314
19350 | corn syrup; light corn syrup; glucose syrup; liquid glucose; glucose; white corn syrup; rice syrup; brown rice syrup; rice malt syrup; korean corn syrup; cane syrup; simple syrup; sugar syrup; invert sugar; oligosaccharide | - | tbsp 21, tsp 7, cup 335
19350~ | golden syrup; lyle golden syrup; light treacle; treacle light | - | tbsp 21, tsp 7, cup 335
19349 | dark corn syrup | - | tbsp 20, cup 328
19304 | molasses; treacle; black treacle; blackstrap molasses; dark molasses; unsulphured molasses; light molasses; mild molasses; sorghum syrup; sorghum molasses; fancy molasses; grape molasses; carob molasses; date molasses | ?sulphites | tbsp 20, tsp 6.9, cup 337
19304~ | pomegranate molasses; pomegranate syrup; date syrup; silan; date honey; carob syrup; grape syrup | ?sulphites | tbsp 20, tsp 6.9, cup 330
19912 | agave; agave syrup; agave nectar; light agave syrup; agave nectar light; dark agave nectar | - | tbsp 21, tsp 6.9, cup 335
19352 | malt syrup; barley malt syrup; malt extract; barley malt; barley malt extract | barley | tbsp 21, cup 332
20131 | malt powder; diastatic malt powder; malted barley flour; barley malt powder; malt flour; diastatic malt; non diastatic malt powder | barley | tbsp 9, tsp 3
42040 | grenadine; grenadine syrup | - | tbsp 20
19918 | stevia; stevia powder; stevia leaf powder | - | tsp 0.5, packet 1, sachet 1
43158~ | saccharin; sweetener; sweetener tablet; sugar substitute; artificial sweetener; splenda; sucralose; granulated sweetener; monk fruit sweetener; erythritol; xylitol; swerve; monkfruit sweetener; aspartame; granulated erythritol | ?milk | packet 1, tsp 4, tbsp 12, cup 192, sachet 1
43216 | fructose | - | cup 196, tsp 4.2
19335~ | dextrose; glucose powder; dextrose powder | - | cup 190, tbsp 12
18369 | baking powder; double acting baking powder; aluminium free baking powder; glutenfree baking powder | ?wheat | tsp 4.6, tbsp 13.8, sachet 15, packet 15
18372 | baking soda; bicarbonate of soda; bicarbonate; bicarb soda; sodium bicarbonate; bicarbonate soda; soda; bicarb of soda | - | tsp 4.6, tbsp 13.8
18373 | cream of tartar; tartar | - | tsp 3, tbsp 9
18375 | yeast; active dry yeast; dry yeast; instant yeast; dried yeast; fast action yeast; quick yeast; easy bake yeast; rapid rise yeast; fast action dried yeast; instant dry yeast; quick rise yeast; quick rising yeast; active dried yeast; instant dried yeast; dried active yeast; fast acting yeast; bread machine yeast; osmotolerant yeast; quick rising instant dry yeast; quick rising instant yeast; dry active yeast; easy blend yeast; fast rising yeast; dried instant yeast; easy blend dried yeast; rapid rise instant yeast | ?wheat ?barley | tsp 3.2, tbsp 9.5, packet 7, sachet 7, each 7
18374 | fresh yeast; compressed yeast; cake yeast; baker yeast fresh; baker yeast | ?wheat ?barley | cube 42, block 17, tsp 5, tbsp 15, each 17, packet 42
18375~ | nutritional yeast; nutritional yeast flake; yeast flake; nooch; nutritional yeast powder | ?wheat ?barley | tbsp 6, cup 80, tsp 2
19177 | gelatin; gelatin powder; powdered gelatin; unflavored gelatin; gelatin sheet; leaf gelatin; sheet gelatin; unflavored gelatin powder; plain gelatin; gelatin leaf; gelatin granule; gelatin powder unflavored; unflavored powdered gelatin | gelatine | packet 7, sachet 7, sheet 2, leaf 2, tbsp 9, tsp 3
19172 | jelly powder; jello; gelatin dessert; jelly crystal; jello powder; flavored gelatin; jelly cube; jell o; lime gelatin; strawberry gelatin | gelatine | packet 85, box 85, tbsp 12
19310 | pectin; pectin powder; powdered pectin; fruit pectin; dry pectin | - | packet 50, box 50, tbsp 9, tsp 3
42063 | liquid pectin | - | sachet 85, packet 85
42281 | xanthan gum; guar gum; psyllium husk; psyllium; locust bean gum; psyllium husk powder; psyllium powder | - | tsp 3, tbsp 9
02050 | vanilla; vanilla extract; vanilla essence; pure vanilla extract; vanilla bean paste; vanilla paste; real vanilla extract; good vanilla extract; bourbon vanilla extract | alcohol | tsp 4.2, tsp paste 6, tbsp 13, tbsp paste 18
02050~ | vanilla bean; vanilla pod; vanilla bean seed; vanilla powder | - | each 3, pod 3, half 1.5, tsp 2.5
02050~ | almond extract; almond essence; peppermint extract; lemon extract; orange extract; rose extract; coconut extract; rum extract; maple extract; mint extract; natural almond extract; anise extract; pure almond extract; peppermint oil; orange oil | alcohol ?almond ?coconut | tsp 4.2, tbsp 13, drop 0.05
14411~ | rose water; orange blossom water; orange flower water; rosewater; kewra water; kewra; orange blossom; pandan extract; pandan essence | ?alcohol | tsp 5, tbsp 15, drop 0.05
14411~ | food coloring; food color; food colouring; gel food color; green food coloring; red food coloring; gel food coloring; red food color; yellow food coloring | ?gelatine ?alcohol ?insect | drop 0.05, tsp 5
19165 | cocoa powder; cocoa; unsweetened cocoa; unsweetened cocoa powder; cacao powder; baking cocoa; raw cacao powder; natural cocoa powder; dark cocoa powder; cocoa or cacao powder; natural unsweetened cocoa powder; dark cocoa; unsweetened natural cocoa powder; raw cacao; cacao; unsweetened dark cocoa powder; black cocoa powder; good cocoa powder | caffeine | cup 86, tbsp 5.4, tsp 1.8
19166 | dutch process cocoa; dutch processed cocoa; dutch process cocoa powder; dutched cocoa; alkalized cocoa; dutch cocoa powder; dutch processed cocoa powder; unsweetened dutch process cocoa; unsweetened dutch process cocoa powder; dutch cocoa; unsweetened dutch processed cocoa powder | caffeine | cup 86, tbsp 5.4, tsp 1.8
12120~ | cacao nib; cocoa nib | caffeine | cup 120, tbsp 7.5
04501 | cocoa butter; cacao butter; food grade cocoa butter | - | tbsp 13.6, cup 218
14192 | hot chocolate powder; drinking chocolate; cocoa mix; hot chocolate mix; hot cocoa mix; mexican drinking chocolate; instant hot chocolate; instant cocoa; chocolate drink powder; sweetened cocoa powder; ground chocolate; mexican chocolate | ?milk ?soy ?barley ?wheat caffeine | tbsp 9, sachet 28, packet 28, cup 130, tablet 90
19078 | unsweetened chocolate; baking chocolate; bitter chocolate; baker chocolate; unsweetened baking chocolate; chocolate liquor; 100% chocolate; unsweetened chocolate square | ?milk ?soy caffeine | cup grated 132, cup chopped 170, square 29, bar 113, each 29, cup 170
19904 | 70% chocolate; 70% dark chocolate; extra dark chocolate; bitter dark chocolate; 85% chocolate; bittersweet dark chocolate; 75% chocolate; 72% chocolate; 80% chocolate | ?milk ?soy caffeine | bar 100, square 10, cup 170, cup chopped 170
19903 | bittersweet chocolate; bittersweet chocolate chip; 60% chocolate; dark bittersweet chocolate; 60% dark chocolate; 66% chocolate; 64% chocolate; bittersweet; bittersweet chocolate chunk; bitter sweet chocolate | ?milk ?soy caffeine | bar 100, square 28, cup 170, tbsp 10
19902 | dark chocolate; plain chocolate; semisweet chocolate; semi sweet chocolate; chocolate; cooking chocolate; dark cooking chocolate; dark chocolate chunk; chocolate bar; chopped chocolate; 50% chocolate; chocolate shaving; couverture; dark couverture; good dark chocolate; chocolate square; dark chocolate bar; good quality dark chocolate; grated chocolate; semisweet baking chocolate; dark semisweet chocolate; 55% chocolate; chocolate curl; plain dark chocolate; dark couverture chocolate | ?milk ?soy caffeine | bar 100, square 28, square small 10, cup 170, tbsp 10, piece 10, each 100
19080 | chocolate chip; semisweet chocolate chip; dark chocolate chip; chocolate chunk; mini chocolate chip; chocolate drop; chocolate morsel; semi sweet chocolate chip; miniature chocolate chip; semisweet chocolate morsel; semisweet chip; semisweet mini chocolate chip; plain chocolate chip; dark chocolate drop; semi sweet chip; chocolate button | ?milk ?soy caffeine | cup 170, tbsp 10, packet 340, bag 340, handful 40
19080 | vegan chocolate chip; dairy free chocolate chip; vegan chocolate; dairy free dark chocolate; vegan dark chocolate; nondairy chocolate; dairy free chocolate; vegan dark chocolate chip; nondairy chocolate chip; nondairy dark chocolate chip; nondairy dark chocolate; dairy free dark chocolate chip; vegan semisweet chocolate chip | ?milk ?soy caffeine | cup 175, tbsp 10, bar 100
19120 | milk chocolate; milk chocolate bar; milk chocolate chip; cadbury dairy milk; milk chocolate chunk; chocolate candy; chocolate kiss; milk chocolate drop | milk ?soy ?wheat ?hazelnut ?almond ?peanut caffeine | bar 44, square 7, cup 170, tbsp 10, piece 7
19087 | white chocolate; white chocolate chip; white chocolate chunk; white baking chocolate; white chocolate bar; white chip; white chocolate drop; white baking chip | milk ?soy | cup 170, bar 85, square 10, tbsp 10
14181 | chocolate syrup; chocolate sauce; hershey syrup; hershey chocolate syrup | ?milk ?soy caffeine | tbsp 19.5, cup 300
19348 | chocolate fudge sauce; hot fudge sauce; hot fudge; fudge sauce | milk ?soy caffeine | tbsp 19, cup 304
19364~ | caramel sauce; butterscotch sauce; caramel topping; toffee sauce; salted caramel; salted caramel sauce; butterscotch topping; caramel syrup | milk ?soy | tbsp 20, cup 310
19074 | caramel; caramel candy; soft caramel; toffee; toffee candy; butterscotch candy; dulce; toffee bit; caramel candies; chewy caramel; fudge; english toffee; soft caramel candy | milk ?soy ?wheat | each 10, cup 170, packet 200
19070~ | butterscotch chip; butterscotch morsel; peanut butter chip; cinnamon chip; toffee chip; caramel chip | milk ?soy ?peanut ?wheat | cup 170, packet 311
19107 | hard candy; candy cane; boiled sweet; peppermint candy; candy; lollipop; peppermint; sprinkle; hundreds and thousands; candy sprinkle; rainbow sprinkle; nonpareil; sugar decoration; starlight mint; chocolate sprinkle; smartie; candy decoration; jimmy; dragee; sugar pearl | ?milk ?wheat ?soy ?gelatine ?insect | tbsp 11, each 6, cup 180, tsp 4
19116 | marshmallow; mini marshmallow; large marshmallow; miniature marshmallow; marshmallows | gelatine ?egg | each 7, large 7, cup 50, packet 280, bag 280, small 0.7, handful 20
19116~ | marshmallow fluff; marshmallow creme; vegan marshmallow; marshmallow cream; marshmallow fluff jar | ?egg ?gelatine | cup 90, jar 213, tbsp 6
19106 | gumdrop; gummy bear; gummy; jelly sweet; jelly bean; wine gum; gummi candy; jelly baby | ?gelatine ?insect ?wheat ?milk | each 3, packet 150, cup 180
09426~ | candied ginger; crystallized ginger; stem ginger; stem ginger in syrup; crystallised ginger; ginger in syrup; preserved ginger; ball of stem ginger; uncrystallized ginger; stem ginger ball | ?sulphites | tbsp 12, cup 190, piece 15, ball 15, each 15
11216~ | pickled ginger; sushi ginger; gari | ?sulphites | tbsp 12, cup 150
19206 | instant vanilla pudding; vanilla pudding mix; instant pudding mix; pudding mix; instant vanilla pudding mix; vanilla instant pudding; custard mix; vanilla pudding; instant pudding | ?milk ?soy ?wheat | packet 99, box 99, tbsp 11
19184 | instant chocolate pudding; chocolate pudding mix; chocolate instant pudding mix; chocolate pudding | ?milk ?soy ?wheat | packet 110, box 110
20027~ | custard powder; bird custard powder; vanilla custard powder | ?milk ?wheat | tbsp 9, tsp 3, packet 75
19168 | custard; vanilla custard; creme anglaise; ready made custard; fresh custard; pastry cream | milk ?egg ?wheat | cup 282, carton 500, tub 500
18289 | pancake mix; bisquick; baking mix; biscuit mix; pancake and waffle mix; waffle mix; buttermilk pancake mix; all purpose baking mix; scone mix | wheat ?milk ?egg ?soy | cup 130, packet 500, box 500, tbsp 8
18144 | cake mix; yellow cake mix; white cake mix; vanilla cake mix; sponge mix; spice cake mix; lemon cake mix; funfetti cake mix; boxed yellow cake mix; devils food cake mix; chocolate cake mix; boxed cake mix; devil food cake mix | wheat ?milk ?egg ?soy | packet 432, box 432, cup 120
18152 | brownie mix; fudge brownie mix; boxed brownie mix | wheat ?milk ?egg ?soy ?walnut | packet 510, box 510
18022 | cornbread mix; corn muffin mix; jiffy mix; jiffy corn muffin mix; cornbread muffin mix | wheat ?milk ?egg ?soy ?pork | packet 240, box 240, cup 150
19371~ | frosting; icing; buttercream; vanilla frosting; chocolate frosting; fondant; ready made icing; cream cheese frosting; royal icing; ready to roll icing; white frosting; sugarpaste; candy melt; ready roll icing; buttercream frosting | ?milk ?soy ?egg ?gelatine ?wheat | cup 290, tub 450, tbsp 18, packet 500
18374~ | sourdough starter; starter; levain; ripe sourdough starter; active sourdough starter; sourdough discard; active starter; sourdough starter discard; ripe levain; sourdough levain; leaven; mature sourdough starter | wheat ?rye | cup 240, tbsp 15
02047~ | pink curing salt; prague powder; cure salt | - | tsp 4.4, tbsp 13, pinch 0.3
18248 | doughnut; donut; cake doughnut; plain doughnut | wheat ?milk ?egg ?soy ?peanut ?sulphites | each 40, piece 40
43046 | nougat; torrone; almond nougat | egg almond ?milk ?peanut ?hazelnut ?pistachio ?soy ?sesame ?honey ?gelatine | piece 14, bar 40
19335~ | lactose; milk sugar; lactose powder | milk | tsp 4, tbsp 12, cup 192
`;
