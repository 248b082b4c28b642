import { Refusal } from '#core/refusal.ts';
import type { Choice } from '#core/talk.ts';
import { packetLarder } from '#foods/packet-things.ts';
import type { Packet } from '#store/packets.ts';
import { readPacket } from '#words/packet-parts.ts';
import { Ambiguous } from '#words/reading.ts';
import type { PacketAsked } from '#words/packet-request.ts';
import type { PanelAsked } from '#words/panel-parts.ts';
import { sayList, sayNumber } from '#words/say.ts';
import { brokenAnywhere } from './broken.ts';
import { factsOfRecipe, recipeNamed } from './figures.ts';
import type { House } from './house.ts';
import { panelLine, readPanelOf } from './own-foods.ts';
import { openLines, pouchQuestions, wordingsOf } from './packet-questions.ts';
import { applyPacket, packetLine, readOf, readPacketOf, recipesFor, warnEverywhere } from './packets.ts';
import { type MealShown, mealOfRecipe } from './verdicts.ts';

/** What came of a message about a packet or of teaching. */
export interface Outcome {
  readonly lines: readonly string[];
  readonly did?: string | undefined;
  readonly buttons?: Choice[];
  readonly meals?: MealShown[];
  /** Nothing is recorded, and something is said all the same. */
  readonly asks?: boolean;
}

/** What somebody read on a packet, and where it holds. */
export function packetTold(house: House, asked: PacketAsked, isSure: boolean): Outcome {
  if (asked.is === 'later')
    return {
      lines: [
        `Then the small print of ${asked.food} stays unknown, and unknown is not served to whom it matters.`,
      ],
      asks: true,
    };
  if (asked.is === 'applied') {
    const read = readOf(house, asked.food);
    const recipes = asked.meal === null ? recipesFor(house, read) : [recipeNamed(house, asked.meal)];
    const changed = recipes.flatMap((recipe) => {
      const at = applyPacket(house, recipe, read);
      return at.length > 0 ? [`${recipe.name}, line ${at.join(', ')}`] : [];
    });
    if (changed.length === 0)
      throw new Refusal('changes-nothing', `The packet of ${read.called} changes no line there.`);
    const did = `put the packet of ${read.called} into ${sayList(recipes.map(({ name }) => name))}`;
    return {
      lines: [`${sayList(changed)}: counted as the packet of ${read.called} says.`, ...brokenAnywhere(house)],
      did,
      meals: recipes.map(({ name }) => shownMeal(house, name)),
    };
  }
  if (asked.is === 'none') return noneOf(house, asked.meal, asked.what);
  const { told, meal, alone, typed } = asked;
  const { packet, idle } = readPacketOf(house, told, isSure, (food) => typed.replace(told.food, food));
  if (!alone) house.packets.keep(packet);
  const warned = alone ? [] : warnEverywhere(house, packet);
  const at = meal === null ? [] : applyTo(house, meal, packet);
  if (alone && at.length === 0)
    throw new Refusal('changes-nothing', `${meal} has no ${packet.called} whose small print that settles.`);
  const others = alone ? [] : recipesFor(house, { packet });
  return {
    lines: [
      `Noted: ${packetLine(house, packet)}.${alone ? ` For ${meal} alone.` : ''}`,
      ...(at.length > 0 ? [`It holds in ${meal}, line ${at.join(', ')}.`] : []),
      ...(idle.length > 0 ? [`"No ${sayList(idle)}" settles nothing: it names a part of an allergen.`] : []),
      ...(warned.length > 0 ? [`What it holds or may hold counts at once in ${sayList(warned)}.`] : []),
      ...(others.length > 0
        ? [`What it clears is not used yet in ${sayList(others.map(({ name }) => name))}, recorded before.`]
        : []),
      ...(at.length + warned.length > 0 ? brokenAnywhere(house) : []),
    ],
    did: `read the packet of ${packet.called}${meal === null ? '' : ` for ${meal}`}`,
    buttons: [
      ...(meal === null ? [] : pouchQuestions(house, wordingsOf(house, meal))),
      ...useIn(
        packet.called,
        others.map(({ name }) => name),
      ),
    ],
    meals: meal === null ? [] : [shownMeal(house, meal)],
  };
}

/** In a meal's recipe of today, and in the older ones that pouches in stock were cooked from. @returns lines of today's */
function applyTo(house: House, meal: string, packet: Packet): number[] {
  const [today = [], ...older] = wordingsOf(house, meal).map((recipe) =>
    applyPacket(house, recipe, { packet }),
  );
  return today.length > 0 ? today : older.flat();
}

/** All packets of a meal of which something is open hold none of it, by one tap of a grown-up. */
function noneOf(house: House, meal: string, what: string): Outcome {
  const open = wordingsOf(house, meal).flatMap(({ lines }) =>
    house.eaters.here().flatMap((eater) => openLines(eater, lines).filter((one) => one.open === what)),
  );
  const foods = [...new Set(open.map(({ food }) => food))];
  if (foods.length === 0)
    throw new Refusal('nothing-open', `Of no packet in ${meal} it is open whether ${what} is in it.`);
  if (!house.tapped)
    throw new Ambiguous(`Is there no ${what} in ${sayList(foods)}? Nothing is changed yet.`, [
      { label: `I read all ${foods.length}: no ${what}`, request: `packets in ${meal} contain no ${what}` },
    ]);
  for (const food of foods) {
    const told = readPacket(`${food} contains no ${what}`, packetLarder);
    if (told === undefined) throw new Refusal('no-such-food', `I cannot tell which packet ${food} is.`);
    const { packet } = readPacketOf(house, told, false, (one) => `${one} contains no ${what}`);
    house.packets.keep(packet);
    applyTo(house, meal, packet);
  }
  return {
    lines: [
      `Noted: no ${what} in ${sayList(foods)}, read by ${house.member.name}.`,
      ...brokenAnywhere(house),
    ],
    did: `read ${foods.length} packets of ${meal}: no ${what}`,
    buttons: pouchQuestions(house, wordingsOf(house, meal)),
    meals: [shownMeal(house, meal)],
  };
}

/** The panel of a packet counts from now on; recipes recorded before are offered it. */
export function panelTold(house: House, { told: panel, typed }: PanelAsked): Outcome {
  const own = readPanelOf(house, panel, (food) => typed.replace(panel.food, food));
  if (panel.packG !== null)
    house.learnt.learnMeasure({ unit: 'packet', food: own.called, grams: panel.packG, ml: null });
  return {
    lines: [
      `Noted: ${panelLine(house, own)}.`,
      ...(panel.isByVolume
        ? ['100 ml were taken as 100 g; a syrup or an oil is 10 to 30 % off by that.']
        : []),
      ...(panel.packG === null ? [] : [`A packet of it is ${sayNumber(panel.packG)} g.`]),
    ],
    did: `read the panel of ${own.called}`,
    buttons: useIn(
      own.called,
      recipesFor(house, { panel: own }).map(({ name }) => name),
    ),
  };
}

/** Buttons that put what was read into recipes recorded before. */
const useIn = (called: string, names: readonly string[]): Choice[] => [
  ...names
    .slice(0, 3)
    .map((name) => ({ label: `Use it in ${name}`, request: `/our ${called} packet in ${name}` })),
  ...(names.length > 1 ? [{ label: 'Use it in all', request: `/our ${called} packet in all recipes` }] : []),
];

function shownMeal(house: House, name: string): MealShown {
  const recipe = wordingsOf(house, name)[0] ?? recipeNamed(house, name);
  return mealOfRecipe(recipe, factsOfRecipe(house, recipe));
}
