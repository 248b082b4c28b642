import type { RecipeLine } from '#core/records.ts';
import type { Db } from './db.ts';
import { currentReader, lineIn, type LineRow, lineRow } from './recipes.ts';

interface OldRow extends LineRow {
  household: number;
  id: number;
}

/** Lines of every household that an older reader read, to be read again outside of any request. */
export function oldLineStore(db: Db) {
  const old = db.prepare(
    `SELECT household, id, typed, state, called, ndb, grams, contents_json AS contentsJson,
       remarks_json AS remarksJson, named_json AS namedJson, question, section, camp
     FROM recipe_line WHERE reader < ${currentReader}`,
  );
  const keep = db.prepare(
    `UPDATE recipe_line SET contents_json = :contentsJson, named_json = :namedJson, question = :question,
       reader = ${currentReader}
     WHERE household = :household AND id = :id`,
  );
  return {
    all: (): { household: number; id: number; line: RecipeLine }[] =>
      (old.all() as OldRow[]).map(({ household, id, ...row }) => ({ household, id, line: lineIn(row) })),
    keep: (household: number, id: number, line: RecipeLine): void => {
      const { contentsJson, namedJson, question } = lineRow(line);
      keep.run({ household, id, contentsJson, namedJson, question });
    },
  };
}
