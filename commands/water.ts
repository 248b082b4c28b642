import { command } from '#chat/command.ts';
import { pouchCoded } from '#house/figures.ts';
import {
  boilsPhrase,
  standPhrase,
  burnCaution,
  coldLines,
  eatenDryPhrase,
  potCaution,
  rawCaution,
  type SoakSaid,
} from '#words/phrases.ts';
import { forBatch, forMeal, forPouches, forWeight, type Poured, type PouredFigures } from '#house/poured.ts';
import type { Eater, Pouch } from '#core/records.ts';
import { mergedGoods } from '#core/camp.ts';
import { Lacking, Refusal } from '#core/refusal.ts';
import type { Settings } from '#core/settings.ts';
import {
  altitudeM,
  batchCode,
  massG,
  meal,
  optional,
  pouchCodes,
  pouchCount,
  servings,
} from '#words/parts.ts';
import { coldC, sharers } from '#words/water-parts.ts';
import { addAtCamp } from '#words/camp-words.ts';
import { sayCode, sayG, sayList, sayMl, sayWater, startMl } from '#words/say.ts';
import type { House } from '#house/house.ts';
import { whereNow } from '#house/soaking.ts';

interface Figure extends PouredFigures {
  readonly where: ReturnType<typeof whereNow>;
  /** Of water that is not boiled, °C. */
  readonly coldC: number | null;
  /** Whoever shares what is poured, each with their portion. */
  readonly sharers: readonly Pick<Eater, 'name' | 'portion'>[];
  readonly settings: Settings;
  /** Pouches that were named and can be eaten. */
  readonly toEat?: readonly string[];
}

export default command({
  name: 'water',
  alsoCalled: ['rehydrate'],
  usage: '/water <pouch> · <meal> for 3 · 180 g <meal> [at 2400 m]',
  summary: 'how much boiling water to pour, and for how long to wait',
  examples: [
    '/water B4-2',
    '/water barley soup for 3',
    '/water 180 g barley soup',
    '/water B4-2 at 2400 m',
    '/water B4-2 cold',
    '/water B4-2 for Ana and Noa',
  ],
  help: [
    'On the days of a trip it is reckoned at the trip\'s altitude. "cold" or "cold 15 C" soaks without boiling; names share it out by portions.',
    'Several pouches at once: /water B4-2 B4-3. A plain sentence works too: how much water for two soup pouches?',
  ],
  offers: { of: 'pouches' },
  takes: {
    codes: optional(pouchCodes),
    batch: optional(batchCode),
    altitude: optional(altitudeM),
    coldC,
    sharers,
    dryG: optional(massG('a dry weight, such as 180 g')),
    pouches: optional(pouchCount),
    people: optional(servings),
    meal: optional(meal),
  },
  run: (asked, house): Figure => {
    const at = {
      where: asked.altitude === undefined ? whereNow(house) : { altitudeM: asked.altitude, place: null },
      coldC: asked.coldC ?? null,
      sharers: asked.sharers ? sharersMeant(house, asked.sharers) : [],
      settings: house.settings,
    };
    if (asked.codes) {
      if (asked.meal)
        sameMeal(
          asked.codes.map((code) => pouchCoded(house, code)),
          asked.meal,
        );
      return {
        ...at,
        ...forPouches(
          house,
          asked.codes.map((code) => pouchCoded(house, code)),
        ),
        toEat: asked.codes.filter((code) => pouchCoded(house, code).state === 'stock').map(sayCode),
      };
    }
    if (asked.batch !== undefined)
      return { ...at, ...forBatch(house, asked.batch, asked.dryG, asked.people, asked.pouches) };
    if (asked.meal === undefined) {
      throw new Lacking(
        'what-water',
        'I still need to know what the water is for: a pouch code, or a meal with a weight or a number of people.',
      );
    }
    if (asked.dryG !== undefined) return { ...at, ...forWeight(house, asked.meal, asked.dryG) };
    return { ...at, ...forMeal(house, asked.meal, asked.people, asked.pouches) };
  },
  say: ({ poured, why, cautions, where, coldC, sharers, settings, meals, toEat = [] }) => {
    const next =
      toEat.length === 0
        ? {}
        : { buttons: [{ label: 'Eaten', request: `/use ${toEat.join(' ')}` }], buttonsForAll: true };
    const wet = poured.filter(({ eaten }) => !eaten.isDry);
    const isAnyRaw = wet.some(({ isRaw }) => isRaw);
    const isAllRaw = wet.every(({ isRaw }) => isRaw);
    const soak = wet.map((one) => one.soak).reduce(longer, { extraMin: -Infinity, because: 'usual' });
    const lines = [
      ...(isAnyRaw ? [rawCaution] : []),
      ...poured.map((one) => pourLine(one, coldC !== null, settings)),
    ];
    const shares = shareLine(poured, sharers, settings);
    const camp = addAtCamp(mergedGoods(poured.flatMap((one) => one.camp)), settings.units);
    if (wet.length === 0)
      return { group: [...lines, ...camp, ...shares, ...cautions].join('\n'), meals, ...next };
    if (wet.length > 1)
      lines.push(
        `Together: ${sayWater(
          wet.reduce((sum, { waterMl }) => sum + waterMl, 0),
          settings,
        )}.`,
      );
    lines.push(...camp, ...shares);
    const exact = new Set(wet.map(({ waterMl }) => waterMl.toFixed(1)));
    const reasons = [`Exactly ${sayList([...exact])} ml${exact.size < wet.length ? ' each' : ''}.`, ...why];
    if (wet.some(({ isRated, isRaw }) => !isRated && !isRaw))
      reasons.push(
        'Not rated yet: pieces and sauces take back less than they gave up. Then /rate it, such as 20 ml more.',
      );
    if (coldC !== null && !isAllRaw) lines.push(...coldLines(coldC, soak.extraMin));
    else if (!isAllRaw) {
      lines.push(standPhrase(where.altitudeM, soak));
      reasons.push(
        `${boilsPhrase(where.altitudeM, where.place)}${soak.because === 'rated' ? '' : ' The minutes: common practice.'}`,
      );
    }
    lines.push(...cautions);
    const heed = isAllRaw ? [potCaution] : coldC === null ? [burnCaution] : [];
    return { group: lines.join('\n'), heed, why: reasons, meals, notesTell: 'shares', ...next };
  },
});

const longer = (a: SoakSaid, b: SoakSaid): SoakSaid => (b.extraMin > a.extraMin ? b : a);

/** What one pouch or weight takes. */
function pourLine(
  { what, waterMl, isRaw, eaten, isRated }: Poured,
  isCold: boolean,
  settings: Settings,
): string {
  if (eaten.isDry) return `${what}: ${eatenDryPhrase(eaten).replace('Eaten', 'eaten')}`;
  if (isRaw)
    return `${what}: soak in ${sayWater(waterMl, settings)} of cold water, about 15 min, then cook it at once.`;
  const kind = isCold ? 'cold' : 'boiling';
  return isRated
    ? `${what}: pour ${sayWater(waterMl, settings)} of ${kind} water.`
    : `${what}: start with ${startMl(waterMl)} ml of ${kind} water, up to ${sayWater(waterMl, settings)}.`;
}

/** Into whose mug how much goes, by their portions. */
function shareLine(poured: readonly Poured[], sharers: Figure['sharers'], settings: Settings): string[] {
  if (sharers.length < 2) return [];
  const all = sharers.reduce((sum, { portion }) => sum + portion, 0);
  const dryG = poured.reduce((sum, one) => sum + one.dryG, 0);
  const waterMl = poured.reduce((sum, one) => sum + one.waterMl, 0);
  const said = sharers.map(({ name, portion }) => {
    const part = portion / all;
    const water = waterMl > 0 ? ` and ${sayMl(waterMl * part)}` : '';
    return `${name} ${sayG(dryG * part, settings.units)} dry${water}`;
  });
  return [`Into mugs, by portions: ${said.join('; ')}.`];
}

/** @throws Refusal 'no-sharers' where fewer than two are there */
function sharersMeant(house: House, names: readonly string[]): Figure['sharers'] {
  const here = house.eaters.here();
  const meant = names.length === 0 ? here : here.filter(({ name }) => names.includes(name));
  if (meant.length > 1 || names.length > 0) return meant;
  throw new Refusal('no-sharers', 'Who shares it? Name them: /water B4-2 for Ana and Noa.');
}

function sameMeal(pouches: readonly Pouch[], name: string): void {
  const other = pouches.find((pouch) => pouch.meal !== name);
  if (other) throw new Refusal('other-meal', `${sayCode(other)} is ${other.meal}, not ${name}.`);
}
