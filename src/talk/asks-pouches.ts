import { about, ask, dietWords, isAsking } from './ask.ts';
import { type Reader } from './hold.ts';
import { isAccounted } from './aside.ts';
import { Look, quoted } from './look.ts';
import { sayCode } from '#words/say.ts';

/** 'How many curries are left', 'do we have any pizza left', 'anything vegan'. */
export const howMany: Reader = (look) => {
  // 'Has B6 got any lighter' asks for no pouches.
  if (look.says(/ (?:lighter|heavier|drier|dryer) /) && look.said.batches.length > 0) return undefined;
  const counts =
    (dietWords(look) !== '' &&
      look.says(
        / (?:anything|something|any|what|list|show|everything|is there|are there|food|meals) |^ pouches /,
      )) ||
    look.says(
      / how many | number of | do we (?:still )?have | have we got | got any | any(?:thing)? .*left | anything left | is there (?:any|still)| are there (?:any|still)| what s left | what is left | whats left | what do we have | in stock | in the (?:cupboard|cellar|pantry|store) | (?:left|remaining) $| on the shelf /,
    );
  if (!counts || look.says(/ how many (?:cups|ml|mugs|people|days|hours|calories|kcal|loads|trays|grams) /))
    return undefined;
  if (look.says(/ have to /)) return undefined;
  // 'The shelf in the cellar is 14 degrees' tells; 'how many breakfasts at the lake' asks about the trip.
  const isTold = !isAsking(look) && look.said.all.some(({ is }) => is === 'quantity' || is === 'number');
  if (isTold || ((look.said.trips.length > 0 || look.has('trip', 'tour', 'hike')) && about(look) === ''))
    return undefined;
  if (look.has('absorber', 'setting', 'altitude') || (look.has('pack') && !look.has('stock')))
    return undefined;
  const diet =
    isAsking(look) || look.has('show', 'list') || look.says(/^ (?:pouches|meals|food|dishes|everything) /)
      ? dietWords(look)
      : '';
  const meal = look.mealTyped();
  const whose = look.person();
  if (whose !== undefined && look.says(/ for /)) return ask('stock', `${meal ?? ''} for ${whose}`, 4.5);
  if (diet !== '') return ask('stock', `${diet} ${meal ?? ''}`, 4.5);
  if (look.said.codes.length > 0)
    return !isAsking(look)
      ? undefined
      : look.said.meals.length > 0 && look.says(/ how many /)
        ? ask('howmany', look.mealTyped()!, 5)
        : ask('whatof', look.codes(), 3);
  const unknown = meal === undefined ? unknownFood(look) : undefined;
  const score = 3 + (meal === undefined ? 0 : 1) + (look.says(/ how many /) ? 0.5 : 0);
  return ask('howmany', meal ?? (look.said.batches[0] ? about(look) : (unknown ?? '')), score);
};

/** A food that the household has no meal of: 'any pizza left'. */
function unknownFood(look: Look): string | undefined {
  const found =
    / (?:any|some|of|more|many) ([\p{L}]{3,20})(?: \w+)? (?:left|remaining|in stock|do we have|are|have we) /u.exec(
      look.folded,
    )?.[1];
  return found === undefined ||
    /^(?:pouch|pouches|food|meals?|dinners?|servings?|thing|things|stock|bags?|left|are|do|more|of|it|them|that|we|breakfasts?|days?)$/.test(
      found,
    )
    ? undefined
    : found;
}

/** 'How heavy is B3-4', 'what does the pack weigh'. */
export const howHeavy: Reader = (look) => {
  const [meal] = look.said.meals;
  const latest = meal && look.names.batchesOf(meal.names[0], false)[0];
  if (
    isAsking(look) &&
    latest !== undefined &&
    look.said.codes.length + look.said.batches.length === 0 &&
    look.has('lose') &&
    look.has('water')
  )
    return ask('howheavy', `B${latest}`, 5.5);
  if (look.said.batches.length > 0 && look.says(/ how (?:many|much) .*(?:get|make|seal|fill|left|unsealed) /))
    return ask('howheavy', about(look), 5);
  if (
    !look.says(
      / how heavy | how much (?:water |weight )?(?:did|has|have) .*(?:lose|lost) | how much (?:does|do|did|will|should|would) .*weigh| what (?:does|do|did|will|is|s) .*(?:weigh|weight)| weight of | total weight | how many grams | dry weight | (?:what|which) weight | (?:biggest|heaviest|largest|smallest|lightest|littlest|tiniest) (?:\w+ ){0,2}(?:pouch|bag|one) | how much (?:is|are) (?:in|on) /,
    )
  )
    return undefined;
  if (about(look) === '' && look.says(/ (?:biggest|heaviest|largest|smallest|lightest|littlest|tiniest) /))
    return ask(
      'howheavy',
      look.says(/ (?:smallest|lightest|littlest|tiniest) /) ? 'lightest' : 'heaviest',
      4.5,
    );
  if (look.says(/ (?:pack|backpack|rucksack|food|bag) /) && about(look) === '')
    return ask('packweight', look.trip() ?? '', 4);
  const dries = look.said.meals.some(({ names }) =>
    names.some((name) => look.names.batchesOf(name, true).length > 0),
  );
  if (
    look.says(/ when (?:dry|done|ready) | expected | should | supposed | end up | target | aim /) &&
    (look.said.batches.length > 0 || dries)
  )
    return ask('isdry', about(look), 4);
  if (
    look.at('pot').some((i) => look.said.meals.every(({ at }) => !at.includes(i))) &&
    look.said.meals.length > 0
  )
    return ask('recipe', look.mealTyped()!, 5);
  if (about(look) !== '') return ask('howheavy', about(look), 4.5);
  return look.says(/ (?:everything|all|total|together|altogether|stock|cupboard|pantry|cellar|shelf) /)
    ? ask('howheavy', '', 4.5)
    : undefined;
};

/** 'Is the macaroni ready': where no meal is named, the one that has what is named in it, if it dries. */
function byIngredient(look: Look): Look {
  const { meals, batches, codes, all } = look.said;
  if (meals.length + batches.length + codes.length > 0 || !isAsking(look)) return look;
  const at = all.findIndex(
    ({ is, plain }, i) =>
      is === 'word' &&
      plain.length > 3 &&
      /^(?:the|our|that|my)$/.test(all[i - 1]?.plain ?? '') &&
      !isAccounted(plain),
  );
  const meal = at < 0 ? undefined : look.names.mealWith?.(all[at]!.plain);
  return meal === undefined || look.names.batchesOf(meal, true).length === 0
    ? look
    : new Look(look.said.text, look.names, {
        ...look.said,
        meals: [{ names: [meal], at: [at], whole: false }],
      });
}

/** 'B6 isn't dry', 'the mac still looks wet': how it stands, where nothing is measured. */
export const wetSaid: Reader = (look) => {
  const { batches, codes, all, mood } = look.said;
  const isPlain = codes.length === 0 && all.every(({ is }) => is !== 'quantity') && !mood.asks;
  const isOfLoad = batches.length > 0 || driesNow(look);
  return isPlain &&
    isOfLoad &&
    look.says(/ (?:not|isn t|aren t|still|isnt|arent) .*(?:dry|wet|damp|moist|ready|done|soggy|soft) /)
    ? ask('isdry', about(look), 4)
    : undefined;
};

/** Whether a meal that is named is in the dryer. */
const driesNow = (look: Look): boolean =>
  look.said.meals.some(({ names }) => names.some((name) => look.names.batchesOf(name, true).length > 0));

/** 'Is B6 dry', 'when will it be ready'. */
export const dryness: Reader = (typedLook) => {
  const look = byIngredient(typedLook);
  if (
    isAsking(look) &&
    look.says(/ how(?:s| is| s| are) .*(?:doing|going|coming|getting on|looking) /) &&
    (look.said.batches.length > 0 || driesNow(look))
  )
    return ask('isdry', about(look), 4);
  const dry = look.says(/ (?:dry|dried|done|ready|steady|finished) /) && !look.says(/ dry (?:weight|goods) /);
  const when = look.says(
    / (?:how long (?:until|till|before|does|will|has)|when (?:will|is|can|do|should)|how much longer|hours? (?:left|to go)) /,
  );
  if (
    !isAsking(look) ||
    (!dry &&
      !(
        when &&
        (about(look) !== '' ||
          look.has('dryer', 'drying', 'weigh', 'load') ||
          look.says(/^ (?:so |and )*how much longer (?:now |still |to go )?$/))
      ))
  )
    return undefined;
  // Of what is sealed the time that it soaks is asked.
  const isSealed =
    look.said.codes.length > 0 ||
    (look.said.meals.length > 0 && !driesNow(look) && look.said.batches.length === 0);
  if (isSealed && !dry && !look.has('dryer', 'drying', 'load', 'weigh')) return undefined;
  if (
    look.said.trips.length > 0 ||
    look.has('cook', 'everybody', 'soft', 'tender') ||
    look.says(/ (?:finished|done) (?:with|eating|packing) /)
  )
    return undefined;
  return ask('isdry', about(look), 3.5 + (about(look) === '' ? 0 : 0.5) + (look.has('weigh') ? 0.5 : 0));
};

/** 'Can I seal B5', 'is B5 ready to seal', 'which absorber do I need'. */
export const sealable: Reader = (look) => {
  if (!isAsking(look)) return undefined;
  if (look.has('absorber') && look.says(/ (?:which|what|how many|how big|need|size) /))
    return ask(
      'absorber',
      `${look.said.all.find((t) => t.is === 'quantity' && t.unit.kind === 'mass')?.typed ?? ''} ${about(look)}`,
      4,
    );
  if (
    look.said.batches.length > 0 &&
    look.says(
      / (?:go|put|fill|get|pack|come) (?:it |them |that |b\d+ )?(?:in|into) (?:the |our |some )?(?:pouches|bags) /,
    )
  )
    return ask('isdry', about(look), 5);
  if (
    look.has('seal') &&
    look.says(/ (?:can|may|should|could|ready|ok|okay|safe|time) /) &&
    !look.has('check') &&
    (look.said.batches.length > 0 || look.said.meals.length > 0)
  )
    return ask('isdry', about(look), 5);
  return undefined;
};

/** 'How long does the chili keep', 'is B2-1 still good', 'what goes off first'. */
export const keeping: Reader = (look) => {
  const isKeep = look.says(
    / (?:how long .*(?:keep|last|good)|best by|best before|expir\w*|use by|go(?:es|ing)? off|go(?:es|ing)? bad|still (?:good|ok|okay|edible|fine|safe)|too old|out of date|spoil\w*|shelf life|how old|oldest|(?:eat|eaten|used?) first|first to (?:eat|go|use)|keeps?|running out|runs? out(?! of))/,
  );
  const isNamed = look.says(/^ (?:best by|best before|expiry|expiration|use by|shelf life) /);
  if (!isKeep || (!isAsking(look) && !isNamed && !look.says(/ (?:first|oldest) /))) return undefined;
  if (look.says(/ (?:smell|puff|swollen|swell|bloat|leak|loose|mould|mold)/)) return undefined;
  if (look.said.people.length > 0 && look.says(/ how old /))
    return ask('eaterof', quoted(look.person()!), 4.5);
  return ask('keeps', about(look), 4 + (about(look) === '' ? 0 : 0.5));
};

/** 'Which is older, the soup or the curry': the dates of all, the nearest first. */
export const older: Reader = (look) =>
  isAsking(look) &&
  look.said.meals.length > 1 &&
  look.said.codes.length === 0 &&
  look.says(/ (?:older|newer|oldest|newest|longer|fresher|first|sooner) /)
    ? ask('keeps', '', 4.5)
    : undefined;

/** 'Should I throw out B1-5', 'should we eat it now': what its date says. */
/** 'Soup?' alone: how much of it there is. */
export const nameAlone: Reader = (look) => {
  const [meal, another] = look.said.meals;
  if (
    !meal ||
    another ||
    look.said.people.length > 0 ||
    look.leftBy(meal.at).length > 0 ||
    look.said.all.length > meal.at.length + 3
  )
    return undefined;
  return ask('howmany', look.mealTyped() ?? '', 2.5);
};

/** 'B3-1 or B3-3 first?': which keeps less long. */
export const first: Reader = (look) =>
  look.said.codes.length > 1 && isAsking(look) && look.says(/ (?:first|better|rather|sooner) /)
    ? ask('keeps', look.said.codes.map(({ code }) => sayCode(code)).join(' '), 4)
    : undefined;

export const should: Reader = (look) =>
  look.said.codes.length > 0 &&
  isAsking(look) &&
  look.has('throw', 'discard', 'bin', 'toss', 'eat', 'use', 'keep') &&
  look.says(
    / (?:should|shall|must|need to|have to|can i|can we|may|could i|could we|would it be|is it (?:ok|okay|time|a pity)) /,
  )
    ? ask('keeps', look.codes(), 4)
    : undefined;

/** A code alone, 'tell me about B3-1', 'cards please'. */
export const cards: Reader = (look) => {
  const what = look.codes() !== '' ? look.codes() : look.said.batches[0] ? about(look) : '';
  if (what === '') return undefined;
  const isOnly = look.leftBy([...look.codeTokens(), ...look.said.batches.map(({ at }) => at)]).length === 0;
  const wants = look.says(
    / (?:card|cards|(?:tell|know|more|info|information|all) (?:\w+ )?about|details?|info|information|show|what s|whats|what is|see) /,
  );
  if (!isOnly && !wants) return undefined;
  return ask('pouch', what, wants ? 3.5 : 2.5);
};

/** 'Can I undo', 'what was recorded last'. */
export const undoAsks: Reader = (look) =>
  isAsking(look) &&
  !look.says(/ how (?:do|can|to|would|should) /) &&
  look.has('undo', 'revert') &&
  look.said.codes.length === 0
    ? ask('undoable', '', 5)
    : undefined;
