import { fold } from '#words/near.ts';
import { isAccounted } from './aside.ts';
import { type Reader, holdOf } from './hold.ts';
import { Look, type Meaning } from './look.ts';

/** The text from the first token of a kind on; for what a request reads by itself. */
export function quantityText(look: Look, ...kinds: readonly string[]): string | undefined {
  const token = look.said.all.find((one) => one.is === 'quantity' && kinds.includes(one.unit.kind));
  return token?.typed;
}

interface SettingCue {
  /** The setting's name as /house takes it. */
  readonly name: string;
  readonly cue: RegExp;
  /** Its value as typed, where one stands. */
  readonly value: (look: Look) => string | undefined;
}

const size =
  /\d+(?:[.,]\d+)?\s*(?:cm|mm|in(?:ch(?:es)?)?)?\s*(?:x|×|by)\s*\d+(?:[.,]\d+)?\s*(?:cm|mm|in(?:ch(?:es)?)?|")?/iu;

const behindWords = (look: Look, pattern: RegExp) => pattern.exec(look.said.text)?.[0];

/** By which words people speak of each setting, and what its value looks like. */
const settings: readonly SettingCue[] = [
  {
    name: 'absorbers',
    cue: / absorbers? | oxygen packets? /,
    value: (look) =>
      packsText(look) ??
      (sizesText(look) === undefined
        ? undefined
        : `${sizesText(look)}${isMore(look) ? ' also' : isLess(look) ? ' without' : ''}`),
  },
  {
    name: 'tray weight',
    cue: /^(?=.* trays? )(?!.* (?:dryer|drier|machine|holds?|takes?) )(?!.* have \d+ trays )(?!.* (?:lost|lose|same|gained|lighter|heavier) )/,
    value: (look) =>
      behindWords(look, /\d+(?:[.,]\d+)?\s*(?:lbs?|pounds?)\s*\d+(?:[.,]\d+)?\s*(?:oz|ounces?)/iu) ??
      quantityText(look, 'mass'),
  },
  {
    name: 'dryer',
    cue: / (?:dryer|drier|machine) | trays of | (?:load|loads) (?:\w+ ){0,3}\d+(?: \d+)? ?(?:kg|lbs?) | trays \d+ (?:each|of) | (?:\d+|two|three|four|five|six|seven|eight|nine|ten) trays? (?=.*\d+ ?(?:cm |mm |in |inch )?(?:x|by) ?\d)| have \d+ trays /,
    value: (look) => dryerText(look),
  },
  {
    name: 'watts',
    cue: / \d+ ?(?:w|watts?) | watts? | wattage /,
    value: (look) => /\d+\s*w(?:atts?)?\b/iu.exec(look.said.text)?.[0],
  },
  {
    name: 'pouch',
    cue: / (?:bags?|pouch|pouches|pouch size|mylar) /,
    value: (look) => pouchText(look),
  },
  {
    name: 'storage',
    cue: / (?:storage|cellar|pantry|cupboard|store|store ?room|basement|shelf|freezer|fridge) | (?:keep|kept|stored?) (?:them|it|all|everything|the pouches|our pouches|pouches) .*(?:at|in) /,
    value: (look) =>
      behindWords(look, /(?:-|\bminus\s+)?\d+(?:[.,]\d+)?\s*(?:°|º|degrees?|deg)?\s*[cf]?\b/iu)?.replace(
        /^minus\s+/iu,
        '-',
      ),
  },
  {
    name: 'units',
    cue: / (?:units?|everything in|imperial|metric|ounces|grams|pounds) /,
    value: (look) =>
      look.says(/ (?:imperial|ounces?|pounds?|oz) /)
        ? 'ounces'
        : look.says(/ (?:metric|grams?) /)
          ? 'grams'
          : undefined,
  },
  { name: 'cup', cue: / cups? /, value: (look) => quantityText(look, 'volume') },
  { name: 'scale', cue: / scales? /, value: (look) => quantityText(look, 'mass') },
  { name: 'moisture', cue: / moisture /, value: (look) => behindWords(look, /\d+(?:[.,]\d+)?\s*%/u) },
  {
    name: 'altitude',
    cue: / (?:live|lies? at|kitchen (?:is|lies)|moved? to|altitude|elevation|(?:above|over) (?:the )?sea(?: level)?|sea level|asl|our house|house is|home|up here|our place|moved) | (?:m|metres|meters|ft|feet) up /,
    value: (look) =>
      quantityText(look, 'length') ??
      behindWords(look, /(?<=\b(?:altitude|elevation)\b[\s:=]*(?:is\s+)?)\d{1,4}\b(?!\s*(?:g|kg|cm|ml))/iu),
  },
  {
    name: 'zone',
    cue: / time ?zone | timezone | zone /,
    value: (look) =>
      behindWords(look, /\b[A-Z][A-Za-z]+\/[A-Z][A-Za-z_]+\b/u) ??
      behindWords(look, /(?<=zone\s+(?:is\s+|to\s+)?)\p{L}+(?:[ _]\p{Lu}\p{L}+)?/iu),
  },
];

/** 'No more 100 ml absorbers': those are no longer at hand. */
const isLess = (look: Look): boolean =>
  / (?:no more|no longer|used up|ran out of|run out of|without|got rid of|no) /.test(
    ` ${fold(look.said.text)} `,
  );

/** 'Got 200 ml absorbers too': beside those there are. */
const isMore = (look: Look): boolean =>
  look.says(/ (?:too|also|as well|another size|new size|added?|in addition|besides) /);

/** '50 absorbers of 300 ml', 'opened the 300 ml absorbers': packs as they are counted. */
function packsText(look: Look): string | undefined {
  const { text } = look.said;
  const counted =
    /(\d+)\s*(?:x|×|absorbers?|packs?|packets?|of)\s*(?:of\s*)?(?:the\s*)?(\d+)\s*(?:ml|cc)\b/iu.exec(text) ??
    /(\d+)\s*(?:absorbers?|packs?|packets?)\s*of\s*(?:the\s*)?(\d{2,4})\b/iu.exec(text);
  const left = /(\d+)\s*(?:ml|cc)\b[^\d]*?(\d+)\s*(?:left|packs?|packets?)\b/iu.exec(text);
  const one = /(\d+)\s*(?:ml|cc)\b/iu.exec(text);
  const isOpened = look.says(/ opened /);
  const day = look.says(/ yesterday /) ? ' yesterday' : '';
  const opened = isOpened ? ` opened${day}` : '';
  if (counted) return `${counted[1]} x ${counted[2]} ml${opened}`;
  if (left) return `${left[2]} x ${left[1]} ml${opened}`;
  return one && isOpened ? `${one[1]} ml${opened}` : undefined;
}

/** Figures that stand in one row: '100, 300 and 500 ml'; the row that is nearest to the word. */
function sizesText(look: Look): string | undefined {
  const { all } = look.said;
  const isFigure = (i: number) => {
    const token = all[i];
    // '300s' are absorbers, no seconds.
    return (
      token?.is === 'number' ||
      (token?.is === 'quantity' && (token.unit.kind === 'volume' || token.unitTyped === 's'))
    );
  };
  const word = all.findIndex(({ plain }) => /^(?:absorbers?|oxygen)$/.test(plain));
  const rows = all.reduce<number[][]>((found, _, i) => {
    if (!isFigure(i)) return found;
    const last = found.at(-1)?.at(-1);
    const joins =
      last !== undefined &&
      all.slice(last + 1, i).every(({ plain }) => /^(?:,|and|or|&|\/|\+|ml|cc)$/.test(plain));
    if (joins) found.at(-1)!.push(i);
    else found.push([i]);
    return found;
  }, []);
  const hasUnit = rows.filter((row) => row.some((i) => all[i]!.is === 'quantity'));
  const away = (row: readonly number[]) => Math.min(...row.map((i) => Math.abs(i - word)));
  const row = (hasUnit.length > 0 ? hasUnit : rows).toSorted((x, y) => away(x) - away(y))[0];
  if (!row) return undefined;
  const values = row.map((i) => {
    const token = all[i]!;
    return token.is === 'number' || token.is === 'quantity' ? token.value : 0;
  });
  return `${values.join(' ')} ml`;
}

const pouchMaterial = /\b(?:foil|mylar|alu(?:minium|minum)?|clear|transparent|plastic)\b/iu;
const pouchName = /\b(small|large|big|little|tall|family|mini|single|double)\s+(?:bags?|pouch(?:es)?)\b/iu;

/** 'Our small bags are 15 x 20 cm mylar': name, size, gusset and material, whichever were said. */
function pouchText(look: Look): string | undefined {
  const { text } = look.said;
  const sides = size.exec(text)?.[0];
  const material = pouchMaterial.exec(text)?.[0];
  const gusset = /\bgusset\s+(?:of\s+)?(\d+(?:[.,]\d+)?\s*cm)|(\d+(?:[.,]\d+)?\s*cm)\s+gusset/iu.exec(text);
  const found = [
    sides === undefined ? undefined : pouchName.exec(text)?.[1],
    sides === undefined ? undefined : withUnit(sides, look),
    gusset ? `gusset ${gusset[1] ?? gusset[2]}` : undefined,
    material,
  ].filter((one) => one !== undefined);
  return found.length === 0 ? undefined : found.join(' ');
}

function withUnit(text: string, look: Look): string {
  return /cm|mm|in|"/i.test(text) ? text : `${text} ${look.says(/ inch(?:es)? /) ? 'inch' : 'cm'}`;
}

function dryerText(look: Look): string | undefined {
  const { text } = look.said;
  const counted = /(\d+|one|two|three|four|five|six|seven|eight|nine|ten)\s*(?:trays?|shelves)/iu.exec(
    text,
  )?.[0];
  // 'Trays: 4, each 20 x 40 cm'.
  const listed = /\btrays\s*:?\s*(\d{1,2})\b(?!\s*(?:x|by|cm|g|kg))/iu.exec(text)?.[1];
  const trays = counted ?? (listed === undefined ? undefined : `${listed} trays`);
  const sides = size.exec(text)?.[0];
  const mass = quantityText(look, 'mass');
  const found = [trays, sides === undefined ? undefined : withUnit(sides, look), mass].filter(
    (one) => one !== undefined,
  );
  return found.length === 0 ? undefined : found.join(' ');
}

/** Words by which settings are spoken of; they account for themselves. */
const settingWords =
  'minus absorber oxygen packet tray weigh weight empty tare dryer drier machine hold max maximum load at most up to take bag pouch size measure flat storage cellar pantry cupboard store basement shelf keep degree celsius fahrenheit unit imperial metric ounce gram pound cup scale show step only resolution moisture live altitude elevation above sea level high home house zone timezone time set switch change use put make set setting inch inches x by each 1 have buy get deg c f old new move moved stay wrong should different gusset no more only bigger smaller longer run out pack opened open freezer fridge pouches them today yesterday left ml cc temperature'.split(
    ' ',
  );

/** 'We live at 520 m', 'our bags are 8 x 10 inches', 'switch to imperial units'. */
export const setting: Reader = (look) => {
  const clauses = look.said.text.split(
    /[,;.]\s+|\s+and\s+(?=(?:our|the|my|storage|altitude|absorbers?|bags?|pouch|trays?|dryer|scale|cups?)\b)/iu,
  );
  if (clauses.length < 2 || look.said.mood.asks || look.said.text.length > 400) return oneSetting(look);
  const told = clauses.reduce<string[]>((all, clause) => {
    // '…, max 6 kg' goes on about the setting before.
    if (all.length > 0 && !settings.some(({ cue }) => cue.test(` ${fold(clause)} `)))
      all[all.length - 1] += `, ${clause}`;
    else all.push(clause);
    return all;
  }, []);
  const found = told.map((clause) => oneSetting(new Look(`our: ${clause}`, look.names)));
  if (told.length < 2 || found.some((one) => one === undefined)) return oneSetting(look);
  return (found as Meaning[]).reduceRight((rest, one) => ({ ...one, score: 5, also: rest }));
};

const oneSetting: Reader = (look) => {
  const { all, mood, text } = look.said;
  if (look.said.trips.length > 0 || look.said.meals.some(({ whole }) => whole)) return undefined;
  // 'Show everything in ounces' is an order.
  const isUnits = look.says(
    / (?:show|give|print|everything|weights?) .*in (?:ounces|oz|pounds|grams|imperial|metric)(?: units)? /,
  );
  if (
    look.said.codes.length + look.said.batches.length > 0 ||
    (mood.asks && !(isUnits && !text.includes('?')))
  )
    return undefined;
  const opens =
    /^ (?:an? |each |one |please )?(?:empty )?(?:time zone|dryer|drier|bags?|pouch(?:es)?|trays?|absorbers?|storage|cellar|pantry|scale|cup|altitude|units?|zone|metric|imperial|grams|ounces) /;
  if (
    !opens.test(look.folded) &&
    !look.says(
      / (?:we|we re|our|i|my|the|new|set|switch|change|use|show|house|is|are|to|have|has|live|in|please|got|bought|added|too|also|no|no more) /,
    )
  )
    return undefined;
  const told = settings.flatMap((one) => {
    const value = one.cue.test(look.folded) ? one.value(look)?.trim() : undefined;
    return value === undefined || value === '' ? [] : [{ name: one.name, value }];
  });
  // Units alone are a wish for other units; beside other figures they measure.
  const hasFigures = all.some((token) => token.is === 'number' || token.is === 'quantity');
  const meant = told.filter(({ name }) => name !== 'units' || !hasFigures);
  if (meant.length === 0) return undefined;
  const valueTokens = meant.flatMap(({ value }) =>
    all.flatMap((token, i) => {
      const from = text.toLowerCase().indexOf(value.toLowerCase());
      const isIn = from >= 0 && token.from >= from && token.to <= from + value.length;
      const words = value.toLowerCase().split(/[\s,]+|(?<=\d)x(?=\d)/);
      const figures = (value.match(/\d+(?:[.,]\d+)?/gu) ?? []).map((one) => Number(one.replace(',', '.')));
      const isFigure =
        (token.is === 'quantity' || token.is === 'number') && figures.includes(Math.abs(token.value));
      return isIn || isFigure || token.plain.split(/\s+/).every((word) => words.includes(word)) ? [i] : [];
    }),
  );
  const explicit =
    look.has('set', 'house', 'setting', 'switch', 'change') || look.says(/ we live | our | from now on /);
  // '410 m, not 340' says which figure is right.
  const denied = all.flatMap((token, i) => (token.plain === 'not' || all[i - 1]?.plain === 'not' ? [i] : []));
  // 'We live in Innsbruck at 574 m': the place's name is kept by no setting.
  const place = look.says(/ (?:live|moved?|house|home) /)
    ? all.flatMap(({ typed }, i) =>
        /^(?:in|near|to)$/.test(all[i - 1]?.plain ?? '') && /^\p{Lu}/u.test(typed) ? [i] : [],
      )
    : [];
  const left = look.leftBy([
    ...place,
    ...valueTokens,
    ...look.at(...settingWords),
    ...(look.said.mood.negated === null ? denied : []),
  ]);
  const meaning = {
    ...(place.length === 0 ? {} : { beside: place.map((i) => all[i]!.typed) }),
    means: 'house',
    score: explicit || opens.test(look.folded) ? 4.3 : 2.5,
    // Words by which people speak of anything at all tell no other value.
    left: left.filter((words) => words.split(/\s+/u).some((word) => !isAccounted(word.toLowerCase()))),
    holds: isUnits && mood.asks ? null : holdOf(look, { future: look.says(/ should be /) }),
  };
  return meant
    .map(({ name, value }): Meaning => ({ ...meaning, words: `${name} ${value}` }))
    .reduceRight((rest, one) => ({ ...one, also: rest }));
};

/** 'Remind me 90 days before stuff expires', 'no more weighing reminders'. */
export const reminding: Reader = (look) => {
  if (!look.has('remind', 'reminder', 'nag') || look.said.mood.asks) return undefined;
  const span = /\b(\d+|a|one|two|three|four|six)\s*(days?|weeks?|months?)\b/iu.exec(look.said.text);
  if (span && look.says(/ (?:before|ahead|expire|expires|best by|goes off|go off) /))
    return {
      means: 'house',
      words: `horizon ${span[1] === 'a' ? '1' : span[1]} ${span[2]}`,
      score: 5,
      left: [],
      holds: holdOf(look),
    };
  const kind = look.has('weigh', 'weighing')
    ? 'weigh'
    : look.has('seal')
      ? 'seal'
      : look.has('trip', 'cook')
        ? 'trip'
        : look.says(/ best by | expir/)
          ? 'best-by'
          : '';
  const said = ` ${fold(look.said.text)} `;
  const off = / (?:off|stop|no more|don t|dont|never|no|quit|without) /.test(said);
  const on = look.says(/ (?:on|again|yes|please|start) /);
  if (!off && !on) return undefined;
  return {
    means: 'house',
    words: `remind ${kind} ${off ? 'off' : 'on'}`.replace('  ', ' '),
    score: 4,
    left: [],
    holds: look.said.mood.doubt === null ? null : holdOf(look),
  };
};
