import { kjPerKcal, type Panel, saltPerSodium } from '#core/panel.ts';
import { Refusal } from '#core/refusal.ts';
import { optional, part } from './part.ts';

/** A packet's panel as somebody copied it. */
export interface PanelTold {
  /** The food, as typed. */
  readonly food: string;
  readonly panel: Panel;
  /** 'per 100 g', as it was understood. */
  readonly per: string;
  readonly packG: number | null;
  /** 100 ml were taken as 100 g. */
  readonly isByVolume: boolean;
}

type Key = 'energy' | 'fat' | 'carbohydrate' | 'fibre' | 'protein' | 'salt' | 'sodium' | 'passed';
/** Lines of a panel in the order of either law; those passed over are parts of others, or vitamins and minerals. */
const labels: readonly (readonly [RegExp, Key])[] = [
  [/^(?:of which )?(?:saturate(?:s|d(?: fat(?:ty acids)?)?)|mono-?unsaturate(?:s|d(?: fat)?)|poly-?unsaturate(?:s|d(?: fat)?)|trans(?: fat)?|cholesterol|(?:total |added |includes )?sugars?|polyols?|sugar alcohol|starch|soluble fib(?:re|er)|insoluble fib(?:re|er)|calories from fat)$/, 'passed'],
  [/^(?:vitamin [a-k]\d{0,2}|thiamin|riboflavin|niacin|folate|folic acid|biotin|calcium|iron|potassium|magnesium|zinc|phosphorus|iodine|selenium|copper|manganese|chloride|omega-?3)$/, 'passed'],
  [/^(?:servings?(?: per (?:container|pack))?|portions?(?: per pack)?)$/, 'passed'],
  [/^(?:energy(?: value)?|calories|kcal|kj)$/, 'energy'],
  [/^(?:total )?fats?$/, 'fat'],
  [/^(?:total )?carb(?:ohydrate)?s?$/, 'carbohydrate'],
  [/^(?:dietary )?fib(?:re|er)s?$/, 'fibre'],
  [/^proteins?$/, 'protein'],
  [/^salt$/, 'salt'],
  [/^sodium$/, 'sodium'],
]; // prettier-ignore

const headers =
  /^(?:nutrition(?:al)?(?: facts| information| declaration| panel)?|typical values?|average values?|amounts? per serving|of which|(?:% ?)?daily values?\*?|panel|values|as sold)$/;
const perWhat =
  /\bper\s+(?:(100)\s*(g|ml)|(?:serving|portion)\b(?:\s*(?:of|size)?\s*\(?(\d+(?:[.,]\d+)?)\s*(g|ml)\)?)?)/iu;
const servingSize = /\bserving size\b[^()\d]*(?:[^()\n]*\()?\s*(\d+(?:[.,]\d+)?)\s*(g|ml)\)?/iu;
const pack = /\b(?:pack(?:et)?|net weight|box|tub|tin|jar)(?: size| of)?[: ]+(\d+(?:[.,]\d+)?)\s*(g|kg)\b/iu;
const number = (text: string) => Number(text.replace(',', '.'));

/** Whether a message copies a nutrition panel. */
export const mayBePanel = (text: string): boolean =>
  (perWhat.test(text) || servingSize.test(text)) && /\bfat\b/i.test(text) && /\bprotein/i.test(text);

/**
 * Reads a panel in the order of the EU's law or of the U.S. law, line by line or in one line with commas.
 * @throws Refusal for a word or line that is not understood, and for a line that is missing
 */
export function readPanel(typed: string): PanelTold {
  const text = typed.replace(/\bamounts? per serving\b/giu, '');
  const start = /[\n:]|\bper\b|\bnutrition|\bserving size|\bpack\b/iu.exec(text);
  const food = text
    .slice(0, start?.index ?? 0)
    .replace(/^\s*(?:our|ours|the|my)\s+|[\s,:;]+$/giu, '')
    .trim();
  if (food === '')
    throw new Refusal(
      'not-understood',
      'I read a panel, but not of which food: begin with it. Nothing was recorded.',
    );
  const size = servingSize.exec(text);
  const per = perWhat.exec(text);
  const isUs =
    /\bcalories\b|\bsodium\b|\btotal carb|nutrition facts/iu.test(text) && !/\bsalt\b/iu.test(text);
  const [amount, unit] = amountOf(per, size);
  const packed = pack.exec(text);
  const rest = [per?.[0], size?.[0], packed?.[0]].reduce<string>(
    (now, piece) => (piece === undefined ? now : now.replace(piece, '\n')),
    text.slice(start?.index ?? 0),
  );
  const found = linesOf(rest);
  const need = (key: Key): number => {
    const value = found.get(key);
    if (value === undefined)
      throw new Refusal('missing-line', `The panel says nothing of ${key}. Nothing was recorded.`);
    return value;
  };
  const sodiumMg = found.has('sodium') ? need('sodium') * 1000 : (need('salt') * 1000) / saltPerSodium;
  return {
    food,
    panel: {
      ofG: amount,
      carbohydrateHoldsFibre: isUs,
      kcal: found.get('energy') ?? null,
      fatG: need('fat'),
      carbohydrateG: need('carbohydrate'),
      fibreG: found.get('fibre') ?? null,
      proteinG: need('protein'),
      sodiumMg,
    },
    per: `${amount} ${unit}`,
    packG: packed ? number(packed[1]!) * (packed[2] === 'kg' ? 1000 : 1) : null,
    isByVolume: unit === 'ml',
  };
}

function amountOf(per: RegExpExecArray | null, size: RegExpExecArray | null): [number, string] {
  if (per?.[1] !== undefined) return [100, per[2]!.toLowerCase()];
  const typed = per?.[3] === undefined ? size?.slice(1, 3) : per.slice(3, 5);
  if (typed?.[0] === undefined)
    throw new Refusal(
      'no-serving',
      'How many grams are a serving? Say so: per serving (30 g). Nothing was recorded.',
    );
  return [number(typed[0]), typed[1]!.toLowerCase()];
}

/** The figures of each line, g; energy in kcal. */
function linesOf(text: string): Map<Key, number> {
  const found = new Map<Key, number>();
  let last: Key | undefined;
  const smooth = text
    .toLowerCase()
    .replace(/[–—•*]/g, '-')
    // '1,200 kJ' is a thousand, '0,5 g' is a half.
    .replace(/(\d),(\d{3})(?=\s*(?:kj|kcal|mg))/g, '$1$2')
    .replace(/(\d),(\d)/g, '$1.$2')
    .replace(/[<≤]|less than/g, ' ')
    // Parts of what is counted, and how many servings are in the pack.
    .replace(
      /(?:about )?\d+ servings? per (?:container|pack\w*)|servings? per (?:container|pack\w*)[: ]*\d+/g,
      '\n',
    )
    .replace(/(?:includes|incl\.?)\s+[\d.]+\s*g\s+(?:of\s+)?added sugars?(?:\s*\d+\s*%)?/g, '\n');
  for (const raw of smooth.split(/[\n,;|/()]|(?<=\d\s?(?:g|mg|kj|kcal|mcg|µg|%))\s+(?=[a-z])/u)) {
    const piece = raw.replace(/^[\s:.-]+|[\s:.-]+$/g, '').replace(/\s+/g, ' ');
    if (piece === '' || headers.test(piece) || /^(?:\d+(?:\.\d+)? ?)?%?$/.test(piece)) continue;
    const parts = /^(.*?)[\s:=-]*(\d+(?:\.\d+)?)\s*(kj|kcal|cal|g|mg|µg|mcg)?(?:\s*\d+\s*%)?$/.exec(piece);
    const name = (parts?.[1] ?? piece).replace(/^of which\s+/, '').trim();
    const key = name === '' ? last : labels.find(([like]) => like.test(name))?.[1];
    if (key === undefined || !parts)
      throw new Refusal('not-understood', `I could not place "${piece}" in the panel. Nothing was recorded.`);
    last = key;
    if (key === 'passed') continue;
    const value = inGrams(key, Number(parts[2]), parts[3], piece);
    // Energy stands twice: kcal is the one that counts.
    if (key === 'energy' ? parts[3] !== 'kj' || !found.has(key) : !found.has(key)) found.set(key, value);
    else if (key !== 'energy' && found.get(key) !== value)
      throw new Refusal(
        'twice',
        `The panel says ${key} twice. Give one column: per 100 g, or per serving. Nothing was recorded.`,
      );
  }
  return found;
}

function inGrams(key: Key, value: number, unit: string | undefined, piece: string): number {
  if (key === 'energy') return unit === 'kj' || piece.startsWith('kj') ? value / kjPerKcal : value;
  if (unit === undefined || unit === 'kj' || unit === 'kcal' || unit === 'cal')
    throw new Refusal('no-unit', `"${piece}" needs g or mg. Nothing was recorded.`);
  return unit === 'g' ? value : unit === 'mg' ? value / 1000 : value / 1_000_000;
}

/** A copied panel, with the message as it was typed. */
export interface PanelAsked {
  readonly is: 'panel';
  readonly told: PanelTold;
  readonly typed: string;
}

/** 'vegetable stock cube per 100 g: energy 287 kcal, fat 20 g, …'. */
export const panelAsked = optional(
  part<PanelAsked>('a panel, such as stock cube per 100 g: energy 287 kcal, fat 20 g …', (reading) => {
    if (!mayBePanel(reading.text)) return undefined;
    const told = readPanel(reading.text);
    reading.take(...reading.left());
    return { is: 'panel', told, typed: reading.text };
  }),
);
