import type { Pouch } from '#core/records.ts';
import { Refusal } from '#core/refusal.ts';
import { pouchCoded } from '#house/figures.ts';
import type { House } from '#house/house.ts';
import { batchCode, meal, optional, pouchCodes } from '#words/parts.ts';
import type { PouchCode } from '#words/parts.ts';

/** What most questions are about: pouches, a batch, or a meal. */
export const aboutParts = { codes: optional(pouchCodes), batch: optional(batchCode), meal: optional(meal) };

export interface About {
  readonly codes: PouchCode[] | undefined;
  readonly batch: number | undefined;
  readonly meal: string | undefined;
}

/** The pouches meant: those coded, all of a batch, or all of a meal, whatever became of them. */
export function pouchesAbout(house: House, { codes, batch, meal: name }: About): Pouch[] {
  if (codes) return codes.map((code) => pouchCoded(house, code));
  if (batch !== undefined) return house.pouches.ofBatch(batch);
  return name === undefined
    ? []
    : house.batches
        .latest(200)
        .filter((one) => one.recipe.name === name)
        .flatMap((one) => house.pouches.ofBatch(one.no));
}

/** The batch meant: by its code, by a pouch of it, or the latest of a meal. @throws Refusal where none is */
export function batchAbout(house: House, { codes, batch, meal: name }: About): number {
  const no =
    batch ??
    codes?.[0]?.batch ??
    house.batches.latest(200).find((one) => name === undefined || one.recipe.name === name)?.no;
  if (no === undefined)
    throw new Refusal(
      'no-batch',
      name === undefined ? 'No batch has been loaded yet.' : `No batch of ${name} has been loaded yet.`,
    );
  return no;
}

/** The meal meant. @throws Refusal where none is named */
export function mealAbout(house: House, { codes, batch, meal: name }: About): string {
  if (name !== undefined) return name;
  const no = codes?.[0]?.batch ?? batch;
  const found = no === undefined ? undefined : house.batches.find(no)?.recipe.name;
  if (found === undefined) throw new Refusal('no-meal', 'Which meal or pouch is meant?');
  return found;
}
