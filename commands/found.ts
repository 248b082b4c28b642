import { command } from '#chat/command.ts';
import type { Pouch } from '#core/records.ts';
import { Doubt, Lacking, Refusal } from '#core/refusal.ts';
import { type Finding, gasGrowth, isByAltitude, mayFollow, regained, unsound } from '#core/seal-check.ts';
import { pouchesInStock } from '#house/figures.ts';
import type { House } from '#house/house.ts';
import { foundAs, foundMark } from '#words/found-words.ts';
import { localDays } from '#words/local-days.ts';
import { altitudeM, flag, massG, optional, pouchCodes } from '#words/parts.ts';
import { sayCode, sayCodes, sayG, sayNumber, sayPacks } from '#words/say.ts';

export default command({
  name: 'found',
  alsoCalled: ['sealcheck'],
  usage: '/found <pouches> tight · loose · resealed <weight> · opened · swollen [at 1900 m] · smells',
  summary: 'how pouches were found: seals tight or loose, opened, swollen, resealed',
  examples: ['/found B4-1 to B4-6 tight', '/found B4-2 loose', '/found B4-2 swollen at 1900 m'],
  help: [
    'A loose pouch is dried on and sealed anew (/found B4-2 drying, then /found B4-2 resealed 95 g), eaten or thrown away.',
    'Until then it has no best-by and goes on no trip. Half of one eaten: /use B4-2 half.',
  ],
  records: true,
  offers: { of: 'pouches' },
  takes: {
    codes: pouchCodes,
    altitude: optional(altitudeM),
    mountain: flag('mountain', 'mountains', 'summit', 'hut', 'trail'),
    some: flag('some', 'which'),
    netG: optional(massG('what it weighs now, such as 95 g')),
    what: foundAs,
  },
  run: ({ codes, altitude, mountain, some, netG, what }, house) => {
    const pouches = pouchesInStock(house, codes);
    if (some) return whichOnes(pouches);
    if (what === undefined)
      throw new Lacking(
        'found-how',
        `I read ${sayCodes(pouches)}, but not how: tight, loose, resealed 95 g, opened, swollen or smells.`,
      );
    if (netG !== undefined && what !== 'resealed')
      throw new Refusal(
        'why-weight',
        'A weight belongs to "resealed"; what was eaten of it is told by /use.',
      );
    if (what === 'resealed') return reseal(house, pouches, netG);
    if (what === 'swollen') return swollen(house, pouches, altitude, mountain === true);
    noted(house, pouches, what);
    return told(pouches, what, house);
  },
  say: (reply) => reply,
});

const mealsOf = (pouches: readonly Pouch[]) => [...new Set(pouches.map(({ meal }) => meal))].join(', ');

/** Keeps what was found. @throws Refusal 'found-before' where it may not follow what was found before */
function noted(house: House, pouches: readonly Pouch[], what: Finding): void {
  for (const pouch of pouches) {
    if (!mayFollow(pouch.found, what)) throw refusedAfter(pouch, what);
    house.pouches.note(pouch.id, what, house.nowMs);
  }
}

function refusedAfter(pouch: Pouch, what: Finding): Refusal {
  const code = sayCode(pouch);
  const before = unsound(pouch.found);
  const mark = before === null ? 'sound' : foundMark[before];
  const way =
    before === 'swollen' || before === 'smells'
      ? `Nothing makes that good: /discard ${code}.`
      : `It is weighed and sealed anew: /found ${code} resealed ${Math.round(pouch.dryG)} g.`;
  return new Refusal(
    'found-before',
    `${code} was found ${mark}; it is not "${what}" now. ${way} /undo takes a mistake back.`,
  );
}

function whichOnes(pouches: readonly Pouch[]) {
  const most = 8;
  return {
    group: `Which of ${sayCodes(pouches)}? The others: /found ${sayCodes(pouches)} tight`,
    buttons: pouches.slice(0, most).map((pouch) => ({
      label: `${sayCode(pouch)} loose`,
      request: `/found ${sayCode(pouch)} loose`,
    })),
    buttonsForAll: true,
    buttonsStay: true,
  };
}

function told(pouches: readonly Pouch[], what: Exclude<Finding, 'resealed' | 'swollen'>, house: House) {
  const all = sayCodes(pouches);
  const first = pouches[0]!;
  const [one] = [sayCode(first)];
  const absorber = first.absorbers.length === 0 ? 'a' : `a fresh ${sayPacks(first.absorbers)}`;
  const grams = sayG(first.dryG, house.settings.units);
  const anew = `dried on and weighed, /found ${one} resealed ${grams}, with ${absorber} absorber`;
  const lines: Record<typeof what, string> = {
    tight: `${all}, ${mealsOf(pouches)}: tight, noted.`,
    loose: `${all}, ${mealsOf(pouches)}: ${foundMark.loose}. It let air and moisture in: no best-by and no trip until it is put right. Eat it soon, throw it away, or seal it anew: ${anew} (common practice).`,
    drying: `${all}: drying on. No best-by and no trip until it is sealed anew: ${anew}.`,
    opened: `${all}: ${foundMark.opened}. Eat the rest within days, kept closed and dry (common practice), or seal it anew: ${anew}.`,
    smells: `${all}: ${foundMark.smells}. Out with it, and no tasting: botulism need not smell, what smells is worse.`,
  };
  const buttons: Partial<Record<typeof what, [label: string, request: string][]>> = {
    loose: [
      ['Dry it on', `/found ${all} drying`],
      ['Eaten now', `/use ${all}`],
      ['Thrown away', `/discard ${all} seal failed`],
    ],
    smells: [['Thrown away', `/discard ${all} smells`]],
  };
  return {
    group: lines[what],
    did: `found ${all} ${what}`,
    ...(buttons[what] === undefined
      ? {}
      : { buttons: buttons[what].map(([label, request]) => ({ label, request })), buttonsForAll: true }),
  };
}

/** Sealed anew is what weighs no more than what went in: what is more is water. */
function reseal(house: House, pouches: readonly Pouch[], netG: number | undefined) {
  const [pouch] = pouches;
  const g = (value: number) => sayG(value, house.settings.units);
  if (pouch === undefined || pouches.length > 1)
    throw new Refusal('one-pouch', 'One at a time: each is weighed before it is sealed anew.');
  const code = sayCode(pouch);
  const found = unsound(pouch.found);
  if (found === 'swollen' || found === 'smells')
    throw new Refusal(
      'unfit',
      `${code} was found so: ${foundMark[found]}. It is not sealed anew: /discard ${code}`,
    );
  if (found === null)
    throw new Refusal(
      'sound-already',
      `${code} is sealed and sound; first say how it was found: /found ${code} loose.`,
    );
  if (netG === undefined)
    throw new Refusal(
      'weight-needed',
      `I still need what it weighs now: /found ${code} resealed ${g(pouch.dryG)}`,
    );
  const { isDry, gainedG, thresholdG } = regained(pouch.dryG, netG);
  if (!isDry)
    throw new Refusal(
      'regained',
      `${code} weighs ${g(gainedG)} more than the ${g(pouch.dryG)} that went in (the limit is ${sayNumber(thresholdG)} g): water. Dry it on and weigh it again.`,
    );
  if (-gainedG > Math.max(2, thresholdG) && !house.sure)
    throw new Doubt(
      'lighter',
      `${code} held ${g(pouch.dryG)}; ${g(-gainedG)} are missing. Was some eaten? Then first: /use ${code} ${g(-gainedG)}.`,
    );
  house.pouches.note(pouch.id, 'resealed', house.nowMs, netG);
  const fresh =
    pouch.shownDry && pouch.absorbers.length > 0
      ? ` A fresh absorber: ${sayPacks(pouch.absorbers)}; the old one is spent.`
      : '';
  return {
    group: `${code}, ${pouch.meal}: sealed anew at ${g(netG)}, as dry as it was.${fresh} Its best-by stays; check the seal again in two days.${pouch.shownDry ? '' : ' It stays UNCHECKED: keep it frozen.'}`,
    did: `sealed ${code} anew: ${g(netG)}`,
  };
}

/** Air grows on the way up; what swells at home is made by something. */
function swollen(house: House, pouches: readonly Pouch[], altitude: number | undefined, onMountain: boolean) {
  const { settings, trips } = house;
  const all = sayCodes(pouches);
  const today = localDays(settings.zone).dayOf(house.nowMs);
  const held = trips.held(null);
  const trip = trips
    .all()
    .find(
      ({ id, startsOn, endsOn }) =>
        startsOn <= today && today <= endsOn && held.some((h) => h.trip === id && h.pouch === pouches[0]!.id),
    );
  const metres = altitude ?? (onMountain ? (trip?.altitudeM ?? undefined) : undefined);
  if (onMountain && metres === undefined)
    throw new Refusal('how-high', `How high are you? Such as: /found ${all} swollen at 1900 m`);
  if (isByAltitude(settings.altitudeM, metres)) {
    // What was taken for spoilt may be thin air; what let go before stays as it was found.
    const [other] = pouches.filter(({ found }) => unsound(found) !== null && found !== 'swollen');
    if (other) throw refusedAfter(other, 'tight');
    for (const { id } of pouches) house.pouches.note(id, 'tight', house.nowMs);
    return {
      group: `${all}: at ${Math.round(metres!)} m air takes ${gasGrowth(settings.altitudeM, metres!).toFixed(2)} times the room it had at ${Math.round(settings.altitudeM)} m, where it was sealed. A tight pouch on a mountain is not a spoilt one. If it is still tight at home, or smells when opened: out with it, no tasting.`,
      did: `found ${all} tight at ${Math.round(metres!)} m`,
    };
  }
  noted(house, pouches, 'swollen');
  return {
    group: `${all}, ${mealsOf(pouches)}: ${foundMark.swollen}. Gas that was not there when it was sealed is made by germs: throw it away unopened, no tasting. On a mountain it may be thin air alone: say how high.`,
    did: `found ${all} swollen`,
    buttons: [
      { label: 'Thrown away', request: `/discard ${all} swollen` },
      { label: 'On the mountain', request: `/found ${all} swollen on the mountain` },
    ],
    buttonsForAll: true,
  };
}
