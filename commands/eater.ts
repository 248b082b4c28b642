import { command } from '#chat/command.ts';
import { dayLines, understoodLines } from '#cards/eater-card.ts';
import { areApart, larder, standsForMore } from '#foods/avoided.ts';
import { brokenAnywhere } from '#house/broken.ts';
import { nameKey } from '#house/figures.ts';
import type { House } from '#house/house.ts';
import { grownUpYears, isChild, isNarrowing, keptAs, liftedByTap, selfOf } from '#house/lifting.ts';
import { stockQuestions } from '#house/packet-questions.ts';
import { tripsAhead } from '#house/trips.ts';
import { stockVerdicts } from '#house/verdicts.ts';
import type { Eater } from '#core/records.ts';
import { Refusal } from '#core/refusal.ts';
import type { Choice } from '#core/talk.ts';
import type { NewEater } from '#store/eaters.ts';
import { aboutPerson } from '#words/eater-parts.ts';
import { flag } from '#words/parts.ts';
import { energyKcal, noLimit, portion, sodiumMg } from '#words/person-amounts.ts';
import { sure } from '#words/sure.ts';
import { activity, ageYears, kind, sex } from '#words/person-parts.ts';
import { sayList } from '#words/say.ts';

const longestName = 30;
const { asks, who, ...notes } = aboutPerson(larder);

export default command({
  name: 'eater',
  alsoCalled: ['eaters', 'person'],
  usage:
    '/eater <name> [child 7] [no peanuts, no milk] [vegetarian] [dislikes olives] [portion 0.6] [sodium 1500] [2200 kcal]',
  summary: 'who eats, what must never be served to them, how much they need',
  examples: [
    '/eater Noa child 7 no peanuts, no milk portion 0.6 sodium 1500',
    '/eater me vegetarian',
    '/eater Noa may eat milk again',
    '/eater',
  ],
  help: [
    'Allergens, diets (vegetarian, vegan, gluten-free), kinds (no pork, no shellfish, no nightshades) and plain foods (no mushrooms) are kept away; "dislikes" only steers.',
    '"no peanuts near" keeps them from everybody at the same meal. What is kept away is lifted by a tap of a grown-up only.',
    'Without a limit of their own, the published figures for the age hold for sodium and energy: general guidance, not medical advice.',
    '"/eater Noa gone" takes somebody out of new trips.',
  ],
  records: true,
  asksBy: /./su,
  offers: { of: 'eaters' },
  takes: {
    sure,
    noLimit,
    portion,
    sodiumMg,
    energyKcal,
    asks,
    // What is avoided is read before every word that a typing slip may resemble: chili is no child.
    ...notes,
    gone: flag('gone', 'left', 'leave'),
    ageYears,
    kind,
    sex,
    activity,
    who,
  },
  run: (asked, house) => {
    if (asked.who === undefined) {
      if (!asked.asks && (asked.never || asked.portion || asked.dislikes || asked.apart))
        throw new Refusal('no-name', 'I read what is meant, but not for whom.');
      return { eaters: house.eaters.here(), did: undefined, notes: [], why: [] };
    }
    const known = 'known' in asked.who ? house.eaters.find(nameKey(asked.who.known)) : undefined;
    const name = 'known' in asked.who ? asked.who.known : asked.who.fresh;
    if (asked.asks) {
      if (!known)
        throw new Refusal('no-such-eater', `There is no eater called ${name}. A question records nothing.`);
      const seen = stockVerdicts(house, known);
      return {
        eaters: [known],
        did: undefined,
        notes: seen.lines,
        why: seen.why,
        heed: seen.heed,
        open: stockQuestions(house, known),
      };
    }
    // Whatever the platform calls somebody is their name; what was typed may be a misread word.
    if (!known && name !== house.member.name && (name.length > longestName || /\d/.test(name))) {
      throw new Refusal(
        'bad-name',
        `"${name}" is no name that I can keep; I may have missed a word of the request.`,
      );
    }
    const { lifting = '', sure: isSure, asks: _, who: __, gone, ...told } = asked;
    const changes = known === undefined || Object.values(told).some((value) => value !== undefined);
    mayChange(house, name, told);
    if (gone) {
      if (!known) throw new Refusal('no-such-eater', `There is no eater called ${name}.`);
      house.eaters.leave(known.id);
      return { eaters: [], gone: name, did: `${name} no longer eats here`, notes: [], why: [] };
    }
    const free = (told.again ?? []).filter(
      (words) => told.never !== undefined && told.never.every((kept) => areApart(kept, words)),
    );
    const again = (told.again ?? []).filter((words) => !free.includes(words) || keptAs(known, words));
    if (told.never && !again.every((words) => keptAs(known, words)))
      throw new Refusal(
        'exception',
        `I keep no exceptions: ${sayList(told.never)}, but ${sayList(again)} allowed. Name each food that is kept away instead. Nothing was recorded.`,
      );
    const lifted = again.map((words) => {
      const kept = keptAs(known, words);
      if (kept !== undefined) return kept;
      throw new Refusal(
        'not-kept-out',
        `"${words}" is not kept from ${name}: ${sayList(known?.never ?? []) || 'nothing is'}.`,
      );
    });
    const narrowed = (told.exact ?? []).filter((words) => isNarrowing(known, words));
    const barred = [...lifted.filter((words) => known?.never.includes(words)), ...narrowed];
    liftedByTap(house, name, barred, isSure === true, lifting);
    const eater = changed(house, known, name, told, lifted);
    if (changes) {
      if (known) house.eaters.change(known.id, eater);
      else house.eaters.add(nameKey(name), eater);
    }
    const now = house.eaters.find(nameKey(name))!;
    const seen = stockVerdicts(house, now);
    return {
      eaters: [now],
      why: seen.why,
      heed: seen.heed,
      did: changes ? `${known ? 'changed' : 'added'} the eater ${name}${saidOf(told)}` : undefined,
      notes: [
        ...(free.length > 0 ? [`Not kept away: ${sayList(free)}.`] : []),
        ...(seen.isEmpty ? [] : seen.lines),
        ...(changes ? brokenAnywhere(house) : []),
      ],
      open: [...(known ? [] : comingButtons(house, now)), ...stockQuestions(house, now)],
    };
  },
  say: ({ eaters, gone, did, notes: lines, why, heed = [], open = [] }) => {
    if (gone) return { group: `${gone} is out of new trips. The records stay.`, did };
    const [one, another] = eaters;
    if (one === undefined)
      return {
        group:
          'Nobody is recorded as an eater yet.\nFor example: /eater Noa child 7 no peanuts, no milk portion 0.6',
      };
    if (another !== undefined) return { group: eaters.map((eater) => understoodLines(eater)[0]!).join('\n') };
    const wide = one.never.filter((words) => !one.exact.includes(words) && standsForMore(words));
    const buttons = [
      ...(did === undefined ? [] : wide).map((words) => ({
        label: `Only ${words}`,
        request: `/eater "${one.name}" only ${words} sure`,
      })),
      ...open,
    ];
    return {
      group: [...understoodLines(one), ...lines].join('\n'),
      heed,
      why: [...why, ...dayLines(one)],
      ...(did === undefined ? {} : { did }),
      ...(buttons.length === 0 ? {} : { buttons }),
    };
  },
});

/** Somebody new may come along to what is planned: one tap a trip, the next two. */
const comingButtons = (house: House, { name, id }: Eater): Choice[] =>
  tripsAhead(house)
    .filter(({ slots }) => slots.length > 0 && slots.every(({ eaters }) => !eaters.includes(id)))
    .slice(0, 2)
    .map(({ place }) => ({ label: `${name} comes to ${place}`, request: `/trip "${place}" with "${name}"` }));

/** What a message told, as far as it told it. */
type Told = {
  readonly noLimit?: true | undefined;
} & {
  readonly [K in 'kind' | 'ageYears' | 'sex' | 'activity' | 'portion' | 'sodiumMg' | 'energyKcal']?:
    NonNullable<Eater[K]> | undefined;
} & {
  readonly [K in 'never' | 'apart' | 'exact' | 'dislikes' | 'again']?: readonly string[] | undefined;
};

/** What was told of the food, for the journal and the button: ': no egg, dislikes curry'. */
function saidOf({
  never = [],
  dislikes = [],
  ageYears,
  sodiumMg: mg,
  portion: share,
  noLimit: isFree,
}: {
  sodiumMg?: number | undefined;
  portion?: number | undefined;
  ageYears?: number | undefined;
  noLimit?: true | undefined;
  never?: readonly string[] | undefined;
  dislikes?: readonly string[] | undefined;
}): string {
  const said = [
    ...(ageYears === undefined ? [] : [`${ageYears} years`]),
    ...(mg === undefined ? [] : [`sodium ${Math.round(mg)} mg a day`]),
    ...(share === undefined ? [] : [`portion ${share}`]),
    ...(isFree ? ['no sodium limit of their own'] : []),
    ...never.map((words) => `no ${words}`),
    ...dislikes.map((words) => `dislikes ${words}`),
  ];
  return said.length === 0 ? '' : `: ${said.join(', ')}`;
}

/** A child changes their own notes and nobody else's, and does not grow up by a message. */
function mayChange(house: House, name: string, told: Pick<Told, 'kind' | 'ageYears'>): void {
  const self = selfOf(house);
  if (self === undefined || !isChild(self)) return;
  if (nameKey(self.name) !== nameKey(name))
    throw new Refusal(
      'not-yours',
      `${self.name} may change their own notes; those of ${name} are for ${name} or an adult to change.`,
    );
  const { kind: asKind = self.kind, ageYears: years = self.ageYears } = told;
  const grows = (self.kind === 'child' && asKind !== 'child') || (years ?? 0) >= grownUpYears;
  if (grows)
    throw new Refusal(
      'for-a-grown-up',
      `${self.name} is recorded as a child; a grown-up has to change that.`,
    );
}

/** Somebody's notes as they are after a message. */
function changed(
  house: House,
  known: Eater | undefined,
  name: string,
  told: Told,
  lifted: readonly string[],
): NewEater {
  const list = (before: readonly string[] = [], more: readonly string[] = []) =>
    [...new Set([...before, ...more])].filter((words) => !lifted.includes(words));
  const never = list(known?.never, [...(told.never ?? []), ...(told.apart ?? [])]);
  const own = (words: string) => never.includes(words);
  const stray = (told.exact ?? []).find((words) => !own(words));
  if (stray !== undefined)
    throw new Refusal('not-kept-out', `Only ${stray}, I read, but ${stray} is not kept from ${name}.`);
  return {
    name,
    kind:
      told.kind ??
      known?.kind ??
      (told.ageYears !== undefined && isChild({ kind: 'adult', ageYears: told.ageYears })
        ? 'child'
        : 'adult'),
    member: known?.member ?? (nameKey(name) === nameKey(house.member.name) ? house.member.id : null),
    ageYears: told.ageYears ?? known?.ageYears ?? null,
    sex: told.sex ?? known?.sex ?? null,
    activity: told.activity ?? known?.activity ?? null,
    portion: told.portion ?? known?.portion ?? 1,
    sodiumMg: told.sodiumMg ?? (told.noLimit ? null : known?.sodiumMg) ?? null,
    energyKcal: told.energyKcal ?? known?.energyKcal ?? null,
    never,
    apart: list(known?.apart, told.apart).filter(own),
    // Named anew without "only", a food stands for all it stands for again.
    exact: list(known?.exact, told.exact).filter(
      (words) => own(words) && (!told.never?.includes(words) || told.exact?.includes(words)),
    ),
    dislikes: list(known?.dislikes, told.dislikes).filter((words) => !own(words)),
  };
}
