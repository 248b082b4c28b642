import { command } from '#chat/command.ts';
import { pouchCoded } from '#house/figures.ts';
import { boilingPhrase, burnCaution, eatenDryPhrase, potCaution, rawCaution } from '#words/phrases.ts';
import { forBatch, forMeal, forPouches, forWeight, type PouredFigures } from '#house/poured.ts';
import type { Pouch } from '#core/records.ts';
import { Refusal } from '#core/refusal.ts';
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
import { sayCode, sayList, sayWater } from '#words/say.ts';

interface Figure extends PouredFigures {
  readonly altitudeM: number;
  readonly settings: Settings;
}

export default command({
  name: 'water',
  alsoCalled: ['rehydrate'],
  usage: '/water <pouch> · <meal> for 3 · 180 g <meal> [at 2400 m]',
  summary: 'how much boiling water to pour, and for how long to wait',
  examples: ['/water B4-2', '/water barley soup for 3', '/water 180 g barley soup', '/water B4-2 at 2400 m'],
  help: [
    'Several pouches at once: /water B4-2 B4-3. A plain sentence works too: how much water for two soup pouches?',
  ],
  takes: {
    codes: optional(pouchCodes),
    batch: optional(batchCode),
    altitude: optional(altitudeM),
    dryG: optional(massG('a dry weight, such as 180 g')),
    pouches: optional(pouchCount),
    people: optional(servings),
    meal: optional(meal),
  },
  run: (asked, house): Figure => {
    const at = { altitudeM: asked.altitude ?? house.settings.altitudeM, settings: house.settings };
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
      };
    }
    if (asked.batch !== undefined)
      return { ...at, ...forBatch(house, asked.batch, asked.dryG, asked.people, asked.pouches) };
    if (asked.meal === undefined) {
      throw new Refusal(
        'what-water',
        'I still need to know what the water is for: a pouch code, or a meal with a weight or a number of people.',
      );
    }
    if (asked.dryG !== undefined) return { ...at, ...forWeight(house, asked.meal, asked.dryG) };
    return { ...at, ...forMeal(house, asked.meal, asked.people, asked.pouches) };
  },
  say: ({ poured, why, cautions, altitudeM: metres, settings, meals }) => {
    const isAnyRaw = poured.some(({ isRaw }) => isRaw);
    const isAllRaw = poured.every(({ isRaw }) => isRaw);
    const isAllDry = poured.every(({ eaten }) => eaten.isDry);
    const lines = [
      ...(isAnyRaw ? [rawCaution] : []),
      ...poured.map(({ what, waterMl, isRaw, eaten }) =>
        eaten.isDry
          ? `${what}: ${eatenDryPhrase(eaten).replace('Eaten', 'eaten')}`
          : isRaw
            ? `${what}: soak in ${sayWater(waterMl, settings)} of cold water, about 15 min, then cook it at once.`
            : `${what}: pour ${sayWater(waterMl, settings)} of boiling water.`,
      ),
    ];
    if (isAllDry) return { group: [...lines, ...cautions].join('\n'), meals };
    const wet = poured.filter(({ eaten }) => !eaten.isDry);
    if (wet.length > 1) {
      const total = wet.reduce((sum, { waterMl }) => sum + waterMl, 0);
      lines.push(`Together: ${sayWater(total, settings)}.`);
    }
    const exact = sayList(
      poured.filter(({ eaten }) => !eaten.isDry).map(({ waterMl }) => waterMl.toFixed(1)),
    );
    lines.push(
      `Exactly ${exact} ml. ${why.join(' ')}`,
      ...(isAllRaw ? [] : [boilingPhrase(metres)]),
      ...cautions,
      isAllRaw ? potCaution : burnCaution,
    );
    return { group: lines.join('\n'), meals, notesTell: 'shares' };
  },
});

function sameMeal(pouches: readonly Pouch[], name: string): void {
  const other = pouches.find((pouch) => pouch.meal !== name);
  if (other) throw new Refusal('other-meal', `${sayCode(other)} is ${other.meal}, not ${name}.`);
}
