import { fold } from '#words/near.ts';
import type { Names } from '#words/parts.ts';
import { quoted } from './look.ts';
import { takeApart } from './pieces.ts';
import { sayCode } from '#words/say.ts';

/** What may be asked about a thing that a message names: the request and how the button calls it. */
export interface Near {
  readonly label: string;
  readonly request: string;
}

/** Nothing longer is looked through for things. Chosen. */
const longest = 300;

/**
 * What the household has that a message names, where the message itself is not understood: at most three looks at it,
 * none of which records.
 */
export function nearThings(text: string, names: Names): Near[] {
  if (text.length > longest) return [];
  const { codes, batches, meals, people, trips } = takeApart(text, names);
  const [code] = codes;
  if (code) {
    const typed = sayCode(code.code);
    return [
      { label: `Card of ${typed}`, request: `/pouch ${typed}` },
      { label: `Water for ${typed}`, request: `/water ${typed}` },
    ];
  }
  const [batch] = batches;
  if (batch) {
    const typed = `${batch.isMixed ? 'M' : 'B'}${batch.batch}`;
    return [{ label: `Card of ${typed}`, request: `/pouch ${typed}` }];
  }
  const [meal] = meals;
  if (meal && meal.names.length === 1) {
    const [name] = meal.names;
    return [
      { label: `${name} in stock`, request: `/stock ${quoted(name)}` },
      { label: `Recipe of ${name}`, request: `/recipe ${name}` },
    ];
  }
  const [trip] = trips;
  const [place] = trip?.names ?? (/\b(?:trip|tour|hike)\b/iu.test(fold(text)) ? names.trips : []);
  if (place !== undefined)
    return [
      { label: `${place}: days and meals`, request: `/trip ${quoted(place)}` },
      { label: `Food for ${place}`, request: `/pick ${quoted(place)}` },
    ];
  const person = people.find(({ names: [name] }) => name !== names.me)?.names[0];
  return person === undefined
    ? []
    : [
        { label: `What is known of ${person}`, request: `/eater ${person}` },
        { label: `In stock for ${person}`, request: `/stock for ${person}` },
      ];
}
