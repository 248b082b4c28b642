import { mayHoldAnything } from '#core/allergens.ts';
import { boilingPointC } from '#core/boiling.ts';
import { coldSoakMinutes, soakMinutes } from '#core/soak.ts';
import type { RecipeFacts } from '#core/meal.ts';
import { sayList, sayNumber } from './say.ts';

/** So many letters of small print, three lines of a phone; more is named by its foods alone and told in full below. Chosen. */
const mostSmallPrint = 120;
/** So many foods by name, then a number. Chosen. */
const mostNamed = 4;

const firstOf = (names: readonly string[]): string =>
  names.length <= mostNamed + 1
    ? sayList(names)
    : `${names.slice(0, mostNamed).join(', ')} and ${names.length - mostNamed} more`;

/** What a meal contains, may contain and leaves unknown, a line each, short enough for a phone. Unknown is never left out. */
export function containsLines(facts: Pick<RecipeFacts, 'contents'>): string[] {
  const { certain, smallPrint, unknown } = toldOf(facts);
  const whole = smallPrintWhole(smallPrint);
  return [
    ...(certain.length > 0
      ? [`Contains: ${certain.join(', ')}.`]
      : unknown.length > 0
        ? []
        : ['No listed allergen by its ingredients.']),
    ...(smallPrint.size === 0
      ? []
      : [
          whole.length <= mostSmallPrint
            ? whole
            : `Read the small print: ${firstOf([...smallPrint.keys()])}.`,
        ]),
    ...(unknown.length > 0 ? [`Allergens unknown because of: ${firstOf(unknown)}.`] : []),
  ];
}

/** What was too long for a phone, in full. */
export function containsWhy(facts: Pick<RecipeFacts, 'contents'>): string[] {
  const { smallPrint, unknown } = toldOf(facts);
  const whole = smallPrintWhole(smallPrint);
  return [
    ...(whole.length > mostSmallPrint ? [whole] : []),
    ...(unknown.length > mostNamed + 1 ? [`Allergens unknown because of: ${sayList(unknown)}.`] : []),
  ];
}

/** The same on paper, where all of it has room. */
export function containsOnPaper(facts: Pick<RecipeFacts, 'contents'>): string[] {
  const said = new Set(containsWhy(facts).map((line) => line.split(':')[0]));
  return [...containsLines(facts).filter((line) => !said.has(line.split(':')[0])), ...containsWhy(facts)];
}

function toldOf({ contents: all }: Pick<RecipeFacts, 'contents'>) {
  const certain = [...new Set(all.flatMap(({ contents }) => contents?.contains ?? []))];
  const smallPrint = new Map<string, string[]>();
  for (const { ingredient, contents } of all) {
    const open = (contents?.check ?? []).filter((tag) => !certain.includes(tag));
    if (open.length > 0 && !mayHoldAnything(contents!)) smallPrint.set(ingredient, open);
  }
  const unknown = all
    .filter(({ contents }) => contents === null || mayHoldAnything(contents))
    .map(({ ingredient }) => ingredient);
  return { certain, smallPrint, unknown };
}

const smallPrintWhole = (smallPrint: ReadonlyMap<string, readonly string[]>): string =>
  `Read the small print: ${[...smallPrint].map(([ingredient, tags]) => `${ingredient} (${tags.join(', ')}?)`).join('; ')}.`;

/** How long it stands and why: 'usual', longer for pieces, or as rated. */
export interface SoakSaid {
  readonly extraMin: number;
  readonly because: 'usual' | 'pieces' | 'rated';
}

const usualSoak: SoakSaid = { extraMin: 0, because: 'usual' };
const soakBecause: Readonly<Record<SoakSaid['because'], string>> = {
  usual: 'common practice',
  pieces: 'longer for pieces, common practice',
  rated: 'as you rated it',
};

/**
 * 'Water boils at 92.0 °C at 2400 m. Stir, close, let stand 23 min (common practice).'
 * @param place the trip that is under way; null at home
 */
export function boilingPhrase(
  altitudeM: number,
  soak: SoakSaid = usualSoak,
  place: string | null = null,
): string {
  const said = standPhrase(altitudeM, soak);
  return `${boilsPhrase(altitudeM, place)} ${soak.because === 'usual' ? said.replace(/\.$/, ` (${soakBecause.usual}).`) : said}`;
}

/** 'Water boils at 92.0 °C at 2400 m (Heron Lake).' */
export const boilsPhrase = (altitudeM: number, place: string | null = null): string =>
  `Water boils at ${boilingPointC(altitudeM).toFixed(1)} °C at ${Math.round(altitudeM)} m${place === null ? '' : ` (${place})`}.`;

/** 'Stir, close, let stand 23 min.'; why, where that is not the usual. */
export function standPhrase(altitudeM: number, soak: SoakSaid = usualSoak): string {
  const because = soak.because === 'usual' ? '' : ` (${soakBecause[soak.because]})`;
  return `Stir, close, let stand ${soakMinutes(boilingPointC(altitudeM), soak.extraMin)} min${because}.`;
}

/** How long cold water takes, and what it does not do. */
export function coldLines(tempC: number, extraMin: number): string[] {
  const minutes = coldSoakMinutes(tempC, extraMin);
  const said = minutes < 60 ? `${minutes} min` : `${Math.floor(minutes / 60)} h ${minutes % 60} min`;
  return [
    `Cold, at ${sayNumber(tempC)} °C: about ${said}, stirred now and then (by a published factor for mushrooms; taste it).`,
    'Only water that is fit to drink: cold kills nothing. Keep it cool while it soaks, and eat it at once.',
  ];
}

/** For what is eaten as it is. @param because 'all fruit': nobody said so, it was guessed, and is said back */
export function eatenDryPhrase(how: {
  readonly because: 'told' | 'all fruit';
  readonly meal: string;
}): string {
  const guessed =
    how.because === 'told'
      ? ''
      : ` Taken so because it is all fruit; "/recipe ${how.meal} soaked" changes it.`;
  return `Eaten dry: no water, nothing to boil.${guessed}`;
}

/** For what is cooked in a pot: its water need not boil before. */
export const potCaution =
  'Its water need not boil before; the gas for the pot counts. A stove needs open air; eat within 2 hours.';
export const burnCaution = 'Boiling water burns; once wet it is fresh food, so eat within 2 hours.';
/** Said before anything else of food that was dried raw. */
export const rawCaution =
  'RAW: soak, then cook in a pot to 74 °C (165 °F) all through. Freeze-drying kills no germs.';
/** On a label, in a list: where there is little room. */
export const rawMark = 'RAW: soak, then cook in a pot';
export const uncheckedCaution =
  'UNCHECKED: not shown to be dry. No shelf, no best-by, no absorber: a damp pouch without oxygen can grow botulism. Keep it frozen, or dry it on.';
/** A pouch that was sealed as dry, perhaps with an absorber, and is contradicted by its recipe since. */
export const foundWetCaution =
  'UNCHECKED: sealed as dry, but by what is on record now it was not. If an absorber is in it and it was not kept frozen, do not eat it: a damp pouch without oxygen can grow botulism.';
