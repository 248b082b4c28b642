import { besideLine, likeMeal } from '#cards/beside-bought.ts';
import { command } from '#chat/command.ts';
import { bring } from '#house/bringing.ts';
import { factsOfBatch } from '#house/figures.ts';
import type { House } from '#house/house.ts';
import { usesOf } from '#house/occasions.ts';
import { pouchQuestions } from '#house/packet-questions.ts';
import { mealOfBatch } from '#house/verdicts.ts';
import { sayBought, shelfLines } from '#cards/bought-words.ts';
import { type BringTold, brought } from '#words/bring-parts.ts';
import { sayOccasions } from '#words/occasion-words.ts';
import { containsLines, containsWhy } from '#words/phrases.ts';
import { sayCodes, sayCount, sayG } from '#words/say.ts';

export default command({
  name: 'bring',
  alsoCalled: ['bought', 'shelf'],
  usage: '/bring <count> <what> <weight of one> [kcal, sodium, water] [contains …] [best by …] · /bring',
  summary: 'food for trips that was bought: bars, tortillas, coffee, a ready meal; counted in pieces',
  examples: [
    '/bring 6 oat bars 60 g 250 kcal 90 mg sodium contains oats, may contain nuts',
    '/bring 12 tortillas 62 g each best by 2027-06',
    '/bring trail lasagne 130 g, 560 kcal, 1480 mg sodium, 350 ml boiling water, contains wheat, milk, best by 2029-05',
    '/bring',
  ],
  help: [
    'A panel may stand below, in the order of either law. What the packet does not say is unknown, and unknown is never served to whom it matters.',
    'A piece goes by its code like a pouch: /use S6-1, /pouch S6-1, /discard S6-2 lost; "we ate two oat bars" does too.',
  ],
  records: true,
  takes: { told: brought },
  run: ({ told }, house) => (told.is === 'list' ? { shelf: shelfLines(house) } : bringing(house, told)),
  say: (told) => {
    if ('shelf' in told)
      return {
        group:
          told.shelf.length === 0
            ? 'Nothing bought is in stock. To record some: /bring 6 oat bars 60 g each, contains oats'
            : told.shelf.join('\n'),
      };
    const { lines, why, did, meal, buttons } = told;
    return {
      group: lines.join('\n'),
      why,
      did,
      meals: [meal],
      notesTell: 'verdicts',
      ...(buttons.length === 0 ? {} : { buttons }),
    };
  },
});

function bringing(house: House, told: BringTold) {
  const { batch, pouches, from } = bring(house, told);
  const facts = factsOfBatch(house, batch);
  const { units } = house.settings;
  const beside = likeMeal(house, batch);
  const pieces = `${sayCount(told.count, 'piece')} of ${sayG(facts.dryG!, units)}`;
  const uses = usesOf(house, batch.recipe);
  const sources = {
    packet: 'Its figures are as its packet says; what it did not say, as the food table has it.',
    table: 'Its figures are those of the food table, until its panel is told.',
    nobody: 'Nobody told its energy or sodium, and no table knows it.',
  };
  return {
    lines: [
      `In stock: ${batch.recipe.name}, ${pieces}: ${sayCodes(pouches)}.`,
      ...sayBought(house, batch),
      ...containsLines(facts.recipe),
    ],
    why: [
      ...(beside ? besideLine(house, batch, beside) : []),
      sources[from],
      ...containsWhy(facts.recipe),
      `For ${sayOccasions(uses.is)}${uses.from === 'told' ? '' : `, as I guess; "${batch.recipe.name.toLowerCase()} is for breakfast" would change it`}.`,
    ],
    did: `brought ${batch.recipe.name}, ${pieces}: ${sayCodes(pouches)}`,
    meal: mealOfBatch(house, batch.no),
    buttons: pouchQuestions(house, [batch.recipe]),
  };
}
