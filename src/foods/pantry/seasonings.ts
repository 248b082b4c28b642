/** Fresh and dried herbs, spices, salt, pepper, blends. Rows as in vegetables.ts. */
export const seasonings = `
02044 | basil; fresh basil; basil leaf; thai basil; sweet basil; holy basil | - | leaf 0.5, sprig 2, bunch 30, cup 21, cup packed 30, cup chopped 42, tbsp 2.65, handful 10, stem 3
02003 dried | = | - | tsp 0.7, tbsp 2.1
11297 | parsley; fresh parsley; flat leaf parsley; italian parsley; curly parsley; parsley leaf; flat parsley; fresh flat leaf parsley; mixed herb fresh; fresh herb; soft herb; herb; mixed fresh herb; chopped herb | - | sprig 1, bunch 60, cup 45, cup chopped 48, cup packed 50, cup leaf 25, tbsp 3.8, tbsp chopped 3.8, handful 15, stem 3, packet 30
02029 dried | parsley; parsley flake | - | tsp 0.5, tbsp 1.6
11625 dried | freeze dried parsley | - | tbsp 0.4
11165 | cilantro; coriander; fresh coriander; fresh cilantro; coriander leaf; cilantro leaf; chinese parsley; green coriander; coriander stem; cilantro stem; coriander root; dhania leaf | - | sprig 2.2, bunch 60, cup 16, cup chopped 40, cup packed 40, tbsp 2, handful 10, stem 2, root 3, packet 30
02012 dried | cilantro; coriander leaf; cilantro leaf | - | tsp 0.6, tbsp 1.8
02045 | dill; fresh dill; dill weed; dill frond; fennel frond; dill sprig; dillweed | - | sprig 0.2, bunch 30, cup sprig 9, cup 20, cup chopped 25, tbsp 1.5, handful 8
02017 dried | = | - | tsp 1, tbsp 3.1
02064 | mint; fresh mint; mint leaf; vietnamese mint | - | leaf 0.05, sprig 1.5, bunch 30, cup 26, cup packed 30, cup chopped 45, tbsp 1.6, handful 10
02065 | spearmint; fresh spearmint | - | leaf 0.15, tbsp 5.7, cup 90
02066 dried | mint; spearmint; peppermint | - | tsp 0.5, tbsp 1.6
02063 | rosemary; fresh rosemary; rosemary leaf; rosemary needle; rosemary sprig | - | sprig 1.5, bunch 25, tsp 0.7, tbsp 1.7, stalk 2
02036 dried | = | - | tsp 1.2, tbsp 3.3
02049 | thyme; fresh thyme; thyme leaf; thyme sprig; lemon thyme | - | sprig 0.6, bunch 20, tsp 0.8, tbsp 2.4, handful 5
02042 dried | = | - | tsp 1, tbsp 2.7
02038 dried | sage; rubbed sage; ground sage | - | tsp 0.7, tbsp 2
02044~ | sage; fresh sage; sage leaf; fresh sage leaf | - | leaf 0.6, sprig 2, bunch 20, tbsp 2, cup 25, handful 10
02027 dried | oregano; mexican oregano; greek oregano; ground oregano | - | tsp 1, tsp ground 1.8, tbsp 3, sprig 0.5
02044~ fresh | oregano; fresh oregano; oregano leaf; fresh marjoram; marjoram leaf | - | sprig 1, tbsp 3, bunch 20, cup 25, leaf 0.2
02023 dried | marjoram | - | tsp 0.6, tbsp 1.7
02041 dried | tarragon | - | tsp 0.6, tbsp 1.8
02044~ | tarragon; fresh tarragon; tarragon leaf; french tarragon; fresh chervil; chervil; lovage; sorrel; perilla; shiso; shiso leaf; perilla leaf; fresh savory; summer savory fresh; curry leaf fresh; lemon balm | - | sprig 1, tbsp 2, bunch 25, cup 20, leaf 0.5, handful 8
02008 dried | chervil | - | tsp 0.6, tbsp 1.9
02039 dried | savory; summer savory; winter savory | - | tsp 1.4, tbsp 4.4
02004 | bay leaf; bayleaf; bay; bay leaf; dried bayleaf; fresh bayleaf; turkish bayleaf; indian bayleaf; tej patta | - | leaf 0.2, each 0.2, small 0.1, large 0.3, tsp 0.6
02004~ | curry leaf; fresh curry leaf; curry leaves; makrut lime leaf; kaffir lime leaf; lime leaf; makrut leaf; dried curry leaf | - | leaf 0.3, each 0.3, sprig 3, handful 3, tbsp 1, cup 15
11984 | epazote | - | sprig 2, tbsp 0.8
02047 | salt; table salt; fine salt; sea salt; fine sea salt; iodized salt; cooking salt; himalayan salt; rock salt; pink salt; himalayan pink salt; curing salt; black salt; kala namak; pickling salt; celtic salt; salt fine | - | tsp 6, tbsp 18, cup 292, pinch 0.4
02047 | kosher salt; coarse salt; coarse sea salt; morton kosher salt; kosher or sea salt; coarse kosher salt; rock salt coarse | - | tsp 3.8, tbsp 11.4, cup 182, pinch 0.3
02047 | flaky salt; flaky sea salt; sea salt flake; maldon salt; diamond crystal kosher salt; diamond crystal salt; fleur de sel; maldon; flaked salt; diamond crystal | - | tsp 2.8, tbsp 8.4, cup 135, pinch 0.25
02047 | salt and pepper; salt pepper; seasoning salt and pepper; salt and black pepper; salt and freshly ground black pepper; sea salt and black pepper; salt and ground black pepper; salt and white pepper; kosher salt and black pepper; kosher salt and freshly ground black pepper; sea salt and freshly ground black pepper; salt and freshly ground pepper; kosher salt and freshly ground pepper | - | tsp 6, pinch 0.4
02047~ | celery salt | celery | tsp 4.8, tbsp 14
02047~ | garlic salt; onion salt; seasoned salt; seasoning salt; herb salt; vegetable salt; adobo seasoning; season salt | allium ?celery ?mustard ?wheat | tsp 5, tbsp 15
02030 | black pepper; pepper ground; ground pepper; ground black pepper; freshly ground pepper; freshly ground black pepper; cracked black pepper; coarse black pepper; freshly cracked pepper; pepper black; cracked pepper; mixed pepper ground; crushed black pepper; coarsely ground black pepper; freshly milled pepper | - | tsp 2.3, tbsp 6.9, pinch 0.15, grind 0.1, cup 110
02030 | peppercorn; black peppercorn; whole peppercorn; whole black pepper; mixed peppercorn; green peppercorn; pink peppercorn; green peppercorn in brine | - | tsp 3, tbsp 9, each 0.05
02032 | white pepper; ground white pepper; white peppercorn | - | tsp 2.4, tbsp 7.1, pinch 0.15
02030~ | sichuan pepper; sichuan peppercorn; sansho; sansho pepper | - | tsp 1.8, tbsp 5.4
02001 | allspice; ground allspice; pimento berry; allspice berry; jamaica pepper | - | tsp 1.9, tbsp 6, each 0.1
02002 | anise seed; aniseed; anise | - | tsp 2.1, tbsp 6.7
02002~ | star anise; staranise; star anise | - | each 1.5, tsp 2, piece 1.5
02005 | caraway; caraway seed; nigella; nigella seed; kalonji; black onion seed; ajwain; carom seed | - | tsp 2.1, tbsp 6.7
02006 | cardamom; ground cardamom; cardamom powder; cardamom seed; green cardamom; black cardamom; cardamom pod; green cardamom pod; black cardamom pod | - | tsp 2, tbsp 5.8, each 0.2, pod 0.2
02007 | celery seed; ground celery seed | celery | tsp 2, tbsp 6.5
02009 | chili powder; mexican chili powder; mild chili powder; hot chili powder; chipotle chili powder; chipotle powder; ancho chili powder; ancho powder; red chili powder; kashmiri chili powder; deggi mirch; chili powder blend | nightshade ?celery ?mustard | tsp 2.7, tbsp 8, pinch 0.15
02031 | cayenne; cayenne pepper; ground cayenne; ground cayenne pepper; ground red pepper; hot pepper powder; ground red chili; ground chili; cayenne powder; ground chipotle; kashmiri powder | nightshade | tsp 1.8, tbsp 5.3, pinch 0.1
02031 | chilli flakes; chili flake; red pepper flake; crushed red pepper; dried chili flake; red chili flake; crushed red pepper flake; hot pepper flake; aleppo pepper; gochugaru; crushed chili; korean chili flake; pepper flake; hot red pepper flake; pul biber; urfa biber; dried red pepper flake; crushed chili flake; piment d espelette; espelette pepper; korean red pepper flake | nightshade | tsp 1.8, tbsp 5.3, pinch 0.15
02010 | cinnamon; ground cinnamon; cinnamon powder; ceylon cinnamon | - | tsp 2.6, tbsp 7.9, pinch 0.15
02010 | cinnamon stick; stick of cinnamon; cinnamon quill; cassia bark; cassia; cinnamon bark; stick cinnamon | - | each 3, stick 3, inch 1, piece 2, small 2, large 5
02011 | cloves; ground cloves; whole clove; whole cloves; clove spice; ground clove; clove | - | tsp 2.1, tbsp 6.5, each 0.08, clove 0.08
02013 | coriander seed; ground coriander; coriander powder; dhania powder; whole coriander; dhania; coriander ground | - | tsp 1.8, tsp ground 2, tbsp 5, tbsp ground 6, handful 15
02014 | cumin; ground cumin; cumin seed; whole cumin; cumin powder; jeera; jeera powder; roasted cumin; ground roasted cumin; shahi jeera; black cumin | - | tsp 2.1, tbsp 6, pinch 0.1
02015 | curry powder; madras curry powder; mild curry powder; medium curry powder; hot curry powder; jamaican curry powder; vadouvan | ?mustard ?celery ?wheat | tsp 2, tbsp 6.3
02015~ | garam masala; ras el hanout; berbere; baharat; tandoori masala; chaat masala; tikka masala powder; sambar powder; rasam powder; chana masala powder; biryani masala; masala powder; spice mix; moroccan spice mix | ?mustard ?celery ?wheat | tsp 2, tbsp 6.3
02001~ | five-spice powder; fivespice; fivespice powder; chinese fivespice; chinese fivespice powder; quatre epice; mixed spice; apple pie spice; gingerbread spice; speculaas spice; lebkuchen spice | - | tsp 2, tbsp 6
02035 | pumpkin pie spice; pumpkin spice | - | tsp 1.7, tbsp 5.6
02016 | dill seed | - | tsp 2.1, tbsp 6.6
02018 | fennel seed; fennel seed ground; ground fennel; ground fennel seed; fennel pollen | - | tsp 2, tbsp 5.8
02019 | fenugreek; fenugreek seed; methi seed; ground fenugreek; fenugreek powder | legume | tsp 3.7, tbsp 11.1
02029~ dried | fenugreek leaf; dried fenugreek; kasuri methi; methi leaf; kasoori methi | legume | tsp 0.6, tbsp 1.8
02020 | garlic powder; granulated garlic; garlic granule; dried garlic; dried minced garlic; garlic flake | allium ?sulphites | tsp 3.1, tbsp 9.7
02026 | onion powder; onion granule; granulated onion | allium ?sulphites | tsp 2.4, tbsp 6.9
02021 | ground ginger; ginger powder; dried ginger; powdered ginger; ginger ground | - | tsp 1.8, tbsp 5.2, pinch 0.1
02022 | mace; ground mace; blade mace; mace blade; blade of mace | - | tsp 1.7, tbsp 5.3, each 0.5, piece 0.5
02024 | mustard seed; yellow mustard seed; black mustard seed; brown mustard seed; white mustard seed; whole mustard seed | mustard | tsp 3.3, tbsp 10
02024 | mustard powder; dry mustard; ground mustard; english mustard powder; dried mustard; dry mustard powder; ground mustard seed; mustard flour; colman mustard powder | mustard ?wheat | tsp 2, tbsp 6.3
02025 | nutmeg; ground nutmeg; grated nutmeg; freshly grated nutmeg; whole nutmeg | - | tsp 2.2, tbsp 7, pinch 0.1, each 5, grating 0.1
02028 | paprika; smoked paprika; sweet paprika; hot paprika; hungarian paprika; spanish paprika; spanish smoked paprika; sweet smoked paprika; pimenton | nightshade | tsp 2.3, tbsp 6.8, pinch 0.15
02033 | poppy seed; blue poppy seed; white poppy seed; khus khus | - | tsp 2.8, tbsp 8.8, cup 141
02034 | poultry seasoning | ?celery ?mustard | tsp 1.5, tbsp 4.4
02037 | saffron; saffron thread; saffron strand; saffron powder | - | tsp 0.7, tbsp 2.1, pinch 0.05, each 0.005
02043 | turmeric; ground turmeric; turmeric powder; haldi | - | tsp 3, tbsp 9.4, pinch 0.15
11216~ | fresh turmeric; turmeric root; fresh turmeric root | - | inch 6, piece 10, knob 10, tbsp 6, tsp 2
02042~ dried | italian seasoning; herbes de provence; mixed herb; italian herb; dried herb; dried mixed herb; bouquet garni; provencal herb; dried italian seasoning; italian herb seasoning; zaatar herb | - | tsp 1, tbsp 3, each 3, sprig 1
12023~ | zaatar; za atar; dukkah; furikake | sesame ?wheat ?hazelnut ?fish | tsp 2.5, tbsp 7
02028~ | sumac; ground sumac; amchur; dried mango powder; amchoor; achiote; annatto; annatto seed; long pepper; grains of paradise; mahlab | - | tsp 2.7, tbsp 8, each 0.3
02028~ | juniper berry; juniper; dried juniper berry | - | tsp 2, tbsp 6, each 0.15
02020~ | asafoetida; hing; asafetida | ?wheat | tsp 3, pinch 0.2
02075 | taco seasoning; taco seasoning mix; fajita seasoning; fajita seasoning mix; burrito seasoning; taco mix; taco spice | allium nightshade ?wheat ?milk ?soy | tsp 2.8, tbsp 8.5, packet 28, sachet 28
02076 | chili seasoning mix; chili seasoning; chili con carne mix; chili mix | allium nightshade ?wheat ?milk ?soy | tbsp 6.8, packet 35, sachet 35
02009~ | cajun seasoning; creole seasoning; jerk seasoning; jerk spice; steak seasoning; barbecue rub; bbq rub; old bay; old bay seasoning; seafood seasoning; lemon pepper; lemon pepper seasoning; blackened seasoning; all purpose seasoning; blackening spice; chicken seasoning; montreal steak seasoning; spice rub | ?celery ?mustard ?wheat ?soy ?milk ?sesame | tsp 2.8, tbsp 8.4
02074 | sazon; sazon seasoning; sazon goya | nightshade ?wheat ?soy | tsp 4, packet 5, sachet 5
11284~ | onion soup mix; dry onion soup mix; dried onion soup mix; french onion soup mix | allium ?wheat ?milk ?soy ?celery ?sulphites | tbsp 7, packet 35, sachet 35
02053~ | liquid smoke | - | tsp 5, drop 0.05
`;
