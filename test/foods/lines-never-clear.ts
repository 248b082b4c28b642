/** A line of our own and what is or may well be in it: none of it may be shown clear. By hand, common practice, no source. */
export const neverClear = `
200 g couscous tossed with harissa and toasted almonds | wheat gluten nut
1 tin mackerel fillets in mustard sauce | fish mustard
400 g gnocchi di patate (contains egg) | wheat gluten egg
2 tbsp hoi sin sauce | soy wheat gluten sesame
250 g halloumi, fried in butter | milk
300 g tagliatelle or rice noodles | wheat gluten
1 jar pesto alla genovese | milk nut
100 g marzipan, grated | nut
1 can of cream of mushroom soup | milk wheat gluten
1 packet ramen w/ soup base | wheat gluten egg soy
500g fishfingers | fish wheat gluten
2 scotch eggs, quartered | egg wheat gluten
1 tbsp Worcester sauce | fish
a splash of Worcestershire | fish
150 g surimi sticks | fish egg wheat gluten crustacean
200 g crab meat or crab sticks | crustacean fish
4 brioche buns, toasted | wheat gluten egg milk
100 g crutons | wheat gluten milk
3 tbsp tahina | sesame
200 g humus | sesame
50 g gomasio | sesame
1 tbsp za'atar | sesame
120 g feta crumbled over | milk
2 tbsp ghee | milk
1 tub quark (250 g) | milk
200 ml skyr | milk
2 Tbsp whey powder | milk
60 g caseine powder | milk
300 g seitan strips | wheat gluten
200 g freekeh | wheat gluten
100 g bulgar wheat | wheat gluten
250 g kamut | wheat gluten
100 g spelt flakes | wheat gluten
1 cup triticale | wheat gluten
200 ml oat cream | gluten
80 g muesli with nuts | gluten nut
100 g granola (honey & almond) | gluten nut
1 bar nutella-filled biscuit | milk nut wheat gluten
3 tbsp nutela | milk nut
50 g praline paste | nut
200 g nougat, chopped | egg nut
1 glass satay sauce | peanut
2 tbsp pb2 powdered peanut butter | peanut
100 g groundnuts, roasted | peanut
30 g monkey nuts | peanut
1 tsp peanut oil for frying | peanut
200 g tempe, cubed | soy
150 g edamame beans | soy
1 block firm toffu | soy
2 tbsp tamari | soy
1 tbsp soya lecithin | soy
100 ml soja cream | soy
300 g TVP mince | soy
2 tbsp natto | soy
1 tbsp gochujang | soy wheat gluten
1 tsp fish sauce or soy sauce | fish soy
4 anchovies, mashed w/ garlic | fish
1 tsp anchovy paste | fish
1 sachet dashi powder | fish
2 tbsp bonito flakes | fish
250 g smoked haddock poached in milk | fish milk
200 g cod in breadcrumbs | fish wheat gluten
1 tin sardines in tomato | fish
150 g prawns, shell on or langoustines | crustacean
200 g shrimps peeled | crustacean
100 g krill | crustacean
1 tin clams in brine | mollusc
500 g moules marinière | mollusc
200 g calamari rings, battered | mollusc wheat gluten
100 g octopuss | mollusc
2 tbsp oyster sauce (vegetarian?) | mollusc
1 stick cellery | celery
1 tsp celery salt | celery
200 g celeriac remoulade | celery egg mustard
1 tsp english mustard powder | mustard
2 tbsp honey-mustard dressing | mustard
1 tbsp wholegrain mustad | mustard
100 g lupin flakes | lupin
50 g lupine flour | lupin
200 ml red whine | sulphite
100 g dried apricots (sulphured) | sulphite
150 ml sherry | sulphite
200 g gammon & egg pie | egg wheat gluten
1 quiche lorraine | egg milk wheat gluten
300 g macaroni cheese | wheat gluten milk
200 g cauliflower cheese | milk
1 portion fish pie | fish milk
2 naan breads, torn | wheat gluten
4 flour tortillas | wheat gluten
200 g spaetzle | wheat gluten egg
250 g pierogi with cheese | wheat gluten milk
300 g ravioli filled with ricotta and spinach | wheat gluten milk egg
1 lb meatballs (with breadcrumbs and egg) | wheat gluten egg
500 g sausages | wheat gluten
200 g haggis | gluten
150 g black pudding | gluten
4 potato farls | wheat gluten
1 tbsp mayo | egg
2 tbsp aioli | egg
100 ml hollandaise | egg milk
3 meringue nests, crushed | egg
200 g lemon curd | egg
4 egg whites whisked | egg
100 g egg noodles / rice noodles | wheat gluten egg
100 g ladyfingers | egg wheat gluten
200 g tiramisu | milk egg wheat gluten
100 g white choc chips | milk
50 g milk choclate | milk
30 g cocoa nib brownies | wheat gluten egg
1 tbsp cashew cream | nut
50 g pine kernels or walnuts | nut
100 g pecan pie filling | nut
2 tbsp almond butter stirred in | nut
100 g amaretti | nut egg
50 ml amaretto | nut
100 g frangipane | nut egg milk
1 handful brazils | nut
50 g pistachio's | nut
20 g hazlenuts | nut
30 g macadamias roasted in butter | nut milk
rice 300g, cooked in coconut milk w/ cashews on top | nut
500 g chicken thighs marinated in yoghurt | milk
400 g lamb mince, browned in ghee; topped w feta | milk
600 g pork belly glazed with soy and honey | soy
300 g tofu in peanut sauce | soy peanut
250 g potatoes, dauphinoise | milk
200 g spinach creamed | milk
1 kg mussels steamed in white wine | mollusc sulphite
400 g rice (or orzo) | wheat gluten
1 cup milk (dairy or oat) | milk
300 g beef stew with dumplings | wheat gluten
2 vegetable samosas | wheat gluten
200 g falafel mix | wheat gluten
150 g chicken kiev | milk wheat gluten
200 g breaded scampi | crustacean wheat gluten
1 tin steak pie filling | wheat gluten
300 g veg lasagna | wheat gluten milk egg
1 pot noodle | wheat gluten
100 g crispbread, rye | gluten
50 g malt extract | gluten
2 tbsp marmite | gluten celery
330 ml beer for the batter | gluten
50 g ovaltine | milk gluten
100 g barley miso | soy gluten
1 cup farina | wheat gluten
75 g matzo meal | wheat gluten
50 g panko | wheat gluten
2 tbsp roux | wheat gluten
300 ml bechamel | milk wheat gluten
100 g crème fraîche (or soured cream) | milk
200 ml creme anglaise | milk egg
40 g parmigiano, finely grated | milk
100 g grana padano (lysozyme from egg) | milk egg
250 g ricotta salata | milk
100 g kashk | milk
3 tbsp labneh | milk
50 g milk kefir grains | milk
1 tbsp nigella / black sesame | sesame
1 egg substitute sachet | egg
100 g crab-flavoured sticks | fish crustacean
50 g butter-flavoured popcorn | milk
100 g Käse | milk
200 ml Sahne | milk
3 oeufs | egg
2 huevos | egg
200 g Nudeln | wheat gluten egg
50 g Erdnüsse | peanut
50 g Haselnüsse | nut
100 ml lait | milk
100 g fromage blanc | milk
50 g beurre | milk
50 g mantequilla | milk
30 g cacahuetes | peanut
100 g gambas | crustacean
1 tsp Senf | mustard
1 Stange Sellerie | celery
20 g Sesam | sesame
200 g Weizenmehl | wheat gluten
100 g farine de ble | wheat gluten
100 g tofu scramble mix | soy
200g sweet & sour chicken | wheat gluten soy
1 tin chow mein | wheat gluten soy
200 g butter chicken | milk
200 g saag paneer | milk
300 g massaman curry | peanut fish
300 g pad thai | peanut egg fish
300 g laksa | crustacean fish
2 spring rolls | wheat gluten
10 gyoza | wheat gluten soy
8 wontons | wheat gluten egg
200 g kimchi | fish crustacean
200 g baba ganoush | sesame
200 g tzatziki | milk
200 g caesar salad | egg fish milk
200 g coleslaw | egg mustard
200 g waldorf salad | nut celery egg
200 g potato salad | egg mustard
200 g russian salad | egg
1 cornish pasty | wheat gluten
1 sausage roll | wheat gluten
2 yorkshire puddings | wheat gluten egg milk
200 g bread and butter pudding | wheat gluten egg milk
200 g bread sauce | wheat gluten milk
1 tbsp horseradish cream | milk mustard sulphite
2 tbsp tartare sauce | egg mustard
2 tbsp thousand island | egg
2 tbsp ranch dressing | milk egg
100 g halva | sesame
100 g baklava | nut wheat gluten
100 g turkish delight w pistachio | nut
100 g trail mix | nut peanut
100 g bombay mix | peanut wheat gluten
100 g studentenfutter | nut
50 g flapjack | gluten
1 cereal bar | gluten nut
1 protein bar | milk soy nut
1 scoop whey | milk
100 g digestives | wheat gluten
100 g shortbread | wheat gluten milk
100 g oreo | wheat gluten
100 g croissants | wheat gluten milk
100 g pain au chocolat | wheat gluten milk
200 g gratin dauphinois | milk
200 g pommes dauphine | egg wheat gluten
200 g duchess potatoes | egg milk
200 g mash | milk
200 g polenta with gorgonzola | milk
200 g risotto alla milanese | milk
200 g carbonara | egg milk wheat gluten
200 g alfredo sauce | milk
200 g pesto rosso | milk nut
200 g tapenade | fish
200 g vitello tonnato | fish egg
200 g salade nicoise | fish egg
200 g bagna cauda | fish
1 tin baked beans with sausages | wheat gluten
1 tin lobster bisque | crustacean milk
1 tin rice pudding | milk
1 tin custard | milk
1 jar korma sauce | milk nut
1 jar black bean sauce | soy wheat gluten
1 jar tikka paste | mustard
1 jar mint sauce | sulphite
1 jar piccalilli | mustard
1 jar gherkins | mustard sulphite
1 jar artichoke antipasti | sulphite
rice, 300 g; prawns, 200 g | crustacean
300 g rice plus the egg | egg
noodles (200g), tofu (300g), peanuts (50g) | peanut soy wheat gluten
chicken 400 g wrapped in bacon, stuffed w. cheese | milk
400 g salmon en croute | fish wheat gluten milk
200 g beef wellington | wheat gluten egg milk
1 kg leeks in white sauce | milk wheat gluten
carrot cake 200 g with cream cheese frosting | milk egg wheat gluten
200 g peanutbutter | peanut
200 g almondmilk | nut
1 tbsp soysauce | soy
200 g creamcheese | milk
200 g eggnoodles | egg wheat gluten
100 g sesameoil | sesame
30 g fishsauce | fish
50 g cashewnuts | nut
100 g breadcrums | wheat gluten
100 g parmesean | milk
100 g mozarella | milk
100 g ricota | milk
100 g mascapone | milk
100 ml butermilk | milk
100 g yoghourt | milk
100 g spagetti | wheat gluten
100 g maccaroni | wheat gluten
100 g tortelini | wheat gluten egg
100 g coscous | wheat gluten
100 g bulgur weat | wheat gluten
100 g brocoli & stilton | milk
1 tbsp maionese | egg
1 tbsp dijonaise | egg mustard
100 g tuna mayo | fish egg
100 g egg mayo | egg
100 g prawn cocktail | crustacean egg
100 g smoked mackrel pate | fish milk
100 g taramasalata | fish
100 g worcester pork sausage | wheat gluten
`
  .trim()
  .split('\n')
  .map((row) => {
    const [typed = '', there = ''] = row.split(' | ');
    return { typed, there: there.split(' ') };
  });
