import { ask, isAsking } from './ask.ts';
import type { Reader } from './hold.ts';

/** Questions of the kitchen that no record answers, each with the words that show it. */
const topics: readonly (readonly [topic: string, cue: RegExp])[] = [
  ['hot', / (?:weigh\w*) .*(?:hot|warm|cool|cold|cooled) | (?:hot|warm|cool|cooled|cold) .*(?:weigh\w*|on the scale) /],
  ['wait', / how long (?:may|can|should|could|do|does|is) .*(?:wait|leave|lie|left|stay|stand).* (?:dry|bags?|seal\w*|pouch\w*|trays?) | (?:wait|leave it) .*(?:before|until) .*(?:seal\w*|bag\w*) /],
  ['again', / (?:reuse|re use|use) .*(?:absorbers?|little packets?|oxygen packets?).*(?:again|twice|more than once|second time)? /],
  ['packet', / (?:absorbers?|(?:little|small|oxygen|tiny|silver) (?:packets?|sachets?|bags?)) .*(?:eat|eaten|ate|touch|open|swallow\w*|poison\w*|danger\w*|safe|taste|toxic) | (?:eat|touch|open|swallow\w*|taste) .*(?:absorbers?|(?:little|small|oxygen|tiny|silver) (?:packets?|sachets?)) /],
  ['liquid', / (?:milk|broth|juice|stock|tea|coffee|wine|beer) .*instead of (?:the )?water | instead of (?:the )?water / ],
  ['little', / (?:half|less|too little|only some|not enough|a bit) (?:of )?(?:the )?water /],
  ['together', / (?:dry|dried|load|in the (?:dryer|drier)) .*(?:together|at the same time|at once|side by side|in one go) | (?:together|at the same time) .*(?:dryer|drier|drying) /],
]; // prettier-ignore

/** 'Should the trays cool before we weigh them', 'can I touch the little packet', 'what happens with half the water'. */
export const advising: Reader = (look) => {
  if (!isAsking(look) || look.said.codes.length > 0) return undefined;
  const [topic] = topics.find(([, cue]) => cue.test(look.folded)) ?? [];
  if (topic === undefined) return undefined;
  // How much water, and how much of a load fits, are figures.
  const isFigure = look.says(
    / how (?:much|many) | \d+ ?(?:ml|g|kg|l) | fit | double | absorber (?:do|size|for) | which absorber/,
  );
  const isOfOne =
    topic === 'together'
      ? look.said.meals.length > 1
      : topic !== 'little' || look.says(/ (?:what (?:happens|if)|bad|wrong|matter) /);
  return isFigure || !isOfOne ? undefined : ask('advice', topic, 6.2);
};
