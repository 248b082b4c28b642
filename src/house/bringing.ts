import { pricePerKg } from '#core/costs.ts';
import { deniedBy, settled } from '#core/packet.ts';
import { panelFigures } from '#core/panel.ts';
import type { Batch, Pouch, RecipeLine } from '#core/records.ts';
import { Refusal } from '#core/refusal.ts';
import { type Per100, totalsOf } from '#core/solids.ts';
import { foldName } from '#foods/line.ts';
import { packetLarder, packetReading } from '#foods/packet-things.ts';
import type { BringTold } from '#words/bring-parts.ts';
import { readPacket } from '#words/packet-parts.ts';
import { sayList } from '#words/say.ts';
import { batchNumbered, nameKey } from './figures.ts';
import type { House } from './house.ts';
import { oneCurrency } from './costs.ts';
import { isChild, selfOf } from './lifting.ts';
import { numberOfBought } from './own-foods.ts';
import { packetRemark, withPackets } from './packets.ts';
import { asRecord, longestName, resolver } from './recipe-text.ts';

/** What was bought, as recorded. */
export interface Brought {
  readonly batch: Batch;
  readonly pouches: readonly Pouch[];
  /** How its figures were come by. */
  readonly from: 'packet' | 'table' | 'nobody';
}

const nobodyKnows: Per100 = { waterG: null, kcal: null, proteinG: null, fatG: null, carbohydrateG: null, fibreG: null, ashG: null, sodiumMg: null }; // prettier-ignore

/** Pure fat, kcal in 100 g. @source usda-sr28 */
const mostKcal = 902;

/** What one piece weighs, g. @throws Refusal 'how-heavy' */
function pieceG(house: House, { name, each }: BringTold): number {
  const read = resolver(house)(`${each ?? '1'} ${name}`);
  const grams = read.grams;
  if (grams !== null && grams > 0 && grams <= 20_000) return grams;
  throw new Refusal(
    'how-heavy',
    `I read ${name}, but not what one weighs. Say so: ${name.toLowerCase()} 60 g each.`,
  );
}

/**
 * The figures of 100 g, as far as the packet tells them; what it does not tell is the table's.
 * @returns null where the packet tells none
 */
function per100Of({ panel, figures }: BringTold, grams: number, table: Per100 | undefined): Per100 | null {
  if (panel) return panelFigures(panel.panel).per100;
  const { kcal, sodiumMg, proteinG, fatG, carbohydrateG } = figures;
  const told = Object.entries({ kcal, sodiumMg, proteinG, fatG, carbohydrateG }).flatMap(([key, value]) =>
    value === null ? [] : [[key, (value * 100) / grams] as const],
  );
  if (told.length === 0) return null;
  const per100: Per100 = { ...(table ?? nobodyKnows), ...Object.fromEntries(told) };
  if (kcal !== null && (kcal * 100) / grams > mostKcal)
    throw new Refusal(
      'absurd-energy',
      `${Math.round(kcal)} kcal in ${Math.round(grams)} g cannot be: pure fat has ${mostKcal} in 100 g. Figures are of one piece; a panel per 100 g goes below, a line each.`,
    );
  // Refuses what 100 g cannot hold.
  totalsOf([{ grams, food: 'a piece', per100 }]);
  return per100;
}

/**
 * One piece as a line: what is known of such a food, with what the packet says of it. A bought thing that nobody knows
 * is open in all that its packet does not speak of.
 * @throws Refusal where a packet denies what the food is made of, and for a child who clears something
 */
function lineOf(
  house: House,
  told: BringTold,
  grams: number,
): { line: RecipeLine; per100: Per100 | null; isKnown: boolean } {
  const result = resolver(house)(`${grams} g ${told.name}`);
  const line = withPackets(house)({ ...asRecord(result), grams });
  const per100 = per100Of(told, grams, result.food?.per100);
  const isKnown = line.ndb !== null;
  const read = told.statement === '' ? undefined : readPacket(`${told.name} ${told.statement}`, packetLarder);
  if (told.statement !== '' && read === undefined)
    throw new Refusal('not-understood', `I read "${told.statement}", but not what the packet says by it.`);
  const reading = read && packetReading(read).reading;
  const known = result.contents;
  const denied = reading ? deniedBy(known, reading) : [];
  if (denied.length > 0)
    throw new Refusal(
      'another-food',
      `${told.name} as I know it is made with ${sayList([...new Set(denied)])}. If this one is not, say so in its name, such as vegan ${told.name.toLowerCase()}. Nothing was recorded.`,
    );
  const self = selfOf(house);
  const clears = reading && reading.free.length + reading.freeKinds.length + reading.claims.length > 0;
  if (clears && self !== undefined && isChild(self))
    throw new Refusal(
      'for-a-grown-up',
      `A grown-up has to read that packet: ${self.name} is recorded as a child. Nothing was recorded.`,
    );
  const contents = reading ? settled(known, reading) : known;
  return {
    line: {
      ...line,
      typed: told.name,
      called: isKnown ? line.called : told.name,
      state: 'weighed',
      grams,
      contents,
      named: [],
      remarks: [...line.remarks, ...(reading ? [packetRemark(house, reading)] : [])],
      question: null,
    },
    per100,
    isKnown,
  };
}

/** Records what was bought: its pieces are in stock, each with a code. @throws Refusal 'no-name', 'name-taken', 'how-heavy' */
export function bring(house: House, told: BringTold): Brought {
  const { name } = told;
  if (name === '')
    throw new Refusal('no-name', 'I read no name of what was bought. Say what it is: 6 oat bars 60 g each.');
  if (name.length > longestName)
    throw new Refusal(
      'long-name',
      `"${name.slice(0, 40)}…" is long for a name; up to ${longestName} letters do.`,
    );
  if (house.recipes.find(nameKey(name)))
    throw new Refusal(
      'name-taken',
      `${name} is a recipe of yours. Call what was bought something else: bought ${name.toLowerCase()}.`,
    );
  const grams = pieceG(house, told);
  const { line, per100, isKnown } = lineOf(house, told, grams);
  const servings = told.servings ?? 1;
  const recipe = house.recipes.keepBeside(
    nameKey(name),
    { name, servings, potG: null, method: '', eaten: null, lines: [line], mentions: [] },
    house.nowMs,
  );
  const { id, no } = house.batches.buy(recipe, house.nowMs);
  const figures = per100 ?? (isKnown ? null : nobodyKnows);
  const row = house.bought.keep(id, { waterMl: told.waterMl, per100: figures });
  if (figures !== null) house.recipes.mendLine(recipe, 1, { ...line, ndb: numberOfBought(row) });
  house.batches.weigh(id, [{ trayNo: 0, atMs: house.nowMs, netG: grams * told.count }]);
  house.pouches.seal(
    id,
    Array.from({ length: told.count }, () => ({
      dryG: grams, sealedAtMs: house.nowMs, checked: true, volumeMl: null, absorbers: [], bestByOn: told.bestBy, kept: null,
    })), // prettier-ignore
  );
  if (told.price)
    house.prices.put(
      {
        key: foldName(line.called),
        called: line.called,
        per: 'kg',
        amount: pricePerKg(told.price.amount, grams),
        currency: oneCurrency(house, told.price.currency),
      },
      house.nowMs,
    );
  if (told.uses) house.mealUses.put(nameKey(name), told.uses);
  return {
    batch: batchNumbered(house, no),
    pouches: house.pouches.ofBatch(no),
    from: per100 !== null ? 'packet' : isKnown ? 'table' : 'nobody',
  };
}
