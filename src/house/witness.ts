import { dryJarPercent, gradeOfJar, since } from '#core/dry-verdict.ts';
import type { Batch } from '#core/records.ts';
import { Refusal } from '#core/refusal.ts';
import { sayNumber } from '#words/say.ts';
import type { House } from './house.ts';

/** A word that counts names what was seen: one word is as good as a tap. Chosen. */
const fewestWords = 3;
const fullAgeYears = 18;

/** Keeps what a hygrometer showed. @throws Refusal 'impossible-humidity', 'no-weight' */
export function recordJar(house: House, batch: Batch, humidityPercent: number, atMs: number): void {
  gradeOfJar(humidityPercent);
  if (batch.weighings.length === 0 || atMs < batch.weighings.at(-1)!.atMs)
    throw new Refusal(
      'no-weight',
      `A jar speaks of the food as it was weighed last: weigh B${batch.no} first, then read the hygrometer.`,
    );
  house.batches.witness(batch.id, house.member.id, atMs, { humidityPercent });
}

/** Keeps a grown-up's word for a batch. @throws Refusal where it may not count */
export function recordWord(house: House, batch: Batch, words: string): void {
  const eater = house.eaters.here().find(({ member }) => member === house.member.id);
  if (eater === undefined)
    throw new Refusal('who-vouches', 'I do not know you as an eater yet, so not as a grown-up: /eater me.');
  if (eater.kind === 'child' || (eater.ageYears !== null && eater.ageYears < fullAgeYears))
    throw new Refusal('too-young', `Vouching is for grown-ups; ${eater.name} is recorded as a child.`);
  if (words.split(/\s+/).filter((word) => /\p{L}/u.test(word)).length < fewestWords)
    throw new Refusal(
      'vouch-for-what',
      'Say what was seen, in a few words, such as: vouch six pieces opened, crisp inside.',
    );
  const { jar } = since(batch.witnesses, batch.weighings.at(-1)?.atMs ?? 0);
  if (jar === undefined || gradeOfJar(jar.humidityPercent) !== 'dry')
    throw new Refusal(
      'no-dry-jar',
      `A word alone does not do. First a hygrometer in a closed jar with the food, at ${dryJarPercent} % or less since the last weighing: /weigh B${batch.no} humidity 24 %.${jar ? ` It showed ${sayNumber(jar.humidityPercent)} %.` : ''}`,
    );
  house.batches.witness(batch.id, house.member.id, house.nowMs, { words });
}
