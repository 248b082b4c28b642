import { dryerWords } from '#words/dryer-parts.ts';
import { coldWords, crispWords, pieceWords } from '#words/weigh-parts.ts';
import { momentOf } from './amounts.ts';
import { type Reader, holdOf, people, scoreOf } from './hold.ts';

/** 'The dryer stopped at 14:00', 'the pump runs again since 4', 'we moved B4 to the cellar dryer'. */
export const dryer: Reader = (look) => {
  const machine = look.at('dryer', 'pump', 'machine', 'power', 'electricity', 'vacuum');
  const [batch] = look.said.batches;
  if (machine.length === 0 && batch === undefined) return undefined;
  if (look.said.codes.length > 0 || look.said.all.some(({ is }) => is === 'quantity')) return undefined;
  const wordsAt = (kind: keyof typeof dryerWords) =>
    look.said.all.flatMap(({ plain }, i) => (dryerWords[kind].includes(plain) ? [i] : []));
  const isAgain = look.has('again') || look.says(/ (?:back|on again|running again) /);
  const [stopped, resumed, moved] = [wordsAt('stopped'), wordsAt('resumed'), wordsAt('moved')];
  const kind =
    moved.length > 0 && batch !== undefined && machine.length > 0
      ? 'moved'
      : stopped.length > 0
        ? 'stopped'
        : resumed.length > 0 && machine.length > 0 && isAgain
          ? 'resumed'
          : undefined;
  if (kind === undefined || (kind === 'stopped' && machine.length === 0)) return undefined;
  const clocks = look.said.all.flatMap((token, i) => (token.is === 'clock' ? [i] : []));
  const moment = momentOf(look);
  const hours = /\b(?:from|between)\s+(\d{1,2})\s*(?:till|to|until|and|-)\s*(\d{1,2})\b(?!\s*[:.]\d)/iu.exec(
    look.said.text,
  );
  const isLate = look.says(/ (?:afternoon|evening|pm) /);
  const clock = (typed: string) =>
    `${String(Number(typed) + (isLate && Number(typed) < 12 ? 12 : 0)).padStart(2, '0')}:00`;
  const hoursAt = hours
    ? look.said.all.flatMap((token, i) =>
        token.from >= hours.index && token.to <= hours.index + hours[0].length ? [i] : [],
      )
    : [];
  const when = hours
    ? `${clock(hours[1]!)} to ${clock(hours[2]!)}`
    : clocks.length === 2
      ? clocks.map((i) => look.said.all[i]!.typed).join(' to ')
      : moment.words;
  const place = kind === 'moved' ? / to (the [\p{L} ]+?) *$/iu.exec(look.folded)?.[1] : undefined;
  return {
    means: 'dryer',
    words:
      `${batch ? `B${batch.batch} ` : ''}${kind === 'resumed' ? 'runs again' : kind} ${when}${place === undefined ? '' : ` to ${place}`}`.trim(),
    score: scoreOf(machine.length > 0 && 3, batch !== undefined && 1, 1.5),
    left: look.leftBy([
      ...machine,
      ...stopped,
      ...resumed,
      ...moved,
      ...clocks,
      ...hoursAt,
      ...moment.at,
      ...people(look),
      ...look.said.batches.map(({ at }) => at),
      ...(place === undefined
        ? []
        : look.said.all.flatMap(({ plain }, i) => (place.split(' ').includes(plain) ? [i] : []))),
      ...look.at('again', 'go', 'down', 'up', 'freeze', 'from', 'since', 'till', 'until', 'between', 'to'),
    ]),
    holds: holdOf(look),
  };
};

/** 'The thickest piece is still cold inside', 'all pieces of B4 are crisp'. */
export const pieces: Reader = (look) => {
  const at = (words: readonly string[]) =>
    look.said.all.flatMap(({ plain }, i) => (words.includes(plain) ? [i] : []));
  const [found, cold, crisp] = [at(pieceWords), at(coldWords), at(crispWords)];
  const [batch] = look.said.batches;
  if (found.length === 0 || cold.length + crisp.length === 0 || look.said.codes.length > 0) return undefined;
  const { drying } = look.names;
  const which = batch
    ? `B${batch.batch}`
    : (look.mealTyped() ?? (drying.length === 1 ? `B${drying[0]}` : ''));
  return {
    means: 'weigh',
    words: `${which} pieces ${cold.length > 0 ? 'cold' : 'crisp'}`.trim(),
    score: scoreOf(4, batch !== undefined && 1),
    left: look.leftBy([
      ...found,
      ...cold,
      ...crisp,
      ...people(look),
      ...look.said.batches.map((one) => one.at),
      ...look.said.meals.flatMap((one) => one.at),
      ...at([
        'thickest',
        'biggest',
        'largest',
        'one',
        'is',
        'are',
        'in',
        'right',
        'through',
        'way',
        'inside',
        'throughout',
      ]),
      ...look.at('thick', 'big', 'large', 'open', 'break', 'still', 'all', 'some', 'feel', 'find'),
    ]),
    holds: holdOf(look),
  };
};
