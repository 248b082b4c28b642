import type { Contents, Kind } from '#core/allergens.ts';
import { deniedBy, liftedBy, type PacketReading, readAgain, settled } from '#core/packet.ts';
import type { NamedFood, Recipe, RecipeLine } from '#core/records.ts';
import { Refusal } from '#core/refusal.ts';
import { verdictFor } from '#core/verdict.ts';
import { packetKey, packetReading } from '#foods/packet-things.ts';
import type { OwnFood } from '#store/own-foods.ts';
import type { Packet } from '#store/packets.ts';
import type { PacketTold } from '#words/packet-parts.ts';
import { Ambiguous } from '#words/reading.ts';
import { sayDay, sayList } from '#words/say.ts';
import { batchNumbered, recipeNamed } from './figures.ts';
import type { House } from './house.ts';
import { isChild, selfOf } from './lifting.ts';
import { panelLine, withPanel } from './own-foods.ts';
import { foodMeant } from './learning.ts';

/** What a packet says, in words: 'contains celery; may contain nuts; no egg, milk; gluten-free'. */
export function sayReading({
  contains,
  kinds,
  may,
  mayKinds,
  free,
  freeKinds,
  claims,
}: PacketReading): string {
  const list = (words: readonly string[]) => sayList([...new Set(words)]);
  const own = [...contains, ...kinds.filter((kind) => !brought.has(kind))];
  const perhaps = [...may, ...mayKinds.filter((kind) => !brought.has(kind))];
  const none = [...free, ...freeKinds];
  return [
    ...(own.length > 0 ? [`contains ${list(own)}`] : []),
    ...(perhaps.length > 0 ? [`may contain ${list(perhaps)}`] : []),
    ...(none.length > 0 ? [`no ${[...new Set(none)].join(', no ')}`] : []),
    ...claims,
  ].join('; ');
}
/** Kinds that an allergen of nearly the same name says already. */
const brought: ReadonlySet<Kind> = new Set(['dairy', 'egg', 'fish', 'shellfish', 'legume']);

const whoAndWhen = (house: House, { readBy, readAtMs }: Pick<Packet, 'readBy' | 'readAtMs'>): string =>
  `read by ${house.members().find(({ id }) => id === readBy)?.name ?? 'somebody'}, ${sayDay(readAtMs, house.settings.zone)}`;

/** A packet on one line, with who read it and when. */
export const packetLine = (house: House, packet: Packet): string =>
  `${packet.called}: ${sayReading(packet.reading)} (${whoAndWhen(house, packet)})`;

const remarkStart = 'packet: ';

/** What stands beside a line whose packet was read just now. */
export const packetRemark = (house: House, reading: PacketReading): string =>
  `${remarkStart}${sayReading(reading)}, ${whoAndWhen(house, { readBy: house.member.id, readAtMs: house.nowMs })}`;

/** A recorded line with what was read on its packet; undefined where the packet changes nothing of it. */
export function withPacket(house: House, line: RecipeLine, packet: Packet): RecipeLine | undefined {
  const isOwn = packetKey(line.called) === packet.foodKey && line.state !== 'asked';
  const named = line.named.map((one): NamedFood =>
    packetKey(one.called) === packet.foodKey
      ? { ...one, contents: settled(one.contents, packet.reading) }
      : one,
  );
  const contents = isOwn ? settled(line.contents, packet.reading) : line.contents;
  const isChanged =
    JSON.stringify(contents) !== JSON.stringify(line.contents) ||
    JSON.stringify(named) !== JSON.stringify(line.named);
  if (!isChanged) return undefined;
  const remark = `${remarkStart}${sayReading(packet.reading)}, ${whoAndWhen(house, packet)}`;
  return {
    ...line,
    contents,
    named,
    remarks: [...line.remarks.filter((one) => !one.startsWith(remarkStart)), remark],
  };
}

/** What of a food was read: what is in it, its panel, or both. */
export interface ReadOf {
  readonly packet?: Packet | undefined;
  readonly panel?: OwnFood | undefined;
}

/** A recorded line with all that was read; undefined where nothing of it changes. */
function withRead(house: House, line: RecipeLine, { packet, panel }: ReadOf): RecipeLine | undefined {
  const settledLine = packet && withPacket(house, line, packet);
  return (panel && withPanel(settledLine ?? line, panel)) ?? settledLine;
}

/** A line as it is recorded, with every packet that this household read. */
export function withPackets(house: House): (line: RecipeLine) => RecipeLine {
  const all: ReadOf[] = [
    ...house.packets.all().map((packet) => ({ packet })),
    ...house.ownFoods.all().map((panel) => ({ panel })),
  ];
  return (line) => all.reduce((now, read) => withRead(house, now, read) ?? now, line);
}

/** The recipes of today whose lines a packet would change. */
export function recipesFor(house: House, read: ReadOf): Recipe[] {
  return house.recipes
    .names()
    .map((name) => recipeNamed(house, name))
    .filter(({ lines }) => lines.some((line) => withRead(house, line, read) !== undefined));
}

/** Whether a packet holds something, or may hold it: that goes into every recipe at once. */
const warns = ({ contains, kinds, may, mayKinds }: PacketReading): boolean =>
  contains.length + kinds.length + may.length + mayKinds.length > 0;

/**
 * What a packet warns of holds in every recipe of today, and in what came from the cupboard into mixed pouches; what it clears is put there only where somebody says so.
 * @returns the names of the recipes it changed
 */
export function warnEverywhere(house: House, packet: Packet): string[] {
  if (!warns(packet.reading)) return [];
  const warning = { ...packet, reading: { ...packet.reading, free: [], freeKinds: [], claims: [] } };
  const mixed = house.pouches.mixes().map((no) => house.recipes.byId(batchNumbered(house, no).recipe.id));
  return [...recipesFor(house, { packet: warning }), ...mixed].flatMap((recipe) =>
    applyPacket(house, recipe, { packet: warning }).length > 0 ? [recipe.name] : [],
  );
}

/** Puts what a packet says into a recipe that is recorded already. @returns the numbers of the lines it changed */
export function applyPacket(house: House, recipe: Recipe, read: ReadOf): number[] {
  return recipe.lines.flatMap((line, i) => {
    const now = withRead(house, line, read);
    if (now === undefined) return [];
    house.recipes.mendLine(recipe.id, i + 1, now);
    return [i + 1];
  });
}

/** @throws Refusal where nothing of that food's packet was read */
export function readOf(house: House, food: string): ReadOf & { readonly called: string } {
  const isIt = ({ foodKey }: { readonly foodKey: string }) => foodKey === packetKey(food);
  const [packet, panel] = [house.packets.all().find(isIt), house.ownFoods.all().find(isIt)];
  const called = packet?.called ?? panel?.called;
  if (called !== undefined) return { packet, panel, called };
  throw new Refusal('no-packet', `Nobody told me yet what the packet of ${food} says.`);
}

/** All that was read on packets, a line each. */
export const readLines = (house: House): string[] => [
  ...house.packets.all().map((packet) => packetLine(house, packet)),
  ...house.ownFoods.all().map((panel) => panelLine(house, panel)),
];

/** Forgets what was read of a food. @returns what it was called, undefined where nothing was read */
export function forgetRead(house: House, words: string): string | undefined {
  const isIt = ({ foodKey }: { readonly foodKey: string }) => foodKey === packetKey(words);
  const called = [...house.packets.all(), ...house.ownFoods.all()].find(isIt)?.called;
  house.packets.forget(packetKey(words));
  house.ownFoods.forget(packetKey(words));
  return called;
}

/**
 * Takes in what somebody read.
 * @param request how the request goes on with another food, for buttons
 * @throws Refusal for a packet that denies what the food is made of, Ambiguous where it lifts what was read before
 */
export function readPacketOf(
  house: House,
  told: PacketTold,
  isSure: boolean,
  request: (food: string) => string,
): { packet: Packet; idle: readonly string[] } {
  const { called, contents } = boughtNamed(house, told.food) ?? foodMeant(house, told.food, request);
  const { reading, idle } = packetReading(told);
  refuseDenied(called, contents, reading);
  const self = selfOf(house);
  const clears = reading.free.length + reading.freeKinds.length + reading.claims.length > 0;
  if (clears && self !== undefined && isChild(self))
    throw new Refusal(
      'for-a-grown-up',
      `A grown-up has to read that packet: ${self.name} is recorded as a child. Nothing was recorded.`,
    );
  const before = house.packets.all().find(({ foodKey }) => foodKey === packetKey(called));
  const lifted = before === undefined ? [] : liftedBy(before.reading, reading);
  if (lifted.length > 0 && !(house.tapped && isSure))
    throw new Ambiguous(
      `${packetLine(house, before!)}. Is there no ${sayList([...new Set(lifted)])} in it now? Nothing is changed yet.`,
      [{ label: `no ${sayList([...new Set(lifted)])} in it`, request: `${request(told.food)} sure` }],
    );
  const isEmpty = Object.values(reading).every((list: readonly string[]) => list.length === 0);
  if (isEmpty)
    throw new Refusal(
      'settles-nothing',
      `That settles no allergen of ${called}: "no ${sayList(idle)}" names only a part of one. Say for instance: no milk, no egg.`,
    );
  return {
    packet: {
      foodKey: packetKey(called),
      called: called.split(',')[0]!,
      reading: before ? readAgain(before.reading, reading) : reading,
      readBy: house.member.id,
      readAtMs: house.nowMs,
    },
    idle,
  };
}

/** What was bought under a name that no food has by itself, with what is known of it. */
function boughtNamed(house: House, words: string): Pick<RecipeLine, 'called' | 'contents'> | undefined {
  return house.pouches
    .mixes()
    .map((no) => batchNumbered(house, no))
    .filter(({ mix }) => mix?.bought)
    .flatMap(({ recipe }) => recipe.lines)
    .find(({ called, typed }) => called === typed && packetKey(called) === packetKey(words));
}

function refuseDenied(called: string, contents: Contents | null, reading: PacketReading): void {
  const denied = deniedBy(contents, reading);
  const claimed = reading.claims.filter(
    (diet) => verdictFor([{ ingredient: called, contents }], [{ is: 'diet', diet }]).is === 'blocked',
  );
  if (denied.length + claimed.length === 0) return;
  throw new Refusal(
    'another-food',
    `${called} as I know it is made with ${sayList([...new Set(denied)]) || 'what that diet leaves out'}. A packet without it is another food: say what it is called in the recipe (vegan parmesan, tamari). Nothing was recorded.`,
  );
}
