import { unaccountedIn } from './aside.ts';
import { type Reader, holdOf, idea } from './hold.ts';
import { dayText } from './asks-trips.ts';
import type { Look } from './look.ts';
import { sayCode } from '#words/say.ts';
import { pastDayText, whoAndWhen } from './topic.ts';
import { peopleText, shown, thing, volumeOrMass } from './shown.ts';

/** 'How much water for the oats', 'water B2-1 but we are at 2400 m', 'how long do I let the curry stand'. */
export const water: Reader = (look) => {
  const what = pouchesCounted(look) ?? thing(look);
  const isShared =
    look.said.codes.length > 0 && look.says(/ (?:split|share|divide) .*(?:between|among|for|into) /);
  const isBoil = look.has('boil') && look.says(/ how (?:much|many) /);
  const isWater = look.has('water', 'pour', 'rehydrate', 'hydrate') || isShared || isBoil;
  const isSoak =
    look.has('soak', 'steep') ||
    look.says(/ (?:boiling|soaking|waiting|standing) time /) ||
    (look.said.mood.asks && look.says(/ (?:stand|sit|wait|(?<!the )rest(?! of)) /));
  const isLong = look.says(/ how long /) && !look.says(/ how much /);
  if ((!isWater && !isSoak) || look.says(/ (?:lose|lost|loses|gone|gave up|evaporated?) /)) return undefined;
  if (!look.said.mood.asks && look.says(/ (?:ml|l|cups?) (?:more|less|extra|fewer) /)) return undefined;
  // 'Exactly the right amount of water' judges.
  if (!look.said.mood.asks && look.says(/ (?:was|were|right amount|perfect|enough|too much|too little) /))
    return undefined;
  if (look.has('salt', 'recipe', 'need') && look.says(/ (?:ml|cup|l) more /)) return undefined;
  const isMuch = look.says(/ how (?:much|many|long)| (?:cups?|ml|mugs?) of water | water (?:for|to) /);
  if (what === '' && !isMuch) return undefined;
  const altitude = volumeOrMass(look, 'length');
  const dry = volumeOrMass(look, 'mass');
  const pouches =
    /\b(\d+|one|two|three|four|five|six|seven|eight)\s+(?:[\p{L}-]+\s+){0,3}(?:pouch(?:es)?|bags?|packs?)\b/iu.exec(
      look.said.text,
    )?.[1];
  const many =
    pouches === undefined || look.codes() !== '' || /^B\d+-\d/u.test(what) ? '' : ` ${pouches} pouches`;
  const isHow = look.says(/ how (?:much|many) /);
  const isMay = look.says(/ (?:can|could|may|does|do|is|will|would|what|without) /);
  const isAll =
    look.codes() === '' && what.startsWith('"') && look.says(/ all (?:of )?(?:the|our|those|these) /);
  const isCold = look.says(/ (?:cold|lukewarm|stream|tap|unboiled|not boiling|without boiling) /) && isWater;
  return shown(
    isCold && !isHow && isMay
      ? 'coldwater'
      : (isSoak && !isWater) || (isLong && what !== '')
        ? 'soak'
        : 'water',
    `${dry === undefined ? '' : `${dry} `}${isAll ? 'all ' : ''}${what}${many}${many === '' ? peopleText(look) : ''}${altitude === undefined ? (isSoak && !isWater ? ` ${look.trip() ?? ''}` : '') : ` at ${altitude}`}${isCold && (isHow || !isMay) ? ' cold' : ''}${sharersText(look)}`,
    2 + (what === '' ? 0 : 2) + (isMuch ? 1 : 0) + (isCold ? 1 : 0),
  );
};

/** 'Two soups and one chili': the pouches of each that would be taken first; undefined where one is too few or none is counted. */
function pouchesCounted({ said: { all, meals, codes }, names }: Look): string | undefined {
  if (meals.length < 2 || codes.length > 0) return undefined;
  const counts = meals.map(({ at }) => {
    const before = all[at[0]! - 1];
    return before?.is === 'number' && Number.isInteger(before.value)
      ? before.value
      : /^(?:a|an)$/.test(before?.plain ?? '')
        ? 1
        : undefined;
  });
  if (!counts.some((count) => count !== undefined)) return undefined;
  const found = meals.map(({ names: [name] }, i) => names.pouchesOf(name).slice(0, counts[i] ?? 1));
  return found.every((some, i) => some.length === (counts[i] ?? 1) && some.length > 0)
    ? found.flat().map(sayCode).join(' ')
    : undefined;
}

/** 'for Ana and Noa', 'in mugs': who shares what is poured. */
function sharersText(look: Look): string {
  const named = [...new Set(look.said.people.map(({ names: [name] }) => name))];
  const isMugs = look.has('mug');
  if (named.length > 1 && look.says(/ (?:for|between|among) /)) return ` for ${named.join(' and ')}`;
  return isMugs && look.says(/ (?:in|into) (?:our |the |\d+ |two |three |four )?mugs? /) ? ' mugs' : '';
}

/** Words behind which an amount is at hand, and those that end what it is of. */
const hasAtHand =
  /^(?:with|from|using|have|has|got|only|just|left|make|does|there|there's|theres|bought|found)$/;
const endsFood =
  /^(?:make|makes|for|do|does|give|gives|get|gets|in|can|could|left|the|so|how|what|which|and|but|here|at|is|are|will|would|to|that|,|\?|\.|;)$/;

/** 'With 1.2 kg lentils', 'I only have half a kilo of chickpeas': an amount of an ingredient. */
function amountAtHand({ said: { all, meals } }: Look): string | undefined {
  const at = all.findIndex(
    (token, i) =>
      token.is === 'quantity' &&
      token.unit.kind === 'mass' &&
      all.slice(Math.max(0, i - 3), i).some(({ plain }) => hasAtHand.test(plain)),
  );
  const token = all[at];
  if (token?.is !== 'quantity') return undefined;
  const from = all[at + 1]?.plain === 'of' ? at + 2 : at + 1;
  const named = new Set(meals.filter(({ whole }) => whole).flatMap(({ at: of }) => of));
  let to = from;
  while (all[to]?.is === 'word' && !endsFood.test(all[to]!.plain) && !named.has(to)) to++;
  const food = all.slice(from, to).map(({ typed }) => typed);
  return food.length === 0 ? undefined : `${token.value} ${token.unitTyped} ${food.join(' ')}`;
}

/** 'Double the curry', 'chili for 10 people', 'how many servings does 1 kg of mince make'. */
export const scaling: Reader = (look) => {
  const meal = look.mealTyped();
  if (meal === undefined || look.said.codes.length + look.said.batches.length > 0) return undefined;
  if (look.has('absorber', 'label', 'sticker')) return undefined;
  const { text } = look.said;
  const atHand = amountAtHand(look);
  const times = look.has('double', 'twice')
    ? 'x2'
    : look.has('triple')
      ? 'x3'
      : look.says(/ (?:one|1) and a half (?:times|of) | 1 5 times /)
        ? 'x1.5'
        : look.says(/ half (?:the|of the|as much|a|batch) /) &&
            !look.says(/ (?:eat|ate|eaten) /) &&
            atHand === undefined
          ? 'x0.5'
          : look.says(/ quarter (?:of )?(?:the|of|a) /) && !look.has('eat')
            ? 'x0.25'
            : undefined;
  const sodium =
    /(?:under|below|at most|max(?:imum)?|up to|no more than|less than|sodium|salt)\D{0,25}(\d+(?:[.,]\d+)?)\s*mg|(\d+(?:[.,]\d+)?)\s*mg\D{0,12}(?:sodium|salt)/iu.exec(
      text,
    );
  const pouches = /(\d+)\s+(?:pouches|bags)\s+(?:of|with|at|x)\s+(\d+(?:[.,]\d+)?)\s*(?:g|grams?)?\b/iu.exec(
    text,
  );
  const trays = look.said.all.find(
    (token, i) =>
      token.is === 'number' && Number.isInteger(token.value) && look.said.lemmas[i + 1] === 'tray',
  );
  const people = peopleText(look);
  const wants = look.has(
    'scale',
    'cook',
    'make',
    'double',
    'triple',
    'recipe',
    'enlarge',
    'keep',
    'need',
    'portion',
    'serving',
  );
  const byNumber = look.said.all.find(
    (token, i) =>
      token.is === 'number' && token.value < 20 && /^(?:times|by)$/.test(look.said.all[i - 1]?.plain ?? ''),
  );
  if (byNumber?.is === 'number' && !look.has('eat', 'use'))
    return shown('scale', `${meal} x${byNumber.value}`, 5);
  if (times !== undefined && !look.has('eat', 'use')) return shown('scale', `${meal} ${times}`, 5);
  if (sodium && (look.has('keep', 'scale', 'make', 'salt', 'sodium') || wants))
    return shown('scale', `${meal} sodium ${sodium[1] ?? sodium[2]} mg`, 5);
  if (pouches && !look.has('seal'))
    return shown('scale', `${meal} to ${pouches[1]} pouches of ${pouches[2]} g`, wants ? 5 : 2);
  if (trays?.is === 'number' && wants) return shown('scale', `${meal} to ${trays.value} trays`, 4);
  const isShort = look.said.all.length < 9 && !look.has('weigh', 'load', 'tray', 'seal', 'eat', 'use', 'add');
  if (
    atHand !== undefined &&
    (wants || isShort || look.says(/ how (?:many|much) | what (?:else|do|would|goes|comes) /))
  )
    return shown('scale', `${meal} with ${atHand}`, 5.5);
  const isOfLine =
    look.said.mood.asks &&
    look.says(/ how (?:much|many) (?!servings?|portions?|people|pouches|bags|water|ml)\p{L}+ /u);
  if (people !== '' && isOfLine && !look.has('water', 'eat', 'salt', 'sodium', 'calorie', 'protein'))
    return shown('scale', `${meal} to ${people.replace(' for ', '')} servings`, 6);
  if (people !== '' && wants && !look.has('water', 'eat', 'want', 'pouch'))
    return shown('scale', `${meal} to ${people.replace(' for ', '')} servings`, look.has('recipe') ? 5 : 3.5);
  if (people !== '' && look.said.all.length < 8 && !look.said.mood.asks)
    return shown('scale', `${meal} to ${people.replace(' for ', '')} servings`, 2.4);
  return undefined;
};

/** 'Labels for B5', 'stickers for the oats'. */
export const labels: Reader = (look) => {
  if (!look.has(...idea('label')) && !(look.has('print') && thing(look) !== '')) return undefined;
  if (
    look.says(/ (?:what|which|where|how) (?:is|do|does|are) | (?:what|which) (?:date|day) /) &&
    !look.has('print')
  )
    return undefined;
  const everything = look.says(/ (?:everything|all|every) /) && thing(look) === '';
  const single = look.says(/ single /) ? ' single' : '';
  const start = / (?:start|starts|starting|begin|beginning|from) (?:\w+ ){0,3}(\d{1,2}) /.exec(
    look.folded,
  )?.[1];
  const from = start === undefined ? '' : ` from ${start}`;
  return shown(
    'label',
    everything ? `all${from}` : `${thing(look)}${single}${from}`,
    thing(look) === '' && !everything ? 2 : 4,
  );
};

/** 'Drying chart of B6', 'the sodium chart for Heron Lake'. */
export const charts: Reader = (look) => {
  if (
    !look.has(...idea('chart')) &&
    !look.says(
      / (?:drying )?picture of | as a (?:picture|graphic|drawing|image) | (?:a|any) (?:drawing|picture|graphic) (?:of|for) /,
    )
  )
    return undefined;
  const what = look.trip() ?? (look.has('stock', 'cupboard', 'shelf') ? 'stock' : thing(look));
  // 'A chart of how much Noa grew' is none of ours.
  if (what === '' && unaccountedIn(look).length > 0) return undefined;
  return shown('chart', what, 4);
};

/** 'Choose the food for Heron Lake', 'plan the meals', 'keep the plan'. */
export const picks: Reader = (look) => {
  const verbs =
    look.has('pick', 'choose', 'select', 'suggest', 'propose') && !look.says(/ pick\w* (?:\w+ )?up /);
  const plans =
    look.says(/ (?:plan|menu)(?:s)? /) &&
    !look.says(
      / (?:planning date|plan to|plan(?:ning)? (?:a|an|another|our|the)? ?(?:new )?(?:trip|tour|hike)) /,
    );
  const isKeep =
    look.says(
      / keep (?:it|that|this|the (?:plan|picks|menu|pouches)|these|those)(?! (?:in|at|on|under|near|where|cold|cool|frozen|dry)\b)/,
    ) || look.says(/ (?:plan|picks) (?:is|are|looks?) (?:good|fine|great)(?:,)? keep /);
  const slot = look.slotMeal();
  const day = dayText(look);
  // 'Keep Friday as it is', 'leave Saturday dinner as planned'.
  if (
    look.says(/^ (?:please )?(?:keep|leave) /) &&
    !look.says(/ (?:leave|keep) .* (?:out|off|away|from) /) &&
    (day !== '' || slot !== undefined) &&
    look.names.trips.length > 0 &&
    look.codes() === '' &&
    (look.mealTyped() === undefined || look.says(/ as (?:[\p{L} ]+ )?(?:is|are|planned|stands?) $/u))
  )
    return {
      means: 'pick',
      words: `keep ${day} ${slot?.meal ?? ''} ${look.trip() ?? ''}`.replace(/ +/gu, ' ').trim(),
      score: 4,
      left: [],
      holds: holdOf(look),
    };
  if (isKeep)
    return {
      means: 'pick',
      words: `${look.trip() ?? ''} keep`.trim(),
      score: 4,
      left: [],
      holds: holdOf(look),
    };
  if (
    look.codes() !== '' &&
    look.says(/^ why /) &&
    !look.says(/ (?:no|gone|missing|thrown|threw|discarded|binned|eaten|there) /)
  )
    return shown('pick', `why ${look.codes()}`, 4);
  if (!verbs && !plans) return undefined;
  const why = look.says(/ why /) && look.codes() !== '' ? ` why ${look.codes()}` : '';
  const food = look.has('food', 'meal', 'pouch', 'menu', 'dinner', 'eat', 'plan');
  const unknownPlace =
    look.trip() === undefined
      ? (/\bfor\s+((?:\p{Lu}[\p{L}'’-]*)(?:\s+\p{Lu}[\p{L}'’-]*)*)/u.exec(look.said.text)?.[1] ?? '')
      : '';
  return shown(
    'pick',
    `${look.trip() ?? unknownPlace}${why}`,
    (verbs ? 3 : 2) + (food ? 1 : 0) + (look.trip() ? 1 : 0) + (why ? 3 : 0),
  );
};

/** 'Send me all our data as a spreadsheet'. */
export const exporting: Reader = (look) => {
  const data =
    look.has('export', 'spreadsheet', 'excel', 'csv', 'json', 'download', 'backup') ||
    look.says(/ (?:all )?(?:our|my|the) (?:data|records) /) ||
    look.says(/ back ?up /);
  return data ? shown('export', '', 6) : undefined;
};

/** 'Put the trips into our calendar', 'a calendar file please'. */
export const calendar: Reader = (look) =>
  look.has('calendar', 'ical', 'ics') && look.said.codes.length === 0 ? shown('calendar', '', 5) : undefined;

/** 'Show me the stock', 'list the pouches'. */
export const stock: Reader = (look) =>
  look.has('show', 'list', 'see', 'give', 'print') &&
  look.says(/ (?:stock|cupboard|inventory|pouches|shelf|cellar|pantry) /) &&
  look.said.codes.length === 0
    ? shown('stock', look.mealTyped() ?? '', 4)
    : undefined;

/** 'What did we do yesterday', 'show the history'. */
export const logs: Reader = (look) => {
  if (look.says(/ what happens (?:if|when) /)) return undefined;
  if (
    look.says(
      / (?:show|see|the|your|our) (?:log|history|journal) | ^log | what (?:was|did (?:we|i|you|they)) (?:recorded?|do|done|change|changed|enter|note)(?: |$)| who (?:did|recorded|changed|entered) | what (?:all )?(?:happened|was recorded|went on|did we do|was done) (?:on |since |today|yesterday|lately|last|this|the |over )| what s new | what (?:has )?changed | (?:last|latest|recent) (?:entries|entry|changes|records|things? recorded) /,
    )
  )
    return shown('log', whoAndWhen(look), pastDayText(look) === '' ? 3.5 : 5);
  const few =
    / (?:last|latest|recent|newest) (\d+|two|three|four|five|ten|few) (?:entries|entry|changes|records|things) /.exec(
      look.folded,
    )?.[1];
  if (few !== undefined && !look.has('undo', 'take', 'delete'))
    return shown('log', few === 'few' ? '5 entries' : `${few} entries`, 4.5);
  return undefined;
};
