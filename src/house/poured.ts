import { type CampGood, scaledGoods } from '#core/camp.ts';
import { type BatchFacts, expectedMlPerDryG, pouchFacts } from '#core/meal.ts';
import type { Batch, Pouch } from '#core/records.ts';
import { Refusal } from '#core/refusal.ts';
import { unsound } from '#core/seal-check.ts';
import { foundLines } from '#words/found-words.ts';
import { sayBatch, sayCode, sayCodes, sayG, sayNumber } from '#words/say.ts';
import type { House } from './house.ts';
import { correctionFor, learntWords } from './corrections.ts';
import { dryOf } from './dryness.ts';
import { batchNumbered, driedFacts, factsOfBatch, factsOfRecipe, freeStock, recipeNamed } from './figures.ts';
import { type MealShown, mealOfBatch, mealOfRecipe } from './verdicts.ts';
import { mixWater } from '#words/mixed-words.ts';
import { howBatchEaten, howEaten, type HowEaten } from './eating.ts';
import { soakOf, type Soak } from './soaking.ts';

/** Water for one pouch or weight. */
export interface Poured {
  /** What the water is for: a pouch's code and weight, or a weight of a meal. */
  readonly what: string;
  readonly waterMl: number;
  /** Dried raw: soaked, then cooked. */
  readonly isRaw: boolean;
  readonly eaten: HowEaten;
  /** Somebody rated the meal: its figure is no longer by weight alone. */
  readonly isRated: boolean;
  readonly soak: Soak;
  /** In the pouch, g. */
  readonly dryG: number;
  /** Added when it is eaten. */
  readonly camp: readonly CampGood[];
}

/** Water figures with where they come from, what to heed and whom the meals concern. */
export interface PouredFigures {
  readonly poured: readonly Poured[];
  /** Where the figure comes from. */
  readonly why: readonly string[];
  readonly cautions: readonly string[];
  readonly meals: readonly MealShown[];
}

function becauseOf(house: House, batch: Batch, facts: BatchFacts & { dryG: number }): string {
  const g = (value: number) => sayG(value, house.settings.units);
  const perG = (facts.wetG - facts.dryG) / facts.dryG;
  if (batch.mix)
    return [
      mixWater(batch, batch.mix, house.settings.units),
      ...learntWords(correctionFor(house, batch)),
    ].join(' ');
  const balance = `B${batch.no} gave up ${g(facts.wetG - facts.dryG)} of water for ${g(facts.dryG)} dry: ${perG.toFixed(2)} ml for each g.`;
  return [balance, ...learntWords(correctionFor(house, batch))].join(' ');
}

function cautionsOf(pouches: readonly Pouch[], zone = 'UTC'): string[] {
  const unchecked = pouches.filter((pouch) => !pouch.shownDry && pouch.state === 'stock');
  return [
    ...(unchecked.length > 0
      ? [
          `${sayCodes(unchecked)}: unchecked, not shown to be dry when sealed. Eat only if it was kept frozen.`,
        ]
      : []),
    ...pouches.flatMap((p) => (unsound(p.found) === null ? [] : foundLines(p, zone))),
    ...pouches.filter((p) => p.state !== 'stock').map((p) => `${sayCode(p)} is recorded as ${p.state}.`),
  ];
}

/** Water, and what is added at camp. */
function pouredOf(
  dryG: number,
  facts: BatchFacts & { dryG: number },
  correction: number,
): Pick<Poured, 'waterMl' | 'camp'> {
  const { waterMl, camp } = pouchFacts(dryG, facts, correction);
  return { waterMl, camp };
}

/** What each of these pouches takes. */
export function forPouches(house: House, pouches: readonly Pouch[]) {
  const batches = [...new Set(pouches.map((pouch) => pouch.batch))].map((no) => batchNumbered(house, no));
  const facts = new Map(batches.map((batch) => [batch.no, driedFacts(house, batch)]));
  const batchOf = (pouch: Pouch) => batches.find(({ no }) => no === pouch.batch)!;
  return {
    poured: pouches.map((pouch) => ({
      what: `${sayCode(pouch)} (${sayG(pouch.dryG, house.settings.units)} ${pouch.meal})`,
      ...pouredOf(pouch.dryG, facts.get(pouch.batch)!, correctionFor(house, batchOf(pouch)).correction),
      isRaw: batchOf(pouch).isRaw,
      eaten: howBatchEaten(house, batchOf(pouch)),
      isRated: correctionFor(house, batchOf(pouch)).ratings > 0,
      soak: soakOf(house, batchOf(pouch)),
      dryG: pouch.dryG,
    })),
    why: batches
      .filter((batch) => !howBatchEaten(house, batch).isDry)
      .map((batch) => becauseOf(house, batch, facts.get(batch.no)!)),
    cautions: cautionsOf(pouches, house.settings.zone),
    meals: batches.map((batch) => mealOfBatch(house, batch.no)),
  };
}

/** A batch's code without a pouch: a weight of it, or all that is still sealed. */
export function forBatch(
  house: House,
  no: number,
  dryG: number | undefined,
  people: number | undefined,
  count: number | undefined,
) {
  const batch = batchNumbered(house, no);
  if (dryG === undefined) {
    const pouches = house.pouches.ofBatch(no).filter((pouch) => pouch.state === 'stock');
    if (pouches.length === 0)
      throw new Refusal(
        'nothing-sealed',
        `No pouch of ${sayBatch(batch)} is in stock. Say a weight: 180 g ${sayBatch(batch)}.`,
      );
    return forPouches(house, enough(house, pouches, people, count));
  }
  return ofDried(
    house,
    batch,
    driedFacts(house, batch),
    dryG,
    `${sayG(dryG, house.settings.units)} of ${sayBatch(batch)}, ${batch.recipe.name}`,
  );
}

/** A weight of a batch that was dried, with the figure it stands on. */
function ofDried(
  house: House,
  batch: Batch,
  facts: BatchFacts & { dryG: number },
  dryG: number,
  what: string,
) {
  const { correction } = correctionFor(house, batch);
  return {
    poured: [
      {
        what,
        ...pouredOf(dryG, facts, correction),
        isRaw: batch.isRaw,
        eaten: howBatchEaten(house, batch),
        isRated: correctionFor(house, batch).ratings > 0,
        soak: soakOf(house, batch),
        dryG,
      },
    ],
    why: [becauseOf(house, batch, facts)],
    cautions: cautionsOf([]),
    meals: [mealOfBatch(house, batch.no)],
  };
}

/** The newest batch of a meal that was dried, with its facts. */
function newestDried(house: House, name: string) {
  const recipe = recipeNamed(house, name);
  for (const batch of house.batches.ofMeal(recipe.id)) {
    const facts = factsOfBatch(house, batch);
    if (facts.dryG !== null && dryOf(house, batch, facts).is === 'dry')
      return { recipe, batch, facts: { ...facts, dryG: facts.dryG } };
  }
  return { recipe };
}

/** A weight of a meal: by its newest dried batch, else what its recipe predicts. */
export function forWeight(house: House, name: string, dryG: number) {
  const { recipe, batch, facts } = newestDried(house, name);
  const what = `${sayG(dryG, house.settings.units)} ${name}`;
  if (batch) return ofDried(house, batch, facts, dryG, what);
  const expected = factsOfRecipe(house, recipe);
  const wholeDryG = expected.totals.solidsG / (1 - house.settings.residualMoisture);
  const perG = expectedMlPerDryG(expected, house.settings.residualMoisture);
  const eaten = howEaten(house, recipe);
  if (perG === undefined)
    throw new Refusal(
      'no-water-figure',
      `${name} was never dried here, and its recipe gives no figure: no line of it is understood.`,
    );
  return {
    poured: [
      {
        what,
        waterMl: eaten.isDry ? 0 : dryG * perG,
        isRaw: false,
        eaten,
        isRated: false,
        soak: soakOf(house, { recipe }),
        dryG,
        camp: scaledGoods(expected.camp, dryG / wholeDryG),
      },
    ],
    why: [
      `Expected, not measured: no batch of it is dry yet; its recipe predicts ${perG.toFixed(2)} ml for each g.`,
    ],
    cautions: [],
    meals: [mealOfRecipe(recipe, factsOfRecipe(house, recipe))],
  };
}

/** Pouches of a meal for so many people, oldest best-by first; the meal's own figures when stock cannot. */
export function forMeal(house: House, name: string, people: number | undefined, count: number | undefined) {
  const pouches = freeStock(house, name).filter((pouch) => pouch.checked);
  if (pouches.length > 0) return forPouches(house, enough(house, pouches, people, count));
  if (people === undefined)
    throw new Refusal(
      'none-in-stock',
      `No pouch of ${name} that was shown to be dry is in stock. Name a pouch by its code, or say for how many: /water ${name} for 3.`,
    );
  const { recipe, batch, facts } = newestDried(house, name);
  const recipeFacts = factsOfRecipe(house, recipe);
  const servingDryG = batch
    ? facts.dryG / facts.servings
    : recipeFacts.totals.solidsG / (1 - house.settings.residualMoisture) / recipe.servings;
  const answer = forWeight(house, name, people * servingDryG);
  return {
    ...answer,
    why: [
      `None is in stock; ${sayNumber(people)} servings are about ${sayG(people * servingDryG, house.settings.units)} dry.`,
      ...answer.why,
    ],
  };
}

/** The first pouches that hold so many servings, or so many pouches. */
function enough(
  house: House,
  pouches: readonly Pouch[],
  people: number | undefined,
  count: number | undefined,
): Pouch[] {
  if (count !== undefined) {
    if (count > pouches.length)
      throw new Refusal(
        'too-few',
        `Only ${pouches.length} of ${count} pouches of ${pouches[0]!.meal} are in stock: ${sayCodes(pouches)}.`,
      );
    return pouches.slice(0, count);
  }
  if (people === undefined) return pouches.slice(0, 1);
  const chosen: Pouch[] = [];
  let fed = 0;
  for (const pouch of pouches) {
    if (fed >= people - 0.05) break;
    chosen.push(pouch);
    fed += pouchFacts(pouch.dryG, driedFacts(house, batchNumbered(house, pouch.batch))).servings;
  }
  if (fed < people - 0.05) {
    throw new Refusal(
      'too-few-servings',
      `The ${chosen.length} pouches of ${pouches[0]!.meal} in stock hold ${sayNumber(fed)} servings, not ${sayNumber(people)}: ${sayCodes(chosen)}.`,
    );
  }
  return chosen;
}
