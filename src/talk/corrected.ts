import { table } from '#words/table.ts';
import { codesDenied, type Reader, idea, turnedRound } from './hold.ts';
import { type Look, type Meaning, quoted } from './look.ts';
import { pastDayText } from './topic.ts';

const backWords =
  / (?:(?:take|took|taking|go) (?:that|it|this|the last(?: \w+)?|them|those|these)? ?back|undo|undone|scrap that|revert|never mind that|(?:that|this|it|weighing|sealing|loading|rating|load|weight|b\d+(?: \d+)?)(?: \w+){0,3} was (?:all |just )?(?:wrong|a mistake|my mistake|an error)|(?:delete|cancel|forget|remove|drop|ignore|scrap|scratch|erase|strike|withdraw|disregard) (?:that|it|this|those|what i (?:just )?(?:said|typed|wrote|entered|sent|put)|(?:the|my|our) (?:last|previous|latest)(?: \w+)?|my (?:message|entry|note))|(?:pressed|tapped|sent|recorded|entered|typed|counted) (?:it |that |this )?(?:twice|double|two times)|my mistake|(?:didn t|didnt|did not) mean (?:that|it|to)|wrong button|(?:it was|that was|i was) (?:just |only )?(?:a question|asking)|i (?:just |only )(?:asked|wanted to ask)) /;

const deeds: readonly (readonly [RegExp, string])[] = [
  [/ (?:seal|sealed|sealing|pouches|bagging) /, 'sealed'],
  [/ (?:load|loaded|loading|batch) /, 'loaded'],
  [/ (?:weigh|weighed|weighing|weight|weights) /, 'weighed'],
  [/ (?:eaten|ate|eating|used|using|use) /, 'used'],
  [/ (?:thrown|threw|discard|discarded|throwing|binned|binning) /, 'discarded'],
  [/ (?:rated|rating|rate) /, 'rated'],
  [/ (?:packed|packing) /, 'packed'],
];
const deedOf = (look: Look): string => deeds.find(([pattern]) => pattern.test(look.folded))?.[1] ?? '';

const thingOf = (look: Look): string => {
  const codes = look.codes();
  const [batch] = look.said.batches;
  return codes !== '' ? codes : batch ? `B${batch.batch}` : '';
};

const told = (means: string, words: string, score: number, holds: string | null): Meaning => ({
  means,
  words: words.trim(),
  score,
  left: [],
  holds,
});

const itAsks = 'that reads as a question';
const small = table<number>({ two: 2, couple: 2, three: 3, few: 3, four: 4, five: 5 });

/** 'Take that back', 'undo the last two', 'undo the sealing of B4', 'put it back again'. */
export const takingBack: Reader = (look) => {
  const redoes = look.says(
    / (?:put (?:it|that|them|this|everything|all) back(?: in| again)?|redo|undo (?:the|that|my) undo|bring (?:it|that) back|restore (?:it|that|this)|put back what|(?:it|that) was right (?:after all|before)|take back the undo) /,
  );
  if (redoes && thingOf(look) === '' && !look.has('stock', 'shelf', 'cupboard', 'pack', 'backpack'))
    return told('undo', 'redo', 5.5, look.said.mood.asks ? itAsks : null);
  if (!backWords.test(look.folded)) return undefined;
  const { negated } = look.said.mood;
  // 'I did not mean that' takes back; 'do not undo that' does not.
  if (negated !== null && !look.says(/ (?:didn t|did not|didnt) mean | not (?:right|correct|what i) /))
    return told('undo', '', 5, turnedRound(negated));
  if (look.says(/ (?:question|asking|asked|to ask) /)) return told('undoable', '', 5, null);
  const thing = thingOf(look);
  const count = / last (two|couple|three|few|four|five|\d+) /.exec(look.folded)?.[1];
  const deed = thing === '' && count !== undefined ? '' : deedOf(look);
  const whole = look.has('everything', 'all') && thing === '' ? pastDayText(look) : '';
  const whose = look.said.people.find(({ names: [name] }) => name !== look.names.me)?.names[0];
  if (whole !== '') return told('undo', `everything ${whole}`, 6, look.said.mood.asks ? itAsks : null);
  if (whose !== undefined && thing === '' && deed === '') return told('undo', quoted(whose), 6, null);
  const words = thing !== '' ? `${thing} ${deed}` : count ? `last ${small[count] ?? count}` : deed;
  const isOnly = thing !== '' && look.says(/ (?:was|were) (?:a mistake|wrong|an error) /) && deed === '';
  return told('undo', isOnly ? thing : words, thing === '' ? 5 : 6.5, look.said.mood.asks ? itAsks : null);
};

/** Whether what is denied stands behind another clause's beginning than the codes, and the deed before it. */
function isDeniedElsewhere({ said: { all, codes, mood } }: Look): boolean {
  const at = all.findIndex(({ plain }) => plain === mood.negated);
  const last = codes.at(-1)!.at;
  const border = all.findIndex(({ plain }, i) => i > last && i < at && /^(?:and|but|,|;)$/.test(plain));
  return (
    at > last &&
    border > 0 &&
    all[border + 1]?.is === 'word' &&
    !/^(?:we|i|it|they|not|did|was|were)$/.test(all[border + 1]!.plain) &&
    !/['’]?t$/.test(all[border + 1]!.plain)
  );
}

/** 'We never ate B1-1', 'B3-2 was thrown away by mistake', 'B1-1 is still here': a pouch that is not gone after all. */
export const stillThere: Reader = (look) => {
  const codes = look.codes();
  if (codes === '' || look.said.mood.asks || look.said.mood.either) return undefined;
  // 'B1-2 eaten, not B1-4', 'B2-3 eaten and Rosa isn't coming' deny something else.
  if (codesDenied(look).length > 0 || isDeniedElsewhere(look)) return undefined;
  const isHere = look.says(
    / (?:(?:is|are|s) (?:still|actually|not) (?:here|there|in (?:the )?(?:stock|cupboard|cellar|pantry|shelf)|gone|left|unopened)|still have|still there|still here|not gone|turned up|restore|undiscard|(?:put|take) .* back (?:in|into|on) (?:the )?(?:stock|shelf|cupboard)|found (?:it|them) again|by mistake|by accident|mistakenly|in error|unopened) /,
  );
  const gone = look.has(...idea('eat'), ...idea('throw'));
  const denied = gone && look.said.mood.negated !== null && !look.says(/ (?:do not|don t|dont) /);
  if ((!isHere && !denied) || look.says(/ (?:everything else|the rest|the others?) /)) return undefined;
  if (look.says(/ (?:hold|tight|loose|vacuum|seal\w*|pack\w*|finish\w*|opened) /)) return undefined;
  return told('fix', `${codes} not eaten`, 6.5, 'it would be in stock again');
};

/** 'B5 was loaded twice', 'B7 never happened', 'delete batch 5': a load that there was not. */
export const neverWas: Reader = (look) => {
  const [batch, another] = look.said.batches;
  if (!batch || another || look.said.codes.length > 0 || look.said.mood.asks) return undefined;
  const isNone = look.says(
    / (?:never (?:happened|existed|was)|(?:loaded|recorded|entered|in there|there|counted) twice|(?:is|was) (?:a )?(?:duplicate|double|entered twice|the same as)|doesn t exist|does not exist) /,
  );
  const isDeleted =
    look.has('delete', 'remove') &&
    look.leftBy([batch.at, ...look.at('delete', 'remove', 'batch', 'load', 'record')]).length === 0;
  return isNone || isDeleted ? told('fix', `B${batch.batch} never happened`, 6.5, null) : undefined;
};
