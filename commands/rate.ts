import { command } from '#chat/command.ts';
import { correctionFor, learntWords } from '#house/corrections.ts';
import { batchNumbered, driedFacts, nameKey, pouchCoded } from '#house/figures.ts';
import { pouchFacts } from '#core/meal.ts';
import { again, smallWords, moreMl, portion, salt, soakMoreMin } from '#words/rate-parts.ts';
import { Lacking, Refusal } from '#core/refusal.ts';
import { measure, optional, part, pouchesEaten } from '#words/parts.ts';
import { takeName } from '#words/names.ts';
import { sayCode, sayCount, sayNumber, sayWater, startMl } from '#words/say.ts';
import { ownEater } from '#house/self.ts';
import { howBatchEaten } from '#house/eating.ts';
import type { House } from '#house/house.ts';
import type { Rating } from '#store/ratings.ts';
import { byEvening } from '#core/evenings.ts';
import { soakMinutes } from '#core/soak.ts';
import { minutesAt, soakOf } from '#house/soaking.ts';

/** One rating moves a portion by a twentieth; chosen, so that ten say what one must not. */
const portionStep = 0.05;

export default command({
  name: 'rate',
  alsoCalled: ['rated'],
  usage: '/rate <pouch> [40 ml more] [too salty] [too much] [hungry] [again] [for Noa]',
  summary: 'how a meal was; the next water figure and portions learn from it',
  examples: [
    '/rate B4-2 40 ml more, too salty',
    '/rate B4-2 water just right, again',
    '/rate B4-2 too much for Noa',
    '/rate B4-2 poured 300 ml, 40 ml more, still crunchy',
  ],
  help: [
    'What several people say of one evening counts as one. "poured 300 ml" tells what was really poured; "still crunchy", "mushy" or "10 min longer" teach how long it stands.',
    'Later ratings weigh more. Water stays within 0.7 to 1.3 of what the weights say.',
    '"too much" and "hungry" change the portion of whoever says so, or of whom it is said for.',
  ],
  records: true,
  mayLeaveOut: true,
  doubtRepeats: true,
  offers: { of: 'eaten' },
  takes: {
    codes: pouchesEaten,
    pouredMl: optional(measure('volume', 'what was poured, such as poured 300 ml', 'poured', 'used', 'had')),
    soakMoreMin,
    moreMl,
    salt,
    portion,
    again,
    small: smallWords,
    eater: optional(
      part<string>('for whom, such as for Noa', (reading, names) =>
        names.eaters.length === 0 ? undefined : takeName(reading, names.eaters, 'eater'),
      ),
    ),
  },
  run: (
    { codes, pouredMl: poured, soakMoreMin: longer, moreMl: more, salt, portion, again, eater: named },
    house,
  ) => {
    const [code, second] = codes;
    if (!code || second) throw new Refusal('one-pouch', 'One pouch at a time, please.');
    const pouch = pouchCoded(house, code);
    if (more === undefined && longer === undefined && !salt && !portion && again === undefined) {
      throw new Lacking('nothing-said', `I read ${sayCode(code)}, but not how it was.`, [
        { label: 'We would have it again', add: 'again' },
        { label: 'Not again', add: 'not again' },
      ]);
    }
    const batch = batchNumbered(house, code.batch);
    const facts = driedFacts(house, batch);
    if ((more ?? longer) !== undefined && howBatchEaten(house, batch).isDry)
      throw new Refusal(
        'eaten-dry',
        `${pouch.meal} is eaten dry here, so no water was poured by my figure. With water from now on: /recipe ${pouch.meal} soaked`,
      );
    const before = correctionFor(house, batch);
    const balanceMl = pouchFacts(pouch.dryG, facts).waterMl;
    const tonight = sameEvening(house, nameKey(pouch.meal));
    // What was poured by the figure of this evening, not by what somebody's rating made of it since.
    const pouredMl = poured ?? balanceMl * (tonight.pouredShare ?? before.correction);
    const soakedMin = tonight.soakedMin ?? soakMinutes(100, soakOf(house, batch).extraMin);
    if (more !== undefined && !(pouredMl + more > 0))
      throw new Refusal(
        'too-little-water',
        `${Math.abs(Math.round(more))} ml less than the ${Math.round(pouredMl)} ml of that pouch leaves none.`,
      );
    const whose = named === undefined ? ownEater(house) : house.eaters.find(nameKey(named));
    house.ratings.rate({
      mealKey: nameKey(pouch.meal),
      batch: batch.id,
      eater: whose?.id ?? null,
      byMember: house.member.id,
      atMs: house.nowMs,
      balanceMl: more === undefined ? null : balanceMl,
      pouredMl: more === undefined ? null : pouredMl,
      moreMl: more ?? null,
      soakedMin: longer === undefined ? null : soakedMin,
      soakMoreMin: longer ?? null,
      salt: salt ?? null,
      portion: portion ?? null,
      again: again ?? null,
    });
    let portionNow: { name: string; portion: number; ratings: number } | undefined;
    if (portion && whose) {
      const changed =
        Math.round(
          Math.min(
            4,
            Math.max(0.1, whose.portion * (portion === 'too much' ? 1 - portionStep : 1 + portionStep)),
          ) * 100,
        ) / 100;
      house.eaters.change(whose.id, { ...whose, portion: changed });
      portionNow = { name: whose.name, portion: changed, ratings: house.ratings.portionsOf(whose.id) };
    }
    const ratings = house.ratings.ofMeal(nameKey(pouch.meal));
    return {
      pouch,
      more,
      counted:
        more !== undefined &&
        more !== 0 &&
        poured === undefined &&
        before.ratings === 0 &&
        tonight.pouredShare === null
          ? Math.round(pouredMl)
          : null,
      standsMin: longer === undefined ? null : minutesAt(house.settings.altitudeM, soakOf(house, batch)),
      nextMl: balanceMl * correctionFor(house, batch).correction,
      learnt: learntWords(correctionFor(house, batch)),
      salty: ratings.filter((r) => r.salt === 'too salty').length,
      rated: ratings.length,
      salt,
      again: {
        yes: ratings.filter((r) => r.again === true).length,
        no: ratings.filter((r) => r.again === false).length,
        said: again,
      },
      portionNow,
      noEater: portion !== undefined && whose === undefined,
      settings: house.settings,
    };
  },
  say: ({
    pouch,
    more,
    counted,
    standsMin,
    nextMl,
    learnt,
    salty,
    rated,
    salt,
    again,
    portionNow,
    noEater,
    settings,
  }) => {
    const lines = [`Noted for ${pouch.meal}.`];
    if (more !== undefined)
      lines.push(
        `Next time a pouch of ${Math.round(pouch.dryG)} g gets ${sayWater(nextMl, settings)}. ${learnt.join(' ')}`,
      );
    if (counted !== null)
      lines.push(
        `Counted from ${counted} ml poured. Was it another amount? /undo, then /rate ${sayCode(pouch)} poured ${startMl(counted)} ml, and how much more or less.`,
      );
    if (standsMin !== null) lines.push(`Next time it stands ${standsMin} min at home.`);
    if (salt !== undefined)
      lines.push(
        salt === 'too salty'
          ? `${salty} of ${rated} ratings call it too salty. Less salt in the pot: /scale ${pouch.meal} sodium 500 mg.`
          : 'Salt can be added at camp, never taken out.',
      );
    if (again.said !== undefined) lines.push(`Again: ${again.yes} for, ${again.no} against.`);
    if (portionNow)
      lines.push(
        `${portionNow.name}'s portion is ${sayNumber(portionNow.portion)} now, learnt from ${sayCount(portionNow.ratings, 'rating')}; /eater ${portionNow.name} portion 1 sets it.`,
      );
    if (noEater) lines.push('Whose portion? You are not an eater yet: /eater me.');
    return { group: lines.join('\n'), did: `rated ${sayCode(pouch)}, ${pouch.meal}` };
  },
});

/** What was poured and how long it stood by the figures of this evening, from the first who spoke of it; null where nobody did. */
function sameEvening(
  house: House,
  mealKey: string,
): { pouredShare: number | null; soakedMin: number | null } {
  const tonight = byEvening([...house.ratings.ofMeal(mealKey), { atMs: house.nowMs }])
    .at(-1)!
    .filter((one): one is Rating => 'mealKey' in one);
  const water = tonight.find(({ pouredMl, balanceMl }) => pouredMl !== null && balanceMl !== null);
  return {
    pouredShare: water ? water.pouredMl! / water.balanceMl! : null,
    soakedMin: tonight.find(({ soakedMin }) => soakedMin !== null)?.soakedMin ?? null,
  };
}
