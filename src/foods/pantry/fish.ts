/** Fish and shellfish. Rows as in vegetables.ts. */
export const fish = `
15001 | fresh anchovy | fish | each 15
15002 canned | anchovy; anchovy fillet; anchovy in oil; tinned anchovy; canned anchovy; salted anchovy; salt packed anchovy; oil packed anchovy; anchovy fillets; white anchovy | fish | each 4, fillet 4, tin 50, jar 80, drained 0.6
15002~ | anchovy paste; anchovy essence | fish ?wheat ?milk | tsp 6, tbsp 18, tube 60
15091 | sea bass; bass; sea bass fillet; seabass; branzino; sea bream; bream; dorade; branzini | fish | fillet 129, each 129
15015 | cod; cod fillet; cod loin; fresh cod; atlantic cod; skinless cod fillet; cod cheek | fish | fillet 180, each 180
15016 cooked | = | fish | fillet 180
15018 | salt cod; bacalao; bacalhau; dried cod; baccala; salted cod; stockfish; dried salt cod; saltfish | fish | piece 80
15033 | haddock; haddock fillet; fresh haddock | fish | fillet 193, each 193
15034 cooked | = | fish | fillet 150
15035 smoked | haddock; finnan haddie; smoked haddock fillet; undyed smoked haddock; haddock fillet; arbroath smokie; smoked cod; smoked white fish; smoked fish | fish | fillet 170, each 170
15036 | halibut; halibut fillet; halibut steak | fish | fillet 204, each 170, steak 170
15066 | white fish; pollock; pollack; alaska pollock; coley; saithe; white fish; white fish fillet; fish fillet; firm white fish; firm white fish fillet; fish; mixed skinless white fish fillet; skinless white fish fillet; mixed white fish; fish pie mix; firm fish; firm fleshed white fish; mixed fish; meaty white fish; white fleshed fish; ling; ling fillet; hoki | fish | fillet 120, each 120, packet 300
15192~ cooked | white fish; fish; white fish fillet; pollock; cooked fish | fish | fillet 100
15028 | flounder; sole; plaice; lemon sole; dover sole; sole fillet; flounder fillet; plaice fillet; flatfish; dab | fish | fillet 127, each 127
15039 | herring; fresh herring; herring fillet | fish | fillet 184, each 184
15041 | pickled herring; rollmop; marinated herring; herring in jar; marinated herring fillet; soused herring; matjes | fish ?mustard ?milk ?sulphites ?wheat | cup 140, jar 250, piece 15, each 60
15042 smoked | kipper; herring; smoked herring; kipper fillet; bloater; herring fillet | fish | fillet 40, each 140
15046 | mackerel; mackerel fillet; fresh mackerel | fish | fillet 112, each 112
15047~ smoked | mackerel; smoked mackerel fillet; peppered mackerel; mackerel fillet; hot smoked mackerel | fish | fillet 90, each 90, packet 200
15048 canned | mackerel; tinned mackerel; mackerel fillet; mackerel in oil | fish | tin 125, cup 190
15023 | mahi mahi; mahimahi; dolphinfish | fish | fillet 204, each 170
15054 | monkfish; monkfish tail; monkfish fillet | fish | fillet 170, each 170
15055 | mullet; grey mullet; red mullet; gray mullet | fish | fillet 119
15060 | perch; perch fillet; barramundi; zander; pike perch | fish | fillet 60
15062 | pike; northern pike | fish | fillet 198
15064 | walleye; walleye pike | fish | fillet 159
15070 | rockfish; rockfish fillet | fish | fillet 191
15057 | ocean perch; redfish; rose fish | fish | fillet 64
15236 | salmon; salmon fillet; atlantic salmon; fresh salmon; salmon steak; skinless salmon fillet; skinless boneless salmon fillet; farmed salmon; salmon side; sushi grade salmon; salmon piece | fish | fillet 170, each 170, steak 200, side 900, packet 240
15237 cooked | = ; poached salmon; flaked salmon | fish | fillet 150, cup 135
15076 | wild salmon; wild salmon fillet | fish | fillet 170, each 170
15085 | sockeye salmon; sockeye | fish | fillet 170
15078 | chinook salmon; king salmon | fish | fillet 170
15077 smoked | salmon; lox; smoked salmon slice; cold smoked salmon; hot smoked salmon; smoked salmon trimming; gravlax; gravadlax; salmon fillet | fish | slice 20, packet 100, fillet 130, cup 136
15260 canned | salmon; pink salmon; tinned salmon; canned pink salmon; red salmon; sockeye salmon; canned salmon | fish | tin 213, drained 0.8, cup 150
15088 canned | sardine; sardine in oil; pilchard; tinned sardine; canned sardine; sprat in oil; sardine fillet; smoked sprat | fish | tin 106, each 12, cup 149, drained 0.85
15088~ | fresh sardine; sprat; fresh sardine fillet | fish | each 60
15099 | smelt; whitebait; sprat fresh; smelts | fish | each 15
15101 | snapper; red snapper; snapper fillet | fish | fillet 170, each 170
15110 | swordfish; swordfish steak | fish | steak 170, each 170
15261 | tilapia; tilapia fillet; basa; pangasius; swai; basa fillet; pangasius fillet | fish | fillet 116, each 116
15234 | catfish; catfish fillet | fish | fillet 159, each 159
15240 | trout; rainbow trout; trout fillet; sea trout; steelhead; arctic char; ocean trout; steelhead trout | fish | fillet 120, each 230
15241 cooked | trout; rainbow trout; trout fillet | fish | fillet 71
15117 | tuna steak; tuna; fresh tuna; bluefin tuna; sushi grade tuna; sushi grade tuna steak; ahi tuna; tuna loin; yellowfin tuna; ahi; tuna sashimi | fish | steak 170, each 170
15121 canned | tuna; canned tuna; tinned tuna; tuna in water; tuna in spring water; tuna in brine; tuna chunk; tuna fish; light tuna; chunk light tuna; tuna steak canned; skipjack tuna; chunk tuna; water packed tuna; canned light tuna | fish ?soy | tin 142, drained 0.75, packet 74, pouch 74, cup 154
15119 canned | tuna in oil; tuna in olive oil; tuna packed in oil; tuna in sunflower oil; oil packed tuna; italian tuna in oil; olive oil packed tuna; ventresca | fish ?soy | tin 142, jar 190, drained 0.75, cup 146
15126 canned | albacore; albacore tuna; white tuna; solid white tuna; solid white albacore tuna | fish ?soy | tin 142, drained 0.75, cup 154
15129 | turbot; brill | fish | fillet 200
15132 | whiting; hake; hake fillet; whiting fillet | fish | fillet 92, each 150
15130 | whitefish; lake whitefish | fish | fillet 198
15131 smoked | whitefish | fish | cup 136
15135 | yellowtail; hamachi; amberjack; kingfish | fish | fillet 187
15104 | sturgeon | fish | each 170
15025 | eel; freshwater eel; unagi | fish | fillet 204
15008 | carp | fish | fillet 218
15031 | grouper; grouper fillet | fish | fillet 259
15074 | black cod; sablefish; butterfish | fish | fillet 193
15095 | shark; skate; skate wing; ray; dogfish; rock salmon | fish | each 200
15053 | milkfish; bangus | fish | each 400
15012 | caviar; roe; lumpfish roe; salmon roe; ikura; tobiko; fish roe; lumpfish caviar; trout roe; masago | fish | tbsp 16, jar 50, tin 50
15072 | cod roe; fresh roe; soft roe; smoked cod roe; piece smoked cod roe; tarama; bottarga | fish | tbsp 14, piece 100
15027 | fish finger; fish stick; breaded fish; breaded fish fillet; battered fish | fish wheat ?milk ?egg ?mustard | each 28, packet 300
15138 | surimi; crab stick; imitation crab; seafood stick; kamaboko; fish cake surimi; imitation crabmeat; fish ball; narutomaki; krab; imitation crab meat | fish ?crustaceans ?egg ?wheat ?soy ?milk ?molluscs | each 15, stick 15, packet 250, cup 85
15002~ | bonito flake; katsuobushi; dried bonito; dried anchovy; dried fish; ikan bilis; niboshi; bonito | fish | cup 12, tbsp 1, handful 8, packet 25
15149 | shrimp; prawn; raw shrimp; large shrimp; jumbo shrimp; king prawn; tiger prawn; medium shrimp; peeled shrimp; raw prawn; uncooked shrimp; gulf shrimp; extra large shrimp; raw king prawn; raw tiger prawn; jumbo prawn; shell on prawn; rock shrimp; small shrimp; whole shrimp | crustaceans ?sulphites | each 12, small 5, medium 6, large 10, extra large 15, cup 145, packet 200, handful 60
15151 cooked | = ; cooked prawn; atlantic prawn; north atlantic prawn; cooked peeled prawn; brown shrimp; bay shrimp; salad shrimp; cocktail prawn | crustaceans ?sulphites | each 6, large 7, cup 128, packet 200
15149 frozen | shrimp; prawn; king prawn; tiger prawn | crustaceans ?sulphites | cup 145, bag 340, packet 250
15152 canned | shrimp; canned shrimp; prawn | crustaceans ?sulphites | tin 113, cup 128
15152~ dried | shrimp; prawn | crustaceans ?sulphites | tbsp 6, cup 60
06179~ | shrimp paste; belacan; terasi; kapi; bagoong; fermented shrimp paste; prawn paste | crustaceans ?fish | tsp 6, tbsp 18
15139 | crab; blue crab; whole crab; fresh crab; soft shell crab | crustaceans | each 85
15143 | dungeness crab | crustaceans | each 163
15141 canned | crab; crabmeat; crab meat; canned crab; canned crabmeat; white crabmeat; claw meat | crustaceans | tin 170, cup 135, drained 0.7
15140 cooked | crabmeat; crab meat; white crabmeat; lump crabmeat; picked crab; fresh crabmeat; crab; lump crab; brown crabmeat; cooked crab; jumbo lump crabmeat; white crab meat; best quality crabmeat; backfin crabmeat; jumbo lump crab meat; lump crab meat; fresh white crabmeat | crustaceans | cup 135, packet 100, tbsp 9, tin 170, each 118
15136 | king crab; king crab leg; crab leg; snow crab | crustaceans | leg 172, each 172
15145 | crayfish; crawfish; crayfish tail; crawfish tail | crustaceans | each 3, cup 145
15147 | lobster; lobster tail; whole lobster; maine lobster | crustaceans | each 150, tail 120
15148 cooked | =; lobster meat | crustaceans | cup 145
15157 | clam; littleneck clam; fresh clam; manila clam; cockle; vongole; cherrystone clam; venus clam; palourde; steamer clam | molluscs | each 9, small 9, large 20, cup 227
15160 canned | clam; canned clam; baby clam; chopped clam; minced clam; cockle | molluscs | tin 184, cup 160, drained 0.5
15162 | clam juice; clam broth; clam liquid | molluscs ?celery | cup 240, bottle 237
14187 | clamato; clam tomato juice; clam and tomato juice | molluscs nightshade ?celery ?fish | cup 242
15164 | mussel; fresh mussel; green lipped mussel; mussel meat; live mussel; blue mussel | molluscs | each 12, cup 150, small 8, large 16
15165 cooked | = ; smoked mussel; cooked mussel | molluscs | each 8, tin 85, cup 140
15167 | oyster; fresh oyster; shucked oyster; eastern oyster; rock oyster | molluscs | each 14, medium 14, cup 248, small 8, large 25
15170 canned | oyster; smoked oyster; canned oyster | molluscs | tin 85, cup 162
15172 | scallop; sea scallop; bay scallop; king scallop; queen scallop; diver scallop | molluscs | each 15, small 6, large 30, cup 225, medium 15
15175 | squid; calamari; squid tube; squid ring; baby squid; cleaned squid | molluscs | each 100, tube 100, ring 8, cup 225
15163 | cuttlefish | molluscs | each 300
15166 | octopus; baby octopus | molluscs | each 900, tentacle 120
15155 | abalone | molluscs | each 85
15177 | whelk; periwinkle; winkle | molluscs | each 20
15250 | conch | molluscs | cup 127
90560 | snail; escargot; land snail | molluscs | each 5, tin 200
15160~ | seafood mix; mixed seafood; frozen seafood mix; seafood; fruits de mer; seafood medley; shellfish; mixed shellfish | fish crustaceans molluscs | packet 400, cup 150
80200 | frog leg | game | each 45
43497 | jellyfish; salted jellyfish | - | cup 58
15131~ | smoked trout; smoked trout fillet; hot smoked trout; smoked eel; smoked whitefish | fish | fillet 65, each 65, packet 125, cup 136
15154~ | langoustine; langostino; scampi tail; dublin bay prawn; norway lobster; spiny lobster; rock lobster | crustaceans ?sulphites | each 40, tail 20, packet 250
`;
