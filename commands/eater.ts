import { command } from '#chat/command.ts';
import { brokenAnywhere } from '#house/broken.ts';
import { understoodLines } from '#cards/eater-card.ts';
import { knownFood } from '#house/known-food.ts';
import { nameKey } from '#house/figures.ts';
import { stockVerdicts } from '#house/verdicts.ts';
import type { Eater, EaterKind } from '#core/records.ts';
import { Refusal } from '#core/refusal.ts';
import type { NewEater } from '#store/eaters.ts';
import { allowedAgain, disliked, keptOut, numberBeside } from '#words/eater-parts.ts';
import { flag, optional, part, quantities } from '#words/parts.ts';
import { fold, slips } from '#words/near.ts';
import { Ambiguous, Reading } from '#words/reading.ts';
import { takeName } from '#words/names.ts';
import { sayList } from '#words/say.ts';

const longestName = 30;

/** 'child 7', 'age 12', '7 years', '7 y'. */
const ageYears = optional(
  part<number>('an age, such as age 7', (reading) => {
    const long = quantities(reading, 'time').find((q) => /y(?:ea)?rs?|y$/i.test(q.typed));
    let index = long?.index;
    let value: number | undefined;
    if (long) value = Number.parseFloat(long.typed.replace(',', '.'));
    for (const i of reading.left()) {
      if (index !== undefined) break;
      const token = reading.all[i]!;
      const before = reading.at(i - 1)?.plain ?? '';
      const after = reading.at(i + 1)?.plain ?? '';
      if (token.is !== 'number' || !Number.isFinite(token.value)) continue;
      if (
        ['child', 'kid', 'age', 'aged', 'boy', 'girl', 'is'].includes(before) ||
        ['years', 'year', 'yrs', 'yr'].includes(after)
      ) {
        index = i;
        value = token.value;
        if (['age', 'aged', 'is'].includes(before)) reading.take(i - 1);
        if (after.startsWith('y')) reading.take(i + 1);
      }
    }
    if (index === undefined || value === undefined) return undefined;
    reading.take(index);
    reading.keyword('old');
    if (!(value >= 0 && value < 120)) throw new Refusal('bad-age', `An age of ${value} cannot be.`);
    return value;
  }),
);

const kind = optional(
  part<EaterKind>('child, guest or adult', (reading) => {
    if (reading.keyword('guest', 'visitor') !== undefined) return 'guest';
    if (reading.keyword('child', 'kid') !== undefined) return 'child';
    return reading.keyword('adult', 'grown-up') === undefined ? undefined : 'adult';
  }),
);

const sex = optional(
  part<'male' | 'female'>('male or female, for the energy table', (reading) => {
    if (reading.keyword('female', 'woman', 'girl') !== undefined) return 'female';
    return reading.keyword('male', 'man', 'boy') === undefined ? undefined : 'male';
  }),
);

const activity = optional(
  part<NonNullable<Eater['activity']>>('sedentary, moderately active or active', (reading) => {
    if (reading.keyword('sedentary') !== undefined) return 'sedentary';
    if (reading.keyword('moderately', 'moderate') !== undefined) {
      reading.keyword('active');
      return 'moderately active';
    }
    return reading.keyword('active') === undefined ? undefined : 'active';
  }),
);

/** The person whose name a typed one resembles. */
function nearName(name: string, known: readonly string[]): string | undefined {
  const most = name.length < 7 ? 1 : 2;
  return (
    known.find((one) => slips(fold(name), fold(one), most) <= most) ??
    takeName(new Reading(name), known, 'eater')
  );
}

/** Words that tie a sentence together, at the ends of a name. */
const links =
  /^(?:(?:and|is|has|who|the|that|with|for|please|,)\s+)+|(?:[\s,]+(?:and|is|are|has|have|who|with|for|the|an?|please|pls|plz|thanks|thank|thx))+$/giu;
/** Small words inside names of people. */
const particles = new Set(
  'van von de der den del della di da dos du la le el al bin ben ibn und y e af av zu ter ten'.split(' '),
);
const isPlainWord = (word: string): boolean => /^\p{Ll}/u.test(word) && !particles.has(word);

/** Somebody known, 'me', or a new name: whatever no other part took. */
const who = part<{ known: string } | { fresh: string }>('a name', (reading, names) => {
  const me = reading.all.findIndex(
    (t, i) =>
      ['me', 'myself', 'i', "i'm", 'im', 'mine', "i've"].includes(t.plain) && reading.at(i) !== undefined,
  );
  if (me >= 0 && names.me) {
    reading.take(me);
    return names.eaters.includes(names.me) ? { known: names.me } : { fresh: names.me };
  }
  const indexes = [...reading.left()].filter((i) => reading.all[i]!.is !== 'mark');
  if (indexes.length === 0) return undefined;
  const [first, ...others] = indexes.map((i) => reading.all[i]!);
  const typed = reading.rest().replace(links, '').trim();
  const name = typed.replace(/^"(.*)"$/, '$1').trim();
  const exact = names.eaters.find((known) => fold(known) === fold(name));
  if (exact !== undefined) return { known: exact };
  if (name === '') return undefined;
  // Somebody's allergens must not land on a person of a similar name: nearly the same name is asked about.
  const near = typed === name ? nearName(name, names.eaters) : undefined;
  // What stands between the pieces of the name was read by other parts and stays.
  const put = (into: string) =>
    reading.rewritten([
      { from: first!.from, to: first!.to, into: `"${into}"` },
      ...others.map(({ from, to }) => ({ from, to, into: '' })),
    ]);
  if (near === undefined) {
    // A word that was meant to keep something away must not end up in somebody's name.
    const stray = typed === name ? name.split(' ').slice(1).find(isPlainWord) : undefined;
    if (stray === undefined) return { fresh: name };
    throw new Ambiguous(`I could not place "${stray}". Is "${name}" the whole name of somebody new?`, [
      { label: `Yes, ${name}`, request: put(name) },
    ]);
  }
  throw new Ambiguous(`Is "${name}" ${near}, or somebody new?`, [
    { label: near, request: put(near) },
    { label: `${name}, new`, request: put(name) },
  ]);
});

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
    'Without a limit of their own, the published figures for the age hold for sodium and energy: general guidance, not medical advice.',
    '"/eater Noa gone" takes somebody out of new trips.',
  ],
  records: true,
  takes: {
    portion: numberBeside('a portion such as portion 0.6', 0.1, 4, 'portion', 'portions', 'eats'),
    sodiumMg: numberBeside('a sodium limit such as sodium 1500', 100, 10_000, 'sodium'),
    energyKcal: numberBeside('an energy need such as 2200 kcal', 200, 10_000, 'energy', 'kcal', 'calories'),
    kcal: optional(
      part<number>('2200 kcal', (reading) => {
        const found = quantities(reading, 'energy')[0];
        if (!found) return undefined;
        reading.take(found.index);
        reading.keyword('energy');
        return found.value;
      }),
    ),
    gone: flag('gone', 'left', 'leave'),
    again: allowedAgain,
    dislikes: disliked,
    never: optional(keptOut),
    ageYears,
    kind,
    sex,
    activity,
    who: optional(who),
  },
  run: (asked, house) => {
    if (asked.who === undefined) {
      if (asked.never || asked.portion || asked.dislikes)
        throw new Refusal('no-name', 'I read what is meant, but not for whom.');
      return { eaters: house.eaters.here(), did: undefined, notes: [] };
    }
    const known = 'known' in asked.who ? house.eaters.find(nameKey(asked.who.known)) : undefined;
    const name = 'known' in asked.who ? asked.who.known : asked.who.fresh;
    if (!known && (name.length > longestName || /\d/.test(name))) {
      throw new Refusal(
        'bad-name',
        `"${name}" is no name that I can keep; I may have missed a word of the request.`,
      );
    }
    const self = house.eaters.here().find((eater) => eater.member === house.member.id);
    if (self?.kind === 'child' && nameKey(self.name) !== nameKey(name)) {
      throw new Refusal(
        'not-yours',
        `${self.name} may change their own notes; those of ${name} are for ${name} or an adult to change.`,
      );
    }
    if (asked.gone) {
      if (!known) throw new Refusal('no-such-eater', `There is no eater called ${name}.`);
      house.eaters.leave(known.id);
      return { eaters: [], gone: name, did: `${name} no longer eats here`, notes: [] };
    }
    const never = kept(known?.never, asked.never, asked.again);
    const dislikes = kept(known?.dislikes, asked.dislikes, asked.again).filter(
      (words) => !never.includes(words),
    );
    for (const words of [...(asked.never ?? []), ...(asked.dislikes ?? [])])
      knownFood(house, words, 'keep it from anybody');
    const notThere = (asked.again ?? []).find(
      (words) => !known?.never.includes(words) && !known?.dislikes.includes(words),
    );
    if (notThere !== undefined)
      throw new Refusal(
        'not-kept-out',
        `"${notThere}" is not kept from ${name}: ${sayList(known?.never ?? []) || 'nothing is'}.`,
      );
    const eater: NewEater = {
      name,
      kind:
        asked.kind ??
        known?.kind ??
        (asked.ageYears !== undefined && asked.ageYears < 18 ? 'child' : 'adult'),
      member: known?.member ?? (nameKey(name) === nameKey(house.member.name) ? house.member.id : null),
      ageYears: asked.ageYears ?? known?.ageYears ?? null,
      sex: asked.sex ?? known?.sex ?? null,
      activity: asked.activity ?? known?.activity ?? null,
      portion: asked.portion ?? known?.portion ?? 1,
      sodiumMg: asked.sodiumMg ?? known?.sodiumMg ?? null,
      energyKcal: asked.energyKcal ?? asked.kcal ?? known?.energyKcal ?? null,
      never,
      dislikes,
    };
    const changes =
      known === undefined ||
      Object.keys(asked).some(
        (key) => !['who'].includes(key) && asked[key as keyof typeof asked] !== undefined,
      );
    if (changes) {
      if (known) house.eaters.change(known.id, eater);
      else house.eaters.add(nameKey(name), eater);
    }
    const now = house.eaters.find(nameKey(name))!;
    return {
      eaters: [now],
      did: changes ? `${known ? 'changed' : 'added'} the eater ${name}` : undefined,
      notes: [...stockVerdicts(house, now), ...(changes ? brokenAnywhere(house) : [])],
    };
  },
  say: ({ eaters, gone, did, notes }) => {
    if (gone) return { group: `${gone} is out of new trips. The records stay.`, did };
    if (eaters.length === 0)
      return {
        group:
          'Nobody is recorded as an eater yet.\nFor example: /eater Noa child 7 no peanuts, no milk portion 0.6',
      };
    const lines =
      eaters.length === 1
        ? [...understoodLines(eaters[0]!), ...notes]
        : eaters.map((eater) => understoodLines(eater)[0]!);
    return { group: lines.join('\n'), ...(did === undefined ? {} : { did }) };
  },
});

function kept(
  before: readonly string[] = [],
  more: readonly string[] = [],
  less: readonly string[] = [],
): string[] {
  return [...new Set([...before, ...more])].filter((words) => !less.includes(words));
}
