import { type Reader, holdOf } from './hold.ts';
import { lemma } from './lemma.ts';
import type { Look } from './look.ts';
import { peopleText, shown } from './shown.ts';

/** 'What can you do', 'how do I record a pouch', 'help'. */
export const helping: Reader = (look) => {
  if (
    /^\s*(?:(?:please|ok|so|sorry|hi|hey)[\s,]+)*(?:hi|hello|hey|hallo|moin|good (?:morning|evening|afternoon))[\s,.!]*(?:bot|all|everyone|everybody|there)?[\s.!]*(?:please|thanks)?[\s.!\p{Extended_Pictographic}]*$/iu.test(
      look.said.text,
    )
  )
    return shown('firstwords', '', 5);
  if (
    look.says(
      /^ (?:help|start|menu|commands?|requests?|hi|hello|hey|hallo|good (?:morning|evening|afternoon))(?: me| please| bot)? $/,
    )
  )
    return shown('firstwords', '', 5);
  if (
    /^[\s?？!]+$/.test(look.said.text) ||
    look.says(
      / what can (?:you|i|we) (?:do|say|ask|type)| what do you do | how do (?:we|i) (?:begin|start|use (?:you|this|the bot))| what (?:is|are) (?:this|you) (?:for )?$| how does (?:this|it) work| (?:can|could) you help(?: me| us)? $| getting started | can (?:you|u) hear (?:me|us) | who are you | what are you(?: really)? | are you (?:a |an )?(?:real |human |live )?(?:robot|bot|human|person|machine|ai|computer|program) | (?:where|how) (?:do|can|should|shall|could|would) (?:we|i) (?:even )?(?:start|begin|get started) | what (?:do|should) (?:we|i) do first /,
    )
  )
    return shown('firstwords', '', 5);
  const works = /\bhow (?:does|do)\s+\/?(\w+)\s+work/iu.exec(look.said.text)?.[1];
  if (works !== undefined) return shown('help', lemma(works.toLowerCase()), 5);
  const how =
    / how (?:do|can|should|would|to) (?:i |we |you |one )?(?:(record|seal|weigh|load|rate|print|plan|pack|undo|take back|correct|fix|add|delete|remove|cook|scale|enter|change|set|tell|note|mark|log|save|throw|discard|use|label|make|start|cancel|rename|export))/.exec(
      look.folded,
    );
  if (!how) return look.says(/ help (?:with|on|for|me) /) ? shown('help', helpTopic(look), 5) : undefined;
  if (look.codes() !== '' && !/^(?:undo|correct|fix|take back)$/.test(how[1] ?? '')) return undefined;
  return shown(
    'help',
    helpTopic(look),
    look.says(/ how (?:do|can|would|should) (?:i|we) (?:tell|record|enter|note) /) ? 5.5 : 4,
  );
};

function helpTopic(look: Look): string {
  const topics: readonly (readonly [RegExp, string])[] = [
    [
      / (?:correct|fix|wrong|mistake) .*(?:weight|tray|weigh|load|date|record)|(?:weight|tray) .*(?:wrong|mistake)/,
      'fix',
    ],
    [/ (?:undo|take back|correct|fix|mistake|wrong)/, 'undo'],
    [/ (?:what|who) .*(?:can t|cannot|may not|must not|not) (?:eat|have) /, 'eater'],
    [/ (?:seal|pouch|bag)/, 'seal'],
    [/ (?:weigh)/, 'weigh'],
    [/ (?:recipe|ingredient|dish)/, 'recipe'],
    [/ (?:load|batch|dryer|drying|tray)/, 'batch'],
    [/ (?:label|sticker)/, 'label'],
    [/ (?:trip|camp|hike)/, 'trip'],
    [/ (?:rate|rating)/, 'rate'],
    [/ (?:pack)/, 'pack'],
    [/ (?:eater|person|allerg|child|somebody|someone|kid)/, 'eater'],
    [/ (?:wish|want)/, 'want'],
    [/ (?:throw|discard)/, 'discard'],
    [/ (?:used|eaten|eat)/, 'use'],
    [/ (?:altitude|setting|dryer|absorber|unit)/, 'house'],
    [/ (?:cup|mug|tin|measure|word)/, 'our'],
    [/ (?:scale|double|more servings)/, 'scale'],
    [/ (?:fuel|gas|stove)/, 'fuel'],
    [/ (?:water|rehydrate)/, 'water'],
    [/ (?:stock|left)/, 'stock'],
    [/ (?:pick|choose|menu|plan)/, 'pick'],
    [/ (?:export|data)/, 'export'],
    [/ (?:chart|graph)/, 'chart'],
    [/ cook/, 'cook'],
  ];
  return topics.find(([pattern]) => pattern.test(look.folded))?.[1] ?? '';
}

/** 'Weighed the canister: 230 g, now 185 g after 2.5 l'. */
export const fuel: Reader = (look) => {
  if (!look.has('fuel', 'gas', 'canister', 'cartridge', 'stove', 'burner', 'propane', 'butane'))
    return undefined;
  const quantities = look.said.all.filter((token) => token.is === 'quantity');
  // A canister is weighed in grams.
  const masses = look.said.all.filter(
    (token) =>
      (token.is === 'quantity' && token.unit.kind === 'mass') || (token.is === 'number' && token.value >= 30),
  );
  const volumes = quantities.filter((token) => token.is === 'quantity' && token.unit.kind === 'volume');
  if (masses.length === 2 && volumes.length === 1)
    return {
      means: 'fuel',
      words: `${masses.map((one) => (one.is === 'number' ? `${one.typed} g` : one.typed)).join(' ')} ${volumes[0]!.typed}`,
      score: 5,
      left: look.leftBy([
        ...look.at('fuel', 'gas', 'canister', 'cartridge', 'stove', 'burner', 'boil', 'go', 'weigh', 'water'),
        ...look.said.all.flatMap((t, i) => (t.is === 'quantity' || t.is === 'number' ? [i] : [])),
      ]),
      holds: holdOf(look),
    };
  return shown('fuelneed', look.trip() ?? '', look.said.mood.asks ? 4 : 2);
};

/** 'What do we have to cook for Heron Lake'. */
export const cooking: Reader = (look) => {
  if (!look.has('cook', 'prepare', 'make', 'dry')) return undefined;
  // 'I want to cook 14 servings of curry' scales it.
  if (look.mealTyped() !== undefined && peopleText(look) !== '') return undefined;
  if (look.said.codes.length + look.said.batches.length > 0) return undefined;
  if (
    look.says(
      / (?:still|need|have|must|should) (?:\w+ )?(?:to )?(?:cook|prepare|make|dry) | to cook | start (?:cooking|drying) | (?:cook|cooking) (?:for|before|list|plan) | start cooking | what (?:to|should (?:we|i)) (?:cook|make|dry) /,
    )
  )
    return shown('cook', look.trip() ?? '', 4 + (look.trip() ? 1 : 0));
  return undefined;
};
