import { couldMean, leftAside } from '#talk/understand.ts';
import { isQuestion, withoutOpening } from '#talk/mood.ts';
import { continued } from '#talk/continued.ts';
import { asMeant } from '#talk/instead.ts';
import type { Meaning } from '#talk/look.ts';
import { leftOpen } from '#talk/left-open.ts';
import { deedsNear } from '#talk/deeds-near.ts';
import { withCodes } from '#talk/pieces.ts';
import { isTurnedRound, leavesWhichOpen, whichOne } from '#talk/hold.ts';
import { nearThings } from '#talk/near-things.ts';
import { respelled } from '#talk/respelled.ts';
import { isSmallTalk } from '#talk/small-talk.ts';
import { eitherOf } from '#talk/either.ts';
import type { Names } from '#words/parts.ts';
import { readScanPayload } from '#words/scan.ts';
import { called, nearest, slipOf } from './called.ts';
import type { Addressed, Chosen, Requests } from './chosen.ts';
import type { Command } from './command.ts';
import { courtesy } from './courtesy.ts';
import { fits } from './read-parts.ts';
import { chainOf, inLines } from './several.ts';
import { sayCode } from '#words/say.ts';

/** How much less a reading has to be worth than the best for that one to need no asking. Chosen. */
const clearlyBest = 0.6;
/** What a text that begins with a request's own name is worth as that request. Chosen. */
const namedScore = 3.2;
/** A reading that is worth as much needs nothing that was said before. Chosen. */
const standingScore = 5;
/** A reading that is worth less is a guess. Chosen. */
const leastScore = 2;

/**
 * Finds the request in a text: '/water B4-2', 'water B4-2' or a plain sentence that means it.
 * @param addressed whether the text is meant for the bot even without a slash
 * @param names the household's own; asked for only where a sentence has to be read
 */
export function address(text: string, addressed: boolean, requests: Requests, names: () => Names): Addressed {
  const { commands, questions } = requests;
  const trimmed = text.trim();
  const several = /^\/\S.*\n\s*\/\S/su.test(trimmed) ? inLines(trimmed, requests) : undefined;
  if (several) return several;
  const slash = /^\/\s?([\p{L}\p{N}_]+)(.*)$/su.exec(trimmed);
  if (slash) {
    const typed = slash[1]!.toLowerCase();
    const command = called(typed, commands) ?? called(typed, questions);
    const plainWords = slash[2]!.replace(/^[\s,:;.]+/, '');
    // 'Batch five' and 'b3 pouch 4' are codes behind a slash, too; a text keeps its own words.
    const isSpoken =
      command !== undefined &&
      (spokenCodes.has(command.name) ||
        (command.name === 'weigh' &&
          /\b(?:tray|batch|load) (?:one|two|three|four|five|six|seven|eight|nine|ten)\b/iu.test(plainWords)));
    const figured =
      command !== undefined && /^(?:weigh|batch)$/.test(command.name)
        ? plainWords.replace(/(?<=\d)[oO](?=\d)/gu, '0')
        : plainWords;
    const words = isSpoken ? withCodes(figured) : figured;
    const linked = typed === 'start' ? called('pouch', commands) : undefined;
    // Behind /start stands what a link carried: a pouch's code, or nothing that was made here.
    const scanned = readScanPayload(words)?.code;
    const code = scanned ? sayCode(scanned) : words;
    if (linked && /^b\d+-\d+$/i.test(code)) return plainly(linked, code);
    if (command?.records && isQuestion(words) && !command.asksBy?.test(words))
      return asked(command, words, requests, names());
    const open = command?.records ? leftOpen(command.name, words, names) : null;
    const eachCode = open === whichOne ? (words.match(/\b[BMS]\d+-\d+\b/giu) ?? []) : [];
    if (command && eachCode.length > 1)
      return {
        is: 'unknown',
        typed: words.slice(0, 40),
        near: undefined,
        of: [],
        deeds: eachCode.slice(0, 3).map((code) => ({ command, words: code })),
        things: [],
      };
    if (command && open !== null)
      return { is: 'request', main: { command, words, holds: open, left: [] }, also: [], offer: null };
    const trays = command?.name === 'weigh' ? byTrays(command, words) : undefined;
    if (trays) return trays;
    if (command) return plainly(command, typed === 'start' ? '' : words);
    return addressed
      ? {
          is: 'unknown',
          typed: `/${slash[1]!}`,
          near: nearest(typed, commands),
          of: [],
          deeds: [],
          things: [],
        }
      : { is: 'talk' };
  }
  if (!addressed || trimmed === '') return { is: 'talk' };
  if (courtesy.test(trimmed)) return { is: 'courtesy' };
  return bySentence(trimmed, requests, names());
}

/** '/weigh B6 tray 1 199 g tray 2 201 g': each tray is weighed by itself. */
function byTrays(command: Command, words: string): Addressed | undefined {
  const pairs = [
    ...words.matchAll(/\btray\s*(\d{1,2})\s*[:=]?\s*(\d+(?:[.,]\d+)?(?:\s*(?:kg|g|oz|lb))?)\b/giu),
  ];
  const rest = pairs
    .reduce((left, [pair]) => left.replace(pair, ' '), words)
    .replace(/[\s,;]+|\band\b/giu, ' ')
    .trim();
  if (pairs.length < 2) return undefined;
  return {
    is: 'together',
    of: pairs.map(([, no, weight]) => ({
      command,
      words: `${rest} tray ${no!} ${weight!}`,
      holds: null,
      left: [],
    })),
  };
}

/** Requests whose words are codes and figures, as they are spoken. */
const spokenCodes = new Set([
  'water',
  'use',
  'pouch',
  'label',
  'chart',
  'pack',
  'found',
  'fix',
  'undo',
  'rate',
]);

const itAsks = 'that reads as a question';

/** A request by its slash: its words are its own. */
function plainly(command: Command, words: string): Addressed {
  return { is: 'request', main: { command, words, holds: null, left: [] }, also: [], offer: null };
}

/** A request that records, put as a question: what is asked is answered, and the deed is offered. */
function asked(command: Command, words: string, requests: Requests, names: Names): Addressed {
  const deed: Chosen = { command, words: words.replace(/[?？]/g, ' ').trim(), holds: itAsks, left: [] };
  const answers = readingsOf(`${command.name} ${words}`, requests, names).find(
    (one) => !one.command.records && one.score >= leastScore,
  );
  return answers
    ? { is: 'request', main: chosen(answers), also: [], offer: deed }
    : { is: 'request', main: deed, also: [], offer: null };
}

interface Scored {
  readonly meaning: Meaning;
  readonly command: Command;
  readonly score: number;
}

const chosen = ({ meaning, command }: Scored): Chosen => ({
  command,
  words: meaning.words,
  holds: meaning.holds,
  left: meaning.left,
  ...(meaning.remark === undefined ? {} : { remark: meaning.remark }),
  ...(meaning.beside === undefined ? {} : { aside: meaning.beside }),
});

/** What a message of two words or more may open and close with and say nothing by: the rest is read as if alone. */
const greeting = /^\s*(?:(?:please|pls|plz|hey|hi|hello|ok(?:ay)?|so|sorry)\b[\s,!.]+)+(?=\p{L}.*\s\S)/isu;
const farewell =
  /(?<=\S\s.*\S)(?:[\s,!.]+(?:please|pls|thanks|thank you|thx|cheers|\p{Extended_Pictographic}\ufe0f?))+[\s!.]*$/isu;

/** Every request and question that would account for a sentence, the best first. */
function readingsOf(text: string, { commands, questions }: Requests, names: Names): Scored[] {
  const first = /^([\p{L}_]+)(?![\p{L}\p{N}_]|['’-]\p{L})(.*)$/su.exec(withoutOpening(text));
  const word = first?.[1]!.toLowerCase();
  const opener = word === undefined ? undefined : (called(word, commands) ?? slipOf(word, commands));
  // 'Log that tray two is at 209 g' tells; 'log 20 entries' asks for the log.
  const tells =
    opener?.name === 'log' &&
    /^\s*(?:that\b|:|down\b|[^\d]*\b[BM]\d+|.*\d\s*g)/iu.test(first?.[2] ?? '') &&
    !/entries/iu.test(text);
  const named: Meaning[] =
    opener && first && !tells
      ? [
          {
            means: opener.name,
            words: first[2]!.replace(/^[\s,:;]+/, ''),
            score: namedScore,
            left: [],
            holds: !opener.records
              ? null
              : isQuestion(text)
                ? itAsks
                : eitherOf(text).length > 0
                  ? whichOne
                  : null,
            ...(called(word!, commands) ? {} : { remark: `read "${first[1]!}" as ${opener.name}` }),
          },
        ]
      : [];
  return [...named, ...couldMean(text.replace(farewell, '').replace(greeting, ''), names)]
    .map((meaning) => {
      const command = called(meaning.means, commands) ?? called(meaning.means, questions);
      if (!command) throw new Error(`a reading means "${meaning.means}", which is no request`);
      return { meaning, command, score: meaning.score + fits(command, meaning.words, names) };
    })
    .toSorted((a, b) => b.score - a.score);
}

function bySentence(typedText: string, requests: Requests, names: Names): Addressed {
  const asTyped = readingsOf(typedText, requests, names);
  const instead = corrected(typedText, asTyped[0], requests, names);
  if (instead) return instead;
  const { text, remark } = continued(typedText, names);
  // What stands by itself needs nothing put in: 'take that back'.
  const standsAlone = remark === null || (asTyped[0]?.score ?? 0) >= standingScore;
  const readings = standsAlone
    ? asTyped
    : readingsOf(text, requests, names).map((one) => ({ ...one, meaning: { ...one.meaning, remark } }));
  const best = readings[0];
  if (!best || best.score < leastScore) {
    const right = isQuestion(text) ? respelled(text, names) : undefined;
    const [asMeant] = right ? readingsOf(right.text, requests, names) : [];
    if (right && asMeant && asMeant.score >= leastScore && !asMeant.command.records)
      return { is: 'request', main: { ...chosen(asMeant), remark: right.remark }, also: [], offer: null };
    if (isSmallTalk(text, names)) return { is: 'courtesy' };
    const typed = /^[^\s,;:!?]{1,40}/u.exec(text)?.[0] ?? text.slice(0, 40);
    const near = slipOf(typed.toLowerCase(), requests.commands);
    const things = nearThings(text, names);
    const deeds = deedsNear(text, names).flatMap(({ means, words }) => {
      const command = called(means, requests.commands);
      return command ? [{ command, words }] : [];
    });
    return { is: 'unknown', typed, near, of: distinct(readings.map(chosen)).slice(0, 2), deeds, things };
  }
  const rival = readings.find((one) => one.command !== best.command);
  const isClose = rival !== undefined && rival.score >= leastScore && best.score - rival.score < clearlyBest;
  const isFree = (one: Scored) => one.meaning.holds === null && one.meaning.left.length === 0;
  // To be told a little besides the point costs less than to be asked; to record the wrong thing costs most.
  if (isClose && best.command.records && !best.meaning.also && isFree(best) && isFree(rival))
    return { is: 'several', of: [chosen(best), chosen(rival)] };
  // 'B1-2 or B1-3': each by itself.
  const either =
    best.command.records && leavesWhichOpen(best.meaning.holds)
      ? (best.meaning.words.match(/\b[BM]\d+-\d+\b/giu) ?? [])
      : [];
  if (either.length > 1 && !isQuestion(text)) {
    const deeds = either.slice(0, 3).map((code) => ({ command: best.command, words: code }));
    return { is: 'unknown', typed: text.slice(0, 40), near: undefined, of: [], deeds, things: [] };
  }
  // '237 or 240 ml': each by itself.
  const figures =
    best.command.records && leavesWhichOpen(best.meaning.holds) && !isQuestion(text) ? eitherOf(text) : [];
  const ofFigures = figures.flatMap((one) =>
    readingsOf(one, requests, names)
      .slice(0, 1)
      .filter(({ command, meaning }) => command === best.command && !isTurnedRound(meaning.holds)),
  );
  if (ofFigures.length > 1)
    return {
      is: 'unknown',
      typed: text.slice(0, 40),
      near: undefined,
      of: [],
      deeds: ofFigures.map(chosen),
      things: [],
    };
  const chain = chainOf(best.meaning, best.command, requests);
  if (chain) return { is: 'together', of: chain };
  const also: Chosen[] = [];
  for (let more = best.meaning.also; more; more = more.also) {
    const command = called(more.means, requests.commands);
    if (command) also.push({ command, words: more.words, holds: more.holds, left: more.left });
  }
  const asks = isQuestion(text) && !best.command.records;
  const deed = asks
    ? (readings.find(
        (one) => one.command.records && one.score >= leastScore - 0.5 && one.meaning.left.length === 0,
      ) ?? toldBeside(text, requests, names))
    : undefined;
  // A plan is shown; only keeping it records.
  const tells = best.command.records && best.meaning.looks !== true && !isQuestion(text);
  const aside = tells || isNamed(best) ? [] : leftAside(text, names, best.meaning);
  const main = chosen(best);
  return {
    is: 'request',
    main: aside.length === 0 ? main : { ...main, aside },
    also,
    offer: deed ? chosen(deed) : null,
  };
}

/** Where one sentence ends and the next begins. */
const sentences = /(?:[.;!?\n]+\s+|,\s+(?:and\s+|but\s+|so\s+)?|\s+(?:and|but)\s+)/iu;

/** 'Mac 820, and when will it be done?': what is told in front of a question. */
function toldBeside(text: string, requests: Requests, names: Names): Scored | undefined {
  if (text.length > longestTold) return undefined;
  const parts = text.split(sentences).map((one) => one.trim());
  if (parts.length < 2) return undefined;
  const told = parts.filter((part) => part.length > 3 && !isQuestion(part));
  return [...(told.length > 1 ? [told.join(', ')] : []), ...told]
    .flatMap((part) => readingsOf(part, requests, names).slice(0, 1))
    .find(
      ({ command, meaning, score }) =>
        command.records &&
        !command.planned &&
        score >= standingScore - 1 &&
        meaning.left.length === 0 &&
        meaning.holds === null,
    );
}

/** Nothing longer is a word beside a question. Chosen. */
const longestTold = 200;

/** A request that the message names first: its words are its own, and it quotes back what it did not take. */
const isNamed = ({ meaning }: Scored): boolean => meaning.score === namedScore;

/** What a message puts in the place of what the same person had recorded just before. */
function corrected(
  text: string,
  asTyped: Scored | undefined,
  requests: Requests,
  names: Names,
): Addressed | undefined {
  const { lastRecorded: last } = names;
  if (
    !last ||
    (asTyped &&
      asTyped.score >= standingScore &&
      !/^\s*(?:no|nope|wait|hang on|sorry|oops|actually|make (?:it|that)|scratch that|scrap that|correction|wrong)\b/iu.test(
        text,
      ))
  )
    return undefined;
  const meant = asMeant(text, last.text, names);
  if (meant === undefined) return undefined;
  const found = address(meant, true, requests, () => ({ ...names, lastRecorded: undefined }));
  return found.is === 'request' && found.main.command.records && !found.main.command.planned
    ? { is: 'instead', entry: last.entry, main: found.main }
    : undefined;
}

const distinct = (all: readonly Chosen[]): Chosen[] =>
  all.filter((one, i) => all.findIndex((other) => other.command === one.command) === i);
