import { about, ask, avoided, diets, isAsking, isFoodNotMeal } from './ask.ts';
import { dayText } from './asks-trips.ts';
import { type Reader } from './hold.ts';
import { Look, quoted } from './look.ts';

/** 'Is there peanut in the mac': of two meals the one that is only a food's word, in front of 'in', is the food. */
function foodInMeal(look: Look): Look {
  const { meals, all } = look.said;
  const [food, meal] = meals;
  const isFood =
    food !== undefined &&
    meal !== undefined &&
    !food.whole &&
    food.at.length === 1 &&
    /^(?:in|inside)$/.test(all[food.at[0]! + 1]?.plain ?? '');
  return isFood ? new Look(look.said.text, look.names, { ...look.said, meals: meals.slice(1) }) : look;
}

/** 'May Noa eat the chili', 'is the curry ok for Ben', 'what can Noa have', 'does the curry have gluten'. */
export const mayEat: Reader = (typedLook) => {
  const look = isFoodNotMeal(typedLook) ? typedLook.withoutMeals() : foodInMeal(typedLook);
  const { said } = look;
  const who = said.people.map(({ names: [name] }) => name);
  const isMay = look.says(
    / (?:may|can|can t|cannot|cant|could|should|is|are|ok|okay|safe|fine|good|clear|allowed|suit|suits|suitable|works?|eats?|have|has|right) /,
  );
  const hasThing = said.meals.length + said.codes.length + said.batches.length > 0;
  const isList = look.says(/ (?:show|list|find|give) .*(?:with|containing|without|contains?) /);
  if (!isAsking(look) && !isList) return undefined;
  if (
    look.says(
      / (?:weigh|seal|cook|make|print|labels?|stickers?|charts?|pack|weight|come|coming|comes|wish|wished|want|wants|throw|toss|bags?|put|store|freeze|swap|replace|substitute|exchange|instead) /,
    )
  )
    return undefined;
  if (look.says(/ when /)) return undefined;
  // 'Could I serve …', 'do I have to stir': whoever asks does something else than eat.
  const onlyMe = who.length > 0 && who.every((name) => name === look.names.me);
  if (
    onlyMe &&
    !look.says(/ (?:eat|have(?! to)|allowed|safe|ok|okay|suit|suits|good|clear|for me|allergic) /)
  )
    return undefined;
  if (
    look.says(/ (?:sodium|salt|calories|kcal|protein|servings?|stir|water|ml|planned|plan) /) &&
    hasThing &&
    avoided(look) === undefined
  )
    return undefined;
  const whom =
    who.length > 0
      ? who.map(quoted).join(' ')
      : look.says(/ (?:everyone|everybody|all of us|anyone|anybody|who|which of us) /)
        ? 'everybody'
        : '';
  if (
    whom !== '' &&
    hasThing &&
    isMay &&
    look.says(
      / (?:may|can|can t|cannot|cant|mustn t|must not|could|ok|okay|safe|fine|clear|allowed|suits?|suitable|eat|eats|have|for) /,
    ) &&
    !look.says(
      / (?:who|which of us) (?:ate|used|had|threw|sealed|made|cooked|loaded|weighed|recorded|discarded|opened|did) /,
    )
  ) {
    if (
      look.says(/ (?:ate|eaten|had|did|has|have) (?!gluten|milk)/) &&
      !look.says(/ (?:may|can|can t|cannot|cant|could|ok|okay|safe) /)
    )
      return undefined;
    return ask('mayeat', `${about(look)} for ${whom}`, 5);
  }
  if (
    who.length > 0 &&
    !hasThing &&
    !look.says(/ have to | know | written | noted /) &&
    dayText(look) === '' &&
    look.slotMeal() === undefined &&
    !look.says(/ (?:did|last|ate|had) /) &&
    look.said.all.every(({ is }) => is !== 'quantity') &&
    look.says(/ (?:what|which|anything|something|everything|meals?|pouches|food) /) &&
    look.says(/ (?:may|can|could|eat|have|safe|ok|clear|allowed) /)
  )
    return ask(said.mood.negated === null ? 'whatfor' : 'eaterof', who.map(quoted).join(' '), 5);
  if (
    whom === 'everybody' &&
    !hasThing &&
    avoided(look) === undefined &&
    look.says(/ (?:which|what) (?:meals?|dishes|food|pouches) .*(?:fine|ok|okay|safe|clear|suit|good) /)
  )
    return ask('whatfor', look.names.eaters.map(quoted).join(' '), 5);
  const avoid = avoided(look);
  if (
    who.length > 0 &&
    !hasThing &&
    avoid !== undefined &&
    (look.says(/ (?:may|can|eat|have|allowed|allergic) /) || look.said.all.length < 6)
  )
    return diets.test(avoid)
      ? ask('eaterof', who.map(quoted).join(' '), 4.5)
      : ask('mayfood', `${avoid} for ${whom}`, 4.5);
  if (
    avoid !== undefined &&
    (hasThing || look.says(/ (?:which|what|anything|any|everything|something|meals?|dishes) /)) &&
    look.says(/ (?:contain|contains|containing|have|has|in|got|free|with|any|is|are|there|nuts?) /)
  )
    return hasThing ? ask('holds', `${about(look)} ${avoid}`, 5) : ask('anyholds', avoid, 4);
  return undefined;
};

/** 'How much salt in the soup', 'how many calories in B2-1'. */
export const nutrients: Reader = (look) => {
  if (about(look) === '') return undefined;
  // 'Was it too salty for anyone' asks how it was liked.
  if (look.says(/ (?:was|were) .* too salty /)) return undefined;
  // 'Which has more protein, soup or curry' compares.
  if (look.said.meals.length > 1 && look.says(/ (?:more|less|most|least|higher|lower) /)) return undefined;
  const each = look.has('pouch', 'bag') && look.said.codes.length === 0 ? ' each' : '';
  const isNamed = look.says(
    /^ (?:calories|kcal|energy|salt|sodium|protein|fat|carbs|nutrition) (?:of|in|for)? ?/,
  );
  if (isNamed)
    return ask(
      'nutrition',
      `${about(look)} ${look.says(/^ (?:calories|kcal|energy) /) ? 'energy' : look.says(/^ (?:salt|sodium) /) ? 'sodium' : 'all'}${each}`,
      5,
    );
  if (
    look.says(/ (?:salt|sodium|salty) /) &&
    look.says(/ (?:how|much|what|is|does|amount|many) /) &&
    isAsking(look) &&
    !look.says(/ \d+ mg /)
  )
    return ask('nutrition', `${about(look)} sodium${each}`, 5);
  if (look.says(/ (?:calories|kcal|energy|kilojoules?|kj) /) && isAsking(look))
    return ask('nutrition', `${about(look)} energy${each}`, 5);
  if (look.says(/ (?:protein|fat|fibre|fiber|carbs?|carbohydrates?|nutrition|nutrients?) /) && isAsking(look))
    return ask('nutrition', `${about(look)} all${each}`, 5);
  return undefined;
};

/** 'What is in the mac and cheese', 'show the recipe'. */
export const ingredients: Reader = (look) => {
  const meal = look.mealTyped();
  if (meal === undefined || look.said.codes.length > 0) return undefined;
  if (
    look.says(
      / (?:what s|whats|what is|what goes|what went) (?:in|into) | ingredients? | (?:made (?:of|from|with)) | (?:show|see|give) .*recipe | recipe (?:of|for) | how (?:do|did) (?:we|you|i) (?:make|cook) /,
    )
  )
    return ask(look.says(/ recipe | how (?:do|did) /) ? 'recipe' : 'whatsin', meal, 5);
  return undefined;
};

/** 'Who is vegetarian', 'what is Noa allergic to', 'who cannot have milk'. */
export const eaters: Reader = (look) => {
  if (!isAsking(look)) return undefined;
  if (
    look.said.people.length > 0 &&
    look.said.meals.length === 0 &&
    look.said.codes.length === 0 &&
    look.says(
      / (?:know|tell .*|info|information|card|recorded|written(?: down)?|noted(?: down)?|stored|kept|down|record) (?:about|of|on|for) /,
    )
  )
    return ask('eaterof', quoted(look.person()!), 4);
  const diet = diets.exec(look.said.text)?.[1] ?? avoided(look);
  const hasThing = look.said.meals.length + look.said.codes.length > 0;
  if (
    look.says(
      /^ (?:who|which of us|who s|whos|anyone|anybody|is anyone|is anybody|does anyone|does anybody) /,
    ) &&
    !hasThing &&
    (diet !== undefined || look.says(/ (?:allerg\w*|diets?|picky|avoid\w*) /))
  )
    return ask('whoavoids', diet?.replace(' ', '-') ?? '', 5);
  if (
    look.said.people.length > 0 &&
    !hasThing &&
    look.says(
      / (?:allerg\w*|avoid\w*|not eat|can t|cannot|never|how old|age|portion|(?:sodium|salt|kcal|energy|calories) .*(?:day|daily)|(?:sodium|salt) limit|limit|calories|diet|dislikes?|hate|hates|intoleran\w*) /,
    )
  )
    return ask('eaterof', quoted(look.person()!), 4.5);
  if (
    look.says(
      / who (?:eats|are|is) (?:the )?(?:eaters?|with us|recorded|here|in the (?:house|family)) | list (?:of )?eaters | who (?:all )?eats(?: here| with us)? $/,
    )
  )
    return ask('eater', '', 3);
  return undefined;
};
