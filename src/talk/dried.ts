import { momentOf, weightsOf } from './amounts.ts';
import { isAccounted } from './aside.ts';
import type { Look, Meaning } from './look.ts';
import { type Reader, holdOf, idea, people, scoreOf } from './hold.ts';

/** 'Gross', 'with the trays': the trays were on the scale. */
const isGross = (look: Look): boolean =>
  look.has('gross') ||
  look.says(
    / (?:with|including|incl|plus) (?:the |their |its |all )?(?:empty )?trays? | trays? (?:and all|included|on the scale) /,
  );

/** 'B6 205 203 208 201', 'mac is 817 g': weights of a load that dries. */
export const weighing: Reader = (look) => {
  const { batches, codes } = look.said;
  const verbs = look.at(...idea('weigh'));
  const { words, at, trays } = weightsOf(look);
  if (words.length === 0 || codes.length > 0) return undefined;
  const isVolume = look.said.all.some(
    (token) => token.is === 'quantity' && token.unit.kind !== 'mass' && token.unit.kind !== 'time',
  );
  const isOtherScale =
    look.has('scale') &&
    (look.has('pouch', 'serving', 'recipe') ||
      look.says(/ (?:steps?|resolution) | to \d| half grams? | (?:shows?|reads?) (?:half|tenths?|whole) /));
  if (
    isOtherScale ||
    isVolume ||
    look.says(/ tray weights? /) ||
    look.has('seal', 'house', 'absorber', 'salt', 'sodium', 'serving', 'person', 'empty')
  )
    return undefined;
  // 'Noa weighs 24 kg' is no load.
  const isOfPerson = look.said.people.some(({ at }) =>
    /^(?:weigh|weighs|weighed)$/.test(look.said.all[at.at(-1)! + 1]?.plain ?? ''),
  );
  if (isOfPerson && batches.length === 0 && look.mealTyped() === undefined && look.says(/ weighs /))
    return undefined;
  const { drying } = look.names;
  const only = drying.length === 1 ? `B${drying[0]}` : drying.length > 1 ? '' : undefined;
  const which = batches[0] ? `B${batches[0].batch}` : (look.mealTyped() ?? only);
  const moment = momentOf(look);
  const onlyFigures = look.leftBy(at).length === 0 && at.length > 1;
  const isNamed = batches.length > 0 || look.mealTyped() !== undefined;
  // Figures alone are the weights of what dries; in a sentence they want a word for it.
  if (which === undefined || (!isNamed && !onlyFigures && verbs.length === 0)) return undefined;
  const [meal] = look.said.meals;
  const isDrying = meal !== undefined && look.names.batchesOf(meal.names[0], true).length > 0;
  if (batches.length === 0 && verbs.length === 0 && isNamed && words.length > 1 && !isDrying)
    return undefined;
  const tray = words.length === 1 && trays.length === 1 ? `tray ${trays[0]} ` : '';
  const gross = isGross(look) ? ' gross' : '';
  // 'Tray 1 199, tray 2 201', and no others: each is a weighing of its own tray.
  if (
    trays.length > 1 &&
    trays.length === words.length &&
    which !== undefined &&
    which !== '' &&
    !isRow(trays, look, which)
  )
    return trays
      .map((no, i): Meaning => ({
        means: 'weigh',
        words: `${which} tray ${no} ${words[i]!}`,
        score: 6,
        left: [],
        holds: holdOf(look),
      }))
      .reduceRight((rest, one) => ({ ...one, also: rest }));
  return {
    means: 'weigh',
    words:
      `${which ?? ''} ${tray}${words.join(' ')}${gross}${moment.words === '' ? '' : ` ${moment.words}`}`.trim(),
    score: scoreOf(verbs.length > 0 && 3, batches.length > 0 ? 2 : 1, words.length > 1 && 1, isDrying && 1.5),
    left: look.leftBy([
      ...verbs,
      ...at,
      ...moment.at,
      ...batches.map((one) => one.at),
      ...look.said.meals.flatMap((one) => one.at),
      ...people(look),
      ...look.said.all.flatMap((token, i) =>
        token.plain === 'tray' || look.said.all[i - 1]?.plain === 'tray' ? [i] : [],
      ),
      ...look.at(
        'gross',
        'gram',
        'read',
        'show',
        'get',
        'come',
        'tray',
        'dryer',
        'total',
        'altogether',
        'again',
        'everything',
        'whole',
        'check',
        'batch',
        'load',
      ),
    ]),
    holds: holdOf(look),
  };
};

/** What was said behind and is kept by nobody, as typed. */
function besideOf(look: Look, behind: readonly number[]): Pick<Meaning, 'beside'> {
  const words = behind.flatMap((i) => {
    const token = look.said.all[i]!;
    return token.is === 'word' && !isAccounted(token.plain) ? [token.typed] : [];
  });
  return words.length === 0 ? {} : { beside: words };
}

/** Every tray from the first on, in their order: the whole load. */
const isRow = (trays: readonly number[], look: Look, which: string): boolean =>
  trays.every((no, i) => no === i + 1) && (look.names.traysOf?.(which) ?? trays.length) === trays.length;

/** 'Started the dryer with barley soup 560 570 565 555'. */
export const loading: Reader = (look) => {
  const ideasAt = look.at(...idea('load'));
  const meal = look.mealTyped();
  const { words, at, trays } = weightsOf(look);
  const isPutIn =
    look.says(
      / (?:put|putting|pop|shove|load|loaded|loading) (?:\w+ ){0,4}(?:in|into the (?:dryer|drier))(?: |$)/,
    ) &&
    look.said.codes.length === 0 &&
    !look.has('pouch', 'bag', 'jar', 'cellar', 'cupboard', 'pantry', 'freezer', 'water', 'pack', 'list');
  if (
    meal !== undefined &&
    words.length === 0 &&
    isPutIn &&
    !look.said.mood.asks &&
    look.said.batches.length === 0
  )
    return { means: 'batch', words: meal, score: 6, left: [], holds: null };
  if (meal === undefined || words.length === 0 || look.said.batches.length > 0) return undefined;
  const goesIn = look.says(/ (?:went|goes|gone|go|is|are) in(?:to)? /) ? look.at('go') : [];
  const starts = [...look.at('start', 'put', 'fill', 'begin', 'run', 'switch'), ...goesIn];
  if (ideasAt.length === 0 && words.length < 2) return undefined;
  // 'Tray 3 of the mac is down to 209', 'mac: 205 203': a meal that dries is weighed, unless it is said to be loaded.
  const isDrying = look.names.batchesOf(look.said.meals[0]!.names[0], true).length > 0;
  const saysLoad = starts.length > 0 || look.has('load', 'batch', 'dryer', 'drier');
  if (isDrying && !saysLoad && (words.length > 1 || trays.length > 0)) return undefined;
  if (look.has('empty', 'seal', 'water', 'serving', 'pouch', 'salt')) return undefined;
  const moment = momentOf(look);
  const keep = isGross(look) ? ' gross' : '';
  const raw = look.has('raw', 'uncooked') ? ' raw' : '';
  // 'Two trays of oats, 640 and 655 g': how many there are, said again.
  const counted = look.said.all.flatMap((token, i) =>
    token.is === 'number' && token.value === words.length && look.said.lemmas[i + 1] === 'tray' ? [i] : [],
  );
  const done = [...ideasAt, ...starts, ...counted, ...at, ...look.said.meals.flatMap((one) => one.at)];
  const behind = look.asideBehind(done);
  const factor = /\bx ?\d+(?:[.,]\d+)?\b/iu.exec(look.said.text)?.[0];
  return {
    means: 'batch',
    words: `${meal} ${factor ? `${factor} ` : ''}trays ${words.join(' ')}${keep}${raw}${moment.words === '' ? '' : ` ${moment.words}`}`,
    score: scoreOf(ideasAt.length > 0 ? 3 : 1, starts.length > 0 && 1, 2),
    ...besideOf(look, behind),
    left: look.leftBy([
      ...behind,
      ...ideasAt,
      ...starts,
      ...counted,
      ...at,
      ...moment.at,
      ...look.said.meals.flatMap((one) => one.at),
      ...people(look),
      ...look.at('with', 'include', 'dry', 'gross', 'raw', 'gram', 'hour', 'oclock'),
      ...look.said.all.flatMap((token, i) =>
        look.said.all[i - 1]?.plain === 'tray' || token.plain === 'x' ? [i] : [],
      ),
    ]),
    holds: holdOf(look),
  };
};

/**
 * 'Tray 2 was 230 not 203': a weight put right. What a tray is or weighs now is a weighing, and an empty one's a setting:
 * only 'was', 'should be' or the wrong figure itself puts a record right.
 */
export const correcting: Reader = (look) => trayPutRight(look) ?? loadPutRight(look);

/** 'The curry load had 570 on tray 1, I typed 580', 'the B2 load was 620 on tray one': a loaded weight put right. */
function loadPutRight(look: Look): Meaning | undefined {
  const { all, mood, batches, meals } = look.said;
  const tray = all.findIndex((token, i) => token.is === 'number' && all[i - 1]?.plain === 'tray');
  const isLoad = look.has('load', 'batch') || look.says(/ (?:typed|wrote|entered|should have|wrong) /);
  if (tray < 0 || mood.asks || !isLoad || !look.says(/ (?:was|were|had|is|should|typed|wrote|entered|not) /))
    return undefined;
  const figures = all.flatMap((token, i) =>
    i !== tray &&
    (token.is === 'number' || (token.is === 'quantity' && token.unit.kind === 'mass')) &&
    token.value >= 20
      ? [{ i, value: token.value }]
      : [],
  );
  const isWrong = ({ i }: { i: number }) =>
    all
      .slice(Math.max(0, i - 3), i)
      .some(({ plain }) => /^(?:typed|wrote|entered|put|said|not|instead|recorded|noted)$/.test(plain));
  const wrong = figures.find(isWrong);
  const [right, another] = figures.filter((one) => one !== wrong);
  const meal = meals[0]?.names[0];
  const no = batches[0]?.batch ?? (meal === undefined ? undefined : look.names.batchesOf(meal, false)[0]);
  const trayNo = all[tray];
  if (!right || another || no === undefined || trayNo?.is !== 'number' || !(batches.length > 0 || wrong))
    return undefined;
  return {
    means: 'fix',
    words: `B${no} tray ${trayNo.value} ${right.value} g${wrong ? ` not ${wrong.value} g` : ''}`,
    score: 7.5,
    left: [],
    holds: wrong ? null : 'it would put an old weight right',
  };
}

function trayPutRight(look: Look): Meaning | undefined {
  const { all, text } = look.said;
  const m =
    /\btray\s+(\d{1,2}|one|two|three|four|five|six)\s+(?:of B\d+\s+)?(was(?: loaded with)?|is|weighed|should (?:be|have been)|weighs)\s+(\d+(?:[.,]\d+)?)\s*g?(?:\s*(?:,|and)?\s*(?:not|instead of)\s+(\d+(?:[.,]\d+)?)\s*g?)?(?![\p{L}\d])/iu.exec(
      text,
    );
  if (!m || look.said.mood.asks || look.has('empty', 'tare')) return undefined;
  const [, tray, verb, rightG, wrongG] = m;
  const isTurned = /^\s*(?:no|nope|wrong|correction|sorry|oops|wait|actually)\b/iu.test(look.said.text);
  if (wrongG === undefined && !/^(?:was|should)/iu.test(verb!) && !isTurned) return undefined;
  const [batch] = look.said.batches;
  const [from, to] = [m.index, m.index + m[0].length];
  // '8 oz' is not 8 g.
  if (all.some((token) => token.from < to && token.to > to)) return undefined;
  return {
    means: 'fix',
    words: `${batch ? `B${batch.batch} ` : ''}tray ${tray} ${rightG} g${wrongG === undefined ? '' : ` not ${wrongG} g`}`,
    score: 7.5,
    left: look.leftBy([
      ...all.flatMap((token, i) => (token.from >= from && token.to <= to ? [i] : [])),
      ...look.said.batches.map(({ at }) => at),
      ...people(look),
      ...look.at(
        'sorry',
        'oops',
        'no',
        'mistake',
        'wrong',
        'correction',
        'actually',
        'sure',
        'weight',
        'weigh',
        'load',
      ),
    ]),
    holds: null,
  };
}
