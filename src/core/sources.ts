/** Every publication a figure rests on, once: key → citation. Docblocks name the key as `@source key`. */
export const sources = {
  'aiche-air': 'AIChE CCPS process safety glossary, Air: composition of dry air',
  'biosystems-barrier':
    'Biosystems Engineering, Table 11.2: oxygen permeability of packaging films, as read in an excerpt',
  'boletus-2005':
    'J. Sci. Food Agric. 85 (2005) 1397: rehydration of air-dried Boletus edulis, activation energy 19.2 kJ/mol',
  'cfr-101-61':
    '21 CFR 101.61, sodium claims, after National Academies, Strategies to Reduce Sodium Intake, Table 7-1',
  'cfr-101-9': '21 CFR 101.9(b)(5)(viii), household measures on U.S. food labels',
  'choi-okos-1986':
    'Choi & Okos, Effects of temperature and composition on the thermal properties of foods (1986); coefficients from memory',
  'danao-nebraska':
    'M.-G. Danao, University of Nebraska-Lincoln Food Processing Center, interview on home freeze drying, read in a copy',
  'dietary-guidelines-2015':
    'Dietary Guidelines for Americans 2015-2020, Appendix 2, Table A2-1; rows from 21 years from memory',
  'dla-rations-2016':
    'U.S. Defense Logistics Agency (2016), shelf life of group rations at 80 and 100 °F, read cut short',
  'dri-energy-2002':
    'Dietary Reference Intakes for Energy (2002/2005), estimated energy requirements at 30 years, read as repeated in a textbook',
  'eu-annex-ii':
    'Regulation (EU) 1169/2011, Annex II, as listed by the University of Reading, Food Labelling in the UK',
  'eu-annex-xiv':
    'Regulation (EU) 1169/2011, Annex I (salt), XIV (factors) and XV (order), read as repeated by Bryant Research and in a French consolidated text',
  'fda-allergens-2025':
    'U.S. FDA, Food allergen labeling guidance, 5th edition (2025), and its tree nut table',
  'fda-bad-bugs-1992':
    'U.S. FDA, Bad Bug Book (1992): least water activity for growth, as read in a collection of excerpts',
  'fda-daily-values': 'U.S. FDA, Daily Values of the 2016 Nutrition Facts rule; Sodium in Your Diet',
  'foil-maker': "A pouch maker's sheet: oxygen through PET/foil/LDPE, as read",
  'foods-2021-302': 'Bacillus cereus in rice, Foods 10 (2021) 302, as named in a list of readings',
  'iapws-if97': 'IAPWS R7-97(2012), Industrial Formulation 1997 for water and steam, region 4',
  'illinois-meat-safety': 'University of Illinois Extension, Meat Safety: holding',
  'iowa-answerline-2021':
    'Iowa State University Extension, AnswerLine: freeze drying as a home preservation option (2021)',
  'irri-moisture': 'IRRI Rice Knowledge Bank, Moisture content calculations',
  'iupac-weights': 'IUPAC standard atomic weights of sodium and chlorine; from memory',
  'krokida-1998':
    'Krokida et al., Journal of Food Engineering 35 (1998) 369-380: porosity of freeze-dried food, 70 to 95 %',
  'labuza-q10':
    'Labuza & Schmidl, Accelerated shelf-life testing of foods (1985); bands after Labuza (1982) from memory',
  'lower-heating-values':
    'Moran & Shapiro, Fundamentals of Engineering Thermodynamics, Table A-25; GREET data; NIST Chemistry WebBook',
  'nasa-2014':
    'Cooper & Douglas, NASA NTRS 20140012829 (2014): many packed menu items do not hold beyond two years',
  'nasem-2019':
    'NASEM, Dietary Reference Intakes for Sodium and Potassium (2019), read as repeated on public pages',
  'nist-sp811': 'NIST Special Publication 811, Appendix B, temperature; from memory',
  'oxygen-free-leaflet':
    'Home storage leaflet (2007) warning of botulism above about 10 % moisture in reduced-oxygen packs, read in a copy',
  'phe-400-600-600':
    'Public Health England (6 March 2018), One You: 400-600-600 kcal of 2,000 kcal a day, press release',
  'pilsworth-1972':
    'M. N. Pilsworth, U.S. Army Natick Laboratories, AD0769592 (1972): the weight of freeze-drying beef falls as a quadratic in time, the ice core lasts until about 4 % of the dry weight',
  'ration-method': 'Rumble, Oliver & Finke, Cooking in the Outdoors: pounds of food a person-day',
  'robin-2004':
    'A. C. Robin, Paper Bag Problem, Mathematics Today 40 (2004) 104-107; the formula read in an encyclopaedia',
  'slab-copy':
    'Freeze-drying of slabs: 12.5 mm of 75 to 85 % water in 14 to 18 h, in proportion to the square of the depth; read in a copy without title or year',
  'us-atmosphere-1976': 'U.S. Standard Atmosphere, 1976',
  'us-customary': 'NIST Weights and Measures, exact equivalents of U.S. customary units',
  'usda-sr28': 'USDA National Nutrient Database for Standard Reference, Release 28 (2015)',
  'water-heat':
    'Specific heat of saturated liquid water, engineering table; heat of fusion after the CRC Handbook, from memory',
} as const;

export type SourceKey = keyof typeof sources;
