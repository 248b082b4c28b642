import { ingredientsOf } from '#core/meal.ts';
import type { House } from '#house/house.ts';
import { asRecord, resolver } from '#house/recipe-text.ts';
import { becauseWords, verdictOn } from '#house/verdicts.ts';
import { part } from '#words/parts.ts';
import { sayG } from '#words/say.ts';
import { question } from './question.ts';

// Common practice, no source; the two hours and the absorber are cautions of the design.

const said: Readonly<Record<string, (house: House) => readonly string[]>> = {
  hot: () => [
    'Weigh soon after taking them out, and each time in the same way.',
    'Dry food takes up moisture within the hour; a hot tray lets a scale wander by a gram or two.',
  ],
  wait: () => [
    'Seal within the hour after the last weighing: dry food takes up the moisture of the kitchen.',
    'Later: weigh it again first. If it is heavier, dry it on.',
  ],
  again: () => ['No: what lay in the open for an hour has done its work. Take a fresh one for each pouch.'],
  packet: () => [
    'The little packet takes up oxygen. It is no food: leave it shut, and throw it away when the pouch is opened.',
    'If somebody swallowed what is in it: ask a doctor or the poison line.',
  ],
  liquid: (house) => {
    const contents = ingredientsOf(asRecord(resolver(house)('100 ml milk')));
    const not = house.eaters.here().flatMap((eater) => {
      const verdict = verdictOn(eater, { contents });
      return verdict.is === 'blocked'
        ? [`With milk not for ${eater.name}: ${becauseWords(verdict.by)}.`]
        : [];
    });
    return [
      'The figures are for boiling water. Another liquid: the same amount, as hot as it may be, and wait longer.',
      ...not,
      'Milk makes it spoil sooner: eat at once.',
    ];
  },
  little: () => [
    'It stays hard in the middle and tastes salty. No harm is done: pour the rest, stir, and wait on.',
    'How much it takes: ask for the water of that pouch.',
  ],
  together: ({ settings }) => [
    'Yes, each as a batch of its own: load them one after the other, each with its trays.',
    `What is dry first waits for the other.${settings.loadLimitG === null ? '' : ` All trays together: at most ${sayG(settings.loadLimitG, settings.units)}.`} Smells go over.`,
  ],
};

export const advice = question({
  name: 'advice',
  about: 'common practice',
  asked: ['should the trays cool before we weigh them?', 'can we dry soup and oats together?'],
  takes: {
    topic: part<string>('what it is about', (reading) => {
      const index = [...reading.left()].find((i) => Object.hasOwn(said, reading.all[i]!.plain));
      if (index === undefined) return undefined;
      reading.take(index);
      return reading.all[index]!.plain;
    }),
  },
  answer: ({ topic }, house) => [...said[topic]!(house), 'Common practice.'].join('\n'),
});
