/** Meat, poultry, game, sausages and cured meats. Rows as in vegetables.ts. */
export const meat = `
05062 | chicken breast; skinless chicken breast; boneless chicken breast; boneless skinless chicken breast; chicken breast fillet; chicken fillet; skinless boneless chicken breast; chicken breast half; chicken tenderloin; chicken tender; chicken; diced chicken; boneless chicken; chicken cutlet; chicken strip; chicken meat; boneless skinless chicken; chicken piece boneless; chicken breast meat; skinless chicken; chicken breast cutlet | poultry | each 174, breast 174, small 140, medium 174, large 272, fillet 174, cup 140, half 174, piece 174, tender 45, packet 500
05064 cooked | = ; rotisserie chicken breast; roast chicken breast; shredded chicken; leftover chicken; poached chicken; rotisserie chicken; cooked chicken; roast chicken; grilled chicken; roasted chicken breast; pulled chicken; rotisserie chicken meat; deli roasted chicken breast; deli chicken | poultry | cup 140, each 140, breast 140, slice 20
05057 | bone in chicken breast; chicken breast with skin; skin on chicken breast; split chicken breast; bonein chicken breast; chicken breast on the bone; bonein skinon chicken breast | poultry | each 290, breast 290
05096 | chicken thigh; boneless chicken thigh; skinless chicken thigh; boneless skinless chicken thigh; chicken thigh fillet; skinless boneless chicken thigh; chicken leg meat; boneless thigh; chicken dark meat; chicken thigh meat | poultry | each 110, thigh 110, small 85, medium 110, large 149, cup 140, piece 110, fillet 110, packet 600
05098 cooked | = | poultry | cup 140, each 95
05091 | bone in chicken thigh; bonein chicken thigh; skin on chicken thigh; skinon chicken thigh; bonein skinon chicken thigh; chicken thigh on the bone; chicken thigh with skin | poultry | each 170, thigh 170
05075 | chicken leg; chicken quarter; chicken leg quarter; whole chicken leg; chicken maryland; chicken leg with skin | poultry | each 250, leg 250, piece 250
05066 | chicken drumstick; drumstick; chicken drum | poultry | each 110, drumstick 110, piece 110
05100 | chicken wing; chicken wings; wing; chicken wingette | poultry | each 90, wing 90, piece 90
05006 | whole chicken; chicken whole; chicken jointed; chicken portion; chicken piece; mixed chicken piece; roasting chicken; broiler chicken; chicken with skin; frying chicken; stewing chicken; chicken joint; fryer chicken; stewing hen; broiler fryer | poultry | each 1500, small 1200, medium 1500, large 2000, piece 180
05332 | ground chicken; chicken mince; minced chicken; lean ground chicken | poultry | cup 225, packet 500
05333 cooked | = | poultry | cup 140
05027 | chicken liver; chicken livers; poultry liver; duck liver | poultry | each 44, cup 225, tub 400
05020 | giblet; chicken giblet; chicken gizzard; chicken heart | poultry | each 75
05307 | cornish hen; cornish game hen; poussin; game hen; spatchcock | poultry | each 450
05165 | whole turkey; turkey | poultry | each 5000
05219 | turkey breast; turkey breast fillet; turkey steak; turkey fillet; turkey escalope; turkey cutlet; turkey tenderloin; turkey breast cutlet; boneless turkey breast; turkey breast steak; diced turkey | poultry | each 150, slice 60, breast 900, steak 125, cup 140, cutlet 110, fillet 150
05220 cooked | = ; roast turkey; cooked turkey; leftover turkey; turkey; deli baked turkey; turkey meat; sliced roast turkey; roasted turkey | poultry | cup 140, slice 28
07081 | sliced turkey; deli turkey; turkey slice; smoked turkey; turkey ham; deli baked turkey sliced; smoked turkey breast; deli turkey breast | poultry ?milk ?soy ?wheat | slice 21, packet 200
05305 | ground turkey; turkey mince; minced turkey; lean ground turkey | poultry | packet 500, cup 225
05306 cooked | = | poultry | cup 140
05740 | turkey thigh; turkey leg; turkey drumstick; turkey wing | poultry | each 367
05139 | duck; whole duck; duckling; duck leg; duck with skin; duck confit; confit duck leg; duck leg confit | poultry | each 2000, leg 250
05145 | duck breast; duck breast meat; magret | poultry | each 200, breast 200
05140 cooked | duck; roast duck | poultry | cup 140
05146 | goose; whole goose | poultry | each 4000
05157 | quail; whole quail | poultry game | each 109
05153 | pheasant; partridge; guinea fowl; grouse; guinea hen | poultry game | each 700
05160 | pigeon; squab; wood pigeon | poultry game | each 200
23572 | ground beef; minced beef; beef mince; mince; 80/20 ground beef; ground chuck; hamburger meat; 20% fat mince; mince beef; minced meat; ground meat; mincemeat beef; 80% lean ground beef | beef | packet 500, each 113, patty 113, cup 225
23573 cooked | = | beef | cup 140
23562 | lean ground beef; lean beef mince; lean minced beef; 90% lean ground beef; lean mince; extra lean ground beef; 10% fat beef mince; ground round; ground sirloin; lean minced steak; minced steak; steak mince; lean steak mince; 10% fat mince; ground beef round | beef | packet 500, cup 225
23565 cooked | = | beef | cup 140
23557 | 95% lean ground beef; 5% fat mince; 5% fat beef mince; 95% lean beef; 5% beef mince | beef | packet 500
23567 | 85% lean ground beef; 15% fat mince; 85% lean beef | beef | packet 500
23095 | stewing beef; stew beef; stew meat; beef stew meat; braising steak; stewing steak; casserole beef; diced beef; beef chuck; chuck roast; chuck steak; beef; braising beef; boneless beef chuck; shin of beef; beef shin; chuck; cross rib; boneless beef; beef shoulder; beef cube; beef shank; pot roast; beef cheek; paleron of beef; beef chuck roast; paleron; beef pot roast; stewing meat; beef stewing meat; boneless chuck; beef meat; boneless beef chuck roast; beef chuck steak; ox cheek; beef for stew; blade steak; well marbled boneless beef chuck; beef strip; lean beef; lean stewing beef | beef | packet 500, cup 225, each 1000, steak 225
13815~ cooked | cooked beef; roast beef homemade; beef; pot roast; stewing beef; beef chuck; oxtail meat; cooked beef; beef brisket; roast beef; leftover roast beef; shredded beef | beef | cup 140
13803 | beef brisket; brisket; brisket of beef | beef | each 1500
13346 | corned beef brisket; salt beef; raw corned beef; corned beef raw | beef | each 1500
13348 canned | corned beef; canned corned beef; tinned corned beef; bully beef | beef | tin 340, slice 21, cup 160
13929~ | flank steak; skirt steak; bavette; hanger steak; flank; skirt; skirt or flank steak; flat iron steak; onglet; flank steak beef | beef | each 700, steak 225
13929 | sirloin steak; sirloin; top sirloin; beef sirloin; rump steak; beef steak; steak; sirloin of beef; minute steak; beef strip steak; frying steak; rump; steak beef; sirloin tip; beef sirloin steak; top sirloin steak; thin steak; cube steak | beef | each 225, steak 225, slice 30
13909 | strip steak; new york strip; strip loin; top loin steak; new york strip steak; striploin | beef | each 300, steak 300
23202 | ribeye steak; rib eye steak; ribeye; rib eye; entrecote; scotch fillet; rib eye beef | beef | each 300, steak 300
13917 | fillet steak; filet mignon; tenderloin steak; beef fillet; beef tenderloin; fillet of beef; fillet mignon; tournedos; beef fillet steak; chateaubriand | beef | each 164, steak 164
13905 | t bone steak; porterhouse; t bone; porterhouse steak | beef | each 450, steak 450
13871 | round steak; topside; silverside; bottom round; top round; beef round; round roast; rump roast; eye of round; round of beef; topside of beef; silverside of beef; beef top round; top round steak; bottom round roast | beef | each 1200, steak 350
13147 | short rib; beef short rib; beef rib; short ribs; boneless short rib; flanken | beef | each 250, rib 250
23202~ | rib roast; prime rib; rib of beef; beef rib roast; standing rib roast | beef | each 2500
13323 | beef kidney; kidney beef; ox kidney | beef | each 400
13325 | beef liver; liver; ox liver; calf liver; calves liver; veal liver | beef | slice 85, each 400
13335 | suet; beef suet; shredded suet; fresh suet; atora | beef ?wheat | cup 120, tbsp 7.5, packet 200
13339 | beef tongue; ox tongue | beef | each 1300
13341 | tripe; beef tripe; honeycomb tripe | beef | cup 150
23095~ | oxtail; ox tail | beef | each 150, piece 150
17089 | veal; veal cutlet; veal escalope; veal shoulder; veal stew meat; stewing veal; veal shank; osso buco; boneless veal shoulder; veal scallopine; diced veal; veal chop; veal loin; veal breast; veal leg; scallopine of veal | beef | each 110, cutlet 55, shank 350, chop 200
17142 | ground veal; veal mince; minced veal | beef | packet 500
17330 | ground bison; bison; buffalo; bison mince; buffalo meat | beef game | packet 454
17224 | ground lamb; lamb mince; minced lamb; mutton mince | lamb | packet 500, cup 225
17225 cooked | = | lamb | cup 140
17011 | leg of lamb; lamb leg; lamb; lamb steak; lamb leg steak; boneless leg of lamb; lamb rump; lamb fillet; diced lamb; boneless lamb; lamb meat; lamb cube; lamb shoulder fillet; butterflied leg of lamb; lean lamb; mutton; stewing lamb | lamb | each 1800, steak 150, cup 225, leg 1800
17035 | lamb shoulder; shoulder of lamb; lamb neck; lamb neck fillet; boneless lamb shoulder; lamb stew meat; boneless shoulder of lamb; neck of lamb; lamb scrag; lamb stewing meat | lamb | each 1500
17023 | lamb chop; lamb loin chop; lamb cutlet; loin chop lamb; rack of lamb; lamb rib chop; lamb loin | lamb | each 100, chop 100, cutlet 75, rack 450
17007 | lamb shank; shank lamb | lamb | each 350, shank 350
17195 | lamb kidney; lambs kidney | lamb | each 50
17199 | lamb liver; lambs liver | lamb | slice 50
17168 | goat; goat meat; kid goat; diced goat; goat shoulder | lamb | cup 225
10219 | ground pork; pork mince; minced pork; finely ground pork; lean ground pork; finely ground pork with a little fat | pork | packet 500, cup 225
10220 cooked | = | pork | cup 140
10218 | pork tenderloin; pork fillet; fillet of pork; pork loin fillet; pork medallion | pork | each 454
10062 | pork chop; boneless pork chop; pork loin chop; pork loin steak; pork steak; pork escalope; pork cutlet; boneless pork loin chop; pork loin cutlet | pork | each 170, chop 170, steak 170, cutlet 110
10036 | bone in pork chop; bonein pork chop | pork | each 230, chop 230
10020 | pork loin; loin of pork; pork roast; pork; diced pork; boneless pork; pork loin roast; lean pork; pork strip; pork meat; boneless pork loin; pork leg; leg of pork; pork joint; pork cube; boneless stewing pork; stewing pork | pork | each 1200, cup 225
10070 | pork shoulder; pork butt; boston butt; pork shoulder steak; shoulder of pork; boneless pork shoulder; boneless pork butt; pork neck; picnic shoulder; pork collar; pork shoulder roast; pulled pork raw; pork stew meat; pork stewing meat | pork | each 1800
10221~ cooked | pork; pulled pork; pork shoulder; roast pork; pork loin; char siu; leftover roast pork; carnitas | pork | cup 140, slice 45
10005 | pork belly; belly pork; pork belly slice; slab pork belly; fresh pork belly | pork | slice 100, each 1000, piece 100
10088 | pork sparerib; spare rib; pork rib; sparerib; baby back rib; pork spare rib; rack of rib; pork back rib; ribs | pork | each 80, rack 900, rib 80
10004 | pork back fat; pork fat; fatback; back fat; pork fatback | pork | cup 205, slice 30
10110 | pork liver; pig liver | pork | slice 50
10106 | pork kidney | pork | each 233
10165~ | pig trotter; pig foot; pig feet; pork trotter | pork | each 450
10123 | bacon; streaky bacon; back bacon; bacon rasher; smoked bacon; thick cut bacon; unsmoked bacon; bacon lardon; lardon; bacon strip; sliced bacon; slab bacon; smoked streaky bacon; smoked back bacon; bacon slice; lardons; uncooked bacon; applewood smoked bacon; center cut bacon; thick sliced bacon; rindless bacon; smoky bacon | pork ?sulphites | slice 28, rasher 28, each 28, strip 28, slice thick 35, cup 145, packet 340, slab 500
10862 cooked | bacon; crispy bacon; crumbled bacon; bacon slice; cooked bacon | pork ?sulphites | slice 8, rasher 8, each 8, cup 80, tbsp 7
10123 | pancetta; guanciale; diced pancetta; sliced pancetta; cubed pancetta; smoked pancetta; speck | pork ?sulphites ?milk | slice 12, cup 140, packet 150
10130 | canadian bacon; gammon steak; gammon; peameal bacon; gammon joint; bacon joint | pork ?sulphites | slice 28, steak 225, each 225
10165 | salt pork; salted pork | pork | cup 180, slice 30
07254 | turkey bacon; turkey rasher | poultry ?milk ?soy ?wheat | slice 16, rasher 16, each 16
10182 | ham; smoked ham; boiled ham; deli ham; sliced ham; baked ham; ham slice; honey ham; ham steak; black forest ham; ham cube; country ham; diced ham; deli baked ham; wiltshire ham; cooked ham; jambon; thick sliced ham; roast ham | pork ?milk ?soy ?wheat ?honey | slice 28, cup 140, steak 225, each 28, packet 120
07071~ | coppa; capicola; capocollo; lonza | pork | slice 15, each 15, packet 80
07019 | chorizo; cooking chorizo; spanish chorizo; chorizo sausage; cured chorizo; smoked chorizo; dry chorizo; chorizo ring; firm smoked chorizo; linguica; andouille cured; spanish chorizo sausage | pork nightshade ?milk ?soy ?wheat ?sulphites ?beef | each 60, link 60, slice 5, ring 225, cup 120, piece 60, sausage 60
07019~ | mexican chorizo; fresh chorizo; bulk pork chorizo; fresh chorizo sausage; raw chorizo; pork chorizo; raw chorizo sausage | pork nightshade ?milk ?soy ?wheat ?sulphites | each 60, link 60
07036 | pork sausage; italian sausage; hot italian sausage; sweet italian sausage; mild italian sausage; pork sausage; sausage; sausage meat; sausagemeat; pork sausage meat; breakfast sausage; bulk pork sausage; cumberland sausage; bulk sausage; raw sausage; lincolnshire sausage; toulouse sausage; fresh sausage; banger; bulk italian sausage; salsiccia; country sausage; spicy italian sausage | pork ?wheat ?milk ?soy ?sulphites ?mustard ?celery ?egg ?barley | each 67, link 75, large 91, small 28, sausage 67, packet 454, patty 45
07036 | chipolata; breakfast sausage link; breakfast link; pig in blanket sausage | pork ?wheat ?milk ?soy ?sulphites ?mustard ?celery ?egg ?barley | each 30, link 30
07089 cooked | pork sausage; italian sausage; sausage; hot italian sausage; sweet italian sausage; breakfast sausage | pork ?wheat ?milk ?soy ?sulphites ?mustard ?celery ?egg ?barley | each 67, link 67, cup 130
07955 | turkey sausage; chicken sausage; chicken sausage raw; turkey italian sausage; chicken apple sausage; italian turkey sausage; italian chicken sausage | poultry ?pork ?wheat ?milk ?soy ?sulphites ?mustard ?celery | each 85, link 85
17224~ | merguez; lamb sausage; merguez sausage | lamb nightshade ?beef ?wheat ?milk ?soy ?sulphites ?mustard | each 60, link 60
07970 | kielbasa; polish sausage; smoked sausage; smoked kielbasa; smoked pork sausage; cabanossi; kabanos; cajun sausage; kielbasa sausage; farmers sausage | pork ?beef ?poultry ?wheat ?milk ?soy ?sulphites ?mustard ?celery | each 340, link 340, slice 10, ring 340, cup 135
07970~ | andouille; andouille sausage; cajun andouille; andouille or kielbasa sausage | pork ?beef ?wheat ?milk ?soy ?sulphites ?mustard ?celery | each 85, link 85, cup 135, slice 8
07013 | bratwurst; brat; weisswurst; knackwurst; bockwurst | pork ?beef ?wheat ?milk ?egg ?soy ?sulphites ?mustard ?celery | each 85, link 85
07949 | frankfurter; hotdog; wiener; frank; hot dog; vienna sausage; hotdog sausage; cocktail sausage; frankfurter sausage | ?pork ?beef ?poultry meat ?wheat ?milk ?soy ?mustard ?celery ?sulphites ?egg | each 52, packet 400, link 52, tin 400
07022 | beef frankfurter; beef hotdog; all beef hotdog | beef ?wheat ?milk ?soy ?mustard ?celery ?sulphites | each 50
07005 | black pudding; blood sausage; morcilla; boudin noir; blood pudding | pork ?oats ?barley ?wheat ?milk ?soy ?mustard ?sulphites ?celery ?allium | slice 25, each 200, ring 200
10219~ | haggis | meat lamb oats ?beef ?wheat ?barley ?milk ?allium | slice 30, packet 454
10219~ | white pudding; scrapple; faggot; meatloaf mixture | meat ?pork ?beef ?lamb ?oats ?wheat ?milk ?celery ?barley ?mustard ?allium | slice 30, packet 454
07972 | meatball; frozen meatball; italian meatball; beef meatball; swedish meatball; pork meatball; ikea meatball | meat ?pork ?beef ?wheat ?milk ?egg ?soy ?celery ?mustard | each 20, packet 350
07072 | salami; genoa salami; hard salami; salami slice; soppressata; dried sausage; saucisson; milano salami; italian salami; dry salami; fuet; saucisson sec; summer sausage; landjager; dry sausage | pork ?beef ?milk ?soy ?wheat ?sulphites ?mustard | slice 9.8, packet 100, each 10, cup 120
07057 | pepperoni; pepperoni slice; sliced pepperoni; pepperoni sausage; nduja; mini pepperoni | pork nightshade ?beef ?milk ?soy ?wheat ?sulphites ?mustard | slice 2, each 2, cup 110, packet 170, stick 250
07050 | mortadella; bologna; bologna sausage; lyoner; fleischwurst; baloney | pork ?beef ?pistachio ?milk ?soy ?wheat ?sulphites ?mustard ?celery | slice 28, each 28
07045 | luncheon meat; spam; pork luncheon meat; tinned ham; canned ham; chopped ham canned | pork ?milk ?soy ?wheat ?sulphites ?celery | tin 340, slice 30, can 340
13355 | pastrami; beef pastrami; pastrami beef | beef ?mustard ?milk ?soy ?wheat | slice 28
07043 | deli roast beef; sliced roast beef; roast beef slice; roast beef deli; roast beef; rare roast beef | beef ?wheat ?soy ?milk ?mustard | slice 21, packet 200
19002 | beef jerky; jerky; biltong; dried beef jerky; dried beef; meat jerky | beef ?soy ?wheat ?sulphites ?mustard ?celery | piece 20, each 20, packet 30, cup 90
13350 | chipped beef; dried chipped beef; dried beef slice | beef | slice 2.8, jar 64
19041 | pork rind; pork crackling; pork scratching; chicharron; pork skin | pork ?wheat ?milk | cup 15, packet 70, handful 15
07041 | liverwurst; liver sausage; braunschweiger; leberwurst | pork ?wheat ?milk ?soy ?mustard ?celery ?egg | slice 18, tbsp 15
07055 | pate; liver pate; chicken liver pate; chicken liver vinaigrette; foie gras; liver parfait; country pate; pork pate; duck pate | meat ?pork ?poultry milk ?egg ?wheat ?mustard ?celery ?sulphites ?soy | tbsp 13, slice 50, tin 113
17164 | venison; deer; diced venison; venison steak; venison haunch; reindeer; deer meat; venison loin; moose; elk; venison shoulder | game | each 150, steak 150, cup 225
17343 | ground venison; venison mince; minced venison; ground deer | game | packet 400
17177 | rabbit; whole rabbit; rabbit piece; hare; diced rabbit; rabbit leg | game | each 1000
17158 | wild boar; boar; wild boar meat | game pork | each 150
05641 | ostrich; ground ostrich; ostrich mince; ostrich steak; emu; kangaroo; kangaroo mince; horse meat; alligator | game | each 150
10936 | ham hock; smoked ham hock; ham shank; gammon hock; ham bone | pork ?sulphites | each 450, piece 450
10936~ | pork hock; pork knuckle; eisbein | pork | each 450, piece 450
10141~ | prosciutto; serrano ham; parma ham; jamon serrano; jamon; iberico ham; bayonne ham; cured ham; prosciutto di parma; dry cured ham; jamon iberico | pork | slice 15, each 15, packet 80
10141~ | bresaola | beef | slice 8, packet 80
22975 | chicken nugget; chicken nuggets; nugget | poultry wheat ?egg ?milk ?soy ?mustard ?celery ?sulphites | each 20, piece 20, packet 450
`;
