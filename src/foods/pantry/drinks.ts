/** Water, tea, coffee, soft drinks, beer, wine, spirits. Rows as in vegetables.ts. */
export const drinks = `
14411 | water; cold water; hot water; warm water; boiling water; tap water; ice water; lukewarm water; filtered water; cooking water; ice cube; ice; cool water; iced water; crushed ice; just boiled water; very hot water; room temperature water; distilled water; soaking water; tepid water; spring water; mineral water | - | cup 237, tbsp 14.8, tsp 4.9, cube 25, each 25, ml 1, handful 100
14411~ | aquafaba; chickpea liquid; chickpea water; chickpea brine | legume | tbsp 15, cup 240, tin 150
14121 | soda water; sparkling water; club soda; carbonated water; seltzer; fizzy water; sparkling mineral water; seltzer water | - | cup 237
14148 | cola; coke; coca cola; soda cola; dr pepper; pepsi; root beer | caffeine | cup 246, tin 368, bottle 500, litre 1040
14136 | ginger ale; ginger beer; lemonade fizzy; lemon lime soda; sprite; 7up; lemonade; lemon soda; orange soda; fanta | ?sulphites | cup 244, tin 366, bottle 500
14155 | tonic water; tonic | - | cup 244
14209 | coffee; brewed coffee; strong coffee; black coffee; hot coffee; filter coffee; strong brewed coffee; cold coffee; freshly brewed coffee; cold brew coffee; strong black coffee; cooled coffee | caffeine | cup 237, tbsp 15
14210 | espresso; espresso coffee; shot of espresso; strong espresso; brewed espresso; hot espresso | caffeine | cup 237, shot 30, tbsp 15, each 30
14214 | instant coffee; instant coffee powder; coffee granule; instant espresso powder; espresso powder; instant coffee granule; coffee powder; instant espresso; nescafe; instant espresso coffee; instant espresso coffee powder | caffeine | tsp 1.2, tbsp 3.6, sachet 2, packet 2, cup 58
14214~ | ground coffee; coffee bean; coffee ground; espresso bean; finely ground coffee; ground espresso; ground espresso coffee | caffeine | tbsp 5, cup 80
14355 | tea; black tea; brewed tea; strong tea; hot tea; chai tea; earl grey tea brewed; cold tea; strong black tea; brewed black tea | caffeine | cup 237
14278 | green tea; brewed green tea | caffeine | cup 245
14381 | herbal tea; rooibos tea; fruit tea; mint tea; peppermint tea; chamomile tea; hibiscus tea; herb tea | - | cup 237
14366~ | tea leaves; tea leaf; loose tea; tea bag; teabag; black tea leaf; earl grey tea; earl grey; matcha; matcha powder; green tea powder; green tea bag; green tea leaf; matcha green tea powder; loose leaf tea; lapsang souchong; earl grey tea bag; black tea bag; hojicha; chai tea bag; assam tea; oolong tea leaf; dried hibiscus flower; hibiscus flower; dried hibiscus | caffeine | each 2, bag 2, tbsp 5, tsp 2, cup 60
14003 | beer; lager; ale; brown ale; pale ale; stout; guinness; pilsner; light beer; dark beer; wheat beer; belgian beer; bitter beer; amber ale; dark ale; porter; belgian ale; pale lager; mexican beer; ipa; amber beer | barley alcohol ?wheat ?sulphites ?fish | cup 237, tin 356, bottle 356, can 356
14305 | non alcoholic beer; alcohol free beer | barley ?wheat | cup 237, bottle 330
14003~ | gluten free beer; glutenfree beer | alcohol ?barley | cup 237, bottle 330
14096 | red wine; dry red wine; wine; burgundy; burgundy wine; merlot; cabernet sauvignon; pinot noir; chianti; full bodied red wine; fruity red wine; shiraz; good red wine; zinfandel | alcohol sulphites ?egg ?milk ?fish | cup 237, tbsp 14.8, bottle 750
14106 | white wine; dry white wine; sauvignon blanc; chardonnay; riesling; sparkling wine; champagne; prosecco; cava; rose wine; pinot grigio; crisp white wine; dry vermouth; vermouth; sweet white wine; semi dry white wine; vin jaune; rose; moscato; white vermouth; dry sparkling wine; sec wine; brut champagne; dry riesling | alcohol sulphites ?egg ?milk ?fish | cup 237, tbsp 14.8, bottle 750
14536 | sherry; dry sherry; madeira; marsala; marsala wine; dry marsala; port; port wine; ruby port; medium dry sherry; amontillado; tawny port; fino sherry; dry madeira; dry sherry wine; madeira wine; fortified wine; red port; vin santo; sherry wine; manzanilla | alcohol sulphites ?egg ?milk | cup 237, tbsp 14.8, bottle 750
14057 | sweet sherry; dessert wine; cream sherry; sweet marsala; sauternes; pedro ximenez; sweet vermouth; sweet wine; muscat; sweet fortified wine; sweet dessert wine; pineau | alcohol sulphites ?egg ?milk | cup 237, tbsp 15
43154 | cooking wine; cooking sherry; shaoxing wine; shaoxing; rice wine; chinese rice wine; chinese cooking wine; shaohsing wine; shao hsing wine; rice cooking wine; shaoxing rice wine; shaohsing rice wine; makgeolli; yellow wine; shaoxing cooking wine; huangjiu; chinese wine; shao xing wine | alcohol ?wheat ?sulphites | cup 237, tbsp 14.7
43479 | sake; rice wine sake; cooking sake; dry sake | alcohol | cup 233, tbsp 14.6
43479~ | mirin; hon mirin; sweet rice wine; sweet cooking wine; aji mirin; sweet cooking rice wine | alcohol ?sulphites | tbsp 18, cup 288, tsp 6
14550 | brandy; cognac; calvados; applejack; kirsch; grappa; armagnac; pisco; apple brandy; eau de vie; marc; slivovitz; plum brandy; pear brandy; schnapps; poire william; cherry brandy; aquavit | alcohol ?sulphites | cup 222, tbsp 13.9, shot 42, tsp 4.6
14050 | rum; dark rum; white rum; light rum; spiced rum; gold rum; cachaca; golden rum; bourbon or dark rum; aged rum; malibu; coconut rum | alcohol | cup 222, tbsp 13.9, shot 42, tsp 4.6
14051 | vodka; tequila; mezcal; citron vodka; soju; lemon vodka; vanilla vodka; neutral spirit; blanco tequila; silver tequila; arak; ouzo; raki; absinthe; pernod; pastis; sambuca; anisette; anise liqueur | alcohol | cup 222, tbsp 13.9, shot 42
14052 | whiskey; bourbon; scotch; bourbon whiskey; irish whiskey; rye whiskey; scotch whiskey | alcohol ?barley ?wheat ?rye | cup 222, tbsp 13.9, shot 42
14049 | gin; dry gin; london dry gin | alcohol | cup 222, tbsp 13.9, shot 42
14534 | liqueur; coffee liqueur; orange liqueur; grand marnier; cointreau; kahlua; triple sec; amaretto; cassis; creme de cassis; frangelico; limoncello; campari; aperol; almond liqueur; hazelnut liqueur; cherry liqueur; chambord; curacao; galliano; drambuie; benedictine; chartreuse; elderflower liqueur; maraschino liqueur; raspberry liqueur; orange flavored liqueur; tia maria; peach schnapps; st germain; chocolate liqueur; blue curacao; maraschino; orange curacao | alcohol ?almond ?hazelnut ?milk ?egg | cup 278, tbsp 17.4, shot 52, tsp 5.8
14415 | irish cream; cream liqueur; baileys; irish cream liqueur; baileys irish cream | alcohol milk | cup 249, tbsp 15.5
14034 | creme de menthe; creme de cacao; mint liqueur; white creme de cacao | alcohol | cup 269, tbsp 16.8
14003~ | dry cider; hard cider; cider; dry hard cider; perry; french cider; apple cider | alcohol ?sulphites | cup 239, bottle 500, tin 440
14553 | non alcoholic wine; alcohol free wine; dealcoholized wine | ?sulphites | cup 232
14536~ | bitters; angostura bitter; angostura; angostura bitters | alcohol | dash 0.6, tsp 5, drop 0.05
14278~ | kombucha | ?alcohol caffeine | cup 240
11578 | vegetable juice; v8; vegetable juice cocktail; vegetable cocktail juice | celery nightshade | cup 253, tin 340
11655 | carrot juice | - | cup 236
14284 | cranberry juice cocktail; cranberry juice drink; sweetened cranberry juice | ?sulphites | cup 271
14407~ | orange drink powder; tang; electrolyte powder; sports drink powder; lemonade powder; kool aid; squash drink; cordial; elderflower cordial; fruit cordial; lime cordial; lemonade concentrate; elderflower syrup; fruit syrup; raspberry syrup; rose syrup; lavender syrup; flavored syrup | ?sulphites | tbsp 18, cup 290, sachet 20
14411~ | pasta water; pasta cooking water; starchy pasta water; noodle water | wheat ?egg | cup 237
`;
