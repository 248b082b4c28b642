import { type Reader, holdOf, idea, people, scoreOf, things, turnedRound } from './hold.ts';
import type { Look } from './look.ts';

const more = new Set(['more', 'extra', 'drier', 'dry', 'short', 'need', 'needed', 'add', 'added']);

const less = new Set(['less', 'fewer', 'wet', 'wetter', 'runny', 'watery', 'soupy']);

/** What is said of how a meal was, in the words that a rating takes. */
function judged(look: Look): { words: string[]; at: number[] } {
  const { all } = look.said;
  const words: string[] = [];
  const at: number[] = [];
  const isVolume = (i: number) => {
    const token = all[i];
    return token?.is === 'quantity' && token.unit.kind === 'volume';
  };
  // 'Poured 300 ml': what it had, not what it lacked.
  const poured = all.findIndex(
    (_, i) => isVolume(i) && ['pour', 'use'].includes(look.said.lemmas[i - 1] ?? ''),
  );
  const volume = all.findIndex((_, i) => isVolume(i) && i !== poured);
  // 'Needed 60 less': where water is spoken of in figures, they are ml.
  const bare = all.findIndex(
    (token, i) =>
      token.is === 'number' && token.value >= 10 && /^(?:more|less|extra)$/.test(all[i + 1]?.plain ?? ''),
  );
  if (volume < 0 && bare >= 0 && look.has('need', 'want', 'water', 'poured')) {
    words.push(`${all[bare]!.typed} ml ${all[bare + 1]!.plain === 'less' ? 'less' : 'more'}`);
    at.push(bare, bare + 1);
  }
  if (volume >= 0) {
    const near = all.slice(volume + 1, volume + 5).map((token) => token.plain);
    const tooMuch =
      look.says(/ too much water| less water| too (?:wet|runny|watery|thin) /) ||
      near.some((word) => less.has(word));
    const tooLittle =
      near.some((word) => more.has(word)) || all.slice(0, volume).some((token) => more.has(token.plain));
    if (tooMuch !== tooLittle || tooLittle) {
      words.push(`${all[volume]!.typed} ${tooMuch ? 'less' : 'more'}`);
      at.push(volume);
    }
  }
  const add = (pattern: RegExp, word: string) => {
    if (look.says(pattern) && !words.includes(word)) words.push(word);
  };
  if (look.says(/ (?:not|wasn t|isn t|never) (?:too |that |so |very )?salty(?! enough)/)) words.push();
  else {
    add(/ not salty enough | bland | (?:needs?|needed|more) salt /, 'not salty enough');
    if (!words.includes('not salty enough')) add(/ salty /, 'too salty');
  }
  if (volume < 0 || !look.says(/ too much water /))
    add(
      / too (?:much|big|large)(?! (?:water|salt))| (?:couldn t|could not|didn t|did not) finish | left (?:half|some|a lot) /,
      'too much',
    );
  add(/ hungry | not enough(?! (?:water|salt))| too (?:little|small)(?! water)| wanted more /, 'hungry');
  const isBad =
    / (?:never again|not again|awful|disgusting|horrible|yuck|yucky|gross|hated|didn t like|did not like|don t like|terrible|inedible) /;
  if (look.says(isBad)) words.push('not again');
  else
    add(
      / (?:again|delicious|great|loved|love|yummy|tasty|amazing|excellent|fantastic|favou?rite|best(?! (?:by|before))|good|lovely|perfect|super|5 stars?|five stars?) /,
      'again',
    );
  add(
    / (?:crunchy|chewy|underdone|gritty) | (?:still|too|a bit) hard | not soft(?: enough)? /,
    'still crunchy',
  );
  add(/ (?:mushy|soggy) | too soft /, 'mushy');
  const longer = / (\d{1,2} ?min(?:utes?)?) (longer|shorter)(?: soak(?:ing)?)? /.exec(look.folded);
  if (longer) words.push(`${longer[1]!} ${longer[2]!}`);
  if (poured >= 0 && words.length > 0) {
    words.unshift(`poured ${all[poured]!.typed}`);
    at.push(poured);
  }
  if (look.says(/ (?:water|amount) (?:was |is )?(?:just |exactly |about )?right | just right /))
    words.push('water just right');
  return { words, at };
}

const tasteWords =
  '1 2 3 4 5 need more less extra water salty salt bit too much big small hungry again great good delicious love yummy tasty amazing awful nice lovely star perfect bland enough right just little way taste rate rating give think find make runny dry wet thick thin fine super excellent fantastic favourite favorite best disgusting horrible never finish want crunchy chewy underdone gritty hard soft mushy soggy minute min longer shorter soak still bit pour use half leave left lot'.split(
    ' ',
  );

/** 'B2-1 needed 50 ml more water', 'the chili was too salty'. */
export const rating: Reader = (look) => {
  const thing = things(look);
  const { words, at } = judged(look);
  const unclear = look.says(
    / (?:not|wasn t|isn t|never) (?:too |that |so |very )?(?:salty|bland|hungry)(?! enough)/,
  );
  const unmeasured =
    !/ \d+ ?(?:ml|l|cup|cups|dl|cl) /.test(look.folded) &&
    look.says(/ (?:more|less|too much|too little) water | too (?:dry|wet|runny|watery|thick|soupy|thin) /) &&
    !look.said.mood.asks;
  if (thing && words.length === 0 && unmeasured)
    return {
      means: 'rate',
      words: thing.words,
      score: 5,
      left: [],
      holds: 'I need how much: say 40 ml more, or 40 ml less',
    };
  const taste =
    / (?:too|a bit|a little|rather|quite|very|so|much|bit|more|less|really) (sweet|spicy|hot|sour|bitter|peppery|greasy|oily|fatty|rich|heavy|strong|mild|sticky|dull|plain|sharp|smoky) /.exec(
      look.folded,
    )?.[1];
  if (thing && words.length === 0 && taste !== undefined && !look.said.mood.asks && !look.has('water'))
    return {
      means: 'rate',
      words: thing.words,
      score: 5,
      left: [],
      holds: `"${taste}" has no place in a rating: I keep the water, the salt, how much it was and whether again`,
    };
  if (!thing || (words.length === 0 && !unclear)) return undefined;
  if (look.said.mood.asks || look.has('wish', 'fancy')) return undefined;
  // 'I want soup again' wishes.
  if (look.has('want') && !look.says(/ wanted more /)) return undefined;
  const whose = look.said.people.find(({ names: [name] }) => name !== look.names.me)?.names[0];
  const portion = words.includes('too much') || words.includes('hungry');
  return {
    means: 'rate',
    words: `${thing.words} ${words.join(', ')}${whose !== undefined && portion ? ` for ${whose}` : ''}`,
    score: scoreOf(look.has('rate', 'need', 'taste') && 2, 1.5, thing.byCode ? 1.5 : 1, at.length > 0 && 1),
    left: look.leftBy([
      ...thing.at,
      ...at,
      ...people(look),
      ...look.at(...tasteWords, 'not', "don't", "didn't", "couldn't", 'next', 'time'),
      ...look.at(...idea('eat')),
    ]),
    holds: unclear
      ? turnedRound('not')
      : holdOf(look, {
          negated: words.some((word) => word.startsWith('not')) || portion,
          future: true,
          part: portion,
        }),
  };
};
